"""What a step does to food, from the words a cook writes: heats, cuts, marinates, thaws, stuffs. Pure.

Common practice, no source. A verb counts where English puts one: at the beginning, or after `and`, `then`, a comma or
the like; `slice the roast chicken` roasts nothing.
"""

import re
from collections.abc import Callable

from board.facts.phrases import folded

Deed = Callable[[str], bool]  # whether a text says so


def _finds(pattern: str) -> Deed:
    found = re.compile(pattern)
    return lambda text: found.search(folded(text)) is not None


_BEFORE = (
    r"(?:^|[,;:&(/]\s*|\b(?:and|then|to|or|now|finally|first|gently|lightly|quickly|slowly|briefly|hard|hot|pan|deep|"
    r"stir|slow|pot|spit|dry|shallow|flash|double|oven|it|them|partly|partially|part|half|par|pre|fast)[\s-]+)"
)


def _verb(words: str) -> Deed:
    return _finds(rf"{_BEFORE}(?:{words})\b")


def _anywhere(words: str) -> Deed:
    return _finds(rf"\b(?:{words})")


heats_by_word = _verb(
    r"roast|bak(?:e|ing)|fry|fries|grill|griddle|barbecue|bbq|poach|simmer|boil|steam|stew|braise|sear|brown|saute|"
    r"cook|broil|blanch|parboil|parcook|precook|confit|scald|scramble|char|blacken|microwave|pressure-cook|hot-smoke|"
    r"smoke|flambe|sous[ -]vide|toast|crisp|render"
)
names_hot_tool = _anywhere(
    r"(?:slow|pressure|rice|multi)[ -]?cooker|crock ?-?pot|air fryer|deep fryer|sous[ -]vide|water bath|barbecue|bbq|"
    r"grill|smoker|microwave|wok|hot plate|tandoor|fire pit"
)
# Held at a heat that only the cook sets; every other such tool cooks by its maker's own.
names_bath = _anywhere(r"sous[ -]vide|water bath|immersion|circulator|bain[ -]marie")
# USDA FSIS, slow cookers and food safety: 170 to 280 °F by its own heat, read in a copy; the warm setting cooks
# nothing, read in Iowa State Extension, which cites it.
only_warms = _anywhere(r"(?:on|at|to) (?:the )?(?:keep[ -])?warm\b(?! water)|(?:keep[ -])?warm setting")
heats_by_place = _anywhere(
    r"(?:on|over|in|under|to|into) (?:the |a |an )?(?:very )?(?:hot )?"
    r"(?:oven|grill|barbecue|bbq|pan|coals|embers|fire|broiler|fryer|wok|griddle|hob|stove|boiling \w+)\b"
)


def says_heat(text: str) -> bool:
    """Whether it heats by its verb, or by the place it names: `barbecue the thighs`, `back under the grill`."""
    return heats_by_word(text) or heats_by_place(text)


