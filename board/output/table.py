"""The table for terminal, paper and other programs: seats, one cover, what to get out. Pure: a plan → frozen words.

Every text is one safe line.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from board.base.plain import one_line
from board.facts.tableware import Spot, several, spot_of
from board.output import words
from board.output.cover import Cover, Piece, cover
from board.plan.model.model import Plan
from board.plan.phrases.guests import Guest
from board.plan.phrases.phrase import near
from board.plan.resolve.fault import name_key
from board.plan.resolve.laying import Kind, Laid, kinds, laid
from board.plan.resolve.seating import Place, seated, sides

MOST_EACH = 12  # of one kind drawn before one guest
_GROUP: dict[Spot, str] = {
    "centre": "china",
    "bread": "china",
    "left": "cutlery",
    "right": "cutlery",
    "above": "cutlery",
    "glass": "glasses",
    "beside": "other",
}


class NoSuchCourse(Exception):
    """The plan has no course of that name; `meant` is ` Did you mean …?` or nothing."""

    def __init__(self, name: str, known: tuple[str, ...], meant: str) -> None:
        super().__init__(name)
        self.name, self.known, self.meant = name, known, meant


@dataclass(frozen=True, slots=True)
class Chair:
    """Who sits there (empty: nobody), and what they must not be served."""

    name: str
    must_not: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Row:
    """One kind to get out, as it is printed."""

    piece: str
    asked: int
    there: int | None
    notes: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class TableLeaf:
    """`left` and `right`: from the head of the table to its foot; None if the plan has no seats.

    `guests`: without seats, those with something they must not be served; with seats, those without one.
    """

    title: str
    left: tuple[Chair, ...] | None
    right: tuple[Chair, ...] | None
    facing: bool
    guests: tuple[Chair, ...]
    cover_title: str
    cover: Cover
    groups: tuple[tuple[str, tuple[Row, ...]], ...]
    names: tuple[str, ...]  # of the courses
    usual: bool  # whether anything is assumed


def table_leaf(plan: Plan, course: str | None = None) -> TableLeaf:
    """All of the table; cover and pieces of one course where its name is given. Raises NoSuchCourse."""
    chosen = None if course is None else _course(plan, course)
    here = [each for each in laid(plan) if chosen is None or each.course == chosen]
    found = sides(plan)
    names = tuple(one_line(each.course, 60) for each in plan.courses)
    at_table = [each for each in here if chosen is not None or _is_at_the_table(plan, each)]
    return TableLeaf(
        one_line(plan.event),
        None if found is None else tuple(_chair(plan, place) for place in found.left),
        None if found is None else tuple(_chair(plan, place) for place in found.right),
        found is not None and found.facing,
        tuple(_unseated(plan) if found else who_must_not(plan)),
        words.cover_of_all() if chosen is None else words.cover_of(names[chosen]),
        cover([piece for each in at_table for piece in _pieces(each)]),
        tuple(_groups(plan, chosen, names)),
        names,
        any(each.assumed for each in here),
    )


def _course(plan: Plan, name: str) -> int:
    found = [c for c, course in enumerate(plan.courses) if name_key(course.course) == name_key(name)]
    if not found:
        known = tuple(one_line(course.course, 60) for course in plan.courses)
        raise NoSuchCourse(one_line(name, 60), known, near(name, known))
    return found[0]


def _is_at_the_table(plan: Plan, each: Laid) -> bool:
    return each.course is None or not plan.courses[each.course].standing


def _pieces(each: Laid) -> list[Piece]:
    return [Piece(one_line(each.piece), each.course)] * min(each.each, MOST_EACH)


def _chair(plan: Plan, place: Place) -> Chair:
    if not place.guests:
        return Chair("", ())
    notes, name = [_notes(guest) for guest in place.guests], one_line(place.name)
    if sum(guest.count for guest in place.guests) > 1:
        name = words.one_of(name)
    if len(set(notes)) == 1:
        return Chair(name, notes[0])
    return Chair(name, (words.some_of_them([", ".join(each) for each in notes if each]),))


def _notes(guest: Guest) -> tuple[str, ...]:
    return tuple(one_line(each) for each in guest.must_not)


def who_must_not(plan: Plan) -> Iterator[Chair]:
    """Guests with what they must not be served: whose allergy can be anaphylaxis first."""
    for guest in sorted(plan.guests, key=lambda guest: not guest.severe):
        if notes := _notes(guest):
            yield Chair(words.table_guests(one_line(guest.name), guest.count), notes)


def _unseated(plan: Plan) -> Iterator[Chair]:
    severe = {guest.name for guest in plan.guests if guest.severe}
    for name, (guests, seats) in sorted(seated(plan).items(), key=lambda each: each[0] not in severe):
        if len(seats) < guests:
            about = [guest for guest in plan.guests if guest.name == name]
            notes = tuple(note for guest in about for note in _notes(guest))
            yield Chair(words.table_guests(one_line(name), guests - len(seats)), notes)


def _groups(plan: Plan, chosen: int | None, names: tuple[str, ...]) -> Iterator[tuple[str, tuple[Row, ...]]]:
    found: dict[str, list[Row]] = {group: [] for group in words.TABLE_GROUPS}
    for kind in kinds(plan):
        if chosen is None or any(course == chosen for course, _ in kind.uses):
            group = "other" if kind.piece.endswith("napkin") else _GROUP[spot_of(kind.piece)]
            found[group].append(_row(kind, chosen, names))
    yield from ((group, tuple(rows)) for group, rows in found.items() if rows)


def _row(kind: Kind, chosen: int | None, names: tuple[str, ...]) -> Row:
    asked = kind.total if chosen is None else dict(kind.uses)[chosen]
    notes = [words.borrow_pieces(kind.borrow)] if kind.borrow else []
    notes += [
        words.wash_pieces(wash.count, names[wash.after], names[wash.before])
        for wash in kind.washes
        if chosen is None or wash.before == chosen
    ]
    notes += [words.TABLE_USUAL] if kind.assumed else []
    return Row(one_line(several(kind.piece)), asked, kind.house, tuple(notes))
