"""A change a host might make to remove a clash, and the clash it is judged by. Nothing is tried yet. Pure.

A proposal's weight is the minutes a host would rather work than make the change: a rough order for trying, common
practice, no source. A family of proposals is one change by more and more minutes; the least that helps is enough.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.plan.edit.edits import Edit
from board.plan.load import PlanFile
from board.plan.places import Loc
from board.plan.resolve.assume import CourseWanted, FilledWay, Task
from board.plan.resolve.unit import writes_fahrenheit
from board.schedule.clocks import Stretch, stretches
from board.schedule.conflicts import words
from board.schedule.conflicts.clashes import HANDS, OVENS, Clash
from board.schedule.conflicts.explain import Clashes
from board.schedule.conflicts.violations import Violation
from board.schedule.dependencies import way_of
from board.schedule.problem import Problem
from board.schedule.solution import Solution


@dataclass(frozen=True)
class Proposal:
    """Edits to the plan, in a host's words. Of one `family`, and of its `kin`, only the first that helps is wanted.

    `grows`: a later one of its family mends whatever an earlier one does. `timed`: by the number of a piece of what is
    said, a job whose new time is told with it.
    """

    said: tuple[str, ...]
    edits: tuple[Edit, ...]
    weight: int
    family: str
    kin: str = ""  # none: its family is alone
    grows: bool = False
    timed: tuple[tuple[int, int], ...] = ()

    @property
    def kind(self) -> str:
        """Of which one is enough."""
        return self.kin or self.family

    @property
    def what(self) -> str:
        """What is said, in one sentence."""
        return words.together(self.said)

    def and_(self, other: "Proposal", more: int) -> "Proposal":
        """Both as one, which weighs so much more than the two."""
        timed = tuple((number + len(self.said), job) for number, job in other.timed)
        return Proposal(
            (*self.said, *other.said),
            (*self.edits, *other.edits),
            self.weight + other.weight + more,
            f"{self.family}; {other.family}",
            timed=(*self.timed, *timed),
        )


@dataclass(frozen=True)
class Case:
    """A plan, its solution, and the clashes behind what that gives up."""

    file: PlanFile
    problem: Problem
    solution: Solution
    clashes: Clashes

    @property
    def tasks(self) -> list[Task]:
        return list(self.file.filled.tasks.values())

    def way(self, job: int) -> FilledWay:
        """The plan's way of a job that was chosen."""
        return self.tasks[job].ways[way_of(self.problem, self.solution, job).number]


class Clashed:
    """One clash behind one violation, with what a proposal asks of it."""

    def __init__(self, case: Case, violation: Violation, clash: Clash) -> None:
        self.case = case
        self.file = case.file
        self.problem = case.problem
        self.violation = violation
        self.clash = clash
        self.zone = ZoneInfo(case.file.plan.zone)
        self.kinds = {taken.what for taken in clash.taken}

        self.unknown = not clash.taken and not clash.by_time

    @property
    def over_hands(self) -> bool:
        """Whether it is over hands, as far as is known."""
        return self.unknown or HANDS in self.kinds

    @property
    def over_ovens(self) -> bool:
        """Whether it is over ovens, as far as is known."""
        return self.unknown or OVENS in self.kinds

    def jobs(self) -> list[int]:
        """The steps of the clash; if time alone forces the violation, the step or steps it is about."""
        if self.clash.taken:
            return list(dict.fromkeys(taken.job for taken in self.clash.taken))
        if self.violation.kind in ("out-of-hours", "no-place"):
            return [self.violation.index]
        if self.violation.kind == "late":
            return [self.problem.servings[self.violation.index].job]
        if self.violation.kind == "clock":
            return list(dict.fromkeys(stretch.job for stretch in self.on_the_clock()))
        order = self.problem.orders[self.violation.index]
        return [order.first, order.second]

    def on_the_clock(self) -> list[Stretch]:
        """What adds up on the clock that runs out, if it is one that does."""
        clocked = self.violation.kind == "clock"
        return stretches(self.problem, self.case.solution)[self.violation.index] if clocked else []

    @property
    def in_fahrenheit(self) -> bool:
        """Whether the plan writes its heat in °F."""
        return writes_fahrenheit(self.file.places.lines)

    def name(self, job: int) -> str:
        return self.case.tasks[job].node.name

    def loc(self, job: int) -> Loc:
        """Where the way that was chosen stands in the plan."""
        number = way_of(self.problem, self.case.solution, job).number
        loc = self.case.tasks[job].node.loc
        return (*loc, "or", number - 1) if number else loc

    def people(self) -> list[str]:
        """Who may do its steps, the host first."""
        found = {hand for job in self.jobs() for hand in self.problem.jobs[job].hands}
        return [self.problem.hands[hand].name for hand in sorted(found, key=lambda h: (h != self.problem.host, h))]

    def courses(self) -> Iterator[tuple[int, CourseWanted]]:
        """The courses its steps belong to, and the one that is late, by their numbers in the plan."""
        names = {self.case.tasks[job].node.course for job in self.jobs()} | {self.late_course()}
        return ((n, course) for n, course in enumerate(self.file.filled.courses) if course.name in names)

    def late_course(self) -> str | None:
        return self.problem.servings[self.violation.index].name if self.violation.kind == "late" else None

    def local(self, minute: int) -> datetime:
        return (self.problem.origin + timedelta(minutes=minute)).astimezone(self.zone)

    def clock(self, at: datetime) -> str:
        return shared.clock(at.astimezone(self.zone))
