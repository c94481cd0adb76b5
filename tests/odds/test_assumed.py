"""Where a plan gives one figure the odds assume a spread by kind of work: common practice, no source."""

import msgspec
import pytest

from board.odds.assumed import with_spreads
from board.odds.many import odds
from board.sheet.run_sheet import Lasts, RunSheet


def without_spreads(sheet: RunSheet) -> RunSheet:
    """The same, as a host writes it who gives one figure for everything."""
    slots = tuple(
        msgspec.structs.replace(slot, lasts=slot.lasts and Lasts(*[slot.lasts.likely] * 3)) for slot in sheet.slots
    )
    courses = tuple(
        msgspec.structs.replace(course, eaten=course.eaten and Lasts(*[course.eaten.likely] * 3))
        for course in sheet.courses
    )
    return msgspec.structs.replace(sheet, slots=slots, courses=courses)


def test_a_plan_without_spreads_is_not_certain_to_be_on_time(lantern_sheet: RunSheet) -> None:
    bare = without_spreads(lantern_sheet)
    assert all(course.within == 1 for course in odds(bare, 100).courses)
    found = odds(bare, 2_000, assume=True)
    assert found.spreads == found.assumed[0] > 50
    assert found.sittings == found.assumed[1] > 0
    assert all(course.within < 1 for course in found.courses[1:])


def test_what_the_plan_gives_is_kept_and_every_figure_lies_in_its_spread(lantern_sheet: RunSheet) -> None:
    spread, pieces, sittings = with_spreads(lantern_sheet)
    changed = 0
    for old, new in zip(lantern_sheet.slots, spread.slots, strict=True):
        if old.lasts is None or old.lasts.low < old.lasts.high:
            assert new == old
        elif old.lasts.likely:
            assert new.lasts is not None
            assert new.lasts.low <= new.lasts.likely == old.lasts.likely < new.lasts.high
            changed += 1
    assert changed == pieces > 0
    assert sittings == 0  # every course of this plan gives a spread


def test_hands_run_over_by_more_than_heat_and_heat_by_more_than_rest(lantern_sheet: RunSheet) -> None:
    spread, *_ = with_spreads(without_spreads(lantern_sheet))
    over: dict[str, list[float]] = {"hands": [], "heat": [], "rest": []}
    for slot in spread.slots:
        if slot.lasts is None or slot.lasts.likely < 20:
            continue
        hands = sum((part.end - part.start).total_seconds() for part in slot.attended) / 60
        kind = "hands" if hands * 2 >= slot.lasts.likely else "heat" if slot.lane in ("oven", "stovetop") else "rest"
        over[kind].append(slot.lasts.high / slot.lasts.likely)
    assert min(over["hands"]) > max(over["heat"]) > max(over["rest"]) == pytest.approx(1.05, abs=0.02)
