"""The page for helpers' phones, as the board has it: its address shown, helpers called, their answers taken."""

from __future__ import annotations  # the page and the board name each other

import asyncio
from collections.abc import Callable, Sequence
from typing import ClassVar, Protocol

from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Horizontal, Vertical
from textual.content import Content
from textual.screen import ModalScreen
from textual.widgets import Static

from board.base import words as shared
from board.base.plain import one_line
from board.evening.wishes import HelperDone, Refusal
from board.screens import words
from board.screens.ask import CLOSE, hint
from board.screens.lines import Line, Lines
from board.screens.live_board import LiveBoard
from board.session.session import Evening
from board.view.present import Present

REFRESH_SECONDS = 1.0
FRAME_COLUMNS, FRAME_ROWS = 6, 2  # of the small screen, around what it shows
BESIDE_COLUMNS = 30  # for the names
HINT_ACTIONS = ("choose(-1)", "choose(1)", "ring", "dismiss")


class Page(Protocol):
    """What the board asks of the page. `begin` and `end` run in the board's loop."""

    @property
    def address(self) -> str: ...

    def drawn(self) -> Sequence[str]: ...

    def ring(self, who: str) -> None: ...

    def is_rung(self, who: str) -> bool: ...

    def is_looking(self, who: str) -> bool: ...

    async def begin(self, board: Sharing) -> None: ...

    async def end(self) -> None: ...


class Sharing:
    """`page` is None on a board that is not shared."""

    def __init__(self, live: LiveBoard, page: Page | None) -> None:
        self.live = live
        self.page = page

    async def begin(self) -> None:
        if self.page is not None:
            await self.page.begin(self)

    # --- what the page asks --------------------------------------------------------------------------------------
    @property
    def evening(self) -> Evening:
        """The board's."""
        return self.live.evening

    @property
    def present(self) -> Present | None:
        """As the board shows it."""
        return self.live.present

    async def answered(self, wish: HelperDone) -> Refusal | None:
        """Does it between two of the board's own messages, as a key would; not at all once nobody waits for it."""
        return await self._in_turn(lambda: self._answered(wish))

    async def comes(self, who: str) -> None:
        """Says so on the board."""
        await self._in_turn(lambda: self._say(words.comes(one_line(who, 30))))

    async def _in_turn(self, act: Callable[[], Refusal | None]) -> Refusal | None:
        done: asyncio.Future[Refusal | None] = asyncio.get_running_loop().create_future()

        def run() -> None:
            if not done.done():  # it is, when whoever waited has gone
                try:
                    done.set_result(act())
                except Exception as wrong:
                    done.set_result(Refusal(words.board_fault(one_line(wrong, 80))))

        if not self.live.call_later(run):
            return Refusal(words.BOARD_LEFT)
        return await done

    def _answered(self, wish: HelperDone) -> Refusal | None:
        refused = self.live.evening.wish(wish)
        if refused is None:
            slot = self.live.viewer.slots[wish.slot]
            self._say(words.answered_by(one_line(wish.who, 30), words.PART_DONE[wish.part], one_line(slot.name, 60)))
            self.live.tick()
        return refused

    def _say(self, text: str) -> None:
        self.live.say(text)

    # --- what the host asks --------------------------------------------------------------------------------------
    def show(self) -> None:
        """Opens the small screen, or says how to have a page."""
        if self.page is None:
            self.live.say(words.NOT_SHARED)
        else:
            screen = PhonesScreen(self.page, self.live.evening.sheet.hands)
            self.live.app.push_screen(screen, self._rung)

    def _rung(self, who: str | None) -> None:
        self.live.steady.settle()
        if who is not None and self.page is not None:
            self.page.ring(who)
            self.live.say(words.rung(one_line(who, 30), looks=self.page.is_looking(who)))


class Drawn(Lines):
    """The code, as it is, where there is room for all of it."""

    def on_mount(self) -> None:
        self.show()

    def show(self) -> None:
        page = self.screen.page if isinstance(self.screen, PhonesScreen) else None
        rows = page.drawn() if page is not None else ()
        self.put([((row, "code"),) for row in rows])


class PhonesScreen(ModalScreen[str | None]):
    """Address and code of the page, and who can be called. Dismisses with whom to call, or None."""

    CSS_PATH = "ask.tcss"
    BINDINGS: ClassVar[list[BindingType]] = [
        *CLOSE,
        Binding("up", "choose(-1)", show=False),
        Binding("down", "choose(1)", show=False),
        Binding("enter,space", "ring", show=False),
    ]

    def __init__(self, page: Page, hands: Sequence[str]) -> None:
        super().__init__()
        self.page = page
        self.hands = hands
        self.at = 0

    def compose(self) -> ComposeResult:
        self.code = Drawn(id="code")
        self.names = Lines(id="names")
        with Vertical(classes="box"), Horizontal(id="phones"):
            yield self.code
            with Vertical():
                yield Static(Content.styled(words.PHONES_TITLE, "bold"))
                yield Static(Content(self.page.address), id="address")
                yield self.names
                yield Static(Content(words.PHONES_CAUTION), classes="hint")
                yield hint(zip(words.PHONES_HINTS, HINT_ACTIONS, strict=True))

    def on_mount(self) -> None:
        rows = self.page.drawn()
        self.code.styles.width, self.code.styles.height = len(rows[0]), len(rows)
        self.names.styles.height = max(1, len(self.hands))
        self._fit()
        self.show()
        self.set_interval(REFRESH_SECONDS, self.show)

    def on_resize(self) -> None:
        self._fit()

    def _fit(self) -> None:
        """A code that is cut off is worth nothing: without room for it, the address stands alone."""
        rows, size = self.page.drawn(), self.app.size
        wide = size.width >= len(rows[0]) + BESIDE_COLUMNS + FRAME_COLUMNS
        self.code.display = wide and size.height >= len(rows) + FRAME_ROWS

    def show(self) -> None:
        """The names, with who looks on and who is called."""
        self.names.put([self._line(number, hand) for number, hand in enumerate(self.hands)])

    def _line(self, number: int, hand: str) -> Line:
        chosen = number == self.at
        sign = shared.SIGN["chosen"] if chosen else " "
        told = words.IS_RUNG if self.page.is_rung(hand) else words.LOOKS if self.page.is_looking(hand) else ""
        return (f"{sign} {one_line(hand, 30)}", "accent" if chosen else "text"), (f"  {told}", "soft")

    def action_choose(self, step: int) -> None:
        self.at = (self.at + step) % max(1, len(self.hands))
        self.show()

    def action_ring(self) -> None:
        if self.hands and self.is_current:
            self.dismiss(self.hands[self.at])
