"""Label words after a food: `contains milk and soy`, `may contain tree nuts`, `free from gluten`. And what a food of
the host's own holds: `mustard and celery`, `nothing`."""

import re
from collections.abc import Iterable
from typing import Annotated

from pydantic import AfterValidator

from board.facts.named import known_words, named
from board.plan.phrases.phrase import Phrase, near

_SAYS = re.compile(r"\s*,\s*(may contain|contains|free from)\b\s*(?:(?:traces of|any)\s+)?", re.IGNORECASE)
_BETWEEN = re.compile(r"\s*,\s*(?:(?:and|or)\s+)?|\s+(?:and|or|&)\s+", re.IGNORECASE)
_SECTION = re.compile(r"(.*?)\s*(\([^()]*\))\s*", re.DOTALL)


def parse_holds(text: str) -> list[str]:
    """`mustard and celery`; `nothing` gives an empty list. Raises ValueError."""
    if text.strip().casefold() in ("nothing", "none of them", "none"):
        return []
    return _known(word for word in _BETWEEN.split(text.strip()) if word)


def without_label(text: str) -> tuple[str, dict[str, tuple[str, ...]]]:
    """The ingredient without its label words, and those words by key. Raises ValueError.

    `rye bread (bakery), free from nuts` and `rye bread, free from nuts (bakery)` say the same.
    """
    food, *said = _SAYS.split(text)
    found: dict[str, tuple[str, ...]] = {}
    for how, words in zip(said[::2], said[1::2], strict=True):
        if match := _SECTION.fullmatch(words):
            words, food = match[1], f"{food} {match[2]}"
        if not words.strip(" ,"):
            raise ValueError(f"{how!r} does not say what; write for example {how.lower()} milk and soy")
        key = how.lower()
        found[key] = (*found.get(key, ()), *_known(word for word in _BETWEEN.split(words.strip()) if word))
    return food, found


def _known(words: Iterable[str]) -> list[str]:
    """The words, if each names something that food can hold. Raises ValueError."""
    found = list(words)
    for word in found:
        if named(word) is None:
            guess = near(word, known_words())
            raise ValueError(
                f"{word!r} is not a word for what is in food.{guess}; write for example milk, tree nuts, gluten or pork"
            )
    return found


def _known_tuple(words: tuple[str, ...]) -> tuple[str, ...]:
    return tuple(_known(words))


LabelWords = Annotated[tuple[str, ...], AfterValidator(_known_tuple)]
Holds = Annotated[list[str], AfterValidator(_known), Phrase(parse_holds, "mustard and celery")]
