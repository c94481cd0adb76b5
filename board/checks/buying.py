"""Whether what a plan says about buying is about anything, and says enough."""

from board.kitchen.called import same_food
from board.kitchen.drinks import SOLD_AS, USUAL
from board.plan.load import PlanFile
from board.plan.model import Plan
from board.plan.phrase import near
from board.plan.snag import Snag, Weight


def _foods(plan: Plan) -> dict[str, str]:
    """Every food that may be bought: what it is joined by → as it is written."""
    written = [line.food for course in plan.courses for dish in course.dishes for line in dish.ingredients]
    written += [pairing.drink for course in plan.courses for pairing in course.drink]
    written += [line.food for job in plan.jobs for line in job.needs]
    written += [SOLD_AS.get(drink, drink) for drink in USUAL] if plan.drinks else []
    return {same_food(food): food for food in written}


def packs_and_prices_are_of_what_is_needed(file: PlanFile) -> list[Snag]:
    """B01: a pack or a price of a food that nothing in the plan needs."""
    plan, found = file.plan, []
    foods = _foods(plan)
    for key, given in (("packs", list(plan.packs)), ("prices", list(plan.prices))):
        for food in given:
            if same_food(food) not in foods:
                message = f"nothing in the plan needs {food!r}.{near(food, foods.values())}"
                mend = "Write it as the dishes do, or take the line out."
                found.append(Snag("B01", Weight.NOTE, message, mend, file.places.of((key, food), key=True)))
    return found


def prices_by_the_pack_have_a_pack(file: PlanFile) -> list[Snag]:
    """B02: a price of a pack whose size the plan does not say, so nothing is reckoned with it."""
    plan, found = file.plan, []
    packs = {same_food(food) for food in plan.packs}
    for food, price in plan.prices.items():
        if price.per == "pack" and same_food(food) not in packs:
            message = f"{food} has a price by the pack, and how much a pack holds is not given"
            mend = f"Add it under `packs`, for example `{food}: 250 g`, or give the price by weight or by the piece."
            found.append(Snag("B02", Weight.MIND, message, mend, file.places.of(("prices", food))))
    return found
