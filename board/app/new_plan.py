"""Writes a new plan. What options leave open is asked at a terminal; without one, the usual is taken.

Apart from the clock, only this file looks at the machine's time settings, and only for the name of its zone.
"""

import contextlib
import shlex
import warnings
from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import dataclass, fields
from datetime import date, datetime
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

from board.app import words
from board.base import words as shared
from board.base.errors import Trouble
from board.base.exits import ExitCode
from board.base.plain import one_line
from board.checks.allergens.guests_eat import matrix
from board.checks.plan.every import check
from board.files.paths import file_name
from board.files.plans import STDIN, is_blank, read_text, shown, write_plan
from board.files.whole import STDOUT, write_new
from board.importing.starter.answers import Answers, defaults, readers
from board.importing.starter.for_whom import for_some
from board.importing.starter.menu import Menu, read_menu
from board.importing.starter.menu_courses import arrival_before, course_minutes, taken_apart, told_beside, usual_way
from board.importing.starter.not_a_menu import NotAMenu
from board.importing.starter.plan_text import menu_plan_text, plan_text
from board.importing.ways import ways
from board.importing.ways.ways import Way
from board.plan.load import PlanFile, read_plan
from board.plan.phrases.when import clock_of, parse_zone
from board.plan.snag import Weight

Ask = Callable[[str], str]  # a prompt → what was typed; raises EOFError at the end
Say = Callable[[str], object]
Shelf = Callable[[str, int | None], list[str] | None]  # a name, eaters → `app.dishes.from_shelf`
_OF_NO_PLACE = ("UTC", "Etc/UTC", "Etc/GMT", "GMT")


def new_plan(
    path: Path | None,
    given: Mapping[str, str | None],
    now: datetime,
    ask: Ask | None,
    say: Say,
    menu_file: Path | None = None,
    own: Shelf | None = None,
) -> str:
    """Writes the plan, into a new or a blank file, and returns the message for the host. `given`: options by name, None
    if not used; `menu_file`: a menu, `-` for standard input (as `path`: output); `own`: dishes of the host's own, taken
    before any way. Raises Trouble."""
    if path is not None and path != STDOUT and (path.exists() or path.is_symlink()) and not is_blank(path):
        raise Trouble(shared.is_there_already(one_line(path)))
    zone = machine_zone()
    today = today_in(given.get("zone") or zone, now)
    if menu_file is not None:
        menu: Menu | None = menu_in(menu_file, given, today)
    else:
        menu = _typed(today, ask, say) if ask is not None and given.get("courses") is None else None
    if menu is None:
        answers = gather(given, now, zone, ask, say)
        target = path or _free_name(answers)
        assumed = _assumed(given, {}, zone) if ask is None else ()
        _write(target, plan_text(answers, assumed))
        return words.new_written(one_line(target), shlex.quote(one_line(target)), _assumed_line(answers, assumed))
    made = from_menu(
        menu, words.NEW_STDIN if menu_file in (None, STDIN) else shown(menu_file), given, now, zone, ask, say, own
    )
    target = path or _free_name(made.answers)
    _write(target, made.text)
    return _told(made, one_line(target))


def _write(target: Path, text: str) -> None:
    """Into a new file, or one that says nothing. Raises Trouble."""
    if target != STDOUT and is_blank(target):
        write_plan(target, read_text(target), text)
    else:
        write_new(target, text.encode())


def _nothing_kept(name: str, eaters: int | None) -> None:
    """The shelf of a host who keeps no dishes."""


@dataclass(frozen=True)
class Made:
    """A plan of a menu, not yet written: the menu as it was taken, its text, and as it is read. `assumed`: answers that
    nobody gave; `kept`: dishes of the host's own; `bare`: dishes without a way."""

    answers: Answers
    menu: Menu
    text: str
    file: PlanFile
    assumed: tuple[str, ...]
    kept: tuple[str, ...]
    bare: tuple[str, ...]


def from_menu(
    menu: Menu,
    name: str,
    given: Mapping[str, str | None],
    now: datetime,
    zone: str | None,
    ask: Ask | None,
    say: Say,
    own: Shelf | None = None,
) -> Made:
    """The plan of a menu called `name`. Raises Trouble, also where none can be made of it."""
    if given.get("guests") is not None and menu.guests:
        raise Trouble(words.NEW_GUESTS_AND_MENU, ExitCode.USAGE)
    answers = gather(given, now, zone, ask, say, menu)
    assumed = _assumed(given, menu.found, zone) if ask is None else ()
    shelf = own if own is not None else _nothing_kept
    some = for_some(menu)
    menu = taken_apart(some.menu, lambda dish: shelf(dish, answers.guests + 1) is not None)
    dishes = [dish for course in menu.courses for dish in course.dishes]
    taken = {dish: shelf(dish, answers.guests + 1) for dish in dishes}
    kept = {dish: lines for dish, lines in taken.items() if lines is not None}
    kinds = {dish: course.kind for course in menu.courses for dish in course.dishes}
    chosen = _chosen([dish for dish in dishes if dish not in kept], kinds, ask, say)
    menu = told_beside(menu, chosen.get)
    try:
        text = menu_plan_text(menu, answers, assumed, chosen.get, kept.get, some.only)
    except NotAMenu as wrong:
        raise Trouble(words.menu_wrong(name, wrong.line, one_line(wrong)), ExitCode.STOP) from None
    file = read_plan(text, name)
    if isinstance(file, list):
        raise Trouble(words.menu_no_plan(name, [snag.render() for snag in file]), ExitCode.STOP)
    bare = tuple(dish for dish, way in chosen.items() if way is None)
    return Made(answers, menu, text, file, assumed, tuple(kept), bare)


