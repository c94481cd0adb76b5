"""A recipe's ingredient → a plan's ingredient lines, with the rest as a remark. Pure.

One line of a recipe may give several amounts (`1 cup plus 1 tbsp sugar`, `1 carrot and 1 onion`): each is a line.
What `quantities.parse_ingredient` cannot read is never dropped: it becomes `to taste`, with a remark that says so.
"""

import re
from dataclasses import dataclass

from board.facts.food import understood
from board.facts.phrases import stems
from board.importing.recipe import words
from board.plan.phrases.amounts import plainly
from board.plan.phrases.durations import decimal
from board.plan.phrases.quantities import Ingredient, parse_ingredient

_THOUSANDS = re.compile(r"(?<!\d)(\d{1,2}),(\d{3})(?=\s*(?:g|ml|grams?)\b)")  # a plan has to say which it means
_TO_TASTE = re.compile(r"[,\s]*\bto taste\s*$", re.IGNORECASE)
_BRACKETS = re.compile(r"[()\[\]]")
LONGEST_LINE = 250
_FIGURE = r"(?:\d+\s+\d+/\d+|\d+/\d+|\d+(?:[.,]\d+)?\s?[½⅓⅔¼¾⅛]?|[½⅓⅔¼¾⅛])"
_UNIT = r"(?:g|grams?|kg|kilos?|kilograms?|oz|ounces?|lbs?|pounds?|ml|millilit(?:re|er)s?|cl|dl|l|lit(?:re|er)s?|tsps?|"
_UNIT += r"teaspoons?|tbsps?|tablespoons?|cups?|fl\.? ?oz|pints?|quarts?|sticks?)\b\.?"
_MASS = re.compile(
    rf"{_FIGURE}[\s-]*(?:g|grams?|kg|kilo(?:gram)?s?|oz|ounces?|lbs?|pounds?|ml|millilit(?:re|er)s?|cl|l|lit(?:re|er)s?|"
    r"fl\.? ?oz)\b",
    re.IGNORECASE,
)
_PLUS = re.compile(  # 1 cup plus 1 tbsp sugar
    rf"({_FIGURE}\s?{_UNIT})\s*(?:plus|\+|and)\s+({_FIGURE}\s?{_UNIT})\s+(?:of\s+)?(?P<food>\S.*)", re.IGNORECASE
)
_PLUS_MORE = re.compile(  # 50 g butter, plus 1 tbsp to finish; 3 eggs plus 2 yolks
    rf"(?P<first>\D*\d.*?),?\s+(?:plus|\+)\s+(?P<count>{_FIGURE}(?:\s?{_UNIT})?)\s*(?:(?:extra|more)\b\s*)?(?P<more>.*)",
    re.IGNORECASE,
)
_YOLKS = re.compile(r"(?:egg )?(?:yolks?|whites?)\b.*", re.IGNORECASE)
_AMOUNT_FIRST = re.compile(_FIGURE)
_EACH_WITH_AMOUNT = re.compile(
    rf"(?:,\s+(?:and\s+)?|\s+and\s+)(?={_FIGURE}\s)", re.IGNORECASE
)  # 1 carrot, 1 leek and 1 onion
_JUICE = re.compile(
    r"(?P<part>(?:(?:finely |freshly )?(?:grated|squeezed) )?(?:juice|zest|rind)"
    r"(?: and (?:grated )?(?:juice|zest|rind))?)"
    r"\s+of\s+(?P<fruit>(?:half|an?|one|two|three|four|five|six|[\d½¼¾]).*)",
    re.IGNORECASE,
)
_EACH = re.compile(rf"({_FIGURE}\s?{_UNIT})\s+each\s+(?:of\s+)?([^,()]+(?:,[^,()]+)*\s+and\s+[^,()]+)", re.IGNORECASE)
_LONG = re.compile(  # a 2 cm piece of ginger
    rf"(?:1\s+)?({_FIGURE}[\s-]*(?:cm|mm|inch(?:es)?|in\.|\"))\s*(?:piece|knob|length|stick|chunk)?\s*(?:of\s+)?(?P<food>\D.*)",
    re.IGNORECASE,
)
_TWICE = re.compile(  # 1 kg/2 lb 4 oz potatoes
    rf"({_FIGURE}\s?{_UNIT})\s*/\s*({_FIGURE}\s?{_UNIT}(?:\s*{_FIGURE}\s?{_UNIT})?)\s+", re.IGNORECASE
)
_POUNDS = re.compile(r"(\d+)\s?lbs?\.?\s*(\d+)\s?oz\b", re.IGNORECASE)  # 2 lb 4 oz
_METRIC_SECOND = re.compile(
    rf"({_FIGURE}\s?(?:oz|lbs?|pounds?|ounces?|cups?|pints?|fl\.? ?oz)\.?)\s*/\s*({_FIGURE}\s?(?:g|kg|ml|l|grams|"
    r"kilograms|millilit(?:re|er)s|lit(?:re|er)s?))\s+",
    re.IGNORECASE,
)
_SIZES = {"lg": "large", "lge": "large", "med": "medium", "sm": "small", "xl": "extra large"}
_SHORT_SIZE = re.compile(rf"^({_FIGURE})\s+(lge?|med|sm|xl)\b\.?\s*", re.IGNORECASE)
_ABOUT_ALL = re.compile(r"(\d+)\s*\(((?:about|approx\.?|around|roughly|total)\s[^()]*)\)\s+", re.IGNORECASE)
_PACKED = re.compile(r"\b(?:packages?|cartons?|tubs?|punnets?|bags?|boxes|box|blocks?|sachets?)\s+(?=\(|of\b|[a-z])")
_HALF_A_TIN = re.compile(
    r"(?:½|1/2|0\.5)\s*x?\s*(?P<figure>\d+(?:\.\d+)?)[\s-]*(?P<unit>g|ml|oz)\s+(?:tin|can|jar|packet|pack)\s+(?:of\s+)?"
    r"(?P<food>\S.*)",
    re.IGNORECASE,
)
_HEAPED = re.compile(  # a heaped tsp, a small bunch
    rf"({_FIGURE})\s+(heaped|heaping|level|rounded|scant|generous|good|packed|full|small|large|medium|big|fat|thick|thin)"
    rf"\s+(?=(?:{_UNIT}|bunch(?:es)?|handfuls?|pinch(?:es)?|sprigs?|slices?|tins?|cans?|jars?|bottles?|pack(?:et)?s?)\s)",
    re.IGNORECASE,
)
_BRACKETED = re.compile(
    rf"(?P<before>(?P<metric>{_FIGURE}\s?(?:g|grams?|kg|kilograms?|ml|millilit(?:re|er)s?|cl|dl|l|lit(?:re|er)s?)\b)?[^()]*?)"
    r"\s*\((?P<in>[^()]*)\)\s*(?P<after>[^()\s,;][^()]*)",
    re.IGNORECASE,
)
_METRIC = ("g", "kg", "ml", "cl", "dl", "l")
_GRAMS = {"g": 1.0, "kg": 1000.0, "oz": 28.349523125, "lb": 453.59237}  # NIST Handbook 44, appendix C
_MORE_AMOUNT = re.compile(rf"\d\s?{_UNIT}|^x\s?\d|\b\d+(?:\.\d+)?\s*x\s*\d", re.IGNORECASE)
_TAIL = re.compile(r"\s*\(([^()]*)\)\s*$")
_LABEL = re.compile(r"\b(?:contains?|free[\s-]+(?:from|of)|\w+-free)\b", re.IGNORECASE)
_FREE_FROM = re.compile(r",?\s+free[\s-]+(?:from|of)\b.*", re.IGNORECASE)
_WARNING = re.compile(r"\b(?:may contain|contains?)\s+[^;,]+")  # stays in the line, where guests are checked against it


