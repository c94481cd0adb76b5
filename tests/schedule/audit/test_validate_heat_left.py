"""What heat a switched-off oven still has when it is on again, and ovens that cool with the door ajar.

An oven's usual figures (15 min from 20 to 175 °C; 25 min from 200 to 120 °C): common practice, no source. What
follows from them is reckoned here by hand, with Newton's law of cooling T = Ta + (T0 − Ta)·e^(−kt).
"""

import math
from collections.abc import Callable
from datetime import timedelta

import pytest
from msgspec.structs import replace

from board.plan.load import PlanFile
from board.schedule.audit.validate import validate
from board.sheet.run_sheet import RunSheet
from board.sheet.told import OverHours
from tests.schedule.audit.slow_drying import (
    AFTER_THE_REST,
    APPLES,
    DRY,
    KEPT_WARM,
    REST,
    TRAY,
    TRAY_ALONE,
    heating_of,
    length,
)
from tests.schedule.audit.tampering import Tampered, minutes, moved, says, sheet_of, with_slot

TOP_AFTER = "            keeps: 20 min\n            after: rest the apple slices in the closed oven"
AT_ONCE = "            after: roast the squash, at once"

LONG_UNUSED = """
event: Long unused
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [8 guests]
kitchen:
  ovens: {oven: {cools: 60 min from 200 to 120 C}}
hands:
  host:
    hours:
      on the day: 14:00 - 23:30
courses:
  - course: Bread and tart
    at: 19:30
    dishes:
      - dish: Bread
        steps:
          - step: bake the bread
            where: oven at 240 C
            takes: 40 min
            not after: 15:30
            keeps: 8 h
      - dish: Tart
        steps:
          - step: bake the tart
            where: oven at 180 C
            takes: 30 min
            not before: 17:05
            not after: 18:00
            keeps: 4 h
"""

ROAST_THEN_DRY = """
event: Roast, then dry
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [8 guests]
kitchen:
  ovens: {oven: {cools ajar: 10 min from 200 to 120 C}}
hands:
  host:
    hours:
      on the day: 14:00 - 23:30
courses:
  - course: Main
    at: 19:30
    dishes:
      - dish: Squash
        steps:
          - step: roast the squash
            where: oven at 200 C
            takes: 40 min
            keeps: 8 h
          - step: dry the seeds
            where: oven at 80 C
            takes: 30 min
            keeps: 8 h
"""


def test_what_heat_a_rest_leaves_shortens_the_next_heating(found_in: Tampered, sheet: RunSheet) -> None:
    """107.22 °C falls in 60 min, k = ln(180/100)/25, to 41.28 °C; 155 °C in 15 min from there to 180: 13.42 min.

    The longer it then stands, the colder it is switched on: from the room's 20 °C it is 15.48 min.
    """
    heating, rest = heating_of(sheet, TRAY), sheet.by_id()[REST]
    k, since = math.log(180 / 100) / 25, (heating.start - rest.end).total_seconds() / 60
    left = 20 + (107.2222 - 20) * math.exp(-k * (60 + since))

    assert length(heating) == pytest.approx((180 - left) / (155 / 15), abs=1.0)
    assert heating.start >= rest.end
    short = with_slot(sheet, heating.id, start=heating.start + minutes(3))
    assert says(found_in(short), "bake the tray goes into the main oven", "not brought to its heat in time")
    without = replace(sheet, slots=tuple(slot for slot in sheet.slots if slot is not heating))
    assert says(found_in(without), "bake the tray goes into the main oven", "not brought to its heat in time")


def at_once(sheet: RunSheet, heating_minutes: int) -> RunSheet:
    """The sheet with the tray going in after a heating of so many minutes that begins as the rest ends."""
    end, heating = sheet.by_id()[REST].end, heating_of(sheet, TRAY)
    ready = end + minutes(heating_minutes)
    return moved(with_slot(sheet, heating.id, start=end, end=ready), TRAY, ready)


