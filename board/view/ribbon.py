"""Lanes as ribbons of time: bars with names and countdowns, drawn to a width. Pure; safe for a terminal.

A bar is a solid ground, with a stroke where somebody works on it.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta, tzinfo
from functools import cached_property
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
from board.view.short import without_articles

Tone = Literal["name", "faint", "running", "coming", "over", "now", "done"]
Segment = tuple[str, Tone]
Row = tuple[Segment, ...]

LABEL_WIDTH = 18  # the longest name, and how many of its bars are not shown
LEAST_NAME = 12  # cells; less of a name says nothing
MOST_ROWS = 4  # of a lane
CLOCK_COLUMNS = 12  # for a clock time and the gap to the next
IN_A_NAME = "\u00a0"  # a space that the line of now leaves alone
HANDS, NOW = shared.SIGN["hands"], shared.SIGN["now"]
BEFORE_MINUTES = 12
LANE_ORDER = ("oven", "stovetop", "worktop", "front-of-house", "fridge")
ZOOMS = (45, 90, 180)  # minutes ahead


@dataclass(frozen=True, slots=True)
class Bar:
    """One slot, ready to draw. Columns count from the left edge of the ribbon, from 0."""

    left: int
    right: int  # exclusive
    label: str
    tone: Tone
    hands: tuple[tuple[int, int], ...]


@dataclass(frozen=True)
class Scale:
    """Maps moments to columns: `width` columns from `BEFORE_MINUTES` before now to `ahead` minutes after."""

    now: datetime
    width: int
    ahead: int

    @cached_property
    def per_column(self) -> float:
        """Seconds per column."""
        return (BEFORE_MINUTES + self.ahead) * 60 / max(1, self.width)

    @cached_property
    def now_column(self) -> int:
        """The column of the present."""
        return int(BEFORE_MINUTES * 60 / self.per_column)

    def column(self, at: datetime) -> int:
        """The column of a moment; below 0 or past `width` if it is off the ribbon."""
        return self.now_column + round((at - self.now).total_seconds() / self.per_column)


def ribbons(
    sheet: RunSheet, state: State, forecast: Forecast, width: int, height: int, zone: tzinfo, ahead: int = 90
) -> tuple[Row, ...]:
    """A line of clock times, then every lane in its order, each with as many rows, in at most `height` rows of `width`
    cells that show `ahead` minutes."""
    scale = Scale(forecast.now, max(10, width - LABEL_WIDTH), ahead)
    room = max(1, min(MOST_ROWS, (height - 1) // len(LANE_ORDER)))
    rows = [_times(scale, zone)]
    many_ovens = len({_oven(slot) for slot in sheet.slots} - {""}) > 1
    for lane in LANE_ORDER[: max(0, height - 1)]:
        bars = _bars(sheet, state, forecast, lane, scale, name_ovens=many_ovens and lane == "oven")
        rows += _lane(lane, _packed(bars), room, scale)
    return tuple(rows)


def _bars(sheet: RunSheet, state: State, forecast: Forecast, lane: str, scale: Scale, *, name_ovens: bool) -> list[Bar]:
    found = []
    for slot in sheet.slots:
        step, ahead = state.steps[slot.id], forecast.slots[slot.id]
        if slot.lane != lane or step.status == "left-out":
            continue
        left = scale.column(ahead.start)
        right = max(scale.column(ahead.end), left + 1)
        if right <= 0 or left >= scale.width:
            continue
        name = one_line(without_articles(slot.name) + (words.in_oven(_oven(slot)) if name_ovens else ""))
        seconds = (ahead.end - forecast.now).total_seconds()
        tone: Tone = "coming"
        if step.status == "finished":
            tone, name = "done", words.STATE_SIGN["finished"]
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


def _lane(lane: str, rows: list[list[Bar]], room: int, scale: Scale) -> list[Row]:
    hidden = sum(len([b for b in row if b.tone != "done"]) for row in rows[room:])
    drawn = []
    for number in range(room):
        name = shared.LANES[lane] if number == 0 else ""
        if number == room - 1 and hidden:
            name = f"{name} +{hidden}".lstrip()
        bars = rows[number] if number < len(rows) else []
        tone: Tone = "name" if rows else "faint"
        drawn.append(((set_cell_size(name, LABEL_WIDTH), tone), *_row(bars, scale)))
    return drawn


def _row(bars: Sequence[Bar], scale: Scale) -> Row:
    cells: list[tuple[str, Tone]] = [(" ", "faint")] * scale.width
    for number, bar in enumerate(bars):
        free_until = bars[number + 1].left - 1 if number + 1 < len(bars) else scale.width
        _draw(cells, bar, min(free_until, scale.width))
    column = scale.now_column
    if 0 <= column < scale.width and cells[column][0] in (" ", HANDS):
        cells[column] = (NOW, "now")
    return _joined([(" " if text == IN_A_NAME else text, tone) for text, tone in cells])


def _draw(cells: list[tuple[str, Tone]], bar: Bar, free_until: int) -> None:
    """A solid ground with its name in it; set after it where only that shows more; a stroke where hands are on it."""
    left, right = max(0, bar.left), min(len(cells), bar.right)
    for column in range(left, right):
        on = any(a <= column < b for a, b in bar.hands)
        cells[column] = (HANDS if on else " ", bar.tone)
    if 0 <= bar.left < right:
        cells[bar.left] = (shared.SIGN["edge"], bar.tone)
        left += 1
    within, after = right - left, free_until - right - 1
    size = cell_len(bar.label)
    if size <= within or (within >= after and within >= LEAST_NAME):
        _write(cells, left, _clipped(bar.label, within), bar.tone)
    elif after >= LEAST_NAME:
        _write(cells, right + 1, _clipped(bar.label, after), "faint")


def _write(cells: list[tuple[str, Tone]], column: int, text: str, tone: Tone) -> None:
    for char in text:
        wide = cell_len(char)
        if wide == 0:
            continue
        if column + wide > len(cells):
            break
        cells[column] = (IN_A_NAME if char == " " else char, tone)
        for extra in range(1, wide):
            cells[column + extra] = ("", tone)
        column += wide


def _clipped(text: str, room: int) -> str:
    return text if cell_len(text) <= room else _cut(text, room)


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
    every = 15 if scale.per_column * CLOCK_COLUMNS <= 15 * 60 else 30
    local = scale.now.astimezone(zone)
    mark = scale.now + timedelta(
        minutes=every - local.minute % every, seconds=-local.second, microseconds=-local.microsecond
    )
    while (column := scale.column(mark)) + 5 <= scale.width:
        if column > scale.now_column + 6:
            for offset, char in enumerate(shared.bare_clock(mark.astimezone(zone))):
                cells[column + offset] = (char, "faint")
        mark += timedelta(minutes=every)
    for offset, char in enumerate(f"{NOW}{shared.bare_clock(local)}"):
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
