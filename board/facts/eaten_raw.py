"""What is eaten raw, or nearly so, on purpose; and what is plainly cooked through without a thermometer. Pure.

Words of dishes and steps: common practice, no source, except where one stands.
"""

import re
from collections.abc import Iterable

from board.facts.phrases import folded

# Meat and fish. `cured`: salt, sugar and acid cook nothing.
_RAW_DISHES = re.compile(
    r"\b(?:tartare?s?|[cs]evich\w*|cebich\w*|sashimi|carpaccio|gravla\w+|gravad\w*|gravet|crudo|pok[eé]|sushi|nigiri|"
    r"maki|tiradito|kinilaw|aguachile|raw|rare|cur(?:e|es|ed|ing)|rollmops?|half[ -]shells?|boquerones|matjes|mett|"
    r"hackepeter|yukhoe|kibbeh nay+eh|kitfo|shuck\w*|"
    r"(?:pickl|marinat|salt)\w+ (?:the )?(?:herrings?|anchov\w+|sardines?|mackerel|salmon))\b"
)
_RAW_EGGS = re.compile(
    r"\b(?:mousses?|mayonnaise|mayo|aioli|tiramis\w*|semifreddo|eggnog|egg nog|hollandaise|b[eé]arnaise|zabaglione|"
    r"sabayon|caesar|tartare?s?|carbonara|royal icing|raw|soft[ -]boiled|poached|runny|sunny|molten|fondants?|lava)\b"
)
# Of poultry and ground meat, by the words of a step; `no longer pink` is none. Common practice, no source.
UNDERDONE = re.compile(
    r"\b(?<!medium )(?<!not )rare\b(?![ -]breed)|"
    r"(?<!no longer )(?<!not )(?<!nothing )(?<!not longer )(?<!until not )\b(?:still|slightly|a little|just|blushing) "
    r"(?:pink|red|raw|bloody)\b|(?<!no longer )(?<!not )(?<!nothing )(?<!never )\b(?:pink|red|raw|bloody) "
    r"(?:inside|within|in the (?:middle|centre|center))"
)
EATEN_ALIVE = re.compile(r"\b(?:oysters?|clams?)\b")


def is_raw_dish(words: str, raw_class: str) -> bool:
    """Whether the words of a dish or a step say that such food is eaten raw, or barely cooked, on purpose."""
    return (_RAW_EGGS if raw_class == "eggs" else _RAW_DISHES).search(words.casefold()) is not None


# Eggs in dough, batter or a filling that is baked, boiled or fried through: nobody probes a biscuit.
_BAKED_MINUTES, _BAKED_CELSIUS = 20, 160.0  # common practice, no source
_THIN_MINUTES = 8  # biscuits, choux, pancakes and what is boiled or fried; common practice, no source
_THIN = re.compile(
    r"\b(?:biscuits?|cookies?|choux|profiteroles?|gougeres?|eclairs?|puffs?|madeleines?|tuiles?|langues?|shortbread|"
    r"macarons?|macaroons?|wafers?|lace|cones?|crackers?|straws?|rolls?|buns?|scones?|muffins?|cup ?cakes?|meringues?|"
    r"sponges?|roulades?|pretzels?|pastr\w+|tartlets?|cheese twists?|swiss rolls?|fairy cakes?|brownies?|blondies?)\b"
)
_OF_BATTER = re.compile(
    r"\b(?:pancakes?|crepes?|crêpes?|blinis?|waffles?|fritters?|doughnuts?|donuts?|tempura|batter|battered|pasta|noodles?|"
    r"tagliatelle|ravioli|lasagn\w+|spaetzle|spätzle|gnocchi|dumplings?|schnitzels?|breaded|crumbed|crumbs|latkes?|rosti|"
    r"rösti|falafels?|yorkshire|popovers?|toad|drop scones?|churros?|fried rice|egg wash|glaze)\b"
)


