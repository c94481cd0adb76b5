"""A menu as a host types it → its head, its courses with their dishes, and what was not understood. Pure."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from datetime import date
from typing import Any

from board.base.plain import plain
from board.facts.foods.dish_names import named_dishes
from board.importing.starter import words
from board.importing.starter.answers import LIMITS, LONGEST_NAME
from board.importing.starter.clocks import CLOCK_SIGN, Masked, masked
from board.importing.starter.course_lines import (
    DISHES_TOO,
    Open,
    course_in,
    dishes_in,
    drink_in,
    is_drink_label,
    is_its_own_course,
)
from board.importing.starter.head import Head, Helper
from board.importing.starter.looks import LABELS, is_event, says_nothing_but_head, says_something
from board.importing.starter.menu_guests import is_need
from board.importing.starter.not_a_menu import NotAMenu
from board.importing.ways import ways
from board.plan.resolve.fault import slug
from board.plan.resolve.known_again import name_key

MOST_LINES, LONGEST_LINE = 400, 500
MOST_DISHES, MOST_COURSES = 60, 12
_NAMES = {"nibbles": "Nibbles", "starter": "Starter", "main": "Main", "cheese": "Cheese", "sweet": "Sweet",
          "drink": "Drinks"}  # fmt: skip
_ORDER = list(_NAMES)
_BULLET = re.compile(r"""(?:[^\w\s"'(\[{#&\ufffd]|\(?[0-9]{1,2}[.)](?=\s)|\[[ xX]?\])\s+(?=\S)""")
_NUMBER = re.compile(r"\(?[0-9]{1,2}[.)]\s")
_HOUR_FIRST = re.compile(rf"([{CLOCK_SIGN}])\s*[-–—:.]?\s+(?=\S)")
_HOUR_LAST = re.compile(
    rf"[\s,;(–—-]*(?:\b(?:on\s+the\s+table|served|at|from|by|about|around)\s+)*@?\s*([{CLOCK_SIGN}])\s*\)?\s*$",
    re.IGNORECASE,
)
_WIDE = str.maketrans({"：": ":", "，": ",", "、": ",", "；": ";", "،": ",", "؛": ";", "（": "(", "）": ")", "\t": " "})
_HEADING = re.compile(r"(?P<marks>#{1,6})\s+|(?P<stars>\*\*|__)(?=\S.*(?:\*\*|__)\s*:?$)")
_JUST_MENU = re.compile(r"(?:the\s+)?menu\s*:?", re.IGNORECASE)


@dataclass(frozen=True)
class MenuCourse:
    """A course: what it is in a meal (`Way.course`, None unknown), its hour (HH:MM, None where none is written), what
    is poured, and the line it stands on."""

    name: str
    dishes: tuple[str, ...]
    kind: str | None = None
    at: str | None = None
    outdoors: bool = False
    standing: bool = False
    drink: str | None = None
    line: int = 0


@dataclass(frozen=True)
class Menu:
    """A menu as it was read. `found`: answers by name, as `Answers` has them, where it gives them. `guests`: entries of
    a plan, all of them without the host; empty where only a number is known. `cold`: litres by `fridge`, `freezer`.
    `seated`: when the first course at the table is wanted. `notes`: what was taken in one of two ways or not
    understood, for the host."""

    courses: tuple[MenuCourse, ...]
    found: Mapping[str, Any] = field(default_factory=dict)
    guests: tuple[str, ...] = ()
    cold: Mapping[str, str] = field(default_factory=dict)
    helpers: tuple[Helper, ...] = ()
    seated: str | None = None
    notes: tuple[str, ...] = ()


def read_menu(text: str, today: date) -> Menu:
    """Raises NotAMenu for what cannot be a menu, or says two things."""
    reading = _Reading(today)
    lines = list(_lines(text))
    for n, line in enumerate(lines):
        reading.line(line, lines[n + 1 :])
    return reading.done()


@dataclass(frozen=True)
class _Line:
    """A line without its bullet. `marks`: it is a heading; `indented`: it has a bullet or stands further in;
    `numbered`: its bullet is a number."""

    masked: Masked
    marks: bool = False
    indented: bool = False
    numbered: bool = False

    @property
    def empty(self) -> bool:
        return not self.masked.text


def _is_a_dish(text: str) -> bool:
    """Whether a way is known for it, or its name: fesenjan."""
    return bool(ways.ways_for(text)) or (not says_something(text) and any(True for _ in named_dishes(text)))


def _lines(text: str) -> Iterator[_Line]:
    """Raises NotAMenu where there are too many, or one is too long."""
    rows = text.removeprefix("\ufeff").replace("\r\n", "\n").replace("\r", "\n").split("\n")
    if len(rows) > MOST_LINES:
        raise NotAMenu(MOST_LINES + 1, words.menu_too_long(MOST_LINES, MOST_DISHES), too_much=True)
    for number, row in enumerate(rows, start=1):
        if len(row) > LONGEST_LINE:
            raise NotAMenu(number, words.menu_line_too_long(LONGEST_LINE))
        safe = plain(row.translate(_WIDE))
        indent = len(safe) - len(safe.lstrip())
        bare = safe.strip()
        heading = _HEADING.match(bare)
        if heading:
            bare = bare.strip("#*_ ").replace("**:", ":")
        bullet = _BULLET.match(bare)
        numbered = _NUMBER.match(bare) is not None
        bare = bare[bullet.end() :] if bullet else bare
        if not re.search(r"\w", bare):
            bare = ""
        yield _Line(masked(number, bare.strip()), heading is not None, indent > 1 or bullet is not None, numbered)


def _next(after: list[_Line]) -> _Line | None:
    return next((each for each in after if not each.empty), None)


def _is_timed_dish(line: Masked) -> bool:
    """`pea soup, 18:45`: a dish with its course's hour, rather than the evening and its own."""
    said = _HOUR_LAST.sub("", line.text)
    pieces = list(dishes_in(said))
    return said != line.text and bool(pieces) and all(ways.ways_for(each) and not is_event(each) for each in pieces)


class _Reading:
    """Goes through the lines: the head's, guests' under their label, courses, dishes."""

    def __init__(self, today: date) -> None:
        self._head = Head(today)
        self._open: list[Open] = []
        self._in_guests = False
        self._after_gap = False
        self._anything = False

    def line(self, line: _Line, after: list[_Line]) -> None:
        if line.empty:
            self._in_guests = False
            self._after_gap = True
            return
        first, self._anything = not self._anything, True
        self._take(line, after, first=first)
        self._after_gap = False

    def _take(self, line: _Line, after: list[_Line], *, first: bool) -> None:
        text = line.masked
        if _JUST_MENU.fullmatch(text.text):
            return
        if self._in_guests and (line.indented or ":" not in text.text) and course_in(text) is None:
            self._head.add_guests([text.unmasked(text.text)], text)
            return
        self._in_guests = False
        if self._opens_guests(text):
            self._in_guests = True
        elif (poured := is_drink_label(text)) is not None:
            self._pour(poured, text)
        elif self._is_head_label(text) and self._head.take(text):
            pass
        elif (found := course_in(text)) is not None and not self._reads_as_head(text):
            found[0].indented, found[0].numbered = line.indented, line.numbered
            if found[0].kind is None and not self._open and self._is_head(_next(after)):
                self._head.leave_out(text.unmasked(text.text), text)
            else:
                self._course(*found)
        elif not (line.indented and self._open) and not _is_timed_dish(text) and self._head.take(text):
            pass
        elif first and self._names_the_evening(line, after):
            self._head.name_it(text.text, text)
        elif self._is_heading(line, after) and (found := course_in(text, heading=True)) is not None:
            self._course(*found)
        elif not self._open and not _is_a_dish(text.text) and any(course_in(each.masked) for each in after):
            self._head.leave_out(text.unmasked(text.text), text)
        elif self._open or not self._head.takes_up(text.unmasked(text.text), text, by_name=True):
            self._dishes(line)

    def _opens_guests(self, line: Masked) -> bool:
        label, colon, rest = line.text.partition(":")
        return bool(colon) and not rest.strip() and LABELS.get(label.strip().casefold()) == "guests"

    def _is_head_label(self, line: Masked) -> bool:
        label, colon, _ = line.text.partition(":")
        return bool(colon) and " ".join(label.casefold().split()) in LABELS

    def _is_head(self, line: _Line | None) -> bool:
        return line is not None and (
            self._is_head_label(line.masked)
            or self._reads_as_head(line.masked)
            or (course_in(line.masked) is None and says_something(line.masked.text))
        )

    def _reads_as_head(self, line: Masked) -> bool:
        """A label nobody knows over what is a head's: `Datum: 19 Dec 2026`; or guests counted before a colon."""
        label, colon, rest = line.text.partition(":")
        if not colon:
            return False
        if says_nothing_but_head(rest):
            return True
        return says_something(label) and course_in(Masked(line.number, label, line.clocks)) is None

    def _names_the_evening(self, line: _Line, after: list[_Line]) -> bool:
        text = line.masked.text
        if line.indented or re.search(r"[,;]", text) or (":" in text and not is_event(text)):
            return False
        over_dishes = bool(after) and after[0].indented and not after[0].empty
        if (line.marks and not over_dishes) or (is_event(text) and not ways.ways_for(text)):
            return True
        following = _next(after)
        if following is None:
            return False
        over_course = after[0].empty and course_in(following.masked) is not None and not ways.ways_for(text)
        is_title = self._is_head(following) or over_course
        if is_title:
            self._head.notes.append(words.menu_taken_for_event(line.masked.number, line.masked.unmasked(text)))
        return is_title

    def _is_heading(self, line: _Line, after: list[_Line]) -> bool:
        """Whether a line stands over dishes that are set further in."""
        if line.marks:
            return True
        if self._open and self._open[-1].name is not None and not self._open[-1].dishes:
            return False  # the first dish of the course above
        return not line.indented and bool(after) and after[0].indented and not after[0].empty

    def _course(self, found: Open, rest: str) -> None:
        self._open.append(found)
        self._add(found, rest, found.line)
        is_dish = found.name is not None and found.name.casefold() in DISHES_TOO
        found.inline = bool(found.dishes)
        found.closed = is_dish and not found.dishes and ":" not in found.line.text

    def _dishes(self, line: _Line) -> None:
        """A line of dishes: the course's above, or of no course."""
        course = self._open[-1] if self._open else None
        stays = course is not None and (course.name is not None or not self._after_gap)
        begins = course is not None and self._begins_a_course(line, course)
        if course is None or not stays or begins or (course.closed and line.indented <= course.indented):
            course = Open(line.masked, indented=line.indented, numbered=line.numbered, bounded=begins)
            if (alone := is_its_own_course(line.masked.text)) is not None and self._open:
                course.name, course.kind, course.closed = *alone, True
            self._open.append(course)
        elif course.inline and not line.indented and course.name is not None:
            self._head.notes.append(
                words.menu_joined(line.masked.number, line.masked.unmasked(line.masked.text), course.name)
            )
        self._add(course, line.masked.text, line.masked)

    def _begins_a_course(self, line: _Line, above: Open) -> bool:
        """Whether its hour or its number says that a course begins here, after the one above."""
        text = line.masked.text
        if line.numbered and (above.numbered or above.name is None):
            return True
        if not above.dishes:
            return False
        return bool(_HOUR_FIRST.match(text) or (above.name is None and _HOUR_LAST.search(text)))

    def _add(self, course: Open, text: str, line: Masked) -> None:
        if left := re.match(r"\s*\(([^()]*)\)\s*[-–—:]?\s*(?=\S)", text):
            text = text[left.end() :] if drink_in(left[1]) else text
            course.drink = drink_in(left[1]) or course.drink
        for piece in dishes_in(text):
            bare = piece
            if first := _HOUR_FIRST.match(piece):
                bare = piece[first.end() :]
                if course.name is None and course.dishes:
                    course = Open(line, bounded=True)
                    self._open.append(course)
                self._hour(course, first[1], line)
            elif last := _HOUR_LAST.search(piece):
                bare = piece[: last.start()]
                self._hour(course, last[1], line)
                course.closed = course.closed or course.name is None
            if bare.strip():
                self._piece(course, line.unmasked(bare).strip(" .:"), line)

    def _hour(self, course: Open, sign: str, line: Masked) -> None:
        """The hour of a course, where it has none yet."""
        if not course.at:
            course.at, course.line = sign, line
            course.bounded = course.bounded or course.name is None
        elif course.line.clock(course.at) != line.clock(sign):
            self._head.notes.append(words.menu_second_hour(line.number, line.clock(sign)))

    def _piece(self, course: Open, piece: str, line: Masked) -> None:
        bracketed = re.fullmatch(r"(.*\S)\s*\(([^()]*)\)", piece)
        if bracketed and (poured := drink_in(bracketed[2])):
            course.drink, piece = poured, bracketed[1]
        if poured := drink_in(piece):
            course.drink = f"{course.drink} and {poured}" if course.drink else poured
        elif not re.search(r"[^\W\d_]", piece):
            self._head.leave_out(line.unmasked(line.text), line)
        elif len(piece) > LONGEST_NAME:
            raise NotAMenu(line.number, words.menu_dish_too_long(LONGEST_NAME))
        elif is_need(piece):
            raise NotAMenu(line.number, words.menu_need(piece))
        else:
            course.dishes.append((re.sub(r"^(?:with|and)\s+", "", piece, flags=re.IGNORECASE) or piece, line.number))

    def _pour(self, poured: str, line: Masked) -> None:
        """A drink on a line of its own belongs to the course above."""
        if not self._open:
            self._head.leave_out(line.unmasked(line.text), line)
            return
        course = self._open[-1]
        course.drink = f"{course.drink} and {poured}" if course.drink else poured

    def done(self) -> Menu:
        """Raises NotAMenu, too."""
        notes = self._head.notes
        notes += [words.menu_shared(need, names) for need, names in self._head.guests.shared]
        notes += [words.menu_unread(name, need) for name, need in self._head.guests.unread()]
        courses = _put_together(self._open, notes, anything=self._anything)
        _refuse_twice(courses)
        found = dict(self._head.found)
        entries = self._entries(found)
        self._seat_helpers(entries)
        return Menu(
            tuple(courses), found, entries, self._head.cold, tuple(self._head.helpers), self._head.seated, tuple(notes)
        )

    def _seat_helpers(self, entries: tuple[str, ...]) -> None:
        """Who helps eats with the guests, unless hired; who is not among them by name is told."""
        named = self._head.guests.names()
        unnamed = not entries or self._head.guests.count() > len(self._head.guests.entries) or entries[-1][0].isdigit()
        for helper in self._head.helpers:
            if not helper.hired and helper.name.casefold() not in named:
                self._head.notes.append(words.menu_helper_eats(helper.name, among_others=unnamed))

    def _entries(self, found: dict[str, Any]) -> tuple[str, ...]:
        """The guests by name, filled up to the number that is said. Raises NotAMenu."""
        listed, said = self._head.guests.count(), found.get("guests")
        low, high = LIMITS["guests"]
        if listed > high:
            raise NotAMenu(self._head.guests_line, words.new_not_a_number(str(listed), low, high))
        every = self._head.guests.of_all
        if not listed and not every:
            return ()
        if every and not (listed or said):
            raise NotAMenu(self._head.guests_line, words.menu_all_of_how_many(every[0]))
        found["guests"] = max(listed, said or 0)
        if said is not None and listed > said:
            raise NotAMenu(self._head.guests_line, words.menu_guests_differ(said, listed))
        more = found["guests"] - listed
        rest = "other" if listed else "guest"
        entries = (*self._head.guests.entries, *([f"{more} {rest}{'s' if more > 1 else ''}"] if more else []))
        return tuple(", ".join([entry, *every]) for entry in entries)


def _put_together(read: list[Open], notes: list[str], *, anything: bool) -> list[MenuCourse]:
    """The courses by name: sides with their main, dishes of no course where they belong. Raises NotAMenu."""
    courses: list[Open] = []
    has_main = any(course.kind == "main" for course in read)
    for course in read:
        if course.kind == "entree":
            course.kind = "starter" if has_main else "main"
        if not course.dishes and course.name is not None:
            if course.name.casefold() not in DISHES_TOO:
                notes.append(words.menu_no_dish(course.line.number, course.name))
                continue
            course.dishes = [(course.name, course.line.number)]
        main = next((each for each in reversed(courses) if each.kind == "main"), None)
        if course.kind == "side" and course.name is not None and main is not None:
            main.dishes += course.dishes
        elif course.dishes:
            courses.append(course)
    if not courses:
        raise NotAMenu(0, words.MENU_NO_DISHES if anything else words.MENU_EMPTY)
    count = sum(len(course.dishes) for course in courses)
    if count > MOST_DISHES:
        raise NotAMenu(0, words.menu_too_many_dishes(count, MOST_DISHES), too_much=True)
    named = _named(courses, notes)
    if len(named) > MOST_COURSES:
        raise NotAMenu(named[MOST_COURSES].line, words.menu_too_many_courses(len(named), MOST_COURSES), too_much=True)
    return named


def _named(courses: list[Open], notes: list[str]) -> list[MenuCourse]:
    nameless = [course for course in courses if course.name is None]
    if not nameless:
        return [_course(course, str(course.name)) for course in courses]
    bounded = any(course.bounded for course in nameless)
    if len(nameless) == len(courses) and len(courses) > 1:
        notes.append(words.MENU_BY_BOUNDS if bounded else words.MENU_BY_GAPS)
        return _by_gaps(courses)
    if bounded:
        notes.append(words.MENU_BY_BOUNDS)
    if not all(course.bounded for course in nameless):
        notes.append(words.MENU_BY_DISH)
    placed: list[MenuCourse] = []
    for n, course in enumerate(courses, start=1):
        if course.name is not None:
            placed.append(_course(course, course.name))
            continue
        if course.bounded:
            taken = [each.name or "" for each in courses] + [each.name for each in placed]
            placed.append(_by_itself(course, n, taken))
            continue
        last = None
        for dish, line in course.dishes:
            kind = _kind_of(dish) or last or "main"
            last = kind
            at = next((n for n, each in enumerate(placed) if each.kind == kind), None)
            if at is None:
                placed.append(MenuCourse(_NAMES[kind], (dish,), kind, standing=kind == "nibbles", line=line))
            else:
                placed[at] = replace(placed[at], dishes=(*placed[at].dishes, dish))
    if len(nameless) == len(courses):
        placed.sort(key=lambda each: _ORDER.index(each.kind or "main"))
    return placed


def _by_gaps(courses: list[Open]) -> list[MenuCourse]:
    """A course between two empty lines, hours or numbers."""
    found: list[MenuCourse] = []
    for n, course in enumerate(courses, start=1):
        found.append(_by_itself(course, n, [each.name for each in found]))
    return found


def _by_itself(course: Open, n: int, taken: list[str]) -> MenuCourse:
    """The nth course, named by what its dishes are, or by its number where that name is taken."""
    kinds = [_kind_of(dish) for dish, _ in course.dishes]
    kind = "main" if "main" in kinds else next((each for each in kinds if each), None)
    name = _NAMES[kind] if kind else words.menu_course_number(n)
    return _course(course, words.menu_course_number(n) if name in taken else name, kind)


def _kind_of(dish: str) -> str | None:
    """What a dish is in a meal; None where its words do not say."""
    found = next((way.course for way in ways.ways_for(dish)), None)
    return "main" if found == "side" else found if found in _NAMES else None


def _course(course: Open, name: str, kind: str | None = None) -> MenuCourse:
    dishes = tuple(dish for dish, _ in course.dishes)
    known = kind or course.kind or next((found for dish in dishes if (found := _kind_of(dish))), None)
    at = course.line.clock(course.at) if course.at else None
    standing = course.standing or known == "nibbles"
    return MenuCourse(
        name, dishes, known, at, course.outdoors, standing, course.drink and course.drink[:100], course.line.number
    )


def _refuse_twice(courses: list[MenuCourse]) -> None:
    """Raises NotAMenu where a course or a dish is named twice."""
    seen: dict[str, int] = {}
    for course in courses:
        if slug(course.name) in seen:
            raise NotAMenu(course.line, words.menu_course_twice(course.name, seen[slug(course.name)]))
        seen[slug(course.name)] = course.line
    dishes: set[str] = set()
    for course in courses:
        for dish in course.dishes:
            if name_key(dish) in dishes:
                raise NotAMenu(course.line, words.menu_dish_twice(dish))
            dishes.add(name_key(dish))
