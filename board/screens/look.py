"""Looking back during the evening: what happened, or every step; notes and readings for any of them."""

from collections.abc import Callable
from typing import ClassVar

from rich.cells import cell_len
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.screen import ModalScreen

from board.base import words as shared
from board.base.plain import one_line
from board.screens import words
from board.screens.ask import NoteScreen
from board.screens.closing import ClosingScreen
from board.screens.lines import Line, Lines
from board.screens.listing import MOVES, Listing
from board.screens.live_board import LiveBoard
from board.screens.panels import KeyBar, OneLine
from board.view.look import StepRow, Told, about, happened, step_rows
from board.view.present import Present
from board.view.wrap_words import cut, pad, wrap_words

REFRESH_SECONDS = 0.5
KEY_ROWS = 2

# Clickable keys of the bar.
ACTIONS = {
    "↑↓": "move(1)",
    "tab": "turn",
    "f": "filter",
    "n": "note",
    "t": "reading",
    "e": "closing",
    "esc": "leave",
}


class LookScreen(ModalScreen[None]):
    """Two lists, shown one at a time; the top line says what is being called."""

    CSS_PATH = "look.tcss"
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,q,ctrl+q,o", "leave", show=False),
        *MOVES,
        Binding("tab", "turn", show=False, priority=True),
        Binding("f", "filter", show=False),
        Binding("n,enter", "note", show=False),
        Binding("t", "reading", show=False),
        Binding("e", "closing", show=False),
    ]
    AUTO_FOCUS = None

    def __init__(
        self,
        live: LiveBoard,
        keep_note: Callable[[str | None, str | None], None],
        ask_reading: Callable[[str | None], None],
    ) -> None:
        super().__init__()
        self.live = live
        self.keep_note = keep_note
        self.ask_reading = ask_reading
        self.kind = "all"
        self.told: tuple[Told, ...] = ()
        self.steps: tuple[StepRow, ...] = ()
        self._seen: tuple[object, ...] = ()
        live.heard = ("", False)

    def compose(self) -> ComposeResult:
        self.top = OneLine(id="look-top")
        self.head = OneLine(id="look-head")
        self.list = Listing(id="look-list")
        self.foot = Foot(id="look-foot")
        self.said = OneLine(id="look-said")
        self.keys = KeyBar("", id="look-keys")
        yield self.top
        yield self.head
        yield self.list
        yield self.foot
        yield self.said
        yield self.keys

    def on_mount(self) -> None:
        self.call_after_refresh(self.show)
        self.set_interval(REFRESH_SECONDS, self.show)

    def on_screen_resume(self) -> None:
        self.call_after_refresh(self.show)  # a note or a reading was entered over it

    def on_resize(self) -> None:
        self.call_after_refresh(self._fit)

    def _fit(self) -> None:
        self.keys.show_keys(words.KEYS_LOOK, ACTIONS, KEY_ROWS)
        self._seen = ()
        self.show()

    # --- what it shows ---------------------------------------------------------------------------------------
    def show(self) -> None:
        """Shows the current call; rebuilds the list only after an event. A fault here must never end the board."""
        try:
            self._top()
            present, width = self.live.present, self.list.size.width
            seen = (self.live.evening.state.last_n, self.kind, width, present is None)
            if seen != self._seen and present is not None and width:
                self._list(present, width)
                self._seen = seen
            self._foot()
        except Exception as wrong:
            self.said.show(words.board_fault(one_line(wrong, 80)))

    def _top(self) -> None:
        view = self.live.board
        if view is None:
            return
        standing = f"{view.standing_sign} {view.standing}"
        if view.due:
            first = view.due[0]
            call = f"{first.sign} {first.headline}"
            waited = f"{shared.INSISTENCE_SIGN[first.insistence]}{first.countdown}"
            others = len(view.due) - 1
            room = max(8, self.top.size.width - cell_len(words.look_due(view.clock, "", waited, others)))
            self.top.show(words.look_due(view.clock, cut(call, room), waited, others))
        else:
            self.top.show(words.look_quiet(view.clock, standing))
        self.top.wear("-due" if view.due else "-quiet")
        text, grave = self.live.heard
        self.said.show(text)
        self.said.set_class(grave, "-grave")

    def _list(self, present: Present, width: int) -> None:
        if self.kind == "steps":
            self.steps = step_rows(self.live.viewer, present)
            widths = _widths(self.steps)
            lines = [_step_line(row, widths, width) for row in self.steps]
            self.head.show(_heads(words.look_title(self.kind, len(lines)), widths, width))
        else:
            told = self.live.evening.told
            self.told = happened(self.live.viewer, told, present.now, only_yours=self.kind == "yours")
            clock_width = max((len(each.clock) for each in self.told), default=0)
            lines = [_told_line(line, clock_width) for line in self.told]
            self.head.show(words.look_title(self.kind, len(lines)))
        self.list.show(lines or [((words.LOOK_NOTHING, "soft"),)])

    def _foot(self) -> None:
        slot, present = self._slot(), self.live.present
        told = self.told[self.list.at].text if self.kind != "steps" and self.list.at < len(self.told) else ""
        noted = about(self.live.viewer, present, slot) if slot and present else ""
        name = one_line(self.live.viewer.slots[slot].name) if slot and self.kind == "steps" else told
        self.foot.show(name, noted)

    def _slot(self) -> str | None:
        """The step the chosen line is about."""
        slots = self._slots()
        return slots[self.list.at] if self.list.at < len(slots) else None

    def _slots(self) -> list[str | None]:
        """The step each line is about."""
        return [row.slot for row in self.steps] if self.kind == "steps" else [line.slot for line in self.told]

    def on_listing_moved(self) -> None:
        self.show()

    # --- keys ------------------------------------------------------------------------------------------------
    def action_move(self, rows: int) -> None:
        self.list.move(rows)

    def action_leaf(self, pages: int) -> None:
        self.list.move(pages * self.list.page())

    def action_turn(self) -> None:
        self._turn_to("all" if self.kind == "steps" else "steps")

    def action_filter(self) -> None:
        self._turn_to("all" if self.kind == "yours" else "yours")

    def _turn_to(self, kind: str) -> None:
        """Switches lists: the same step stays chosen if it has a line there, else the last line is."""
        slot, self.kind = self._slot(), kind
        self.show()
        slots = self._slots()
        found = [number for number, each in enumerate(slots) if each == slot and slot is not None]
        self.list.move((found[-1] if found else len(slots) - 1) - self.list.at)

    def action_note(self) -> None:
        slot = self._slot()
        name = one_line(self.live.viewer.slots[slot].name) if slot else None
        self.app.push_screen(NoteScreen(name, slot), lambda text: self._noted(text, slot))

    def _noted(self, text: str | None, slot: str | None) -> None:
        self.keep_note(text, slot)
        self.show()

    def action_reading(self) -> None:
        self.ask_reading(self._slot())
        self.show()

    def action_leave(self) -> None:
        self.dismiss(None)

    def action_closing(self) -> None:
        self.app.push_screen(ClosingScreen(self.live.evening))


