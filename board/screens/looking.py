"""The live board's keys for looking back and writing down: look back, notes, readings, the closing page.

Most of these screens load when first opened, so that the board appears without waiting for them.
"""

from collections.abc import Callable

from board.base import words as shared
from board.base.plain import one_line
from board.evening.gone_cold import hot_wanted
from board.evening.readings import can_be_read, takes_readings, wants_reading
from board.evening.state import CallKey
from board.evening.wishes import Done, EndUnread, TakeReading, WriteNote
from board.screens import words
from board.screens.ask import NoteScreen
from board.screens.live_board import LiveBoard


class Looking:
    """Opens these screens over one live board and acts on what the host enters."""

    def __init__(self, live: LiveBoard) -> None:
        self.live = live
        self.settle_key = live.steady.settle  # so that a key bouncing out of such a screen answers nothing

    def back(self) -> None:
        from board.screens.look import LookScreen

        self.live.app.push_screen(LookScreen(self.live, self.keep_note, self.ask_reading), lambda _: self._looked())

    def _looked(self) -> None:
        """What was said over there was read there."""
        self.settle_key()
        if not self.live.heard[1]:
            self.live.say("")

    def note(self) -> None:
        """Asks for a note on the call that keys act on, or on none."""
        about, slot = self.live.chosen_call, self.live.chosen_slot
        self._note(one_line(about.headline) if about else None, slot)

    def go_on_noting(self, text: str, slot: str | None, told: str) -> None:
        """Asks again for a note of which so much was typed when a fault took its screen, and tells of it there."""
        found = self.live.viewer.slots.get(slot) if slot else None
        self._note(one_line(found.name) if found else None, slot, text, told)

    def _note(self, about: str | None, slot: str | None, text: str = "", told: str = "") -> None:
        screen = NoteScreen(about, slot, text, told)
        self.live.app.push_screen(screen, lambda noted: self.keep_note(noted, slot))

    def keep_note(self, text: str | None, slot: str | None) -> None:
        self.settle_key()
        if text:
            self.live.wish(WriteNote(text, slot), words.NOTE_KEPT)

    def read_any(self, first: str | None) -> None:
        """Asks for a reading of something under way or keeping, `first` before the others."""
        present = self.live.present
        slots = can_be_read(present.state, present.forecast, first) if present else []
        if slots:
            self._ask(slots)
        else:
            self.live.say(words.NOTHING_TO_READ)

    def ask_reading(self, slot: str | None) -> None:
        """Asks for a reading of that step, or says why there can be none."""
        found = self.live.viewer.slots[slot] if slot else None
        if found is None:
            self.live.say(words.NO_STEP_CHOSEN)
        elif not takes_readings(found):
            self.live.say(shared.no_core(found.name), grave=True)
        else:
            self._ask([found.id])

    def asks_at(self, call: CallKey) -> bool:
        """Asks for the reading a call wants before its answer; returns False if it wants none.

        Cooling food is read at its look-ins and its end, but the host may skip that.
        """
        slot, part, _ = call
        found, state = self.live.viewer.slots[slot], self.live.evening.state
        if part == "reheat":
            self._ask([slot])
            return True
        is_open = state.steps[slot].status == "under-way"
        may_read = is_open and part != "start" and found.cooling is not None and found.core_celsius is None
        asks = may_read or (part == "end" and wants_reading(state, found))
        if asks:
            self._ask([slot], call)
        return asks

    def _ask(self, slots: list[str], call: CallKey | None = None) -> None:
        from board.screens.reading import ReadingScreen

        def take(taken: tuple[str, float | None] | None) -> None:
            self._take(taken, call)

        state, known = self.live.evening.state, self.live.viewer.slots
        hot = {slot: limit for slot in slots if (limit := hot_wanted(state, known[slot])) is not None}
        self.live.app.push_screen(ReadingScreen(self.live.viewer, slots, call[1] if call else None, hot), take)

    def _take(self, taken: tuple[str, float | None] | None, call: CallKey | None) -> None:
        self.settle_key()
        if taken is None:
            return
        slot, celsius = taken
        if celsius is not None:
            from board.view.reading import reading_said

            wish = TakeReading(slot, celsius, call[1], call[2]) if call else TakeReading(slot, celsius)
            self.live.wish(wish, reading_said(self.live.viewer, self.live.evening.peek(), wish))
        elif call is not None:
            found = self.live.viewer.slots[slot]
            wants = call[1] == "end" and found.core_celsius is not None
            if wants:
                self.live.wish(EndUnread(slot), shared.told_unread(one_line(found.name)))
            else:
                self.live.wish(Done(*call))

    def close(self, then: Callable[[], None]) -> None:
        """Shows the closing page; leaving it leaves the board."""
        from board.screens.closing import ClosingScreen

        self.live.app.push_screen(ClosingScreen(self.live.evening), lambda _: then())
