"""What is in a food, by its name. What it is made of is common practice, no source, unless a line says otherwise."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.facts.allergens import Allergen
from board.facts.food import facts, understood
from board.facts.foods.entry import COMMON_PRACTICE
from board.facts.held import ENTRIES
from board.facts.origins import Origin
from board.facts.phrases import stems

A = Allergen
CONSONANTS = "bcdfgjkmpqvwxz"


def allergens(food: str) -> set[str]:
    found = facts(food)
    assert found is not None, food
    return {allergen.value for allergen in found.allergens}


def origins(food: str) -> set[str]:
    found = facts(food)
    assert found is not None, food
    return {origin.value for origin in found.origins}


def test_the_table_is_large_and_says_one_thing_of_each_name() -> None:
    said: dict[tuple[str, ...], object] = {}
    for entry in ENTRIES:
        facts_said = (entry.traits, entry.raw_class, entry.perishable, entry.hidden, entry.made)
        assert said.setdefault(stems(entry.phrase), facts_said) == facts_said, entry.phrase

    assert len({entry.name for entry in ENTRIES}) >= 450
    assert () not in said


@pytest.mark.parametrize(
    ("food", "holds"),
    [
        ("plain flour", {"wheat"}),
        ("celeriac", {"celery"}),
        ("double cream", {"milk"}),
        ("dark soy sauce", {"soy"}),
        ("anchovy fillets in oil", {"fish"}),
        ("egg yolks", {"eggs"}),
        ("strong white flour", {"wheat"}),
        ("rye loaves, sliced", {"rye"}),
        ("king prawns", {"crustaceans"}),
        ("shrimp", {"crustaceans"}),
        ("toasted flaked almonds", {"almonds"}),
        ("crème fraîche", {"milk"}),
        ("goat’s cheese", {"milk"}),
        ("bread and butter", {"wheat", "milk"}),
        ("coconut, milk", {"coconut", "milk"}),
        ("flour for dusting and butter for the tin", {"wheat", "milk"}),
        ("bread, no nuts", {"wheat"}),
        ("juice of 2 lemons", set()),
        ("free-range eggs", {"eggs"}),
        ("butter for the tin", {"milk"}),
    ],
)  # fmt: skip
def test_a_food_is_known_as_a_cook_writes_it(food: str, holds: set[str]) -> None:
    assert allergens(food) == holds


@pytest.mark.parametrize(
    ("food", "holds"),
    [
        ("coconut milk", {"coconut"}),
        ("peanut butter", {"peanuts"}),
        ("butternut squash", set()),
        ("cream of tartar", set()),
        ("chestnut mushrooms", set()),
        ("eggplant", set()),
        ("buckwheat flour", set()),
        ("oyster mushrooms", set()),
        ("almond milk", {"almonds"}),
        ("oat drink", {"oats"}),
        ("soy yoghurt", {"soy"}),
        ("beef tomatoes", set()),
        ("butter beans", set()),
        ("butter lettuce", set()),
        ("water chestnuts", set()),
        ("nutmeg", set()),
        ("ginger beer", set()),
        ("cocoa butter", set()),
        ("lemon sole", {"fish"}),
        ("crab apples", set()),
        ("kidney beans", set()),
        ("lamb's lettuce", set()),
        ("cream soda", set()),
        ("rice flour", set()),
        ("cornflour", set()),
        ("buttermilk", {"milk"}),
        ("oyster sauce", {"molluscs"}),
        ("almond extract", set()),
        ("doughnuts", {"wheat"}),
        ("gluten-free bread", set()),
    ],
)
def test_a_name_does_not_lend_what_it_only_sounds_like(food: str, holds: set[str]) -> None:
    assert allergens(food) == holds


@pytest.mark.parametrize("food", ["beef tomatoes", "oyster mushrooms", "kidney beans", "lamb's lettuce", "ginger beer"])
def test_a_plant_by_an_animals_name_is_no_meat(food: str) -> None:
    assert origins(food) == set()


@pytest.mark.parametrize(
    ("food", "of"),
    [
        ("sweetbreads", {"meat"}),
        ("chicken thighs", {"meat", "poultry"}),
        ("lard", {"meat", "red meat", "pork", "animal fat"}),
        ("honey", {"honey"}),
        ("leaf gelatine", {"gelatine"}),
        ("dry cider", {"alcohol"}),
        ("parmesan", {"dairy", "animal rennet"}),
        ("calf's liver", {"meat", "red meat", "beef", "liver"}),
        ("chicken livers", {"meat", "poultry", "liver"}),
        ("stilton", {"dairy", "mould-ripened or blue cheese"}),
        ("swordfish steaks", {"fish", "fish high in mercury"}),
        ("lamb steaks", {"meat", "red meat"}),
        ("venison", {"meat", "red meat", "game"}),
        ("pheasant", {"meat", "poultry", "game"}),
        ("celeriac steaks", set()),
        ("steaks", {"meat", "red meat", "beef"}),
        ("cochineal", {"insect colour"}),
        ("wine vinegar", set()),
    ],
)  # fmt: skip
def test_a_food_tells_where_it_comes_from(food: str, of: set[str]) -> None:
    assert origins(food) == of


@pytest.mark.parametrize(
    ("food", "often"),
    [
        ("brown table sauce", A.FISH),
        ("dark soy sauce", A.WHEAT),
        ("red wine", A.SULPHITES),
        ("dried apricots", A.SULPHITES),
        ("dried blackcurrants", A.SULPHITES),
        ("puff pastry", A.EGGS),
        ("dark chocolate", A.MILK),
        ("stuffing", A.WHEAT),
        ("wine gums", Origin.GELATINE),
        ("hard cheese", Origin.RENNET),
        ("stock cubes", A.CELERY),
        ("stock cubes", A.WHEAT),
        ("mincemeat", Origin.ANIMAL_FAT),
        ("vanilla extract", Origin.ALCOHOL),
        ("pesto", A.CASHEWS),
        ("hummus", None),
    ],
)
def test_what_a_food_often_hides_is_marked_as_practice(food: str, often: Allergen | Origin | None) -> None:
    found = facts(food)
    assert found is not None

    hidden = {each.what: each.source for each in found.hidden}

    assert often is None or hidden[often] == COMMON_PRACTICE
    assert not set(hidden) & found.traits


@pytest.mark.parametrize(
    ("food", "raw"),
    [
        ("boneless chicken thighs", "poultry"),
        ("turkey mince", "poultry"),
        ("beef mince", "ground meat"),
        ("minced lamb", "ground meat"),
        ("pork sausages", "ground meat"),
        ("beef shin", "whole cut"),
        ("rump steak", "whole cut"),
        ("cod fillets", "fish"),
        ("mussels", "fish"),
        ("eggs", "eggs"),
        ("hard-boiled eggs", None),
        ("9 eggs, baked through", None),
        ("cooked chicken", None),
        ("tinned tuna", None),
        ("cured ham", None),
        ("carrots", None),
        ("chicken gravy", None),
        ("chicken and mushrooms", "poultry"),
    ],
)
def test_the_class_of_raw_food_is_told(food: str, raw: str | None) -> None:
    found = facts(food)

    assert found is not None
    assert found.raw_class == raw


@pytest.mark.parametrize("food", ["milk", "chicken", "eggs", "cod", "tofu", "chicken stock", "ricotta"])
def test_what_spoils_out_of_the_fridge_is_perishable(food: str) -> None:
    found = facts(food)
    assert found is not None
    assert found.perishable


@pytest.mark.parametrize(
    "food", ["plain flour", "olive oil", "cider vinegar", "sugar", "apples", "carrots", "rice", "butter", "cheddar"]
)
def test_what_keeps_in_the_room_is_not(food: str) -> None:
    found = facts(food)
    assert found is not None
    assert not found.perishable


@pytest.mark.parametrize(
    "food",
    ["glorp oil", "mystery paste", "chicken glorp", "stuffed dates", "fried bananas", "marinated tofu", "plum glorp",
     "rice, glorped", "rice (glorp)", "rice with glorp", "rice in glorp", "rice and glorp", "rice of glorp",
     "牛乳", "milk 牛乳", "", "   ", "fresh", "3", "of the"],
)  # fmt: skip
def test_what_is_not_known_is_not_made_known_by_a_part_of_it(food: str) -> None:
    assert facts(food) is None


def test_an_unknown_food_with_flour_holds_wheat_and_stays_unknown() -> None:
    found = understood("mystery paste with flour")

    assert [part.allergens for part in found.known] == [{A.WHEAT}]
    assert found.unknown == ("mystery paste",)
    assert facts("mystery paste with flour") is None


def test_words_about_a_food_do_not_make_it_unknown_but_a_food_in_them_is_seen() -> None:
    assert allergens("pork shoulder, scored by the butcher") == set()
    assert allergens("pasta (egg)") == {"wheat", "eggs"}
    assert understood("crackers, glorped with cheese").known[1].allergens == {A.MILK}


@given(st.sampled_from(sorted(entry.phrase for entry in ENTRIES)), st.text(CONSONANTS, min_size=9, max_size=12))
def test_a_strange_word_beside_a_known_food_makes_the_whole_unknown(phrase: str, strange: str) -> None:
    """A word of nine consonants and more is none of the table's."""
    assert facts(f"{strange} {phrase}") is None
    assert facts(f"{phrase} {strange}") is None


