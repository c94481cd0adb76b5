"""A dish's words → the patterns that fit, the most telling first. Pure.

English puts the thing itself last, and what goes with it after `with`, `in` and the like: a `roast tomato soup with
toast` is a soup, then something roast, then toast.
"""

import functools
import re
from collections.abc import Iterator
from dataclasses import dataclass

from board.facts.food import facts
from board.facts.mentions import FORMS, mentioned
from board.facts.phrases import COOKED, LINKS, NEUTRAL, PARTS, holds, stem, stems, words_of
from board.facts.sections import section_of
from board.importing.ways.families import (
    bought,
    by_name,
    doughs,
    fish,
    meat,
    other_dishes,
    starters,
    stores,
    sweets,
    vegetables,
)
from board.importing.ways.main_food import NamedFood, foods_in
from board.importing.ways.pattern import Pattern

COURSES = ("nibbles", "starter", "main", "side", "cheese", "sweet", "drink")  # in the order of a meal
PATTERNS: tuple[Pattern, ...] = (
    *by_name.FAMILY, *starters.FAMILY, *meat.FAMILY, *fish.FAMILY, *vegetables.FAMILY, *doughs.FAMILY, *sweets.FAMILY,
    *stores.FAMILY, *bought.FAMILY,
)  # fmt: skip

_INTO_IT = (vegetables.STIRRED_DUMPLINGS, vegetables.YORKSHIRES)
_WARM_SAUCES = (stores.HOLLANDAISE, stores.BUTTER_SAUCE, stores.WHITE_SAUCE)

_THING, _DONE, _INSIDE, _ALONE = range(4)  # how telling: the thing itself, what was done, a word within, a bare food
_ASIDE = re.compile(r"\s*[,;:(\[/]\s*|\s+(?:with|in|on|under|over|from|served|topped|alla?|aux?)\s+", re.IGNORECASE)

BETWEEN = re.compile(r"\s*[,;]\s*|\s+[&+]\s+|\s*\band\b\s*", re.IGNORECASE)  # two things beside each other
_BOUGHT = re.compile(
    r"[(\[]?\s*\b(?:(?:(?:shop|store|ready|deli|bakery)[- ]?(?:bought|made)|bought(?:[- ]in)?)\b(?!\s+from)|"
    r"(?:all\s+|bought\s+)*from\s+(?:the|a|an|our|my)\s+(?:[\w’']+\s+)?(?:shop|bakery|baker|p[aâ]tisserie|deli|delicatessen|"
    r"supermarket|store|confectioner|chocolatier|takeaway)(?:['’]?s)?\b)\s*[)\]]?",
    re.IGNORECASE,
)
_BOILED = frozenset(stems("gnocchi ravioli tortellini tortelloni cappelletti pasta tagliatelle pierogi dumplings"))
_LEADS = re.compile(r"^(?:(?:an?|the|some|its|our|with|served|topped)\s+)+", re.IGNORECASE)


@dataclass(frozen=True)
class _Phrase:
    """Words by which a pattern is found, and how telling they are."""

    pattern: Pattern
    stems: tuple[str, ...]
    kind: int


@functools.cache
def _phrases() -> tuple[_Phrase, ...]:
    return tuple(
        _Phrase(pattern, stems(text), kind)
        for pattern in PATTERNS
        for kind, texts in ((_THING, pattern.words), (_DONE, pattern.done), (_ALONE, pattern.alone))
        for text in texts
    )


def as_bought(dish: str) -> str | None:
    """What is bought, where its name says that it is: `lemon tart` of `lemon tart (from the bakery)`. None where it
    does not, or where a shop sells it raw, or only what stands beside it is bought."""
    said = _BOUGHT.search(dish)
    name = " ".join(_BOUGHT.sub(" ", dish).split()).strip(" ,;:-")
    if said is None or not name or (re.search(r"\bwith\b", dish[: said.start()]) and "all" not in said[0].split()):
        return None
    known = facts(the_thing(name))
    ready = known is None or known.made or (known.raw_class is None and section_of(name) != "veg")
    ordinary = next((pattern for _, _, pattern in _ranked(name)), None)
    is_set_out = ordinary is not None and (ordinary.bought or ordinary.course == "cheese")
    return None if is_set_out or not ready else name


def only_bought(piece: str) -> bool:
    """Whether the words say that something is bought, and nothing else: `from the bakery`."""
    return _BOUGHT.fullmatch(piece.strip()) is not None


def _served_as(name: str) -> tuple[Pattern, ...]:
    """How a bought dish is served, the most fitting first."""
    section, last = section_of(name), stems(name)[-1:]
    if section == "freezer" or last in (("gelato",), ("kulfi",)):
        return (bought.ICE,)
    if section == "bakery" and any(
        pattern in (doughs.YEAST_BREAD, doughs.FLATBREAD) for _, _, pattern in _ranked(name)
    ):
        return (bought.BREAD, bought.PLATED)
    return (bought.BOILED,) if last and last[0] in _BOILED else (bought.PLATED,)


