"""The validator finds nothing wrong with sheets as computed, and names each thing that is wrong with others.

Sheets are tampered with one fact at a time; the times in them are looked up, so that another good timetable of
the same plan does as well.
"""

import math
from collections.abc import Callable
from datetime import UTC, datetime, timedelta

import pytest
from msgspec.structs import replace

from board.plan.load import PlanFile
from board.schedule.audit.validate import validate
from board.sheet import said
from board.sheet.run_sheet import Dependency, RunSheet, Use
from board.sheet.told import GivenUp, Late, NotReady, OverHours, PastLimit, WaitsPast
from tests.schedule.audit.tampering import Tampered, heating_before, minutes, moved, on, says, sheet_of, with_slot

TARTLETS = "onion-and-thyme-tartlets/bake-the-tartlets"
BOWLS = "warm-bowls-and-plates/warm-the-bowls-and-plates"
ROOTS = "roast-roots/roast-the-roots"
BEEF = "beef-shin-in-dark-beer/reheat-the-beef"
BRAISE = "beef-shin-in-dark-beer/braise-the-beef"
BROTH = "celeriac-and-apple-broth-rye-crumbs/simmer-the-broth"
BEETROOT = "pickled-beetroot/boil-the-beetroot"
PEARS = "vanilla-cream-with-poached-pears/poach-the-pears"
TABLE = "jobs/lay-the-table"

TWO_PEOPLE = """
event: Two at work
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [6 guests]
hands:
  host:
    hours:
      on the day: 12:00 - 15:00, 15:00 - 23:30
    away:
      greet the guests: 18:30 - 18:40
  cousin:
    hours:
      on the day: 14:00 - 22:00
kitchen:
  fridge: 10 litres
  tools: {pan: 1}
courses:
  - course: Main
    at: 19:30
    dishes:
      - dish: Hotpot
        steps:
          - step: cut everything small
            takes: 25 min
            who: cousin
            keeps: 3 h in the fridge, 7 litres
          - step: sear it
            where: stovetop, pan
            takes: 10 min
            who: host
            not before: 16:00
            keeps: 1 h in the room
          - step: let it bubble
            where: stovetop
            takes: 90 min
            attended: 2 min at the start, 1 min every 20 min
            after: sear it, at once
            keeps: 40 min on the stovetop
      - dish: Cold salad
        steps:
          - step: wash and dress the leaves
            takes: 15 min
            not after: 18:00
            keeps: 4 h in the fridge, 3 litres
jobs:
  - job: lay the table
    takes: 20 min
    who: [host, cousin]
  - job: sweep the steps
    takes: 10 min
    day: on the day
    before: guests arrive, at most 1 h
"""

TWO_OVENS = """
event: Two ovens
date: 2026-11-28
zone: America/New_York
arrive: 18:00
guests: [10 guests]
hands:
  host:
    hours:
      on the day: 10:00 - 23:00
kitchen:
  ovens:
    upper oven: {shelves: 1}
    lower oven: {shelves: 2, heats: 20 min to 180 C, cools: 30 min from 200 to 120 C}
courses:
  - course: Main
    at: 19:00
    dishes:
      - dish: Filo pie
        steps:
          - step: bake the pie
            where: oven at 200 C (190 to 210 C), 1 shelf
            takes: 45 min
            keeps: 40 min in the oven at 90 C (80 to 100 C), 1 shelf
          - step: cut the pie
            takes: 5 min
      - dish: Potatoes
        steps:
          - step: roast the potatoes
            where: lower oven at 205 C (200 to 220 C), 1 shelf
            takes: 50 min
            keeps: 20 min hot
      - dish: Dried plums
        steps:
          - step: dry the plums
            where: oven at 200 F (190 to 210 F)
            takes: 2 h
            keeps: 1 day in the room
"""

