"""Who sits where, what they must not be served, and keys of the table that cannot be read."""

import pytest

from board.plan.load import PlanFile
from board.plan.model.model import Plan
from board.plan.resolve.seating import Place, seated, sides
from tests.conftest import read
from tests.plan.test_bad_plans import JARGON, spot

SOUND = """\
event: Small supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [Ines, 'Tomas, vegetarian, no walnuts and celery', 'Odd, kosher', 3 others]
seats: [Ines, Tomas, other, Odd, 2 others]
table: {chairs: 6, soup bowls: 8}
hands: {host: {hours: {on the day: '9:00 - 23:30'}}}
courses:
  - course: Soup
    at: 19:15
    laid with: soup bowl, 2 wine glasses
    dishes:
      - dish: Leek soup
        served in: 2 tureens
        steps: [{step: cook the soup, takes: 20 min}]
"""
AROUND = "[Ines, Tomas, other, Odd, 2 others]"


def plan_of(text: str) -> Plan:
    found = read(text)
    assert isinstance(found, PlanFile), "\n".join(snag.render() for snag in found)
    return found.plan


def names(places: tuple[Place, ...]) -> list[str]:
    return [place.name for place in places]


def test_names_around_the_table_run_clockwise_from_the_top_right() -> None:
    found = sides(plan_of(SOUND))

    assert found is not None
    assert names(found.right) == ["Ines", "Tomas", "others"]
    assert names(found.left) == ["others", "others", "Odd"]


def test_an_odd_one_sits_on_the_right() -> None:
    found = sides(plan_of(SOUND.replace("2 others]\ntable", "2 others, empty]\ntable")))

    assert found is not None
    assert (names(found.right), names(found.left)) == (["Ines", "Tomas", "others", "Odd"], ["", "others", "others"])


def test_two_lists_face_each_other() -> None:
    found = sides(plan_of(SOUND.replace(AROUND, "[[Ines, Tomas], [2 others, Odd, other]]")))

    assert found is not None
    assert found.facing
    assert (names(found.left), names(found.right)) == (["Ines", "Tomas"], ["others", "others", "Odd", "others"])


def test_a_plan_without_seats_has_no_sides() -> None:
    assert sides(plan_of(SOUND.replace(f"seats: {AROUND}\n", ""))) is None


def test_what_a_guest_must_not_be_served_is_in_the_plans_own_words() -> None:
    plan = plan_of(SOUND)

    assert [guest.must_not for guest in plan.guests] == [
        (), ("no walnuts", "no celery", "vegetarian"), ("kosher",), (),
    ]  # fmt: skip


def test_capitals_and_one_of_several_are_the_same_guest() -> None:
    plan = plan_of(SOUND.replace(AROUND, "[ines, TOMAS, other, Other, odd, 1 others]"))

    assert {name: (guests, len(seats)) for name, (guests, seats) in seated(plan).items()} == {
        "Ines": (1, 1), "Tomas": (1, 1), "Odd": (1, 1), "others": (3, 3),
    }  # fmt: skip


def test_a_guest_by_name_goes_before_one_of_several() -> None:
    plan = plan_of(SOUND.replace("Ines, 'Tomas", "Other, 'Tomas").replace("[Ines", "[other"))

    assert {name: len(seats) for name, (_, seats) in seated(plan).items()}["Other"] == 2


def test_of_several_lines_of_one_name_it_is_open_who_sits_where() -> None:
    found = sides(plan_of(SOUND.replace("3 others]", "2 others, '1 others, no nuts']")))

    assert found is not None
    assert [len(place.guests) for place in found.right] == [1, 1, 2]


