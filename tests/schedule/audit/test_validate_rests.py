"""A rest in a switched-off oven: at its minute, in its oven, alone; the validator names what is otherwise."""

from collections.abc import Callable

import pytest
from msgspec.structs import replace

from board.plan.load import PlanFile
from board.schedule.audit.validate import validate
from board.sheet.run_sheet import Attended, RunSheet, Use
from board.sheet.told import GivenUp, WaitsPast
from tests.schedule.audit.slow_drying import (
    AFTER_THE_REST,
    APPLES,
    DRY,
    FETCH,
    KEPT_WARM,
    PLUMS,
    REST,
    REST_NAME,
    TRAY,
    TRAY_ALONE,
    heating_of,
    with_use,
)
from tests.schedule.audit.tampering import Tampered, minutes, moved, on, says, sheet_of, with_slot


def test_a_sheet_with_a_rest_holds(found_in: Tampered, sheet: RunSheet) -> None:
    assert found_in(sheet) == []
    assert sheet.given_up == ()
    rest = sheet.by_id()[REST]
    assert rest.uses == (Use("main oven", 2, rest.start, rest.end, None, off=True),)


@pytest.mark.parametrize("late", [1, -1])
def test_a_rest_begins_the_very_minute_its_bake_ends(found_in: Tampered, sheet: RunSheet, late: int) -> None:
    rest = sheet.by_id()[REST]
    (bake,) = (slot.id for slot in sheet.slots if slot.name == "dry the apple slices")
    told = (GivenUp(WaitsPast(bake, REST, 1, 0), "", 1),)

    found = found_in(replace(moved(sheet, REST, rest.start + minutes(late)), given_up=told))

    assert says(found, REST_NAME, "the oven is switched off as dry the apple slices ends", "Fri")


def test_a_rest_stays_in_the_oven_of_its_bake(found_in: Tampered, sheet: RunSheet) -> None:
    bake, rest = sheet.by_id()[DRY], sheet.by_id()[REST]
    elsewhere = with_use(sheet, REST, what="bread oven", amount=3)
    baked_elsewhere = with_slot(sheet, DRY, uses=tuple(replace(use, what="bread oven") for use in bake.uses))

    assert rest.uses[0].what == "main oven"
    assert says(found_in(elsewhere), f"{REST_NAME} does not take what it asks for")
    assert says(found_in(baked_elsewhere), "dry the apple slices does not take what it asks for")


def test_a_rest_in_whichever_oven_is_that_of_its_bake(plan_from: Callable[[str], PlanFile]) -> None:
    plan_file = plan_from(APPLES.replace("where: main oven", "where: oven"))
    sheet = sheet_of(plan_file)
    own = sheet.by_id()[REST].uses[0].what
    other, shelves = {"main oven": ("bread oven", 3), "bread oven": ("main oven", 2)}[own]

    assert validate(plan_file, sheet) == []
    found = validate(plan_file, with_use(sheet, REST, what=other, amount=shelves))
    assert says(found, f"{REST_NAME} rests in the {other}, which dry the apple slices was not in")


def test_a_rest_takes_the_whole_oven_and_no_heat(found_in: Tampered, sheet: RunSheet) -> None:
    rest = sheet.by_id()[REST]
    shorter = with_use(sheet, REST, end=rest.end - minutes(1))
    twice = with_slot(sheet, REST, uses=rest.uses * 2)
    hot = with_use(sheet, REST, celsius=107)
    on_ = with_use(sheet, REST, off=False, celsius=107)

    for wrong in (with_use(sheet, REST, amount=1), shorter, twice, hot, on_, with_slot(sheet, REST, uses=())):
        assert says(found_in(wrong), f"{REST_NAME} does not take what it asks for")


def test_what_is_baked_or_cooked_is_not_told_as_off(found_in: Tampered, sheet: RunSheet) -> None:
    extra = Use("main oven", 2, sheet.by_id()[PLUMS].start, sheet.by_id()[PLUMS].end, None, off=True)

    assert says(found_in(with_use(sheet, DRY, off=True)), "dry the apple slices does not take what it asks for")
    plums = with_slot(sheet, PLUMS, uses=(*sheet.by_id()[PLUMS].uses, extra))
    assert says(found_in(plums), "cook the plums does not take what it asks for")


