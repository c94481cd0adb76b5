"""Joining, days, packs and shown amounts: what holds for every list. Oracle for units: pint."""

from collections import Counter
from datetime import timedelta

import pint
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from board.facts.units import EXACT, ROUNDED
from board.plan.load import PlanFile
from board.plan.resolve.amounts import Amount, measure_for, total
from board.sheet.shown import amount_words, by_hand_words, hand_round
from board.shopping.errands import Provisions, provisions
from board.shopping.rows import row_to_buy
from tests.conftest import HEAD, read
from tests.examples import times
from tests.shopping.conftest import SATURDAY, Listed, at_times

REGISTRY: pint.UnitRegistry[float] = pint.UnitRegistry()
COURSES = """
courses:
  - course: Main
    at: 19:15
    dishes:
"""
STEP = "steps: [{{step: make {n}, takes: 10 min}}]"


def plan(*dishes: str, more: str = "") -> str:
    """A dish for each line of its ingredients, called D0, D1 …, made by steps called make 0, make 1 …"""
    lines = "".join(
        f"      - {{dish: D{n}, ingredients: [{dish}], {STEP.format(n=n)}}}\n" for n, dish in enumerate(dishes)
    )
    return HEAD + more + COURSES + lines


FOODS = ["butter", "Butter", "eggs", "fresh eggs", "plain flour", "rye flour", "thyme", "mystery paste", "sugar"]
UNITS = ["", "g", "kg", "oz", "lb", "ml", "l", "cup", "tbsp", "tsp", "bunch", "tin"]
LINES = st.builds(
    lambda amount, unit, food: f"{amount} {unit} {food}", st.integers(1, 900), st.sampled_from(UNITS),
    st.sampled_from(FOODS),
)  # fmt: skip


@settings(max_examples=times(40), suppress_health_check=[HealthCheck.too_slow], deadline=None)
@given(st.lists(st.lists(LINES, min_size=1, max_size=4), min_size=1, max_size=4))
def test_no_line_is_lost_and_the_list_is_the_sum_of_its_dishes(dishes: list[list[str]]) -> None:
    file = read(plan(*(", ".join(lines) for lines in dishes)))
    assert isinstance(file, PlanFile)
    found = provisions(file, at_times(file, {}, SATURDAY + timedelta(hours=15)), [])
    items = [*(bought.item for bought in found.to_buy), *found.in_house]

    written = Counter(line.model_dump_json() for d in file.plan.courses[0].dishes for line in d.ingredients)
    assert Counter(need.line.model_dump_json() for item in items for need in item.needs) == written
    assert len({item.key for item in items}) == len(items)
    for item in items:
        for part in item.parts:
            alone = [_alone(need.line.low, need.line.unit, item.key, part.need.kind) for need in item.needs]
            assert sum(a for a in alone if a is not None) == pytest.approx(part.need.high)
        assert {part.need.kind for part in item.parts} >= {"each"} or all(n.line.unit for n in item.needs)


WEIGHED = {"butter": 227, "plain flour": 125, "rye flour": 102, "sugar": 200}  # USDA SR, g a cup; rye from memory
EGG_GRAMS = 50  # USDA SR


def _alone(amount: float | None, unit: str, food: str, kind: str) -> float | None:
    """One line in the kind its part is in, by pint and the tables' figures; None where it belongs to another part."""
    assert amount is not None
    if not unit or unit in ("bunch", "tin"):
        return amount if (unit or "each") == kind else None
    quantity = REGISTRY.Quantity(amount, "pound" if unit == "lb" else unit)
    if quantity.check("[mass]"):
        in_grams = quantity.to("gram").magnitude
        return in_grams if kind == "g" else in_grams / EGG_GRAMS if (food, kind) == ("egg", "each") else None
    cup = quantity.to("cup").magnitude
    if kind == "g" and food in WEIGHED:
        return cup * WEIGHED[food]
    household = unit in ("cup", "tbsp", "tsp")
    return (cup * 240 if household else quantity.to("ml").magnitude) if kind == "ml" else None


