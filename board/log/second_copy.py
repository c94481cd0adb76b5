"""A second copy of a run log in another folder, on a stick or one that is synced: written in a thread of its own, for
such a folder may take its time, be full, or be gone for a while. It is then caught up whole."""

import errno
import os
import threading
from collections.abc import Sequence
from pathlib import Path

from board.base.clock import seconds_passed
from board.base.errors import why_of
from board.log import words
from board.log.disk import LineFile, LogInUse, numbered

LOOK_SECONDS = 5.0  # between two looks whether the copy is still there, and two tries
SLOW_SECONDS = 10.0  # that lines may wait before it is told
LAST_SECONDS = 5.0  # for what is left, when the board is left


class SecondCopy:
    """Keeps in `folder` a file of the log's name that holds the log's `lines`, which only ever grow at their end.

    What lies there already is gone on with if it is this log's beginning; else it is left, and the copy gets the next
    free number. `folder` itself is never made: a stick that is out would be written beside.
    """

    def __init__(self, folder: Path, log: Path, lines: Sequence[bytes]) -> None:
        self.folder, self._log, self._lines = folder, Path(os.path.realpath(log)), lines
        self._file: LineFile | None = None
        self._disk: int | None = None  # that the folder was on, at first
        self._why = ""
        self._since: float | None = seconds_passed()  # from then on there are lines that are not copied
        self._wake, self._ended = threading.Event(), False
        self._thread = threading.Thread(target=self._go_on, daemon=True)
        self._thread.start()

    @property
    def trouble(self) -> str:
        """Why the copy lacks lines; empty while it does not, or has only just got them."""
        since = self._since
        waits = since is not None and seconds_passed() - since > SLOW_SECONDS
        return self._why or (words.COPY_SLOW if waits else "")

    def grew(self) -> None:
        """There are more lines. Returns at once."""
        if self._since is None:
            self._since = seconds_passed()
        self._wake.set()

    def close(self) -> str:
        """Waits a little for what is left; why the copy is not whole, or nothing."""
        self._ended = True
        self._wake.set()
        self._thread.join(LAST_SECONDS)
        return self.trouble or (words.COPY_SLOW if self._thread.is_alive() else "")

    def _go_on(self) -> None:
        ended = False
        while not ended:
            self._wake.clear()
            ended, since, lines = self._ended, self._since, list(self._lines)
            try:
                self._copy(lines)
            except Exception as wrong:  # a thread that fell would leave the rest uncopied, and tell nobody
                in_use = isinstance(wrong, LogInUse)
                self._why = words.log_taken(self._log.name) if in_use else why_of(wrong)
                self._let_go()
            else:
                self._why = ""
                if self._since == since and len(lines) == len(self._lines):
                    self._since = None
            if not ended:
                self._wake.wait(LOOK_SECONDS)
        self._let_go()

    def _copy(self, lines: list[bytes]) -> None:
        """Raises OSError."""
        self._look_at_folder()
        if not lines:
            return
        if self._file is None:
            self._file = self._found(lines)
        self._file.lines = lines
        self._file.sync()

    def _look_at_folder(self) -> None:
        """Raises OSError where the folder is gone, or only the place is left where a stick was put in."""
        try:
            disk, own = os.stat(self.folder).st_dev, os.stat(self._log.parent).st_dev
        except FileNotFoundError:
            raise OSError(errno.ENOENT, words.COPY_FOLDER_GONE) from None
        if not os.path.isdir(self.folder):
            raise NotADirectoryError(errno.ENOTDIR, os.strerror(errno.ENOTDIR))
        if os.path.realpath(self.folder) == str(self._log.parent):
            raise OSError(errno.EEXIST, words.COPY_OWN_FOLDER)
        if self._disk is None:
            self._disk = disk
        elif self._disk != own == disk:
            raise OSError(errno.ENOENT, words.COPY_FOLDER_GONE)

    def _found(self, lines: list[bytes]) -> LineFile:
        """The copy as it lies there, of however many lines; under the first name that is free or this log's."""
        whole, number = b"".join(lines), 1
        while True:
            place = self.folder / (self._log.name if number == 1 else numbered(self._log, number))
            data = place.read_bytes() if place.exists() else b""
            sound = data.rstrip(b"\0")  # what some file systems leave at the end where a stick was pulled
            if whole.startswith(sound):
                break
            number += 1
        file, count, size = LineFile(place), 0, 0
        while count < len(lines) and size + len(lines[count]) <= len(sound):
            size += len(lines[count])
            count += 1
        file.found(lines[:count], data[size:], damaged=False)
        return file

    def _let_go(self) -> None:
        if self._file is not None:
            self._file.close()
            self._file = None
