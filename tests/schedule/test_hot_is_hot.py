"""What is kept hot has somebody at home, and what is kept in the oven it was baked in waits for it to change."""

from collections.abc import Callable
from datetime import UTC, datetime, timedelta

import pytest
from msgspec.structs import replace

from board.plan.load import PlanFile
from board.schedule.audit.validate import validate
from board.sheet.run_sheet import Keeping, RunSheet
from board.sheet.told import Because, NoPlace, PastClock
from tests.schedule.audit.tampering import says, sheet_of, with_slot

PlanFrom = Callable[[str], PlanFile]

LATE_LUNCH = """
event: Late lunch
date: 2026-09-12
zone: UTC
arrive: '17:30'
guests: [4 guests]
kitchen: {{ovens: {{oven: {{shelves: 2, heats: 40 min to 180 C, cools: 30 min from 200 to 100 C}}}}, rings: 2}}
hands: {{host: {{hours: {{on the day: '{hours}'}}}}}}
{more}
courses:
  - course: Lunch
    at: '18:00'
    dishes:
      - dish: Ham
        steps:
          - {{step: bake the ham, where: oven at 200 C, takes: 40 min, attended: none, not after: '15:00', {keeps}}}
          - {{step: slice the ham, takes: 5 min, attended: all, not before: '17:00'}}
"""
SHOPPING = "shopping: {on the day: '15:30 - 16:30'}"


def lunch(plan_from: PlanFrom, keeps: str, hours: str = "12:00 - 22:00", more: str = "") -> PlanFile:
    return plan_from(LATE_LUNCH.format(keeps=keeps, hours=hours, more=more))


def at(clock: str) -> datetime:
    return datetime.fromisoformat(f"2026-09-12T{clock}:00+00:00").astimezone(UTC)


HOT = [
    ("4 h in the oven at 80 C", "oven"),
    ("'4 h on the stovetop, 1 ring'", "stovetop"),
    ("4 h hot", "hot"),
    ("'4 h in the room, 1 ring'", "room"),
]


@pytest.mark.parametrize(("keeps", "where"), HOT)
@pytest.mark.parametrize(("hours", "more"), [("12:00 - 22:00", SHOPPING), ("12:00 - 15:30, 16:30 - 22:00", "")])
def test_nothing_is_kept_hot_with_nobody_home(
    plan_from: PlanFrom, keeps: str, where: str, hours: str, more: str
) -> None:
    """By the manual: the host is at the shops, or has no hours. The ham is out by 15:00 and sliced after 17:00,
    so it cannot be kept hot, and the sheet says so: it stands out for longer than its clock gives it."""
    plan = lunch(plan_from, f"keeps: {keeps}", hours, more)
    sheet = sheet_of(plan)

    past, no_place = sheet.given_up
    assert isinstance(past.what, PastClock)
    assert (type(no_place.what), no_place.why) == (NoPlace, Because("nobody-home"))
    assert sheet.by_id()["ham/bake-the-ham"].keeping == Keeping(0, None, exposed=True)
    assert validate(plan, sheet) == []
    as_if = replace(with_slot(sheet, "ham/bake-the-ham", keeping=Keeping(240, where)), given_up=())
    assert says(validate(plan, as_if), "bake the ham made is kept hot", "nobody is at home")


@pytest.mark.parametrize("keeps", ["4 h in the room, perishable: no", "4 h in the fridge"])
def test_what_is_kept_cold_may_stand_by_itself(plan_from: PlanFrom, keeps: str) -> None:
    plan = lunch(plan_from, f"keeps: {keeps}", more=SHOPPING)
    sheet = sheet_of(plan)

    assert sheet.given_up == ()
    assert validate(plan, sheet) == []


