"""Hours and numbers as hosts write them bound courses; they are never part of a dish's name, nor lost."""

from datetime import date

import pytest

from board.importing.starter.menu import Menu, read_menu
from board.importing.starter.not_a_menu import NotAMenu


def read(text: str) -> Menu:
    return read_menu(f"5 Dec 2026, 6 guests at 18:00\n{text}", date(2026, 11, 29))


def courses(text: str) -> list[tuple[str | None, tuple[str, ...]]]:
    return [(course.at, course.dishes) for course in read(text).courses]


@pytest.mark.parametrize(
    "text",
    [
        "18:45 pea soup\n19:45 roast duck, beans\n21:00 plum tart",
        "18:45: pea soup\n19:45: roast duck, beans\n21:00: plum tart",
        "6.45pm: pea soup\n7.45pm - roast duck, beans\n9pm plum tart",
        "pea soup 18:45\nroast duck, beans 19:45\nplum tart at 21:00",
        "pea soup, 18:45\nroast duck; beans - on the table 19:45\nplum tart (21:00)",
        "18:45 pea soup, 19:45 roast duck\nbeans\n21:00 plum tart",
        "Starter: pea soup, 18:45\nMain: roast duck, beans, 19:45\nSweet: plum tart 21:00",
        "Starter\n18:45 pea soup\nMain\n19:45 roast duck\nbeans\nSweet\nplum tart 21:00",
    ],
)
def test_an_hour_bounds_a_course(text: str) -> None:
    assert courses(text) == [("18:45", ("pea soup",)), ("19:45", ("roast duck", "beans")), ("21:00", ("plum tart",))]


def test_an_hour_after_a_named_course_begins_the_next() -> None:
    assert courses("Nibbles: olives\n19:00: pea soup\n20:00: roast duck") == [
        (None, ("olives",)), ("19:00", ("pea soup",)), ("20:00", ("roast duck",)),
    ]  # fmt: skip


@pytest.mark.parametrize("first", ["1. pea soup", "1. Starter: pea soup", "1) pea soup"])
def test_numbered_lines_are_courses(first: str) -> None:
    dishes = [dishes for _, dishes in courses(f"{first}\n2. barley risotto\n3. roast duck, beans\n4. plum tart")]

    assert dishes == [("pea soup",), ("barley risotto",), ("roast duck", "beans"), ("plum tart",)]


def test_a_numbered_list_under_a_course_is_its_dishes() -> None:
    assert courses("Main:\n1. roast duck\n2. beans") == [(None, ("roast duck", "beans"))]


def test_a_second_hour_is_told() -> None:
    menu = read("Main 19:45: roast duck, beans 21:00")

    assert [(course.at, course.dishes) for course in menu.courses] == [("19:45", ("roast duck", "beans"))]
    assert any("21:00" in note for note in menu.notes)


def test_an_hour_that_cannot_be_is_told() -> None:
    with pytest.raises(NotAMenu):
        read("pea soup 25:00\nroast duck")
