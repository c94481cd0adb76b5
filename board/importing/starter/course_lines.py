"""A menu's lines of courses and dishes: names, hours and places of courses, dishes apart, drinks. Pure."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, field

from board.importing.starter.clocks import CLOCK_SIGN, Masked
from board.importing.starter.looks import pieces_of
from board.importing.ways import ways

# What a course of this name is in a meal, as `ways.Way.course` has it; `entree`: a main, or a starter before one.
_KINDS = {
    "nibbles": "nibbles, nibble, canapé, canapés, canape, canapes, snacks, hors d'oeuvres, hors d'oeuvre, "
    "amuse-bouche, amuse bouche, finger food, bites, to nibble, tapas, aperitivo",
    "starter": "starter, starters, appetizer, appetizers, appetiser, appetisers, to start, to begin, first, "
    "soup course, antipasti, antipasto, primo, primi, fish course, salad course, mezze, meze, soup, soups, salad, "
    "salads, fish",
    "entree": "entrée, entree",
    "main": "main, mains, main course, main courses, main dish, secondo, secondi, buffet, main event, entrées, "
    "entrees, roast dinner, brunch, breakfast, lunch, supper, dinner, barbecue, bbq, second",
    "side": "side, sides, side dish, side dishes, vegetables, veg, accompaniments, trimmings, contorni, on the side, "
    "with it, with the main, sauces, for the table",
    "cheese": "cheese, cheeses, cheeseboard, cheese board, cheese course",
    "sweet": "sweet, sweets, dessert, desserts, pudding, puddings, afters, dolce, dolci, to finish, something sweet, "
    "pre-dessert, palate cleanser, intermezzo, cake, cakes, petits fours, petit fours, fruit",
    "drink": "coffee, tea, coffee and tea, tea and coffee, digestif, digestifs, drinks, welcome drink, welcome drinks, "
    "after-dinner drinks, aperitif, aperitifs, apéritif, apéritifs",
}  # fmt: skip
KIND_OF = {name: kind for kind, names in _KINDS.items() for name in names.split(", ")}
# Course words that are dishes too: alone on a line they are both.
DISHES_TOO = frozenset((
    "soup", "salad", "fish", "cheese", "cheeses", "cheeseboard", "cheese board", "fruit", "cake", "coffee", "tea",
    "coffee and tea", "tea and coffee", "vegetables", "petits fours", "petit fours", "finger food",
))  # fmt: skip
# Names that need a colon: alone on a line they rather name the evening, or a dish.
_WITH_COLON = frozenset(("brunch", "breakfast", "lunch", "supper", "dinner", "first", "second", "barbecue", "bbq",
                         "roast dinner", "fish", "cake", "cakes", "vegetables", "to nibble", "bites"))  # fmt: skip
_BEFORE_DISHES = re.compile(
    r"(?P<name>nibbles|canap[eé]s|starters?|appeti[sz]ers?|mains?|main course|desserts?|afters)\s+(?P<rest>\S.*)",
    re.IGNORECASE,
)
_NUMBERED = re.compile(
    r"(?:the\s+)?(?:course\s+(?:\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten)"
    r"|(?:\d{1,2}(?:st|nd|rd|th)|first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|last)\s+course)",
    re.IGNORECASE,
)
_OUTDOORS = re.compile(
    r",?\s*\(?\b(?:(?:in|on|at|out\s+(?:in|on))\s+(?:the\s+)?(?:back\s+)?(?:garden|terrace|patio|balcony|lawn|porch|deck|"
    r"yard|orchard|veranda|courtyard|roof(?:\s+terrace)?)|outside|outdoors|al\s+fresco)\b\)?",
    re.IGNORECASE,
)
_STANDING = re.compile(r",?\s*\(?\bstanding(?:\s+up)?\b\)?", re.IGNORECASE)
_DASH = re.compile(r"\s+[-–—]+\s+|\s*[–—]\s*")
_DRINK_LABEL = re.compile(r"(?:the\s+)?(?:drink|wine|to\s+drink|poured|wine\s+pairing|pairing)", re.IGNORECASE)
_POURED = re.compile(
    r"\b(?:wine|wines|cider|beer|ale|lager|stout|porter|riesling|chardonnay|pinot|merlot|rioja|burgundy|claret|sherry|port|"
    r"madeira|champagne|prosecco|cava|cr[eé]mant|sekt|fizz|bubbly|sake|mead|ros[eé]|cordial|juice|lemonade|kombucha|"
    r"perry|vermouth|spritz)$",
    re.IGNORECASE,
)
_DRINK_PIECE = re.compile(r"(?:with|served\s+with|(?:to\s+)?drink(?:ing)?:?|poured:?)\s+(?P<what>.+)", re.IGNORECASE)
# One dish, though an `and` stands in it and its sides say little.
_PAIRS = frozenset((
    ("mac", "cheese"), ("macaroni", "cheese"), ("fish", "chips"), ("bread", "butter"), ("bubble", "squeak"),
    ("rice", "peas"), ("biscuits", "gravy"), ("peas", "carrots"), ("bangers", "mash"), ("cheese", "biscuits"),
    ("cheese", "crackers"), ("strawberries", "cream"), ("tea", "coffee"), ("coffee", "tea"), ("oil", "vinegar"),
    ("bread", "oil"), ("salt", "pepper"), ("surf", "turf"), ("rice", "beans"), ("pork", "beans"), ("pie", "mash"),
))  # fmt: skip
_AND = re.compile(r"\s+(?:&|and|\+)\s+", re.IGNORECASE)
LONGEST_COURSE = 60


@dataclass
class Open:
    """A course as it is read. `name` None: none is written. `at`: the sign of its hour in its line."""

    line: Masked
    name: str | None = None
    kind: str | None = None
    at: str = ""
    outdoors: bool = False
    standing: bool = False
    drink: str | None = None
    dishes: list[tuple[str, int]] = field(default_factory=list)  # with the line of each
    indented: bool = False  # its own line is
    inline: bool = False  # dishes stand beside its name
    closed: bool = False  # a line of its own is no dish of it
    numbered: bool = False  # its own line is
    bounded: bool = False  # an hour or a number bounds it, no name


def course_in(line: Masked, *, heading: bool = False) -> tuple[Open, str] | None:
    """The course a line names, and what stands after its name; None where it names none. `heading`: it stands over
    other lines, so any words may be a name."""
    text = re.sub(rf"^([{CLOCK_SIGN}])\s*[-–—:.]?\s+(?=\S)", r"\1 ", line.text)
    label, colon, rest = text.partition(":")
    if colon and _is_name(_named(line, label).name):
        return _named(line, label), rest
    if not colon:
        for gap in _DASH.finditer(text):
            if (found := _named(line, text[: gap.start()])) and found.name and _is_course(found.name, alone=True):
                return found, text[gap.end() :]
        found = _named(line, text)
        if found.name is not None and ((heading and _is_name(found.name)) or _is_course(found.name, alone=True)):
            return found, ""
        clock = re.match(f"[{CLOCK_SIGN}] ", text)
        if before := _BEFORE_DISHES.fullmatch(text[clock.end() :] if clock else text):
            found = _named(line, f"{clock[0] if clock else ''}{before['name']}")
            inside = re.match(rf"(?:at\s+|\()?([{CLOCK_SIGN}])\)?\s*", before["rest"])
            if inside:
                found.at = inside[1]
            return found, before["rest"][inside.end() :] if inside else before["rest"]
    return None


def is_its_own_course(text: str) -> tuple[str, str] | None:
    """`Coffee + truffles`: a dish that its first word names a course of, with its kind; None for another."""
    found = re.match(r"([^\W\d_]+)\s*(?:\+|&|and\b|with\b)\s*\S", text)
    if found is None or found[1].casefold() not in DISHES_TOO:
        return None
    return found[1][0].upper() + found[1][1:], KIND_OF[found[1].casefold()]


def _is_name(name: str | None) -> bool:
    return name is not None and len(name) <= LONGEST_COURSE and re.search(r"[^\W\d_]", name) is not None


def _is_course(name: str, *, alone: bool = False) -> bool:
    folded = _folded(name)
    if _NUMBERED.fullmatch(folded):
        return True
    return folded in KIND_OF and not (alone and folded in _WITH_COLON)


def _folded(name: str) -> str:
    return " ".join(name.casefold().replace("’", "'").replace("&", "and").split()).removeprefix("the ")


def _named(line: Masked, label: str) -> Open:
    """A course's name taken apart: hour, place, standing; `name` None if nothing is left."""
    found = Open(line)
    if clock := re.search(rf"\(?(?:\b(?:at|from)\s+|@\s*)?([{CLOCK_SIGN}])\)?", label):
        found.at = clock[1]
        label = f"{label[: clock.start()]} {label[clock.end() :]}"
    if place := _OUTDOORS.search(label):
        found.outdoors = True
        label = f"{label[: place.start()]} {label[place.end() :]}"
    if place := _STANDING.search(label):
        found.standing = True
        label = f"{label[: place.start()]} {label[place.end() :]}"
    name = re.sub(r"\s*[,;]\s*", " ", line.unmasked(label)).strip(" .-–—@*_")  # no comma: other lines name it
    if name:
        found.name = name[0].upper() + name[1:]
        found.kind = KIND_OF.get(_folded(name))
        found.standing = found.standing or found.kind == "nibbles"
    return found


