"""What a step's words and a dish's name make of food: cut, baked dry, pickled, heated again. Pure.

Words of the trade, common practice, no source. They are searched in text that `folded` made plain; a verb counts where
English puts one: at the beginning, after `and`, `then`, a comma or the like (`slice the roast beef` roasts nothing).
"""

import re

_START = r"(?:^|[,;:]\s*|\b(?:and|then|to|or|first|gently|lightly|slowly|quickly|briefly|deep|pan|stir|hot|pre)[\s-]+)"


def _verb(words: str) -> re.Pattern[str]:
    return re.compile(rf"{_START}(?:{words})\b")


def _any(words: str) -> re.Pattern[str]:
    return re.compile(rf"\b(?:{words})\b")


# Hot water over what swells in it.
SWELLS = _any(r"(?:boiling|hot) (?:water|stock|broth|milk)|couscous swell|swell the (?:couscous|bulgur)|"
              r"(?:soak|steep|hydrate) the (?:couscous|bulgur)")  # fmt: skip
# Heated, and no more moist or cooked than before.
DRIES = _verb(r"toast|dry|crisp|pop|candy|dehydrate")
# Part-cooked only, so that what heats it next is its cooking.
PART_COOKS = _verb(
    r"blanch|par-?boil|par-?cook|par-?bake|part-?cook|half-?cook|brown|sear|seal|colou?r|sweat|soften|melt|render|"
    r"infuse|scald|temper|blind-?bake|cook the (?:\w+ )*(?:base|custard)"
)
# The top only.
FINISHES_TOP = _any(
    r"torch|brulee|glaze|caramelise|caramelize|gratinate|scorch|(?:brown|toast|colou?r|grill) the "
    r"(?:top|meringue|crust|sugar)"
)
CUTS = _verb(
    r"slice|cut|chop|dice|halve|quarter|tear|shred|cube|wedge|segment|ball|scoop|blend|blitz|puree|mash|crush|"
    r"grate|dress|toss|mix|make|stir|fold|assemble|stuff|fill|skewer|carve|peel|seed|deseed|core|spiralise|separate|build"
)
# Left as it is: the step handles, keeps or carries it.
LEAVES_ALONE = _verb(
    r"put|set|lay|wash|rinse|dry|spin|bring|carry|take|chill|cool|store|pack|wrap|cover|keep|unpack|weigh|pick|soak|"
    r"drain|rest|leave|let|stand|pile|pour|serve|buy|fetch|freeze|thaw|ripen|warm"
)
WHOLE = _any(r"whole|uncut|on the vine")
# Takes no further ingredient in.
ONLY_KEEPS = _verb(
    r"cool|chill|rest|store|wrap|pack|slice|cut|carry|lay|arrange|dust|set|unmould|turn|serve|freeze|keep|leave|let|"
    r"warm|reheat|put|take|bring|stand|portion|plate|refresh|crisp"
)
CHILLS = _any(r"chill\w*|cool\w*|refrigerate\w*|freeze\w*|frozen|thaw\w*|defrost\w*|fridge")


def _forms(names: str) -> re.Pattern[str]:
    """Names of what is made, one or several of it."""
    return _any("|".join(rf"{name}(?:e?s)?" for name in " ".join(names.split()).split(", ")))


