"""Each dish's clock on a sheet: how long it stands neither hot nor cold enough before it is eaten, and when its limit
is reached. Pure; needs only the sheet."""

from dataclasses import dataclass
from datetime import datetime, timedelta

from board.sheet.exposure import Exposed, Exposure, planned
from board.sheet.run_sheet import CourseSlot, RunSheet, SpoilClock
from board.sheet.sittings import eaten_by


@dataclass(frozen=True, slots=True)
class DishClock:
    """`stretches`: all that count until it is eaten, oldest first; `out_minutes`: their sum. `runs_out`: when the limit
    is reached if leftovers are put away too late or not at all; None if they are in time."""

    clock: SpoilClock
    eaten: datetime
    stretches: tuple[Exposed, ...]
    out_minutes: int
    runs_out: datetime | None

    @property
    def too_long(self) -> bool:
        """Whether it passes its limit before it is eaten."""
        return self.out_minutes > self.clock.limit_minutes


def dish_clocks(sheet: RunSheet) -> list[DishClock]:
    """A clock for every dish whose food spoils, as the sheet has it."""
    courses = {course.name: course for course in sheet.courses}
    return [_clock(sheet, courses[each.clock.course], each) for each in planned(sheet)]


def _clock(sheet: RunSheet, course: CourseSlot, exposure: Exposure) -> DishClock:
    eaten = eaten_by(sheet, course.name, course.served)
    until = tuple(
        Exposed(each.start, min(each.end, eaten), each.slot, each.what)
        for each in exposure.stretches
        if each.start < eaten
    )
    runs_out = exposure.runs_out()
    if runs_out is None and exposure.clock.away is None:
        cleared = exposure.stretches[-1].end if exposure.stretches else course.served
        runs_out = cleared + timedelta(minutes=exposure.clock.limit_minutes - exposure.minutes())
    return DishClock(exposure.clock, eaten, until, round(exposure.minutes(eaten)), runs_out)
