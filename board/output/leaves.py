"""The run sheet for paper: a leaf for the wall, or one a person, by day and time. Pure: a RunSheet → frozen words.

Every text is one safe line. Nobody can ask a sheet of paper, so a row says all: when, what, where, at what heat, what
to look for, what a probe must show, and when hands are needed if not all the time.
"""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.base.plain import one_line
from board.output import words
from board.output.cold import cold_lines
from board.plan.resolve.assumed import Assumed
from board.sheet import quiet, said
from board.sheet.blocks import with_moments
from board.sheet.guesses import KEEPS, guesses
from board.sheet.left import keeps
from board.sheet.quiet import Quiet
from board.sheet.run_sheet import Attended, CourseSlot, RunSheet, Slot
from board.sheet.shown import amounts_of

WALL, EVERYBODY = "wall", "everybody"


class NoSuchPerson(Exception):
    """Nobody of that name works in this plan; `known` are those who do."""

    def __init__(self, name: str, known: Sequence[str]) -> None:
        super().__init__(name)
        self.name, self.known = name, tuple(known)


@dataclass(frozen=True, slots=True)
class Row:
    """One box to tick. `course`: it is the moment a course goes out."""

    start: str
    end: str
    what: str
    told: tuple[str, ...]  # what to look for, the core, when hands are needed
    where: str
    who: str
    course: bool = False


@dataclass(frozen=True, slots=True)
class Day:
    title: str
    rows: tuple[Row, ...]


@dataclass(frozen=True, slots=True)
class Leaf:
    """What is printed together, starting on a new sheet of paper."""

    title: str
    about: str  # whose it is
    courses: tuple[str, ...]
    days: tuple[Day, ...]
    notes: tuple[str, ...]  # what must be known: stops, cautions, what was given up


def leaves(sheet: RunSheet, whom: str) -> list[Leaf]:
    """`wall`: all of it on one leaf; `everybody`: a leaf a person; else that person's. Raises NoSuchPerson."""
    if whom == WALL:
        return [_leaf(sheet, words.LEAF_WALL, sheet.slots, None)]
    if whom == EVERYBODY:
        return [_of(sheet, name) for name in sheet.hands if any(_works(slot, name) for slot in sheet.slots)]
    name = next((hand for hand in sheet.hands if hand.casefold() == whom.casefold()), None)
    if name is None:
        raise NoSuchPerson(whom, sheet.hands)
    return [_of(sheet, name)]


def _of(sheet: RunSheet, name: str) -> Leaf:
    """A person's own work, and the courses, which everybody must know."""
    slots = [slot for slot in sheet.slots if _works(slot, name) or slot.kind == "serve"]
    return _leaf(sheet, words.leaf_of(one_line(name)), slots, name)


def _works(slot: Slot, name: str) -> bool:
    return any(part.who == name for part in slot.attended)


def _leaf(sheet: RunSheet, about: str, slots: Sequence[Slot], name: str | None) -> Leaf:
    zone, guessed = ZoneInfo(sheet.zone), guesses(sheet)
    sat = {each.course.name: each for each in quiet.as_planned(sheet)}
    days: dict[str, list[Slot]] = {}
    for slot in sorted(slots, key=lambda slot: slot.start):
        days.setdefault(shared.full_day(slot.start.astimezone(zone)), []).append(slot)
    return Leaf(
        one_line(sheet.plan),
        about,
        tuple(course_line(course, sat.get(course.name), zone) for course in sheet.courses),
        tuple(
            Day(
                title,
                tuple(
                    _row(sheet, slot, moments, zone, name, guessed.get(slot.id, ()))
                    for slot, moments in with_moments(found)
                ),
            )
            for title, found in days.items()
        ),
        (
            *_notes(sheet),
            *(cold_lines(sheet, hours=True) if name is None else ()),
            *_sources(sheet, slots),
            words.CAUTION,
        ),
    )


def course_line(course: CourseSlot, sat: Quiet | None, zone: ZoneInfo) -> str:
    """When it goes out, and till when those who eat then stay seated."""
    till = ""
    if sat is not None:
        till = words.sit_till(shared.clock(sat.until.astimezone(zone)) if sat.until > sat.served else "")
    return f"{shared.day_and_clock(course.served.astimezone(zone))} {one_line(course.name)}{till}"


