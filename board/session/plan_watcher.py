"""An eye on the plan's file while its evening runs: what an edit changes, worked out beside the board, never in it."""

import os
from pathlib import Path

from board.session.background import Background, EditedPlan
from board.sheet.changed import Changed, changed
from board.sheet.run_sheet import RunSheet


class PlanWatcher:
    """Looks by the file's stamp, and asks only where that is another. `known`: the digest the host knows of."""

    def __init__(self, path: Path, evening: RunSheet, known: str, background: Background) -> None:
        self.path = path
        self.evening = evening
        self.busy = False  # while an edited plan is being worked out
        self._known = known
        self._background = background
        self._stamp = _stamp(path)

    def look(self) -> Changed | None:
        """What changed against the evening's timetable, once for each edit; None while there is nothing to tell."""
        if not self.busy:
            stamp = _stamp(self.path)
            if stamp is not None and stamp != self._stamp:  # none: an editor is about to put it in its place
                self._stamp = stamp
                self.busy = self._background.ask(EditedPlan((self._known, self.evening.digest)))
            return None
        answer = self._background.answer(EditedPlan)
        if answer is None:
            return None
        self.busy = False
        before, self._known = self._known, answer.digest
        if answer.digest in (before, self.evening.digest):  # nothing new, or as it was again
            return None
        return changed(self.evening, answer.sheet) if answer.sheet is not None else Changed(usable=False)


def _stamp(path: Path) -> tuple[int, int, int] | None:
    try:
        found = os.stat(path)
    except OSError:
        return None
    return found.st_ino, found.st_size, found.st_mtime_ns
