"""Clock times, days and the plan's zone → instants in UTC. python-dateutil reads and moves the dates."""

import re
from datetime import UTC, date, datetime, time
from typing import Annotated, Any, Literal
from zoneinfo import ZoneInfo, available_timezones

from dateutil import parser, tz
from dateutil.relativedelta import FR, MO, SA, SU, TH, TU, WE, relativedelta
from pydantic import AfterValidator, BaseModel, ConfigDict, Field

from board.plan.phrases.phrase import Phrase, near

_WEEKDAY_NAMES = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
_WEEKDAYS = {"mon": MO, "tue": TU, "wed": WE, "thu": TH, "fri": FR, "sat": SA, "sun": SU}
_CLOCK = re.compile(r"(\d{1,2})[:.h](\d{2})(?:\s*([ap])\.?m\.?)?|(\d{1,2})\s*([ap])\.?m\.?", re.I | re.A)
CLOCK_PATTERN = (
    r"^\s*(([01]?\d|2[0-3])[:.hH][0-5]\d|(0?[1-9]|1[0-2])([:.hH][0-5]\d)?\s*[aApP]\.?[mM]\.?"
    r"|(12 )?[nN]oon|[mM]idday)\s*$"
)
DATE_PATTERN = r"^\s*\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])\s*$"
_DAYS_BEFORE = re.compile(r"(?:the\s+|a\s+)?(?:(\d{1,4})\s+)?days?\s+before")
_DATE = re.compile(r"\d{4}-\d{2}-\d{2}", re.A)
FIRST_YEAR, LAST_YEAR = 1970, 2200
MOST_DAYS_BEFORE = 366


def parse_clock(text: str) -> str:
    """`19:30`, `19.30`, `7:30 pm`, `7 pm`, `noon` → `HH:MM` in 24 hours. Raises ValueError."""
    if text.strip().lower() in ("noon", "midday", "12 noon"):
        return "12:00"
    match = _CLOCK.fullmatch(text.strip())
    if match is None:
        figures = re.fullmatch(r"([01]?\d|2[0-3])([0-5]\d)", text.strip(), re.A)
        meant = f"{figures[1]}:{figures[2]}" if figures else "19:30 or 7:30 pm"
        raise ValueError(f"{text!r} is not a time of day; write for example {meant}")
    if (match[3] or match[5]) and not 1 <= int(match[1] or match[4]) <= 12:
        raise ValueError(f"{text!r} is not a time of day; with am or pm the hour runs from 1 to 12")
    try:
        colon = re.sub(r"(?<=\d)[.h](?=\d)", ":", text, flags=re.I)
        return parser.parse(colon.replace(".", "")).strftime("%H:%M")
    except (ValueError, OverflowError):
        raise ValueError(f"{text!r} is not a time of day; hours run to 23 and minutes to 59") from None


def parse_date(text: str) -> date:
    """ISO 8601 only: countries differ in the order of day and month. Raises ValueError."""
    if not _DATE.fullmatch(text.strip()):
        raise ValueError(f"{text!r} is not a date; write year-month-day, for example 2026-11-28")
    try:
        day = parser.isoparse(text.strip()).date()
    except ValueError:
        raise ValueError(f"{text!r} is not a day of the calendar; write for example 2026-11-28") from None
    if not FIRST_YEAR <= day.year <= LAST_YEAR:
        raise ValueError(f"{text!r} lies too far off; write a year from {FIRST_YEAR} to {LAST_YEAR}")
    return day


CalendarDay = date  # because Day has a field called date


class Day(BaseModel):
    """A day relative to the event: days before, the last such weekday, or a date."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    days_before: Annotated[int, Field(ge=0, le=MOST_DAYS_BEFORE)] | None = None
    weekday: Literal["mon", "tue", "wed", "thu", "fri", "sat", "sun"] | None = None
    date: Annotated[CalendarDay, Phrase(parse_date, "2026-11-27", DATE_PATTERN, numbers=False)] | None = None

    def on(self, event: CalendarDay) -> CalendarDay:
        """The calendar day, for an event on this date."""
        if self.date is not None:
            return self.date
        if self.weekday is not None:
            return event + relativedelta(weekday=_WEEKDAYS[self.weekday](-1))
        return event + relativedelta(days=-(self.days_before or 0))


def parse_day(text: str) -> dict[str, object]:
    """`on the day`, `day before`, `2 days before`, `fri`, `2026-11-27`. Raises ValueError."""
    folded = " ".join(text.lower().split())
    if folded in ("on the day", "the day", "day of"):
        return {"days_before": 0}
    if match := _DAYS_BEFORE.fullmatch(folded):
        days = int(match[1] or 1)
        if days > MOST_DAYS_BEFORE:
            raise ValueError(f"{text!r} is more than a year before; check the figure")
        return {"days_before": days}
    if folded in _WEEKDAYS or folded in _WEEKDAY_NAMES:
        return {"weekday": folded[:3]}
    if re.fullmatch(r"[\d-]+", folded):
        return {"date": parse_date(folded)}
    guess = near(folded, ["on the day", "day before", "2 days before", *_WEEKDAYS, *_WEEKDAY_NAMES])
    raise ValueError(f"{text!r} is not a day.{guess}; write on the day, day before, 2 days before, fri or a date")


def _is_day(text: str) -> str:
    parse_day(text)
    return text


DayKey = Annotated[str, AfterValidator(_is_day)]


class Moment(BaseModel):
    """A day and a clock time; no day means the day of the event."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    day: Annotated[Day, Phrase(parse_day, "day before")] = Day(days_before=0)
    clock: Annotated[str, Phrase(parse_clock, "19:30", CLOCK_PATTERN)]


