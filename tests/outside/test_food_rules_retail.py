"""The retail rules against FDA Food Code, chapter 3, row by row: just below, at and above, in both units.

Numbers read in state adoptions of the 2009 to 2017 editions; that 2022 leaves them unchanged is from memory. °C are the
code's own, written beside the °F.
"""

import pytest

from board.facts.rule_set import LIFE_CLASSES, READY_TO_EAT, Interval, fridge_days
from board.facts.rule_sets import rule_set

RETAIL, HOME = rule_set("retail"), rule_set("home")


def f(fahrenheit: float) -> float:
    """°F in °C, by definition (NIST SP 811, B.8)."""
    return (fahrenheit - 32) / 1.8


# 3-401.11(A)(1) to (3), °F, °C, seconds. (A)(2) held 15 s before the 2017 edition, 17 s since.
COOK = [
    ("fish", 145, 63, 15),
    ("whole cut", 145, 63, 15),
    ("eggs", 145, 63, 15),  # for immediate service
    ("ground meat", 155, 68, 17),
    ("injected meat", 155, 68, 17),
    ("held eggs", 155, 68, 17),
    ("poultry", 165, 74, 0),
    ("stuffed", 165, 74, 0),
    ("casserole", 165, 74, 0),  # our reading of (A)(3)
    ("leftovers", 165, 74, 15),  # 3-403.11(A)
]


@pytest.mark.parametrize(("food_class", "fahrenheit", "celsius", "seconds"), COOK)
def test_3_401_11_a_cooking_temperatures_and_times(
    food_class: str, fahrenheit: int, celsius: int, seconds: int
) -> None:
    held = seconds / 60

    for at in (f(fahrenheit), celsius, f(fahrenheit + 1), celsius + 1):
        assert RETAIL.cooked_enough(food_class, at, held)
    for below in (f(fahrenheit - 1), min(celsius, f(fahrenheit)) - 0.01):
        assert not RETAIL.cooked_enough(food_class, below, held)
    if seconds:
        assert not RETAIL.cooked_enough(food_class, celsius, (seconds - 1) / 60)
        assert RETAIL.cooked_enough(food_class, celsius, (seconds + 1) / 60)


@pytest.mark.parametrize(
    ("fahrenheit", "celsius", "seconds"), [(145, 63, 180), (150, 66, 60), (155, 68, 17), (158, 70, 0)]
)
@pytest.mark.parametrize("food_class", ["ground meat", "injected meat", "held eggs"])
def test_3_401_11_a_2_the_chart_of_other_times(food_class: str, fahrenheit: int, celsius: int, seconds: int) -> None:
    """Read: 145 °F 3 min, 150 °F 1 min, 158 °F less than a second."""
    for at in (f(fahrenheit), celsius):
        assert RETAIL.cooked_enough(food_class, at, seconds / 60)
        assert seconds == 0 or not RETAIL.cooked_enough(food_class, at, (seconds - 1) / 60)
    assert not RETAIL.cooked_enough(food_class, min(celsius, f(fahrenheit)) - 0.01, seconds / 60)


def test_what_is_asked_of_one_food_is_not_enough_for_another() -> None:
    assert not RETAIL.cooked_enough("poultry", f(155), 10)
    assert not RETAIL.cooked_enough("ground meat", f(145), 15 / 60)
    assert not RETAIL.cooked_enough("held eggs", f(145), 15 / 60)
    assert RETAIL.cooked_enough("eggs", f(145), 15 / 60)


# 3-401.11(B)(2), whole roasts: °F, °C (the tenths from memory), seconds.
ROASTS = [
    (130, 54.4, 112 * 60), (131, 55.0, 89 * 60), (133, 56.1, 56 * 60), (135, 57.2, 36 * 60), (136, 57.8, 28 * 60),
    (138, 58.9, 18 * 60), (140, 60.0, 12 * 60), (142, 61.1, 8 * 60), (144, 62.2, 5 * 60), (145, 62.8, 4 * 60),
    (147, 63.9, 134), (149, 65.0, 85), (151, 66.1, 54), (153, 67.2, 34), (155, 68.3, 22), (157, 69.4, 14), (158, 70.0, 0),
]  # fmt: skip


