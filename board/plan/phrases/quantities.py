"""Ingredients as a cook writes them: `1.2 kg celeriac (veg)`, `2–3 tbsp oil`, `to taste salt`, `2 x 400 g tins
tomatoes`, `4 fennel bulbs or 3 celery hearts`; and label words: `100 g dark chocolate (baking), may contain tree nuts`.
"""

import re
import unicodedata
from typing import Annotated

from pydantic import BaseModel, ConfigDict, Field, model_validator

from board.facts.food import facts
from board.facts.held import table
from board.facts.named import named
from board.facts.phrases import holds, stems
from board.plan.phrases.amounts import plainly
from board.plan.phrases.durations import decimal
from board.plan.phrases.labels import LabelWords, without_label
from board.plan.phrases.phrase import Phrase

# Kitchen units and their spellings. Mass and volume; the rest are counted.
UNITS: dict[str, tuple[str, ...]] = {
    "g": ("gram", "grams", "gr"),
    "kg": ("kilo", "kilos", "kilogram", "kilograms"),
    "oz": ("ounce", "ounces"),
    "lb": ("lbs", "pound", "pounds"),
    "ml": ("millilitre", "millilitres", "milliliter", "milliliters"),
    "cl": ("centilitre", "centilitres"),
    "dl": ("decilitre", "decilitres", "deciliter", "deciliters"),
    "l": ("litre", "litres", "liter", "liters"),
    "tsp": ("teaspoon", "teaspoons"),
    "tbsp": ("tablespoon", "tablespoons"),
    "cup": ("cups",),
    "fl oz": ("fluid ounce", "fluid ounces"),
    "pint": ("pints", "pt"),
    "quart": ("quarts", "qt"),
    "pinch": ("pinches",),
    "handful": ("handfuls",),
    "bunch": ("bunches",),
    "sprig": ("sprigs",),
    "clove": ("cloves",),
    "stick": ("sticks",),
    "slice": ("slices",),
    "sheet": ("sheets",),
    "bottle": ("bottles",),
    "tin": ("tins", "can", "cans"),
    "jar": ("jars",),
    "pack": ("packs", "packet", "packets"),
}
_SPELLINGS = {spelling: unit for unit, others in UNITS.items() for spelling in (unit, *others)}
_UNIT_WORD = "|".join(sorted((re.escape(s) for s in _SPELLINGS), key=len, reverse=True))
_FIGURE = r"(?:\d+\s+\d+/\d+|\d+/\d+|\d+(?:[.,]\d+)?\s*[½⅓⅔¼¾⅛]?|[½⅓⅔¼¾⅛])"
_DOZEN = re.compile(r"doz(?:en)?", re.IGNORECASE)
_AMOUNT = re.compile(
    rf"({_FIGURE})\s*(?:(?:–|-|to)\s*({_FIGURE}))?\s*(?:({_UNIT_WORD}|{_DOZEN.pattern})\b\.?)?\s*(?:of\s+)?(.*)",
    re.IGNORECASE,
)
_LARGE = r"(?:good|generous|large|small|big|heaped|scant|tiny|fat)\s+"
_UNCOUNTED = re.compile(
    rf"(?:(to taste)[,]?|(?:an?\s+)?(?:{_LARGE})?(handful|pinch|bunch|sprig|splash|knob)(?:\s+of)?)\s+(.+)",
    re.IGNORECASE,
)
# Some, without a figure: `a few gratings of nutmeg`, `a little oil`; `ice cubes, to serve`, `pepper, to taste`.
_SOME = re.compile(
    rf"(?:some|plenty\s+of|a\s+few|a\s+little|a\s+bit\s+of|an?\s+(?:{_LARGE})?"
    r"(?:drizzle|dash|glug|touch|dusting|squeeze|drop|scattering|grating|twist|grind|lick|smear|slick)s?)"
    r"\s+(?:(?:gratings|drops|grinds|twists|shavings|strands|leaves)\s+)?(?:of\s+)?(?P<food>\D.*)",
    re.IGNORECASE,
)
_AS_NEEDED = re.compile(
    r"\D+?\s(?:to\s+(?:serve|garnish|finish|decorate)|as\s+needed|for\s+(?:serving|dusting|greasing|frying|brushing|"
    r"sprinkling|garnish|drizzling|the\s+tin|the\s+pan|the\s+table))\b.*",
    re.IGNORECASE,
)
_LAST_TO_TASTE = re.compile(r"(?P<food>\D+?),?\s+to\s+taste", re.IGNORECASE)
MOST = 100_000.0  # of any unit
_OF_A_SIZE = ("g", "kg", "oz", "lb", "ml", "cl", "dl", "l", "fl oz", "pint", "quart")
_SIZE_WORD = "|".join(sorted((re.escape(s) for s, u in _SPELLINGS.items() if u in _OF_A_SIZE), key=len, reverse=True))
_SIZE = rf"(?P<size>{_FIGURE})[\s-]*(?P<of>{_SIZE_WORD})\b\.?"
_IN = r"(?P<unit>tins?|cans?|jars?|packs?|packets?|bottles?)\b\.?"
_REST = r"\s*(?:of\s+)?(?P<food>\S.*)"
_SIZED = tuple(
    re.compile(pattern + _REST, re.IGNORECASE)
    for pattern in (
        rf"(?P<count>\d+)\s*[x*]\s*{_SIZE}[\s-]*(?:{_IN})?",  # 2 x 400 g tins tomatoes; 4 x 150 g cod fillets
        rf"(?P<count>\d+)\s*\(\s*{_SIZE}(?:\s+each)?\s*\)\s*(?:{_IN})?",  # 2 (14 oz) cans tomatoes
        rf"(?P<count>\d+)\s+{_IN}\s*\(\s*{_SIZE}(?:\s+each)?\s*\)",  # 2 tins (400 g each) tomatoes
        rf"(?:(?P<count>\d+)\s+)?{_SIZE}[\s-]+{_IN}",  # 400 g tin tomatoes; 2 14-oz cans tomatoes
    )
)
_MEASURED = rf"{_FIGURE}\s*(?:{_UNIT_WORD})\b\.?"
_WEIGHED = re.compile(rf"{_MEASURED}\s*\(\s*(?:about\s+)?{_SIZE}\s*\){_REST}", re.IGNORECASE)  # 1 cup (220 g) rice
_TWICE = re.compile(rf"({_MEASURED})\s*/\s*{_MEASURED}\s*(\S.*)", re.IGNORECASE)  # 250 ml/1 cup milk
_GLUED = re.compile(rf"{_FIGURE}(g|kg|ml|l|oz|lb|tbsp|tsp)([^\W\d].*)", re.IGNORECASE)  # 200gflour
# 4 garlic cloves are 4 cloves of garlic. Not cinnamon sticks or lasagne sheets, which are foods of their own.
_COUNTED_IN = re.compile(
    r"(?P<food>(?:\w+ )*garlic(?= cloves?\b)|[^,()]+(?= sprigs?\b)) (?P<unit>cloves?|sprigs?)(?P<about>(?:,.*)?)",
    re.IGNORECASE,
)
_EITHER = re.compile(
    r"\s+or\s+(?!(?:more|less|to|as|if|until|similar|other|others|another|equivalent|any|your|their|a bit)\b)",
    re.IGNORECASE,
)
_TAKE = re.compile(r",\s*take\s+([^,()]+)", re.IGNORECASE)
_SECTION = re.compile(r"(.*?)\s*\(([^()]*)\)\s*$")


