"""What things on a table are called, and where they lie. Common practice, no source."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.facts.tableware import (
    COVERS,
    LEAST_WASH_MINUTES,
    WHOLE_MEAL,
    at_hand,
    counted,
    piece_key,
    several,
    spot_of,
    usual_cover,
    wash_minutes,
)


@pytest.mark.parametrize(
    ("many", "one"),
    [
        ("soup bowls", "soup bowl"),
        ("Dessert  Knives", "dessert knife"),
        ("wine glasses", "wine glass"),
        ("serving dishes", "serving dish"),
        ("glass", "glass"),
        ("spoons for the sauce", "spoon for the sauce"),
        ("salad tongs", "salad tongs"),
    ],
)
def test_one_and_several_of_a_thing_are_the_same_thing(many: str, one: str) -> None:
    assert piece_key(many) == one
    assert piece_key(one) == one


@given(st.text(max_size=30))
def test_a_name_once_folded_stays_as_it_is(text: str) -> None:
    assert piece_key(piece_key(text)) == piece_key(text)


@pytest.mark.parametrize("piece", sorted({piece for cover in COVERS for piece in cover.pieces} | {*WHOLE_MEAL}))
def test_every_usual_piece_has_a_place_and_comes_back_from_its_plural(piece: str) -> None:
    assert piece_key(several(piece)) == piece
    assert spot_of(piece) != "beside"


def test_a_number_goes_with_one_or_with_several() -> None:
    assert counted("dessert knife", 1) == "1 dessert knife"
    assert counted("dessert knife", 12) == "12 dessert knives"
    assert counted("serving dish", 2) == "2 serving dishes"


@pytest.mark.parametrize(
    ("piece", "spot"),
    [
        ("fish fork", "left"), ("steak knife", "right"), ("soup spoon", "right"), ("dessert spoon", "above"),
        ("dessert fork", "above"), ("side plate", "bread"), ("dinner plate", "centre"), ("red wine glass", "glass"),
        ("napkin", "left"), ("napkin ring", "beside"), ("coffee cup", "beside"), ("spoon for the soup", "right"),
        ("serving spoon", "beside"), ("place card", "beside"),
    ],
)  # fmt: skip
def test_each_piece_lies_in_its_place(piece: str, spot: str) -> None:
    assert spot_of(piece) == spot


@pytest.mark.parametrize(
    ("course", "dish", "main_follows", "first"),
    [
        ("Broth", "Celeriac", True, "soup bowl"),
        ("Soups", "x", True, "soup bowl"),
        ("First", "Carrot and ginger soup, croutons", True, "soup bowl"),
        ("Main", "Leek soup", False, "dinner plate"),  # the course's own name goes first
        ("Leeks", "Pressed leeks, mustard dressing", True, "starter plate"),
        ("Cold table", "Cold roast chicken", False, "dinner plate"),
        ("Sweet", "Pears", False, "dessert plate"),
        ("Ice and apricots", "x", False, "dessert bowl"),
        ("Rice", "x", False, "dinner plate"),  # no ice
        ("Leeks", "Tart with cheese", True, "starter plate"),  # not what a dish is made with
    ],
)
def test_a_course_tells_by_its_name_what_it_is_eaten_from(
    course: str, dish: str, main_follows: bool, first: str
) -> None:
    assert usual_cover(course, dish, main_follows=main_follows)[0] == first


def test_a_house_lays_what_it_has_instead() -> None:
    assert at_hand("dinner fork", frozenset({"fork", "spoon"})) == "fork"
    assert at_hand("dinner fork", frozenset({"fork", "dinner fork"})) == "dinner fork"
    assert at_hand("dinner fork", frozenset({"spoon"})) == "dinner fork"


def test_washing_takes_half_a_minute_a_piece_and_never_less_than_three() -> None:
    assert [wash_minutes(pieces) for pieces in (1, 6, 7, 24)] == [LEAST_WASH_MINUTES, 3, 4, 12]
