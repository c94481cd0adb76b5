"""What a host wishes of one line of a plan: another phrase, one more, one less, another place. A change is made of a
text that was read, and gives the text it becomes with the part that is chosen then, or why it cannot be. Pure."""

import copy
from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from board.plan.edit import edit_lines
from board.plan.edit.edits import SettleStep
from board.plan.edit.save import BYTE_ORDER_MARK, CannotEdit, Put, Remove, edit
from board.plan.edit.source import Source, read_source
from board.plan.edit.yaml_text import scalar
from board.plan.load import PlanFile, plan_of
from board.plan.places import Loc, Places, follow, read_yaml
from board.plan.snag import Fix, Snag, in_order
from board.session.background import Way
from board.view.plan_tree import Row, raw_rows, rows_of

# A dish's name or a recipe's file → its lines of a plan, from `- dish:` on; or why there are none.
Dish = Callable[[str, PlanFile | None], list[str] | CannotEdit]
# A course as a menu has it → a plan to begin with; or why there is none.
Begin = Callable[[str], str | CannotEdit]
PARTS_OF = {"courses": "course", "dishes": "dish", "steps": "step", "jobs": "job"}


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

    @property
    def says_nothing(self) -> bool:
        """Whether the file is empty, or holds nothing but comments."""
        return self.data is None and not any(_says(line) for line in self.text.splitlines())


def _says(line: str) -> bool:
    return not line.lstrip(f"{BYTE_ORDER_MARK} \t").startswith("#") and line.strip(f"{BYTE_ORDER_MARK} \t") not in (
        "",
        "---",
    )


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


def add(row: Row, typed: str, dish: Dish, begin: Begin) -> Change:
    """What is added at a line (`adds`), out of what was typed."""

    def change(at: Reading) -> tuple[str, Loc] | CannotEdit:
        kind, name = adds(row, at), " ".join(typed.split())
        if kind == "raw":
            number = int(row.loc[0]) + 1
            return edit_lines.line_added(at.text, number, typed), (number,)
        said = edit_lines.value_of(typed)
        if isinstance(said, CannotEdit):
            return said
        if kind == "plan":
            return _begun(at.text, begin(name))
        holder, behind = place(row, at.data)
        if kind == "line" and behind is None:
            word, _, first = (each.strip() for each in typed.partition(":"))
            if first[:1] not in ("", "[") and word in PARTS_OF:
                return add(_list_of_parts((*holder, word)), first, dish, begin)(at)
            return at_part(edit_lines.key_added(at.text, holder, typed), (*holder, word))
        lines = _lines(kind, name, at, dish)
        if isinstance(lines, CannotEdit):
            return lines
        if behind is None:  # the first of its kind
            return at_part(_first(at, holder, lines), (*holder, 0))
        return at_part(edit_lines.added(at.text, (*holder, behind), lines), (*holder, behind + 1))

    return change


def _first(at: Reading, holder: Loc, lines: list[str]) -> str | CannotEdit:
    """A list on lines of its own, also in place of an empty one."""
    data, _, _ = read_yaml("\n".join([*lines, ""]), "")
    empty = isinstance(follow(at.data, holder[:-1]), dict) and holder[-1] in follow(at.data, holder[:-1])
    without = edit(at.text, [Remove(holder)]) if empty else at.text
    return without if isinstance(without, CannotEdit) else edit(without, [Put(holder, data)])


def _begun(text: str, plan: str | CannotEdit) -> tuple[str, Loc] | CannotEdit:
    """A plan behind what comments a file holds that says nothing else."""
    comments = text if not text.strip() or text.endswith("\n") else f"{text}\n"
    return plan if isinstance(plan, CannotEdit) else (comments + plan, ("date",))


def missing(fix: Fix) -> Row:
    """The line that a missing key will be, for `add` to add at."""
    return Row(fix.loc, 0, "line", str(fix.loc[-1]), "", 0, fix.loc) if fix.new else _list_of_parts(fix.loc)


def _list_of_parts(loc: Loc) -> Row:
    return Row(loc, 0, "group", str(loc[-1]), "", 0, loc)


NOTHING_THERE = Row((), 0, "line", "", "", 1, ())  # where the file has no line


def adds(row: Row, at: Reading) -> str:
    """What `add` adds at a line: a course, dish, step or job, an entry, or a line of its part (`word: value`). Where
    the file says nothing, a plan; where it is no YAML, a line as it is."""
    if at.places is None:
        return "plan" if at.says_nothing else "raw"
    if _holds(row, at.data):
        of_keys = isinstance(follow(at.data, row.loc), dict)
        return "line" if of_keys else PARTS_OF.get(row.key, "entry")
    if row.kind in ("dish", "step", "job"):
        return row.kind
    if row.kind == "course":
        return "dish"
    return "entry" if row.loc and isinstance(row.loc[-1], int) else "line"


def _holds(row: Row, data: Any) -> bool:
    """Whether what is added at a line goes into it, as into a list of steps on one line, or one that is empty."""
    there = follow(data, row.loc)
    in_line = there == [] or (row.key in PARTS_OF and isinstance(there, list | None))
    return row.kind == "group" or (row.kind == "line" and in_line)


def place(row: Row, data: Any) -> tuple[Loc, int | None]:
    """The list and the number in it that something goes behind; for a line `word: value` its part, and None."""
    if row.kind == "course":
        holder: Loc = (*row.loc, "dishes")
    elif _holds(row, data):
        holder = row.loc
    elif row.loc and isinstance(row.loc[-1], int):
        return row.loc[:-1], row.loc[-1]
    else:
        return row.loc[:-1], None
    there = follow(data, holder)
    if isinstance(there, dict):
        return holder, None
    return holder, len(there) - 1 if isinstance(there, list) and there else None


_A_COURSE = {"course": "?", "at": "30 min after guests arrive",
             "dishes": [{"dish": "?", "steps": [{"step": "?", "takes": "1 min"}]}]}  # fmt: skip


def _so_far(at: Reading) -> PlanFile | None:
    """The plan, also where it has no course yet: what a first dish has to know of it, as who eats."""
    if at.file is not None or at.places is None or at.data.get("courses"):
        return at.file
    plan = plan_of(at.text, {**copy.deepcopy(at.data), "courses": [_A_COURSE]}, at.places, [])
    return plan if isinstance(plan, PlanFile) else None


def _lines(kind: str, name: str, at: Reading, dish: Dish) -> list[str] | CannotEdit:
    match kind:
        case "dish":
            return dish(name, _so_far(at))
        case "course":
            course, _, first = name.partition(":")
            of_dish = dish(first.strip() or course.strip(), _so_far(at))
            if isinstance(of_dish, CannotEdit):
                return of_dish
            after = "45 min after the course before" if follow(at.data, ("courses",)) else "30 min after guests arrive"
            head = [f"- course: {scalar(course.strip())}", f"  at: {after}", "  dishes:"]
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
