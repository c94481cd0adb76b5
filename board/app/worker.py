"""The process beside the board: answers the requests of `session.background` about a plan file, one line each.

Each request runs in its own thread, so that an evening that slips does not wait for the timetable of an edited plan.
The process ends when its input ends, even in the middle of a request: the board has closed or died.
"""

import os
import sys
import threading
from collections.abc import Iterable
from contextlib import suppress
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING, assert_never

import msgspec

from board.app.timetables import sheet_of, with_timetable
from board.base.errors import Trouble
from board.base.plan_digest import digest_of
from board.evening.events import EveningOpened
from board.evening.fold import fold_all
from board.evening.state import begin
from board.files.plans import plan_in, read_text
from board.plan.load import PlanFile, read_plan
from board.plan.snag import Snag
from board.session.background import (
    Answer,
    EditedPlan,
    Finding,
    PlanProved,
    PlanText,
    PlanTried,
    PlanWays,
    Request,
    RestOfEvening,
    Way,
)
from board.sheet.run_sheet import RunSheet

if TYPE_CHECKING:
    from board.checks.sheet.assessed import Assessed

FIRST_SECONDS = 0.3  # for a first timetable, of which a part is searched
TRIED_SECONDS = 10.0  # for one that is tried; it takes about one
WAYS, WAYS_SECONDS = 5, 30.0  # ways out, and the time to look for them


def main(plan: Path) -> None:
    """Answers requests from stdin until it ends, then exits the process."""
    searches = Searches()
    for line in sys.stdin.buffer:
        request = msgspec.json.decode(line, type=Request)
        threading.Thread(target=_answer, args=(plan, request, searches.halt_of(request)), daemon=True).start()
    os._exit(0)


class Searches:
    """What would end the searches under way: one event for all that is asked of one text. Another text of the plan
    ends all of them; another one tried, those of the one tried before."""

    def __init__(self) -> None:
        self._now: dict[bool, tuple[str, threading.Event]] = {}  # of a text that is tried, and of the plan's

    def halt_of(self, request: Request) -> threading.Event:
        if isinstance(request, RestOfEvening | EditedPlan):
            return threading.Event()
        tried = isinstance(request, PlanTried)
        if request.text != self._now.get(tried, ("", None))[0]:
            for each in (True,) if tried else (True, False):
                if each in self._now:
                    self._now.pop(each)[1].set()
            self._now[tried] = (request.text, threading.Event())
        return self._now[tried][1]


def _answer(plan: Path, request: Request, halt: threading.Event) -> None:
    try:
        answer = _answered(plan, request, halt)
    except Exception:  # any fault: the board gets an empty answer
        answer = Answer(type(request).__name__)
    sys.stdout.buffer.write(msgspec.json.encode(answer) + b"\n")
    sys.stdout.buffer.flush()


def _answered(plan: Path, request: Request, halt: threading.Event) -> Answer:
    match request:
        case EditedPlan():
            return _edited(plan, request)
        case RestOfEvening():
            return _rest(plan, request)
        case PlanText(text=text, near=near):
            return looked_over("PlanText", plan, text, near, FIRST_SECONDS, halt)
        case PlanProved(text=text, near=near):
            return looked_over("PlanProved", plan, text, near, None, halt)
        case PlanTried(text=text, near=near):
            return looked_over("PlanTried", plan, text, near, TRIED_SECONDS, halt)
        case PlanWays(text=text):
            return _ways(plan, text, halt)
        case _:
            assert_never(request)


def looked_over(
    kind: str, plan: Path, text: str, near: RunSheet | None, limit: float | None, halt: threading.Event
) -> Answer:
    """What there is to say of a plan's text, and its timetable if nothing stops it."""
    from board.checks.plan.every import stops

    found = _assessed(text, plan.name)
    if isinstance(found, tuple):
        return Answer(kind, digest_of(text), None, _findings(found))
    file, snags = found.file, found.snags
    if not stops(snags):
        with suppress(Trouble):  # no answer in time
            found = with_timetable(found, plan, limit=limit, near=near, halt=halt)
    if kind != "PlanText" or (found.sheet is not None and found.sheet.proved):
        snags = found.snags  # what a first timetable does is not what the last one will
    parts = tuple((task.node.loc, id_) for id_, task in file.filled.tasks.items())
    return Answer(kind, file.digest, found.sheet, _findings(snags), parts)


@lru_cache(maxsize=2)  # the first timetable of a text, and then its proof
def _assessed(text: str, name: str) -> "Assessed | tuple[Snag, ...]":
    """A plan's text gone over; or what makes it unusable."""
    from board.checks.sheet.assessed import of_plan

    file = read_plan(text, name)
    return tuple(file) if isinstance(file, list) else of_plan(file)


def _findings(snags: Iterable[Snag]) -> tuple[Finding, ...]:
    return tuple(map(Finding.of, snags))


def _ways(plan: Path, text: str, halt: threading.Event) -> Answer:
    """Ways out of what the timetable of a plan's text gives up. Raises Trouble if it cannot be made."""
    from board.app.resolve_conflicts import ways_of

    found = ways_of(text, plan, WAYS, WAYS_SECONDS, halt)
    ways = tuple(Way(each.what, each.brings, each.costs, each.text) for each in found.ways)
    return Answer("PlanWays", digest_of(text), None, ways=ways)


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
