"""The settings a bake may have, of which it has one from its start to its end. °C; moments in parts of a minute.

How long an oven takes from one setting to another is a difference of two sums, one that rises with heating and one that
falls with cooling, so that settings still open need no table of minutes.
"""

from collections.abc import Sequence
from typing import NamedTuple

from board.facts.heat import ROOM_CELSIUS, OvenRates, minutes_between
from board.schedule.problem import OvenFacts, OvenUse
from board.schedule.solver.library import cp_model
from board.schedule.solver.variables import Spell, Variables

PARTS = 1000  # of a minute: the finest that a change of heat is reckoned in
COLDEST = ROOM_CELSIUS + 1  # °C; nothing falls to the room's own warmth


class Dialled(NamedTuple):
    """A use of an oven, and the settings it may have, °C, each with its literal. What is kept wants its own, and bears
    all of its range."""

    spell: Spell
    use: OvenUse
    heats: dict[int, cp_model.LiteralT]

    def bears(self, heat: int) -> bool:
        return self.use.low <= heat <= self.use.high if self.spell.is_hold else heat in self.heats

    @property
    def known(self) -> int | None:
        """The setting where there is but one."""
        return next(iter(self.heats)) if len(self.heats) == 1 else None

    def shares_anyway(self, other: "Dialled") -> bool:
        """Whether whatever one has does for the other, too."""
        if not self.use.agrees(other.use) or (self.spell.is_hold and other.spell.is_hold):
            return self.use.agrees(other.use)
        if self.spell.is_hold or other.spell.is_hold:
            bake, kept = (other, self) if self.spell.is_hold else (self, other)
            return all(map(kept.bears, bake.heats))
        return self.known is not None and self.known == other.known

    def reckoned(self, rates: OvenRates) -> tuple[cp_model.LinearExpr, cp_model.LinearExpr]:
        """How far up it is by heating, and how far by cooling, in parts of a minute."""
        up = [round(PARTS * (heat - ROOM_CELSIUS) / rates.heating) for heat in self.heats]
        down = [round(PARTS * minutes_between(rates, max(heat, COLDEST), COLDEST)) for heat in self.heats]
        literals = list(self.heats.values())
        return cp_model.LinearExpr.weighted_sum(literals, up), cp_model.LinearExpr.weighted_sum(literals, down)


def dialled(v: Variables, number: int, taken: Sequence[tuple[Spell, OvenUse]]) -> list[Dialled]:
    """The uses of an oven in order, with variables for the settings of its bakes."""
    uses = list(dict.fromkeys(use for _, use in taken))
    has = v.problem.ovens_now.get(number)
    stands = None if has is None else has.celsius
    found = []
    for spell, use in taken:
        heats = [use.want] if spell.is_hold or use.off else _candidates(use, uses, stands)
        found.append(Dialled(spell, use, _chosen(v, heats, use.want)))
    return found


def _candidates(use: OvenUse, uses: Sequence[OvenUse], stands: int | None) -> list[int]:
    """Its own setting, what the oven stands at, and where others can share it, theirs and the lowest they bear:
    whatever can share an oven can share it at one of these."""
    near = [other for other in uses if use.agrees(other)]
    heats = {use.want, *(() if stands is None else (stands,))}
    if any(other.want != use.want for other in near):
        heats |= {heat for other in near for heat in (other.want, other.low)}
    return sorted(heat for heat in heats if use.low <= heat <= use.high)


def _chosen(v: Variables, heats: Sequence[int], want: int) -> dict[int, cp_model.LiteralT]:
    if len(heats) == 1:
        return {heats[0]: v.true}
    literals = [v.model.new_bool_var(f"at {heat}") for heat in heats]
    v.model.add_exactly_one(literals)
    v.off_setting.append(cp_model.LinearExpr.weighted_sum(literals, [abs(heat - want) for heat in heats]))
    return dict(zip(heats, literals, strict=True))


def at_one_setting(model: cp_model.CpModel, one: Dialled, other: Dialled, when: Sequence[cp_model.LiteralT]) -> None:
    """Two bakes have the same; a bake has what is borne by what is kept beside it."""
    both = [heat for heat in {**one.heats, **other.heats} if one.bears(heat) and other.bears(heat)]
    for each in (one, other):
        if not each.spell.is_hold:
            model.add_bool_or([each.heats[heat] for heat in both if heat in each.heats]).only_enforce_if(*when)
    if not (one.spell.is_hold or other.spell.is_hold):
        for heat in both:
            model.add_implication(one.heats[heat], other.heats[heat]).only_enforce_if(*when)


def time_to_change(
    model: cp_model.CpModel, facts: OvenFacts, one: Dialled, other: Dialled, when: Sequence[cp_model.LiteralT]
) -> None:
    """The other begins once the oven has come to its setting from the one's."""
    start, end = other.spell.start, one.spell.end
    if one.known is not None and other.known is not None:
        model.add(end + facts.change_between(one.use, other.use) <= start).only_enforce_if(*when)
        return
    model.add(end <= start).only_enforce_if(*when)
    if not other.use.off:
        (up, down), (other_up, other_down) = one.reckoned(facts.rates), other.reckoned(facts.rates)
        gap = cp_model.LinearExpr.weighted_sum([start, end], [PARTS, -PARTS])
        model.add(gap >= other_up - up).only_enforce_if(*when)
        model.add(gap >= down - other_down).only_enforce_if(*when)


def kept_as_baked(model: cp_model.CpModel, one: Dialled, other: Dialled) -> None:
    """A result kept in the oven of its bake, at a heat that may be the same, is kept at a heat it was baked at."""
    for bake, kept in ((one, other), (other, one)):
        if kept.spell.is_hold and not bake.spell.is_hold and bake.use.agrees(kept.use):
            for heat, literal in bake.heats.items():
                if not kept.bears(heat):
                    model.add_bool_or(~literal, ~bake.spell.literal, ~kept.spell.literal)
