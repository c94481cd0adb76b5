"""What each piece of work waits for, read off timetables written by hand: order, hands, rings, oven, place to stand."""

from dataclasses import replace

import pytest

from board.schedule.dependencies import (
    Spell,
    dependencies_of,
    handed_on,
    hold_until,
    resource_spells,
    shelf_spells,
    spells_in_ovens,
)
from board.schedule.oven_dial import InOven
from board.schedule.problem import Demand, Hand, Hold, Part, Problem, Resource
from board.schedule.solution import Solution
from tests.schedule.by_hand import ALWAYS, baked, follows, job, kitchen, solved

RING = (Demand(0, 1),)
ALL_RINGS = (Demand(0, 3),)
TWO = (Hand("host", ALWAYS, ALWAYS), Hand("Ines", ALWAYS, ALWAYS))
NOBODY: tuple[Part, ...] = ()


def waits(problem: Problem, solution: Solution, n: int) -> list[tuple[str, str, int, str]]:
    return [(w.after, w.anchor, w.minutes, w.reason) for w in dependencies_of(problem, solution)[n]]


# Where a result stands, and until when


def test_a_sauce_stands_until_the_last_plate_takes_it_up() -> None:
    made = kitchen(job("sauce", 10), job("fish", 5), job("peas", 5), orders=(follows(0, 1), follows(0, 2)))

    assert hold_until(made, solved(0, 30, 20), 0) == (30, 1)
    assert hold_until(made, solved(0, 30, 20), 1) is None


def test_a_roast_is_in_the_oven_while_it_cooks_and_while_it_is_kept_there() -> None:
    hot, warm = baked(180), baked(70)
    cooked = [job("roast", 60, NOBODY, oven=hot, hold=Hold(60, oven=warm)), job("carve", 5)]
    made = kitchen(*cooked, orders=(follows(0, 1),))

    both = [InOven(0, 10, 70, hot), InOven(0, 70, 90, warm, hold=True)]
    assert spells_in_ovens(made, solved(10, 90)) == {0: both}
    assert spells_in_ovens(made, solved(10, 90, kept=(False, True))) == {0: both[:1]}
    assert spells_in_ovens(made, solved(10, 70)) == {0: both[:1]}  # carved at once


def test_what_is_kept_elsewhere_or_taken_up_by_nothing_leaves_the_oven() -> None:
    hot = baked(180)
    made = kitchen(
        job("roast", 60, NOBODY, oven=hot, hold=Hold(60)), job("carve", 5), job("bread", 30, NOBODY, oven=hot,
        hold=Hold(60, oven=baked(70))), job("put plates in", 0, oven=hot), orders=(follows(0, 1),),
    )  # fmt: skip

    assert spells_in_ovens(made, solved(0, 90, 60, 60)) == {0: [InOven(0, 0, 60, hot), InOven(2, 60, 90, hot)]}


def test_a_pot_holds_its_ring_to_the_end_and_its_place_until_it_is_taken_up() -> None:
    pots = [job("soup", 40, NOBODY, demands=RING, hold=Hold(30, RING)), job("plate the soup", 5), job("shift it", 0,
            demands=RING), job("stock", 20, NOBODY, hold=Hold(30, RING))]  # fmt: skip
    made = kitchen(*pots, orders=(follows(0, 1),))
    standing = [Spell(0, 5, 45, 1, 0, "end"), Spell(0, 45, 60, 1, 1, "start")]

    assert resource_spells(made, solved(5, 60, 5, 5)) == {0: standing}
    assert resource_spells(made, solved(5, 60, 5, 5, kept=(False, True, True, True))) == {0: standing[:1]}
    assert resource_spells(made, solved(5, 45, 5, 5)) == {0: standing[:1]}


def test_a_shelf_is_free_when_the_bake_ends_or_when_what_is_kept_on_it_is_taken_up() -> None:
    roast = job("roast", 60, NOBODY, oven=baked(180, shelves=2), hold=Hold(60, oven=baked(70)))
    made = kitchen(roast, job("carve", 5), orders=(follows(0, 1),))

    assert shelf_spells(made, solved(0, 90)) == {0: [Spell(0, 0, 60, 2, 0, "end"), Spell(0, 60, 90, 1, 1, "start")]}


# Who hands a ring on


def test_a_pot_that_stays_where_it_is_takes_its_own_ring_before_a_free_one() -> None:
    """Two rings: the soup's own is freed at 10 and taken again for keeping; the free one goes to the rice."""
    soup, kept, rice = Spell(0, 0, 10, 1, 0, "end"), Spell(0, 10, 30, 1, 2, "start"), Spell(1, 12, 20, 1, 1, "end")

    assert handed_on([soup, kept, rice], 2) == []


