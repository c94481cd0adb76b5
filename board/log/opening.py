"""The lines a log begins with → its opening, from whichever of them is sound, or against a sheet kept elsewhere."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass

from board.evening.events import EveningOpened, Event
from board.log import words
from board.log.record import BadLine, from_line, opening_lines, opening_of, short_of
from board.sheet.run_sheet import RunSheet

LINES = 3
Sheets = Callable[[], Iterable[RunSheet]]  # those there are elsewhere, asked for only where a log has lost its own


@dataclass(frozen=True, slots=True)
class Beginning:
    """`lines`: how many of the file's it takes; `data`: as they should stand there; `said`: what was wrong."""

    opened: EveningOpened
    lines: int
    data: bytes
    said: str = ""


def beginning_of(lines: Sequence[bytes], name: str, sheets: Sheets) -> Beginning | None:
    """None where there is no opening, and no sheet elsewhere to read the answers by. `lines` have their ends."""
    for at, line in enumerate(lines[:LINES]):
        opened = opening_of(line)
        if opened is None:
            continue
        if at == 0:  # as format 1 had it: one line
            return Beginning(opened, 1, line)
        count = 2 if _is_second(lines[2:3]) else min(LINES, len(lines))
        data, there = opening_lines(opened, line), b"".join(lines[:count])
        said = words.opening_mended(name) if data != there and there.endswith(b"\n") else ""  # else it is being written
        return Beginning(opened, count, data, said)
    return _by_a_sheet_elsewhere(lines, name, sheets)


def _is_second(line: Sequence[bytes]) -> bool:
    """Whether it is sound, and the event that follows an opening."""
    found = _sound(line[0]) if line else None
    return found is not None and found.n == 2 and not isinstance(found, EveningOpened)


def _by_a_sheet_elsewhere(lines: Sequence[bytes], name: str, sheets: Sheets) -> Beginning | None:
    """Of a log whose opening is lost and whose answers are there: a sheet of the same plan which has their steps."""
    count = next((at for at in range(1, LINES + 1) if _is_second(lines[at : at + 1])), None)
    if count is None:
        return None
    lost, short = b"".join(lines[:count]), short_of(lines[0])
    events = _sound_events(lines[count:])
    wanted = {slot for event in events if (slot := getattr(event, "slot", None)) is not None}
    for sheet in sheets():
        if _is_named(sheet, lost) and wanted <= {slot.id for slot in sheet.slots}:
            opened = EveningOpened(
                n=1,
                at=events[0].at if short is None else short.at,
                rehearsal=b'"rehearsal":true' in lost,
                sheet=sheet,
            )
            return Beginning(opened, count, opening_lines(opened), words.opening_from_elsewhere(name))
    return None


def _is_named(sheet: RunSheet, lost: bytes) -> bool:
    """Whether what is left of the lines names this plan, by its digest or by its name and date."""
    return sheet.digest.encode() in lost or (sheet.plan.encode() in lost and sheet.date.encode() in lost)


def _sound_events(lines: Sequence[bytes]) -> list[Event]:
    found = []
    for line in lines:
        event = _sound(line)
        if event is None:
            break
        found.append(event)
    return found


def _sound(line: bytes) -> Event | None:
    try:
        return from_line(line)
    except BadLine:
        return None