# Baked dry or crisp. No more than hours are meant.
DRY_FORM = _forms(
    r"""biscuit, cookie, cracker, flapjack, pavlova, \w*cake, sponge, genoise, loaf,
    loaves, \w*bread, roll, bun, bap, baguette, focaccia, pita, pitta, naan, brioche, scone, muffin, brownie,
    blondie, parkin, meringue, macaroon, macaron, dacquoise, tuile, florentine, madeleine, financier, wafer,
    cone, straw, twist, palmier, puff, gougere, choux, case, shell, crust, base, crouton, croute, croustade, crumb,
    granola, brittle, praline, nougatine, crisp, toast, melba, pretzel, breadstick, grissini, rusk, biscotti, cantucci,
    amaretti, pancake, crepe, waffle, blini, crumpet, doughnut, stollen, panettone, strudel, crumble, streusel,
    turnover, mince pie, jam tart, fruit pie, yorkshire pudding, christmas pudding, plum pudding, toffee pudding,
    sponge pudding, popover, snap"""
)
SWEET_FORM = _forms(
    """caramel, toffee, fudge, truffle, ganache, marshmallow, jelly, jellies, jam, marmalade, chutney, compote, syrup,
    honeycomb, membrillo"""
)
MOIST_FORM = _forms(
    """custard, quiche, flan, cheesecake, cream, creamy, mousse, trifle, brulee, creme, panna cotta, gratin, souffle,
    frittata, omelette, omelet, lasagne, lasagna, moussaka, clafoutis, tres leche, curd, tiramisu, fool, bavarois,
    charlotte, blancmange, posset, bread pudding, bread and butter pudding, rice pudding, pumpkin pie, pecan pie, lemon
    tart, lemon pie, lemon meringue pie, lime pie, egg tart, eggy bread, french toast, fishcake, fish cake, crab cake,
    potato cake, potato scone, rice cake, bubble and squeak, latke, rosti, fritter, samosa, pasty, pasties, dumpling"""
)
PICKLES = _any(r"pickle|pickled|pickles|pickling|souse|soused|escabeche|in vinegar|chutneys?|relish")
# Made in the dish, and not among what was bought.
FILLINGS = re.compile(
    r"\b(custard|pastry cream|creme pat\w*|whipped cream|clotted cream|mayonnaise|mayo|aioli|hollandaise|bearnaise|"
    r"bechamel|white sauce|mascarpone|creme fraiche|yogh?urt|sour cream|cream cheese|ricotta|mousse|pate)\b"
)

_REHEATS_ALWAYS = re.compile(
    r"\b(?:re-?heat|re-?warm|back to (?:the )?(?:heat|temperature|boil|simmer|a simmer|serving)|hot again\b|"
    r"(?:heat|warm)(?:ed|s|ing)?\b.*\bagain\b)"
)
_REHEATS_COOKED = re.compile(
    r"\b(?:(?:heat|warm|bring|get|make)\b.*\b(?:up|through|hot|to heat|to (?:serving )?temperature)\b|"
    r"back (?:in|into|on|onto|under) the (?:oven|heat|hob|stove|ring|pan|pot|grill))"
)
_WARMS = _verb(r"heat|warm|refresh|crisp|re-?crisp|finish|revive|regenerate|flash")
_NO_FOOD = _any(
    r"(?:warm|heat|preheat) (?:up |through )?(?:the |all the |some |\d+ )?(?:dinner |serving |soup |big )?"
    r"(?:plates?|bowls?|dishes|platters?|glasses|cups|oven|grill|pan|pans|oil|fat|water|barbecue|griddle|tureen|room)"
)
_READIES = re.compile(
    r"(?:(?:pre-?)?heat|warm|turn on|switch on|light|kindle|set fire to|lay|set out|wash|wipe|clear|clean)(?: up)? "
    r"(?:the |all the |a |\d+ )?(?:\w+ )?(?:ovens?|grill|barbecue|bbq|griddle|smoker|coals?|charcoal|fire|candles?|"
    r"tapers?|wicks?|lamps?|lanterns?|candelabra|plates?|bowls?|platters?|glasses|cups|pans?|sink|table)"
    r"(?: (?:to \d+.*|up|for the \w+|hot|until hot))?"
)
BOILS = _any(r"(?:boil|boils|boiling)\b(?! (?:water|down))")


def reheats_by_word(text: str) -> bool:
    """Whether the words say that something cooked is heated again."""
    return _REHEATS_ALWAYS.search(text) is not None and not _NO_FOOD.search(text)


def heats_what_is_cooked(text: str) -> bool:
    """Whether they say so of what was cooked before: `heat up the stew`, `warm the pie through`."""
    return _REHEATS_COOKED.search(text) is not None and not _NO_FOOD.search(text)


def warms(text: str) -> bool:
    """Whether they say so of what was cooked and has stood since: `warm the sauce gently`, `refresh the roast`."""
    return _WARMS.search(text) is not None and not _NO_FOOD.search(text)


def makes_no_food(text: str) -> bool:
    """Whether all that its words make ready is a tool, a fire or the table: `preheat the oven`, `light the candles`."""
    return _READIES.fullmatch(text) is not None


_TOOLS = _any(r"plates?|bowls?|platters?|glasses|cups|oven|grill|table|tins?|trays?|moulds?|napkins?|cutlery|barbecue")


def speaks_of_tools(text: str) -> bool:
    """Whether the words are of tableware or tools only, as far as a plan's ingredients go."""
    return _TOOLS.search(text) is not None
