"""Which steps fight over what, where a limit is broken: a smallest set that cannot all have what it needs. Pure.

A taking is a step's (or a kept result's) use of one kind of thing. Takings are dropped, half of them at a time, until
every one left is needed to break the limit: the divide-and-conquer search of Junker, "QuickXplain: preferred
explanations and relaxations for over-constrained problems", AAAI 2004.
"""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TypeVar

from board.schedule.conflicts.violations import Violation
from board.schedule.problem import Demand, Problem, Way

Can = Callable[[Problem, Violation, Mapping[Violation, int]], bool | None]

T = TypeVar("T")
HANDS, OVENS = "hands", "ovens"


@dataclass(frozen=True, slots=True)
class Taken:
    """A job's use of hands, of an oven or of a resource (by index); `kept`: its standing result's use."""

    job: int
    what: str | int
    kept: bool = False


@dataclass(frozen=True, slots=True)
class Clash:
    """Takings that cannot all be met without `violation`. An empty `taken`: time alone forces it (`by_time`), or what
    does could not be proved."""

    violation: Violation
    taken: tuple[Taken, ...]
    by_time: bool = False


def clash_behind(problem: Problem, violation: Violation, amounts: Mapping[Violation, int], can: Can) -> Clash:
    """A smallest set of takings that forces the violation while nothing else is violated more than in `amounts`."""
    everything = takings(problem)

    def clashes(held: Sequence[Taken]) -> bool:
        return can(letting_go(problem, set(everything) - set(held)), violation, amounts) is False

    def clashes_over(kinds: Sequence[str | int]) -> bool:
        return clashes([taken for taken in everything if taken.what in kinds])

    if clashes([]):
        return Clash(violation, (), by_time=True)
    kinds = list(dict.fromkeys(taken.what for taken in everything))
    one = next(([kind] for kind in kinds if clashes_over([kind])), None)
    fought_over = one or _fewest([], kinds, clashes_over, changed=False)
    among = [taken for taken in everything if taken.what in fought_over]
    if not among or not clashes(among):  # not proved within the search's limit this time
        return Clash(violation, ())
    return Clash(violation, tuple(sorted(_fewest([], among, clashes, changed=False), key=everything.index)))


def is_behind(clash: Clash, problem: Problem, violation: Violation, amounts: Mapping[Violation, int], can: Can) -> bool:
    """Whether the same takings force another violation too."""
    freed = set(takings(problem)) - set(clash.taken)
    return can(letting_go(problem, freed), violation, amounts) is False


def _fewest(given: list[T], among: list[T], clashes: Callable[[Sequence[T]], bool], *, changed: bool) -> list[T]:
    if changed and clashes(given):
        return []
    if len(among) == 1:
        return among
    first, second = among[: len(among) // 2], among[len(among) // 2 :]
    needed_of_second = _fewest(given + first, second, clashes, changed=bool(first))
    needed_of_first = _fewest(given + needed_of_second, first, clashes, changed=bool(needed_of_second))
    return needed_of_first + needed_of_second


def takings(problem: Problem) -> list[Taken]:
    """All takings: ovens first and hands last, so that a clash is told by what can be touched; the longest first, so
    that few of them make a clash."""
    found: set[Taken] = set()
    for n, job in enumerate(problem.jobs):
        for way in job.ways:
            if way.parts and job.fixed is None:
                found.add(Taken(n, HANDS))
            found |= {Taken(n, demand.resource) for demand in way.demands if way.minutes}
            found |= {Taken(n, OVENS)} if way.oven is not None and way.minutes else set()
            if way.hold is not None:
                found |= {Taken(n, demand.resource, kept=True) for demand in way.hold.demands}
                found |= {Taken(n, OVENS, kept=True)} if way.hold.oven is not None else set()
    rank = {OVENS: -1, HANDS: len(problem.resources)}

    def order(taken: Taken) -> tuple[int, int, int, bool]:
        job = problem.jobs[taken.job]
        length = max((sum(p.length for p in way.parts) if taken.what == HANDS else way.minutes) for way in job.ways)
        return (taken.what if isinstance(taken.what, int) else rank[taken.what], -length, taken.job, taken.kept)

    return sorted(found, key=order)


def letting_go(problem: Problem, freed: set[Taken]) -> Problem:
    """The problem in which those takings take nothing: somebody else does it, elsewhere, with other things."""
    touched = {taken.job for taken in freed}
    jobs = [
        replace(job, ways=tuple(_let_go(n, way, freed) for way in job.ways)) if n in touched else job
        for n, job in enumerate(problem.jobs)
    ]
    return replace(problem, jobs=tuple(jobs))


def _let_go(n: int, way: Way, freed: set[Taken]) -> Way:
    def left(demands: tuple[Demand, ...], *, kept: bool) -> tuple[Demand, ...]:
        return tuple(d for d in demands if Taken(n, d.resource, kept) not in freed)

    hold = way.hold
    if hold is not None:
        oven = None if Taken(n, OVENS, kept=True) in freed else hold.oven
        hold = replace(hold, demands=left(hold.demands, kept=True), oven=oven)
    return replace(
        way,
        parts=() if Taken(n, HANDS) in freed else way.parts,
        demands=left(way.demands, kept=False),
        oven=None if Taken(n, OVENS) in freed else way.oven,
        hold=hold,
    )
