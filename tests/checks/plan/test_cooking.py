"""Cooked through, rested, reheated: each code with a good plan and a bad one, just below, at and above its limit.

Limits: USDA FSIS / FoodSafety.gov, safe minimum internal temperatures (home); FDA Food Code 2022, 3-401.11 and
3-403.11 (retail), read in state adoptions of the 2009 to 2017 editions.
"""

import pytest

from tests.checks.plan.kept_safe import FIRST_STEP, line_of, plan, said, weights


def roast(cooks: str, until: str) -> str:
    return f"""
    - step: cook it
      where: oven at 180 C
      takes: 40 min
      cooks: {cooks}
      until: {until}
    """


@pytest.mark.parametrize(
    ("rules", "cooks", "until", "wanted"),
    [
        # FoodSafety.gov: all poultry 165 °F
        ("home", "poultry", "73.8 C", ["STOP"]),
        ("home", "poultry", "74 C", []),
        ("home", "poultry", "75 C", []),
        ("home", "poultry", "164.9 F", ["STOP"]),
        ("home", "poultry", "165 F", []),
        ("home", "poultry", "166 F", []),
        # FoodSafety.gov: ground meat 160 °F; Food Code 3-401.11(A)(2): 155 °F for 17 s
        ("home", "ground meat", "159 F", ["STOP"]),
        ("home", "ground meat", "160 F", []),
        ("home", "ground meat", "71 C", []),
        ("retail", "ground meat", "155 F for 16 s", ["STOP"]),
        ("retail", "ground meat", "155 F for 17 s", []),
        ("retail", "ground meat", "68 C for 17 s", []),
        ("retail", "ground meat", "154 F for 17 s", ["STOP"]),
        # FoodSafety.gov: 145 °F for whole cuts and fish; Food Code 3-401.11(A)(1): for 15 s
        ("home", "whole cut", "144.9 F", ["STOP"]),
        ("home", "whole cut", "145 F", []),
        ("home", "whole cut", "63 C", []),
        ("home", "fish", "62.7 C", ["STOP"]),
        ("home", "fish", "63 C", []),
        ("retail", "fish", "145 F", ["STOP"]),
        ("retail", "fish", "145 F for 15 s", []),
        # FoodSafety.gov: egg dishes 160 °F
        ("home", "eggs", "70.9 C", ["STOP"]),
        ("home", "eggs", "71 C", []),
        # Food Code 3-401.11(B)(2), roasts: 130 °F 112 min, 140 °F 12 min, 142 °F 8 min; 143 °F goes by 142 °F
        ("retail", "roast", "130 F for 111 min", ["STOP"]),
        ("retail", "roast", "130 F for 112 min", []),
        ("retail", "roast", "54.4 C for 112 min", []),
        ("retail", "roast", "129.9 F for 500 min", ["STOP"]),
        ("retail", "roast", "60 C for 11 min", ["STOP"]),
        ("retail", "roast", "60 C for 12 min", []),
        ("retail", "roast", "143 F for 7 min", ["STOP"]),
        ("retail", "roast", "143 F for 8 min", []),
        # no such table for a cut that is no roast, nor at home
        ("retail", "whole cut", "60 C for 12 min", ["STOP"]),
        ("home", "roast", "60 C for 12 min", ["STOP"]),
    ],
)
def test_f01_what_is_cooked_gets_hot_enough_for_long_enough(
    rules: str, cooks: str, until: str, wanted: list[str]
) -> None:
    assert weights(plan(roast(cooks, until), rules=rules), "food 1") == wanted


