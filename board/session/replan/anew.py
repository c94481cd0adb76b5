"""Solves the rest of an evening again. Loads the solver: import only in the process beside the board."""

from datetime import datetime

from board.evening.forecast import Forecaster
from board.evening.state import State
from board.plan.load import PlanFile
from board.schedule.formulate import problem_of
from board.schedule.solver.solve import NoAnswer, solve
from board.schedule.to_run_sheet import to_run_sheet
from board.session.replan.merge import merged
from board.session.replan.remaining import as_it_stands, where_it_looks
from board.sheet.run_sheet import RunSheet

LIMIT_SECONDS = 1.5  # our choice


def worked_out_anew(file: PlanFile, state: State, now: datetime, limit: float = LIMIT_SECONDS) -> RunSheet | None:
    """The evening's sheet with the rest solved again from `now`, within `limit` seconds; None if no solution was found.
    Raises KeyError if the sheet is of another plan."""
    forecast = Forecaster(state.sheet).forecast(state, now)
    problem = problem_of(file.plan, file.filled)
    left = as_it_stands(problem, state, forecast)
    try:
        solution = solve(left, limit, near=where_it_looks(problem, forecast), stay="last")
    except NoAnswer:
        return None
    return merged(state, to_run_sheet(file, left, solution))
