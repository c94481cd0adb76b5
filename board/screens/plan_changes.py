"""News of the plan's file while its evening runs: looked for once a minute, told when no call waits."""

from __future__ import annotations

from typing import TYPE_CHECKING

from board.base import words
from board.base.plain import one_line

if TYPE_CHECKING:
    from board.screens.live import LiveScreen
    from board.session.plan_watcher import PlanWatcher
    from board.sheet.changed import Changed

EVERY_SECONDS, SOON_SECONDS = 60.0, 2.0  # between looks at the file


class PlanChangeNotice:
    """`eye` looks at the file, if anybody does; `changed` is known as the board opens, and told at once."""

    def __init__(self, live: LiveScreen, eye: PlanWatcher | None, changed: Changed | None) -> None:
        self.live = live
        self.eye = eye
        self.changed = changed  # not yet told

    def begin(self) -> None:
        if self.eye is not None:
            self.live.set_interval(EVERY_SECONDS, self.look)
        if self.changed is not None:
            self.live.call_after_refresh(self._tell, at_once=True)

    def look(self) -> None:
        """Once a minute, and a little later again while an edit is being worked out."""
        try:
            found = self.eye.look() if self.eye is not None else None
        except Exception as wrong:  # a fault here must never end the board
            self.live.say(words.board_fault(one_line(wrong, 80)))
            return
        if found is not None:
            self.changed = found
            self._tell()
        elif self.eye is not None and self.eye.busy:
            self.live.set_timer(SOON_SECONDS, self.look)

    def _tell(self, *, at_once: bool = False) -> None:
        """Says what changed; a call that waits, or another screen, goes first."""
        if self.changed is None:
            return
        waits = self.live.board is not None and self.live.board.due and not at_once
        if waits or not self.live.is_current:
            self.live.set_timer(SOON_SECONDS, self._tell)
            return
        from board.screens.changed import ChangedScreen  # not before there is something to tell
        from board.view.changed import changed_lines

        lines = changed_lines(self.live.viewer, self.changed, self.live.evening.now())
        self.changed = None
        self.live.app.push_screen(ChangedScreen(lines), lambda _: self.live.steady.settle())
