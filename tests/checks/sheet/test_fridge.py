"""food 12 and food 13: how long things lie in the fridge, and how much goes in warm."""

import pytest

from tests.checks.sheet.suppers import line_of, said, supper, weights


def lying(day: str, keeps: str = "9 days in the fridge, 2 litres", more: str = "") -> str:
    """Made on a day from 12:00 to 12:30; taken up at 19:00 on the event's day, which is 7 h of another day."""
    return f"""
    - step: simmer the soup
      takes: 30 min
      {more or "attended: all"}
      day: {day}
      not before: {day} 12:00
      not after: {day} 12:30
      keeps: {keeps}
    - {{step: heat the soup, where: stovetop, takes: 10 min, not before: '19:00', not after: '19:10', until: 74 C,
       keeps: 60 min on the stovetop}}
    """


# FoodSafety.gov, cold food storage: soups and stews 3-4 days. Food Code 3-501.17: 7 days, preparation being day 1.
@pytest.mark.parametrize(
    ("rules", "day", "wanted"),
    [
        ("home", "day before", []),
        ("home", "3 days before", ["MIND"]),  # 3.3 days
        ("home", "4 days before", ["STOP"]),  # 4.3 days
        ("retail", "5 days before", []),  # day 6
        ("retail", "8 days before", ["STOP"]),  # day 9
    ],
)
def test_f12_nothing_lies_cold_longer_than_its_life(rules: str, day: str, wanted: list[str]) -> None:
    assert weights(supper(lying(day), rules=rules), "food 12") == wanted


def test_f12_tells_days_rule_and_source_at_the_line_that_lets_it_lie() -> None:
    (snag,) = said(supper(lying("4 days before")), "food 12")

    assert line_of(snag).startswith("keeps: 9 days in the fridge")
    assert "4.3 days in the fridge, taken up on day 5" in snag.message
    assert "soup or stew 3 to 4 days" in snag.message
    assert "cold food storage chart" in snag.message


def test_f12_the_freezer_stops_the_count() -> None:
    """FDA Food Code 3-501.17: freezing stops the clock and does not set it back."""
    assert weights(supper(lying("4 days before", "9 days in the freezer, 2 litres")), "food 12") == []


def test_f12_what_thaws_is_still_frozen() -> None:
    """USDA FSIS: raw poultry 1-2 days in the fridge, counted from when it is thawed."""
    steps = """
    - {step: bring it, takes: 2 days, KEY, not before: 5 days before 19:00, not after: 3 days before 20:00,
       keeps: 2 days in the fridge}
    - {step: cook it, where: stovetop, takes: 30 min, cooks: poultry, day: day before,
       not after: day before 12:00, keeps: 40 h hot}
    """

    assert weights(supper(steps.replace("KEY", "thaws: 2 kg in the fridge")), "food 12") == ["MIND"]
    assert weights(supper(steps.replace("KEY", "where: fridge")), "food 12") == ["STOP"]


def warm(litres: float, *, gap: str = "", fridge: str = "60 litres") -> list[str]:
    steps = f"""
    - {{step: cook it, where: stovetop, takes: 30 min, day: day before, keeps: 2 h in the room}}
    - {{step: chill it, where: 'fridge, {litres:g} litres', takes: 8 h, day: day before{gap}}}
    """
    return weights(supper(steps, fridge=fridge), "food 13")


@pytest.mark.parametrize(("litres", "wanted"), [(5.9, []), (6, []), (6.1, ["MIND"])])
def test_f13_no_more_warm_food_than_a_tenth_of_the_fridge(litres: float, wanted: list[str]) -> None:
    """A tenth: common practice, no source."""
    assert warm(litres) == wanted


def test_f13_what_stood_for_longer_than_an_hour_counts_as_cooled() -> None:
    assert warm(9, gap=", after: 'cook it, at least 60 min, at most 60 min'") == ["MIND"]
    assert warm(9, gap=", after: 'cook it, at least 61 min, at most 61 min'") == []


def test_f13_what_was_cooled_first_goes_in_cold() -> None:
    steps = """
    - {step: cook it, where: stovetop, takes: 30 min, day: day before, keeps: 10 min hot}
    - {step: cool it, takes: 20 min, KEY, day: day before, keeps: 10 min in the room}
    - {step: chill it, where: 'fridge, 9 litres', takes: 8 h, day: day before}
    """

    assert weights(supper(steps.replace("KEY", "cools: '4 cm deep, metal, ice bath'")), "food 13") == []
    assert weights(supper(steps.replace("KEY", "attended: all")), "food 13") == ["MIND"]


def test_f13_adds_up_what_goes_in_within_an_hour() -> None:
    steps = """
    - {step: cook it, where: stovetop, takes: 30 min, day: day before, keeps: '2 days in the fridge, 3 litres'}
    - {step: cook more, where: stovetop, takes: 30 min, after: nothing, day: day before,
       keeps: '2 days in the fridge, 4 litres'}
    - {step: mix it, after: [cook it, cook more], takes: 5 min}
    """
    (snag,) = said(supper(steps), "food 13")

    assert "7 litres warm into a fridge of 60" in snag.message
    assert "cook it (3 litres)" in snag.message
    assert "cook more (4 litres)" in snag.message
