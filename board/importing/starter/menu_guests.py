"""A menu's guests: entries as a plan's `guests:` understands them, by its own reader. Pure."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, field

from board.importing.starter import words
from board.plan.phrases.guest_words import VERBS, is_of_health, said, stands_alone, suspicious
from board.plan.phrases.guests import parse_guest

LONGEST_PIECE = 120  # characters between commas
_HOST = re.compile(r"(?:and\s+)?(?:me|myself|i|host|the host|us|ourselves)", re.IGNORECASE)
_AND = re.compile(r"\s+(?:and|&|\+)\s+|(?:^|(?<=\s))(?:and|&|\+)\s+", re.IGNORECASE)
_KIN = re.compile(
    r"(?:baby|toddler|little|my|our|her|his|their|the|mum|mom|dad|gran\w*|son|daughter|wife|husband|partner|kids?|"
    r"children)\b",
    re.IGNORECASE,
)
_NOBODY = ("none", "no", "no allergies", "nothing", "all eat everything", "none known")
_NUMBERS = ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve")
_IN_WORDS = re.compile(rf"(?:{'|'.join(_NUMBERS)})(?=\s)", re.IGNORECASE)
_ALONE_COUNT = re.compile(r"(?P<n>\d+)\s+(?:of\s+(?:them|whom)\s+)?(?:is|are)\s+(?P<what>.+)", re.IGNORECASE)


_EVERY = re.compile(
    r"(?:(?:they|we) are )?(?:all|every(?:one|body))(?:\s+(?:of (?:them|us)|(?:is|are|eats?)\b))*,?\s+(.+)",
    re.IGNORECASE,
)
_SAYS_SO = re.compile(
    r"allerg|intoleran|co?eliac|anaphyla|epi[- ]?pen|\bsevere|"
    r"\b(?:can'?t|cannot|does\s?n[o']t|won'?t|must\s?n[o']t)\s+(?:have|eat)\b",
    re.IGNORECASE,
)
_OF_A_DISH = re.compile(r"\b(?:without|options?|version|plates?|menu|dish|alternative)\b", re.IGNORECASE)


# Words for all guests of a need, for whom a dish may be meant: `nut roast for the vegetarians`.
GROUPS = {"vegetarians": "vegetarian", "veggies": "vegetarian", "vegans": "vegan", "coeliacs": "coeliac"}
_FOR_THEM = re.compile(rf"(?<=\w)\s+for\s+(?:the\s+)?(?:{'|'.join(GROUPS)})\s*$", re.IGNORECASE)


def is_need(text: str) -> bool:
    """Whether what stands where a dish, or nothing known, is may be what a guest must not eat: that is never left out
    or cooked, but told."""
    text = _FOR_THEM.sub("", text)
    return bool(_SAYS_SO.search(text)) or any(map(_is_need, re.split(r"[,;:()]", text)))


def _is_need(piece: str) -> bool:
    if not piece.strip() or len(piece) > LONGEST_PIECE:
        return False
    alone = said(piece, strict=True)
    if alone is not None and (alone.avoids or alone.diets or alone.severe):
        return True
    try:
        read = parse_guest(piece)
    except ValueError:
        return False
    if re.match(r"\s*\d+[^\d\s]", piece):  # an amount
        return False
    return bool(read["avoids"] or read["diets"]) and not _OF_A_DISH.search(piece)


# A verb of several people: what is said after it is said of each name before it.
_PLURAL = re.compile(
    r"(?:all|both|each|have|are|eat|avoid|cannot|can't|can not|don't|do not|must|need|keep|drink|take|want|hate|"
    r"dislike)\b",
    re.IGNORECASE,
)
_SINGULAR = re.compile(
    r"(?:is|has|eats|avoids|doesn't|does not|needs|keeps|drinks|takes|wants|hates|who)\b", re.IGNORECASE
)
_OF_ONE = ("pregnant", "elderly", "infant", "toddler", "under five", "child", "immunocompromised")
_OF_A_NAME = re.compile(r"(?P<name>[^\W\d_][\w'.-]*(?:\s+[A-Z][\w'-]*)?)\s*[-:(\s]\s*(?P<need>[a-z(].*)")


@dataclass
class GuestList:
    """Entries in the menu's order, each of which `parse_guest` reads. `shared`: words without a verb that may be meant
    for the last of some names only, and those they are taken for."""

    entries: list[str] = field(default_factory=list)
    of_all: list[str] = field(default_factory=list)  # needs of every guest: `all vegetarian`
    shared: list[tuple[str, tuple[str, ...]]] = field(default_factory=list)
    _bare: list[int] = field(default_factory=list)  # the names since the last need
    _joined: list[int] = field(default_factory=list)  # those joined by `and` last

    def add(self, pieces: list[str]) -> None:
        """Takes pieces between commas: a guest each, or a need of the guest before. Raises ValueError."""
        self._bare, self._joined = [], []
        for whole in pieces:
            self._whole(whole)

    def _whole(self, whole: str) -> None:
        """A piece between commas: names joined by `and`, the last of them with what is said of it or of all."""
        parts = list(_parted(whole))
        joined = list(self._bare) if _AND.match(whole) else []
        named: list[int] = []
        for piece in parts:
            if len(piece) > LONGEST_PIECE:
                raise ValueError(words.menu_guest_too_long(LONGEST_PIECE))
            if not re.search(r"\w", piece) or _HOST.fullmatch(piece) or piece.casefold() in _NOBODY:
                continue
            if (every := _EVERY.fullmatch(piece)) and stands_alone(every[1]):
                self.of_all.append(every[1])
            elif stands_alone(piece) or (self.entries and _is_slip(piece)) or _is_unread(piece):
                if not self.entries:
                    raise ValueError(words.menu_whose(piece))
                self._need(piece)
                named = []
            elif (n := self._one(piece)) is not None:
                named.append(n)
                self._joined = [*joined, *named]
                if self._is_bare(n):
                    continue
                before = [*(self._bare if len(named) > 1 or joined else []), *named[:-1]]
                self._share(list(dict.fromkeys(before)), n, piece)
                named, joined, self._bare = [], [], []
        self._bare += named

    def _is_bare(self, n: int) -> bool:
        read = parse_guest(self.entries[n])
        return not (read["avoids"] or read["diets"] or read.get("unread")) and "count" not in read

    def _need(self, piece: str) -> None:
        """What stands between commas is of the guest before, or of those whose names `and` joins there."""
        last = len(self.entries) - 1
        known = said(piece)
        self._grow(last, piece if known is not None or not _is_unread(piece) else f"ask about {piece}")
        others = [n for n in self._joined if n != last and self._is_bare(n)]
        if others:
            self._share(others, last, f"x {piece}")
        self._bare = []

    def _share(self, others: list[int], n: int, piece: str) -> None:
        """Gives what is said of one to the names joined to it: for certain after a verb of several, else as probable,
        which is told."""
        read = parse_guest(self.entries[n])
        tail = piece[len(str(read["name"])) :].strip() if piece.startswith(str(read["name"])) else piece[1:].strip()
        if not others or "count" in read or _SINGULAR.match(tail):
            return
        sure = _PLURAL.match(tail) is not None
        if not sure and set(_diets(read)) & set(_OF_ONE):
            return
        for other in others:
            self._grow(other, ", ".join(_again(read, sure=sure)))
        if not sure:
            names = (str(parse_guest(self.entries[each])["name"]) for each in (*others, n))
            self.shared.append((tail.strip("()[] ,:-"), tuple(names)))

    def takes_up(self, text: str, *, by_name: bool = False) -> bool:
        """Whether a text outside a list says what some guest must not eat; it is then in. `by_name`: pieces between
        commas, in which all are named."""
        pieces = re.split(r"\s*[,;]\s*", text.strip(" .")) if by_name else [text]
        if not all(_says_whose(piece, by_name=by_name) for piece in pieces):
            return False
        self.add(pieces)
        return True

    def unread(self) -> list[tuple[str, str]]:
        """The names of those of whom something was said that is not understood, and what."""
        read = map(parse_guest, self.entries)
        return [(str(one["name"]), str(said)) for one in read for said in _listed(one.get("unread"))]

    def count(self) -> int:
        """How many the entries are."""
        return sum(_count_of(entry) for entry in self.entries)

    def names(self) -> set[str]:
        """The entries' names, in small letters."""
        return {str(parse_guest(entry)["name"]).casefold() for entry in self.entries}

    def _one(self, piece: str) -> int | None:
        """The number of its entry."""
        piece = _with_unread(piece)
        read = parse_guest(piece)
        name = str(read["name"]).casefold()
        if "count" not in read:
            for n, entry in enumerate(self.entries):
                known = parse_guest(entry)
                if "count" not in known and str(known["name"]).casefold() == name:
                    if not (read["avoids"] or read["diets"] or read.get("unread")):
                        raise ValueError(words.menu_guest_twice(str(read["name"])))
                    needs = piece[len(str(read["name"])) :].strip(" ,:;-–—()")
                    self._grow(n, ", ".join(_again(read, sure=True)) if read.get("unread") else needs)
                    return n
        self.entries.append(piece)
        return len(self.entries) - 1

    def _grow(self, n: int, need: str) -> None:
        longer = f"{self.entries[n]}, {need}"
        parse_guest(longer)
        self.entries[n] = longer


