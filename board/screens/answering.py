"""The live board's keys that answer a call or mark a moment: each finds what it is about and makes the wish."""

from collections.abc import Callable

from board.base import words as shared
from board.base.plain import one_line
from board.evening.answers import answers_of, last_put_off
from board.evening.clocks import next_to_put_away
from board.evening.cooling import READ_COOLING_MINUTES
from board.evening.state import CallKey
from board.evening.unheated import heats_through
from board.evening.wishes import Done, LeaveOut, PutAway, Settle, TakeBack
from board.screens import words
from board.screens.live_board import LiveBoard
from board.view.board import CallView
from board.view.choice import coming_call, meant_call
from board.view.marks import slot_to_mark


class Answering:
    """`asks_at` asks for the reading a call wants before its answer, and returns whether it did."""

    def __init__(self, live: LiveBoard, asks_at: Callable[[CallKey], bool]) -> None:
        self.live = live
        self.asks_at = asks_at

    def _meant(self) -> CallView | None:
        """The call a key answers; None for a bouncing key."""
        view = self.live.board
        if view is None or self.live.steady.is_bouncing:
            return None
        call = meant_call(view, self.live.chosen)
        if call is None and view.busy is None:
            self.live.say(words.NO_CALL)
        return call

    def answer(self) -> None:
        call = self._meant()
        if call is not None:
            self.live.steady.settle()
            if call.ends is not None:
                self.live.wish(Done(*call.ends, then=call.key[0]), self._read_soon(call.key))
            elif not self.asks_at(call.key):
                self.live.wish(Done(*call.key, then=call.then), self._read_soon(call.key))

    def _read_soon(self, call: CallKey) -> str:
        """What to say when a step that cools starts."""
        slot = self.live.viewer.slots[call[0]]
        cools = call[1] == "start" and slot.cooling
        return words.read_in(one_line(slot.name, 40), READ_COOLING_MINUTES) if cools else ""

    def later(self) -> None:
        """Five minutes; pressed again before the call returns, five more."""
        live = self.live
        if live.board is None or live.present is None or live.steady.is_bouncing:
            return
        again = last_put_off(live.evening.state, live.present.now) if live.chosen_call is None else None
        call = coming_call(live.board, again) or self._meant()
        if call is None:
            return
        if not call.is_due and live.evening.put_off_till(call.key) is None:
            live.say(words.NOT_CALLED_YET)
            return
        later = live.evening.later(call.key)
        live.steady.settle()
        live.wish(later, words.put_off(call.headline, later.minutes))

    def done_already(self) -> None:
        """Started and finished at once, whatever was asked: one key for an overtaken call."""
        call = self._meant()
        if call is None:
            return
        slot, part, _ = call.key
        self.live.steady.settle()
        if part == "start" or not self.asks_at(call.key if part == "reheat" else (slot, "end", 0)):
            self.live.wish(Settle(slot), words.done_already(call.headline))

    def leave_out(self) -> None:
        call = self._meant()
        if call is not None:
            self.live.steady.settle()
            slot = self.live.viewer.slots[call.key[0]]
            dish = slot.dish if call.key[1] == "reheat" else None
            told = shared.left_out(one_line(dish or call.headline))
            if call.refuse:
                told = shared.decided(call.headline, call.refuse)
            elif dish is None and heats_through(slot):
                told = words.left_cold(told)
            self.live.wish(LeaveOut(call.key[0]), told)

    def take_back(self) -> None:
        answers = answers_of(self.live.evening.state)
        what = self.live.viewer.answer_words(answers[-1]) if answers else ""
        self.live.wish(TakeBack(), shared.taken_back(what))

    def mark(self, what: str) -> None:
        """Guests arrived, seated, or a course cleared."""
        if self.live.present is None:
            return
        slot = slot_to_mark(self.live.present.state, what)
        if slot is None:
            self.live.say(words.NOTHING_TO_MARK[what])
        else:
            self.live.wish(Settle(slot), words.MARKED[what])

    def put_away(self) -> None:
        """The most urgent cleared leftovers are in the cold."""
        live = self.live
        if live.present is None:
            return
        course = next_to_put_away(live.present.clocks)
        if course is None:
            live.say(shared.NOTHING_TO_PUT_AWAY)
        elif live.wish(PutAway(course)):
            text, late = live.viewer.standings.put_away(course, live.present)
            live.say(text, grave=late)