# Hot, and no cooking: what is done has been cooked before, or is dough that rises.
only_keeps_warm = _verb(r"keep|hold|rest|prove|proof|dry|warm (?:the )?(?:plates|bowls|dishes)|let (?:it|them) rest")
stands = _verb(r"soak|cool|chill|shred|pull|lift|take|rest|prove|proof|dry")  # in a tool, or out of it, unlit
cuts = _verb(
    r"slice|cut|chop|dice|carve|trim|joint|bone|debone|fillet|mince|shred|cube|halve|quarter|skin|portion|spatchcock|"
    r"butterfly|pound|flatten|julienne|shave|score|tear|segment"
)
handles = _verb(
    r"season|salt|marinate|brine|rub|skewer|thread|bread|crumb|coat|flour|shape|form|mix|stuff|truss|tie|roll|lay|"
    r"wash|rinse|pat|oil|skin|beat|whisk|crack|separate|break|lift|put|arrange|baste|brush"
)
marinates = _finds(
    r"\b(?:marinate|marinating|brine|brining|steep|(?:in|with) (?:its|their|the|a|some) (?:\w+ )?(?:marinade|brine))\b|"
    r"\b(?:leave|let|soak|sit|lie|stand|bathe|cover)\b.*\b(?:in|with)\b.*\b(?:soy|wine|beer|cider|yogh?urt|buttermilk|"
    r"vinegar|lemon|lime|orange|oil|miso|spices|paste|adobo|coconut milk)\b"
)
part_cooks = _anywhere(
    r"(?:half|part|partly|partially|par|pre)[ -]?(?:cook|roast|bake|boil|fry|fries|grill)(?:ed)?\b|parboil"
)
_colours = _verb(r"sear|brown|seal|colou?r|char|blanch")
_cooks_on = _verb(r"simmer|roast|bake|braise|stew|boil|poach|cook|steam|grill|fry|casserole|barbecue")
thaws_by_word = _anywhere(r"thaw|defrost|unfreeze|(?:out of|from) the freezer|freezer (?:in)?to (?:the )?fridge")
thaws_well = _anywhere(r"fridge|refrigerat|cold water|running water|microwave|iced water|cold larder")
from_frozen = _anywhere(r"from frozen|straight from the freezer|still frozen|while frozen")
stuffs = _finds(
    r"\b(?:stuff|fill)\b(?! (?:the )?(?:pepper|vine|mushroom|tomato|onion|courgette|squash|cabbage|date|olive|egg))|"
    r"\bstuffing (?:in|into|inside|under)\b|\b(?:in|into|inside) the cavity\b"
)
names_aromatics = _finds(
    r"\b(?:lemon|orange|lime|herb|thyme|rosemary|sage|tarragon|parsley|bay|garlic|onion|shallot|apple quarter)"
)
names_filling = _finds(
    r"\b(?:stuffing|bread|crumb|rice|sausage|mince|forcemeat|farce|couscous|grain|oat|potato|cheese)"
)
slow_and_moist = _anywhere(
    r"brais|stew|casserole|confit|poach|sous[ -]vide|slow|low and|pot[ -]roast|tagine|curry|simmer|pulled|steam|"
    r"in (?:its|the|their|duck|goose|olive)(?: own)? (?:fat|oil|stock|wine|sauce|liquor|broth|milk|juices)"
)
slow_cooks = _anywhere(r"slow[ -]?cook|crock ?-?pot")
simmers = _verb(r"simmer|boil|stew|braise|pot[ -]roast|casserole")
boils = _verb(
    r"boil|bring (?:it |them |the \w+(?: \w+)? )?(?:back )?(?:up )?to (?:a|the) (?:rolling |full |hard )?boil"
)
pressure_cooks = _anywhere(r"pressure")
hard_boils = _anywhere(r"hard[ -]boil|boil (?:the |\d+ |all (?:the )?)*(?:quail )?eggs? hard|hard-cook")
infuses = _anywhere(
    r"infus|steep|confit|(?:garlic|chill?i|herb|basil|rosemary) oil|under (?:the )?oil|in(?:to)? (?:the |a |its )?"
    r"(?:\w+ )?oil|(?:cover|top|seal)\w*\b.*\bwith (?:the )?(?:\w+ )?oil"
)
lies_under_oil = _anywhere(r"under (?:the )?oil|preserv|pack|jar|(?:cover|top|seal|store|keep|leave|pot)\w*\b.*\boil")
washes_food = _verb(r"wash|rinse")
washes_up = _verb(
    r"wash up|wash everything|wash it all|clear(?: down| up)?(?: and wash)?|wipe down(?: and wash up)?|clean down|"
    r"clean up|do the dishes|scrub down|sanitis\w+|sanitiz\w+"
)
washes_tool = _verb(r"wash|scrub|clean|sanitise|sanitize|disinfect|scald|swap|change")
spoons_marinade = _finds(
    r"\b(?:pour|spoon|drizzle|brush|serve|dress|toss|use|add|finish)\b.*\bmarinade\b(?! (?:kept|set aside|put by))"
)
keeps_marinade_apart = _finds(r"\b(?:reserved|kept back|set aside|put by|fresh|clean|unused|boiled)\b")
speaks_of_dough = _anywhere(r"dough|batter|truffle|bites?\b|balls?\b|cookie|biscuit|brownie|raw")

drains = _verb(r"drain|strain")
dresses = _verb(r"toss|dress")
carves = _verb(r"carve")
wets = _verb(r"soak|rinse|wash|brine|salt|steep|thaw|blanch|pickle|parboil|simmer|cook|(?:leave|put|let)\b.*\bsoak")
soaks = _finds(r"\bsoak(?:ing)?\b(?! (?:in|with))")
brines = _verb(r"marinate|marinade|brine|dry-brine|cure")
freezes = _finds(r"\bfreeze\b|\bfreezer\b")
raises_dough = _finds(
    r"\b(?:knead|prove|proof|rise|ferment)\b|\b(?:mix|make|shape|roll out|knock back|rest)\b.*\b(?:dough|pastry)\b"
)


def only_colours(text: str) -> bool:
    """Whether it browns the outside and does no more: `brown the thighs`, not `brown them, then simmer`."""
    return _colours(text) and not _cooks_on(text)
