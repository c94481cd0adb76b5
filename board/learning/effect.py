"""What lessons bring, as it was worked out: how often courses are on time, and what then begins at another time."""

from dataclasses import dataclass

from board.learning.changes import Lesson
from board.learning.moves import Move


@dataclass(frozen=True, slots=True)
class CourseEffect:
    """The share of evenings in which a course is on time: by the plan, by it with what was learned, worked out anew
    (None: not worked out)."""

    name: str
    by_plan: float
    as_learned: float
    anew: float | None


@dataclass(frozen=True, slots=True)
class Alone:
    """A lesson by itself, by its number from 1: the courses whose odds it changes, what of its own work then begins at
    another time, and what then must be mended before anybody eats, or is given up. `found`: whether it was worked out
    and there is a timetable."""

    number: int
    lesson: Lesson
    courses: tuple[CourseEffect, ...]
    found: bool = False
    moved: Move | None = None
    given_up: tuple[str, ...] = ()


@dataclass(frozen=True)
class Effect:
    """What lessons bring together, and each alone (those that change a course's odds, the worst first). `given_up`:
    what the new timetable gives up and the present does not; `no_longer`: the other way round; `moved`: what then
    begins at another time; `stopped`: why the plan with all of them has no timetable; `stops`: what must then be mended
    before anybody eats, and not now; `proved`: whether no timetable is known to give up less; `unweighed`: numbers of
    lessons that were to be worked out alone, and time or the keyboard ended it before."""

    courses: tuple[CourseEffect, ...] = ()
    alone: tuple[Alone, ...] = ()
    given_up: tuple[str, ...] = ()
    no_longer: tuple[str, ...] = ()
    moved: tuple[Move, ...] = ()
    stopped: str | None = None
    stops: tuple[str, ...] = ()
    proved: bool = True
    unweighed: tuple[int, ...] = ()
