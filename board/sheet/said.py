"""What a run sheet tells, in words: its codes and what they are about → sentences. Pure; no text is made safe here.

A plain string in place of a code's is a sentence that an older run log holds, and is said as it stands.
"""

from collections.abc import Callable, Sequence
from datetime import datetime
from typing import assert_never
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.facts.cooling import Assumption, Law, Stands
from board.plan.resolve.assumed import Assumed
from board.sheet import words
from board.sheet.company import sitters
from board.sheet.guesses import USUAL_HOURS
from board.sheet.quiet import Quiet
from board.sheet.run_sheet import CourseSlot, RunSheet, Slot
from board.sheet.told import (
    OFF,
    Because,
    Causes,
    Caution,
    Chain,
    DialTurn,
    Fight,
    FightForHands,
    FightForOven,
    FightForThing,
    Fights,
    GivenUp,
    Late,
    Longest,
    NoPlace,
    NotReady,
    OvenOff,
    OverHours,
    PastClock,
    PastLimit,
    Plate,
    Stop,
    TakenUp,
    Taker,
    WaitsPast,
    What,
    Why,
)

MOST_NAMED = 5  # steps of a clash that are named


def given_up(sheet: RunSheet, given: GivenUp) -> str:
    """What could not be had, and why."""
    return f"{what(sheet, given.what)}: {why(sheet, given.why)}"


def all_given_up(sheet: RunSheet) -> list[str]:
    """All that could not be had, and why; what is fought over by the same slots together."""
    by: dict[object, list[GivenUp]] = {}
    for n, given in enumerate(sheet.given_up):
        by.setdefault(given.why if isinstance(given.why, Fights | Causes) else n, []).append(given)
    return [f"{'; '.join(what(sheet, each.what) for each in same)}: {why(sheet, same[0].why)}" for same in by.values()]


def what(sheet: RunSheet, told: What | str) -> str:
    """What could not be had."""
    return told if isinstance(told, str) else _Sayer(sheet).what(told)


def why(sheet: RunSheet, told: Why | str) -> str:
    """Why it could not."""
    return told if isinstance(told, str) else _Sayer(sheet).why(told)


class _Sayer:
    """Says what a sheet gives up, with the names and the zone it has."""

    def __init__(self, sheet: RunSheet) -> None:
        self.slots = sheet.by_id()
        self.zone = ZoneInfo(sheet.zone)

    def name(self, slot: str) -> str:
        return self.slots[slot].name if slot in self.slots else slot

    def clock(self, at: datetime) -> str:
        return shared.clock(at.astimezone(self.zone))

    def day(self, at: datetime) -> str:
        return shared.day_and_clock(at.astimezone(self.zone))

    def from_to(self, start: datetime, end: datetime) -> str:
        return shared.from_to(self.day(start), self.clock(end))

    def what(self, told: What) -> str:
        match told:
            case OverHours(slot=slot, start=start, end=end):
                return words.over_hours(self.name(slot), self.from_to(start, end))
            case Late(course=course, minutes=minutes):
                return words.late(course, minutes)
            case PastClock(dish=dish, stands=stands, limit=limit):
                return words.past_clock(dish, shared.short(stands), shared.short(limit))
            case NotReady(slot=slot, following=following):
                return words.not_ready_for(self.name(slot), self.name(following))
            case WaitsPast(slot=slot, following=following, waits=waits, most=most):
                return words.waits_past(self.name(following), self.name(slot), shared.short(waits), shared.short(most))
            case NoPlace(slot=slot, stands=stands, where=where):
                return words.no_place(self.name(slot), shared.short(stands), where)
            case PastLimit(slot=slot, stands=stands, limit=limit, where=where):
                return words.past_limit(self.name(slot), shared.short(stands), shared.short(limit), where)
            case _:
                assert_never(told)

    def why(self, told: Why) -> str:
        match told:
            case Because(reason=reason):
                return words.GIVEN_UP_SINCE[reason]
            case Chain(links=links, hours_begin=hours_begin, own_time=own_time):
                held = [words.waits_for(self.name(e.after), self.clock(e.until), e.reason) for e in links]
                begins = [*([words.HOURS_BEGIN] if hours_begin else []), *([words.OWN_TIME] if own_time else [])]
                return "; ".join([*held, *begins]) or words.NOTHING_KNOWN
            case TakenUp(slot=slot, at=at):
                return words.taken_up(self.name(slot), self.day(at))
            case Longest(slot=slot, kind=kind, minutes=minutes):
                return words.longest(f"{minutes} min {stood(self.slots[slot], kind)}")
            case Fights(over=fights):
                return "; ".join(map(self.fight, fights))
            case Causes(each=each):
                return words.causes([self.why(cause) for cause in each], on_top=not isinstance(each[0], Fights))
            case _:
                assert_never(told)

    def fight(self, fight: Fight) -> str:
        """One sentence for one thing that is fought over."""
        match fight:
            case FightForThing(thing=thing, there_is=there_is, takers=takers):
                listed = self.takers(takers, lambda taker: words.taken_of(thing, taker.amount or 0))
                return words.clash_over(words.all_there_is(thing, there_is), listed)
            case FightForHands(takers=(only,), names=names):
                return words.clash_of_hours(self.takers((only,), lambda _: ""), names)
            case FightForHands(people=people, takers=takers, names=names):
                return words.clash_over(words.hands_there_are(people, names), self.takers(takers, lambda _: ""))
            case FightForOven(oven=oven, shelves=shelves, takers=takers):
                return words.clash_over_oven(oven, self.takers(takers, _accepts), shelves)
            case _:
                assert_never(fight)

    def takers(self, takers: Sequence[Taker], more: Callable[[Taker], str]) -> str:
        """All of them up to so many, each with its time and what more there is to say."""
        return words.some_of([self._taker(each, more(each)) for each in takers], MOST_NAMED)

    def _taker(self, taker: Taker, more: str) -> str:
        when = self.from_to(taker.start, taker.end) if taker.start is not None and taker.end is not None else ""
        tail = ", ".join(piece for piece in (when, more) if piece)
        name = self.name(taker.slot)
        return f"{words.keeping_it(name) if taker.kept else name}{f' ({tail})' if tail else ''}"


