"""What is never left alone on the heat: hot fat, a grill, boiling sugar, a flame. By the words of a step. Pure.

NFPA, cooking safety: stay in the kitchen while frying, grilling or broiling; turn the stove off if you leave, even for
a short time. What simmers, boils, bakes or roasts is looked at regularly, by somebody who stays at home. NFPA, candle
safety: no candle burns on when the room is left. Both as fire services and NFPA's own pages hand them on. That boiling
sugar is watched like hot fat is common practice, no source. The patterns of words are ours.
"""

import re
from typing import Literal

from board.facts.phrases import folded

Watched = Literal["hot fat", "a grill", "boiling sugar", "a flame"]
COOKING_SOURCE = "NFPA, cooking safety: stay in the kitchen while frying, grilling or broiling"
FLAME_SOURCE = "NFPA, candle safety: out when you leave the room"
PAUSE = 2  # minutes between two looks in which nobody gets far; ours
LOOKED_AT = 30  # minutes in which somebody at home sees a fire in its hearth, or a flame behind glass, burn on; ours
# Usual jobs. No candle and no lit grill is left alone at all: NFPA, as above; its `never leave a burning candle, or a
# grill, unattended` is from memory.
LIGHTS = {"light the candles": PAUSE, "light the barbecue": PAUSE, "light the fire": LOOKED_AT}
BEHIND_GLASS = re.compile(r"\b(?:lanterns?|hurricane lamps?|storm lamps?)\b")
PUTS_OUT = ("blow out the candles",)

_START = (
    r"(?:^|[,;:&(/]\s*|\b(?:and|then|to|or|now|finally|first|gently|lightly|quickly|briefly|hard|hot|pan|deep|stir|dry|"
    r"shallow|flash|double|it|them)[\s-]+)"
)


def _verb(words: str) -> re.Pattern[str]:
    return re.compile(rf"{_START}(?:{words})\b")


_FRIES = _verb(r"(?:re)?fry|fries|sear|saute|flash-fry|heat (?:the |some |up the )?(?:\w+ )?(?:oil|fat|lard|dripping)")
_DEEP = re.compile(
    r"\b(?:deep[ -]?(?:fat[ -]?)?fr(?:y|ies|ied|yer)|(?:in|into) (?:the )?(?:hot|deep) (?:oil|fat)|tempura)\b"
)
_BROWNS = _verb(r"brown|seal|colou?r|crisp")
_GRILLS = _verb(r"grill|griddle|broil|char-?grill|barbecue|bbq")
_UNDER = re.compile(
    r"\b(?:under|below|on|over) (?:the |a )?(?:very )?(?:hot )?(?:grill|broiler|barbecue|coals|embers)\b"
)
_SUGAR = re.compile(
    rf"{_START}(?:carameli[sz]e (?:the |some )?(?:\w+ )?sugar|"
    r"(?:boil|cook|make|melt|heat|colou?r|bring|start) (?:the |a |some |\d+ ?g )?(?:\w+ )?"
    r"(?:sugar|caramel|(?:sugar )?syrup|toffee|brittle|praline|honeycomb|fudge|nougat))\b"
)
_FLAMES = _verb(
    r"flambe|torch|blow-?torch|scorch|ignite|kindle|set (?:\w+ ){0,3}(?:alight|on fire|fire to)|set fire to"
)
_BURNS = re.compile(r"\bfondue|rechaud|chafing|tabletop burner|spirit (?:stove|burner)\b")
_NO_FLAME = re.compile(r"\b(?:air[ -]?fry\w*|oven[ -]fry\w*|electric candles?|led candles?|pocket torch|torchlight)\b")
_GOES_ON = _verb(
    r"simmer|braise|stew|boil|poach|bake|roast|steam|cover|sweat|soften|finish in the oven|add the (?:stock|wine)"
)


def watched(text: str, place: str) -> Watched | None:
    """What burns or scalds while a step lasts that is done at a place (`stovetop`, `oven`, …), if it must be watched;
    None for what only wants looking at."""
    words = _NO_FLAME.sub(" ", folded(text))
    if place in ("fridge", "freezer"):
        return None
    if _FLAMES.search(words) or (_BURNS.search(words) and place == "front-of-house"):
        return "a flame"
    if _GRILLS.search(words) or _UNDER.search(words):
        return "a grill"
    if place == "oven":
        return None
    if _SUGAR.search(words) and place == "stovetop":
        return "boiling sugar"
    fat = _DEEP.search(words) or _FRIES.search(words) or (place == "stovetop" and _BROWNS.search(words))
    return "hot fat" if fat else None


def goes_on(text: str) -> bool:
    """Whether the same step goes on with what wants looking at only: `brown the beef, then braise it`."""
    return _GOES_ON.search(folded(text)) is not None
