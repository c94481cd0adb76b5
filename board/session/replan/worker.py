"""The process that works a timetable out anew beside the board, so that nothing on the screen ever waits for it.

Speaks JSON lines: first the plan file's path and digest, then an evening's events each time; answers with a sheet,
or with null where none was found. Only here, beside the command line, is the solver loaded.
"""

import sys
from datetime import datetime
from pathlib import Path

import msgspec

from board.evening.events import EveningOpened, Event
from board.evening.fold import fold_all
from board.evening.forecast import Forecaster
from board.evening.state import State, begin
from board.log.record import BadLine, from_line
from board.plan.load import PlanFile, read_plan
from board.schedule.formulate import problem_of
from board.schedule.solver.solve import NoAnswer, solve
from board.schedule.to_run_sheet import to_run_sheet
from board.session.replan.merge import merged
from board.session.replan.remaining import as_it_stands, where_it_looks
from board.sheet.run_sheet import RunSheet, store

LIMIT_SECONDS = 1.5  # ours


class Request(msgspec.Struct, frozen=True):
    """The evening so far as lines of a run log, and the present moment."""

    events: list[str]
    now: datetime


def worked_out_anew(file: PlanFile, state: State, now: datetime, limit: float = LIMIT_SECONDS) -> RunSheet | None:
    """The evening's sheet with what is left worked out anew, with the present as given; None where there is none."""
    forecast = Forecaster(state.sheet).forecast(state, now)
    problem = problem_of(file.plan, file.filled)
    left = as_it_stands(problem, state, forecast)
    try:
        solution = solve(left, limit, near=where_it_looks(problem, forecast))
    except NoAnswer:
        return None
    return merged(state, to_run_sheet(file, left, solution))


def main(path: str, digest: str) -> None:
    """Answers requests from stdin until it ends."""
    text = Path(path).read_text(encoding="utf-8-sig")
    file = read_plan(text, path)
    if not isinstance(file, PlanFile) or file.digest != digest:
        return  # the plan has moved on since the evening began
    for line in sys.stdin.buffer:
        sheet = None
        try:
            request = msgspec.json.decode(line, type=Request)
            events: list[Event] = [from_line(text.encode()) for text in request.events]
            opened = events[0]
            if isinstance(opened, EveningOpened):
                sheet = worked_out_anew(file, fold_all(begin(opened.sheet), events), request.now)
        except (msgspec.DecodeError, BadLine, KeyError, AssertionError):
            sheet = None
        sys.stdout.buffer.write((store(sheet) if sheet is not None else b"null") + b"\n")
        sys.stdout.buffer.flush()


if __name__ == "__main__":
    main(*sys.argv[1:3])
