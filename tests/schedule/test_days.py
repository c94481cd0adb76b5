"""Days that a body can do: pauses, supper, calm last hours, work spread over the days, what is alike together.

Two hours without a pause, and how work is priced, are ours; a quarter of an hour as the least that counts as a pause is
the German Working Hours Act's (ArbZG, section 4; from memory).
"""

from collections.abc import Callable
from datetime import timedelta
from itertools import pairwise

import pytest

from board.plan.load import PlanFile
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet.rests import restless
from board.sheet.run_sheet import Attended, RunSheet, Slot

PlanFrom = Callable[[str], PlanFile]

HEAD = """
event: Six at the long bench
date: 2027-03-20
zone: Europe/Lisbon
arrive: '19:00'
guests: [6 guests]
kitchen: {{ovens: {{oven: {{shelves: 2}}}}, rings: 4, fridge: 200 litres}}
hands: {{cook: {{hours: {{{hours}}}}}}}
courses:
  - course: All
    at: '19:30'
    dishes:
"""


def plan(dishes: dict[str, list[str]], hours: str) -> str:
    """A plan of one course; the steps of a dish one after another, as `name, minutes, keeps`."""
    text = HEAD.format(hours=hours)
    for dish, steps in dishes.items():
        text += f"      - dish: {dish}\n        perishable: no\n        ingredients: nothing\n        steps:\n"
        for step in steps:
            name, minutes, keeps = step.split(", ")
            text += f"          - {{step: {name}, takes: {minutes} min, keeps: {keeps}}}\n"
    return text


def work(sheet: RunSheet) -> list[tuple[Slot, Attended]]:
    """All before the guests come, in order of time."""
    parts = [(slot, part) for slot in sheet.slots for part in slot.attended if part.start < sheet.arrive]
    return sorted(parts, key=lambda each: each[1].start)


def minutes(sheet: RunSheet, day: str) -> int:
    return sum(
        int((part.end - part.start) / timedelta(minutes=1)) for _, part in work(sheet) if f"{part.start:%a}" == day
    )


def longest(sheet: RunSheet) -> timedelta:
    """The longest stretch of work without a pause of a quarter of an hour, worked out step by step."""
    most, since, until = timedelta(), sheet.arrive, sheet.arrive
    for n, (_, part) in enumerate(work(sheet)):
        if n == 0 or part.start - until >= timedelta(minutes=15):
            since = part.start
        until = part.end
        most = max(most, until - since)
    return most


TWO_DAYS = "day before: 17:00 - 22:30, on the day: 9:00 - 23:00"
FIVE_JARS = {f"Relish {n}": [f"cook relish {n}, 50, 3 days in the fridge"] for n in "abcde"}


def test_an_evening_of_long_work_has_its_pauses_and_its_supper(plan_from: PlanFrom) -> None:
    """All of it must lie on the evening before: five hours and a quarter are there for four hours of work."""
    hours = "day before: 17:00 - 22:30, on the day: 18:00 - 23:00"
    sheet = make_sheet(plan_from(plan(FIVE_JARS, hours)), solve)

    assert minutes(sheet, "Fri") == 250
    assert longest(sheet) <= timedelta(hours=2)
    assert restless(sheet) == []


def test_work_that_leaves_no_room_for_a_pause_bends_and_is_told(plan_from: PlanFrom) -> None:
    hours = "day before: 17:00 - 21:20, on the day: 18:30 - 23:00"
    sheet = make_sheet(plan_from(plan(FIVE_JARS, hours)), solve)

    told = restless(sheet)

    assert [each.minutes for each in told] == [longest(sheet) / timedelta(minutes=1), 0]
    assert [f"{each.start:%a %H:%M}" for each in told][1] == "Fri 18:00"  # and no supper
    assert timedelta(minutes=250) <= longest(sheet) <= timedelta(minutes=260)
    assert not sheet.given_up


def test_what_keeps_a_day_is_spread_over_evening_and_morning(plan_from: PlanFrom) -> None:
    sheet = make_sheet(plan_from(plan(FIVE_JARS, TWO_DAYS)), solve)

    assert minutes(sheet, "Fri") == 100
    assert minutes(sheet, "Sat") == 150


def test_little_work_is_done_on_the_day_and_out_of_the_last_three_hours(plan_from: PlanFrom) -> None:
    sheet = make_sheet(plan_from(plan({"Relish": ["cook the relish, 50, 3 days in the fridge"]}, TWO_DAYS)), solve)

    (_, part), *_ = work(sheet)

    assert f"{part.start:%a}" == "Sat"
    assert part.end <= sheet.arrive - timedelta(hours=3)


def test_what_keeps_longest_is_done_first(plan_from: PlanFrom) -> None:
    """Three hours and more of work, of which some keeps four days and some a day and a half."""
    dishes = {
        **{f"Pickle {n}": [f"pickle {n}, 40, 4 days in the fridge"] for n in "abc"},
        **{f"Salad {n}": [f"mix salad {n}, 40, 36 h in the fridge"] for n in "abc"},
    }
    sheet = make_sheet(plan_from(plan(dishes, TWO_DAYS)), solve)

    on_friday = {slot.dish.split()[0] for slot, part in work(sheet) if slot.dish and f"{part.start:%a}" == "Fri"}

    assert on_friday == {"Pickle"}


@pytest.mark.parametrize("verb", ["peel", "chop"])
def test_one_board_or_one_peeler_is_out_once(plan_from: PlanFrom, verb: str) -> None:
    dishes = {
        "Roots": [f"{verb} the carrots, 15, 1 day in the fridge", "roll them in oil, 10, 1 day in the fridge"],
        "Cream": ["whip the cream, 10, 1 day in the fridge"],
        "Slaw": [f"{verb} the parsnips, 15, 1 day in the fridge", "toss the slaw, 10, 1 day in the fridge"],
    }
    sheet = make_sheet(plan_from(plan(dishes, TWO_DAYS)), solve)
    names = [slot.name for slot, _ in work(sheet)]
    first, second = sorted(n for n, name in enumerate(names) if name.startswith(verb))

    assert second == first + 1


def test_a_morning_is_no_longer_than_its_work_and_not_broken_by_waits_of_minutes(plan_from: PlanFrom) -> None:
    dishes = {f"Dip {n}": [f"stir dip {n}, 20, 20 h in the fridge"] for n in "abcd"}
    sheet = make_sheet(plan_from(plan(dishes, TWO_DAYS)), solve)
    rests = [
        after.start - before.end
        for (_, before), (_, after) in pairwise(work(sheet))
        if after.start < sheet.arrive - timedelta(hours=3)
    ]

    assert rests == [timedelta()] * 3
