"""What begins at another time, on a timetable moved by hand."""

from datetime import timedelta

import msgspec

from board.learning.moves import Move, moved_most, moves
from board.review.kinds import Key
from board.sheet.run_sheet import RunSheet

STEW = Key("", "stew", "stovetop")


def shifted(sheet: RunSheet, **minutes: int) -> RunSheet:
    """The same sheet, where these slots begin and end so many minutes later."""

    def slot(each: str) -> timedelta:
        return timedelta(minutes=minutes.get(each, 0))

    slots = (msgspec.structs.replace(s, start=s.start + slot(s.id), end=s.end + slot(s.id)) for s in sheet.slots)
    return msgspec.structs.replace(sheet, slots=tuple(slots))


def test_the_furthest_stands_first_and_under_five_minutes_is_nothing(little: RunSheet) -> None:
    after = shifted(little, chop=-30, stew=-12, sauce=4)

    assert moves(little, after) == (Move("chop", -30), Move("stew", -12))


def test_of_its_own_step_a_lesson_tells_every_minute(little: RunSheet) -> None:
    after = shifted(little, chop=-30, stew=-2)

    assert moved_most(little, after, STEW) == Move("stew", -2)
    assert moved_most(little, little, STEW) is None


def test_of_an_oven_what_goes_into_it_is_told(little: RunSheet) -> None:
    slots = tuple(
        msgspec.structs.replace(s, uses=tuple(msgspec.structs.replace(u, what="oven", celsius=180) for u in s.uses))
        for s in little.slots
    )
    baked = msgspec.structs.replace(little, slots=slots)  # the stew stands in the oven

    assert moved_most(baked, shifted(baked, chop=-30, stew=-9), ("oven", "heats")) == Move("stew", -9)
    assert moved_most(baked, shifted(baked, chop=-30), ("oven", "heats")) is None
