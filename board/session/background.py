"""Work done beside the board by one background process: requested here, polled, never waited for.

A request is one line of JSON, and so is its answer; answers may come in any order. The process starts with the first
request and ends when its input ends, even if the board is killed. If it dies or sends nonsense, every open request gets
an empty answer, the next request starts a new process, and the evening goes on with the sheet it has.
"""

import subprocess
import sys
import threading
from collections.abc import Sequence
from contextlib import suppress
from datetime import datetime
from pathlib import Path
from queue import Empty, SimpleQueue
from typing import IO

import msgspec

from board.evening.events import Event
from board.sheet.run_sheet import RunSheet


class RestOfEvening(msgspec.Struct, frozen=True, tag=True):
    """Asks for a new timetable of the rest: the events so far, and the present moment."""

    events: Sequence[Event]
    now: datetime


class EditedPlan(msgspec.Struct, frozen=True, tag=True):
    """Asks for the timetable of the edited plan file. `known`: digests of plans that need no timetable."""

    known: Sequence[str]


class PlanText(msgspec.Struct, frozen=True, tag=True):
    """Asks for what there is to say of a plan's text, and for a first timetable, within a second; as little as may be
    moved from the sheet `near`."""

    text: str
    near: RunSheet | None = None


class PlanProved(msgspec.Struct, frozen=True, tag=True):
    """The same, with the time it takes to prove the timetable."""

    text: str
    near: RunSheet | None = None


Request = RestOfEvening | EditedPlan | PlanText | PlanProved


class Finding(msgspec.Struct, frozen=True):
    """One finding about a plan, as `plan.snag.Snag` has it. `line`: of the file, from 1; 0: of none."""

    code: str
    weight: int
    message: str
    mend: str = ""
    line: int = 0


class Answer(msgspec.Struct, frozen=True):
    """`to`: the kind of request. `digest`: of the plan file, empty if it was not read. `sheet`: None if there is
    none. Of a plan's text, `found`: the findings, the worst first; `parts`: paths of work in the file, each with the
    slot it is."""

    to: str
    digest: str = ""
    sheet: RunSheet | None = None
    found: tuple[Finding, ...] = ()
    parts: tuple[tuple[tuple[str | int, ...], str], ...] = ()


_Requests = SimpleQueue[Request | None]


class Background:
    """Holds the process for one evening; handles one request of each kind at a time."""

    def __init__(self, plan: Path, command: Sequence[str] = (sys.executable, "-m", "board.app.worker")) -> None:
        self.command = (*command, str(plan.absolute()))
        self._requests: _Requests | None = None  # to the running process; None: there is none
        self._heard: SimpleQueue[Answer | None] = SimpleQueue()  # None: the process has ended
        self._asked: set[str] = set()
        self._answers: dict[str, Answer] = {}

    def ask(self, request: Request) -> bool:
        """Sends a request. False if the last one of its kind is still open."""
        kind = type(request).__name__
        self._look_in()
        if kind in self._asked:
            return False
        self._asked.add(kind)
        if self._requests is None:
            self._requests = SimpleQueue()
            threading.Thread(target=self._listen, args=(self._requests,), daemon=True).start()
        self._requests.put(request)
        return True

    def answer(self, kind: type[Request]) -> Answer | None:
        """The answer to an open request, once; None until it arrives."""
        self._look_in()
        found = self._answers.pop(kind.__name__, None)
        if found is not None:
            self._asked.discard(found.to)
        return found

    def _look_in(self) -> None:
        with suppress(Empty):
            while True:
                heard = self._heard.get_nowait()
                if heard is not None:
                    self._answers[heard.to] = heard
                else:
                    self._answers = {kind: Answer(kind) for kind in self._asked} | self._answers
                    self.close()

    def _listen(self, requests: _Requests) -> None:
        """Listens to one process from its start to its end."""
        with (
            suppress(OSError, msgspec.DecodeError),
            subprocess.Popen(
                self.command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL
            ) as process,
        ):
            threading.Thread(target=_hand_on, args=(requests, process.stdin), daemon=True).start()
            assert process.stdout is not None
            try:
                for line in process.stdout:
                    self._heard.put(msgspec.json.decode(line, type=Answer))
            finally:
                process.kill()
        self._heard.put(None)

    def close(self) -> None:
        """Ends the process, even in the middle of a request."""
        if self._requests is not None:
            self._requests.put(None)
            self._requests = None


def _hand_on(requests: _Requests, pipe: IO[bytes]) -> None:
    """Passes requests on until the process should end or stops reading. Runs in its own thread, because writing to a
    pipe blocks until the other side reads."""
    with suppress(OSError, ValueError), pipe:
        while (request := requests.get()) is not None:
            pipe.write(msgspec.json.encode(request) + b"\n")
            pipe.flush()
