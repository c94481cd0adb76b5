"""The two legal lists of food allergens, as sets over one vocabulary fine enough for both.

Sources: United States: FALCPA 2004 (Public Law 108-282) and the FASTER Act 2021 (Public Law 117-11); which nuts count
as tree nuts: FDA, Questions and Answers Regarding Food Allergens, Edition 5, January 2025, Table 1 (its twelve names;
read in copies). European Union: Regulation (EU) No 1169/2011, Annex II (read in copies).
"""

from collections.abc import Mapping
from enum import Enum


class Allergen(Enum):
    """One food that people are allergic to; its value is the word shown."""

    WHEAT = "wheat"  # spelt and khorasan are wheat
    RYE = "rye"
    BARLEY = "barley"
    OATS = "oats"
    CRUSTACEANS = "crustaceans"
    EGGS = "eggs"
    FISH = "fish"
    PEANUTS = "peanuts"
    SOY = "soy"
    MILK = "milk"
    ALMONDS = "almonds"
    HAZELNUTS = "hazelnuts"
    WALNUTS = "walnuts"
    CASHEWS = "cashews"
    PECANS = "pecans"
    BRAZIL_NUTS = "Brazil nuts"
    PISTACHIOS = "pistachios"
    MACADAMIAS = "macadamias"
    PINE_NUTS = "pine nuts"  # US only
    CHESTNUTS = "chestnuts"  # on neither list
    COCONUT = "coconut"  # on neither list
    CELERY = "celery"
    MUSTARD = "mustard"
    SESAME = "sesame"
    SULPHITES = "sulphites"
    LUPIN = "lupin"
    MOLLUSCS = "molluscs"


A = Allergen
_EU_NUTS = frozenset(
    {A.ALMONDS, A.HAZELNUTS, A.WALNUTS, A.CASHEWS, A.PECANS, A.BRAZIL_NUTS, A.PISTACHIOS, A.MACADAMIAS}
)

US_LAW = "FALCPA 2004 and FASTER Act 2021"
EU_LAW = "Regulation (EU) No 1169/2011, Annex II"

US_NINE: Mapping[str, frozenset[Allergen]] = {
    "milk": frozenset({A.MILK}),
    "eggs": frozenset({A.EGGS}),
    "fish": frozenset({A.FISH}),
    "crustacean shellfish": frozenset({A.CRUSTACEANS}),
    "tree nuts": _EU_NUTS | {A.PINE_NUTS},
    "peanuts": frozenset({A.PEANUTS}),
    "wheat": frozenset({A.WHEAT}),
    "soybeans": frozenset({A.SOY}),
    "sesame": frozenset({A.SESAME}),
}
EU_FOURTEEN: Mapping[str, frozenset[Allergen]] = {
    "cereals containing gluten": frozenset({A.WHEAT, A.RYE, A.BARLEY, A.OATS}),
    "crustaceans": frozenset({A.CRUSTACEANS}),
    "eggs": frozenset({A.EGGS}),
    "fish": frozenset({A.FISH}),
    "peanuts": frozenset({A.PEANUTS}),
    "soybeans": frozenset({A.SOY}),
    "milk": frozenset({A.MILK}),
    "nuts": _EU_NUTS,
    "celery": frozenset({A.CELERY}),
    "mustard": frozenset({A.MUSTARD}),
    "sesame": frozenset({A.SESAME}),
    "sulphur dioxide and sulphites": frozenset({A.SULPHITES}),  # above 10 mg/kg or 10 mg/l, as SO2
    "lupin": frozenset({A.LUPIN}),
    "molluscs": frozenset({A.MOLLUSCS}),
}

US_ALL: frozenset[Allergen] = frozenset().union(*US_NINE.values())
EU_ALL: frozenset[Allergen] = frozenset().union(*EU_FOURTEEN.values())

TREE_NUTS: frozenset[Allergen] = US_NINE["tree nuts"]
# Not nuts on either list, but people may mean them: ask.
LIKE_NUTS: frozenset[Allergen] = frozenset({A.CHESTNUTS, A.COCONUT})


def declared_by(allergen: Allergen) -> tuple[str, ...]:
    """The laws under which a label must name it: US, EU, both or none."""
    laws = ((US_ALL, US_LAW), (EU_ALL, EU_LAW))
    return tuple(law for listed, law in laws if allergen in listed)