def _accepts(taker: Taker) -> str:
    return words.accepts(taker.low or 0, taker.high or 0, off=taker.off)


def guessed(told: Sequence[Assumed]) -> list[str]:
    """Those that decided a line of the sheet, in as few words as will do."""
    lines = [words.guessed(each.kind, each.values) for each in told]
    usual = [each for each in told if each.kind in USUAL_HOURS or (each.kind == "takes" and "ours" not in each.values)]
    if len(usual) < 2:
        return lines
    return [words.USUAL_HOUR_AND_LENGTH, *(line for each, line in zip(told, lines, strict=True) if each not in usual)]


def kept(place: str) -> str:
    """Where something keeps, as an assumption has it: `off the heat`."""
    return words.KEPT[place]


def assumed(told: Assumed | str) -> str:
    """What the plan leaves open and is filled in, with what it is about."""
    return told if isinstance(told, str) else words.assumed(told.kind, told.values, told.about)


def stood(slot: Slot, how: str) -> str:
    """Where food stood out: `during` a slot, `kept` after it, or at the `table`."""
    if slot.kind == "serve":
        return words.AT_THE_TABLE if how == "table" else words.CARRIED
    return words.kept_after(slot.name) if how == "kept" else slot.name


def cooling(taken: Assumption | str) -> str:
    """What an estimate of cooling takes for granted."""
    match taken:
        case str(sentence):
            return sentence
        case Stands(depth_cm=depth, vessel=vessel, place=place, ambient_celsius=ambient):
            return words.cooling_stands(depth, vessel, place, ambient)
        case Law(law=law):
            return words.COOLING_TAKEN[law]
        case _:
            assert_never(taken)


def stop(told: Stop | str) -> str:
    """What must be mended before anybody eats."""
    return told if isinstance(told, str) else f"{told.finding}: {told.message}"


def caution(told: Caution | str) -> str:
    """A usual caution, with what it is about."""
    return told if isinstance(told, str) else shared.caution(told.topic, told.about)


def plate(told: Plate | str) -> str:
    """A guest whose plate is different, with what it holds and does not."""
    if isinstance(told, str):
        return told
    return words.plate(told.guest, told.needs, told.own, told.never, told.asked)


def ups(sheet: RunSheet, found: Quiet) -> str:
    """What gets up those who sit within the stretch: `at 19:27 for 'roast the roots' (Main 20:15)`."""
    zone, several = ZoneInfo(sheet.zone), len(sitters(sheet)) > 1
    by: dict[str, tuple[CourseSlot | None, list[str]]] = {}
    for each in found.ups:
        at = shared.clock(max(each.part.start, found.served).astimezone(zone))
        told = words.up(at, each.part.who if several else "", each.slot.name, each.part.kind)
        by.setdefault(each.leads_to.name if each.leads_to else "", (each.leads_to, []))[1].append(told)
    return "; ".join(
        words.ups(each, course.name, shared.clock(course.served.astimezone(zone)))
        if course
        else words.ups(each, "", "")
        for course, each in by.values()
    )


def call_at_start(slot: Slot) -> str | None:
    """The plan's own words for its start, or what an oven is to do; None where there are neither."""
    match slot.named, slot.call:
        case DialTurn() as turn, None:
            return _turn(turn)
        case _, OvenOff(oven=oven, ajar=ajar):
            return words.call_rest(oven, ajar=ajar)
        case _, call:
            return call


def turned_at_start(slot: Slot) -> str | None:
    """What an oven is to do as it begins, where that is no slot of its own."""
    return None if slot.turn is None else _turn(slot.turn)


def _turn(turn: DialTurn) -> str:
    if turn.celsius == OFF:
        return words.call_off(turn.oven)
    return words.call_heat(
        turn.oven, turn.celsius, turn.before, ajar=turn.ajar, fahrenheit=turn.fahrenheit, as_written=turn.as_written
    )


def call_at_end(slot: Slot) -> str | None:
    """The plan's own words for its end, or an oven's; None where there are neither."""
    turn = slot.named
    if not isinstance(turn, DialTurn) or turn.celsius == OFF or slot.call_at_end is not None:
        return slot.call_at_end
    return words.call_heated(turn.oven, turn.celsius, turn.fahrenheit, turn.as_written)
