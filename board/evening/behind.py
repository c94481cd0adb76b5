"""What should be done by now and was never told: of an evening opened in its middle, or left alone for long. Pure.

Goes by the forecast made when the board last heard of anything: till then it knows; after that, as planned is the best
guess, and the host says whether it is right.
"""

import re
from collections.abc import Collection, Iterator
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from board.evening.answers import answers_of
from board.evening.events import Said
from board.evening.forecast import Forecaster
from board.evening.state import State

LATE = timedelta(minutes=20)  # what is later than this is asked about rather than called; ours
_TIMES = re.compile(r"(\d{1,2})[:.]?(\d{2})(?:\s*(?:-|–|to)\s*(\d{1,2})[:.]?(\d{2}))?")


def behind(state: State, forecaster: Forecaster, now: datetime) -> tuple[Said, ...]:
    """What would have begun by now had all gone as last forecast, in order: all of it, as soon as any of it is late.

    Work that hands would be on at this moment is called, not asked about.
    """
    answers = answers_of(state)
    since = answers[-1].at if answers else min(slot.start for slot in state.sheet.slots)
    if since > now - LATE or state.closed:
        return ()
    forecast = forecaster.forecast(state, since).slots
    found = []
    for slot in sorted(state.sheet.slots, key=lambda slot: (forecast[slot.id].start, forecast[slot.id].end)):
        step, (start, end) = state.steps[slot.id], (forecast[slot.id].start, forecast[slot.id].end)
        start = step.started or start
        over = end <= now
        if step.settled or start > now or (not over and (slot.whole or step.status == "under-way")):
            continue
        found.append(Said(slot.id, start, end if over else None))
    begun = {id_ for id_, step in state.steps.items() if step.status == "under-way"}
    missed = (each.finished if each.finished and each.slot in begun else each.started for each in found)
    return tuple(found) if any(moment <= now - LATE for moment in missed) else ()


def untold(state: State, steps: Collection[Said], slot: str) -> frozenset[str]:
    """The slot, and all of these steps that cannot have begun before it is over."""
    slots, gone = state.sheet.by_id(), {slot}
    for each in _in_order(state, steps):
        if any(wait.must and wait.after in gone for wait in slots[each.slot].waits):
            gone.add(each.slot)
    return frozenset(gone)


def needed(state: State, steps: Collection[Said], slot: str) -> frozenset[str]:
    """The slot, and all of these steps that must be over before it can begin."""
    slots, wanted = state.sheet.by_id(), {slot}
    for each in reversed(list(_in_order(state, steps))):
        if each.slot in wanted:
            wanted |= {wait.after for wait in slots[each.slot].waits if wait.must}
    return frozenset(wanted & {each.slot for each in steps} | {slot})


def _in_order(state: State, steps: Collection[Said]) -> Iterator[Said]:
    """As on the sheet, where each stands after all it waits for."""
    by_slot = {each.slot: each for each in steps}
    return (by_slot[slot.id] for slot in state.sheet.slots if slot.id in by_slot)


def wrong_with(state: State, steps: Collection[Said], now: datetime) -> tuple[str, str, str] | None:
    """What cannot be so: the slot, a code (settled, future, backwards, waits) and, for the last, the slot it waits for;
    None if all can."""
    slots = state.sheet.by_id()
    over = {each.slot for each in steps if each.finished is not None}
    for each in steps:
        if each.slot not in slots or state.steps[each.slot].settled:
            return each.slot, "settled", ""
        if max(each.started, each.finished or each.started) > now:
            return each.slot, "future", ""
        if each.finished is not None and each.finished < each.started:
            return each.slot, "backwards", ""
        for wait in slots[each.slot].waits:
            if wait.must and wait.after not in over and not state.steps[wait.after].settled:
                return each.slot, "waits", wait.after
    return None


def at_other_times(said: Said, typed: str, now: datetime, zone: ZoneInfo) -> Said | None:
    """The step as the host typed it: `17:20`, when it began, and as long as before; or `17:20-17:55`. Of the days
    that could be meant, the one nearest to the time it had, and never after now. None: not to be read."""
    match = _TIMES.fullmatch(typed.strip())
    if match is None:
        return None
    begun = _nearest(said.started, match[1], match[2], now, zone)
    if begun is None:
        return None
    if match[3] is not None:
        over = _nearest(begun, match[3], match[4], now, zone, after=begun)
        return None if over is None else Said(said.slot, begun, over)
    lasted = None if said.finished is None else said.finished - said.started
    return Said(said.slot, begun, None if lasted is None else min(now, begun + lasted))


def _nearest(
    to: datetime, hours: str, minutes: str, now: datetime, zone: ZoneInfo, after: datetime | None = None
) -> datetime | None:
    """The moment of that clock time nearest to another, not after now."""
    if int(hours) > 23 or int(minutes) > 59:
        return None
    day = to.astimezone(zone).replace(hour=int(hours), minute=int(minutes), second=0, microsecond=0)
    days = [(day + timedelta(days=n)).astimezone(to.tzinfo) for n in (-1, 0, 1)]  # by the clock on the wall
    fit = [at for at in days if at <= now and (after is None or at >= after)]
    return min(fit, key=lambda at: abs(at - to), default=None)
