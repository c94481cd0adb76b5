"""Which of a recipe's ingredients go in at each step, by its words. Pure.

A whole amount is told only where the food is named in one step alone; named in several, or in part (`half the oil`,
`the rest of the butter`), only its name is. What several ingredients may be by that word is not told.
"""

import re
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

from board.base.plain import one_line
from board.facts.food import facts
from board.facts.phrases import listed_words, stem, stems, words_of
from board.importing.recipe.foods import foods_of, parsed

_PART = re.compile(
    r"(?:\b(?:half|some|rest|remaining|remainder|most|third|quarter|little|few|more|extra|reserved|other)\b|"
    r"\d\D{0,12}\bof the\b)[^,.;]{0,24}$",
    re.IGNORECASE,
)
_MADE = listed_words("mixture sauce dough batter topping filling paste base mix")  # the egg mixture is no egg


@dataclass(frozen=True)
class _Known:
    line: str
    name: str
    stems: tuple[str, ...]
    divided: bool


@dataclass(frozen=True)
class _Named:
    """An ingredient, the words that name it alone, and for others the words before that tell it apart."""

    food: _Known
    alone: frozenset[str]
    before: dict[str, frozenset[str]]


def uses_of(texts: Sequence[str], foods: Sequence[str]) -> list[tuple[str, ...]]:
    """For each step's text, its ingredients as a plan writes them, in the recipe's order."""
    known = _told_apart([each for text in foods for each in _known(text)])
    found = [[(number, whole) for number, each in enumerate(known) if (whole := _named(each, text, said)) is not None]
             for text in texts for said in [_said(text)]]  # fmt: skip
    times = Counter(number for own in found for number, _ in own)
    return [
        tuple(
            dict.fromkeys(
                known[number].food.line
                if whole and times[number] == 1 and not known[number].food.divided
                else f"some {known[number].food.name}"
                for number, whole in own
            )
        )
        for own in found
    ]


def _known(text: str) -> list[_Known]:
    """Its lines with an amount, and the words that name each; salt to taste is not told at a step."""
    found = []
    for food in foods_of(text):
        read = parsed(food.line)
        if read is None or read.low is None or read.choices:
            continue
        name = one_line(read.food.partition(",")[0])
        own = tuple(stem(word) for word in words_of(name) if facts(word) is not None) or stems(name)[-1:]
        if own and parsed(f"some {name}") is not None:
            found.append(_Known(food.line, name, own, "divided" in text.lower()))
    return found


def _told_apart(known: Sequence[_Known]) -> list[_Named]:
    """A food goes by its last word, before others that have it elsewhere, and by any word that no other has."""
    lasts = Counter(word for name in {each.name: each.stems[-1] for each in known}.items() for word in name[1:])
    all_words = Counter(word for own in {each.name: each.stems for each in known}.values() for word in set(own))
    every = Counter(word for name in {each.name for each in known} for word in set(stems(name)))
    found = []
    for each in known:
        last = each.stems[-1]
        alone = {word for word in each.stems if all_words[word] == 1} | ({last} if lasts[last] == 1 else set())
        own = frozenset(word for word in stems(each.name) if every[word] == 1)
        found.append(_Named(each, frozenset(alone), {} if last in alone else {last: own}))
    return found


def _said(text: str) -> list[tuple[str, int]]:
    """The stems of a text's words, and where each begins."""
    found = re.finditer(r"[^\W_]+(?:['’][a-z]+)?", text)
    return [(stem(word), match.start()) for match in found for word in words_of(match[0])]


def _named(each: _Named, text: str, said: Sequence[tuple[str, int]]) -> bool | None:
    """Whether a step names the whole of an ingredient (True), a part (False), or none of it (None)."""
    for number, (word, start) in enumerate(said):
        told = word in each.alone or (number and said[number - 1][0] in each.before.get(word, ()))
        after = said[number + 1][0] if number + 1 < len(said) else ""
        if told and after not in _MADE:
            return _PART.search(text, max(0, start - 60), start) is None
    return None
