"""Guesses confirmed: keys of a step that a program filled in, taken as they stand or with another value."""

import re
from collections.abc import Collection, Mapping
from dataclasses import dataclass, field
from typing import Any

from pydantic import ValidationError

from board.plan.edit import words
from board.plan.edit.edit import Edit, written
from board.plan.edit.save import CannotEdit, Change, Put, Remove
from board.plan.load import PlanFile
from board.plan.model.work import Step
from board.plan.places import Loc

_LENGTHS = ("takes", "best within")
_FIGURES = re.compile(r"(\d+)(?:(?:\s*(?:,|-|–|\bto\b)\s*|\s+)(\d+))?(?:(?:\s*(?:,|-|–|\bto\b)\s*|\s+)(\d+))?")
_FIRST = re.compile(r"\d+(?:[.,]\d+)?(?P<range>[^,()]*\([^()]*\))?")


@dataclass(frozen=True)
class SettleStep(Edit):
    """Takes guessed keys of the step at a path off its list `guessed`; each with another value, as a host writes it, or
    None as it stands. Refused for a path without a step."""

    loc: Loc
    keys: Mapping[str, str | None] = field(hash=False)

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        loc, work = written(data, self.loc)
        if not isinstance(work, dict) or "step" not in work:
            return CannotEdit(words.EDIT_NO_STEP)
        made: list[Change] = [
            Put((*loc, key), text) for key, text in self.keys.items() if text is not None and work.get(key) != text
        ]
        return [*made, *settled(work, loc, self.keys)]


def settled(work: Mapping[str, Any], loc: Loc, keys: Collection[str]) -> list[Change]:
    """The keys taken off the list `guessed` of the step at a path."""
    said = work.get("guessed", [])
    left = [key for key in (said if isinstance(said, list) else [said]) if key not in keys]
    if "guessed" not in work or left == said:
        return []
    return [Put((*loc, "guessed"), left) if left else Remove((*loc, "guessed"))]


def retyped(key: str, text: str, typed: str) -> str:
    """A key's value after the host typed: all of it (`1 h 30`, `oven at 180 C, 1 shelf`), or figures alone.

    Of a length those are minutes, low, likely and high (`20 25 40`); of any other value one figure, in place of the
    first. Raises ValueError, what is wrong, a semicolon, how to mend it, where the plan could not read it.
    """
    typed = " ".join(typed.split())
    figures = _FIGURES.fullmatch(typed)
    if figures is not None and key in _LENGTHS:
        typed = f"{' to '.join(figure for figure in figures.groups() if figure is not None)} min"
    elif typed.isdecimal():
        first = _FIRST.search(text)
        if first is None:
            raise ValueError(f"{text!r} has no figure to change; press e and type all of it")
        # A range in brackets was about the figure before, and goes with it.
        unit = re.sub(r"\s*\([^()]*\)", "", first["range"] or "")
        typed = text[: first.start()] + typed + unit + text[first.end() :]
    try:
        Step.model_validate({"step": "-", key: typed})
    except ValidationError as wrong:
        about = wrong.errors(include_url=False)[0].get("ctx", {})
        known = f"; use {about['expected']}" if "expected" in about else ""
        raise ValueError(str(about.get("error", "")) or f"{typed!r} cannot be read here{known}") from None
    return typed
