"""What is left of an evening, by suppers reckoned by hand: done, under way, to come, left out; orders; ovens."""

from collections.abc import Mapping
from dataclasses import replace
from datetime import timedelta

import msgspec
import pytest

from board.evening.forecast import Forecaster
from board.evening.state import State, StepState, begin
from board.schedule.oven_dial import COLD_AFTER_MINUTES
from board.schedule.problem import (
    Clock,
    Demand,
    Hand,
    Hold,
    Job,
    Order,
    OvenFacts,
    OvenNow,
    OvenUse,
    Part,
    Problem,
    Serving,
    Stood,
    Way,
)
from board.schedule.solver.solve import solve
from board.session.replan.remaining import as_it_stands, where_it_looks
from board.sheet.run_sheet import Keeping, RunSheet, SpoilClock
from tests.conftest import at
from tests.evening.kitchens import ovens
from tests.schedule.by_hand import RATES, baked, follows, job, kitchen

ORIGIN = at("16:00")
CHOP, STEW, ARRIVE, SAUCE, SERVE, CLEAR = range(6)
LOOK, AGAIN = Part(20, 1, "look-in"), Part(40, 1, "look-in")
SIMMER = (LOOK, AGAIN, Part(58, 2, "end"))
RING = (Demand(0, 1),)


def minute(clock: str) -> int:
    return round((at(clock) - ORIGIN) / timedelta(minutes=1))


def of_the_pot(*orders: Order, **more: Job) -> Problem:
    """What the little supper was worked out from; its first minute of hours is 16:30, and it ends at 20:00."""
    jobs = {
        "chop": job("chop", 20, hold=Hold(120)),
        "stew": replace(job("stew", 60, SIMMER, demands=RING, hold=Hold(30, RING), hot=True), best_within=20),
        "arrive": replace(job("arrive", 0), fixed=minute("18:30")),
        "sauce": job("sauce", 10, hold=Hold(15)),
        "serve": job("serve", 10, lane="front-of-house"),
        "clear": job("clear", 5, lane="front-of-house"),
        **more,
    }
    index = {id_: n for n, id_ in enumerate(jobs)}
    made = kitchen(*jobs.values(), orders=orders, servings=(Serving("Stew", SERVE, minute("19:00"), 10),), index=index)
    return replace(made, origin=ORIGIN, opens=30, horizon=240, arrives=minute("18:30"), dinner_over=CLEAR)


def of_the_pie(**ways: Way) -> Problem:
    """What the supper of two ovens was worked out from."""
    use = {"rolls": baked(200), "pie": baked(180), "crisps": replace(baked(150), oven=1)}
    lasts = {"rolls": 20, "pie": 45, "crisps": 30}
    bakes = [job(id_, lasts[id_], (), lane="oven", oven=use[id_], hot=True, warm_up=15) for id_ in use]
    jobs = [*bakes, job("serve", 20), job("clear", 5)]
    jobs = [replace(each, ways=(ways.get(each.id, each.ways[0]),)) for each in jobs]
    two = tuple(OvenFacts(name, 2, RATES) for name in ("big", "small"))
    return replace(kitchen(*jobs, ovens=two, index={each.id: n for n, each in enumerate(jobs)}), origin=ORIGIN)


def standing(sheet: RunSheet, steps: Mapping[str, StepState], pushed: Mapping[str, int] | None = None) -> State:
    fresh = begin(sheet)
    return replace(fresh, steps={**fresh.steps, **steps}, pushed=pushed or {})


def left(problem: Problem, state: State, now: str) -> Problem:
    return as_it_stands(problem, state, Forecaster(state.sheet).forecast(state, at(now)))


def done(start: str, end: str) -> StepState:
    return StepState("finished", at(start), at(end))


def begun(start: str, by: int = 0) -> StepState:
    """Under way, and so many minutes longer than planned."""
    return StepState("under-way", at(start), stretched=timedelta(minutes=by))


def longer(by: int) -> StepState:
    return StepState(stretched=timedelta(minutes=by))


LEFT_OUT = StepState("left-out")


# What is over


def test_what_is_done_takes_nothing_any_more_and_has_used_up_some_of_its_keeping(little: RunSheet) -> None:
    """Stewed by 18:30, looked at 12 minutes later: of 30 minutes on the ring 18 are left, of its best 20, 8."""
    state = standing(little, {"stew": done("17:30", "18:30")})
    stew = left(of_the_pot(), state, "18:42").jobs[STEW]

    assert stew.ways == (Way(0, "worktop", 0, (), hold=Hold(18, RING)),)
    assert (stew.fixed, stew.best_within) == (minute("18:42"), 8)


