"""What all named changes to a plan share: from a change in a host's terms to a text that is a valid plan."""

from abc import ABC, abstractmethod
from dataclasses import dataclass
from typing import Any

from board.base.plan_digest import digest_of
from board.plan.edit import words
from board.plan.edit.save import BYTE_ORDER_MARK, CannotEdit, Change, data_of, edit
from board.plan.load import PlanFile, read_plan
from board.plan.places import Loc


@dataclass(frozen=True)
class Edit(ABC):
    """A change in a host's terms. A path (`loc`) is a tuple of keys and list indices, counted from 0."""

    @abstractmethod
    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        """The changes to make in the text, worked out from the plan and from `data`, its YAML as plain data; or the
        reason for refusing."""

    def made(self, text: str, file: PlanFile) -> tuple[str, PlanFile] | CannotEdit:
        """The text of `file` with this change made, and the plan it then holds; or the reason for leaving it as it is.
        Raises nothing."""
        if file.digest not in (digest_of(text), digest_of(text.removeprefix(BYTE_ORDER_MARK))):
            return CannotEdit(words.EDIT_OTHER_TEXT)
        changes = self.changes(file, data_of(text))
        if isinstance(changes, CannotEdit):
            return changes
        new = edit(text, changes)
        if isinstance(new, CannotEdit):
            return new
        found = read_plan(new, file.places.name)
        return (new, found) if isinstance(found, PlanFile) else CannotEdit(words.edit_would_spoil(found[0].message))


def written(data: Any, loc: Loc) -> tuple[Loc, Any]:
    """The path of a part as the file writes it, and its data; None if nothing stands there.

    A plan reads `or: {…}` as `or: [{…}]`, so a path in the plan may have one index more than in the file.
    """
    way: list[str | int] = []
    for piece in loc:
        if isinstance(piece, int) and not isinstance(data, list):
            if piece == 0 and data is not None:
                continue
            return loc, None
        try:
            data = data[piece]
        except (KeyError, IndexError, TypeError):
            return loc, None
        way.append(piece)
    return tuple(way), data
