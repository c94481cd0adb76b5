"""Pages of leaves, table, guests and the menu card: what stands on them, with boxes to tap, and how they break."""

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from lxml import html

from board.base import words as shared
from board.checks.allergens.guests_eat import Matrix, matrix
from board.checks.allergens.plates import plates
from board.cli import main
from board.output import words
from board.output.card import card, card_page
from board.output.frame import PaperSize, is_page
from board.output.guests_page import MOST_DISHES, guests_page
from board.output.leaves import EVERYBODY, Day, Leaf, Row, leaves
from board.output.page import page
from board.output.table import table_leaf
from board.output.table_page import table_page
from board.plan.load import PlanFile
from board.sheet.run_sheet import RunSheet
from tests.output.printing import printed

HOSTILE = "<img src=x onerror=alert(1)> & ''"
SMALL = """\
event: Small supper
date: 2026-12-05
zone: Europe/Dublin
arrive: 18:30
guests: ["Ines, allergic to tree nuts", "Tomas, vegetarian", host]
seats: [Ines, Tomas, host]
hands: {host: {hours: {on the day: '10:00 - 23:30'}}}
courses:
  - course: Main
    at: 19:30
    drink: dry cider, 2 bottles
    dishes:
      - dish: BEEF
        not for: Tomas
        ingredients: [1 kg beef shin (butcher)]
        steps: [{step: braise the beef, takes: 30 min}]
      - dish: Lentils
        only for: Tomas
        ingredients: [200 g green lentils]
        steps: [{step: boil the lentils, takes: 30 min}]
"""


@pytest.fixture(scope="module")
def eaten(lantern: PlanFile) -> Matrix:
    return matrix(lantern)


def read(text: str) -> html.HtmlElement:
    return html.document_fromstring(text)


def cells(row: html.HtmlElement) -> int:
    return sum(int(cell.get("colspan", "1")) for cell in row)


@pytest.fixture(scope="module")
def all_pages(lantern: PlanFile, lantern_sheet: RunSheet, eaten: Matrix) -> dict[str, str]:
    return {
        "leaves": page(leaves(lantern_sheet, EVERYBODY), "a4"),
        "table": table_page(table_leaf(lantern.plan), "a4"),
        "guests": guests_page(lantern.plan.event, eaten, "letter"),
        "card": card_page(card(lantern.plan, eaten, plates(lantern, eaten)), "letter"),
    }


@pytest.mark.parametrize("name", ["leaves", "table", "guests", "card"])
def test_a_page_is_read_on_a_phone_and_by_a_reader(all_pages: dict[str, str], name: str) -> None:
    """WCAG 2.2: 1.3.1 and 2.4.6 (headings, one main part, table heads), 4.1.2 (each box has its words), 1.4.10 (a
    width of 320 CSS pixels: the page takes the screen's own). Rules of axe-core on it: none broken."""
    found = read(all_pages[name])
    boxes = [box.get("id") for box in found.iter("input")]

    assert found.find(".//meta[@name='viewport']").get("content") == "width=device-width, initial-scale=1"
    assert len(list(found.iter("main"))) == 1
    assert list(found.iter("h1"))
    assert len(set(boxes)) == len(boxes)
    assert boxes == [label.get("for") for label in found.iter("label")]
    assert all(label.text_content().strip() for label in found.iter("label"))
    assert bool(boxes) == (name in ("leaves", "table"))
    assert all(head.text_content().strip() for head in found.iter("th"))


@pytest.mark.parametrize("name", ["leaves", "table", "guests"])
def test_no_rule_stops_short(all_pages: dict[str, str], name: str) -> None:
    """Rules are drawn under cells: every row of a table has as many as its head."""
    for table in read(all_pages[name]).iter("table"):
        assert len({cells(row) for row in table.iter("tr")}) == 1


def test_a_persons_leaf_keeps_blocks_together_under_the_days_head(
    lantern_sheet: RunSheet, all_pages: dict[str, str]
) -> None:
    (leaf,) = leaves(lantern_sheet, EVERYBODY)
    tables = list(read(all_pages["leaves"]).iter("table"))
    heads = [table.find("thead").text_content().strip() for table in tables]
    blocks = [[len(block.findall("tr")) for block in table.findall("tbody")] for table in tables]

    assert heads == [day.title for day in leaf.days]
    assert blocks == [[len(block) for block in day.blocks] for day in leaf.days]
    assert max(map(max, blocks)) > 3
    assert "2 kg beef shin, 3 tbsp olive oil" in tables[0].text_content()
    assert "few pieces at a time" in tables[0].text_content()
    assert re.search(r"tr, tbody\.block \{ break-inside: avoid; \}", all_pages["leaves"])


def test_the_tables_page_seats_everybody_and_ticks_each_piece(lantern: PlanFile, all_pages: dict[str, str]) -> None:
    leaf = table_leaf(lantern.plan)
    found = read(all_pages["table"])
    seats, *groups = found.iter("table")

    assert leaf.left is not None
    assert leaf.right is not None
    assert len(seats.findall(".//tr")) == max(len(leaf.left), len(leaf.right))
    assert "! no tree nuts" in seats.text_content()
    assert [row.piece for _, rows in leaf.groups for row in rows] == [
        label.text_content() for group in groups for label in group.iter("label")
    ]
    assert "\n".join(leaf.cover.lines) == found.find(".//pre").text
    assert words.TABLE_ASK in found.text_content()


