"""Everybody who eats stays seated once a course is served: the aim `table`, as a sum to minimise."""

from collections.abc import Iterator

from board.schedule.problem import Part, Problem, Sitting
from board.schedule.solver.library import cp_model
from board.schedule.solver.variables import JobVars, Variables


def broken_quiet(variables: Variables) -> cp_model.LinearExprT:
    """Over the courses, minutes by which the first who sits gets up too soon, so that what is left is one quiet stretch
    rather than several; and minutes of all work that lies in the stretch, none counted for more than all of it. Not to
    have sat down yet, as a course is served, is to get up at once.
    """
    table = _Table(variables)
    return cp_model.LinearExpr.sum([term for sitting in variables.problem.sittings for term in table.broken(sitting)])


class _Table:
    def __init__(self, variables: Variables) -> None:
        self.v = variables
        self.model = variables.model
        self.hired = {n for n, hand in enumerate(variables.problem.hands) if not hand.sits}

    def broken(self, sitting: Sitting) -> Iterator[cp_model.LinearExprT]:
        missing = self.model.new_int_var(0, sitting.minutes, f"quiet missing {sitting.name}")
        served = self.v.jobs[sitting.job].end
        for n in _may_interrupt(self.v.problem, sitting):
            variables = self.v.jobs[n]
            for part, chosen in self._parts(variables):
                up = self._gets_up(missing, sitting, served, variables.start + part.offset, part.length, chosen)
                yield up * min(part.length, sitting.minutes)
        yield missing

    def _parts(self, variables: JobVars) -> Iterator[tuple[Part, list[cp_model.LiteralT]]]:
        """Each part of a job, with when it is done by somebody who sits; one that several ways share is told once."""
        sits = [who for hand, who in variables.who.items() if hand not in self.hired]
        if not sits:
            return
        by: dict[tuple[int, int], tuple[Part, list[cp_model.LiteralT]]] = {}
        for way, chosen in zip(variables.job.ways, variables.ways, strict=True):
            for part in way.parts:
                by.setdefault((part.offset, part.length), (part, []))[1].append(chosen)
        for part, ways in by.values():
            done = [] if len(ways) == len(variables.ways) else [self.v.any_of(ways)]
            yield part, done if len(sits) == len(variables.who) else [*done, self.v.any_of(sits)]

    def _gets_up(
        self,
        missing: cp_model.IntVar,
        sitting: Sitting,
        served: cp_model.LinearExpr | cp_model.IntVar,
        begin: cp_model.LinearExpr,
        length: int,
        done: list[cp_model.LiteralT],
    ) -> cp_model.IntVar:
        """Whether a part lies in the stretch: where it is done, it is over as the course is served, or begins after the
        stretch, or its beginning ends the quiet."""
        up = self.model.new_bool_var("gets up")
        over = self.model.new_bool_var("over as it is served")
        since = self.model.new_bool_var("begins since")
        asked = served + sitting.minutes
        self.model.add(begin + length <= served).only_enforce_if(over, ~up, *done)
        self.model.add(begin >= asked).only_enforce_if(~over, ~up, *done)
        self.model.add(missing >= asked - begin).only_enforce_if(up, since, *done)
        self.model.add(missing >= sitting.minutes).only_enforce_if(up, ~since, *done)
        return up


def _may_interrupt(problem: Problem, sitting: Sitting) -> list[int]:
    """Jobs that may fall into the stretch: not those that are over before it or come after it by their order, what is
    done beside the guests, nor what is under way."""
    later = _soonest_after(problem, sitting.job)
    earlier = _all_before(problem, sitting.job)
    return [
        n
        for n, job in enumerate(problem.jobs)
        if n != sitting.job
        and n not in earlier
        and later.get(n, 0) < sitting.minutes
        and job.fixed is None
        and not job.with_guests
        and any(way.parts for way in job.ways)
    ]


def _all_before(problem: Problem, job: int) -> set[int]:
    before: dict[int, list[int]] = {}
    for order in problem.orders:
        if order.firm and order.least >= 0:
            before.setdefault(order.second, []).append(order.first)
    found, queue = set[int](), list(before.get(job, ()))
    while queue:
        n = queue.pop()
        if n not in found:
            found.add(n)
            queue += before.get(n, ())
    return found


def _soonest_after(problem: Problem, job: int) -> dict[int, int]:
    """Of all that comes after a job by its order, the minutes from the job's end for which it cannot begin."""
    after: dict[int, list[tuple[int, int]]] = {}
    for order in problem.orders:
        if order.firm:
            after.setdefault(order.first, []).append((order.second, order.least))
    found: dict[int, int] = {}
    queue = [(job, 0)]
    while queue:
        n, over = queue.pop()
        for then, least in after.get(n, ()):
            if found.get(then, -1) < over + least:
                found[then] = over + least
                queue.append((then, found[then] + min(way.minutes for way in problem.jobs[then].ways)))
    return found
