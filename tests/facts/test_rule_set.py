"""Rule sets as data: how they are found, what each must hold, and what no verdict may ever do."""

import ast
import math
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.base.words import to_fahrenheit
from board.facts import rules as room_of_rules
from board.facts.degrees import to_celsius
from board.facts.limits import Cook, Degrees
from board.facts.rule_set import FOOD_CLASSES, LIFE_CLASSES, READY_TO_EAT, Interval, RuleSet, fridge_days
from board.facts.rule_sets import DEFAULT_RULES, RULE_SET_NAMES, rule_set

FOLDER = Path(next(iter(room_of_rules.__path__)))
SETS = [rule_set(name) for name in RULE_SET_NAMES]
GRADES = ("fine", "mind", "stop")

any_set = st.sampled_from(SETS)
food_classes = st.sampled_from(FOOD_CLASSES)
life_classes = st.sampled_from(LIFE_CLASSES)
figures = [figure for each in SETS for limit in each.every_limit() for figure in limit.figures]
# Temperatures of a kitchen, many of them just beside a limit.
temperatures = st.floats(-5, 110) | st.builds(
    lambda figure, off: figure + off, st.sampled_from(figures), st.sampled_from([-0.5, -0.01, 0, 0.01, 0.5])
)
minutes = st.floats(0, 600) | st.sampled_from([17 / 60, 0.25, 3, 4, 5, 112, 120, 240, 360])
days = st.floats(0, 12) | st.integers(0, 12)


# --- what there is -------------------------------------------------------------------------------------------------
def test_every_file_of_the_folder_is_a_set_of_its_name() -> None:
    assert set(RULE_SET_NAMES) == {file.stem for file in FOLDER.glob("*.py")} - {"__init__"}
    assert {"home", "retail"} <= set(RULE_SET_NAMES)
    assert DEFAULT_RULES == "home"
    for name in RULE_SET_NAMES:
        assert rule_set(name).name == name


@pytest.mark.parametrize("name", ["", "Home", "__init__", "home.py", "os", "..limits"])
def test_a_set_that_is_not_there_is_a_key_error(name: str) -> None:
    with pytest.raises(KeyError):
        rule_set(name)


@pytest.mark.parametrize("name", RULE_SET_NAMES)
def test_a_file_of_rules_holds_nothing_but_its_rules(name: str) -> None:
    body = ast.parse((FOLDER / f"{name}.py").read_text(encoding="utf-8")).body

    assert isinstance(body[0], ast.Expr)  # the docstring, which says whose rules they are
    assert all(isinstance(node, ast.ImportFrom) for node in body[1:-1])
    assert isinstance(body[-1], ast.Assign)
    assert ast.unparse(body[-1].targets[0]) == "RULES"


@pytest.mark.parametrize("rules", SETS, ids=RULE_SET_NAMES)
def test_every_limit_names_where_it_is_from(rules: RuleSet) -> None:
    cooks = [each for cook in rules.cook.values() for each in (cook, *cook.also)]
    records = [*cooks, rules.reheat, rules.out, *rules.cooling, *rules.fridge_lives.values(), rules.thaw]
    if rules.time_alone is not None:
        records.append(rules.time_alone)
    named = [getattr(rules, field) for field in rules.__struct_fields__ if field.endswith("_source")]

    for source in (*(record.source for record in records), *named):
        assert len(source) > 10, rules.name
    assert len(named) == 6


@pytest.mark.parametrize("rules", SETS, ids=RULE_SET_NAMES)
def test_every_set_is_sound_in_itself(rules: RuleSet) -> None:
    assert set(rules.cook) <= set(FOOD_CLASSES)
    assert set(rules.fridge_lives) <= set(LIFE_CLASSES)
    assert rules.ready_to_eat_days is not None or set(READY_TO_EAT) <= set(rules.fridge_lives)
    assert all(0 < life.lower_days <= life.upper_days for life in rules.fridge_lives.values())
    assert rules.danger_low.celsius < rules.danger_high.celsius <= rules.hot_holding.celsius
    assert rules.cold_holding.celsius <= rules.danger_low.celsius
    assert len(rules.cooling) == 2
    assert rules.cooling[0].within_minutes < rules.cooling[1].within_minutes
    assert rules.out.hot_air_minutes <= rules.out.minutes
    for limit in rules.every_limit():  # both figures are one limit, the one in °C rounded to a whole or a tenth
        assert abs(limit.figures[0] - limit.figures[1]) <= 0.5


