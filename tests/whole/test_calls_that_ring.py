"""How often a whole evening rings between six and ten, played on the bundled supper by a host who answers each call at
once with the key the board shows. How few they should be is ours."""

from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from board.base.clock import StoppedClock
from board.evening.calls import Call
from board.evening.insist import Heard, at_table, to_ring
from board.evening.wishes import Done
from board.session.session import unlogged_evening
from board.sheet.run_sheet import RunSheet

MOST = 36


def heard_of(sheet: RunSheet) -> tuple[list[tuple[datetime, Call]], list[str]]:
    """Every call that rings, and whatever else is warned of, minute by minute."""
    clock = StoppedClock(min(slot.start for slot in sheet.slots) - timedelta(minutes=2))
    evening = unlogged_evening(sheet, clock)
    rung: list[tuple[datetime, Call]] = []
    warned: list[str] = []
    known: Heard = {}
    while clock.now() < max(slot.end for slot in sheet.slots) + timedelta(minutes=30):
        present = evening.tick()
        ringing, known = to_ring(present.due, present.now, known, at_table=at_table(present.state))
        rung += [(present.now, call) for call in ringing]
        warned += [f"{each.slot} keeps" for each in present.warned]
        warned += [f"{each.dish} {each.what}" for each in present.clock_warned if each.what != "put-away"]
        if present.due:
            first = present.due[0]
            ended = next((call for call in present.due if call.in_hand and call.then == first.slot), first)
            refused = evening.wish(Done(*ended.key, then=ended.then))
            assert refused is None
        else:
            clock.set(clock.now() + timedelta(minutes=1))
    return rung, warned


@pytest.mark.slow
def test_a_perfect_evening_rings_seldom_and_warns_of_nothing(lantern_sheet: RunSheet) -> None:
    zone = ZoneInfo(lantern_sheet.zone)
    rung, warned = heard_of(lantern_sheet)
    day = lantern_sheet.arrive.astimezone(zone).date()
    between = [call for at, call in rung if at.astimezone(zone).date() == day and 18 <= at.astimezone(zone).hour < 22]

    assert warned == []
    assert 10 <= len(between) <= MOST
    acts = [call.key for _, call in rung]
    assert len(acts) == len(set(acts))
