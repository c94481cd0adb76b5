"""The table on paper: one cover drawn, the seats within 60 columns, what to get out. Common practice, no source."""

import io
import json
import re
import string
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from rich.cells import cell_len

from board.cli import main
from board.facts.tableware import COVERS, WHOLE_MEAL, counted
from board.output import words
from board.output.cover import WIDEST, Cover, Piece, cover
from board.output.table import NoSuchCourse, table_leaf
from board.output.table_out import print_table, table_form, table_markdown
from board.output.tables import console
from board.plan.load import PlanFile
from board.plan.model.model import Plan
from tests.conftest import PLANS, read
from tests.examples import times

KNOWN = sorted({piece for usual in COVERS for piece in usual.pieces} | {*WHOLE_MEAL, "wine glass", "side plate"})
SUPPER = """\
event: Small supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [Ines, 'Tomas, vegetarian, no walnuts', 2 others]
seats: [[Ines, other], [Tomas, other]]
table: {chairs: 4, soup bowls: 3, spoons: 6, wine glasses: 8}
hands: {host: {hours: {on the day: '9:00 - 23:30'}}}
courses:
  - course: Soup
    at: 19:15
    laid with: soup bowl, spoon, wine glass
    dishes: [{dish: Leek soup, steps: [{step: cook the soup, takes: 20 min}]}]
  - course: Sweet
    at: 20:15
    laid with: plate, spoon
    served in: 2 sauce boats
    dishes: [{dish: Pears, steps: [{step: cook the pears, takes: 20 min}]}]
"""


def plan_of(text: str) -> Plan:
    found = read(text)
    assert isinstance(found, PlanFile), "\n".join(snag.render() for snag in found)
    return found.plan


def text_of(plan: Plan, course: str | None = None) -> str:
    out = io.StringIO()
    print_table(table_leaf(plan, course), console(out))
    return out.getvalue()


def column_of(drawn: Cover, name: str, course: int | None) -> int:
    sign = next(sign for sign, piece in drawn.signs if piece == Piece(name, course))
    return next(line.index(sign) for line in drawn.lines if sign in line)


def row_of(drawn: Cover, name: str, course: int | None) -> int:
    sign = next(sign for sign, piece in drawn.signs if piece == Piece(name, course))
    return next(number for number, line in enumerate(drawn.lines) if sign in line)


THREE_COURSES = [
    Piece("water glass", None), Piece("napkin", None), Piece("side plate", None),
    Piece("soup bowl", 0), Piece("soup spoon", 0), Piece("wine glass", 0),
    Piece("dinner plate", 1), Piece("dinner knife", 1), Piece("dinner fork", 1),
    Piece("starter knife", 0), Piece("starter fork", 0),
    Piece("dessert plate", 2), Piece("dessert spoon", 2), Piece("dessert fork", 2),
]  # fmt: skip


def test_a_cover_lies_as_it_is_laid() -> None:
    drawn = cover(THREE_COURSES)
    plate = column_of(drawn, "dinner plate", 1)

    left_to_right = [
        column_of(drawn, *each)
        for each in (
            ("napkin", None), ("starter fork", 0), ("dinner fork", 1), ("soup bowl", 0),
            ("dinner knife", 1), ("starter knife", 0), ("soup spoon", 0),
        )
    ]  # fmt: skip
    assert left_to_right == sorted(left_to_right)
    assert plate == column_of(drawn, "soup bowl", 0) == column_of(drawn, "dessert plate", 2)
    assert row_of(drawn, "soup bowl", 0) < row_of(drawn, "dinner plate", 1) < row_of(drawn, "dessert plate", 2)
    for glass, course in (("water glass", None), ("wine glass", 0)):
        assert column_of(drawn, glass, course) >= column_of(drawn, "dinner knife", 1)
        assert row_of(drawn, glass, course) < row_of(drawn, "dinner knife", 1)
    for lying in ("dessert spoon", "dessert fork"):
        assert row_of(drawn, lying, 2) < row_of(drawn, "soup bowl", 0)
    assert column_of(drawn, "side plate", None) < plate


