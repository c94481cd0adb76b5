"""Whether hands are available: nobody in two places, nobody out of hours, days and wishes kept.

Part of `validate`; derived from the plan alone. All moments are aware datetimes in UTC.
"""

from collections.abc import Iterable, Iterator
from datetime import datetime, timedelta
from itertools import combinations
from zoneinfo import ZoneInfo

from board.base.words import day_and_clock
from board.plan.model.model import Plan
from board.plan.phrases.stations import Keep
from board.plan.phrases.when import Day, Moment, Span, instant, parse_day, stretch
from board.plan.resolve.absences import absences
from board.plan.resolve.assume import Task
from board.sheet.run_sheet import Attended, Slot

Stretch = tuple[datetime, datetime]
DAY_ENDS = "05:00"  # the next morning; ours


def nobody_is_in_two_places(plan: Plan, slots: Iterable[Slot]) -> Iterator[str]:
    """A sentence for every two stretches of one person that run at the same time."""
    zone = ZoneInfo(plan.zone)
    parts: dict[str, list[tuple[Attended, Slot]]] = {}
    for slot in slots:
        for part in slot.attended:
            parts.setdefault(part.who, []).append((part, slot))
    for who, of_one in parts.items():
        for (one, first), (other, second) in combinations(of_one, 2):
            if one.start < other.end and other.start < one.end:
                at = day_and_clock(max(one.start, other.start).astimezone(zone))
                yield f"{who} has hands on {first.name} and on {second.name} at {at}"


