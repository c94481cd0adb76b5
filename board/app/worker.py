"""The process beside the board: works out what `session.background` asks of a plan's file, one line a request.

Each in a thread of its own, so that an evening that slips need not wait for the timetable of an edited plan. Ends with
its input, whatever it is at: the board was left, or died.
"""

import os
import sys
import threading
from functools import lru_cache
from pathlib import Path

import msgspec

from board.app.timetables import sheet_of
from board.base.errors import Trouble
from board.base.plan_digest import digest_of
from board.evening.events import EveningOpened
from board.evening.fold import fold_all
from board.evening.state import begin
from board.files.plans import plan_in, read_text
from board.plan.load import PlanFile
from board.session.background import Answer, EditedPlan, Request, RestOfEvening


def main(plan: Path) -> None:
    """Answers requests from stdin until it ends."""
    for line in sys.stdin.buffer:
        request = msgspec.json.decode(line, type=Request)
        threading.Thread(target=_answer, args=(plan, request), daemon=True).start()
    os._exit(0)


def _answer(plan: Path, request: Request) -> None:
    try:
        answer = _edited(plan, request) if isinstance(request, EditedPlan) else _rest(plan, request)
    except Exception:  # whatever it was: the board hears that there is nothing to have
        answer = Answer(type(request).__name__)
    sys.stdout.buffer.write(msgspec.json.encode(answer) + b"\n")
    sys.stdout.buffer.flush()


def _edited(plan: Path, request: EditedPlan) -> Answer:
    """The timetable of the file as it is now, kept for the next evening. Raises Trouble where it cannot be read."""
    digest = digest_of(read_text(plan))
    try:
        sheet = None if digest in request.known else sheet_of(plan)
    except Trouble:
        sheet = None
    return Answer("EditedPlan", digest if sheet is None else sheet.digest, sheet)


def _rest(plan: Path, request: RestOfEvening) -> Answer:
    """The sheet with what is left worked out anew."""
    from board.session.replan.anew import worked_out_anew  # only here: a kept timetable is told without the solver

    opened = request.events[0]
    assert isinstance(opened, EveningOpened)
    state = fold_all(begin(opened.sheet), request.events)
    file = _plan_of(plan, state.sheet.digest)
    return Answer("RestOfEvening", file.digest, worked_out_anew(file, state, request.now))


@lru_cache
def _plan_of(plan: Path, digest: str) -> PlanFile:
    """The plan an evening goes by: read once, since an edit is not for the evening under way."""
    text = read_text(plan)
    if digest_of(text) != digest:
        raise ValueError("the plan has moved on")
    return plan_in(text, plan)


if __name__ == "__main__":
    main(Path(sys.argv[1]))
