"""The process beside the board: answers the requests of `session.background` about a plan file, one line each.

Each request runs in its own thread, so that an evening that slips does not wait for the timetable of an edited plan.
The process ends when its input ends, even in the middle of a request: the board has closed or died.
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
    """Answers requests from stdin until it ends, then exits the process."""
    for line in sys.stdin.buffer:
        request = msgspec.json.decode(line, type=Request)
        threading.Thread(target=_answer, args=(plan, request), daemon=True).start()
    os._exit(0)


def _answer(plan: Path, request: Request) -> None:
    try:
        answer = _edited(plan, request) if isinstance(request, EditedPlan) else _rest(plan, request)
    except Exception:  # any fault: the board gets an empty answer
        answer = Answer(type(request).__name__)
    sys.stdout.buffer.write(msgspec.json.encode(answer) + b"\n")
    sys.stdout.buffer.flush()


def _edited(plan: Path, request: EditedPlan) -> Answer:
    """The timetable of the file as it is now, cached for the next evening. Raises Trouble if the file cannot be
    read."""
    digest = digest_of(read_text(plan))
    try:
        sheet = None if digest in request.known else sheet_of(plan)
    except Trouble:
        sheet = None
    return Answer("EditedPlan", digest if sheet is None else sheet.digest, sheet)


def _rest(plan: Path, request: RestOfEvening) -> Answer:
    """The sheet with the rest solved again. Raises Trouble, and ValueError if the plan has changed."""
    from board.session.replan.anew import worked_out_anew  # imported here: a cached timetable needs no solver

    opened = request.events[0]
    assert isinstance(opened, EveningOpened)
    state = fold_all(begin(opened.sheet), request.events)
    file = _plan_of(plan, state.sheet.digest)
    return Answer("RestOfEvening", file.digest, worked_out_anew(file, state, request.now))


@lru_cache
def _plan_of(plan: Path, digest: str) -> PlanFile:
    """The plan that an evening follows. Read once: later edits are not for the evening under way. Raises ValueError if
    the file no longer has this digest."""
    text = read_text(plan)
    if digest_of(text) != digest:
        raise ValueError("the plan has moved on")
    return plan_in(text, plan)


if __name__ == "__main__":
    main(Path(sys.argv[1]))