def test_what_has_kept_too_long_has_nothing_left(little: RunSheet) -> None:
    stew = left(of_the_pot(), standing(little, {"stew": done("17:30", "18:30")}), "19:10").jobs[STEW]

    assert stew.ways[0].hold == Hold(0, RING)
    assert stew.best_within == 0


def test_a_minute_is_used_up_when_it_is_over(little: RunSheet) -> None:
    state = standing(little, {"chop": StepState("finished", at("17:00"), at("17:20") + timedelta(seconds=30))})

    assert left(of_the_pot(), state, "17:45").jobs[CHOP].ways[0].hold == Hold(120 - 24)


def test_what_ends_only_by_a_clock_that_was_set_back_has_stood_no_time(little: RunSheet) -> None:
    state = standing(little, {"chop": done("17:00", "17:25")})

    assert left(of_the_pot(), state, "17:20").jobs[CHOP].ways[0].hold == Hold(120)
    assert left(of_the_pot(), state, "17:25").jobs[CHOP].ways[0].hold == Hold(120)


def test_what_keeps_without_limit_goes_on_to(little: RunSheet) -> None:
    problem = of_the_pot(chop=job("chop", 20, hold=Hold(None)), sauce=job("sauce", 10))
    jobs = left(
        problem, standing(little, {"chop": done("17:00", "17:20"), "sauce": done("18:35", "18:45")}), "18:50"
    ).jobs

    assert jobs[CHOP].ways[0].hold == Hold(None)
    assert jobs[SAUCE].ways[0].hold is None
    assert jobs[CHOP].best_within is None


def test_what_is_left_out_takes_nothing_and_may_be_gone_over_at_once(little: RunSheet) -> None:
    quick = Way(1, "oven", 35, (), hot=True)
    stew = of_the_pot().jobs[STEW]
    problem = of_the_pot(stew=replace(stew, ways=(*stew.ways, quick), window=(90, 150), fixed=90))
    gone = left(problem, standing(little, {"stew": LEFT_OUT}), "17:10").jobs[STEW]

    assert gone.ways == (Way(0, "worktop", 0, ()),)
    assert (gone.earliest, gone.window, gone.fixed, gone.best_within) == (minute("17:10"), None, None, None)


# What is under way


def test_what_hands_are_on_goes_on_from_now(little: RunSheet) -> None:
    chop = left(of_the_pot(), standing(little, {"chop": begun("17:00")}), "17:05").jobs[CHOP]

    assert chop.fixed == minute("17:05")
    assert (chop.ways[0].minutes, chop.ways[0].parts) == (15, (Part(0, 15, "all"),))


def test_what_is_overdue_takes_one_more_minute(little: RunSheet) -> None:
    chop = left(of_the_pot(), standing(little, {"chop": begun("17:00")}), "17:40").jobs[CHOP]

    assert (chop.ways[0].minutes, chop.ways[0].parts) == (1, (Part(0, 1, "all"),))


def test_what_takes_longer_keeps_hands_on_it_from_now_on(little: RunSheet) -> None:
    chop = left(of_the_pot(), standing(little, {"chop": begun("17:00", by=5)}), "17:01").jobs[CHOP]

    assert (chop.ways[0].minutes, chop.ways[0].parts) == (24, (Part(0, 24, "all"),))


def test_of_what_simmers_hands_are_still_wanted_at_its_end(little: RunSheet) -> None:
    """Look-ins no longer: whoever is at the stove has an eye on it."""
    simmering = standing(little, {"stew": begun("17:30")})
    early, late = (left(of_the_pot(), simmering, clock).jobs[STEW].ways[0] for clock in ("18:05", "18:29"))

    assert (early.minutes, early.parts, early.demands) == (25, (Part(23, 2, "end"),), RING)
    assert (late.minutes, late.parts) == (1, (Part(0, 1, "end"),))


