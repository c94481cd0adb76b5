"""The run log on disk: append-only, each event written and synced before anyone is told it is taken.

One board at a time: the log is locked while it is open, and the lock dies with its process.
"""

import os
from collections.abc import Sequence
from pathlib import Path
from typing import Protocol

from filelock import FileLock, Timeout

from board.log.read import LogContents, read_log
from board.log.record import to_line
from board.run.events import EveningOpened, Event


class LogInUse(Exception):
    """Another board has this log open."""


class Keeper(Protocol):
    """Where an evening's events are kept."""

    def append(self, events: Sequence[Event]) -> None:
        """Keeps them for good, or raises OSError."""
        ...

    def close(self) -> None: ...


class RunLog:
    """A log file held open for one board."""

    def __init__(self, path: Path) -> None:
        """Locks the file, reads what is in it and cuts a torn tail off. Raises LogInUse, NoLog, OSError."""
        self.path = path
        path.parent.mkdir(parents=True, exist_ok=True)
        if path.exists() and not path.is_file():
            raise OSError(22, "not a regular file")
        self._lock = FileLock(path.with_name(path.name + ".lock"))
        try:
            self._lock.acquire(timeout=0)
        except Timeout:
            raise LogInUse(str(path)) from None
        try:
            self.contents: LogContents | None = None
            data = path.read_bytes() if path.exists() else b""
            if b"\n" in data:
                self.contents = read_log(data, path.name)
            self._file = os.open(path, os.O_RDWR | os.O_CREAT | os.O_APPEND, 0o644)
            # A log torn in its very first line holds nothing yet.
            sound = self.contents.sound_bytes if self.contents else 0
            if sound < len(data):
                os.ftruncate(self._file, sound)
                os.fsync(self._file)
        except BaseException:
            self._lock.release()
            raise

    def begin(self, opened: EveningOpened) -> None:
        """Writes the first line of a new log, and makes sure the folder knows the file."""
        self.append([opened])
        folder = os.open(self.path.parent, os.O_RDONLY)
        try:
            os.fsync(folder)
        finally:
            os.close(folder)

    def append(self, events: Sequence[Event]) -> None:
        """One write and one sync for all of them."""
        data = memoryview(b"".join(to_line(event) for event in events))
        while data:
            data = data[os.write(self._file, data) :]
        os.fsync(self._file)

    def close(self) -> None:
        os.close(self._file)
        self._lock.release()


class Memory:
    """Keeps nothing on disk; for plain runs that were asked to leave no log, and for tests."""

    def __init__(self) -> None:
        self.events: list[Event] = []

    def append(self, events: Sequence[Event]) -> None:
        self.events.extend(events)

    def close(self) -> None:
        pass
