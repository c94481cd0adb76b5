"""How much to drink, from guests, hours and courses. Pure; the figures are in `facts/drinks.py`."""

from collections.abc import Iterator
from dataclasses import dataclass

from board.facts.drinks import (
    BEER_MILLILITRES,
    BOTTLE_MILLILITRES,
    FLUTES_A_BOTTLE,
    GLASS_MILLILITRES,
    SOLD_AS,
    USUAL,
    WINE_GLASSES_A_BOTTLE,
    Rate,
    coffee_grams,
    in_unit_of,
    servings,
    standard_drinks,
    whole_bottles,
)
from board.facts.poured import kind_of_drink
from board.plan.load import PlanFile
from board.plan.model.drinking import HowMuch
from board.plan.phrases.quantities import Ingredient
from board.plan.resolve.bought import DRINKS

ALCOHOL = ("wine", "sparkling", "beer")
NO_ALCOHOL = ("alcohol-free", "pregnant")
YOUNG = ("infant", "toddler", "under five", "child")
GLASSES_A_BOTTLE = {"wine": WINE_GLASSES_A_BOTTLE, "sparkling": FLUTES_A_BOTTLE}


@dataclass(frozen=True, slots=True)
class Table:
    """Who is there, for how many hours and courses. `drinkers`: who may be offered alcohol."""

    guests: int
    drinkers: int
    children: int
    hours: float
    courses: int

    def people(self, drink: str) -> int:
        """Who a drink is for: alcohol for drinkers, coffee for adults, the rest for everyone."""
        if drink in ALCOHOL:
            return self.drinkers
        return self.guests - self.children if drink == "coffee" else self.guests

    def usual(self, drink: str, *, alcohol: bool) -> float:
        """In the unit of the usual rate. Soft drinks: by the hour for those who drink no alcohol (for everyone if no
        `alcohol` is served), plus a glass for each drinker, since somebody always drives."""
        rate = USUAL[drink]
        if drink != "soft drinks" or not alcohol:
            return servings(rate, self.people(drink), self.hours, self.courses)
        return servings(rate, self.guests - self.drinkers, self.hours, self.courses) + self.drinkers


def table_of(file: PlanFile) -> Table:
    """From the plan; the evening ends when the last course is eaten."""
    plan = file.plan
    small = sum(g.count for g in plan.guests if any(diet in YOUNG for diet in g.diets))
    children = min(max(plan.drinks.children if plan.drinks else 0, small), plan.guest_count)
    sober = sum(g.count for g in plan.guests if any(diet in NO_ALCOHOL for diet in g.diets))
    last = file.filled.courses[-1]
    minutes = (last.wanted - file.filled.arrive).total_seconds() / 60 + last.eaten
    return Table(plan.guest_count, max(0, plan.guest_count - sober - children), children, minutes / 60,
                 len(plan.courses))  # fmt: skip


def drinks_for_all(file: PlanFile) -> Iterator[Ingredient]:
    """A line per drink the plan wants calculated, in whole bottles, litres, kilograms or grams."""
    drinks = file.plan.drinks
    if drinks is None:
        return
    table = table_of(file)
    asked: dict[str, HowMuch | None] = {
        "wine": drinks.wine, "sparkling": drinks.sparkling, "beer": drinks.beer, "soft drinks": drinks.soft_drinks,
        "water": drinks.water, "ice": drinks.ice, "coffee": drinks.coffee,
    }  # fmt: skip
    poured_with_courses = poured_of_the_usual(file)
    poured = any(said.some for drink in ALCOHOL if (said := asked[drink]) is not None)
    alcohol = poured or any(course.drink for course in file.plan.courses)
    for drink, how_much in asked.items():
        rate = None if how_much is None else USUAL[drink] if how_much.usual else how_much.rate()
        if how_much is None or rate is None:
            continue
        if how_much.usual:
            taken = max(0.0, table.usual(drink, alcohol=alcohol) - poured_with_courses.get(drink, 0.0))
        else:
            taken = servings(rate, table.people(drink), table.hours, table.courses)
        amount, unit = in_the_shop(drink, rate, taken)
        if amount > 0:
            yield Ingredient(food=SOLD_AS.get(drink, drink), low=amount, high=amount, unit=unit, section=DRINKS)


def poured_of_the_usual(file: PlanFile) -> dict[str, float]:
    """What is poured with courses of each drink that the plan wants as usual, in the unit of its usual rate: it is part
    of the usual. Where the plan gives its own figure, that stands."""
    drinks = file.plan.drinks
    found: dict[str, float] = {}
    for pairing in (pairing for course in file.plan.courses for pairing in course.drink):
        kind = kind_of_drink(pairing.drink)
        how_much: HowMuch | None = getattr(drinks, kind.replace(" ", "_")) if drinks and kind else None
        if how_much is not None and how_much.usual:
            much = in_unit_of(kind, pairing.bottles * pairing.bottle_millilitres)
            found[kind] = found.get(kind, 0.0) + much
    return found


def in_the_shop(drink: str, rate: Rate, taken: float) -> tuple[float, str]:
    """Glasses, cups and so on → what is bought: bottles of wine, beer and sparkling, litres, grams of coffee."""
    if drink in GLASSES_A_BOTTLE and rate.unit == "glass":
        return float(whole_bottles(taken, GLASSES_A_BOTTLE[drink])), "bottle"
    if drink in GLASSES_A_BOTTLE and rate.unit == "l":
        return float(whole_bottles(taken * 1000, BOTTLE_MILLILITRES)), "bottle"
    if drink == "beer" and rate.unit in ("l", "glass"):
        litres = taken if rate.unit == "l" else taken * BEER_MILLILITRES / 1000
        return float(whole_bottles(litres * 1000, BEER_MILLILITRES)), "bottle"
    if drink == "coffee" and rate.unit in ("cup", "glass"):
        return coffee_grams(taken), "g"
    if rate.unit in ("glass", "cup"):
        return taken * GLASS_MILLILITRES / 1000, "l"
    if rate.unit == "bottle":
        return float(whole_bottles(taken, 1)), "bottle"
    return taken, rate.unit


@dataclass(frozen=True, slots=True)
class Strength:
    """The alcohol in a course's drink: US standard drinks in all its bottles (NIAAA), by the label's percentage."""

    drink: str
    bottles: int
    percent: float
    drinks: float


def strengths(file: PlanFile) -> tuple[Strength, ...]:
    """One for each drink whose strength the plan gives."""
    return tuple(
        Strength(p.drink, p.bottles, p.percent, standard_drinks(p.bottles * p.bottle_millilitres, p.percent))
        for course in file.plan.courses
        for p in course.drink
        if p.percent is not None
    )
