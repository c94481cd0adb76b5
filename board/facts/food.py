"""What is in a food, from the name a cook writes: allergens, origins, class when raw, what it often holds. Pure.

A name is read from its end, where English puts the thing itself: `chestnut mushrooms` are mushrooms. The longest known
name wins. One word that is neither known nor clearly irrelevant makes the whole unknown; unknown is never safe.
Planning help only: the label of what is bought decides.
"""

import functools
import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Literal

from board.facts.allergens import Allergen
from board.facts.foods.baking import BAKING
from board.facts.foods.dairy import DAIRY
from board.facts.foods.drinks import DRINKS
from board.facts.foods.entry import COMMON_PRACTICE, Entry, RawClass
from board.facts.foods.meat import MEAT
from board.facts.foods.plants import FRUIT, PLANTS
from board.facts.foods.sea import SEA
from board.facts.foods.seeds import SEEDS_AND_PULSES
from board.facts.foods.stores import STORES
from board.facts.origins import Origin, Trait, with_what_follows
from board.facts.phrases import COOKED, COOKED_THROUGH, DRIED, NEUTRAL, foreign, holds, stems

ENTRIES: tuple[Entry, ...] = (*DAIRY, *MEAT, *SEA, *BAKING, *PLANTS, *SEEDS_AND_PULSES, *STORES, *DRINKS)
Stems = tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Hidden:
    """A trait that a food often or possibly has without its name saying so; `source` tells which."""

    what: Trait
    source: str = COMMON_PRACTICE


@dataclass(frozen=True, slots=True)
class Facts:
    """What is known of a food. `raw_class`: its cooking class; None if it is not raw or needs no cooking. `perishable`:
    spoils unchilled. `made`: made of several things; only its label names them all. `words`: the stems that find it;
    empty if its words name no food in it."""

    name: str
    allergens: frozenset[Allergen]
    origins: frozenset[Origin]
    raw_class: RawClass | None
    perishable: bool
    hidden: tuple[Hidden, ...] = ()
    made: bool = False
    words: Stems = ()

    @property
    def traits(self) -> frozenset[Trait]:
        return self.allergens | self.origins


@dataclass(frozen=True, slots=True)
class Understood:
    """A food's words analysed: what is in it, what is only mentioned, and unknown words. `cooked_through`: the words
    say so."""

    known: tuple[Facts, ...] = ()
    named: tuple[Facts, ...] = ()
    unknown: tuple[str, ...] = ()
    cooked_through: bool = False


def facts(food: str) -> Facts | None:
    """What is known of a food, given without its amount: `dark soy sauce`. None if any part is unknown."""
    found = understood(food)
    if not found.known or found.unknown:
        return None
    together = _together(found.known, found.known[0])
    return replace(together, raw_class=None) if found.cooked_through else together


def said_cooked(food: str) -> bool:
    """Whether its words say it is cooked: `tinned bean sprouts`, `bean sprouts, cooked through`."""
    words = stems(food)
    return any(word in COOKED for word in words) or any(holds(words, said) for said in COOKED_THROUGH)


def of_the_host(name: str, traits: frozenset[Trait]) -> Facts:
    """A food by the host's own words for what is in it."""
    every = with_what_follows(traits)
    allergens = frozenset(t for t in every if isinstance(t, Allergen))
    origins = frozenset(t for t in every if isinstance(t, Origin))
    return Facts(name, allergens, origins, None, True, words=stems(name))


def understood(food: str, own: Mapping[Stems, Facts] | None = None) -> Understood:
    """A food's words analysed. `own`: the host's foods by stems, added to the table's."""
    names = {**table(), **{key: _adding(key, value) for key, value in own.items()}} if own else table()
    one = stems(food) in (own or {}) or not _BESIDE.search(food)  # `coconut, milk` is not coconut milk
    if one and (whole := names.get(stems(food))) and not foreign(food):
        return Understood((whole,))
    known: list[Facts] = []
    named: list[Facts] = []
    unknown: list[str] = []
    through = False
    for number, (piece, how) in enumerate(_pieces(food)):
        words = stems(piece)
        if how == "about" and any(holds(words, said) for said in COOKED_THROUGH):
            through = True
            words = tuple(word for word in words if not any(word in said for said in COOKED_THROUGH))
        parts, left_over = _part(words, names)
        strange = bool(left_over) or foreign(piece)
        if how == "not" or (strange and how == "about"):
            named += parts  # `no nuts`, which is no label's word; `sliced by the butcher`
        elif strange or (number == 0 and not parts):
            named += parts
            unknown.append(" ".join(piece.split()))
        elif parts:
            known.append(replace(_together(parts, parts[0]), raw_class=parts[0].raw_class))
    return Understood(tuple(known), tuple(named), tuple(unknown), through)