@pytest.mark.parametrize(
    ("now", "by", "parts"),
    [
        ("17:33", 0, (Part(0, 2, "start"), Part(55, 2, "end"))),
        ("17:34", 0, (Part(0, 1, "start"), Part(54, 2, "end"))),
        ("17:35", 0, (Part(53, 2, "end"),)),
        ("17:31", -57, (Part(0, 2, "start"),)),  # it will take 3 minutes in all
    ],
)
def test_of_what_was_just_put_on_so_much_of_the_beginning_is_left(
    little: RunSheet, now: str, by: int, parts: tuple[Part, ...]
) -> None:
    problem = of_the_pot(stew=job("stew", 60, (Part(0, 5, "start"), Part(58, 2, "end"))))

    assert left(problem, standing(little, {"stew": begun("17:30", by)}), now).jobs[STEW].ways[0].parts == parts


def test_two_things_in_one_pair_of_hands_are_done_one_after_the_other(little: RunSheet) -> None:
    """Of the chopping 10 minutes are left, of the sauce, begun beside it, 13."""
    problem = of_the_pot(sauce=job("sauce", 15))
    state = standing(little, {"chop": begun("17:00"), "sauce": begun("17:08", by=5)})
    jobs = left(problem, state, "17:10").jobs

    assert jobs[CHOP].ways[0].parts == (Part(0, 10, "all"),)
    assert jobs[SAUCE].ways[0].parts == (Part(10, 3, "all"),)


def test_two_pairs_of_hands_go_on_side_by_side(little: RunSheet) -> None:
    ines = tuple(
        msgspec.structs.replace(each, attended=tuple(msgspec.structs.replace(p, who="Ines") for p in each.attended))
        if each.id == "sauce" else each
        for each in little.slots
    )  # fmt: skip
    sheet = msgspec.structs.replace(little, slots=ines)
    jobs = left(of_the_pot(), standing(sheet, {"chop": begun("17:00"), "sauce": begun("17:08")}), "17:10").jobs

    assert jobs[SAUCE].ways[0].parts == (Part(0, 8, "all"),)


def test_a_bake_goes_on_at_the_heat_it_is_at() -> None:
    """The pie shares 200 °C with the rolls, though it would be 170 to 190 by itself: it stays there, unheated."""
    state = standing(ovens(), {"pie": begun("17:15"), "crisps": begun("17:20")})
    jobs = left(of_the_pie(), state, "17:30").jobs

    assert jobs[1].ways[0].oven == OvenUse(0, 1, 200, 200, 200)
    assert jobs[2].ways[0].oven == OvenUse(1, 1, 150, 150, 150)
    assert jobs[1].ways[0].warm_up == 0


def test_a_bake_cooler_than_it_should_be_and_a_rest_go_on_as_they_are() -> None:
    hotter = Way(0, "oven", 45, (), oven=baked(230))
    rest = Way(0, "oven", 20, (), oven=replace(baked(120), off=True))
    state = standing(ovens(), {"pie": begun("17:15"), "rolls": begun("17:15")})
    jobs = left(of_the_pie(pie=hotter, rolls=rest), state, "17:20").jobs

    assert jobs[1].ways[0].oven == OvenUse(0, 1, 200, 200, 200)
    assert jobs[0].ways[0].oven == rest.oven


# What is to come


def test_what_is_to_come_starts_from_now_or_when_it_was_put_off_to(little: RunSheet) -> None:
    state = standing(little, {"sauce": StepState(put_off={"start": at("18:40")})})
    jobs = left(of_the_pot(), state, "17:10").jobs

    assert (jobs[CHOP].earliest, jobs[SAUCE].earliest) == (minute("17:10"), minute("18:40"))
    assert left(of_the_pot(), state, "18:50").jobs[SAUCE].earliest == minute("18:50")
    assert jobs[CHOP].ways == of_the_pot().jobs[CHOP].ways


def test_looked_at_on_the_day_before_nothing_starts_before_the_day_does(little: RunSheet) -> None:
    assert left(of_the_pot(), standing(little, {}), "15:30").jobs[CHOP].earliest == 0


def test_guests_come_when_they_are_asked_for_or_now(little: RunSheet) -> None:
    fixed = [left(of_the_pot(), standing(little, {}), clock).jobs[ARRIVE].fixed for clock in ("17:10", "18:40")]

    assert fixed == [minute("18:30"), minute("18:40")]


def test_their_time_is_counted_from_when_they_look_like_coming(little: RunSheet) -> None:
    late = standing(little, {"arrive": StepState(put_off={"start": at("18:50")})})
    come_already = msgspec.structs.replace(
        little, slots=tuple(msgspec.structs.replace(s, kind="job") if s.id == "arrive" else s for s in little.slots)
    )

    assert left(of_the_pot(), late, "17:10").arrives == minute("18:50")
    assert left(of_the_pot(), standing(come_already, {}), "18:50").arrives == minute("18:30")


