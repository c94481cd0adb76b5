"""The day as blocks of work, in lines: a heading a block with its steps below. Pure: a RunSheet → frozen words.

A block of one step is one line. Every text is one safe line.
"""

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import groupby
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.base.plain import one_line
from board.output import words
from board.output.leaves import left_by, method, name_with_dish, names_of, says, telling_words, where_of, with_others
from board.sheet import said
from board.sheet.blocks import Block, Piece, blocks, day_of, with_moments
from board.sheet.guesses import guesses
from board.sheet.run_sheet import RunSheet, Slot
from board.sheet.why import held_up_by

BARE = ("worktop", "front-of-house")  # lanes that say nothing a step's name does not say
_VERB_AND_WHAT = re.compile(r"(\w+) (?:the )?(\w+)")


@dataclass(frozen=True, slots=True)
class StepLine:
    """One box to tick. `tail`: minutes, where and at what heat, what it waits for, what goes in, the method, what to
    look for, what of it is assumed, its give."""

    at: str
    what: str
    tail: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class BlockLines:
    """`at`: `17:00–18:10`. `who`: empty where there is one pair of hands. `names`: what is done. One step: its line is
    the block's, and `steps` is empty. `meanwhile`: looks at what began before."""

    at: str
    who: str
    about: str
    names: tuple[str, ...]
    tail: tuple[str, ...]
    steps: tuple[StepLine, ...]
    meanwhile: str


@dataclass(frozen=True, slots=True)
class DayLines:
    title: str
    blocks: tuple[BlockLines, ...]


def day_lines(sheet: RunSheet) -> list[DayLines]:
    """Days in order, each with its blocks; the small hours after the event are its evening's."""
    lines = _Lines(sheet)
    return [
        DayLines(shared.full_day(found[0].start.astimezone(lines.zone)), tuple(lines.of(block) for block in found))
        for _, each in groupby(blocks(sheet), key=lambda block: day_of(sheet, block.start))
        if (found := list(each))
    ]


def what_with_moments(what: str, slot: Slot, moments: Sequence[Slot], clock: Callable[[datetime], str]) -> str:
    """A step's name with what takes no minutes beside it, in order of time."""
    before, after = (
        [f"{clock(each.start)} {one_line(each.name)}" for each in moments if (each.start <= slot.start) is early]
        for early in (True, False)
    )
    return words.with_moments(what, before, after)


class _Lines:
    def __init__(self, sheet: RunSheet) -> None:
        self.sheet, self.zone, self.slots = sheet, ZoneInfo(sheet.zone), sheet.by_id()
        self.names, self.guesses = names_of(sheet), guesses(sheet)

    def of(self, block: Block) -> BlockLines:
        rows = with_moments(block.steps)
        at = self._clock(block, block.start)
        if block.end > block.start:
            at = f"{at}–{self._clock(block, block.end)}"
        who = one_line(block.who) if len(self.sheet.hands) > 1 else ""
        meanwhile = self._looks(block, block.looks)
        if not rows:
            return BlockLines(at, who, "", (meanwhile,), (), (), "")
        if len(rows) == 1:
            (slot, moments), about = rows[0], ""
            step = self._step(block, slot, moments, before=None)
            if slot.kind != "heat" and not (block.about and says(slot, block.about, self.names)):
                about = one_line(block.about or "")
            tail = step.tail[1:] if (slot.start, slot.end) == (block.start, block.end) else step.tail
            return BlockLines(at, who, about, (step.what,), tail, (), meanwhile)
        befores = [None, *(slot for slot, _ in rows)]
        steps = tuple(
            self._step(block, slot, moments, before) for (slot, moments), before in zip(rows, befores, strict=False)
        )
        return BlockLines(at, who, one_line(block.about or ""), tuple(_names(block)), (), steps, meanwhile)

    def _step(self, block: Block, slot: Slot, moments: Sequence[Slot], before: Slot | None) -> StepLine:
        what = one_line(slot.name) if slot.dish == block.about else name_with_dish(slot, self.names)
        told = what_with_moments(what, slot, moments, lambda at: self._clock(block, at))
        return StepLine(self._clock(block, slot.start), told, tuple(self._tail(block, slot, before)))

    def _tail(self, block: Block, slot: Slot, before: Slot | None) -> Iterator[str]:
        minutes = shared.short(round((slot.end - slot.start) / timedelta(minutes=1)))
        yield minutes if slot.whole else words.runs_till(minutes, self._clock(block, slot.end))
        yield from with_others(slot, block.who)
        where = one_line(where_of(slot, self.sheet))
        if slot.kind != "heat" and where not in (shared.LANES[lane].lower() for lane in BARE):
            yield where
        for each in held_up_by(self.slots, slot):
            if each != before:
                yield words.waits_for(one_line(each.name))
        if slot.decide:
            yield words.to_decide(one_line(slot.decide))
        yield from method(slot, self.sheet)
        if slot.look_for:
            yield shared.look_for(one_line(slot.look_for))
        yield from left_by(slot, self.sheet)
        if slot.core_celsius is not None:
            yield shared.core(slot.core_celsius, self.sheet.fahrenheit)
        yield from (shared.noted(one_line(note)) for note in slot.noted)
        yield from map(one_line, said.guessed(self.guesses.get(slot.id, ())))
        if give := words.give(slot.give_minutes):
            yield give

    def _looks(self, block: Block, looks: Sequence[Piece]) -> str:
        """`simmer the broth 19:01, end 19:25 · …`"""
        found: dict[str, list[str]] = {}
        for look in looks:
            at = self._clock(block, look.part.start)
            found.setdefault(look.slot.id, []).append(words.look_at(at, look.part.kind))
        return words.looks([(one_line(self.slots[id_].name), times) for id_, times in found.items()])

    def _clock(self, block: Block, at: datetime) -> str:
        local = at.astimezone(self.zone)
        day = day_of(self.sheet, block.start)
        return shared.clock(local) if local.date() == day else shared.day_and_clock(local)


def _names(block: Block) -> Iterator[str]:
    """What is done, in short: under `Beef`, `brown` for `brown the beef`. An oven's heat is told below only."""
    known = telling_words(block.about or "")
    for slot in block.own:
        if slot.kind == "heat" and any(each.kind != "heat" for each in block.own):
            continue
        short = _VERB_AND_WHAT.fullmatch(slot.name)
        yield one_line(short[1] if short and short[2].casefold() in known else slot.name)
