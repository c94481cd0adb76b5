"""What is decided: a start for every job, which way it is done and by whom."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from board.schedule.intervals import Window
from board.schedule.problem import Hand, Job, Problem
from board.schedule.solver.library import cp_model
from board.schedule.windows import allowed_starts, nearest_starts


@dataclass
class JobVars:
    """One job's variables. `over` is true when it breaks the hours it should keep."""

    job: Job
    start: cp_model.IntVar
    end: cp_model.LinearExpr | cp_model.IntVar
    ways: list[cp_model.IntVar]
    who: dict[int, cp_model.IntVar]  # empty when the job needs nobody
    over: cp_model.IntVar
    kept: cp_model.IntVar  # false: its result goes without the place it should be kept in


@dataclass
class Spell:
    """An interval that uses something, present if `literal` is true."""

    job: int
    start: cp_model.LinearExprT
    end: cp_model.LinearExprT
    interval: cp_model.IntervalVar
    literal: cp_model.LiteralT
    is_hold: bool = False


class Variables:
    """All variables of a problem, in a model of their own."""

    def __init__(self, problem: Problem) -> None:
        self.problem = problem
        self.model = cp_model.CpModel()
        self.true = self.model.new_constant(1)
        self.off_setting: list[cp_model.LinearExpr] = []  # by how many °C bakes have another than they want
        self.at_work: dict[int, list[cp_model.IntervalVar]] = {}  # by hand: what is no pause, as `Limits` adds it
        self.jobs = [self._job(n, job) for n, job in enumerate(problem.jobs)]

    def _job(self, n: int, job: Job) -> JobVars:
        model = self.model
        if job.fixed is not None:
            start = model.new_constant(job.fixed)
        else:
            start = model.new_int_var(job.earliest, self.problem.horizon, f"start {job.id}")
        ways = self._choice([f"way {w} {job.id}" for w in range(len(job.ways))])
        lengths = {way.minutes for way in job.ways}
        end: cp_model.LinearExpr | cp_model.IntVar
        if len(lengths) == 1:
            end = start + lengths.pop()
        else:
            end = model.new_int_var(0, self.problem.horizon + max(lengths), f"end {job.id}")
            for way, literal in zip(job.ways, ways, strict=True):
                model.add(end == start + way.minutes).only_enforce_if(literal)
        needs_hands = any(way.parts for way in job.ways)
        literals = self._choice([f"hand {h} {job.id}" for h in job.hands], job.crew) if needs_hands else []
        who = dict(zip(job.hands, literals, strict=False))
        over = model.new_bool_var(f"over {job.id}") if job.fixed is None else model.new_constant(0)
        placed = any(way.hold and (way.hold.demands or way.hold.oven or way.hold.hot) for way in job.ways)
        kept = model.new_bool_var(f"kept {job.id}") if placed else self.true
        variables = JobVars(job, start, end, ways, who, over, kept)
        if job.fixed is None:
            self._keep_hours(variables)
        return variables

    def _choice(self, names: list[str], count: int = 1) -> list[cp_model.IntVar]:
        """Exactly so many of these; all of them need no variable."""
        if len(names) == count:
            return [self.true] * count
        literals = [self.model.new_bool_var(name) for name in names]
        if count == 1:
            self.model.add_exactly_one(literals)
        else:
            self.model.add(cp_model.LinearExpr.sum(literals) == count)
        return literals

    def both(self, *literals: cp_model.LiteralT) -> cp_model.LiteralT:
        """True exactly when all are; no variable where one of them says it all."""
        open_ones = [literal for literal in literals if literal is not self.true]
        if len(open_ones) < 2:
            return open_ones[0] if open_ones else self.true
        both = self.model.new_bool_var("both")
        self.model.add_bool_and(*open_ones).only_enforce_if(both)
        self.model.add_bool_or(both, *(~literal for literal in open_ones))
        return both

    def any_of(self, ways: Sequence[cp_model.LiteralT]) -> cp_model.LiteralT:
        """True where one of a job's ways is chosen."""
        if len(ways) == 1:
            return ways[0]
        one = self.model.new_bool_var("one of these ways")
        for way in ways:
            self.model.add_implication(way, one)
        return one

    def _keep_hours(self, job: JobVars) -> None:
        for windows, chosen, who in self._by_hours(job, allowed_starts):
            domain = _domain(windows)
            if domain.is_empty():
                self.model.add_bool_or(job.over, ~chosen, ~who)
            else:
                self.model.add_linear_expression_in_domain(job.start, domain).only_enforce_if(chosen, who, ~job.over)

    def _by_hours(
        self, job: JobVars, starts: Callable[..., list[Window]]
    ) -> Iterator[tuple[list[Window], cp_model.LiteralT, cp_model.LiteralT]]:
        """Its starts for each way of it and each who may do that."""
        for way, literal in zip(job.job.ways, job.ways, strict=True):
            pairs: list[tuple[list[Hand], cp_model.LiteralT]] = [([], self.true)]
            if way.parts:
                pairs = [([self.problem.hands[h]], who) for h, who in job.who.items()]
            for hands, who in pairs:
                yield starts(self.problem, job.job, way, *hands), literal, who

    def far_off(self, job: JobVars) -> cp_model.IntVar | None:
        """Minutes from its start to the nearest that would keep its hours, or break them least, by whose of its hands
        is furthest off; None where it is fixed."""
        if job.job.fixed is not None:
            return None
        far = self.model.new_int_var(0, self.problem.horizon, f"far off {job.job.id}")
        for windows, chosen, who in self._by_hours(job, nearest_starts):
            nearest = self.model.new_int_var_from_domain(_domain(windows), f"nearest {job.job.id}")
            self.model.add(far >= nearest - job.start).only_enforce_if(chosen, who)
            self.model.add(far >= job.start - nearest).only_enforce_if(chosen, who)
        return far


def _domain(starts: list[Window]) -> cp_model.Domain:
    return cp_model.Domain.from_intervals([[a, b - 1] for a, b in starts])