def test_what_one_set_takes_from_another_is_the_same_in_both() -> None:
    """The retail code gives no life to what is raw, no time out without a procedure, and no times for thawing."""
    home, retail = rule_set("home"), rule_set("retail")

    for life_class, life in retail.fridge_lives.items():
        assert (life.lower_days, life.upper_days) == (
            home.fridge_lives[life_class].lower_days,
            home.fridge_lives[life_class].upper_days,
        )
    for rules in (home, retail):
        assert (rules.out.minutes, rules.out.hot_air_minutes, rules.out.hot_air) == (120, 60, Degrees(90, 32))
        assert (rules.thaw.fridge_pounds, rules.thaw.water_minutes_a_pound) == (4, 30)
        assert [stage.within_minutes for stage in rules.cooling] == [120, 360]


def test_a_class_without_a_figure_is_told_and_never_taken_for_cooked() -> None:
    for rules in SETS:
        assert rules.cook_for("moonbeams") is None
        with pytest.raises(KeyError):
            rules.cooked_enough("moonbeams", 100, 60, 60)
        with pytest.raises(KeyError):
            rules.fridge_verdict("moonbeams", 0, 1)


# --- figures in both units -----------------------------------------------------------------------------------------
@pytest.mark.parametrize("limit", sorted({limit for each in SETS for limit in each.every_limit()}, key=str), ids=str)
def test_a_limit_is_met_by_either_figure_and_by_nothing_beyond_both(limit: Degrees) -> None:
    in_c, in_f = limit.figures

    assert (in_c, in_f) == (limit.celsius, to_celsius(limit.fahrenheit, "F"))
    assert limit.at_least(in_c)
    assert limit.at_least(in_f)
    assert not limit.at_least(min(in_c, in_f) - 1e-6)
    assert limit.at_most(in_c)
    assert limit.at_most(in_f)
    assert not limit.at_most(max(in_c, in_f) + 1e-6)


@given(any_set, temperatures, food_classes, minutes, st.booleans())
def test_turning_degrees_over_and_back_changes_no_verdict(
    rules: RuleSet, celsius: float, food_class: str, held: float, roast: bool
) -> None:
    again = to_celsius(to_fahrenheit(celsius), "F")

    assert all(limit.at_least(celsius) == limit.at_least(again) for limit in rules.every_limit())
    assert all(limit.at_most(celsius) == limit.at_most(again) for limit in rules.every_limit())
    assert rules.roast_hold_seconds(celsius) == rules.roast_hold_seconds(again)
    assert rules.cooked_enough(food_class, celsius, held, 3, roast=roast) == rules.cooked_enough(
        food_class, again, held, 3, roast=roast
    )
    for alone in (False, True):
        assert rules.out_limit(celsius, by_time_alone=alone, warmest_celsius=celsius) == rules.out_limit(
            again, by_time_alone=alone, warmest_celsius=again
        )


@pytest.mark.parametrize("rules", SETS, ids=RULE_SET_NAMES)
@pytest.mark.parametrize("food_class", FOOD_CLASSES)
def test_either_figure_of_a_cooking_limit_cooks(rules: RuleSet, food_class: str) -> None:
    cook = rules.cook_for(food_class)
    assert cook is not None
    for each in (cook, *cook.also):
        for celsius in each.degrees.figures:
            assert rules.cooked_enough(food_class, celsius, each.hold_seconds / 60, each.rest_minutes)


# --- what no verdict may do ----------------------------------------------------------------------------------------
@given(any_set, food_classes, temperatures, st.floats(0, 40), minutes, minutes, st.booleans())
def test_less_heat_never_cooks_better(
    rules: RuleSet, food_class: str, celsius: float, cooler: float, held: float, rested: float, roast: bool
) -> None:
    if not rules.cooked_enough(food_class, celsius, held, rested, roast=roast):
        assert not rules.cooked_enough(food_class, celsius - cooler, held, rested, roast=roast)
        assert not rules.cooked_enough(food_class, celsius, held / 2, rested, roast=roast)
        assert not rules.cooked_enough(food_class, celsius, held, rested / 2, roast=roast)


