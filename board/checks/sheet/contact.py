"""Cross-contact: a tool that touched what hurts a guest is used for a dish that guest is served, unwashed.

Worked out from the run sheet's own times. Nobody knows which of several alike tools is used, so if the kitchen has as
many as these dishes need at once, the advice is to keep one apart. A tool that one dish stands in meanwhile is not the
one the other uses. Common practice, no source; the label, local law and licensed practice decide.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from board.checks.allergens.dietary_needs import is_severe
from board.checks.allergens.guests_eat import Matrix
from board.checks.allergens.verdict import Verdict
from board.checks.sheet.timed import Timed
from board.checks.sheet.tools import in_hand_before, in_hand_until, is_washed, tools_of
from board.plan.load import PlanFile
from board.plan.snag import Snag, Weight
from board.sheet.run_sheet import Slot

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
            for tool in sorted(tools_of(first, file) & tools_of(second, file)):
                for guest, bad, what, good, severe in hurts:
                    if (
                        _is(first, bad)
                        and _is(second, good)
                        and not is_washed(file, sheet, tool, first.end, second.start)
                        and not in_hand_before(paths, tool, first.start, second)
                        and not in_hand_until(paths, tool, first, second.start)
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
