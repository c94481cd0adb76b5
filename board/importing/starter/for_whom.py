"""Dishes that a menu means for some of the guests: `nut roast for Tom`, `lamb, or stuffed squash for Ana`. Pure."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace

from board.importing.starter import words
from board.importing.starter.menu import Menu, MenuCourse
from board.importing.starter.menu_guests import GROUPS
from board.importing.ways import ways
from board.plan.edit.yaml_text import scalar
from board.plan.phrases.guests import parse_guest

_FOR = re.compile(r"(?P<dish>.+?)[,\s]+for\s+(?P<who>[^()\[\]]+?)(?:\s+instead)?", re.IGNORECASE)
_BESIDE = re.compile(r"(?P<dish>.+?)\s*[(\[]\s*(?:or\s+)?(?P<other>[^()\[\]]+?)\s*[)\]]", re.IGNORECASE)
_OR = re.compile(r"(?:(?P<dish>.+?)[,\s]+)?or\s+(?P<other>.+)", re.IGNORECASE)
_APART = re.compile(r"\s*(?:,|&|\band\b)\s*(?:for\s+)?", re.IGNORECASE)


@dataclass(frozen=True)
class ForWhom:
    """`names` of guests, how many they are, and the dish that they then do not get; empty where the menu does not
    say."""

    names: tuple[str, ...]
    eaters: int
    instead_of: str = ""

    def keys(self) -> Iterator[str]:
        """As lines of a dish."""
        yield f"  only for: [{', '.join(scalar(name) for name in self.names)}]"
        if self.instead_of:
            yield f"  instead of: {scalar(self.instead_of)}"


@dataclass(frozen=True)
class _Guest:
    needs: frozenset[str]
    count: int


@dataclass(frozen=True)
class MenuForSome:
    """The menu without those words; `only`: by dish."""

    menu: Menu
    only: Mapping[str, ForWhom] = field(default_factory=dict)


def for_some(menu: Menu) -> MenuForSome:
    """The menu with each dish for some as a dish of its own. Words that name no guest stay in the dish."""
    guests = dict(_guests(menu))
    only: dict[str, ForWhom] = {}
    notes = list(menu.notes)

    def dishes(course: MenuCourse) -> Iterator[str]:
        for dish in course.dishes:
            main, other, names = _taken_apart(dish, guests)
            if not names:
                yield dish
                continue
            all_of, some_of = ways.apart(main) if main else (), ways.apart(other)
            instead = all_of[0] if all_of else _other_main(course, dish, some_of[0])
            eaters = sum(guests[name].count for name in names)
            only.update({each: ForWhom(names, eaters, "" if n else instead) for n, each in enumerate(some_of)})
            notes.append(words.menu_for_some(dish, some_of[0], names, instead))
            yield from (*all_of, *some_of)

    courses = tuple(replace(course, dishes=tuple(dishes(course))) for course in menu.courses)
    return MenuForSome(replace(menu, courses=courses, notes=tuple(notes)), only)


def _other_main(course: MenuCourse, dish: str, for_some: str) -> str:
    """The one main dish of a course, where what is for some is one, too."""
    mains = [each for each in course.dishes if each != dish and _is_main(each)]
    return ways.apart(mains[0])[0] if len(mains) == 1 and _is_main(for_some) else ""


def _is_main(dish: str) -> bool:
    return next((way.course == "main" for way in ways.ways_for(dish)), False)


def _taken_apart(dish: str, guests: Mapping[str, _Guest]) -> tuple[str, str, tuple[str, ...]]:
    """The dish for all ("" for none), the one for some, and whom; no names where it is for all."""
    beside = _BESIDE.fullmatch(dish)
    found = _FOR.fullmatch(beside["other"] if beside else dish)
    names = _named(found["who"], guests) if found else ()
    if found is None or not names:
        return dish, "", ()
    if beside:
        return beside["dish"], found["dish"], names
    either = _OR.fullmatch(found["dish"])
    return (either["dish"] or "", either["other"], names) if either else ("", found["dish"], names)


def _named(who: str, guests: Mapping[str, _Guest]) -> tuple[str, ...]:
    """The guests that are meant; none where any word of it means nobody."""
    names: list[str] = []
    for piece in _APART.split(who):
        said = piece.casefold().removeprefix("the ")
        need = GROUPS.get(said, "")
        found = [name for name, guest in guests.items() if said == name.casefold() or need in guest.needs]
        if not found:
            return ()
        names += found
    return tuple(dict.fromkeys(names))


def _guests(menu: Menu) -> Iterator[tuple[str, _Guest]]:
    for entry in menu.guests:
        try:
            read = parse_guest(entry)
        except ValueError:
            continue
        diets = read["diets"]
        needs = frozenset(diets if isinstance(diets, list) else ())
        yield str(read["name"]), _Guest(needs, int(str(read.get("count", 1))))
