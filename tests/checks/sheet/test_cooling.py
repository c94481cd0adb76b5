"""food 14: how what was hot falls, by the estimate, against the two stages.

Stages: FDA Food Code 3-501.14(A): 135 to 70 °F within 2 h, and to 41 °F within 6 h in all. Newton's law: the worked
example 86 → 65 °C in 15 min at 21 °C (k = 0.02601 a minute) is recomputed from the law; Dickerson & Read 1973: twice
as deep takes four times as long.
"""

import math

import pytest

from board.checks.sheet.cooling import Piece, fall_times
from board.facts.cooling import Estimate
from board.facts.rule_sets import rule_set
from tests.checks.sheet.suppers import line_of, said, supper, weights

STAGES = rule_set("retail").cooling


def newton(constant: float, ambient: float) -> Estimate:
    return Estimate(constant, ambient, ())


def test_one_piece_falls_by_newtons_law() -> None:
    """57 to 21 °C at 4 °C with k a minute: ln(53/17)/k; to 5 °C: ln(53/1)/k; by hand from T = Ta + (T0 − Ta)e^(−kt)."""
    (first, last), passed = fall_times([Piece(1000, newton(0.02, 4))], 57, STAGES)

    assert first == pytest.approx(math.log(53 / 17) / 0.02)
    assert last == pytest.approx(math.log(53) / 0.02)
    assert passed == 1000


def test_minutes_above_the_first_stage_do_not_count() -> None:
    """86 → 65 °C in 15 min at 21 °C gives k = 0.02601; from 86 to 57 °C it is ln(65/36)/k = 22.72 min."""
    constant = math.log(65 / 44) / 15
    assert constant == pytest.approx(0.02601, abs=5e-6)

    _, passed = fall_times([Piece(100, newton(constant, 21))], 86, STAGES)

    assert passed == pytest.approx(100 - math.log(65 / 36) / constant)


def test_pieces_follow_one_another_and_what_is_kept_hot_does_not_fall() -> None:
    whole, _ = fall_times([Piece(300, newton(0.02, 4))], 57, STAGES)
    split, _ = fall_times([Piece(25, newton(0.02, 4)), Piece(275, newton(0.02, 4))], 57, STAGES)
    hot_first, _ = fall_times([Piece(60, None), Piece(300, newton(0.02, 4))], 60, STAGES)
    straight, _ = fall_times([Piece(300, newton(0.02, 4))], 60, STAGES)

    assert split == pytest.approx(whole)
    assert hot_first == pytest.approx(straight)


def test_the_last_minute_is_in_time() -> None:
    exact = newton(0.02, 4).minutes_to(57, STAGES[0].end.celsius)

    assert fall_times([Piece(exact, newton(0.02, 4))], 57, STAGES)[0][0] == exact


def test_what_is_below_hot_holding_counts_while_it_is_kept_warm() -> None:
    """FDA Food Code 3-501.16(A)(1): hot is 57 °C (135 °F) or above, and at 57 °C the hour has not begun."""
    assert fall_times([Piece(60, None), Piece(300, newton(0.02, 4))], 57, STAGES)[1] == 300
    assert fall_times([Piece(60, None), Piece(300, newton(0.02, 4))], 56, STAGES)[1] == 360


def test_what_never_gets_there_is_infinite() -> None:
    assert fall_times([Piece(600, newton(0.05, 20))], 57, STAGES)[0][1] == math.inf
    assert fall_times([Piece(60, None)], 90, STAGES) == ([math.inf, math.inf], 0.0)


def chilled(cools: str, *, minutes: int = 30, keeps: str = "9 min in the room") -> str:
    return f"""
    - {{step: boil it, where: stovetop, takes: 30 min, day: day before, keeps: 1 h in the room}}
    - step: cool it
      takes: {minutes} min
      {cools}
      keeps: {keeps}
      after: boil it, at once
    - {{step: chill it, where: 'fridge, 2 litres', takes: 9 h, keeps: 2 days in the fridge, after: 'cool it, at once'}}
    """


@pytest.mark.slow
def test_f14_shallow_in_ice_is_in_time_and_deep_in_the_room_is_not() -> None:
    assert weights(supper(chilled("cools: 3 cm deep, metal, ice bath")), "food 14") == []

    (snag,) = said(supper(chilled("cools: 12 cm deep, plastic, room", minutes=120)), "food 14")
    assert snag.weight.name == "MIND"
    assert line_of(snag) == "cools: 12 cm deep, plastic, room"
    for words in ("by an estimate", "from 57 °C (135 °F)", "21 °C (70 °F)", "2 h allowed", "5 °C (41 °F)",
                  "6 h allowed", "3-501.14(A)(2)"):  # fmt: skip
        assert words in snag.message
    for words in ("a probe decides", "Taken for granted: 100 °C", "12 cm deep, uncovered, in plastic", "no source"):
        assert words in snag.mend


def test_f14_is_judged_by_the_path_only_as_far_as_it_goes() -> None:
    """Reheated after an hour, it has broken neither stage, however deep it stood."""
    steps = """
    - {step: boil it, where: stovetop, takes: 30 min}
    - {step: cool it, takes: 60 min, cools: '12 cm deep, plastic, room', after: 'boil it, at once'}
    - {step: warm it, where: stovetop, takes: 9 min, after: 'cool it, at once'}
    """

    assert weights(supper(steps), "food 14") == []