def test_different_forms_are_two_lines(listed: Listed) -> None:
    found = listed(plan("100 g plain flour", "100 g rye flour, 50 g Plain Flour"))

    assert {b.item.key: b.item.parts[0].need.high for b in found.to_buy} == {"plain flour": 150, "rye flour": 100}


def test_units_that_cannot_be_joined_stand_side_by_side(listed: Listed) -> None:
    (bought,) = listed(plan("1 bunch thyme", "5 g thyme")).to_buy

    assert row_to_buy(bought, None).amount == "1 bunch + 5 g"
    assert row_to_buy(bought, None).notes == ("how much that is together cannot be told",)


def test_pieces_beside_a_weight_are_called_so(listed: Listed) -> None:
    (bought,) = listed(plan("6 apples", "4 kg apples")).to_buy

    assert row_to_buy(bought, None).amount == "6 pieces + 4 kg"


def test_a_volume_of_an_unknown_food_is_not_weighed(listed: Listed) -> None:
    (bought,) = listed(plan("200 ml mystery paste", "100 g mystery paste")).to_buy

    assert [part.need for part in bought.item.parts] == [Amount("ml", 200, 200), Amount("g", 100, 100)]


def test_eggs_by_weight_are_counted(listed: Listed) -> None:
    """USDA SR: 50 g a large egg; 3 + 120 g / 50 g = 5.4, so six."""
    (bought,) = listed(plan("3 eggs", "120 g eggs")).to_buy

    assert bought.item.parts[0].need.high == pytest.approx(5.4)
    assert row_to_buy(bought, None).amount == "6"


def test_no_amount_is_ever_summed_across_standards() -> None:
    """A cup of 240 ml or of 236.6 ml, never both in one sum: a measure has one standard."""
    for standard, cup in ((ROUNDED, 240), (EXACT, 236.5882365)):
        measure = measure_for("mystery paste", {"cup", "ml"}, standard)
        (found,) = total([measure.amount(1, 1, "cup"), measure.amount(100, 100, "ml")])

        assert found.high == pytest.approx(cup + 100)


@pytest.mark.parametrize("other", [Amount("ml", 2, 2), Amount("g", None, None)])
def test_what_does_not_compare_is_never_summed(other: Amount) -> None:
    with pytest.raises(ValueError, match="not added up"):
        Amount("g", 2, 2) + other


def test_without_an_amount_is_still_on_the_list(listed: Listed) -> None:
    found = listed(plan("to taste salt", "5 g salt, a handful of parsley"))

    assert {b.item.key: row_to_buy(b, None).amount for b in found.to_buy} == {
        "salt": "to taste + 5 g", "parsley": "handful",
    }  # fmt: skip


def test_a_bunch_without_a_figure_swallows_none_that_are_counted(listed: Listed) -> None:
    for dishes in (("2 bunches parsley", "a bunch of parsley"), ("a bunch of parsley", "2 bunches parsley")):
        (bought,) = listed(plan(*dishes)).to_buy

        assert set(row_to_buy(bought, None).amount.split(" + ")) == {"2 bunches", "bunch"}


def test_a_bunch_in_the_house_is_told_once_and_set_against_what_is_counted(listed: Listed) -> None:
    more = PANTRY.format("1 bunch parsley")
    (bought,) = listed(plan("2 bunches parsley, a bunch of parsley", more=more)).to_buy

    assert row_to_buy(bought, None).amount == "1 bunch"
    assert row_to_buy(bought, None).notes == ("2 bunches needed", "1 bunch in the house")


@pytest.mark.parametrize(("dishes", "amount"), [
    (("4 cloves garlic",), "4 cloves"),
    (("4 cloves garlic", "10 g garlic"), "25 g"),  # 22 g: 3 g a clove, USDA SR, from memory; by hand 25
    (("120 g eggs",), "120 g"),  # weighed in one dish and counted in none
])  # fmt: skip
def test_foods_are_weighed_or_counted_as_written_unless_that_joins_them(
    listed: Listed, dishes: tuple[str, ...], amount: str
) -> None:
    (bought,) = listed(plan(*dishes)).to_buy

    assert row_to_buy(bought, None).amount == amount


