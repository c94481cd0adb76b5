"""A menu's courses → courses to write: when each is on the table, and its dishes by a way of cooking. Pure."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import replace
from types import MappingProxyType

from board.facts.serving import LEAST_MINUTES, At, table_minutes
from board.facts.spoiling import spoiling
from board.importing.starter import words
from board.importing.starter.for_whom import ForWhom
from board.importing.starter.menu import Menu, MenuCourse
from board.importing.starter.not_a_menu import NotAMenu
from board.importing.starter.placeholders import Course, eaten_in, usually_eaten
from board.importing.ways import ways
from board.plan.edit.yaml_text import scalar
from board.plan.model.drinking import parse_pairing
from board.plan.phrases.quantities import parse_ingredient
from board.plan.phrases.when import clock_of, is_small_hours, minute_of
from board.plan.places import read_yaml

FIRST_STANDING, FIRST_SEATED, BETWEEN = 25, 35, 45  # minutes after the guests arrive; between courses
SOONEST_STANDING = 20  # once they are greeted and the first tray is carried in
SHORTEST_BETWEEN = 10
ROUNDED = 5
GLASSES_A_BOTTLE = 6  # a glass each with a course; common practice, no source
DAY = 24 * 60
# A dish's name → its lines of a plan, as `ways.dish_lines` writes them; None where it is not known there.
Own = Callable[[str], "list[str] | None"]
Choose = Callable[[str], "ways.Way | None"]
NOBODY: Mapping[str, ForWhom] = MappingProxyType({})


def usual_way(dish: str) -> "ways.Way | None":
    """The most telling way of a dish; None where its words say nothing."""
    return next(iter(ways.ways_for(dish)), None)


def first_after(eaters: int = 0, *, standing: bool) -> int:
    """Minutes from the guests' coming to the first course."""
    return FIRST_STANDING if standing else FIRST_SEATED + _beyond_usual(eaters, "seat", "serve")


def between(eaters: int = 0) -> int:
    """Minutes from one course to the next: longer at a long table, by what clearing and serving take there."""
    return BETWEEN + _beyond_usual(eaters, "clear", "serve")