_TAIL_CLOCK = r"(\d{1,2}(?:[:.h]\d{2})?(?:\s*[ap]\.?m\.?)?)"


def parse_moment(text: str) -> dict[str, object]:
    """`17:40`, `sat 17:40`, `day before, 9:00`. Raises ValueError."""
    match = re.fullmatch(rf"(.*?)[\s,]*{_TAIL_CLOCK}", text.strip(), re.IGNORECASE | re.DOTALL)
    if match is None:
        raise ValueError(f"{text!r} is not a moment; write for example sat 17:40")
    day = {"day": parse_day(match[1])} if match[1] else {}
    return {**day, "clock": parse_clock(match[2])}


class Span(BaseModel):
    """From one clock time to another; an end at or before the start is on the next day."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    start: Annotated[str, Phrase(parse_clock, "17:30", CLOCK_PATTERN)]
    end: Annotated[str, Phrase(parse_clock, "22:00", CLOCK_PATTERN)]


def parse_span(text: str) -> dict[str, object]:
    """`17:30 - 22:00` or `5:30 pm to 10 pm`. Raises ValueError."""
    pieces = re.split(r"\s*(?:–|-|\bto\b)\s*", text.strip())
    if len(pieces) != 2:
        raise ValueError(f"{text!r} is not a stretch of time; write for example 17:30 - 22:00")
    return {"start": parse_clock(pieces[0]), "end": parse_clock(pieces[1])}


def parse_spans(text: str) -> list[dict[str, object]]:
    """One or more spans, separated by commas. Raises ValueError."""
    return [parse_span(piece) for piece in text.split(",")]


def parse_day_span(text: str) -> dict[str, object]:
    """`sat 17:40 - 18:10`; no day means the day of the event. Raises ValueError."""
    match = re.fullmatch(r"(\D*?)[\s,]*(\d.*)", text.strip())
    dated = re.fullmatch(r"(\d{4}-\d{2}-\d{2}|\d+ days? before)[\s,]+(.*)", text.strip(), re.IGNORECASE)
    if dated:
        return {"day": parse_day(dated[1]), **parse_span(dated[2])}
    if match is None:
        raise ValueError(f"{text!r} is not a stretch of a day; write for example sat 17:40 - 18:10")
    day = {"day": parse_day(match[1])} if match[1] else {}
    return {**day, **parse_span(match[2])}


def parse_zone(text: str) -> str:
    """A name from the IANA time zone database. Raises ValueError."""
    try:
        ZoneInfo(text)
    except (KeyError, ValueError, OSError):
        guess = near(text, sorted(available_timezones()))
        raise ValueError(f"{text!r} is not a time zone.{guess}; write for example Europe/Dublin") from None
    return text


def instant(day: date, clock: str, zone: ZoneInfo) -> datetime:
    """The moment in UTC. A time the clocks skip moves past the gap; of a repeated time, the first is taken."""
    hours, minutes = (int(p) for p in clock.split(":"))
    local = datetime.combine(day, time(hours, minutes), tzinfo=zone)
    return tz.resolve_imaginary(local).astimezone(UTC)


def is_odd(day: date, clock: str, zone: ZoneInfo) -> str | None:
    """`skipped` or `doubled` if a clock change makes the local time doubtful; else None."""
    hours, minutes = (int(p) for p in clock.split(":"))
    local = datetime.combine(day, time(hours, minutes), tzinfo=zone)
    if not tz.datetime_exists(local):
        return "skipped"
    return "doubled" if tz.datetime_ambiguous(local) else None


def is_small_hours(clock: str) -> bool:
    """Whether it is before 06:00: after an evening arrival, a course at `0:15` is past midnight."""
    return clock < "06:00"


def stretch(day: date, span: Any, zone: ZoneInfo) -> tuple[datetime, datetime]:
    """Start and end of what has both by the clock, on a day, in UTC."""
    last = day if span.end > span.start else day + relativedelta(days=1)
    return instant(day, span.start, zone), instant(last, span.end, zone)


def minute_of(clock: str) -> int:
    """`19:30` → minutes after midnight."""
    return int(clock[:2]) * 60 + int(clock[3:])


def clock_of(minute: int) -> str:
    """Minutes after midnight → `19:30`; wraps at midnight."""
    return f"{minute // 60 % 24:02d}:{minute % 60:02d}"
