"""The cook's book ↔ its text, plain YAML that a cook can read and mend by hand. Pure.

`took` holds what was seen: an evening's mark, then minutes, and so on, with commas between.
"""

import re
from collections.abc import Iterable, Iterator, Mapping
from typing import Any, get_args

from board.learning.book import Book, Seen
from board.learning.ovens import Way
from board.plan.edit.yaml_text import Layout, entry, item
from board.plan.places import Loc, Places, read_yaml
from board.plan.resolve.known_again import name_key
from board.plan.snag import Snag, Weight, in_order

FORMAT = 1
LARGEST_CHARACTERS = 4_000_000
MOST_MINUTES = 600_000  # over a year
HEAD = """\
# The cook's book: how long work took, evening by evening, over all plans; `platecall lessons --book` shows its figures.
# `took`: the mark of an evening and the minutes, commas between. A line can be taken out; comments are not kept when
# evenings are added.
"""
WAYS: tuple[Way, ...] = get_args(Way)
_MARK = re.compile(r"[0-9a-f]{8}")
_SEEN = re.compile(r"([0-9a-f]{8})\s+(\d{1,6}(?:\.\d{1,3})?)")
_DAY = re.compile(r"(\d{4}-\d\d-\d\d)\s+(\S.*)", re.DOTALL)
_MEND = "Mend the line, or put a copy of the book you kept in its place; as it is, nothing is read from or added to it."
_BY_HAND = "{}; then the rest is read as before."


def read_book(text: str, name: str) -> Book | list[Snag]:
    """The book, or all its faults, each at its line. An empty file is an empty book. Raises nothing."""
    if not text.removeprefix("\ufeff").strip():
        return Book()
    raw, places, snags = read_yaml(text, name, LARGEST_CHARACTERS)
    if snags:
        return [Snag("book 1", snag.weight, snag.message, _MEND, snag.place) for snag in snags]
    return _Reader(places).book(raw)


