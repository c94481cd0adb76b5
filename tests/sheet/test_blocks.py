"""The day as blocks of work, from days small enough to part by hand."""

from datetime import datetime
from itertools import pairwise
from typing import Any

import msgspec

from board.sheet.blocks import Block, blocks, stretches, with_moments
from board.sheet.run_sheet import Attended, Dependency, RunSheet, Slot
from tests.conftest import at, slot


def day(little: RunSheet, *slots: Slot) -> list[Block]:
    return blocks(msgspec.structs.replace(little, slots=slots, hands=("host", "Anneli")))


def told(block: Block) -> tuple[str | None, list[str]]:
    return block.about, [step.id for step in block.steps]


def beef(id_: str, start: str, end: str, **more: Any) -> Slot:
    return slot(id_, start, end, **{"course": "Main", "dish": "Beef", **more})


def by(who: str, start: str, end: str, kind: str = "all") -> tuple[Attended, ...]:
    return (Attended(at(start), at(end), who, kind),)


def test_work_on_one_dish_is_one_block(little: RunSheet) -> None:
    (block,) = day(little, beef("brown", "17:00", "17:30"), beef("build", "17:30", "17:50"))

    assert told(block) == ("Beef", ["brown", "build"])
    assert (block.who, block.start, block.end) == ("host", at("17:00"), at("17:50"))


def test_another_dish_of_another_course_is_another_block(little: RunSheet) -> None:
    pears = slot("poach", "17:30", "17:50", course="Sweet", dish="Pears")

    assert [told(each) for each in day(little, beef("brown", "17:00", "17:30"), pears)] == [
        ("Beef", ["brown"]),
        ("Pears", ["poach"]),
    ]


def test_dishes_of_one_course_are_one_block_that_is_called_by_the_course(little: RunSheet) -> None:
    serve = slot("serve", "17:40", "17:48", kind="serve", course="Main")
    mash = slot("mash", "17:30", "17:40", course="Main", dish="Mash")

    (block,) = day(little, beef("brown", "17:00", "17:30"), mash, serve)

    assert told(block) == ("Main", ["brown", "mash", "serve"])


def test_a_pause_of_a_quarter_of_an_hour_ends_a_block_and_a_shorter_one_does_not(little: RunSheet) -> None:
    brown = beef("brown", "17:00", "17:30")

    assert len(day(little, brown, beef("build", "17:44", "17:50"))) == 1
    assert len(day(little, brown, beef("build", "17:45", "17:50"))) == 2


def test_other_work_in_a_short_gap_is_told_within(little: RunSheet) -> None:
    leeks = slot("slice leeks", "17:32", "17:45", course="Broth", dish="Broth")

    (block,) = day(little, beef("brown", "17:00", "17:30"), leeks, beef("build", "17:48", "18:00"))

    assert told(block) == ("Beef", ["brown", "slice leeks", "build"])
    assert [step.id for step in block.own] == ["brown", "build"]


def test_longer_work_in_between_parts_it(little: RunSheet) -> None:
    def with_leeks_till(end: str) -> list[str | None]:
        leeks = slot("slice leeks", "17:30", end, course="Broth", dish="Broth")
        found = day(little, beef("brown", "17:00", "17:30"), leeks, beef("build", end, "18:00"))
        return [each.about for each in found]

    assert with_leeks_till("17:50") == ["Beef"]
    assert with_leeks_till("17:51") == ["Beef", "Broth", "Beef"]


def test_a_dial_turned_meanwhile_is_no_return_to_a_block(little: RunSheet) -> None:
    """Three pieces of other work before the roasting, whatever is done to the oven between them."""
    dial = slot("dial", "17:36", "17:45", kind="heat", lane="oven", attended=())
    roast = beef("roast", "17:45", "17:50", waits=(Dependency("dial", "end", 0, "heat"),))
    other = [slot(id_, f"17:{at_}", f"17:{at_ + 4}", dish="Broth") for id_, at_ in (("a", 30), ("b", 34), ("c", 38))]
    rub = beef("rub", "17:00", "17:30")

    found = day(little, rub, other[0], other[1], dial, other[2], roast)
    fewer = day(little, rub, other[0], other[1], dial, roast)

    assert told(found[0])[1] == ["rub"]
    assert [told(each)[1] for each in fewer] == [["rub", "a", "b", "dial", "roast"]]


