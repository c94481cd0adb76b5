"""Bytes of a run log → its events, as far as they are sound; what was left, and why, is said by line."""

from dataclasses import dataclass
from typing import Literal
from zoneinfo import ZoneInfo

from board.evening.events import FORMAT, EveningOpened, Event
from board.log import words
from board.log.record import BadLine, UnknownEvent, from_line, from_lines, mark_of, opening_of

HEAD = b'{"event":"EveningOpened"'  # how every run log begins
Damage = Literal["torn", "damaged", "newer"]


class NoLog(Exception):
    """These bytes are not a run log, or one that cannot be gone on with; the text says why, with its line."""


@dataclass(frozen=True)
class LogContents:
    """The evening's first line, the events after it, how many bytes of the file are sound, and what was left and why.

    `mark` names the log by its first line, whatever its file is called. `torn`: the last line was not written to its
    end. `newer`: a version after this one wrote what was left, or all.
    """

    opened: EveningOpened
    events: tuple[Event, ...]
    sound_bytes: int
    dropped: str | None = None
    damage: Damage | None = None
    mark: str = ""


def read_log(data: bytes, name: str) -> LogContents:
    """All sound events, from the first line to the first that is not. Raises NoLog where that is the first."""
    events = _all_sound(data)
    position, dropped = (len(data) if events else 0), None
    damage: Damage | None = None
    while position < len(data):
        end = data.find(b"\n", position) + 1 or len(data)
        try:
            events.append(next_event(data[position:end], len(events) + 1))
        except BadLine as wrong:
            if not events:
                raise NoLog(_no_first_line(data, name, wrong)) from None
            damage, dropped = _what_is_left(data[position:], name, len(events) + 1, wrong)
            break
        position = end
    if not events or not isinstance(events[0], EveningOpened):
        raise NoLog(f"{name}:1: this is not a run log")
    opened = events[0]
    try:
        ZoneInfo(opened.sheet.zone)
    except (KeyError, ValueError, OSError):
        raise NoLog(f"{name}:1: it names a time zone this machine does not know") from None
    if opened.format > FORMAT:
        damage, dropped = "newer", words.newer_read(name, opened.format, FORMAT)
    mark = mark_of(data[: data.index(b"\n") + 1])
    return LogContents(opened, tuple(events[1:]), position, dropped, damage, mark)


def _all_sound(data: bytes) -> list[Event]:
    """The events of a log without fault, read in one go; none of any other, which is read line by line to find it."""
    first, *rest = data.splitlines(keepends=True) or [b""]
    opened = opening_of(first)
    events = from_lines(rest) if opened is not None else None
    if opened is None or events is None or [e.n for e in (opened, *events)] != list(range(1, len(rest) + 2)):
        return []
    return [opened, *events]


def next_event(line: bytes, n: int) -> Event:
    """The event of a line that must be the n-th. Raises BadLine."""
    if not line.endswith(b"\n"):
        raise BadLine("it was not written to its end")
    event = from_line(line)
    if event.n != n:
        raise BadLine(f"it is event {event.n} where {n} belongs")
    return event


def _no_first_line(data: bytes, name: str, wrong: BadLine) -> str:
    if not data.startswith(b'{"event":'):
        return f"{name}:1: this is not a run log"
    if isinstance(wrong, UnknownEvent):
        return words.first_line_unknown(name, str(wrong))
    return f"{name}:1: this line is damaged: {wrong}"


def _what_is_left(rest: bytes, name: str, line: int, wrong: BadLine) -> tuple[Damage, str]:
    """Of what kind the fault is with which the rest begins, and the words for it."""
    last = line + rest.rstrip(b"\n").count(b"\n")
    if isinstance(wrong, UnknownEvent):
        return "newer", words.rest_newer(name, line, last)
    if line == last:
        return "torn", words.tail_dropped(name, line, str(wrong))
    return "damaged", words.rest_left(name, line, str(wrong), last)
