"""Bytes of a run log → its events, as far as they are sound; what was left, and why, is said by line."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal
from zoneinfo import ZoneInfo

from board.evening.events import FORMAT, EveningOpened, Event
from board.log import words
from board.log.bounds import first_odd
from board.log.opening import LINES, Sheets, beginning_of
from board.log.record import BadLine, UnknownEvent, from_line, from_lines, mark_of, short_of

HEAD = b'{"event":"EveningOpened"'  # how every run log begins
BOM = b"\xef\xbb\xbf"
Damage = Literal["torn", "damaged", "newer"]


class NoLog(Exception):
    """These bytes are not a run log, or one that cannot be gone on with; the text says why, with its line."""


class NotBegun(NoLog):
    """A run log of which no more than the beginning of its opening was written: there is nothing in it yet."""


@dataclass(frozen=True)
class LogContents:
    """The evening's opening, the events after it, all that is sound in the file, and what was left and why.

    `sound`: the lines as they should stand in the file, `head` bytes of them the opening; where the file does not begin
    with them, its opening was mended, or its line ends were another system's. `mark` names the log by its first line,
    whatever its file is called. `torn`: the last line was not written to its end. `newer`: a version after this one
    wrote what was left, or all.
    """

    opened: EveningOpened
    events: tuple[Event, ...]
    sound: bytes
    head: int
    dropped: str | None = None
    damage: Damage | None = None
    mark: str = ""

    @property
    def sound_bytes(self) -> int:
        return len(self.sound)


def read_log(data: bytes, name: str, sheets: Sheets = lambda: ()) -> LogContents:
    """All sound events, from the opening to the first that is not. `sheets`: those kept elsewhere, for a log that has
    lost its own. Raises NoLog where the opening is lost."""
    lines = _lines(data)
    begun = beginning_of(lines, name, sheets)
    if begun is None:
        raise _no_opening(lines, name)
    rest = lines[begun.lines :]
    events = from_lines(rest)
    whole = events is not None and [event.n for event in events] == list(range(2, len(rest) + 2))
    found, said, damage = (events or [], None, None) if whole else _as_far_as_sound(rest, name, begun.lines)
    opened = begun.opened
    if (odd := first_odd(found, opened.sheet)) is not None:
        found, damage, said = found[:odd], "damaged", words.odd_event(name, begun.lines + odd + 1)
    try:
        ZoneInfo(opened.sheet.zone)
    except (KeyError, ValueError, OSError):
        raise NoLog(f"{name}:1: it names a time zone this machine does not know") from None
    if opened.format > FORMAT:
        damage, said = "newer", words.newer_read(name, opened.format, FORMAT)
    sound = begun.data + b"".join(rest[: len(found)])
    dropped = " ".join(filter(None, [begun.said, said])) or None
    mark = mark_of(begun.data[: begun.data.index(b"\n") + 1])
    return LogContents(opened, tuple(found), sound, len(begun.data), dropped, damage, mark)


def _lines(data: bytes) -> list[bytes]:
    """With their ends. A byte-order mark, the line ends of another system and a last one that was taken off, as some
    editors leave a file, are no damage."""
    *whole, last = data.removeprefix(BOM).replace(b"\r\n", b"\n").split(b"\n")
    lines = [line + b"\n" for line in whole]
    if last:
        lines.append(last + b"\n" if from_lines([last + b"\n"]) else last)
    return lines


def _as_far_as_sound(rest: Sequence[bytes], name: str, before: int) -> tuple[list[Event], str, Damage]:
    """The events before the first line that is not sound, and of what kind that is. `before`: lines of the file."""
    events: list[Event] = []
    for at, line in enumerate(rest):
        try:
            events.append(next_event(line, at + 2))
        except BadLine as wrong:
            damage, said = _what_is_left(b"".join(rest[at:]), name, before + at + 1, wrong)
            return events, said, damage
    raise AssertionError(name)


def next_event(line: bytes, n: int) -> Event:
    """The event of a line that must be the n-th. Raises BadLine."""
    if not line.endswith(b"\n"):
        raise BadLine("it was not written to its end")
    event = from_line(line)
    if event.n != n:
        raise BadLine(f"it is event {event.n} where {n} belongs")
    return event


def _no_opening(lines: Sequence[bytes], name: str) -> NoLog:
    """Why there is none."""
    first = lines[0] if lines else b""
    if not first.startswith(b'{"event":') and not any(from_lines([line]) for line in lines[1 : LINES + 1]):
        return NoLog(f"{name}:1: this is not a run log")
    if not any(line.endswith(b"\n") for line in lines[short_of(first) is not None :]):
        return NotBegun(f"{name}:1: there is no evening in it yet")
    try:
        from_line(first)
    except UnknownEvent as wrong:
        if short_of(first) is None:
            return NoLog(words.first_line_unknown(name, str(wrong)))
    except BadLine:
        pass
    else:
        return NoLog(words.odd_opening(name) if first.startswith(HEAD) else f"{name}:1: this is not a run log")
    return NoLog(words.opening_lost(name))


def _what_is_left(rest: bytes, name: str, line: int, wrong: BadLine) -> tuple[Damage, str]:
    """Of what kind the fault is with which the rest begins, and the words for it."""
    last = line + rest.rstrip(b"\n").count(b"\n")
    if isinstance(wrong, UnknownEvent):
        return "newer", words.rest_newer(name, line, last)
    if line == last:
        return "damaged" if rest.endswith(b"\n") else "torn", words.tail_dropped(name, line, str(wrong))
    return "damaged", words.rest_left(name, line, str(wrong), last)
