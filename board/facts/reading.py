"""A run of words read as foods, and what is said of them. Pure.

It is read from its end, where English puts the thing itself: `chestnut mushrooms` are mushrooms; the longest known name
wins. A word that is neither food, nor known to say nothing of what is in it, is strange.
"""

import functools
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace

from board.facts.held import ENTRIES, LIFTED_BY, Facts, Stems, free_from, in_doubt, in_one, settled
from board.facts.named import named
from board.facts.origins import Origin, Trait
from board.facts.phrases import (
    AFTER,
    COOKED,
    DRIED,
    HANDLED,
    ITS_PURPOSE,
    LINKS,
    NEUTRAL,
    NUMBER,
    OPEN,
    PARTS,
    PURPOSE,
    stem,
    stems,
    words_of,
)

_LONGEST_NAME = 7


@dataclass(frozen=True, slots=True)
class Hit:
    """A food found, with the words that name it: from `start` up to `end`."""

    food: Facts
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Meant:
    """A strange word, one letter from a name that the table knows, and the foods it would be."""

    word: str
    name: str
    foods: tuple[Facts, ...]


@dataclass(slots=True)
class Read:
    """What some words say. `held`: foods in it, one a run between links (`with`, `and`, `in`); `purposes`: foods it is
    for; `all_hits`: every food named, each by itself. `lifted`: what it says it is free from, with no food after that
    word. `strange`: words by number."""

    words: Sequence[str]
    held: list[Facts] = field(default_factory=list)
    all_hits: list[Hit] = field(default_factory=list)
    purposes: list[Facts] = field(default_factory=list)
    strange: set[int] = field(default_factory=set)
    lifted: frozenset[Trait] = frozenset()

    @property
    def strange_words(self) -> list[str]:
        """Neighbours together, in order."""
        runs: list[list[int]] = []
        for n in sorted(self.strange):
            if runs and runs[-1][-1] == n - 1:
                runs[-1].append(n)
            else:
                runs.append([n])
        return [" ".join(self.words[n] for n in run) for run in runs]


def read(words: Sequence[str], names: Mapping[Stems, Facts], *, beside: bool) -> Read:
    """`beside`: whether the words stand beside a food, after a comma or in brackets."""
    keys = tuple(stem(word) for word in words)
    found = Read(words)
    handled = any(key in HANDLED for key in keys) and (beside or _others(keys, names))
    run = _Run(found, handled)
    end = len(keys)
    while end:
        start = _name_ends(keys, end, names)
        if start is not None and not _is_taste(words, start, end, beside=beside):
            if run.hits and keys[start:end] in _WHERE_FROM:
                if run.hits[-1].food.made:  # a trifle by that name may be laced with it
                    run.hits.append(Hit(in_doubt(names[keys[start:end]], _ALCOHOL), start, end))
            elif not (handled and keys[start:end] in _PARTS):
                run.hits.append(Hit(names[keys[start:end]], start, end))
            if keys[start] in LINKS and (inner := names.get(keys[start + 1 : end])) is not None:
                run.hits.append(Hit(inner, start + 1, end))  # in pastry: the way, and the pastry
            end = start
            continue
        end -= 1
        end = run.word(keys, end)
    run.close()
    found.lifted |= run.lifted
    return found


_PARTS = frozenset((word,) for word in PARTS)
# Before a food they say where it comes from; a drink where they stand alone.
_WHERE_FROM = frozenset({("scotch",)})
_ALCOHOL = frozenset[Trait]({Origin.ALCOHOL})


def _name_ends(keys: Stems, end: int, names: Mapping[Stems, Facts]) -> int | None:
    """Where the longest name that ends here begins."""
    return next((n for n in range(max(0, end - _LONGEST_NAME), end) if keys[n:end] in names), None)


def _is_taste(words: Sequence[str], start: int, end: int, *, beside: bool) -> bool:
    """Whether a word before a food, or in brackets after it, is how that tastes: bitter leaves hold no bitters, a pint
    of bitter is a beer."""
    before_a_food = end < len(words) and stem(words[end]) not in LINKS | PURPOSE
    return tuple(words[start:end]) == ("bitter",) and (beside or before_a_food)


def _others(keys: Stems, names: Mapping[Stems, Facts]) -> bool:
    """Whether the words name more than a part of a food."""
    return any((key,) in names and key not in PARTS for key in keys)