# What is changed in SOUND: from, to; then line:column, code, words of the message or of how to mend it.
BAD = {
    "nobody of that name": ("[Ines, Tomas", "[Ines, Tomsa", "6:15", "plan 8", "Did you mean 'Tomas'?"),
    "nobody of that name, in two lists": (AROUND, "[[Ines, Tomas], [Odd, Ods, 3 others]]", "6:30", "plan 8", "'Odd'"),
    "no number of seats": ("2 others]\ntable", "0 others]\ntable", "6:34", "plan 7", "Write 1 to 200."),
    "a number for a seat": ("Odd, 2 others]\n", "Odd, 2]\n", "6:34", "plan 7", "a guest's name, 2 others, or empty"),
    "a table with three sides": (AROUND, "[[Ines], [Tomas, Odd], [3 others]]", "6:8", "plan 7", "two long sides"),
    "seats that are no list": (AROUND, "Ines", "6:8", "plan 7", "`seats` takes a list"),
    "seats without a value": (f"seats: {AROUND}", "seats:", "6:1", "plan 7", "`seats` has no value"),
    "a number that is none": ("bowls: 8", "bowls: many", "7:32", "plan 7", "not a number for `soup bowls`"),
    "fewer than none": ("bowls: 8", "bowls: -8", "7:32", "plan 7", "Write 0 or more."),
    "no number of chairs": ("chairs: 6", "chairs: lots", "7:17", "plan 7", "not a number for `chairs`"),
    "a piece without its number": ("bowls: 8", "bowls: ", "7:20", "plan 7", "`soup bowls` has no value"),
    "a mistyped word of the table": ("soup bowls: 8", "wash betwen: yes", "7:20", "plan 5", "'wash between'"),
    "wash between that is neither": ("soup bowls: 8", "wash between: now", "7:34", "plan 7", "Write yes or no"),
    "a piece without a name": ("soup bowls: 8", "'': 8", "7:8", "plan 7", "a short name"),
    "a list for a table": ("{chairs: 6, soup bowls: 8}", "[chairs]", "7:8", "plan 7", "a list stands where keys"),
    "no pieces": ("soup bowl, 2 wine glasses", "soup bowl, 0 wine glasses", "12:16", "plan 7", "Write 1 to 200."),
    "a number without a piece": ("soup bowl, 2 wine glasses", "[soup bowl, 2]", "12:28", "plan 7", "2 wine glasses"),
    "nothing between two commas": ("soup bowl, 2", "soup bowl,, 2", "12:16", "plan 7", "'' is no piece"),
    "laid with a key": ("soup bowl, 2 wine glasses", "{bowl: 1}", "12:16", "plan 7", "`laid with` takes a list"),
    "a long form with a word of its own": (
        "soup bowl, 2 wine glasses", "[{piece: bowl, cuont: 2}]", "12:31", "plan 5", "Did you mean 'count'?",
    ),
    "a mistyped key of a course": ("laid with: soup", "lade with: soup", "12:5", "plan 5", "'laid with'"),
    "a mistyped key of a dish": ("served in: 2", "servd in: 2", "15:9", "plan 5", "'served in'"),
    "too many of one kind": ("2 tureens", "201 tureens", "15:20", "plan 7", "Write 1 to 200."),
}  # fmt: skip


@pytest.mark.parametrize(("old", "new", "at", "code", "words"), BAD.values(), ids=BAD)
def test_what_cannot_be_read_is_the_one_thing_told(old: str, new: str, at: str, code: str, words: str) -> None:
    assert old in SOUND
    found = read(SOUND.replace(old, new, 1))

    assert isinstance(found, list)
    assert [(spot(snag), snag.code) for snag in found] == [(at, code)], "\n".join(snag.render() for snag in found)
    assert words.casefold() in f"{found[0].message} {found[0].mend}".casefold()
    assert found[0].mend
    assert not JARGON.search(found[0].render())


def test_guests_that_cannot_be_read_are_not_told_again_at_the_table() -> None:
    found = read(SOUND.replace("'Odd, kosher'", "'Odd, koshr'"))

    assert isinstance(found, list)
    assert [(spot(snag), snag.code) for snag in found] == [("5:60", "plan 7")]


@pytest.mark.parametrize(
    ("text", "pieces"),
    [
        ("soup bowl", [("soup bowl", 1)]),
        ("a soup bowl, two Wine Glasses", [("soup bowl", 1), ("wine glass", 2)]),
        ("[3 fish knives]", [("fish knife", 3)]),
        ("[{piece: fork, count: 2}]", [("fork", 2)]),
        ("nothing", []),
    ],
)
def test_pieces_are_read_in_words_or_in_their_long_form(text: str, pieces: list[tuple[str, int]]) -> None:
    plan = plan_of(SOUND.replace("soup bowl, 2 wine glasses", text))

    assert [(each.piece, each.count) for each in plan.courses[0].laid_with or []] == pieces
