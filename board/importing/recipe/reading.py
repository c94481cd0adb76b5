"""A schema.org Recipe node → its name, yield, ingredients, instructions and times. Pure.

Properties and their forms: https://schema.org/Recipe, /HowToSection, /HowToStep, /HowToDirection, /HowToTip, /ItemList,
/ListItem, /Duration, /QuantitativeValue. Other forms are ignored.
"""

import html
import math
import re
import unicodedata
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from board.base.plain import REPLACEMENT, one_line
from board.importing.recipe import words
from board.importing.recipe.documents import NotARecipe
from board.importing.recipe.finding import Found, Node, is_a
from board.importing.recipe.language import language_of
from board.plan.phrases.durations import parse_minutes

MOST_STEPS, MOST_FOODS = 80, 150
FOOD_KEYS = ("recipeIngredient", "ingredients", "supply")
_HOLDS_FOODS = ("@list", "@set", "itemListElement", "item")
_NAMES = ("name", "alternateName", "text", "@value", "description")
_AMOUNTS = ("amount", "quantity", "requiredQuantity")
_UNIT_CODES = {"GRM": "g", "KGM": "kg", "MLT": "ml", "CLT": "cl", "DLT": "dl", "LTR": "l", "ONZ": "oz", "LBR": "lb"}
LONGEST_TEXT, LONGEST_LINE = 60_000, 2000
DEEPEST = 12
LONGEST_NAME, LONGEST_ADDRESS, LONGEST_SOURCE = 100, 200, 290
_ADDRESS = re.compile(r"https?://[^\s<>\"]+", re.IGNORECASE)
MOST_VISITS = 20_000  # values visited in the instructions; references can multiply a small file
_TAG = re.compile(r"<(/?)([a-zA-Z][a-zA-Z0-9]*)\b[^<>]*>|<!--[^<>]*-->")
_NEW_LINE = {"p", "br", "li", "ol", "ul", "div", "h1", "h2", "h3", "h4", "h5", "h6", "tr", "section"}
_NOT_IN_YAML = re.compile("[^\t\n\x20-\x7e\x85\xa0-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")  # YAML 1.2.2, 5.1
_NUMBERED = re.compile(r"\s*(?:(?:step|no\.?)\s*)?\d{1,2}\s*[.):]\s+(?=\D)", re.IGNORECASE)
_NUMBER = r"(\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|twelve)"
_PEOPLE = r"(?:servings?|portions?|people|persons?|guests?|diners?|adults?|covers?|eaters?|serves|helpings?)"
_SIZED = r"(?:hearty\s+|generous\s+|small\s+|large\s+|main[- ]course\s+|starter[- ]size[d]?\s+)?"
_SERVES = re.compile(
    # `Serves 6 as a starter`, but not `Servings: 24 cookies`: what is counted then is no people
    rf"\b(?:serves|servings?|feeds|for)\s*:?\s*(?:about\s+|up to\s+)?{_NUMBER}(?:\s*(?:-|–|to|or)\s*\d{{1,3}})?"
    rf"(?=\s*(?:$|[,.;()/]|(?:as|with|or|and|at|generously|comfortably|hungry)\b|{_SIZED}{_PEOPLE}\b))"
    rf"|\b{_NUMBER}(?:\s*(?:-|–|to|or)\s*\d{{1,3}})?\s*{_SIZED}{_PEOPLE}\b",
    re.IGNORECASE,
)
_BARE_NUMBER = re.compile(r"(\d{1,3})(?:\s*(?:-|–|to)\s*\d{1,3})?(?:\.0+)?(?:\s+(?:as|with)\s.*)?")
_COUNTED_THINGS = re.compile(r"\d\s*(?!(?:as|with|to)\b)[a-z]", re.IGNORECASE)  # `24 cookies` beside a bare 24
_NUMBER_WORDS = ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve")


@dataclass(frozen=True)
class Instruction:
    """One thing to do. `minutes`: its own time, if given; `section`: the part it belongs to."""

    text: str
    minutes: int | None = None
    section: str = ""


