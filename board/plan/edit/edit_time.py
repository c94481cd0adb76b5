"""Another time for a piece of work, as the plan's own words for it: `not before`, `not after`."""

from dataclasses import dataclass
from datetime import date, datetime
from typing import Any

from board.plan.edit import words
from board.plan.edit.edit import Edit, written
from board.plan.edit.save import CannotEdit, Change, Put
from board.plan.load import PlanFile
from board.plan.phrases.to_phrase import moment_text
from board.plan.phrases.when import Moment, parse_moment
from board.plan.places import Loc


@dataclass(frozen=True)
class MoveWork(Edit):
    """Lets the step or job at a path begin at `start` or later; with `sooner`, end at `end` or sooner. Both by the
    clock of the event's place. What it says of the other end gives way as far as it must."""

    loc: Loc
    start: datetime
    end: datetime
    sooner: bool = False

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        loc, work = written(data, self.loc)
        ends = {"not before": self.start, "not after": self.end}
        mine, other = ("not after", "not before") if self.sooner else ("not before", "not after")
        event = file.plan.date
        if isinstance(work, str):  # a job in one line
            return [Put(loc, {"job": work, mine: moment_text(ends[mine], event)})]
        if not isinstance(work, dict):
            return CannotEdit(words.EDIT_NO_STEP)
        made: list[Change] = [Put((*loc, mine), moment_text(ends[mine], event))]
        there, now = _face(work.get(other), event), f"{ends[other]:%Y-%m-%d %H:%M}"
        if there and (there > now if self.sooner else there < now):
            made.append(Put((*loc, other), moment_text(ends[other], event)))
        return made


def _face(text: Any, event: date) -> str:
    """What calendar and clock show at a moment of a plan; empty for none."""
    try:
        found = Moment.model_validate(parse_moment(str(text)))
    except ValueError:
        return ""
    return f"{found.day.on(event):%Y-%m-%d} {found.clock}"