def test_a_dish_made_larger_counts_eggs_whole(listed: Listed) -> None:
    """4 to 5 eggs for six are 5⅓ to 6⅔ for eight: 6 to 7; 4 are there."""
    text = plan("4 to 5 eggs", more=PANTRY.format("4 eggs")).replace("dish: D0,", "dish: D0, for: 6,")
    (bought,) = listed(text).to_buy

    assert bought.item.parts[0].least == Amount("each", 6, 7)
    assert row_to_buy(bought, None).amount == "3"


def test_a_pack_by_weight_does_not_tell_how_many_bunches_it_holds(listed: Listed) -> None:
    (bought,) = listed(plan("2 bunches thyme", more="packs: {thyme: 20 g}\n")).to_buy

    assert row_to_buy(bought, None).amount == "2 bunches"


def test_what_is_in_the_house_is_neither_listed_nor_paid_for_beside_what_is_short(listed: Listed) -> None:
    more = PANTRY.format("5 g thyme") + "prices: {thyme: 0.90 a bunch}\n"
    (bought,) = listed(plan("1 bunch thyme, 5 g thyme", more=more)).to_buy

    assert row_to_buy(bought, None).amount == "1 bunch"
    assert bought.item.cost == 90


@pytest.mark.parametrize(("spoons", "shown"), [
    ("2 tsp", "2 tsp"), ("3 tsp", "1 tbsp"), ("1 tbsp", "1 tbsp"), ("11 tsp", "4 tbsp"), ("12 tsp", "¼ cup"),
    ("4 tbsp", "¼ cup"),
])  # fmt: skip
def test_spoons_become_the_largest_us_measure_that_holds_them(listed: Listed, spoons: str, shown: str) -> None:
    """NIST Handbook 44, appendix C: 3 tsp are 1 tbsp, 16 tbsp are 1 cup."""
    (bought,) = listed(plan(f"{spoons} mystery paste", more="units: us\n")).to_buy

    assert row_to_buy(bought, "us").amount == shown


def test_foods_without_a_section_come_last(listed: Listed) -> None:
    (errand,) = listed(plan("2 wibbles, 100 g butter (dairy)")).errands

    assert [section.name for section in errand.sections] == ["dairy", ""]


PANTRY = "pantry: [{}]\n"


@pytest.mark.parametrize(("there", "short"), [
    ("1 kg flour", 0), ("300 g flour", 200), ("500 g flour", 0), ("flour", 0), ("200 g rye flour", 500),
    ("300 g flour, 200 g Flour", 0), ("1 tin flour", 500),
])  # fmt: skip
def test_what_is_in_the_house_is_taken_off(listed: Listed, there: str, short: float) -> None:
    found = listed(plan("500 g flour", more=PANTRY.format(there)))
    items = [*(bought.item for bought in found.to_buy), *found.in_house]

    assert [part.short for item in items for part in item.parts] == [short]
    assert bool(found.to_buy) == (short > 0)


def test_what_cannot_be_set_against_the_need_is_told(listed: Listed) -> None:
    (bought,) = listed(plan("500 g flour", more=PANTRY.format("1 tin flour"))).to_buy

    assert row_to_buy(bought, None).notes == ("1 tin in the house, which cannot be set against it",)


@given(st.integers(1, 5000), st.integers(1, 1000))
def test_whole_packs_are_enough_and_never_one_too_many(need: int, size: int) -> None:
    text = plan(f"{need} g butter", more=f"packs: {{butter: {size} g}}\nprices: {{butter: 1.25 a pack}}\n")
    file = read(text)
    assert isinstance(file, PlanFile)
    (bought,) = provisions(file, at_times(file, {}, SATURDAY), []).to_buy
    packs = bought.item.parts[0].packs

    assert packs is not None
    assert packs.count * size >= need > (packs.count - 1) * size
    assert packs.left_over == pytest.approx(packs.count * size - need)
    assert bought.item.cost == packs.count * 125


