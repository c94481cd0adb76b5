"""food 12 and food 13: how long things lie in the fridge, and how much goes in warm."""

import pytest

from board.checks.sheet.assessed import of_plan, with_sheet
from tests.checks.sheet.suppers import line_of, said, supper, three_dishes, weights


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


def test_f12_whole_days_in_the_freezer_are_no_days_of_the_retail_count() -> None:
    """FDA Food Code 3-501.17: seven days, preparation being day 1, less those frozen: from day 1 to day 9, 4 frozen."""
    steps = """
    - {step: simmer the soup, takes: 30 min, not before: 8 days before 12:00, not after: 8 days before 12:30,
       keeps: 'KEPT, 2 litres'}
    - {step: stir it, takes: 5 min, not before: 4 days before 13:00, not after: 4 days before 13:05,
       keeps: '9 days in the fridge, 2 litres'}
    - {step: heat it, where: stovetop, takes: 10 min, until: 74 C, keeps: 60 min on the stovetop}
    """

    assert weights(supper(steps.replace("KEPT", "9 days in the freezer"), rules="retail"), "food 12") == []
    assert weights(supper(steps.replace("KEPT", "9 days in the fridge"), rules="retail"), "food 12") == ["STOP"]


def test_f12_days_in_the_room_are_not_days_in_the_fridge() -> None:
    """Sauerkraut stands four days in the room to sour: common practice, no source. Then a day in the fridge."""
    steps = """
    - {step: salt the soup greens, takes: 10 min, day: 5 days before, keeps: 5 days in the room}
    - {step: rinse the soup greens, takes: 10 min, day: day before, keeps: 2 days in the fridge}
    - {step: warm the soup, where: stovetop, takes: 10 min}
    """

    assert weights(supper(steps), "food 12") == []


def test_f12_what_is_mixed_is_as_old_as_its_oldest_part() -> None:
    """Soup of two days and fresh cream, a day later: past the 3 days of soup (FoodSafety.gov)."""
    steps = """
    - {step: simmer the soup, takes: 30 min, not before: 4 days before 12:00, not after: 4 days before 12:30,
       keeps: 9 days in the fridge}
    - {step: whip cream for the soup, takes: 5 min, after: nothing, day: day before, keeps: 9 days in the fridge}
    - {step: stir it in, takes: 5 min, after: [simmer the soup, whip cream for the soup],
       not before: day before 11:00, not after: day before 12:00, keeps: 9 days in the fridge}
    - {step: heat it, where: stovetop, takes: 10 min, keeps: 60 min on the stovetop}
    """
    (snag,) = said(supper(steps, dish="Soup"), "food 12")

    assert line_of(snag).startswith("not before: day before 11:00")
    assert snag.about.tasks == ("soup/stir-it-in",)


def test_f12_tells_only_the_worst_of_a_dish() -> None:
    """Soup taken out after 3.4 days and put back, eaten after 4.3: mind, then stop (FoodSafety.gov, 3 to 4 days)."""
    steps = """
    - {step: simmer the soup, takes: 30 min, not before: 4 days before 12:00, not after: 4 days before 12:30,
       keeps: 9 days in the fridge}
    - {step: skim it, takes: 5 min, not before: day before 22:00, not after: day before 22:30,
       keeps: 9 days in the fridge}
    - {step: heat it, where: stovetop, takes: 10 min, not before: '19:00', keeps: 60 min on the stovetop}
    """

    assert weights(supper(steps, dish="Soup"), "food 12") == ["STOP"]


@pytest.mark.parametrize(
    ("rules", "food", "wanted"),
    [
        ("home", "poultry", ["STOP"]),  # 1 to 2 days raw: FoodSafety.gov
        ("retail", "poultry", ["STOP"]),  # not the seven days of what is ready to eat
        ("home", "stuffed", []),  # no figure, so told of elsewhere, and not taken for another food
        ("retail", "stuffed", []),
    ],
)
def test_f12_raw_food_has_its_own_days(rules: str, food: str, wanted: list[str]) -> None:
    steps = f"""
    - {{step: salt it, takes: 10 min, day: 4 days before, keeps: 9 days in the fridge}}
    - {{step: roast it, where: oven at 180 C, takes: 60 min, cooks: {food}, keeps: 60 min hot}}
    """

    assert weights(supper(steps, rules=rules), "food 12") == wanted


def test_f12_of_what_no_class_is_known_the_home_chart_says_nothing() -> None:
    steps = """
    - {step: pickle it, takes: 10 min, day: 8 days before, keeps: 9 days in the fridge}
    - {step: slice it, takes: 5 min}
    """

    assert weights(supper(steps, dish="Celery"), "food 12") == []
    assert weights(supper(steps, dish="Celery", rules="retail"), "food 12") == ["STOP"]


def test_f12_and_f14_are_told_once_for_each_dish() -> None:
    steps = """
    - {step: boil the soup THIS, where: stovetop, takes: 20 min, day: 5 days before, keeps: '9 days in the fridge'}
    - {step: dress the soup THIS, takes: 5 min}
    """
    found = three_dishes(steps)

    assert weights(found, "food 12") == ["STOP"] * 3
    assert weights(found, "food 14") == ["ASK"] * 3


@pytest.mark.parametrize(("day", "stops"), [("3 days before", []), ("4 days before", ["food 12"])])
def test_only_what_must_be_mended_before_anybody_eats_goes_onto_the_sheet(day: str, stops: list[str]) -> None:
    file, sheet = supper(lying(day))

    assert [stop.finding for stop in with_sheet(of_plan(file), sheet).the_sheet.stops] == stops


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


@pytest.mark.parametrize(("minutes", "wanted"), [(60, ["MIND"]), (61, [])])
def test_f13_what_is_cut_up_for_an_hour_is_warm_still_when_it_goes_into_the_fridge(
    minutes: int, wanted: list[str]
) -> None:
    """An hour: common practice, no source."""
    steps = f"""
    - {{step: cook it, where: stovetop, takes: 30 min, day: day before}}
    - {{step: cut it, takes: {minutes} min, after: 'cook it, at once', keeps: '2 days in the fridge, 9 litres'}}
    - {{step: dress it, takes: 5 min}}
    """

    assert weights(supper(steps), "food 13") == wanted


def test_f13_what_is_taken_up_at_once_never_goes_into_the_fridge() -> None:
    steps = """
    - {step: cook it, where: stovetop, takes: 30 min, keeps: '2 days in the fridge, 9 litres'}
    - {step: dress it, takes: 5 min, after: 'cook it, at once'}
    """

    assert weights(supper(steps), "food 13") == []


@pytest.mark.parametrize(("later", "wanted"), [(0, ["MIND"]), (1, [])])
def test_f13_within_an_hour_of_one_another_and_told_at_the_first(later: int, wanted: list[str]) -> None:
    """An hour: common practice, no source."""
    steps = f"""
    - {{step: cook it, where: stovetop, takes: 30 min, not before: day before 9:30, not after: day before 10:00,
       keeps: '2 days in the fridge, 1 litre'}}
    - {{step: cook more, where: stovetop, takes: 20 min, after: nothing, not before: day before 10:{40 + later},
       not after: day before 11:0{later}, keeps: '2 days in the fridge, 6 litres'}}
    - {{step: mix it, after: [cook it, cook more], takes: 5 min}}
    """
    found = said(supper(steps), "food 13")

    assert [snag.weight.name for snag in found] == wanted
    for snag in found:
        assert "cook it (1 litre), cook more (6 litres)" in snag.message
        assert line_of(snag) == "keeps: '2 days in the fridge, 1 litre'}"


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
