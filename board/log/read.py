"""Bytes of a run log → its events. A torn last line is dropped and said; damage further up is said by line."""

from dataclasses import dataclass
from zoneinfo import ZoneInfo

from board.log.record import BadLine, NewerLine, from_line
from board.run.events import EveningOpened, Event


class NoLog(Exception):
    """These bytes are not a run log, or one that cannot be gone on with; the text says why, with its line."""


@dataclass(frozen=True)
class LogContents:
    """The evening's first line, the events after it, how many bytes of the file are sound, and what was dropped."""

    opened: EveningOpened
    events: tuple[Event, ...]
    sound_bytes: int
    dropped: str | None = None


def read_log(data: bytes, name: str) -> LogContents:
    """All sound events, from the first line on. Raises NoLog."""
    events: list[Event] = []
    position, number, dropped = 0, 0, None
    while position < len(data):
        number += 1
        end = data.find(b"\n", position)
        is_last = end in (-1, len(data) - 1)
        line = data[position:] if end == -1 else data[position : end + 1]
        try:
            if end == -1:
                raise BadLine("it was not written to its end")
            event = from_line(line)
            if event.n != len(events) + 1:
                raise BadLine(f"it is event {event.n} where {len(events) + 1} belongs")
        except NewerLine as newer:  # never dropped, not even at the end
            raise NoLog(f"{name}:{number}: a newer version of this program wrote this line: {newer}") from None
        except BadLine as wrong:
            if is_last and events:
                dropped = f"{name}:{number}: the last line was dropped: {wrong}"
                break
            if number == 1 and not line.startswith(b'{"event":'):
                raise NoLog(f"{name}:1: this is not a run log") from None
            raise NoLog(f"{name}:{number}: this line is damaged: {wrong}") from None
        events.append(event)
        position += len(line)
    if not events or not isinstance(events[0], EveningOpened):
        raise NoLog(f"{name}:1: this is not a run log")
    try:
        ZoneInfo(events[0].sheet.zone)
    except (KeyError, ValueError, OSError):
        raise NoLog(f"{name}:1: it names a time zone this machine does not know") from None
    return LogContents(events[0], tuple(events[1:]), position, dropped)
