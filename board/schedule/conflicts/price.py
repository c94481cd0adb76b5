"""What a change brings and what it costs, read off the run sheets without it and with it. Pure."""

from collections.abc import Iterator
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.schedule.conflicts import words
from board.sheet import quiet, said
from board.sheet.company import away_minutes
from board.sheet.run_sheet import CourseSlot, RunSheet

MINUTE, LONGEST_STALE = timedelta(minutes=1), 120  # minutes; what stands longer is meant to keep
ROUND = timedelta(minutes=5)  # a host's clock goes by fives


def brings(before: RunSheet, after: RunSheet) -> str:
    """Courses nearer to when they were wanted, more company, and what is still given up."""
    zone = ZoneInfo(before.zone)
    pieces = [_moved(old, new, zone) for old, new in _pairs(before, after) if _nearer(old, new)]
    less = away_minutes(after) - away_minutes(before)
    if less < 0 and not _open("company", before, after):
        pieces.append(words.away(less))
    first = said.what(after, after.given_up[0].what) if after.given_up else ""
    return "; ".join([*pieces, words.remains(len(after.given_up), first)])


def costs(before: RunSheet, after: RunSheet, stale: int) -> str:
    """Courses at other times than they were wanted at, less quiet and company, work ahead; empty if nothing. `stale`:
    minutes by which hot food stands longer past its best."""
    zone = ZoneInfo(before.zone)
    pieces = [
        words.after_wanted(new.name, round((new.served - old.wanted) / MINUTE))
        if new.wanted > old.wanted
        else _moved(old, new, zone)
        for old, new in _pairs(before, after)
        if new.wanted > old.wanted or (new.served != old.served and not _nearer(old, new))
    ]
    pieces += _sooner_up(before, after)
    more = more_away(before, after)
    if more:
        pieces.append(words.away(more, at_most=_open("company", after)))
    if 0 < stale <= LONGEST_STALE:
        pieces.append(words.stale(stale))
    pieces += _ahead(before, after, zone)
    return words.costs(pieces) if pieces else ""


def more_away(before: RunSheet, after: RunSheet) -> int:
    """Minutes by which those who sit are longer in the kitchen while the guests are there."""
    return max(0, away_minutes(after) - away_minutes(before))


def _pairs(before: RunSheet, after: RunSheet) -> list[tuple[CourseSlot, CourseSlot]]:
    """Each course without the change and with it."""
    known = {course.name: course for course in before.courses}
    return [(known[new.name], new) for new in after.courses if new.name in known]


def later_than_anyway(before: RunSheet, after: RunSheet) -> int:
    """Minutes by which courses that are wanted later go out later than they would anyway, or may by their slip."""
    total = timedelta()
    for old, new in _pairs(before, after):
        if new.wanted > old.wanted:
            anyway = max(_rounded(old), old.wanted + timedelta(minutes=old.may_slip))
            total += max(timedelta(), new.served - anyway)
    return round(total / MINUTE)


def _rounded(course: CourseSlot) -> datetime:
    return course.served + (course.wanted - course.served) % ROUND


def _nearer(old: CourseSlot, new: CourseSlot) -> bool:
    return abs(new.served - old.wanted) < abs(old.served - old.wanted)


def _moved(old: CourseSlot, new: CourseSlot, zone: ZoneInfo) -> str:
    was, now = (shared.clock(course.served.astimezone(zone)) for course in (old, new))
    return words.course_moved(new.name, was, now)


def _open(aim: str, *sheets: RunSheet) -> bool:
    """Whether an aim is not proved on one of the sheets."""
    return any(each.aim == aim for sheet in sheets for each in sheet.still_open)


def _sooner_up(before: RunSheet, after: RunSheet) -> Iterator[str]:
    """Courses over which those who eat get up sooner than without the change."""
    known = {each.course.name: each for each in quiet.as_planned(before)}
    for each in quiet.as_planned(after):
        old = known.get(each.course.name)
        if old is not None and each.missing > old.missing:
            yield words.sooner_up(each.course.name, each.course.stretch - each.missing)


def _ahead(before: RunSheet, after: RunSheet, zone: ZoneInfo) -> Iterator[str]:
    """Work that is done on an earlier day than before, by day."""
    slots, found = before.by_id(), dict[str, list[str]]()
    for slot in after.slots:
        old = slots.get(slot.id)
        if old is None or not slot.attended:
            continue
        was, now = (each.start.astimezone(zone) for each in (old, slot))
        if now.date() < was.date():
            found.setdefault(now.strftime("%a"), []).append(slot.name)
    for day, names in found.items():
        yield words.done_ahead(day, names)
