"""Work done beside the board by one background process: requested here, polled, never waited for.

A request is one line of JSON, and so is its answer; answers may come in any order. The process starts with the first
request and ends when its input ends, even if the board is killed. If it dies or sends nonsense, every open request gets
an empty answer, the next request starts a new process, and the evening goes on with the sheet it has.
"""

import subprocess
import sys
import threading
from collections import Counter
from collections.abc import Sequence
from contextlib import suppress
from datetime import datetime
from pathlib import Path
from queue import Empty, SimpleQueue
from typing import IO

import msgspec

from board.evening.events import Event
from board.plan.snag import Fix, Snag
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
    moved from the sheet `near`. What there is to say of a timetable is said once it is proved."""

    text: str
    near: RunSheet | None = None


class PlanProved(msgspec.Struct, frozen=True, tag=True):
    """The same, with the time it takes to prove the timetable; less, once another text is asked about."""

    text: str
    near: RunSheet | None = None


class PlanTried(msgspec.Struct, frozen=True, tag=True):
    """The same within ten seconds, of a text that may never be the plan; less, once another is tried."""

    text: str
    near: RunSheet | None = None


class PlanWays(msgspec.Struct, frozen=True, tag=True):
    """Asks for ways out of what the timetable of a plan's text gives up."""

    text: str
    near: RunSheet | None = None


Request = RestOfEvening | EditedPlan | PlanText | PlanProved | PlanTried | PlanWays


class Finding(msgspec.Struct, frozen=True):
    """One finding about a plan, as `plan.snag.Snag` has it. `line`: of the file, from 1; 0: of none. `source`: what it
    stands on."""

    code: str
    weight: int
    message: str
    mend: str = ""
    line: int = 0
    fix: Fix | None = None
    source: str = ""

    @classmethod
    def of(cls, snag: Snag) -> "Finding":
        line = snag.place.line if snag.place else 0
        return cls(snag.code, int(snag.weight), snag.message, snag.mend, line, snag.fix, snag.source)


class Way(msgspec.Struct, frozen=True):
    """A way out: what it is, what it brings and costs, and the plan's text with it."""

    what: str
    brings: str
    costs: str
    text: str


class Answer(msgspec.Struct, frozen=True):
    """`to`: the kind of request. `digest`: of the plan file, empty if it was not read. `sheet`: None if there is
    none. Of a plan's text, `found`: the findings, the worst first; `parts`: paths of work in the file, each with the
    slot it is; `ways`: ways out, the best first."""

    to: str
    digest: str = ""
    sheet: RunSheet | None = None
    found: tuple[Finding, ...] = ()
    parts: tuple[tuple[tuple[str | int, ...], str], ...] = ()
    ways: tuple[Way, ...] = ()


_Requests = SimpleQueue[Request | None]


class Background:
    """Holds the process for one evening; handles one request of each kind at a time."""

    def __init__(self, plan: Path, command: Sequence[str] = (sys.executable, "-m", "board.app.worker")) -> None:
        self.command = (*command, str(plan.absolute()))
        self._requests: _Requests | None = None  # to the running process; None: there is none
        self._heard: SimpleQueue[Answer | None] = SimpleQueue()  # None: the process has ended
        self._asked: Counter[str] = Counter()  # how many of each kind are open
        self._answers: dict[str, Answer] = {}

    def ask(self, request: Request, *, anew: bool = False) -> bool:
        """Sends a request. False if the last one of its kind is still open; `anew`: it is sent all the same, and each
        is answered."""
        kind = type(request).__name__
        self._look_in()
        if not anew and (self._asked[kind] or kind in self._answers):
            return False
        self._asked[kind] += 1
        if self._requests is None:
            self._requests = SimpleQueue()
            threading.Thread(target=self._listen, args=(self._requests,), daemon=True).start()
        self._requests.put(request)
        return True

    def answer(self, kind: type[Request]) -> Answer | None:
        """The answer to an open request, once; None until it arrives. Of several, the last that came."""
        self._look_in()
        return self._answers.pop(kind.__name__, None)

    def _look_in(self) -> None:
        with suppress(Empty):
            while True:
                heard = self._heard.get_nowait()
                if heard is not None:
                    self._answers[heard.to] = heard
                    self._asked[heard.to] -= 1
                else:
                    self._answers |= {kind: Answer(kind) for kind, open_ in self._asked.items() if open_ > 0}
                    self._asked.clear()
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
