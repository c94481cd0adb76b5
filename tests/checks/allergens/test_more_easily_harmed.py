"""What is not for the pregnant, the old, the very young and the ill, though others eat it.

FDA Food Code 2022, 3-801.11 (raw animal food, soft eggs, rare meat, raw sprouts; pasteurised eggs in Caesar,
hollandaise, mayonnaise, eggnog), UK NHS (foods to avoid in pregnancy; foods to avoid giving babies and young children),
US CDC (Listeria; infant botulism; choking hazards), USDA FSIS (minimum temperatures): all from memory.
"""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from board.checks.allergens.guests_eat import Matrix, matrix
from board.checks.allergens.verdict import Verdict
from board.checks.plan.every import check
from board.facts.held import ENTRIES
from board.facts.susceptible import RISKS, SUSCEPTIBLE
from board.plan.load import PlanFile
from board.plan.snag import Snag, Weight
from tests.conftest import read

PLAN = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
rules: {rules}
guests: [{guest!r}, host]
hands: {{host: {{hours: {{on the day: '9:00 - 23:30'}}}}}}
courses:
  - course: Main
    at: 19:15
    dishes:
      - dish: {dish!r}
        ingredients: {foods}
        steps: [{steps}]
"""
COLD = "put it together"
MELT = "melt the chocolate; where: stovetop; takes: 5 min"


def plan(guest: str, dish: str, foods: str, *steps: str, rules: str = "home") -> PlanFile:
    """Each step: its words, then `key: value` after semicolons."""
    lines = []
    for step in steps or (COLD,):
        words, *keys = step.split(";")
        lines.append(
            "{" + ", ".join([f"step: {words!r}", *keys, *([] if "takes" in step else ["takes: 10 min"])]) + "}"
        )
    found = read(PLAN.format(rules=rules, guest=guest, dish=dish, foods=foods.split("; "), steps=", ".join(lines)))
    assert isinstance(found, PlanFile), found
    return found


def who(guest: str, dish: str, foods: str, *steps: str) -> Matrix:
    return matrix(plan(guest, dish, foods, *steps))


def verdict(guest: str, dish: str, foods: str, *steps: str) -> str:
    return who(guest, dish, foods, *steps).answers[0, 0].verdict.name


def told(file: PlanFile) -> list[Snag]:
    return [snag for snag in check(file) if snag.code in ("guests 1", "guests 2", "guests 8", "guests 9")]


@pytest.mark.parametrize("whom", SUSCEPTIBLE)
@pytest.mark.parametrize(
    ("dish", "foods", "steps"),
    [
        ("Chocolate mousse", "4 eggs; 200 g dark chocolate", (MELT, "fold in the whites")),
        ("Lemon pots", "3 eggs; 2 lemons", (MELT, "fold the mousse together")),
        ("Greens with aioli", "2 egg yolks; 1 kg green beans", ("boil the beans; where: stovetop", "beat the aioli")),
        ("Tiramisu", "3 eggs; 250 g mascarpone", ()),
        ("Asparagus", "3 egg yolks; 1 kg asparagus", ("whisk the hollandaise over the pan; where: stovetop",)),
        ("Soft-boiled eggs", "4 eggs", ("boil for 5 min; where: stovetop; takes: 5 min",)),
        ("Muffins", "4 eggs", ("poach the eggs; where: stovetop",)),
        ("Oysters", "24 oysters", ("shuck them; where: worktop",)),
        ("Ceviche", "500 g sea bass; 3 limes", ("boil the corn; where: stovetop", "marinate")),
        ("Steak tartare", "500 g beef fillet; 2 egg yolks", ("toast the bread; where: oven at 180 C", "chop the beef")),
        ("Beef carpaccio", "300 g beef fillet", ("sear the outside; where: stovetop",)),
        ("Roast beef", "1.5 kg beef sirloin", ("roast it rare; where: oven at 200 C; takes: 50 min",)),
        ("Lamb", "1 kg lamb loin", ("roast it; where: oven at 200 C; until: 54 C; takes: 30 min",)),
        ("Duck", "4 duck breasts", ("fry, and serve pink; where: stovetop",)),
        ("Burgers", "1 kg beef mince", ("fry them; where: stovetop; until: 60 C",)),
        ("Tuna", "600 g tuna; 20 g sesame seeds", ("sear the tuna, rare; where: stovetop; takes: 2 min",)),
        ("Board", "200 g brie", ()),
        ("Board", "200 g unpasteurised cheese", ()),
        ("Toasts", "200 g chicken liver pate", ()),
        ("Toasts", "200 g gravlax", ()),
        ("Salad", "100 g alfalfa sprouts", ()),
        ("Chips", "2 kg potatoes; 200 g homemade mayonnaise", ("bake; where: oven at 200 C; takes: 40 min",)),
    ],
)  # fmt: skip
def test_it_is_a_stop_for_everybody_more_easily_harmed(
    whom: str, dish: str, foods: str, steps: tuple[str, ...]
) -> None:
    found = told(plan(f"Mia, {whom}", dish, foods, *steps))

    stop = [snag for snag in found if snag.code == "guests 1"]
    assert [(snag.weight, snag.safety) for snag in stop] == [(Weight.STOP, True)]
    assert "from memory" in stop[0].source
    assert stop[0].mend
    assert all(snag.code != "guests 1" for snag in told(plan("Mia", dish, foods, *steps)))


@pytest.mark.parametrize(
    ("dish", "foods", "steps"),
    [
        ("Chocolate mousse", "4 pasteurised eggs; 200 g chocolate", (MELT, "fold")),
        ("Chocolate mousse", "4 eggs (pasteurised); 200 g chocolate", (MELT, "fold")),
        ("Mousse", "4 eggs; 200 g sugar", ("cook the eggs for the mousse; where: stovetop; until: 71 C",)),
        ("Eggs", "6 eggs, hard-boiled", ()),
        ("Eggs", "6 eggs", ("boil the eggs hard; where: stovetop; takes: 11 min",)),
        ("Cake", "4 eggs; 200 g flour; 200 g butter", ("bake it; where: oven at 180 C; takes: 40 min",)),
        ("Beef stew", "1.5 kg beef shin", ("braise it; where: oven at 150 C; takes: 3 h",)),
        ("Chicken casserole", "8 chicken thighs", ("simmer; where: stovetop; takes: 50 min",)),
        ("Ragu", "1 kg beef mince", ("simmer the sauce; where: stovetop; takes: 2 h",)),
        ("Roast beef", "1.5 kg beef sirloin", ("roast it; where: oven at 200 C; until: 63 C; takes: 50 min",)),
        ("Caesar salad", "4 eggs; 1 lettuce", ("boil the eggs; where: stovetop; takes: 11 min", "toss")),
        ("Chicken cordon bleu", "4 chicken breasts", ("bake; where: oven at 190 C; until: 74 C; takes: 30 min",)),
        ("Pork", "1 kg pork shoulder, slow-roasted", ()),
        ("Salad", "200 g pasteurised feta", ()),
        ("Poached chicken", "1 chicken", ("poach the chicken; where: stovetop; takes: 70 min",)),
        ("Fish and tartare sauce", "800 g cod; 1 jar tartare sauce", ("fry; where: stovetop; until: 63 C",)),
        ("Rare breed pork", "1 kg pork belly", ("roast; where: oven at 160 C; until: 75 C; takes: 2 h",)),
        ("Chips", "2 kg potatoes; 100 g mayonnaise", ("bake; where: oven at 200 C; takes: 40 min",)),
        ("Board", "200 g cheddar; 200 g cream cheese; 200 g mozzarella", ()),
        ("Baked cheese", "1 camembert, cooked through", ("bake; where: oven at 180 C; takes: 20 min",)),
        ("Stir-fry", "200 g bean sprouts, cooked through", ("fry; where: stovetop",)),
        ("Salad", "200 g tinned tuna; 2 carrots", ()),
        ("Beetroot mousse", "500 g beetroot; 200 g cream cheese", ()),
        ("Stew", "100 g chorizo; 400 g chickpeas", ("simmer; where: stovetop; takes: 30 min",)),
        ("Bread and honey", "1 kg potatoes", ()),
    ],
)  # fmt: skip
@pytest.mark.parametrize("whom", ["pregnant", "over 70", "immunocompromised", "3 years old"])
def test_what_is_pasteurised_or_cooked_through_is_cleared(
    whom: str, dish: str, foods: str, steps: tuple[str, ...]
) -> None:
    found = told(plan(f"Mia, {whom}", dish, foods, *steps))

    assert [snag.message for snag in found] == []


@pytest.mark.parametrize(
    ("guest", "dish", "foods", "steps", "wanted"),
    [
        # honey: no cooking makes it safe in the first year
        ("Leo, infant", "Oats", "20 g honey", (), "NOT_SAFE"),
        ("Leo, 8 months old", "Cake", "20 g honey", ("bake; where: oven at 180 C; takes: 30 min",), "NOT_SAFE"),
        ("Leo, under five", "Oats", "20 g honey", (), "ASK"),
        ("Leo, toddler", "Oats", "20 g honey", (), "SAFE"),
        ("Greta, over 70", "Oats", "20 g honey", (), "SAFE"),
        # what can choke
        ("Leo, toddler", "Fruit", "1 bunch grapes", (), "ASK"),
        ("Leo, toddler", "Fruit", "1 bunch grapes, quartered", (), "SAFE"),
        ("Leo, toddler", "Salad", "100 g walnuts", (), "ASK"),
        ("Leo, toddler", "Cake", "100 g ground almonds", (), "SAFE"),
        ("Leo, toddler", "Toast", "100 g peanut butter", (), "SAFE"),
        ("Leo, 9 years old", "Salad", "100 g walnuts", (), "SAFE"),
        ("Greta, over 70", "Salad", "100 g walnuts", (), "SAFE"),
        # alcohol
        ("Leo, toddler", "Trifle", "100 ml sherry", (), "NOT_SAFE"),
        ("Leo, 12 years old", "Trifle", "100 ml sherry", (), "NOT_SAFE"),
        ("Mia, expecting", "Trifle", "100 ml sherry", (), "NOT_SAFE"),
        ("Greta, over 70", "Trifle", "100 ml sherry", (), "SAFE"),
        # fish high in mercury
        ("Leo, 9 years old", "Fish", "500 g swordfish", ("grill; where: oven at 240 C; until: 63 C",), "NOT_SAFE"),
        ("Greta, over 70", "Fish", "500 g swordfish", ("grill; where: oven at 240 C; until: 63 C",), "SAFE"),
        # asked about
        ("Mia, pregnant", "Board", "200 g salami", (), "ASK"),
        ("Mia, pregnant", "Board", "200 g cooked ham", (), "ASK"),
        ("Mia, pregnant", "Board", "200 g smoked salmon", (), "ASK"),
        ("Mia, pregnant", "Board", "200 g pasteurised brie", (), "ASK"),  # the NHS says no, the FDA says yes
        ("Mia, pregnant", "Board", "200 g goat's cheese", (), "ASK"),
        ("Mia, pregnant", "Board", "200 g feta", (), "ASK"),
        ("Mia, pregnant", "Board", "200 g gorgonzola dolce", (), "NOT_SAFE"),
        ("Mia, pregnant", "Baked cheese", "1 camembert", ("bake; where: oven at 180 C; takes: 20 min",), "ASK"),
        ("Mia, pregnant", "Omelette", "6 eggs", ("fry; where: stovetop",), "ASK"),
        ("Mia, pregnant", "Crab salad", "200 g crabmeat", (), "ASK"),
        ("Mia, pregnant", "Roast chicken, aioli", "1 chicken; 2 egg yolks",
         ("roast the chicken; where: oven at 190 C; until: 75 C; takes: 80 min", "beat the aioli"), "NOT_SAFE"),
    ],
)  # fmt: skip
def test_each_of_them_against_a_dish(guest: str, dish: str, foods: str, steps: tuple[str, ...], wanted: str) -> None:
    assert verdict(guest, dish, foods, *steps) == wanted


@pytest.mark.parametrize(
    ("dish", "foods", "steps", "wanted"),
    [
        # made at home, and no word of its egg (common practice, no source)
        ("Vanilla ice cream", "1 l ice cream base", ("churn the ice cream",), "ASK"),
        ("Plum tart with homemade ice cream", "1 kg plums; 500 ml ice cream", (), "ASK"),
        ("Plums and gelato, made from scratch", "1 kg plums; 500 ml gelato", (), "ASK"),
        ("Wedges", "1 kg potatoes; 100 g garlic mayonnaise", ("make the aioli",), "ASK"),
        ("Wedges with homemade aioli", "1 kg potatoes; 1 clove garlic", (), "ASK"),
        ("Asparagus", "1 kg asparagus; 200 g butter", ("make the hollandaise",), "ASK"),
        ("Prawns", "500 g cooked prawns; 100 g cocktail sauce", ("whip up the cocktail sauce",), "ASK"),
        ("Stars", "24 biscuits; 200 g icing sugar", ("make the royal icing",), "ASK"),
        ("Molten cakes", "4 eggs; 200 g chocolate", ("bake; where: oven at 200 C; takes: 12 min",), "NOT_SAFE"),
        ("Egg mayo rolls", "6 hard-boiled eggs; 100 g mayonnaise", (), "SAFE"),
        ("Goujons", "500 g cod; 2 eggs", ("fry the goujons; where: stovetop; until: 63 C",), "ASK"),
        # bought, without egg, or cooked so that nobody asks
        ("Homemade crumble with ice cream", "1 kg plums; 500 ml ice cream", ("scoop the ice cream",), "SAFE"),
        ("Homemade chips with mayonnaise", "1 kg potatoes; 100 g mayonnaise", (), "SAFE"),
        ("Rolls", "8 rolls; 200 g tinned tuna; 100 g mayonnaise", ("make the tuna mayonnaise",), "SAFE"),
        ("Homemade lemon ice", "300 ml condensed milk; 500 ml cream", ("churn the ice cream",), "SAFE"),
        ("Wedges with vegan aioli", "1 kg potatoes; 100 ml soy milk", ("make the aioli",), "SAFE"),
        ("Pavlova", "4 egg whites; 200 g sugar", ("bake it; where: oven at 120 C; takes: 90 min",), "SAFE"),
        ("Oat biscuits", "1 egg; 200 g oats", ("bake the biscuits; where: oven at 180 C; takes: 12 min",), "SAFE"),
        ("Pancakes", "3 eggs; 200 g flour", ("fry the pancakes; where: stovetop; takes: 20 min",), "SAFE"),
    ],
)  # fmt: skip
def test_what_is_made_at_home_of_egg_that_nobody_tells_of_is_asked_about(
    dish: str, foods: str, steps: tuple[str, ...], wanted: str
) -> None:
    assert verdict("Mia, pregnant", dish, foods, *steps) == wanted


@pytest.mark.parametrize(("rules", "wanted"), [("home", "NOT_SAFE"), ("retail", "SAFE")])
def test_a_roast_held_by_the_table_of_its_rules_is_cooked(rules: str, wanted: str) -> None:
    """FDA Food Code 3-401.11(B): 60 °C for 12 min; the home rules have no such table."""
    file = plan("Greta, over 70", "Beef", "1.5 kg beef sirloin", "roast; where: oven at 80 C; cooks: roast; "
                "until: 60 C for 12 min; takes: 3 h", rules=rules)  # fmt: skip

    assert matrix(file).answers[0, 0].verdict.name == wanted


def test_what_could_make_ill_is_told_beside_what_is_only_advised_against() -> None:
    found = told(plan("Mia, pregnant", "Plate", "100 ml sherry; 100 g salami"))

    assert [snag.code for snag in found] == ["guests 2", "guests 8"]


def test_what_is_advised_against_is_to_be_minded_and_what_makes_ill_is_a_stop() -> None:
    found = told(plan("Mia, pregnant", "Trifle", "100 ml sherry; 3 eggs"))

    assert [(snag.code, snag.weight) for snag in found] == [("guests 1", Weight.STOP), ("guests 8", Weight.MIND)]
    assert "raw egg" in found[0].message
    assert "alcohol" in found[1].message


@pytest.mark.parametrize("risk", RISKS, ids=lambda risk: risk.trait.value)
def test_every_food_that_carries_a_risk_is_found_where_nothing_cooks_it(risk: object) -> None:
    foods = [entry.phrase for entry in ENTRIES if risk.trait in entry.traits | entry.hidden]  # type: ignore[attr-defined]

    assert foods
    assert [food for food in foods if verdict("Mia, pregnant", "Plate", f"100 g {food}") == "SAFE"] == []


RAW = sorted({entry.phrase for entry in ENTRIES if entry.raw_class is not None})


@settings(deadline=None)
@given(st.sampled_from(RAW), st.sampled_from(sorted(SUSCEPTIBLE)), st.sampled_from(["Tartare", "Supper", "Mousse"]))
def test_no_raw_food_that_nothing_heats_is_safe_for_them(food: str, whom: str, dish: str) -> None:
    assert verdict(f"Mia, {whom}", dish, f"100 g {food}") != Verdict.SAFE.name


@pytest.mark.parametrize(
    "step", ["barbecue the thighs", "fry the thighs in hot oil", "cook the thighs under the grill"]
)
def test_what_a_step_heats_by_its_words_alone_is_asked_about_and_not_called_raw(step: str) -> None:
    """Where no place is written, the words tell as much as for everybody else."""
    assert verdict("Mia, pregnant", "Thighs", "500 g chicken thighs", step) == "ASK"
    assert verdict("Mia, pregnant", "Thighs", "500 g chicken thighs", f"{step};until: 76 C") == "SAFE"
    assert verdict("Mia, pregnant", "Thighs", "500 g chicken thighs", "slice the thighs") == "NOT_SAFE"