class _Run:
    """The words between two links, read backwards."""

    def __init__(self, found: Read, handled: bool) -> None:
        self.found = found
        self.handled = handled
        self.lifted: frozenset[Trait] = frozenset()
        self._clear()

    def _clear(self) -> None:
        self.hits: list[Hit] = []
        self.uses: list[int] = []
        self.freed: dict[int, frozenset[Trait]] = {}
        self.cooked = self.dried = False

    def word(self, keys: Stems, n: int) -> int:
        """Takes one word that ends no name; gives the place to read on from."""
        key = keys[n]
        following = keys[n + 1] if n + 1 < len(keys) else ""
        if key in LINKS:
            self.close()
        elif key in PURPOSE and not following.isdecimal():
            self._was_its_purpose()
        elif (lifts := _lifts(keys, n)) is not None:
            start, cleared = lifts
            self._free(cleared)
            return start
        else:
            self._said(key, following, n)
        return n

    def _said(self, key: str, following: str, n: int) -> None:
        self.cooked |= key in COOKED
        self.dried |= key in DRIED
        if key in PARTS and self.handled:
            pass
        elif key in ITS_PURPOSE:
            self.uses.append(n)
        elif key in NEUTRAL or key in COOKED or NUMBER.fullmatch(key):
            pass
        elif not (key in OPEN and following in LINKS) and not (key in AFTER and not self.hits):
            self.found.strange.add(n)

    def _free(self, cleared: frozenset[Trait]) -> None:
        if self.hits:
            self.hits = [Hit(free_from(hit.food, cleared), hit.start, hit.end) for hit in self.hits]
        else:
            self.lifted |= cleared

    def _was_its_purpose(self) -> None:
        for hit in self.hits:
            if hit.end - hit.start > 1 or not hit.food.words or hit.food.words[0] not in ITS_PURPOSE:
                self.found.purposes.append(hit.food)
        self.found.all_hits += self.hits
        self._clear()

    def close(self) -> None:
        """Ends the run at a link, or at the first word."""
        if self.hits:
            parts = settled([free_from(hit.food, self.lifted) for hit in self.hits])
            self.lifted = frozenset()
            self.found.held.append(in_one([food for _, food in parts], cooked=self.cooked, dried=self.dried))
            self.found.all_hits += [replace(self.hits[n], food=food) for n, food in parts]
        self.found.strange.update(self.uses)
        self._clear()


def _lifts(keys: Stems, n: int) -> tuple[int, frozenset[Trait]] | None:
    """What a word says a food is free from, and where that begins: `gluten free`, `plant based`, `vegan`."""
    for start in range(max(0, n - 3), n + 1):
        words = keys[start : n + 1]
        if (cleared := LIFTED_BY.get(" ".join(words))) is not None:
            return start, cleared
        if words == ("sugar", "free"):
            return start, frozenset()
        if words[-1] == "free" and (said := named(" ".join(words[:-1]))) is not None:
            return start, said.cleared
    return None


def around(found: Read, names: Mapping[Stems, Facts], *, beside: bool) -> list[Facts]:
    """What the words hold read without their strange words, first without those that no name of the table has."""
    foods: list[Facts] = []
    new = {n for n in found.strange if stem(found.words[n]) not in _in_names()}
    for left_out in (new, found.strange):
        left = [word for n, word in enumerate(found.words) if n not in left_out]
        foods += read(left, names, beside=beside).held
    return foods


@functools.cache
def _in_names() -> frozenset[str]:
    return frozenset(word for entry in ENTRIES for word in stems(entry.phrase))


def slips(found: Read, names: Mapping[Stems, Facts]) -> Iterator[Meant]:
    """Strange words one letter away from a word in the name of a food that can do harm, and no word of a food's name
    themselves: the `paste` of some unknown paste is no slip for pâté."""
    keys = [stem(word) for word in found.words]
    for n in sorted(n for n in found.strange if keys[n] not in _in_names()):
        near = dict.fromkeys(word for less in _less_one(keys[n]) for word in _carrying().get(less, ()))
        for word in near:
            if one_letter_apart(keys[n], stem(word)):
                written = [*found.words[:n], word, *found.words[n + 1 :]]
                foods = tuple(each for each in read(written, names, beside=True).held if each not in found.held)
                if any(food.allergens or food.hidden for food in foods):
                    plural = "s" if found.words[n].endswith("s") and not word.endswith("s") else ""
                    yield Meant(found.words[n], word + plural, foods)


@functools.cache
def _carrying() -> dict[str, list[str]]:
    """The words of the names of all foods that hold something, by what is left of each without one of its letters: two
    words one letter apart share such a rest."""
    carriers = (entry for entry in ENTRIES if entry.hidden or entry.traits)
    words = (word for entry in carriers for word in words_of(entry.phrase) if len(word) > 3)
    found: dict[str, list[str]] = {}
    for word in dict.fromkeys(words):
        if stem(word) not in NEUTRAL:
            for less in _less_one(stem(word)):
                found.setdefault(less, []).append(word)
    return found


def _less_one(word: str) -> set[str]:
    return {word, *(word[:n] + word[n + 1 :] for n in range(len(word)))}


def one_letter_apart(one: str, other: str) -> bool:
    """Whether one letter is wrong, lost, added, or changed places with its neighbour. Short words never are."""
    if one == other or abs(len(one) - len(other)) > 1 or min(len(one), len(other)) < 3:
        return False
    start = next((n for n, (a, b) in enumerate(zip(one, other, strict=False)) if a != b), min(len(one), len(other)))
    left, right = one[start:], other[start:]
    swapped = left[:2] == right[1::-1] and len(left) > 1 and left[2:] == right[2:]
    return swapped or left[1:] == right[1:] or left[1:] == right or left == right[1:]
