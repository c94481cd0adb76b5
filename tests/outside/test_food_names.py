"""The table of foods against the names of a national table: USDA FoodData Central, SR Legacy and Foundation Foods (public
domain), a sample drawn by seed from its categories; see data/SOURCES.md. The table calls no fish, dairy, meat or nut
safe; words that it does not know are asked about."""

import csv
from pathlib import Path

import pytest

from board.facts.allergens import TREE_NUTS, Allergen
from board.facts.food import understood
from board.facts.origins import Origin, Trait

A = Allergen
HELD: dict[str, frozenset[Trait]] = {
    "fish": frozenset({A.FISH, A.CRUSTACEANS, A.MOLLUSCS, Origin.FISH}),
    "milk or eggs": frozenset({A.MILK, A.EGGS}),
    "meat": frozenset({Origin.MEAT}),
    "nuts": frozenset(TREE_NUTS | {A.PEANUTS}),
}
with (Path(__file__).parent / "data" / "food_names.csv").open(encoding="utf-8") as file:
    NAMES = [(row["kind"], row["name"]) for row in csv.DictReader(file)]


@pytest.mark.parametrize("kind", HELD)
def test_no_name_of_a_kind_is_passed_over_in_silence(kind: str) -> None:
    names = [name for of, name in NAMES if of == kind]
    silent, asked = [], []
    for name in names:
        found = understood(name)
        perhaps = frozenset[Trait]().union(*(part.traits | {h.what for h in part.hidden} for part in found.known))
        if not perhaps & HELD[kind]:
            (asked if found.unknown else silent).append(name)

    assert len(names) >= 50
    assert silent == []
    assert len(asked) <= 0.05 * len(names)


def test_fruit_holds_no_allergen_but_what_preserves_it() -> None:
    names = [name for of, name in NAMES if of == "plants"]
    wrong = [
        name for name in names if any(part.allergens - {A.COCONUT, A.SULPHITES} for part in understood(name).known)
    ]

    assert len(names) >= 50
    assert wrong == []
