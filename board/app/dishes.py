"""Dishes of one's own: kept from a plan, written into plans, and when each was last served."""

from collections.abc import Iterable, Iterator
from contextlib import suppress
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from board.app import words
from board.app.reading_logs import contents_of, read_apart
from board.base.clock import WallClock
from board.base.errors import Trouble
from board.base.exits import ExitCode
from board.base.near import nearest
from board.base.plain import one_line
from board.evening.fold import fold_all
from board.evening.state import begin
from board.files.cook_book import BookTrouble, book_file, read_book_file
from board.files.paths import logs_folder, shelf_folder
from board.files.plans import plan_in, read_text
from board.files.shelf import Shelf, put_on_shelf, read_shelf, take_off_shelf
from board.importing.shelf.fill import Filled, filled
from board.importing.shelf.had import had_before
from board.importing.shelf.kept import Evening, KeptDish
from board.importing.shelf.taking import Figure, dishes_called, evening_of, take
from board.learning.book import steps_in
from board.learning.changes import FEW
from board.log.read import LogContents
from board.plan.edit.save import CannotEdit
from board.plan.load import PlanFile
from board.plan.phrases.durations import takes_text
from board.plan.resolve.known_again import name_key
from board.plan.snag import Snag
from board.review.measure import measured


@dataclass(frozen=True, slots=True)
class ServedDish:
    """A dish as the shelf lists it. `last`: the evening on which it was last served, by the logs; `to` is empty where
    no plan told who was there."""

    path: Path
    kept: KeptDish
    last: Evening | None


def shelf() -> Shelf:
    """The host's own dishes."""
    return read_shelf(shelf_folder())


def from_shelf(name: str, eaters: int | None) -> list[str] | None:
    """A kept dish as YAML lines of a plan, without indent, from `- dish:` on, for so many; None if there is no dish of
    that name. Raises nothing."""
    found = read_shelf(shelf_folder(), {name_key(name)}).called(name)
    return found[0][1].lines_for(eaters) if found else None


def listed() -> tuple[list[ServedDish], tuple[str, ...]]:
    """Every dish with its last evening, by name; and what is wrong with files that cannot be read."""
    there = shelf()
    logged = list(_served_on({name_key(kept.name) for _, kept in there.dishes}))
    return [ServedDish(path, kept, _last(kept, logged)) for path, kept in there.dishes], there.wrong


def the_dish(name: str) -> ServedDish:
    """The dish of that name. Raises Trouble with the nearest names."""
    there = shelf()
    found = there.called(name)
    if not found:
        raise Trouble(_unknown(name, there), ExitCode.USAGE)
    path, kept = found[0]
    return ServedDish(path, kept, _last(kept, list(_served_on({name_key(kept.name)}))))


def keep(plan: Path, name: str, course: str | None) -> str:
    """Puts a dish of the plan on the shelf. Returns what to tell. Raises Trouble."""
    text = read_text(plan)
    file = plan_in(text, plan)
    found = dishes_called(file, name, course)
    if len(found) != 1:
        dishes = [(each.course, dish.dish) for each in file.plan.courses for dish in each.dishes]
        if found:
            courses = [one_line(file.plan.courses[int(loc[1])].course, 60) for loc in found]
            raise Trouble(words.dish_in_courses(one_line(name, 60), courses), ExitCode.USAGE)
        near = _near(name, [dish for _, dish in dishes])
        raise Trouble(words.no_such_dish(one_line(name, 60), one_line(plan), near), ExitCode.USAGE)
    kept_before = shelf().called(name)
    before = kept_before[0][1] if kept_before else None
    planned = [evening_of(file, found[0]), *(before.planned if before else ())]
    logged = [(on, evening) for _, on, evening in _served_on({name_key(name)})]
    served = tuple(each for each in planned if (each.on, name_key(each.evening)) in logged)
    taken = take(text, file, found[0], _figures(), before, served, WallClock().now().date())
    if isinstance(taken, CannotEdit):
        raise Trouble(one_line(taken.reason))
    path, aside = put_on_shelf(shelf_folder(), taken.kept)
    copy = one_line(aside) if aside is not None else ""
    return words.dish_kept(one_line(taken.kept.name, 60), one_line(path), taken.left_out, copy)


def drop(name: str) -> str:
    """Takes a dish off the shelf; returns what to tell. Raises Trouble."""
    found = the_dish(name)
    aside = take_off_shelf(shelf_folder(), found.path)
    return words.dish_dropped(one_line(found.kept.name, 60), one_line(aside))


