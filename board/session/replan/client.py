"""The board's side of the process that works timetables out anew: asks it and looks in for its answer; never waits.

A process that cannot be started, dies or talks nonsense is left alone: the evening goes on by the sheet it has.
"""

import subprocess
import sys
import threading
from collections.abc import Sequence
from datetime import datetime
from pathlib import Path
from queue import Empty, SimpleQueue

import msgspec

from board.evening.events import Event
from board.log.record import to_line
from board.sheet.run_sheet import RunSheet, restore


class Anew:
    """Holds one process for one evening; it is started when it is first asked.

    A thread of its own talks to the process, since a pipe takes a whole evening only as fast as it is read.
    """

    def __init__(self, plan: Path, digest: str) -> None:
        self.command = [sys.executable, "-m", "board.session.replan.worker", str(plan), digest]
        self.questions: SimpleQueue[bytes | None] = SimpleQueue()
        self.answers: SimpleQueue[RunSheet | None] = SimpleQueue()
        self.process: subprocess.Popen[bytes] | None = None
        self.thread: threading.Thread | None = None
        self.waiting = False  # for an answer
        self.given_up = False

    def ask(self, events: Sequence[Event], now: datetime) -> bool:
        """Asks for the rest of the evening worked out anew; False where it is still at the last question."""
        if self.waiting or self.given_up:
            return False
        if self.thread is None:
            self.thread = threading.Thread(target=self._talk, daemon=True)
            self.thread.start()
        self.waiting = True
        lines = [to_line(event).decode() for event in events]
        self.questions.put(msgspec.json.encode({"events": lines, "now": now}) + b"\n")
        return True

    def answer(self) -> RunSheet | None:
        """The sheet, once it is there; None until then, and where there is none to have."""
        try:
            sheet = self.answers.get_nowait()
        except Empty:
            return None
        self.waiting = False
        return sheet

    def _talk(self) -> None:
        """One question after another, until told to end or the process is gone."""
        try:
            process = self.process = subprocess.Popen(
                self.command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL
            )
        except OSError:
            self.given_up = True
            self.answers.put(None)
            return
        assert process.stdin is not None
        assert process.stdout is not None
        while (question := self.questions.get()) is not None:
            try:
                process.stdin.write(question)
                process.stdin.flush()
                line = process.stdout.readline()
                self.answers.put(None if line in (b"", b"null\n") else restore(line))
            except (OSError, ValueError, msgspec.DecodeError):
                line = b""
                self.answers.put(None)
            if not line:  # it has ended: the plan has moved on, or the solver cannot be had
                self.given_up = True
                return

    def close(self) -> None:
        """Ends the process and the thread."""
        self.questions.put(None)
        if self.process is not None:
            self.process.kill()