def test_the_guests_page_has_every_answer(eaten: Matrix, all_pages: dict[str, str]) -> None:
    found = read(all_pages["guests"])
    tables = list(found.iter("table"))
    numbers = [int(head.text) for table in tables for head in table.findall(".//thead//th[@class='d']")]
    tomas = [row for table in tables for row in table.iter("tr") if "Tomas" in row.text_content()]
    signs = "".join(cell.text for row in tomas for cell in row.iter("td"))

    assert numbers == list(range(1, len(eaten.dishes) + 1))
    assert all(len(table.findall(".//thead//th")) <= MOST_DISHES + 1 for table in tables)
    assert signs == "✓✓✓–✓✓✓✓✓"
    assert shared.GUESTS_CAUTION in found.text_content()


def test_the_card_has_courses_dishes_and_on_request_different_plates(lantern: PlanFile, eaten: Matrix) -> None:
    bare = read(card_page(card(lantern.plan, eaten, {}), "a4")).find(".//section")
    full = read(card_page(card(lantern.plan, eaten, plates(lantern, eaten)), "a4")).find(".//section")

    assert [course.text for course in bare.iter("h2")] == [course.course for course in lantern.plan.courses]
    assert [dish.text for dish in bare.findall("div/p")] == [row.dish for row in eaten.dishes]
    assert "Tomas" not in bare.text_content()
    assert "Tomas, Maud: Lentils and mushrooms; without Beef shin in dark beer" in full.text_content()
    assert not re.search("vegetarian|alcohol|nut", full.text_content().casefold())


def test_the_card_lies_twice_on_a_sheet_and_is_read_once(all_pages: dict[str, str]) -> None:
    first, second = read(all_pages["card"]).iter("section")

    assert first.text_content() == second.text_content()
    assert (first.get("aria-hidden"), second.get("aria-hidden")) == (None, "true")
    assert "size: letter landscape" in all_pages["card"]


def test_text_of_a_plan_stays_text(plan_from: Callable[[str], PlanFile]) -> None:
    file = plan_from(SMALL.replace("BEEF", f'"{HOSTILE}"').replace("Small supper", f'"{HOSTILE}"'))
    eaten = matrix(file)
    made = [
        table_page(table_leaf(file.plan), "a4"),
        guests_page(file.plan.event, eaten, "a4"),
        card_page(card(file.plan, eaten, plates(file, eaten)), "a4"),
    ]

    for each in made:
        assert "<img" not in each
        assert HOSTILE in read(each).find(".//h1").text_content()
    assert HOSTILE in read(made[2]).text_content()
    assert "dry cider" in read(made[2]).text_content()


def test_a_dish_that_is_not_settled_is_told_when_the_card_is_made(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    plan = tmp_path / "small.yaml"
    text = SMALL.replace("green lentils", "dried qulum").replace("        only for: Tomas\n", "")
    plan.write_text(text, encoding="utf-8")

    assert main(["card", str(plan)]) == 0
    bare = capsys.readouterr()
    assert main(["card", str(plan), "--plates"]) == 0
    told = capsys.readouterr()

    assert bare.err == ""
    assert "Lentils" in bare.out
    assert "Ines, Lentils" in told.err


@pytest.mark.parametrize("command", ["guests", "table", "card"])
def test_a_command_writes_its_page_and_leaves_other_files_alone(
    command: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    made, own = tmp_path / "made.html", tmp_path / "own.html"
    own.write_text("<!doctype html><title>mine</title>")
    plan = str(tmp_path / "small.yaml")
    Path(plan).write_text(SMALL, encoding="utf-8")

    assert main([command, plan, "--html", str(made), "--paper", "letter"]) == 0
    assert main([command, plan, "--html", str(own)]) != 0

    assert is_page(made.read_bytes())
    assert "size: letter" in made.read_text()
    assert own.read_text() == "<!doctype html><title>mine</title>"
    assert "no page made here" in capsys.readouterr().err


@pytest.mark.slow
@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_each_sheet_of_a_leaf_says_event_person_day_and_page(
    lantern_sheet: RunSheet, tmp_path: Path, paper: PaperSize
) -> None:
    sheets = printed(page(leaves(lantern_sheet, EVERYBODY), paper), tmp_path)
    days = "Friday 27 November|Saturday 28 November"

    assert 3 <= len(sheets) <= 5
    for number, sheet in enumerate(sheets, start=1):
        told = " ".join(word.text for word in sorted(sheet, key=lambda word: round(word.top)))
        assert re.match(rf"Lantern supper · For host {number} / {len(sheets)} ", told)
        assert re.search(days, told)
        assert told.count("□") != 1  # no row alone


@pytest.mark.slow
@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_no_row_stands_alone_on_a_sheet_however_many_there_are(tmp_path: Path, paper: PaperSize) -> None:
    row = Row("17:00", "17:10", "peel the pears", (), "worktop", "")
    many = [Leaf("Supper", "For host", (), (Day("Friday", ((row,),) * count),), ()) for count in range(24, 56)]
    boxes = [sum(word.text == "□" for word in sheet) for sheet in printed(page(many, paper), tmp_path)]

    assert sum(boxes) == sum(range(24, 56))
    assert len(boxes) > len(many)
    assert 1 not in boxes


@pytest.mark.slow
@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_the_card_fits_one_sheet(lantern: PlanFile, eaten: Matrix, tmp_path: Path, paper: PaperSize) -> None:
    assert len(printed(card_page(card(lantern.plan, eaten, plates(lantern, eaten)), paper), tmp_path)) == 1
