"""Changes to a plan in a host's terms. Each is applied to the text of a plan that was already read, and returns the new
text, itself a readable plan, or the reason for refusing. Pure; raises nothing."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from board.plan.edit.edit import Edit
from board.plan.edit.edit_dishes import AddWay, BuyDish, DropDay, DropDish, PushCourse, SetArrival, SetGap, SetOn
from board.plan.edit.edit_guesses import SettleStep
from board.plan.edit.edit_hands import AddHelper, MoreHours, MoveAway, SetWho, StretchHours
from board.plan.edit.edit_kitchen import AddOven, MoreOfTool, MoreRings, MoreRoom
from board.plan.edit.edit_lessons import AddHistory, AddNotes, SetOvenTime, SetTakes, Together
from board.plan.edit.edit_time import MoveWork
from board.plan.edit.save import CannotEdit, data_of, data_with
from board.plan.load import PlanFile, read_data

__all__ = [
    "AddHelper", "AddHistory", "AddNotes", "AddOven", "AddWay", "BuyDish", "CannotEdit", "DropDay", "DropDish",
    "Edit", "MoreHours", "MoreOfTool", "MoreRings", "MoreRoom", "MoveAway", "MoveWork", "PushCourse", "SetArrival",
    "SetGap",
    "SetOn", "SetOvenTime", "SetTakes", "SetWho",
    "SettleStep", "StretchHours", "Together", "apply_all", "try_all", "untried",
]  # fmt: skip


def apply_all(text: str, file: PlanFile, edits: Iterable[Edit]) -> tuple[str, PlanFile] | CannotEdit:
    """Makes the edits one after another, each on the result of the one before. Returns the new text and its plan, or
    the first refusal."""
    for edit in edits:
        made = edit.made(text, file)
        if isinstance(made, CannotEdit):
            return made
        text, file = made
    return text, file


@dataclass(frozen=True)
class Tried:
    """What a plan's YAML would hold after some edits, as plain data, and the plan it would be."""

    data: Any
    file: PlanFile


def untried(text: str, file: PlanFile) -> Tried:
    """The plan in `text` before any edit."""
    return Tried(data_of(text), file)


def try_all(before: Tried, edits: Iterable[Edit]) -> Tried | None:
    """The same as `apply_all` without a text, many times as fast; None where an edit is refused."""
    for edit in edits:
        changes = edit.changes(before.file, before.data)
        data = None if isinstance(changes, CannotEdit) else data_with(before.data, changes)
        file = read_data(data, before.file) if data is not None else None
        if file is None:
            return None
        before = Tried(data, file)
    return before
