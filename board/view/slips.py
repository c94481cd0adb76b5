"""Lines for what can have gone wrong, each with what it would cost. Pure; safe for a terminal."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from board.base.plain import one_line
from board.evening.forecast import Forecast
from board.evening.slip_wishes import dropped_slots, go_on_without
from board.evening.slips import Kind, Target, wish_for
from board.evening.state import State
from board.evening.wishes import Refusal, SlipWish
from board.view import words
from board.view.board import Viewer
from board.view.costs import Costs, costs
from board.view.slipped import names

NOTHING = Costs(())


@dataclass(frozen=True, slots=True)
class SlipLine:
    """One line. `wish` is None if it cannot be carried out; `told` goes with the costs.

    `counter`: which of several it is about; `stop`: a question about steps under way, to be answered first.
    """

    headline: str
    told: tuple[str, ...] = ()
    costs: Costs = NOTHING
    wish: SlipWish | None = None
    counter: str = ""
    stop: str = ""

    def lines(self, room: int) -> tuple[str, ...]:
        """The costs and what is told, in at most `room` lines."""
        costs = self.costs.lines(max(1, room - len(self.told))) if self.wish is not None else ()
        return (*costs, *self.told)[: max(1, room)]

    def strip(self, width: int) -> str:
        """The same in one line of at most `width` cells."""
        return self.costs.strip(width) if self.wish is not None else one_line(words.costs_beside(self.told), width)


@dataclass(frozen=True)
class SlipLines:
    """Makes lines for one moment, from the state, the forecast, and what a wish would change."""

    viewer: Viewer
    state: State
    before: Forecast
    what_if: Callable[[SlipWish], Forecast | Refusal]

    def line(self, kind: Kind, found: Sequence[Target], at: int, minutes: int) -> SlipLine:
        """The line of target number `at`, counted from 0."""
        if not found:
            return SlipLine(words.SLIP_NONE[kind])
        target = found[at]
        headline = self.headline(kind, target, minutes)
        counter = words.slip_one_of(at + 1, len(found)) if len(found) > 1 else ""
        wish, after = self._effect(kind, target, wish_for(kind, target, minutes))
        if isinstance(after, Refusal):
            return SlipLine(headline, (one_line(after.words),), counter=counter)
        told = tuple(self._of_dish(target)) if kind == "dish" else ()
        stop = one_line(words.slip_stop(self._names(target.going_on))) if target.going_on else ""
        return SlipLine(headline, told, costs(self.viewer, self.before, after), wish, counter, stop)

    def stopped(self, target: Target) -> Costs:
        """What dropping a dish costs if its steps under way are stopped too."""
        after = self.what_if(wish_for("dish", target, 0, stop=True))
        return NOTHING if isinstance(after, Refusal) else costs(self.viewer, self.before, after)

    def _effect(self, kind: Kind, target: Target, wish: SlipWish) -> tuple[SlipWish, Forecast | Refusal]:
        """The wish and the forecast with it. If all of a dish is under way, the wish is to stop it."""
        after = self.what_if(wish)
        if isinstance(after, Refusal) and kind == "dish" and target.going_on:
            wish = wish_for(kind, target, 0, stop=True)
            after = self.what_if(wish)
        return wish, after

    def headline(self, kind: Kind, target: Target, minutes: int) -> str:
        """What went wrong, in words."""
        name = one_line(target.name, 30)
        match kind:
            case "not-ready":
                return words.slip_not_ready(self._name(target.name), minutes)
            case "guests":
                return words.slip_guests(minutes)
            case "sitting":
                return words.slip_sitting(name, minutes)
            case "dish":
                return words.slip_dish(name, one_line(target.course, 20) if target.course else None)
            case "oven":
                if any(self.state.steps[id_].status == "to-come" for id_ in target.slots):
                    return words.slip_oven_next(name[:1].upper() + name[1:], minutes)
                return words.slip_oven(name[:1].upper() + name[1:], minutes, len(target.slots))
            case "length":
                return words.slip_length(self._name(target.name), minutes)

    def _of_dish(self, target: Target) -> list[str]:
        told = []
        slots = dropped_slots(self.state, target.name, target.course, under_way=True)
        settled = {id_ for id_, step in self.state.steps.items() if step.settled}
        if without := [s.id for s in go_on_without(self.state.sheet, slots) if s.id not in settled]:
            told.append(words.slip_go_on_without(self._names(without)))
        if target.going_on:
            told.append(words.slip_goes_on(self._names(target.going_on)))
        return told

    def _name(self, id_: str) -> str:
        return one_line(self.viewer.slots[id_].name, 36)

    def _names(self, ids: Sequence[str]) -> str:
        return names([self.viewer.slots[id_].name for id_ in ids])
