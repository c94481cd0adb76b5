"""How far dishes drafted from the pages are true: amounts, places, heat, times, eaters. Units are weighed by pint."""

import re
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Any

import pint

from board.importing.recipe.dish import dish_from
from board.importing.recipe.documents import NotARecipe
from board.plan.model.courses import Dish
from board.plan.phrases.quantities import Ingredient, parse_ingredient
from tests.importing.recipe.pages_made import Line, Page
from tests.importing.recipe.test_dish import plan_with

UNITS: pint.UnitRegistry[Any] = pint.UnitRegistry()
NAMES = {"g": "gram", "kg": "kilogram", "oz": "ounce", "lb": "pound", "l": "liter", "ml": "milliliter",
         "tsp": "teaspoon", "tbsp": "tablespoon", "cup": "cup", "fl oz": "fluid_ounce", "pint": "pint",
         "quart": "quart", "cl": "centiliter", "dl": "deciliter"}  # fmt: skip
TOOLS = {"micro": "microwave", "blender": "blender", "processor": "food processor", "slow": "slow cooker",
         "fryer": "air fryer", "bbq": "barbecue"}  # fmt: skip
PLACES = {"hand": None, "ring": "stovetop", "oven": "oven", "grill": "oven", "fridge": "fridge", "freezer": "freezer",
          "rest": "worktop"}  # fmt: skip
HOT = {"ring", "oven", "grill", *TOOLS} - {"blender", "processor"}


@dataclass
class Score:
    of: Counter[str] = field(default_factory=Counter)
    wrong: Counter[str] = field(default_factory=Counter)
    told: list[str] = field(default_factory=list)

    def mark(self, what: str, right: bool, about: str) -> None:
        self.of[what] += 1
        if not right:
            self.wrong[what] += 1
            self.told.append(f"{what}: {about}")

    def share(self, what: str) -> float:
        """Percent that are right."""
        return 100 - 100 * self.wrong[what] / max(1, self.of[what])


@dataclass(frozen=True)
class Told:
    """A step as drafted, and all its words."""

    place: str | None
    tools: tuple[str, ...]
    low: int
    high: int
    work: str  # name and method
    words: str  # with the remarks above it


def score(pages: Iterable[Page]) -> Score:
    found = Score()
    for page in pages:
        about = f"{page.written.name} [{page.shape}]"
        try:
            text = dish_from(page.data).text
        except NotARecipe:
            for line in page.written.foods:
                found.mark("amounts", False, f"{about}: {line.said} unread")
            for act in page.written.acts:
                _unread(found, act, about)
            continue
        dish = plan_with(text).plan.courses[0].dishes[0]
        eaters = None if page.written.yields.truth == "?" else int(page.written.yields.truth)
        found.mark("eaters", dish.for_ == eaters, f"{about}: {page.written.yields.said} -> {dish.for_}")
        _amounts(found, page, dish, about)
        _places(found, page, told(dish, text), about)
    return found


def _unread(found: Score, act: Line, about: str) -> None:
    kind = act.truth.split()[0]
    if kind in HOT:
        found.mark("heat", False, f"{about}: unread")
    found.mark("places" if kind not in ("none", "heat") else "no step", False, f"{about}: unread")


def _amounts(found: Score, page: Page, dish: Dish, about: str) -> None:
    left = list(dish.ingredients)
    for line in page.written.foods:
        word = line.truth.split()[-1]
        took = next((each for each in left if word.casefold() in each.food.casefold()), None)
        if took is not None:
            left.remove(took)
        got = took
        if re.search(r"(?:plus|\+) 1 (?:tsp|teaspoons?)\b", line.said):
            more = next((each for each in left if word.casefold() in each.food.casefold()), None)
            if more is not None and took is not None and took.low and more.low:
                left.remove(more)
                got = took.model_copy(update={"unit": "tsp", "low": took.low * 3 + more.low,
                                              "high": (took.high or 0) * 3 + (more.high or 0)})  # fmt: skip
        found.mark("amounts", got is not None and _same(got, line.truth), f"{about}: {line.said!r} -> {got!r}"[:260])