def test_a_way_that_leaves_nothing_hot_is_taken_where_there_is_one(plan_from: PlanFrom) -> None:
    plan = lunch(plan_from, "keeps: 4 h hot, perishable: no, or: [{keeps: 4 h in the room}]", more=SHOPPING)
    sheet = sheet_of(plan)

    assert sheet.given_up == ()
    assert sheet.by_id()["ham/bake-the-ham"].plan_way == 1


def dial_turns(sheet: RunSheet) -> list[tuple[datetime, datetime, int | None]]:
    turns = [slot for slot in sheet.slots if slot.kind == "heat"]
    return [(slot.start, slot.end, slot.uses[0].celsius) for slot in turns]


def test_what_is_kept_in_the_oven_it_was_baked_in_waits_until_that_has_cooled(plan_from: PlanFrom) -> None:
    """From 200 to 100 °C in 30 min, by the plan's own figure."""
    plan = lunch(plan_from, "keeps: 4 h in the oven at 100 C (90 to 110 C)")
    sheet = sheet_of(plan)

    out = sheet.by_id()["ham/bake-the-ham"].end
    assert dial_turns(sheet)[-1] == (out, out + timedelta(minutes=30), 100)
    assert validate(plan, sheet) == []
    turn = max((slot for slot in sheet.slots if slot.kind == "heat"), key=lambda slot: slot.start)
    in_no_time = with_slot(sheet, turn.id, end=turn.start, uses=(replace(turn.uses[0], end=turn.start),))
    assert says(validate(plan, in_no_time), "from 200 to 100 °C", "too short")


def test_nothing_else_uses_an_oven_that_cools_for_what_was_baked_in_it(plan_from: PlanFrom) -> None:
    """Bread at 100 °C beside the ham goes in when it is kept there: not before the oven has cooled."""
    bread = """
      - dish: Bread
        steps:
          - {step: dry the bread, where: oven at 100 C, takes: 60 min, attended: none, not after: '16:10', keeps: 4 h}
"""
    keeps = "keeps: 4 h in the oven at 100 C, not before: '14:20'"
    plan = plan_from(LATE_LUNCH.format(keeps=keeps, hours="12:00 - 22:00", more="") + bread)
    sheet = sheet_of(plan)

    assert validate(plan, sheet) == []
    slots = sheet.by_id()
    cooled = slots["ham/bake-the-ham"].end + timedelta(minutes=30)
    bread_in, bread_out = slots["bread/dry-the-bread"].start, slots["bread/dry-the-bread"].end
    assert bread_in >= cooled or bread_out <= slots["ham/bake-the-ham"].start


KEPT_WARM = """
event: Early lunch
date: 2026-09-12
zone: UTC
arrive: '12:20'
guests: [2 guests]
kitchen: {{ovens: {{oven: {{shelves: 2, heats: {heats} min to 80 C}}}}, rings: 2}}
hands: {{host: {{hours: {{on the day: '12:00 - 22:00'}}}}}}
courses:
  - course: Lunch
    at: '12:45'
    dishes:
      - dish: Fritters
        steps:
          - {{step: fry the fritters, where: stovetop, takes: 10 min, not after: '12:{last}',
              keeps: 1 h in the oven at 80 C (80 to 80 C)}}
          - {{step: pile them up, takes: 5 min, attended: all, not before: '12:35'}}
"""


@pytest.mark.parametrize(("last", "kept"), [(25, True), (24, False)])
def test_nor_is_an_oven_lit_for_keeping_before_somebody_comes_home(plan_from: PlanFrom, last: int, kept: bool) -> None:
    """Fried for 10 minutes and then kept in an oven that heats for 25, with nobody at home before noon: what is done by
    12:25 can be kept there, and what must be done a minute sooner cannot."""
    plan = plan_from(KEPT_WARM.format(heats=25, last=last))
    sheet = sheet_of(plan)

    keeping = sheet.by_id()["fritters/fry-the-fritters"].keeping
    assert keeping is not None
    assert (keeping.where == "oven") is kept
    assert bool(sheet.given_up) is not kept
    assert validate(plan, sheet) == []