SEVERAL_WAYS = """
event: Several ways
date: 2026-10-25
zone: Europe/Dublin
arrive: 18:30
guests: [4 guests]
hands:
  host:
    hours:
      day before: 20:00 - 23:00
      on the day: 16:00 - 23:00
kitchen:
  rings: 1
  fridge: 4 litres
  tools: {pan: 1}
courses:
  - course: Main
    at: 19:15
    dishes:
      - dish: Beans
        steps:
          - step: soak the beans overnight
            takes: 9 h
            attended: 2 min at the start
            keeps: 12 h in the fridge, 6 litres
            or:
              - keeps: 12 h in the fridge, 3 litres
          - step: cook the beans
            where: stovetop, pan
            takes: 40 min
            attended: 3 min at the start
            or:
              - where: oven at 160 C
                takes: 70 min
      - dish: Flatbread
        steps:
          - step: bake the flatbread
            where: stovetop, pan
            takes: 30 min
            best within: 5 min
            or:
              - where: oven at 230 C (220 to 240 C)
                takes: 12 min
                attended: all
"""

TOO_TIGHT = """
event: Too tight
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [6 guests]
hands:
  host:
    hours:
      on the day: 17:30 - 20:30
kitchen:
  rings: 1
  tools: {pan: 1}
courses:
  - course: Soup
    at: 18:45
    eaten in: 20 min
    dishes:
      - dish: Leek soup
        steps:
          - step: cut the leeks
            takes: 30 min
            keeps: 5 min in the room
          - step: cook the leeks
            where: stovetop, pan
            takes: 30 min
            attended: 5 min at the start, 1 min every 10 min
            after: cut the leeks, at least 12 min
            keeps: 2 min hot
  - course: Main
    at: 20 min after the course before
    dishes:
      - dish: Dumplings
        steps:
          - step: fold the dumplings
            takes: 40 min
            keeps: 10 min in the room
          - step: fry the dumplings
            where: stovetop, pan
            takes: 25 min
            after: fold the dumplings, at most 5 min
            keeps: 2 min hot
jobs:
  - job: polish the glasses
    takes: 15 min
    day: day before
    before: clear Main
"""


@pytest.fixture(scope="session")
def supper(lantern: PlanFile) -> RunSheet:
    return sheet_of(lantern)


@pytest.fixture(scope="session")
def snags(lantern: PlanFile) -> Tampered:
    """What is found in a sheet of the bundled plan."""
    return lambda sheet: validate(lantern, sheet)


# --- as computed --------------------------------------------------------------------------------------------
def test_the_bundled_supper_holds(snags: Tampered, supper: RunSheet) -> None:
    assert snags(supper) == []


@pytest.mark.parametrize("text", [TWO_PEOPLE, TWO_OVENS, SEVERAL_WAYS], ids=["people", "ovens", "ways"])
def test_sheets_of_other_plans_hold_with_nothing_given_up(plan_from: Callable[[str], PlanFile], text: str) -> None:
    plan_file = plan_from(text)
    sheet = sheet_of(plan_file)

    assert validate(plan_file, sheet) == []
    assert sheet.given_up == ()


def test_a_plan_too_tight_holds_because_what_bends_is_told(plan_from: Callable[[str], PlanFile]) -> None:
    plan_file = plan_from(TOO_TIGHT)
    sheet = sheet_of(plan_file)

    assert validate(plan_file, sheet) == []
    assert any(course.late_minutes > 0 for course in sheet.courses)
    assert {type(given.what) for given in sheet.given_up} >= {OverHours, PastLimit}


def test_every_entry_of_a_tight_plan_must_be_there_with_its_minutes(plan_from: Callable[[str], PlanFile]) -> None:
    plan_file = plan_from(TOO_TIGHT)
    sheet = sheet_of(plan_file)

    for left_out in sheet.given_up:
        others = tuple(given for given in sheet.given_up if given is not left_out)
        wrong = replace(left_out, minutes=left_out.minutes + 1)

        assert says(validate(plan_file, replace(sheet, given_up=others)), "it is not told")
        if not isinstance(left_out.what, OverHours):
            what = said.what(sheet, wrong.what)
            assert says(validate(plan_file, replace(sheet, given_up=(*others, wrong))), "it is not so", what)