def _row(
    sheet: RunSheet, slot: Slot, moments: Sequence[Slot], zone: ZoneInfo, name: str | None, guessed: Sequence[Assumed]
) -> Row:
    start, end = slot.start.astimezone(zone), slot.end.astimezone(zone)
    beside, off = (
        [f"{_clock(each.start, zone)} {one_line(each.name)}" for each in moments if (each.kind == "off") is last]
        for last in (False, True)
    )
    told = beside
    told += [words.to_decide(one_line(slot.decide))] if slot.decide else []
    told += with_others(slot, name)
    told += method(slot, sheet)
    told += [shared.look_for(one_line(slot.look_for))] if slot.look_for else []
    told += left_by(slot, sheet)
    if slot.core_celsius is not None:
        told.append(shared.core(slot.core_celsius, sheet.fahrenheit))
    if hands := _hands(slot, zone, name):
        told.append(hands)
    told += off
    told += [
        one_line(said.plate(each)) for course in sheet.courses if course.serve == slot.id for each in course.plates
    ]
    told += [shared.noted(one_line(note)) for note in slot.noted]
    told += map(one_line, said.guessed([each for each in guessed if name is not None or each.kind in KEEPS]))
    return Row(
        shared.clock(start),
        shared.clock(end) if end.date() == start.date() else shared.day_and_clock(end),
        name_with_dish(slot, names_of(sheet)),
        tuple(told),
        one_line(where_of(slot, sheet)),
        ", ".join(dict.fromkeys(one_line(part.who) for part in slot.attended)) if name is None else "",
        course=slot.kind == "serve",
    )


def with_others(slot: Slot, name: str | None) -> list[str]:
    """Who else does it, on one person's sheet, where it takes several."""
    others = [one_line(who) for who in slot.people if who != name]
    return [words.done_with(others)] if name in slot.people and others else []


def method(slot: Slot, sheet: RunSheet) -> list[str]:
    """How much goes in, then how it is done; each only where the plan says it."""
    return [each for each in (", ".join(amounts_of(slot, sheet.units)), one_line(slot.how)) if each]


def left_by(slot: Slot, sheet: RunSheet) -> list[str]:
    """What it leaves over, to be kept."""
    return [keeps(sheet, left) for left in sheet.left if left.slot == slot.id]


def names_of(sheet: RunSheet) -> frozenset[str]:
    """What its steps may be about: dishes and courses."""
    return frozenset(name for slot in sheet.slots for name in (slot.dish, slot.course) if name)


def name_with_dish(slot: Slot, names: frozenset[str]) -> str:
    """A step's name, with its dish where the name does not say it."""
    said_by_name = slot.dish is None or says(slot, slot.dish, names)
    return one_line(slot.name) if said_by_name else words.of_dish(one_line(slot.name), one_line(slot.dish or ""))


def says(slot: Slot, about: str, names: frozenset[str]) -> bool:
    """Whether a step's name says which of these `names` it is about: all of it, or by a word that no other
    has, but its own course."""
    others = {word for name in names - {about, slot.course} for word in telling_words(name)}
    return about.casefold() in slot.name.casefold() or bool(telling_words(slot.name) & (telling_words(about) - others))


def telling_words(text: str) -> set[str]:
    """Words that stand for something: `Roast roots` → roast, roots."""
    return {word.casefold() for word in re.findall(r"\w{4,}", text)}


def _hands(slot: Slot, zone: ZoneInfo, name: str | None) -> str:
    """When hands are needed, where that is not all the time."""
    if slot.whole:
        return ""
    parts: list[Attended] = [part for part in slot.attended if name is None or part.who == name]
    return words.hands_at([_clock(part.start, zone) for part in parts]) if parts else ""


def _clock(at: datetime, zone: ZoneInfo) -> str:
    return shared.clock(at.astimezone(zone))


def where_of(slot: Slot, sheet: RunSheet) -> str:
    """Lane or oven, its setting, and what is taken there."""
    pieces, told = [_place(slot, sheet)], {"fahrenheit": sheet.fahrenheit, "as_written": sheet.as_written}
    for use in sorted(slot.uses, key=lambda use: use.celsius is None and not use.off):
        if slot.kind == "heat":
            break
        pieces.append(shared.use(use.what, use.amount, use.celsius, off=use.off, **told))
    if pieces[0] == shared.LANES["oven"].lower() and len(pieces) > 1:
        pieces = pieces[1:]
    return ", ".join(pieces)


def _place(slot: Slot, sheet: RunSheet) -> str:
    """Its lane; the freezer, which has none of its own, by what stands there meanwhile."""
    frozen = any(each.what == slot.id and each.place == "freezer" and each.start == slot.start for each in sheet.cold)
    return "freezer" if slot.lane == "fridge" and frozen else shared.LANES[slot.lane].lower()


def _sources(sheet: RunSheet, slots: Iterable[Slot]) -> Iterable[str]:
    """Where to read more of the dishes on this leaf."""
    own = {slot.dish for slot in slots}
    return (one_line(words.recipe_from(dish, source), 300) for dish, source in sheet.sources.items() if dish in own)


def _notes(sheet: RunSheet) -> Iterable[str]:
    yield from (shared.stop_line(one_line(said.stop(stop))) for stop in sheet.stops)
    yield from map(one_line, said.all_given_up(sheet))
    yield from (shared.noted(one_line(note)) for note in sheet.noted)
    yield from (one_line(said.caution(caution)) for caution in sheet.cautions)