@dataclass(frozen=True)
class Food:
    """`line`: for `ingredients:`. `remark`: what else the recipe says, or what is missing."""

    line: str
    remark: str = ""


def foods_of(text: str, *, english: bool = True) -> list[Food]:
    """One ingredient of a recipe, of which each amount is a line. In another language only what is metric is read: the
    rest is told. Raises nothing."""
    if not english:
        found = _line_of(plainly(text))
        read = parsed(found.line)
        if read is None or read.low is None or read.unit in _METRIC:
            return [found]
        whole = parsed(bare := f"to taste {text[:LONGEST_LINE]}")
        return [Food(bare if whole else "to taste ?", words.RECIPE_FOREIGN_AMOUNT)]
    text = _unwrapped(plainly(text.strip(" -•*·")))
    if match := _PLUS.fullmatch(text):
        return [food_of(f"{match[1]} {match['food']}"), food_of(f"{match[2]} {match['food']}")]
    if match := _PLUS_MORE.fullmatch(text):
        first, more = match["first"], match["more"]
        if _YOLKS.fullmatch(more):
            return [food_of(first), food_of(f"{match['count']} egg {more.removeprefix('egg ')}")]
        food = read.food if (read := parsed(_without_tail(first)[0])) else first
        if set(stems(food)) & set(stems(more)):
            return [food_of(first), food_of(f"{match['count']} {more}")]
        return [food_of(first), food_of(f"{match['count']} {food.partition(',')[0]}, {more}".rstrip(", "))]
    if match := _EACH.fullmatch(text):
        return [food_of(f"{match[1]} {food}") for food in re.split(r",\s+(?:and\s+)?|\s+and\s+", match[2])]
    pieces = _EACH_WITH_AMOUNT.split(text.partition(", all ")[0])
    if len(pieces) > 1 and all(_AMOUNT_FIRST.match(piece) and _is_read(piece) for piece in pieces):
        return [food_of(piece) for piece in pieces]
    return [food_of(text)]


