"""The sheet for the wall and for people: as words, as Markdown read by a CommonMark parser, as a page in a browser."""

import re
import shutil
import subprocess
from html.parser import HTMLParser
from pathlib import Path

import msgspec
import pytest
from markdown_it import MarkdownIt

from board.output.day_blocks import day_lines
from board.output.leaves import EVERYBODY, WALL, NoSuchPerson, leaves, says
from board.output.markdown import markdown, safe
from board.output.page import page
from board.output.sheet_form import outside_form
from board.plan.load import PlanFile, read_plan
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet.run_sheet import RunSheet
from tests.conftest import slot

TWO = """
event: Supper for two cooks
date: 2026-12-05
zone: Europe/Dublin
arrive: 19:00
guests: [4 guests]
hands:
  host: {hours: {on the day: '15:00 - 23:00'}}
  Anneli: {hours: {on the day: '16:00 - 22:00'}}
courses:
  - course: Main
    at: 19:45
    dishes:
      - dish: Rice
        steps:
          - {step: wash the rice, takes: 10 min, who: Anneli, keeps: 3 h in the room}
          - {step: cook the rice, where: stovetop, takes: 20 min, attended: 2 min at the start, who: host}
jobs:
  - {job: lay the table, who: Anneli}
  - {job: tidy the room, who: host}
"""
HOSTILE = "<script>alert(1)</script> *bold* [link](http://x) \x1b[31mred `code` | a & b # +"


@pytest.fixture(scope="module")
def two_cooks() -> RunSheet:
    found = read_plan(TWO, "two.yaml")
    assert isinstance(found, PlanFile)
    return make_sheet(found, solve)


