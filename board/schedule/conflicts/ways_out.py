"""Ways out of a clash: a change to the plan is made, solved again, and offered only if it helps. Pure.

`proposals` says what is tried; the solver, and the check that a plan may be cooked, are passed in.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.plan.edit.edits import AddHelper, CannotEdit, apply_all
from board.plan.load import PlanFile
from board.schedule.conflicts import words
from board.schedule.conflicts.proposals import HELPER, Case, Proposal, proposals
from board.schedule.dependencies import way_of
from board.schedule.formulate import problem_of
from board.schedule.problem import Problem
from board.schedule.solution import AIMS, COSTLY, SPARED, Solution
from board.schedule.to_run_sheet import to_run_sheet
from board.sheet import said
from board.sheet.company import away_minutes
from board.sheet.run_sheet import RunSheet

MOST_TRIED, MOST_TRIED_IN_PART = 80, 12
Costs = tuple[int, ...]
_Changed = tuple[str, PlanFile, Problem]


@dataclass(frozen=True)
class Means:
    """What the search is given: a solver (with the aims wanted), a quick test whether all limits can be kept, a check
    that a plan may be cooked at all, and where to report what is being tried."""

    solve: Callable[[Problem, tuple[str, ...]], Solution]
    can_be_whole: Callable[[Problem], bool | None]
    sound: Callable[[PlanFile], bool]
    tell: Callable[[str], None]


@dataclass(frozen=True)
class WayOut:
    """A change that helps: what it is, its price, and the plan and the run sheet it leads to."""

    what: str
    price: str
    text: str
    sheet: RunSheet
    remains: int  # things still given up
    weight: int


def ways_out(text: str, case: Case, sheet: RunSheet, wanted: int, means: Means) -> list[WayOut]:
    """Up to `wanted` ways out of what `sheet` gives up: those that leave nothing given up first, the cheapest first.

    `case` is the plan in `text` with its solution and clashes. A KeyboardInterrupt ends the search with what is found.
    """
    search = _Search(text, case, sheet, means)
    found: list[WayOut] = []
    try:
        search.whole(found, wanted)
        if not found:
            search.in_part(found)
    except KeyboardInterrupt:
        pass
    return sorted(found, key=lambda way: (way.remains > 0, way.weight, way.remains))[:wanted]


class _Search:
    def __init__(self, text: str, case: Case, sheet: RunSheet, means: Means) -> None:
        self.text = text
        self.case = case
        self.sheet = sheet
        self.means = means
        self.costs = _costs(case.solution)
        self.zone = ZoneInfo(sheet.zone)
        self.proposals = proposals(case)
        self.helped: set[str] = set()  # families that need no more trying

    def whole(self, found: list[WayOut], wanted: int) -> None:
        """Adds changes that leave nothing given up, the lightest proposals first."""
        for proposal in self.proposals[:MOST_TRIED]:
            if proposal.family in self.helped:
                continue
            self.means.tell(proposal.what)
            changed = self._changed(proposal)
            if changed is not None and self.means.can_be_whole(changed[2]):
                self.helped.add(proposal.family)
                found.append(self._worked_out(proposal, changed))
                if len(found) == wanted:
                    return

    def in_part(self, found: list[WayOut]) -> None:
        """Adds what makes something better and nothing worse."""
        rest = [proposal for proposal in self.proposals if proposal.family not in self.helped]
        for proposal in rest[:MOST_TRIED_IN_PART]:
            self.means.tell(proposal.what)
            changed = self._changed(proposal)
            if changed is None or proposal.family in self.helped:
                continue
            if self._better(self.means.solve(changed[2], COSTLY)):
                way = self._worked_out(proposal, changed)
                if way.remains < len(self.sheet.given_up):
                    self.helped.add(proposal.family)
                    found.append(way)

    def _better(self, solution: Solution) -> bool:
        costs = _costs(solution)
        return costs != self.costs and all(now <= before for now, before in zip(costs, self.costs, strict=True))

    def _worked_out(self, proposal: Proposal, changed: _Changed) -> WayOut:
        edit = proposal.edits[0]
        if isinstance(edit, AddHelper):
            proposal, changed = self._with_less_of(proposal, edit, changed)
        text, file, problem = changed
        sheet = to_run_sheet(file, problem, self.means.solve(problem, AIMS))
        more = away_minutes(sheet) - away_minutes(self.sheet)
        return WayOut(
            proposal.what, self._price(sheet, more), text, sheet, len(sheet.given_up), proposal.weight + max(0, more)
        )

    def _with_less_of(self, proposal: Proposal, edit: AddHelper, changed: _Changed) -> tuple[Proposal, _Changed]:
        """Limits the helper to hours that cover the least work of theirs that still helps."""
        problem = replace(changed[2], spared=len(changed[2].hands) - 1)
        solution = self.means.solve(problem, SPARED)
        spans = [
            (solution.starts[n] + part.offset, solution.starts[n] + part.offset + part.length)
            for n in range(len(problem.jobs))
            if solution.who[n] == problem.spared
            for part in way_of(problem, solution, n).parts
        ]
        if not spans:
            return proposal, changed
        start, end = (
            shared.clock((problem.origin + timedelta(minutes=minute)).astimezone(self.zone))
            for minute in (min(a for a, _ in spans), max(b for _, b in spans))
        )
        worked = sum(b - a for a, b in spans)
        what = words.way_helper(worked, start, end, edit.day)
        narrow = replace(proposal, what=what, edits=(replace(edit, start=start, end=end),), weight=HELPER + worked)
        again = self._changed(narrow)
        return (narrow, again) if again is not None else (proposal, changed)

    def _changed(self, proposal: Proposal) -> _Changed | None:
        made = apply_all(self.text, self.case.file, proposal.edits)
        if isinstance(made, CannotEdit) or not self.means.sound(made[1]):
            return None
        text, file = made
        return text, file, problem_of(file.plan, file.filled)

    def _price(self, sheet: RunSheet, more: int) -> str:
        """What else changes for the host: courses later or earlier, time away from guests, what is still given up."""
        pieces = list(self._moved(sheet))
        if more:
            pieces.append(words.price_away(more))
        first = said.what(sheet, sheet.given_up[0].what) if sheet.given_up else ""
        pieces.append(words.price_remains(len(sheet.given_up), first))
        return "; ".join(pieces)

    def _moved(self, sheet: RunSheet) -> Iterator[str]:
        before = {course.name: course.served for course in self.sheet.courses}
        for course in sheet.courses:
            if before.get(course.name, course.served) != course.served:
                yield words.price_moved(course.name, self._clock(course.served), self._clock(before[course.name]))

    def _clock(self, at: datetime) -> str:
        return shared.clock(at.astimezone(self.zone))


def _costs(solution: Solution) -> Costs:
    """The values of the costly aims, the dearest first."""
    values = {result.aim: result.value for result in solution.aims}
    return tuple(values[aim] for aim in COSTLY)