def menu_in(path: Path, given: Mapping[str, str | None], today: date) -> Menu:
    """The menu in a file. Raises Trouble."""
    if given.get("courses") is not None:
        raise Trouble(words.NEW_COURSES_AND_MENU, ExitCode.USAGE)
    text = read_text(path)
    try:
        return read_menu(text, today)
    except NotAMenu as wrong:
        raise Trouble(words.menu_wrong(shown(path), wrong.line, one_line(wrong)), ExitCode.STOP) from None


def _typed(today: date, ask: Ask, say: Say) -> Menu | None:
    """A menu typed line by line, up to two empty ones; a line that cannot be read is asked again. None where none is
    typed. Raises Trouble at the end of input."""
    say(words.NEW_MENU_INTRO)
    if not (first := _line(1, ask, say)):
        return None
    lines = [first]
    _more(lines, ask, say)
    while True:
        try:
            menu = read_menu("\n".join(lines), today)
            if arrive := menu.found.get("arrive") or arrival_before(menu):
                course_minutes(menu, arrive)
        except NotAMenu as wrong:
            if wrong.too_much:
                raise Trouble(words.menu_wrong(words.NEW_STDIN, 0, one_line(wrong)), ExitCode.STOP) from None
            say(words.menu_wrong_typed(wrong.line, one_line(wrong)))
            if wrong.line:
                lines[wrong.line - 1] = _line(wrong.line, ask, say)
            else:
                _more(lines, ask, say)
        else:
            return menu


def _more(lines: list[str], ask: Ask, say: Say) -> None:
    """Takes further lines; a single empty line may stand between courses."""
    lines.append(_line(len(lines) + 1, ask, say))
    while lines[-2:] != ["", ""]:
        lines.append(_line(len(lines) + 1, ask, say))


def _line(number: int, ask: Ask, say: Say) -> str:
    while True:
        try:
            return ask(words.new_menu_line(number)).strip()
        except EOFError:
            raise Trouble(words.NEW_ENDED) from None
        except ValueError as wrong:  # bytes that are not text
            say(words.new_wrong(one_line(wrong)))


def _chosen(dishes: Sequence[str], kinds: Mapping[str, str | None], ask: Ask | None, say: Say) -> dict[str, Way | None]:
    """The way of each dish: by its words; where they say nothing, as the host says, or none. `kinds`: what the course
    of each is in a meal."""
    found = {dish: usual_way(dish) for dish in dishes}
    by_kind: dict[str, list[Way]] = {}
    for way in ways.all_ways():
        by_kind.setdefault(way.course, []).append(way)
    if ask is None or not by_kind:
        return found
    shown = ""
    for dish in [dish for dish, way in found.items() if way is None]:
        shown, found[dish] = _way_asked(dish, kinds.get(dish), by_kind, shown, ask, say)
    return found


def _way_asked(
    dish: str, kind: str | None, by_kind: Mapping[str, list[Way]], shown: str, ask: Ask, say: Say
) -> tuple[str, Way | None]:
    """The kind whose ways are on the screen, `shown` so far, and the way; those of one kind at a time, as a terminal
    has room for."""
    order = list(by_kind)
    now = next((each for each in (kind, shown, "main") if each is not None and each in by_kind), order[0])
    while True:
        if now != shown:
            say(words.ways_ask([way.name for way in by_kind[now]]))
            say(words.ways_after(order[(order.index(now) + 1) % len(order)] if len(order) > 1 else ""))
            shown = now
        try:
            typed = one_line(ask(words.way_of(one_line(dish))))
        except EOFError:
            raise Trouble(words.NEW_ENDED) from None
        except ValueError as wrong:
            say(words.new_wrong(one_line(wrong)))
            continue
        if not typed:
            return shown, None
        if typed == "+":
            now = order[(order.index(now) + 1) % len(order)]
            continue
        if typed.isascii() and typed.isdecimal():
            if 1 <= int(typed[:9]) <= len(by_kind[now]):
                return shown, by_kind[now][int(typed[:9]) - 1]
        else:
            every = (way for several in by_kind.values() for way in several)
            named = next((way for way in every if way.name.casefold() == typed.casefold()), None)
            if (way := named or usual_way(f"{typed} {dish}")) is not None:
                return shown, way
        say(words.way_unknown(typed, len(by_kind[now])))