# --- slots --------------------------------------------------------------------------------------------------
def test_a_task_that_is_missing_or_stands_twice(snags: Tampered, supper: RunSheet) -> None:
    without = replace(supper, slots=tuple(slot for slot in supper.slots if slot.id != TABLE))
    twice = replace(supper, slots=(*supper.slots, supper.by_id()[TABLE]))

    assert says(snags(without), "lay the table", "stands 0 times")
    assert says(snags(twice), "lay the table", "stands 2 times")


def test_work_that_is_not_in_the_plan(snags: Tampered, supper: RunSheet) -> None:
    extra = replace(supper.by_id()[TABLE], id="jobs/feed-the-cat", named="feed the cat")
    mistaken = with_slot(supper, TABLE, kind="step")

    assert says(snags(replace(supper, slots=(*supper.slots, extra))), "feed the cat", "no work of this plan")
    assert says(snags(mistaken), "lay the table", "told as step")


def test_times_are_whole_minutes_in_utc(snags: Tampered, supper: RunSheet) -> None:
    slot = supper.by_id()[TABLE]
    with_seconds = with_slot(supper, TABLE, start=slot.start + timedelta(seconds=5))
    without_zone = with_slot(supper, TABLE, end=slot.end.replace(tzinfo=None))
    backwards = with_slot(supper, TABLE, end=slot.start - minutes(1))

    assert says(snags(with_seconds), "lay the table", "not a whole minute in UTC")
    assert says(snags(without_zone), "lay the table", "not a whole minute in UTC")
    assert says(snags(backwards), "lay the table ends before it starts")


def test_courses_tell_whole_minutes_in_utc(snags: Tampered, supper: RunSheet) -> None:
    first, *others = supper.courses
    odd = replace(first, served=first.served + timedelta(seconds=30))

    assert says(snags(replace(supper, courses=(odd, *others))), "a course has a time that is not a whole minute")


def test_a_heating_tells_its_oven_and_setting(snags: Tampered, supper: RunSheet) -> None:
    heating = heating_before(supper, ROOTS)

    assert says(snags(with_slot(supper, heating.id, uses=())), "does not tell which oven")


def test_a_slot_is_as_long_as_one_of_its_ways(snags: Tampered, supper: RunSheet) -> None:
    slot = supper.by_id()[TABLE]

    assert says(snags(with_slot(supper, TABLE, end=slot.end + minutes(1))), "lay the table takes 29 min")


def test_a_slot_stands_in_the_lane_of_its_way(snags: Tampered, supper: RunSheet) -> None:
    assert says(snags(with_slot(supper, TABLE, lane="worktop")), "lay the table stands in the lane worktop")


def test_hands_are_on_a_step_when_it_asks_for_them(snags: Tampered, supper: RunSheet) -> None:
    parts = supper.by_id()[BROTH].attended
    late = (replace(parts[0], end=parts[0].end + minutes(1)), *parts[1:])

    for attended in (parts[1:], parts[:1] + parts[2:], parts[:-1], late, (replace(parts[0], kind="all"), *parts[1:])):
        found = snags(with_slot(supper, BROTH, attended=attended))
        assert says(found, "simmer the broth has hands on it at other times")


def test_uses_are_what_the_way_asks_for(snags: Tampered, supper: RunSheet) -> None:
    uses = supper.by_id()[BRAISE].uses
    start = supper.by_id()[BRAISE].start
    too_hot = tuple(replace(use, celsius=161) if use.celsius else use for use in uses)
    other_oven = tuple(replace(use, what="bread oven") if use.celsius else use for use in uses)
    more = tuple(replace(use, amount=2) for use in uses)
    late = tuple(replace(use, start=start + minutes(1)) for use in uses)
    extra = (*uses, Use(what="rings", amount=1, start=start, end=supper.by_id()[BRAISE].end))

    for changed in ((), uses[1:], too_hot, other_oven, more, late, extra):
        assert says(snags(with_slot(supper, BRAISE, uses=changed)), "braise the beef does not take what it asks for")


