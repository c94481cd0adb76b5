"""A timetable's days while a plan is made: each at a glance, and one of them drawn to a width. Pure; all texts are
single lines and safe for a terminal."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from itertools import groupby
from typing import Self
from zoneinfo import ZoneInfo

from rich.cells import cell_len, set_cell_size

from board.base import words as shared
from board.base.plain import one_line
from board.sheet import said
from board.sheet.blocks import day_of
from board.sheet.cold import cold_days
from board.sheet.company import sitters
from board.sheet.run_sheet import RunSheet, Slot
from board.sheet.why import why
from board.view import words
from board.view.ribbon import LANE_ORDER

Row = tuple[tuple[str, str], ...]  # runs of (text, role)
NAME_WIDTH = 15  # the longest lane's
LEAST_NAME = 5  # cells; less of a name says nothing
MOST_ROWS = 3  # of a lane; what finds no room in them is counted
HOUR, MINUTE = timedelta(hours=1), timedelta(minutes=1)
NEAR_HOURS = (1, 2)  # before and after the hour in which a chosen slot begins
HANDS = shared.SIGN["hands"]


@dataclass(frozen=True, slots=True)
class Glance:
    """A day in one line: its name, whose hands are on something for how many minutes, and what else there is of it."""

    day: date
    name: str
    hands: tuple[tuple[str, int], ...]
    told: str


def glances(sheet: RunSheet) -> tuple[Glance, ...]:
    """Every day that something begins on, in order."""
    slots = sorted(sheet.slots, key=lambda slot: slot.start)
    cold = cold_days(sheet)
    found = []
    for day, group in groupby(slots, key=lambda slot: day_of(sheet, slot.start)):
        own = list(group)
        minutes = {who: _minutes(own, who) for who in sheet.hands}
        hands = tuple((one_line(who, 20), total) for who, total in minutes.items() if total)
        full = [words.cold_full(each.place, each.litres, each.room) for each in cold if each.at.date() == day]
        pieces = [words.hands_of(who, shared.short(total)) for who, total in hands]
        heats = dict.fromkeys(
            use.celsius for slot in own for use in slot.uses if use.celsius is not None and not use.off
        )
        if heats:
            pieces.append(words.heats(tuple(shared.dial(each, sheet.fahrenheit, sheet.as_written) for each in heats)))
        name = shared.short_day(datetime(day.year, day.month, day.day, tzinfo=ZoneInfo(sheet.zone)))
        found.append(Glance(day, name, hands, words.told_beside([*pieces, *full])))
    return tuple(found)


def day_of_slot(sheet: RunSheet, slot: str) -> date | None:
    """The day a slot begins on; None for a slot that is not there."""
    found = sheet.by_id().get(slot)
    return None if found is None else day_of(sheet, found.start)


def held(sheet: RunSheet, slot: str) -> tuple[str, ...]:
    """What holds a slot where it is, and its give, line by line; none for a slot that is not there."""
    found = sheet.by_id().get(slot)
    return () if found is None else tuple(one_line(line) for line in why(sheet, found))


def given_up(sheet: RunSheet) -> tuple[str, ...]:
    """What could not be had, and why, line by line."""
    return tuple(map(one_line, said.all_given_up(sheet)))


def in_time(sheet: RunSheet, day: date) -> tuple[str, ...]:
    """The slots of a day that stand in the plan, by the time they begin."""
    own = [slot for slot in sheet.slots if not slot.of_a_dial and day_of(sheet, slot.start) == day]
    return tuple(slot.id for slot in sorted(own, key=lambda slot: slot.start))


@dataclass(frozen=True, slots=True)
class Bar:
    """A slot's cells in a row, from `left` up to `right`."""

    left: int
    right: int
    slot: str


@dataclass(frozen=True, slots=True)
class DrawnDay:
    """Rows to show, and the bars in each."""

    rows: tuple[Row, ...] = ()
    bars: tuple[tuple[Bar, ...], ...] = ()

    def slot_at(self, row: int, column: int) -> str:
        """The slot drawn there; empty for none."""
        bars = self.bars[row] if 0 <= row < len(self.bars) else ()
        return next((bar.slot for bar in bars if bar.left <= column < bar.right), "")


