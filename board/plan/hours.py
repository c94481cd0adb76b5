"""When each pair of hands has hours: the plan's words → stretches in UTC."""

from datetime import date, datetime
from zoneinfo import ZoneInfo

from board.plan.model import Plan
from board.plan.when import Day, parse_day, stretch


def day_of(plan: Plan, word: str) -> date:
    """The date a key of `hours` means."""
    return Day.model_validate(parse_day(word)).on(plan.date)


def hours_of(plan: Plan, name: str) -> list[tuple[datetime, datetime]]:
    """All stretches of one pair of hands, in order; they may touch or overlap."""
    zone = ZoneInfo(plan.zone)
    return sorted(
        stretch(day_of(plan, word), span, zone)
        for word, stretches in plan.hands[name].hours.items()
        for span in stretches
    )
