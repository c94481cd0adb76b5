"""A dish that the menu means for one guest is cooked for that guest, not for all."""

import pytest

from board.importing.starter.for_whom import for_some
from board.importing.starter.menu import read_menu
from tests.importing.starter.test_menu_plans import NOON

HEAD = "Sunday lunch 13:00\nGuests: Tom (no pork), Ana (vegetarian), Li (vegan), Bo\n"


def planned(main: str) -> list[tuple[str, list[str], str]]:
    """Each dish of the plan: its name, for whom only, instead of what."""
    from board.app.new_plan import from_menu

    menu = read_menu(f"{HEAD}Main: {main}", NOON.date())
    plan = from_menu(menu, "menu", {}, NOON, "UTC", None, print).file.plan
    return [(each.dish, each.only_for or [], each.instead_of or "") for each in plan.courses[0].dishes]


@pytest.mark.parametrize(
    ("main", "dishes"),
    [
        (
            "roast lamb; roast potatoes; nut roast for Ana and Li",
            [("roast lamb", [], ""), ("roast potatoes", [], ""), ("nut roast", ["Ana", "Li"], "roast lamb")],
        ),
        (
            "roast pork with mashed potatoes, or stuffed peppers for Tom",
            [("roast pork", [], ""), ("mashed potatoes", [], ""), ("stuffed peppers", ["Tom"], "roast pork")],
        ),
        (
            "beef stew (mushroom risotto for the vegetarians and Li)",
            [("beef stew", [], ""), ("mushroom risotto", ["Ana", "Li"], "beef stew")],
        ),
        ("green beans for Bo; beef stew", [("green beans", ["Bo"], ""), ("beef stew", [], "")]),
        ("ragout for a crowd", [("ragout for a crowd", [], "")]),
        ("cake for Tom's birthday", [("cake for Tom's birthday", [], "")]),
        ("fondue for Bo and the neighbours", [("fondue for Bo and the neighbours", [], "")]),
    ],
)
def test_a_dish_for_some_is_only_for_them(main: str, dishes: list[tuple[str, list[str], str]]) -> None:
    assert planned(main) == dishes


def test_it_is_told_and_counted() -> None:
    found = for_some(
        read_menu("Guests: Bo, 3 vegetarians\nMain: roast beef; nut roast for the vegetarians", NOON.date())
    )

    assert found.menu.courses[0].dishes == ("roast beef", "nut roast")
    assert (found.only["nut roast"].names, found.only["nut roast"].eaters) == (("vegetarians",), 3)
    assert "'nut roast' is a dish only for vegetarians, in place of 'roast beef'" in found.menu.notes[-1]
