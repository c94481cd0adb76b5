"""Faults found while linking a plan. Pure."""

import re
from dataclasses import dataclass

from board.plan.places import Loc
from board.plan.resolve.known_again import name_key as name_key
from board.plan.snag import Fix


@dataclass(frozen=True, slots=True)
class Fault:
    """Something that prevents linking; `loc` is its path in the file. `meant`: a word there that nothing is called,
    and what is called most like it."""

    code: str
    message: str
    mend: str
    loc: Loc
    meant: tuple[str, str | None] = ("", None)

    @property
    def fix(self) -> Fix | None:
        """The word swapped."""
        word, known = self.meant
        return None if known is None else Fix("swap", self.loc, known, word)


def slug(text: str) -> str:
    """`Celeriac broth` → `celeriac-broth`; keeps letters of every script."""
    return re.sub(r"[^\w]+", "-", text.casefold()).strip("-_") or "x"
