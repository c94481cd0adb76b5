"""What another time for a step would do to the timetable, said before it is taken. Pure."""

from datetime import datetime
from zoneinfo import ZoneInfo

from board.base.plain import one_line
from board.schedule.conflicts import price
from board.sheet import said
from board.sheet.changed import changed
from board.sheet.run_sheet import RunSheet, Slot
from board.view import words

MOST_MOVED = 3  # told by name


def told(before: RunSheet, after: RunSheet | None, slot: str, stop: str = "") -> tuple[str, ...]:
    """Line by line: the step itself, what goes out at another time or is lost, what is given up anew, what else moves.
    `after` None: there is no timetable with it; `stop`: because of that."""
    if after is None:
        return (one_line(stop) or words.TRIED_NONE,)
    zone, old, new = ZoneInfo(before.zone), before.by_id().get(slot), after.by_id().get(slot)
    moved = [pair for pair in changed(before, after).moved if pair[1].id != slot and pair[0].start != pair[1].start]
    known = {said.what(before, each.what) for each in before.given_up}
    lost = [what for each in after.given_up if (what := said.what(after, each.what)) not in known]
    own = () if old is None or new is None else (words.tried_moves(*_times(old, new, zone)),)
    costs = price.costs(before, after, 0)
    others = [words.tried_moves(*_times(*pair, zone)) for pair in moved[:MOST_MOVED]]
    lines = (
        *own,
        *((costs,) if costs else ()),
        *((words.tried_gives_up(lost),) if lost else ()),
        *((words.tried_others(others, len(moved) - len(others)),) if moved else ()),
        *((words.TRIED_COSTS_NOTHING,) if not costs and not lost and not moved else ()),
        *(() if after.proved else (words.TRIED_UNPROVED,)),
    )
    return tuple(map(one_line, lines))


def _times(old: Slot, new: Slot, zone: ZoneInfo) -> tuple[str, datetime, datetime]:
    return new.name, old.start.astimezone(zone), new.start.astimezone(zone)