def _assumed(given: Mapping[str, str | None], found: Mapping[str, Any], zone: str | None) -> tuple[str, ...]:
    """The answers that nobody gave. A machine's zone is one, where it is that of no place."""
    known = {option for option, value in given.items() if value is not None} | {*found, "courses"}
    known |= {"zone"} if zone not in _OF_NO_PLACE else set()
    return tuple(each.name for each in fields(Answers) if each.name not in known)


def _assumed_line(answers: Answers, assumed: Collection[str]) -> list[str]:
    return words.new_assumed([(name, str(getattr(answers, name))) for name in assumed])


def _told(made: Made, target: str) -> str:
    answers, menu = made.answers, made.menu
    at = [clock_of(minute) for minute in course_minutes(menu, answers.arrive, answers.guests + 1)]
    courses = [
        one_line(f"{course.name} {clock}: {'; '.join(course.dishes)}")
        for course, clock in zip(menu.courses, at, strict=True)
    ]
    when = words.menu_when(answers.date, answers.arrive, answers.guests, answers.ovens, answers.rings)
    assumed = _assumed_line(answers, made.assumed)
    quoted = shlex.quote(target)
    eaten = matrix(made.file)
    stopped = [snag for snag in check(made.file, eaten) if snag.weight is Weight.STOP]
    unfit = [one_line(snag.message) for snag in stopped]
    mends = list(dict.fromkeys(one_line(snag.mend) for snag in stopped))
    return words.menu_written(
        target, quoted, when, courses, assumed, list(made.kept), list(made.bare), list(menu.notes), unfit, mends,
        {one_line(guest): [one_line(each) for each in without] for guest, without in eaten.left_hungry().items()},
    )  # fmt: skip


def gather(
    given: Mapping[str, str | None],
    now: datetime,
    zone: str | None,
    ask: Ask | None,
    say: Say,
    menu: Menu | None = None,
) -> Answers:
    """All answers: from options first, then from the menu, then asked for, else the usual. Raises Trouble for an option
    that cannot be read."""
    today = today_in(given.get("zone") or zone, now)
    usual = defaults(today, zone)
    read = readers(today)
    found: dict[str, Any] = {}
    if menu is not None:
        found = {**menu.found, "courses": len(menu.courses)}
        usual["arrive"] = arrival_before(menu) or usual["arrive"]
    for name in read:
        option = given.get(name)
        if option is not None:
            try:
                found[name] = read[name](option)
            except ValueError as wrong:
                raise Trouble(one_line(words.new_wrong_option(name, str(wrong))), ExitCode.USAGE) from None
    if ask is not None and len(found) < len(read):
        say(words.NEW_INTRO if menu is None else words.NEW_INTRO_MENU)
    for name in read:
        if name in found:
            continue
        of_no_place = name == "zone" and usual.get(name) in _OF_NO_PLACE
        if ask is not None and of_no_place:
            say(words.new_zone_of_no_place(usual[name]))
        if ask is None or (name == "zone" and name in usual and not of_no_place):
            if name not in usual:
                raise Trouble(words.NEW_ZONE_UNKNOWN, ExitCode.USAGE)
            found[name] = read[name](usual[name])
        else:
            found[name] = _asked(name, usual.get(name, ""), read[name], ask, say)
            if name == "date":
                say(words.new_date(found[name]))
    return Answers(**found)


def _asked(name: str, usual: str, read: Callable[[str], Any], ask: Ask, say: Say) -> Any:
    """Asks until the answer can be read. Raises Trouble at the end of input."""
    while True:
        try:
            typed = ask(words.new_question(words.NEW_ASKS[name], usual))
            return read(typed if typed.strip() else usual)
        except EOFError:
            raise Trouble(words.NEW_ENDED) from None
        except ValueError as wrong:  # also for bytes that are not text
            say(words.new_wrong(one_line(wrong)))


def today_in(zone: str | None, now: datetime) -> date:
    with contextlib.suppress(ValueError):
        return now.astimezone(ZoneInfo(parse_zone(one_line(zone or "UTC")))).date()
    return now.date()


def machine_zone() -> str | None:
    """The name of the machine's time zone; None if it has no known one."""
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            import tzlocal

            return parse_zone(str(tzlocal.get_localzone_name()))
    except (LookupError, ValueError, OSError, AttributeError):
        return None


def _free_name(answers: Answers) -> Path:
    """A file name from the event's name, numbered if it is taken."""
    stem, number = file_name(answers.event), 2
    path = Path(f"{stem}.yaml")
    while path.exists() or path.is_symlink():
        path, number = Path(f"{stem}-{number}.yaml"), number + 1
    return path