@pytest.mark.parametrize(("need", "price", "hundredths"), [
    ("2 kg beef shin", "14.50 a kg", 2900), ("250 g beef shin", "14.50 a kg", 363),
    ("500 g beef shin", "1.20 per 100 g", 600),
    ("4 beef shin", "3 each", 1200), ("2 kg beef shin", "3 each", None), ("2 kg beef shin", "3 a pack", None),
    ("1 lb beef shin", "10 a kg", 454), ("2 bunches beef shin", "0.90 a bunch", 180),
])  # fmt: skip
def test_prices_apply_where_they_can_and_nothing_is_guessed(
    listed: Listed, need: str, price: str, hundredths: int | None
) -> None:
    found = listed(plan(need, more=f"prices: {{beef shin: {price}}}\n"))

    assert found.to_buy[0].item.cost == hundredths
    assert found.unpriced == (hundredths is None)


@pytest.mark.parametrize(("amount", "units", "written", "shown"), [
    (Amount("g", 1200, 1200), None, {"g"}, "1.2 kg"), (Amount("g", 415, 415), None, {"g", "cup"}, "415 g"),
    (Amount("ml", 30, 45), None, {"tbsp"}, "2–3 tbsp"), (Amount("ml", 360, 360), None, {"cup"}, "1½ cups"),
    (Amount("each", 1.5, 1.5), None, {""}, "1½"), (Amount("each", 1 / 3, 2 / 3), None, {""}, "⅓–⅔"),
    (Amount("bunch", 2, 2), None, {"bunch"}, "2 bunches"),
    (Amount("g", 453.59237, 453.59237), "us", {"g"}, "1 lb"), (Amount("g", 100, 100), "us", {"g"}, "3.527 oz"),
    (Amount("ml", 236.5882365, 236.5882365), "us", {"ml"}, "1 cup"),
    (Amount("ml", 480, 480), "metric", {"cup"}, "480 ml"),
    (Amount("each", 10_000, 10_000), None, {""}, "10000"),
    (Amount("ml", 30, 30), "metric", {"tbsp"}, "2 tbsp"),
    (Amount("g", 907.18474, 907.18474), "metric", {"lb"}, "907.2 g"),
    (Amount("to taste", None, None), "us", {"to taste"}, "to taste"),
])  # fmt: skip
def test_amounts_in_the_units_that_are_asked_for(
    amount: Amount, units: str | None, written: set[str], shown: str
) -> None:
    """Conversions: NIST Handbook 44, appendix C; 16 oz = 1 lb = 453.59237 g."""
    assert amount_words(amount, units, written) == shown


@pytest.mark.parametrize(("amount", "shown", "exact"), [
    (187.5, "190 g", "187.5 g"), (190, "190 g", ""), (12.2, "13 g", "12.2 g"), (2345, "2.35 kg", "2.345 kg"),
])  # fmt: skip
def test_rounded_up_for_the_hand_beside_the_exact_figure(amount: float, shown: str, exact: str) -> None:
    assert by_hand_words("g", amount, None, {"g"}) == (shown, exact)


@given(st.floats(0.01, 50_000), st.sampled_from(["g", "ml", "kg", "l", "oz", "lb", "cup", "tbsp", "tsp", "", "bunch"]))
def test_rounding_for_the_hand_is_never_short_and_settles(amount: float, unit: str) -> None:
    once = hand_round(amount, unit)

    assert once >= amount * (1 - 1e-5) - 1e-5
    assert hand_round(once, unit) == pytest.approx(once)


def rows(found: Provisions) -> list[tuple[str, str]]:
    return [(row.amount, row.food) for row in (row_to_buy(each, None) for each in found.to_buy)]


def test_the_list_offers_both_of_an_or_each_scaled_whole(listed: Listed) -> None:
    """3 bulbs or 2 hearts for 6, cooked for 8: 4 or 2.67, which is 3; arithmetic."""
    text = plan("3 fennel bulbs or 2 celery hearts, 60 g butter or lard").replace("dish: D0", "dish: D0, for: 6")
    assert rows(listed(text)) == [("4", "fennel bulbs or 3 celery hearts"), ("80 g", "butter or lard")]


