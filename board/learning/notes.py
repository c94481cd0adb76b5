"""A host's notes on past evenings, as lines to keep where they belong in a plan. Pure.

A note about a step or job goes to the one with the same dish and words, whatever its plan was called. A note about a
course or the evening goes only to the plan of the same name, since every dinner has a main.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from board.plan.load import PlanFile
from board.plan.places import Loc
from board.plan.resolve.known_again import name_key
from board.plan.resolve.links import is_written
from board.review.kinds import Key, key_of
from board.review.observe import Noted, PastEvening


@dataclass(frozen=True, slots=True)
class Note:
    """A note and its day in one line, what it is about in the plan's words (empty: the evening), and its place."""

    name: str
    text: str
    loc: Loc


def notes_for(file: PlanFile, evenings: Iterable[PastEvening]) -> tuple[Note, ...]:
    """Notes the plan does not have yet, by evening, each once."""
    places = _places(file)
    there = {loc: set(notes) for loc, (_, notes) in places.items()}
    locs = {key: loc for loc, (key, _) in places.items()}
    found = []
    for evening in evenings:
        same = name_key(evening.plan) == name_key(file.plan.event)
        for noted in evening.notes:
            loc, name = _place_of(noted, locs, same=same)
            text = f"{' '.join(noted.text.split())} ({evening.date})"
            if noted.name and not name:
                text = f"{noted.name}: {text}"
            if loc is not None and text not in there[loc]:
                there[loc].add(text)
                found.append(Note(name, text, loc))
    return tuple(found)


_WHOLE: Loc = ()
_Place = Key | str  # a step's or job's key without its lane, or a course by name; "" is the whole plan


def _places(file: PlanFile) -> dict[Loc, tuple[_Place, list[str]]]:
    """What can hold notes, by path: its key, and the notes it has."""
    found: dict[Loc, tuple[_Place, list[str]]] = {_WHOLE: ("", file.plan.noted)}
    for number, course in enumerate(file.plan.courses):
        found["courses", number] = name_key(course.course), course.noted
    for task in file.filled.tasks.values():
        if task.work is not None and is_written(task.node):
            found[task.node.loc] = key_of(task.node.dish, task.node.name, ""), task.work.noted
    return found


def _place_of(noted: Noted, locs: dict[_Place, Loc], *, same: bool) -> tuple[Loc | None, str]:
    """The path, and the name of what is there; a note on a step the plan no longer has goes to the evening."""
    if noted.key is not None and (loc := locs.get(noted.key._replace(lane=""))) is not None:
        return loc, noted.name
    if not same:
        return None, ""
    if noted.course is not None and (loc := locs.get(name_key(noted.course))) is not None:
        return loc, noted.name
    return _WHOLE, ""
