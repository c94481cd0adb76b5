"""One event ↔ one line of JSON, with a checksum as its last key. UTF-8, ends in a newline.

The opening, which holds the sheet, is worth three: a short line that tells what log it is, and the event itself, twice.
"""

import re
import zlib
from collections.abc import Sequence
from functools import lru_cache

import msgspec

from board.evening.events import FORMAT, EveningOpened, Event
from board.log.bounds import is_odd
from board.sheet.run_sheet import Moment, RunSheet

_DECODER: msgspec.json.Decoder[Event] = msgspec.json.Decoder(Event)
_MANY: msgspec.json.Decoder[list[Event]] = msgspec.json.Decoder(list[Event])
_SHEET = msgspec.json.Decoder(RunSheet)
_ENCODER = msgspec.json.Encoder()
_CHECKSUM = re.compile(rb',"crc":"([0-9a-f]{8})"}')
_TAIL = 18  # bytes of it


class _Head(msgspec.Struct, frozen=True, tag_field="event", tag="EveningOpened"):
    """An opening whose sheet is not read yet."""

    n: int
    at: Moment
    rehearsal: bool
    sheet: msgspec.Raw
    format: int = FORMAT


_HEAD = msgspec.json.Decoder(_Head)


class Short(msgspec.Struct, frozen=True, tag_field="event", tag="EveningOpened"):
    """A log's first line: of what evening it is. `digest`: of its plan, by which its sheet is found elsewhere."""

    n: int
    at: Moment
    rehearsal: bool
    format: int
    plan: str
    date: str
    digest: str


_SHORT = msgspec.json.Decoder(Short)


class BadLine(Exception):
    """A line that is not a whole, sound event; its text says in what way."""


class UnknownEvent(BadLine):
    """A line written whole that this program cannot read: a later version's."""


def to_line(event: Event) -> bytes:
    """The event as a line."""
    return _sealed(event)


def opening_lines(opened: EveningOpened, whole: bytes | None = None) -> bytes:
    """The lines a log begins with. `whole`: the event's own line, where one was found."""
    sheet = opened.sheet
    short = Short(1, opened.at, opened.rehearsal, opened.format, sheet.plan, sheet.date, sheet.digest)
    return _sealed(short) + 2 * (whole or to_line(opened))


def _sealed(what: Event | Short) -> bytes:
    body = _ENCODER.encode(what)
    return body[:-1] + b',"crc":"%08x"}\n' % zlib.crc32(body)


def mark_of(line: bytes) -> str:
    """Eight signs that name a sound event by its line, as whatever version wrote it: its checksum."""
    return line[-11:-3].decode("ascii")


def from_lines(lines: Sequence[bytes]) -> list[Event] | None:
    """The events of many lines, each with its end, read in one go; None where any is not sound: `from_line` tells what
    is wrong with it."""
    bodies: list[bytes] = []
    for line in lines:
        body = line[: -_TAIL - 1] + b"}"
        if line[-_TAIL - 1 :] != b',"crc":"%08x"}\n' % zlib.crc32(body):
            return None
        bodies.append(body)
    try:
        return _MANY.decode(b"[" + b",".join(bodies) + b"]")
    except (msgspec.DecodeError, UnicodeDecodeError):
        return None


def opening_of(line: bytes) -> EveningOpened | None:
    """The event of a log's first line, with its end; None where it is not sound, or no opening. A sheet that logs
    share, as the rehearsals of one plan do, is read once."""
    body = line[: -_TAIL - 1] + b"}"
    if line[-_TAIL - 1 :] != b',"crc":"%08x"}\n' % zlib.crc32(body):
        return None
    try:
        head = _HEAD.decode(body)
        return EveningOpened(
            n=head.n, at=head.at, format=head.format, rehearsal=head.rehearsal, sheet=_sheet(bytes(head.sheet))
        )
    except (msgspec.DecodeError, UnicodeDecodeError):
        return None


def short_of(line: bytes) -> Short | None:
    """What a first line tells; None where it is not sound, or an opening with its sheet."""
    body = line[: -_TAIL - 1] + b"}"
    if line[-_TAIL - 1 :] != b',"crc":"%08x"}\n' % zlib.crc32(body):
        return None
    try:
        return _SHORT.decode(body)
    except (msgspec.DecodeError, UnicodeDecodeError):
        return None


@lru_cache(maxsize=8)
def _sheet(data: bytes) -> RunSheet:
    """Raises msgspec.ValidationError, also where it says what cannot be."""
    sheet = _SHEET.decode(data)
    if is_odd(sheet):
        raise msgspec.ValidationError
    return sheet


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
