"""Lines for what can have gone wrong, each with what it would cost. Pure; safe for a terminal."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from board.base.plain import one_line
from board.evening.forecast import Forecast
from board.evening.slip_wishes import go_on_without
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

    `counter`: which of several it is about.
    """

    headline: str
    told: tuple[str, ...] = ()
    costs: Costs = NOTHING
    wish: SlipWish | None = None
    counter: str = ""

    def lines(self, room: int) -> tuple[str, ...]:
        """The costs and what is told, in at most `room` lines."""
        costs = self.costs.lines(max(1, room - len(self.told))) if self.wish is not None else ()
        return (*costs, *self.told)[: max(1, room)]

    def strip(self, width: int) -> str:
        """What moves or breaks, in one line of at most `width` cells; empty if nothing does."""
        if self.wish is None:
            return one_line(words.costs_beside(self.told), width)
        return self.costs.strip(width) if self.costs.ranked else ""


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
        wish = wish_for(kind, target, minutes)
        after = self.what_if(wish)
        if isinstance(after, Refusal):
            return SlipLine(headline, (one_line(after.words),), counter=counter)
        told = tuple(self._of_dish(target)) if kind == "dish" else ()
        return SlipLine(headline, told, costs(self.viewer, self.before, after), wish, counter)

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
        if hot := [id_ for id_ in target.going_on if self.viewer.slots[id_].on_heat]:
            told.append(words.slip_on_heat(self._names(hot)))
        settled = {id_ for id_, step in self.state.steps.items() if step.settled}
        if without := [s.id for s in go_on_without(self.state.sheet, target.slots) if s.id not in settled]:
            told.append(words.slip_go_on_without(self._names(without)))
        return told

    def _name(self, id_: str) -> str:
        return one_line(self.viewer.slots[id_].name, 36)

    def _names(self, ids: Sequence[str]) -> str:
        return names([self.viewer.slots[id_].name for id_ in ids])
