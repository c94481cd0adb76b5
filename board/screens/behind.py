"""What should be done by now and was never told, to be said in one go: as an evening is opened in its middle, or after
the host was long away."""

from collections.abc import Sequence
from typing import ClassVar

from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.screen import ModalScreen
from textual.widgets import Static

from board.base.plain import one_line
from board.evening.behind import at_other_times, needed, untold
from board.evening.events import Said
from board.evening.wishes import Refusal, Say
from board.screens import words
from board.screens.ask import NoteScreen
from board.screens.lines import Line, Lines
from board.screens.listing import MOVES, Listing
from board.screens.live_board import LiveBoard
from board.session.session import Evening
from board.view.behind import said_row
from board.view.board import Viewer
from board.view.present import Present

OVERTAKEN = 2  # calls that have waited as long as their steps take: then the host was away; ours


class TimesScreen(NoteScreen):
    """One line of text: when it was."""

    ASKED, HINTS, LONGEST = words.TIMES_TITLE, words.TIMES_HINTS, 20

    def about_words(self) -> str:
        return self.about or ""


class BehindScreen(ModalScreen[tuple[Said, ...]]):
    """Every step of them, ticked until the host says otherwise. Dismisses with those ticked."""

    CSS_PATH = "look.tcss"
    AUTO_FOCUS = None
    BINDINGS: ClassVar[list[BindingType]] = [
        *MOVES,
        Binding("space", "tick", show=False),
        Binding("t", "times", show=False),
        Binding("enter", "take", show=False),
        Binding("n,escape,q,ctrl+q", "dismiss(())", show=False),
    ]

    def __init__(self, evening: Evening, viewer: Viewer, steps: Sequence[Said]) -> None:
        super().__init__()
        self.evening = evening
        self.viewer = viewer
        self.steps = {each.slot: each for each in steps}
        self.ticked = set(self.steps)

    def compose(self) -> ComposeResult:
        yield Lines(id="behind-top")
        self.list = Listing(id="look-list")
        yield self.list
        yield Lines(id="behind-foot")
        yield Static(words.BEHIND_KEYS, id="look-keys", markup=False)

    def on_mount(self) -> None:
        self.call_after_refresh(self._show)

    def on_resize(self) -> None:
        self.call_after_refresh(self._show)

    def _show(self, said: str = "") -> None:
        over = sum(self.steps[slot].finished is not None for slot in self.ticked)
        title = words.behind_title(over, len(self.ticked) - over, len(self.steps) - len(self.ticked))
        self.query_one("#behind-top", Lines).put([((title, "accent"),), ((words.BEHIND_ASKS, "soft"),)])
        rows = [said_row(self.viewer, each, ticked=slot in self.ticked) for slot, each in self.steps.items()]
        self.list.show([_line(row) for row in rows], self.list.at)
        self.query_one("#behind-foot", Lines).put([((one_line(said), "wary"),)])

    @property
    def _chosen(self) -> str:
        return list(self.steps)[self.list.at]

    def action_move(self, rows: int) -> None:
        self.list.move(rows)

    def action_leaf(self, pages: int) -> None:
        self.list.move(pages * self.list.page())

    def action_tick(self) -> None:
        """What follows goes with it, and what it needs comes with it."""
        slot, steps = self._chosen, list(self.steps.values())
        if slot in self.ticked:
            gone = untold(self.evening.state, steps, slot) & self.ticked
            self.ticked -= gone
            self._show(words.unticked_too(len(gone) - 1))
        else:
            come = needed(self.evening.state, steps, slot) - self.ticked
            self.ticked |= come
            self._show(words.ticked_too(len(come) - 1))

    def action_times(self) -> None:
        slot = self.viewer.slots[self._chosen]
        self.app.push_screen(TimesScreen(slot.name), self._timed)

    def _timed(self, typed: str | None) -> None:
        if typed is None:
            return
        changed = at_other_times(self.steps[self._chosen], typed, self.evening.now(), self.viewer.zone)
        if changed is None:
            self._show(words.BAD_TIMES)
            return
        self.steps[changed.slot] = changed
        self.ticked |= needed(self.evening.state, list(self.steps.values()), changed.slot)
        self._show()

    def action_take(self) -> None:
        steps = tuple(each for slot, each in self.steps.items() if slot in self.ticked)
        refused = self.evening.what_if(Say(steps)) if steps else None
        if isinstance(refused, Refusal):
            self._show(refused.words)
        elif self.is_current:  # a bouncing enter comes twice but must close once
            self.dismiss(steps)


def _line(row: tuple[str, str]) -> Line:
    text, tone = row
    return ((text, tone),)


class Behind:
    """Asks about what lies behind, on one live board. While `asks`, nothing is called: most of it was done."""

    def __init__(self, live: LiveBoard) -> None:
        self.live = live
        self.asks = False
        self._offered = 0

    def begin(self) -> None:
        """As the board opens: asks, if anything should be done by now."""
        self._ask(self.live.evening.behind())

    def ask(self) -> None:
        """At a key."""
        steps = self.live.evening.behind()
        if steps:
            self._ask(steps)
        else:
            present = self.live.present
            self.live.say(words.NOTHING_BUT_CALLS if present is not None and present.due else words.NOTHING_BEHIND)

    def offer(self, present: Present) -> None:
        """Says, once for as many, that the host can tell it in one go."""
        away = sum(call.overtaken for call in present.due) >= OVERTAKEN
        count = len(self.live.evening.behind()) if away else 0
        if count > self._offered:
            self.live.say(words.behind_offer(count))
        self._offered = count

    def _ask(self, steps: Sequence[Said]) -> None:
        if steps:
            self.asks = True
            self.live.app.push_screen(BehindScreen(self.live.evening, self.live.viewer, steps), self._told)

    def _told(self, steps: tuple[Said, ...] | None) -> None:
        self.asks = False
        self.live.steady.settle()
        if not steps or not self.live.wish(Say(steps), words.behind_told(len(steps))):
            self.live.tick()
