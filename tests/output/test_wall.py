"""The sheet for the wall: every piece of work, read from a step away, a sheet of paper a day."""

import re
from itertools import pairwise
from pathlib import Path
from typing import get_args
from zoneinfo import ZoneInfo

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from lxml import html

from board.output import words
from board.output.frame import PaperSize, css_text
from board.output.leaves import WALL, leaves
from board.output.wall import rows, wall_page
from board.sheet.blocks import day_of
from board.sheet.run_sheet import RunSheet
from tests.examples import times
from tests.output.printing import Word, printed

HOSTILE = "</style><script>alert(1)</script> \"} @page { size: a3 } \\22 '"
TYPE_FOR_THE_WALL = 22  # points, read at 1.5 m; common practice, no source
LINE = 1.1  # how tall a line of type is for its size, in Times and its metric twins: 1.107, rounded down


def wall(sheet: RunSheet, paper: PaperSize = "a4") -> str:
    (leaf,) = leaves(sheet, WALL)
    return wall_page(sheet, leaf, paper)


def days(sheet: RunSheet) -> set[object]:
    return {day_of(sheet, slot.start) for slot in sheet.slots}


def test_every_slot_stands_once_and_a_course_begins_a_row(lantern_sheet: RunSheet) -> None:
    found = rows(lantern_sheet)
    told = [step for row in found for step in row.steps]

    assert sorted(step.id for step in told) == sorted(slot.id for slot in lantern_sheet.slots)
    assert [row.start for row in found] == sorted(row.start for row in found)
    assert all(row.steps[0].kind == "serve" for row in found if any(step.kind == "serve" for step in row.steps))
    assert all(list(row.steps) == sorted(row.steps, key=lambda step: step.start) for row in found)


def test_the_page_names_each_piece_of_work_and_has_a_box_a_row(lantern_sheet: RunSheet) -> None:
    page = html.document_fromstring(wall(lantern_sheet))
    text = page.text_content()
    labels = {label.get("for") for label in page.iter("label")}

    assert [slot.name for slot in lantern_sheet.slots if slot.name.replace(" °", "\u00a0°") not in text] == []
    assert len(page.findall(".//section")) == len(days(lantern_sheet)) + 1  # what must be minded, last
    assert {box.get("id") for box in page.iter("input")} == labels
    assert len(labels) == len(rows(lantern_sheet))
    assert words.CAUTION in text


def test_every_step_has_its_time_and_what_comes_off_the_heat_its_end(lantern_sheet: RunSheet) -> None:
    zone = ZoneInfo(lantern_sheet.zone)
    text = html.document_fromstring(wall(lantern_sheet)).text_content().replace("\u00a0", " ")
    slots = {slot.name: slot for slot in lantern_sheet.slots}

    for row in rows(lantern_sheet):
        for before, step in pairwise((None, *row.steps)):
            clock = f"{step.start.astimezone(zone):%H:%M}"
            assert (f"{clock} {step.name}" in text) or (before is not None and before.start == step.start), step.name
    for name, off in (("bake the tartlets", "out"), ("boil the potatoes", "off")):
        assert f"{name} ({off} {slots[name].end.astimezone(zone):%H:%M})" in text


def test_a_stop_stands_before_all_work(lantern_sheet: RunSheet) -> None:
    text = html.document_fromstring(wall(msgspec.structs.replace(lantern_sheet, stops=("Raw all through",))))

    assert "Raw all through" in text.findall(".//section")[0].findtext("p")


def test_with_several_hands_each_row_says_whose(lantern_sheet: RunSheet) -> None:
    alone = html.document_fromstring(wall(lantern_sheet)).find(".//label").text_content()
    two = msgspec.structs.replace(lantern_sheet, hands=(*lantern_sheet.hands, "Anneli"))

    assert "host:" not in alone
    assert "host: " in html.document_fromstring(wall(two)).find(".//label").text_content()


def test_text_of_a_plan_stays_text_in_page_and_running_head(lantern_sheet: RunSheet) -> None:
    slots = tuple(msgspec.structs.replace(slot, named=HOSTILE) for slot in lantern_sheet.slots)
    made = wall(msgspec.structs.replace(lantern_sheet, plan=HOSTILE, slots=slots))
    page = html.document_fromstring(made)

    assert list(page.iter("script")) == []
    assert len(list(page.iter("style"))) == 1
    assert "<script>alert(1)</script>" in page.find(".//label").text_content()
    assert "size: a3" not in page.findtext(".//style")


@settings(max_examples=times(200))
@given(st.text(max_size=30))
def test_a_string_of_css_reads_back_and_ends_nothing(text: str) -> None:
    """CSS Syntax Level 3, 4.3.5 and 4.3.7: a string ends at its quotation mark or a line's end; an escape is a
    backslash, up to six hexadecimal digits and one white space."""
    made = css_text(text)
    inside = made[1:-1]

    assert made[0] == made[-1] == '"'
    assert re.fullmatch(r"[A-Za-z0-9 \\]*", inside)
    assert re.sub(r"\\([0-9a-f]{1,6}) ", lambda found: chr(int(found[1], 16)), inside) == text


def is_time(word: Word) -> bool:
    return re.fullmatch(r"\d\d:\d\d", word.text) is not None


@pytest.mark.slow
@pytest.mark.parametrize("paper", get_args(PaperSize))
def test_a_day_fits_a_sheet_of_paper_in_type_for_the_wall(
    lantern_sheet: RunSheet, tmp_path: Path, paper: PaperSize
) -> None:
    """71 pieces of work on two days, 53 of them on one."""
    sheets = printed(wall(lantern_sheet, paper), tmp_path)

    assert len(lantern_sheet.slots) > 60
    assert len(sheets) == len(days(lantern_sheet)) + 1
    for number, sheet in enumerate(sheets, start=1):
        top = min(word.top for word in sheet)
        head = " ".join(word.text for word in sheet if word.top < top + 3)
        assert re.fullmatch(rf"Lantern supper · (\w+ \d+ November|Mind) {number} / {len(sheets)}", head)
        if number < len(sheets):
            body = [word for word in sheet if word.top >= top + 3 and word.text != "□"]
            least = min(word.tall for word in body)
            assert least >= LINE * TYPE_FOR_THE_WALL
            assert min(word.tall for word in body if is_time(word)) > 1.1 * least