def test_3_401_11_b_the_table_has_these_rows_and_no_others() -> None:
    assert [(row.degrees.fahrenheit, row.degrees.celsius, row.seconds) for row in RETAIL.roasts] == ROASTS


def test_3_501_16_a_1_such_a_roast_is_held_at_130() -> None:
    assert RETAIL.roast_holding is not None
    assert (RETAIL.roast_holding.fahrenheit, RETAIL.roast_holding.celsius) == (130, 54)


@pytest.mark.parametrize(("row", "above"), [*zip(ROASTS, [None, *ROASTS[:-1]], strict=True)])
def test_3_401_11_b_a_roast_goes_by_the_row_it_reaches(
    row: tuple[int, float, int], above: tuple[int, float, int] | None
) -> None:
    fahrenheit, celsius, seconds = row

    assert RETAIL.roast_hold_seconds(f(fahrenheit)) == seconds
    assert RETAIL.roast_hold_seconds(celsius) == seconds
    assert RETAIL.roast_hold_seconds(f(fahrenheit) + 0.1) == seconds
    assert RETAIL.roast_hold_seconds(min(celsius, f(fahrenheit)) - 0.01) == (above[2] if above else None)


@pytest.mark.parametrize(
    ("fahrenheit", "row"), [(132, 131), (134, 133), (137, 136), (139, 138), (141, 140), (143, 142), (143.8, 142),
                            (146, 145), (148, 147), (150, 149), (152, 151), (154, 153), (156, 155), (157.8, 157), (212, 158)]
)  # fmt: skip
def test_3_401_11_b_between_two_rows_nothing_is_interpolated(fahrenheit: float, row: int) -> None:
    assert RETAIL.roast_hold_seconds(f(fahrenheit)) == {r: seconds for r, _, seconds in ROASTS}[row]


@pytest.mark.parametrize(("fahrenheit", "_celsius", "seconds"), ROASTS)
def test_3_401_11_b_a_whole_roast_may_be_cooked_by_the_table(fahrenheit: int, _celsius: float, seconds: int) -> None:
    assert RETAIL.cooked_enough("whole cut", f(fahrenheit), seconds / 60, roast=True)
    if fahrenheit < 145:  # from there on 15 seconds do for any whole cut
        assert not RETAIL.cooked_enough("whole cut", f(fahrenheit), (seconds - 1) / 60, roast=True)
        assert not RETAIL.cooked_enough("whole cut", f(fahrenheit), seconds / 60)
        assert not RETAIL.cooked_enough("ground meat", f(fahrenheit), seconds / 60, roast=True)


def test_below_130_fahrenheit_no_time_makes_a_roast_safe() -> None:
    assert RETAIL.roast_hold_seconds(f(129.9)) is None
    assert not RETAIL.cooked_enough("whole cut", f(129.9), 24 * 60, roast=True)


def test_3_403_11_reheating_for_hot_holding() -> None:
    """165 °F/74 °C within 2 h."""
    limit = RETAIL.reheat.degrees

    assert (limit.fahrenheit, limit.celsius, RETAIL.reheat.within_minutes) == (165, 74, 120)
    assert limit.at_least(f(165))
    assert not limit.at_least(f(164.9))


@pytest.mark.parametrize(
    ("to_70", "to_41", "in_time"),
    [
        (60, 60 + 4.9 * 60, True),  # 1 h and 4.9 h: within 6 h in all, though the second stage takes more than 4
        (2.1 * 60, 2.1 * 60 + 60, False),  # 2.1 h and 1 h
        (119.9, 359.9, True),
        (120, 360, True),
        (120.1, 360, False),
        (120, 360.1, False),
        (10, 400, False),
    ],
)
def test_3_501_14_a_cooling_is_two_hours_and_six_in_all(to_70: float, to_41: float, in_time: bool) -> None:
    assert RETAIL.cooled_in_time(to_70, to_41) is in_time