class Ingredient(BaseModel):
    """One thing to buy or find. `low` equals `high` for a single figure; both are None for `to taste`.

    `size`: of one of those counted: `400 g`. `choices`: each thing it may be, where the line says `or` and nobody
    chose; `food` then names them all. `contains`, `may_contain`, `free_from`: the label's own words.
    """

    model_config = ConfigDict(
        extra="forbid", frozen=True, populate_by_name=True, alias_generator=lambda name: name.replace("_", " ")
    )

    food: str = Field(min_length=1)
    low: float | None = None
    high: float | None = None
    unit: str = ""  # "": a count
    size: str = ""
    section: str | None = None
    choices: tuple["Ingredient", ...] = ()
    contains: LabelWords = ()
    may_contain: LabelWords = ()
    free_from: LabelWords = ()

    @property
    def measure(self) -> str:
        """What its amount counts."""
        return measure_of(self.size, self.unit)

    @model_validator(mode="after")
    def _sound(self) -> "Ingredient":
        low, high = self.low, self.high
        if (low is None) != (high is None):
            raise ValueError("an amount has both low and high, or neither; write one figure twice")
        if low is not None and high is not None and low > high:
            raise ValueError(f"{low:g} to {high:g} runs backwards; write the lower figure first")
        if low is not None and high is not None and not 0 < low <= high <= MOST:
            raise ValueError("an amount lies above zero and is less than a lorry load; check the figure")
        if self.unit and self.unit not in {*UNITS, "to taste", "splash", "knob"}:
            raise ValueError(f"{self.unit!r} is not a unit of the kitchen; use {', '.join(UNITS)}")
        for word in self.free_from:
            if any(named(word) == named(other) for other in self.contains):
                raise ValueError(f"a label says either contains or free from {word}; read it again and keep one")
        return self


def measure_of(size: str, unit: str) -> str:
    """What an amount counts: the unit, with its size where it has one: `× 400 g tin`."""
    return f"\N{MULTIPLICATION SIGN} {size} {unit}".strip() if size else unit


def _figure(text: str) -> float:
    vulgar = text[-1] if text[-1] in "½⅓⅔¼¾⅛" else ""
    total = unicodedata.numeric(vulgar) if vulgar else 0.0
    for piece in text.removesuffix(vulgar).split():
        above, slash, below = piece.partition("/")
        if slash and not float(below):
            raise ValueError(f"{text!r} divides by zero; write for example 1/2")
        total += decimal(above) / float(below or 1)
    return total


