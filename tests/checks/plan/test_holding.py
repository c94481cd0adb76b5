"""Kept hot, kept cold, thawed, kept so many days: each code with a good plan and a bad one, below, at and above.

Limits: USDA FSIS / FoodSafety.gov (home); FDA Food Code 2022, 3-501.16 and 3-501.17 (retail), read in state adoptions
of the 2009 to 2017 editions.
"""

import pytest

from tests.checks.plan.kept_safe import FIRST_STEP, line_of, plan, said, weights


# FSIS: hot at 140 °F or above; Food Code 3-501.16: at 135 °F (57 °C) or above
@pytest.mark.parametrize(
    ("rules", "keeps", "wanted"),
    [
        ("home", "oven at 55 C", ["STOP"]),
        ("home", "oven at 139.9 F (139.9 to 160 F)", ["STOP"]),
        ("home", "oven at 140 F (140 to 160 F)", []),
        ("home", "oven at 59.9 C (59.9 to 80 C)", ["STOP"]),
        ("home", "oven at 60 C (60 to 80 C)", []),
        ("home", "oven at 138 F", ["STOP"]),
        ("retail", "oven at 138 F", []),
        ("retail", "oven at 134.9 F (134 to 160 F)", ["STOP"]),
        ("retail", "oven at 135 F (135 to 160 F)", []),
        ("retail", "oven at 57 C (57 to 80 C)", []),
        # the low end of what it accepts counts
        ("home", "oven at 70 C (59 to 80 C)", ["STOP"]),
        ("home", "oven at 70 C (60 to 80 C)", []),
        ("home", "oven at 90 C", []),
    ],
)
def test_f06_what_is_kept_hot_is_hot_enough(rules: str, keeps: str, wanted: list[str]) -> None:
    steps = f"""
    - step: bake it
      where: oven at 180 C
      takes: 40 min
      keeps: 40 min in the {keeps}
    """
    found = said(plan(steps, rules=rules), "food 6")

    assert [snag.weight.name for snag in found] == wanted
    assert [line_of(snag)[0] for snag in found] == [FIRST_STEP + 3] * len(wanted)


def test_f06_says_nothing_of_what_does_not_spoil() -> None:
    steps = "- {step: warm, perishable: no, where: oven at 50 C, takes: 9 min, keeps: 40 min in the oven at 50 C}"

    assert weights(plan(steps), "food 6") == []


def test_a_setting_without_a_range_is_kept_at_that_setting() -> None:
    file = plan("- {step: bake it, where: oven at 180 C, takes: 40 min, keeps: 40 min in the oven at 65 C}")
    keeps = file.filled.tasks["test-dish/bake-it"].ways[0].keeps

    assert keeps is not None
    assert keeps.where.heat is not None
    assert (keeps.where.heat.low, keeps.where.heat.high) == (65, 65)


# FSIS: the fridge at 40 °F or below; Food Code 3-501.16: at 41 °F (5 °C) or below
@pytest.mark.parametrize(
    ("rules", "fridge", "wanted"),
    [
        ("home", "3 C", []),
        ("home", "4 C", []),
        ("home", "40 F", []),
        ("home", "40.1 F", ["STOP"]),
        ("home", "4.5 C", ["STOP"]),
        ("home", "5 C", ["STOP"]),
        ("retail", "5 C", []),
        ("retail", "41 F", []),
        ("retail", "41.1 F", ["STOP"]),
        ("retail", "5.1 C", ["STOP"]),
    ],
)
def test_f07_the_fridge_is_cold_enough(rules: str, fridge: str, wanted: list[str]) -> None:
    found = said(plan("- {step: cut, takes: 9 min}", rules=rules, fridge=fridge), "food 7")

    assert [snag.weight.name for snag in found] == wanted
    assert [line_of(snag) for snag in found] == [(12, f"fridge at: {fridge}")] * len(wanted)


# FSIS, safe defrosting: 24 h in the fridge for each 4-5 lb (4 taken), 30 min a pound in cold water
@pytest.mark.parametrize(
    ("thaws", "takes", "wanted"),
    [
        ("4 lb in the fridge", "23 h 59", ["STOP"]),
        ("4 lb in the fridge", "24 h", []),
        ("4.1 lb in the fridge", "24 h", ["STOP"]),
        ("4.1 lb in the fridge", "2 days", []),
        ("1.81 kg in the fridge", "24 h", []),
        ("1.82 kg in the fridge", "24 h", ["STOP"]),
        ("2 lb in cold water", "59 min", ["STOP"]),
        ("2 lb in cold water", "1 h", []),
        ("2.1 lb in cold water", "1 h", ["STOP"]),
    ],
)
def test_f08_what_thaws_has_the_time_its_weight_asks_for(thaws: str, takes: str, wanted: list[str]) -> None:
    steps = f"""
    - step: thaw it
      thaws: {thaws}
      takes: {takes}
    - {{step: cook it, where: oven at 180 C, takes: 40 min, cooks: poultry, after: 'thaw it, at once'}}
    """
    found = said(plan(steps), "food 8")

    assert [snag.weight.name for snag in found] == wanted
    assert [line_of(snag)[0] for snag in found] == [FIRST_STEP + 2] * len(wanted)


