"""One ingredient against one need: reasons why it is not safe, or must be asked about."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import IntEnum

from board.checks.allergens.dietary_needs import Need
from board.checks.allergens.ingredient_facts import BY_ITS_LABEL, BY_THE_TABLE, Stuff
from board.facts.allergens import Allergen
from board.facts.foods.entry import COMMON_PRACTICE, FINED, KIN, SAYS
from board.facts.held import Facts, names_of
from board.facts.named import named
from board.facts.origins import Trait
from board.facts.phrases import holds, stems
from board.plan.places import Loc


class Verdict(IntEnum):
    """Whether a guest may eat a dish; the largest is the worst."""

    SAFE = 0
    ASK = 1
    NOT_SAFE = 2


@dataclass(frozen=True, slots=True)
class Reason:
    """Why a dish is not safe for a guest or must be asked about, or what its label clears it of.

    `ingredient` is empty if it concerns the whole dish; `why`: what is in it; `source`: the list, table, label or
    advice; `mend`: how to settle it, if there is a special way. `unknown`: only because nobody knows what is in it.
    """

    verdict: Verdict
    need: Need
    ingredient: str
    why: str
    source: str
    loc: Loc
    mend: str = ""
    unknown: bool = False


def judged(stuff: Stuff, need: Need) -> Iterator[Reason]:
    """Every reason that one ingredient gives, against a need that the program knows."""
    yield from _held(stuff, need)
    yield from _perhaps_held(stuff, need)
    if need.food is not None:
        yield from _by_name(stuff, need, need.food)
    if need.never and need.never <= stuff.cleared:
        yield Reason(Verdict.SAFE, need, stuff.food, f"free from {listed(need.never)}", BY_ITS_LABEL, stuff.loc)
    slips = list(_slips(stuff, need))
    yield from slips
    if stuff.unknown and not slips and not (need.never and need.never | need.asks <= stuff.cleared):
        why = f"not in the table of foods: {', '.join(stuff.unknown)}"
        yield Reason(Verdict.ASK, need, stuff.food, why, "nothing is known of it", stuff.loc, unknown=True)


def _held(stuff: Stuff, need: Need) -> Iterator[Reason]:
    for how in dict.fromkeys(stuff.holds.values()):
        told = "" if how == BY_THE_TABLE else f" ({how})"
        traits = [trait for trait, known_by in stuff.holds.items() if known_by == how]
        for verdict, bad in (
            (Verdict.NOT_SAFE, [trait for trait in traits if trait in need.never]),
            (Verdict.ASK, [trait for trait in traits if trait in need.asks - need.never]),
        ):
            if bad:
                yield Reason(verdict, need, stuff.food, f"holds {listed(bad)}{told}", sources_of(need, bad), stuff.loc)


def _perhaps_held(stuff: Stuff, need: Need) -> Iterator[Reason]:
    for how in dict.fromkeys(stuff.may_hold.values()):
        perhaps = [trait for trait, by in stuff.may_hold.items() if by == how and trait in need.never | need.asks]
        if perhaps and how in (FINED, KIN):
            mend = _by_label(stuff, need, perhaps) if how == FINED else "Ask your guest, or leave it out."
            yield Reason(Verdict.ASK, need, stuff.food, f"{SAYS[how]} {listed(perhaps)}", how, stuff.loc, mend)
        elif perhaps:
            why = f"{SAYS.get(how, 'may contain')} {listed(perhaps)} ({how})"
            mend = "" if how == BY_ITS_LABEL else _by_label(stuff, need, perhaps)
            yield Reason(Verdict.ASK, need, stuff.food, why, sources_of(need, perhaps), stuff.loc, mend)
    if beside := [trait for trait in stuff.only_named if trait in need.never | need.asks]:
        why = f"names what holds {listed(beside)}"
        yield Reason(Verdict.ASK, need, stuff.written, why, sources_of(need, beside), stuff.loc)


def _slips(stuff: Stuff, need: Need) -> Iterator[Reason]:
    """Unknown words one letter away from what this guest must not have."""
    for slip in stuff.meant:
        traits = frozenset[Trait]().union(*(food.traits | {each.what for each in food.hidden} for food in slip.foods))
        if (need.never | need.asks) & traits - stuff.cleared:
            why = f"{slip.word!r}: do you mean {slip.name}?"
            mend = f"Write {slip.name} if so; otherwise read the label, and write what it is under `foods:`."
            yield Reason(
                Verdict.ASK, need, stuff.food, why, "one letter away from a food of the table", stuff.loc, mend
            )


def _by_name(stuff: Stuff, need: Need, food: Facts) -> Iterator[Reason]:
    """Looks for a single food under all its names; made foods that may hold it are asked about."""
    bare = need.words.removeprefix("no ")
    also = [name for part in stuff.parts for name in (*names_of(part), stems(part.name))]
    # garbanzo beans are chickpeas, and so is their flour; but not all sprouts are brussels sprouts
    meant = [stems(bare), *(name for name in names_of(food) if not holds(stems(bare), name))]
    by_words = any(holds(words, name) for words in (stuff.words, *also) for name in meant)
    if any(part.name == food.name for part in stuff.parts) or (by_words and not _only_sounds_alike(stuff, food, bare)):
        yield Reason(Verdict.NOT_SAFE, need, stuff.food, f"is, or names, {bare}", need.source, stuff.loc)
    elif stuff.made:
        why = f"is made of several things, perhaps of {bare}"
        yield Reason(Verdict.ASK, need, stuff.food, why, COMMON_PRACTICE, stuff.loc)


def _only_sounds_alike(stuff: Stuff, food: Facts, bare: str) -> bool:
    """Oyster mushrooms are mushrooms, not oysters: a likeness in the table, or a known food that contains nothing of
    what is meant."""
    if stuff.unknown or not stuff.parts:
        return False
    if food.traits:
        return not any(food.traits & part.traits for part in stuff.parts)
    ends = any(stems(part.name)[-len(stems(bare)) :] == stems(bare) for part in stuff.parts)
    return not ends and not any(part.words for part in stuff.parts)


def listed(traits: Iterable[Trait]) -> str:
    """`milk, soy and pork`: allergens first, each by its word."""
    ordered = sorted(traits, key=lambda trait: (not isinstance(trait, Allergen), trait.value))
    words = list(dict.fromkeys(str(trait.value) for trait in ordered))
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} and {words[-1]}"


def _by_label(stuff: Stuff, need: Need, traits: list[Trait]) -> str:
    """What to write after reading the label; empty for what no label says."""
    own_word = need.diet is None and any(trait in need.never for trait in traits)
    words = need.words.removeprefix("no ") if own_word else listed(traits)
    if not all(named(str(trait.value)) for trait in traits):
        return ""
    return f"Read the label; where it says so, write `{stuff.food}, free from {words}`."


def sources_of(need: Need, traits: list[Trait]) -> str:
    """The list, table or advice by which each counts, once."""
    return "; ".join(dict.fromkeys(need.source_of(trait) for trait in traits))
