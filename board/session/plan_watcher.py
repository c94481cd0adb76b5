"""An eye on the plan's file while its evening runs: what an edit changes, worked out beside the board, never in it."""

import os
import sys
from collections.abc import Sequence
from contextlib import suppress
from pathlib import Path
from typing import TYPE_CHECKING

from board.base.errors import Trouble
from board.base.plan_digest import digest_of
from board.files.paths import cache
from board.files.plans import read_text
from board.sheet.changed import Changed, changed
from board.sheet.run_sheet import RunSheet

if TYPE_CHECKING:
    import subprocess


class PlanWatcher:
    """Looks by the file's stamp, and reads it only where that is another. `known`: the digest the host knows of."""

    def __init__(self, path: Path, evening: RunSheet, known: str, command: Sequence[str] = ()) -> None:
        """`command` works out and keeps the sheet of a plan file; by default this program's own, as a process."""
        self.path = path
        self.evening = evening
        self._known = known
        self._command = command or (sys.executable, "-m", "board", "sheet")
        self._stamp = _stamp(path)
        self._working: tuple[str, subprocess.Popen[bytes]] | None = None

    @property
    def busy(self) -> bool:
        """Whether an edited plan is being worked out."""
        return self._working is not None

    def look(self) -> Changed | None:
        """What changed against the evening's timetable, once for each edit; None while there is nothing to tell."""
        if self._working is not None:
            return self._worked_out(*self._working)
        stamp = _stamp(self.path)
        if stamp is None or stamp == self._stamp:  # none: an editor is about to put it in its place
            return None
        self._stamp = stamp
        try:
            digest = digest_of(read_text(self.path))
        except Trouble:
            return self._tell("", Changed(usable=False))
        if digest == self._known:
            return None
        if digest == self.evening.digest:  # as it was again
            self._known = digest
            return None
        if (sheet := cache().get(digest)) is not None:
            return self._tell(digest, changed(self.evening, sheet))
        import subprocess  # only here: opening the board must not wait for it

        quiet = subprocess.DEVNULL
        words = [*self._command, str(self.path.absolute())]
        self._working = (digest, subprocess.Popen(words, stdin=quiet, stdout=quiet, stderr=quiet))
        return None

    def _worked_out(self, digest: str, process: "subprocess.Popen[bytes]") -> Changed | None:
        code = process.poll()
        if code is None:
            return None
        self._working = None
        sheet = cache().get(digest)
        if sheet is not None:
            return self._tell(digest, changed(self.evening, sheet))
        if code:
            return self._tell(digest, Changed(usable=False))
        self._stamp = None  # edited once more while it was read: looked at anew
        return None

    def _tell(self, digest: str, found: Changed) -> Changed | None:
        before, self._known = self._known, digest
        return found if digest != before else None

    def close(self) -> None:
        """Ends what is still being worked out."""
        if self._working is not None:
            with suppress(OSError):
                self._working[1].terminate()
            self._working[1].wait()
            self._working = None


def _stamp(path: Path) -> tuple[int, int, int] | None:
    try:
        found = os.stat(path)
    except OSError:
        return None
    return found.st_ino, found.st_size, found.st_mtime_ns