@pytest.mark.parametrize(
    ("keeps", "gap", "wanted"),
    [
        ("2 days in the fridge", "", ["ASK"]),
        ("2 days in the fridge", ", after: 'boil it, at least 1 min, at most 1 min'", ["ASK"]),
        ("2 days in the fridge", ", after: 'boil it, at once'", []),
        ("3 h in the room", ", after: 'boil it, at least 61 min'", ["ASK"]),
        ("3 h in the room", ", after: 'boil it, at most 55 min'", []),  # and 5 of dressing: an hour at the most
        ("3 h hot", ", after: 'boil it, at least 2 h'", []),
    ],
)
def test_f14_asks_how_it_cools_where_nothing_is_said(keeps: str, gap: str, wanted: list[str]) -> None:
    steps = f"""
    - step: boil it
      where: stovetop
      takes: 30 min
      keeps: {keeps}
    - {{step: dress it, takes: 5 min{gap}, before: 'serve Main, at once'}}
    """
    found = said(supper(steps), "food 14")

    assert [snag.weight.name for snag in found] == wanted
    assert [line_of(snag) for snag in found] == [f"keeps: {keeps}"] * len(wanted)
    assert all("cools: 5 cm deep, metal, ice bath" in snag.mend for snag in found)


@pytest.mark.parametrize(
    ("heats", "wanted"),
    [
        ("until: 90 C", ["ASK"]),
        ("until: 60 C", ["ASK"]),
        ("until: 40 C", []),  # warm milk; hot is 140 °F (60 °C): USDA FSIS, danger zone
        ("cooks: fish, until: 50 C", ["ASK"]),  # cooked, though not to that
        ("until: 90 C, perishable: no", []),
        ("perishable: no", []),
    ],
)
def test_f14_hot_is_what_reached_hot_holding_or_was_cooked(heats: str, wanted: list[str]) -> None:
    steps = f"""
    - {{step: heat it, where: stovetop, takes: 30 min, {heats}, keeps: 2 days in the fridge}}
    - {{step: dress it, takes: 5 min, after: 'heat it, at least 2 h'}}
    """

    assert weights(supper(steps), "food 14") == wanted


def test_f14_hours_kept_hot_are_not_hours_of_cooling() -> None:
    steps = """
    - {step: boil it, where: stovetop, takes: 30 min, day: day before, keeps: 6 h hot}
    - {step: cool it, takes: 30 min, cools: '3 cm deep, metal, ice bath', after: 'boil it, at least 5 h',
       keeps: 9 min in the room}
    - {step: chill it, where: 'fridge, 2 litres', takes: 9 h, keeps: 2 days in the fridge, after: 'cool it, at once'}
    """

    assert weights(supper(steps), "food 14") == []


def test_f14_the_freezer_cools_what_the_fridge_does_not_in_time() -> None:
    """6 cm deep in metal, half an hour in the room, then at 4 °C or at −18 °C."""
    steps = chilled("cools: 6 cm deep, metal, room")
    (snag,) = said(supper(steps), "food 14")

    assert "21 °C (70 °F) after 2 h 53" in snag.message
    assert "6 cm deep, uncovered, in metal; fridge at 4 °C" in snag.mend
    assert weights(supper(steps.replace("'fridge, 2 litres'", "'freezer, 2 litres'")), "food 14") == []


@pytest.mark.parametrize(("first", "second"), [("soup", "sauce"), ("sauce", "soup")])
def test_f14_of_what_cools_in_one_step_the_slowest_is_told(first: str, second: str) -> None:
    """The sauce stood a while before it and the soup went into the cooling: one line, of the sauce."""
    cooked = {
        "soup": "{step: boil the soup, where: stovetop, takes: 30 min, after: nothing, not after: day before 12:30, "
        "not before: day before 12:00, keeps: 1 h in the room}",
        "sauce": "{step: boil the sauce, where: stovetop, takes: 30 min, after: nothing, not after: day before 12:00, "
        "not before: day before 11:30, keeps: 1 h in the room}",
    }
    steps = f"""
    - {cooked[first]}
    - {cooked[second]}
    - step: cool both
      takes: 3 h
      cools: 12 cm deep, plastic, room
      after: ['boil the soup, at once', boil the sauce]
    """
    (snag,) = said(supper(steps), "food 14")

    assert snag.message.startswith("boil the sauce:")


def test_f14_asks_at_the_first_of_several_and_names_them_all() -> None:
    steps = """
    - {step: boil it, where: stovetop, takes: 30 min, day: day before, keeps: 2 days in the fridge}
    - {step: boil more, where: stovetop, takes: 20 min, after: nothing, day: day before, keeps: 3 days in the fridge}
    - {step: dress it, takes: 5 min, after: [boil it, boil more]}
    """
    (snag,) = said(supper(steps), "food 14")

    named = snag.message.partition(":")[0].split(", ")
    assert sorted(named) == ["boil it", "boil more"]
    assert line_of(snag).startswith(f"- {{step: {named[0]},")


@pytest.mark.parametrize("bath", ["plastic", "metal", "metal, ice bath"])
def test_f14_a_deeper_pot_is_never_told_less_than_a_shallower_one(bath: str) -> None:
    """Nor is one so deep that by the estimate it stays hot all the while: Newton's law."""
    told = [weights(supper(chilled(f"cools: '{depth} cm deep, {bath}'")), "food 14") for depth in (5, 15, 25, 35)]
    assert told[-1] == ["MIND"]
    assert told == sorted(told, key=len)
