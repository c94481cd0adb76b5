"""Spreads where a plan gives one figure: no cook's ten minutes are always ten. By kind of work, and only for the odds.

The shares are common practice, no source: hands are slowed by people at the door far more than they are ever early;
what runs on heat is looked at, and taken out a little sooner or later; what stands in the cold or rests takes its time.
"""

import math
from enum import Enum

import msgspec

from board.sheet.run_sheet import CourseSlot, Lasts, RunSheet, Slot
from board.sheet.sittings import sitting


class Kind(Enum):
    """What is assumed: low and high as shares of the one figure."""

    HANDS = (0.85, 1.5)
    HEAT = (0.9, 1.2)
    BY_ITSELF = (1.0, 1.05)
    SITTING = (0.8, 1.4)


def with_spreads(sheet: RunSheet) -> tuple[RunSheet, int, int]:
    """The sheet with a spread wherever it gives one figure, and for how many pieces of work and courses one was
    assumed. What has a spread keeps it. Pure."""
    slots = tuple(_work(slot) for slot in sheet.slots)
    courses = tuple(_course(sheet, course) for course in sheet.courses)
    spread = msgspec.structs.replace(sheet, slots=slots, courses=courses)
    return (
        spread,
        sum(new is not old for new, old in zip(slots, sheet.slots, strict=True)),
        sum(new is not old for new, old in zip(courses, sheet.courses, strict=True)),
    )


def assumed(minutes: int, kind: Kind) -> Lasts:
    """Whole minutes, outward; at least a minute longer than the figure where it may be longer at all."""
    low, high = kind.value
    return Lasts(max(1, math.floor(minutes * low)), minutes, math.ceil(minutes * high))


def _work(slot: Slot) -> Slot:
    lasts = slot.lasts
    if lasts is None or lasts.low < lasts.high or lasts.likely < 1:
        return slot
    return msgspec.structs.replace(slot, lasts=assumed(lasts.likely, _kind(slot)))


def _kind(slot: Slot) -> Kind:
    hands = sum((part.end - part.start).total_seconds() for part in slot.parts)
    if hands * 2 >= (slot.end - slot.start).total_seconds():
        return Kind.HANDS
    return Kind.HEAT if slot.on_heat else Kind.BY_ITSELF


def _course(sheet: RunSheet, course: CourseSlot) -> CourseSlot:
    if course.eaten is not None and course.eaten.low < course.eaten.high:
        return course
    minutes = sitting(sheet, course).likely
    if minutes < 1:
        return course
    return msgspec.structs.replace(course, eaten=assumed(minutes, Kind.SITTING))