@pytest.mark.parametrize(
    ("then", "wanted"),
    [
        ("- {step: cook it, where: oven at 180 C, takes: 40 min, cooks: poultry, after: 'thaw it, at once'}", []),
        ("- {step: cook it, where: oven at 180 C, takes: 40 min, until: 74 C, after: 'thaw it, at once'}", []),
        ("- {step: cook it, where: oven at 180 C, takes: 40 min, cooks: poultry}", ["MIND"]),
        ("- {step: trim it, takes: 40 min, after: 'thaw it, at once'}", ["MIND"]),
        ("- {step: warm it, where: oven at 180 C, takes: 40 min, after: 'thaw it, at once'}", ["MIND"]),
    ],
)
def test_f08_what_thaws_in_cold_water_is_cooked_at_once(then: str, wanted: list[str]) -> None:
    steps = f"- {{step: thaw it, thaws: 2 lb in cold water, keeps: 1 h in the fridge}}\n{then}"

    assert weights(plan(steps), "food 8") == wanted


@pytest.mark.parametrize(
    ("hours", "then", "wanted"),
    [
        ("23 h", "where: oven at 180 C, takes: 40 min", ["MIND"]),
        ("24 h", "where: oven at 180 C, takes: 40 min", []),
        ("1 h", "takes: 5 min", []),  # softened, and eaten half frozen
    ],
)
def test_f08_from_the_freezer_through_the_fridge_to_the_heat_takes_a_day(
    hours: str, then: str, wanted: list[str]
) -> None:
    steps = f"""
    - {{step: make it, takes: 40 min, keeps: 9 days in the freezer}}
    - {{step: bring it round, where: fridge, takes: {hours}}}
    - {{step: finish it, {then}}}
    """

    assert weights(plan(steps), "food 8") == wanted


@pytest.mark.parametrize("more", ["keeps: 2 days in the fridge", "perishable: no, keeps: 9 days in the freezer"])
def test_f08_only_what_was_frozen_and_spoils_thaws(more: str) -> None:
    steps = f"""
    - {{step: make it, takes: 40 min, {more}}}
    - {{step: bring it round, where: fridge, takes: 23 h}}
    - {{step: finish it, where: oven at 180 C, takes: 40 min}}
    """

    assert weights(plan(steps), "food 8") == []


# FoodSafety.gov, cold food storage: soups and stews 3-4 d, cooked poultry 3-4 d, raw poultry 1-2 d;
# Food Code 3-501.17: 7 days, the day of preparation is day 1
@pytest.mark.parametrize(
    ("rules", "steps", "wanted"),
    [
        ("home", "- {step: simmer the soup, takes: 9 min, keeps: 4 days in the fridge}", []),
        ("home", "- {step: simmer the soup, takes: 9 min, keeps: 97 h in the fridge}", ["MIND"]),
        ("home", "- {step: roast it, where: oven at 180 C, cooks: poultry, takes: 1 h, keeps: 4 days in the fridge}",
        []),
        ("home", "- {step: roast it, where: oven at 180 C, cooks: poultry, takes: 1 h, keeps: 5 days in the fridge}",
         ["MIND"]),
        ("home", "- {step: salt it, takes: 9 min, keeps: 2 days in the fridge}\n"
         "- {step: roast it, where: oven at 180 C, cooks: poultry, takes: 1 h}", []),
        ("home", "- {step: salt it, takes: 9 min, keeps: 3 days in the fridge}\n"
         "- {step: roast it, where: oven at 180 C, cooks: poultry, takes: 1 h}", ["MIND"]),
        ("home", "- {step: pickle it, takes: 9 min, keeps: 9 days in the fridge}", []),
        ("retail", "- {step: pickle it, takes: 9 min, keeps: 7 days in the fridge}", []),
        ("retail", "- {step: pickle it, takes: 9 min, keeps: 8 days in the fridge}", ["MIND"]),
        ("retail", "- {step: pickle it, takes: 9 min, keeps: 8 days in the freezer}", []),
        ("retail", "- {step: pickle it, perishable: no, takes: 9 min, keeps: 8 days in the fridge}", []),
    ],
)  # fmt: skip
def test_f12_what_keeps_cold_keeps_no_longer_than_its_life(rules: str, steps: str, wanted: list[str]) -> None:
    assert weights(plan(steps, rules=rules), "food 12") == wanted
