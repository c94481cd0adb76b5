"""Planned and actual as one bar a row: the upper half is the plan, the lower what was. Pure."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta, tzinfo
from itertools import groupby
from typing import Literal

from board import words
from board.view.fold import pad

TAIL_WIDTH = 6
EVERY_MINUTES = (15, 30, 60, 120, 180, 360)  # between two times of the scale
CLOCK_WIDTH = 7  # a clock time and a gap


Kind = Literal["planned", "actual", "both"]


@dataclass(frozen=True, slots=True)
class Span:
    """One row: its name, from when to when it was planned and was, and what stands behind its bar.

    `runs_off`: the scale need not reach to its end, as for what stands in the fridge overnight.
    """

    name: str
    planned: tuple[datetime, datetime]
    was: tuple[datetime, datetime] | None
    tail: str
    runs_off: bool = False


def reach(spans: Sequence[Span]) -> tuple[datetime, datetime]:
    """From the first beginning to the last end of any of them, planned or as it was."""
    told = [span for span in spans if not span.runs_off] or spans
    ends = [end for span in told for end in (span.planned, span.was) if end is not None]
    start = min(span.planned[0] if span.was is None else min(span.planned[0], span.was[0]) for span in spans)
    return start, max(start, *(over for _, over in ends))


class Chart:
    """Rows over one scale of time, from the first beginning to the last end of any of them."""

    def __init__(self, spans: Sequence[Span], width: int, name_width: int, zone: tzinfo) -> None:
        self.zone = zone
        self.start, end = reach(spans)
        seconds = max(60.0, (end - self.start).total_seconds())
        self.name_width = name_width
        self.columns = max(10, width - name_width - TAIL_WIDTH)
        self.per_column = seconds / self.columns

    def name(self, span: Span) -> str:
        return pad(span.name, self.name_width - 1) + " "

    def bar(self, span: Span) -> tuple[tuple[str, Kind | None], ...]:
        """As wide as the scale, in stretches of one kind; None where nothing was planned nor was."""
        planned, was = self._columns(span.planned), self._columns(span.was) if span.was else range(0)
        kinds = [_kind(column in planned, column in was) for column in range(self.columns)]
        return tuple(
            ((words.CLOSING_GLYPHS[kind] if kind else " ") * len(list(run)), kind) for kind, run in groupby(kinds)
        )

    def times(self) -> str:
        """Clock times where they fall, as many as fit."""
        fitting = (m for m in EVERY_MINUTES if m * 60 / self.per_column >= CLOCK_WIDTH)
        every = timedelta(minutes=next(fitting, EVERY_MINUTES[-1]))
        local = self.start.astimezone(self.zone)
        midnight = local.replace(hour=0, minute=0, second=0, microsecond=0)
        mark = self.start + (-(local - midnight) % every)
        cells = [" "] * (self.name_width + self.columns)
        while (column := self._column(mark)) + len(clock := words.clock(mark.astimezone(self.zone))) <= self.columns:
            cells[self.name_width + column : self.name_width + column + len(clock)] = clock
            mark += every
        return "".join(cells).rstrip()

    def _columns(self, span: tuple[datetime, datetime]) -> range:
        """The columns a span covers, one at least."""
        left = min(self._column(span[0]), self.columns - 1)
        return range(left, max(left + 1, min(self._column(span[1]), self.columns)))

    def _column(self, at: datetime) -> int:
        return round((at - self.start).total_seconds() / self.per_column)


def _kind(planned: bool, was: bool) -> Kind | None:
    if planned and was:
        return "both"
    return "planned" if planned else "actual" if was else None
