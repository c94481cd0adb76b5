"""Watches the plan file during its evening: finds what an edit changes, worked out beside the board."""

import os
from pathlib import Path

from board.session.background import Background, EditedPlan
from board.sheet.changed import Changed, changed
from board.sheet.run_sheet import RunSheet


class PlanWatcher:
    """Watches the file's inode, size and time, and sends a request only when they change. `known`: the digest of the
    plan the host knows."""

    def __init__(self, path: Path, evening: RunSheet, known: str, background: Background) -> None:
        self.path = path
        self.evening = evening
        self.busy = False  # while an edited plan is being solved
        self._known = known
        self._background = background
        self._stamp = stamp_of(path)

    def look(self) -> Changed | None:
        """What an edit changes in the evening's timetable, once for each edit; None if there is nothing to report.
        Raises nothing."""
        if not self.busy:
            stamp = stamp_of(self.path)
            if stamp is not None and stamp != self._stamp:  # None: an editor is about to replace the file
                self._stamp = stamp
                self.busy = self._background.ask(EditedPlan((self._known, self.evening.digest)))
            return None
        answer = self._background.answer(EditedPlan)
        if answer is None:
            return None
        self.busy = False
        before, self._known = self._known, answer.digest
        if answer.digest in (before, self.evening.digest):  # nothing new, or changed back
            return None
        return changed(self.evening, answer.sheet) if answer.sheet is not None else Changed(usable=False)


def stamp_of(path: Path) -> tuple[int, int, int] | None:
    """What tells one state of a file from another; None if there is none."""
    try:
        found = os.stat(path)
    except OSError:
        return None
    return found.st_ino, found.st_size, found.st_mtime_ns