@dataclass(frozen=True)
class Recipe:
    """`serves` None: the yield does not say for how many. Times in whole minutes, None if not given.

    `source`: who wrote it, who published it, and where, as far as the file says. `language`: its name, where it is not
    English.
    """

    name: str
    serves: int | None
    yields: str
    foods: tuple[str, ...]
    instructions: tuple[Instruction, ...]
    preparation: int | None = None
    cooking: int | None = None
    total: int | None = None
    foods_left_out: int = 0
    foods_unread: int = 0  # entries without any words
    steps_left_out: int = 0
    source: str = ""
    language: str = ""


def read_recipe(found: Found) -> Recipe:
    """The recipe; each text is one line, safe for a terminal and for YAML. Raises NotARecipe for one without foods and
    steps."""
    node = found.recipe
    foods, unread = _foods(found)
    steps = list(_Reader(found.by_id).instructions(node.get("recipeInstructions")))
    if not foods and not steps:
        raise NotARecipe(words.RECIPE_EMPTY)
    yields = [text for text in _texts(_first(node, "recipeYield", "yield")) if text]
    return Recipe(
        name=_text(_first(node, "name", "headline"))[:300].strip() or words.RECIPE_NAMELESS,
        serves=_serves(yields),
        yields=max(yields, key=len, default=""),
        foods=tuple(foods[:MOST_FOODS]),
        instructions=tuple(steps[:MOST_STEPS]),
        preparation=_minutes(node.get("prepTime")),
        cooking=_minutes(_first(node, "cookTime", "performTime")),
        total=_minutes(node.get("totalTime")),
        foods_left_out=max(0, len(foods) - MOST_FOODS),
        foods_unread=unread,
        steps_left_out=max(0, len(steps) - MOST_STEPS),
        source=_source(found),
        language=language_of([*foods, *(step.text for step in steps)]),
    )


def _foods(found: Found) -> tuple[list[str], int]:
    """Every ingredient under every name that lists them, of this recipe wherever the page has it: whoever must not eat
    one needs it read, so a list adds what those before it lack. And how many entries have no words."""
    foods: list[str] = []
    unread = 0
    for node in (found.recipe, *found.also):
        for key in FOOD_KEYS:
            reader = _Foods(found.by_id)
            listed = list(reader.lines(node.get(key)))
            known = set(map(_alike, foods))
            foods += [food for food in listed if _alike(food) not in known]
            unread += reader.unread
    return foods, unread


def _alike(food: str) -> str:
    """`½ cup  Sugar` and `1/2 cup sugar` are one line (Unicode's NFKC)."""
    return "".join(filter(str.isalnum, unicodedata.normalize("NFKC", food).casefold()))


class _Foods:
    """Walks a list of ingredients, however it is nested."""

    def __init__(self, by_id: dict[str, Node]) -> None:
        self.by_id = by_id
        self.unread = 0
        self.left = MOST_VISITS

    def lines(self, value: Any, depth: int = 0) -> Iterator[str]:
        """A line an ingredient; an entry without words is counted."""
        self.left -= 1
        if value in (None, "", []):
            return
        if self.left < 0 or depth > DEEPEST:
            self.unread += 1
        elif isinstance(value, list):
            for each in value:
                yield from self.lines(each, depth + 1)
        elif isinstance(value, dict):
            inner = [value[key] for key in _HOLDS_FOODS if value.get(key) is not None]
            if inner:
                yield from self.lines(inner, depth + 1)
            else:
                yield from self._told(_of_a_node(self._named(value)))
        else:
            lines = _unmarked(value).split("\n") if isinstance(value, str) else [_text(value)]
            yield from self._told(*map(clean, lines))

    def _named(self, node: Node) -> Node:
        own = node.get("@id")
        return self.by_id.get(own, node) if isinstance(own, str) else node

    def _told(self, *lines: str) -> Iterator[str]:
        self.unread += not any(lines)
        yield from filter(None, lines)


