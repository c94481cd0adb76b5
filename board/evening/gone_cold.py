"""Food kept hot that a probe found too cold: until it is heated again, left out or served. Pure: state → spells, °C.

It is read off the readings alone, so it outlives a restart and goes when its reading is taken back. Once below the
limit of hot holding, being back above that is not enough: it wants the heat of reheating, in every part.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from board.evening.state import Reading, State
from board.facts.limits import Degrees
from board.facts.rule_set import RuleSet
from board.facts.rule_sets import DEFAULT_RULES, RULE_SET_NAMES, rule_set
from board.sheet.run_sheet import RunSheet, Slot

HOT_PLACES = ("hot", "oven", "stovetop")  # places that keep food hot

Ended = Literal["open", "heated", "left-out", "served"]


@dataclass(frozen=True, slots=True)
class ColdSpell:
    """`read`: the first reading below the limit; `last`: the newest one. `ended` heated: `last` is the one that was hot
    enough."""

    slot: str
    read: Reading
    last: Reading
    ended: Ended


def kept_hot(slot: Slot) -> bool:
    """Whether what the step makes is food that is kept hot."""
    return slot.kind == "step" and slot.keeping is not None and slot.keeping.where in HOT_PLACES


def rules_of(sheet: RunSheet) -> RuleSet:
    """The rules the sheet was weighed by; of an older sheet, or by rules that are gone, the usual ones."""
    known = (rule_set(name) for name in RULE_SET_NAMES)
    return next((rules for rules in known if rules.title == sheet.rules), rule_set(DEFAULT_RULES))


def cold_spells(state: State) -> list[ColdSpell]:
    """Every spell of the evening, in the order of the sheet's steps."""
    read = {each.slot for each in state.readings}
    return [spell for slot in state.sheet.slots if slot.id in read and kept_hot(slot) for spell in _of(state, slot)]


def gone_cold(state: State) -> dict[str, ColdSpell]:
    """What is too cold now, by its slot."""
    return {spell.slot: spell for spell in cold_spells(state) if spell.ended == "open"}


def hot_wanted(state: State, slot: Slot) -> Degrees | None:
    """What a probe must show in food that is done and kept hot: the heat of reheating once it was too cold. None: it is
    not kept hot, or not yet."""
    if not kept_hot(slot) or state.steps[slot.id].status != "finished":
        return None
    return rules_of(state.sheet).reheat.degrees if slot.id in gone_cold(state) else hot_limit(state.sheet, slot)


def hot_limit(sheet: RunSheet, slot: Slot) -> Degrees:
    """Hot holding of what the step makes: of a roast cooked by the rules' table of roasts it may be lower."""
    rules = rules_of(sheet)
    roasts = (each.id for each in sheet.slots if _by_the_table(rules, each))
    if rules.roast_holding is not None and any(slot.id == id_ or slot.id in sheet.taking_up(id_) for id_ in roasts):
        return rules.roast_holding
    return rules.hot_holding


def _by_the_table(rules: RuleSet, slot: Slot) -> bool:
    """Whether a whole cut is cooked enough by the table of roasts, and by that alone."""
    if slot.cooks != "whole cut" or slot.core_celsius is None:
        return False
    core, held = slot.core_celsius, slot.hold_minutes
    return not rules.cooked_enough("whole cut", core, held) and rules.cooked_enough("whole cut", core, held, roast=True)


def _of(state: State, slot: Slot) -> Iterator[ColdSpell]:
    rules, step, served = rules_of(state.sheet), state.steps[slot.id], _served(state, slot)
    if step.finished is None:
        return
    after, holding = state.sheet.taking_up(slot.id), hot_limit(state.sheet, slot)
    read: Reading | None = None
    last: Reading | None = None
    for each in state.readings:
        if each.at <= step.finished or (served is not None and each.at > served):
            continue
        if read is None and each.slot == slot.id and not holding.at_least(each.celsius):
            read = last = each
        elif read is not None and (each.slot == slot.id or each.slot in after):
            last = each
            if rules.reheat.degrees.at_least(each.celsius):
                yield ColdSpell(slot.id, read, each, "heated")
                read = None
    if read is not None and last is not None:
        yield ColdSpell(slot.id, read, last, _ended(step.status == "left-out", served))


def _ended(is_out: bool, served: datetime | None) -> Ended:
    return "left-out" if is_out else "served" if served is not None else "open"


def _served(state: State, slot: Slot) -> datetime | None:
    """When its course went out; None before."""
    served = (state.steps[course.serve].finished for course in state.sheet.courses if course.name == slot.course)
    return next(served, None)
