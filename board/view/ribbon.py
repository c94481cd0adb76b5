"""Lanes as ribbons of time: bars with names and countdowns, drawn to a width. Pure; safe for a terminal.

A bar uses one stroke where somebody works on it and another where it runs by itself, so it reads without colour.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta, tzinfo
from typing import Literal

from rich.cells import cell_len, set_cell_size

from board.base import words as shared
from board.base.plain import one_line
from board.evening.forecast import Forecast
from board.evening.hands import parts
from board.evening.state import State
from board.sheet.run_sheet import RunSheet, Slot
from board.view import words
from board.view.countdown import countdown

Tone = Literal["name", "faint", "running", "coming", "over", "now", "done"]
Segment = tuple[str, Tone]
Row = tuple[Segment, ...]

LABEL_WIDTH = 9
HANDS, BY_ITSELF, NOW = shared.SIGN["hands"], shared.SIGN["by-itself"], shared.SIGN["now"]
BEFORE_MINUTES = 12
LANE_ORDER = ("oven", "stovetop", "fridge", "front-of-house", "worktop")
ZOOMS = (45, 90, 180)  # minutes ahead


@dataclass(frozen=True, slots=True)
class Bar:
    """One slot, ready to draw. Columns count from the left edge of the ribbon, from 0."""

    left: int
    right: int  # exclusive
    label: str
    tone: Tone
    hands: tuple[tuple[int, int], ...]


@dataclass(frozen=True, slots=True)
class Scale:
    """Maps moments to columns: `width` columns from `BEFORE_MINUTES` before now to `ahead` minutes after."""

    now: datetime
    width: int
    ahead: int

    @property
    def per_column(self) -> float:
        """Seconds per column."""
        return (BEFORE_MINUTES + self.ahead) * 60 / max(1, self.width)

    @property
    def now_column(self) -> int:
        """The column of the present."""
        return int(BEFORE_MINUTES * 60 / self.per_column)

    def column(self, at: datetime) -> int:
        """The column of a moment; below 0 or past `width` if it is off the ribbon."""
        return self.now_column + round((at - self.now).total_seconds() / self.per_column)


def ribbons(
    sheet: RunSheet, state: State, forecast: Forecast, width: int, height: int, zone: tzinfo, ahead: int = 90
) -> tuple[Row, ...]:
    """A line of clock times, then every lane, in at most `height` rows of `width` cells that show `ahead` minutes. If
    there is room, each bar gets a second row for its attended parts, and gaps separate the lanes."""
    scale = Scale(forecast.now, max(10, width - LABEL_WIDTH), ahead)
    packed = {lane: _packed(_bars(sheet, state, forecast, lane, scale)) for lane in LANE_ORDER}
    rooms = _rooms({lane: _needed(rows) for lane, rows in packed.items()}, height - 1)
    drawn, spare = sum(rooms.values()), height - 1
    is_tall = 2 * drawn <= spare
    is_apart = (2 if is_tall else 1) * drawn + len(LANE_ORDER) - 1 <= spare
    rows = [_times(scale, zone)]
    for number, lane in enumerate(LANE_ORDER):
        if is_apart and number:
            rows.append(_blank(scale))
        rows += _lane(lane, packed[lane], rooms[lane], scale, is_tall=is_tall)
    return tuple(rows)


def _needed(rows: list[list[Bar]]) -> int:
    """How many rows it takes to show everything that is not over."""
    return max((n for n, row in enumerate(rows, 1) if any(bar.tone != "done" for bar in row)), default=0)


def _rooms(needed: dict[str, int], height: int) -> dict[str, int]:
    """Rows for each lane, at least one each. If they do not fit, empty lanes lose theirs first, then the fullest give
    way."""
    rooms = {lane: max(1, rows) for lane, rows in needed.items()}
    for lane in (lane for lane, rows in needed.items() if rows == 0):
        if sum(rooms.values()) > height:
            rooms[lane] = 0
    while sum(rooms.values()) > max(len(rooms), height):
        fullest = max(rooms, key=lambda lane: rooms[lane])
        if rooms[fullest] == 1:
            break
        rooms[fullest] -= 1
    return rooms


def _bars(sheet: RunSheet, state: State, forecast: Forecast, lane: str, scale: Scale) -> list[Bar]:
    found = []
    many_ovens = len({_oven(slot) for slot in sheet.slots} - {""}) > 1
    for slot in sheet.slots:
        step, ahead = state.steps[slot.id], forecast.slots[slot.id]
        if slot.lane != lane or step.status == "left-out":
            continue
        left, right = scale.column(ahead.start), max(scale.column(ahead.end), scale.column(ahead.start) + 1)
        if right <= 0 or left >= scale.width:
            continue
        name = one_line(slot.name + (words.in_oven(_oven(slot)) if many_ovens and lane == "oven" else ""))
        seconds = (ahead.end - forecast.now).total_seconds()
        tone: Tone = "coming"
        if step.status == "finished":
            tone, name = "done", f"{words.STATE_SIGN['finished']}{name}"
        elif step.status == "under-way":
            tone = "running"
            if seconds <= 0:
                tone = "over"
                started = step.started or ahead.start
                seconds = (started + step.lasts(slot) - forecast.now).total_seconds()
            name = f"{countdown(seconds)} {name}"
        found.append(Bar(left, right, name, tone, _hands(slot, ahead.start, ahead.end, scale)))
    return sorted(found, key=lambda bar: (bar.left, bar.right))


def _oven(slot: Slot) -> str:
    return next((use.what for use in slot.uses if use.celsius is not None or use.off), "")


def _hands(slot: Slot, start: datetime, end: datetime, scale: Scale) -> tuple[tuple[int, int], ...]:
    spans = []
    for part in parts(slot, start, end):
        left = scale.column(part.start)
        spans.append((left, max(left + 1, scale.column(part.end))))
    return tuple(spans)


def _packed(bars: Sequence[Bar]) -> list[list[Bar]]:
    """Rows in which no bars overlap; what is not over comes before what is."""
    rows: list[list[Bar]] = []
    for bar in sorted(bars, key=lambda b: (b.tone == "done", b.left)):
        for row in rows:
            if all(bar.left >= other.right or bar.right <= other.left for other in row):
                row.append(bar)
                break
        else:
            rows.append([bar])
    for row in rows:
        row.sort(key=lambda b: b.left)
    return rows


def _blank(scale: Scale) -> Row:
    return ((" " * LABEL_WIDTH, "name"), *_row([], scale))


def _lane(lane: str, rows: list[list[Bar]], room: int, scale: Scale, *, is_tall: bool) -> list[Row]:
    hidden = sum(len([b for b in row if b.tone != "done"]) for row in rows[room:])
    drawn = []
    for number in range(room):
        name = words.LANES_SHORT[lane] if number == 0 else ""
        if number == room - 1 and hidden:
            name = f"{name[:5]} +{hidden}" if name else f"+{hidden}"
        bars = rows[number] if number < len(rows) else []
        drawn.append(((set_cell_size(name, LABEL_WIDTH), "name"), *_row(bars, scale, strokes=not is_tall)))
        if is_tall:
            nameless = [replace(bar, label="") for bar in bars]
            drawn.append(((" " * LABEL_WIDTH, "name"), *_row(nameless, scale)))
    return drawn


def _row(bars: Sequence[Bar], scale: Scale, *, strokes: bool = True) -> Row:
    """One row. `strokes`: also show attended parts, not only names."""
    cells: list[tuple[str, Tone]] = [(" ", "faint")] * scale.width
    for number, bar in enumerate(bars):
        free_until = bars[number + 1].left if number + 1 < len(bars) else scale.width
        _draw(cells, bar, min(free_until, scale.width), strokes=strokes)
    column = scale.now_column
    if 0 <= column < scale.width and cells[column][0] in (" ", HANDS, BY_ITSELF):
        cells[column] = (NOW, "now")
    return _joined(cells)


def _draw(cells: list[tuple[str, Tone]], bar: Bar, free_until: int, *, strokes: bool) -> None:
    left, right = max(0, bar.left), min(len(cells), bar.right)
    for column in range(left, right):
        on = any(a <= column < b for a, b in bar.hands)
        cells[column] = ((HANDS if on else BY_ITSELF) if strokes else " ", bar.tone)
    if 0 <= bar.left < right:
        cells[bar.left] = (shared.SIGN["edge"], bar.tone)
        left += 1
    room = free_until - left
    if room < 3:
        return
    label = bar.label if cell_len(bar.label) <= room else _cut(bar.label, room)
    column = left
    for char in label:
        wide = cell_len(char)
        if wide == 0:
            continue
        if column + wide > len(cells):
            break
        tone: Tone = bar.tone if column < right else "faint"  # a name may run on past a short bar
        cells[column] = (char, tone)
        for extra in range(1, wide):
            cells[column + extra] = ("", tone)
        column += wide


def _cut(text: str, room: int) -> str:
    """As much as fits, in whole characters, with an ellipsis."""
    kept = ""
    for char in text:
        if cell_len(kept + char) > room - 1:
            break
        kept += char
    return kept.rstrip() + "…"


def _times(scale: Scale, zone: tzinfo) -> Row:
    """Clock times above the ribbons; the present time stands at the line for now."""
    cells: list[tuple[str, Tone]] = [(" ", "faint")] * scale.width
    every = 15 if scale.ahead <= 90 else 30
    local = scale.now.astimezone(zone)
    mark = scale.now + timedelta(
        minutes=every - local.minute % every, seconds=-local.second, microseconds=-local.microsecond
    )
    while (column := scale.column(mark)) + 5 <= scale.width:
        if column > scale.now_column + 6:
            for offset, char in enumerate(shared.clock(mark.astimezone(zone))):
                cells[column + offset] = (char, "faint")
        mark += timedelta(minutes=every)
    for offset, char in enumerate(f"{NOW}{shared.clock(local)}"):
        if scale.now_column + offset < scale.width:
            cells[scale.now_column + offset] = (char, "now")
    return ((" " * LABEL_WIDTH, "name"), *_joined(cells))


def _joined(cells: list[tuple[str, Tone]]) -> Row:
    """Joins neighbouring cells of one tone into segments."""
    found: list[Segment] = []
    for text, tone in cells:
        if found and found[-1][1] == tone:
            found[-1] = (found[-1][0] + text, tone)
        else:
            found.append((text, tone))
    return tuple(found)
