"""Ways out: each is a change a host would think of, the least of its kind that helps, better than doing nothing; and
the plan it writes is the plan it was tried on."""

import difflib
import functools
import itertools
import math
from datetime import datetime, timedelta

import pytest

from board.schedule.audit.validate import validate
from board.schedule.conflicts.explain import clashes_of
from board.schedule.conflicts.violations import amounts
from board.schedule.conflicts.ways_out import WayOut
from board.schedule.solution import COSTLY
from board.schedule.solver.feasible import can
from board.sheet.run_sheet import RunSheet
from board.sheet.told import What
from tests.examples import first
from tests.schedule.conflicts import ways_cases as cases
from tests.schedule.conflicts.clash_cases import HEAD, SQUASH_AND_POT, Worked
from tests.schedule.random_plans import plan_text

TWO_BAKES = (
    HEAD
    + """
hands:
  host:
    hours:
      on the day: 16:00 - 23:00
courses:
  - course: Main
    at: 19:30
    dishes:
      - dish: Gratin
        steps:
          - {step: bake the gratin, where: oven at 180 C (170 to 185 C), takes: 50 min, keeps: 5 min}
      - dish: Rolls
        steps:
          - {step: bake the rolls, where: oven at 200 C (195 to 210 C), takes: 15 min, keeps: 5 min}
"""
)

worked_out = functools.cache(Worked)


@functools.cache
def ways_of(text: str) -> list[WayOut]:
    return worked_out(text).ways()


def whats(text: str) -> list[str]:
    return [way.what for way in ways_of(text)]


def served(sheet: RunSheet) -> dict[str, datetime]:
    return {course.name: course.served for course in sheet.courses}


def given_up(sheet: RunSheet) -> list[What | str]:
    return [given.what for given in sheet.given_up]


def is_as_told(way: WayOut, before: Worked) -> None:
    """What the plan it writes gives, worked out from the text alone, is what it said."""
    again = Worked(way.text)
    assert given_up(again.sheet) == given_up(way.sheet)
    assert served(again.sheet) == served(way.sheet)
    assert validate(again.file, again.sheet) == []
    assert ("then nothing is given up" in way.brings) == (again.sheet.given_up == ())
    for name, at in served(again.sheet).items():
        was, now = (f"{each:%H:%M}" for each in (served(before.sheet)[name], at))  # the plans' zone is an hour of UTC
        assert (f"{name} {was} → {now}" in f"{way.brings}; {way.costs}") == (
            was != now and "than you wanted" not in way.costs
        )


# --- each kind of change ------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("text", "what", "brings"), first(8, cases.ALL.values()), ids=cases.ALL)
def test_a_host_is_offered_what_they_would_think_of_and_it_gives_what_it_says(
    text: str, what: str, brings: str
) -> None:
    way = next((way for way in ways_of(text) if what in way.what), None)

    assert way is not None, whats(text)
    assert brings in way.brings
    is_as_told(way, worked_out(text))


def test_an_hour_more_goes_only_as_far_as_it_must() -> None:
    longer = [way for way in whats(cases.TEN_BEFORE) if "earlier" in way or "longer" in way]

    assert longer == ["host begins 10 min earlier on the day, at 17:40"]


def test_an_evening_before_helps_nothing_that_does_not_keep() -> None:
    """The terrine then has to be eaten within two hours; it takes five to set."""
    short = cases.TERRINE.replace("keeps: 2 days in the fridge", "keeps: 2 h in the fridge")

    assert [way for way in whats(cases.TERRINE) if "evening" in way]
    assert not [way for way in whats(short) if "evening" in way]


def test_a_job_that_does_not_say_how_long_it_keeps_stays_on_its_day() -> None:
    """Lanterns are not lit on the evening before because that evening is free."""
    text = cases.TEN_BEFORE.replace("[lay the table]", "[{job: light the lanterns, takes: 25 min, day: on the day}]")

    assert not [way for way in whats(text) if "whenever it suits" in way]


def test_what_is_about_the_guests_themselves_is_not_moved() -> None:
    assert not [way for way in whats(cases.CALLING) if "greet the guests" in way]


@pytest.mark.parametrize("text", [cases.BAKED_AFRESH, cases.NO_PROBE], ids=["baked afresh", "no core temperature"])
def test_only_what_is_known_to_be_heated_through_goes_into_a_hotter_oven(text: str) -> None:
    assert ways_of(text)
    assert not [way for way in whats(text) if "through beside" in way]