def test_keeping_is_what_the_way_says(snags: Tampered, supper: RunSheet) -> None:
    keeping = supper.by_id()[BROTH].keeping
    assert keeping is not None

    for changed in (None, replace(keeping, minutes=1), replace(keeping, where="freezer")):
        assert says(snags(with_slot(supper, BROTH, keeping=changed)), "simmer the broth tells another way of keeping")


def test_one_person_does_a_step_and_one_who_may(plan_from: Callable[[str], PlanFile]) -> None:
    plan_file = plan_from(TWO_PEOPLE)
    sheet = sheet_of(plan_file)
    cutting, bubbling = "hotpot/cut-everything-small", "hotpot/let-it-bubble"
    cut, bubble = sheet.by_id()[cutting], sheet.by_id()[bubbling]
    by_the_host = with_slot(sheet, cutting, attended=tuple(replace(part, who="host") for part in cut.attended))
    by_a_stranger = with_slot(sheet, bubbling, attended=tuple(replace(part, who="uncle") for part in bubble.attended))
    others = [replace(part, who="cousin" if part.who == "host" else "host") for part in bubble.attended[1:]]
    handed_on = with_slot(sheet, bubbling, attended=(bubble.attended[0], *others))

    assert says(validate(plan_file, by_the_host), "cut everything small is given to host")
    assert says(validate(plan_file, by_a_stranger), "let it bubble is given to uncle")
    assert says(validate(plan_file, handed_on), "let it bubble takes 1 of them, and is given to cousin, host")


# --- order and courses --------------------------------------------------------------------------------------
def test_a_step_starts_after_the_one_it_follows(snags: Tampered, supper: RunSheet) -> None:
    first = supper.by_id()["celeriac-and-apple-broth-rye-crumbs/peel-and-cut-the-celeriac"]

    found = snags(moved(supper, BROTH, first.end - minutes(1)))
    assert says(found, "simmer the broth", "-1 min after peel and cut the celeriac", "at least 0 min")


def test_at_once_is_neither_sooner_nor_later(plan_from: Callable[[str], PlanFile]) -> None:
    plan_file = plan_from(TWO_PEOPLE)
    sheet = sheet_of(plan_file)
    id_ = "hotpot/let-it-bubble"
    start = sheet.by_id()[id_].start

    assert says(validate(plan_file, moved(sheet, id_, start + minutes(1))), "let it bubble", "at most 0 min was wanted")
    assert says(validate(plan_file, moved(sheet, id_, start - minutes(1))), "let it bubble", "at least 0 min")


def test_guests_arrive_when_they_are_due(snags: Tampered, supper: RunSheet) -> None:
    arrival = supper.by_id()["guests-arrive"]

    assert says(snags(moved(supper, arrival.id, arrival.start + minutes(5))), "guests arrive", "18:35")
    assert says(snags(replace(supper, arrive=on("18:35"))), "arrive at another time")


def test_courses_are_told_as_wanted_and_served(snags: Tampered, supper: RunSheet) -> None:
    first, *others = supper.courses
    late = replace(first, served=first.served + minutes(3))
    otherwise = replace(first, may_slip=99)

    assert says(snags(replace(supper, courses=(late, *others))), "Nibbles is told to be served at")
    assert says(snags(replace(supper, courses=(otherwise, *others))), "Nibbles is told otherwise than in the plan")
    assert says(snags(replace(supper, courses=tuple(others))), "other courses than the plan")
    assert says(snags(moved(supper, first.serve, on("18:41"))), "Nibbles is served at Sat 18:44, before Sat 18:45")


# --- hands and hours ----------------------------------------------------------------------------------------
def test_nobody_does_two_things_at_once(snags: Tampered, supper: RunSheet) -> None:
    start = supper.by_id()["jobs/clear-down-the-kitchen"].start

    assert says(snags(moved(supper, TABLE, start)), "host has hands on", "lay the table", "clear down the kitchen")