def test_jobs_one_after_the_other_are_one_block_but_hold_no_cooking(little: RunSheet) -> None:
    lay, wine = slot("lay", "16:00", "16:20", kind="job"), slot("wine", "16:20", "16:25", kind="job")

    assert [told(each) for each in day(little, lay, wine)] == [(None, ["lay", "wine"])]
    assert len(day(little, lay, beef("brown", "16:20", "16:24"), slot("wine", "16:24", "16:25", kind="job"))) == 3


def test_each_pair_of_hands_has_blocks_of_its_own(little: RunSheet) -> None:
    hers = beef("carve", "17:10", "17:30", attended=by("Anneli", "17:10", "17:30"))

    found = day(little, beef("brown", "17:00", "17:30"), hers, beef("build", "17:30", "17:40"))

    assert [(each.who, told(each)[1]) for each in found] == [("host", ["brown", "build"]), ("Anneli", ["carve"])]


def test_work_for_two_at_once_begins_in_a_block_of_each(little: RunSheet) -> None:
    lift = beef("lift", "17:00", "17:10", attended=(*by("host", "17:00", "17:10"), *by("Anneli", "17:00", "17:10")))

    first, other = day(little, lift)

    assert [(each.who, told(each)[1], len(each.looks)) for each in (other, first)] == [
        ("host", ["lift"], 0),
        ("Anneli", ["lift"], 0),
    ]


def test_what_runs_by_itself_does_not_hold_the_block_and_a_look_at_it_is_told_where_it_falls(little: RunSheet) -> None:
    braise = beef("braise", "17:00", "20:00", attended=(
        *by("host", "17:00", "17:02", "start"), *by("host", "17:20", "17:21", "look-in"),
        *by("Anneli", "19:58", "20:00", "end"),
    ))  # fmt: skip
    pears = slot("poach", "17:02", "17:40", course="Sweet", dish="Pears")

    first, second, last = day(little, braise, pears)

    assert (told(first), first.end, first.looks) == (("Beef", ["braise"]), at("17:02"), ())
    assert (told(second), [each.slot.id for each in second.looks]) == (("Pears", ["poach"]), ["braise"])
    assert (last.who, told(last), last.looks[0].part.kind) == ("Anneli", ("Beef", []), "end")


def test_what_begins_by_itself_stands_where_it_begins(little: RunSheet) -> None:
    cool = beef("cool", "17:20", "18:20", attended=by("host", "18:18", "18:20", "end"))

    first, later = day(little, beef("brown", "17:00", "17:20"), cool)

    assert (told(first), first.end) == (("Beef", ["brown", "cool"]), at("17:20"))
    assert later.looks[0].part.start == at("18:18")


def test_a_look_before_the_first_step_is_a_block_of_its_own_and_one_within_does_not_lengthen_it(
    little: RunSheet,
) -> None:
    braise = beef("braise", "15:00", "20:00", attended=(
        *by("host", "15:00", "15:02", "start"), *by("host", "17:00", "17:01", "look-in"),
        *by("host", "17:19", "17:30", "look-in"),
    ))  # fmt: skip
    pears = slot("poach", "17:05", "17:20", course="Sweet", dish="Pears")

    _, look, poach = day(little, braise, pears)

    assert (told(look), look.start, look.end) == (("Beef", []), at("17:00"), at("17:01"))
    assert (told(poach), poach.start, poach.end) == (("Pears", ["poach"]), at("17:05"), at("17:20"))
    assert len(poach.looks) == 1