def fill(plan: Path) -> tuple[Filled, Path | None]:
    """Writes out the dishes that a plan wants from the shelf, after a copy beside it (None: there were none). Raises
    Trouble; the plan is then as it was."""
    from board.app.rewriting import rewritten

    text = read_text(plan)
    found = filled(text, one_line(plan), from_shelf)
    if isinstance(found, CannotEdit):
        raise Trouble(one_line(found.reason))
    if isinstance(found, list):
        raise Trouble("\n".join(snag.render() for snag in found), ExitCode.STOP)
    copy = rewritten(plan, text, found.text, WallClock().now().date().isoformat())[1] if found.written else None
    return found, copy


def unknown(name: str) -> str:
    """That the shelf has no such dish, with the nearest names."""
    return _unknown(name, shelf())


def had_by_guests(file: PlanFile) -> list[Snag]:
    """Guests of the plan who had one of its dishes before, as the shelf and the logs know it. Raises nothing."""
    wanted = {name_key(dish.dish) for course in file.plan.courses for dish in course.dishes}
    dishes = [kept for _, kept in read_shelf(shelf_folder(), wanted).dishes if name_key(kept.name) in wanted]
    days = {each.on for kept in dishes for each in kept.planned if each not in kept.served}
    logged = set(_served_on(wanted, days)) if days else set()
    return had_before(file, [(kept.name, each) for kept in dishes for each in _evenings(kept, logged)])


def _evenings(kept: KeptDish, logged: Iterable[tuple[str, date, str]]) -> Iterator[Evening]:
    """Those on which it was served: as the shelf has it, and planned ones that a log shows."""
    yield from kept.served
    shown = {(on, evening) for name, on, evening in logged if name == name_key(kept.name)}
    yield from (each for each in kept.planned if (each.on, name_key(each.evening)) in shown)


def _last(kept: KeptDish, logged: list[tuple[str, date, str]]) -> Evening | None:
    known = list(_evenings(kept, logged))
    days = {each.on for each in known}
    others = (
        Evening(on=on, evening=evening or "-")
        for name, on, evening in logged
        if name == name_key(kept.name) and on not in days
    )
    return max([*known, *others], key=lambda each: each.on, default=None)


def _served_on(names: set[str], days: set[date] | None = None) -> Iterator[tuple[str, date, str]]:
    """Dishes with these name keys that went out, by the logs in the data folder: the dish, the day, the plan's name
    key. `days`: of these alone. A log that cannot be read is passed over."""
    for path in sorted(logs_folder().glob("*.jsonl")) if names else ():
        if days is not None and not any(day.isoformat() in path.name for day in days):
            continue
        with suppress(Trouble, OSError):
            log = read_apart(path, contents_of)
            if not log.opened.rehearsal:
                on, evening = date.fromisoformat(log.opened.sheet.date), name_key(log.opened.sheet.plan)
                yield from ((dish, on, evening) for dish in names & _went_out(log))


def _went_out(log: LogContents) -> set[str]:
    """Name keys of the dishes whose course was served, without those that were dropped."""
    state = fold_all(begin(log.opened.sheet), [log.opened, *log.events])
    served = {course.name for course in measured(state, log.opened).courses if course.served is not None}
    steps = [slot for slot in state.sheet.slots if slot.dish is not None and slot.kind == "step"]
    return {
        name_key(slot.dish or "")
        for slot in steps
        if slot.course in served and state.steps[slot.id].status != "left-out"
    }


def _figures() -> dict[tuple[str, str], Figure]:
    """What the cook's book knows of steps, by words and lane; nothing if it cannot be read."""
    with suppress(BookTrouble):
        return {
            (each.name, each.where): Figure(
                takes_text(each.lasts.low, each.lasts.likely, each.lasts.high),
                each.estimate.evenings,
                each.estimate.evenings >= FEW,
            )
            for each in steps_in(read_book_file(book_file()))
        }
    return {}


def _unknown(name: str, there: Shelf) -> str:
    names = [kept.name for _, kept in there.dishes]
    return words.not_on_shelf(one_line(name, 60), _near(name, names), len(names))


def _near(name: str, names: Iterable[str]) -> list[str]:
    names = list(names)
    part = [each for each in names if name_key(name) and name_key(name) in name_key(each)]
    found = dict.fromkeys([*nearest(name, names, most=3, alike=0.5, fold=name_key), *part])
    return [one_line(each, 60) for each in found][:3]