def _beyond_usual(eaters: int, *work: At) -> int:
    longer = sum(table_minutes(what, eaters) - LEAST_MINUTES for what in work)
    return -(-longer // ROUNDED) * ROUNDED


def arrival_before(menu: Menu) -> str | None:
    """When guests would come for a first course that has an hour; None if it has none."""
    first = menu.courses[0]
    if first.at is None:
        return None
    return clock_of((minute_of(first.at) - first_after(standing=first.standing)) % DAY)


def course_minutes(menu: Menu, arrive: str, eaters: int = 0) -> list[int]:
    """When each course is on the table, in minutes after midnight, beyond 24 hours too: as written; between, evenly,
    and at most 45 min apart, more at a long table. Raises NotAMenu where one is not after the one before, or before
    the guests."""
    begin = minute_of(arrive)
    wanted = [_wanted(course, begin) for course in menu.courses]
    if menu.seated is not None:
        seated = next((n for n, course in enumerate(menu.courses) if not course.standing), 0)
        wanted[seated] = wanted[seated] if wanted[seated] is not None else minute_of(menu.seated)
    found: list[int] = []
    for n, course in enumerate(menu.courses):
        said = wanted[n]
        usual = found[-1] + between(eaters) if found else begin + first_after(eaters, standing=course.standing)
        even = _standing_first(begin, wanted[1:], eaters) if course.standing and not found else None
        even = _even(found[-1] if found else begin, wanted[n:]) if even is None else even
        at = said if said is not None else min(usual, even)
        least = found[-1] + SHORTEST_BETWEEN if found else begin
        if at < least:
            above = menu.courses[n - 1].name if found else None
            raise NotAMenu(course.line, words.menu_too_soon(course.name, clock_of(at), above, clock_of(least)))
        found.append(at)
    return found


def _wanted(course: MenuCourse, begin: int) -> int | None:
    if course.at is None:
        return None
    late = is_small_hours(course.at) and begin >= minute_of("12:00")
    return minute_of(course.at) + DAY * late


def _even(before: int, wanted: Sequence[int | None]) -> int:
    """The first of several hours that are not written, spread evenly up to the next that is."""
    for n, said in enumerate(wanted):
        if said is not None:
            return before + (said - before) // (n + 1)
    return before + DAY


def _standing_first(begin: int, following: Sequence[int | None], eaters: int) -> int | None:
    """What is eaten standing, before a course whose hour is written: soon enough that it is eaten by then."""
    if not following or following[0] is None:
        return None
    soonest = min(SOONEST_STANDING, (following[0] - begin) // 2)
    after = table_minutes("seat", eaters) + table_minutes("serve", eaters)
    return max(begin + soonest, following[0] - usually_eaten("nibbles") - after)


def taken_apart(menu: Menu, stays: Callable[[str], bool]) -> Menu:
    """The menu with what is cooked beside a dish as a dish of the same course, and a note of it; not where `stays`, or
    where a dish of that name is in it already."""
    names = {dish.casefold() for course in menu.courses for dish in course.dishes}
    notes = list(menu.notes)

    def dishes(dish: str) -> tuple[str, ...]:
        found = ways.apart(dish)
        if found == (dish,) or stays(dish) or not names.isdisjoint(each.casefold() for each in found):
            return (dish,)
        if len(found) == 1:
            return found  # what goes with it by `and` goes with it by `with`
        names.update(each.casefold() for each in found)
        notes.append(words.menu_apart(dish, found))
        return found

    courses = tuple(replace(c, dishes=tuple(each for d in c.dishes for each in dishes(d))) for c in menu.courses)
    return replace(menu, courses=courses, notes=tuple(notes))


def told_beside(menu: Menu, choose: Choose) -> Menu:
    """The menu with notes of what is bought beside its dishes, and of what in their names nobody knows, or may make
    another dish of it. `choose`: the way of a dish; None where none is taken."""
    ways_of = [(dish, way) for course in menu.courses for dish in course.dishes if (way := choose(dish)) is not None]
    bought = [food for dish, way in ways_of for food in ways.served_with(dish, way)]
    unknown = [(piece, dish) for dish, way in ways_of for piece in ways.left_out(dish, way)]
    notes = [words.menu_bought_beside(list(dict.fromkeys(bought)))] if bought else []
    notes += [words.menu_not_in_it(piece, dish) for piece, dish in unknown]
    notes += [words.menu_taken_for(dish, name) for dish, way in ways_of if (name := ways.taken_for(dish, way))]
    return replace(menu, notes=(*menu.notes, *notes))


def courses_of(
    menu: Menu,
    arrive: str,
    at: ways.Setting,
    choose: Choose = usual_way,
    own: Own | None = None,
    only: Mapping[str, ForWhom] = NOBODY,
) -> list[Course]:
    """The courses to write. `own`: dishes of the host's own, taken before any way; `choose`: the way of a dish; `only`:
    the dishes for some. Raises NotAMenu for hours that cannot be."""
    minutes = course_minutes(menu, arrive, at.eaters)
    said_hours = menu.seated is not None or any(course.at is not None for course in menu.courses)
    found = []
    for n, (course, minute) in enumerate(zip(menu.courses, minutes, strict=True)):
        lines = [line for dish in course.dishes for line in _dish(dish, at, choose, own, only.get(dish))]
        when = "" if n and not said_hours else clock_of(minute)
        if when and course.at is None:
            when += f"  {words.ASSUMED}"
        keys = "".join(f"{key}\n" for key in _keys(course, at.eaters))
        gap = minutes[n + 1] - minute if n + 1 < len(minutes) else None
        eaten = eaten_in(course.kind, gap, at.eaters)
        found.append(Course(course.name, eaten, "\n".join(lines) + "\n", keys, _spoils(lines), when))
    return found


def _spoils(lines: Sequence[str]) -> bool:
    """Whether anything of its dishes must go into the cold: not olives, nuts or a black coffee."""
    dishes, _, _ = read_yaml("\n".join(lines), "")
    return not isinstance(dishes, list) or any(_may_spoil(dish.get("ingredients")) for dish in dishes)


def _may_spoil(ingredients: object) -> bool:
    """Not where all is known, and is such as keeps."""
    try:
        foods = [parse_ingredient(str(line)) for line in ingredients] if isinstance(ingredients, list) else []
    except ValueError:
        return True
    found = [each for food in foods for each in spoiling(str(food["food"]), str(food["unit"]))]
    return not found or any(each.when != "never" for each in found)


def _dish(dish: str, at: ways.Setting, choose: Choose, own: Own | None, some: ForWhom | None) -> list[str]:
    known = own(dish) if own is not None else None
    eating = at if some is None else replace(at, eaters=some.eaters)
    lines = known if known is not None else ways.dish_lines(dish, choose(dish), eating)
    return [lines[0], *some.keys(), *lines[1:]] if some is not None else lines


def _keys(course: MenuCourse, eaters: int) -> Iterator[str]:
    if course.standing:
        yield "standing: yes"
    if course.outdoors:
        yield "outdoors: yes"
    if course.drink:
        yield f"drink: {_drink(course.drink, eaters)}"


def _drink(said: str, eaters: int) -> str:
    """As it is written, where bottles are counted; else a glass each, which is assumed."""
    try:
        parse_pairing(said)
    except ValueError:
        bottles = -(-eaters // GLASSES_A_BOTTLE)
        name = " ".join(said.replace(",", " ").split())
        counted = f"{name}, {bottles} bottle{'s' if bottles > 1 else ''}"
        return f"{scalar(counted)}  {words.ASSUMED_GLASS}"
    return scalar(said)