def test_hands_that_are_away_from_when_the_guests_come_are_away_so_much_later(little: RunSheet) -> None:
    """Away 18:30 to 18:40 to greet them, and at the telephone 18:45 to 18:50; they come at 18:42, 12 minutes late."""
    first, last = minute("16:30"), minute("20:00")
    untied = ((first, minute("18:45")), (minute("18:50"), last))
    free = ((first, minute("18:30")), (minute("18:40"), minute("18:45")), (minute("18:50"), last))
    host = Hand("host", free, ((first, last),), ((minute("18:30"), minute("18:40")),), untied)
    late = standing(little, {"arrive": StepState(put_off={"start": at("18:42")})})
    (hand,) = left(replace(of_the_pot(), hands=(host,)), late, "17:10").hands

    assert hand.tied == ((minute("18:42"), minute("18:52")),)
    assert hand.free == ((first, minute("18:42")), (minute("18:52"), last))
    assert left(replace(of_the_pot(), hands=(host,)), standing(little, {}), "17:10").hands == (host,)


def test_what_was_said_to_take_longer_takes_longer_in_every_way(little: RunSheet) -> None:
    stew = of_the_pot().jobs[STEW]
    quick = Way(1, "oven", 35, (Part(0, 2, "start"), Part(33, 2, "end")))
    problem = of_the_pot(stew=replace(stew, ways=(*stew.ways, quick)))
    jobs = left(problem, standing(little, {"chop": longer(5), "stew": longer(10)}), "16:50").jobs

    assert [(way.minutes, way.parts) for way in jobs[CHOP].ways] == [(25, (Part(0, 25, "all"),))]
    assert [(way.minutes, way.parts) for way in jobs[STEW].ways] == [
        (70, (Part(20, 1, "look-in"), Part(40, 1, "look-in"), Part(68, 2, "end"))),
        (45, (Part(0, 2, "start"), Part(43, 2, "end"))),
    ]


@pytest.mark.parametrize(
    ("by", "first", "second"),
    [
        (-10, (50, (LOOK, AGAIN, Part(48, 2, "end"))), (25, (Part(0, 5, "start"), Part(23, 2, "end")))),
        (-17, (43, (LOOK, AGAIN, Part(41, 2, "end"))), (18, (Part(0, 5, "start"), Part(16, 2, "end")))),
        # the last look-in comes as its end does: one pair of hands does one after the other
        (-18, (43, (LOOK, AGAIN, Part(41, 2, "end"))), (18, (Part(0, 5, "start"), Part(16, 2, "end")))),
        (-29, (31, (LOOK, Part(29, 2, "end"))), (6, (Part(0, 5, "start"), Part(5, 1, "end")))),
        (-32, (28, (LOOK, Part(26, 2, "end"))), (3, (Part(0, 3, "start"),))),
        (-40, (20, (Part(18, 2, "end"),)), (0, ())),
        (-59, (1, (Part(0, 1, "end"),)), (0, ())),
    ],
)
def test_what_was_said_to_take_less_never_asks_for_one_pair_of_hands_twice_at_a_time(
    little: RunSheet, by: int, first: tuple[int, tuple[Part, ...]], second: tuple[int, tuple[Part, ...]]
) -> None:
    stew = of_the_pot().jobs[STEW]
    quick = Way(1, "oven", 35, (Part(0, 5, "start"), Part(33, 2, "end")))
    problem = of_the_pot(stew=replace(stew, ways=(*stew.ways, quick)))
    ways = left(problem, standing(little, {"stew": longer(by)}), "16:50").jobs[STEW].ways

    assert [(way.minutes, way.parts) for way in ways] == [first, second]


def test_what_nobody_need_end_is_looked_at_up_to_its_last_minute(little: RunSheet) -> None:
    problem = of_the_pot(stew=job("stew", 60, (LOOK,)))
    parts = [
        left(problem, standing(little, {"stew": longer(by)}), "16:50").jobs[STEW].ways[0].parts for by in (-39, -40)
    ]

    assert parts == [(LOOK,), ()]


def test_a_stew_that_takes_less_still_has_a_timetable(little: RunSheet) -> None:
    """At 42 minutes its second look-in would fall on its end."""
    orders = (follows(CHOP, STEW), follows(STEW, SERVE), follows(SAUCE, SERVE), follows(SERVE, CLEAR))
    quicker = left(of_the_pot(*orders), standing(little, {"stew": longer(-18)}), "16:50")

    found = solve(quicker, 5)
    assert found.starts[STEW] + 42 <= found.starts[SERVE]


