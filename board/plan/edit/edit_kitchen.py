"""More equipment: a borrowed oven, a ring, a pan, room in the fridge."""

import copy
from dataclasses import dataclass
from typing import Any

from board.plan.edit import words
from board.plan.edit.edit import Edit
from board.plan.edit.save import CannotEdit, Change, Put
from board.plan.load import PlanFile
from board.plan.phrases.stations import parse_station


@dataclass(frozen=True)
class AddOven(Edit):
    """Adds an oven, copied from another (`like`) or with the usual figures. Refused for a name that is taken or does
    not read as an oven.

    If the plan only counts its ovens, they are written out under the names the count stands for, so that every step
    still finds its oven.
    """

    name: str
    like: str | None = None

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        ovens = file.plan.kitchen.ovens
        if self.name in ovens:
            return CannotEdit(words.edit_oven_there(self.name))
        if self.like is not None and self.like not in ovens:
            return CannotEdit(words.edit_no_oven(self.like))
        if not _can_be_named(self.name):
            return CannotEdit(words.edit_no_oven_name(self.name))
        said = data.get("kitchen", {}).get("ovens")
        if isinstance(said, dict) and said:
            return [Put(("kitchen", "ovens", self.name), self._like(said))]
        return [_in_kitchen(data, "ovens", {name: {} for name in [*ovens, self.name]})]

    def _like(self, said: Any) -> Any:
        """What the plan says of the other oven."""
        return {} if self.like is None or said.get(self.like) is None else copy.deepcopy(said[self.like])


@dataclass(frozen=True)
class MoreRings(Edit):
    """Adds this many rings: a plug-in hob, a camping ring. Refused below 1."""

    number: int

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        if self.number < 1:
            return CannotEdit(words.EDIT_NONE_MORE)
        return [_in_kitchen(data, "rings", file.plan.kitchen.rings + self.number)]


@dataclass(frozen=True)
class MoreOfTool(Edit):
    """Adds this many of a tool; a tool the kitchen lacks is listed with that number. Refused below 1."""

    tool: str
    number: int

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        if self.number < 1:
            return CannotEdit(words.EDIT_NONE_MORE)
        tools = file.plan.kitchen.tools
        total = tools.get(self.tool, 0) + self.number
        if not tools:
            return [_in_kitchen(data, "tools", {self.tool: total})]
        return [Put(("kitchen", "tools", self.tool), total)]


@dataclass(frozen=True)
class MoreRoom(Edit):
    """Sets the total room, in litres, of the fridge or the freezer: a cool box, a neighbour's shelf."""

    where: str
    litres: float

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        return [_in_kitchen(data, self.where, f"{self.litres:g} litres")]


def _in_kitchen(data: Any, key: str, value: Any) -> Change:
    if "kitchen" in data:
        return Put(("kitchen", key), value)
    return Put(("kitchen",), {key: value})


def _can_be_named(name: str) -> bool:
    """Whether `NAME at 180 C` reads as that oven and as nothing else."""
    if name == "oven":
        return True
    try:
        return parse_station(f"{name} at 180 C").get("oven") == name
    except ValueError:
        return False
