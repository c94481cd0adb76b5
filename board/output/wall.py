"""The sheet for the wall: a sheet of paper a day where it fits, read at a step's distance; what must be minded last.

Blocks of work as rows, by when they begin, with all their steps. What goes in, how it is done and when hands are needed
stands on people's leaves. Foreign text is escaped.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from html import escape
from itertools import count, groupby
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.base.plain import one_line
from board.output import words
from board.output.frame import PaperSize, as_html, document, ticked
from board.output.leaves import Leaf
from board.output.page import notes
from board.sheet import said
from board.sheet.blocks import blocks, day_of
from board.sheet.run_sheet import RunSheet, Slot

JOINED_MINUTES = 30  # little work stands beside what began so shortly before
LITTLE_STEPS, MOST_STEPS = 3, 8  # and a row that grows longer is hard to find one's place in


@dataclass(frozen=True, slots=True)
class Row:
    """What one pair of hands begins, in order of time."""

    who: str
    steps: tuple[Slot, ...]

    @property
    def start(self) -> datetime:
        return self.steps[0].start


def wall_page(sheet: RunSheet, leaf: Leaf, paper: PaperSize) -> str:
    """A whole HTML document, UTF-8. `leaf`: the same sheet's for the wall, of which courses and notes are taken."""
    days = [(day, list(found)) for day, found in groupby(rows(sheet), key=lambda row: day_of(sheet, row.start))]
    number = count(1)
    body = "\n".join("\n".join(_day(sheet, day, found, number, first=not n)) for n, (day, found) in enumerate(days))
    heads = [shared.said_together([leaf.title, shared.full_day(day)]) for day, _ in days]
    return document(
        leaf.title,
        "\n".join([body, *_last(leaf)]),
        paper,
        heads=[*heads, shared.said_together([leaf.title, words.LEAF_NOTES])],
        kind="wall",
    )


def rows(sheet: RunSheet) -> list[Row]:
    """Every slot once. A course that goes out begins a row."""
    found: list[Row] = []
    for block in blocks(sheet):
        for steps in _parted(block.steps):
            before = found[-1] if found else None
            if before is not None and before.who == block.who and _joins(before.steps, steps):
                found[-1] = Row(block.who, (*before.steps, *steps))
            else:
                found.append(Row(block.who, steps))
    return sorted(found, key=lambda row: row.start)


def _parted(steps: Sequence[Slot]) -> Iterator[tuple[Slot, ...]]:
    part: list[Slot] = []
    for step in steps:
        if step.kind == "serve" and part:
            yield tuple(part)
            part = []
        part.append(step)
    if part:
        yield tuple(part)


def _joins(before: Sequence[Slot], steps: Sequence[Slot]) -> bool:
    close = steps[0].start - before[-1].start < timedelta(minutes=JOINED_MINUTES)
    short = _work(steps) <= LITTLE_STEPS and len(before) + len(steps) <= MOST_STEPS
    return close and short and steps[0].kind != "serve"


def _work(steps: Sequence[Slot]) -> int:
    return sum(step.end > step.start for step in steps)


def _day(sheet: RunSheet, day: date, found: Sequence[Row], number: "count[int]", *, first: bool) -> Iterator[str]:
    yield f"<section>\n<h1>{escape(shared.full_day(day))}</h1>"
    if first:
        yield from (
            f'<p class="stop">{escape(shared.stop_line(one_line(said.stop(stop))))}</p>' for stop in sheet.stops
        )
    yield '<ul class="rows">'
    several = len(sheet.hands) > 1
    for row in found:
        box, what = ticked(next(number), _row(row, ZoneInfo(sheet.zone), several=several))
        yield f"<li>{box} {what}</li>"
    yield "</ul>\n</section>"


def _row(row: Row, zone: ZoneInfo, *, several: bool) -> str:
    """Its steps, each with its time where that is not the one before; what comes off the heat with when it does."""
    told: list[str] = []
    last: datetime | None = None
    for step in row.steps:
        what = as_html(step.name).replace(" °", "\u00a0°")
        what = f"<strong>{what}</strong>" if step.kind == "serve" else what
        if step.start != last:
            last = step.start
            who = f"{as_html(row.who)}: " if several and not told else ""
            what = f"<time>{shared.clock(last.astimezone(zone))}</time> {who}{what}"
        if (off := words.OFF_THE_HEAT.get(step.lane)) and step.kind in ("step", "job") and not step.whole:
            what += f" ({off}\u00a0{shared.clock(step.end.astimezone(zone))})"
        told.append(what)
    return "; ".join(told)


def _last(leaf: Leaf) -> Iterator[str]:
    """In smaller type, to be read from near."""
    yield f"<section>\n<h1>{escape(leaf.title)}</h1>"
    yield '<ul class="courses">' + "".join(f"<li>{escape(course)}</li>" for course in leaf.courses) + "</ul>"
    yield from notes(leaf.notes)
    yield "</section>"
