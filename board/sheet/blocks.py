"""The day as blocks of work: one pair of hands on one dish, on one course or on jobs. Pure, from the run sheet alone.

A stretch is work without a longer pause; a block is a part of a stretch that is about one thing. What else begins in a
block's short gaps is told within it, and so is a look at what began before.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from itertools import groupby
from zoneinfo import ZoneInfo

from board.sheet.run_sheet import Attended, RunSheet, Slot

JOINED_MINUTES = 15  # a shorter pause does not end a stretch
BRIDGED_MINUTES = 20  # so long a block may rest while other work is done
BRIDGED_PIECES = 2  # and so many pieces of it before its own goes on


@dataclass(frozen=True, slots=True)
class Piece:
    """Hands on a slot for a while; no minutes where it begins by itself."""

    slot: Slot
    part: Attended
    begins: bool = False  # with it the slot begins


@dataclass(frozen=True, slots=True)
class Block:
    """`about`: its dish; its course, where it is of several dishes; None: jobs. `own`: what begins in it and is about
    that; `steps`: all that begins in it. Both in order of time. `looks`: hands on what began before. `end`: when
    the hands leave its steps, not what runs by itself."""

    who: str
    about: str | None
    start: datetime
    end: datetime
    own: tuple[Slot, ...]
    steps: tuple[Slot, ...]
    looks: tuple[Piece, ...] = ()


def blocks(sheet: RunSheet) -> list[Block]:
    """All blocks, by when they start. Every slot is a step of just one, or of one of each who begins it together; what
    takes no minutes and nobody's hands is a step of the block at work then, else of the nearest; a turn of a dial
    alone, of what its hands are at then."""
    heated_for = _heated_for(sheet.slots)
    moments = [slot for slot in sheet.slots if slot.end == slot.start and not slot.attended]
    lasting = pieces(sheet, [slot for slot in sheet.slots if slot not in moments])
    found = [block for stretch in stretches(lasting, sheet) for block in _parted(stretch, heated_for)]
    for lone in [block for block in found if _only_dials(block)]:
        beside = [block for block in found if block.who == lone.who and block.start <= lone.start <= block.end
                and block.steps and not _only_dials(block)]  # fmt: skip
        if beside:
            found.remove(lone)
            found[found.index(beside[0])] = _with(beside[0], lone.steps)
    for slot in moments:
        near = max(found, key=lambda block: _nearness(block, slot), default=None)
        if near is None:
            found.append(Block(_whose(slot, sheet), None, slot.start, slot.end, (slot,), (slot,)))
        else:
            found[found.index(near)] = _with(near, (slot,))
    return sorted(found, key=lambda block: (block.start, not block.steps, block.end))


def _only_dials(block: Block) -> bool:
    return bool(block.steps) and not block.looks and all(step.kind == "heat" for step in block.steps)


def _with(block: Block, slots: tuple[Slot, ...]) -> Block:
    return replace(block, steps=tuple(sorted((*block.steps, *slots), key=lambda step: step.start)))


def _nearness(block: Block, slot: Slot) -> tuple[bool, timedelta, bool]:
    """Greatest for the block that is best to tell a moment in."""
    apart = max(block.start - slot.start, slot.start - block.end, timedelta())
    return bool(block.steps), -apart, block.start <= slot.start


def stretches(of: Iterable[Piece], sheet: RunSheet, pause: int = JOINED_MINUTES) -> Iterator[list[Piece]]:
    """Connected work: pieces of one person with shorter pauses than so many minutes between them, each day for itself.
    After midnight the event's own evening continues."""
    by_person = sorted(of, key=lambda piece: (piece.part.who, piece.part.start, piece.part.end))
    for _, own in groupby(by_person, key=lambda piece: piece.part.who):
        stretch: list[Piece] = []
        for piece in own:
            if stretch and not _joins(stretch, piece, sheet, pause):
                yield stretch
                stretch = []
            stretch.append(piece)
        yield stretch


def _joins(stretch: list[Piece], piece: Piece, sheet: RunSheet, pause: int) -> bool:
    last = max(over(each) for each in stretch)
    another_day = day_of(sheet, last) != day_of(sheet, piece.part.start)
    return not another_day and piece.part.start - last < timedelta(minutes=pause)


def over(piece: Piece) -> datetime:
    """When a piece is over; an oven that comes to its heat is no pause."""
    return piece.slot.end if piece.slot.kind == "heat" else piece.part.end


def day_of(sheet: RunSheet, moment: datetime) -> date:
    """The plan's day it belongs to: the small hours after the event are its evening."""
    return min(moment.astimezone(ZoneInfo(sheet.zone)).date(), date.fromisoformat(sheet.date))


