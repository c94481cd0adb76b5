"""Lines of a plan retyped, added, taken out and moved, every other byte kept."""

from pathlib import Path

import pytest

from board.plan.edit.edit_lines import (
    added,
    fixed,
    key_added,
    key_called,
    line_removed,
    line_retyped,
    moved,
    removed,
    retyped,
    value_of,
)
from board.plan.edit.save import CannotEdit
from board.plan.edit.yaml_text import Layout, item
from board.plan.load import PlanFile, read_plan, value_snag, words_known
from board.plan.places import Loc, read_yaml
from board.plan.snag import Fix

PLANS = sorted(Path("plans").glob("*.yaml"))
TEXT = """\
jobs:
  - lay the table      # early

  # from the cellar
  - job: open the wine
    takes: 4 min       # it breathes
    uses: [cork, screw]

  - brew the coffee
"""
WINE: Loc = ("jobs", 1)


def test_a_line_is_retyped_and_its_comment_stays() -> None:
    assert retyped(TEXT, (*WINE, "takes"), " 5  min ") == TEXT.replace("4 min", "5 min")
    assert retyped(TEXT, (*WINE, "uses"), "[cork]") == TEXT.replace("cork, screw", "cork")
    assert isinstance(retyped(TEXT, (*WINE, "uses"), "[cork"), CannotEdit)
    assert isinstance(retyped(TEXT, (*WINE, "takes"), "  "), CannotEdit)


@pytest.mark.parametrize(
    ("typed", "before", "value"),
    [("8", 6, 8), ("8", "6", "8"), ("8 min", "6 min", "8 min"), ("[a, 2]", None, ["a", 2]), ("yes", "no", "yes")],
)
def test_what_is_typed_is_the_value_a_plan_would_hold(typed: str, before: object, value: object) -> None:
    assert value_of(typed, before) == value


def test_an_item_moves_with_the_comment_above_it_and_back_to_the_byte() -> None:
    up = moved(TEXT, WINE, -1)

    assert up == (
        """\
jobs:
  # from the cellar
  - job: open the wine
    takes: 4 min       # it breathes
    uses: [cork, screw]

  - lay the table      # early

  - brew the coffee
""",
        ("jobs", 0),
    )
    assert not isinstance(up, CannotEdit)
    assert moved(up[0], up[1], 1) == (TEXT, WINE)
    assert isinstance(moved(TEXT, ("jobs", 2), 1), CannotEdit)
    assert isinstance(moved(TEXT, (*WINE, "takes"), 1), CannotEdit)


def test_a_file_without_a_last_line_end_has_none_after_a_move() -> None:
    found = moved(TEXT.rstrip("\n"), ("jobs", 2), -1)

    assert not isinstance(found, CannotEdit)
    assert found[0].endswith("screw]")
    assert "coffee\n" in found[0]


def test_an_item_is_added_behind_another_and_a_key_at_its_end() -> None:
    lines = ["- job: fold the napkins", "  takes: 6 min  # each a minute"]

    assert added(TEXT, ("jobs", 0), lines) == TEXT.replace(
        "# early\n", "# early\n  - job: fold the napkins\n    takes: 6 min  # each a minute\n"
    )
    assert added(TEXT, ("jobs", 2), item("air the room", Layout())) == TEXT + "\n  - air the room\n"
    assert added(TEXT, (*WINE, "uses", 0), item("jug", Layout())) == TEXT.replace("cork,", "cork, jug,")
    assert key_added(TEXT, WINE, "who: Ines") == TEXT.replace("screw]\n", "screw]\n    who: Ines\n")
    assert isinstance(key_added(TEXT, WINE, "takes: 3 min"), CannotEdit)
    assert isinstance(key_added(TEXT, WINE, "soon"), CannotEdit)


def test_a_line_is_taken_out_and_what_it_leaves_empty_too() -> None:
    assert removed(TEXT, (*WINE, "takes")) == TEXT.replace("    takes: 4 min       # it breathes\n", "")
    assert removed("a: 1\nb:\n  - c\n", ("b", 0)) == "a: 1\n"
    assert isinstance(removed("b:\n  - c\n", ("b", 0)), CannotEdit)


def test_lines_of_what_is_no_yaml_are_mended_by_their_number() -> None:
    assert line_retyped("a: [\r\nb: 1\r\n", 0, "a: []") == "a: []\r\nb: 1\r\n"
    assert line_removed("a: [\nb: 1\n", 0) == "b: 1\n"


