"""What an edited plan changes in its evening, in lines for the host. Pure; safe for a terminal."""

from datetime import datetime

from board.base import words as shared
from board.base.plain import one_line
from board.sheet.changed import Changed
from board.sheet.run_sheet import Slot
from board.view import words
from board.view.board import Viewer

MOST_LINES = 12


def changed_lines(viewer: Viewer, changed: Changed, now: datetime) -> list[str]:
    """Steps added, removed and moved in time, in this order; at most `MOST_LINES` lines."""
    if not changed.usable:
        return [words.PLAN_UNUSABLE]

    def name(slot: Slot) -> str:
        return one_line(slot.name, 30)

    def times(slot: Slot) -> str:
        return shared.from_to(viewer.clock(slot.start, now), shared.clock(viewer.local(slot.end)))

    lines = [words.plan_added(name(slot), times(slot)) for slot in changed.added]
    lines += [words.plan_gone(name(slot)) for slot in changed.gone]
    lines += [words.plan_moved(name(new), times(old), times(new)) for old, new in changed.moved]
    if not lines:
        return [words.PLAN_SAME_TIMES]
    if len(lines) > MOST_LINES:
        lines = [*lines[: MOST_LINES - 1], words.plan_and_more(len(lines) - MOST_LINES + 1)]
    return lines
