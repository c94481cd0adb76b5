"""Changes to a plan in a host's terms. Each is applied to the text of a plan already read, and gives the new text,
which is a plan that reads; or the reason why not. Pure; raises nothing."""

from collections.abc import Iterable

from board.plan.edit.edit import Edit
from board.plan.edit.edit_dishes import AddWay, BuyDish, DropDay, DropDish, PushCourse, SetOn
from board.plan.edit.edit_hands import AddHelper, EarlierHours, MoreHours
from board.plan.edit.edit_kitchen import AddOven, MoreOfTool, MoreRings, MoreRoom
from board.plan.edit.edit_lessons import AddHistory, AddNotes, SetOvenTime, SetTakes, Together
from board.plan.edit.save import CannotEdit
from board.plan.load import PlanFile

__all__ = [
    "AddHelper", "AddHistory", "AddNotes", "AddOven", "AddWay", "BuyDish", "CannotEdit", "DropDay", "DropDish",
    "EarlierHours", "Edit", "MoreHours", "MoreOfTool", "MoreRings", "MoreRoom", "PushCourse", "SetOn",
    "SetOvenTime", "SetTakes", "Together", "apply_all",
]  # fmt: skip


def apply_all(text: str, file: PlanFile, edits: Iterable[Edit]) -> tuple[str, PlanFile] | CannotEdit:
    """The text with all edits made one after another, each to what the one before left, and its plan; or the first
    refusal."""
    for edit in edits:
        made = edit.made(text, file)
        if isinstance(made, CannotEdit):
            return made
        text, file = made
    return text, file
