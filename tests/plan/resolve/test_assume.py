"""What is taken for granted where a plan is silent; each thing taken is told."""

from collections.abc import Callable
from datetime import UTC, datetime

import pytest

from board.plan.load import PlanFile
from board.plan.phrases.durations import Attention, Spread
from board.plan.resolve.assume import BEST_WITHIN_MINUTES, KEEPS_MINUTES, Filled, FilledWay
from tests.conftest import HEAD

PlanFrom = Callable[[str], PlanFile]

KITCHEN = """
kitchen:
  ovens: {oven: {shelves: 2, low: 50 C, high: 250 C, heats: 15 min to 180 C, cools: 25 min from 200 to 120 C}}
  rings: 4
"""
COURSE = """
courses:
  - course: Soup
    at: 19:15
    eaten in: 25 min
    may slip: 10 min
    serve: 5 min
    clear: 5 min
    standing: yes
    dishes:
      - dish: Leek soup
        steps:
"""
WHOLE = "attended: all, keeps: 1 h in the room"


def filled(plan_from: PlanFrom, *steps: str, kitchen: str = KITCHEN, course: str = COURSE, jobs: str = "") -> Filled:
    lines = "".join(
        f"          - {{{step}}}\n" for step in steps or [f"step: cut, where: worktop, takes: 1 min, {WHOLE}"]
    )
    return plan_from(HEAD + kitchen + course + lines + jobs).filled


def way(found: Filled, id_: str, number: int = 0) -> FilledWay:
    return found.tasks[id_].ways[number]


def test_a_plan_that_says_everything_has_nothing_assumed(plan_from: PlanFrom) -> None:
    oven = "where: 'oven at 180 C (170 to 190 C), 1 shelf', takes: 20 min, best within: 10 min"
    found = filled(
        plan_from,
        f"step: cut, where: worktop, takes: 10 min, {WHOLE}",
        f"step: bake, {oven}, {WHOLE}",
        jobs="jobs: [{job: x, where: front-of-house, takes: 1 min, attended: all, before: guests arrive}]",
    )

    assert found.assumed == ()


# What a step says; then what is assumed of it, beside nothing else.
SILENT = {
    "no place": ("takes: 10 min, keeps: 1 h", ["is done at the worktop, with hands on it all the time: cut"]),
    "no place, hands given": (f"takes: 10 min, {WHOLE}", ["is done at the worktop: cut"]),
    "no keeping": ("where: worktop, takes: 10 min, attended: all", ["keeps 2 h in the room: cut"]),
    "no rings": (f"where: stovetop, takes: 10 min, best within: 9 min, {WHOLE}", ["takes 1 ring: cut"]),
    "hands at the stovetop": (
        "where: 'stovetop, 1 ring', takes: 9 min, best within: 9 min, keeps: 1 h", ["needs hands all the time: cut"],
    ),
    "no shelf": (
        f"where: oven at 180 C, takes: 10 min, best within: 9 min, {WHOLE}",
        ["takes 1 shelf: cut"],
    ),
    "hands at the oven": (
        "where: 'oven at 170 to 190 C, 1 shelf', takes: 10 min, best within: 9 min, keeps: 1 h",
        ["needs hands 2 min at the start and 2 min at the end: cut"],
    ),
    "hands at the fridge": ("where: fridge, takes: 6 h, keeps: 1 h", ["needs hands 2 min at the start: cut"]),
    "best within": (
        f"where: 'stovetop, 1 ring', takes: 10 min, {WHOLE}",
        ["served within 15 min of being ready, if it can be: cut"],
    ),
    "a shelf to keep on": (
        "where: worktop, takes: 9 min, attended: all, keeps: 1 h in the oven at 80 to 90 C", ["takes 1 shelf: cut"],
    ),
    "another way": (
        f"where: worktop, takes: 9 min, {WHOLE}, or: {{where: stovetop, takes: 5 min}}",
        ["takes 1 ring: cut", "needs hands all the time: cut"],
    ),
}  # fmt: skip


