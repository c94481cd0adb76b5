"""Which tools a step uses, whether one is washed between two steps, and whether it is the same piece at all. Pure.

Worked out from the run sheet's own times. A tool that one dish stands in meanwhile is not the one another uses.
"""

from datetime import datetime

from board.checks.sheet.paths import Paths
from board.facts import deeds
from board.facts.phrases import stems
from board.plan.load import PlanFile
from board.plan.resolve.links import name_key
from board.sheet.run_sheet import RunSheet, Slot


def tools_of(slot: Slot, file: PlanFile) -> set[str]:
    """The kitchen's tools that a slot uses."""
    return {use.what for use in slot.uses} & set(file.plan.kitchen.tools)


def in_hand_before(paths: Paths, tool: str, moment: datetime, slot: Slot) -> bool:
    """Whether all its tools came with its own dish in them, in unbroken use since before `moment`."""
    needed = _amount(slot, tool)
    while slot.start > moment:
        makers = [each for each in paths.makers.get(slot.id, []) if _same_dish(each, slot)]
        held = next((each for each in makers if _handed_on(paths, tool, each, slot) >= needed), None)
        if held is None:
            return False
        slot = held
    return True


def in_hand_until(paths: Paths, tool: str, slot: Slot, moment: datetime) -> bool:
    """Whether all its tools still hold its own dish at `moment`, in unbroken use."""
    needed = _amount(slot, tool)
    while slot.end <= moment:
        takers = [each for each in paths.takers(slot) if _same_dish(each, slot)]
        held = next((each for each in takers if _handed_on(paths, tool, slot, each) >= needed), None)
        if held is None:
            return False
        slot = held
    return True


def _same_dish(one: Slot, other: Slot) -> bool:
    return (one.course, one.dish) == (other.course, other.dish)


def _handed_on(paths: Paths, tool: str, maker: Slot, taker: Slot) -> float:
    """How many of the tool pass from one step to the next with the food in them."""
    there = min(_amount(maker, tool), _amount(taker, tool))
    return there if maker.end == taker.start else min(there, _kept_in(paths, maker, tool))


def _amount(slot: Slot, tool: str) -> float:
    return sum(use.amount for use in slot.uses if use.what == tool)


def _kept_in(paths: Paths, slot: Slot, tool: str) -> int:
    """How many of the tool its result stands in until its successor starts."""
    keeps = paths.way(slot).keeps
    found = keeps.where.tools if keeps is not None else {}
    return next((count for name, count in found.items() if name_key(name) == name_key(tool)), 0)


def is_washed(file: PlanFile, sheet: RunSheet, tool: str, after: datetime, before: datetime) -> bool:
    """Whether a step or job between washes the tool, by its `washes:` or by naming it: `scrub the board`."""
    for slot in sheet.slots:
        task = file.filled.tasks.get(slot.id)
        if task is None or task.work is None or not after <= slot.start or slot.end > before:
            continue
        if name_key(tool) in map(name_key, task.work.washes) or names_wash_of(slot.name, tool):
            return True
    return False


def names_wash_of(words: str, tool: str) -> bool:
    """Whether words say that this tool is washed, or swapped for a clean one: `wash the board and the knife`."""
    return deeds.washes_tool(words) and set(stems(tool)[-1:]) <= set(stems(words))
