"""Faults found while linking a plan. Pure."""

import re
from dataclasses import dataclass

from board.plan.places import Loc
from board.plan.resolve.known_again import name_key as name_key


@dataclass(frozen=True, slots=True)
class Fault:
    """Something that prevents linking; `loc` is its path in the file."""

    code: str
    message: str
    mend: str
    loc: Loc


def slug(text: str) -> str:
    """`Celeriac broth` → `celeriac-broth`; keeps letters of every script."""
    return re.sub(r"[^\w]+", "-", text.casefold()).strip("-_") or "x"
