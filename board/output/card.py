"""The menu as a card for the table: courses, dishes and what is poured; on request, whose plate is different.

It names no diet and no allergy: it stands before everybody, and no guest goes by it. Every text is one safe line.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from html import escape

from rich.console import Console

from board.base import words as shared
from board.base.plain import one_line
from board.checks.allergens.guests_eat import Matrix
from board.output import words
from board.output.frame import PaperSize, document
from board.output.tables import cell, paragraph
from board.plan.model.model import Plan
from board.sheet.told import Plate


@dataclass(frozen=True, slots=True)
class Course:
    name: str
    dishes: tuple[str, ...]
    poured: tuple[str, ...]
    own: tuple[str, ...]  # whose plate is different, and how


@dataclass(frozen=True, slots=True)
class Card:
    event: str
    day: str
    courses: tuple[Course, ...]


def card(plan: Plan, eaten: Matrix, plates: Mapping[str, Sequence[Plate]]) -> Card:
    """`eaten` has the plan's dishes, but what nobody eats; `plates`: course → whose plate is different, none for a card
    without them."""
    return Card(
        one_line(plan.event),
        shared.full_day(plan.date),
        tuple(
            Course(
                one_line(course.course),
                tuple(one_line(row.dish) for row in eaten.dishes if row.course == course.course),
                tuple(one_line(pairing.drink) for pairing in course.drink),
                tuple(_own(plates.get(course.course, ()))),
            )
            for course in plan.courses
        ),
    )


def _own(plates: Sequence[Plate]) -> Iterator[str]:
    """A line for guests with the same plate."""
    found: dict[tuple[tuple[str, ...], tuple[str, ...]], list[str]] = {}
    for plate in plates:
        found.setdefault((plate.own, plate.never), []).append(plate.guest)
    yield from (one_line(words.card_plate(who, own, never)) for (own, never), who in found.items() if own or never)


def print_card(found: Card, out: Console) -> None:
    """In a terminal."""
    out.print(cell(found.event, "bold"))
    out.print(cell(found.day, "dim"))
    for course in found.courses:
        out.print()
        out.print(cell(course.name, "bold"))
        for line in (*course.dishes, *course.poured, *course.own):
            out.print(paragraph(line, indent=2))


def card_page(found: Card, paper: PaperSize) -> str:
    """A whole HTML document, UTF-8: the card twice on one sheet lying across, to be cut in the middle."""
    body = "\n".join(_body(found))
    return document(
        found.event,
        f'<section>\n{body}\n</section>\n<section aria-hidden="true">\n{body}\n</section>',
        paper,
        kind="card",
    )


def _body(found: Card) -> Iterator[str]:
    yield f"<h1>{escape(found.event)}</h1>\n<p>{escape(found.day)}</p>"
    for course in found.courses:
        yield f'<div class="whole">\n<h2>{escape(course.name)}</h2>'
        yield from (f"<p>{escape(dish)}</p>" for dish in course.dishes)
        yield from (f'<p class="own">{escape(line)}</p>' for line in (*course.poured, *course.own))
        yield "</div>"