def _unwrapped(text: str) -> str:
    return text[1:-1] if text[:1] == "(" and text.find(")") == len(text) - 1 else text


def food_of(text: str) -> Food:
    """One amount of one food. Raises nothing."""
    text, beside = _one_measure(plainly(_THOUSANDS.sub(r"\1\2", text.strip(" -•*·"))))
    found = _line_of(text)
    read = parsed(found.line)
    if read is not None and read.low is not None and _MORE_AMOUNT.search(read.food.partition(",")[0]):
        beside = (*beside, words.RECIPE_AMOUNT_UNREAD)
    return Food(found.line, "; ".join(piece for piece in (found.remark, *beside) if piece))


def _one_measure(text: str) -> tuple[str, tuple[str, ...]]:
    """The line with one measure, and what it says beside: `600 ml (1 pint) milk` → `600 ml milk`; `a heaped tsp`; of
    `1 (9-inch) crust` the brackets; juice and zest are bought as the fruit."""
    beside: list[str] = []
    if match := _JUICE.fullmatch(text):
        text = plainly(match["fruit"])
        beside.append(match["part"].lower())
    if match := _HALF_A_TIN.fullmatch(text):
        text = f"{float(match['figure']) / 2:g} {match['unit']} {match['food']}"
    if match := _HEAPED.match(text):
        text = f"{match[1]} {text[match.end() :]}"
        beside.append(match[2].lower())
    text = _SHORT_SIZE.sub(lambda match: f"{match[1]} {_SIZES[match[2].lower()]} ", text)
    if match := _POUNDS.match(text):
        text = f"{16 * int(match[1]) + int(match[2])} oz{text[match.end() :]}"
    if match := _METRIC_SECOND.match(text):
        text = f"{match[2]} {text[match.end() :]}"
        beside.append(words.recipe_amount_beside(match[1]))
    if match := _LONG.fullmatch(text):
        text = f"1 piece of {match['food']}"
        beside.append(words.recipe_amount_beside(match[1]))
    if match := _TWICE.match(text):
        text = f"{match[1]} {text[match.end() :]}"
        beside.append(words.recipe_amount_beside(match[2]))
    if match := _ABOUT_ALL.match(text):
        text = f"{match[1]} {text[match.end() :]}"
        beside.append(match[2])
    text = _PACKED.sub("pack ", text, count=1)
    if (match := _BRACKETED.fullmatch(text)) and (match["metric"] or not _MASS.search(match["in"])):
        text = f"{match['before']} {match['after']}"
        beside.append(words.recipe_amount_beside(match["in"]))
    return text, tuple(beside)


