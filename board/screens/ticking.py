"""Provisions to tick off in the shop: by day and section, one line a food, each tick saved at once."""

from collections.abc import Callable, Sequence
from typing import ClassVar

from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.screen import Screen

from board.base import words as shared
from board.base.plain import one_line
from board.screens import words
from board.screens.dressed import DressedApp
from board.screens.lines import Line, Lines
from board.screens.listing import Listing
from board.shopping.ticks import Tickable, Ticks


class TickScreen(Screen[None]):
    """Headings and foods; only foods can be chosen."""

    CSS_PATH = "ticking.tcss"
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("up", "choose(-1)", show=False),
        Binding("down", "choose(1)", show=False),
        Binding("pageup", "page(-1)", show=False),
        Binding("pagedown", "page(1)", show=False),
        Binding("space,enter", "tick", show=False),
        Binding("n", "next", show=False),
        Binding("q,ctrl+q,escape", "app.quit", show=False),
    ]

    def __init__(self, title: str, entries: Sequence[str | Tickable], ticks: Ticks, keep: Callable[[], str]) -> None:
        """`entries`: a heading as text, or a food; `keep` saves the ticks and returns what went wrong, if anything."""
        super().__init__()
        self.heading = title
        self.entries = entries
        self.ticks = ticks
        self.keep = keep
        self.foods = [n for n, entry in enumerate(entries) if isinstance(entry, Tickable)]
        self.at = 0  # index among the foods
        self.said = ""

    def compose(self) -> ComposeResult:
        yield Lines(id="tick-top")
        yield Listing(id="tick-list")
        yield Lines(id="tick-foot")
        yield Lines(id="tick-keys")

    def on_mount(self) -> None:
        self.call_after_refresh(self.action_next, stay=True)

    def say(self, text: str) -> None:
        self.said = text
        self._show()

    def action_choose(self, rows: int) -> None:
        self.at = max(0, min(self.at + rows, len(self.foods) - 1))
        self._show()

    def action_page(self, pages: int) -> None:
        self.action_choose(pages * self.query_one(Listing).page())

    def action_tick(self) -> None:
        if self.foods:
            self.ticks.toggle(self._chosen())
            self.said = self.keep()
            self._show()

    def action_next(self, *, stay: bool = False) -> None:
        """Moves to the next food without a tick, from this line (`stay`) or the one below, wrapping at the end."""
        count = len(self.foods)
        order = [(self.at + n) % count for n in range(0 if stay else 1, count + 1)] if count else []
        self.at = next((n for n in order if not self.ticks.is_ticked(self._food(n))), self.at)
        self._show()

    def _food(self, number: int) -> Tickable:
        found = self.entries[self.foods[number]]
        assert isinstance(found, Tickable)
        return found

    def _chosen(self) -> Tickable:
        return self._food(self.at)

    def _show(self) -> None:
        done = sum(self.ticks.is_ticked(self._food(n)) for n in range(len(self.foods)))
        top, keys, foot = (self.query_one(f"#{id_}", Lines) for id_ in ("tick-top", "tick-keys", "tick-foot"))
        top.put([((f"{one_line(self.heading, 50)}   ", "accent"), (words.ticked_of(done, len(self.foods)), "soft"))])
        at = self.foods[self.at] if self.foods else 0
        listing = self.query_one(Listing)
        if at and isinstance(self.entries[at - 1], str):
            listing.top = min(listing.top, at - 1)  # keeps its heading in view
        listing.show([self._line(entry) for entry in self.entries], at)
        if at == 1 and listing.size.height > 1:
            listing.top = 0
            listing.show(listing.rows, at)
        foot.put(self._foot())
        keys.put([((words.tick_keys(), "soft"),)])

    def _line(self, entry: str | Tickable) -> Line:
        if isinstance(entry, str):
            return ((one_line(entry), "name"),)
        box = words.TICKED if self.ticks.is_ticked(entry) else words.NOT_TICKED
        role = "done" if self.ticks.is_ticked(entry) else "text"
        line: Line = ((f"  {box} {one_line(entry.amount)} {one_line(entry.food)}", role),)
        changed = self.ticks.ticked_as(entry)
        return (*line, (f"  {shared.was(one_line(changed))}", "wary")) if changed is not None else line

    def _foot(self) -> list[Line]:
        if not self.foods:
            return [((shared.PROVISIONS_NOTHING, "soft"),)]
        food = self._chosen()
        told = "; ".join([*food.notes, ", ".join(food.dishes)])
        return [((one_line(told), "soft"),), ((one_line(self.said), "wary"),)]


class TickApp(DressedApp[None]):
    """One screen, until it is left."""

    def __init__(self, screen: TickScreen, remembered: str | None, said: str = "") -> None:
        super().__init__(remembered=remembered)
        self.ticking = screen
        self.said = said

    def on_mount(self) -> None:
        self.dress()
        self.push_screen(self.ticking)
        self.call_after_refresh(self.ticking.say, self.said)
