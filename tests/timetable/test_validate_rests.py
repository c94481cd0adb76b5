"""Rests in a switched-off oven, the heat left in it, doors ajar, the way to the table, spreads and company.

Egg-white shells dried 45 to 60 min at 225 °F that rest a full hour in the oven, switched off: common practice, no
source. An oven's usual figures (15 min from 20 to 175 °C; 25 min from 200 to 120 °C): common practice, no source.
What follows from them is reckoned here by hand, with Newton's law of cooling T = Ta + (T0 − Ta)·e^(−kt).
"""

import math
from collections.abc import Callable
from datetime import timedelta

import pytest
from msgspec.structs import replace

from board.plan.load import PlanFile
from board.timetable.run_sheet import Attended, GivenUp, Lasts, RunSheet, Slot, Use
from board.timetable.validate import validate
from tests.timetable.tampering import Tampered, minutes, moved, on, says, sheet_of, with_slot

DRY = "egg-white-shells-with-cream/dry-the-shells"
REST = "egg-white-shells-with-cream/rest-the-shells-in-the-closed-oven"
FILL = "egg-white-shells-with-cream/fill-the-shells"
TRAY = "tray-bake/bake-the-tray"
CURD = "lemon-curd/cook-the-curd"
REST_NAME = "rest the shells in the closed oven"

SHELLS = """
event: Shells and cream
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [8 guests]
kitchen:
  to the table: 2 min
  ovens:
    main oven: {shelves: 2, cools ajar: 10 min from 200 to 120 C}
    bread oven: {shelves: 3}
hands:
  host:
    hours:
      day before: 16:00 - 22:00
      on the day: 14:00 - 23:30
courses:
  - course: Shells
    at: 19:30
    eaten in: 20 to 25 to 40 min
    dishes:
      - dish: Egg-white shells with cream
        steps:
          - step: whisk the whites and pipe the shells
            takes: 25 min
          - step: dry the shells
            on: main oven at 225 F (215 to 235 F)
            takes: 45 to 50 to 60 min
            keeps: 2 min
            day: day before
          - step: rest the shells in the closed oven
            on: main oven off
            takes: 60 min
            keeps: 2 days in the room
            day: day before
          - step: fill the shells
            takes: 10 min
            keeps: 20 min
      - dish: Tray bake
        steps:
          - step: bake the tray
            on: main oven at 180 C
            takes: 40 min
            keeps: 2 days in the room
            day: day before
            after: rest the shells in the closed oven
      - dish: Lemon curd
        steps:
          - step: cook the curd
            on: stovetop
            takes: 15 min
            keeps: 3 days in the fridge
jobs:
  - job: light the candles
    takes: 10 min
    with guests: yes
"""

TRAY_ALONE = "      - dish: Tray bake\n        steps:\n          - step: bake the tray"
AFTER_THE_REST = "            after: rest the shells in the closed oven\n"
KEPT_WARM = """      - dish: Tray bake
        steps:
          - step: warm the syrup
            on: stovetop
            takes: 5 min
            keeps: 2 h in the main oven at 60 C
          - step: bake the tray
            after: [rest the shells in the closed oven, warm the syrup]"""

FILL_AFTER = "            keeps: 20 min\n            after: rest the shells in the closed oven"
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
            on: oven at 240 C
            takes: 40 min
            not after: 15:30
            keeps: 8 h
      - dish: Tart
        steps:
          - step: bake the tart
            on: oven at 180 C
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
            on: oven at 200 C
            takes: 40 min
            keeps: 8 h
          - step: dry the seeds
            on: oven at 80 C
            takes: 30 min
            keeps: 8 h
