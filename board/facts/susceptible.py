"""Who is more easily harmed by food, and what is not for them though others eat it: raw and half-cooked food, what
carries Listeria, honey for infants, what can choke a small child. Flags beside what a doctor or midwife says.

The codes call them a highly susceptible population: FDA Food Code 1-201.10 and 3-801.11. All of it is from memory.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from board.facts.diets import PREGNANCY, Diet
from board.facts.origins import Origin, Trait

HSP = "FDA Food Code 3-801.11, highly susceptible population, from memory of the 2022 edition"
LISTERIA = (
    "US CDC, Listeria: safer choices for the pregnant, those of 65 and older and the immunocompromised; UK NHS; from "
    "memory"
)
YOUNG = "UK NHS, foods to avoid giving babies and young children; from memory"
HONEY = "no honey before the first birthday, for infant botulism: UK NHS; US CDC; from memory"
RAW_FLOUR = "raw flour and raw dough make ill: US FDA, raw dough's a raw deal; UK FSA; from memory"
CHOKING = "whole nuts, grapes and the like can choke a child under five: UK NHS; US CDC, choking hazards; from memory"
RAW_SPROUTS = (
    "raw seed sprouts are not served to the pregnant, old, very young or ill: FDA Food Code 3-801.11; US FDA, food "
    "safety for pregnant women; from memory"
)
STEAMING = 74.0  # °C: 165 °F, to which cold cuts, smoked fish and soft cheese are heated for them: CDC, from memory


@dataclass(frozen=True, slots=True)
class Risk:
    """A kind of food that is risky until it is cooked. `sure`: not served at all; else it is asked about."""

    trait: Trait
    sure: bool
    source: str


RISKS = (
    Risk(Origin.RAW_MILK, True, LISTERIA),
    Risk(Origin.MOULD_CHEESE, True, LISTERIA),
    Risk(Origin.SPROUTS, True, RAW_SPROUTS),
    Risk(Origin.COLD_SMOKED, True, LISTERIA),
    Risk(Origin.RAW_FISH, True, HSP),
    Risk(Origin.RAW_DOUGH, True, RAW_FLOUR),
    Risk(Origin.RAW_EGG, False, HSP),
    Risk(Origin.SMOKED_FISH, False, LISTERIA),
    Risk(Origin.CURED_MEAT, False, LISTERIA),
    Risk(Origin.COLD_CUTS, False, LISTERIA),
)

_PATE: frozenset[Trait] = frozenset({Origin.PATE})


def _harmed(source: str, *never: Trait, asks: tuple[Trait, ...] = (), chokes: bool = False) -> Diet:
    own: dict[Trait, str] = {Origin.PATE: LISTERIA, Origin.HONEY: HONEY}
    return Diet(
        _PATE | set(never), source, frozenset(asks), HONEY, cooked=True, chokes=chokes, safety=True, sources=own
    )


# By the words of a guest; what is only advised against stands in `diets.DIETS`.
SUSCEPTIBLE: Mapping[str, Diet] = {
    "pregnant": _harmed(f"{PREGNANCY}; {HSP}"),
    "elderly": _harmed(HSP),
    "immunocompromised": _harmed(HSP),
    "infant": _harmed(f"{YOUNG}; {HSP}", Origin.HONEY, chokes=True),
    "toddler": _harmed(f"{YOUNG}; {HSP}", chokes=True),
    "under five": _harmed(f"{YOUNG}; {HSP}", asks=(Origin.HONEY,), chokes=True),  # perhaps not one yet
}

# Words of a dish or a step by which a class of food in it stays raw, or is barely cooked; they are patterns. Common
# practice, no source; Caesar, hollandaise, béarnaise, mayonnaise and eggnog: FDA Food Code 3-801.11.
_OF_FLESH = r"tartares?|tartars?|carpaccio|tataki|(?<!prosciutto )crudo|kibbeh nayyeh|kitfo|(?:serve[ds]?|eat\w*) raw"
_RARE = (
    r"rare(?![ -]breed)|(?:still|serve[ds]?|keep|kept|leave|left|just|blushing) pink"
    r"|pink (?:inside|in the (?:middle|centre|center))"
)
STAYS_RAW: Mapping[str, str] = {
    "eggs": r"mousses?|mayonnaise|mayo|a[il]+oli|rouille|tiramisu|semifreddos?|parfaits?|egg ?(?:nog|flip)|royal icing"
    r"|caesar|tartares?|(?:whisky|whiskey|pisco) sours?|raw (?:eggs?|yolks?)",
    "fish": rf"{_OF_FLESH}|sashimi|ce[bv]iche|tiradito|poke (?:bowls?|salad)|sushi|nigiri|half shell|raw bar|gravlax"
    r"|gravadlax",
    "whole cut": _OF_FLESH,
    "ground meat": _OF_FLESH,
    "poultry": _OF_FLESH,
}
BARELY_COOKED: Mapping[str, str] = {
    "eggs": r"hollandaise|bearnaise|sabayon|zabaglione|zabaione|soft[- ]?boil\w*|soft[- ]?set|softly set|runny|jammy"
    r"|poach\w* (?:\w+ )?eggs?|eggs? benedict|sunny[- ]side|over easy|coddle\w*|onsen|carbonara|en cocotte"
    r"|italian meringue|molten|(?:chocolate )?fondants?(?! (?:icing|potato))|lava cakes?|moelleux",
    "fish": r"rare|translucent|mi[- ]cuit|seared (?:\w+ )?(?:tuna|scallops?)",
    "whole cut": _RARE,
    "ground meat": _RARE,
    "poultry": _RARE,
}
NOT_RAW = (
    r"(?:eggs?|tuna|chicken) (?:mayo|mayonnaise)|tartare? sauce|sauce tartare?"
    r"|cream of tartar|pink (?:peppercorns?|grapefruits?|gin|lady|salt)"
)
# So long in liquid on the heat, any piece a household cooks is cooked through; or eggs in a hot oven. Minutes. Common
# practice, no source: a probe knows.
MOIST = r"(?:brais|stew|simmer|boil|poach|steam|confit|casserol|pot[- ]?roast|slow[- ]?cook|pressure[- ]?cook)\w*"
# Of a food itself: it comes to the dish cooked through.
SAID_COOKED = r"slow[- ]?(?:roast|cook)ed|pot[- ]?roasted|braised|stewed|simmered|confit|well[- ]done"
HARD_BOILED = r"(?:hard[- ]?)?boil\w*|hard[- ]?cook\w*"
MOIST_MINUTES: Mapping[str, int] = {"eggs": 10, "fish": 15, "ground meat": 30, "poultry": 45, "whole cut": 60}
BAKED_CELSIUS, BAKED_MINUTES = 150, 25
BOUGHT_COOKED = ("crabmeat", "white crab meat", "brown shrimp")  # as a rule; asked about
# Sauces out of a jar, whose eggs are pasteurised, and raw egg at home; beside all that may hold it anywhere.
OF_RAW_EGG_AT_HOME = ("mayonnaise", "garlic mayonnaise", "garlic rouille", "gribiche", "remoulade", "tartare sauce",
                      "tonnato", "vitello tonnato", "egg mayonnaise", "tuna mayonnaise", "marie rose sauce",
                      "prawn cocktail", "thousand island dressing", "russian dressing", "celeri remoulade",
                      "coleslaw", "mustard mayonnaise")  # fmt: skip
# Of raw or barely cooked egg by their nature, but for what is bought.
MADE_OF_RAW_EGG = ("hollandaise", "bearnaise", "caesar dressing", "royal icing", "eggnog", "zabaglione")
# Frozen or set round a custard that some cook and some do not; out of a tub its eggs are pasteurised.
OF_CUSTARD_AT_HOME = ("ice cream", "vanilla ice cream", "ice cream base", "gelato", "frozen custard",
                      "lemon meringue pie", "bavarois", "egg liqueur")  # fmt: skip
COOKS_DOUGH = r"bak(?:e|es|ing)|fr(?:y|ies|ying)|griddle|cook|steam|boil|poach|simmer|grill|barbecue|toast"
WHOLE_NUTS = "almond hazelnut walnut cashew pecan pistachio macadamia peanut nut"
CHOKES = ("grape", "cherry tomato", "popcorn", "marshmallow", "cherry")
MADE_SMALL = (
    "ground chopped flaked crushed sliced slivered grated halved quartered pitted milled powder powdered flour butter "
    "oil milk drink cream paste meal puree nibbed shaved blended mashed essence extract liqueur juice jam sauce dried "
    "vinegar"
)