class Foot(Lines):
    """The chosen line in full, and the notes on its step."""

    def show(self, text: str, noted: str) -> None:
        width = max(10, self.size.width)
        lines: list[Line] = [((line, "text"),) for line in wrap_words(text, width, 2)]
        lines += [((line, "accent"),) for line in wrap_words(noted, width, 3 - len(lines))] if noted else []
        self.put(lines)


def _told_line(line: Told, clock_width: int) -> Line:
    role = "text" if line.by_host and not line.undone else "done"
    return ((f"{line.clock:>{clock_width}}  ", "soft"), (f"{line.sign} ", "accent"), (line.text, role))


def _widths(rows: tuple[StepRow, ...]) -> tuple[int, int, int]:
    """Widths in cells of a step's status, planned times and actual times."""
    told = [(len(row.stands), len(row.planned), len(row.actual)) for row in rows]
    heads = tuple(map(len, words.LOOK_HEADS))
    stands, planned, actual = (max(column) for column in zip(heads, *told, strict=True))
    return stands, planned, actual


def _heads(title: str, widths: tuple[int, int, int], width: int) -> str:
    """What each column of `_step_line` holds, after the title."""
    stands, planned, actual = widths
    head = pad(title, max(8, width - planned - actual - stands - 10) + 2)
    return "  ".join([head, *map(str.ljust, words.LOOK_HEADS, widths)])


def _step_line(row: StepRow, widths: tuple[int, int, int], width: int) -> Line:
    stands, planned, actual = widths
    name = pad(row.name, max(8, width - planned - actual - stands - 10))
    role = "done" if row.stands in (shared.STATES["finished"], shared.STATES["left-out"]) else "text"
    warm = "wary" if row.stands == shared.STATES["called"] else role
    return (
        (f"{row.sign} ", "accent"),
        (f"{name}  ", role),
        (f"{row.stands:<{stands}}  ", warm),
        (f"{row.planned:>{planned}}  ", "soft"),
        (f"{row.actual:<{actual}}", role),
    )