def test_a_push_is_wanted_later_on_top_of_what_the_sheet_has_taken_in(little: RunSheet) -> None:
    course = msgspec.structs.replace(little.courses[0], pushed=15)
    other = msgspec.structs.replace(course, name="Sweet", pushed=3)
    sheet = msgspec.structs.replace(little, courses=(other, course))

    wanted = [
        left(of_the_pot(), standing(each, {}, pushed), "17:10").servings[0].wanted
        for each, pushed in ((little, {}), (little, {"Stew": 20}), (sheet, {}), (sheet, {"Stew": 20}))
    ]
    assert wanted == [minute(clock) for clock in ("19:00", "19:20", "19:15", "19:35")]


def test_a_course_that_is_going_out_is_no_longer_aimed_at(little: RunSheet) -> None:
    assert left(of_the_pot(), standing(little, {"serve": begun("18:50")}), "18:55").servings == ()


def test_hours_begin_now_and_the_day_is_as_long_as_it_was(little: RunSheet) -> None:
    early, late = (left(of_the_pot(), standing(little, {}), clock) for clock in ("16:20", "17:30"))

    assert (early.opens, early.horizon) == (minute("16:20"), 240)
    assert (late.opens, late.horizon) == (minute("17:30"), 300)


def test_a_search_begins_near_what_the_evening_looks_like(little: RunSheet) -> None:
    """Whole minutes, and none before the day begins."""
    state = standing(little, {"chop": begun("15:50"), "sauce": StepState(put_off={"start": at("18:40")})})
    forecast = Forecaster(little).forecast(state, at("16:58"))

    begins = where_it_looks(of_the_pot(), forecast)
    assert begins == [0, *(minute(clock) for clock in ("17:30", "18:30", "18:40", "18:50", "19:30"))]
    part = Forecaster(little).forecast(begin(little), at("17:10") + timedelta(seconds=10))
    assert where_it_looks(of_the_pot(), part)[CHOP] == minute("17:11")


# What follows what


REST, SOON, AT_ONCE = follows(CHOP, STEW, 10), Order(CHOP, STEW, 10, 40, True), Order(CHOP, STEW, 10, 10, True)


@pytest.mark.parametrize(
    ("chop", "before", "after"),
    [
        (StepState(), SOON, SOON),
        (StepState(), AT_ONCE, AT_ONCE),
        (begun("17:00"), REST, REST),
        (begun("17:00"), SOON, SOON),
        (begun("17:00"), AT_ONCE, follows(CHOP, STEW)),  # it was begun apart, so the sooner the better
        (done("16:50", "17:06"), REST, follows(CHOP, STEW, 6)),
        (done("16:50", "17:06"), SOON, Order(CHOP, STEW, 6, 36, True)),
        (done("16:50", "17:06"), AT_ONCE, follows(CHOP, STEW)),
        (done("16:10", "16:20"), SOON, Order(CHOP, STEW, 0, 0, True)),
        (LEFT_OUT, SOON, follows(CHOP, STEW)),
        (LEFT_OUT, REST, follows(CHOP, STEW)),
    ],
)
def test_what_has_passed_counts_for_the_rest_between_two_steps(
    little: RunSheet, chop: StepState, before: Order, after: Order
) -> None:
    """Looked at 4 minutes after the chopping was done at 17:06, or 50 after 16:20."""
    assert left(of_the_pot(before), standing(little, {"chop": chop}), "17:10").orders == (after,)


def test_what_has_begun_follows_nothing_any_more(little: RunSheet) -> None:
    state = standing(little, {"chop": done("16:50", "17:06"), "stew": begun("17:08")})

    assert left(of_the_pot(SOON), state, "17:10").orders == ()


# How warm the ovens are


def warmth(now: str, **steps: StepState) -> list[OvenNow]:
    """Of the big oven (200 °C) and the small one (150 °C)."""
    named = {id_.replace("_", "-"): step for id_, step in steps.items()}
    return [*left(of_the_pie(), standing(ovens(), named), now).ovens_now.values()]


def cold(now: str) -> OvenNow:
    return OvenNow(None, 0, minute(now))