def test_hands_keep_to_their_hours_unless_it_is_told(snags: Tampered, supper: RunSheet) -> None:
    at_night = moved(supper, TABLE, on("03:00"))
    over_hours = OverHours(TABLE, on("03:00"), on("03:28"))
    told = replace(at_night, given_up=(GivenUp(over_hours, "", 28),))

    assert says(snags(at_night), "lay the table needs host at Sat 03:00 to Sat 03:28, out of hours", "not told")
    assert not says(snags(told), "lay the table", "out of hours")


def test_hands_that_are_away_do_nothing(snags: Tampered, supper: RunSheet) -> None:
    assert says(snags(moved(supper, TABLE, on("17:20"))), "lay the table needs host", "out of hours")


def test_nothing_hot_runs_with_nobody_at_home(snags: Tampered, supper: RunSheet) -> None:
    assert says(snags(moved(supper, BEETROOT, on("12:50"))), "boil the beetroot is hot", "nobody is at home")


def test_the_hot_side_does_not_mind_somebody_being_away(snags: Tampered, supper: RunSheet) -> None:
    assert not says(snags(moved(supper, BEETROOT, on("17:22"))), "boil the beetroot is hot")


def test_days_and_wishes_hold(plan_from: Callable[[str], PlanFile]) -> None:
    plan_file = plan_from(TWO_PEOPLE)
    sheet = sheet_of(plan_file)
    day_early = moved(sheet, "jobs/sweep-the-steps", on("16:00", day=27))
    small_hours = moved(sheet, "jobs/sweep-the-steps", on("04:50", day=29))
    too_early = moved(sheet, "hotpot/sear-it", on("15:59"))
    too_late = moved(sheet, "cold-salad/wash-and-dress-the-leaves", on("17:46"))

    assert says(validate(plan_file, day_early), "sweep the steps", "not on its day")
    assert not says(validate(plan_file, small_hours), "not on its day")
    assert says(validate(plan_file, too_early), "sear it starts at Sat 15:59, earlier than it may")
    assert says(validate(plan_file, too_late), "wash and dress the leaves ends at Sat 18:01, later than it may")


# --- kitchen ------------------------------------------------------------------------------------------------
def test_there_are_only_so_many_rings_and_pots(snags: Tampered, supper: RunSheet) -> None:
    start = supper.by_id()[BEETROOT].start

    assert says(snags(moved(supper, PEARS, start)), "2 medium pot are in use", "there are 1")
    crowded = supper
    for id_ in (PEARS, BEEF, BROTH, "lentils-and-mushrooms/cook-the-lentils"):
        crowded = moved(crowded, id_, start)
    assert says(snags(crowded), "rings are in use", "there are 4")


def test_a_kept_result_takes_its_room_until_the_last_takes_it_up(plan_from: Callable[[str], PlanFile]) -> None:
    plan_file = plan_from(TWO_PEOPLE)
    sheet = sheet_of(plan_file)
    narrow = plan_from(TWO_PEOPLE.replace("fridge: 10 litres", "fridge: 6 litres"))

    found = validate(narrow, sheet)
    assert says(found, "7 fridge are in use", "there are 6", "what cut everything small made")
    assert not says(validate(plan_file, sheet), "fridge")


def test_an_oven_has_only_so_many_shelves(snags: Tampered, supper: RunSheet) -> None:
    found = snags(moved(supper, TARTLETS, supper.by_id()[ROOTS].start))

    assert says(found, "3 shelves of the oven are in use", "there are 2")
    assert says(found, "the oven is told two settings", "bake the tartlets", "roast the roots")


def test_things_in_an_oven_share_a_setting(snags: Tampered, supper: RunSheet) -> None:
    found = snags(moved(supper, BOWLS, supper.by_id()[BRAISE].start))

    assert says(found, "no setting does for both", "warm the bowls and plates", "braise the beef")


