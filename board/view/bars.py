"""One bar per row for what was planned, with marks where it really began and ended. Pure."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta, tzinfo
from itertools import groupby
from typing import Literal

from board.base import words as shared
from board.base.late import minutes_late
from board.view.wrap_words import pad

TAIL_WIDTH = 9  # a gap and the minutes
EVERY_MINUTES = (15, 30, 60, 120, 180, 360)  # possible steps between times on the scale
CLOCK_WIDTH = 7  # a clock time and a gap


Kind = Literal["planned", "actual"]


@dataclass(frozen=True, slots=True)
class Span:
    """One row: its name, its planned start and end, and its actual start and end if they are known.

    `runs_off`: the scale need not reach its end, as for something that stands in the fridge overnight.
    """

    name: str
    planned: tuple[datetime, datetime]
    began: datetime | None = None
    ended: datetime | None = None
    runs_off: bool = False

    @property
    def later_minutes(self) -> int | None:
        """Minutes it ended later than planned, negative if earlier; None until it has ended."""
        return None if self.ended is None else minutes_late(self.ended, self.planned[1])


def reach(spans: Sequence[Span]) -> tuple[datetime, datetime]:
    """The earliest start and the latest end of the spans, planned or actual. Raises ValueError for no spans."""
    told = [span for span in spans if not span.runs_off] or spans
    start = min(at for span in spans for at in (span.planned[0], span.began) if at is not None)
    ends = [at for span in told for at in (span.planned[1], span.began, span.ended) if at is not None]
    return start, max(start, *ends)


class Chart:
    """Rows over one time scale that reaches from the earliest start to the latest end. Widths are in cells."""

    def __init__(self, spans: Sequence[Span], width: int, name_width: int, zone: tzinfo) -> None:
        self.zone = zone
        self.start, end = reach(spans)
        seconds = max(60.0, (end - self.start).total_seconds())
        self.name_width = name_width
        self.columns = max(10, width - name_width - TAIL_WIDTH)
        self.per_column = seconds / self.columns

    def name(self, span: Span) -> str:
        """The span's name, in exactly `name_width` cells."""
        return pad(span.name, self.name_width - 1) + " "

    def bar(self, span: Span) -> tuple[tuple[str, Kind | None], ...]:
        """The bar in runs of one kind, together as wide as the scale; the kind is None for empty cells."""
        cells: list[tuple[str, Kind | None]] = [(" ", None)] * self.columns
        for column in self._columns(span.planned):
            cells[column] = (shared.SIGN["planned"], "planned")
        for column, mark in self._marks(span).items():
            cells[column] = (shared.SIGN[mark], "actual")
        return tuple(("".join(sign for sign, _ in run), kind) for kind, run in _runs(cells))

    def _marks(self, span: Span) -> dict[int, str]:
        """Sign names by column: the actual start and end, and at the right edge that it goes on."""
        last = self.columns - 1
        marks = {last: "goes-on"} if self._goes_on(span) else {}
        if span.began is None or self._column(span.began) > self.columns:
            return marks
        took = self._columns((span.began, span.ended or span.began))
        marks[took[0]] = "began"
        if span.ended is not None and self._column(span.ended) <= self.columns:
            marks[took[-1]] = "ended" if len(took) > 1 else "at-once"
        return marks

    def _goes_on(self, span: Span) -> bool:
        return any(self._column(at) > self.columns for at in (span.planned[1], span.began, span.ended) if at)

    def times(self) -> str:
        """Clock times above their columns, as many as fit."""
        fitting = (m for m in EVERY_MINUTES if m * 60 / self.per_column >= CLOCK_WIDTH)
        every = timedelta(minutes=next(fitting, EVERY_MINUTES[-1]))
        local = self.start.astimezone(self.zone)
        midnight = local.replace(hour=0, minute=0, second=0, microsecond=0)
        mark = self.start + (-(local - midnight) % every)
        cells = [" "] * (self.name_width + self.columns)
        while (column := self._column(mark)) + len("18:45") <= self.columns:
            left = self.name_width + column
            cells[left : left + len("18:45")] = shared.bare_clock(mark.astimezone(self.zone))
            mark += every
        return "".join(cells).rstrip()

    def _columns(self, span: tuple[datetime, datetime]) -> range:
        """The columns that a span covers, at least one."""
        left = min(self._column(span[0]), self.columns - 1)
        return range(left, max(left + 1, min(self._column(span[1]), self.columns)))

    def _column(self, at: datetime) -> int:
        return round((at - self.start).total_seconds() / self.per_column)


def _runs(cells: Sequence[tuple[str, Kind | None]]) -> list[tuple[Kind | None, list[tuple[str, Kind | None]]]]:
    return [(kind, list(run)) for kind, run in groupby(cells, key=lambda cell: cell[1])]
