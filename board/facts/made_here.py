"""Whether a plan's words make a food at home or take it as it is bought: `homemade aioli`, `churn the ice cream` make
it, `stir in the mayonnaise` does not. Pure; common practice, no source."""

import re
from collections.abc import Collection, Iterable

from board.facts.phrases import LINKS, folded, holds, listed_words, stems

AT_HOME = (
    r"home[- ]?(?:made|churned)|(?:made )?(?:at home|by hand|from scratch)|hand[- ]?made|fresh(?:ly made)?"
    r"|(?:our|my|his|her|your) own"
)
_AT_HOME = re.compile(rf"\b(?:{AT_HOME})\b")
_BOUGHT = re.compile(r"\b(?:shop|store|bought|tub|jar|ready[- ]?made|bakery|deli|supermarket)\b")
_PIECES = re.compile(r"[,;:()\[\]/&+]|\b(?:and|with|in|on|over|under|then)\b")
_CLAUSES = re.compile(r"[.,;:()]|\bthen\b")
_MAKES = listed_words("make making made churn churning emulsify")
_BEATS = listed_words("whisk whip beat blend blitz whizz shake whisking")  # also what is bought, with something else
_NO_OBJECT = LINKS | listed_words("and for of to into with from")
_GOES_ON = listed_words("until till in over ahead on at by the from yourself again overnight")


def is_made_here(
    names: Collection[tuple[str, ...]], dish: str, steps: Iterable[str], others: Collection[str] = ()
) -> bool:
    """Whether the dish's name says it of a food that goes by these names, or a step makes it. `others`: words of the
    dish's other foods: what is made of one of them and this, `the tuna mayonnaise`, takes this as it is."""
    return _is_said_of(names, dish) or any(_is_made(names, step, others) for step in steps)


def _is_said_of(names: Collection[tuple[str, ...]], dish: str) -> bool:
    pieces = [piece.strip() for piece in _PIECES.split(folded(dish)) if piece.strip()]
    for n, piece in enumerate(pieces):
        about = pieces[n - 1] if n and _AT_HOME.fullmatch(piece) else piece  # `ice cream, homemade`
        if _AT_HOME.search(piece) and any(holds(stems(about), name) for name in names):
            return True
    return False


def _is_made(names: Collection[tuple[str, ...]], step: str, others: Collection[str]) -> bool:
    """Whether a step's words make it: the food is what its verb is about, and nothing else is."""
    text = folded(step)
    if _BOUGHT.search(text):
        return False
    clauses = [stems(clause) for clause in _CLAUSES.split(text)]
    return any(_is_object(clause, name, others) for clause in clauses for name in names)


def _is_object(words: tuple[str, ...], name: tuple[str, ...], others: Collection[str]) -> bool:
    for start in range(1, len(words) - len(name) + 1):
        if words[start : start + len(name)] != name:
            continue
        verb = next((n for n in range(start - 1, max(-1, start - 5), -1) if words[n] in _MAKES | _BEATS), None)
        following = words[start + len(name) : start + len(name) + 1]
        if verb is None or any(word in _NO_OBJECT or word in others for word in words[verb + 1 : start]):
            continue
        ends = not following or following[0] in _GOES_ON
        if ends or (words[verb] in _MAKES and following[0] in _NO_OBJECT):
            return True
    return False