@settings(max_examples=times(200))
@given(
    st.lists(st.tuples(st.sampled_from(KNOWN) | st.text("abc plateforks", min_size=1, max_size=9),
                       st.none() | st.integers(0, 7)), max_size=60)
)  # fmt: skip
def test_a_picture_holds_each_piece_once_and_fits_its_columns(pieces: list[tuple[str, int | None]]) -> None:
    asked = [Piece(name, course) for name, course in pieces]
    drawn = cover(asked)

    letters = [sign for line in drawn.lines for sign in line if sign in string.ascii_letters]
    assert sorted(letters) == sorted(sign for sign, _ in drawn.signs)
    assert len(set(letters)) == len(letters)
    assert sorted([*(str(piece) for _, piece in drawn.signs), *map(str, drawn.brought)]) == sorted(map(str, asked))
    assert all(len(line) <= WIDEST for line in drawn.lines)


def test_a_name_that_looks_like_nothing_known_lies_beside() -> None:
    assert cover([Piece("lobster pick", 0)]).lines[-1] == "[a]"


@pytest.mark.parametrize("guests", [4, 9, 24])
@pytest.mark.parametrize("facing", [False, True])
def test_every_guest_is_shown_within_the_columns(guests: int, facing: bool) -> None:
    names = [f"{'Ines of the long and winding name ' * (n % 3)}G{n:02}" for n in range(guests)]
    rows: object = [names[: guests // 2], names[guests // 2 :]] if facing else names
    text = SUPPER.replace(
        "[Ines, 'Tomas, vegetarian, no walnuts', 2 others]", json.dumps([f"{n}, vegan, no nuts" for n in names])
    )
    lines = text_of(plan_of(text.replace("[[Ines, other], [Tomas, other]]", json.dumps(rows)))).split("\n")
    first, last = (next(n for n, line in enumerate(lines) if corner in line) for corner in "┌└")
    table = lines[first : last + 1]

    assert all(cell_len(line) <= WIDEST for line in table)
    shown = "\n".join(table)
    assert [len(re.findall(rf"\bG{n:02}\b", shown)) for n in range(guests)] == [1] * guests
    assert shown.count("! no nuts, vegan") == guests


def test_wide_letters_keep_the_table_straight() -> None:
    text = SUPPER.replace("Ines", "餃子餃子餃子餃子餃子餃子餃子餃子餃子")
    lines = [line for line in text_of(plan_of(text)).split("\n") if line.count("│") == 2]

    assert len({cell_len(line[: line.index("│")]) for line in lines}) == 1


def test_below_each_name_stands_what_they_must_not_be_served() -> None:
    shown = text_of(plan_of(SUPPER))

    assert re.search(r"Ines {2}│ {8}│ {2}Tomas\n {25}│ {8}│ {2}! no walnuts,\n {25}│ {8}│ {2}vegetarian", shown)
    assert words.TABLE_ASK in shown


def test_a_plan_without_seats_lists_who_must_not_be_served_what() -> None:
    shown = text_of(plan_of(SUPPER.replace("seats: [[Ines, other], [Tomas, other]]\n", "")))

    assert "  Tomas: no walnuts, vegetarian\n" in shown
    assert "┌" not in shown.split(words.TABLE_COVER)[0]


def test_who_has_no_seat_is_told_with_what_they_must_not_be_served() -> None:
    assert "With no seat: Tomas (no walnuts, vegetarian); others" in text_of(
        plan_of(SUPPER.replace("[[Ines, other], [Tomas, other]]", "[Ines, other]"))
    )


def test_of_several_lines_of_one_name_nobody_is_taken_for_the_one_without_an_allergy() -> None:
    shown = text_of(plan_of(SUPPER.replace("2 others]", "1 others, '1 others, no nuts']")))

    assert shown.count("for some of them: no") + shown.count("for some of them:\n") >= 1
    assert shown.count("one of the others") == 2


def test_what_to_get_out_in_total_and_short() -> None:
    """4 guests: 4 soup bowls of 3; 4 + 4 spoons of 6, so 2 are washed; 2 sauce boats, of which nothing is told."""
    leaf = table_leaf(plan_of(SUPPER))
    rows = {row.piece: row for _, group in leaf.groups for row in group}

    assert (rows["soup bowls"].asked, rows["soup bowls"].there, rows["soup bowls"].notes) == (4, 3, ("borrow 1",))
    assert (rows["spoons"].asked, rows["spoons"].notes) == (8, ("wash 2 after Soup, for Sweet",))
    assert (rows["sauce boats"].asked, rows["sauce boats"].there, rows["sauce boats"].notes) == (2, None, ())
    assert (rows["wine glasses"].asked, rows["wine glasses"].there, rows["wine glasses"].notes) == (4, 8, ())


def test_one_course_has_its_own_cover_and_pieces() -> None:
    leaf = table_leaf(plan_of(SUPPER), "sweet")

    assert [piece.name for _, piece in leaf.cover.signs] == ["plate", "spoon"]
    assert {row.piece: row.asked for _, group in leaf.groups for row in group} == {
        "plates": 4, "spoons": 4, "sauce boats": 2,
    }  # fmt: skip


def test_a_course_that_is_none_is_told_with_the_nearest() -> None:
    with pytest.raises(NoSuchCourse) as told:
        table_leaf(plan_of(SUPPER), "Swett")

    assert told.value.meant == " Did you mean 'Sweet'?"


def test_where_all_stand_there_is_no_cover() -> None:
    leaf = table_leaf(plan_of(SUPPER.replace("    at:", "    standing: yes\n    at:")))

    assert leaf.cover.lines == ()
    assert words.TABLE_STANDING in text_of(plan_of(SUPPER.replace("    at:", "    standing: yes\n    at:")))


def test_foreign_text_stays_text() -> None:
    evil = (
        SUPPER.replace("Ines", '"*I*\\e[2J|x"').replace("Pears", "P").replace("course: Sweet", 'course: "```<b>\\e[2J"')
    )
    plan = plan_of(evil)

    assert "\x1b[2J" not in text_of(plan)
    shown = table_markdown(table_leaf(plan))
    assert "\x1b" not in shown
    assert "\\*I\\*" in shown
    assert "\\`\\`\\`\\<b\\>" in shown
    assert shown.count("\n```\n") == 2


def test_other_programs_get_the_same_sums() -> None:
    plan = plan_of(SUPPER)
    form = table_form(plan, table_leaf(plan))

    assert form["seats"]["left"][0] == {"name": "Ines", "must_not": [[]]}
    assert form["seats"]["right"][0]["must_not"] == [["no walnuts", "vegetarian"]]
    assert {"piece": "spoon", "asked_for": 8, "there": 6, "borrow": 0,
            "wash": [{"count": 2, "after": "Soup", "before": "Sweet"}]} in form["pieces"]  # fmt: skip
    assert {"course": None, "piece": "napkin", "each": 1, "total": 4, "assumed": True} in form["laid"]
    assert json.loads(json.dumps(form)) == form


@pytest.mark.parametrize("name", ["garden-lunch", "lantern-supper", "long-table", "two-ring-flat"])
@pytest.mark.parametrize("option", [[], ["--markdown"], ["--json"]])
def test_the_command_prints_the_table_of_every_bundled_plan(
    name: str, option: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["table", str(PLANS / f"{name}.yaml"), *option]) == 0

    assert "dinner plate" in capsys.readouterr().out


def test_the_command_says_which_course_was_meant(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    file = tmp_path / "plan.yaml"
    file.write_text(SUPPER)

    assert main(["table", str(file), "--course", "Swett"]) == 64
    assert "no course is called 'Swett'. Did you mean 'Sweet'?" in capsys.readouterr().err


def test_a_count_and_its_piece_stand_in_the_legend() -> None:
    plan = plan_of(SUPPER.replace("spoon, wine glass", "spoon, 2 wine glasses"))

    assert f"{counted('wine glass', 2)}: Soup" in text_of(plan)