def test_of_two_rings_that_were_used_the_one_free_longest_is_handed_on() -> None:
    late, early = Spell(0, 0, 15, 1, 0, "end"), Spell(1, 0, 10, 1, 1, "end")
    taker = Spell(2, 20, 30, 1, 2, "end")

    assert handed_on([late, early, taker], 2) == [(early, taker)]


def test_a_ring_freed_later_is_not_handed_on_and_one_freed_at_that_minute_is() -> None:
    long, short = Spell(0, 0, 40, 1, 0, "end"), Spell(1, 0, 20, 1, 1, "end")
    taker = Spell(2, 20, 30, 1, 2, "end")

    assert handed_on([long, short, taker], 2) == [(short, taker)]


def test_a_wide_pot_waits_for_as_many_pots_as_it_needs_the_place_of() -> None:
    small = [Spell(n, 0, 10 + n, 1, n, "end") for n in range(3)]
    wide, last = Spell(3, 20, 30, 2, 3, "end"), Spell(4, 25, 35, 1, 4, "end")

    assert handed_on([*small, wide, last], 3) == [(small[0], wide), (small[1], wide), (small[2], last)]


def test_what_is_left_of_a_place_is_handed_on_as_well_and_no_more_than_that() -> None:
    """Of a fish kettle's two rings one goes to the rice; the peas get the other, then the beans wait for the rice."""
    kettle = Spell(0, 0, 10, 2, 0, "end")
    rice, peas, beans = Spell(1, 10, 20, 1, 1, "end"), Spell(2, 12, 30, 1, 2, "end"), Spell(3, 20, 25, 1, 3, "end")

    assert handed_on([kettle, rice, peas, beans], 2) == [(kettle, rice), (kettle, peas), (rice, beans)]


@pytest.mark.parametrize(("amount", "givers"), [(1, []), (2, [0]), (3, [0])])
def test_what_was_free_longest_is_taken_first_and_what_is_left_of_it_stays(amount: int, givers: list[int]) -> None:
    """Of three rings the first pot takes two; one of those is handed on only once the free one is taken."""
    spells = [Spell(0, 0, 10, 2, 0, "end"), Spell(1, 10, 20, amount, 1, "end")]

    assert [giver.job for giver, _ in handed_on(spells, 3)] == givers


# What a piece of work waits for


def test_a_step_waits_for_what_it_follows_and_for_how_long_that_must_rest() -> None:
    """A batter rests for half an hour: common practice, no source."""
    made = kitchen(job("batter", 5), job("fry", 10), orders=(follows(0, 1, 30),))

    assert waits(made, solved(0, 35), 1) == [("batter", "end", 30, "order")]
    assert waits(made, solved(0, 35), 0) == []


def test_what_follows_only_if_it_can_holds_nothing_up() -> None:
    made = kitchen(job("flowers", 5), job("guests come", 0), orders=(follows(0, 1, firm=False),))

    assert waits(made, solved(0, 35), 1) == []


def test_guests_come_when_they_come() -> None:
    come = replace(job("guests come", 0), fixed=35)

    assert waits(kitchen(job("flowers", 5), come, orders=(follows(0, 1),)), solved(0, 35), 1) == []


@pytest.mark.parametrize("rests", [(0, 30), (30, 0)])
def test_of_two_rests_after_one_step_the_longer_counts(rests: tuple[int, int]) -> None:
    made = kitchen(job("dough", 5), job("roll", 10), orders=tuple(follows(0, 1, least) for least in rests))

    assert waits(made, solved(0, 35), 1) == [("dough", "end", 30, "order")]


def test_a_wait_that_is_in_the_order_already_is_told_as_that() -> None:
    """The same hands go on at once with what follows: the order is the reason, not the hands."""
    made = kitchen(job("chop", 5), job("fry", 10), orders=(follows(0, 1),))

    assert waits(made, solved(0, 5, who=(0, 0)), 1) == [("chop", "end", 0, "order")]


def test_a_pot_waits_for_the_ring_and_tells_what_it_waits_for() -> None:
    made = kitchen(job("soup", 40, NOBODY, demands=ALL_RINGS), job("rice", 20, NOBODY, demands=RING))

    assert waits(made, solved(0, 40), 1) == [("soup", "end", 0, "rings")]


def test_a_pot_waits_until_what_is_kept_on_the_ring_is_taken_up() -> None:
    soup = job("soup", 40, NOBODY, demands=ALL_RINGS, hold=Hold(30, ALL_RINGS))
    made = kitchen(soup, job("plate the soup", 5), job("rice", 20, NOBODY, demands=RING), orders=(follows(0, 1),))

    assert waits(made, solved(0, 50, 50), 2) == [("plate the soup", "start", 0, "rings")]