"""


@pytest.fixture(scope="module")
def shells(plan_from: Callable[[str], PlanFile]) -> PlanFile:
    return plan_from(SHELLS)


@pytest.fixture(scope="module")
def sheet(shells: PlanFile) -> RunSheet:
    return sheet_of(shells)


@pytest.fixture(scope="module")
def found_in(shells: PlanFile) -> Tampered:
    return lambda sheet: validate(shells, sheet)


def heating_of(sheet: RunSheet, id_: str) -> Slot:
    """The turning of the dial that ends as a step goes in."""
    start = sheet.by_id()[id_].start
    return next(slot for slot in sheet.slots if slot.kind == "heat" and slot.end == start)


def length(slot: Slot) -> int:
    return int((slot.end - slot.start).total_seconds() // 60)


def with_use(sheet: RunSheet, id_: str, **facts: object) -> RunSheet:
    """The sheet with other facts about what one slot uses."""
    slot = sheet.by_id()[id_]
    return with_slot(sheet, id_, uses=tuple(replace(use, **facts) for use in slot.uses))


# --- a rest -------------------------------------------------------------------------------------------------
def test_a_sheet_with_a_rest_holds(found_in: Tampered, sheet: RunSheet) -> None:
    assert found_in(sheet) == []
    assert sheet.given_up == ()
    rest = sheet.by_id()[REST]
    assert rest.uses == (Use("main oven", 2, rest.start, rest.end, None, off=True),)


@pytest.mark.parametrize("late", [1, -1])
def test_a_rest_begins_the_very_minute_its_bake_ends(found_in: Tampered, sheet: RunSheet, late: int) -> None:
    rest = sheet.by_id()[REST]
    told = (GivenUp(f"{REST_NAME} begins 1 min after dry the shells", "", 1),)

    found = found_in(replace(moved(sheet, REST, rest.start + minutes(late)), given_up=told))

    assert says(found, REST_NAME, "the oven is switched off as dry the shells ends", "Fri")


def test_a_rest_stays_in_the_oven_of_its_bake(found_in: Tampered, sheet: RunSheet) -> None:
    bake, rest = sheet.by_id()[DRY], sheet.by_id()[REST]
    elsewhere = with_use(sheet, REST, what="bread oven", amount=3)
    baked_elsewhere = with_slot(sheet, DRY, uses=tuple(replace(use, what="bread oven") for use in bake.uses))

    assert rest.uses[0].what == "main oven"
    assert says(found_in(elsewhere), f"{REST_NAME} does not take what it asks for")
    assert says(found_in(baked_elsewhere), "dry the shells does not take what it asks for")


def test_a_rest_in_whichever_oven_is_that_of_its_bake(plan_from: Callable[[str], PlanFile]) -> None:
    plan_file = plan_from(SHELLS.replace("on: main oven", "on: oven"))
    sheet = sheet_of(plan_file)
    own = sheet.by_id()[REST].uses[0].what
    other, shelves = {"main oven": ("bread oven", 3), "bread oven": ("main oven", 2)}[own]

    assert validate(plan_file, sheet) == []
    found = validate(plan_file, with_use(sheet, REST, what=other, amount=shelves))
    assert says(found, f"{REST_NAME} rests in the {other}, which dry the shells was not in")


def test_a_rest_takes_the_whole_oven_and_no_heat(found_in: Tampered, sheet: RunSheet) -> None:
    rest = sheet.by_id()[REST]
    shorter = with_use(sheet, REST, end=rest.end - minutes(1))
    twice = with_slot(sheet, REST, uses=rest.uses * 2)
    hot = with_use(sheet, REST, celsius=107)
    on_ = with_use(sheet, REST, off=False, celsius=107)

    for wrong in (with_use(sheet, REST, amount=1), shorter, twice, hot, on_, with_slot(sheet, REST, uses=())):
        assert says(found_in(wrong), f"{REST_NAME} does not take what it asks for")


def test_what_is_baked_or_cooked_is_not_told_as_off(found_in: Tampered, sheet: RunSheet) -> None:
    extra = Use("main oven", 2, sheet.by_id()[CURD].start, sheet.by_id()[CURD].end, None, off=True)

    assert says(found_in(with_use(sheet, DRY, off=True)), "dry the shells does not take what it asks for")
    curd = with_slot(sheet, CURD, uses=(*sheet.by_id()[CURD].uses, extra))
    assert says(found_in(curd), "cook the curd does not take what it asks for")


def test_nothing_is_put_in_during_the_rest(found_in: Tampered, sheet: RunSheet) -> None:
    rest = sheet.by_id()[REST]
    during = moved(sheet, TRAY, rest.start + minutes(10))
    at_its_end = moved(sheet, TRAY, rest.end)

    assert says(found_in(during), "bake the tray is in the main oven at", f"while {REST_NAME} rests in it")
    assert not says(found_in(at_its_end), "rests in it")


def test_nothing_is_kept_in_the_oven_during_the_rest(plan_from: Callable[[str], PlanFile]) -> None:
    plan_file = plan_from(SHELLS.replace(TRAY_ALONE, KEPT_WARM).replace(AFTER_THE_REST, ""))
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
    either = SHELLS.replace(
        "            keeps: 2 min\n", "            keeps: 2 min\n            or:\n              - on: stovetop\n"
    )
    plan_file = plan_from(either)
    sheet = sheet_of(plan_file)
    bake = sheet.by_id()[DRY]
    ring = with_slot(sheet, DRY, lane="stovetop", uses=(Use("rings", 1, bake.start, bake.end),))
    ring = with_slot(ring, DRY, attended=(Attended(bake.start, bake.end, "host", "all"),))

    assert validate(plan_file, sheet) == []
    assert says(validate(plan_file, ring), f"{REST_NAME} rests in the main oven, switched off, after nothing")


def test_what_only_rests_needs_nobody_at_home(plan_from: Callable[[str], PlanFile]) -> None:
    overnight = SHELLS.replace("takes: 60 min", "takes: 10 h\n            attended: none").replace(
        "            day: day before\n          - step: fill", "          - step: fill"
    )
    plan_file = plan_from(
        overnight.replace("            day: day before\n            after: rest", "            after: rest")
    )
    sheet = sheet_of(plan_file)

    assert validate(plan_file, sheet) == []
    assert sheet.by_id()[REST].end > on("06:00")


# --- the heat that is left ----------------------------------------------------------------------------------
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
    plan_from: Callable[[str], PlanFile], shells: PlanFile, sheet: RunSheet
) -> None:
    """Shut, 13.42 min bring it from 41.28 to 180 °C. Ajar, k = ln(180/100)/10: 22.57 °C, and 15.24 min."""
    ajar = plan_from(SHELLS.replace("main oven off", "main oven off, door ajar"))
    unknown = plan_from(
        SHELLS.replace("main oven off", "main oven off, door ajar").replace(
            ", cools ajar: 10 min from 200 to 120 C", ""
        )
    )
    cold = "bake the tray goes into the main oven"

    assert not says(validate(shells, at_once(sheet, 14)), cold)
    assert says(validate(ajar, at_once(sheet, 14)), cold, "not brought to its heat in time")
    assert not says(validate(ajar, at_once(sheet, 16)), cold)
    assert not says(validate(unknown, at_once(sheet, 14)), cold)


def test_a_hot_oven_that_rested_briefly_cools_on(plan_from: Callable[[str], PlanFile]) -> None:
    """220 °C falls in 10 min, k = ln(180/100)/25, to 178.1 °C; to 80 °C it needs ln(158.1/60)/k = 41.2 min more.

    Half a minute is left to rounding.
    """
    text = SHELLS.replace("225 F (215 to 235 F)", "220 C").replace("takes: 60 min", "takes: 10 min")
    text = text.replace("main oven at 180 C", "main oven at 80 C").replace(", cools ajar: 10 min from 200 to 120 C", "")
    plan_file = plan_from(text)
    sheet = sheet_of(plan_file)

    assert validate(plan_file, sheet) == []
    assert says(validate(plan_file, at_once(sheet, 39)), "bake the tray goes into", "not brought to its heat in time")
    assert not says(validate(plan_file, at_once(sheet, 41)), "bake the tray goes into")


def test_what_is_kept_warm_after_a_rest_waits_for_its_heat(plan_from: Callable[[str], PlanFile]) -> None:
    """The rest leaves 41.28 °C; to the 50 °C it accepts, at 155 °C in 15 min, takes 0.84 min."""
    plan_file = plan_from(SHELLS.replace(TRAY_ALONE, KEPT_WARM).replace(AFTER_THE_REST, ""))
    sheet = sheet_of(plan_file)
    rest, warm = sheet.by_id()[REST], "tray-bake/warm-the-syrup"

    def kept_from(gap: int) -> list[str]:
        return validate(plan_file, moved(sheet, warm, rest.end + minutes(gap - 5)))

    assert says(kept_from(0), "what warm the syrup made goes into the main oven", "too soon to stand at 60 °C")
    assert not says(kept_from(1), "too soon to stand at")


def test_what_follows_its_rest_at_once_comes_to_heat_with_the_oven(plan_from: Callable[[str], PlanFile]) -> None:
    """As with a bake that follows another at once: nothing is taken out. Nothing else goes into a cold oven so."""
    text = SHELLS.replace(
        "after: rest the shells in the closed oven", "after: rest the shells in the closed oven, at once"
    )
    plan_file, sooner = plan_from(text), plan_from(SHELLS)
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
    hotter = "            keeps: 2 min\n            or: {on: main oven at 240 C, takes: 7 h}\n"
    plan_file = plan_from(
        SHELLS.replace("            keeps: 2 min\n", hotter).replace("16:00 - 22:00", "16:00 - 19:07")
    )
    sheet = sheet_of(plan_file)

    assert validate(plan_file, sheet) == []
    assert sheet.by_id()[DRY].uses[0].celsius == 107
    assert length(heating_of(sheet, TRAY)) >= 14


def test_what_else_comes_just_before_a_rest_is_no_bake(plan_from: Callable[[str], PlanFile]) -> None:
    more = "            takes: 60 min\n            after: [dry the shells, 'whip the cream, at once']\n"
    whip = "          - {step: whip the cream, takes: 5 min, after: nothing}\n"
    text = SHELLS.replace("            takes: 60 min\n", more)
    text = text.replace("          - step: fill", whip + "          - step: fill")
    text = text.replace(
        "            takes: 10 min\n            keeps: 20 min", "            takes: 10 min\n" + FILL_AFTER
    )
    text = text.replace("takes: 45 to 50 to 60 min", "takes: 45 to 50 to 60 min\n            attended: none")
    plan_file = plan_from(text)
    sheet = sheet_of(plan_file)

    assert validate(plan_file, sheet) == []
    cream = "egg-white-shells-with-cream/whip-the-cream"
    assert sheet.by_id()[cream].end == sheet.by_id()[DRY].end == sheet.by_id()[REST].start


def test_a_dial_turned_in_no_time_is_no_work_outside_the_hours(plan_from: Callable[[str], PlanFile]) -> None:
    late = ROAST_THEN_DRY.replace("14:00 - 23:30", "18:30 - 18:40").replace(
        "takes: 30 min", "takes: 30 min\n" + AT_ONCE
    )
    plan_file = plan_from(late)
    sheet = sheet_of(plan_file)

    assert validate(plan_file, sheet) == []
    assert length(heating_of(sheet, "squash/dry-the-seeds")) == 0
    assert any("roast the squash" in given.what for given in sheet.given_up)
    assert all(given.minutes > 0 for given in sheet.given_up)


# --- the way to the table -----------------------------------------------------------------------------------
def test_nobody_skips_the_way_to_the_table(found_in: Tampered, sheet: RunSheet) -> None:
    fill, serve = sheet.by_id()[FILL], sheet.by_id()["serve/shells"]

    def filled_until(gap: int) -> list[str]:
        return found_in(moved(sheet, FILL, serve.start - minutes(gap) - (fill.end - fill.start)))

    assert says(filled_until(1), "host has 1 min from fill the shells to serve Shells", "needs 2 min")
    assert says(filled_until(0), "host has 0 min from fill the shells to serve Shells")
    assert not says(filled_until(2), "from fill the shells to serve Shells")


def test_the_way_back_takes_as_long(found_in: Tampered, sheet: RunSheet) -> None:
    clear = sheet.by_id()["clear/shells"]

    assert says(
        found_in(moved(sheet, CURD, clear.end + minutes(1))), "host has 1 min from clear Shells to cook the curd"
    )
    assert not says(found_in(moved(sheet, CURD, clear.end + minutes(2))), "from clear Shells to cook the curd")


def test_within_the_kitchen_or_at_the_table_nobody_walks(found_in: Tampered, sheet: RunSheet) -> None:
    fill, serve, seat = (sheet.by_id()[id_] for id_ in (FILL, "serve/shells", "guests-to-the-table"))
    next_to_it = moved(sheet, seat.id, serve.start - (seat.end - seat.start))
    after_it = moved(sheet, CURD, fill.end)

    assert not says(found_in(next_to_it), "from guests to the table to serve Shells")
    assert not says(found_in(after_it), "from fill the shells to cook the curd")


def test_another_person_may_start_at_once(plan_from: Callable[[str], PlanFile]) -> None:
    plan_file = plan_from(SHELLS.replace("hands:\n", "hands:\n  cousin:\n    hours: {on the day: 14:00 - 23:30}\n"))
    sheet = sheet_of(plan_file)
    serve = sheet.by_id()["serve/shells"]
    by_cousin = moved(sheet, FILL, serve.start - minutes(10))
    parts = by_cousin.by_id()[FILL].attended
    who = {"host": "cousin", "cousin": "host"}[serve.attended[0].who]

    found = validate(plan_file, with_slot(by_cousin, FILL, attended=tuple(replace(part, who=who) for part in parts)))
    assert not says(found, "from fill the shells to serve Shells")


# --- spreads and company ------------------------------------------------------------------------------------
def test_a_slot_may_last_what_the_plan_says(found_in: Tampered, sheet: RunSheet) -> None:
    assert sheet.by_id()[DRY].lasts == Lasts(45, 50, 60)

    for wrong in (Lasts(44, 50, 60), Lasts(45, 49, 60), Lasts(45, 50, 61), Lasts(50, 50, 50), None):
        assert says(found_in(with_slot(sheet, DRY, lasts=wrong)), "dry the shells may last", "by no way of doing it")
    heating = heating_of(sheet, TRAY)
    told = with_slot(sheet, heating.id, lasts=Lasts(1, 2, 3))
    assert says(found_in(told), f"{heating.name} is told to last longer or shorter")


def test_the_spread_is_that_of_the_way_taken(plan_from: Callable[[str], PlanFile]) -> None:
    both = SHELLS.replace(
        "            keeps: 20 min\n",
        "            keeps: 20 min\n            or:\n              - takes: 8 to 9 to 15 min\n",
    )
    plan_file = plan_from(both)
    sheet = sheet_of(plan_file)
    taken = sheet.by_id()[FILL]

    assert validate(plan_file, sheet) == []
    of_the_other = {9: Lasts(10, 10, 10), 10: Lasts(8, 9, 15)}[length(taken)]
    assert says(validate(plan_file, with_slot(sheet, FILL, lasts=of_the_other)), "fill the shells may last")


def test_a_course_is_eaten_in_what_the_plan_says(
    found_in: Tampered, plan_from: Callable[[str], PlanFile], sheet: RunSheet
) -> None:
    (course,) = sheet.courses
    silent = plan_from(SHELLS.replace("    eaten in: 20 to 25 to 40 min\n", ""))

    assert course.eaten == Lasts(20, 25, 40)
    for wrong in (Lasts(20, 25, 41), Lasts(19, 25, 40), Lasts(20, 26, 40), None):
        told = replace(sheet, courses=(replace(course, eaten=wrong),))
        assert says(found_in(told), "Shells is told otherwise than in the plan")
    assert sheet_of(silent).courses[0].eaten is None
    assert says(validate(silent, sheet), "Shells is told otherwise than in the plan")


def test_what_can_be_done_with_guests_is_the_plans_word(found_in: Tampered, sheet: RunSheet) -> None:
    candles = "jobs/light-the-candles"

    assert sheet.by_id()[candles].with_guests
    assert says(
        found_in(with_slot(sheet, candles, with_guests=False)), "light the candles is told as done without guests"
    )
    for id_, name in ((FILL, "fill the shells"), ("serve/shells", "serve Shells")):
        assert says(found_in(with_slot(sheet, id_, with_guests=True)), f"{name} is told as done with guests")
