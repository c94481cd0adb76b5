"""A run sheet as a calendar file, RFC 5545: shopping, making ahead and the day itself, each with a reminder.

Times are in UTC, so no zone rules are needed: a calendar shows them by its own clock, correctly on both sides of a
clock change. There is no METHOD: the file is to be imported, and asks nobody for an answer. An event's UID comes from
the plan's event and what it stands for, never from its date or times, so importing the file again moves existing
events, also by a week. What stood in the file before and is no more goes with it as cancelled (3.8.1.11). Earlier
exports are not known here, so SEQUENCE is the seconds since 2026 when the file is written: it rises with every file,
and a calendar that takes only newer ones takes this one.
"""

import uuid
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, time, timedelta
from zoneinfo import ZoneInfo

from icalendar import Alarm, Calendar, Event, vText

from board.base import words as shared
from board.base.plain import one_line
from board.output import words
from board.sheet.blocks import Piece, day_of, over, pieces, stretches
from board.sheet.run_sheet import RunSheet, Slot

PAUSE_MINUTES = 30  # a shorter one parts no event: nobody can use it for anything else
REMINDER = timedelta(minutes=15)
EVENING_BEFORE = time(19, 0)
_COUNTED_FROM = datetime(2026, 1, 1, tzinfo=UTC)
_ARRIVE = "arrive"
_OURS = uuid.UUID("0f0c3b1e-6c0e-5d53-9a39-8d1c0d0a7b52")


class _Text(vText):
    r"""TEXT as RFC 5545, 3.3.11 has it. The library's own takes a backslash before a capital N for a line break."""

    def to_ical(self) -> bytes:
        escaped = self.replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,").replace("\n", "\\n")
        return escaped.encode()


@dataclass(frozen=True)
class _Entry:
    """One event. `key`: what it stands for, whenever it is. `end` None: a moment."""

    key: str
    summary: str
    start: datetime
    end: datetime | None
    lines: tuple[str, ...] = ()
    soon: bool = True
    day_before: bool = False


def calendar(sheet: RunSheet, stamp: datetime, before: bytes = b"") -> bytes:
    """The file. `stamp`: when it is written, aware. `before`: what it held until now, whose events are cancelled if
    they are of this plan and no more."""
    made = Calendar()
    made.add("prodid", _Text(words.CALENDAR_MAKER))
    made.add("version", "2.0")
    entries = sorted(_entries(sheet), key=lambda each: (each.start, each.key))
    for entry in entries:
        made.add_component(_event(sheet, entry, stamp))
    for gone in _gone(sheet, before, {_uid(sheet, entry.key) for entry in entries}):
        made.add_component(_cancelled(gone, stamp))
    return bytes(made.to_ical())


def _uid(sheet: RunSheet, key: str) -> str:
    return str(uuid.uuid5(_OURS, "\n".join((sheet.plan, key))))


def _gone(sheet: RunSheet, before: bytes, still: set[str]) -> list[Event]:
    """Events of an earlier file of this plan that are in it no more; none of a file that cannot be read."""
    try:
        events = list(Calendar.from_ical(before).walk("VEVENT")) if before else []
    except ValueError:
        return []
    if not any(each.get("uid") == _uid(sheet, _ARRIVE) for each in events):
        return []
    return [each for each in events if isinstance(each, Event) and each.get("uid") not in still]


def _cancelled(event: Event, stamp: datetime) -> Event:
    """The same event, cancelled; nothing rings for it."""
    made = Event()
    for name in ("uid", "dtstart", "dtend", "summary"):
        if name in event:
            made[name.upper()] = event[name]
    _stamped(made, stamp)
    made.add("status", "CANCELLED")
    made.add("transp", "TRANSPARENT")
    return made


def _stamped(event: Event, stamp: datetime) -> None:
    event.add("dtstamp", stamp.astimezone(UTC).replace(microsecond=0))
    event.add("sequence", max(0, int((stamp - _COUNTED_FROM).total_seconds())))


def is_calendar(data: bytes) -> bool:
    """Whether a file's bytes begin as a calendar does."""
    return data.removeprefix(b"\xef\xbb\xbf").lstrip()[:15].upper() == b"BEGIN:VCALENDAR"


def _entries(sheet: RunSheet) -> Iterator[_Entry]:
    event = one_line(sheet.plan)
    yield _Entry(_ARRIVE, words.calendar_arrive(event), sheet.arrive, None)
    yield from _courses(sheet, event)
    yield from _shopping(sheet, event)
    yield from _work(sheet, event)