def found(dish: str) -> tuple[Pattern, ...]:
    """The patterns that fit; none where nothing in the words tells."""
    name = as_bought(dish)
    if name is not None:
        return _served_as(name)
    return tuple(dict.fromkeys(pattern for _, _, pattern in _ranked(dish)))


def is_cooked_for(dish: str) -> bool:
    """Whether the words name a side or a sweet of its own that a host cooks rather than buys or keeps."""
    ranked = _ranked(dish)
    if not ranked or ranked[0][0][:2] != (0, _THING):
        return False
    pattern = ranked[0][2]
    if pattern in _WARM_SAUCES:
        return True
    return (
        pattern.course in ("side", "sweet")
        and not goes_into_it(dish)
        and pattern not in (*doughs.FAMILY, *stores.FAMILY)
    )


def side_by_side(name: str) -> tuple[str, ...]:
    """The dishes of a name that are cooked each by itself, the main one first: `steak`, `chips` of `steak and chips`; a
    fish beside chips is battered, what is bought or kept goes with the main one. One where its words belong together:
    `ham and pea soup`, `mac and cheese`."""
    name = _FRITES.sub(r"\1 and chips", name)
    gaps = [gap for gap in BETWEEN.finditer(name) if not _is_within(gap, name)]
    bounds = [0, *(place for gap in gaps for place in gap.span()), len(name)]
    pieces = [name[start:end].strip() for start, end in zip(bounds[::2], bounds[1::2], strict=True)]
    if not gaps or not all(pieces):
        return (name,)
    for n, gap in enumerate(gaps, start=1):
        head = name[: gap.start()].strip()
        if (own := _cooked_beside(pieces[n], head)) is not None:
            later = [_cooked_beside(piece, head) or piece for piece in pieces[n + 1 :]]
            with_it = [piece for piece in later if _cooked_beside(piece, head) is None]
            head = _battered(head) if is_chips(own) else head
            main = f"{head} with {' and '.join(with_it)}" if with_it else head
            return (main, own, *(piece for piece in later if piece not in with_it))
        if n == len(gaps) and _is_kept_beside(pieces[n], head):
            return (f"{head} with {pieces[n]}",)
    return (name,)


# One name of two dishes, each with a way of its own.
_TWO = frozenset(stems(words) for words in ("fish and chips", "steak and chips", "bangers and mash"))
_FRITES = re.compile(r"^(steaks?|moules|mussels|entrec[oô]te|onglet|bavette) frites\b", re.IGNORECASE)
_SAUCES = frozenset(stems("sauce gravy custard salsa mash dressing slaw"))


def _is_within(gap: re.Match[str], name: str) -> bool:
    """Whether a dish's own name goes across it: `cheese and crackers`, `bread and butter pudding`."""
    words, at = stems(name), len(stems(name[: gap.start()]))
    names = {each.stems for each in _phrases() if "and" in each.stems} - _TWO
    return any(start < at < end for one in names for start, end in _runs(words, one))


def _top(piece: str) -> tuple[int, str]:
    """How its way is found, and in which course that stands; (-1, "") where there is none."""
    return next(((rank[1], pattern.course) for rank, _, pattern in _ranked(piece) if not rank[0]), (-1, ""))


def _cooked_beside(piece: str, head: str) -> str | None:
    """The piece as a dish of its own, if it is cooked by itself beside what stands before it, and is no part of one
    thing with that: `chicken and mango salad`. `roast chicken and potatoes`: those are roast, too."""
    kind, course = _top(head)
    main, foods = main_food(head), len(named_foods(piece))
    bare = main is not None and main.kind == "other" and not main.made
    if is_chips(piece):
        return piece
    if is_cooked_for(piece):
        shaped = len(stems(piece)) > 1 and stems(piece)[-1] in FORMS and stems(piece)[-1] not in _SAUCES
        together = kind != _THING and (bare or foods > 1 or (foods and shaped))
        return None if together and not (kind >= 0 and not foods) else piece
    roast = stems(head)[:1] in (("roast",), ("roasted",))
    if course == "main" and (kind == _THING or roast) and not bare and _top(piece) == (_ALONE, "side"):
        return f"roast {piece}" if roast and found(f"roast {piece}")[:1] != found(piece)[:1] else piece
    return None


def _is_kept_beside(piece: str, head: str) -> bool:
    """Whether it is a sauce, a bread, a jam or dumplings that go with a dish: they never make it another."""
    main = main_food(head)
    kind, _ = _top(head)
    a_dish = kind == _THING or (kind >= 0 and main is not None and main.kind != "other")
    return a_dish and _top(piece)[0] == _THING and found(piece)[0] in (*doughs.FAMILY, *stores.FAMILY, *_INTO_IT)


def _battered(head: str) -> str:
    """A fish of which no way is said: beside chips it is battered; a shellfish in its shell is not."""
    main, words, ways = main_food(head), stems(head), found(head)[:1]
    is_fish = words == ("fish",) or (main is not None and main.kind == "fish" and ways in ((), (fish.SEARED_FISH,)))
    return f"battered {head}" if is_fish and not _said_done() & set(words) else head


