"""What is worked out beside the board, by one process: asked for here, looked in for, never waited for.

A request is a line of JSON, and so is its answer, in whatever order. The process starts when it is first asked, and
ends when its input does, also where the board is killed. Where it dies or talks nonsense, what was asked has an empty
answer, the next request starts another, and the evening goes on by the sheet it has.
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
    """To be worked out anew: what happened so far, and the present moment."""

    events: Sequence[Event]
    now: datetime


class EditedPlan(msgspec.Struct, frozen=True, tag=True):
    """The plan's file was written. `known`: digests of what needs no timetable."""

    known: Sequence[str]


Request = RestOfEvening | EditedPlan


class Answer(msgspec.Struct, frozen=True):
    """`to`: the kind of request. `digest`: of the plan's file, where it was read; `sheet`: None where there is none."""

    to: str
    digest: str = ""
    sheet: RunSheet | None = None


_Requests = SimpleQueue[Request | None]


class Background:
    """Holds the process for one evening; of each kind one request at a time."""

    def __init__(self, plan: Path, command: Sequence[str] = (sys.executable, "-m", "board.app.worker")) -> None:
        self.command = (*command, str(plan.absolute()))
        self._requests: _Requests | None = None  # of the process that runs
        self._heard: SimpleQueue[Answer | None] = SimpleQueue()  # None: the process is gone
        self._asked: set[str] = set()
        self._answers: dict[str, Answer] = {}

    def ask(self, request: Request) -> bool:
        """Hands a request on; False where the last of its kind was not answered yet."""
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
        """The answer to what was asked, once; None until it is there."""
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
        """To one process, from its start to its end."""
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
        """Ends the process, whatever it is at."""
        if self._requests is not None:
            self._requests.put(None)
            self._requests = None


def _hand_on(requests: _Requests, pipe: IO[bytes]) -> None:
    """Until told to end, or nobody reads. A thread of its own: a pipe takes an evening only as fast as it is read."""
    with suppress(OSError, ValueError), pipe:
        while (request := requests.get()) is not None:
            pipe.write(msgspec.json.encode(request) + b"\n")
            pipe.flush()
