"""A dish taken out of a plan: its lines as they are written, comments too, without what belongs to that evening."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from typing import Any

from board.importing.shelf import words
from board.importing.shelf.kept import Evening, KeptDish, evening_data, kept_text, read_kept
from board.plan.edit.edit import written
from board.plan.edit.edit_guesses import SettleStep
from board.plan.edit.items import item_lines
from board.plan.edit.save import CannotEdit, Change, Put, Remove, data_of, edit
from board.plan.load import PlanFile
from board.plan.model.work import parse_ref
from board.plan.phrases.durations import Attention
from board.plan.places import Loc
from board.plan.resolve.links import name_key
from board.plan.resolve.served import names_served

OF_AN_EVENING = ("only for", "not for", "instead of")  # keys of a dish
OF_ITS_HOUR = ("who", "not before", "not after")  # keys of a step


@dataclass(frozen=True, slots=True)
class Figure:
    """What evenings taught of a step: `takes` as a plan writes it, from so many evenings; `sure`: enough of them to go
    before what the plan says."""

    takes: str
    evenings: int
    sure: bool


@dataclass(frozen=True)
class Taken:
    """A dish ready for the shelf. `left_out`: keys that belong to that evening alone."""

    kept: KeptDish
    left_out: tuple[str, ...]


def dishes_called(file: PlanFile, name: str, course: str | None) -> list[Loc]:
    """Paths of the dishes of that name, in one course or in any."""
    return [
        ("courses", c, "dishes", d)
        for c, each in enumerate(file.plan.courses)
        if course is None or name_key(each.course) == name_key(course)
        for d, dish in enumerate(each.dishes)
        if name_key(dish.dish) == name_key(name)
    ]


def take(
    text: str,
    file: PlanFile,
    loc: Loc,
    figures: Mapping[tuple[str, str], Figure],
    before: KeptDish | None,
    served_on: tuple[Evening, ...],
    today: date,
) -> Taken | CannotEdit:
    """The dish at a path of the plan in `text`. `figures`: what evenings taught, by a step's name key and lane;
    `before`: the one of that name on the shelf, whose evenings are kept; `served_on`: those that logs showed."""
    made, learned = _with_figures(text, file, loc, figures)
    if isinstance(made, CannotEdit):
        return made
    changes = list(_of_that_evening(file, loc, data_of(made)))
    new = edit(made, changes)
    if isinstance(new, CannotEdit):
        return new
    planned = _merged((*(before.planned if before else ()), evening_of(file, loc)))
    shown = _merged((*(before.served if before else ()), *served_on))
    known = {
        "kept": today.isoformat(),
        "course": file.plan.courses[int(loc[1])].course,
        "hands": f"{_hands(file, loc)} min",
        "planned": [evening_data(each) for each in planned if each not in shown],
        "served": [evening_data(each) for each in shown],
        "learned": learned,
    }
    found = read_kept(kept_text(known, item_lines(new, loc)), "")
    if isinstance(found, list):
        return CannotEdit(found[0].message)
    return Taken(found, tuple(dict.fromkeys(str(each.loc[-1]) for each in changes)))


def evening_of(file: PlanFile, loc: Loc) -> Evening:
    """The evening of a plan, with the guests who are to be served the dish at a path."""
    names = names_served(file.plan, file.plan.courses[int(loc[1])], int(loc[3]))
    return Evening(on=file.plan.date, evening=file.plan.event, to=names[:200])


def _merged(evenings: tuple[Evening, ...]) -> list[Evening]:
    """One of a day and a plan, the last told of it, by day."""
    by_day = {(each.on, name_key(each.evening)): each for each in evenings}
    return sorted(by_day.values(), key=lambda each: each.on)


def _with_figures(
    text: str, file: PlanFile, loc: Loc, figures: Mapping[tuple[str, str], Figure]
) -> tuple[str | CannotEdit, list[str]]:
    """The plan's text with the lengths that are sure by now, and what was learned of each step, in words."""
    told, changes, data = [], list[Change](), data_of(text)
    for task in file.filled.tasks.values():
        node = task.node
        figure = figures.get((name_key(node.name), task.ways[0].where.lane or "worktop"))
        if node.kind != "step" or node.loc[:4] != loc or figure is None:
            continue
        told.append(words.learned(node.name, figure.takes, figure.evenings))
        if figure.sure and task.work is not None and task.work.thaws is None:
            made = SettleStep(node.loc, {"takes": figure.takes}).changes(file, data)
            if isinstance(made, CannotEdit):
                return made, []
            changes += made
    return edit(text, changes), told


def _of_that_evening(file: PlanFile, loc: Loc, data: Any) -> Iterator[Change]:
    """Takes out guests by name, people, clock times, and whatever waits for work outside the dish."""
    dish = written(data, loc)[1]
    yield from (Remove((*loc, key)) for key in OF_AN_EVENING if key in dish)
    own = {name_key(step.step) for step in file.plan.courses[int(loc[1])].dishes[int(loc[3])].steps}
    own |= {f"{step} in {name_key(dish['dish'])}" for step in own} | {"nothing"}
    for n, step in enumerate(dish["steps"]):
        yield from (Remove((*loc, "steps", n, key)) for key in OF_ITS_HOUR if key in step)
        for key in ("after", "before"):
            if key not in step:
                continue
            refs = step[key] if isinstance(step[key], list) else [step[key]]
            left = [ref for ref in refs if _step_of(ref) in own]
            if not left:
                yield Remove((*loc, "steps", n, key))
            elif len(left) < len(refs):
                yield Put((*loc, "steps", n, key), left)


def _step_of(ref: Any) -> str:
    return name_key(str(ref.get("step", "") if isinstance(ref, dict) else parse_ref(str(ref))["step"]))


def _hands(file: PlanFile, loc: Loc) -> int:
    """Minutes in which hands are on the dish, as likely as not."""
    tasks = [task for task in file.filled.tasks.values() if task.node.kind == "step" and task.node.loc[:4] == loc]
    return sum(_attended(task.ways[0].attended, task.ways[0].takes.likely) for task in tasks)


def _attended(attention: Attention, likely: int) -> int:
    looks = (likely - 1) // attention.every if attention.every else 0
    parts = attention.start + attention.end + attention.look * max(0, looks)
    return likely if attention.whole else min(likely, parts)