def test_an_oven_is_cold_until_it_is_lit() -> None:
    assert warmth("16:55") == [cold("16:55"), cold("16:55")]
    assert warmth("17:10", heat_big=LEFT_OUT, heat_small=replace(LEFT_OUT, started=at("17:05"))) == [cold("17:10")] * 2


def test_while_it_heats_its_dial_is_left_alone() -> None:
    big, small = warmth("17:10", heat_big=begun("17:02"))

    assert big == OvenNow(200, minute("17:17"), minute("17:17"))
    assert small == cold("17:10")


def test_it_is_in_use_while_something_is_inside() -> None:
    heated = {"heat_big": done("17:00", "17:15"), "heat_small": done("17:10", "17:20")}
    big, small = warmth("17:40", **heated, rolls=done("17:15", "17:35"), pie=begun("17:15"))

    assert big == OvenNow(200, minute("17:40"), minute("17:40"))
    assert small == OvenNow(150, minute("17:20"), minute("17:40"))


def test_it_was_last_in_use_when_the_last_thing_came_out() -> None:
    baked_in_it = {"heat_big": done("17:00", "17:15"), "rolls": done("17:15", "17:35"), "pie": done("17:15", "18:00")}

    assert warmth("18:20", **baked_in_it)[0] == OvenNow(200, minute("18:00"), minute("18:20"))


def test_what_hands_do_meanwhile_keeps_no_oven_in_use() -> None:
    big, _ = warmth("18:25", heat_big=done("17:00", "17:15"), serve=begun("18:10"), crisps=begun("18:00"))

    assert big == OvenNow(200, minute("17:15"), minute("18:25"))


def test_long_out_of_use_it_counts_as_cold() -> None:
    """How long, is ours."""
    out = at("18:00") + timedelta(minutes=COLD_AFTER_MINUTES)
    baked_in_it = {"heat_big": done("17:00", "17:15"), "pie": done("17:15", "18:00")}
    hot, cooled = (warmth(f"{moment:%H:%M}", **baked_in_it)[0] for moment in (out - timedelta(minutes=1), out))

    assert (hot.celsius, cooled.celsius) == (200, None)


# Clocks


def of_what_spoils(little: RunSheet) -> tuple[Problem, RunSheet]:
    """The pot with a clock of two hours: chopped on the bench and kept there, stewed, and kept on the bench again."""
    room = Hold(120, spoils=True, exposed=True)
    problem = of_the_pot(chop=job("chop", 20, hold=room, exposed=True), stew=job("stew", 60, (), hold=room))
    out = Keeping(120, "room", exposed=True)
    more = {"chop": {"exposed": True, "keeping": out}, "stew": {"keeping": out}}
    slots = [msgspec.structs.replace(s, dish="Pot", **more.get(s.id, {})) for s in little.slots]
    clock = SpoilClock("Pot", "Stew", 120, "a rule", "serve", "clear")
    clocks = (Clock("Pot", "Stew", SERVE, 30, 120, ()),)
    return replace(problem, clocks=clocks), msgspec.structs.replace(little, slots=tuple(slots), clocks=(clock,))


def test_what_stood_out_until_now_stays_on_its_clock(little: RunSheet) -> None:
    """Chopped for 20 minutes and taken up 15 later; now in the pot, from whose end on it will stand out again."""
    problem, sheet = of_what_spoils(little)
    found = left(problem, standing(sheet, {"chop": done("17:00", "17:20"), "stew": begun("17:35")}), "17:50")

    assert found.stood == (Stood(CHOP, None, (), 20), Stood(CHOP, STEW, (0,), 15), Stood(STEW, SERVE, (1,)))
    assert found.clocks == (Clock("Pot", "Stew", SERVE, 30, 120, (2,)),)


def test_what_still_stands_out_has_done_so_until_now(little: RunSheet) -> None:
    problem, sheet = of_what_spoils(little)

    assert [each.gone for each in left(problem, standing(sheet, {"chop": begun("17:00")}), "17:12").stood] == [12, 0, 0]
    over = left(problem, standing(sheet, {"chop": done("17:00", "17:20")}), "17:26").stood
    assert [each.gone for each in over] == [20, 6, 0]


def test_what_is_left_out_is_on_no_clock_and_what_is_served_has_none(little: RunSheet) -> None:
    problem, sheet = of_what_spoils(little)

    assert left(problem, standing(sheet, {"chop": LEFT_OUT}), "17:12").stood == (Stood(STEW, SERVE, ()),)
    assert left(problem, standing(sheet, {"serve": done("18:50", "19:00")}), "19:05").clocks == ()