def test_what_the_host_takes_is_all_that_is_on_the_list(listed: Listed) -> None:
    assert rows(listed(plan("'4 fennel bulbs or 3 celery hearts, take celery'"))) == [("3", "celery hearts")]


def test_tins_of_a_size_are_asked_for_by_that_size(listed: Listed) -> None:
    found = rows(listed(plan("2 x 400 g tins tomatoes", "1 x 400 g tin tomatoes, 4 x 150 g hake fillets")))
    assert found == [("3 × 400 g tins", "tomatoes"), ("4 × 150 g", "hake fillets")]


@pytest.mark.parametrize(
    ("dishes", "eggs"),
    [
        (("4 egg yolks", "3 egg whites"), "4"),
        (("3 egg yolks", "6 egg whites", "2 eggs"), "8"),
        (("2 egg yolks, 1 egg white, 2 eggs",), "4"),
        (("5 egg yolks",), "5"),
        (("100 g egg whites",), "4"),  # 33 g a white: USDA FoodData Central, SR Legacy, from memory
    ],
)
def test_yolks_and_whites_come_out_of_the_eggs_that_are_bought(
    listed: Listed, dishes: tuple[str, ...], eggs: str
) -> None:
    """The yolk and the white of one egg are both used: common sense, reckoned by hand."""
    (bought,) = listed(plan(*dishes)).to_buy

    row = row_to_buy(bought, None)
    assert (row.amount, row.food) == (eggs, "eggs")
    assert len(bought.item.needs) == sum(line.count(",") + 1 for line in dishes)
    assert bought.keep.days == 21  # of whole eggs: FoodSafety.gov, cold food storage chart


def test_a_food_without_a_section_stands_where_the_plan_keeps_its_like(listed: Listed) -> None:
    """In the host's own word for the section; two of one tin among tins; what nobody knows stands apart, last."""
    dish = "2 leeks (greengrocer), 500 g carrots, 2 tins artichokes, 1 mystery paste, 4 duck legs"
    (errand,) = listed(plan(dish)).errands

    assert {section.name: [b.item.food for b in section.bought] for section in errand.sections} == {
        "greengrocer": ["leeks", "carrots"], "store cupboard": ["artichokes"], "butcher": ["duck legs"],
        "": ["mystery paste"],
    }  # fmt: skip


def test_the_hours_of_a_shop_hold_for_what_is_known_to_be_sold_there(listed: Listed) -> None:
    more = "shopping: {thu: '17:00 - 18:00', fri: '9:00 - 10:00'}\nshops: {baker: {fri: '8:00 - 12:00'}}\n"
    found = listed(plan("1 sourdough loaf, 2 leeks", more=more))

    assert {b.item.food: b.day.strftime("%A") for b in found.to_buy if b.day} == {
        "sourdough loaf": "Friday", "leeks": "Thursday",
    }  # fmt: skip


@pytest.mark.parametrize(
    ("lines", "amount", "notes"),
    [
        ("1/2 pint cream", "290 ml", ("284.1 ml needed", "a pint taken as 568.3 ml")),
        ("1 cup milk, 300 ml milk", "540 ml", ("a cup taken as 240 ml",)),
        ("187.5 g butter", "190 g", ("exactly 187.5 g",)),
        ("2 cups milk", "2 cups", ()),
    ],
)
def test_a_unit_of_many_sizes_is_named_and_never_called_exact(
    listed: Listed, lines: str, amount: str, notes: tuple[str, ...]
) -> None:
    """A pint of 568.261 ml: UK Units of Measurement Regulations 1995, from memory; a cup of 240 ml: NIST Metric
    Kitchen."""
    (bought,) = listed(plan(lines)).to_buy
    row = row_to_buy(bought, None)

    assert (row.amount, row.notes) == (amount, notes)
