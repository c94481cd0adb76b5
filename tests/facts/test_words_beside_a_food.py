"""What stands beside a food: after a comma, in brackets, after with, in, of; before it; one letter wrong.

What foods and preparations hold is common practice, no source."""

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from board.facts.allergens import Allergen
from board.facts.food import facts, raw_class, understood
from board.facts.held import ENTRIES, table
from board.facts.origins import Trait
from board.facts.phrases import stems
from board.facts.reading import one_letter_apart

A = Allergen
PHRASES = sorted({entry.phrase for entry in ENTRIES})
STRANGE = st.text("bcdfgjkmpqvwxz", min_size=9, max_size=12)


def held(food: str) -> frozenset[Trait]:
    return frozenset[Trait]().union(*(part.traits for part in understood(food).known))


def perhaps(food: str) -> frozenset[Trait]:
    parts = understood(food).known
    return held(food).union(*({each.what for each in part.hidden} for part in parts))


@pytest.mark.parametrize("frame", ["rice, {}", "rice ({})", "rice with {}", "rice in {}", "rice and {}", "rice; {}"])
@given(phrase=st.sampled_from(PHRASES))
@settings(deadline=None)
def test_a_food_beside_another_is_found_as_when_it_stands_alone(frame: str, phrase: str) -> None:
    alone, beside = table()[stems(phrase)], frame.format(phrase)

    assert alone.traits <= held(beside)
    assert {each.what for each in alone.hidden} <= perhaps(beside)
    assert understood(beside).unknown == ()


@given(st.sampled_from(PHRASES), STRANGE, st.integers(0, 6), st.sampled_from(["{}", "{}, chopped", "rice ({})"]))
@settings(deadline=None)
@example("monterey jack", "glorpglorp", 1, "{}")
@example("lady finger", "glorpglorp", 1, "{}")
def test_a_strange_word_anywhere_takes_nothing_away(phrase: str, strange: str, where: int, frame: str) -> None:
    words = frame.format(phrase).split()
    more = " ".join([*words[:where], strange, *words[where:]])
    before, after = frame.format(phrase), more

    assert held(before) <= held(after)
    assert perhaps(before) <= perhaps(after)
    assert any(strange in unknown for unknown in understood(after).unknown)
    assert raw_class(before) is None or raw_class(after) is not None


@given(st.sampled_from(PHRASES), st.sampled_from(PHRASES), st.sampled_from([", ", " and ", " with ", "; "]))
@settings(deadline=None)
def test_a_food_more_takes_nothing_away(one: str, other: str, between: str) -> None:
    free = ("free", "vegan", "vegetarian", "plant based", "veggie", "without")
    if not any(word in other for word in free):
        assert held(one) <= held(f"{one}{between}{other}")


@pytest.mark.parametrize(
    ("food", "holds"),
    [
        ("plaice fillets, crumbed", A.WHEAT),
        ("hake in beer batter", A.WHEAT),
        ("tempura aubergine", A.WHEAT),
        ("trout amandine", A.ALMONDS),
        ("trout, pan-fried, almandine", A.ALMONDS),
        ("leeks, creamed", A.MILK),
        ("buttered cabbage", A.MILK),
        ("cauliflower, au gratin", A.MILK),
        ("gratinated potatoes", A.MILK),
        ("chicken skewers (satay)", A.PEANUTS),
        ("salmon, teriyaki glazed", A.SOY),
        ("pears with praline", A.HAZELNUTS),
        ("salmon en croûte", A.WHEAT),
        ("venison Wellington", A.WHEAT),
        ("eggs florentine", A.MILK),
        ("spaghetti carbonara", A.EGGS),
        ("turkey escalopes, milanese", A.WHEAT),
        ("sole meunière", A.MILK),
        ("leeks in beurre blanc", A.MILK),
        ("thighs, marinated in nuoc mam", A.FISH),
        ("prunes stuffed with walnuts", A.WALNUTS),
        ("asparagus, with hollandaise", A.EGGS),
        ("beef, marinated in oyster sauce", A.MOLLUSCS),
        ("1 egg, beaten with 1 tbsp milk", A.MILK),
    ],
)
def test_a_preparation_brings_what_it_is_made_of(food: str, holds: Allergen) -> None:
    assert holds in held(food)


