"""An evening on the live board in which a drawn night comes true: a layer between the host's answers and the evening.

The board shows and logs what it always does. An answer that the night does not bear out becomes what a host would then
tell the board; a forgotten call is not heard for its minutes; what the host must know is told as a line.
"""

from dataclasses import dataclass, replace
from datetime import datetime
from typing import TYPE_CHECKING

from board.base.plain import one_line
from board.evening.calls import Call
from board.evening.events import Part
from board.evening.wishes import Done, EndUnread, HelperDone, Refusal, Settle, TakeReading, Wish
from board.rehearsal import words
from board.rehearsal.draw import MINUTE, Night, instead, is_unheard, truly_over
from board.session.session import Evening
from board.sheet.run_sheet import RunSheet
from board.view.present import Present

if TYPE_CHECKING:
    from board.session.replan.gain import Offer


@dataclass(frozen=True, slots=True)
class Offered:
    """A new timetable as the board offered it: when, how many events the evening had by then, and the minutes late it
    promised to take off."""

    sheet: RunSheet
    at: datetime
    events: int
    promised: int


class NightEvening(Evening):
    """One evening and its night. Takes over from an evening that was opened as any is."""

    def __init__(self, evening: Evening, night: Night) -> None:
        super().__init__(evening.sheet, evening.clock, evening.keeper, evening.told)
        self.night = night
        self.offers: list[Offered] = []
        self._to_say: list[str] = []
        self._unheard: set[str] = set()
        self._told_early: set[str] = set()

    def wish(self, wish: Wish) -> Refusal | None:
        """Does what the host wants; or what happens instead, which the next tick tells."""
        about = self._answered_by(wish)
        slot = self.sheet.by_id().get(about[0]) if about is not None else None
        if about is not None and slot is not None:
            other = instead(self.night, self.state, slot, about[1], self.now())
            if other is not None:
                refused = super().wish(other.wish) if other.wish is not None else None
                if refused is None:
                    self._to_say.append(other.said)
                return refused
        return super().wish(wish)

    def tick(self) -> Present:
        """The present as the host has it: without the calls that go unheard, with what is to be told."""
        present = super().tick()
        unheard = {call.slot for call in present.due if is_unheard(self.night, present, call)}
        heard = tuple(c for c in present.due if c.part == "end" and c.slot in self._unheard - unheard)
        self._unheard = unheard
        told = [*self._to_say, *(self._forgotten_line(call) for call in heard), *self._early_lines(present)]
        self._to_say.clear()
        return replace(
            present,
            due=tuple(call for call in present.due if not is_unheard(self.night, present, call)),
            raised=(*(call for call in present.raised if not is_unheard(self.night, present, call)), *heard),
            told=tuple(told),
        )

    def offered(self, offer: "Offer") -> None:
        """Keeps in mind what the board offers, too, for the account of the night."""
        if not self.offers or self.offers[-1].sheet != offer.sheet:
            promised = offer.before.late - offer.after.late
            self.offers.append(Offered(offer.sheet, self.now(), len(self.told), promised))
        super().offered(offer)

    def _answered_by(self, wish: Wish) -> tuple[str, Part] | None:
        """The slot that a wish says has begun or is over, and which of both."""
        match wish:
            case Done(slot=slot, part=part) | HelperDone(slot=slot, part=part):
                return slot, part
            case Settle(slot=slot):
                step = self.state.steps.get(slot)
                return slot, "end" if step is not None and step.status == "under-way" else "start"
            case EndUnread(slot=slot) | TakeReading(slot=slot, part="end"):
                return slot, "end"
            case _:
                return None

    def _forgotten_line(self, call: Call) -> str:
        minutes = round(self.night.forgotten[call.slot] / MINUTE)
        return words.night_forgotten(one_line(self.sheet.by_id()[call.slot].name), minutes)

    def _early_lines(self, present: Present) -> list[str]:
        """Once each: what is ready before its end is called. To end it is the host's."""
        lines = []
        for slot, called in truly_over(self.night, present):
            if not called and slot.id not in self._told_early:
                lines.append(words.ready_early(one_line(slot.name)))
            self._told_early.add(slot.id)
        return lines