def drawn_day(sheet: RunSheet, day: date, width: int, chosen: str = "", *, near: bool = False) -> DrawnDay:
    """A day: clock times, when courses go out, every lane with what is in it, and whose hands are on something when.
    `chosen`: a slot that stands out. `near`: only the hours around it. Nothing for a day on which nothing begins."""
    own = [slot for slot in sheet.slots if day_of(sheet, slot.start) == day]
    if not own:
        return DrawnDay()
    scale = _scale(own, max(10, width - NAME_WIDTH), ZoneInfo(sheet.zone))
    if near:
        scale = scale.around(sheet.by_id()[chosen] if chosen in sheet.by_id() else own[0])
    rows: list[tuple[Row, tuple[Bar, ...]]] = [(scale.times(), ()), (_courses(sheet, scale), ())]
    heats = [(row, ()) for row in _heats(sheet, scale)]
    for lane in LANE_ORDER:
        rows += _lane(lane, [slot for slot in sheet.slots if slot.lane == lane], scale, chosen)
        rows += heats if lane == "oven" else []
    rows += [(_hands(sheet, who, scale), ()) for who in sheet.hands]
    shown = [each for each in rows if each[0]]
    return DrawnDay(tuple(row for row, _ in shown), tuple(bars for _, bars in shown))


@dataclass(frozen=True, slots=True)
class _Scale:
    start: datetime
    end: datetime
    width: int
    zone: ZoneInfo

    def column(self, at: datetime) -> int:
        """Of a moment, within the scale."""
        part = (at - self.start) / (self.end - self.start)
        return max(0, min(self.width, round(part * self.width)))

    def around(self, slot: Slot) -> Self:
        """The hours around a slot's beginning; no more than there are."""
        start = slot.start - timedelta(minutes=slot.start.astimezone(self.zone).minute) - NEAR_HOURS[0] * HOUR
        start = max(self.start, min(start, self.end - sum(NEAR_HOURS) * HOUR))
        return replace(self, start=start, end=min(self.end, start + sum(NEAR_HOURS) * HOUR))

    def times(self) -> Row:
        every = next(
            h for h in (1, 2, 3, 6, 12) if h == 12 or self.width / max(1, (self.end - self.start) / HOUR) * h >= 7
        )
        cells = [" "] * self.width
        at = self.start
        while at < self.end:
            local, column = at.astimezone(self.zone), self.column(at)
            if local.hour % every == 0 and column + 5 <= self.width:
                cells[column : column + 5] = shared.clock(local)
            at += HOUR
        return ((" " * NAME_WIDTH, "soft"), ("".join(cells), "soft"))


def _scale(own: Sequence[Slot], width: int, zone: ZoneInfo) -> _Scale:
    """Whole hours from the day's first work to its last; what stands by itself in the cold does not stretch it."""
    busy = [slot for slot in own if slot.lane != "fridge"] or own
    start = min(slot.start for slot in own)
    end = max([slot.end for slot in busy] + [part.end for slot in own for part in slot.attended])
    start -= timedelta(minutes=start.astimezone(zone).minute)
    end = max(end, start + HOUR)
    return _Scale(start, end + (-(end - start) % HOUR), width, zone)


def _name(text: str) -> tuple[str, str]:
    return f"{_cut(text, NAME_WIDTH - 1)} ", "name"


def _cut(text: str, room: int) -> str:
    return (
        text + " " * (room - cell_len(text)) if cell_len(text) <= room else set_cell_size(text, max(0, room - 1)) + "…"
    )


def _lane(lane: str, slots: Sequence[Slot], scale: _Scale, chosen: str) -> list[tuple[Row, tuple[Bar, ...]]]:
    seen = [slot for slot in slots if slot.end > scale.start and slot.start < scale.end and slot.end > slot.start]
    packed: list[list[Slot]] = []
    for slot in sorted(seen, key=lambda slot: (slot.id != chosen, slot.start)):
        free = (row for row in packed if all(slot.start >= o.end or slot.end <= o.start for o in row))
        row = next(free, None)
        if row is None:
            packed.append(row := [])
        row.append(slot)
    left_out = sum(len(row) for row in packed[MOST_ROWS:])
    name = words.lane_name(lane, left_out)
    return [_bars(name if not n else "", row, scale, chosen) for n, row in enumerate(packed[:MOST_ROWS])]


