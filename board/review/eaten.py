"""Who was served what on an evening, and what was noted when it was cleared. Pure."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from board.evening.state import State, first_sheet
from board.plan.resolve.known_again import name_key


@dataclass(frozen=True, slots=True)
class Eaten:
    """A dish that went out on an evening (its day in ISO 8601, its plan), to whom, and the notes on its course's
    clearing: what was left on the plates."""

    date: str
    plan: str
    course: str
    dish: str
    to: tuple[str, ...]
    notes: tuple[str, ...]


def went_out(state: State) -> frozenset[tuple[str, str]]:
    """Course and dish of what was served, without what was dropped."""
    served = {course.name for course in state.sheet.courses if state.steps[course.serve].finished is not None}
    return frozenset(
        (slot.course, slot.dish)
        for slot in state.sheet.slots
        if slot.kind == "step"
        and slot.dish is not None
        and slot.course in served
        and state.steps[slot.id].status != "left-out"
    )


def eaten(state: State) -> Iterator[Eaten]:
    """In the order of the courses. Logs of before sheets knew the guests tell nothing."""
    sheet, out = first_sheet(state.history, state.sheet), went_out(state)
    clearing = {course.clear: course.name for course in sheet.courses}
    notes = [(clearing.get(note.slot or ""), note.text) for note in state.notes]
    for each in sheet.eaters:
        if (each.course, each.dish) in out:
            left = tuple(text for name, text in notes if name == each.course)
            yield Eaten(sheet.date, sheet.plan, each.course, each.dish, each.to, left)


def by_guest(evenings: Iterable[State]) -> dict[str, list[Eaten]]:
    """What each guest was served, the first evening first; a name written otherwise is the same guest's."""
    names: dict[str, str] = {}
    found: dict[str, list[Eaten]] = {}
    for each in sorted((each for state in evenings for each in eaten(state)), key=lambda each: each.date):
        for name in each.to:
            found.setdefault(names.setdefault(name_key(name), name), []).append(each)
    return found
