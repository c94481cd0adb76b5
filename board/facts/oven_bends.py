"""Which dishes bear another heat than was written for them, by how much, and what that does to their minutes. Pure.

Common practice, no source: what braises or roasts comes out alike 10 or 20 °C away, a little sooner or later; what
rises, sets or has a crust does not. What it is to be in the middle stays as it is.
"""

import math
import re

from board.facts.heat import ROOM_CELSIUS

MOST_CELSIUS = 20  # away from what is written
COOLEST_CELSIUS = 120  # below it, an oven dries, keeps warm or cooks by the minute
_BEARS = re.compile(
    r"\b(?:brais\w*|stew\w*|casserol\w*|pot[ -]?roast\w*|tagine|daube|goulash|hot ?pot|ragu|cassoulet|gratin\w*|"
    r"dauphinoise|boulangere|boulangère|lasagn\w*|moussaka|ratatouille|parmigiana|roast(?:s|ed|ing|ies)?|joint|"
    r"potato(?:es)?|wedges|roots?|veg|vegetables?|parsnips?|carrots?|beetroots?|beets?|squash|pumpkin|aubergines?|"
    r"eggplants?|fennel|crumbles?|shanks?|shins?|ribs?|shoulder|brisket|meatballs)\b"
)
_NEVER = re.compile(
    r"\b(?:meringues?|pavlovas?|custards?|cr[eè]mes?|caramels?|flans?|quiches?|souffl[eé]s?|roulades?|"
    r"(?:cup|cheese|pan)?cakes?|sponges?|gateaux?|brownies?|blondies?|traybakes?|muffins?|madeleines?|financiers?|"
    r"pastry|pastries|pies?|tarts?|tartlets?|turnovers?|strudels?|wellington|en croute|croissants?|vol-au-vents?|"
    r"puffs?|filo|choux|eclairs?|éclairs?|gougeres?|gougères?|profiteroles?|breads?|loaf|loaves|rolls?|buns?|"
    r"focaccias?|pizzas?|flatbreads?|doughs?|brioches?|biscuits?|cookies?|shortbread|scones?|macarons?|macaroons?|"
    r"crackers?|straws?|tuiles?|cones?|wafers?|popovers?|yorkshires?|puddings?|clafoutis|crackling|crisps?|plates?|"
    r"bowls?|dish warm\w*)\b"
)


def bears_another_heat(*words: str) -> bool:
    """Whether the names of a dish and its step say that it does; what they do not say, it does not."""
    told = " ".join(words).casefold()
    return _BEARS.search(told) is not None and _NEVER.search(told) is None


def minutes_at(minutes: int, written: float, celsius: float) -> int:
    """Whole minutes at another heat, rounded up: the heat that goes in is in proportion to how much hotter the oven is
    than the room (Newton's law of cooling); a rule of thumb, as a cook looks all the same.

    A middle that comes near the oven's own heat asks for more: 20 °C cooler, by a few in a hundred for a roast at 180
    °C, by a sixth for a braise at 140 °C. So what is told of it says "or a little more".
    """
    return math.ceil(minutes * (written - ROOM_CELSIUS) / (celsius - ROOM_CELSIUS) - 0.001)