def test_an_oven_that_rested_with_its_door_ajar_is_colder(
    plan_from: Callable[[str], PlanFile], apples: PlanFile, sheet: RunSheet
) -> None:
    """Shut, 13.42 min bring it from 41.28 to 180 °C. Ajar, k = ln(180/100)/10: 22.57 °C, and 15.24 min."""
    ajar = plan_from(APPLES.replace("main oven off", "main oven off, door ajar"))
    unknown = plan_from(
        APPLES.replace("main oven off", "main oven off, door ajar").replace(
            ", cools ajar: 10 min from 200 to 120 C", ""
        )
    )
    cold = "bake the tray goes into the main oven"

    assert not says(validate(apples, at_once(sheet, 14)), cold)
    assert says(validate(ajar, at_once(sheet, 14)), cold, "not brought to its heat in time")
    assert not says(validate(ajar, at_once(sheet, 16)), cold)
    assert not says(validate(unknown, at_once(sheet, 14)), cold)


def test_a_hot_oven_that_rested_briefly_cools_on(plan_from: Callable[[str], PlanFile]) -> None:
    """220 °C falls in 10 min, k = ln(180/100)/25, to 178.1 °C; to 80 °C it needs ln(158.1/60)/k = 41.2 min more.

    Half a minute is left to rounding.
    """
    text = APPLES.replace("225 F (215 to 235 F)", "220 C").replace("takes: 60 min", "takes: 10 min")
    text = text.replace("main oven at 180 C", "main oven at 80 C").replace(", cools ajar: 10 min from 200 to 120 C", "")
    plan_file = plan_from(text)
    sheet = sheet_of(plan_file)

    assert validate(plan_file, sheet) == []
    assert says(validate(plan_file, at_once(sheet, 39)), "bake the tray goes into", "not brought to its heat in time")
    assert not says(validate(plan_file, at_once(sheet, 41)), "bake the tray goes into")


def test_what_is_kept_warm_after_a_rest_waits_for_its_heat(plan_from: Callable[[str], PlanFile]) -> None:
    """The rest leaves 41.28 °C; to the 50 °C it accepts, at 155 °C in 15 min, takes 0.84 min."""
    plan_file = plan_from(APPLES.replace(TRAY_ALONE, KEPT_WARM).replace(AFTER_THE_REST, ""))
    sheet = sheet_of(plan_file)
    rest, warm = sheet.by_id()[REST], "tray-bake/warm-the-syrup"

    def kept_from(gap: int) -> list[str]:
        return validate(plan_file, moved(sheet, warm, rest.end + minutes(gap - 5)))

    assert says(kept_from(0), "what warm the syrup made goes into the main oven", "too soon to stand at 60 °C")
    assert not says(kept_from(1), "too soon to stand at")


def test_what_follows_its_rest_at_once_comes_to_heat_with_the_oven(plan_from: Callable[[str], PlanFile]) -> None:
    """As with a bake that follows another at once: nothing is taken out. Nothing else goes into a cold oven so."""
    text = APPLES.replace(
        "after: rest the apple slices in the closed oven", "after: rest the apple slices in the closed oven, at once"
    )
    plan_file, sooner = plan_from(text), plan_from(APPLES)
    sheet = sheet_of(plan_file)
    cold = "bake the tray goes into the main oven"

    assert sheet.by_id()[TRAY].start == sheet.by_id()[REST].end
    assert validate(plan_file, sheet) == []
    assert says(validate(sooner, sheet), cold, "not brought to its heat in time")
    assert says(validate(plan_file, moved(sheet, TRAY, sheet.by_id()[REST].end + minutes(1))), cold)


def test_an_oven_long_unused_is_switched_off_and_what_heat_is_left_counts(plan_from: Callable[[str], PlanFile]) -> None:
    """240 °C, k = ln(180/100)/60 a minute from the plan, from when the bread came out until it is on again.

    Some 90 °C are left by then, so 9 min or so do, and 3 fewer do not; from the room's 20 °C it were 15.48, so 16.
    """
    plan_file = plan_from(LONG_UNUSED)
    sheet = sheet_of(plan_file)
    bread, tart = sheet.by_id()["bread/bake-the-bread"], sheet.by_id()["tart/bake-the-tart"]
    heating = heating_of(sheet, tart.id)
    off = (heating.start - bread.end).total_seconds() / 60
    left = 20 + (240 - 20) * math.exp(-math.log(180 / 100) / 60 * off)

    assert validate(plan_file, sheet) == []
    assert tart.start - bread.end >= timedelta(minutes=90)
    assert length(heating) == math.ceil((180 - left) / (155 / 15)) < 15
    short = with_slot(sheet, heating.id, start=heating.start + minutes(3))
    assert says(validate(plan_file, short), "bake the tart goes into the oven", "not brought to its heat in time")


