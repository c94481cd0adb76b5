"""Why a slot stands where it does: what it waits for, what waits for it, how far it can slip. Pure."""

from collections.abc import Mapping
from datetime import timedelta
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.plan.phrases.phrase import near
from board.plan.resolve.assumed import Assumed
from board.plan.resolve.links import name_key
from board.sheet import words
from board.sheet.run_sheet import Dependency, RunSheet, Slot
from board.sheet.slack import READY


class NotFound(Exception):
    """No step of the sheet is called that; the text says what is near."""


def find(sheet: RunSheet, name: str) -> Slot:
    """The slot of that name or id; an unambiguous part of a name will do. Raises NotFound."""
    folded = name_key(name)
    exact = [slot for slot in sheet.slots if folded in (slot.name.casefold(), slot.id)]
    part = [slot for slot in sheet.slots if folded in slot.name.casefold()]
    for found in (exact, part):
        if len(found) == 1:
            return found[0]
        if len(found) > 1:
            raise NotFound(words.several_steps(name, [f"{s.name} ({s.dish})" if s.dish else s.id for s in found]))
    raise NotFound(words.no_such_step(name, near(name, [slot.name for slot in sheet.slots])))


def held_up_by(slots: Mapping[str, Slot], slot: Slot) -> list[Slot]:
    """What must be over just before it may begin, and is not its own hands' work: it runs by itself, or is another's.
    `slots` by id."""
    hands = {part.who for part in slot.attended}
    earlier = [
        slots[wait.after] for wait in slot.waits if wait.must and not wait.minutes and _is_tight(slots, wait, slot)
    ]
    return [each for each in earlier if not each.whole or not hands & {part.who for part in each.attended}]


def _is_tight(slots: Mapping[str, Slot], wait: Dependency, later: Slot) -> bool:
    earlier = slots[wait.after]
    return (earlier.end if wait.anchor == "end" else earlier.start) + timedelta(minutes=wait.minutes) == later.start


def why(sheet: RunSheet, slot: Slot) -> list[str]:
    """Lines: when it stands, what holds it from below, what holds it from above, its give."""
    zone = ZoneInfo(sheet.zone)
    slots = sheet.by_id()

    def clock(slot: Slot, minutes: int, anchor: str) -> str:
        at = (slot.end if anchor == "end" else slot.start) + timedelta(minutes=minutes)
        return shared.day_and_clock(at.astimezone(zone))

    start, end = shared.day_and_clock(slot.start.astimezone(zone)), shared.clock(slot.end.astimezone(zone))
    lines = [words.why_stands(slot.name, start, end)]
    waits = [w for w in slot.waits if w.reason != READY]
    for wait in sorted(waits, key=lambda w: not _is_tight(slots, w, slot)):
        until = clock(slots[wait.after], wait.minutes, wait.anchor)
        lines.append(words.why_waits(slots[wait.after].name, until, wait.reason, tight=_is_tight(slots, wait, slot)))
    if not waits:
        lines.append(words.WHY_WAITS_FOR_NOTHING)
    for later in sheet.slots:
        for wait in later.waits:
            if wait.after == slot.id:
                at = shared.day_and_clock(later.start.astimezone(zone))
                lines.append(words.why_is_waited_for(later.name, at, wait.reason, tight=_is_tight(slots, wait, later)))
    if slot.keeping is not None and slot.then:
        last = max(slots[id_].start for id_ in slot.then)
        stands = round((last - slot.end) / timedelta(minutes=1))
        lines.append(words.why_keeps(stands, slot.keeping.minutes, slot.keeping.where))
    told = [each for each in sheet.assumed if isinstance(each, Assumed) and slot.id in each.tasks]
    lines += [words.why_assumed(words.assumed(each.kind, each.values, ())) for each in told]
    lines.append(words.WHY_NO_GIVE if slot.give_minutes is None else words.why_give(slot.give_minutes))
    return lines