class Reader(HTMLParser):
    """What a page holds: its tags, and the text of its boxes' rows."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.text: list[str] = []
        self.feed(html)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)

    def handle_data(self, data: str) -> None:
        self.text.append(data)


def test_the_wall_holds_every_slot_once_in_order_and_no_row_of_no_minutes(lantern_sheet: RunSheet) -> None:
    (leaf,) = leaves(lantern_sheet, WALL)
    rows = [row for day in leaf.days for row in day.rows]

    moments = [slot for slot in lantern_sheet.slots if slot.end == slot.start]
    assert {slot.kind for slot in moments} == {"arrive", "off"}
    assert len(rows) == len(lantern_sheet.slots) - len(moments)
    assert len([row for row in rows if "18:30 guests arrive" in row.told]) == 1
    assert [row.what for row in rows if "20:58 turn the oven off" in row.told] == ["braise the beef"]
    assert [day.title for day in leaf.days] == ["Friday 27 November", "Saturday 28 November"]
    assert [row.what for row in rows if row.course] == [f"serve {course.name}" for course in lantern_sheet.courses]
    for day in leaf.days:
        starts = [row.start for row in day.rows if row.start >= "05:00"]
        assert starts == sorted(starts)


def test_a_row_says_heat_core_what_to_look_for_and_when_hands_are_needed(lantern_sheet: RunSheet) -> None:
    (leaf,) = leaves(lantern_sheet, WALL)
    row = next(row for day in leaf.days for row in day.rows if row.what.startswith("braise the beef"))

    assert row.where == "oven at 150 °C (300 °F), casserole"
    assert row.told[0] == "look for: a fork turns in it"
    assert row.told[1] == "core 74 °C (165 °F)"
    assert re.fullmatch(r"hands at (\d\d:\d\d, ){3}\d\d:\d\d", row.told[2])  # start, two look-ins, end


def test_a_row_says_what_goes_in_and_how_and_so_does_the_days_sheet(lantern_sheet: RunSheet) -> None:
    """The beef is for 6 and 6 eat it: as written."""
    (leaf,) = leaves(lantern_sheet, WALL)
    row = next(row for day in leaf.days for row in day.rows if row.what == "brown the beef")
    blocks = [block for day in day_lines(lantern_sheet) for block in day.blocks]
    steps = [(step.what, step.tail) for block in blocks for step in block.steps]
    steps += [(block.names[0], block.tail) for block in blocks if not block.steps]
    told = next(tail for what, tail in steps if what == "brown the beef")
    form = next(e for e in outside_form(lantern_sheet, valid=True)["steps"] if e["id"].endswith("brown-the-beef"))

    method = ("2 kg beef shin, 3 tbsp olive oil", "Dry and salt it; few pieces at a time, never touching.")
    assert row.told[:2] == method
    assert set(method) <= set(told)
    assert form["how"] == method[1]
    assert form["goes_in"][0] == {"food": "beef shin", "low": 2.0, "high": 2.0, "unit": "kg"}


def test_a_question_stands_with_its_step(two_cooks: RunSheet) -> None:
    found = read_plan(TWO.replace("takes: 20 min,", "takes: 20 min, decide: with saffron?,"), "two.yaml")
    assert isinstance(found, PlanFile)

    (leaf,) = leaves(make_sheet(found, solve), WALL)

    assert [row.told[0] for day in leaf.days for row in day.rows if row.what.startswith("cook the rice")] == [
        "decide: with saffron?"
    ]


def test_where_a_recipe_is_from_stands_below(two_cooks: RunSheet) -> None:
    found = read_plan(
        TWO.replace("- dish: Rice\n", "- dish: Rice\n        source: the blue notebook, page 12\n"), "two.yaml"
    )
    assert isinstance(found, PlanFile)

    sheet = make_sheet(found, solve)

    assert all("Rice: recipe from the blue notebook, page 12" in leaf.notes for leaf in leaves(sheet, EVERYBODY))
    assert not any("recipe" in note for leaf in leaves(two_cooks, WALL) for note in leaf.notes)


def test_a_row_names_its_dish_where_the_step_does_not(lantern_sheet: RunSheet) -> None:
    """Beef is in one dish only; whose is the braise, or the potatoes, no word of theirs says."""
    (leaf,) = leaves(lantern_sheet, WALL)
    named = {row.what for day in leaf.days for row in day.rows}

    assert {"brown the beef", "build the braise (Beef shin in dark beer)", "roast the roots"} <= named
    assert "peel the potatoes into water (Buttered mash)" in named
    blend = slot("blend the soup", "17:00", "17:10", course="Soup", dish="Leek soup")
    assert says(blend, "Leek soup", frozenset({"Leek soup", "Soup", "Barley risotto"}))
    assert not says(blend, "Leek soup", frozenset({"Leek soup", "Soup", "Barley soup"}))


def test_a_person_gets_their_own_work_and_the_courses(two_cooks: RunSheet) -> None:
    found = leaves(two_cooks, EVERYBODY)

    assert len(found) == len(two_cooks.hands) > 1
    for leaf, name in zip(found, two_cooks.hands, strict=True):
        own = [slot for slot in two_cooks.slots if any(part.who == name for part in slot.attended)]
        served = [slot for slot in two_cooks.slots if slot.kind == "serve" and slot not in own]
        assert name in leaf.about
        assert sum(len(day.rows) for day in leaf.days) == len(own) + len(served)
    assert leaves(two_cooks, two_cooks.hands[1].upper()) == [found[1]]


def test_a_dishs_recipe_is_named_where_its_work_is() -> None:
    text = TWO.replace("- dish: Rice\n", "- dish: Rice\n        source: Ada Invented, https://example.org/rice\n")
    file = read_plan(text, "two.yaml")
    assert isinstance(file, PlanFile)
    sheet = make_sheet(file, solve)
    said = "Rice: recipe from Ada Invented, https://example.org/rice"

    assert all(said in leaf.notes for leaf in leaves(sheet, EVERYBODY))
    assert said in leaves(sheet, WALL)[0].notes
    without = msgspec.structs.replace(sheet, slots=tuple(each for each in sheet.slots if each.dish is None))
    assert said not in leaves(without, WALL)[0].notes


def test_nobody_of_that_name(lantern_sheet: RunSheet) -> None:
    with pytest.raises(NoSuchPerson) as wrong:
        leaves(lantern_sheet, "Nobody")

    assert wrong.value.known == lantern_sheet.hands


def hostile(sheet: RunSheet) -> RunSheet:
    """Every text a host writes is as bad as can be."""
    slots = tuple(
        msgspec.structs.replace(slot, named=HOSTILE, dish=HOSTILE, look_for=HOSTILE, call=HOSTILE)
        for slot in sheet.slots
    )
    return msgspec.structs.replace(sheet, plan=HOSTILE, slots=slots, stops=(HOSTILE,), cautions=("1. " + HOSTILE,))


def test_foreign_text_stays_text_on_a_page(lantern_sheet: RunSheet) -> None:
    html = page(leaves(hostile(lantern_sheet), EVERYBODY), "a4")
    found = Reader(html)

    assert "script" not in found.tags
    assert "a" not in found.tags
    assert "<script>alert(1)</script> *bold*" in "".join(found.text)
    assert "\x1b" not in html
    assert "src=" not in html
    assert "href=" not in html


def test_foreign_text_stays_text_in_markdown(lantern_sheet: RunSheet) -> None:
    """Read by markdown-it-py, an implementation of CommonMark 0.31."""
    parsed = MarkdownIt("commonmark").parse(markdown(leaves(hostile(lantern_sheet), WALL)))
    inside = [child for token in parsed for child in token.children or []]
    bold = [n for n, child in enumerate(inside) if child.type == "strong_open"]

    assert not {"link_open", "code_inline", "html_inline", "em_open", "image"} & {child.type for child in inside}
    assert "html_block" not in {token.type for token in parsed}
    assert any("<script>alert(1)</script> *bold* [link](http://x)" in _plain(token) for token in parsed)
    assert len(bold) == 1 + len(lantern_sheet.courses)  # whose leaf it is, and each course going out


def _plain(token: object) -> str:
    children = getattr(token, "children", None) or []
    return "".join(child.content for child in children)


@pytest.mark.parametrize("text", ["1. one", "- a", "+ a", "# a", "> a", "a_b_", "&amp;", "~~~", "1) x", "| a | b |"])
def test_a_text_alone_is_a_paragraph_that_says_just_that(text: str) -> None:
    parsed = MarkdownIt("commonmark").enable("table").parse(safe(text))

    assert [token.type for token in parsed] == ["paragraph_open", "inline", "paragraph_close"]
    assert _plain(parsed[1]) == text


@pytest.mark.parametrize("size", ["a4", "letter"])
def test_a_page_prints_in_a_browser(two_cooks: RunSheet, tmp_path: Path, size: str) -> None:
    """Chromium prints it to PDF: at least a sheet of paper a person, of the size asked for."""
    browser, info = shutil.which("chromium"), shutil.which("pdfinfo")
    if browser is None or info is None:
        pytest.skip("no chromium and pdfinfo on this machine")
    html, pdf = tmp_path / "page.html", tmp_path / "page.pdf"
    found = leaves(two_cooks, EVERYBODY)
    html.write_text(page(found, size), encoding="utf-8")  # type: ignore[arg-type]  # one of the two
    subprocess.run([browser, "--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer",
                    f"--user-data-dir={tmp_path / 'profile'}", f"--print-to-pdf={pdf}", html.as_uri()],
                   check=True, capture_output=True, timeout=120)  # fmt: skip
    told = subprocess.run([info, str(pdf)], check=True, capture_output=True, text=True).stdout
    pages = int(re.search(r"Pages:\s+(\d+)", told)[1])  # type: ignore[index]

    assert len(found) <= pages <= 4 * len(found)
    assert ("595" in told or "594.9" in told) if size == "a4" else "612 x 792" in told
