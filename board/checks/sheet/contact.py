"""Cross-contact: a tool that touched what hurts a guest is used for a dish that guest is served, unwashed.

Worked out from the run sheet's own times. Nobody knows which of several alike tools is used, so if the kitchen has as
many as these dishes need at once, the advice is to keep one apart. A tool that one dish stands in meanwhile is not the
one the other uses. Common practice, no source; the label, local law and licensed practice decide.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime

from board.checks.allergens.dietary_needs import is_severe
from board.checks.allergens.guests_eat import Matrix
from board.checks.allergens.verdict import Verdict
from board.checks.sheet.paths import Paths
from board.checks.sheet.timed import Timed
from board.plan.load import PlanFile
from board.plan.resolve.links import name_key
from board.plan.snag import Snag, Weight
from board.sheet.run_sheet import RunSheet, Slot

SOURCE = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Contact:
    """`tool` is used for `first`, which the guest must not have, then for `second`, which they are served."""

    tool: str
    guest: str
    what: str
    first: Slot
    second: Slot
    severe: bool = False


def tools_are_washed_between(timed: Timed) -> list[Snag]:
    """guests 7: for each guest and tool, the first time it goes unwashed from a dish that hurts them into one of
    theirs."""
    found: dict[tuple[str, str], Contact] = {}
    for contact in contacts(timed):
        found.setdefault((contact.guest, contact.tool), contact)
    return [_snag(timed.file, each) for each in found.values()]


def contacts(timed: Timed) -> Iterator[Contact]:
    """In the order in which they would happen."""
    file, sheet, paths = timed.file, timed.sheet, timed.paths
    slots = sorted((slot for slot in sheet.slots if slot.dish is not None), key=lambda slot: slot.start)
    hurts = list(_hurts(timed.eaten))
    for second in slots:
        for first in slots:
            if first.start >= second.start:
                continue
            for tool in sorted(_tools(first, file) & _tools(second, file)):
                for guest, bad, what, good, severe in hurts:
                    if (
                        _is(first, bad)
                        and _is(second, good)
                        and not _washed(file, sheet, tool, first.end, second.start)
                        and not _in_hand_before(paths, tool, first.start, second)
                        and not _in_hand_until(paths, tool, first, second.start)
                    ):
                        yield Contact(tool, guest, what, first, second, severe)


DishKey = tuple[str, str]  # course, dish


def _hurts(eaten: Matrix) -> Iterator[tuple[str, DishKey, str, DishKey, bool]]:
    """For each guest: a dish that can hurt them, what in it hurts, and another dish they are served."""
    for g in eaten.most_harmed_first():
        guest = eaten.guests[g]
        served = [d for d in range(len(eaten.dishes)) if eaten.answers[g, d].served]
        for d, row in enumerate(eaten.dishes):
            reasons = eaten.answers[g, d].reasons
            bad = [r for r in reasons if r.verdict is Verdict.NOT_SAFE and r.need.safety]
            for other in served:
                if bad and other != d and eaten.answers[g, other].verdict is not Verdict.NOT_SAFE:
                    there = eaten.dishes[other]
                    dish, severe = (row.course, row.dish), is_severe(reason.need for reason in bad)
                    yield guest.name, dish, bad[0].ingredient, (there.course, there.dish), severe


def _is(slot: Slot, dish: DishKey) -> bool:
    return (slot.course, slot.dish) == dish


def _tools(slot: Slot, file: PlanFile) -> set[str]:
    return {use.what for use in slot.uses} & set(file.plan.kitchen.tools)


def _in_hand_before(paths: Paths, tool: str, moment: datetime, slot: Slot) -> bool:
    """Whether all its tools came with its own dish in them, in unbroken use since before `moment`."""
    needed = _amount(slot, tool)
    while slot.start > moment:
        makers = [each for each in paths.makers.get(slot.id, []) if _same_dish(each, slot)]
        held = next((each for each in makers if _handed_on(paths, tool, each, slot) >= needed), None)
        if held is None:
            return False
        slot = held
    return True


def _in_hand_until(paths: Paths, tool: str, slot: Slot, moment: datetime) -> bool:
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


def _washed(file: PlanFile, sheet: RunSheet, tool: str, after: datetime, before: datetime) -> bool:
    """Whether a step that washes the tool lies between."""
    for slot in sheet.slots:
        task = file.filled.tasks.get(slot.id)
        if task is None or task.work is None or not after <= slot.start or slot.end > before:
            continue
        if name_key(tool) in map(name_key, task.work.washes):
            return True
    return False


def _snag(file: PlanFile, contact: Contact) -> Snag:
    several = file.plan.kitchen.tools.get(contact.tool, 0) > 1
    message = (
        f"the {contact.tool} holds {contact.what} for {contact.first.dish}, and then {contact.second.dish}, "
        f"which {contact.guest} is served ({SOURCE})"
    )
    mend = (
        f"Keep one {contact.tool} apart for {contact.second.dish}"
        if several
        else "Make the other dish first, or use another tool"
    )
    mend += f", or wash it between: a step with `washes: {contact.tool}`."
    place = file.places.of(file.filled.tasks[contact.second.id].node.loc)
    return Snag("guests 7", Weight.MIND, message, mend, place, safety=True, severe=contact.severe)