@pytest.mark.parametrize(
    ("rules", "ingredient", "step", "until", "wanted"),
    [
        # as with `cooks:`, by the food itself; FoodSafety.gov: 165 °F, 160 °F, 145 °F
        ("home", "1 kg beef mince", "fry the mince patties", "50 C", ["STOP"]),
        ("home", "1 kg beef mince", "fry them", "70.9 C", ["STOP"]),
        ("home", "1 kg beef mince", "fry them", "71 C", []),
        ("home", "1 kg chicken breasts", "sear the chicken", "50 C", ["STOP"]),
        ("home", "1 kg chicken breasts", "sear the chicken", "60 C for 90 min", ["STOP"]),
        ("home", "1 kg chicken breasts", "sear the chicken", "74 C", []),
        ("home", "1 kg turkey mince", "bake the patties", "60 C", ["STOP"]),
        ("home", "1 kg pork mince", "bake the meatloaf", "158 F", ["STOP"]),
        ("home", "6 eggs", "bake the eggs", "63 C", ["ASK"]),
        ("home", "1 kg salmon fillet", "bake the salmon", "50 C", ["ASK"]),
        ("home", "1.5 kg beef sirloin", "roast the beef", "57 C", ["ASK"]),
        # a time at a lower temperature: Food Code 3-401.11(A)(2) and (B)(2)
        ("retail", "1 kg beef mince", "fry the patties", "68 C for 17 s", []),
        ("retail", "1 kg beef mince", "fry the patties", "68 C for 16 s", ["STOP"]),
        ("retail", "1.5 kg beef sirloin", "roast the beef", "60 C for 12 min", []),
        ("retail", "1.5 kg beef sirloin", "fry the beef", "60 C for 12 min", ["ASK"]),
        # a figure for another food, or for none
        ("home", "1 kg chicken breasts", "toast the bread", "60 C", []),
        ("home", "1 kg leeks", "bake the leeks", "50 C", []),
    ],
)
def test_f01_knows_the_class_of_a_raw_food_where_no_step_says_it(
    rules: str, ingredient: str, step: str, until: str, wanted: list[str]
) -> None:
    where = f"- {{step: {step}, where: oven at 180 C, takes: 20 min, until: {until}}}"
    file = plan(where, rules=rules, ingredient=ingredient)

    assert weights(file, "food 1") == wanted
    if wanted:
        assert said(file, "food 2") == []  # what is written is not called unsaid
        assert line_of(said(file, "food 1")[0])[1].startswith("- {step")


@pytest.mark.parametrize(
    ("last", "wanted"),
    [
        ("- {step: roast the chicken, where: oven at 200 C, takes: 40 min, until: 75 C}", ("", "")),
        ("- {step: roast the chicken, where: oven at 200 C, takes: 40 min}", ("", "ASK")),
        ("- {step: simmer the chicken, where: stovetop, takes: 2 h}", ("", "")),
        ("- {step: brown the chicken, where: stovetop, takes: 4 min}", ("STOP", "")),
        ("- {step: carve the chicken, takes: 4 min}", ("STOP", "")),
    ],
)
def test_f01_heeds_what_cooks_it_after_a_low_figure(last: str, wanted: tuple[str, str]) -> None:
    first = "- {step: poach the chicken gently, where: stovetop, takes: 20 min, until: 55 C}"
    file = plan(f"{first}\n{last}", ingredient="2 chickens")

    assert (" ".join(weights(file, "food 1")), " ".join(weights(file, "food 2"))) == wanted


@pytest.mark.parametrize(
    ("ingredient", "keys", "wanted"),
    [
        ("1 kg beef mince", "step: fry the patties rare, cooks: ground meat", ["ASK"]),
        ("1 kg beef mince", "step: fry the patties, cooks: ground meat, look for: still red inside", ["ASK"]),
        ("1 kg beef mince", "step: fry the patties, until: 71 C, how: leave them pink inside", ["ASK"]),
        ("1 kg chicken breasts", "step: fry them, cooks: poultry, look for: still pink in the middle", ["ASK"]),
        ("1 kg chicken breasts", "step: fry them, until: 74 C, look for: no longer pink inside", []),
        ("1 kg chicken breasts", "step: fry them, until: 74 C, look for: not pink in the middle", []),
        ("1 kg beef mince", "step: fry the patties, until: 71 C, look for: nothing red inside", []),
        ("1 kg rare breed pork mince", "step: fry the rare breed patties, until: 71 C", []),
        ("1 kg beef steaks", "step: fry the steaks rare, cooks: whole cut", []),  # at the table of whole cuts
    ],
)
def test_f02_tells_everybody_of_words_that_say_poultry_or_ground_meat_stays_underdone(
    ingredient: str, keys: str, wanted: list[str]
) -> None:
    """FoodSafety.gov gives both one figure for every guest; the signs of red and pink: common practice, no source."""
    file = plan(f"- {{{keys}, where: stovetop, takes: 8 min}}", ingredient=ingredient)

    assert weights(file, "food 2") == wanted


