"""What `check` says: how many findings, the worst first, whether the timetable holds, what is assumed, what stands on
the host's word, and the usual caution.

On one screen where it can be: stops are always told whole; of the rest, what matters least is left to `--all`.
"""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from itertools import groupby
from typing import Literal
from zoneinfo import ZoneInfo

import msgspec
from rich.console import Console

from board.base import words as shared
from board.base.plain import one_line, plain
from board.base.wrap import asked_width, wrapped
from board.checks.plan.on_your_word import OnYourWord
from board.checks.sheet.assessed import Assessed
from board.output import words
from board.output.moved import moved_lines
from board.output.rests import without_rest
from board.output.tables import console
from board.plan.resolve.assumed import Assumed
from board.plan.snag import Snag, Weight
from board.sheet import said
from board.sheet.company import as_planned
from board.sheet.run_sheet import Slot

MOST_LINES = 40  # without --all
MOST_ASSUMED = 10  # kinds, without --all
MOST_GIVEN_UP = 6  # lines, without --all
HEADINGS = (
    (Weight.STOP, True, words.STOP_SAFETY),
    (Weight.STOP, False, words.STOP),
    (Weight.ASK, None, words.ASK),
    (Weight.MIND, None, words.MIND),
    (Weight.NOTE, None, words.NOTE),
)


@dataclass(frozen=True)
class _Part:
    """A heading and what stands below it, in blocks that are not torn apart. `turn`: the lowest is shown first where
    there is not room for all; 0: always whole. `name`: what it holds, in a few words."""

    heading: str
    blocks: tuple[str, ...]
    turn: int
    name: str = ""


def print_check(
    plan: Assessed,
    out: Console | None = None,
    *,
    now: datetime | None = None,
    whole: bool = False,
    moved: Sequence[tuple[Slot, Slot]] = (),
) -> None:
    """To stdout, unless told where; foreign text safe. `now`: aware, to tell what is past. `whole`: all of it, with the
    lines of the file. `moved`: what begins at another time than before, as it was and as it is."""
    out = out or console()

    def laid_out(text: str) -> str:
        return wrapped(plain(text), out.width) if out.is_terminal or asked_width() else plain(text)

    def say(text: str = "", style: str = "") -> None:
        out.print(laid_out(text), style=style or None, soft_wrap=True)

    late = past(plan, now) if now is not None else None
    parts = [part for part in _parts(plan, whole, moved, late.told() if late else "") if part.blocks or part.turn == 0]
    shown = [part.blocks for part in parts] if whole else _on_one_screen(parts, laid_out)
    say(
        words.check_title(one_line(plan.file.plan.event), plan.file.plan.guest_count, len(plan.file.filled.tasks)),
        "bold",
    )
    say(words.counted({each.name.lower(): sum(s.weight is each for s in plan.snags) for each in reversed(Weight)}))
    for part, blocks in zip(parts, shown, strict=True):
        if blocks or part.turn == 0:
            say()
            say(part.heading, "bold")
            for block in blocks:
                say(block)
    left = [(len(part.blocks) - len(blocks), part.name) for part, blocks in zip(parts, shown, strict=True)]
    say()
    if any(count for count, _ in left):
        say(words.more_by_all([(count, name) for count, name in left if count]))
    say(words.CAUTION)


def _on_one_screen(parts: list[_Part], laid_out: Callable[[str], str]) -> list[tuple[str, ...]]:
    """What is shown of each part: as much as there is room for, by turns. `laid_out`: a text as it is printed."""
    shown: dict[int, tuple[str, ...]] = {}
    spare = MOST_LINES - 5  # title, count, blank, what is left out, caution
    for n, part in sorted(enumerate(parts), key=lambda each: each[1].turn):
        spare -= 2  # blank, heading
        fits = len(part.blocks)
        while part.turn and fits and _lines(part.blocks[:fits], laid_out) > spare:
            fits -= 1
        shown[n] = part.blocks[:fits]
        spare -= _lines(shown[n], laid_out) if fits or part.turn == 0 else -2
    return [shown[n] for n in range(len(parts))]


def _lines(blocks: Iterable[str], laid_out: Callable[[str], str]) -> int:
    return sum(laid_out(block).count("\n") + 1 for block in blocks)


def _parts(plan: Assessed, whole: bool, moved: Sequence[tuple[Slot, Slot]], late: str) -> Iterator[_Part]:
    yield _verdict(plan, moved, whole, late)
    for turn, (weight, safety, heading) in zip((0, 0, 1, 2, 6), HEADINGS, strict=True):
        found = [snag for snag in plan.snags if snag.weight is weight and safety in (snag.safety, None)]
        told = (
            tuple(snag.render() for snag in found)
            if whole
            else tuple(_folded(found) if weight <= Weight.MIND else _brief(found))
        )
        if told:
            yield _Part(heading, told, turn, words.CHECK_PARTS[weight.name.lower()])
    # What the plan calls guessed stands among the findings already.
    open_ = [each for each in plan.file.filled.assumed if each.kind != "guessed"]
    assumed = tuple(f"  {one_line(said.assumed(each))}" for each in open_) if whole else tuple(_by_kind(open_))
    yield _Part(words.check_assumed(len(open_), whole=whole), assumed, 5, words.CHECK_PARTS["assumed"])
    yield _Part(words.ON_YOUR_WORD, tuple(_on_word(plan.trusted)), 4, words.CHECK_PARTS["trusted"])
    if not whole and plan.cautions:
        topics = [shared.CAUTIONS[each.topic].partition(":")[0] for each in plan.cautions]
        yield _Part(words.cautions_brief(topics), (), 0)
        return
    cautions = (
        shared.caution(each.topic, tuple(one_line(about, 60) for about in each.about)) for each in plan.cautions
    )
    yield _Part(words.CAUTIONS_TITLE, tuple(f"  {line}" for line in cautions), 3, words.CHECK_PARTS["cautions"])


