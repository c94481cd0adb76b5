"""Watches the plan's file during its evening: checked once a minute, reported when no call waits."""

from board.base.plain import one_line
from board.screens import words
from board.screens.live_board import LiveBoard
from board.session.plan_watcher import PlanWatcher
from board.sheet.changed import Changed

EVERY_SECONDS, SOON_SECONDS = 60.0, 2.0  # between looks at the file


class PlanChangeNotice:
    """`eye` looks at the file, if anybody does; `changed` is known as the board opens, and told at once."""

    def __init__(self, live: LiveBoard, eye: PlanWatcher | None, changed: Changed | None) -> None:
        self.live = live
        self.eye = eye
        self.changed = changed  # not yet reported

    def begin(self) -> None:
        if self.eye is not None:
            self.live.set_interval(EVERY_SECONDS, self.look)
        if self.changed is not None:
            self.live.call_after_refresh(self._tell, at_once=True)

    def look(self) -> None:
        """Once a minute, and sooner while an edit is being worked out."""
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
        """Reports what changed; a waiting call or another screen goes first."""
        if self.changed is None:
            return
        waits = self.live.board is not None and self.live.board.due and not at_once
        if waits or not self.live.is_current:
            self.live.set_timer(SOON_SECONDS, self._tell)
            return
        from board.screens.changed import ChangedScreen  # loaded when there is something to report
        from board.view.changed import changed_lines

        lines = changed_lines(self.live.viewer, self.changed, self.live.evening.now())
        self.changed = None
        self.live.app.push_screen(ChangedScreen(lines), lambda _: self.live.steady.settle())
