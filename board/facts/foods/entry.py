"""How foods are written here: groups of names that share what is in them.

Names are separated by commas; `a = b` are two names of one food; in `~beef tomato` the other words say nothing about
its contents. What a food is made of and often holds is common practice, no source, unless a group says otherwise: the
label of what is bought decides.
"""

from dataclasses import dataclass
from typing import Literal

from board.facts.origins import Trait, with_what_follows

RawClass = Literal["poultry", "ground meat", "whole cut", "fish", "eggs"]
COMMON_PRACTICE = "common practice, no source"
# Egg white (albumin) and casein used to clear a wine: named on an EU label if found in it. Isinglass and fish gelatine
# are exempt there in wine and beer (Annex II, 4 (b)), so a fish allergy is not asked about; with cider and perry, which
# are neither, it is. Somebody who eats no animals is asked about all, through `Origin.FININGS`. A US label need not
# name any of them.
FINED = (
    "finings: an EU label names egg, milk and, but for wine and beer, fish; Regulation (EU) No 1169/2011, Annex II, "
    "and Implementing Regulation (EU) No 579/2012; a US label need not; all from memory"
)
# Reactions to pink peppercorns are reported in people allergic to cashews and pistachios.
KIN = "one family of plants, Anacardiaceae; reactions are reported; common practice, from memory"
SAYS = {COMMON_PRACTICE: "often holds", FINED: "may be cleared with what is of", KIN: "is kin to"}  # by source


@dataclass(frozen=True, slots=True)
class Entry:
    """One food under one of its names. `likeness`: its other words name no food in it. `hidden`: what it often holds.
    `told`: what it may hold or resemble for a special reason, with the source.

    `made`: made of several things; only its label or recipe names them all.
    """

    phrase: str
    name: str  # the first of its names
    traits: frozenset[Trait]
    raw_class: RawClass | None
    perishable: bool
    hidden: frozenset[Trait]
    made: bool
    likeness: bool
    told: tuple[tuple[Trait, str], ...] = ()


def group(
    names: str,
    *traits: Trait,
    raw: RawClass | None = None,
    perishable: bool = False,
    hidden: tuple[Trait, ...] = (),
    made: bool = False,
    fined: tuple[Trait, ...] = (),
    kin: tuple[Trait, ...] = (),
) -> tuple[Entry, ...]:
    """Entries of foods that share their contents. `hidden`: what they often hold; `fined`: what may have cleared them;
    `kin`: what they are related to closely enough to do the same harm."""
    own = with_what_follows(frozenset(traits))
    also = with_what_follows(frozenset(hidden)) - own
    told = (*((trait, FINED) for trait in fined), *((trait, KIN) for trait in kin))
    found = []
    for food in " ".join(names.split()).split(", "):
        likeness, aliases = food.startswith("~"), food.lstrip("~").split(" = ")
        found += [Entry(alias, aliases[0], own, raw, perishable, also, made, likeness, told) for alias in aliases]
    return tuple(found)