@pytest.mark.parametrize(("said", "assumed"), SILENT.values(), ids=SILENT)
def test_each_thing_a_step_leaves_out_is_assumed_and_told(plan_from: PlanFrom, said: str, assumed: list[str]) -> None:
    assert list(filled(plan_from, f"step: cut, {said}").assumed) == assumed


@pytest.mark.parametrize(
    ("left_out", "told"),
    [
        ("    eaten in: 25 min\n", "eaten in 25 min: Soup"),
        ("    may slip: 10 min\n", "may go out up to 10 min late: Soup"),
        ("    serve: 5 min\n", "5 min to plate and carry a course: Soup"),
        ("    clear: 5 min\n", "5 min to clear a course: Soup"),
        ("    standing: yes\n", "5 min to bring the guests to the table"),
    ],
)
def test_each_thing_a_course_leaves_out_is_assumed_and_told(plan_from: PlanFrom, left_out: str, told: str) -> None:
    assert filled(plan_from, course=COURSE.replace(left_out, "")).assumed == (told,)


@pytest.mark.parametrize(
    ("kitchen", "told"),
    [
        ("", ["an ordinary kitchen: one oven with two shelves, four rings", "goes from 50 to 250 °C: oven"]),
        ("kitchen: {rings: 4}", ["the kitchen has one oven with two shelves", "goes from 50 to 250 °C: oven"]),
        ("kitchen: {ovens: 0}", ["the kitchen has 4 rings"]),
        ("kitchen: {rings: 4, ovens: {big: {}}}", ["has 2 shelves: big", "goes from 50 to 250 °C: big"]),
    ],
)
def test_each_thing_a_kitchen_leaves_out_is_assumed_and_told(
    plan_from: PlanFrom, kitchen: str, told: list[str]
) -> None:
    assumed = list(filled(plan_from, kitchen=kitchen + "\n").assumed)

    assert [line for line in assumed if not line.startswith(("heats", "cools"))] == told
    assert sum(line.startswith(("heats from cold", "cools from 200")) for line in assumed) == (
        0 if "0}" in kitchen else 2
    )


def test_a_job_of_one_line_brings_its_usual_figures_and_tells_them(plan_from: PlanFrom) -> None:
    """What a job usually takes is common practice, no source."""
    found = filled(plan_from, jobs="jobs: [lay the table, polish the gong, borrow chairs]\n")

    assert way(found, "jobs/lay-the-table").takes == Spread(low=25, likely=25, high=25)
    assert way(found, "jobs/polish-the-gong").takes.likely == 10
    assert found.assumed == (
        "is done in the last 36 h before the guests arrive, as usual: lay the table",
        "is done any time before the guests arrive (say when, for example `before: guests arrive, at most 1 h`): "
        "polish the gong",
        "is done before the guests arrive, if it can be: borrow chairs",
        "is done front of house, with hands on it all the time: lay the table, polish the gong, borrow chairs",
        "takes 25 min: lay the table",
        "takes 10 min: polish the gong",
        "takes 20 min: borrow chairs",
    )


def test_wine_is_put_to_chill_in_a_moment_and_then_left(plan_from: PlanFrom) -> None:
    """White wine, 2 h in the fridge: common practice, no source."""
    found = filled(plan_from, jobs="jobs: [Chill the wine]\n")
    chill = way(found, "jobs/chill-the-wine")

    assert (chill.where.place, chill.takes.likely, chill.attended) == ("fridge", 120, Attention(start=5))
    assert "needs hands 5 min at the start: Chill the wine" in found.assumed
    assert "takes 2 h: Chill the wine" in found.assumed


def test_a_job_in_one_line_is_done_where_it_usually_is_and_by_the_number_of_guests(plan_from: PlanFrom) -> None:
    found = filled(plan_from, jobs="jobs: [fold the napkins, fill the ice bucket]")

    assert way(found, "jobs/fold-the-napkins").takes.likely == 8  # 8 guests, a napkin each
    assert way(found, "jobs/fold-the-napkins").where.place == "front-of-house"
    assert way(found, "jobs/fill-the-ice-bucket").where.place == "worktop"
    assert "is done at the worktop, with hands on it all the time: fill the ice bucket" in found.assumed


