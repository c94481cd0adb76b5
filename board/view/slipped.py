"""A reported slip, in words. Pure; safe for a terminal."""

from collections.abc import Mapping, Sequence

from board.base.plain import one_line
from board.evening.events import DishDropped, GuestsDelayed, StepStretched
from board.sheet.run_sheet import Slot
from board.view import words

NAMED = 3  # names in a line, at most


def names(found: Sequence[str]) -> str:
    """The first few names in a line, and how many more there are."""
    shown = [one_line(name, 30) for name in found[:NAMED]]
    return ", ".join([*shown, *([words.costs_more(len(found) - NAMED)] if len(found) > NAMED else [])])


def slip_words(event: StepStretched | GuestsDelayed | DishDropped, slots: Mapping[str, Slot]) -> str:
    """A reported slip, for looking back and for undoing it."""
    match event:
        case StepStretched(slots=ids, minutes=minutes, oven=oven):
            named = names([slots[id_].name for id_ in ids if id_ in slots])
            told = words.slipped_oven(oven, named, minutes) if oven else words.slipped_step(named, minutes)
        case GuestsDelayed(minutes=minutes, course=course):
            told = words.slipped_sitting(course, minutes) if course else words.slipped_guests(minutes)
        case DishDropped(dish=dish):
            told = words.slipped_dish(dish)
    return one_line(told)