def test_f01_names_rule_source_both_units_and_how_to_mend_at_the_line_that_is_wrong() -> None:
    (snag,) = said(plan(roast("poultry", "70 C")), "food 1")

    assert line_of(snag) == (FIRST_STEP + 4, "until: 70 C")
    for words in ("70 °C (158 °F)", "74 °C (165 °F)", "home rules (USDA FSIS / FoodSafety.gov)"):
        assert words in snag.message
    assert "all poultry" in snag.source
    assert "until: 74 C" in snag.mend


def test_f01_tells_the_row_of_the_table_a_roast_goes_by() -> None:
    (snag,) = said(plan(roast("roast", "60 C for 5 min"), rules="retail"), "food 1")

    assert "60 °C (140 °F) for 12 min for a roast" in snag.message
    assert "FDA Food Code 3-401.11(B)(2)" in snag.source


def test_a_step_that_only_says_what_it_cooks_is_cooked_by_its_class() -> None:
    file = plan("- {step: cook it, where: oven at 180 C, takes: 40 min, cooks: roast}")

    assert weights(file, "food 1") == []
    assert file.filled.tasks["test-dish/cook-it"].care.core is not None


# FoodSafety.gov: steaks, chops and roasts rest 3 min; the serving of a course is part of the rest.
@pytest.mark.parametrize(
    ("serve", "rest", "until", "wanted"),
    [
        ("2 min", "", "63 C", ["MIND"]),
        ("3 min", "", "63 C", []),
        ("4 min", "", "63 C", []),
        ("0 min", "- {step: let it rest, takes: 2 to 5 min}", "63 C", ["MIND"]),
        ("0 min", "- {step: let it rest, takes: 3 to 5 min}", "63 C", []),
        ("2 min", "- {step: carve, takes: 0 min, after: 'cook it, at least 1 min'}", "63 C", []),
        ("0 min", "", "71 C", []),  # what does for ground meat needs no rest: our reading
    ],
)
def test_f03_what_is_cooked_rests(serve: str, rest: str, until: str, wanted: list[str]) -> None:
    steps = f"- {{step: cook it, where: oven at 180 C, takes: 40 min, cooks: whole cut, until: {until}}}\n{rest}"

    assert weights(plan(steps, serve=serve), "food 3") == wanted


def test_f03_retail_asks_for_no_rest() -> None:
    steps = "- {step: cook it, where: oven at 180 C, takes: 40 min, cooks: whole cut, until: 63 C for 15 s}"

    assert weights(plan(steps, serve="0 min", rules="retail"), "food 3") == []


# USDA FSIS, leftovers: 165 °F; Food Code 3-403.11: 165 °F within 2 h
@pytest.mark.parametrize("rules", ["home", "retail"])
@pytest.mark.parametrize(
    ("keys", "wanted"),
    [
        ("until: 73.8 C", ["STOP"]),
        ("until: 74 C", []),
        ("until: 164.9 F", ["STOP"]),
        ("until: 165 F", []),
        ("until: 80 C", []),
        ("takes: 20 min", ["ASK"]),
    ],
)
def test_f04_what_is_reheated_gets_hot_enough(rules: str, keys: str, wanted: list[str]) -> None:
    takes = "" if "takes" in keys else ", takes: 20 min"
    steps = f"- {{step: warm it through, reheats: yes, where: stovetop, {keys}{takes}}}"

    assert weights(plan(steps, rules=rules), "food 4") == wanted


def test_f04_knows_a_reheating_by_its_name_and_heeds_a_no() -> None:
    assert weights(plan("- {step: Reheat the stew, where: stovetop, takes: 20 min}"), "food 4") == ["ASK"]
    assert weights(plan("- {step: reheat the stones, reheats: no, where: stovetop, takes: 20 min}"), "food 4") == []
    assert weights(plan("- {step: reheat the plates, perishable: no, where: stovetop, takes: 20 min}"), "food 4") == []