@given(st.text(max_size=40))
def test_whatever_is_written_is_known_or_not(food: str) -> None:
    found = understood(food)

    assert (facts(food) is None) == (not found.known or bool(found.unknown))


SINGULAR = sorted(entry.phrase for entry in ENTRIES if not entry.phrase.endswith("s"))


@given(st.sampled_from(SINGULAR))
def test_a_plural_is_the_same_food(phrase: str) -> None:
    if phrase.endswith("y") and phrase[-2] not in "aeiou":
        plural = f"{phrase[:-1]}ies"
    elif phrase.endswith(("x", "z", "ch", "sh")):
        plural = f"{phrase}es"
    elif phrase.endswith(("leaf", "loaf", "half")):
        plural = f"{phrase[:-1]}ves"
    else:
        plural = f"{phrase}s"

    assert facts(plural) == facts(phrase)


@pytest.mark.parametrize(("food", "alcohol"), [
    ("bitter leaves", False), ("bitter salad leaves with a lemon dressing", False), ("bitter dark chocolate", False),
    ("leaves, bitter", False), ("salad of bitter greens", False), ("2 dashes bitters", True), ("orange bitters", True),
    ("bitter", True), ("beer (a bitter beer)", True), ("bitters and soda water", True),
])  # fmt: skip
def test_what_tastes_bitter_holds_no_bitters(food: str, alcohol: bool) -> None:
    assert (Origin.ALCOHOL in {origin for part in understood(food).known for origin in part.origins}) is alcohol
