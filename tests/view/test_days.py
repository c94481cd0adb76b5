"""The days of a timetable: at a glance, drawn, and what holds a step."""

from datetime import date

import msgspec
import pytest
from rich.cells import cell_len

from board.sheet.run_sheet import RunSheet
from board.view.days import NAME_WIDTH, day_of_slot, drawn_day, glances, held
from tests.conftest import slot


def texts(sheet: RunSheet, day: date, width: int) -> list[str]:
    return ["".join(text for text, _ in row) for row in drawn_day(sheet, day, width).rows]


def test_every_day_is_told_in_a_line_with_hands_heats_and_how_full_the_cold_is(lantern_sheet: RunSheet) -> None:
    found = glances(lantern_sheet)

    assert [each.day.isoformat() for each in found] == ["2026-11-27", "2026-11-28"]
    assert all("of 60 l" in each.told and "°C" in each.told for each in found)
    worked = {part.who for item in lantern_sheet.slots for part in item.attended}
    assert {who for each in found for who, _ in each.hands} == worked


@pytest.mark.parametrize("width", [30, 60, 80, 160])
def test_a_day_keeps_to_its_width_and_shows_every_lane_course_and_hand(lantern_sheet: RunSheet, width: int) -> None:
    rows = texts(lantern_sheet, date(2026, 11, 28), width)

    assert all(cell_len(row) <= width for row in rows)
    names = [row[:NAME_WIDTH].strip() for row in rows]
    assert {"Courses", "Heat", "host"} <= set(names)
    assert any(name.startswith("Oven") for name in names)


def test_hands_are_drawn_where_they_are_on_something(little: RunSheet) -> None:
    day = glances(little)[-1].day
    rows = texts(little, day, 100)

    hands = next(row for row in rows if row.startswith("host"))
    assert "━" in hands
    assert glances(little)[-1].hands[0][0] == "host"


def test_who_eats_is_free_at_the_table_between_serving_and_clearing_but_for_work(lantern_sheet: RunSheet) -> None:
    day = date(2026, 11, 28)
    (host,) = (row for row in texts(lantern_sheet, day, 200) if row.startswith("host"))
    hired = msgspec.structs.replace(lantern_sheet, hired_hands=("host",))
    (of_hired,) = (row for row in texts(hired, day, 200) if row.startswith("host"))

    assert "━▰" in host
    assert "▰━" in host
    assert "▰" not in of_hired


def test_two_things_at_once_are_the_same_minutes_of_a_hand() -> None:
    one = slot("stir", "17:00", "17:30")
    other = slot("chop", "17:10", "17:40")
    sheet = RunSheet("Two", "UTC", "0", "2026-11-28", one.start, (), (one, other), hands=("host",))

    assert glances(sheet)[0].hands == (("host", 40),)


def test_the_chosen_step_stands_out_and_tells_what_holds_it(lantern_sheet: RunSheet) -> None:
    chosen = next(item for item in lantern_sheet.slots if item.name == "roast the roots")
    day = day_of_slot(lantern_sheet, chosen.id)

    assert day == date(2026, 11, 28)
    drawn = [
        text for row in drawn_day(lantern_sheet, day, 120, chosen.id).rows for text, role in row if role == "chosen"
    ]
    assert len(drawn) == 1
    assert held(lantern_sheet, chosen.id)[0].startswith("roast the roots")
    assert (held(lantern_sheet, "nothing"), day_of_slot(lantern_sheet, "nothing")) == ((), None)


def test_text_of_a_plan_is_safe() -> None:
    evil = slot("stir \x1b[2J", "17:00", "18:30")
    sheet = RunSheet("Two", "UTC", "0", "2026-11-28", evil.start, (), (evil,), hands=("host\x1b",))

    assert "\x1b" not in "".join(texts(sheet, date(2026, 11, 28), 80))
    assert drawn_day(sheet, date(2026, 11, 27), 80).rows == ()
