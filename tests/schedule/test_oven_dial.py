"""The oven's dial over time: every setting suits all that is inside, and the oven has its minutes to come to it."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime

from hypothesis import given
from hypothesis import settings as runs
from hypothesis import strategies as st

from board.facts.heat import minutes_between
from board.plan.model.kitchen import Oven
from board.schedule.formulate import oven_rates
from board.schedule.oven_dial import COLD_AFTER_MINUTES, Change, InOven, changes, settings
from board.schedule.problem import OvenFacts, OvenNow, OvenUse, Problem
from tests.examples import times
from tests.schedule.by_hand import RATES, baked, kitchen

OVEN = OvenFacts("oven", 9, oven_rates(Oven()))
MIDNIGHT = datetime(2026, 6, 6, tzinfo=UTC)
KITCHEN = Problem(MIDNIGHT, 10_000, (), (), (), (OVEN,), (), ())


def spell(job: int, start: int, end: int, low: int, want: int, high: int) -> InOven:
    return InOven(job, start, end, OvenUse(0, 1, low, want, high))


def resting(job: int, start: int, end: int, left_at: int) -> InOven:
    """In the switched-off oven."""
    return InOven(job, start, end, OvenUse(0, 2, left_at, left_at, left_at, off=True, baked_at=200))


def dial(*spells: InOven) -> list[tuple[int, int, int]]:
    return [(each.start, each.end, each.celsius) for each in settings(list(spells), OVEN.change_minutes)]


def turned(*spells: InOven, now: OvenNow | None = None, ovens: tuple[OvenFacts, ...] | None = None) -> list[Change]:
    made = kitchen(ovens_now={} if now is None else {0: now}, **({} if ovens is None else {"ovens": ovens}))
    return changes(made, 0, settings(list(spells), OVEN.change_minutes))


def suits_all(spells: list[InOven]) -> bool:
    return all(
        s.use.low <= each.celsius <= s.use.high for each in settings(spells, OVEN.change_minutes) for s in each.spells
    )


def test_what_comes_in_later_does_not_push_the_dial_past_what_is_inside() -> None:
    """A bake that takes 105 to 125 °C, beside it one up to 105, and after that one a bake at 110 at least."""
    bake, gentle, later = spell(0, 0, 60, 105, 120, 125), spell(1, 35, 55, 75, 80, 105), spell(2, 62, 90, 110, 120, 130)

    assert [(each.start, each.celsius) for each in settings([bake, gentle, later], OVEN.change_minutes)] == [
        (0, 105), (35, 105), (55, 105), (62, 120),
    ]  # fmt: skip


@runs(max_examples=times(500), deadline=None)
@given(st.lists(st.tuples(st.integers(0, 12), st.integers(1, 6), st.integers(0, 8), st.integers(0, 4)), max_size=6))
def test_whatever_may_share_the_oven_is_suited(drawn: list[tuple[int, int, int, int]]) -> None:
    """Drawn: start, length, the middle of the range, half its width. What shares a moment must share a heat."""
    spells: list[InOven] = []
    for n, (start, length, middle, width) in enumerate(drawn):
        new = spell(n, start, start + length, middle - width, middle, middle + width)
        inside = [s for s in spells if s.start < new.end and new.start < s.end]
        if all(s.use.low <= new.use.high and new.use.low <= s.use.high for s in inside):
            spells.append(new)

    assert suits_all(spells)


def test_the_dial_stands_where_the_first_in_wants_it_as_long_as_that_suits_the_others() -> None:
    pie, rolls, cake = spell(0, 0, 30, 170, 180, 200), spell(1, 30, 50, 175, 190, 200), spell(2, 20, 60, 175, 185, 195)

    assert dial(pie, rolls, cake) == [(0, 20, 180), (20, 30, 180), (30, 50, 180), (50, 60, 180)]


def test_what_bakes_keeps_its_setting_and_what_is_kept_bears_a_turn() -> None:
    """A roast at 160 to 200 °C with bread at 190 to 210 half-way; then the same with a dish that is kept warm."""
    roast, bread = spell(0, 0, 90, 160, 170, 200), spell(1, 40, 60, 190, 200, 210)
    kept = InOven(0, 0, 90, roast.use, hold=True)

    assert [each.celsius for each in settings([roast, bread], OVEN.change_minutes)] == [190, 190, 190]
    assert settings([kept, bread], OVEN.change_minutes)[0].celsius == 170


def test_what_goes_in_last_has_no_say_while_the_first_suits_all() -> None:
    pie, rolls, tart = spell(0, 0, 30, 170, 180, 200), spell(1, 30, 50, 170, 175, 180), spell(2, 50, 70, 175, 195, 200)

    assert dial(pie, rolls, tart) == [(0, 30, 180), (30, 50, 180), (50, 70, 180)]


def test_where_it_must_give_way_it_stays_as_near_as_can_be_to_what_the_first_in_wants() -> None:
    assert dial(spell(0, 0, 60, 105, 120, 125), spell(1, 35, 60, 100, 104, 110)) == [(0, 35, 110), (35, 60, 110)]


def test_it_is_nearest_to_that_where_two_go_in_at_once() -> None:
    assert dial(spell(0, 0, 30, 170, 180, 200), spell(1, 0, 30, 190, 200, 210)) == [(0, 30, 190)]
    assert dial(spell(0, 0, 30, 170, 200, 200), spell(1, 0, 30, 150, 160, 185)) == [(0, 30, 185)]


def test_an_empty_oven_has_no_setting_and_keeps_its_heat_for_what_follows_soon() -> None:
    """Longer than that it counts as cold, which is ours, and the next bake gets the heat it wants."""
    first, second = spell(0, 0, 30, 170, 180, 200), spell(1, 30, 60, 170, 180, 200)
    soon, late = (60 + COLD_AFTER_MINUTES + by for by in (-1, 0))

    assert dial(first, second, spell(2, soon, soon + 20, 175, 190, 200)) == [
        (0, 30, 180), (30, 60, 180), (soon, soon + 20, 180),
    ]  # fmt: skip
    assert dial(first, second, spell(2, late, late + 20, 175, 190, 200))[-1] == (late, late + 20, 190)


def test_a_rest_in_the_switched_off_oven_is_no_setting_and_the_next_bake_gets_one_of_its_own() -> None:
    bake, rest, late = spell(0, 0, 60, 190, 200, 210), resting(1, 60, 90, 110), spell(2, 90, 120, 100, 150, 200)

    assert dial(bake, rest, late) == [(0, 60, 200), (60, 90, 0), (90, 120, 150)]
    assert [each.left_at for each in settings([bake, rest], OVEN.change_minutes)] == [200, 110]


# When it is turned, by an oven that gains 10 °C a minute and falls from 200 to 120 °C in 25


def test_a_cold_oven_is_lit_as_early_as_it_takes_to_heat() -> None:
    """From 20 to 180 °C."""
    assert turned(InOven(3, 100, 130, baked(180))) == [Change(84, 100, 180, None, 3)]


def test_what_suits_the_heat_that_is_there_needs_no_turn() -> None:
    assert len(turned(InOven(0, 100, 130, baked(180)), InOven(1, 140, 160, baked(185)))) == 1


def test_a_hotter_bake_waits_for_the_rise_and_a_gentler_one_for_the_fall() -> None:
    up = turned(InOven(0, 100, 130, baked(120)), InOven(1, 170, 190, baked(200)))
    down = turned(InOven(0, 100, 130, baked(200)), InOven(1, 170, 190, baked(120)))

    assert up[1] == Change(162, 170, 200, 120, 1)
    assert down[1] == Change(145, 170, 120, 200, 1)


def test_nothing_is_turned_while_something_is_inside_that_it_would_spoil() -> None:
    """A gap of 10 minutes where the fall takes 25, and no gap at all: the timetable's audit minds whether that does.
    Not even what bears a little less stays in meanwhile."""
    down = turned(InOven(0, 100, 130, baked(200)), InOven(1, 140, 160, baked(120)))
    at_once = turned(InOven(0, 100, 130, baked(200)), InOven(1, 130, 160, baked(120)))

    assert (down[1].start, down[1].end) == (130, 140)
    assert (at_once[1].start, at_once[1].end) == (130, 130)


def test_the_door_stands_ajar_only_to_cool_and_only_where_the_plan_knows_that_rate() -> None:
    """Ajar it falls twice as fast."""
    ajar = (OvenFacts("oven", 2, replace(RATES, ajar=2 * RATES.cooling)),)
    bakes = [InOven(0, 100, 130, baked(200)), InOven(1, 170, 190, baked(120)), InOven(2, 220, 240, baked(180))]

    assert [each.ajar for each in turned(*bakes, ovens=ajar)] == [False, True, False]
    assert turned(*bakes, ovens=ajar)[1].start == 170 - 13
    assert [each.ajar for each in turned(*bakes)] == [False, False, False]


def test_an_oven_long_out_of_use_is_heated_from_what_heat_is_left() -> None:
    """At 200 °C until 130, wanted at 200 at 230: 16 minutes ahead it has fallen to 20 + 180 · e^(−0.02351 · 84) = 45 °C
    and gains 155 in 15.5; 15 minutes ahead it would not do. From cold it would be 18."""
    again = turned(InOven(0, 100, 130, baked(200)), InOven(1, 230, 250, baked(200)))

    assert again[1] == Change(214, 230, 200, None, 1)


def test_after_a_rest_it_is_heated_from_what_the_rest_leaves() -> None:
    """Left at 110 °C it is at 104 three minutes on, and gains 66 in 7; too short a gap is all used."""
    bake, rest = InOven(0, 0, 60, baked(200)), resting(1, 60, 90, 110)

    assert turned(bake, rest, InOven(2, 100, 120, baked(170)))[1] == Change(93, 100, 170, None, 2)
    assert turned(bake, rest, InOven(2, 94, 120, baked(170)))[1] == Change(90, 94, 170, None, 2)


def test_it_is_turned_for_what_goes_in_then() -> None:
    """Not for the roast that was inside before, and for a dish that goes in rather than for one that is kept there."""
    roast, bread = InOven(0, 100, 130, baked(150, within=5)), InOven(4, 140, 160, baked(195))
    cake, kept, rolls = InOven(3, 300, 330, baked(90)), InOven(2, 300, 330, baked(90), hold=True), InOven(
        5, 300, 330, baked(90))  # fmt: skip

    assert [each.job for each in turned(roast, bread)] == [0, 4]
    assert [each.job for each in turned(kept, rolls, cake)] == [3]


def test_gone_on_with_an_oven_has_the_heat_it_was_last_turned_to() -> None:
    bake = InOven(3, 100, 130, baked(180))

    assert turned(bake, now=OvenNow(180, 90, 90)) == []
    assert turned(bake, now=OvenNow(160, 90, 90)) == [Change(98, 100, 180, 160, 3)]
    assert turned(bake, now=OvenNow(None, 0, 90)) == [Change(84, 100, 180, None, 3)]


def test_and_is_as_good_as_cold_where_that_is_long_ago() -> None:
    """14 minutes ahead 47 °C are left of 180, and 133 to gain."""
    unused = COLD_AFTER_MINUTES
    left = turned(InOven(3, 200, 230, baked(180)), now=OvenNow(180, 200 - unused, 200 - unused))

    assert turned(InOven(3, 200, 230, baked(180)), now=OvenNow(180, 201 - unused, 201 - unused)) == []
    assert left == [Change(186, 200, 180, None, 3)]


@runs(max_examples=times(200), deadline=None)
@given(st.lists(st.tuples(st.integers(0, 90), st.integers(1, 60), st.integers(4, 9), st.integers(0, 4)), max_size=7))
def test_the_oven_has_its_minutes_for_every_turn(drawn: list[tuple[int, int, int, int]]) -> None:
    """Drawn: start, length, the middle of the range in 20 °C, half its width in 5 °C; taken in as long as a dial is
    there that holds still while anything bakes and is turned in time between."""
    spells: list[InOven] = []
    for n, (start, length, middle, width) in enumerate(drawn):
        new = spell(n, start, start + length, 20 * middle - 5 * width, 20 * middle, 20 * middle + 5 * width)
        if any(_one_setting_each([*spells, new])):
            spells.append(new)
    dial = settings(sorted(spells, key=lambda s: (s.start, s.end, s.job)), OVEN.change_minutes)

    assert suits_all(spells)
    for turn in changes(KITCHEN, 0, dial):
        if turn.before is not None:
            assert turn.end - turn.start == OVEN.change_minutes(turn.before, turn.celsius)
            for each in (s for s in spells if s.start < turn.end and turn.start < s.end):
                assert each.use.low <= turn.celsius <= each.use.high or _is_out_in_time(turn, each)


def _one_setting_each(spells: list[InOven]) -> Iterator[list[int]]:
    """All ways to bake each at one setting from start to end: what overlaps at the same, the rest with the minutes of
    the change between."""
    if not spells:
        yield []
        return
    *others, new = spells
    for heats in _one_setting_each(others):
        for heat in range(new.use.low, new.use.high + 1, 5):
            if all(_go_together(one, its, new, heat) for one, its in zip(others, heats, strict=True)):
                yield [*heats, heat]


def _go_together(one: InOven, its: int, other: InOven, others: int) -> bool:
    (first, before), (second, after) = sorted(((one, its), (other, others)), key=lambda each: each[0].start)
    change = OVEN.change_minutes(before, after)
    return its == others if second.start < first.end else first.end + change <= second.start


def _is_out_in_time(turn: Change, each: InOven) -> bool:
    """Whether it leaves before the oven gets too hot or too cold for it."""
    assert turn.before is not None
    bound = each.use.high if turn.celsius > turn.before else each.use.low
    return each.end <= turn.end and each.end - turn.start <= minutes_between(OVEN.rates, turn.before, bound)
