"""A bar of the plan on a time scale, marked where it really started and ended, as inline SVG that reads in black and
white. Pure.

Lengths along the scale are per cent of its width, so a drawing is as wide as its cell.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta, tzinfo
from functools import cached_property
from html import escape

from board.base import words as shared
from board.view.bars import Span, reach

LONGEST = timedelta(hours=36)  # anything longer runs off the scale
EVERY_MINUTES = (15, 30, 60, 120, 180, 360)  # between two times of the scale
LABEL_ROOM = 12.0  # per cent of the width: what a clock time takes up
LEAST = 0.8  # per cent: the width of what took no time
QUARTER = timedelta(minutes=15)
NEAR_END = 4.0  # per cent: a time this close to an end is written inwards

TOP, THICK = 3.5, 5  # pixels: a bar's top and its thickness
# A mark is a double stroke with a tick towards what it bounds, like the terminal's sign; an arrow: it continues.
MARKS = {
    "began": "M-1.2 0v12M1.2 0v12M1.2 6h3.4",
    "ended": "M1.2 0v12M-1.2 0v12M-1.2 6h-3.4",
    "goes-on": "M2 6h2M6 6h2M7 3.4l3 2.6-3 2.6",
}


@dataclass(frozen=True)
class Mark:
    """A line across the scale, per cent from its start; `clock` is empty where no time is written."""

    share: float
    clock: str


class Axis:
    """The scale under rows of bars: from the first start to the last end of any of them, in a zone."""

    def __init__(self, spans: Sequence[Span], zone: tzinfo) -> None:
        self.zone = zone
        self.start, end = reach(spans)
        self.length = min(LONGEST, max(timedelta(minutes=1), end - self.start))

    def share(self, at: datetime) -> float:
        """Per cent of the way along; below 0 or above 100 where it lies off the scale."""
        return (at - self.start) / self.length * 100

    @cached_property
    def marks(self) -> tuple[Mark, ...]:
        """Every hour by the zone's clock (more often on a short scale), with its time where there is room."""
        return tuple(self._marks())

    def _marks(self) -> Iterator[Mark]:
        fitting = (m for m in EVERY_MINUTES if timedelta(minutes=m) / self.length * 100 >= LABEL_ROOM)
        every = next(fitting, EVERY_MINUTES[-1])
        last = -LABEL_ROOM
        # In quarters of elapsed time, so that a night of a clock change has each of its hours once.
        at = self.start.astimezone(UTC).replace(minute=0, second=0, microsecond=0)
        while (share := self.share(at)) <= 100:
            local = at.astimezone(self.zone)
            minutes = local.hour * 60 + local.minute
            if share >= 0 and minutes % min(every, 60) == 0:
                written = minutes % every == 0 and share - last >= LABEL_ROOM
                last = share if written else last
                yield Mark(share, shared.bare_clock(local) if written else "")
            at += QUARTER

    @cached_property
    def lines(self) -> str:
        return "".join(f'<line x1="{m.share:.2f}%" x2="{m.share:.2f}%" y2="100%"/>' for m in self.marks)


def scale(axis: Axis, told: str) -> str:
    """The times over the bars. `told` describes the drawing to screen readers."""
    times = "".join(
        f'<text x="{m.share:.2f}%" y="8" text-anchor="{_anchor(m.share)}">{escape(m.clock)}</text>'
        for m in axis.marks
        if m.clock
    )
    return f'<svg role="img" aria-label="{escape(told)}">{times}</svg>'


def bar(axis: Axis, span: Span, told: str) -> str:
    """A row: the plan, and on or beyond it what really happened."""
    happened = (("began", span.began), ("ended", span.ended))
    marks = {kind: axis.share(at) for kind, at in happened if at is not None}
    drawn = _planned(axis, span) + "".join(_mark(kind, share) for kind, share in marks.items() if share <= 100)
    if max(axis.share(span.planned[1]), *marks.values(), 0.0) > 100:
        drawn += _mark("goes-on", 100)
    return f'<svg role="img" aria-label="{escape(told)}">{axis.lines}{drawn}</svg>'


def sample(kind: str) -> str:
    """A bar or a mark for the legend."""
    drawn = _mark(kind, 50) if kind in MARKS else _rect(0, 100)
    return f'<svg class="sample" aria-hidden="true">{drawn}</svg>'


def _planned(axis: Axis, span: Span) -> str:
    left, right = (max(0.0, axis.share(at)) for at in span.planned)
    if left > 100:
        return ""
    width = max(LEAST, min(100.0, right) - left)
    return _rect(min(left, 100 - width), width)


def _rect(left: float, width: float) -> str:
    return f'<rect x="{left:.2f}%" y="{TOP}" width="{width:.2f}%" height="{THICK}"/>'


def _mark(kind: str, share: float) -> str:
    return f'<svg class="{kind}" x="{share:.2f}%"><path d="{MARKS[kind]}"/></svg>'


def _anchor(share: float) -> str:
    return "start" if share < NEAR_END else "end" if share > 100 - NEAR_END else "middle"
