"""Recipe → steps of a dish: instructions split where the place of work changes, each with its guesses. Pure.

Stated times are kept; times read from words, or shared out of a total, are guesses.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace

from board.importing.recipe import words
from board.importing.recipe.guessing import Guess, heats_the_oven, place_of
from board.importing.recipe.heat import setting_in
from board.importing.recipe.reading import Instruction, Recipe
from board.importing.recipe.times import Length, length_in
from board.plan.phrases.durations import short

UNKNOWN_MINUTES = 10  # a step without a time; ours
LONGEST_NAME = 72
_SENTENCE = re.compile(r"(?<=[.!?;])\s+(?=[A-Z“\"'(])|,?\s+(?:and\s+)?then\s+(?=[a-z])")
_ABBREVIATED = re.compile(r"\b(?:approx|min|mins|hr|hrs|tbsp|tsp|no|deg|e\.g|i\.e|oz|lb)\.$", re.IGNORECASE)


@dataclass(frozen=True)
class Piece:
    """A future step. `guess` None: at the worktop. `stated`: minutes, if the recipe states them."""

    text: str
    section: str = ""
    guess: Guess | None = None
    length: Length | None = None
    stated: int | None = None
    remarks: tuple[str, ...] = ()


@dataclass(frozen=True)
class Draft:
    """A step. Its keys are as in a plan ("" if absent); each `_why` says why it was guessed ("" if stated)."""

    name: str
    section: str
    takes: str
    takes_why: str
    where: str = ""
    where_why: str = ""
    attended: str = ""
    cooks: bool = False
    remarks: tuple[str, ...] = ()


def drafts(recipe: Recipe) -> list[Draft]:
    """The steps in order; at least one."""
    pieces: list[Piece] = []
    oven: tuple[str, str] | None = None
    remarks: tuple[str, ...] = ()
    for instruction in recipe.instructions:
        own, oven, remarks = _pieces(instruction, oven, remarks)
        pieces += own
    if not pieces:
        pieces = [Piece(words.RECIPE_STEPLESS, remarks=(*remarks, words.RECIPE_NO_STEPS))]
    elif remarks:
        pieces[-1] = replace(pieces[-1], remarks=(*pieces[-1].remarks, *remarks))
    shares = _shares(recipe, pieces)
    used: set[str] = set()
    return [_draft(piece, share, used) for piece, share in zip(pieces, shares, strict=True)]


def _pieces(
    instruction: Instruction, oven: tuple[str, str] | None, remarks: tuple[str, ...]
) -> tuple[list[Piece], tuple[str, str] | None, tuple[str, ...]]:
    """One instruction as steps. The oven setting carries over to the next, and so do remarks with no step yet."""
    found: list[Piece] = []
    for sentence in _sentences(instruction.text):
        text = sentence
        heating = heats_the_oven(sentence)
        if heating is not None:
            oven = heating[0] or oven
            remarks = (*remarks, f"{words.recipe_whole(sentence)} ({words.RECIPE_PREHEATS})")
            text = heating[1]
            if not text:
                continue
        length = length_in(text)
        guess = place_of(text, length, oven)
        if guess is not None and guess.in_oven and not guess.bare:
            oven = setting_in(text) or oven
        last = found[-1] if found else None
        if last is not None and guess is None and length is None and not remarks and _takes_in(last):
            found[-1] = replace(last, text=f"{last.text} {text}")
        else:
            found.append(Piece(text, instruction.section, guess, length, None, remarks))
            remarks = ()
    if instruction.minutes is not None and found:
        found = [_as_one(found, instruction.minutes)]
    return found, oven, remarks


def _sentences(text: str) -> Iterator[str]:
    held = ""
    for piece in _SENTENCE.split(text):
        held = f"{held} {piece}".strip()
        if not _ABBREVIATED.search(held):
            yield held
            held = ""
    if held:
        yield held


def _takes_in(last: Piece) -> bool:
    """Whether the next sentence can join: work at the worktop, or in a pan already on the ring."""
    if last.guess is None:
        return last.length is None
    return last.guess.where.startswith("stovetop")


def _as_one(pieces: list[Piece], minutes: int) -> Piece:
    """An instruction with its own time stays whole."""
    guess = next((piece.guess for piece in pieces if piece.guess is not None), None)
    text = " ".join(piece.text for piece in pieces)
    remarks = tuple(remark for piece in pieces for remark in piece.remarks)
    return Piece(text, pieces[0].section, guess, None, minutes, remarks)


def _shares(recipe: Recipe, pieces: list[Piece]) -> list[tuple[int, str]]:
    """Minutes and reason for each piece without its own time; the rest of a total is shared evenly."""
    open_ = {n for n, piece in enumerate(pieces) if piece.length is None and piece.stated is None}
    found = {n: (UNKNOWN_MINUTES, words.RECIPE_NO_TIME) for n in open_}
    by_hand = {n for n, piece in enumerate(pieces) if piece.guess is None}
    cooking = {n for n, piece in enumerate(pieces) if piece.guess is not None and piece.guess.cooks}
    parts = [
        (by_hand, recipe.preparation, words.RECIPE_PREPARATION),
        (cooking, recipe.cooking, words.RECIPE_COOKING),
    ]
    if recipe.preparation is None and recipe.cooking is None:
        parts = [(set(range(len(pieces))), recipe.total, words.RECIPE_ALL)]
    for own, total, what in parts:
        left = (total or 0) - sum(_known(pieces[n]) for n in own)
        for n in own & open_ if left > 0 else ():
            share = max(1, round(left / len(own & open_)))
            found[n] = (share, words.recipe_share(short(total or 0), what))
    return [found.get(n, (0, "")) for n in range(len(pieces))]


def _known(piece: Piece) -> int:
    return piece.stated or (piece.length.likely if piece.length is not None else 0)


def _draft(piece: Piece, share: tuple[int, str], used: set[str]) -> Draft:
    minutes, why = share
    if piece.stated is not None:
        minutes, why, takes = piece.stated, "", short(piece.stated)
    elif piece.length is not None:
        minutes, why, takes = piece.length.likely, words.recipe_from(*piece.length.said), piece.length.text()
    else:
        takes = short(minutes)
    name = _name(piece.text, used)
    whole = () if _bare(name) == _bare(piece.text) else (words.recipe_whole(piece.text),)
    guess = piece.guess
    return Draft(
        name,
        piece.section,
        takes,
        why,
        where=guess.where if guess else "",
        where_why=guess.why() if guess else "",
        attended=guess.attended(minutes) if guess else "",
        cooks=guess is not None and guess.cooks,
        remarks=(*piece.remarks, *whole),
    )


def _name(text: str, used: set[str]) -> str:
    """A step's first words, made unique among the steps so far."""
    words_of = text.split(". ")[0].rstrip(" .;:,!")
    if len(words_of) > LONGEST_NAME:
        words_of = words_of[:LONGEST_NAME].rsplit(" ", 1)[0].rstrip(" .;:,!") + " …"
    if words_of[1:2].islower() or words_of[1:2] == " ":
        words_of = words_of[0].lower() + words_of[1:]
    base = name = words_of or words.RECIPE_GO_ON
    number = 2
    while name.casefold() in used:
        name, number = f"{base} ({number})", number + 1
    used.add(name.casefold())
    return name


def _bare(text: str) -> str:
    return text.casefold().rstrip(" .;:,!")