def _bars(name: str, slots: Sequence[Slot], scale: _Scale, chosen: str) -> tuple[Row, tuple[Bar, ...]]:
    row, bars, at = [_name(name)], [], 0
    for slot in sorted(slots, key=lambda slot: slot.start):
        left = max(at, scale.column(slot.start))
        right = max(left + 1, scale.column(slot.end))
        if left >= scale.width:
            break
        room = min(right, scale.width) - left
        label = _cut(shared.SIGN["edge"] + (one_line(slot.name) if room >= LEAST_NAME else ""), room)
        row += [(" " * (left - at), ""), (label, "chosen" if slot.id == chosen else "coming")]
        at = min(right, scale.width)
        bars.append(Bar(NAME_WIDTH + left, NAME_WIDTH + at, slot.id))
    return tuple(run for run in row if run[0]), tuple(bars)


def _hands(sheet: RunSheet, who: str, scale: _Scale) -> Row:
    """A stroke where hands are on something for half of a column or more, and where they are at all in a narrow one;
    another sign where they are free at the table; nothing in a pause."""
    cells = [" "] * scale.width
    by_id = sheet.by_id()
    seated = [c for c in sheet.courses if not c.standing and c.clear in by_id] if who in sitters(sheet) else []
    at_table = [(course.served, by_id[course.clear].start, shared.SIGN["free"]) for course in seated]
    at_work = [(part.start, part.end, HANDS) for slot in sheet.slots for part in slot.attended if part.who == who]
    for start, end, sign in (*at_table, *at_work):
        if end > scale.start and start < scale.end:
            left = min(scale.column(start), scale.width - 1)
            for column in range(left, max(left + 1, scale.column(end))):
                cells[column] = sign
    if not any(cell != " " for cell in cells):
        return ()
    return _name(one_line(who)), ("".join(cells), "text")


def _courses(sheet: RunSheet, scale: _Scale) -> Row:
    marks = [(course.served, f"{shared.SIGN['served']} {one_line(course.name)}") for course in sheet.courses]
    return _marked(words.COURSES_ROW, marks, scale)


def _heats(sheet: RunSheet, scale: _Scale) -> list[Row]:
    """One row an oven: where it comes to another heat."""
    rows = []
    uses = sorted(
        (use for slot in sheet.slots for use in slot.uses if use.celsius is not None), key=lambda use: use.start
    )
    for oven in dict.fromkeys(use.what for use in uses):
        marks, last = [], None
        for use in uses:
            if use.what == oven and use.celsius is not None and use.celsius != last:
                marks.append((use.start, shared.dial(use.celsius, sheet.fahrenheit, sheet.as_written)))
                last = use.celsius
        rows.append(_marked(words.heat_row(one_line(oven)), marks, scale))
    return rows


def _marked(name: str, marks: Sequence[tuple[datetime, str]], scale: _Scale) -> Row:
    """Words at their columns, each moved on where the one before needs its room; none for nothing in the day."""
    line, at = "", 0
    for moment, text in marks:
        if scale.start <= moment < scale.end:
            column = max(scale.column(moment), at)
            if column < scale.width:
                line += " " * (column - at) + _cut(text, min(cell_len(text), scale.width - column)) + " "
                at = cell_len(line)
    return (_name(name), (line.rstrip(), "text")) if line else ()


def _minutes(slots: Sequence[Slot], who: str) -> int:
    """Minutes in which hands are on anything; two things at once count once."""
    total, until = timedelta(), None
    for part in sorted((p for slot in slots for p in slot.attended if p.who == who), key=lambda part: part.start):
        begin = part.start if until is None else max(part.start, until)
        total += max(timedelta(), part.end - begin)
        until = part.end if until is None else max(until, part.end)
    return round(total / MINUTE)
