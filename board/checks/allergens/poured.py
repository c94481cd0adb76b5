"""Drinks against the allergies of those at the table: something to ask about, never a stop, since everybody takes their
own glass. Planning help only: read every label, ask your guest."""

from collections.abc import Iterator

from board.checks.allergens.dietary_needs import Need, is_severe, needs_of, told_needs
from board.checks.allergens.ingredient_facts import host_foods, stuff_of
from board.checks.allergens.verdict import Reason, Verdict, judged
from board.plan.load import PlanFile
from board.plan.phrases.guests import Guest
from board.plan.phrases.quantities import Ingredient
from board.plan.places import Loc
from board.plan.snag import Snag, Weight


def drinks_are_asked_about(file: PlanFile) -> list[Snag]:
    """guests 6: a drink holds, or may hold, what a guest is allergic to (gluten for a coeliac), or its contents are
    unknown."""
    return [snag for guest in file.plan.guests if (snag := _of_guest(file, guest)) is not None]


def _of_guest(file: PlanFile, guest: Guest) -> Snag | None:
    needs = [need for need in needs_of(guest) if need.safety and need.known]
    reasons = [reason for need in needs for reason in _reasons(file, need)]
    if not reasons:
        return None
    told = "; ".join(dict.fromkeys(f"{each.ingredient}: {each.why}" for each in reasons))
    sources = "; ".join(dict.fromkeys(each.source for each in reasons))
    whose = ", ".join(told_needs(each.need for each in reasons))
    message = f"ask about the drinks for {guest.name} ({whose}): {told}. By: {sources}"
    mend = (
        f"Read the label and ask your guest, and have something else to drink for {guest.name}. A bottle whose label "
        "was read goes by a name of its own, with what it holds under `foods:`, for example `our white: nothing`."
    )
    severe = is_severe(each.need for each in reasons)
    return Snag("guests 6", Weight.ASK, message, mend, file.places.of(reasons[0].loc), severe=severe)


def _reasons(file: PlanFile, need: Need) -> Iterator[Reason]:
    own = host_foods(file.plan)
    for loc, drink in _drinks(file):
        for reason in judged(stuff_of(Ingredient(food=drink), loc, own), need):
            if reason.verdict is not Verdict.SAFE:
                yield reason


def _drinks(file: PlanFile) -> Iterator[tuple[Loc, str]]:
    """Drinks poured with a course, then the wine, sparkling wine and beer planned for the whole evening."""
    seen = set[str]()
    for c, course in enumerate(file.plan.courses):
        for n, pairing in enumerate(course.drink):
            if pairing.drink not in seen:
                seen.add(pairing.drink)
                yield ("courses", c, "drink", n), pairing.drink
    drinks = file.plan.drinks
    if drinks is not None:
        asked = {"wine": drinks.wine, "sparkling wine": drinks.sparkling, "beer": drinks.beer}
        for drink, how_much in asked.items():
            if how_much is not None and how_much.some and drink not in seen:
                yield ("drinks", drink.split()[0]), drink
