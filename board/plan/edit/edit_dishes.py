"""Later courses, other ways to do steps, dishes bought or left out."""

import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from board.plan.edit import words
from board.plan.edit.edit import Edit, written
from board.plan.edit.save import Append, CannotEdit, Change, Put, Remove, Wrap
from board.plan.load import PlanFile
from board.plan.phrases.durations import short
from board.plan.places import Loc
from board.plan.resolve.links import Linked, Names, Node, name_key

_OF_ITS_TIME = ("day", "not before", "not after")


@dataclass(frozen=True)
class PushCourse(Edit):
    """Sets the clock time (`at`, 'HH:MM') at which a course is wanted, even if the plan gave it as a time after
    something. Refused for an unknown course, or if nothing would change."""

    course: str
    at: str

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        number = _course(file, self.course)
        if number is None:
            return CannotEdit(words.edit_no_course(self.course))
        if data["courses"][number]["at"] == self.at:
            return CannotEdit(words.edit_course_there(self.course, self.at))
        return [Put(("courses", number, "at"), self.at)]


@dataclass(frozen=True)
class SetArrival(Edit):
    """Sets when the guests come ('HH:MM')."""

    at: str

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        return [Put(("arrive",), self.at)]


@dataclass(frozen=True)
class SetGap(Edit):
    """Sets the minutes between a course and what the plan wants it after. Refused for an unknown course, for one wanted
    by the clock, and if nothing would change."""

    course: str
    minutes: int

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        number = _course(file, self.course)
        if number is None:
            return CannotEdit(words.edit_no_course(self.course))
        after = file.plan.courses[number].at.after
        if after is None:
            return CannotEdit(words.edit_no_gap(self.course))
        if after.minutes == self.minutes:
            return CannotEdit(words.edit_course_there(self.course, short(self.minutes)))
        loc: Loc = ("courses", number, "at")
        said = data["courses"][number]["at"]
        if isinstance(said, dict):
            return [Put((*loc, "after", "minutes"), self.minutes)]
        rest = re.search(r"\s+after\s.*", str(said), re.IGNORECASE)
        assert rest is not None  # it was read as a time after something
        return [Put(loc, short(self.minutes) + rest.group())]


@dataclass(frozen=True)
class AddWay(Edit):
    """Adds another way to do the step or job at a path: `{"keeps": "35 min in the room"}`. Refused for a path without
    work, and for an empty way."""

    loc: Loc
    way: Mapping[str, str] = field(hash=False)

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        loc, work = written(data, self.loc)
        if not any(task.node.loc == self.loc for task in file.filled.tasks.values() if task.work):
            return CannotEdit(words.EDIT_NO_STEP)
        if not self.way:
            return CannotEdit(words.EDIT_NO_WAY)
        new, ways = dict(self.way), (*loc, "or")
        if isinstance(work, str):  # a job written on one line
            return [Put(loc, {"job": work, "or": [new]})]
        match work.get("or"):
            case None:
                return [Put(ways, [new])]
            case dict():
                return [Wrap(ways), Append(ways, new)]
        return [Append(ways, new)]


@dataclass(frozen=True)
class SetOn(Edit):
    """Sets where a step is done. A path that ends in `where` or `keeps` means that value; any other path, the `where`
    of its part. Refused if nothing would change."""

    loc: Loc
    text: str

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        direct = bool(self.loc) and self.loc[-1] in ("where", "keeps")
        part, said = written(data, self.loc[:-1] if direct else self.loc)
        if not part or not isinstance(said, dict):
            return CannotEdit(words.EDIT_NO_STEP)
        key = str(self.loc[-1]) if direct else "where"
        if said.get(key) == self.text:
            return CannotEdit(words.edit_same_place(self.text))
        return [Put((*part, key), self.text)]


@dataclass(frozen=True)
class DropDay(Edit):
    """Removes `day`, `not before` and `not after` from the step or job at a path, or only the one that the path ends
    in. Refused if there is none."""

    loc: Loc

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        named = bool(self.loc) and self.loc[-1] in _OF_ITS_TIME
        part, said = written(data, self.loc[:-1] if named else self.loc)
        keys = self.loc[-1:] if named else _OF_ITS_TIME
        found = [key for key in keys if isinstance(said, dict) and key in said]
        return [Remove((*part, key)) for key in found] or CannotEdit(words.EDIT_NO_DAY)


@dataclass(frozen=True)
class DropDish(Edit):
    """Removes a dish from its course. Refused for the only dish of a course, and for a dish that other work or another
    dish refers to."""

    course: str
    dish: str

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        loc = _free_dish(file, self.course, self.dish)
        if isinstance(loc, CannotEdit):
            return loc
        dishes = file.plan.courses[int(loc[1])].dishes
        if len(dishes) == 1:
            return CannotEdit(words.edit_only_dish(self.dish, self.course))
        if instead := [each.dish for each in dishes if name_key(each.instead_of or "") == name_key(self.dish)]:
            return CannotEdit(words.edit_replaced(self.dish, instead))
        return [Remove(loc)]


@dataclass(frozen=True)
class BuyDish(Edit):
    """Buys a dish ready-made: one step to plate it replaces its steps, and its ingredients go. Refused if other work
    refers to its steps.

    The label on the bought food says how it keeps, and whether it must be heated.
    """

    course: str
    dish: str
    minutes: int

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        loc = _free_dish(file, self.course, self.dish)
        if isinstance(loc, CannotEdit):
            return loc
        said = written(data, loc)[1]
        step = {"step": words.bought_step(said["dish"]), "takes": f"{self.minutes} min"}
        made: list[Change] = [Put((*loc, "steps"), [step])]
        return [Remove((*loc, "ingredients")), *made] if "ingredients" in said else made


def _course(file: PlanFile, name: str) -> int | None:
    return next((n for n, course in enumerate(file.plan.courses) if name_key(course.course) == name_key(name)), None)


def _free_dish(file: PlanFile, course: str, dish: str) -> Loc | CannotEdit:
    """The path of a dish, if no work outside the dish refers to its steps; else the refusal."""
    number = _course(file, course)
    if number is None:
        return CannotEdit(words.edit_no_course(course))
    dishes = file.plan.courses[number].dishes
    found = [n for n, each in enumerate(dishes) if name_key(each.dish) == name_key(dish)]
    if len(found) != 1:
        return CannotEdit(words.edit_no_dish(dish, course))
    loc: Loc = ("courses", number, "dishes", found[0])
    waiting = _naming_from_outside(file, loc)
    return CannotEdit(words.edit_named_elsewhere(dish, waiting)) if waiting else loc


def _naming_from_outside(file: PlanFile, loc: Loc) -> list[str]:
    """Names of steps and jobs outside a dish whose `after` or `before` refers to one of its steps."""
    nodes = {id_: task.node for id_, task in file.filled.tasks.items()}
    names = Names(Linked(nodes))
    return [node.name for node in nodes.values() if not _within(node, loc) and _names_one_of(node, loc, names)]


def _within(node: Node, loc: Loc) -> bool:
    return node.loc[: len(loc)] == loc


def _names_one_of(node: Node, loc: Loc, names: Names) -> bool:
    refs = [*(node.work.after or []), *(node.work.before or [])] if node.work else []
    found = [names.find(ref.step, node.dish, node.loc) for ref in refs]
    return any(isinstance(other, Node) and _within(other, loc) for other in found)