def _says_whose(piece: str, *, by_name: bool) -> bool:
    """Whether a piece says what somebody, or the last of several joined by `and`, must not eat."""
    try:
        if len(piece) > LONGEST_PIECE or stands_alone(piece) or (by_name and ":" in piece):
            return False
        each = [parse_guest(part) for part in _parted(piece)]
    except ValueError:
        return False
    needs = [bool(one["avoids"] or one["diets"] or _is_told_unread(one)) for one in each]
    names = [_BARE_NAME.fullmatch(str(one["name"])) is not None for one in each]
    known = all(name or (need and not by_name) for name, need in zip(names, needs, strict=True))
    return bool(each) and needs[-1] and known


_BARE_NAME = re.compile(r"[A-Z][\w'-]*(?:\s+[A-Z][\w'-]*)?")


def _is_told_unread(read: dict[str, object]) -> bool:
    """Whether what is not understood is of somebody's health, after a verb: `Hugo is diabetic`."""
    unread = [str(each) for each in _listed(read.get("unread"))]
    said_of = any(is_of_health(each) and each.split()[0].casefold() in VERBS for each in unread)
    return said_of and _BARE_NAME.fullmatch(str(read["name"])) is not None


def _is_unread(piece: str) -> bool:
    """Whether it is no name but a need that is not understood: `soft food only`, `diabetic`."""
    return piece[:1].islower() and not _KIN.match(piece) and is_of_health(piece)


