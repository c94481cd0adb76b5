"""The home rules against the charts of USDA FSIS and FoodSafety.gov, row by row: just below, at and above, in both units.

Read in copies of the charts; custard is from memory.
"""

import pytest

from board.facts.rule_sets import rule_set

HOME = rule_set("home")
LB = 0.45359237  # kg, exactly: NIST Handbook 44, appendix C


def f(fahrenheit: float) -> float:
    """°F in °C, by definition (NIST SP 811, B.8)."""
    return (fahrenheit - 32) / 1.8


# FoodSafety.gov, safe minimum internal temperatures: °F, °C, minutes of rest.
COOK = [
    ("whole cut", 145, 63, 3),
    ("injected meat", 145, 63, 3),  # USDA FSIS on tenderized beef, 2015
    ("ground meat", 160, 71, 0),
    ("eggs", 160, 71, 0),  # egg dishes
    ("held eggs", 160, 71, 0),
    ("poultry", 165, 74, 0),
    ("stuffed", 165, 74, 0),
    ("leftovers", 165, 74, 0),
    ("casserole", 165, 74, 0),
    ("fish", 145, 63, 0),
]


@pytest.mark.parametrize(("food_class", "fahrenheit", "celsius", "rest"), COOK)
def test_safe_minimum_internal_temperatures(food_class: str, fahrenheit: int, celsius: int, rest: int) -> None:
    for at in (f(fahrenheit), celsius, f(fahrenheit + 1), celsius + 1):
        assert HOME.cooked_enough(food_class, at, 0, rest)
    for below in (f(fahrenheit - 1), min(celsius, f(fahrenheit)) - 0.01):
        assert not HOME.cooked_enough(food_class, below, 60, 60)
    if rest:
        assert not HOME.cooked_enough(food_class, celsius, 0, rest - 0.1)
        assert HOME.cooked_enough(food_class, celsius, 0, rest + 0.1)


def test_a_whole_cut_as_hot_as_ground_meat_need_not_rest() -> None:
    """Our reading: 160 °F does for ground meat without a rest, of which more is asked."""
    assert HOME.cooked_enough("whole cut", f(160), 0, 0)
    assert not HOME.cooked_enough("whole cut", f(159), 0, 0)


def test_at_home_there_is_no_table_of_roasts() -> None:
    """FDA Food Code 3-401.11(B) would let 140 °F pass after 12 min."""
    assert HOME.roast_hold_seconds(f(140)) is None
    assert not HOME.cooked_enough("whole cut", f(140), 12, 3, roast=True)


@pytest.mark.parametrize(
    ("celsius", "hot", "cold"),
    [(f(140), True, False), (60, True, False), (59.99, False, False), (f(138), False, False), (f(141), True, False),
     (f(40), False, True), (4, False, True), (4.4, False, True), (4.5, False, False), (f(41), False, False)],
)  # fmt: skip
def test_the_danger_zone_is_40_to_140_fahrenheit(celsius: float, hot: bool, cold: bool) -> None:
    """Hot food at 140 °F/60 °C or above, the fridge at 40 °F/4 °C or below."""
    assert HOME.hot_holding.at_least(celsius) is hot
    assert HOME.danger_high.at_least(celsius) is hot
    assert HOME.cold_holding.at_most(celsius) is cold
    assert HOME.danger_low.at_most(celsius) is cold


@pytest.mark.parametrize(("air", "hours"), [(None, 2), (-5, 2), (20, 2), (f(89.9), 2), (f(90), 2), (32, 2), (f(90.1), 1),
                                            (32.3, 1), (f(100), 1)])  # fmt: skip
def test_two_hours_out_and_one_when_the_air_is_above_90_fahrenheit(air: float | None, hours: int) -> None:
    assert HOME.out_limit(air).minutes == hours * 60


