"""Comfort, as sums to minimise: minutes away from the guests, the host's busiest half hour, missing slack."""

from collections.abc import Iterator

from board.schedule.problem import Part
from board.schedule.solver.library import cp_model
from board.schedule.solver.variables import JobVars, Variables
from board.sheet import company
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

    def away_from_guests(self) -> cp_model.LinearExprT:
        """What weighs of the minutes that those who sit spend in the kitchen between the guests' coming and the end of
        the last course: `company.weight` of each."""
        sitters = [n for n, hand in enumerate(self.problem.hands) if hand.sits]
        minutes = [self._away(hand) for hand in sitters]
        if len(sitters) < 2:
            return cp_model.LinearExpr.sum([each for terms in minutes for each, _ in terms])
        return cp_model.LinearExpr.sum([self._weight(terms) for terms in minutes])

    def _away(self, hand: int) -> list[tuple[cp_model.IntVar, int]]:
        """Of each part of work that one pair of hands may do, the minutes it is away from the guests, and the most they
        may be."""
        terms: list[tuple[cp_model.IntVar, int]] = []
        for variables in self.v.jobs:
            who = variables.who.get(hand)
            if who is None or variables.job.fixed is not None:
                continue
            for way, chosen in zip(variables.job.ways, variables.ways, strict=True):
                if is_away(way.lane, with_guests=variables.job.with_guests):
                    done = self.v.both(who, chosen)
                    terms += [(self._while_guests_are_there(variables, part, done), part.length) for part in way.parts]
        return terms

    def _weight(self, terms: list[tuple[cp_model.IntVar, int]]) -> cp_model.LinearExprT:
        """At least as much as each line of the broken one asks for."""
        most = sum(length for _, length in terms)
        total = cp_model.LinearExpr.sum([minutes for minutes, _ in terms])
        weight = self.model.new_int_var(0, company.weight(most), "weight of minutes away")
        for slope, off in company.lines(most):
            self.model.add(weight >= slope * total - off)
        return weight

    def _while_guests_are_there(self, variables: JobVars, part: Part, done: cp_model.LiteralT) -> cp_model.IntVar:
        """Minutes of a part, where it is done, that lie between the guests' coming and the end of the dinner. Only what
        leads to no serving can come after the dinner."""
        over = self.problem.dinner_over if variables.job.early else None
        until = None if over is None else self.v.jobs[over].start
        return self._between(self.problem.arrives, until, variables.start + part.offset, part.length, [done])

    def _between(
        self,
        since: cp_model.LinearExpr | int,
        until: cp_model.IntVar | None,
        begin: cp_model.LinearExpr,
        length: int,
        done: list[cp_model.LiteralT],
    ) -> cp_model.IntVar:
        """Minutes of some work, where it is done, from one moment to another (None: to its end). Minimised, it is the
        least of what lies from its start, or from the first moment, to its end, or to the second."""
        within = self.model.new_int_var(0, length, "within")
        early = self.model.new_bool_var("counted from the first moment")
        sinces: list[tuple[cp_model.LinearExpr | int, cp_model.LiteralT]] = [(begin, ~early), (since, early)]
        end = begin + length
        untils: list[tuple[cp_model.LinearExpr | cp_model.IntVar, cp_model.LiteralT]] = [(end, self.v.true)]
        if until is not None:
            late = self.model.new_bool_var("counted to the second")
            untils = [(end, ~late), (until, late)]
        for first, is_first in sinces:
            for last, is_last in untils:
                self.model.add(within + first >= last).only_enforce_if(*done, is_first, is_last)
        return within

    def busiest_half_hour(self) -> cp_model.LinearExprT:
        """The most minutes of work the host has in the half hour before any course is plated."""
        most = self.model.new_int_var(0, BEFORE_SERVING, "busiest half hour")
        for serving in self.problem.servings:
            plated = self.v.jobs[serving.job].start
            self.model.add(most >= cp_model.LinearExpr.sum(list(self._in_the_half_hour(serving.job, plated))))
        return most

    def _in_the_half_hour(self, job: int, plated: cp_model.IntVar) -> Iterator[cp_model.IntVar]:
        for n, variables in enumerate(self.v.jobs):
            host = variables.who.get(self.problem.host)
            if host is None or n == job:
                continue
            for way, chosen in zip(variables.job.ways, variables.ways, strict=True):
                for part in way.parts:
                    begin = variables.start + part.offset
                    yield self._between(plated - BEFORE_SERVING, plated, begin, part.length, [host, chosen])

    def missing_give(self) -> cp_model.LinearExprT:
        """Minutes by which a step might run over, and has no room for before its successor."""
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
