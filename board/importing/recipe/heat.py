"""The oven setting in a recipe's words: `180°C/160°C fan/gas 4`, `350 degrees`. Pure; English.

Gas marks to °C: common practice, no source. A bare figure from 260 up is °F: no home oven reaches that in °C.
"""

import re

BARE_FAHRENHEIT_FROM = 260
LOWEST_CELSIUS, HIGHEST_CELSIUS = 50, 300  # of a home oven; common practice, no source
_GAS_CELSIUS = {"¼": 110, "1/4": 110, "½": 130, "1/2": 130, "1": 140, "2": 150, "3": 170, "4": 180, "5": 190, "6": 200,
                "7": 220, "8": 230, "9": 240}  # fmt: skip
_DEGREES = re.compile(
    r"(?P<fan>\bfan\s*(?:oven)?\s*)?(?<!\d)(?P<figure>\d{2,3})(?:\s*(?:-|–|to)\s*\d{2,3})?\s*"
    r"(?P<mark>°|º|˚|degrees?\b|deg\b\.?)?\s*(?P<unit>celsius|centigrade|fahrenheit|[CF])?(?![a-z])"
    r"(?P<after>\s*\(?\s*fan\b)?",
    re.IGNORECASE,
)
_GAS = re.compile(r"\bgas\s*(?:mark\s*)?(1/[24]|[½¼]|\d)(?!\d)", re.IGNORECASE)
# `bake at 350 for an hour`, `oven to 350.`: no unit, and nothing after it that is counted
_BARE = re.compile(
    r"\b(?:at|(?:oven|temperature|heat)\s+(?:up\s+|down\s+)?to)\s+(?P<figure>\d{2,3})"
    r"(?=\s*(?:$|[.,;)]|(?:for|until|till|and|then|in|on|about)\b))",
    re.IGNORECASE,
)
# After these words a figure is the temperature of the food or fat, not of the oven.
_OF_THE_FOOD = re.compile(
    r"\b(?:internal|core|thermometer|probe|reads?|reading|reach(?:es)?|registers?|"
    r"in the (?:thickest|middle|cent(?:re|er)))\b",
    re.IGNORECASE,
)


def setting_in(text: str) -> tuple[str, str] | None:
    """The setting as a plan writes it (`180 C`), and the words it came from. Plain oven before fan; None if absent."""
    found: dict[str, tuple[str, str]] = {}
    of_food = _OF_THE_FOOD.search(text)
    for match in _DEGREES.finditer(text[: of_food.start()] if of_food else text):
        unit = (match["unit"] or "")[:1].upper()
        if not unit and not match["mark"]:
            continue
        figure = int(match["figure"])
        unit = unit.replace("c", "C") or _unit(figure)
        celsius = figure if unit == "C" else (figure - 32) / 1.8
        if LOWEST_CELSIUS <= celsius <= HIGHEST_CELSIUS:
            kind = ("fan " if match["fan"] or match["after"] else "") + unit
            found.setdefault(kind, (f"{figure} {unit}", match[0].strip(" (")))
    gas = _GAS.search(text)
    if gas and gas[1] in _GAS_CELSIUS:
        found.setdefault("gas", (f"{_GAS_CELSIUS[gas[1]]} C", gas[0]))
    bare = _BARE.search(text[: of_food.start()] if of_food else text)
    if bare and not found and LOWEST_CELSIUS <= _celsius(int(bare["figure"])) <= HIGHEST_CELSIUS:
        found["C"] = (f"{bare['figure']} {_unit(int(bare['figure']))}", bare["figure"])
    return next((found[kind] for kind in ("C", "F", "gas", "fan C", "fan F") if kind in found), None)


def without_unit(said: str) -> tuple[str, str] | None:
    """Of a setting's words that name no unit, the figure and the unit that it is taken in; None for others."""
    match = _DEGREES.fullmatch(said)
    if match is None or match["unit"]:
        return None
    return match["figure"], _unit(int(match["figure"]))


def _unit(figure: int) -> str:
    return "F" if figure >= BARE_FAHRENHEIT_FROM else "C"


def _celsius(figure: int) -> float:
    return figure if _unit(figure) == "C" else (figure - 32) / 1.8