def is_chips(piece: str) -> bool:
    """Whether it is potatoes, fried: a host means them hot."""
    return found(piece)[:1] == (by_name.CHIPS,)


def goes_into_it(piece: str) -> bool:
    """Whether what stands beside a dish is cooked in its pot: dumplings."""
    return any(pattern.name == "dumplings" for pattern in found(piece)[:1])


@functools.lru_cache(maxsize=512)
def _ranked(dish: str) -> list[tuple[tuple[int, int, int, int], int, Pattern]]:
    """Each phrase that is found: how telling (0 the thing and not aside, kind of words, longest, last), its number."""
    words, head = stems(dish), _head(dish)
    if any(holds(stems(the_thing(dish)), name) for name in _others()):
        return []
    food = main_food(dish)
    ranked: list[tuple[tuple[int, int, int, int], int, Pattern]] = []
    for number, phrase in enumerate(_phrases()):
        of = phrase.pattern.of
        if phrase.kind != _THING and of and food is not None and food.kind not in of:
            continue
        for start, end in _runs(words, phrase.stems):
            aside = int(start >= head)
            kind = _INSIDE if phrase.kind == _THING and end < head else phrase.kind
            ranked.append(((aside, kind, -len(phrase.stems), -end), number, phrase.pattern))
    return sorted(ranked, key=lambda each: each[:2])


@functools.cache
def _others() -> tuple[tuple[str, ...], ...]:
    return tuple(stems(name) for name in other_dishes.NAMES)


def unsaid(dish: str) -> tuple[str, ...]:
    """The words of the thing itself that say nothing to the way it was found by: no food, no way, no plain word."""
    ranked = _ranked(dish)
    if not ranked:
        return ()
    _, number, pattern = ranked[0]
    own = {stem for each in (*pattern.words, *pattern.done, *pattern.alone) for stem in stems(each)}
    foods = {stem for each in named_foods(dish) for stem in stems(each.said)}
    foods |= {stem for each in mentioned(the_thing(dish)) for stem in each.words}
    foods |= {stem for piece in beside(dish) for stem in stems(piece)}
    said = own | foods | _said_done() | set(_phrases()[number].stems) | NEUTRAL | COOKED | LINKS | PARTS
    return tuple(word for word in words_of(the_thing(dish)) if stem(word) not in said and not word.isdecimal())


def the_thing(dish: str) -> str:
    """The dish without what goes with it: `mushroom stew` of `mushroom stew with rice`."""
    return _ASIDE.split(dish, maxsplit=1)[0]


def beside(dish: str) -> tuple[str, ...]:
    """What its name gives beside the thing itself, piece by piece: `brioche toast` of `parfait with brioche toast`,
    `cream` of `berries and cream`; not words that say what was done (`side of salmon, baked`)."""
    dish = _BOUGHT.sub(" ", dish)
    ranked = _ranked(dish)
    first, *rest = _ASIDE.split(dish, maxsplit=1)
    named = -ranked[0][0][3] if ranked and not ranked[0][0][0] else len(stems(first))
    gap = next((gap for gap in BETWEEN.finditer(first) if len(stems(first[: gap.start()])) >= named), None)
    said = _said_done() | {stem for _, number, _ in ranked[:1] for stem in _phrases()[number].stems}  # toad in the hole
    text = " with ".join([first[gap.end() :] if gap is not None else "", *rest])
    pieces = (_LEADS.sub("", piece.strip(" )].")) for run in _ASIDE.split(text) for piece in BETWEEN.split(run))
    return tuple(dict.fromkeys(piece for piece in pieces if not said.issuperset(stems(piece))))


def _head(dish: str) -> int:
    """How many of its words are about the thing itself: `side of salmon, baked` whole, `duck with beans` one."""
    first, *rest = _ASIDE.split(dish, maxsplit=1)
    later = stems(rest[0]) if rest else ()
    return len(stems(first)) + (len(later) if later and set(later) <= _said_done() else 0)


@functools.cache
def _said_done() -> frozenset[str]:
    return frozenset(stem for phrase in _phrases() if phrase.kind == _DONE for stem in phrase.stems)


def main_food(dish: str) -> NamedFood | None:
    """The food that a dish is about: the first that its name tells; None where it tells none."""
    return next(iter(named_foods(dish)), None)


@functools.lru_cache(maxsize=512)
def named_foods(dish: str) -> tuple[NamedFood, ...]:
    """All foods in a dish's name."""
    by_kind = {kind: [phrase.stems for phrase in _phrases() if phrase.kind == kind] for kind in (_THING, _DONE)}
    return foods_in(dish, by_kind[_DONE], by_kind[_THING])


def _runs(words: tuple[str, ...], phrase: tuple[str, ...]) -> Iterator[tuple[int, int]]:
    """Where the words hold the phrase: in one run, or with up to two words between (`cold tomato soup`)."""
    if not phrase:
        return
    for start, word in enumerate(words):
        if word != phrase[0]:
            continue
        at = start
        for wanted in phrase[1:]:
            at = next((n for n in range(at + 1, min(at + 4, len(words))) if words[n] == wanted), -1)
            if at < 0:
                break
        else:
            yield start, at + 1
