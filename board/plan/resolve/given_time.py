"""The time work is given: its day, and what it may not be before or after → from when to when, in UTC."""

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

from board.plan.model.model import Plan
from board.plan.model.work import Work
from board.plan.phrases.when import Moment, instant
from board.plan.resolve.hours import Interval

ALWAYS = (datetime(1900, 1, 1, tzinfo=UTC), datetime(2300, 1, 1, tzinfo=UTC))
SMALL_HOURS = "05:00"  # a day of the kitchen lasts until then; ours


def given_time(plan: Plan, work: Work | None) -> Interval:
    """`ALWAYS` where it is given none. What it may not be before can lie behind what it may not be after."""
    first, last = ALWAYS
    if work is None:
        return first, last
    zone = ZoneInfo(plan.zone)

    def at(moment: Moment) -> datetime:
        return instant(moment.day.on(plan.date), moment.clock, zone)

    if work.day is not None:
        day = work.day.on(plan.date)
        first, last = instant(day, "00:00", zone), instant(day + timedelta(days=1), SMALL_HOURS, zone)
    if work.not_before is not None:
        first = max(first, at(work.not_before))
    if work.not_after is not None:
        last = min(last, at(work.not_after))
    return first, last
