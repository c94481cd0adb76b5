"""Whether somebody is by hot fat, a grill, boiling sugar or a flame, as the sheet times it. Pure."""

from collections.abc import Iterator
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.checks.sheet.timed import Timed
from board.facts.job_words import mentions_job
from board.facts.phrases import folded
from board.facts.watched import (
    BEHIND_GLASS,
    COOKING_SOURCE,
    FLAME_SOURCE,
    LIGHTS,
    LOOKED_AT,
    PAUSE,
    PUTS_OUT,
    goes_on,
    watched,
)
from board.plan.resolve.absences import Absence, absences
from board.plan.resolve.hours import Interval, home_of, less
from board.plan.snag import About, Snag, Weight
from board.sheet.run_sheet import Slot


def fire_is_watched(timed: Timed) -> list[Snag]:
    """kitchen 9: frying, searing, browning in a pan, grilling, boiling sugar or a flame, and `attended` leaves minutes
    with nobody at it (mind); or nobody is there at all, by the hours and times away of all hands (stop). Candles and
    a barbecue that burn until the guests come while all hands are away, or a fire or lanterns for more than half an
    hour of that (mind; ours), or while nobody is at home (stop). Who works in the kitchen is there. A pause of two
    minutes is none (ours).

    Source: NFPA, cooking safety: stay in the kitchen while frying, grilling or broiling; NFPA, candle safety: out when
    you leave the room; no burning candle and no lit grill unattended (from memory).
    """
    work = ((slot, timed.file.filled.tasks.get(slot.id)) for slot in timed.sheet.slots)
    slots = [slot for slot, task in work if task is not None and task.work is not None]
    return [snag for slot in slots for snag in (*_cooking(timed, slot), *_burning(timed, slot))]


def _cooking(timed: Timed, slot: Slot) -> Iterator[Snag]:
    kind = watched(slot.name, timed.paths.way(slot).where.place)
    alone = list(_unwatched(slot)) if kind is not None else []
    if not alone:
        return
    minutes = shared.short(sum(_minutes(*each) for each in alone))
    message = f"{slot.name}: {kind}, and nobody is at it for {minutes}"
    source = FLAME_SOURCE if kind == "a flame" else COOKING_SOURCE
    if gone := _nobody(timed, alone):
        mend = "Do it when somebody can stay by it, with `attended: all`."
        yield _snag(timed, slot, Weight.STOP, f"{message}; {_when(timed, gone)}", mend, source)
    else:
        mend = "Write `attended: all`; whoever must leave it turns the heat off first."
        yield _snag(timed, slot, Weight.MIND, message, mend, source)


def _burning(timed: Timed, slot: Slot) -> Iterator[Snag]:
    """What is lit, and burns on."""
    lit = [minutes for job, minutes in LIGHTS.items() if mentions_job(slot.name, (job,))]
    if not lit:
        return
    out = [each.start for each in timed.sheet.slots if each.start >= slot.end and mentions_job(each.name, PUTS_OUT)]
    burns = (slot.end, max(slot.end, min([timed.file.filled.arrive, *out])))
    mend = "Light it later, or put it out before everybody leaves it."
    if gone := _nobody(timed, [burns], at_home=True):
        message = f"{slot.name}: it burns, and {_when(timed, gone, 'at home')}"
        yield _snag(timed, slot, Weight.STOP, message, mend, FLAME_SOURCE)
    elif gone := _nobody(timed, [burns], longer_than=LOOKED_AT if BEHIND_GLASS.search(folded(slot.name)) else min(lit)):
        message = f"{slot.name}: it burns, and {_when(timed, gone)}"
        yield _snag(timed, slot, Weight.MIND, message, mend, FLAME_SOURCE)


def _snag(timed: Timed, slot: Slot, weight: Weight, message: str, mend: str, source: str) -> Snag:
    node = timed.file.filled.tasks[slot.id].node
    place = timed.file.places.of((*node.loc, node.kind))
    about = About((slot.id,), slot.course or "", slot.dish or "")
    return Snag("kitchen 9", weight, message, mend, place, safety=True, source=source, about=about)


def _unwatched(slot: Slot) -> Iterator[Interval]:
    """The stretches of a slot with nobody at it, but for short pauses. Where it goes on with what wants looking at
    only, hands at its start are enough."""
    hands = [(part.start, part.end) for part in slot.attended]
    if goes_on(slot.name) and any(start == slot.start for start, _ in hands):
        return
    for start, end in less([(slot.start, slot.end)], hands):
        if _minutes(start, end) > PAUSE:
            yield start, end


def _nobody(timed: Timed, spans: list[Interval], *, longer_than: int = PAUSE, at_home: bool = False) -> Interval | None:
    """The first stretch of these in which none of all the hands is there; `at_home`: nor anywhere in the house, as far
    as the plan tells."""
    plan = timed.file.plan
    there: list[Interval] = []
    for name in plan.hands:
        away = [] if at_home else [(each.start, each.end) for each in absences(plan, name)]
        there += less(home_of(plan, name), away)
    return next((each for each in less(spans, there) if _minutes(*each) > longer_than), None)


def _when(timed: Timed, gone: Interval, where: str = "there") -> str:
    """`nobody is there Sat 17:35 to 17:55 (bath the child)`."""
    start, end = (moment.astimezone(ZoneInfo(timed.sheet.zone)) for moment in gone)
    told = shared.clock(end) if start.date() == end.date() else shared.day_and_clock(end)
    why = dict.fromkeys(each.what for each in _away(timed) if each.start < gone[1] and gone[0] < each.end)
    named = f" ({', '.join(why)})" if why else ""
    return f"nobody is {where} {shared.day_and_clock(start)} to {told}{named}"


def _away(timed: Timed) -> Iterator[Absence]:
    for name in timed.file.plan.hands:
        yield from absences(timed.file.plan, name)


def _minutes(start: datetime, end: datetime) -> int:
    return int((end - start) / timedelta(minutes=1))
