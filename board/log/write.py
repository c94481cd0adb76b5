"""The run log on disk: append-only, each event written and synced before anyone is told it is taken.

Where it cannot be written the evening goes on in memory, and what is missing is written as soon as that is possible.
One board at a time: the log is locked while it is open, and the lock dies with its process.
"""

from collections.abc import Sequence
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Protocol

from board.evening.events import EveningOpened, Event, is_answer
from board.log import words
from board.log.disk import LineFile, LogInUse, write_next_free
from board.log.opening import Sheets
from board.log.read import HEAD, LogContents, NoLog, NotBegun, read_log
from board.log.record import opening_lines, to_line
from board.log.second_copy import SecondCopy

__all__ = ["Keeper", "LogInUse", "Memory", "RunLog", "Unkept"]


@dataclass(frozen=True, slots=True)
class Unkept:
    """What is in memory only: how many of the host's answers, among how many events, and why."""

    answers: int
    events: int
    why: str


class Keeper(Protocol):
    """Where an evening's events are kept."""

    def append(self, events: Sequence[Event]) -> None:
        """Keeps them for good, at once or, where that fails, as soon as it can."""
        ...

    def mind(self) -> None:
        """Tries again what could not be kept, and makes sure that what was is still there."""
        ...

    @property
    def unkept(self) -> Unkept | None:
        """What is not kept yet; None when all is."""
        ...

    @property
    def copy_trouble(self) -> str:
        """Why the second copy lacks lines; empty where it does not, or none was asked for."""
        ...

    def close(self) -> None: ...


class RunLog:
    """A log file held open for one board."""

    def __init__(self, path: Path, sheets: Sheets = lambda: (), also: Path | None = None) -> None:
        """Locks the file, reads what is in it and cuts a torn tail off; of a damaged one `aside` is a copy. `sheets`:
        those kept elsewhere, for a log that has lost its own. `also`: a folder for a second copy, which nothing waits
        for.

        Raises LogInUse, NoLog (a newer version's log among them), OSError. A log that can be read, and not written or
        locked, is opened all the same: the evening in it goes on in memory.
        """
        self.path = path
        self.contents: LogContents | None = None
        self.unkept: Unkept | None = None
        if path.exists() and not path.is_file():
            raise OSError(22, "not a regular file")
        self._file = LineFile(path)
        self._is_answer: list[bool] = []
        try:
            self._open(sheets)
        except BaseException:
            self._file.close()
            raise
        self._copy = None if also is None else SecondCopy(also, path, self._file.lines)

    def _open(self, sheets: Sheets) -> None:
        trouble: OSError | None = None
        try:
            self._file.lock()
        except OSError as wrong:
            trouble = wrong
        data = self.path.read_bytes() if self.path.exists() else b""
        found = None if not data or HEAD.startswith(data) else self._read(data, sheets)
        if found is None:
            self._file.found([], data, damaged=False)
        else:
            self.contents = found
            head, rest = found.sound[: found.head], found.sound[found.head :]
            lines = [head, *rest.splitlines(keepends=True)]  # what is JSON holds no bare line ends
            self._is_answer = [False] * len(lines)
            tail = data[found.sound_bytes :]
            mended = not data.startswith(found.sound)
            if mended:
                tail, trouble = b"", trouble or self._mend(found.sound)
            self._file.found(lines, tail, damaged=found.damage == "damaged" and not mended)
        try:
            if trouble is not None:
                raise trouble
            self._file.sync()
        except OSError as wrong:
            if self.contents is None:
                raise
            self._tell(wrong)

    def _read(self, data: bytes, sheets: Sheets) -> LogContents | None:
        """None where nothing was begun. Raises NoLog, also of a newer version's log."""
        try:
            found = read_log(data, self.path.name, sheets)
        except NotBegun:
            return None
        if found.damage == "newer":
            raise NoLog(words.newer_not_touched(found.dropped or ""))
        return found

    def _mend(self, sound: bytes) -> OSError | None:
        """Puts what is sound in the file's place, a copy of it as it was set aside; why not, if that cannot be."""
        try:
            self._file.put_in_place(sound)
        except OSError as wrong:
            return wrong
        return None

    @property
    def aside(self) -> Path | None:
        return self._file.aside

    def begin(self, opened: EveningOpened) -> None:
        """Writes the first line of a new log. Raises OSError: an evening that has not begun needs no rescue."""
        self._add([opened])
        self._file.sync()
        self._copied()

    def append(self, events: Sequence[Event]) -> None:
        """One write and one sync for all of them, and for those that failed before."""
        self._add(events)
        self.mind()
        self._copied()

    def _copied(self) -> None:
        if self._copy is not None:
            self._copy.grew()

    def _add(self, events: Sequence[Event]) -> None:
        self._file.lines += [
            opening_lines(event) if isinstance(event, EveningOpened) else to_line(event) for event in events
        ]
        self._is_answer += [is_answer(event) for event in events]

    def mind(self) -> None:
        try:
            self._file.sync()
        except OSError as wrong:
            self._tell(wrong)
        else:
            self.unkept = None

    @property
    def copy_trouble(self) -> str:
        return "" if self._copy is None else self._copy.trouble

    def _tell(self, wrong: OSError) -> None:
        missing = self._is_answer[self._file.kept :]
        self.unkept = Unkept(sum(missing), len(missing), wrong.strerror or str(wrong))

    def rescue(self) -> Path | None:
        """What the file lacks at the end of the evening: a copy of all in another folder, or None if nowhere can be."""
        import tempfile  # only here: opening the board must not wait for it

        whole = b"".join(self._file.lines)
        for folder in (Path.home(), Path(tempfile.gettempdir())):
            with suppress(OSError, RuntimeError):
                return write_next_free(folder / self.path.name, whole)
        return None

    def close(self) -> None:
        """The second copy is waited for a little; `copy_trouble` then tells what it lacks."""
        self._file.close()
        if self._copy is not None:
            self._copy.close()


class Memory:
    """Keeps nothing on disk; for runs that were asked to leave no log, and for tests."""

    unkept: Unkept | None = None
    copy_trouble = ""

    def __init__(self) -> None:
        self.events: list[Event] = []

    def append(self, events: Sequence[Event]) -> None:
        self.events.extend(events)

    def mind(self) -> None:
        pass

    def close(self) -> None:
        pass
