"""Washing up that a plan does not write: clearing down before the guests, a tool between two dishes. The minutes are
common practice, no source."""

from collections.abc import Callable

import pytest

from board.facts.washing import clear_down_minutes
from board.plan.load import PlanFile
from tests.conftest import HEAD

PlanFrom = Callable[[str], PlanFile]
CLEAR_DOWN = "jobs/clear-down-the-kitchen"
DINNER = """\
event: Supper on a small hob
date: 2027-03-06
zone: Europe/London
arrive: 19:00
guests: [4 guests]
kitchen:
  tools: {{{tools}}}
{kitchen}hands: {{host: {{hours: {{{hours}}}}}}}
courses:
  - {{course: Starter, at: '19:30', dishes: [{starter}]}}
  - {{course: Main, at: '20:30', dishes: [{main}]}}
jobs: [{jobs}]
"""
ON_THE_DAY = "on the day: '14:00 - 23:30'"
EVE = "day before: '17:00 - 22:00', "


def dish(name: str, *steps: str) -> str:
    return f"{{dish: {name}, steps: [{', '.join('{' + step + '}' for step in steps)}]}}"


def step(name: str, where: str, keeps: str = "10 min hot", takes: int = 8) -> str:
    return f"step: {name}, where: '{where}', takes: {takes} min, keeps: {keeps}"


FISH = dish("Fish", step("sear the fish", "stovetop, frying pan"))
STEAKS = dish("Steaks", step("fry the steaks", "stovetop, frying pan"))
MUSHROOMS = dish("Mushrooms", step("fry the mushrooms", "stovetop, frying pan", "40 min hot"))
SALAD = dish("Salad", step("dress the salad", "worktop", "1 h in the room"))


GRAVY = dish("Gravy", step("make the gravy", "stovetop, small pan", "30 min hot", 12))
CUSTARD = dish("Custard", step("make the custard", "stovetop, small pan", "30 min hot", 12))


def test_what_is_kept_hot_stays_in_its_pan_until_it_is_served(
    washed: Callable[..., list[tuple[str, str, str]]],
) -> None:
    """Else the gravy would have to be out of it, and the pan washed, within the half hour that it keeps."""
    told = washed(starter=GRAVY, main=CUSTARD, tools="small pan: 1")
    assert told == [("serve", "wash the small pan", "custard")]


def test_where_there_is_no_time_for_that_it_is_put_elsewhere(washed: Callable[..., list[tuple[str, str, str]]]) -> None:
    """A custard that takes an hour is begun before the starter goes out."""
    slow = dish("Custard", step("make the custard", "stovetop, small pan", "30 min hot", 65))
    assert washed(starter=GRAVY, main=slow, tools="small pan: 1") == [("gravy", "wash the small pan", "custard")]


@pytest.fixture
def washed(plan_from: PlanFrom) -> Callable[..., list[tuple[str, str, str]]]:
    """Tools that the program has washed: each with the work before and after it."""

    def make(
        *,
        starter: str = FISH,
        main: str = STEAKS,
        jobs: str = "",
        tools: str = "frying pan: 1, big pot: 1",
        hours: str = ON_THE_DAY,
        kitchen: str = "",
    ) -> list[tuple[str, str, str]]:
        filled = plan_from(
            DINNER.format(starter=starter, main=main, jobs=jobs, tools=tools, hours=hours, kitchen=kitchen)
        ).filled
        found = []
        for task in filled.tasks.values():
            if task.node.loc == ("kitchen", "wash up") and task.node.id != CLEAR_DOWN:
                before = next(link.first for link in filled.links if link.second == task.node.id)
                after = next(link.second for link in filled.links if link.first == task.node.id)
                found.append((before.partition("/")[0], task.node.name, after.partition("/")[0]))
        return found

    return make


Washed = Callable[..., list[tuple[str, str, str]]]


def test_a_pan_that_two_courses_need_is_washed_in_between(washed: Washed) -> None:
    assert washed() == [("serve", "wash the frying pan", "steaks")]


def test_of_two_dishes_of_a_course_what_keeps_longer_is_cooked_first(washed: Washed) -> None:
    for main in (f"{STEAKS}, {MUSHROOMS}", f"{MUSHROOMS}, {STEAKS}"):
        assert washed(starter=SALAD, main=main) == [("mushrooms", "wash the frying pan", "steaks")]


def test_a_second_pan_needs_no_washing(washed: Washed) -> None:
    assert washed(tools="frying pan: 2, big pot: 1") == []
    both = washed(tools="frying pan: 2, big pot: 1", main=f"{MUSHROOMS}, {STEAKS}")
    assert both == [("serve", "wash the frying pan", "steaks")]


def test_another_tool_is_not_in_the_way(washed: Washed) -> None:
    assert washed(main=dish("Stew", step("stew it", "stovetop, big pot"))) == []


def test_a_dish_goes_on_in_its_own_pot(washed: Washed) -> None:
    sauce = dish(
        "Sauce", step("sweat the onions", "stovetop, frying pan"), step("reduce the sauce", "stovetop, frying pan")
    )
    assert washed(starter=SALAD, main=sauce) == []
    assert washed(main=sauce) == [("serve", "wash the frying pan", "sauce")]


