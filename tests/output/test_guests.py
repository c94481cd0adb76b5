"""Who may eat what, on a terminal, as Markdown and for other programs."""

import io

import pytest
from rich.console import Console

from board.base import words as shared
from board.checks.allergens.guests_eat import Matrix, matrix
from board.output import words
from board.output.guests import guests_form, guests_markdown, print_guests
from board.plan.load import PlanFile
from tests.conftest import read

NAMES = ["Ines", "Tomas", "Maud", "Odile", "Bram", "Femke", "Pieter", "Joke", "Livia", "Duarte", "Celeste", "Pia",
         "Joris", "Wenceslaus Featherstonehaugh"]  # fmt: skip
NEEDS = ["no tree nuts", "vegetarian", "alcohol-free", "no milk", "vegan", "pregnant", "coeliac"]


def table_for(guests: list[str], dishes: int) -> Matrix:
    """Each dish holds flour, butter and almonds but for every third, which holds rice."""
    listed = "\n".join(f"  - {guest!r}" for guest in guests)
    made = "\n".join(
        f"      - dish: Dish *{n}* | <b>\n"
        f"        ingredients: [{'200 g rice' if n % 3 == 0 else '100 g almond flour'}]\n"
        f"        steps: [{{step: make {n}, takes: 5 min}}]"
        for n in range(1, dishes + 1)
    )
    text = (
        "event: Test supper\ndate: 2026-11-28\nzone: Europe/Dublin\narrive: 18:30\n"
        f"guests:\n{listed}\n  - 5 others\n  - host\n"
        "hands: {host: {hours: {on the day: '9:00 - 23:30'}}}\n"
        f"courses:\n  - course: Main\n    at: 19:15\n    dishes:\n{made}\n"
    )
    file = read(text)
    assert isinstance(file, PlanFile), file
    return matrix(file)


def printed(found: Matrix, width: int) -> list[str]:
    out = io.StringIO()
    print_guests("Test supper", found, Console(file=out, width=width, markup=False, highlight=False))
    return out.getvalue().splitlines()


FOURTEEN = [f"{name}, {NEEDS[n % len(NEEDS)]}" for n, name in enumerate(NAMES)]


def test_fourteen_guests_and_twelve_dishes_are_readable_in_80_columns() -> None:
    lines = printed(table_for(FOURTEEN, 12), 80)
    heading = next(line for line in lines if line.startswith(words.GUESTS_GUEST))
    rows = lines[lines.index(heading) + 1 :][:15]

    assert all(len(line) <= 80 for line in lines)
    assert heading.split() == ["guest", *map(str, range(1, 13))]
    assert [row.split()[0].rstrip(",") for row in rows] == [*(name.split()[0] for name in NAMES), "6"]
    assert all("no tree nuts" in row for row in (rows[0], rows[7]))
    for row in rows:
        signs = row[-(len(heading) - heading.index("1")) :].split()
        assert len(signs) == 12, row
        assert set(signs) <= {"✓", "?", "✗", "–"}


def test_more_dishes_than_fit_stand_in_blocks_of_their_own() -> None:
    lines = printed(table_for(FOURTEEN[:2], 30), 60)

    headings = [line.split()[1:] for line in lines if line.startswith(words.GUESTS_GUEST)]
    assert len(headings) > 1
    assert [number for heading in headings for number in heading] == [str(n) for n in range(1, 31)]
    assert all(len(line) <= 60 for line in lines)


def test_signs_say_it_without_colour_and_reasons_stand_below() -> None:
    text = "\n".join(printed(table_for(["Ines, no tree nuts", "Tomas, vegan"], 3), 100))

    row = next(line for line in text.splitlines() if line.startswith("Ines, no tree nuts "))
    assert row.split()[-3:] == ["✗", "✗", "✓"]
    assert "✗ 1 almond flour: holds almonds" in text
    assert words.GUESTS_NO_REASONS not in text


def test_guests_with_nothing_to_avoid_stand_in_one_row_and_say_so() -> None:
    lines = printed(table_for([], 2), 80)

    assert any(line.startswith("6 with nothing to avoid") for line in lines)
    assert any(words.GUESTS_ALL_EAT in line for line in lines)


@pytest.mark.parametrize("guests", [[], ["Ines, no tree nuts"]])
def test_the_caution_is_always_there(guests: list[str]) -> None:
    found = table_for(guests, 1)

    assert "label, local law and licensed practice decide" in " ".join(" ".join(printed(found, 80)).split())
    assert shared.GUESTS_CAUTION in guests_markdown("Test supper", found)


def test_foreign_text_is_no_markup_on_paper_and_columns_agree() -> None:
    text = guests_markdown("A *big* | supper", table_for(["Ines, no tree nuts"], 3))
    rows = [line for line in text.splitlines() if line.startswith("| ")]

    assert text.startswith("# A \\*big\\* \\| supper: who may eat what\n")
    assert "Dish \\*1\\* \\| \\<b\\>" in text
    assert {row.replace("\\|", "").count("|") for row in rows} == {5}
    assert [row.split("|")[1].strip() for row in rows] == [
        "guest",
        "---",
        "Ines, no tree nuts",
        "6 with nothing to avoid",
    ]


def test_the_form_for_programs_holds_every_answer_with_its_reasons() -> None:
    form = guests_form("Test supper", table_for(["Ines, no tree nuts"], 3))

    assert [guest["name"] for guest in form["guests"]] == ["Ines", "others", "host"]
    assert len(form["answers"]) == 9
    first = form["answers"][0]
    assert (first["guest"], first["dish"], first["verdict"], first["served"]) == (0, 0, "not safe", True)
    assert first["reasons"][0]["ingredient"] == "almond flour"
    assert first["reasons"][0]["need"] == "no tree nuts"
    assert "FASTER Act" in first["reasons"][0]["source"]
