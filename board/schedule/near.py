"""Where jobs of a problem began before: on a sheet of the same dinner, or in a solution of a like problem. Pure."""

from datetime import date, timedelta

from board.schedule.problem import Problem
from board.schedule.solution import Solution
from board.sheet.run_sheet import RunSheet

MINUTE = timedelta(minutes=1)


def starts_on(sheet: RunSheet, problem: Problem, day: date) -> list[int | None]:
    """The start of each job in minutes from the problem's origin; None for those that the sheet does not have. `day`:
    of the dinner now; what the sheet has for another day moves with it."""
    by_id, moved = sheet.by_id(), day - date.fromisoformat(sheet.date)
    starts = (by_id[job.id].start + moved if job.id in by_id else None for job in problem.jobs)
    return [None if at is None else round((at - problem.origin) / MINUTE) for at in starts]


def starts_of(solution: Solution, solved: Problem, problem: Problem) -> list[int | None]:
    """As above, by the solution of another problem with the same names of jobs."""
    moved = round((solved.origin - problem.origin) / MINUTE)
    known = {job.id: start + moved for job, start in zip(solved.jobs, solution.starts, strict=True)}
    return [known.get(job.id) for job in problem.jobs]
