"""How long dishes stand neither hot nor cold enough, as sums over the variables of a problem."""

from board.schedule.problem import Clock, Stood
from board.schedule.solver.library import cp_model
from board.schedule.solver.variables import JobVars, Variables


class Standing:
    """What adds up on the clocks. Where the longest of several counts, or the way chosen decides, a sum is at the least
    so much: minimised, it is that."""

    def __init__(self, variables: Variables) -> None:
        self.v = variables
        self.model = variables.model
        self.most = variables.problem.horizon + sum(stood.gone for stood in variables.problem.stood)
        self.longest: dict[tuple[int, ...], cp_model.LinearExprT] = {(): 0}
        self.sums: list[cp_model.LinearExprT] = []
        for stood in variables.problem.stood:
            self.sums.append(cp_model.LinearExpr.sum([self._longest(stood.after), self._out(stood), stood.gone]))

    def past(self, clock: Clock) -> cp_model.LinearExprT:
        """Minutes beyond what a clock gives; below nought where some are left."""
        serve = self.v.jobs[clock.serve]
        return cp_model.LinearExpr.sum([self._longest(clock.after), serve.end - serve.start, clock.eaten - clock.limit])

    def _longest(self, after: tuple[int, ...]) -> cp_model.LinearExprT:
        if after not in self.longest:
            self.longest[after] = self.sums[after[0]] if len(after) == 1 else self._at_least(after)
        return self.longest[after]

    def _at_least(self, after: tuple[int, ...]) -> cp_model.LinearExprT:
        longest = self.model.new_int_var(0, self.most, "stood longest")
        for n in after:
            self.model.add(longest >= self.sums[n])
        return longest

    def _out(self, stood: Stood) -> cp_model.LinearExprT:
        job = self.v.jobs[stood.job]
        if stood.until is not None:
            return self._kept(job, self.v.jobs[stood.until].start - job.end)
        ways = zip(job.job.ways, job.ways, strict=True)
        return cp_model.LinearExpr.sum([chosen * way.minutes for way, chosen in ways if way.exposed])

    def _kept(self, job: JobVars, wait: cp_model.LinearExprT) -> cp_model.LinearExprT:
        """The wait, where it stands out meanwhile: in its place, or for want of one."""
        if all(way.hold is not None and way.hold.exposed for way in job.job.ways):
            return wait
        out = self.model.new_int_var(0, self.most, "stands out")
        for way, chosen in zip(job.job.ways, job.ways, strict=True):
            if way.hold is not None and way.hold.exposed:
                self.model.add(out >= wait).only_enforce_if(chosen)
            elif way.hold is not None and way.hold.spoils and job.kept is not self.v.true:
                self.model.add(out >= wait).only_enforce_if(chosen, ~job.kept)
        return out