@functools.cache
def table() -> dict[Stems, Facts]:
    """Every food of the table, by the stems of each name."""
    return {stems(entry.phrase): _facts_of(entry) for entry in ENTRIES}


def names_of(food: Facts) -> tuple[Stems, ...]:
    """The stems of every name of a table food: passata is strained tomatoes."""
    return _names().get(food.name, ())


@functools.cache
def _names() -> dict[str, tuple[Stems, ...]]:
    found: dict[str, tuple[Stems, ...]] = {}
    for entry in ENTRIES:
        if not entry.likeness:
            found[entry.name] = (*found.get(entry.name, ()), stems(entry.phrase))
    return found


def _facts_of(entry: Entry) -> Facts:
    allergens = frozenset(t for t in entry.traits if isinstance(t, Allergen))
    origins = frozenset(t for t in entry.traits if isinstance(t, Origin))
    hidden = tuple(Hidden(t) for t in sorted(entry.hidden, key=lambda t: t.value))
    hidden += tuple(Hidden(trait, source) for trait, source in entry.told)
    words = () if entry.likeness else stems(entry.phrase)
    return Facts(entry.name, allergens, origins, entry.raw_class, entry.perishable, hidden, entry.made, words)


def _adding(key: Stems, own: Facts) -> Facts:
    """The host's word adds to what the table knows of that name, and removes nothing."""
    known = table().get(key)
    return own if known is None else _together((known, own), known)


# For frying, to serve, as needed; and how the hen lived.
_OFF = re.compile(r"\s+(?:for|to|as)\s+(?!\d).*|\bfree[ -]range\b", re.IGNORECASE)
_BESIDE = re.compile(r"\s*[,;()\[\]/]\s*|\s+[–—-]\s+")
_LINKED = re.compile(r"\s+(?:with|in|and|or|plus|on|&|\+)\s+", re.IGNORECASE)
_WITHOUT = re.compile(r"\s*\b(?:without|not|no|free from)\b", re.IGNORECASE)


def _pieces(food: str) -> Iterator[tuple[str, Literal["in", "about", "not"]]]:
    """The food and what is joined to it (`in oil`, `and sage`), then words about it, and what it is without."""
    for number, piece in enumerate(_BESIDE.split(food)):
        said, *without = _WITHOUT.split(piece, maxsplit=1)
        for each in _LINKED.split(said):
            if number == 0 or each.strip():
                yield _OFF.sub("", each), "in" if number == 0 else "about"
        for each in without:
            yield from ((part, "not") for part in _LINKED.split(each))


def _part(words: Stems, names: Mapping[Stems, Facts]) -> tuple[list[Facts], list[str]]:
    """The foods in one piece, the main one first; and words neither known as food nor neutral."""
    found: list[Facts] = []
    strange: list[str] = []
    end = len(words)
    while end:
        start = next((n for n in range(max(0, end - 6), end) if words[n:end] in names), None)
        if start is not None:
            found.append(names[words[start:end]])
            end = start
            if found[0].words in _CUTS and len(found) > 1:
                del found[0]  # a salmon steak is salmon
            continue
        end -= 1
        if words[end] not in NEUTRAL | COOKED and not words[end].isdecimal():
            strange.append(words[end])
    if found and any(word in COOKED for word in words):
        found[0] = replace(found[0], raw_class=None)
    if found and any(word in DRIED for word in words) and found[0].words in _FRUIT:
        found[0] = replace(found[0], hidden=(*found[0].hidden, Hidden(Allergen.SULPHITES)))
    return found, strange


# Meat on their own; beside another food only its cut.
_CUTS = frozenset(stems(word) for word in ("steak", "bone", "hock", "chuck", "rib", "brisket", "sirloin"))
_FRUIT = frozenset(stems(entry.phrase) for entry in FRUIT)


_HEAVIEST_FIRST: tuple[RawClass, ...] = ("poultry", "ground meat", "eggs", "fish", "whole cut")


def _together(parts: tuple[Facts, ...] | list[Facts], head: Facts) -> Facts:
    """Everything in several foods, under one's name; the raw class is the one that needs most heat."""
    traits = frozenset[Trait]().union(*(part.traits for part in parts))
    hidden = dict.fromkeys(h for part in parts for h in part.hidden if h.what not in traits)
    classes = {part.raw_class for part in parts}
    return Facts(
        head.name,
        frozenset(t for t in traits if isinstance(t, Allergen)),
        frozenset(t for t in traits if isinstance(t, Origin)),
        next((each for each in _HEAVIEST_FIRST if each in classes), None),
        any(part.perishable for part in parts),
        tuple(hidden),
        any(part.made for part in parts),
        head.words,
    )
