"""A dish's words → the patterns that fit, the most telling first. Pure.

English puts the thing itself last, and what goes with it after `with`, `in` and the like: a `roast tomato soup with
toast` is a soup, then something roast, then toast.
"""

import functools
import re
from collections.abc import Iterator
from dataclasses import dataclass

from board.facts.phrases import stems
from board.importing.ways.families import doughs, fish, meat, starters, stores, sweets, vegetables
from board.importing.ways.main_food import NamedFood, foods_in
from board.importing.ways.pattern import Pattern

COURSES = ("nibbles", "starter", "main", "side", "cheese", "sweet", "drink")  # in the order of a meal
PATTERNS: tuple[Pattern, ...] = (
    *starters.FAMILY, *meat.FAMILY, *fish.FAMILY, *vegetables.FAMILY, *doughs.FAMILY, *sweets.FAMILY, *stores.FAMILY,
)  # fmt: skip

_WARM_SAUCES = (stores.HOLLANDAISE, stores.BUTTER_SAUCE, stores.WHITE_SAUCE)

_THING, _DONE, _INSIDE, _ALONE = range(4)  # how telling: the thing itself, what was done, a word within, a bare food
_ASIDE = re.compile(r"\s*[,;:(\[/]\s*|\s+(?:with|in|on|under|over|from|served|topped|alla?|aux?)\s+", re.IGNORECASE)

BETWEEN = re.compile(r"\s*[,;]\s*|\s+[&+]\s+|\s*\band\b\s*", re.IGNORECASE)  # two things beside each other
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


def found(dish: str) -> tuple[Pattern, ...]:
    """The patterns that fit; none where nothing in the words tells."""
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


def goes_into_it(piece: str) -> bool:
    """Whether what stands beside a dish is cooked in its pot: dumplings."""
    return any(pattern.name == "dumplings" for pattern in found(piece)[:1])


@functools.lru_cache(maxsize=512)
def _ranked(dish: str) -> list[tuple[tuple[int, int, int, int], int, Pattern]]:
    """Each phrase that is found: how telling (0 the thing and not aside, kind of words, longest, last), its number."""
    words, head = stems(dish), _head(dish)
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


def the_thing(dish: str) -> str:
    """The dish without what goes with it: `mushroom stew` of `mushroom stew with rice`."""
    return _ASIDE.split(dish, maxsplit=1)[0]


def beside(dish: str) -> tuple[str, ...]:
    """What its name gives beside the thing itself, piece by piece: `brioche toast` of `parfait with brioche toast`,
    `cream` of `berries and cream`; not words that say what was done (`side of salmon, baked`)."""
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
