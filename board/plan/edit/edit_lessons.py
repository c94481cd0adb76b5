"""Figures learned from evenings: how long steps take, how fast an oven heats and cools, and the history of where this
was learned."""

import re
from dataclasses import dataclass
from typing import Any, Literal

from board.plan.edit import words
from board.plan.edit.edit import Edit, written
from board.plan.edit.save import Append, CannotEdit, Change, Put
from board.plan.load import PlanFile
from board.plan.phrases.durations import short, takes_text
from board.plan.phrases.stations import OvenWay
from board.plan.places import Loc
from board.plan.resolve.links import name_key


@dataclass(frozen=True)
class SetTakes(Edit):
    """Sets how long the step, job or other way at a path takes, in minutes; with `eaten in`, how long the guests sit
    over the course there. Three equal figures are written as one. Refused for a path without work."""

    loc: Loc
    low: int
    likely: int
    high: int
    key: Literal["takes", "eaten in"] = "takes"

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        loc, work = written(data, self.loc)
        text = takes_text(self.low, self.likely, self.high)
        if isinstance(work, str) and loc[0] == "jobs":  # a job written on one line
            return [Put(loc, {"job": work, "takes": text})]
        if not isinstance(work, dict):
            return CannotEdit(words.EDIT_NO_STEP)
        said = work.get(self.key)
        if not isinstance(said, dict):
            return [] if said == text else [Put((*loc, self.key), text)]
        figures = {"low": self.low, "likely": self.likely, "high": self.high}
        return [Put((*loc, self.key, key), _like(said.get(key), each)) for key, each in figures.items()]


@dataclass(frozen=True)
class SetOvenTime(Edit):
    """Sets the minutes of an oven's own figure for heating or cooling. An oven without its own figure gets `whole`.
    Refused for an unknown oven."""

    oven: str
    way: OvenWay
    minutes: int
    whole: str  # `15 min to 175 C`

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        kitchen = data.get("kitchen")
        ovens = kitchen.get("ovens") if isinstance(kitchen, dict) else None
        names = list(file.plan.kitchen.ovens)
        name = next((key for key in names if name_key(key) == name_key(self.oven)), None)
        if name is None:
            return CannotEdit(words.edit_no_oven(self.oven))
        if not isinstance(ovens, dict):  # only a count, or not mentioned
            named = {each: {self.way: self.whole} if each == name else {} for each in names}
            if isinstance(kitchen, dict):
                return [Put(("kitchen", "ovens"), named)]
            return [Put(("kitchen",), {"ovens": named})]
        name = next((key for key in ovens if str(key) == name), name)
        loc: Loc = ("kitchen", "ovens", name)
        if ovens[name] is None:
            return [Put(loc, {self.way: self.whole})]
        said = ovens[name].get(self.way)
        if isinstance(said, dict):
            return [Put((*loc, self.way, "minutes"), _like(said.get("minutes"), self.minutes))]
        if said is None:
            return [Put((*loc, self.way), self.whole)]
        rest = re.fullmatch(r".+?(\s+(?:to|from)\s+.+)", str(said))
        return [Put((*loc, self.way), short(self.minutes) + (rest[1] if rest else ""))]


@dataclass(frozen=True)
class AddNotes(Edit):
    """Adds notes from past evenings to the step, job, course or whole plan at a path, after those it has. Refused for
    any other path."""

    loc: Loc
    notes: tuple[str, ...]

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        loc, part = written(data, self.loc)
        if isinstance(part, str) and loc[:1] == ("jobs",):  # a job written on one line
            return [Put(loc, {"job": part, "noted": list(self.notes)})]
        if not isinstance(part, dict):
            return CannotEdit(words.EDIT_NO_STEP)
        said = part.get("noted")
        if not isinstance(said, list) or not said:
            return [Put((*loc, "noted"), [*([said] if said else []), *self.notes])]
        return [Append((*loc, "noted"), note) for note in self.notes]


@dataclass(frozen=True)
class Together(Edit):
    """Several changes in different places, made as one, so that the plan is read only once."""

    edits: tuple[Edit, ...]

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        found: list[Change] = []
        for edit in self.edits:
            changes = edit.changes(file, data)
            if isinstance(changes, CannotEdit):
                return changes
            found += changes
        return found


@dataclass(frozen=True)
class AddHistory(Edit):
    """Adds lines at the end of the plan's `history`: where its figures were learned."""

    lines: tuple[str, ...]

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        if not data.get("history"):
            return [Put(("history",), list(self.lines))]
        return [Append(("history",), line) for line in self.lines]


def _like(said: Any, minutes: int) -> int | str:
    """A figure in a plan's long form, as a number or in words, whichever the plan uses."""
    return short(minutes) if isinstance(said, str) else minutes