def _same(got: Ingredient, truth: str) -> bool:
    if truth.startswith("some "):
        return got.low is None or got.unit in ("pinch", "handful", "sprig") or got.low == 1
    want = Ingredient.model_validate(parse_ingredient(truth))
    if want.unit == "pinch" or (want.low == 1 and want.unit in ("handful", "bunch")):
        return got.unit == want.unit and got.low in (None, 1)
    if got.low is None or got.high is None or want.low is None or want.high is None:
        return False
    if bool(got.size) != bool(want.size):
        return False
    if got.size and _base(*_sized(got.size)) != _base(*_sized(want.size)):
        return False
    if want.unit in NAMES or got.unit in NAMES:
        if want.unit not in NAMES or got.unit not in NAMES:
            return False
        return _near(got.low, got.unit, want.low, want.unit) and _near(got.high, got.unit, want.high, want.unit)
    return (got.low, got.high) == (want.low, want.high)


def _sized(size: str) -> tuple[float, str]:
    figure, unit = size.split(" ", 1)
    return float(figure), unit


def _base(amount: float, unit: str) -> str:
    return f"{UNITS.Quantity(amount, NAMES[unit]).to_base_units():.4g}"


def _near(a: float, a_unit: str, b: float, b_unit: str) -> bool:
    one, other = UNITS.Quantity(a, NAMES[a_unit]), UNITS.Quantity(b, NAMES[b_unit])
    if one.dimensionality != other.dimensionality:
        return False
    cups = "cup" in (a_unit, b_unit) and a_unit != b_unit  # a cup is 240 ml on a label: 21 CFR 101.9(b)(5)(viii)
    return bool(abs(one.to(other.units).magnitude - b) <= (0.02 if cups else 0.005) * b)


def told(dish: Dish, text: str) -> list[Told]:
    above: list[list[str]] = [[]]
    for line in (each.strip() for each in text.splitlines()):
        if line.startswith("# "):
            above[-1].append(line[2:])
        elif line.startswith("- step: "):
            above.append([])
        else:
            above[-1] = above[-1] if line.startswith("guessed:") else []
    found = []
    for step, remarks in zip(dish.steps, above, strict=False):
        low, high = (step.takes.low, step.takes.high) if step.takes else (0, 0)
        work = f"{step.step} {step.how or ''}"
        tools = tuple(step.where.tools) if step.where else ()
        found.append(
            Told(step.where.place if step.where else None, tools, low, high, work, f"{work} {' '.join(remarks)}")
        )
    return found


def _grams(text: str) -> Counter[tuple[str, ...]]:
    words = re.findall(r"[\w½¼/]+", text.casefold())
    return Counter(tuple(words[n : n + 3]) for n in range(max(1, len(words) - 2)))


def _places(found: Score, page: Page, steps: list[Told], about: str) -> None:
    for act in page.written.acts:
        kind, *minutes = act.truth.split()
        own = _grams(act.said)
        if kind in ("none", "heat"):
            most = max((sum((own & _grams(step.work)).values()) for step in steps), default=0)
            found.mark("no step", most < 3, f"{about}: {act.said}")
            continue
        shared = [sum((own & _grams(step.words)).values()) for step in steps]
        best = max(shared, default=0)
        # A sentence may stand in two steps (`bake, then rest`); the truth tells of the one that matters.
        holding = [
            step for step, count in zip(steps, shared, strict=True) if best and count >= max(min(2, best), best / 3)
        ]
        right = [step for step in holding if _right(step, kind)]
        seen = [(step.place, step.tools, step.low, step.high) for step in holding]
        found.mark("places", bool(right), f"{about}: {act.said!r} {act.truth} -> {seen}")
        if kind in HOT:
            found.mark("heat", bool(right), f"{about}: {act.said!r} -> {seen}")
        if minutes and "-" in minutes[0]:
            low, high = map(int, minutes[0].split("-"))
        elif minutes:
            low = high = int(minutes[0])
        else:
            continue
        found.mark("times", any((s.low, s.high) == (low, high) for s in holding), f"{about}: {act.said!r} -> {seen}")


def _right(step: Told, kind: str) -> bool:
    if kind in TOOLS:
        return TOOLS[kind] in step.tools
    if kind == "hand":
        return step.place in (None, "worktop")
    return step.place == PLACES[kind] or (kind == "rest" and step.place == "room")


if __name__ == "__main__":
    import sys

    from tests.importing.recipe.pages_made import pages

    for out in (False, True):
        if out and "all" not in sys.argv:
            break
        result = score(page for page in pages() if page.held_out == out)
        if "told" in sys.argv and (not out or "see" in sys.argv):
            print("\n".join(result.told))
        print("held out" if out else "seen", {w: f"{result.share(w):.1f} % of {n}" for w, n in result.of.items()})