def test_an_oven_needs_time_from_one_setting_to_another(snags: Tampered, supper: RunSheet) -> None:
    tartlets = supper.by_id()[TARTLETS]

    # 190 °C falls by Newton's law of cooling to a room of 20 °C, with k = ln(170/90)/22 a minute, from the plan's
    # `22 min from 190 to 110 C`: to 80 °C in ln(170/60)/k = 36.02 and so 37 whole minutes, to 85 °C in 34.
    celsius = next(use.celsius for use in supper.by_id()[BOWLS].uses if use.celsius is not None)
    needed = math.ceil(math.log(170 / (celsius - 20)) / (math.log(170 / 90) / 22))
    soon = snags(moved(supper, BOWLS, tartlets.end + minutes(needed - 1)))
    late = snags(moved(supper, BOWLS, tartlets.end + minutes(needed)))
    change = f"it needs {needed} min to change after bake the tartlets"
    assert says(soon, "warm the bowls and plates goes into the oven", change)
    assert not says(late, "to change after bake the tartlets")


def test_a_step_goes_into_an_oven_at_its_heat(snags: Tampered, supper: RunSheet) -> None:
    heating = heating_before(supper, TARTLETS)
    unheated = replace(supper, slots=tuple(slot for slot in supper.slots if slot is not heating))
    late = moved(supper, heating.id, heating.start + minutes(1))
    hasty = with_slot(supper, heating.id, start=heating.end - minutes(5))
    elsewhere = with_slot(supper, heating.id, uses=(replace(heating.uses[0], celsius=120),))

    for sheet in (unheated, late, hasty, elsewhere):
        assert says(snags(sheet), "bake the tartlets goes into the oven", "not brought to its heat in time")


def test_nothing_stands_in_an_oven_that_is_turned_to_what_it_cannot_take(snags: Tampered, supper: RunSheet) -> None:
    heating = heating_before(supper, ROOTS)

    found = snags(moved(supper, heating.id, supper.by_id()[BRAISE].start + minutes(10)))
    assert says(found, "braise the beef is in the oven as it goes to 210 °C")


# --- what bends ---------------------------------------------------------------------------------------------
def test_a_late_course_is_told(snags: Tampered, supper: RunSheet) -> None:
    last = supper.courses[-1]
    serve = supper.by_id()[last.serve]
    late = replace(
        moved(supper, last.serve, serve.start + minutes(7)),
        courses=(*supper.courses[:-1], replace(last, served=last.served + minutes(7))),
    )

    assert says(snags(late), "Sweet goes out 7 min late, and it is not told")
    for wrong in (GivenUp(Late("Sweet", 6), "", 6), GivenUp(Late("Main", 7), "", 7)):
        assert says(snags(replace(late, given_up=(wrong,))), "Sweet goes out 7 min late, and it is not told")
    told = replace(late, given_up=(GivenUp(Late("Sweet", 7), "", 7),))
    assert not says(snags(told), "Sweet goes out 7 min late")


def test_a_result_past_its_limit_is_told(snags: Tampered, supper: RunSheet) -> None:
    # The pears keep three days; the lace batter one hour in the room.
    batter, bake = "lace-cones/mix-and-spoon-out-the-lace-batter", "lace-cones/bake-and-roll-the-cones"
    length = supper.by_id()[batter].end - supper.by_id()[batter].start
    old = moved(supper, batter, supper.by_id()[bake].start - minutes(75) - length)
    told = replace(old, given_up=(GivenUp(PastLimit(batter, bake, 75, 60, "room"), "", 15),))
    of_another = replace(old, given_up=(GivenUp(PastLimit(bake, batter, 75, 60, "room"), "", 15),))

    assert says(snags(old), "what mix and spoon out the lace batter made stands 75 min", "not told")
    assert not says(snags(told), "mix and spoon out the lace batter made stands")
    assert says(snags(of_another), "what mix and spoon out the lace batter made stands 75 min", "not told")