def _of_a_node(node: Node) -> str:
    """`{name: peanuts, value: 100, unitCode: GRM}` → `100 GRM peanuts` as `100 g peanuts`: amount, name, what else it
    says, each once."""
    amounts = [_amount(node), *(_amount(node[key]) for key in _AMOUNTS if key in node)]
    line = ""
    for piece in (*amounts, *(_every(node.get(key)) for key in _NAMES)):
        if piece and _alike(piece) not in _alike(line):
            line = f"{line}, {piece}" if line and piece[:1].isdecimal() else f"{line} {piece}".strip()
    return line


def _amount(value: Any) -> str:
    """A QuantitativeValue or PropertyValue (schema.org), or words, as figure and unit."""
    if not isinstance(value, dict):
        return _every(value)
    inner = value.get("value")
    low, high = _text(value.get("minValue")), _text(value.get("maxValue"))
    figure = _amount(inner) if isinstance(inner, dict) else _every(inner) or "-".join(filter(None, (low, high)))
    code = _text(value.get("unitCode"))
    unit = _text(value.get("unitText")) or _UNIT_CODES.get(code.upper(), code)
    return f"{figure} {unit}".strip() if figure else ""


def _every(value: Any) -> str:
    """All the words of a value: a list's, too."""
    if isinstance(value, list):
        return ", ".join(dict.fromkeys(text for each in value if (text := _text(each))))
    return _text(value)


def _source(found: Found) -> str:
    """Author, publisher and address, each once."""
    node = found.recipe
    people = [_name(node.get(key), found.by_id) for key in ("author", "creator", "publisher")]
    address = _text(_first(node, "url", "mainEntityOfPage", "@id"))
    if not _ADDRESS.fullmatch(address):
        address = clean(found.address)
    pieces = dict.fromkeys([*people, clean(found.site)])
    if _ADDRESS.fullmatch(address) and len(address) <= LONGEST_ADDRESS:
        pieces[address] = None
    told = ""
    for piece in filter(None, pieces):
        longer = f"{told}, {piece}" if told else piece
        told = longer if len(longer) <= LONGEST_SOURCE else told
    return told


def _name(value: Any, by_id: dict[str, Node]) -> str:
    if isinstance(value, list):
        return ", ".join(dict.fromkeys(name for each in value[:3] if (name := _name(each, by_id))))[:LONGEST_NAME]
    if isinstance(value, dict) and isinstance(own := value.get("@id"), str):
        value = by_id.get(own, value)
    name = _text(value)[:LONGEST_NAME]
    return "" if name == "" or _ADDRESS.fullmatch(name) else name


def _first(node: Node, *keys: str) -> Any:
    return next((node[key] for key in keys if node.get(key) not in (None, "", [])), None)


def clean(text: str) -> str:
    """One line without markup or entities (pages often encode them twice); white space folded."""
    return one_line(_NOT_IN_YAML.sub(REPLACEMENT, _unmarked(text)), limit=LONGEST_LINE)


def _unmarked(text: str) -> str:
    text = html.unescape(text[:LONGEST_TEXT])
    text = _TAG.sub(lambda tag: "\n" if (tag[2] or "").lower() in _NEW_LINE else "", text)
    return html.unescape(text)


def _text(value: Any, depth: int = 0) -> str:
    """The words of a value: text, a number, `@value`, a node's text or name, the first of a list; else ""."""
    if isinstance(value, str):
        return clean(value)
    if isinstance(value, int | float) and not isinstance(value, bool) and math.isfinite(value):
        return f"{value:g}" if abs(value) < 1e6 else ""
    if depth == DEEPEST:
        return ""
    if isinstance(value, list):
        return next((text for each in value if (text := _text(each, depth + 1))), "")
    if isinstance(value, dict):
        inner = _first(value, "@value", "@list", "text", "name", "value")
        unit = _text(value.get("unitText"), depth + 1) if "value" in value else ""
        return f"{_text(inner, depth + 1)} {unit}".strip()
    return ""


