"""What a host answers before a new plan is written, and how each answer is read. Pure: today is passed in."""

import re
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from typing import Any

from dateutil import parser
from dateutil.relativedelta import SA, relativedelta

from board.base.plain import one_line
from board.importing.starter import words
from board.plan.phrases.when import parse_clock, parse_date, parse_zone

LONGEST_NAME = 120
FIRST_ARRIVAL, LAST_ARRIVAL = "09:00", "22:00"
LIMITS = {"guests": (1, 100), "ovens": (0, 10), "rings": (0, 20), "courses": (1, 7)}
YEARS_AHEAD = 10
WEEKDAY = r"(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?"
DAY = r"\d{1,2}(?:st|nd|rd|th)?\.?"
MONTH = (r"(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|"
          r"oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)\.?")  # fmt: skip
_NAMED = re.compile(
    rf"(?:{WEEKDAY},?\s+)?(?:{DAY}\s+(?:of\s+)?{MONTH}|{MONTH}\s+{DAY}),?(?P<year>\s+\d{{4}})?", re.IGNORECASE
)
_ISO = re.compile(r"\d{4}-\d{2}-\d{2}")


@dataclass(frozen=True)
class Answers:
    """All answers. `arrive`: HH:MM; `guests`: without the host."""

    event: str
    date: date
    arrive: str
    guests: int
    ovens: int
    rings: int
    courses: int
    zone: str


def readers(today: date) -> dict[str, Callable[[str], Any]]:
    """The reader of each answer, in order of asking. Each raises ValueError, in words for the host."""
    return {
        "event": read_event,
        "date": lambda text: read_date(text, today),
        "arrive": read_arrival,
        **{name: _number_reader(*limits) for name, limits in LIMITS.items()},
        "zone": lambda text: parse_zone(one_line(text)),
    }


def defaults(today: date, zone: str | None) -> dict[str, str]:
    """The answers assumed; no zone if the machine does not know it."""
    found = {
        "event": words.NEW_EVENT,
        "date": (today + relativedelta(days=1, weekday=SA)).isoformat(),
        "arrive": "18:30",
        "guests": "6",
        "ovens": "1",
        "rings": "4",
        "courses": "3",
    }
    return found if zone is None else {**found, "zone": zone}


def read_event(text: str) -> str:
    """A name on one line, safe to show. Raises ValueError."""
    name = one_line(text)
    if not name or len(name) > LONGEST_NAME:
        raise ValueError(words.new_no_name(LONGEST_NAME))
    return name


def read_date(text: str, today: date) -> date:
    """`sat`, `5 Dec`, `2026-12-05`, `today`; without a year, the next such day. Raises ValueError; also for the
    ambiguous `5/12`."""
    given = one_line(text)
    folded = given.lower()
    if folded in ("today", "tomorrow"):
        return today + timedelta(days=folded == "tomorrow")
    if _ISO.fullmatch(folded):
        return _near(parse_date(folded), today, given)
    named = _NAMED.fullmatch(folded)
    if named is None and not re.fullmatch(WEEKDAY, folded):
        raise ValueError(words.new_not_a_date(given))
    years = (today.year,) if named is None or named["year"] else range(today.year, today.year + 5)  # 29 Feb
    plain = folded[:3] if named is None else re.sub(rf"^{WEEKDAY},?\s+", "", folded)
    for year in years:
        try:
            default = datetime.combine(today.replace(day=1) if named else today, time())
            day = parser.parse(re.sub(r"(?<=\d)\.", "", plain), default=default.replace(year=year)).date()
        except (ValueError, OverflowError):
            continue
        if named is None or named["year"] or day >= today:
            return _near(day, today, given)
    raise ValueError(words.new_no_such_day(given))


def _near(day: date, today: date, given: str) -> date:
    if day < today:
        raise ValueError(words.new_day_past(given, day.isoformat()))
    if day > today + relativedelta(years=YEARS_AHEAD):
        raise ValueError(words.new_day_far(given))
    return day


def read_arrival(text: str) -> str:
    """`18:30`, `6:30 pm` → HH:MM. Raises ValueError, also for a bare hour."""
    clock = parse_clock(one_line(text))
    if not FIRST_ARRIVAL <= clock <= LAST_ARRIVAL:
        raise ValueError(words.new_arrive_outside(clock, FIRST_ARRIVAL, LAST_ARRIVAL))
    return clock


def _number_reader(low: int, high: int) -> Callable[[str], int]:
    def read(text: str) -> int:
        given = one_line(text)
        if not re.fullmatch(r"[0-9]{1,4}", given) or not low <= int(given) <= high:
            raise ValueError(words.new_not_a_number(given, low, high))
        return int(given)

    return read