@given(any_set, temperatures, st.floats(0, 40))
def test_a_cooler_roast_is_held_no_shorter(rules: RuleSet, celsius: float, cooler: float) -> None:
    here, there = rules.roast_hold_seconds(celsius), rules.roast_hold_seconds(celsius - cooler)

    assert there is None or (here is not None and here <= there)


@given(any_set, minutes, minutes, minutes)
def test_more_minutes_never_make_cooling_safer(rules: RuleSet, first: float, then: float, more: float) -> None:
    if not rules.cooled_in_time(first, first + then):
        assert not rules.cooled_in_time(first + more, first + then + more)
        assert not rules.cooled_in_time(first, first + then + more)


@given(any_set, life_classes, days, days, st.integers(1, 12), st.integers(0, 12))
def test_more_days_never_make_a_food_safer(
    rules: RuleSet, life_class: str, elapsed: float, more: float, day: int, later: int
) -> None:
    before = rules.fridge_verdict(life_class, elapsed, day)
    after = rules.fridge_verdict(life_class, elapsed + more, day + later)

    assert GRADES.index(after) >= GRADES.index(before)


@given(any_set, temperatures, temperatures, st.booleans())
def test_warmer_air_and_warmer_food_never_give_longer(rules: RuleSet, one: float, other: float, alone: bool) -> None:
    cold, warm = sorted((one, other))

    assert rules.out_limit(warm).minutes <= rules.out_limit(cold).minutes
    assert (
        rules.out_limit(20, by_time_alone=alone, warmest_celsius=warm).minutes
        <= rules.out_limit(20, by_time_alone=alone, warmest_celsius=cold).minutes
    )
    unknown = rules.out_limit(None, by_time_alone=alone).minutes
    assert unknown <= rules.out_limit(None, by_time_alone=alone, warmest_celsius=cold).minutes


@given(any_set, st.floats(0, 15), st.floats(0, 5))
def test_a_heavier_piece_never_thaws_sooner(rules: RuleSet, kg: float, more: float) -> None:
    assert rules.thaw_fridge_minutes(kg + more) >= rules.thaw_fridge_minutes(kg)
    assert rules.thaw_water_minutes(kg + more) >= rules.thaw_water_minutes(kg)


@given(st.lists(st.builds(Interval, st.floats(0, 30), st.booleans()), max_size=6))
def test_freezing_stops_the_clock_and_does_not_set_it_back(stretches: list[Interval]) -> None:
    """FDA Food Code 3-501.17."""
    unfrozen = [days for days, frozen in stretches if not frozen]

    assert fridge_days(stretches) == pytest.approx(math.fsum(unfrozen))
    assert fridge_days([*stretches, Interval(90, frozen=True)]) == fridge_days(stretches)
    assert fridge_days([*stretches, Interval(1)]) == pytest.approx(fridge_days(stretches) + 1)


def test_one_of_several_ways_is_enough() -> None:
    cook = Cook(Degrees(155, 68), 17, 0, "here", also=(Cook(Degrees(145, 63), 180, 0, "there"),))

    assert cook.done(68, 17 / 60, 0)
    assert not cook.done(67.9, 17 / 60, 0)
    assert cook.done(63, 3, 0)
    assert not cook.done(63, 2.99, 0)


@pytest.mark.parametrize("rules", SETS, ids=RULE_SET_NAMES)
def test_a_figure_that_is_none_never_makes_anything_safe(rules: RuleSet) -> None:
    nothing = math.nan

    assert not rules.cooked_enough("poultry", nothing, 60, 60)
    assert not rules.cooked_enough("whole cut", 60, nothing, nothing, roast=True)
    assert rules.roast_hold_seconds(nothing) is None
    assert not rules.cooled_in_time(nothing, 60)
    assert rules.fridge_verdict("raw poultry", nothing, 1) == "stop"
    assert rules.out_limit(nothing).minutes == rules.out.hot_air_minutes
    assert not rules.hot_holding.at_least(nothing)
    assert not rules.cold_holding.at_most(nothing)
