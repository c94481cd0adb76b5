"""What a host wishes of one line of a plan: another phrase, one more, one less, another place. A change is made of a
text that was read, and gives the text it becomes with the part that is chosen then, or why it cannot be. Pure."""

import copy
from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from board.plan.edit import edit_lines
from board.plan.edit.edits import SettleStep
from board.plan.edit.save import BYTE_ORDER_MARK, CannotEdit, Put, edit
from board.plan.edit.source import Source, read_source
from board.plan.edit.yaml_text import scalar
from board.plan.load import PlanFile, plan_of
from board.plan.places import Loc, Places, follow, read_yaml
from board.plan.snag import Fix, Snag, in_order
from board.session.background import Way
from board.view.plan_tree import Row, raw_rows, rows_of

# A dish's name or a recipe's file → its lines of a plan, from `- dish:` on; or why there are none.
Dish = Callable[[str, PlanFile | None], list[str] | CannotEdit]


@dataclass(frozen=True)
class Reading:
    """A plan's text understood: its rows, and what makes it unusable, the worst first. `file`: None if that is so.
    `places` None: it is no YAML."""

    text: str
    rows: tuple[Row, ...]
    data: Any
    places: Places | None
    file: PlanFile | None
    snags: tuple[Snag, ...]


@lru_cache(maxsize=64)  # so that going back is at once
def reading(text: str, name: str) -> Reading:
    """Takes up to a second. Raises nothing."""
    source = read_source(text.removeprefix(BYTE_ORDER_MARK))  # known where an edit made the text
    if isinstance(source, Source):
        wrong: list[Snag] = []
        data, places = source.data, source.places.named(name)
    else:
        data, places, wrong = read_yaml(text, name)
    plan = plan_of(text, copy.deepcopy(data), places, wrong)
    if not isinstance(data, dict) or not data:
        return Reading(text, raw_rows(text), None, None, None, tuple(plan) if isinstance(plan, list) else ())
    file, snags = (plan, []) if isinstance(plan, PlanFile) else (None, in_order(plan))
    return Reading(text, rows_of(data, places), data, places, file, tuple(snags))


@dataclass(frozen=True)
class Made:
    """A change that may be taken: the text read, and the part that is chosen then."""

    read: Reading
    at: Loc


Change = Callable[[Reading], tuple[str, Loc] | CannotEdit]


def retype(row: Row, typed: str) -> Change:
    """Another phrase in a line."""

    def change(at: Reading) -> tuple[str, Loc] | CannotEdit:
        if at.places is None:
            return edit_lines.line_retyped(at.text, int(row.loc[0]), typed), row.loc
        return at_part(edit_lines.retyped(at.text, row.edits, typed), row.loc)

    return change


def take_out(row: Row) -> Change:
    """A line with all that stands under it taken out."""

    def change(at: Reading) -> tuple[str, Loc] | CannotEdit:
        if at.places is None:
            return edit_lines.line_removed(at.text, int(row.loc[0])), row.loc
        return at_part(edit_lines.removed(at.text, row.loc), row.loc)

    return change


def move(row: Row, by: int) -> Change:
    """A line, with all that stands under it, one place up (-1) or down (1) in its list."""
    return lambda at: edit_lines.moved(at.text, row.loc, by)


def add(row: Row, typed: str, dish: Dish) -> Change:
    """What is added at a line (`adds`), out of what was typed."""

    def change(at: Reading) -> tuple[str, Loc] | CannotEdit:
        said = edit_lines.value_of(typed)
        if isinstance(said, CannotEdit):
            return said
        holder, behind = _place(row, at.data)
        kind, name = adds(row), " ".join(typed.split())
        if kind == "line" and behind is None:
            return at_part(edit_lines.key_added(at.text, holder, typed), (*holder, typed.partition(":")[0].strip()))
        lines = _lines(kind, name, at, dish)
        if isinstance(lines, CannotEdit):
            return lines
        if behind is None:  # the first of its kind
            data, _, _ = read_yaml("\n".join([*lines, ""]), "")
            return at_part(edit(at.text, [Put(holder, data)]), (*holder, 0))
        return at_part(edit_lines.added(at.text, (*holder, behind), lines), (*holder, behind + 1))

    return change


def adds(row: Row) -> str:
    """What `add` adds at a line: a course, dish, step or job, an entry, or a line of its part (`word: value`)."""
    by_group = {"courses": "course", "dishes": "dish", "steps": "step", "jobs": "job"}
    if row.kind == "group":
        return by_group.get(row.key, "entry")
    if row.kind in ("dish", "step", "job"):
        return row.kind
    if row.kind == "course":
        return "dish"
    return "entry" if row.loc and isinstance(row.loc[-1], int) else "line"


def _place(row: Row, data: Any) -> tuple[Loc, int | None]:
    """The list and the number in it that something goes behind; for a line `word: value` its part, and None."""
    if row.kind == "course":
        holder: Loc = (*row.loc, "dishes")
    elif row.kind == "group":
        holder = row.loc
    elif row.loc and isinstance(row.loc[-1], int):
        return row.loc[:-1], row.loc[-1]
    else:
        return row.loc[:-1], None
    there = follow(data, holder)
    return holder, len(there) - 1 if isinstance(there, list) and there else None


def _lines(kind: str, name: str, at: Reading, dish: Dish) -> list[str] | CannotEdit:
    match kind:
        case "dish":
            return dish(name, at.file)
        case "course":
            course, _, first = name.partition(":")
            of_dish = dish(first.strip() or course.strip(), at.file)
            if isinstance(of_dish, CannotEdit):
                return of_dish
            head = [f"- course: {scalar(course.strip())}", "  at: 45 min after the course before", "  dishes:"]
            return [*head, *(f"    {line}" for line in of_dish)]
        case "step":
            return [f"- step: {scalar(name)}", "  takes: 10 min", "  guessed: [takes]"]
    return [f"- {scalar(name)}"]


def mend(fix: Fix) -> Change:
    """A finding's mend."""

    def change(at: Reading) -> tuple[str, Loc] | CannotEdit:
        if fix.how != "settle" or at.file is None:
            return at_part(edit_lines.fixed(at.text, fix), fix.loc)
        made = SettleStep(fix.loc, {fix.new: None}).changes(at.file, at.data)
        return made if isinstance(made, CannotEdit) else at_part(edit(at.text, made), (*fix.loc, fix.new))

    return change


def way_out(way: Way) -> Change:
    """A way out of what the timetable gives up."""
    return lambda at: (way.text, ())


def at_part(text: str | CannotEdit, loc: Loc) -> tuple[str, Loc] | CannotEdit:
    return text if isinstance(text, CannotEdit) else (text, loc)