@pytest.mark.parametrize("path", PLANS, ids=lambda path: path.stem)
def test_every_item_of_a_bundled_plan_moves_down_and_back_to_the_byte(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    data, _, _ = read_yaml(text, "")
    lists: list[Loc] = [("courses",), ("jobs",), ("courses", 0, "dishes", 0, "steps")]
    for loc in lists:
        down = moved(text, (*loc, 0), 1)
        if not isinstance(down, CannotEdit):
            assert down[0] != text
            assert moved(down[0], down[1], -1) == (text, (*loc, 0))
        else:
            assert len(data[loc[0]]) == 1 or len(loc) > 1


@pytest.mark.parametrize("path", PLANS[:2], ids=lambda path: path.stem)
def test_a_value_that_cannot_be_read_is_told_as_it_would_be_in_the_whole_plan(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    data, places, _ = read_yaml(text, path.name)
    takes: Loc = ("courses", 0, "dishes", 0, "steps", 0, "takes")

    told = value_snag(data, takes, "soon", places)
    changed = retyped(text, takes, "soon")
    assert not isinstance(changed, CannotEdit)
    whole = read_plan(changed, path.name)
    assert not isinstance(whole, PlanFile)
    assert told is not None
    assert told.message in [snag.message for snag in whole]
    assert value_snag(data, takes, "25 min", places) is None
    assert value_snag(data, ("arrive",), "soon", places) is not None
    assert value_snag(data, ("arrive",), "18:30", places) is None


def test_the_words_of_a_part_are_known() -> None:
    assert {"takes", "where", "keeps"} <= set(words_known(("courses", 0, "dishes", 0, "steps", 3)))
    assert words_known(("hands", "host", "hours", "on the day")) == ()


def test_a_word_is_called_otherwise_in_its_place() -> None:
    new = key_called(TEXT, (*WINE, "takes"), "attended")

    assert new == TEXT.replace("takes: 4", "attended: 4")
    assert isinstance(key_called(TEXT, (*WINE, "takes"), "uses"), CannotEdit)  # stands there already
    assert isinstance(key_called(TEXT, (*WINE, "nothing"), "uses"), CannotEdit)


def test_the_mend_of_a_finding_is_made_in_one_place() -> None:
    coffee = Fix("swap", ("jobs", 2), "tea", "coffee")
    wine = Fix("add", ("jobs",), "{job: chill it, takes: 5 min}")

    assert fixed(TEXT, coffee) == TEXT.replace("coffee", "tea")
    assert str(fixed(TEXT, wine)).endswith("  - brew the coffee\n  - job: chill it\n    takes: 5 min\n")
    assert fixed(TEXT, Fix("put", (*WINE, "takes"), "5 min")) == TEXT.replace("4 min", "5 min")
    assert fixed("event: x\n", wine) == "event: x\njobs:\n  - job: chill it\n    takes: 5 min\n"
    assert isinstance(fixed(TEXT, Fix("swap", ("jobs", 2), "tea", "cocoa")), CannotEdit)


SMALL = """\
event: Small supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [Ines, 3 others]
hands:
  host:
    hours: {on the day: 10:00 - 23:30}
courses:
  - course: Soup
    at: 19:30
    dishes:
      - dish: Onion soup
        steps:
          - step: simmer the onions
            where: stovetop, 1 ring
            takes: 30 min
          - step: ladle it out
            takes: 5 min
            after: simmer the onions, at most 10 min
            who: host
"""


@pytest.mark.parametrize(
    ("right", "wrong"),
    [("where:", "wehre:"), ("after: simmer the onions", "after: simer the onoins"), ("who: host", "who: hots")],
)
def test_a_mistyped_name_carries_its_mend(right: str, wrong: str) -> None:
    """In keys and where one thing names another; the mended plan is the plan as it was."""
    text = SMALL.replace(right, wrong)
    found = read_plan(text, "plan.yaml")
    assert isinstance(read_plan(SMALL, "plan.yaml"), PlanFile)
    assert isinstance(found, list)
    assert found[0].fix is not None

    assert fixed(text, found[0].fix) == SMALL


ASSUMED = """\
date: 2026-11-28  # assumed
arrive: 18:30  # assumed
steps:
  - step: simmer
    takes: 20 min   # by the book
    keeps: 1 day
    guessed: [takes, keeps]
    drinks: [a, b]  # assumed: a glass each
"""


@pytest.mark.parametrize(
    ("loc", "typed", "before", "after"),
    [
        (("arrive",), "19:00", "arrive: 18:30  # assumed", "arrive: 19:00"),
        (("steps", 0, "takes"), "25 min", "20 min   # by the book", "25 min   # by the book"),
        (("steps", 0, "drinks", 1), "c", "[a, b]  # assumed: a glass each", "[a, c]"),
    ],
)
def test_what_the_host_says_is_neither_assumed_nor_guessed_any_more(
    loc: Loc, typed: str, before: str, after: str
) -> None:
    settled = ASSUMED.replace("[takes, keeps]", "[keeps]") if loc[-1] == "takes" else ASSUMED

    assert retyped(ASSUMED, loc, typed) == settled.replace(before, after)


def test_the_last_guess_that_is_said_takes_the_list_of_them_along() -> None:
    once = retyped(ASSUMED, ("steps", 0, "takes"), "25 min")
    assert isinstance(once, str)
    twice = retyped(once, ("steps", 0, "keeps"), "2 days")
    assert isinstance(twice, str)
    assert "guessed" not in twice
