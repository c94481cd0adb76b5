"""Ways out of a clash: a change to the plan is made, solved again, and offered only if it helps. Pure.

`proposals` says what is tried; the solver, the checks of a plan, and the time there is are passed in.
"""

from bisect import bisect_left
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import timedelta
from itertools import combinations, product
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.plan.edit.edits import AddHelper, CannotEdit, Edit, Tried, apply_all, try_all, untried
from board.plan.load import PlanFile
from board.schedule.conflicts import price, words
from board.schedule.conflicts.by_hands import HELPER
from board.schedule.conflicts.proposal import Case, Proposal
from board.schedule.conflicts.proposals import proposals
from board.schedule.dependencies import way_of
from board.schedule.formulate import problem_of
from board.schedule.problem import Problem
from board.schedule.solution import AIMS, COSTLY, SPARED, Solution
from board.schedule.to_run_sheet import to_run_sheet
from board.sheet.run_sheet import RunSheet

# What is tried as a pair: changes up to this weight, so many of a family, so many pairs; their weight beside both.
CHEAP, MOST_OF_ONE, MOST_PAIRS, TWO = 19, 3, 60, 3
AFTER_ALONE, AFTER_PAIRS = 0.4, 0.25  # of the time: kept for what comes after single changes, and after pairs
LATER_STILL = 5  # a minute later than anyway costs as much as one beyond a course's slip
Values = tuple[int, ...]
NOTHING: Values = (0,) * len(COSTLY)
_Changed = tuple[PlanFile, Problem]


@dataclass(frozen=True)
class Means:
    """What the search is given. `solve`: a solver with the aims wanted, None if its time was too short.
    `can_be_whole`: a quick test whether all limits can be kept. `sound`: whether a plan may be cooked at all; `safe`:
    whether its timetable endangers nobody. `tell`: told what is being tried. `left`: seconds there are still."""

    solve: Callable[[Problem, tuple[str, ...]], Solution | None]
    can_be_whole: Callable[[Problem], bool | None]
    sound: Callable[[PlanFile], bool]
    safe: Callable[[PlanFile, RunSheet], bool]
    tell: Callable[[str], None]
    left: Callable[[], float]


@dataclass(frozen=True)
class WayOut:
    """A change that helps: what it is, what it brings and costs, and the plan and the run sheet it leads to."""

    what: str
    brings: str
    costs: str
    text: str
    sheet: RunSheet
    values: Values  # of the aims, in their order
    weight: int
    kin: str

    @property
    def remains(self) -> int:
        """How many things are still given up."""
        return len(self.sheet.given_up)


@dataclass(frozen=True)
class Found:
    """Ways out, the best first. `all_tried`: whether there was time for all that might help."""

    ways: list[WayOut]
    all_tried: bool


class _TimeIsUp(Exception):
    """No bug: what was found until now is all there is."""


def ways_out(text: str, case: Case, sheet: RunSheet, wanted: int, means: Means) -> Found:
    """Up to `wanted` ways out of what `sheet` gives up, the cheapest first, each of which leaves nothing given up. If
    there is none, those that help in part, what helps most first.

    `case` is the plan in `text` with its solution and clashes. A KeyboardInterrupt ends the search with what is found.
    """
    search = _Search(text, case, sheet, means)
    try:
        search.run(wanted)
    except (KeyboardInterrupt, _TimeIsUp):
        search.cut = True
    whole = [way for way in search.found if not way.remains]
    in_part = sorted(search.found, key=lambda way: (way.values[: len(COSTLY)], way.weight))
    best: dict[str, WayOut] = {}
    for way in sorted(whole, key=lambda way: (way.weight, way.values)) or in_part:
        best.setdefault(way.kin, way)
    return Found(list(best.values())[:wanted], not search.cut or len(best) >= wanted)