def parse_ingredient(text: str) -> dict[str, object]:
    """The shop section is in brackets at the end; label words go before or after it. Raises ValueError."""
    text, said = without_label(plainly(text))
    text, taken = _without_choice(text)
    common: dict[str, object] = {**said}
    if match := _SECTION.fullmatch(text):
        text, common["section"] = match[1], match[2]
    first = _amount_and_food(text)
    choices = _choices(first)
    if taken is not None:
        return {**_taken(taken, choices, text), **common}
    if len(choices) > 1:
        return {**choices[0], "food": _all_of(choices), "choices": choices, **common}
    return {**first, **common}


def _amount_and_food(text: str) -> dict[str, object]:
    """`low`, `high`, `unit`, `size` and `food` of one thing. Raises ValueError."""
    if match := _UNCOUNTED.fullmatch(text):
        return {"food": match[3], "unit": (match[1] or match[2]).lower()}
    if match := _SOME.fullmatch(text) or _LAST_TO_TASTE.fullmatch(text):
        return {"food": match["food"].strip(), "unit": "to taste"}
    if _AS_NEEDED.fullmatch(text):
        return {"food": text, "unit": "to taste"}
    if match := next((found for each in _SIZED if (found := each.fullmatch(text))), None):
        count = float(match["count"] or 1)
        size = f"{match['size'].strip()} {_SPELLINGS[match['of'].lower()]}"
        unit = _SPELLINGS[match["unit"].lower()] if match["unit"] else ""
        return {"food": match["food"].strip(), "low": count, "high": count, "unit": unit, "size": size}
    if match := _WEIGHED.fullmatch(text):
        text = f"{match['size']} {match['of']} {match['food']}"
    elif match := _TWICE.fullmatch(text):
        text = f"{match[1]} {match[2]}"
    match = _AMOUNT.fullmatch(text.strip())
    if match is None:
        raise ValueError(f"{text!r} has no amount; write for example 1.2 kg celeriac (veg) or to taste salt")
    low = _figure(match[1])
    high = _figure(match[2]) if match[2] else low
    if not match[4].strip():
        raise ValueError(f"{text!r} does not say of what; write for example 1.2 kg celeriac (veg)")
    if match[3] and _DOZEN.fullmatch(match[3]):
        return {"food": match[4].strip(), "low": low * 12, "high": high * 12, "unit": ""}
    unit, food = _SPELLINGS[match[3].lower()] if match[3] else "", match[4].strip()
    if not unit and (counted := _COUNTED_IN.fullmatch(food)):
        unit, food = _SPELLINGS[counted["unit"].lower()], f"{counted['food']}{counted['about']}"
    if not unit and (glued := _GLUED.fullmatch(text.strip())) and facts(food) is None and facts(glued[2]):
        unit, food = _SPELLINGS[glued[1].lower()], glued[2]
    return {"food": food, "low": low, "high": high, "unit": unit}


def _choices(first: dict[str, object]) -> list[dict[str, object]]:
    """Each thing that the line offers: `4 fennel bulbs or 3 celery hearts`, `butter or oil`. One without an amount has
    that of the one before; what follows a comma is said of all."""
    names, comma, about = str(first["food"]).partition(",")
    found: list[dict[str, object]] = []
    for number, name in enumerate(pieces := _EITHER.split(names)):
        if number and re.match(_FIGURE, name):
            each = _amount_and_food(name)
        else:
            last = found[-1] if found else first
            each = {**last, "food": _completed(name, pieces[number + 1 :])}
        found.append({**each, "food": f"{each['food']}{comma}{about}"})
    return found


def _all_of(choices: list[dict[str, object]]) -> str:
    """The foods of all, and once what is said of all."""
    foods = [str(each["food"]) for each in choices]
    about = foods[-1].partition(",")[2]
    return " or ".join(food.removesuffix(f",{about}") for food in foods) + (f",{about}" if about else "")


def _completed(name: str, later: list[str]) -> str:
    """`olive` of `olive or rapeseed oil` is olive oil: if the table has that, or the word alone names no food."""
    tails = [" ".join(words[-n:]) for each in later for words in [each.split()] for n in range(1, len(words))]
    for tail in tails:
        if stems(f"{name} {tail}") in table():
            return f"{name} {tail}"
    return f"{name} {tails[0]}" if tails and facts(name) is None and facts(f"{name} {tails[0]}") else name


def _without_choice(text: str) -> tuple[str, str | None]:
    match = _TAKE.search(text)
    return (text, None) if match is None else (text[: match.start()] + text[match.end() :], match[1].strip())


def _taken(taken: str, choices: list[dict[str, object]], text: str) -> dict[str, object]:
    """The one that the host takes. Raises ValueError if the line does not offer it."""
    wanted = stems(taken)
    found = [each for each in choices if holds(stems(str(each["food"])), wanted)]
    if len(choices) < 2 or len(found) != 1:
        offered = " or ".join(str(each["food"]) for each in choices)
        raise ValueError(f"{taken!r} is not one thing of {offered!r} to take; write one of its foods after take")
    return found[0]


IngredientLine = Annotated[Ingredient, Phrase(parse_ingredient, "1.2 kg celeriac (veg)")]