def everybody_walks_to_the_table(plan: Plan, slots: Iterable[Slot]) -> Iterator[str]:
    """A sentence for each stretch begun before its person can have walked there from another, or back."""
    walk, zone = timedelta(minutes=plan.kitchen.to_the_table), ZoneInfo(plan.zone)
    of_one: dict[str, list[tuple[Attended, Slot]]] = {}
    for slot in slots:
        for part in slot.attended:
            of_one.setdefault(part.who, []).append((part, slot))
    for who, parts in of_one.items():
        in_order = sorted(parts, key=lambda each: (each[0].start, each[0].end))
        for (one, first), (other, second) in combinations(in_order, 2):
            across = (first.lane == "front-of-house") != (second.lane == "front-of-house")
            if across and one.end <= other.start < one.end + walk:
                gap = int((other.start - one.end).total_seconds() // 60)
                at = day_and_clock(other.start.astimezone(zone))
                yield (
                    f"{who} has {gap} min from {first.name} to {second.name} at {at}, "
                    f"and needs {plan.kitchen.to_the_table} min to the table or back"
                )


def out_of_hours(plan: Plan, task: Task, slot: Slot) -> Iterator[str]:
    """A sentence for each break of hours, days or wishes by a slot; any of them may be given up."""
    zone = ZoneInfo(plan.zone)
    for part in slot.attended:
        if part.who in plan.hands and not _inside(part.start, part.end, _free(plan, part.who)):
            yield f"{slot.name} needs {part.who} at {_from_to(part.start, part.end, zone)}, out of hours"
    is_off = any(use.off for use in slot.uses)  # a switched-off oven may stand by itself
    is_lit = slot.lane in ("oven", "stovetop") or any(use.what == "rings" for use in slot.uses)
    if is_lit and not is_off and not _inside(slot.start, slot.end, _somebody_home(plan)):
        yield f"{slot.name} is hot at {_from_to(slot.start, slot.end, zone)}, when nobody is at home"
    work = task.work
    if work is None:
        return
    if work.day is not None and not _inside(slot.start, slot.end, [_day(work.day, plan)]):
        yield f"{slot.name} at {_from_to(slot.start, slot.end, zone)} is not on its day"
    if work.not_before is not None and slot.start < _at(work.not_before, plan):
        yield f"{slot.name} starts at {day_and_clock(slot.start.astimezone(zone))}, earlier than it may"
    if work.not_after is not None and slot.end > _at(work.not_after, plan):
        yield f"{slot.name} ends at {day_and_clock(slot.end.astimezone(zone))}, later than it may"


def kept_hot_with_nobody_home(plan: Plan, keeps: Keep, slot: Slot, until: datetime) -> Iterator[str]:
    """A sentence where what a slot made is kept hot, up to a moment, while nobody is at home."""
    on = keeps.where
    lit = on.place in ("oven", "stovetop", "hot") or on.rings is not None
    if lit and not on.off and slot.end < until and not _inside(slot.end, until, _somebody_home(plan)):
        zone = ZoneInfo(plan.zone)
        yield f"what {slot.name} made is kept hot at {_from_to(slot.end, until, zone)}, when nobody is at home"


def heats_with_nobody_home(plan: Plan, slot: Slot) -> Iterator[str]:
    """A sentence where an oven heats or cools while nobody is at home."""
    if slot.end > slot.start and not _inside(slot.start, slot.end, _somebody_home(plan)):
        yield f"{slot.name} at {_from_to(slot.start, slot.end, ZoneInfo(plan.zone))}, when nobody is at home"


def _from_to(start: datetime, end: datetime, zone: ZoneInfo) -> str:
    return f"{day_and_clock(start.astimezone(zone))} to {day_and_clock(end.astimezone(zone))}"


def _inside(start: datetime, end: datetime, stretches: list[Stretch]) -> bool:
    return any(first <= start and end <= last for first, last in stretches)


def _hours(plan: Plan, who: str) -> list[Stretch]:
    zone = ZoneInfo(plan.zone)
    return [
        stretch(Day.model_validate(parse_day(words)).on(plan.date), span, zone)
        for words, spans in plan.hands[who].hours.items()
        for span in spans
    ]


def _out_shopping(plan: Plan, who: str) -> list[Stretch]:
    """The host does the shopping; if nobody is called host, the first person does."""
    if who != ("host" if "host" in plan.hands else next(iter(plan.hands))):
        return []
    zone = ZoneInfo(plan.zone)
    return [
        stretch(Day.model_validate(parse_day(words)).on(plan.date), span, zone)
        for words, spans in plan.shopping.items()
        for span in spans
    ]


def _somebody_home(plan: Plan) -> list[Stretch]:
    return _merged(
        home for who in plan.hands for home in _all_without(_merged(_hours(plan, who)), _out_shopping(plan, who))
    )


def _free(plan: Plan, who: str) -> list[Stretch]:
    away = [(each.start, each.end) for each in absences(plan, who)]
    return _all_without(_merged([*_hours(plan, who), *_out_shopping(plan, who)]), away)


def _all_without(stretches: list[Stretch], gone: Iterable[Stretch]) -> list[Stretch]:
    for each in gone:
        stretches = [piece for whole in stretches for piece in _without(whole, each)]
    return stretches


def _merged(stretches: Iterable[Stretch]) -> list[Stretch]:
    """Those that touch or overlap become one."""
    merged: list[Stretch] = []
    for start, end in sorted(stretches):
        if merged and start <= merged[-1][1]:
            merged[-1] = (merged[-1][0], max(merged[-1][1], end))
        else:
            merged.append((start, end))
    return merged


def _without(whole: Stretch, gone: Stretch) -> list[Stretch]:
    """What is left of a stretch before and after another."""
    if gone[1] <= whole[0] or whole[1] <= gone[0]:
        return [whole]
    pieces = [(whole[0], gone[0]), (gone[1], whole[1])]
    return [(start, end) for start, end in pieces if start < end]


def _day(day: Day, plan: Plan) -> Stretch:
    zone = ZoneInfo(plan.zone)
    date = day.on(plan.date)
    _, end = stretch(date, Span(start=DAY_ENDS, end=DAY_ENDS), zone)  # from an hour to the same hour: a whole day
    return instant(date, "00:00", zone), end


def _at(moment: Moment, plan: Plan) -> datetime:
    return instant(moment.day.on(plan.date), moment.clock, ZoneInfo(plan.zone))
