"""A menu's guests: entries as a plan's `guests:` understands them, by its own reader. Pure."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, field

from board.importing.starter import words
from board.plan.phrases.guest_words import said, stands_alone, suspicious
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


def is_need(text: str) -> bool:
    """Whether what stands where a dish, or nothing known, is may be what a guest must not eat: that is never left out
    or cooked, but told."""
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


@dataclass
class GuestList:
    """Entries in the menu's order, each of which `parse_guest` reads."""

    entries: list[str] = field(default_factory=list)
    of_all: list[str] = field(default_factory=list)  # needs of every guest: `all vegetarian`

    def add(self, pieces: list[str]) -> None:
        """Takes pieces between commas: a guest each, or a need of the guest before. Raises ValueError."""
        for piece in (each for whole in pieces for each in _parted(whole)):
            if len(piece) > LONGEST_PIECE:
                raise ValueError(words.menu_guest_too_long(LONGEST_PIECE))
            if not re.search(r"\w", piece) or _HOST.fullmatch(piece) or piece.casefold() in _NOBODY:
                continue
            if (every := _EVERY.fullmatch(piece)) and stands_alone(every[1]):
                self.of_all.append(every[1])
            elif stands_alone(piece) or (self.entries and _is_slip(piece)):
                if not self.entries:
                    raise ValueError(words.menu_whose(piece))
                self._grow(len(self.entries) - 1, piece)
            else:
                self._one(piece)

    def takes_up(self, piece: str) -> bool:
        """Whether a piece outside a list says what some guest must not eat; it is then in."""
        try:
            if len(piece) > LONGEST_PIECE or stands_alone(piece):
                return False
            each = [parse_guest(part) for part in _parted(piece)]
        except ValueError:
            return False
        if not each or not all(one["avoids"] or one["diets"] for one in each):
            return False
        self.add([piece])
        return True

    def count(self) -> int:
        """How many the entries are."""
        return sum(_count_of(entry) for entry in self.entries)

    def names(self) -> set[str]:
        """The entries' names, in small letters."""
        return {str(parse_guest(entry)["name"]).casefold() for entry in self.entries}

    def _one(self, piece: str) -> None:
        read = parse_guest(piece)
        name = str(read["name"]).casefold()
        if "count" not in read:
            for n, entry in enumerate(self.entries):
                known = parse_guest(entry)
                if "count" not in known and str(known["name"]).casefold() == name:
                    if not (read["avoids"] or read["diets"]):
                        raise ValueError(words.menu_guest_twice(str(read["name"])))
                    needs = piece[len(str(read["name"])) :].strip(" ,:;-–—()")
                    self._grow(n, needs)
                    return
        self.entries.append(piece)

    def _grow(self, n: int, need: str) -> None:
        longer = f"{self.entries[n]}, {need}"
        parse_guest(longer)
        self.entries[n] = longer


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
