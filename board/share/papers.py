"""What else the page shows: the wall's sheet, whose plate is different, the list to tick. Pure: frozen words, each a
safe line."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

import msgspec

from board.base import words as shared
from board.base.plain import one_line
from board.output.leaves import WALL, leaves
from board.output.table import who_must_not
from board.plan.load import PlanFile
from board.share import words
from board.sheet import said
from board.sheet.run_sheet import RunSheet
from board.shopping.errands import Provisions
from board.shopping.rows import made_of
from board.shopping.ticks import Tickable, Ticks, entries


class Row(msgspec.Struct, frozen=True, gc=False):
    """`tick`: the number of a food that can be ticked, None elsewhere."""

    lead: str
    what: str
    told: tuple[str, ...] = ()
    tick: int | None = None
    ticked: bool = False


class Part(msgspec.Struct, frozen=True, gc=False):
    title: str
    rows: tuple[Row, ...]


class Paper(msgspec.Struct, frozen=True, gc=False):
    """`notes` stand below, `warnings` above."""

    title: str
    warnings: tuple[str, ...]
    parts: tuple[Part, ...]
    notes: tuple[str, ...]


@dataclass
class FromPlan:
    """What the plan has that a run sheet has not; None for a plan that cannot be read. `ticks` are this evening's."""

    plan: PlanFile | None = None
    provisions: Provisions | None = None
    ticks: Ticks = field(default_factory=Ticks)

    def __post_init__(self) -> None:
        found = [] if self.provisions is None else list(entries(self.provisions))
        self.entries: Sequence[str | Tickable] = found
        self.foods = [each for each in found if isinstance(each, Tickable)]
        self.made_of = {} if self.provisions is None else made_of(self.provisions)
        dishes = [] if self.plan is None else [dish.dish for course in self.plan.plan.courses for dish in course.dishes]
        for name in {name for name in dishes if dishes.count(name) > 1}:
            self.made_of.pop(name, None)  # of two dishes of one name, nobody knows which is meant

    def tick(self, number: int, *, ticked: bool) -> bool:
        """Ticks a food, or takes its tick away. Returns whether there is one of that number."""
        if not 0 <= number < len(self.foods):
            return False
        if self.ticks.is_ticked(self.foods[number]) != ticked:
            self.ticks.toggle(self.foods[number])
        return True


def wall(sheet: RunSheet) -> Paper:
    """The timetable as it hangs on the wall, by the sheet that the evening goes by now."""
    (leaf,) = leaves(sheet, WALL)
    days = (
        Part(
            day.title,
            tuple(
                Row(shared.from_to(row.start, row.end), row.what, (*row.told, *filter(None, (row.where, row.who))))
                for row in day.rows
            ),
        )
        for day in leaf.days
    )
    return Paper(leaf.about, (), (Part("", tuple(Row("", each) for each in leaf.courses)), *days), leaf.notes)


def plates(sheet: RunSheet, plan: PlanFile | None) -> Paper:
    """Guests with what they must not be served; then, by course, whose plate is different."""
    guests = [] if plan is None else list(who_must_not(plan.plan))
    parts = [Part("", tuple(Row(chair.name, ", ".join(chair.must_not)) for chair in guests))] if guests else []
    for course in sheet.courses:
        if course.plates:
            told = tuple(Row("", one_line(said.plate(plate))) for plate in course.plates)
            parts.append(Part(one_line(course.name), told))
    missing = [words.NO_PLAN] if plan is None else [] if parts else [words.PLATES_NONE]
    return Paper(words.PLATES_TITLE, tuple(missing), tuple(parts), (shared.GUESTS_CAUTION,))


def to_buy(found: FromPlan) -> Paper:
    """The list of provisions, by trip and section."""
    if found.provisions is None:
        return Paper(words.ON_PAGE["list"], (words.NO_PLAN,), (), ())
    title = one_line(shared.provisions_title(found.provisions.event, found.provisions.guests))
    nothing = () if found.foods else (shared.PROVISIONS_NOTHING,)
    return Paper(
        title, nothing, tuple(_sections(found)), (*found.provisions.left, words.TICKS_KEPT, shared.PROVISIONS_CAUTION)
    )


def _sections(found: FromPlan) -> Iterator[Part]:
    title, rows, number = "", list[Row](), 0
    for each in found.entries:
        if isinstance(each, str):
            if rows:
                yield Part(title, tuple(rows))
            title, rows = one_line(each), []
            continue
        changed = found.ticks.ticked_as(each)
        told = [*each.notes, ", ".join(each.dishes), *([shared.was(changed)] if changed is not None else [])]
        rows.append(
            Row(
                one_line(each.amount),
                one_line(each.food),
                tuple(one_line(text) for text in told if text),
                number,
                found.ticks.is_ticked(each),
            )
        )
        number += 1
    if rows:
        yield Part(title, tuple(rows))