def _line_of(text: str) -> Food:
    base, tail = _without_tail(text)
    if len(base) > LONGEST_LINE:
        base, tail = base[:LONGEST_LINE].rstrip(), words.recipe_whole(text)
    if _is_read(base):
        warned = next(
            (f"{base}, {each}" for each in _WARNING.findall(tail.lower()) if _is_read(f"{base}, {each}")), base
        )
        return Food(warned, tail)
    bare = _TO_TASTE.sub("", base)
    missing = words.RECIPE_AMOUNT_UNREAD if any(map(str.isdecimal, base)) else words.RECIPE_NO_AMOUNT
    remark = tail if "to taste" in text.lower() else "; ".join(piece for piece in (tail, missing) if piece)
    for line in (f"to taste {bare}", f"to taste {_BRACKETS.sub('', text).strip()[:LONGEST_LINE]}"):
        if _is_read(line):
            return Food(line, remark)
    return Food("to taste ?", words.recipe_whole(text))


def _is_read(line: str) -> bool:
    """Whether the plan's own parser accepts it."""
    return parsed(line) is not None


def parsed(line: str) -> Ingredient | None:
    """As the plan's own parser reads it; None if it does not."""
    try:
        return Ingredient.model_validate(parse_ingredient(line))
    except ValueError:
        return None


def _without_tail(text: str) -> tuple[str, str]:
    """Splits off remarks. Final brackets would be read as a shop section; what only says how food is prepared is a
    remark, and all else stays in the line, where guests are checked against it."""
    tails: list[str] = []
    while match := _TAIL.search(text):
        tails.insert(0, match[1].strip())
        text = text[: match.start()]
    if (free := _FREE_FROM.search(text)) is not None and free.start():  # a recipe's word is not a label's
        tails.insert(0, free[0].strip(" ,"))
        text = text[: free.start()]
    head, *after = text.split(", ")
    pieces = [piece for piece in (*after, *tails) if piece]
    told = [piece for piece in pieces if _LABEL.search(piece) or _is_mere(piece)]
    kept = [piece for piece in pieces if piece not in told]
    line = "".join([head.strip(), *(f"{' ' if piece.startswith('or ') else ', '}{piece}" for piece in kept)])
    remarks = [f"{each}; {words.RECIPE_READ_LABEL}" if _LABEL.search(each) else each for each in told]
    return line, "; ".join(remark for remark in remarks if remark.lower() != "to taste")


def _is_mere(piece: str) -> bool:
    """Whether it only says how a food is prepared or served: no food is in it, and no word that nobody knows."""
    found = understood(f"bread, {piece}")
    return not (found.known[1:] or found.named or found.unknown)


def grams_of(line: str) -> float:
    """What a line weighs, by its figures; 0 if it gives no weight."""
    read = parsed(line)
    if read is None or read.high is None:
        return 0.0
    size, _, unit = read.size.partition(" ") if read.size else ("1", "", read.unit)
    try:
        return read.high * decimal(size) * _GRAMS.get(unit, 0.0)
    except ValueError:
        return 0.0