def test_nothing_is_put_in_during_the_rest(found_in: Tampered, sheet: RunSheet) -> None:
    rest = sheet.by_id()[REST]
    during = moved(sheet, TRAY, rest.start + minutes(10))
    at_its_end = moved(sheet, TRAY, rest.end)

    assert says(found_in(during), "bake the tray is in the main oven at", f"while {REST_NAME} rests in it")
    assert not says(found_in(at_its_end), "rests in it")


def test_nothing_is_kept_in_the_oven_during_the_rest(plan_from: Callable[[str], PlanFile]) -> None:
    plan_file = plan_from(APPLES.replace(TRAY_ALONE, KEPT_WARM).replace(AFTER_THE_REST, ""))
    sheet = sheet_of(plan_file)
    rest, warm = sheet.by_id()[REST], "tray-bake/warm-the-syrup"

    assert validate(plan_file, sheet) == []
    before = moved(sheet, warm, rest.start + minutes(5))
    assert says(validate(plan_file, before), "what warm the syrup made is in the main oven", "rests in it")


def test_the_oven_is_not_turned_on_during_the_rest(found_in: Tampered, sheet: RunSheet) -> None:
    rest, heating = sheet.by_id()[REST], heating_of(sheet, TRAY)
    early = moved(sheet, heating.id, rest.end - minutes(1))
    at_its_end = moved(sheet, heating.id, rest.end)

    assert says(found_in(early), "the main oven is turned to 180 °C at", f"while {REST_NAME} rests in it")
    assert not says(found_in(at_its_end), "rests in it")


def test_a_rest_follows_what_was_baked_in_the_way_that_was_taken(plan_from: Callable[[str], PlanFile]) -> None:
    either = APPLES.replace(
        "            keeps: 2 min\n", "            keeps: 2 min\n            or:\n              - where: stovetop\n"
    )
    plan_file = plan_from(either)
    sheet = sheet_of(plan_file)
    bake = sheet.by_id()[DRY]
    ring = with_slot(sheet, DRY, lane="stovetop", uses=(Use("rings", 1, bake.start, bake.end),))
    ring = with_slot(ring, DRY, attended=(Attended(bake.start, bake.end, "host", "all"),))

    assert validate(plan_file, sheet) == []
    assert says(validate(plan_file, ring), f"{REST_NAME} rests in the main oven, switched off, after nothing")


def test_what_only_rests_needs_nobody_at_home(plan_from: Callable[[str], PlanFile]) -> None:
    overnight = APPLES.replace("takes: 60 min", "takes: 10 h\n            attended: none").replace(
        "            day: day before\n          - step: top", "          - step: top"
    )
    plan_file = plan_from(
        overnight.replace("            day: day before\n            after: rest", "            after: rest")
    )
    sheet = sheet_of(plan_file)

    assert validate(plan_file, sheet) == []
    assert sheet.by_id()[REST].end > on("06:00")


def test_what_was_in_an_oven_for_no_time_may_be_kept_in_any(plan_from: Callable[[str], PlanFile]) -> None:
    """A step of no minutes tells no oven; while one oven rests, its result may stand in the other."""
    in_no_time = """      - dish: Flatbreads
        steps:
          - {step: fetch the flatbreads, where: oven at 60 C, takes: 0 min, keeps: 4 h in the oven at 60 C}
          - {step: wrap the flatbreads, takes: 10 min, keeps: 2 days, day: day before}
      - dish: Tray bake
"""
    text = APPLES.replace("      - dish: Tray bake\n", in_no_time)
    either, main = plan_from(text), plan_from(text.replace("4 h in the oven", "4 h in the main oven"))
    sheet = sheet_of(either)
    rest, wrap, fetch = (sheet.by_id()[id_] for id_ in (REST, "flatbreads/wrap-the-flatbreads", FETCH))
    during = moved(moved(sheet, FETCH, rest.start + minutes(10)), wrap.id, rest.start + minutes(40))

    assert fetch.start == fetch.end
    assert validate(either, sheet) == []
    assert not says(validate(either, during), "while", "rests in it")
    assert says(validate(main, during), "what fetch the flatbreads made is in the main oven", "rests in it")