def test_what_is_heated_through_is_baked_sooner_where_its_own_hour_is_in_the_way() -> None:
    way = ways_of(cases.BAKED_ON_THE_DAY)[0]

    assert "let 'bake the gratin' be done whenever it suits" in way.what
    assert "heat 'reheat the gratin' through beside 'roast the roots'" in way.what
    assert way.brings.startswith("Main 20:10 → 19:30")
    is_as_told(way, worked_out(cases.BAKED_ON_THE_DAY))


def test_a_course_sooner_leaves_those_after_it_where_they_are() -> None:
    text = cases.SOONER["the course before, the next so long after it"][0]
    way = next(way for way in ways_of(text) if "serve Soup 10 min earlier" in way.what)

    before, after = worked_out(text).text.splitlines(), way.text.splitlines()
    assert [line[2:].strip() for line in difflib.ndiff(before, after) if line[0] in "+-"] == [
        "at: '19:00'", "at: '18:50'", "at: 40 min after the course before", "at: 50 min after the course before",
    ]  # fmt: skip
    assert "Soup 19:00 → 18:50" in way.costs


def test_a_helper_is_asked_for_no_longer_than_needed() -> None:
    helped = next(way for way in ways_of(cases.TEN_BEFORE) if "helper" in way.what)

    assert helped.what.startswith("a helper for 25 min of work, from ")
    hours = Worked(helped.text).file.plan.hands["helper"].hours["on the day"][0]
    start, end = (int(clock[:2]) * 60 + int(clock[3:]) for clock in (hours.start, hours.end))
    assert end - start == 25


def test_warm_plates_are_neither_bought_nor_left_out() -> None:
    """Nobody eats them: `ingredients: nothing`."""
    text = SQUASH_AND_POT.replace("- dish: Roast squash", "- dish: Warm plates\n        ingredients: nothing").replace(
        "squash", "plates"
    )

    assert not [way for way in whats(text) if "'Warm plates'" in way]
    assert [way for way in whats(text) if "leave out 'Pot of barley'" in way]


def test_of_two_bakes_near_in_heat_the_one_that_bears_it_takes_the_others() -> None:
    """10 °C lie between what the two accept. Rolls bear no other heat; 50 min × 160/175 are 46."""
    assert [way for way in whats(TWO_BAKES) if "set to" in way] == [
        "'bake the gratin': written 180 °C, set to 195 °C to share the oven with Rolls, 4 min shorter or a little more",
    ]


# --- two at once ----------------------------------------------------------------------------------------------------


@pytest.mark.slow
def test_two_changes_are_joined_only_where_neither_helps_alone() -> None:
    pairs = 0
    for text, _, _ in cases.ALL.values():
        alone = {way.what for way in ways_of(text) if "; and " not in way.what}
        for pieces in (way.what.split("; and ") for way in ways_of(text)):
            pairs += len(pieces) == 2
            assert len(pieces) == 1 or not alone & set(pieces), pieces
    assert pairs >= len(cases.TWO)


# --- never worse than doing nothing ----------------------------------------------------------------------------------


def costly(worked: Worked) -> tuple[int, ...]:
    return tuple(aim.value for aim in worked.solution.aims if aim.aim in COSTLY)


@pytest.mark.parametrize(
    "text", first(9, [cases.IN_PART, TWO_BAKES, SQUASH_AND_POT, *(text for text, _, _ in cases.ALL.values())])
)
def test_nothing_is_offered_that_is_worse_than_doing_nothing(text: str) -> None:
    for way in ways_of(text):
        assert way.values[: len(COSTLY)] < costly(worked_out(text)), way.what


def test_a_later_wish_does_not_pass_for_a_gain() -> None:
    """Who asks their guests to come to the table later gets a course no later than it would be, to the next five
    minutes, or than they said it may slip."""
    moved = 0
    for text, _, _ in cases.ALL.values():
        before = {course.name: course for course in worked_out(text).sheet.courses}
        for way in ways_of(text):
            for course in way.sheet.courses:
                old = before[course.name]
                if course.wanted > old.wanted:
                    moved += 1
                    slip = old.wanted + timedelta(minutes=old.may_slip)
                    assert course.served < max(old.served + timedelta(minutes=5), slip + timedelta(minutes=1)), way.what
    assert moved > 5