def test_a_pan_that_another_way_does_without_is_not_counted_on(washed: Washed) -> None:
    other = f"{step('sear the fish', 'stovetop, frying pan')}, or: {{where: 'oven at 200 C', takes: 10 min}}"
    assert washed(starter=dish("Fish", other)) == []


def test_what_may_be_done_the_day_before_leaves_the_pan_to_that_day(washed: Washed) -> None:
    onions = dish("Onions", step("brown the onions", "stovetop, frying pan", "2 days in the fridge"))
    assert washed(starter=onions) == [("onions", "wash the frying pan", "steaks")]
    assert washed(starter=onions, hours=EVE + ON_THE_DAY) == []


@pytest.mark.parametrize("tool", ["chopping board", "cool box", "probe thermometer", "kitchen scales"])
def test_what_is_wiped_as_one_goes_is_no_work_of_its_own(washed: Washed, tool: str) -> None:
    starter, main = (dish(name, step(f"use the {name}", f"worktop, {tool}")) for name in ("Fish", "Steaks"))
    assert washed(starter=starter, main=main, tools=f"{tool}: 1") == []


@pytest.mark.parametrize(
    "job",
    [
        "{job: wash the frying pan, after: serve Starter, before: fry the steaks}",
        "{job: rinse round, takes: 5 min, washes: frying pan, after: serve Starter, before: fry the steaks}",
        "{job: do the dishes, after: clear Starter}",
    ],
)
def test_what_the_plan_washes_itself_is_not_done_twice(washed: Washed, job: str) -> None:
    assert washed(jobs=job) == []


def test_washing_up_at_the_end_is_none_in_between(washed: Washed) -> None:
    assert len(washed(jobs="{job: do the dishes, after: clear Main}")) == 1


def test_it_can_be_left_out(washed: Washed) -> None:
    assert washed(kitchen="  wash up: no\n") == []


# --- clearing down --------------------------------------------------------------------------------------------------
SUPPER = """
courses:
  - {{course: Soup, at: '19:15', dishes: [{dishes}]}}
kitchen: {{rings: 4{wash_up}}}
jobs: [{jobs}]
"""
SOUP = dish("Leek soup", step("simmer the leeks", "stovetop"))


def cleared(plan_from: PlanFrom, jobs: str = "", dishes: str = SOUP, wash_up: str = "") -> list[str]:
    """Work by which the kitchen is cleared down, by id."""
    tasks = plan_from(HEAD + SUPPER.format(jobs=jobs, dishes=dishes, wash_up=wash_up)).filled.tasks
    return [id_ for id_, task in tasks.items() if task.node.loc == ("kitchen", "wash up")]


def test_a_kitchen_is_cleared_down_before_the_guests_come(plan_from: PlanFrom) -> None:
    file = plan_from(HEAD + SUPPER.format(jobs="", dishes=SOUP, wash_up=""))
    (link,) = (link for link in file.filled.links if link.first == CLEAR_DOWN)

    assert (link.second, link.most, link.firm) == ("guests-arrive", 60, False)
    assert file.filled.tasks[CLEAR_DOWN].ways[0].takes.likely == 10


@pytest.mark.parametrize(
    "job",
    [
        "clear down the kitchen",
        "wash up",
        "load the dishwasher",
        "do the washing-up",
        "wipe down the counters and take the dog for a quick one",
        "'clean up the kitchen, put the kettle on'",
        "{job: tidy up the kitchen, takes: 0 min}",
        "{job: do the dishes before the guests, who: host}",
    ],
)
def test_never_twice(plan_from: PlanFrom, job: str) -> None:
    assert cleared(plan_from, job) == []


@pytest.mark.parametrize(
    "job",
    [
        "lay the table",
        "wash up after dinner",
        "{job: load the dishwasher, after: clear Soup}",
        "{job: wash up, day: day before}",
        "wash the leeks",
    ],
)
def test_other_work_does_not_stand_for_it(plan_from: PlanFrom, job: str) -> None:
    assert len(cleared(plan_from, job)) == 1


def test_where_there_is_no_time_before_the_guests_the_table_comes_first(plan_from: PlanFrom) -> None:
    """8 min of soup and 30 of lamps, and 10 to clear down: 48."""
    lamps = "{job: polish the lamps, takes: 30 min, before: guests arrive}"
    supper = SUPPER.format(jobs=lamps, dishes=SOUP, wash_up="")
    for begins, cleared_down in (("18:20", False), ("17:45", False), ("17:30", True), ("9:00", True)):
        file = plan_from(HEAD.replace("9:00 - 23:30", f"{begins} - 23:30") + supper)
        assert (CLEAR_DOWN in file.filled.tasks) == cleared_down, begins


def test_nothing_cooked_nothing_cleared(plan_from: PlanFrom) -> None:
    assert cleared(plan_from, dishes=SALAD) == []
    assert cleared(plan_from, wash_up=", wash up: no") == []


def test_more_dishes_take_longer_up_to_twenty_minutes() -> None:
    assert [clear_down_minutes(cooked) for cooked in (1, 2, 3, 5, 6, 20)] == [10, 12, 14, 18, 20, 20]
