"""What a change would cost before it is made: two forecasts → lines. Pure; all lines are safe for a terminal."""

from dataclasses import dataclass
from datetime import timedelta

from rich.cells import cell_len

from board.base.late import minutes_late
from board.base.plain import one_line
from board.evening.company import away_by_forecast
from board.evening.forecast import CourseForecast, Forecast
from board.sheet.run_sheet import RunSheet, Slot
from board.view import words
from board.view.board import Viewer

MINUTE = timedelta(minutes=1)
COMPANY_MINUTES = 5  # less than this is not worth a line
PAST, COURSE, COMPANY = range(3)  # ranks: the lowest stay if there is little room


@dataclass(frozen=True, slots=True)
class Costs:
    """Lines, each with its rank. If there is too little room, the lowest ranks stay."""

    ranked: tuple[tuple[int, str], ...]

    def lines(self, room: int) -> tuple[str, ...]:
        """At most `room` lines, but at least one; the last says how many were left out."""
        if not self.ranked:
            return (words.COSTS_NOTHING,)
        if len(self.ranked) <= room:
            return tuple(line for _, line in self.ranked)
        kept = sorted(range(len(self.ranked)), key=lambda n: (self.ranked[n][0], n))[: max(1, room - 1)]
        shown = [self.ranked[n][1] for n in sorted(kept)]
        return (*shown, words.costs_more(len(self.ranked) - len(kept)))

    def strip(self, width: int) -> str:
        """As many lines as fit side by side in `width` cells; at least one, cut if it is too long."""
        for room in range(len(self.ranked), 1, -1):
            if cell_len(line := words.costs_beside(self.lines(room))) <= width:
                return line
        return one_line(words.costs_beside(self.lines(1)), width)


def costs(viewer: Viewer, before: Forecast, after: Forecast) -> Costs:
    """What moves or breaks: courses that move, results that would stand further past their limits, and the change in
    the time with the guests. Both forecasts must be of the viewer's sheet."""
    changes = _courses(viewer, before, after), _past(viewer, before, after), _company(viewer.sheet, before, after)
    return Costs(tuple(line for found in changes for line in found))


def _courses(viewer: Viewer, before: Forecast, after: Forecast) -> list[tuple[int, str]]:
    found = []
    for old, new in zip(before.courses, after.courses, strict=True):
        name = one_line(new.name, 24)
        if new.is_left_out and not old.is_left_out:
            found.append((COURSE, words.course_dropped(name)))
        elif new.is_ahead and abs(new.served - old.served) >= MINUTE / 2:
            was, out = (viewer.clock(each.served, after.now) for each in (old, new))
            if was != out:
                sooner = was if new.served < old.served else ""
                found.append((COURSE, words.cost_course(name, out, _late(new), sooner)))
    return found


def _late(course: CourseForecast) -> int:
    """Whole minutes; no less than none."""
    return max(0, minutes_late(course.served, course.wanted))


def _past(viewer: Viewer, before: Forecast, after: Forecast) -> list[tuple[int, str]]:
    """Results that would stand longer and past their limits, the furthest first."""
    found = []
    for slot in viewer.sheet.slots:
        if slot.keeping is None or slot.id in after.left_out:
            continue
        stood, will_stand = stands(slot, before), stands(slot, after)
        limit = slot.keeping.minutes
        if will_stand > max(stood, limit):
            found.append((limit - will_stand, words.cost_stands(one_line(slot.name, 40), will_stand, limit)))
    return [(PAST, line) for _, line in sorted(found)]


def stands(slot: Slot, forecast: Forecast) -> int:
    """Minutes from a slot's end until its last successor starts; 0 if it has none."""
    takers = [forecast.slots[o].start for o in slot.then if o in forecast.slots and o not in forecast.left_out]
    return max(0, round((max(takers) - forecast.slots[slot.id].end) / MINUTE)) if takers else 0


def _company(sheet: RunSheet, before: Forecast, after: Forecast) -> list[tuple[int, str]]:
    more = sum(away_by_forecast(sheet, after).values()) - sum(away_by_forecast(sheet, before).values())
    return [(COMPANY, words.cost_company(more))] if abs(more) >= COMPANY_MINUTES else []