class _Search:
    def __init__(self, text: str, case: Case, sheet: RunSheet, means: Means) -> None:
        self.case = case
        self.sheet = sheet
        self.means = means
        self.values = _values(case.solution)
        self.zone = ZoneInfo(sheet.zone)
        self.found: list[WayOut] = []
        self.time = 0.0  # there was at the beginning, in seconds
        self.cut = False  # whether something was left untried
        self.families: dict[str, list[Proposal]] = {}
        for proposal in proposals(case):
            self.families.setdefault(proposal.family, []).append(proposal)
        self.helped: set[str] = set()  # families, and their kin, of which one alone leaves nothing given up
        self.changed: dict[tuple[Edit, ...], _Changed | None] = {}
        self.whole: dict[tuple[Edit, ...], _Changed | None] = {}
        self.costly: dict[tuple[Edit, ...], Values | None] = {}
        self.text = text
        self.tried: dict[tuple[Edit, ...], Tried | None] = {(): untried(text, case.file)}

    def run(self, wanted: int) -> None:
        self.time = self.means.left()
        self.one_alone(wanted)
        cheap = any(self.families[name][0].weight <= CHEAP for name in self.helped & set(self.families))
        if not (cheap or self.cut):
            self.two_together(wanted)
        if not self.found:
            self.in_part()

    def one_alone(self, wanted: int) -> None:
        """Finds changes that leave nothing given up, the lightest first. Of a family that grows, the least that helps
        is looked for when its lightest comes up, and waits for its turn, or for the last of the time."""
        waiting: dict[str, Proposal] = {}
        looked_into: set[str] = set()
        for proposal in sorted((p for each in self.families.values() for p in each), key=lambda p: p.weight):
            family = proposal.family
            if {family, proposal.kind} & self.helped:
                continue
            if self._runs_out(AFTER_ALONE):
                break
            if proposal.grows and family not in looked_into:
                looked_into.add(family)
                least = self._least(self.families[family], self._whole)
                waiting |= {family: least} if least is not None else {}
            if proposal.grows and proposal is not waiting.get(family):
                continue
            if self._whole(proposal) is not None and self._alone(proposal, wanted):
                return
        else:
            return
        for proposal in sorted(waiting.values(), key=lambda p: p.weight):
            if not {proposal.family, proposal.kind} & self.helped and self._alone(proposal, wanted):
                return

    def _runs_out(self, kept: float) -> bool:
        """Whether no more than that share of the time is left; then something is left untried."""
        self.cut = self.cut or self.means.left() < kept * self.time
        return self.cut

    def _alone(self, proposal: Proposal, wanted: int) -> bool:
        """Offers a change that leaves nothing given up; whether there are now enough."""
        self.helped |= {proposal.family, proposal.kind}
        changed = self._whole(proposal)
        return changed is not None and self._offer(proposal, changed) and len(self.found) == wanted

    def _least(self, family: list[Proposal], helps: Callable[[Proposal], object]) -> Proposal | None:
        """The least of a family that grows that helps; None if the largest does not."""
        if not helps(family[-1]):
            return None
        return family[bisect_left(family[:-1], True, key=lambda proposal: bool(helps(proposal)))]

    def two_together(self, wanted: int) -> None:
        """Finds pairs of cheap changes that leave nothing given up, where neither does alone; each change once."""
        idle = [family for family in self.families.values() if not {family[0].family, family[0].kind} & self.helped]
        cheap = [[p for p in family if p.weight <= CHEAP] for family in idle]
        cheap = [family if family and family[0].grows else family[:MOST_OF_ONE] for family in cheap]
        pairs = sorted(combinations(filter(None, cheap), 2), key=lambda pair: pair[0][0].weight + pair[1][0].weight)
        settled: set[str] = set()
        for one, other in pairs[:MOST_PAIRS]:
            kin = {one[0].kind, other[0].kind}
            if kin & settled:
                continue
            if self._runs_out(AFTER_PAIRS):
                return
            least = self._least_pair(one, other)
            if least is not None and self._offer(*least):
                settled |= kin
                if len(self.found) >= wanted:
                    return

    def _least_pair(self, one: list[Proposal], other: list[Proposal]) -> tuple[Proposal, _Changed] | None:
        """The lightest two of two families that help together. Of a family that grows the largest shows whether any
        does."""
        largest = [family[-1:] if family[0].grows else family for family in (one, other)]
        if all(self._whole(a.and_(b, TWO)) is None for a, b in product(*largest)):
            return None
        for a, b in sorted(product(one, other), key=lambda pair: pair[0].weight + pair[1].weight):
            both = a.and_(b, TWO)
            changed = self._whole(both)
            if changed is not None:
                return both, changed
        return None

    def in_part(self) -> None:
        """Finds what makes the plan better by its costly aims, in their order, though not whole."""
        for family in sorted(self.families.values(), key=lambda family: family[0].weight):
            for proposal in self._better_of(family):
                changed, reached = self._changed(proposal), self._costly(proposal)
                if changed is not None and reached is not None and self._offer(proposal, changed, reached):
                    break

    def _better_of(self, family: list[Proposal]) -> Iterator[Proposal]:
        """Those of a family that help in part; of one that grows, the least that helps as much as the largest."""
        now = self.values[: len(COSTLY)]
        if not family[0].grows:
            yield from (p for p in family if (costly := self._costly(p)) is not None and costly < now)
            return
        reached = self._costly(family[-1])
        if reached is None or reached >= now:
            return
        least = self._least(family, lambda p: (costly := self._costly(p)) is not None and costly <= reached)
        if least is not None:
            yield least

    def _costly(self, proposal: Proposal) -> Values | None:
        """The values of the costly aims with a change; None if it cannot be, or if they could not be proved."""
        if proposal.edits not in self.costly:
            changed = self._changed(proposal)
            sound = changed is not None and self.means.sound(changed[0])
            solution = self.means.solve(changed[1], COSTLY) if changed is not None and sound else None
            proved = solution is not None and solution.proved
            self.costly[proposal.edits] = _values(solution, COSTLY) if solution is not None and proved else None
        return self.costly[proposal.edits]

    def _offer(self, proposal: Proposal, changed: _Changed, reached: Values = NOTHING) -> bool:
        """Whether it is offered: worked out, it has to reach what the costly aims are known to reach."""
        way = self._worked_out(proposal, changed, reached)
        if way is not None:
            self.found.append(way)
        return way is not None

    def _whole(self, proposal: Proposal) -> _Changed | None:
        """The changed plan, if all its limits can be kept and it may be cooked."""
        if proposal.edits not in self.whole:
            changed = self._changed(proposal)
            can_be = changed is not None and self.means.can_be_whole(changed[1]) and self.means.sound(changed[0])
            self.whole[proposal.edits] = changed if can_be else None
        return self.whole[proposal.edits]

    def _changed(self, proposal: Proposal) -> _Changed | None:
        """The changed plan, not yet written, and the problem it poses; None if an edit is refused."""
        if proposal.edits not in self.changed:
            if self.means.left() <= 0:
                raise _TimeIsUp
            self.means.tell(proposal.what)
            tried = self._tried(proposal.edits)
            posed = (tried.file, problem_of(tried.file.plan, tried.file.filled)) if tried is not None else None
            self.changed[proposal.edits] = posed
        return self.changed[proposal.edits]

    def _tried(self, edits: tuple[Edit, ...]) -> Tried | None:
        """The plan with the edits made, each on what the ones before it made."""
        if edits not in self.tried:
            before = self._tried(edits[:-1])
            self.tried[edits] = try_all(before, edits[-1:]) if before is not None else None
        return self.tried[edits]

    def _worked_out(self, proposal: Proposal, changed: _Changed, reached: Values) -> WayOut | None:
        """The way out with its timetable; None if that falls short, is no better than doing nothing, or hurts
        anybody."""
        edit = proposal.edits[0]
        if isinstance(edit, AddHelper):
            proposal = self._with_less_of(proposal, edit, changed)
        made = apply_all(self.text, self.case.file, proposal.edits)
        if isinstance(made, CannotEdit):
            return None
        text, file = made
        problem = problem_of(file.plan, file.filled)
        solution = self.means.solve(problem, AIMS)
        if solution is None or _values(solution, COSTLY) > reached:
            return None
        sheet = to_run_sheet(file, problem, solution)
        values = self._compared(sheet, solution)
        if values[: len(COSTLY)] >= self.values[: len(COSTLY)] or not self.means.safe(file, sheet):
            return None
        return WayOut(
            self._told(proposal, sheet),
            price.brings(self.sheet, sheet),
            price.costs(self.sheet, sheet, values[AIMS.index("freshness")] - self.values[AIMS.index("freshness")]),
            text,
            sheet,
            values,
            proposal.weight + price.more_away(self.sheet, sheet),
            proposal.kind,
        )

    def _compared(self, sheet: RunSheet, solution: Solution) -> Values:
        """The values of the aims. A course that is wanted later than before is as late as it is beyond when it would go
        out anyway, lest a later wish pass for a gain."""
        values = list(_values(solution))
        values[AIMS.index("courses")] += LATER_STILL * price.later_than_anyway(self.sheet, sheet)
        return tuple(values)

    def _told(self, proposal: Proposal, sheet: RunSheet) -> str:
        """The change, with when that is done whose time it frees."""
        said, slots = list(proposal.said), sheet.by_id()
        for number, job in proposal.timed:
            slot = slots[self.case.problem.jobs[job].id]
            start, end = (at.astimezone(self.zone) for at in (slot.start, slot.end))
            when = shared.from_to(shared.day_and_clock(start), shared.clock(end))
            said[number] = words.way_timed(said[number], when)
        return words.together(said)

    def _with_less_of(self, proposal: Proposal, edit: AddHelper, changed: _Changed) -> Proposal:
        """Limits the helper to hours that cover the least work of theirs that still helps."""
        problem = replace(changed[1], spared=len(changed[1].hands) - 1)
        solution = self.means.solve(problem, SPARED)
        if solution is None:
            return proposal
        spans = [
            (solution.starts[n] + part.offset, solution.starts[n] + part.offset + part.length)
            for n in range(len(problem.jobs))
            if problem.spared in solution.who[n]
            for part in way_of(problem, solution, n).parts
        ]
        if not spans:
            return proposal
        start, end = (
            shared.clock((problem.origin + timedelta(minutes=minute)).astimezone(self.zone))
            for minute in (min(a for a, _ in spans), max(b for _, b in spans))
        )
        worked = sum(b - a for a, b in spans)
        what = words.way_helper(worked, start, end, edit.day)
        return replace(proposal, said=(what,), edits=(replace(edit, start=start, end=end),), weight=HELPER + worked)


def _values(solution: Solution, aims: Sequence[str] = AIMS) -> Values:
    """The values of some aims, in their order."""
    values = {result.aim: result.value for result in solution.aims}
    return tuple(values[aim] for aim in aims)