def test_an_oven_cools_faster_with_its_door_ajar_where_the_plan_says_how_fast(
    plan_from: Callable[[str], PlanFile],
) -> None:
    """From 200 to 80 °C: ln(180/60)/k, with k = ln(180/100)/10 ajar 18.69 min, and with 25 for 10 shut 46.73 min."""
    ajar, shut = (
        plan_from(ROAST_THEN_DRY),
        plan_from(ROAST_THEN_DRY.replace("oven: {cools ajar: 10 min from 200 to 120 C}", "oven: {}")),
    )
    slower = plan_from(ROAST_THEN_DRY.replace("ajar: 10 min", "ajar: 50 min"))
    sheet = sheet_of(ajar)
    roast, seeds = sheet.by_id()["squash/roast-the-squash"], "squash/dry-the-seeds"

    def says_after(plan_file: PlanFile, gap: int) -> list[str]:
        return [
            each for each in validate(plan_file, moved(sheet, seeds, roast.end + minutes(gap))) if "to change" in each
        ]

    assert validate(ajar, sheet) == []
    assert says(says_after(ajar, 18), "dry the seeds goes into the oven", "it needs 19 min to change")
    assert says_after(ajar, 19) == []
    for plan_file in (shut, slower):
        assert says(says_after(plan_file, 46), "dry the seeds goes into the oven", "it needs 47 min to change")
        assert says_after(plan_file, 47) == []


def test_a_rest_leaves_the_heat_of_the_way_its_bake_was_done_by(plan_from: Callable[[str], PlanFile]) -> None:
    """A hotter way, too long for the day's hours, is not taken, and does not count, however well it would suit.

    25 + 50 + 60 + 14 + 40 = 189 min are two more than the hours: with what 240 °C left they would do.
    """
    hotter = "            keeps: 2 min\n            or: {where: main oven at 240 C, takes: 7 h}\n"
    plan_file = plan_from(
        APPLES.replace("            keeps: 2 min\n", hotter).replace("16:00 - 22:00", "16:00 - 19:07")
    )
    sheet = sheet_of(plan_file)

    assert validate(plan_file, sheet) == []
    assert sheet.by_id()[DRY].uses[0].celsius == 107
    assert length(heating_of(sheet, TRAY)) >= 14


def test_what_else_comes_just_before_a_rest_is_no_bake(plan_from: Callable[[str], PlanFile]) -> None:
    more = "            takes: 60 min\n            after: [dry the apple slices, 'crush the seeds, at once']\n"
    whip = "          - {step: crush the seeds, takes: 5 min, after: nothing}\n"
    text = APPLES.replace("            takes: 60 min\n", more)
    text = text.replace("          - step: top", whip + "          - step: top")
    text = text.replace(
        "            takes: 10 min\n            keeps: 20 min", "            takes: 10 min\n" + TOP_AFTER
    )
    text = text.replace("takes: 45 to 50 to 60 min", "takes: 45 to 50 to 60 min\n            attended: none")
    plan_file = plan_from(text)
    sheet = sheet_of(plan_file)

    assert validate(plan_file, sheet) == []
    seeds = "rice-pudding-with-dried-apple/crush-the-seeds"
    assert sheet.by_id()[seeds].end == sheet.by_id()[DRY].end == sheet.by_id()[REST].start


def test_a_dial_turned_in_no_time_is_no_work_outside_the_hours(plan_from: Callable[[str], PlanFile]) -> None:
    late = ROAST_THEN_DRY.replace("14:00 - 23:30", "18:30 - 18:40").replace(
        "takes: 30 min", "takes: 30 min\n" + AT_ONCE
    )
    plan_file = plan_from(late)
    sheet = sheet_of(plan_file)

    assert validate(plan_file, sheet) == []
    assert sheet.by_id()["squash/dry-the-seeds"].turn is not None
    assert any(
        isinstance(given.what, OverHours) and given.what.slot == "squash/roast-the-squash" for given in sheet.given_up
    )
    assert all(given.minutes > 0 for given in sheet.given_up)
