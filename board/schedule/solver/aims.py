"""The aims, in strict order: hours kept, no dish out past its clock, courses on time, nothing kept too long, hot food
fresh, jobs at their usual hours, nobody up from the table too soon, all who eat with the guests, pauses, calm last
hours, work spread over the days.

Each aim is a sum to minimise. Lateness, clocks and keeping are soft, so there is always a solution.
"""

from board.schedule.conflicts.violations import Kind, Violation
from board.schedule.problem import NO_PLACE
from board.schedule.solution import OUTSIDE
from board.schedule.solver.comfort import Ease
from board.schedule.solver.days import Days
from board.schedule.solver.library import cp_model
from board.schedule.solver.standing import Standing
from board.schedule.solver.table import broken_quiet
from board.schedule.solver.variables import JobVars, Variables

# Prices of broken soft limits: ours.
NOT_AT_ONCE = 10  # each minute between steps that should follow at once costs this many out of hours
BEYOND_SLIP = 4  # each minute beyond the slip the host allows costs this many more


class Aims:
    """Builds each aim's sum, and the finishing touch that chooses among equals."""

    def __init__(self, variables: Variables) -> None:
        self.v = variables
        self.model = variables.model
        self.problem = variables.problem
        self.violations: dict[
            Violation, cp_model.LinearExprT
        ] = {}  # by how much each limit is broken, in minutes; 0 or 1 for a place or hours
        self.hours = self._out_of_hours()
        self.courses = self._lateness()
        self.clocks, past_clocks = self._out_too_long()
        self.keeps, self.freshness = self._waiting(past_clocks)
        self.usual = self._out_of_custom()

    def costly(self) -> dict[str, cp_model.LinearExprT]:
        """Those of `solution.COSTLY`."""
        return {"hours": self.hours, "clocks": self.clocks, "courses": self.courses, "keeps": self.keeps}

    def outside(self) -> dict[str, cp_model.LinearExprT]:
        """The next: by how many minutes work lies off where it would keep its hours, or break them least. Made only
        where some of it does, and once."""
        return {OUTSIDE: cp_model.LinearExpr.sum([far for j in self.v.jobs if (far := self.v.far_off(j)) is not None])}

    def soon(self) -> dict[str, cp_model.LinearExprT]:
        """Those, and the next but that in the order of `solution.AIMS`. Made once, since it adds variables."""
        self.ease = Ease(self.v)
        return {
            **self.costly(),
            "freshness": self.freshness,
            "usual": self.usual,
            "table": broken_quiet(self.v),
            "company": self.ease.away_from_guests(),
        }

    def of_the_days(self) -> dict[str, cp_model.LinearExprT]:
        """The next, whose many variables would weigh upon the search for the first. Made once, after those."""
        days = Days(self.v)
        return {"rest": days.without_pause(), "day": days.in_the_last_hours(), "spread": days.crowded()}

    def late(self) -> dict[str, cp_model.LinearExprT]:
        """The rest of them, for the same reason. Made once, after those."""
        return {
            "busiest": self.ease.busiest_half_hour(),
            "give": self.ease.missing_give(),
            "spared": self.ease.minutes_of(self.problem.spared),
        }

    def _above(self, amount: cp_model.LinearExprT, name: str) -> cp_model.IntVar:
        """A variable at least `amount` and at least 0; minimised, it is the positive part."""
        over = self.model.new_int_var(0, self.problem.horizon, name)
        self.model.add(over >= amount)
        return over

    def _violated(self, kind: Kind, index: int, amount: cp_model.LinearExprT) -> cp_model.IntVar:
        over = self._above(amount, f"{kind} {index}")
        self.violations[Violation(kind, index)] = over
        return over

    def _out_of_hours(self) -> cp_model.LinearExprT:
        """Minutes of work out of hours, and between steps that should follow at once: neither should happen."""
        terms: list[cp_model.LinearExprT] = [term for j in self.v.jobs for term in self._minutes_over(j)]
        self.violations.update({Violation("out-of-hours", n): j.over for n, j in enumerate(self.v.jobs)})
        for n, order in enumerate(self.problem.orders):
            if order.most is not None and order.most == order.least:
                wait = self.v.jobs[order.second].start - self.v.jobs[order.first].end
                terms.append(NOT_AT_ONCE * self._violated("not-at-once", n, wait - order.most))
        return cp_model.LinearExpr.sum(terms)

    def _minutes_over(self, variables: JobVars) -> list[cp_model.LinearExprT]:
        """Attended minutes of the way chosen, where it breaks its hours; 1 where it needs nobody."""
        ways = variables.job.ways
        costs = [sum(part.length for part in way.parts) or 1 for way in ways]
        if len(set(costs)) == 1:
            return [variables.over * costs[0]]
        return [self.v.both(variables.over, way) * cost for way, cost in zip(variables.ways, costs, strict=True)]

    def _lateness(self) -> cp_model.LinearExprT:
        terms: list[cp_model.LinearExprT] = []
        for n, serving in enumerate(self.problem.servings):
            end = self.v.jobs[serving.job].end
            terms.append(self._violated("late", n, end - serving.wanted))
            terms.append(BEYOND_SLIP * self._above(end - serving.wanted - serving.slip, f"beyond {serving.name}"))
        return cp_model.LinearExpr.sum(terms)

    def _out_too_long(self) -> tuple[cp_model.LinearExprT, list[cp_model.LinearExprT]]:
        """How many dishes stand neither hot nor cold enough for longer than their clocks give them, and by how many
        minutes each. What is past its clock is lost: a minute more of it is then no dearer than one of keeping."""
        standing = Standing(self.v)
        dishes: list[cp_model.LinearExprT] = []
        minutes: list[cp_model.LinearExprT] = []
        for n, clock in enumerate(self.problem.clocks):
            past, lost = standing.past(clock), self.model.new_bool_var(f"lost {clock.dish}")
            self.model.add(past <= 0).only_enforce_if(~lost)
            dishes.append(lost)
            minutes.append(self._violated("clock", n, past))
        return cp_model.LinearExpr.sum(dishes), minutes

    def _waiting(self, past: list[cp_model.LinearExprT]) -> tuple[cp_model.LinearExprT, cp_model.LinearExprT]:
        """Minutes kept past a limit, `past` clocks among them, and minutes a fresh dish stands past its best."""
        past = [*past]
        stale: list[cp_model.LinearExprT] = []
        for n, order in enumerate(self.problem.orders):
            first, second = self.v.jobs[order.first], self.v.jobs[order.second]
            wait = second.start - first.end
            if not order.firm:
                past.append(self._violated("not-ready", n, order.ready - wait))
            if order.most is not None and order.most > order.least and not order.usual:
                past.append(self._violated("waits", n, wait - order.most))
            past += self._past_its_limit(n, first, wait) if order.takes_up else []
            if first.job.best_within is not None and order.takes_up:
                stale.append(self._above(wait - first.job.best_within, "past its best"))
        return cp_model.LinearExpr.sum(past), cp_model.LinearExpr.sum(stale)

    def _out_of_custom(self) -> cp_model.LinearExprT:
        """Minutes by which jobs lie outside their usual hours."""
        terms: list[cp_model.LinearExprT] = []
        for order in self.problem.orders:
            wait = self.v.jobs[order.second].start - self.v.jobs[order.first].end
            if order.usual and order.most is not None:
                terms.append(self._above(wait - order.most, "too far off"))
            if order.usual and order.least and not order.firm:
                terms.append(self._above(order.least - wait, "too near"))
        return cp_model.LinearExpr.sum(terms)

    def _past_its_limit(self, n: int, first: JobVars, wait: cp_model.LinearExprT) -> list[cp_model.LinearExprT]:
        limits = [way.hold.limit if way.hold else None for way in first.job.ways]
        if all(limit is None for limit in limits):
            return []
        past = self.model.new_int_var(0, self.problem.horizon, "past its limit")
        for limit, literal in zip(limits, first.ways, strict=True):
            if limit is not None:
                self.model.add(past >= wait - limit).only_enforce_if(literal)
        self.violations[Violation("past-limit", n)] = past
        if first.kept is self.v.true:
            return [past]
        self.model.add(past >= wait).only_enforce_if(~first.kept)
        self.violations[Violation("no-place", self.problem.orders[n].first)] = 1 - first.kept
        return [past, NO_PLACE * (1 - first.kept)]

    def prompt(self) -> cp_model.LinearExprT:
        """Among equals: work that nothing at the table waits for, such as clearing, is done at once."""
        follows = {order.first for order in self.problem.orders}
        return cp_model.LinearExpr.sum([j.start for n, j in enumerate(self.v.jobs) if j.job.early or n not in follows])

    def touch(self) -> cp_model.LinearExprT:
        """Among equals: results wait about as long as is comfortable, neither rushed nor stale; bakes have the setting
        they want rather than another in their range."""
        terms: list[cp_model.LinearExprT] = []
        for order in self.problem.orders:
            first, second = self.v.jobs[order.first], self.v.jobs[order.second]
            if first.job.fixed is not None or first.job.early or first.job.is_trip or not order.takes_up:
                continue
            needs_nobody = all(not way.parts or way.parts[0].offset for way in second.job.ways)
            cushion = 0 if needs_nobody else comfortable_wait(first)
            wait = second.start - first.end
            off = self.model.new_int_var(0, self.problem.horizon, "off")
            self.model.add(off >= wait - cushion - order.least)
            self.model.add(2 * (cushion + order.least - wait) <= off)
            terms.append(off)
        return cp_model.LinearExpr.sum([*terms, *self.v.off_setting])


def comfortable_wait(job: JobVars) -> int:
    """Minutes a result may stand unnoticed: a quarter of its shelf life, at most a quarter of an hour."""
    limit = job.job.ways[0].hold.limit if job.job.ways[0].hold else 60
    if job.job.best_within is not None:
        limit = min(limit or 60, job.job.best_within * 2)
    return min(15, (60 if limit is None else limit) // 4)
