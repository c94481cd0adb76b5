"""How foods are written down here: groups of names that share what is in them.

Names stand with commas between; `a = b` are two names of one food; `~beef tomato` is a food whose other words say
nothing of what is in it. What a food is made of, and what it often holds, is common practice, no source, unless a
group says otherwise: the label of what is bought decides.
"""

from dataclasses import dataclass
from typing import Literal

from board.kitchen.origins import Trait, with_what_follows

RawClass = Literal["poultry", "ground meat", "whole cut", "fish", "eggs"]
COMMON_PRACTICE = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Entry:
    """One food under one of its names. `likeness`: its other words name no food that is in it.

    `made`: it is made of several things, which only its label or its recipe names in full.
    """

    phrase: str
    name: str  # the first of its names
    traits: frozenset[Trait]
    raw_class: RawClass | None
    perishable: bool
    hidden: frozenset[Trait]
    made: bool
    likeness: bool


def group(
    names: str,
    *traits: Trait,
    raw: RawClass | None = None,
    perishable: bool = False,
    hidden: tuple[Trait, ...] = (),
    made: bool = False,
) -> tuple[Entry, ...]:
    """The entries of foods that share what is in them; `hidden` is what they often hold."""
    own = with_what_follows(frozenset(traits))
    also = with_what_follows(frozenset(hidden)) - own
    found = []
    for food in " ".join(names.split()).split(", "):
        likeness, aliases = food.startswith("~"), food.lstrip("~").split(" = ")
        found += [Entry(alias, aliases[0], own, raw, perishable, also, made, likeness) for alias in aliases]
    return tuple(found)
