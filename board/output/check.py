"""What `check` says: how many findings, the worst first, whether the timetable holds, what is assumed, what stands on
the host's word, and the usual caution.

On one screen where it can be: stops are always told whole; of the rest, what matters least is left to `--all`.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import groupby

from rich.console import Console

from board.base import words
from board.base.plain import one_line, plain
from board.base.wrap import wrapped
from board.checks.plan.on_your_word import OnYourWord
from board.checks.sheet.assessed import Assessed
from board.output.tables import console
from board.plan.snag import Snag, Weight
from board.sheet import said

MOST_LINES = 40  # without --all
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
    there is not room for all; 0: always whole."""

    heading: str
    blocks: tuple[str, ...]
    turn: int


def print_check(plan: Assessed, out: Console | None = None, *, whole: bool = False) -> None:
    """To stdout, unless told where; foreign text safe. `whole`: all of it, with the lines of the file."""
    out = out or console()

    def laid_out(text: str) -> str:
        return wrapped(plain(text), out.width) if out.is_terminal else plain(text)

    def say(text: str = "", style: str = "") -> None:
        out.print(laid_out(text), style=style or None, soft_wrap=True)

    parts = [part for part in _parts(plan, whole) if part.blocks or part.turn == 0]
    spare = MOST_LINES - 5 - sum(2 + _lines(part.blocks, out.width) for part in parts if part.turn == 0)
    shown = {id(part): len(part.blocks) for part in parts}
    if not whole:
        for part in sorted((part for part in parts if part.turn), key=lambda part: part.turn):
            spare -= 2
            shown[id(part)] = fits = _fitting(part, spare, out.width)
            spare -= _lines(part.blocks[:fits], out.width) + (fits < len(part.blocks))
    say(words.check_title(plan.file.plan.event, plan.file.plan.guest_count, len(plan.file.filled.tasks)), "bold")
    say(words.counted({each.name.lower(): sum(s.weight is each for s in plan.snags) for each in reversed(Weight)}))
    for part in parts:
        say()
        say(part.heading, "bold")
        for block in part.blocks[: shown[id(part)]]:
            say(block)
        if left := len(part.blocks) - shown[id(part)]:
            say(words.more_by_all(left))
    say()
    say(words.CAUTION)


def _fitting(part: _Part, spare: int, width: int) -> int:
    """How many of its blocks there is room for; a line is kept to say that there are more."""
    if _lines(part.blocks, width) <= spare:
        return len(part.blocks)
    fits = 0
    while fits < len(part.blocks) and _lines(part.blocks[: fits + 1], width) < spare:
        fits += 1
    return fits


def _lines(blocks: Iterable[str], width: int) -> int:
    return sum(wrapped(plain(block), width).count("\n") + 1 for block in blocks)


def _parts(plan: Assessed, whole: bool) -> Iterator[_Part]:
    for turn, (weight, safety, heading) in zip((0, 0, 1, 2, 6), HEADINGS, strict=True):
        found = [snag for snag in plan.snags if snag.weight is weight and safety in (snag.safety, None)]
        if found:
            yield _Part(heading, tuple(snag.render() for snag in found) if whole else tuple(_brief(found)), turn)
    yield _verdict(plan)
    yield _Part(words.CHECK_ASSUMED, tuple(f"  {line}" for line in plan.file.filled.assumed), 5)
    yield _Part(words.ON_YOUR_WORD, tuple(_on_word(plan.trusted)), 4)
    told = (words.caution(each.topic, tuple(one_line(about, 60) for about in each.about)) for each in plan.cautions)
    yield _Part(words.CAUTIONS_TITLE, tuple(f"  {line}" for line in told), 3)


def _brief(snags: Iterable[Snag]) -> Iterator[str]:
    """Findings without the lines of the file; what to do once for all that ask for the same."""
    for (_, mend), alike in groupby(snags, key=lambda snag: (snag.code, snag.what_to_do())):
        yield "\n".join([*(snag.what() for snag in alike), *([f"    {mend}"] if mend else [])])


def _verdict(plan: Assessed) -> _Part:
    sheet = plan.sheet
    if sheet is None:
        return _Part(words.CHECK_STOPPED, (words.MORE_MAY_SHOW,), 0)
    lines = [f"  {said.given_up(sheet, each)}" for each in sheet.given_up]
    if not sheet.proved:
        lines.append(f"  {words.sheet_state(sheet.proved, sheet.gap)}")
    return _Part(words.CHECK_HOLDS if not sheet.given_up else words.CHECK_GIVES_UP, tuple(lines), 0)


def _on_word(trusted: Iterable[OnYourWord]) -> Iterator[str]:
    """One line for all that the same word settles in the same way."""
    alike: dict[tuple[str, str], list[str]] = {}
    for each in trusted:
        alike.setdefault((each.word, each.settles), []).append(each.about)
    for (word, settles), about in alike.items():
        yield f"  {words.on_your_word(one_line(word, 60), settles, [one_line(each, 60) for each in about])}"