def _with_unread(piece: str) -> str:
    """The piece, with what the reader of guests refuses, though no other word is meant, kept word for word."""
    try:
        parse_guest(piece)
    except ValueError:
        found = _OF_A_NAME.fullmatch(piece)
        if found and is_of_health(found["need"]) and not _SAYS_SO.search(found["need"]):
            return f"{found['name']}, ask about {found['need'].strip('()[] ')}"
    return piece


def _listed(value: object) -> list[str]:
    return [str(each) for each in value] if isinstance(value, list | tuple) else []


def _diets(read: dict[str, object]) -> list[str]:
    return _listed(read["diets"])


def _again(read: dict[str, object], *, sure: bool) -> Iterator[str]:
    """What was read, so that it can be read again; as probable, unless it is sure."""
    severe, lead = _listed(read.get("severe")), "" if sure else "probably "
    for food in _listed(read["avoids"]):
        yield f"{lead}severe allergy to {food}" if food in severe else f"{lead}no {food}"
    for diet in _listed(read["diets"]):
        yield f"{lead}severe {diet}" if diet in severe else f"{lead}{diet}"
    for unread in _listed(read.get("unread")):
        yield f"ask about {unread}"


def _is_slip(piece: str) -> bool:
    """Whether it is no name but a need that is misspelt: the reader then says so."""
    return piece[:1].islower() and not _KIN.match(piece) and suspicious(piece.split()) is not None


def _count_of(entry: str) -> int:
    count = parse_guest(entry).get("count", 1)
    assert isinstance(count, int)
    return count


def _parted(piece: str) -> Iterator[str]:
    """`Ada and Ben` are two; `no nuts and eggs` is one; a number in words becomes figures."""
    start = 0
    for gap in _AND.finditer(piece):
        tail = piece[gap.end() :]
        another = tail[:1].isdigit() or _IN_WORDS.match(tail) or _HOST.fullmatch(tail) or _KIN.match(tail)
        named = tail[:1].isupper() and not stands_alone(tail) and suspicious(tail.split()[:1]) is None
        if gap.start() == 0:
            start = gap.end()
        elif another or named:
            yield _figures(piece[start : gap.start()])
            start = gap.end()
    yield _figures(piece[start:])


def _figures(piece: str) -> str:
    plain = _IN_WORDS.sub(lambda word: str(_NUMBERS.index(word[0].casefold()) + 1), piece.strip(" ."), count=1)
    if found := _ALONE_COUNT.fullmatch(plain):
        return f"{found['n']} other{'s' if found['n'] != '1' else ''}, {found['what']}"
    return plain