def test_a_dial_is_turned_by_whom_it_is_for_and_heating_up_is_no_pause(little: RunSheet) -> None:
    """The oven takes twenty minutes; nothing else is done meanwhile."""
    dial = slot("dial", "17:00", "17:20", kind="heat", lane="oven", attended=())
    roast = beef("roast", "17:20", "18:00", attended=by("Anneli", "17:20", "17:22", "start"),
                 waits=(Dependency("dial", "end", 0, "heat"),))  # fmt: skip

    (block,) = day(little, dial, roast)

    assert (block.who, told(block)) == ("Anneli", ("Beef", ["dial", "roast"]))


def test_a_moment_is_told_in_the_block_that_is_at_work_then_else_in_the_nearest(little: RunSheet) -> None:
    arrive = slot("arrive", "18:30", "18:30", kind="arrive")
    hers = beef("carve", "18:20", "18:40", attended=by("Anneli", "18:20", "18:40"))
    coats = slot("coats", "18:10", "18:20", kind="job")

    assert [told(each)[1] for each in day(little, coats, hers, arrive)] == [["coats"], ["carve", "arrive"]]
    assert [told(each)[1] for each in day(little, coats, arrive)] == [["coats", "arrive"]]
    seat = slot("seat", "18:45", "18:50", kind="seat")
    early = msgspec.structs.replace(coats, start=at("16:00"), end=at("16:10"), attended=by("host", "16:00", "16:10"))
    assert [told(each)[1] for each in day(little, early, arrive, seat)] == [["coats"], ["arrive", "seat"]]
    assert [told(each)[1] for each in day(little, arrive)] == [["arrive"]]


def test_work_past_midnight_goes_on_with_the_evening_and_midnight_parts_the_days_before(little: RunSheet) -> None:
    wash, dry = slot("wash", "23:30", "24:10", kind="job"), slot("dry", "24:12", "24:30", kind="job")
    early, on = slot("early", "-1:30", "-1:59", kind="job"), slot("on", "0:05", "0:15", kind="job")

    assert [told(each)[1] for each in day(little, wash, dry)] == [["wash", "dry"]]
    assert [told(each)[1] for each in day(little, early, on)] == [["early"], ["on"]]


def test_every_slot_of_a_whole_plan_is_a_step_of_one_block_and_no_hands_are_lost(lantern_sheet: RunSheet) -> None:
    found = blocks(lantern_sheet)

    assert sorted(step.id for each in found for step in each.steps) == sorted(each.id for each in lantern_sheet.slots)
    begun = sum(part.start == step.start for step in lantern_sheet.slots for part in step.attended)
    assert sum(len(each.looks) for each in found) == sum(len(each.attended) for each in lantern_sheet.slots) - begun
    for one, after in pairwise(found):
        assert one.start <= after.start
        assert all(one.start <= step.start for step in one.steps)
    assert len(found) < 0.6 * len(lantern_sheet.slots)


def test_what_takes_no_minutes_is_told_with_its_neighbour() -> None:
    chop, arrive, fry = slot("chop", "17:00", "17:10"), slot("arrive", "17:12", "17:12"), slot("fry", "17:20", "17:30")
    late = slot("late", "17:16", "17:16")
    chill = slot("chill", "17:00", "18:00", attended=by("host", "17:00", "17:02", "start"))

    assert with_moments([chop, arrive, fry]) == [(chop, [arrive]), (fry, [])]
    assert with_moments([chop, late, fry]) == [(chop, []), (fry, [late])]
    assert with_moments([chill, arrive, fry]) == [(chill, []), (fry, [arrive])]
    assert with_moments([arrive, fry]) == [(fry, [arrive])]
    assert with_moments([arrive]) == [(arrive, [])]
    assert with_moments([]) == []


def test_stretches_are_of_the_pieces_asked_about(little: RunSheet) -> None:
    assert list(stretches([], little)) == []


def test_moments_are_aware(little: RunSheet) -> None:
    assert all(isinstance(each.start, datetime) and each.start.tzinfo for each in blocks(little))