@pytest.mark.parametrize("food", ["chicken korma", "prawns, korma", "chicken in korma sauce"])
def test_korma_often_holds_nuts(food: str) -> None:
    assert {A.ALMONDS, A.CASHEWS} <= perhaps(food) - held(food)


@pytest.mark.parametrize("food", ["breaded cod", "cod, breaded", "cod in tempura", "buttered cod", "cod, au gratin"])
def test_a_preparation_leaves_the_food_the_main_thing(food: str) -> None:
    assert raw_class(food) == "fish"


@pytest.mark.parametrize(
    ("food", "holds"),
    [
        ("Worcestershire sauce", A.FISH),
        ("nam pla", A.FISH),
        ("katsuobushi", A.FISH),
        ("bottarga", A.FISH),
        ("surimi", A.FISH),
        ("belacan", A.CRUSTACEANS),
        ("XO sauce", A.MOLLUSCS),
        ("vongole", A.MOLLUSCS),
        ("tahina", A.SESAME),
        ("dukka", A.HAZELNUTS),
        ("za'atar", A.SESAME),
        ("halvah", A.SESAME),
        ("furikake", A.SESAME),
        ("gianduja", A.HAZELNUTS),
        ("frangipane", A.ALMONDS),
        ("turrón", A.ALMONDS),
        ("ghee", A.MILK),
        ("paneer", A.MILK),
        ("labneh", A.MILK),
        ("seitan", A.WHEAT),
        ("fregola", A.WHEAT),
        ("freekeh", A.WHEAT),
        ("orzo", A.WHEAT),
        ("kataifi", A.WHEAT),
        ("pumpernickel", A.RYE),
        ("pearled barley", A.BARLEY),
        ("doenjang", A.SOY),
        ("aburaage", A.SOY),
        ("kinako", A.SOY),
        ("aioli", A.EGGS),
        ("challah", A.EGGS),
        ("savoiardi", A.EGGS),
        ("soffritto", A.CELERY),
        ("piccalilli", A.MUSTARD),
        ("lupini beans", A.LUPIN),
        ("maafe", A.PEANUTS),
    ],
)
def test_a_name_from_elsewhere_is_known(food: str, holds: Allergen) -> None:
    assert holds in held(food)


@pytest.mark.parametrize(
    ("food", "often"),
    [
        ("stock cubes", A.CELERY),
        ("Worcestershire sauce", A.BARLEY),
        ("rice crackers", A.WHEAT),
        ("cannelloni", A.MILK),
        ("gravy granules", A.WHEAT),
        ("soup mix", A.MILK),
        ("curry paste", A.CRUSTACEANS),
        ("dumplings", A.SOY),
        ("veggie burgers", A.EGGS),
        ("challah", A.MILK),
    ],
)
def test_what_is_bought_ready_often_holds_more(food: str, often: Allergen) -> None:
    found = facts(food)

    assert found is not None
    assert found.made
    assert often in perhaps(food) - held(food)


@pytest.mark.parametrize(
    ("food", "holds"),
    [
        ("cream of coconut", {"coconut"}),
        ("cream sherry", set()),
        ("custard apples", set()),
        ("ginger nuts", {"wheat"}),
        ("ox heart tomatoes", set()),
        ("vegetable terrine", set()),
        ("buttercup squash", set()),
        ("egg plant", set()),
        ("oyster mushrooms, torn", set()),
        ("honeynut squash", set()),
        ("butter-leaf lettuce", set()),
        ("doughnut peaches", set()),
        ("peanut-free granola", {"oats"}),
        ("nut-free pesto", {"milk"}),
        ("almond milk powder", {"almonds"}),
        ("barley sugar", set()),
        ("bourbon biscuits", {"wheat"}),
        ("no-cook lasagne sheets", {"wheat"}),
        ("chilli, seeds removed", set()),
        ("potatoes, cut into chips", set()),
        ("challah", {"wheat", "eggs"}),
    ],
)
def test_a_name_lends_nothing_it_only_sounds_like(food: str, holds: set[str]) -> None:
    found = facts(food)

    assert found is not None, understood(food).unknown
    assert {allergen.value for allergen in found.allergens} == holds


