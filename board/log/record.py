"""One event ↔ one line of JSON, with a checksum as its last key. UTF-8, ends in a newline."""

import re
import zlib

import msgspec

from board.run.events import Event

_DECODER: msgspec.json.Decoder[Event] = msgspec.json.Decoder(Event)
_ENCODER = msgspec.json.Encoder()
_CHECKSUM = re.compile(rb',"crc":"([0-9a-f]{8})"}')
_TAIL = 18  # bytes of it


class BadLine(Exception):
    """A line that is not a whole, sound event; its text says in what way."""


class UnknownEvent(BadLine):
    """A line written whole that this program cannot read: a later version's."""


def to_line(event: Event) -> bytes:
    """The event as a line."""
    body = _ENCODER.encode(event)
    return body[:-1] + b',"crc":"%08x"}\n' % zlib.crc32(body)


def mark_of(event: Event) -> str:
    """Eight signs that name an event by its content: those its line ends in."""
    return f"{zlib.crc32(_ENCODER.encode(event)):08x}"


def from_line(line: bytes) -> Event:
    """The event of a line. Raises BadLine (UnknownEvent among them)."""
    line = line.rstrip(b"\n")
    found = _CHECKSUM.fullmatch(line[-_TAIL:])
    if found is None:
        raise BadLine("it has no checksum at its end")
    body = line[:-_TAIL] + b"}"
    if zlib.crc32(body) != int(found[1], 16):
        raise BadLine("its checksum does not fit")
    try:
        return _DECODER.decode(body)
    except (msgspec.DecodeError, UnicodeDecodeError) as wrong:
        raise UnknownEvent(f"it is no event this program knows ({wrong})") from None
