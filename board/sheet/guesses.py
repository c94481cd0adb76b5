"""Which assumed figures decided where a line of the sheet stands, told there; all that is assumed, `check` lists. Pure.

A figure decided when half of it would have moved the line: how long a result keeps or is best, of which more than half
passes before it is taken up; hands on something long all the time; what grows with the guests at the table. Of jobs,
an hour that is usual and no wider than a few hours, and minutes worth a thought. What the plan itself calls guessed is
always told.
"""

from collections.abc import Iterator
from datetime import timedelta

from board.plan.resolve.assumed import Assumed
from board.sheet.run_sheet import RunSheet, Slot
from board.sheet.told import DialTurn

KEEPS = ("keeps", "keeps-as", "keeps-cold", "keeps-by-times", "keeps-past")
USUAL_HOURS = ("chilled", "soon-before", "before", "soon-after", "after")
OF_THE_TABLE = ("seat", "serve", "clear")
NARROW_MINUTES = 180  # a window no wider places a job; a wider one leaves that to the timetable; ours
TOLD_MINUTES = 10  # an assumed length shorter than that moves little; ours
MINUTE = timedelta(minutes=1)


def guesses(sheet: RunSheet) -> dict[str, tuple[Assumed, ...]]:
    """By slot, where there are any."""
    slots, courses = sheet.by_id(), {course.clear: n for n, course in enumerate(sheet.courses)}
    found: dict[str, list[Assumed]] = {}
    for each in sheet.assumed:
        if isinstance(each, str):
            continue
        for id_ in (*each.tasks, *_first_heats(sheet, each)):
            slot = slots.get(id_)
            last = courses.get(id_) == len(sheet.courses) - 1
            if slot is not None and not (each.kind == "eaten" and last) and _decided(each, slot, slots):
                found.setdefault(id_, []).append(each)
    return {id_: tuple(_without_twice(told)) for id_, told in found.items()}


def _without_twice(told: list[Assumed]) -> Iterator[Assumed]:
    """Within what it is best, where that it keeps is told already, is one note too many."""
    keeps = any(each.kind in KEEPS for each in told)
    yield from (each for each in told if not (keeps and each.kind == "best-within"))


def _decided(told: Assumed, slot: Slot, slots: dict[str, Slot]) -> bool:
    minutes, most = told.values.get("minutes"), told.values.get("most")
    if told.kind in KEEPS or told.kind == "best-within":
        return isinstance(minutes, int) and half_is_used(slot, minutes, slots)
    if told.kind in USUAL_HOURS:
        return isinstance(most, int) and most <= NARROW_MINUTES
    if told.kind == "takes":
        return "ours" in told.values or (isinstance(minutes, int) and minutes >= TOLD_MINUTES)
    if told.kind in OF_THE_TABLE:
        return "guests" in told.values
    return told.kind in (
        "last-hours",
        "any-time",
        "eaten",
        "oven-heats",
        "guessed",
        "hands-throughout",
        "hands-in-part",
    )


def half_is_used(slot: Slot, minutes: int, slots: dict[str, Slot]) -> bool:
    """Whether what it makes stands longer than half of so many minutes."""
    return _waits(slot, slots) * 2 > minutes


def _waits(slot: Slot, slots: dict[str, Slot]) -> float:
    """Minutes from its end until it is taken up last."""
    takers = [slots[id_].start for id_ in slot.then if id_ in slots]
    return (max(takers) - slot.end) / MINUTE if takers else 0.0


def _first_heats(sheet: RunSheet, told: Assumed) -> Iterator[str]:
    """The first turn of each dial whose oven's rate was assumed."""
    if told.kind == "oven-heats":
        for oven in told.about:
            turns = (slot.id for slot in sheet.slots if isinstance(slot.named, DialTurn) and slot.named.oven == oven)
            yield from [*turns][:1]