def test_a_tray_waits_for_the_shelf() -> None:
    bread, pie = job("bread", 40, NOBODY, oven=baked(180, shelves=2)), job("pie", 30, NOBODY, oven=baked(180))

    assert waits(kitchen(bread, pie), solved(0, 45), 1) == [("bread", "end", 0, "oven")]


def test_a_bowl_may_not_be_done_before_there_is_room_for_it_in_the_fridge() -> None:
    """Mixed from 10 to 30, it takes the place of the wine, which is poured at 25 at the latest."""
    cold = (Demand(0, 5),)
    wine = job("chill the wine", 25, NOBODY, demands=cold)
    cream = job("whip the cream", 20, hold=Hold(60, cold))
    made = kitchen(wine, cream, job("plate", 5), orders=(follows(1, 2),), resources=(Resource("fridge", 5),))

    assert waits(made, solved(0, 10, 50), 1) == [("chill the wine", "end", -20, "fridge")]


def test_room_freed_by_what_starts_at_the_same_time_is_not_waited_for() -> None:
    """Pouring starts with the whipping: neither holds the other up."""
    cold = (Demand(0, 5),)
    wine = job("chill the wine", 5, NOBODY, hold=Hold(60, cold))
    made = kitchen(
        wine, job("pour", 5), job("whip the cream", 20, hold=Hold(60, cold)), job("plate", 5),
        orders=(follows(0, 1), follows(2, 3)), resources=(Resource("fridge", 5),),
    )  # fmt: skip

    assert waits(made, solved(0, 10, 10, 50), 2) == []
    assert waits(made, solved(0, 9, 10, 50), 2) == [("pour", "start", -20, "fridge")]


# Whose hands


def test_work_waits_for_the_hands_that_were_on_something_else() -> None:
    made = kitchen(job("chop", 10), job("lay the table", 10), hands=TWO)

    assert waits(made, solved(0, 10, who=(0, 0)), 1) == [("chop", "end", 0, "hands")]
    assert waits(made, solved(0, 10, who=(0, 1)), 1) == []
    assert waits(made, solved(0, 10, who=(0, None)), 1) == []


def test_it_waits_for_the_last_thing_in_hand_only() -> None:
    made = kitchen(job("chop", 10), job("peel", 10), job("lay the table", 10))

    assert waits(made, solved(0, 10, 30, who=(0, 0, 0)), 2) == [("peel", "end", 0, "hands")]


PUT_ON = (Part(0, 5, "start"), Part(20, 1, "look-in"), Part(38, 2, "end"))


def test_once_the_pot_is_on_hands_are_free_for_the_next_thing() -> None:
    """A stir interrupts what is in hand; it holds nothing up."""
    made = kitchen(job("soup", 40, PUT_ON), job("chop", 10))

    assert waits(made, solved(10, 15, who=(0, 0)), 1) == [("soup", "start", 5, "hands")]
    assert waits(made, solved(10, 31, who=(0, 0)), 1) == [("soup", "start", 5, "hands")]


def test_what_starts_when_a_pot_is_taken_off_waits_for_its_end_and_for_its_beginning() -> None:
    made = kitchen(job("soup", 40, PUT_ON), job("chop", 10))

    assert waits(made, solved(10, 50, who=(0, 0)), 1) == [("soup", "end", 0, "hands"), ("soup", "start", 5, "hands")]


def test_what_is_taken_off_at_its_end_waits_for_nobody() -> None:
    """Its end comes with the cooking, whatever hands did just before."""
    made = kitchen(job("soup", 40, (Part(38, 2, "end"),)), job("chop", 10))

    assert waits(made, solved(0, 28, who=(0, 0)), 0) == []
    assert waits(made, solved(0, 41, who=(0, 0)), 1) == [("soup", "end", 0, "hands")]


def test_between_the_kitchen_and_the_table_there_is_the_way() -> None:
    table = job("lay the table", 10, lane="front-of-house")
    made = kitchen(job("chop", 10), table, job("peel", 5), job("season", 5), walk=2)

    assert waits(made, solved(0, 12, 24, 29, who=(0, 0, 0, 0)), 1) == [("chop", "end", 2, "hands")]
    assert waits(made, solved(0, 12, 24, 29, who=(0, 0, 0, 0)), 2) == [("lay the table", "end", 2, "hands")]
    assert waits(made, solved(0, 12, 24, 29, who=(0, 0, 0, 0)), 3) == [("peel", "end", 0, "hands")]


def test_a_pot_put_on_before_the_table_is_laid_leaves_time_for_the_way() -> None:
    made = kitchen(job("soup", 40, PUT_ON), job("lay the table", 10, lane="front-of-house"), walk=2)

    assert waits(made, solved(10, 17, who=(0, 0)), 1) == [("soup", "start", 7, "hands")]
    assert waits(made, solved(10, 16, who=(0, 0)), 1) == []  # what the timetable itself did not keep is no rule
