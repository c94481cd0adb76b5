"""A slip that was taken, in words. Pure; text safe for a terminal."""

from collections.abc import Mapping, Sequence

from board.base import words
from board.base.plain import one_line
from board.evening.events import DishDropped, GuestsDelayed, StepStretched
from board.sheet.run_sheet import Slot

NAMED = 3  # so many names at most in a line


def names(found: Sequence[str]) -> str:
    """A few names in a row; of many, how many more there are."""
    shown = [one_line(name, 30) for name in found[:NAMED]]
    return ", ".join([*shown, *([words.costs_more(len(found) - NAMED)] if len(found) > NAMED else [])])


def slip_words(event: StepStretched | GuestsDelayed | DishDropped, slots: Mapping[str, Slot]) -> str:
    """A slip that was taken, for looking back and for taking it back."""
    match event:
        case StepStretched(slots=ids, minutes=minutes, oven=oven):
            named = names([slots[id_].name for id_ in ids if id_ in slots])
            told = words.slipped_oven(oven, named, minutes) if oven else words.slipped_step(named, minutes)
        case GuestsDelayed(minutes=minutes, course=course):
            told = words.slipped_sitting(course, minutes) if course else words.slipped_guests(minutes)
        case DishDropped(dish=dish):
            told = words.slipped_dish(dish)
    return one_line(told)