def with_moments(slots: Sequence[Slot]) -> list[tuple[Slot, list[Slot]]]:
    """What lasts, each with what takes no minutes and is told beside it: what is switched off, with what it was on
    for; all else with what hands are at nearest to it, the earlier of two. What has no neighbour stands for itself."""
    found: list[tuple[Slot, list[Slot]]] = [(slot, []) for slot in slots if slot.end > slot.start]
    moments = [slot for slot in slots if slot.end == slot.start]
    if not found:
        return [(slot, []) for slot in moments]
    for moment in moments:
        used = {wait.after for wait in moment.waits if moment.kind == "off"}
        near = [each for each in found if each[0].id in used and each[0].end == moment.start] or found
        min(near, key=lambda each: _apart(each[0], moment.start))[1].append(moment)
    return found


def _apart(slot: Slot, moment: datetime) -> timedelta:
    """How far hands are from it; what runs by itself counts where it begins."""
    over = slot.end if slot.whole else slot.start
    return max(slot.start - moment, moment - over, timedelta())


def pieces(sheet: RunSheet, slots: Iterable[Slot]) -> Iterator[Piece]:
    """Where each slot begins, and all hands on it later or of others. What needs nobody's hands is minded by who is
    nearest to it."""
    for slot in slots:
        parts = sorted(slot.attended, key=lambda part: part.start)
        if not parts or parts[0].start > slot.start:
            who = parts[0].who if parts else _whose(slot, sheet)
            parts.insert(0, Attended(slot.start, slot.start, who, "start"))
        yield from (Piece(slot, part, begins=part.start == parts[0].start) for part in parts)


def _whose(slot: Slot, sheet: RunSheet) -> str:
    """Who minds what needs nobody's hands: who goes on with it, else who did what it follows, else the first."""
    after = [each for each in sheet.slots if any(wait.after == slot.id and wait.must for wait in each.waits)]
    before = [each for each in sheet.slots if any(wait.after == each.id and wait.must for wait in slot.waits)]
    near = [part.who for each in (*after, *reversed(before)) for part in each.attended]
    return next(iter((*near, *sheet.hands)), "")


def _heated_for(slots: Sequence[Slot]) -> dict[str, Slot]:
    """What each turn of a dial is for: what waits for that heat first."""
    waiting = [(wait.after, slot) for slot in sorted(slots, key=lambda slot: slot.start, reverse=True)
               for wait in slot.waits]  # fmt: skip
    turns = {slot.id for slot in slots if slot.kind == "heat"}
    return {after: slot for after, slot in waiting if after in turns}


def _parted(stretch: list[Piece], heated_for: dict[str, Slot]) -> Iterator[Block]:
    """A stretch, parted where the work turns to something else."""
    begins = [piece for piece in stretch if piece.begins]
    looks = [piece for piece in stretch if not piece.begins]
    early = [look for look in looks if not begins or look.part.start < begins[0].part.start]
    if early:
        yield _block([], early, heated_for)
    looks = looks[len(early) :]
    while begins:
        taken = _taken(begins, heated_for)
        until = begins[taken].part.start if taken < len(begins) else None
        within = [look for look in looks if until is None or look.part.start < until]
        yield _block(begins[:taken], within, heated_for)
        begins, looks = begins[taken:], looks[len(within) :]


def _taken(begins: list[Piece], heated_for: dict[str, Slot]) -> int:
    """How many of these pieces the first one's block holds. A dial turned meanwhile is no return to it; its step is."""
    first, last, taken = begins[0], 0, 1
    for at, piece in enumerate(begins[1:], start=1):
        other = sum(not _akin(first, each, heated_for) for each in begins[last:at])
        rested = piece.part.start - max(over(each) for each in begins[: last + 1] if _akin(first, each, heated_for))
        if other > BRIDGED_PIECES or (other and rested > timedelta(minutes=BRIDGED_MINUTES)):
            break
        if not _akin(first, piece, heated_for) or (other and _about(first, heated_for) == (None, None)):
            continue
        if not other or piece.slot.kind != "heat":
            taken = at + 1
        if piece.slot.kind != "heat":
            last = at
    return taken


def _about(piece: Piece, heated_for: dict[str, Slot]) -> tuple[str | None, str | None]:
    slot = heated_for.get(piece.slot.id, piece.slot)
    return slot.course, slot.dish


def _akin(one: Piece, other: Piece, heated_for: dict[str, Slot]) -> bool:
    """Both are of one course, of one dish, or jobs."""
    (course, dish), (other_course, other_dish) = _about(one, heated_for), _about(other, heated_for)
    return course == other_course and (course is not None or dish == other_dish)


def _block(begins: list[Piece], looks: list[Piece], heated_for: dict[str, Slot]) -> Block:
    own = [piece for piece in begins if _akin(begins[0], piece, heated_for)] or looks
    abouts = [_about(piece, heated_for) for piece in own]
    dishes = {dish for _, dish in abouts}
    about = next(iter(dishes)) if len(dishes) == 1 else None
    ours = {piece.slot.id for piece in begins}
    hands = [*begins, *(look for look in looks if not begins or look.slot.id in ours)]
    return Block(
        hands[0].part.who,
        about or abouts[0][0],
        min(piece.part.start for piece in hands),
        max(piece.part.end for piece in hands),
        tuple(piece.slot for piece in own) if begins else (),
        tuple(piece.slot for piece in begins),
        tuple(looks),
    )