def is_drink_label(line: Masked) -> str | None:
    """`Wine: riesling` → what is poured; None for another line."""
    label, colon, rest = line.text.partition(":")
    return (
        line.unmasked(rest)
        if colon and re.search(r"[^\W\d_]", rest) and _DRINK_LABEL.fullmatch(label.strip())
        else None
    )


def drink_in(piece: str) -> str | None:
    """What a piece between commas says is poured: `with dry cider`; None for a dish."""
    found = _DRINK_PIECE.fullmatch(piece)
    if found is None or not re.search(r"[^\W\d_]", found["what"]):
        return None
    said = piece[: found.start("what")].casefold()
    return found["what"] if "drink" in said or "pour" in said or _POURED.search(found["what"]) else None


def dishes_in(text: str) -> Iterator[str]:
    """The dishes of a line, one by one: at semicolons; where there are none, at commas, and at the `and` or `&` before
    the last of a list or between two that each say how they are made."""
    several = pieces_of(text, only=";|·•")
    if len(several) > 1 or ";" in text:
        yield from several
        return
    pieces: list[str] = []
    for piece in pieces_of(text, only=",|·•"):
        if pieces and ways.says_bought(piece):  # `baklava, bought`
            pieces[-1] += f", {piece}"
        else:
            pieces.append(piece)
    for n, piece in enumerate(pieces):
        last_of_list = n == len(pieces) - 1 and n > 0
        yield from _at_and(re.sub(r"^(?:and|&|\+)\s+", "", piece, flags=re.IGNORECASE), in_list=last_of_list)


def _at_and(piece: str, *, in_list: bool) -> Iterator[str]:
    for gap in _AND.finditer(piece):
        if "(" in piece[: gap.start()] and ")" not in piece[: gap.start()]:
            continue
        sides = piece[: gap.start()], piece[gap.end() :]
        if (sides[0].split()[-1].casefold(), sides[1].split()[0].casefold()) in _PAIRS:
            continue
        if in_list or (all(len(each.split()) > 1 for each in sides) and all(map(_could_stand_alone, sides))):
            yield sides[0]
            yield from _at_and(sides[1], in_list=in_list)
            return
    yield piece


def _could_stand_alone(words_of_dish: str) -> bool:
    """Whether the words say how a dish is made, or nothing that is known does."""
    return bool(ways.ways_for(words_of_dish)) or not ways.all_ways()