def test_a_wait_past_what_was_wanted_is_told(snags: Tampered, supper: RunSheet) -> None:
    seat = supper.by_id()["guests-to-the-table"]
    early = moved(supper, seat.id, supper.by_id()["serve/broth"].start - minutes(12) - (seat.end - seat.start))
    told = replace(early, given_up=(GivenUp(WaitsPast(seat.id, "serve/broth", 12, 10), "", 2),))

    assert says(snags(early), "serve Broth begins 12 min after guests to the table", "at most 10 min", "not told")
    assert not says(snags(told), "serve Broth begins 12 min after")


def test_a_job_that_is_not_ready_for_the_guests_is_told(snags: Tampered, supper: RunSheet) -> None:
    length = supper.by_id()[TABLE].end - supper.by_id()[TABLE].start
    late = moved(supper, TABLE, on("18:33") - length)
    told = replace(late, given_up=(GivenUp(NotReady(TABLE, "guests-arrive"), "", 3),))

    assert says(snags(late), "guests arrive does not wait for lay the table", "not told")
    assert not says(snags(told), "guests arrive does not wait")


def test_what_was_not_given_up_is_not_told(snags: Tampered, supper: RunSheet) -> None:
    found = snags(replace(supper, given_up=(GivenUp(Late("Sweet", 5), "", 5),)))

    assert found == ["told as given up, but it is not so: Sweet goes out 5 min late (5 min)"]


# --- waits and give -----------------------------------------------------------------------------------------
def test_waits_are_true(snags: Tampered, supper: RunSheet) -> None:
    table = supper.by_id()[TABLE]
    too_long = Dependency(after=supper.slots[0].id, anchor="start", minutes=9999, reason="hands")
    nowhere = Dependency(after="jobs/feed-the-cat", anchor="end", minutes=0, reason="order")
    later = Dependency(after=supper.slots[-1].id, anchor="start", minutes=-9999, reason="hands")

    assert says(
        snags(with_slot(supper, TABLE, waits=(*table.waits, too_long))), "lay the table starts", "though it waits"
    )
    assert says(snags(with_slot(supper, TABLE, waits=(*table.waits, nowhere))), "which is not in the run sheet")
    assert says(snags(with_slot(supper, TABLE, waits=(*table.waits, later))), "which stands after it")


def test_give_is_exact_for_every_slot(snags: Tampered, supper: RunSheet) -> None:
    def with_give(give: Callable[[int], int | None]) -> list[str]:
        told = [s if s.give_minutes is None else replace(s, give_minutes=give(s.give_minutes)) for s in supper.slots]
        return snags(replace(supper, slots=tuple(told)))

    more, less, without = (
        with_give(lambda give: give + 1),
        with_give(lambda give: give - 1),
        with_give(lambda give: None),
    )
    limited = [(slot, slot.give_minutes) for slot in supper.slots if slot.give_minutes is not None]
    for slot, give in limited:
        assert says(more, f"{slot.name} cannot slip {give + 1} min")
        assert says(without, f"{slot.name} is told to have no limit")
        if slot.kind not in ("arrive", "serve"):  # these may not even come sooner
            assert says(less, f"{slot.name} can slip more than {give - 1} min")
    assert len(more) == len(less) == len(without) == len(limited)


def test_a_slot_nothing_hangs_on_has_no_limit(snags: Tampered, supper: RunSheet) -> None:
    free = next(slot for slot in supper.slots if slot.give_minutes is None)

    assert snags(with_slot(supper, free.id, give_minutes=60)) == [f"{free.name} can slip more than 60 min"]


def test_times_of_another_zone_are_not_taken_for_utc(snags: Tampered, supper: RunSheet) -> None:
    assert all(slot.start.tzinfo is UTC or slot.start.utcoffset() == timedelta(0) for slot in supper.slots)
    elsewhere = supper.by_id()[TABLE].start.astimezone(datetime.fromisoformat("2026-11-28T12:00+01:00").tzinfo)

    assert says(snags(with_slot(supper, TABLE, start=elsewhere)), "lay the table", "in UTC")
