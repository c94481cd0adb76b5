"""Watching an evening that another board runs: the same board, without the keys that answer."""

from collections.abc import Callable
from typing import ClassVar

from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.content import Content
from textual.screen import Screen
from textual.widgets import Static

from board.base import words as shared
from board.base.clock import Clock
from board.base.plain import one_line
from board.log.follow import Follower
from board.screens import words
from board.screens.ask import HelpScreen
from board.screens.board import BoardScreen
from board.screens.chime import Bell
from board.screens.dressed import DressedApp, Fallen
from board.session.watching import Watched, hand_called
from board.view.board import Viewer
from board.view.onlooker import Onlooker
from board.view.present import Present

FOLLOW_SECONDS = 0.4


class WatchScreen(BoardScreen, inherit_bindings=False):
    """The board of a log, with keys for looking only."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("up", "choose(-1)", show=False),
        Binding("down", "choose(1)", show=False),
        Binding("z", "zoom", show=False),
        Binding("b", "bell", show=False),
        Binding("question_mark,f1", "help", show=False),
        Binding("q,ctrl+q,escape", "leave", show=False),
    ]

    def __init__(self, watched: Watched, chime: Bell, on_leave: Callable[[], None]) -> None:
        self.watched = watched
        super().__init__(watched, chime, bell=False)
        self.on_leave = on_leave

    def new_viewer(self) -> Viewer:
        return Onlooker(self.evening.sheet, self.watched.who)

    def opened(self) -> None:
        self.set_interval(FOLLOW_SECONDS, self._follow)  # besides the board's own tick each second

    def _follow(self) -> None:
        """Shows at once what is new in the log."""
        if self.watched.follower.look():
            self.watched.take()
            self.tick()

    def key_words(self) -> tuple[tuple[str, str, str], ...]:
        return words.KEYS_WATCH

    def not_kept(self, present: Present) -> str:
        return one_line(self.watched.said)

    def mode(self) -> str:
        pieces = [words.looking_for(one_line(self.watched.who, 20)) if self.watched.who else shared.LOOKING_ON]
        if self.watched.rehearsal:
            pieces.append(words.NEWEST_EVENT)
        if self.watched.state.closed:
            pieces.append(words.EVENING_CLOSED)
        return " · ".join(pieces)

    def action_help(self) -> None:
        self.app.push_screen(HelpScreen(rehearsal=False, keys=words.KEYS_WATCH))

    def action_leave(self) -> None:
        self.on_leave()


class WaitScreen(Screen[None]):
    """Shown until there is an evening to watch."""

    BINDINGS: ClassVar[list[BindingType]] = [Binding("q,ctrl+q,escape", "app.quit", show=False)]

    def __init__(self, follower: Follower) -> None:
        super().__init__()
        self.follower = follower

    def compose(self) -> ComposeResult:
        self.text = Static("", markup=False)
        yield self.text

    def on_mount(self) -> None:
        self.show()

    def show(self) -> None:
        said = self.follower.said or words.no_evening_yet(str(self.follower.path))
        self.text.update(Content(one_line(said)))


class WatchApp(DressedApp[str | None]):
    """Waits for an evening in the log, then shows it. Returns why it ended by itself, else None."""

    def __init__(
        self,
        follower: Follower,
        clock: Clock,
        who: str | None = None,
        chime: Bell | None = None,
        *,
        theme: str | None = None,
        remembered: str | None = None,
        fallen: Fallen | None = None,
    ) -> None:
        super().__init__(theme=theme, remembered=remembered)
        self.before = fallen
        self.follower = follower
        self.evening_clock = clock
        self.who = who
        self.chime = chime or Bell(self.bell, self.set_timer)
        self.board: WatchScreen | None = None

    def on_mount(self) -> None:
        self.dress()
        self.waiting = WaitScreen(self.follower)
        self.push_screen(self.waiting)
        self._look()
        self._timer = self.set_interval(FOLLOW_SECONDS, self._look)

    def _look(self) -> None:
        """Opens the board as soon as there is an evening."""
        if self.board is not None:
            return
        self.follower.look()
        opened = self.follower.opened
        if opened is None:
            if self.waiting.is_mounted:
                self.waiting.show()
            return
        if self.who is not None and hand_called(opened.sheet, self.who) is None:
            self.exit(shared.nobody_called(one_line(self.who, 60), [one_line(hand) for hand in opened.sheet.hands]))
            return
        self.board = WatchScreen(Watched(self.follower, self.evening_clock, self.who), self.chime, self.exit)
        self.switch_screen(self.board)
        if self.before is not None:
            self.call_after_refresh(self.board.say, words.opened_in_place(self.before.why))
