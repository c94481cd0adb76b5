"""What is in a food, from the name a cook writes: allergens, origins, class when raw, what it often holds. Pure.

A name is read from its end, where English puts the thing itself: `chestnut mushrooms` are mushrooms. The longest known
name wins. One word that is neither known nor clearly irrelevant makes the whole unknown; unknown is never safe.
Planning help only: the label of what is bought decides.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass, replace

from board.facts.allergens import Allergen
from board.facts.foods.entry import RawClass
from board.facts.held import HEAVIEST_FIRST, Facts, Stems, free_from, in_one, table, together
from board.facts.origins import Origin, Trait, with_what_follows
from board.facts.phrases import COOKED, COOKED_THROUGH, foreign, holds, stems, words_of
from board.facts.reading import Meant, around, read, slips


@dataclass(frozen=True, slots=True)
class Understood:
    """A food's words analysed: what is in it, what is only mentioned, and unknown words. `cooked_through`: the words
    say so. `meant`: unknown words that are likely slips of the pen."""

    known: tuple[Facts, ...] = ()
    named: tuple[Facts, ...] = ()
    unknown: tuple[str, ...] = ()
    cooked_through: bool = False
    meant: tuple[Meant, ...] = ()


def facts(food: str) -> Facts | None:
    """What is known of a food, given without its amount: `dark soy sauce`. None if any part is unknown."""
    found = understood(food)
    if not found.known or found.unknown:
        return None
    whole = together(found.known, found.known[0])
    return replace(whole, raw_class=None) if found.cooked_through else whole


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
    """A food's words analysed. `own`: the host's foods by stems, added to the table's.

    A food named anywhere in the words is in it, whatever strange words stand beside it: one word more never makes less
    of it known. `named`: what it is said to be without, and what it is for.
    """
    names = {**table(), **{key: _adding(key, value) for key, value in own.items()}} if own else table()
    one = stems(food) in (own or {}) or not _BESIDE.search(food)  # `coconut, milk` is not coconut milk
    if one and (whole := names.get(stems(food))) and not foreign(food):
        return Understood((in_one([whole], cooked=False, dried=False),))
    known: list[Facts] = []
    named: list[Facts] = []
    unknown: list[str] = []
    meant: list[Meant] = []
    through = False
    for number, clause in enumerate(_BESIDE.split(_SUCH.sub(" like ", _IN_PASSING.sub(" ", food)))):
        said, *without = _WITHOUT.split(clause, maxsplit=1)
        words = words_of(said)
        through |= number > 0 and any(holds(stems(said), each) for each in COOKED_THROUGH)
        found = read(words, names, beside=number > 0)
        known = [free_from(each, found.lifted) for each in known] + list(found.held)
        named += found.purposes
        if found.strange:  # they may stand in the middle of a name
            known += [each for each in around(found, names, beside=number > 0) if each not in known]
            unknown += found.strange_words
            meant += slips(found, names)
        for each in without:
            denied = read(words_of(each), names, beside=True)
            named += (*denied.held, *denied.purposes)
        nothing = number == 0 and not (found.held or found.strange or found.purposes)
        if foreign(clause) or nothing:
            unknown.append(" ".join(said.split()))
    return Understood(tuple(known), tuple(named), tuple(dict.fromkeys(unknown)), through, tuple(meant))


def raw_class(food: str) -> RawClass | None:
    """The cooking class of a raw food, the one that needs most heat; None if nothing known in it needs cooking."""
    found = understood(food)
    classes = {part.raw_class for part in found.known}
    return None if found.cooked_through else next((each for each in HEAVIEST_FIRST if each in classes), None)


def _adding(key: Stems, own: Facts) -> Facts:
    """The host's word adds to what the table knows of that name, and removes nothing."""
    known = table().get(key)
    return own if known is None else together((known, own), known)


# How the hen lived, and the bone: of no weight.
_IN_PASSING = re.compile(
    r"\b(?:free|cage|barn)[ -](?:range|free|laid)\b|\b(?:on|off) the (?:bone|vine|cob)\b"
    r"|\b(?:bone)[ -](?:in|on|out)\b|\b[a-z]+-sized?\b",
    re.IGNORECASE,
)
_SUCH = re.compile(r"\b(?:such as|for (?:example|instance))\b", re.IGNORECASE)
_BESIDE = re.compile(r"\s*[,;:()\[\]/]\s*|\s+[–—-]\s+")
_WITHOUT = re.compile(r"\s*\b(?:without|no(?!-)|free from|instead of|rather than)\b", re.IGNORECASE)