def test_at_home_time_alone_changes_nothing() -> None:
    """A household has no written procedure; FDA Food Code 3-501.19 would give 4 or 6 h."""
    for air in (None, 20, f(95)):
        assert HOME.out_limit(air, by_time_alone=True, warmest_celsius=10) == HOME.out_limit(air)


def test_leftovers_are_reheated_to_165_fahrenheit() -> None:
    """The two hours are those of the danger zone."""
    assert HOME.reheat.degrees.at_least(f(165))
    assert HOME.reheat.degrees.at_least(74)
    assert not HOME.reheat.degrees.at_least(f(164.9))
    assert HOME.reheat.within_minutes == 120


@pytest.mark.parametrize(
    ("to_70", "to_41", "in_time"), [(60, 354, True), (126, 186, False), (120, 360, True), (120, 361, False)]
)
def test_cooling_goes_by_the_two_stages_of_the_retail_code_and_says_so(
    to_70: float, to_41: float, in_time: bool
) -> None:
    """FDA Food Code 3-501.14(A)."""
    assert HOME.cooled_in_time(to_70, to_41) is in_time
    assert all("3-501.14" in stage.source for stage in HOME.cooling)


# FoodSafety.gov, cold food storage chart, days in the fridge.
LIVES = [
    ("soup or stew", 3, 4),
    ("cooked meat or poultry", 3, 4),
    ("dressed salad", 3, 4),
    ("raw whole cut", 3, 5),
    ("raw poultry", 1, 2),
    ("raw ground meat", 1, 2),
    ("raw fish", 1, 3),
    ("raw egg whites or yolks", 2, 4),
    ("hard-cooked eggs", 7, 7),
    ("custard", 3, 4),  # custard pies; from memory
]


@pytest.mark.parametrize(("life_class", "lower", "upper"), LIVES)
def test_days_in_the_fridge(life_class: str, lower: int, upper: int) -> None:
    """Past the lower figure mind, past the upper stop; the calendar day counts for nothing at home."""
    assert HOME.fridge_verdict(life_class, lower - 0.1, 30) == "fine"
    assert HOME.fridge_verdict(life_class, lower, 30) == "fine"
    assert HOME.fridge_verdict(life_class, lower + 0.1, 1) == ("mind" if lower < upper else "stop")
    assert HOME.fridge_verdict(life_class, upper, 1) == ("mind" if lower < upper else "fine")
    assert HOME.fridge_verdict(life_class, upper + 0.1, 1) == "stop"


@pytest.mark.parametrize(
    ("pounds", "days"), [(0, 0), (0.5, 1), (3.9, 1), (4, 1), (4.1, 2), (8, 2), (8.1, 3), (12, 3), (20, 5)]
)
def test_a_day_in_the_fridge_for_every_four_pounds_begun(pounds: float, days: int) -> None:
    """USDA FSIS, safe defrosting: 24 h for each 4-5 lb; the longer is taken."""
    assert HOME.thaw_fridge_minutes(pounds * LB) == days * 24 * 60


@pytest.mark.parametrize(
    ("pounds", "minutes"), [(0, 0), (0.5, 30), (1, 30), (1.01, 60), (2, 60), (3.5, 120), (12, 360)]
)
def test_half_an_hour_in_cold_water_for_every_pound_begun(pounds: float, minutes: int) -> None:
    """USDA FSIS, safe defrosting: 30 min a pound, the water changed every 30 min, then cooked at once."""
    assert HOME.thaw_water_minutes(pounds * LB) == minutes
    assert HOME.thaw.change_water_minutes == 30
    assert "cooked at once" in HOME.thaw.source


def test_a_kilogram_is_more_than_two_pounds() -> None:
    """1 kg is 2.2 lb: three pounds begun."""
    assert HOME.thaw_water_minutes(1) == 90
    assert HOME.thaw_fridge_minutes(1.8) == 24 * 60  # 3.97 lb
    assert HOME.thaw_fridge_minutes(1.9) == 48 * 60  # 4.19 lb
