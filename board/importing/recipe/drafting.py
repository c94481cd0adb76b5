"""Recipe → steps of a dish: instructions split where the place of work changes, each with its guesses. Pure.

Stated times are kept; times read from words, or shared out of a total, are guesses.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace

from board.importing.recipe import words
from board.importing.recipe.foods import foods_of, grams_of
from board.importing.recipe.guessing import (
    Guess,
    Kitchen,
    begins_notes,
    heats_the_oven,
    is_about_coals,
    is_no_work,
    leaves_the_heat,
    place_of,
)
from board.importing.recipe.heat import setting_in
from board.importing.recipe.reading import Instruction, Recipe
from board.importing.recipe.times import Length, length_in, rate_in
from board.importing.recipe.using import uses_of
from board.plan.phrases.durations import short

UNKNOWN_MINUTES = 10  # a step without a time; ours
LONGEST_NAME = 60
LONGEST_HOW, MOST_SENTENCES = 300, 3  # a plan's `how:` is a sentence or three
_SENTENCE = re.compile(r"(?<=[.!?;])\s+(?=[A-Z“\"'(])|,?\s+(?:and\s+)?then\s+(?=[a-z])")
_FULL = re.compile(r"(?<=[.!?])\s+(?=[A-Z“\"'(])")
_ABBREVIATED = re.compile(r"\b(?:approx|no|deg|e\.g|i\.e)\.$", re.IGNORECASE)
_CLAUSE = re.compile(r",\s|\s(?:and|until|for|with|in|over|into|on|to|from|at)\s|\s[–—-]\s")


@dataclass(frozen=True)
class Piece:
    """A future step. `guess` None: at the worktop. `stated`: minutes, if the recipe states them. `why`: why its length
    is guessed, where the words alone do not say."""

    text: str
    section: str = ""
    guess: Guess | None = None
    length: Length | None = None
    stated: int | None = None
    remarks: tuple[str, ...] = ()
    why: str = ""


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
    tool: str = ""  # an appliance that the kitchen must name
    how: str = ""
    uses: tuple[str, ...] = ()
    remarks: tuple[str, ...] = ()


def drafts(recipe: Recipe) -> list[Draft]:
    """The steps in order; at least one."""
    pieces, remarks = _Reader(recipe).pieces()
    if not pieces:
        pieces = [Piece(words.RECIPE_STEPLESS, remarks=(*remarks, words.RECIPE_NO_STEPS))]
    elif remarks:
        pieces[-1] = replace(pieces[-1], remarks=(*pieces[-1].remarks, *remarks))
    shares = _shares(recipe, pieces)
    uses = uses_of([piece.text for piece in pieces], () if recipe.language else recipe.foods)
    used: set[str] = set()
    return [_draft(piece, share, used, own) for piece, share, own in zip(pieces, shares, uses, strict=True)]


class _Reader:
    """Goes through the instructions with what is on the heat so far."""

    def __init__(self, recipe: Recipe) -> None:
        self.recipe = recipe
        self.grams = max((grams_of(food.line) for each in recipe.foods for food in foods_of(each)), default=0.0)
        self.kitchen = Kitchen(coals=any(is_about_coals(each.text) for each in recipe.instructions))
        self.remarks: tuple[str, ...] = ()  # with no step yet

    def pieces(self) -> tuple[list[Piece], tuple[str, ...]]:
        """The steps to be, and remarks that are left."""
        found: list[Piece] = []
        for instruction in self.recipe.instructions:
            found += self._of(instruction)
        return found, self.remarks

    def _of(self, instruction: Instruction) -> list[Piece]:
        found: list[Piece] = []
        noted = False
        for sentence in _sentences(instruction.text):
            noted = noted or begins_notes(sentence)
            if noted or is_no_work(sentence):
                self.remarks = (*self.remarks, words.recipe_whole(sentence))
                continue
            text = self._without_heating(sentence)
            if text:
                self._take(Piece(text, instruction.section), found)
        if instruction.minutes is not None and found:
            return [_as_one(found, instruction.minutes)]
        return found

    def _without_heating(self, sentence: str) -> str:
        heating = heats_the_oven(sentence)
        if heating is None:
            return sentence
        self.kitchen = replace(self.kitchen, oven=heating[0] or self.kitchen.oven)
        self.remarks = (*self.remarks, f"{words.recipe_whole(sentence)} ({words.RECIPE_PREHEATS})")
        return heating[1]

    def _take(self, piece: Piece, found: list[Piece]) -> None:
        """One sentence, alone or with the one before."""
        length, why = self._length(piece.text)
        guess = place_of(piece.text, length, self.kitchen) if not self.recipe.language else None
        oven = self.kitchen.oven
        if guess is not None and guess.in_oven and not guess.bare:
            oven = setting_in(piece.text) or oven
        stays = guess is None and not leaves_the_heat(piece.text)
        self.kitchen = replace(self.kitchen, oven=oven, last=self.kitchen.last if stays else guess)
        if guess is not None and not guess.where:  # an appliance is filled, and not on yet
            guess = None
        last = found[-1] if found else None
        if last is not None and not self.remarks and (joined := _joined(last, piece.text, guess, length)) is not None:
            found[-1] = joined
            return
        found.append(replace(piece, guess=guess, length=length, remarks=self.remarks, why=why))
        self.remarks = ()

    def _length(self, text: str) -> tuple[Length | None, str]:
        """The minutes a sentence gives, by the weight where it says so; and why, where its words alone do not say."""
        if self.recipe.language:
            return None, ""
        rate = rate_in(text)
        if rate is None:
            return length_in(text), ""
        if not self.grams:
            return None, words.recipe_by_weight(rate.said)
        length = rate.of(self.grams).plus(length_in(text))
        return length, words.recipe_for_weight(rate.said, self.grams)


def _sentences(text: str) -> Iterator[str]:
    held = ""
    for piece in _SENTENCE.split(text):
        held = f"{held} {piece}".strip()
        if not _ABBREVIATED.search(held):
            yield held
            held = ""
    if held:
        yield held


def _joined(last: Piece, text: str, guess: Guess | None, length: Length | None) -> Piece | None:
    """The two as one step: work by hand without a time, or what is done in the same pan; None if they stay apart."""
    whole = f"{last.text} {text}" if not text[:1].islower() else f"{last.text.rstrip(' .,;')}, then {text}"
    if guess is None or last.guess is None:
        alike = guess is None and last.guess is None and length is None and last.length is None
        return replace(last, text=whole) if alike else None
    if not (guess.where == last.guess.where and guess.where.startswith("stovetop")):
        return None
    if length is None or last.length is None:  # a sentence with its own minutes stays with its pan
        either = last.length or length
        flame = replace(last.guess, low_flame=last.guess.low_flame or guess.low_flame)
        own = guess if last.length is None and length is not None else flame
        return replace(last, text=whole, guess=own, length=either)
    return None


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


def _draft(piece: Piece, share: tuple[int, str], used: set[str], uses: tuple[str, ...]) -> Draft:
    minutes, why = share
    if piece.stated is not None:
        minutes, why, takes = piece.stated, "", short(piece.stated)
    elif piece.length is not None:
        said = piece.why or words.recipe_from(*piece.length.said)
        minutes, why, takes = piece.length.likely, said, piece.length.text()
    else:
        why, takes = piece.why or why, short(minutes)
    name = _name(piece.text, used)
    how, left_out = _how(piece.text) if _bare(name) != _bare(piece.text) else ("", False)
    whole = (words.recipe_whole(piece.text),) if left_out else ()
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
        tool=guess.tool if guess else "",
        how=how,
        uses=uses,
        remarks=(*piece.remarks, *whole),
    )


def _how(text: str) -> tuple[str, bool]:
    """The first whole sentences, as many as a call can show, and whether any is left out."""
    sentences = _FULL.split(text)
    kept = sentences[:MOST_SENTENCES]
    while kept and len(" ".join(kept)) > LONGEST_HOW:
        kept.pop()
    how = " ".join(kept)
    return how[:1].upper() + how[1:], len(kept) < len(sentences)


def _name(text: str, used: set[str]) -> str:
    """A step's first words, up to where a clause ends, made unique among the steps so far."""
    words_of = _FULL.split(text)[0].rstrip(" .;:,!")
    if len(words_of) > LONGEST_NAME:
        cuts = [match.start() for match in _CLAUSE.finditer(words_of, 12, LONGEST_NAME)]
        cut = cuts[-1] if cuts else words_of.rfind(" ", 0, LONGEST_NAME)
        words_of = words_of[: cut if cut > 0 else LONGEST_NAME].rstrip(" .;:,!") + " …"
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
