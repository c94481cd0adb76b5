"""One event ↔ one line of JSON, with a checksum as its last key. UTF-8, ends in a newline."""

import re
import zlib

import msgspec

from board.run.events import FORMAT, EveningOpened, Event

_DECODER: msgspec.json.Decoder[Event] = msgspec.json.Decoder(Event)
_ENCODER = msgspec.json.Encoder()
_CHECKSUM = re.compile(rb',"crc":"([0-9a-f]{8})"}$')


class BadLine(Exception):
    """A line that is not a whole, sound event; its text says in what way."""


class NewerLine(Exception):
    """A whole, sound line that a newer program wrote, so that this one does not understand it. No damage."""


def to_line(event: Event) -> bytes:
    """The event as a line."""
    body = _ENCODER.encode(event)
    return body[:-1] + b',"crc":"%08x"}\n' % zlib.crc32(body)


def from_line(line: bytes) -> Event:
    """The event of a line. Raises BadLine, NewerLine."""
    line = line.rstrip(b"\n")
    found = _CHECKSUM.search(line)
    if found is None:
        raise BadLine("it has no checksum at its end")
    body = line[: found.start()] + b"}"
    if zlib.crc32(body) != int(found[1], 16):
        raise BadLine("its checksum does not fit")
    try:
        event = _DECODER.decode(body)
    except (msgspec.DecodeError, UnicodeDecodeError) as wrong:
        if _is_event(body):  # its checksum fits, so that is how it was written
            raise NewerLine(f"it holds something this program does not know ({wrong})") from None
        raise BadLine(f"it is no event ({wrong})") from None
    if isinstance(event, EveningOpened) and event.format > FORMAT:
        raise NewerLine(f"it is of format {event.format}, newer than this program's {FORMAT}")
    return event


def _is_event(body: bytes) -> bool:
    """Whether it has what every event has."""
    try:
        found = msgspec.json.decode(body)
    except (msgspec.DecodeError, UnicodeDecodeError):
        return False
    return isinstance(found, dict) and {"event", "n", "at"} <= found.keys()