def test_3_501_14_the_stages_and_cooling_from_the_rooms_warmth() -> None:
    """(A) 135 → 70 °F, 135 → 41 °F; (B) from ingredients at room temperature 41 °F within 4 h."""
    ends = [(stage.start.fahrenheit, stage.end.fahrenheit, stage.end.celsius) for stage in RETAIL.cooling]

    assert ends == [(135, 70, 21), (135, 41, 5)]
    assert RETAIL.from_room_minutes == 240


@pytest.mark.parametrize(
    ("celsius", "hot", "cold"),
    [(f(135), True, False), (57, True, False), (56.9, False, False), (f(134), False, False), (f(138), True, False),
     (f(41), False, True), (5, False, True), (5.1, False, False), (f(42), False, False), (f(40), False, True)],
)  # fmt: skip
def test_3_501_16_holding(celsius: float, hot: bool, cold: bool) -> None:
    """Hot at 135 °F/57 °C or above, cold at 41 °F/5 °C or below."""
    assert RETAIL.hot_holding.at_least(celsius) is hot
    assert RETAIL.cold_holding.at_most(celsius) is cold


def test_138_fahrenheit_passes_retail_hot_holding_and_fails_home() -> None:
    """3-501.16: 135 °F; USDA FSIS: 140 °F."""
    assert RETAIL.hot_holding.at_least(f(138))
    assert not HOME.hot_holding.at_least(f(138))


@pytest.mark.parametrize("life_class", READY_TO_EAT)
def test_3_501_17_what_is_ready_to_eat_goes_on_the_eighth_day(life_class: str) -> None:
    """Seven days, the day of preparation is day 1; elapsed hours do not count."""
    assert RETAIL.fridge_verdict(life_class, 0, 1) == "fine"
    assert RETAIL.fridge_verdict(life_class, 6.9, 7) == "fine"
    assert RETAIL.fridge_verdict(life_class, 6.1, 8) == "stop"
    assert RETAIL.fridge_verdict(life_class, 12, 13) == "stop"


def test_3_501_17_freezing_stops_the_clock_and_does_not_reset_it() -> None:
    """Three days, a month frozen, four more: seven in all, and an eighth is too many."""
    kept = [Interval(3), Interval(30, frozen=True), Interval(4)]

    assert fridge_days(kept) == 7
    assert RETAIL.fridge_verdict("soup or stew", fridge_days(kept), int(fridge_days(kept))) == "fine"
    again = [*kept, Interval(30, frozen=True), Interval(1)]
    assert RETAIL.fridge_verdict("soup or stew", fridge_days(again), int(fridge_days(again))) == "stop"


@pytest.mark.parametrize("life_class", sorted(set(LIFE_CLASSES) - set(READY_TO_EAT)))
def test_what_is_raw_keeps_as_long_as_at_home(life_class: str) -> None:
    """The Food Code gives no life to what is raw; FoodSafety.gov's chart does."""
    for days in (0.5, 1, 1.1, 2, 2.1, 3.1, 4.1, 5, 5.1, 9):
        assert RETAIL.fridge_verdict(life_class, days, 1) == HOME.fridge_verdict(life_class, days, 1)


@pytest.mark.parametrize(
    ("warmest", "hours"), [(None, 4), (f(69), 6), (f(70), 6), (21, 6), (21.2, 4), (f(70.1), 4), (f(95), 4), (5, 6)]
)
def test_3_501_19_time_alone(warmest: float | None, hours: int) -> None:
    """4 h; 6 h if it never passes 70 °F/21 °C."""
    assert RETAIL.out_limit(20, by_time_alone=True, warmest_celsius=warmest).minutes == hours * 60
    assert RETAIL.out_limit(f(95), by_time_alone=True, warmest_celsius=warmest).minutes == hours * 60
    assert "3-501.19" in RETAIL.out_limit(20, by_time_alone=True).source


@pytest.mark.parametrize(
    ("air", "hours"), [(None, 2), (20, 2), (f(90), 2), (32, 2), (32.3, 1), (f(90.1), 1), (f(95), 1)]
)
def test_without_such_a_procedure_the_home_rule_holds_and_says_so(air: float | None, hours: int) -> None:
    """USDA FSIS, danger zone."""
    limit = RETAIL.out_limit(air, warmest_celsius=10)

    assert limit.minutes == hours * 60
    assert "home rule" in limit.source
