"""Words of the calendar file: its events and reminders."""

import re

CALENDAR_MAKER = "-//platecall//run sheet//EN"
# A step or job that sends somebody out for provisions, by its name.
CALENDAR_SHOPPING = re.compile(
    r"\b(?:shop|shops|shopping|groceries|provisions|buy|fetch|pick up|market|butcher|baker|fishmonger|greengrocer)\b"
    r"(?!['’]s)",
    re.IGNORECASE,
)


def calendar_make_ahead(event: str, who: str) -> str:
    return f"{event}: make ahead ({who})"


def calendar_hands_on(event: str, who: str) -> str:
    return f"{event}: in the kitchen ({who})"


def calendar_arrive(event: str) -> str:
    return f"{event}: guests arrive"


def calendar_course(event: str, course: str) -> str:
    return f"{event}: {course}"


def calendar_shopping(event: str, name: str) -> str:
    return f"{event}: {name}"


def calendar_line(start: str, end: str, name: str, where: str) -> str:
    return f"{start}{f'–{end}' if end else ''} {name} ({where})"


def calendar_zone(zone: str) -> str:
    return f"Times here are those of {zone}."


def calendar_soon(summary: str) -> str:
    return f"In 15 minutes: {summary}"


def calendar_tomorrow(summary: str, at: str) -> str:
    return f"Tomorrow at {at}: {summary}"