@pytest.mark.parametrize(
    ("takes", "wanted"), [("1 h 59", []), ("2 h", []), ("2 h 01", ["STOP"]), ("30 min to 1 h to 2 h 01", ["STOP"])]
)
def test_f05_what_is_reheated_gets_hot_soon(takes: str, wanted: list[str]) -> None:
    steps = f"""
    - step: reheat the stew
      where: stovetop
      takes: {takes}
      until: 74 C
    """
    found = said(plan(steps), "food 5")

    assert [snag.weight.name for snag in found] == wanted
    assert [line_of(snag) for snag in found] == [(FIRST_STEP + 2, f"takes: {takes}")] * len(wanted)


COOK = "- {step: cook it, where: oven at 180 C, takes: 40 min}"


@pytest.mark.parametrize(
    ("ingredient", "keys", "wanted"),
    [
        ("1 kg chicken thighs", "", ["ASK"]),
        ("1 kg chicken thighs", ", cooks: poultry", []),
        ("1 kg chicken thighs", ", until: 164 F", []),  # food 1 tells it, as below
        ("1 kg chicken thighs", ", until: 165 F", []),
        ("1 kg chicken thighs", ", cooks: poultry, until: 164 F", []),
        ("1 kg chicken thighs", ", cooks: fish, until: 63 C", ["ASK"]),
        ("1 kg chicken thighs, breaded", "", ["ASK"]),  # also where a word beside it is unknown
        ("1 kg beef fillet", "", ["ASK"]),
        ("1 kg cod", "", ["ASK"]),
        ("1 kg cod", ", look for: it flakes", []),  # FoodSafety.gov's chart, from memory
        ("1 kg mussels", ", look for: all shells open", []),
        ("1 kg chicken thighs", ", look for: golden", ["ASK"]),
        ("4 eggs", ", until: 71 C", []),
        ("1 kg cooked chicken", "", []),
        ("500 g leftover roast chicken", "", []),
        ("1 kg vegan sausages", "", []),
        ("1 kg leeks", "", []),
    ],
)
def test_f02_asks_how_hot_what_a_step_heats_gets(ingredient: str, keys: str, wanted: list[str]) -> None:
    """Which foods are raw: the food table, common practice, no source. The limits: FoodSafety.gov."""
    file = plan(COOK.replace("40 min", f"40 min{keys}"), ingredient=f"'{ingredient}'")
    found = said(file, "food 2")

    assert [snag.weight.name for snag in found] == wanted
    assert [line_of(snag)[0] for snag in found] == [FIRST_STEP] * len(wanted)


@pytest.mark.parametrize(
    "step",
    [
        "roast the chickens, where: oven at 190 C",
        "fry, where: stovetop",
        "grill the birds over charcoal",
        "poach gently, where: stovetop",
        "bake through, where: oven at 180 C",
        "cook in butter, where: stovetop",
    ],
)
def test_f02_names_the_step_that_heats_and_never_says_that_nothing_cooks_it(step: str) -> None:
    file = plan(f"- {{step: joint them, takes: 5 min}}\n- {{step: {step}, takes: 30 min}}", ingredient="2 chickens")
    (snag,) = said(file, "food 2")

    assert snag.weight.name == "ASK"
    assert snag.message.startswith(f"{step.partition(', where')[0]} does not say how hot")
    assert "`until: 74 C` at that step" in snag.mend
    assert "all poultry" in snag.source


@pytest.mark.parametrize(
    ("dish", "ingredient", "step"),
    [
        ("Beef carpaccio", "500 g beef fillet", "slice it thinly"),
        ("Steak tartare", "500 g beef fillet", "chop the beef"),
        ("Oysters", "24 oysters", "open the oysters"),
        ("Tuna sashimi", "500 g tuna", "slice the tuna"),
        ("Chocolate mousse", "6 eggs", "whisk the whites and fold"),
        ("Tiramisu", "4 egg yolks", "beat the yolks and layer"),
    ],
)
def test_f02_says_that_what_is_raw_on_purpose_is_eaten_raw(dish: str, ingredient: str, step: str) -> None:
    (snag,) = said(plan(f"- {{step: {step}, takes: 20 min}}", ingredient=ingredient, dish=dish), "food 2")

    assert snag.weight.name == "MIND"
    assert "raw" in snag.message
    assert "at your guests' risk" in snag.message
    assert "pregnant" in snag.mend