@pytest.mark.parametrize("food", ["custard apples", "ox heart tomatoes", "vegetable terrine", "cream sherry"])
def test_a_plant_or_a_drink_by_such_a_name_holds_no_meat_and_no_milk(food: str) -> None:
    assert {trait.value for trait in held(food)} <= {"alcohol"}
    assert {trait.value for trait in held("turkey bacon")} == {"meat", "poultry"}


PREPARED = (
    "2 onions, finely chopped", "3 carrots, cut into 2 cm dice", "4 duck breasts, skin side up",
    "1 bunch mint, leaves picked", "butter, at room temperature", "1 tin chickpeas, rinsed and drained",
    "butter, for the tin", "1 leek, see note", "1 chicken, about 1.6 kg", "2 potatoes per person", "cod, patted dry",
    "sea bass, gutted by the fishmonger", "lamb shoulder, bone in, at room temperature for an hour",
    "garlic cloves, peeled but left whole", "1 lemon, zest and juice", "parsley, to serve",
    "spinach, washed and well drained", "olive oil, plus extra for drizzling", "sugar, or to taste",
    "chillies, deseeded and sliced on the diagonal", "celery, strings removed, cut on an angle",
    "onions, halved and sliced into thin half-moons", "mushrooms, wiped clean and torn into bite-sized pieces",
    "potatoes, scrubbed, left unpeeled", "squash, peeled, deseeded and cut into wedges", "peas, defrosted",
    "flour, sifted, plus a little more for dusting", "ginger, a thumb-sized piece, peeled and grated",
    "eggs, separated", "egg yolks, lightly beaten", "cream, whipped to soft peaks", "chocolate, broken into squares",
    "rice, soaked overnight", "almonds, toasted and roughly chopped",
    "beef shin, trimmed of fat and cut in large chunks", "prawns, shells on, deveined",
    "mussels, debearded and scrubbed", "apples, cored and quartered", "bread, a day old, torn",
    "asparagus, woody ends snapped off", "beetroot, boiled until tender, then peeled",
    "tomatoes, skinned and seeded", "fennel, fronds reserved", "anchovies, drained, oil reserved",
    "cucumber, halved lengthways, seeds scooped out", "aubergines, sliced into 1 cm rounds", "limes, juice only",
    "pork belly, skin scored in a criss-cross", "duck legs, excess fat trimmed off", "basil leaves, to garnish",
    "sesame seeds, toasted in a dry pan until golden", "potatoes, parboiled and shaken in the pan",
    "cabbage, very finely shredded on a mandoline", "leeks, white parts only",
    "butternut squash, roasted until soft and mashed", "salmon fillets, skinned and pin-boned (ask the butcher)",
)  # fmt: skip


@pytest.mark.parametrize("food", PREPARED)
def test_mere_preparation_is_passed_over(food: str) -> None:
    assert understood(food).unknown == ()


@pytest.mark.parametrize(
    ("written", "name"),
    [("cashws", "cashews"), ("tahni", "tahini"), ("amond flour", "almond"), ("wallnuts", "walnuts"),
     ("mascarpne", "mascarpone"),
     ("parsley, pesot", "pesto"), ("rice (peacns)", "pecans"), ("prwans", "prawns"), ("buttre", "butter"),
     ("worcestershre sauce", "worcestershire")],
)  # fmt: skip
def test_a_slip_of_one_letter_is_asked_about_with_the_food_meant(written: str, name: str) -> None:
    found = understood(written)

    assert found.unknown
    assert name in {meant.name for meant in found.meant}


@given(st.text("abcd", max_size=6), st.text("abcd", max_size=6))
def test_one_letter_apart_is_the_same_both_ways_and_never_for_one_word(one: str, other: str) -> None:
    assert one_letter_apart(one, other) == one_letter_apart(other, one)
    assert not one_letter_apart(one, one)
