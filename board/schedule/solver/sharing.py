"""Work is shared out among the hands: a choice among timetables that are equal in all aims and in all times."""

from collections.abc import Iterator

from board.schedule.solver.library import cp_model
from board.schedule.solver.variables import JobVars, Variables

HOUR = 60
THREAD = 60  # what one step of a dish done by other hands than the step before it costs; ours


def shared_out(variables: Variables) -> cp_model.LinearExprT:
    """Minutes of each person's work, those of their second hour counted twice, of the third three times, and so on; and
    a price for each step of a dish whose hands are none of those that did the step before it."""
    return cp_model.LinearExpr.sum([*_uneven(variables), *_threads(variables)])


def _uneven(variables: Variables) -> Iterator[cp_model.LinearExprT]:
    model = variables.model
    for hand in range(len(variables.problem.hands)):
        terms = [
            variables.both(who, chosen) * sum(part.length for part in way.parts)
            for job in variables.jobs
            if (who := job.who.get(hand)) is not None
            for way, chosen in zip(job.job.ways, job.ways, strict=True)
            if way.parts
        ]
        most = sum(max((sum(part.length for part in way.parts) for way in job.job.ways), default=0)
                   for job in variables.jobs if hand in job.who)  # fmt: skip
        minutes = cp_model.LinearExpr.sum(terms)
        weight = model.new_int_var(0, most * (most // HOUR + 1), "minutes of one person, weighed")
        for hours in range(most // HOUR + 1):
            model.add(weight >= (hours + 1) * minutes - HOUR * hours * (hours + 1) // 2)
        yield weight


def _threads(variables: Variables) -> Iterator[cp_model.LinearExprT]:
    for order in variables.problem.orders:
        first, second = variables.jobs[order.first], variables.jobs[order.second]
        if first.who and second.who and _of_one_dish(first, second):
            passed_on = variables.model.new_bool_var("passed on")
            for hand, who in second.who.items():
                variables.model.add_bool_or(passed_on, ~who, first.who.get(hand, ~variables.true))
            yield passed_on * THREAD


def _of_one_dish(first: JobVars, second: JobVars) -> bool:
    return any(each.startswith("dish:") and each != "dish:" for each in {*first.job.alike} & {*second.job.alike})
