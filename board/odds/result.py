"""The results of many evenings. Frozen, plain numbers; shares are of all evenings, from 0 to 1."""

import math
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Literal

WITHIN_MINUTES = 5  # a course this late or less counts as on time; ours
BY_SHARES = (0.5, 0.8, 0.95)  # ours

CauseKind = Literal["work", "sitting", "timetable"]


@dataclass(frozen=True, slots=True)
class Cause:
    """What made a course late: a slot that ran over, guests who sat long over a course (`name`), or the timetable, if
    the course was planned late. `id`: the slot's; for a sitting, its serving's; else empty."""

    kind: CauseKind
    id: str
    name: str


TIMETABLE = Cause("timetable", "", "")


@dataclass(frozen=True, slots=True)
class CourseOdds:
    """One course. `within`: the share in which it goes out at most 5 min after `wanted`; `by`: when it is out in each
    share, rounded up to the minute; `spread`: evenings by whole minutes after wanted, rounded up."""

    name: str
    wanted: datetime
    planned: datetime
    within: float
    by: Mapping[float, datetime]
    mean_late: float  # minutes; an early course counts as 0
    spread: Mapping[int, int]


@dataclass(frozen=True, slots=True)
class Blame:
    """In this share of evenings the course was late and this cause had the greatest overrun leading to it."""

    course: str
    cause: Cause
    share: float


@dataclass(frozen=True, slots=True)
class Help:
    """What one minute more of slack after a cause brings: by course, the gain in the share within 5 min, and the
    minutes of mean lateness saved."""

    cause: Cause
    gain: Mapping[str, float]
    saved: Mapping[str, float]


@dataclass(frozen=True)
class Odds:
    """The odds of one plan. `pieces`: pieces of work that take time; `spreads`: how many of them vary; `sittings`:
    courses whose eating varies; `assumed`: how many of either have a spread only because one was assumed. Blame and
    help are sorted, greatest first."""

    plan: str
    zone: str
    evenings: int
    seed: int
    pieces: int
    spreads: int
    sittings: int
    assumed: tuple[int, int]
    courses: tuple[CourseOdds, ...]
    blame: tuple[Blame, ...]
    help: tuple[Help, ...]

    @property
    def never_varies(self) -> bool:
        return not self.spreads and not self.sittings

    @property
    def error(self) -> float:
        """Half the width of a 95 % interval for a share of one half, the widest: 1.96 · √(¼/evenings)."""
        return 1.96 * math.sqrt(0.25 / self.evenings)
