"""A run log that another board writes, read along as it grows. Takes no lock and writes nothing."""

import os
from pathlib import Path

from board.base import words as shared
from board.base.plain import one_line
from board.evening.events import EveningOpened, Event
from board.log import words
from board.log.opening import Sheets
from board.log.read import NoLog, NotBegun, next_event, read_log
from board.log.record import BadLine


class Follower:
    """What the log at a path says so far. `opened` is None until there is an evening in it.

    `whole` counts how often it was read from its first line: where that grows, `events` are others than before.
    `said`: what was left of it and why, or that it is gone. `sheets`: those kept elsewhere, for a log that has lost its
    own.
    """

    def __init__(self, path: Path, sheets: Sheets = lambda: ()) -> None:
        self.path = path
        self._sheets = sheets
        self.opened: EveningOpened | None = None
        self.events: list[Event] = []
        self.whole = 0
        self.said = ""
        self._mark: tuple[int, int, int] | None = None
        self._sound = 0

    def look(self) -> bool:
        """Reads what is new; whether there was anything. A line still being written waits for its end."""
        try:
            found = os.stat(self.path)
            mark = (found.st_ino, found.st_size, found.st_mtime_ns)
            if mark == self._mark:
                return False
            same_file = self._mark is not None and self._mark[0] == found.st_ino and found.st_size >= self._sound
            if not (same_file and self.opened is not None and self._read_on()):
                self._read_whole()
        except OSError as wrong:
            return self._cannot(wrong)
        self._mark = mark
        return True

    def _cannot(self, wrong: OSError) -> bool:
        before, self._mark = self.said, None
        if isinstance(wrong, FileNotFoundError | NotADirectoryError):
            self.said = words.LOG_GONE if self.opened else ""
        else:
            self.said = shared.cannot_read(self.path.name, one_line(wrong.strerror or wrong))
        return self.said != before

    def _read_on(self) -> bool:
        """Takes up the lines after those that were read; False where they do not follow them."""
        with self.path.open("rb") as file:
            file.seek(self._sound)
            rest = file.read()
        lines = rest[: rest.rfind(b"\n") + 1].splitlines(keepends=True)
        try:
            found = [next_event(line, len(self.events) + 2 + number) for number, line in enumerate(lines)]
        except BadLine:
            return False
        self.events += found
        self._sound += sum(len(line) for line in lines)
        self.said = ""
        return True

    def _read_whole(self) -> None:
        """From the first line on. What is no run log (any more) leaves what was read before."""
        data = self.path.read_bytes()
        try:
            contents = read_log(data, self.path.name, self._sheets)
        except NotBegun:
            self.said = ""
            return
        except NoLog as wrong:
            self.said = one_line(wrong) if b"\n" in data else ""
            return
        self.whole += 1
        self.opened, self.events, self._sound = contents.opened, list(contents.events), contents.sound_bytes
        being_written = contents.damage == "torn" and not data.endswith(b"\n")
        self.said = "" if being_written else contents.dropped or ""