def _texts(value: Any) -> list[str]:
    if isinstance(value, dict) and isinstance(value.get("@list"), list):
        value = value["@list"]
    if isinstance(value, dict) and "itemListElement" in value:
        value = value["itemListElement"]
    if isinstance(value, str):
        return [clean(line) for line in _unmarked(value).split("\n")]
    return [_text(each) for each in value] if isinstance(value, list) else [_text(value)]


def _serves(yields: list[str]) -> int | None:
    """`Serves 4-6` → 4: the lower figure, so that nobody goes hungry. None for `12 muffins`, also with a bare 12 beside
    it: nobody knows how many they feed."""
    found = [match for match in map(_SERVES.search, yields) if match]
    if not found and not any(map(_COUNTED_THINGS.search, yields)):
        found = [match for match in map(_BARE_NUMBER.fullmatch, yields) if match]
    for match in found:
        said = next(group for group in match.groups() if group).lower()
        count = int(said) if said.isdecimal() else _NUMBER_WORDS.index(said) + 1
        if 1 <= count <= 500:
            return count
    return None


def _minutes(value: Any) -> int | None:
    """Minutes of a duration, ISO 8601 or in words; None if missing, zero or unreadable."""
    text = _text(value)
    if re.fullmatch(r"[pP][\dtTyYwWdDhHmMsS.,]+", text):
        text = text.upper()
    try:
        return parse_minutes(text) or None
    except ValueError:
        return None


class _Reader:
    """Walks nested instructions; a node inside itself is not followed again."""

    def __init__(self, by_id: dict[str, Node]) -> None:
        self.by_id = by_id
        self.inside: set[int] = set()
        self.left = MOST_VISITS

    def instructions(self, value: Any, section: str = "", minutes: int | None = None) -> Iterator[Instruction]:
        self.left -= 1
        if self.left < 0:
            return
        if isinstance(value, str):
            yield from _lines(value, section, minutes)
        elif isinstance(value, list | dict) and id(value) not in self.inside and len(self.inside) < 4 * DEEPEST:
            self.inside.add(id(value))
            if isinstance(value, dict):
                yield from self._node(value, section)
            else:
                for each in value:
                    yield from self.instructions(each, section)
            self.inside.discard(id(value))

    def _node(self, node: Node, section: str) -> Iterator[Instruction]:
        own = node.get("@id")
        if isinstance(own, str) and not node.keys() & {"text", "name", "itemListElement", "item", "@value", "@list"}:
            node = self.by_id.get(own, node)
            if id(node) in self.inside and "itemListElement" in node:
                return
        if is_a(node, "HowToTip"):
            return
        if is_a(node, "HowToSection"):
            section = _text(node.get("name")) or section
        inner = _in_order(_first(node, "itemListElement", "item", "@list", "step", "steps"))
        found = list(self.instructions(inner, section)) if inner is not None else []
        if found:
            yield from found
        elif not is_a(node, "HowToSection"):
            minutes = _minutes(_first(node, "performTime", "totalTime"))
            text = _first(node, "text", "@value", "name", "description")
            yield from self.instructions(text if isinstance(text, str | list) else _text(text), section, minutes)


def _in_order(value: Any) -> Any:
    """Sorted by `position`, if every entry has one."""
    if isinstance(value, list) and value and all(isinstance(each, dict) for each in value):
        positions = [_text(each.get("position")) for each in value]
        if all(position.isdecimal() and len(position) < 7 for position in positions):
            order = sorted(range(len(value)), key=lambda n: int(positions[n]))
            return [value[n] for n in order]
    return value


def _lines(text: str, section: str, minutes: int | None) -> Iterator[Instruction]:
    """Each line of a text is one instruction; leading numbers are dropped."""
    lines = [line for each in _unmarked(text).split("\n") if (line := _unnumbered(clean(each)))]
    for line in lines:
        yield Instruction(line, minutes if len(lines) == 1 else None, section)


def _unnumbered(line: str) -> str:
    match = _NUMBERED.match(line)
    return line[match.end() :] if match else line