def test_f02_asks_where_no_step_heats_it_and_the_dish_is_not_one_eaten_raw() -> None:
    (snag,) = said(plan("- {step: put it on plates, takes: 5 min}", ingredient="1 kg chicken thighs"), "food 2")

    assert snag.weight.name == "ASK"
    assert line_of(snag)[0] == FIRST_STEP - 2


@pytest.mark.parametrize(
    ("dish", "ingredient", "step", "wanted"),
    [
        # eggs in what is baked, boiled or fried through: common practice, no source
        ("Lemon cake", "3 eggs", "bake the cake, where: oven at 180 C, takes: 35 min", []),
        ("Quiche", "4 eggs", "bake the quiche, where: oven at 160 C, takes: 20 min", []),
        ("Quiche", "4 eggs", "bake the quiche, where: oven at 160 C, takes: 19 min", ["ASK"]),
        ("Custard", "4 eggs", "bake the custard, where: oven at 150 C, takes: 40 min", ["ASK"]),
        ("Almond biscuits", "2 eggs", "bake the biscuits, where: oven at 180 C, takes: 10 min", []),
        ("Brioche", "3 eggs", "bake the bread, where: oven at 200 C, takes: 30 min", []),
        ("Pancakes", "3 eggs", "fry the pancakes, where: stovetop, takes: 20 min", []),
        ("Tagliatelle", "3 eggs", "boil the pasta, where: stovetop, takes: 3 min", []),
        ("Egg salad", "6 eggs", "hard-boil the eggs, where: stovetop, takes: 10 min", []),
        ("Omelette", "6 eggs", "cook the omelette, where: stovetop, takes: 4 min", ["ASK"]),
        ("Chocolate fondants", "6 eggs", "bake the fondants, where: oven at 200 C, takes: 21 min", ["MIND"]),
        # meat in liquid at the boil for long, and thin bacon: the same
        ("Ragout", "1 kg minced beef", "simmer the ragout, where: stovetop, takes: 30 min", []),
        ("Ragout", "1 kg minced beef", "simmer the ragout, where: stovetop, takes: 29 min", ["ASK"]),
        ("Stew", "1 kg beef shin", "braise the beef, where: oven at 150 C, takes: 3 h", []),
        ("Stock", "1 kg chicken bones", "simmer the stock, where: stovetop, takes: 3 h", []),
        ("Roast", "1 kg beef shin", "roast the beef, where: oven at 150 C, takes: 3 h", ["ASK"]),
        ("Soup", "200 g bacon", "fry the bacon, where: stovetop, takes: 6 min", []),
    ],
)
def test_f02_does_not_ask_about_what_is_plainly_cooked_through(
    dish: str, ingredient: str, step: str, wanted: list[str]
) -> None:
    assert weights(plan(f"- {{step: {step}}}", ingredient=ingredient, dish=dish), "food 2") == wanted


@pytest.mark.parametrize(
    ("last", "wanted"),
    [
        ("warm the soup through, where: stovetop, takes: 12 min, until: 50 C", ["STOP"]),
        ("warm the soup through, where: stovetop, takes: 12 min, until: 74 C", []),
        ("warm the soup through, where: stovetop, takes: 12 min", ["ASK"]),
        ("finish it in a hot pan, where: stovetop, takes: 12 min, until: 60 C", ["STOP"]),
        ("bring back to the boil, where: stovetop, takes: 12 min", []),  # 100 °C is said with it
        ("carry it out, where: front-of-house, takes: 5 min", []),
    ],
)
def test_f04_reheating_is_known_by_its_words_and_by_what_it_follows(last: str, wanted: list[str]) -> None:
    """USDA FSIS, leftovers: to 165 °F (74 °C)."""
    steps = f"""
    - {{step: simmer the soup, where: stovetop, takes: 30 min, keeps: 1 day in the fridge}}
    - {{step: {last}}}
    """
    file = plan(steps, ingredient="600 g leeks")

    assert weights(file, "food 4") == wanted
    assert all("cooked leek" in snag.source for snag in said(file, "food 4"))


def test_f04_bread_and_plates_are_warmed_as_one_likes() -> None:
    steps = "- {step: warm the rolls through, where: oven at 150 C, takes: 8 min, until: 40 C}"

    assert weights(plan(steps, ingredient="12 bread rolls"), "food 4") == []