def test_what_is_laid_is_assumed_only_where_the_plan_says_what_there_is(plan_from: PlanFrom) -> None:
    seated = COURSE.replace("    standing: yes\n", "")
    told = [line for line in filled(plan_from, kitchen=KITCHEN + "table: {soup bowls: 8}", course=seated).assumed
            if "laid" in line]  # fmt: skip

    assert told == ["is laid with water glass, napkin: the whole meal", "is laid with soup bowl, soup spoon: Soup"]
    assert not [line for line in filled(plan_from, course=seated).assumed if "laid" in line]


def test_perishable_food_is_not_left_out_longer_than_two_hours(plan_from: PlanFrom) -> None:
    """USDA FSIS, "Danger Zone": no more than 2 h between 40 and 140 °F; from memory."""
    found = filled(plan_from, "step: cut, takes: 10 min")

    assert KEEPS_MINUTES == 120
    assert way(found, "leek-soup/cut").keeps is not None
    assert way(found, "leek-soup/cut").keeps.minutes <= 120


def test_only_what_goes_hot_to_the_table_is_best_at_once(plan_from: PlanFrom) -> None:
    found = filled(
        plan_from,
        "step: fry, where: stovetop, takes: 9 min",
        "step: boil, where: stovetop, takes: 9 min",
        "step: cut, takes: 9 min",
    )
    hot = filled(plan_from, "step: cut, takes: 9 min", "step: fry, where: stovetop, takes: 9 min")

    assert {id_: task.best_within for id_, task in found.tasks.items() if task.best_within} == {}
    assert hot.tasks["leek-soup/fry"].best_within == BEST_WITHIN_MINUTES


def test_another_way_takes_what_it_does_not_say_from_the_first(plan_from: PlanFrom) -> None:
    step = (
        f"step: cut, where: worktop, takes: 9 min, {WHOLE}, or: [{{takes: 5 min}}, {{where: 'oven at 180 C, 1 shelf'}}]"
    )
    found = filled(plan_from, step)

    assert way(found, "leek-soup/cut", 1).where.place == "worktop"
    assert way(found, "leek-soup/cut", 1).attended == Attention(whole=True)
    assert way(found, "leek-soup/cut", 2).takes.likely == 9
    assert way(found, "leek-soup/cut", 2).attended == Attention(start=2, end=2)  # an oven needs no hands all the time


def test_courses_are_wanted_at_a_clock_time_or_so_long_after_something(plan_from: PlanFrom) -> None:
    """Dublin is on UTC in November (IANA time zone database)."""
    course = "  - {course: %s, at: %s, dishes: [{dish: Bread %s, steps: [{step: slice, takes: 5 min}]}]}\n"
    times = ["10 min after guests arrive", "19:15", "45 min after the course before", "1 h 30 after c1", "0:15"]
    found = plan_from(HEAD + "courses:\n" + "".join(course % (f"c{n}", at, n) for n, at in enumerate(times))).filled

    assert found.arrive == datetime(2026, 11, 28, 18, 30, tzinfo=UTC)
    assert [each.wanted for each in found.courses] == [
        datetime(2026, 11, 28, 18, 40, tzinfo=UTC),
        datetime(2026, 11, 28, 19, 15, tzinfo=UTC),
        datetime(2026, 11, 28, 20, 0, tzinfo=UTC),
        datetime(2026, 11, 28, 20, 45, tzinfo=UTC),
        datetime(2026, 11, 29, 0, 15, tzinfo=UTC),
    ]


def test_the_same_assumption_is_told_once_with_all_it_is_about(lantern: PlanFile) -> None:
    told = [line.split(":")[0] for line in lantern.filled.assumed]

    assert len(told) == len(set(told))
    assert "5 min to plate and carry a course: Broth, Sweet" in lantern.filled.assumed
