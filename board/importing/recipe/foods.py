"""A recipe's ingredient → a plan's ingredient line, with the rest as a remark. Pure.

What `quantities.parse_ingredient` cannot read is never dropped: it becomes `to taste`, with a remark that says so.
"""

import re
from dataclasses import dataclass

from board.facts.food import understood
from board.importing.recipe import words
from board.plan.phrases.amounts import plainly
from board.plan.phrases.quantities import Ingredient, parse_ingredient

_THOUSANDS = re.compile(r"(?<!\d)(\d{1,2}),(\d{3})(?=\s*(?:g|ml|grams?)\b)")  # a plan has to say which it means
_TO_TASTE = re.compile(r"[,\s]*\bto taste\s*$", re.IGNORECASE)
_BRACKETS = re.compile(r"[()\[\]]")
LONGEST_LINE = 250
_TAIL = re.compile(r"\s*\(([^()]*)\)\s*$")
_LABEL = re.compile(r"\b(?:contains?|free[\s-]+(?:from|of)|\w+-free)\b", re.IGNORECASE)
_FREE_FROM = re.compile(r",?\s+free[\s-]+(?:from|of)\b.*", re.IGNORECASE)
_WARNING = re.compile(r"\b(?:may contain|contains?)\s+[^;,]+")  # stays in the line, where guests are checked against it


@dataclass(frozen=True)
class Food:
    """`line`: for `ingredients:`. `remark`: what else the recipe says, or what is missing."""

    line: str
    remark: str = ""


def food_of(text: str) -> Food:
    """One ingredient. Raises nothing."""
    base, tail = _without_tail(plainly(_THOUSANDS.sub(r"\1\2", text.strip(" -•*·"))))
    if len(base) > LONGEST_LINE:
        base, tail = base[:LONGEST_LINE].rstrip(), words.recipe_whole(text)
    if _is_read(base):
        warned = next(
            (f"{base}, {each}" for each in _WARNING.findall(tail.lower()) if _is_read(f"{base}, {each}")), base
        )
        return Food(warned, tail)
    bare = _TO_TASTE.sub("", base)
    missing = words.RECIPE_AMOUNT_UNREAD if base[:1].isdigit() else words.RECIPE_NO_AMOUNT
    remark = tail if "to taste" in text.lower() else "; ".join(piece for piece in (tail, missing) if piece)
    for line in (f"to taste {bare}", f"to taste {_BRACKETS.sub('', text).strip()[:LONGEST_LINE]}"):
        if _is_read(line):
            return Food(line, remark)
    return Food("to taste ?", words.recipe_whole(text))


def _is_read(line: str) -> bool:
    """Whether the plan's own parser accepts it."""
    try:
        Ingredient.model_validate(parse_ingredient(line))
    except ValueError:
        return False
    return True


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