class _Reader:
    """Reads a book's data and collects its faults."""

    def __init__(self, places: Places) -> None:
        self.places = places
        self.snags: list[Snag] = []

    def book(self, raw: Any) -> Book | list[Snag]:
        if not isinstance(raw, dict) or "book" not in raw:
            return [self._snag("book 2", (), "this is not a cook's book: it does not begin with `book: 1`")]
        if raw["book"] != FORMAT:
            message = f"this book is of version {raw['book']}; this program reads version {FORMAT}"
            return [self._snag("book 2", ("book",), message, "Read it with the program that wrote it.")]
        for word in set(raw) - {"book", "evenings", "steps", "ovens"}:
            self._unknown((word,), "the book")
        book = Book(self._evenings(raw.get("evenings")), self._steps(raw.get("steps")), self._ovens(raw.get("ovens")))
        for key, each in (("steps", book.steps), ("ovens", book.ovens)):
            strangers = {mark for seen in each.values() for mark, _ in seen} - set(book.evenings)
            for mark in sorted(strangers):
                self._add((key,), f"the evening {mark} is not among the book's `evenings`", "Add it there")
        return in_order(self.snags) if self.snags else book

    def _evenings(self, data: Any) -> dict[str, tuple[str, str]]:
        found: dict[str, tuple[str, str]] = {}
        if data is None:
            return found
        if not isinstance(data, dict):
            self._add(
                ("evenings",), "`evenings` takes lines such as `0a1b2c3d: 2026-11-28 Soup supper`", "Write them so"
            )
            return found
        for mark, said in data.items():
            day = _DAY.fullmatch(str(said))
            if not _MARK.fullmatch(mark) or day is None:
                message = f"{mark!r} is no evening: a mark of eight signs, its date and its plan belong here"
                self._add(("evenings", mark), message, "Write it as `0a1b2c3d: 2026-11-28 Soup supper`, or take it out")
            else:
                found[mark] = day[1], day[2]
        return found

    def _steps(self, data: Any) -> dict[tuple[str, str], tuple[Seen, ...]]:
        found: dict[tuple[str, str], tuple[Seen, ...]] = {}
        for loc, each in self._lines("steps", data, ("step", "lane", "took")):
            about = name_key(each["step"]), name_key(each["lane"])
            if about in found:
                self._add(loc, f"the step {each['step']!r} on {each['lane']!r} stands here twice", "Join the two")
            found[about] = self._took((*loc, "took"), each["took"])
        return found

    def _ovens(self, data: Any) -> dict[tuple[str, Way], tuple[Seen, ...]]:
        """Names that differ only in capitals and spaces are one oven."""
        found: dict[tuple[str, Way], tuple[Seen, ...]] = {}
        written: set[tuple[str, Way]] = set()
        for loc, each in self._lines("ovens", data, ("oven", "way", "took")):
            way = next((way for way in WAYS if way == each["way"]), None)
            if way is None:
                message = f"{each['way']!r} is nothing an oven does; a book knows {', '.join(WAYS)}"
                self._add((*loc, "way"), message, "Write one of these")
                continue
            if (each["oven"], way) in written:
                self._add(loc, f"the oven {each['oven']!r} stands here twice with {way!r}", "Join the two")
            written.add((each["oven"], way))
            about = name_key(each["oven"]), way
            found[about] = tuple(sorted((*found.get(about, ()), *self._took((*loc, "took"), each["took"]))))
        return found

    def _lines(self, key: str, data: Any, words: tuple[str, ...]) -> Iterator[tuple[Loc, dict[str, str]]]:
        """Entries that have exactly these words; any other is reported."""
        if data is None:
            return
        if not isinstance(data, list):
            self._add((key,), f"`{key}` takes a list", "Begin each entry with `- `")
            return
        for number, each in enumerate(data):
            loc: Loc = (key, number)
            if isinstance(each, dict) and "lane" in words and "lane" not in each and "on" in each:
                each = {("lane" if word == "on" else word): said for word, said in each.items()}  # older books say `on`
            if not isinstance(each, dict) or any(not str(each.get(word) or "").strip() for word in words):
                self._add(loc, f"an entry of `{key}` needs {', '.join(words)}", "Add what is missing, or take it out")
                continue
            for word in set(each) - set(words):
                self._unknown((*loc, word), f"an entry of `{key}`")
            yield loc, {word: str(each[word]) for word in words}

    def _took(self, loc: Loc, text: str) -> tuple[Seen, ...]:
        found: list[Seen] = []
        for piece in text.split(","):
            seen = _SEEN.fullmatch(piece.strip())
            if seen is None or not 0 < float(seen[2]) <= MOST_MINUTES:
                message = f"{piece.strip()!r} is not the mark of an evening and its minutes"
                self._add(loc, message, "Write it as `0a1b2c3d 32.5`, or take it out")
            else:
                found.append((seen[1], float(seen[2])))
        return tuple(sorted(found))

    def _unknown(self, loc: Loc, of_what: str) -> None:
        place = self.places.of(loc, key=True)
        mend = _BY_HAND.format("Take it out, or write it as a comment")
        self.snags.append(Snag("book 3", Weight.STOP, f"{loc[-1]!r} is not a word of {of_what}", mend, place))

    def _add(self, loc: Loc, message: str, mend: str) -> None:
        self.snags.append(self._snag("book 3", loc, message, _BY_HAND.format(mend)))

    def _snag(self, code: str, loc: Loc, message: str, mend: str = _MEND) -> Snag:
        return Snag(code, Weight.STOP, message, mend, self.places.of(loc))


def book_text(book: Book) -> str:
    """The whole file. The same book always gives the same text, and the text reads back as that book."""
    layout = Layout()
    lines = [*HEAD.splitlines(), f"book: {FORMAT}", *_evening_lines(book, layout)]
    steps = [{"step": words, "lane": lane, "took": _took_text(seen)} for (words, lane), seen in _in_order(book.steps)]
    ovens = [{"oven": oven, "way": way, "took": _took_text(seen)} for (oven, way), seen in _in_order(book.ovens)]
    for key, entries in (("steps", steps), ("ovens", ovens)):
        if entries:
            lines += [f"{key}:", *(f"  {line}" for each in entries for line in item(each, layout))]
    return "\n".join(lines) + "\n"


def _evening_lines(book: Book, layout: Layout) -> list[str]:
    if not book.evenings:
        return []
    told = sorted((date, mark, plan) for mark, (date, plan) in book.evenings.items())
    return entry("evenings", {mark: f"{date} {plan}" for date, mark, plan in told}, layout)


def _in_order(seen: Mapping[Any, tuple[Seen, ...]]) -> list[tuple[Any, tuple[Seen, ...]]]:
    return sorted(seen.items(), key=lambda each: (each[0][1], each[0][0]))


def _took_text(seen: Iterable[Seen]) -> str:
    return ", ".join(f"{mark} {minutes:.1f}".removesuffix(".0") for mark, minutes in seen)
