"""The printed sheet by blocks of work: what stands on it, and what does not."""

import io
import re
from typing import Any

import msgspec
import pytest
from rich.console import Console

from board.output.sheet import print_sheet
from board.sheet.run_sheet import Attended, Dependency, RunSheet, Slot
from board.sheet.why import find, held_up_by
from tests.conftest import at, slot


def printed(sheet: RunSheet, by: str = "day", width: int = 100) -> list[str]:
    out = io.StringIO()
    print_sheet(sheet, by, Console(file=out, width=width, markup=False, highlight=False))
    return [line.rstrip() for line in out.getvalue().splitlines()]


def beef(id_: str, start: str, end: str, **more: Any) -> Slot:
    return slot(id_, start, end, **{"course": "Main", "dish": "Beef in beer", **more})


def with_slots(little: RunSheet, *slots: Slot, hands: tuple[str, ...] = ("host",)) -> RunSheet:
    return msgspec.structs.replace(little, slots=slots, courses=(), hands=hands)


def test_a_block_is_a_heading_with_its_steps_below(little: RunSheet) -> None:
    lines = printed(with_slots(
        little,
        beef("brown the beef", "17:00", "17:30", look_for="dark\x1b[31m [b]crust[/b]"),
        slot("slice leeks", "17:32", "17:44", course="Soup", dish="Leek pot"),
        slot("chop", "17:44", "17:46", course="Soup", dish="Leek pot"),
        beef("build the braise", "17:48", "18:06", give_minutes=18),
    ))  # fmt: skip

    start = lines.index("Saturday 28 November") + 1
    assert lines[start : start + 5] == [
        "17:00–18:06  Beef in beer: brown, build the braise",
        "      17:00  □ brown the beef · 30 min · look for: dark\N{REPLACEMENT CHARACTER}[31m [b]crust[/b]",
        "      17:32  □ slice leeks (Leek pot) · 12 min",
        "      17:44  □ chop (Leek pot) · 2 min",
        "      17:48  □ build the braise · 18 min · give 18 min",
    ]


def test_a_block_of_one_step_is_one_line_and_says_who_where_more_than_one_works(little: RunSheet) -> None:
    hers = beef("carve", "17:50", "18:00", attended=(Attended(at("17:50"), at("18:00"), "Anneli", "all"),))

    lines = printed(with_slots(little, slot("lay the table", "17:00", "17:20", kind="job"), hers,
                               hands=("host", "Anneli")))  # fmt: skip

    assert "17:00–17:20  □ host · lay the table" in lines
    assert "17:50–18:00  □ Anneli · Beef in beer: carve" in lines


def test_what_runs_by_itself_says_till_when_and_what_it_held_up(little: RunSheet) -> None:
    boil = beef("boil", "17:00", "17:40", lane="stovetop", attended=(
        Attended(at("17:00"), at("17:01"), "host", "start"), Attended(at("17:20"), at("17:21"), "host", "look-in"),
        Attended(at("17:38"), at("17:40"), "host", "end")))  # fmt: skip
    chop = beef("chop", "17:05", "17:15")
    mash = beef("mash", "17:40", "17:50", waits=(Dependency("boil", "end", 0, "order"),))

    lines = printed(with_slots(little, boil, chop, mash))

    assert "      17:00  □ boil · 40 min, till 17:40 · stovetop" in lines
    assert "             look in: boil 17:20" in lines
    assert "17:38–17:40  □ look in: boil end 17:38" in lines
    assert "17:40–17:50  □ Beef in beer: mash · waits for: boil" in lines


@pytest.mark.parametrize(
    ("minutes", "attended", "held_up"),
    [(0, "start", True), (5, "start", False), (0, "all", False)],
)
def test_only_what_runs_by_itself_until_just_then_is_waited_for(
    little: RunSheet, minutes: int, attended: str, held_up: bool
) -> None:
    boil = beef("boil", "17:00", "17:40", attended=(Attended(at("17:00"), at("17:40"), "host", attended),))
    start = f"17:{40 + minutes}"
    mash = beef("mash", start, "17:55", waits=(Dependency("boil", "end", minutes, "order"),))

    assert [each.id for each in held_up_by({"boil": boil, "mash": mash}, mash)] == ["boil"] * held_up


@pytest.mark.parametrize(
    ("minutes", "told"), [(None, ""), (0, " · no give"), (60, " · give 60 min"), (61, ""), (720, "")]
)
def test_give_is_told_where_it_is_short(little: RunSheet, minutes: int | None, told: str) -> None:
    sheet = with_slots(little, slot("polish", "17:00", "17:20", kind="job", give_minutes=minutes))

    assert f"17:00–17:20  □ polish{told}" in printed(sheet)
    assert (f"{minutes} min" in "\n".join(printed(sheet, "person"))) == bool(told)


@pytest.mark.parametrize("by", ["day", "person", "lane"])
def test_no_row_takes_no_minutes(lantern_sheet: RunSheet, by: str) -> None:
    lines = printed(lantern_sheet, by)

    assert not any(re.match(r" *(\d\d:\d\d)[ –]+\1", line) for line in lines)
    assert "18:30 guests arrive" in "\n".join(lines)


@pytest.mark.parametrize("width", [80, 100, 120])
def test_every_step_of_a_plan_stands_on_it_by_its_name(lantern_sheet: RunSheet, width: int) -> None:
    lines = printed(lantern_sheet, width=width)
    text = " ".join(line.strip() for line in lines)

    assert all(len(line) <= width for line in lines)
    for each in lantern_sheet.slots:
        assert each.name in text
        assert find(lantern_sheet, each.id) == each


def test_a_heading_is_one_line_and_says_how_much_it_leaves_out(little: RunSheet) -> None:
    steps = [beef(f"stir the pot a {n}th time with a long spoon", f"17:{n:02d}", f"17:{n + 1:02d}") for n in range(10)]

    lines = printed(with_slots(little, *steps), width=80)

    (heading,) = [line for line in lines if line.startswith("17:00–17:10")]
    assert re.search(r"Beef in beer: stir .* and \d+ more$", heading)


def test_past_midnight_the_clock_says_which_day(little: RunSheet) -> None:
    lines = printed(with_slots(little, slot("wash", "23:50", "24:10", kind="job"),
                               slot("dry", "24:12", "24:30", kind="job")))  # fmt: skip

    assert "23:50–Sun 00:30  wash, dry" in lines
    assert not any(line.startswith("Sunday") for line in lines)