def _courses(sheet: RunSheet, event: str) -> Iterator[_Entry]:
    slots = sheet.by_id()
    for course in sheet.courses:
        cleared = slots[course.clear].start if course.clear in slots else course.served
        dishes = dict.fromkeys(one_line(s.dish) for s in sheet.slots if s.course == course.name and s.dish)
        yield _Entry(
            f"course/{course.name}",
            words.calendar_course(event, one_line(course.name)),
            course.served,
            cleared if cleared > course.served else None,
            tuple(dishes),
            soon=False,  # the work before it has its own reminder
        )


def _is_shopping(slot: Slot) -> bool:
    return slot.kind in ("step", "job") and words.CALENDAR_SHOPPING.search(slot.name) is not None


def _shopping(sheet: RunSheet, event: str) -> Iterator[_Entry]:
    for slot in sheet.slots:
        if _is_shopping(slot):
            name = words.calendar_shopping(event, one_line(slot.name))
            yield _Entry(f"shopping/{slot.id}", name, slot.start, slot.end if slot.end > slot.start else None)


def _work(sheet: RunSheet, event: str) -> Iterator[_Entry]:
    """Each person's stretches of work, by day, with the dials they turn before and after it; the small hours after the
    event belong to its day."""
    zone = ZoneInfo(sheet.zone)
    day_itself = datetime.fromisoformat(sheet.date).date()
    told: set[int] = set()  # days whose first interval has its reminder the evening before
    work = pieces(sheet, [slot for slot in sheet.slots if not _is_shopping(slot) and slot.kind != "arrive"])
    found = sorted(stretches(work, sheet, PAUSE_MINUTES), key=lambda each: (each[0].part.start, each[0].part.who))
    counted: dict[tuple[str, int], int] = {}
    for stretch in found:
        start, end = stretch[0].part.start, max(map(over, stretch))
        who = stretch[0].part.who
        days = (day_itself - day_of(sheet, start)).days
        number = counted[who, days] = counted.get((who, days), 0) + 1
        summary = words.calendar_make_ahead if days else words.calendar_hands_on
        yield _Entry(
            f"work/{who}/{days}/{number}",
            summary(event, one_line(who)),
            start,
            end if end > start else None,
            (*(_line(own, zone) for own in _by_slot(stretch)), words.calendar_zone(sheet.zone)),
            day_before=days > 0 and days not in told,
        )
        told.add(days)


def _by_slot(stretch: list[Piece]) -> list[list[Piece]]:
    found: dict[str, list[Piece]] = {}
    for piece in stretch:
        found.setdefault(piece.slot.id, []).append(piece)
    return list(found.values())


def _line(own: list[Piece], zone: ZoneInfo) -> str:
    """From when to when it is worked on; only when, where that is a moment."""
    slot, start, end = own[0].slot, own[0].part.start.astimezone(zone), over(own[-1]).astimezone(zone)
    till = shared.clock(end) if end > start else ""
    return words.calendar_line(shared.clock(start), till, one_line(slot.name), shared.LANES[slot.lane])


def _event(sheet: RunSheet, entry: _Entry, stamp: datetime) -> Event:
    made = Event()
    made.add("uid", _Text(_uid(sheet, entry.key)))
    _stamped(made, stamp)
    made.add("dtstart", entry.start.astimezone(UTC))
    if entry.end is not None:
        made.add("dtend", entry.end.astimezone(UTC))
    made.add("summary", _Text(entry.summary))
    if entry.lines:
        made.add("description", _Text("\n".join(entry.lines)))
    zone = ZoneInfo(sheet.zone)
    if entry.day_before:
        local = entry.start.astimezone(zone)
        evening = datetime.combine(local.date() - timedelta(days=1), EVENING_BEFORE, tzinfo=zone)
        text = words.calendar_tomorrow(entry.summary, shared.clock(local))
        made.add_component(_alarm(evening.astimezone(UTC), text))
    if entry.soon:
        made.add_component(_alarm(-REMINDER, words.calendar_soon(entry.summary)))
    return made


def _alarm(trigger: datetime | timedelta, text: str) -> Alarm:
    """`trigger`: a moment, or how long before the start (below zero)."""
    made = Alarm()
    made.add("action", "DISPLAY")
    made.add("description", _Text(text))
    made.add("trigger", trigger, parameters={"VALUE": "DATE-TIME"} if isinstance(trigger, datetime) else {})
    return made
