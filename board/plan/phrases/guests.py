"""Guests by name or number, with what they must not or do not eat: `Ines, no tree nuts`; `6 others`; `Kit (GF)`."""

import difflib
import re
from collections.abc import Callable
from typing import Annotated, Any

from pydantic import BaseModel, ConfigDict, Field, model_validator
from pydantic.json_schema import SkipJsonSchema

from board.base.near import nearest
from board.facts.named import known_words, named
from board.plan.phrases.guest_words import (
    DIETS,
    VERBS,
    Diet,
    HowRead,
    Said,
    is_of_health,
    is_unread_need,
    said,
    stands_alone,
    suspicious,
)
from board.plan.phrases.phrase import Phrase, near


class Guest(BaseModel):
    """One guest, or several alike: a name, then what they must not or do not eat: `Ines, severe nut allergy`,
    `Kit (GF)`, `Leo, 3 years old`, `Greta, over 70`, `Femke, pregnant`.

    `severe`: those of their words that can mean anaphylaxis. `read`: how what stands beside the name was read, where
    not to the letter; `check` tells it. `unread`: what was said of them and is not understood, word for word; `check`
    asks what it means (`Gran soft food only`, `Gran, ask about soft food`)."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    name: str = Field(min_length=1)
    count: int = Field(default=1, ge=1, le=200)
    avoids: tuple[str, ...] = ()
    diets: tuple[Diet, ...] = ()
    severe: tuple[str, ...] = ()
    read: SkipJsonSchema[tuple[HowRead, ...]] = ()
    unread: SkipJsonSchema[tuple[str, ...]] = ()

    @property
    def must_not(self) -> tuple[str, ...]:
        """What they must not or do not eat, as it is shown: what can be anaphylaxis first."""
        said = (*(("no", food) for food in self.avoids), *(("", diet) for diet in self.diets))
        first = sorted(said, key=lambda each: each[1] not in self.severe)
        told = [shown(how, what, severe=what in self.severe) for how, what in first]
        return (*told, *map(as_said, self.unread))

    @model_validator(mode="before")
    @classmethod
    def _named_first(cls, value: Any) -> Any:
        """`Sam: shellfish` is a mapping to YAML, and one line to whoever wrote it."""
        if not isinstance(value, dict) or len(value) != 1:
            return value
        ((name, what),) = value.items()
        words = what if isinstance(what, list) else [what]
        is_key = bool(difflib.get_close_matches(str(name), cls.model_fields, n=1, cutoff=0.85))
        if is_key or not all(isinstance(each, str) for each in words):
            return value
        return parse_guest(", ".join([str(name), *words]))

    @model_validator(mode="after")
    def _severe_is_said(self) -> "Guest":
        for word in self.severe:
            if word not in (*self.avoids, *self.diets):
                raise ValueError(f"severe: {word!r} is not among what {self.name} avoids; write it there too")
        return self


def shown(how: str, what: str, *, severe: bool = False) -> str:
    """`no nuts`, `severe allergy to nuts`, `vegan`, `coeliac (severe)`."""
    if severe:
        return f"severe allergy to {what}" if how else f"{what} (severe)"
    return f"{how} {what}".strip()


def as_said(unread: str) -> str:
    """`"soft food only"`: a need that is not understood, as it is shown."""
    return f'"{unread}"'


_QUOTED = re.compile(
    r"[\"\N{LEFT DOUBLE QUOTATION MARK}]([^\"\N{RIGHT DOUBLE QUOTATION MARK}]+)[\"\N{RIGHT DOUBLE QUOTATION MARK}]"
)
_BRACKETS = re.compile(r"\s*[(\[]([^()\[\]]*)[)\]]\s*")
_SOFT = "\ue000"  # stands for the brackets around what was read
_APART = re.compile(r"\s+[-–—]+\s*|[–—]\s*|\s*[:/]\s*|\s*-\s+")
_HOLD = "\N{LEFT DOUBLE PARENTHESIS}"  # stands for a word in quotation marks, which is a name
_TITLES = frozenset((
    "mr", "mrs", "ms", "miss", "mx", "dr", "prof", "sir", "dame", "lady", "lord", "aunt", "auntie", "aunty", "uncle",
    "cousin", "granny", "gran", "grandma", "grandpa", "grandad", "nana", "nan", "nanny", "opa", "oma", "mum", "mom",
    "mama", "dad", "papa", "little", "big", "young", "old", "sister", "brother", "saint", "st", "father", "madame",
    "monsieur", "the",
))  # fmt: skip
_SMALL = re.compile(
    r"(?:[a-z]\.?|jr|sr|ii|iii|iv|van|von|de|der|den|du|da|di|del|la|le|el|al|bin|bint|ibn|ap|and|the|&|/)",
    re.IGNORECASE,
)
_COUNTED = re.compile(r"(\d+)(?:\s*[x×]\s+|\s+|$)(.*)", re.IGNORECASE | re.DOTALL)
_SOME = re.compile(r"(?:one|two|three|some|\d+)\s+(?:of (?:them|whom)\s+)?(?:is\s+|are\s+)?", re.IGNORECASE)
_NUMBERS = re.compile(
    r"(?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|(?:a )?dozen|(?:a )?couple(?: of)?)\b",
    re.IGNORECASE,
)


def parse_guest(text: str) -> dict[str, object]:
    """A name or number, then diets, ages and what to avoid, after commas or as people write them. What might be a name
    or a food is asked about; words in quotation marks are a name. Raises ValueError."""
    quoted: list[str] = []

    def hold(match: re.Match[str]) -> str:
        quoted.append(match[1])
        return f"{_HOLD * len(quoted)} "

    def as_written(held: str) -> str:
        for n in range(len(quoted), 0, -1):
            held = re.sub(rf"{_HOLD * n} ?", f"{quoted[n - 1]} ", held)
        return " ".join(held.split())

    try:
        name, found = _taken_apart(_QUOTED.sub(hold, text), as_written)
        return {**_counted(as_written(name)), **_needs(found, name)}
    except ValueError as refused:
        raise ValueError(as_written(str(refused)) if quoted else str(refused)) from None


def _taken_apart(text: str, as_written: Callable[[str], str]) -> tuple[str, list[Said]]:
    """The name, with its held words, and all that is said of it."""
    text = _BRACKETS.sub(_bracketed, text)
    first, *rest = re.split(rf"[,;{_SOFT}]", text)
    name, found = _name_and_needs(" ".join(first.split()))
    for piece in rest:
        if piece.strip() or _SOFT not in text:
            found += _all_of(as_written(piece)) or _refused(as_written(piece), name)
    return name, found


def _bracketed(match: re.Match[str]) -> str:
    """Brackets of which something is read, marked; what else stands between their commas is to be asked about."""
    pieces = [piece.strip() for piece in match[1].split(",") if piece.strip()]
    if pieces and _all_of(match[1]):
        return f"{_SOFT}{match[1]}{_SOFT}"
    known = [bool(_all_of(piece)) for piece in pieces]
    if len(pieces) < 2 or not all(fits or is_unread_need(piece) for fits, piece in zip(known, pieces, strict=True)):
        return match[0]
    told = (piece if fits else f"ask about {piece}" for fits, piece in zip(known, pieces, strict=True))
    return f"{_SOFT}{', '.join(told)}{_SOFT}"


def _name_and_needs(first: str) -> tuple[str, list[Said]]:
    """What stands before the first comma, taken apart. Raises ValueError where it cannot be told."""
    counted = _COUNTED.fullmatch(first)
    count, words = (counted[1], counted[2]) if counted else ("", first)
    if count and (whose := _whose(words)):
        return f"{count} {whose[0]}", whose[1]
    if not count and _NUMBERS.match(words):
        raise ValueError(f"{words!r} begins with a number in words; write it in figures: 2 guests, vegan")
    if not count and stands_alone(words):
        raise ValueError(f'{words!r} stands where a name is looked for; keep a guest together: "Ines, {words}"')
    if not count and (whose := _whose(words)) and whose[0] != words and words.split()[0].casefold() != "baby":
        return whose
    name = words
    found: list[Said] = []
    for gap in _APART.finditer(words):
        if gap.start() and (there := _all_of(words[gap.end() :])):
            name, found = words[: gap.start()], there
            break
    pieces = name.split()
    if not found:
        for n in range(1, len(pieces)):
            tail = said(" ".join(pieces[n:]), strict=True)
            if tail is not None and not _only_severe(tail):
                pieces, found = pieces[:n], [tail]
                break
    if not found and (n := _where_unread(pieces, counted=bool(count))):
        pieces, found = pieces[:n], [Said(unread=(_bare(pieces[n:]),))]
    verb = next((n for n, piece in enumerate(pieces) if n and piece in VERBS), 0) if found and not count else 0
    if verb and (more := [piece for piece in pieces[verb + 1 :] if piece not in _HARDLY]):
        found = [*found, Said(unread=(" ".join([pieces[verb], *more]),))]
    pieces = pieces[: verb or None]
    while len(pieces) > 1 and (pieces[-1] in ("+", "&", "-", ":", "and", "a", "an") or pieces[-1] in VERBS):
        pieces.pop()
    _ask_about(pieces, counted=bool(count))
    name = " ".join(pieces).rstrip(" :")
    if pieces and pieces[0].casefold() == "baby" and not found:
        found = [Said(diets=("infant",), read=(HowRead("read-as", "baby", "infant"),))]
    if not count and (beyond := _beyond_a_name(pieces)):
        found = [*found, Said(read=(HowRead("part-of-name", beyond),))]
    return f"{count} {name}".strip(), found


_HARDLY = frozenset(("a", "an", "the", "and", "nearly", "mostly", "almost", "very", "now", "also", "all", *VERBS))


def _where_unread(pieces: list[str], *, counted: bool) -> int:
    """Where in some words, after a name, something begins that is no name and may be a need; 0 if nowhere, and where a
    word in it is one that the host is asked about."""
    for n, piece in enumerate(pieces[1:], start=1):
        tail = " ".join(pieces[n:])
        capitals = len(piece) > 1 and piece.isupper() and is_of_health(piece)  # IBS
        is_name = (piece[:1].isupper() and not capitals) or _SMALL.fullmatch(piece) or _HOLD in piece
        plain = pieces[0].islower() or counted  # names in small letters
        if is_name or piece in ("-", ":") or (plain and piece not in VERBS and not is_of_health(tail)):
            continue
        if not is_unread_need(tail):
            return 0
        marked = suspicious(pieces[n:])
        return n if marked is None or marked.casefold() in VERBS or is_of_health(marked) else 0
    return 0


def _bare(pieces: list[str]) -> str:
    """The words; without the brackets, where one pair stands around all of them."""
    text = " ".join(pieces)
    whole = re.fullmatch(r"[(\[]([^()\[\]]*)[)\]]", text)
    return (whole[1] if whole else text).strip(" -:")


def _beyond_a_name(pieces: list[str]) -> str:
    """What of a name is no usual part of one: `from work`, `(next door)`, `XQ`, `V.`; empty if nothing is."""
    for n, piece in enumerate(pieces[1:], start=1):
        usual = piece[:1].isupper() and (piece[1:].lower() == piece[1:] or not piece.isupper())
        if piece == "V." or not (usual or _SMALL.fullmatch(piece) or _HOLD in piece or pieces[0].islower()):
            return " ".join(pieces[n:])
    return ""


def _whose(words: str) -> tuple[str, list[Said]] | None:
    """`2 vegans`, `2 vegetarian friends`, `3 under fives`."""
    pieces = words.split()
    for n in range(len(pieces), 0, -1):
        there = said(" ".join(pieces[:n]), strict=True)
        if there is not None and not _only_severe(there) and _is_whole(pieces[n:]):
            plain = words.casefold() in ("children", "child", "kids", "teenagers")
            return (" ".join(pieces[n:]) or words, [] if plain else [there])
    return None


def _is_whole(pieces: list[str]) -> bool:
    return suspicious(pieces) is None


def _ask_about(pieces: list[str], *, counted: bool) -> None:
    """Raises ValueError where a word of a name may be something that somebody must not have."""
    start = 0 if counted else 1
    while 0 < start < len(pieces) and pieces[start - 1].strip(".").casefold() in _TITLES:
        if named(pieces[start]) is not None or not pieces[start][:1].isupper():
            break
        start += 1
    word = suspicious(pieces[start:])
    if word is None:
        letter = next((each for each in pieces[start:] if each in ("V", "v")), None)
        if letter is None:
            return
        word = letter
    plain = word.strip("()[],:;")
    place = next((n for n, each in enumerate(pieces) if n >= start and plain.split()[0] in each), 1)
    head, meant = " ".join(pieces[:place]) or "guests", said(plain)
    if plain.isdecimal():
        raise ValueError(f"{plain!r} may be an age; write {head}, {plain} years old")
    if meant is not None and _only_severe(meant):
        raise ValueError(f"{' '.join(pieces)!r} does not say against what; write {pieces[0]}, severe nut allergy")
    write = meant.words.casefold() if meant is not None and meant.words else "no onions (its foods by name)"
    raise ValueError(
        f"{' '.join(pieces)!r} would all be a name, and {plain!r} in it be minded by nobody; put a comma after the "
        f'name: {head}, {write}. Where it is a name, write {head} "{plain}"'
    )


def _all_of(words: str) -> list[Said]:
    """Everything said in some words, one after another; empty if any of it says nothing known."""
    whole = said(words)
    if whole is not None:
        return [whole]
    pieces = [
        piece for piece in re.split(r"[,;]|\s+[-–—]+\s+|\s*:\s+", _BRACKETS.sub(r", \1, ", words)) if piece.strip()
    ]
    found = [said(piece) for piece in pieces]
    return [each for each in found if each is not None] if len(pieces) > 1 and None not in found else []


def _refused(piece: str, name: str) -> list[Said]:
    words = piece.strip()
    if words.isdecimal():
        raise ValueError(f"{words!r} may be an age; write {name}, {words} years old")
    if re.match(r"(?:and|&|\+)\s+\S", words, re.IGNORECASE):
        raise ValueError(
            f"{words!r} begins with another guest; give each a line of their own: {words.split(None, 1)[1]}"
        )
    if some := _SOME.match(words):
        raise ValueError(
            f"{words!r} says something of only some; give them a line of their own: 1 other, {words[some.end() :]}"
        )
    slip = nearest(words, known_words(), alike=0.85)
    guess = f" Did you mean 'no {slip[0]}'?" if slip else near(words, DIETS)
    raise ValueError(
        f"{words!r} is not a diet the program knows.{guess}; "
        f"write for example no walnuts, severe nut allergy, ask about {words}, or one of {', '.join(DIETS)}"
    )


def _only_severe(each: Said) -> bool:
    return each.severe and not each.avoids and not each.diets


def _counted(name: str) -> dict[str, object]:
    counted = _COUNTED.fullmatch(name)
    return {"name": counted[2].strip() or "guests", "count": int(counted[1])} if counted else {"name": name}


def _needs(found: list[Said], name: str) -> dict[str, object]:
    """All that was said; a bare `severe` or `EpiPen` counts for all before it, or for all if it comes first."""
    avoids: list[str] = []
    diets: list[str] = []
    severe: dict[str, None] = {}
    for n, each in enumerate(found):
        if _only_severe(each):
            about = found[:n] if any(one.words for one in found[:n]) else found
            words = [word for one in about for word in (*one.avoids, *(d for d in one.diets if d == "coeliac"))]
            if not words:
                raise ValueError(f"severe, and nothing says against what; write {name}, severe nut allergy")
            severe |= dict.fromkeys(words)
        avoids += [food for food in each.avoids if food not in avoids]
        diets += [diet for diet in each.diets if diet not in diets]
        if each.severe:
            severe |= dict.fromkeys((*each.avoids, *(d for d in each.diets if d == "coeliac")))
    read = tuple(dict.fromkeys(one for each in found for one in each.read))
    unread = tuple(dict.fromkeys(words for each in found for words in each.unread))
    kept = {"avoids": avoids, "diets": diets, "severe": list(severe), "read": read, "unread": unread}
    return {key: value for key, value in kept.items() if value or key in ("avoids", "diets")}


MOST_GUESTS = 200
_IN_WORDS = re.compile(
    r"(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|a dozen|many|some|few|several)"
    r"(?:\s+(?:guests?|people|others?))?",
    re.IGNORECASE,
)


def guests_of(value: object) -> object:
    """`guests: 7` is a count; one line of text is one entry; names with what they avoid, as a mapping, are a list;
    anything else is returned unchanged. Raises ValueError."""
    if isinstance(value, bool) or not isinstance(value, int | float | str):
        return value
    text = str(value).strip()
    if text.isascii() and text.isdecimal() and 1 <= int(text[:9]) <= MOST_GUESTS:
        return [f"{text} guests"]
    if not isinstance(value, str) or not text or (text[0] in "-+.0123456789" and " " not in text):
        raise ValueError(f"{text!r} is no number of guests; write a whole number from 1 to {MOST_GUESTS}, or a list")
    if _IN_WORDS.fullmatch(text):
        raise ValueError(f"{text!r} is no name of a guest; write the number in figures: 8 guests")
    return [text]


GuestLine = Annotated[Guest, Phrase(parse_guest, "Ines, no tree nuts")]
