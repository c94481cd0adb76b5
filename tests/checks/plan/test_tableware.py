"""table 1 to table 5: whether the house has what the table is laid with, and a chair for everybody. Sums by hand."""

import pytest

from board.checks.plan.every import check
from board.plan.load import PlanFile
from board.plan.snag import Weight
from tests.conftest import read

CLEAN = """\
event: Supper for nine
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [Ines, 8 others]
seats: [Ines, 8 others]
table:
  chairs: 9
  seats at the table: 9
  soup bowls: 9
  dessert spoons: 18
  napkins: 9
hands: {host: {hours: {on the day: '9:00 - 23:30'}}}
courses:
  - course: Broth
    at: 19:15
    laid with: soup bowl, dessert spoon
    dishes: [{dish: Leek broth, steps: [{step: cook the broth, takes: 20 min}]}]
  - course: Main
    at: 20:15
    dishes: [{dish: Lentils, steps: [{step: cook the lentils, takes: 20 min}]}]
  - course: Sweet
    at: 21:15
    laid with: dessert spoon
    dishes: [{dish: Pears, steps: [{step: cook the pears, takes: 20 min}]}]
"""

# What is changed in CLEAN: from, to; then line:column, code, weight, the whole message, words of how to mend it.
BAD = {
    "enough for each course and not for two": (
        "spoons: 18", "spoons: 14", "11:3", "table 1", Weight.MIND,
        "18 dessert spoons are asked for by Broth and Sweet, the house has 14: 4 must be washed after Broth is cleared",
        "`wash between: yes` under table to have it on the timetable, or borrow 4.",
    ),
    "one course asks for more than there are": (
        "bowls: 9", "bowls: 8", "10:3", "table 2", Weight.MIND,
        "9 soup bowls are asked for by Broth, and the house has 8", "Borrow 1, or",
    ),
    "each course asks for more than there are": (
        "spoons: 18", "spoons: 8", "11:3", "table 2", Weight.MIND,
        "9 dessert spoons are asked for by Broth, and the house has 8", "Borrow 1 and wash 9 in between, or borrow 10.",
    ),
    "the whole meal asks for more than there are": (
        "napkins: 9", "napkins: 6", "12:3", "table 2", Weight.MIND,
        "9 napkins are asked for by the whole meal, and the house has 6", "Borrow 3, or",
    ),
    "a course asks for more beside the whole meal": (
        "  napkins: 9", "  napkins: 9\n  laid with: soup bowl", "10:3", "table 2", Weight.MIND,
        "9 soup bowls are asked for by Broth beside 9 for the whole meal, and the house has 9", "Borrow 9, or",
    ),
    "too few chairs": (
        "chairs: 9", "chairs: 8", "8:11", "table 3", Weight.MIND, "9 sit down to eat, and there are 8 chairs",
        "Borrow chairs",
    ),
    "a table too small": (
        "the table: 9", "the table: 1", "9:23", "table 3", Weight.MIND,
        "9 sit down to eat, and there is 1 seat at the table", "another table",
    ),
    "laid and not listed, mistyped": (
        "laid with: dessert spoon", "laid with: desert spoon", "24:16", "table 4", Weight.NOTE,
        "9 desert spoons for Sweet: `table` does not say how many the house has, so they are not counted",
        "Did you mean 'dessert spoon'?",
    ),
    "laid and not listed": (
        "laid with: dessert spoon", "laid with: finger bowl", "24:16", "table 4", Weight.NOTE,
        "9 finger bowls for Sweet: `table` does not say how many the house has, so they are not counted",
        "Add `finger bowls: 9`",
    ),
    "a guest without a seat": (
        "[Ines, 8 others]\ntable", "[8 others]\ntable", "6:8", "table 5", Weight.MIND, "Ines has no seat at the table",
        "Write the name once",
    ),
    "a guest with two seats": (
        "seats: [Ines, 8 others]", "seats: [Ines, 8 others, Ines]", "6:25", "table 5", Weight.MIND,
        "Ines has 2 seats at the table", "Write the name once",
    ),
    "too few seats for those without a name": (
        "8 others]\ntable", "7 others]\ntable", "6:8", "table 5", Weight.MIND,
        "8 go by the name 'others', and they have 7 seats at the table", "as many seats as they are",
    ),
}  # fmt: skip


def found_in(text: str) -> list[tuple[str, str, Weight, str, str]]:
    plan = read(text)
    assert isinstance(plan, PlanFile), "\n".join(snag.render() for snag in plan)
    return [
        (f"{snag.place.line}:{snag.place.column}", snag.code, snag.weight, snag.message, snag.mend)
        for snag in check(plan)
        if snag.place is not None
    ]


def test_the_plan_they_all_start_from_is_clean() -> None:
    assert found_in(CLEAN) == []


@pytest.mark.parametrize(("old", "new", "at", "code", "weight", "message", "mend"), BAD.values(), ids=BAD)
def test_what_is_short_is_the_one_thing_told(
    old: str, new: str, at: str, code: str, weight: Weight, message: str, mend: str
) -> None:
    assert old in CLEAN
    (found,) = found_in(CLEAN.replace(old, new, 1))

    assert found[:4] == (at, code, weight, message)
    assert mend in found[4]


def test_two_washings_say_for_which_course_each_is() -> None:
    """9, 9 and 9 of 14: 4 are washed for the second, out of the first's; 9 for the third: 5 of those and 4 more."""
    text = CLEAN.replace("at: 20:15\n", "at: 20:15\n    laid with: dessert spoon\n").replace("spoons: 18", "spoons: 14")

    (found,) = found_in(text)
    assert found[3].endswith(
        "4 must be washed for Main after Broth is cleared and 5 must be washed for Sweet after Broth is cleared and "
        "4 must be washed for Sweet after Main is cleared"
    )


def test_what_is_washed_by_the_timetable_is_no_snag() -> None:
    text = CLEAN.replace("spoons: 18", "spoons: 14").replace("chairs: 9", "chairs: 9\n  wash between: yes")

    assert found_in(text) == []


@pytest.mark.parametrize("gone", ["  soup bowls: 9\n  dessert spoons: 18\n  napkins: 9\n"])
def test_a_table_with_chairs_alone_counts_no_pieces(gone: str) -> None:
    assert found_in(CLEAN.replace(gone, "")) == []


def test_guests_who_stand_need_no_chairs() -> None:
    text = CLEAN.replace("chairs: 9", "chairs: 2").replace("    dishes", "    standing: yes\n    dishes")

    assert found_in(text) == []


def test_a_plan_without_a_table_hears_nothing_of_it() -> None:
    start, end = CLEAN.index("table:"), CLEAN.index("hands:")
    text = CLEAN[:start] + CLEAN[end:]

    assert found_in(text) == []
    plan = read(text)
    assert isinstance(plan, PlanFile)
    assert not any(each.kind in ("laid", "laid-throughout") for each in plan.filled.assumed)
