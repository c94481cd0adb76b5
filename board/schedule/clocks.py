"""The clocks of dishes in a problem: what adds up on each before anything has a time, and by how much in a solution.
Pure; minutes."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal

from board.schedule.dependencies import end_of, way_of
from board.schedule.problem import Clock, Job, Problem, Stood
from board.schedule.solution import Solution
from board.sheet.adding_up import AddingUp, Passed
from board.sheet.run_sheet import SpoilClock


def clocks_of(
    jobs: Mapping[str, tuple[int, Job]],
    passed: Iterable[Passed],
    clocks: Iterable[SpoilClock],
    eaten: Mapping[str, int],
) -> tuple[tuple[Clock, ...], tuple[Stood, ...]]:
    """Each clock, and all that adds up on any of them. `jobs`: by id, each with its index; `eaten`: the minutes a
    course is eaten for, by the id of its serving."""
    counted = _Counted(jobs)
    adding_up = AddingUp(passed, counted)
    found = [
        Clock(c.dish, c.course, jobs[c.serve][0], eaten[c.serve], c.limit_minutes, adding_up.until_served(c))
        for c in clocks
    ]
    return tuple(found), tuple(counted.stood)


Stoods = tuple[int, ...]  # by index; the longest of them counts


class _Counted:
    """Counts in what stands out by any way of a job. Each is there once."""

    nothing: Stoods = ()

    def __init__(self, jobs: Mapping[str, tuple[int, Job]]) -> None:
        self.jobs = jobs
        self.stood: dict[Stood, int] = {}

    def longest(self, parts: Sequence[Stoods]) -> Stoods:
        return tuple(dict.fromkeys(each for part in parts for each in part))

    def during(self, before: Stoods, id_: str) -> Stoods:
        number, job = self.jobs[id_]
        return self._then(Stood(number, None, before)) if any(way.exposed for way in job.ways) else before

    def kept(self, before: Stoods, id_: str, taker: str) -> Stoods:
        number, job = self.jobs[id_]
        spoils = any(way.hold is not None and way.hold.spoils for way in job.ways)
        return self._then(Stood(number, self.jobs[taker][0], before)) if spoils else before

    def _then(self, stood: Stood) -> Stoods:
        return (self.stood.setdefault(stood, len(self.stood)),)


@dataclass(frozen=True, slots=True)
class Stretch:
    """So many minutes in which a dish stands out: during a job, kept after it, or at the table after its serving."""

    job: int
    what: Literal["during", "kept", "table"]
    minutes: int


def stretches(problem: Problem, solution: Solution) -> list[list[Stretch]]:
    """For each clock of the problem, all that adds up on it until the dish is eaten, oldest first."""
    longest: list[list[Stretch]] = []  # up to and with each of what stands out
    for stood in problem.stood:
        longest.append([*_longest(longest, stood.after), _stretch(problem, solution, stood)])
    return [
        [
            *_longest(longest, clock.after),
            Stretch(clock.serve, "during", way_of(problem, solution, clock.serve).minutes),
            Stretch(clock.serve, "table", clock.eaten),
        ]
        for clock in problem.clocks
    ]


def _longest(known: Sequence[list[Stretch]], after: Stoods) -> list[Stretch]:
    return max((known[n] for n in after), key=total, default=[])


def total(found: Iterable[Stretch]) -> int:
    return sum(stretch.minutes for stretch in found)


def _stretch(problem: Problem, solution: Solution, stood: Stood) -> Stretch:
    way = way_of(problem, solution, stood.job)
    if stood.until is None:
        return Stretch(stood.job, "during", stood.gone + (way.minutes if way.exposed else 0))
    hold = way.hold
    out = hold is not None and (hold.exposed if solution.kept[stood.job] else hold.spoils)
    wait = solution.starts[stood.until] - end_of(problem, solution, stood.job)
    return Stretch(stood.job, "kept", stood.gone + (wait if out else 0))
