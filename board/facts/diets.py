"""What each diet excludes and what to ask about, with sources. Flags to ask a guest about, not rulings: what a faith, a
doctor or a habit allows is theirs to say."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from board.facts.allergens import EU_LAW, Allergen, declared_by
from board.facts.origins import ANIMAL, Origin, Trait

THE_WORD = "what the word means"
PREGNANCY = (
    "advice in pregnancy: UK NHS, foods to avoid in pregnancy; US FDA, food safety for pregnant women; from memory"
)
YOUNG_ALCOHOL = "no alcohol for children: UK Chief Medical Officers, 2009; from memory"
YOUNG_FISH = "no shark, swordfish or marlin under 16: UK NHS, fish and shellfish; from memory"
RETENTION = "cooking does not remove all of it: USDA Table of Nutrient Retention Factors, release 6, 2007; from memory"
COELIAC = "gluten: Regulation (EU) No 828/2014; oats: common practice, no source; both from memory"
FLAG = "a flag to ask your guest about, no ruling (common practice, no source)"


@dataclass(frozen=True)
class Diet:
    """`never`: not safe for this guest. `asks`: to ask about. `meat_with_dairy`: not in one dish. `cooked`: ask about
    raw food unless it is cooked through. `chokes`: ask about whole nuts and the like. `safety`: treat as an allergy."""

    never: frozenset[Trait]
    source: str
    asks: frozenset[Trait] = frozenset()
    asks_source: str = FLAG
    meat_with_dairy: bool = False
    cooked: bool = False
    chokes: bool = False
    safety: bool = False
    sources: Mapping[Trait, str] = field(default_factory=dict)  # for traits with a source of their own


_FLESH: frozenset[Trait] = frozenset({Origin.FISH, Origin.CRUSTACEAN, Origin.MOLLUSC})
_OF_BEASTS: frozenset[Trait] = frozenset({Origin.MEAT, Origin.ANIMAL_FAT, Origin.GELATINE, Origin.INSECT_COLOUR})

_CHILD = Diet(
    frozenset({Origin.ALCOHOL, Origin.MERCURY_FISH}), YOUNG_ALCOHOL, sources={Origin.MERCURY_FISH: YOUNG_FISH}
)

DIETS: Mapping[str, Diet] = {
    "vegetarian": Diet(_FLESH | _OF_BEASTS | {Origin.RENNET, Origin.FININGS}, THE_WORD),
    "vegan": Diet(frozenset(ANIMAL), THE_WORD),
    "pescatarian": Diet(_OF_BEASTS - {Origin.GELATINE} | {Origin.RENNET}, THE_WORD, frozenset({Origin.GELATINE})),
    "halal": Diet(
        frozenset({Origin.PORK, Origin.ALCOHOL}),
        FLAG,
        frozenset({Origin.MEAT, Origin.ANIMAL_FAT, Origin.GELATINE, Origin.RENNET}),
        sources={Origin.ALCOHOL: f"{RETENTION}; {FLAG}"},
    ),
    "kosher": Diet(
        frozenset({Origin.PORK, Origin.CRUSTACEAN, Origin.MOLLUSC}),
        FLAG,
        frozenset(
            {Origin.MEAT, Origin.FISH, Origin.ANIMAL_FAT, Origin.GELATINE, Origin.RENNET, Origin.INSECT_COLOUR}
        ),
        meat_with_dairy=True,
    ),
    "coeliac": Diet(frozenset({Origin.GLUTEN}), COELIAC, frozenset({Origin.OATS}), COELIAC, safety=True),
    "lactose-free": Diet(frozenset({Origin.LACTOSE}), THE_WORD),
    "pregnant": Diet(frozenset({Origin.LIVER, Origin.VITAMIN_A, Origin.ALCOHOL, Origin.MERCURY_FISH}), PREGNANCY),
    **dict.fromkeys(("infant", "toddler", "under five", "child"), _CHILD),
    "alcohol-free": Diet(frozenset({Origin.ALCOHOL}), RETENTION),
}  # fmt: skip

# Core temperatures at which raw food counts as cooked through, °C: egg dishes and ground meat 160 °F, written there as
# 71 °C; fish and whole cuts 145 °F; poultry 165 °F, written there as 74 °C; USDA FSIS / FoodSafety.gov, safe minimum
# internal temperatures.
COOKED_CELSIUS: Mapping[str, float] = {
    "eggs": 71.0,
    "ground meat": 71.0,
    "fish": (145 - 32) * 5 / 9,
    "whole cut": (145 - 32) * 5 / 9,
    "poultry": (165 - 32) * 5 / 9,
}


def named_by_law(trait: Trait) -> str | None:
    """The laws that make a label name it, in words; None if neither does."""
    if isinstance(trait, Allergen):
        laws = declared_by(trait)
        return f"must be on the label: {'; '.join(laws)}" if laws else None
    return f"must be on the label: {EU_LAW}" if trait is Origin.GLUTEN else None
