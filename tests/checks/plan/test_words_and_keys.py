"""plan 19: the words of a step against its keys: how long, how hot, where, and before or after the guests come."""

import pytest

from board.checks.plan.words_and_keys import words_say_what_keys_say
from board.plan.snag import Snag, Weight
from tests.checks.plan.kept_safe import plan


def snags(step: str, *more: str) -> list[Snag]:
    return words_say_what_keys_say(plan("\n".join(f"- {{step: {each}}}" for each in (step, *more))))


@pytest.mark.parametrize(
    ("step", "says"),
    [
        ("simmer the sauce for 20 minutes, takes: 5 min, where: stovetop", "20 min, and `takes` 5 min"),
        ("braise the cheeks for 1 h 15, takes: 20 min, where: stovetop", "1 h 15, and `takes` 20 min"),
        ("poach the pears half an hour, takes: 10 min", "30 min, and `takes` 10 min"),
        ("let it prove two hours, takes: 30 to 40 to 50 min", "2 h, and `takes` 30 to 50 min"),
        ("'rest 40 min, then carve', takes: 15 min", "40 min, and `takes` 15 min"),
        ("marinate the tofu overnight, takes: 30 min", "overnight, and `takes` 30 min"),
        ("'roast 1 to 1,5 hours', takes: 25 min, where: oven at 180 C", "1 h, and `takes` 25 min"),
        ("simmer for 10 minutes, takes: 2 h, where: stovetop", "10 min, and `takes` 2 h"),
        ("chill for 20 min, takes: 4 h", "20 min, and `takes` 4 h"),
    ],
)
def test_another_length_is_told(step: str, says: str) -> None:
    (snag,) = snags(step)

    assert (snag.code, snag.weight) == ("plan 19", Weight.MIND)
    assert says in snag.message
    assert snag.place is not None
    assert "step:" in snag.place.text


@pytest.mark.parametrize(
    "step",
    [
        "simmer the sauce for 20 minutes, takes: 20 min, where: stovetop",
        "simmer the sauce for 20 minutes, takes: 18 min, where: stovetop",
        "simmer 1½ hours with the lid on, takes: 1 h 30, where: stovetop",
        "simmer for 20 to 30 minutes, takes: 25 min, where: stovetop",
        "simmer for 20 to 30 minutes, takes: 20 to 30 to 40 min, where: stovetop",
        "'rest 10 min, then carve', takes: 20 min",
        "'fry for 3 minutes a side', takes: 6 min, where: stovetop",
        "roast 25 minutes a kilo, takes: 20 min, where: oven at 180 C",
        "baste every 30 minutes, takes: 5 min",
        "take it out 1 hour before dinner, takes: 5 min",
        "turn after 40 minutes, takes: 5 min",
        "slice the 24-hour pickles, takes: 5 min",
        "spread the 36 months old cheese, takes: 5 min",
        "soak up to 12 hours, takes: 2 h",
        "uncover for the last 20 minutes, takes: 2 min",
        "bake the overnight oats, takes: 30 min, where: oven at 180 C",
        "shape the overnight dough, takes: 15 min",
        "soak the beans overnight, takes: 9 h",
        "soak the beans overnight, takes: 10 min, day: day before",
        "fry for 5 minutes, takes: 20 min, where: stovetop",
        "whip for 5 minutes, takes: 5 min, or: [{where: stovetop, takes: 3 min}]",
        "'boil 2 l stock, reduce by half, 500 ml left', takes: 5 min, where: stovetop",
    ],
)
def test_the_same_length_a_share_of_it_and_other_figures_are_not(step: str) -> None:
    assert snags(step) == []


def test_a_wait_after_the_step_counts_with_it() -> None:
    rest = "rest for 30 minutes, takes: 2 min"

    assert snags(rest, "carve, takes: 5 min, after: 'rest for 30 minutes, at least 30 min'") == []
    assert len(snags(rest, "carve, takes: 5 min")) == 1


@pytest.mark.parametrize(
    ("step", "says"),
    [
        (
            "roast the squash at 200 C, takes: 40 min, where: oven at 160 C",
            "200 °C (392 °F), and `where` 160 °C (320 °F)",
        ),
        ("bake at 350°F, takes: 40 min, where: oven at 220 C", "176.7 °C (350 °F), and `where` 220 °C (428 °F)"),
        (
            "bake at 220 C, takes: 40 min, where: oven at 180 C (170 to 190 C)",
            "220 °C (428 °F), and `where` 180 °C (356 °F)",
        ),
    ],
)
def test_another_heat_is_told(step: str, says: str) -> None:
    (snag,) = snags(step)

    assert says in snag.message


@pytest.mark.parametrize(
    "step",
    [
        "roast the squash at 200 C, takes: 40 min, where: oven at 200 C",
        "bake at 350 F, takes: 40 min, where: oven at 180 C",
        "bake at 200 C, takes: 40 min, where: oven at 180 C (170 to 200 C)",
        "'bake at 220 C, then at 180 C', takes: 40 min, where: oven at 180 C",
        "fry at 170 C, takes: 10 min, where: stovetop",
        "roast to 63 C, takes: 40 min, where: oven at 200 C",
        "roast until at 60 C in the middle, takes: 40 min, where: oven at 200 C",
    ],
)
def test_the_same_heat_is_not(step: str) -> None:
    assert snags(step) == []


@pytest.mark.parametrize(
    ("step", "says"),
    [
        (
            "braise the leeks in the oven, takes: 40 min, where: stovetop",
            "in the oven, and it is planned on the stovetop",
        ),
        ("roast the leeks in a hot oven, takes: 40 min", "in the oven, and it is planned at the worktop"),
        ("simmer on the hob, takes: 40 min, where: oven at 120 C", "on the stovetop, and it is planned in the oven"),
        ("chill it in the fridge, takes: 2 h, where: worktop", "in the fridge, and it is planned at the worktop"),
        ("leave it in the freezer, takes: 2 h, where: fridge", "in the freezer, and it is planned in the fridge"),
    ],
)
def test_another_place_is_told(step: str, says: str) -> None:
    (snag,) = snags(step)

    assert says in snag.message


@pytest.mark.parametrize(
    "step",
    [
        "roast the leeks in the oven, takes: 40 min, where: oven at 180 C",
        "put the plates in the oven, takes: 2 min, where: worktop",
        "make room in the fridge, takes: 5 min, where: worktop",
        "check the bird in the oven, takes: 2 min, where: worktop",
        "brown the chops and finish in the oven, takes: 20 min, where: stovetop",
        "warm it on the hob, takes: 5 min, where: worktop, or: [{where: stovetop}]",
        "thaw it in the fridge, takes: 20 h, where: fridge",
        "cut the butter that is in the fridge, takes: 10 min, where: worktop",
    ],
)
def test_the_same_place_and_a_hand_that_only_goes_there_are_not(step: str) -> None:
    assert snags(step) == []