@pytest.mark.slow
def test_random_plans_are_offered_only_what_holds_when_it_is_taken() -> None:
    tried = 0
    for seed in range(60):
        worked = Worked(plan_text(seed, dishes=4))
        if not worked.sheet.given_up:
            continue
        for way in worked.found(3).ways:
            assert way.values[: len(COSTLY)] < costly(worked), (seed, way.what)
            again = Worked(way.text)
            assert given_up(again.sheet) == given_up(way.sheet), (seed, way.what)
            tried += 1
        if tried >= 8:
            return
    raise AssertionError("too few random plans clash for the test to mean anything")


def test_what_helps_in_part_is_told_as_such_what_helps_most_first() -> None:
    ways = ways_of(cases.IN_PART)

    assert all(way.remains and "still given up: " in way.brings for way in ways)
    assert [way.values[: len(COSTLY)] for way in ways] == sorted(way.values[: len(COSTLY)] for way in ways)
    is_as_told(ways[0], worked_out(cases.IN_PART))


def test_the_push_of_a_late_course_is_the_shortest_that_helps() -> None:
    """2 min of hands, 2 h of soaking and 5 min of plating from 18:00 on: 20:07, so 20:05 is pushed by 5 min."""
    soaked = cases.supper(
        "  host:\n    hours: {on the day: '18:00 - 23:00'}\n",
        """
  - course: Main
    at: 20:05
    dishes:
      - dish: Beans
        steps:
          - {step: put the beans to soak, takes: 2 min}
          - {step: let them soak, takes: 2 h, attended: none}
""",
    )
    later = [way for way in ways_of(soaked) if "later, at" in way.what]

    assert [way.what for way in later] == ["serve Main 5 min later, at 20:10"]
    assert later[0].costs == "costs: Main 5 min later than you wanted"


# --- the order, and the time -----------------------------------------------------------------------------------------
@pytest.mark.parametrize("text", first(7, [SQUASH_AND_POT, *(text for text, _, _ in cases.ALL.values())]))
def test_the_cheapest_come_first_and_none_is_offered_twice(text: str) -> None:
    ways = ways_of(text)

    assert [way.weight for way in ways] == sorted(way.weight for way in ways)
    assert len({way.text for way in ways}) == len(ways)


def ticking(seconds: float) -> float:
    """A clock by which each look at it takes a second."""
    clock = itertools.count()
    return lambda: seconds - next(clock)  # type: ignore[return-value]


def test_a_search_that_runs_out_of_time_offers_what_it_found_and_says_so() -> None:
    worked = worked_out(cases.TEN_BEFORE)
    whole = [way.what for way in worked.found(5).ways]
    some = 0
    for seconds in (0, 3, 6, 12, 25, 50):
        found = worked.found(5, left=ticking(seconds))  # type: ignore[arg-type]
        assert not found.all_tried or [way.what for way in found.ways] == whole
        assert all(not way.remains for way in found.ways)
        some += bool(found.ways) and not found.all_tried
    assert some
    assert worked.found(5).all_tried


def test_what_is_cut_short_by_the_keyboard_says_so_too() -> None:
    def interrupted() -> float:
        raise KeyboardInterrupt

    found = worked_out(cases.TEN_BEFORE).found(5, left=interrupted)

    assert (found.ways, found.all_tried) == ([], False)


def test_an_explanation_that_runs_out_of_time_is_the_beginning_of_the_whole_one() -> None:
    worked = worked_out(cases.IN_PART)
    whole = clashes_of(worked.problem, worked.solution, can)
    for seconds in (0, 2, 5, 12, 30):
        some = clashes_of(worked.problem, worked.solution, can, ticking(seconds))  # type: ignore[arg-type]
        for violation, clashes in some.items():
            known = [clash for clash in clashes if clash.taken]
            assert known == list(whole[violation])[: len(known)]
        assert set(some) <= set(amounts(worked.problem, worked.solution))
    assert clashes_of(worked.problem, worked.solution, can, lambda: math.inf) == whole


def test_comments_and_layout_stay_but_for_the_lines_of_the_change() -> None:
    worked = worked_out(SQUASH_AND_POT)
    way = next(way for way in ways_of(SQUASH_AND_POT) if "on a ring" in way.what)

    changed = [line for line in difflib.ndiff(worked.text.splitlines(), way.text.splitlines()) if line[0] in "+-"]
    assert [line.lstrip("+ ") for line in changed] == ["or:", "- keeps: 1 h 15 on the stovetop, 1 ring"]


def test_nothing_is_offered_where_nothing_is_given_up() -> None:
    assert ways_of(cases.TEN_BEFORE.replace("17:50", "17:00")) == []