def _brief(snags: Iterable[Snag]) -> Iterator[str]:
    """Findings without the lines of the file; what to do, and by what source, once for all that ask for the same."""
    for _, group in groupby(snags, key=lambda snag: (snag.code, snag.mend)):
        alike = list(group)
        sources = "; ".join(dict.fromkeys(source for snag in alike for source in snag.source.split("; ") if source))
        mend = replace(alike[0], source=sources).what_to_do()
        yield "\n".join([*(snag.what() for snag in alike), *([f"    {mend}"] if mend else [])])


def _folded(snags: Sequence[Snag]) -> Iterator[str]:
    """Of findings of one name, the first whole and where the others stand."""
    by_code: dict[str, list[Snag]] = {}
    for snag in snags:
        by_code.setdefault(snag.code, []).append(snag)
    for first, *others in by_code.values():
        also = [
            (each.place.line, one_line(each.place.text.strip().removeprefix("- "), 40)) for each in others if each.place
        ]
        yield "\n".join([*_brief([first]), *([f"    {words.also_at(also, len(others))}"] if others else [])])


def _by_kind(assumed: Sequence[Assumed]) -> Iterator[str]:
    """A line a kind, what most is assumed of first, at most `MOST_ASSUMED`."""
    kinds: dict[str, list[Assumed]] = {}
    for each in assumed:
        kinds.setdefault(each.kind, []).append(each)
    for alike in sorted(kinds.values(), key=lambda each: -sum(len(one.about) for one in each))[:MOST_ASSUMED]:
        first = msgspec.structs.replace(alike[0], about=alike[0].about[: shared.MOST_NAMED])
        same, other = len(alike[0].about) - len(first.about), sum(len(each.about) for each in alike[1:])
        yield f"  {one_line(words.with_more(said.assumed(first), same, other))}"


@dataclass(frozen=True)
class Past:
    """What was to be by `now`: guests arrive, or the first work begin. Both in the plan's zone."""

    what: Literal["guests", "work"]
    due: datetime
    now: datetime

    def told(self) -> str:
        """As a sentence."""
        return (words.check_past if self.what == "guests" else words.check_late)(self.due, self.now)


def past(plan: Assessed, now: datetime) -> Past | None:
    """What of the plan is past, by the guests or by the first work; None where all of it is to come."""
    zone, arrive = ZoneInfo(plan.file.plan.zone), plan.file.filled.arrive
    first = min((slot.start for slot in plan.sheet.slots), default=now) if plan.sheet is not None else now
    due = arrive if arrive < now else first
    what: Literal["guests", "work"] = "guests" if arrive < now else "work"
    return Past(what, due.astimezone(zone), now.astimezone(zone)) if due < now else None


def _verdict(plan: Assessed, moved: Sequence[tuple[Slot, Slot]], whole: bool, late: str) -> _Part:
    sheet = plan.sheet
    first = [f"  {late}"] if late else []
    if sheet is None:
        return _Part(words.CHECK_STOPPED, (*first, shared.MORE_MAY_SHOW), 0)
    given_up = said.all_given_up(sheet)
    told = len(given_up) if whole or len(given_up) <= MOST_GIVEN_UP else MOST_GIVEN_UP - 1
    unsaid = [name for each in plan.file.filled.assumed if each.kind == "hands-throughout" for name in each.about]
    lines = [f"  {words.hands_unsaid([one_line(name, 60) for name in unsaid])}"] if unsaid and given_up else []
    lines += [f"  {one_line(line)}" for line in given_up[:told]]
    if told < len(given_up):
        lines.append(f"  {words.more_given_up(len(given_up) - told)}")
    lines += first
    lines.append(f"  {words.away_from_guests(as_planned(sheet))}")
    lines += [f"  {one_line(line)}" for line in without_rest(sheet)]
    if not sheet.proved:
        lines.append(f"  {words.sheet_state(sheet.proved, sheet.still_open)}")
    lines += [f"  {line}" for line in moved_lines(sheet, moved)]
    if sheet.given_up:
        return _Part(words.CHECK_GIVES_UP, tuple(lines), 0)
    unsafe = any(snag.weight is Weight.STOP for snag in plan.snags)
    longer = any(snag.code == "keeping 3" for snag in plan.snags)
    holds = words.CHECK_HOLDS_LONGER if longer else words.CHECK_HOLDS
    return _Part(words.CHECK_HOLDS_UNSAFE if unsafe else holds, tuple(lines), 0)


def _on_word(trusted: Iterable[OnYourWord]) -> Iterator[str]:
    """One line for all that the same word settles in the same way."""
    alike: dict[tuple[str, str], list[str]] = {}
    for each in trusted:
        alike.setdefault((each.word, each.settles), []).append(each.about)
    for (word, settles), about in alike.items():
        yield f"  {words.on_your_word(one_line(word, 60), settles, [one_line(each, 60) for each in about])}"
