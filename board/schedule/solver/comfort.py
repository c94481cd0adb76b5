"""The host's comfort, as sums to minimise: minutes away from guests, the busiest half hour, missing slack."""

from collections.abc import Iterator

from board.schedule.problem import Part
from board.schedule.solver.library import cp_model
from board.schedule.solver.variables import JobVars, Variables
from board.sheet.company import is_away

BEFORE_SERVING = 30  # minutes; ours


class Ease:
    """Builds the sums over the variables of a problem."""

    def __init__(self, variables: Variables) -> None:
        self.v = variables
        self.model = variables.model
        self.problem = variables.problem

    def minutes_of(self, hand: int | None) -> cp_model.LinearExprT:
        """Attended minutes of one pair of hands."""
        terms: list[cp_model.LinearExprT] = []
        for variables in self.v.jobs:
            who = variables.who.get(hand) if hand is not None else None
            if who is None:
                continue
            for way, chosen in zip(variables.job.ways, variables.ways, strict=True):
                if way.parts:
                    terms.append(self.v.both(who, chosen) * sum(part.length for part in way.parts))
        return cp_model.LinearExpr.sum(terms)

    def attended_after(self, moment: int) -> cp_model.LinearExprT:
        """Minutes of work, whoever does it, that end after a moment and could lie before it."""
        terms: list[cp_model.LinearExprT] = []
        for variables in self.v.jobs:
            by: dict[
                tuple[int, int], list[cp_model.LiteralT]
            ] = {}  # end, from the job's start, and minutes → the ways so
            for way, chosen in zip(variables.job.ways, variables.ways, strict=True):
                for part in way.parts:
                    by.setdefault((part.offset + part.length, part.length), []).append(chosen)
            if variables.job.fixed is None:
                terms += [self._ends_after(variables, end, moment, ways) * length for (end, length), ways in by.items()]
        return cp_model.LinearExpr.sum(terms)

    def _ends_after(self, variables: JobVars, end: int, moment: int, ways: list[cp_model.LiteralT]) -> cp_model.IntVar:
        """Whether a part ends after a moment, and is done: by one of these ways."""
        after = self.model.new_bool_var(f"after {moment} {variables.job.id}")
        before = self.model.add(variables.start <= moment - end)
        if len(ways) == len(variables.ways):
            before.only_enforce_if(~after)
            return after
        chosen = self.v.any_of(ways)
        before.only_enforce_if(~after, chosen)
        return after

    def away_from_guests(self) -> cp_model.LinearExprT:
        """The host's minutes in the kitchen between the guests' coming and the end of the last course."""
        terms: list[cp_model.LinearExprT] = []
        for variables in self.v.jobs:
            host = variables.who.get(self.problem.host)
            if host is None or variables.job.fixed is not None:
                continue
            for way, chosen in zip(variables.job.ways, variables.ways, strict=True):
                if is_away(way.lane, with_guests=variables.job.with_guests):
                    done = self.v.both(host, chosen)
                    terms += [self._while_guests_are_there(variables, part, done) for part in way.parts]
        return cp_model.LinearExpr.sum(terms)

    def _while_guests_are_there(self, variables: JobVars, part: Part, done: cp_model.LiteralT) -> cp_model.IntVar:
        """Minutes of a part, where it is done, that lie between the guests' coming and the end of the dinner.

        The least of what lies from its start, or from the guests' coming, to its end, or to the end of the dinner.
        Only what leads to no serving can come after the dinner.
        """
        away = self.model.new_int_var(0, part.length, "away")
        early = self.model.new_bool_var("counted from the guests' coming")
        begin = variables.start + part.offset
        sinces: list[tuple[cp_model.LinearExpr | int, cp_model.LiteralT]] = [
            (begin, ~early),
            (self.problem.arrives, early),
        ]
        untils: list[tuple[cp_model.LinearExpr | cp_model.IntVar, cp_model.LiteralT]] = [
            (begin + part.length, self.v.true)
        ]
        if variables.job.early and self.problem.dinner_over is not None:
            late = self.model.new_bool_var("counted to the end of the dinner")
            over = self.v.jobs[self.problem.dinner_over].start
            untils = [(begin + part.length, ~late), (over, late)]
        for since, is_since in sinces:
            for until, is_until in untils:
                self.model.add(away + since >= until).only_enforce_if(done, is_since, is_until)
        return away

    def busiest_half_hour(self) -> cp_model.LinearExprT:
        """The most attended minutes the host has in the half hour before any course is plated."""
        most = self.model.new_int_var(0, self.problem.horizon, "busiest half hour")
        for serving in self.problem.servings:
            plated = self.v.jobs[serving.job].start
            terms = [literal * length for literal, length in self._in_the_half_hour(serving.job, plated)]
            self.model.add(most >= cp_model.LinearExpr.sum(terms))
        return most

    def _in_the_half_hour(self, job: int, plated: cp_model.LinearExprT) -> Iterator[tuple[cp_model.IntVar, int]]:
        for n, variables in enumerate(self.v.jobs):
            host = variables.who.get(self.problem.host)
            if host is None or n == job or variables.job.fixed is not None:
                continue
            for way, chosen in zip(variables.job.ways, variables.ways, strict=True):
                for part in way.parts:
                    begins = variables.start + part.offset
                    before, after = self.model.new_bool_var("before"), self.model.new_bool_var("after")
                    self.model.add(begins + part.length <= plated - BEFORE_SERVING).only_enforce_if(before)
                    self.model.add(begins >= plated).only_enforce_if(after)
                    within = self.model.new_bool_var("within")
                    excuses = [~x for x in (host, chosen) if x is not self.v.true]
                    self.model.add_bool_or(within, before, after, *excuses)
                    yield within, part.length

    def missing_give(self) -> cp_model.LinearExprT:
        """Minutes by which a step might run over, and has no room for before what takes it up."""
        terms: list[cp_model.LinearExprT] = []
        for order in self.problem.orders:
            first, second = self.v.jobs[order.first], self.v.jobs[order.second]
            wanted = [way.may_run_over for way in first.job.ways]
            if order.most is not None:  # a way that may run over by more than there may be between has none to miss
                wanted = [over if over <= order.most - order.least else 0 for over in wanted]
            if not any(wanted):
                continue
            # What may come too late, as a job for the guests, can be shorter of give than it needs.
            most = max(wanted) if order.firm else self.problem.horizon
            short = self.model.new_int_var(0, most, "short of give")
            for over in {over for over in wanted if over}:
                chosen = self.v.any_of([way for way, each in zip(first.ways, wanted, strict=True) if each == over])
                missing = self.model.add(short >= over - (second.start - first.end - order.least))
                missing.only_enforce_if(chosen)
            terms.append(short)
        return cp_model.LinearExpr.sum(terms)
