"""Whether the kitchen can do what a run sheet asks of it: rings, room, tools and shelves, and the ovens' heat.

Part of `validate`; derived from the plan alone.
"""

from collections.abc import Iterator

from board.plan.model.model import Plan
from board.plan.resolve.assume import Filled
from board.schedule.audit.validate_ovens import oven_snags
from board.schedule.audit.validate_stays import Kitchen, Taking, kitchen_of
from board.schedule.audit.validate_ways import Done, things_there_are
from board.sheet.run_sheet import Slot

A_TRIFLE = 1e-6  # litres are added up as floats


def kitchen_snags(plan: Plan, filled: Filled, done: list[Done], slots: tuple[Slot, ...]) -> Iterator[str]:
    """A sentence for each thing the kitchen cannot do."""
    kitchen = kitchen_of(plan, filled, done, slots)
    yield from _nothing_is_taken_twice(kitchen)
    yield from _shelves_suffice(kitchen)
    yield from oven_snags(kitchen, slots)


def _nothing_is_taken_twice(kitchen: Kitchen) -> Iterator[str]:
    for what, there_is in things_there_are(kitchen.plan.kitchen).items():
        taking = [each for each in kitchen.takings if each.what == what]
        yield from _more_than_there_is(kitchen, what, there_is, taking)


def _shelves_suffice(kitchen: Kitchen) -> Iterator[str]:
    for name, oven in kitchen.plan.kitchen.ovens.items():
        taking = [
            Taking(name, stay.shelves, stay.start, stay.end, stay.name) for stay in kitchen.stays if stay.oven == name
        ]
        yield from _more_than_there_is(kitchen, f"shelves of the {name}", oven.shelves, taking)


def _more_than_there_is(kitchen: Kitchen, what: str, there_is: float, taking: list[Taking]) -> Iterator[str]:
    """Use only grows when something starts, so counting at starts is enough."""
    for at in sorted({each.start for each in taking}):
        now = [each for each in taking if each.start <= at < each.end]
        in_use = sum(each.amount for each in now)
        if in_use > there_is + A_TRIFLE:
            names = ", ".join(each.name for each in now)
            yield f"{in_use:g} {what} are in use at {kitchen.clock(at)}, and there are {there_is:g}: {names}"
