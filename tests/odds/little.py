"""Run sheets small enough to reckon by hand: pieces that follow one another, minutes after 18:00."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from board.sheet.run_sheet import CourseSlot, Dependency, Lasts, RunSheet, Slot

START = datetime(2026, 11, 28, 18, 0, tzinfo=UTC)


def at(minute: float) -> datetime:
    return START + timedelta(minutes=minute)


@dataclass(frozen=True)
class Piece:
    """Planned to start at a minute, lasting so long, after others (end to start)."""

    start: int
    lasts: Lasts
    after: Sequence[str] = ()
    kind: str = "step"


def fixed(minutes: int) -> Lasts:
    return Lasts(minutes, minutes, minutes)


def sheet_of(
    pieces: Mapping[str, Piece],
    wanted: int,
    waits: Mapping[str, Sequence[Dependency]] | None = None,
    served: int | None = None,
) -> RunSheet:
    """One course, served by the piece called `serve`; `waits` are further waits by piece."""
    slots = tuple(
        Slot(
            id=name,
            named=name,
            kind="serve" if name == "serve" else "step",
            lane="worktop",
            start=at(piece.start),
            end=at(piece.start + piece.lasts.likely),
            waits=(*(Dependency(first, "end", 0, "order") for first in piece.after), *(waits or {}).get(name, ())),
            lasts=piece.lasts,
        )
        for name, piece in pieces.items()
    )
    out = pieces["serve"].start + pieces["serve"].lasts.likely if served is None else served
    course = CourseSlot("Course", at(wanted), at(out), "serve", "none", may_slip=0)
    return RunSheet("Little", "UTC", "0" * 64, "2026-11-28", at(0), (course,), slots)
