"""Which of a recipe's ingredients go in at each step, by its words. Pure.

A whole amount is told only where the food is named in one step alone; named in several, or in part (`half the oil`,
`the rest of the butter`), only its name is. What several ingredients may be by that word is not told.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass

from board.base.plain import one_line
from board.facts.food import facts
from board.facts.phrases import stem, words_of
from board.importing.recipe.foods import foods_of, parsed

_PART = re.compile(
    r"(?:\b(?:half|some|rest|remaining|remainder|most|third|quarter|little|few|more|extra|reserved|other)\b|"
    r"\d\D{0,12}\bof the\b)[^,.;]{0,24}$",
    re.IGNORECASE,
)
_MADE = re.compile(r"\b(?:mixture|sauce|dough|batter|topping|filling|paste|base|mix)\b", re.IGNORECASE)


@dataclass(frozen=True)
class _Known:
    line: str
    name: str
    stems: tuple[str, ...]
    divided: bool


def uses_of(texts: Sequence[str], foods: Sequence[str]) -> list[tuple[str, ...]]:
    """For each step's text, its ingredients as a plan writes them, in the recipe's order."""
    known = [each for text in foods for each in _known(text)]
    found: list[list[tuple[_Known, bool]]] = [[] for _ in texts]
    words_by_text = [_said(text) for text in texts]
    for each in known:
        for number, text in enumerate(texts):
            if (whole := _named(each, known, text, words_by_text[number])) is not None:
                found[number].append((each, whole))
    times = [sum(any(other is each for other, _ in own) for own in found) for each in known]
    once = {id(each) for each, count in zip(known, times, strict=True) if count == 1}
    return [
        tuple(
            dict.fromkeys(
                each.line if whole and id(each) in once and not each.divided else f"some {each.name}"
                for each, whole in own
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
        own = tuple(stem(word) for word in words_of(name) if facts(word) is not None) or tuple(
            stem(word) for word in words_of(name)[-1:]
        )
        if own and parsed(f"some {name}") is not None:
            found.append(_Known(food.line, name, own, "divided" in text.lower()))
    return found


def _said(text: str) -> list[tuple[str, int]]:
    """The stems of a text's words, and where each begins."""
    found = re.finditer(r"[^\W_]+(?:['’][a-z]+)?", text)
    return [(stem(word), match.start()) for match in found for word in words_of(match[0])]


def _named(each: _Known, known: Sequence[_Known], text: str, said: list[tuple[str, int]]) -> bool | None:
    """Whether a step names the whole of an ingredient (True), a part (False), or none of it (None)."""
    for number, (word, start) in enumerate(said):
        if word not in each.stems or _MADE.match(text[start:].partition(" ")[2]):
            continue
        rivals = [other for other in known if other is not each and word in other.stems]
        before = said[number - 1][0] if number else ""
        if any(other.stems[-1] == word for other in rivals) and each.stems[-1] != word:
            continue
        if [other for other in rivals if other.stems[-1] == word] and not _told_apart(each, rivals, before):
            continue
        if rivals and each.stems[-1] != word:
            continue
        return _PART.search(text[:start]) is None
    return None


def _told_apart(each: _Known, rivals: Sequence[_Known], before: str) -> bool:
    """Whether the word before names this one of several: `olive oil`."""
    own = {stem(word) for word in words_of(each.name)}
    return before in own and not any(before in {stem(word) for word in words_of(other.name)} for other in rivals)