def is_baked_through(words: str, step: str, celsius: float | None, minutes: int) -> bool:
    """Whether eggs in it are plainly cooked through: 20 min and more in an oven at 160 °C and up, 8 for what is thin,
    or a dough or batter that a step cooks. `words`: of the dish and its steps; `minutes`: the least the step takes.
    Common practice, no source; a mousse, a fondant and the like are none of it."""
    if is_raw_dish(words, "eggs"):
        return False
    folded = f"{words} {step}".casefold()
    if celsius is not None and celsius >= _BAKED_CELSIUS:
        return minutes >= _BAKED_MINUTES or (minutes >= _THIN_MINUTES and _THIN.search(folded) is not None)
    if celsius is not None:  # a slow meringue dries for an hour and more
        return re.search(r"\bmeringues?|pavlova", folded) is not None and minutes >= 60 and celsius >= 90
    return _OF_BATTER.search(folded) is not None


# A browned meringue round ice cream: the middle stays frozen, and no probe has any business there.
_ICE = re.compile(
    r"\b(?:ice[ -]?creams?|sorbets?|gelatos?|granitas?|parfaits?|semifreddos?|frozen yogh?urts?|alaska)\b"
)
_ROUND_ICE = re.compile(
    r"\b(?:alaska|meringue|brown\w*|golden|colou?r\w*|torch\w*|blow-?torch\w*|scorch\w*|flambe\w*)\b"
)
_BROWNED_MINUTES = 10  # common practice, no source


def only_browns_ice(dish: str, foods: Iterable[str], step: str, minutes: int) -> bool:
    """Whether a step only browns the outside of a dish with an ice inside: a few minutes in the oven, or a torch.
    `minutes`: the least it takes."""
    words = folded(f"{dish} {step}")
    iced = _ICE.search(folded(" ".join((dish, *foods)))) is not None
    return iced and minutes <= _BROWNED_MINUTES and _ROUND_ICE.search(words) is not None


_SIMMERED_MINUTES = {"ground meat": 30}  # in a sauce; common practice, no source
_SIMMERED_OTHERS = 60  # pieces in liquid at the boil; common practice, no source
_STEWED_OVEN_MINUTES, _STEWED_CELSIUS = 90, 140.0  # the same in the oven; common practice, no source


def is_stewed_through(raw_class: str, celsius: float | None, minutes: int) -> bool:
    """Whether meat that a step boils, simmers, stews or braises for so long is plainly cooked through."""
    if celsius is not None:
        return minutes >= _STEWED_OVEN_MINUTES and celsius >= _STEWED_CELSIUS
    return minutes >= _SIMMERED_MINUTES.get(raw_class, _SIMMERED_OTHERS)


# Cured and thin: fried or baked at all, it is done; common practice, no source.
THIN_CURED = re.compile(r"\b(?:bacon|pancetta|lardons?|guanciale|speck|rashers?|anchov\w+|kippers?)\b")
# FoodSafety.gov's chart tells by the eye when fish, shellfish and eggs are done; from memory.
_DONE_BY_EYE = {
    "fish": re.compile(r"\b(?:opaque|flak\w+|open\w*|firm|curl\w*|pink|white all through)\b"),
    "eggs": re.compile(r"\b(?:firm|set|hard|solid)\b"),
}


def is_done_by_eye(raw_class: str, look_for: str) -> bool:
    """Whether what a step looks for is a sign that such food is done."""
    sign = _DONE_BY_EYE.get(raw_class)
    return sign is not None and sign.search(look_for.casefold()) is not None


# FDA Food Code 3-402.11(B): no freezing asked for; read in state adoptions. `tuna`: of the large species, our reading.
NO_PARASITES = re.compile(
    r"\b(?:tuna|yellowfin|bluefin|bigeye|albacore|ahi|toro|oysters?|clams?|mussels?|cockles?|scallops?|roe|caviar|ikura|"
    r"tobiko|farmed|aquaculture\w*|farm[ -]raised)\b"
)
SAID_FROZEN = re.compile(r"\b(?:frozen|deep[ -]frozen|freez\w*)\b")
SAID_THAWED = re.compile(r"\b(?:thawed|defrosted|previously frozen|never frozen|not frozen)\b")
