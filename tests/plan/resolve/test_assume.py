"""What is taken for granted where a plan is silent; each thing taken is told."""

from collections.abc import Callable
from datetime import UTC, datetime

import pytest

from board.plan.load import PlanFile
from board.plan.phrases.durations import Attention, Spread
from board.plan.resolve.assume import Filled, FilledWay
from board.plan.resolve.assumed import Assumed, Kind, Value
from board.plan.resolve.keeping import BEST_WITHIN_MINUTES, KEEPS_MINUTES
from tests.conftest import HEAD

PlanFrom = Callable[[str], PlanFile]

KITCHEN = """
kitchen:
  ovens: {oven: {shelves: 2, low: 50 C, high: 250 C, heats: 15 min to 180 C, cools: 25 min from 200 to 120 C}}
  rings: 4
  wash up: no
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


CUT = ("leek-soup/cut",)
HOME: dict[str, Value] = {"celsius": 74, "rules": "home rules (USDA FSIS / FoodSafety.gov)"}  # poultry, FoodSafety.gov


def of(kind: Kind, *about: str, tasks: tuple[str, ...] = (), **values: Value) -> Assumed:
    return Assumed(kind, values, about, tasks)


def of_cut(kind: Kind, **values: Value) -> Assumed:
    return of(kind, "cut", tasks=CUT, **values)


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
    "no place": ("takes: 10 min, keeps: 1 h", [of_cut("place-and-hands", place="worktop")]),
    "no place, hands given": (f"takes: 10 min, {WHOLE}", [of_cut("place", place="worktop")]),
    "no keeping": (
        "where: worktop, takes: 10 min, attended: all",
        [of_cut("keeps-as", minutes=24 * 60, kept="fridge", of="cut vegetables")],
    ),
    "no rings": (f"where: stovetop, takes: 10 min, best within: 9 min, {WHOLE}", [of_cut("ring")]),
    "hands at the stovetop": (
        "where: 'stovetop, 1 ring', takes: 9 min, best within: 9 min, keeps: 1 h", [of_cut("hands")],
    ),
    "no shelf": (
        f"where: oven at 180 C, takes: 10 min, best within: 9 min, {WHOLE}",
        [of_cut("shelf")],
    ),
    "hands at the oven": (
        "where: 'oven at 170 to 190 C, 1 shelf', takes: 10 min, best within: 9 min, keeps: 1 h",
        [of_cut("hands-at-both-ends", start=2, end=2)],
    ),
    "hands at the fridge": ("where: fridge, takes: 6 h, keeps: 1 h", [of_cut("hands-at-start", start=2)]),
    "best within": (f"where: 'stovetop, 1 ring', takes: 10 min, {WHOLE}", [of_cut("best-within", minutes=15)]),
    "a shelf to keep on": (
        "where: worktop, takes: 9 min, attended: all, keeps: 1 h in the oven at 80 to 90 C", [of_cut("shelf")],
    ),
    "another way": (
        f"where: worktop, takes: 9 min, {WHOLE}, or: {{where: stovetop, takes: 5 min}}",
        [of_cut("ring"), of_cut("hands")],
    ),
    "thawed in water": (  # FSIS: an hour a pound, the water changed every 30 min; a pound is 0.454 kg
        "thaws: 0.454 kg in cold water, cooks: poultry",
        [
            of_cut("thaws", minutes=60),
            of_cut("hands-for-fresh-water", start=2, look=2, every=30),
            of_cut("core", **HOME),
        ],
    ),
}  # fmt: skip


@pytest.mark.parametrize(("said", "assumed"), SILENT.values(), ids=SILENT)
def test_each_thing_a_step_leaves_out_is_assumed_and_told(
    plan_from: PlanFrom, said: str, assumed: list[Assumed]
) -> None:
    assert list(filled(plan_from, f"step: cut, {said}").assumed) == assumed


@pytest.mark.parametrize(
    ("left_out", "told"),
    [
        ("    eaten in: 25 min\n", of("eaten", "Soup", tasks=("clear/soup",), minutes=25)),
        ("    may slip: 10 min\n", of("may-slip", "Soup", tasks=("serve/soup",), minutes=10)),
        ("    serve: 5 min\n", of("serve", "Soup", tasks=("serve/soup",), minutes=5)),
        ("    clear: 5 min\n", of("clear", "Soup", tasks=("clear/soup",), minutes=5)),
    ],
)
def test_each_thing_a_course_leaves_out_is_assumed_and_told(plan_from: PlanFrom, left_out: str, told: Assumed) -> None:
    assert filled(plan_from, course=COURSE.replace(left_out, "")).assumed == (told,)


def test_work_at_the_table_grows_with_those_who_eat_unless_the_plan_says(plan_from: PlanFrom) -> None:
    seated = (
        COURSE.replace("    standing: yes\n", "")
        .replace("    serve: 5 min\n", "")
        .replace("clear: 5 min", "clear: 4 min")
    )
    many = HEAD.replace("8 guests", "24 guests")
    for course, served in ((seated, 15), (seated.replace("    dishes", "    served in: 4 bowls\n    dishes"), 9)):
        found = plan_from(
            many + KITCHEN + course + f"          - {{step: cut, takes: 1 min, where: worktop, {WHOLE}}}\n"
        ).filled
        minutes = [way(found, id_).takes.likely for id_ in ("guests-to-the-table", "serve/soup", "clear/soup")]
        assert minutes == [8, served, 4]
        assert of("serve", "Soup", tasks=("serve/soup",), minutes=served, guests=24) in found.assumed


def test_a_course_eaten_seated_has_guests_to_seat_and_a_while_to_sit(plan_from: PlanFrom) -> None:
    assumed = filled(plan_from, course=COURSE.replace("    standing: yes\n", "")).assumed
    seat, sit = sorted(assumed, key=lambda each: each.kind)
    assert seat == of("seat", tasks=("guests-to-the-table",), minutes=5)
    assert sit == of("sit", "Soup", tasks=("serve/soup",), minutes=8)


@pytest.mark.parametrize(
    ("kitchen", "told"),
    [
        ("", [of("kitchen"), of("oven-range", "oven", low=50, high=250)]),
        ("kitchen: {rings: 4}", [of("one-oven"), of("oven-range", "oven", low=50, high=250)]),
        ("kitchen: {ovens: 0}", [of("rings", rings=4)]),
        (
            "kitchen: {rings: 4, ovens: {big: {}}}",
            [of("shelves", "big", shelves=2), of("oven-range", "big", low=50, high=250)],
        ),
    ],
)
def test_each_thing_a_kitchen_leaves_out_is_assumed_and_told(
    plan_from: PlanFrom, kitchen: str, told: list[Assumed]
) -> None:
    """How an oven heats and cools: common practice, no source."""
    found = filled(plan_from, kitchen=kitchen + "\n").assumed
    ovens = () if "0}" in kitchen else (told[-1].about[0],)
    rates = [of("oven-heats", *ovens, to=175, minutes=15), of("oven-cools", *ovens, begin=200, to=120, minutes=25)]

    assert list(found) == [*told, *(rates if ovens else [])]


def test_a_job_of_one_line_brings_its_usual_figures_and_tells_them(plan_from: PlanFrom) -> None:
    """What a job usually takes is common practice, no source."""
    found = filled(plan_from, jobs="jobs: [lay the table, polish the gong, borrow chairs]\n")

    assert way(found, "jobs/lay-the-table").takes == Spread(low=25, likely=25, high=25)
    assert way(found, "jobs/polish-the-gong").takes.likely == 10
    names = ("lay the table", "polish the gong", "borrow chairs")
    jobs = ("jobs/lay-the-table", "jobs/polish-the-gong", "jobs/borrow-chairs")
    assert found.assumed == (
        of("soon-before", names[0], tasks=jobs[:1], most=36 * 60, event="guests"),
        of("last-hours", names[1], tasks=jobs[1:2], most=180, event="guests"),
        of("before-guests", names[2], tasks=jobs[2:]),
        of("place-and-hands", *names, tasks=jobs, place="front-of-house"),
        of("takes", names[0], tasks=jobs[:1], minutes=25),
        of("takes", names[1], tasks=jobs[1:2], minutes=10, ours=True),
        of("takes", names[2], tasks=jobs[2:], minutes=20),
    )


def test_wine_is_put_to_chill_in_a_moment_and_then_left(plan_from: PlanFrom) -> None:
    """White wine, 2 h in the fridge: common practice, no source."""
    found = filled(plan_from, jobs="jobs: [Chill the wine]\n")
    chill = way(found, "jobs/chill-the-wine")

    assert (chill.where.place, chill.takes.likely, chill.attended) == ("fridge", 120, Attention(start=5))
    assert of("hands-at-start", "Chill the wine", tasks=("jobs/chill-the-wine",), start=5) in found.assumed
    assert of("takes", "Chill the wine", tasks=("jobs/chill-the-wine",), minutes=120) in found.assumed


def test_a_job_in_one_line_is_done_where_it_usually_is_and_by_the_number_of_guests(plan_from: PlanFrom) -> None:
    found = filled(plan_from, jobs="jobs: [fold the napkins, fill the ice bucket]")

    assert way(found, "jobs/fold-the-napkins").takes.likely == 8  # 8 guests, a napkin each
    assert way(found, "jobs/fold-the-napkins").where.place == "front-of-house"
    assert way(found, "jobs/fill-the-ice-bucket").where.place == "worktop"
    ice = of("place-and-hands", "fill the ice bucket", tasks=("jobs/fill-the-ice-bucket",), place="worktop")
    assert ice in found.assumed


def test_what_is_laid_is_assumed_only_where_the_plan_says_what_there_is(plan_from: PlanFrom) -> None:
    seated = COURSE.replace("    standing: yes\n", "")

    def laid(kitchen: str) -> list[Assumed]:
        there = filled(plan_from, kitchen=kitchen, course=seated).assumed
        return [each for each in there if each.kind in ("laid", "laid-throughout")]

    assert laid(KITCHEN + "table: {soup bowls: 8}") == [
        of("laid-throughout", pieces=("water glass", "napkin")),
        of("laid", "Soup", pieces=("soup bowl", "soup spoon")),
    ]
    assert laid(KITCHEN) == []


def test_perishable_food_is_not_left_out_longer_than_two_hours(plan_from: PlanFrom) -> None:
    """USDA FSIS, "Danger Zone": no more than 2 h between 40 and 140 °F; from memory."""
    brown = "step: brown the bacon, where: stovetop, takes: 9 min"
    found = filled(plan_from, brown, "step: boil it all, where: stovetop, takes: 9 min")
    keeps = way(found, "leek-soup/brown-the-bacon").keeps

    assert KEEPS_MINUTES == 120
    assert keeps is not None
    assert keeps.where.place == "room"
    assert keeps.minutes <= 120


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
    told = [(each.kind, str(each.values)) for each in lantern.filled.assumed]

    assert len(told) == len(set(told))
    assert of("serve", "Broth", "Sweet", tasks=("serve/broth", "serve/sweet"), minutes=5) in lantern.filled.assumed


def test_two_pieces_of_work_of_one_name_are_told_once_and_both_known(plan_from: PlanFrom) -> None:
    broth = "      - {dish: Leek broth, steps: [{step: cut, takes: 1 min, keeps: 1 h}]}\n"
    found = filled(plan_from, "step: cut, takes: 1 min, keeps: 1 h", jobs=broth)

    both = ("leek-soup/cut", "leek-broth/cut")
    assert found.assumed == (of("place-and-hands", "cut", tasks=both, place="worktop"),)
