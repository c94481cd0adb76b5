"""Timetables of ordinary dinners in which the plan says little, weighed as a cook would: what is done when, and what
nobody would do. Common practice, no source."""

from collections.abc import Iterator
from datetime import datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from board.plan.load import PlanFile, read_plan
from board.schedule.formulate import problem_of
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import to_run_sheet
from board.sheet import quiet
from board.sheet.company import as_planned
from board.sheet.rests import restless
from board.sheet.run_sheet import RunSheet, Slot

DINNERS = Path(__file__).parents[1] / "dinners"
NAMES = sorted(path.stem for path in DINNERS.glob("*.yaml"))
PAUSELESS = timedelta(hours=2)


@pytest.fixture(scope="module")
def sheets() -> dict[str, RunSheet]:
    return {name: _sheet(name) for name in NAMES}


def _sheet(name: str) -> RunSheet:
    file = read_plan((DINNERS / f"{name}.yaml").read_text(encoding="utf-8"), name)
    assert isinstance(file, PlanFile), file
    problem = problem_of(file.plan, file.filled)
    return to_run_sheet(file, problem, solve(problem))


def named(sheet: RunSheet, words: str) -> Slot:
    return next(slot for slot in sheet.slots if words in slot.name)


def minutes(until: datetime, since: datetime) -> float:
    return (until - since) / timedelta(minutes=1)


def work_ahead(sheet: RunSheet) -> Iterator[Slot]:
    return (slot for slot in sheet.slots if slot.attended and slot.start < sheet.arrive)


@pytest.mark.parametrize("name", NAMES)
def test_it_is_proved_and_gives_nothing_up(sheets: dict[str, RunSheet], name: str) -> None:
    sheet = sheets[name]
    assert sheet.proved
    assert sheet.given_up == ()
    assert restless(sheet) == []


@pytest.mark.parametrize("name", NAMES)
def test_those_who_eat_sit_their_first_minutes(sheets: dict[str, RunSheet], name: str) -> None:
    for each in quiet.as_planned(sheets[name]):
        assert minutes(each.until, each.served) >= 8, each.course.name


@pytest.mark.parametrize("name", NAMES)
def test_nothing_is_done_in_the_night(sheets: dict[str, RunSheet], name: str) -> None:
    zone = ZoneInfo(sheets[name].zone)
    for slot in work_ahead(sheets[name]):
        start, end = slot.start.astimezone(zone), slot.attended[-1].end.astimezone(zone)
        assert start.hour >= 8, slot.name
        assert (end.hour, end.minute) <= (22, 30), slot.name


@pytest.mark.parametrize("name", NAMES)
def test_every_oven_and_ring_is_called_off(sheets: dict[str, RunSheet], name: str) -> None:
    sheet = sheets[name]
    last = max(slot.end for slot in sheet.slots if slot.lane in ("oven", "stovetop") and slot.kind == "step")
    off = [slot.start for slot in sheet.slots if slot.kind == "off"]
    assert off
    assert max(off) >= last


def test_a_winter_dinner(sheets: dict[str, RunSheet]) -> None:
    sheet = sheets["winter-four"]
    served = {course.name: course.served for course in sheet.courses}
    arrive = sheet.arrive

    assert 0 <= minutes(arrive, named(sheet, "light the candles").end) <= 15
    assert named(sheet, "make coffee").start >= served["Sweet"]
    plated = named(sheet, "serve Sweet").start
    assert minutes(served["Sweet"], named(sheet, "turn out and slice the parfait").start) >= 5
    assert minutes(plated, named(sheet, "turn out and slice the parfait").start) <= 20
    assert not served["Main"] <= named(sheet, "bake the rolls").start <= served["Cheese"]
    assert named(sheet, "bake the rolls").end <= served["Soup"]
    assert named(sheet, "peel and chop the parsnips").start < arrive - timedelta(hours=3)  # a day in the fridge
    assert minutes(named(sheet, "blend the soup").end, named(sheet, "simmer the soup").end) <= 40  # still hot
    away = as_planned(sheet)
    assert max(away.values()) <= 2 * max(1, min(away.values()))  # shared between those who sit


def test_a_sunday_roast(sheets: dict[str, RunSheet]) -> None:
    sheet = sheets["sunday-roast"]
    served = {course.name: course.served for course in sheet.courses}

    assert named(sheet, "rest the beef").start == named(sheet, "roast the beef").end
    assert minutes(served["Roast"], named(sheet, "make the gravy").end) <= 35
    assert minutes(served["Roast"], named(sheet, "boil the carrots").end) <= 20
    assert named(sheet, "wash the small pan").start >= served["Roast"]  # the gravy stands in it till then
    assert named(sheet, "make coffee").start >= served["Pudding"]
    assert named(sheet, "wash up").end <= sheet.arrive


def test_a_cold_buffet_outdoors(sheets: dict[str, RunSheet]) -> None:
    sheet = sheets["orchard-buffet"]
    zone = ZoneInfo(sheet.zone)

    assert minutes(sheet.courses[0].served, named(sheet, "dress the leaves").end) <= 30
    assert named(sheet, "mow the grass").start.astimezone(zone).date() == sheet.arrive.astimezone(zone).date()
    assert minutes(sheet.arrive, named(sheet, "light the lanterns").end) <= 30
    assert minutes(sheet.arrive, named(sheet, "get the ice").end) <= 120


@pytest.mark.parametrize("name", NAMES)
def test_nobody_works_more_than_two_hours_without_a_pause(sheets: dict[str, RunSheet], name: str) -> None:
    """Counted here by hand: hands on work from start to end, before the guests come."""
    sheet = sheets[name]
    for who in sheet.hands:
        spans = sorted(
            (part.start, part.end)
            for slot in work_ahead(sheet)
            for part in slot.attended
            if part.who == who and part.kind in ("all", "start") and part.end <= sheet.arrive
        )
        begun, until = None, None
        for start, end in spans:
            if until is None or start - until >= timedelta(minutes=15):
                begun = start
            until = end if until is None else max(until, end)
            assert begun is not None
            assert until - begun <= PAUSELESS, (who, begun, until)
