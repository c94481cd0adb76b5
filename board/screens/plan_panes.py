"""What the planning table shows, pane by pane, as lines. Holds nothing; `plan_table` says what is seen."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from datetime import date

import msgspec

from board.base import words as shared
from board.base.plain import one_line
from board.base.wrap import wrapped
from board.plan.snag import Weight
from board.screens import words
from board.screens.lines import Line, fitted
from board.session.background import Finding
from board.session.line_changes import adds
from board.session.plan_desk import Desk
from board.view.days import DrawnDay, Glance, drawn_day, given_up, held
from board.view.plan_tree import Row

SHOWN_FINDINGS = 3
SIGNS = {Weight.STOP: "stop", Weight.ASK: "ask", Weight.MIND: "mind", Weight.NOTE: "note"}


@dataclass(frozen=True, slots=True)
class Seen:
    """What the screen stands at. `below`: rows under the panes; `slot`: of the chosen line; `day`: that is drawn."""

    pane: str
    wide: bool
    width: int
    below: int
    helped: bool
    near: bool
    in_ways: bool
    typing: bool
    day: date | None
    slot: str
    found_at: int
    glances: Sequence[Glance]


@dataclass(frozen=True, slots=True)
class DrawnPane:
    """The days as lines; from row `first_day` on one a day, from row `first_bar` on the drawn one."""

    lines: Sequence[Line] = ()
    first_day: int = 0
    days: tuple[date, ...] = ()
    first_bar: int = 0
    drawn: DrawnDay = field(default_factory=DrawnDay)

    def at(self, row: int, column: int) -> tuple[date | None, str]:
        """The day whose line is there, or the slot that is drawn there."""
        number = row - self.first_day
        day = self.days[number] if 0 <= number < len(self.days) else None
        return day, self.drawn.slot_at(row - self.first_bar, column)


def top(desk: Desk, seen: Seen) -> Line:
    """The plan's name and the pane that takes the keys."""
    line: list[tuple[str, str]] = [(f"{one_line(desk.name, 40)}   ", "accent")]
    for pane, name in words.TABLE_PANES.items():
        if seen.wide or pane == seen.pane:
            sign = shared.SIGN["chosen"] if pane == seen.pane else " "
            line.append((f"{sign} {name}   ", "accent" if pane == seen.pane else "soft"))
    if desk.looking_on:
        line.append((words.TABLE_LOOKING_ON, "wary"))
    elif desk.unwritten:
        line.append((words.table_unwritten(one_line(desk.unwritten)), "presses"))
    return tuple(line)


def line_of(row: Row, *, opened: bool) -> Line:
    """A line of the plan."""
    fold = " " if not row.folds else "-" if opened else "+"
    name = "accent" if row.kind == "course" else "name" if row.kind in ("dish", "job") else "text"
    line: list[tuple[str, str]] = [(f"{'  ' * row.level}{fold} ", "soft")]
    if row.kind in ("line", "group") and row.key:
        line.append((f"{row.key}: " if row.text else row.key, "soft"))
    line.append((row.text, name))
    if row.beside and not opened:
        line.append((f"   {row.beside}", "soft"))
    return tuple(line)


def days(desk: Desk, seen: Seen, width: int, found: Sequence[Finding]) -> DrawnPane:
    """How the timetable stands, its days at a glance, one of them drawn, and what holds the chosen step."""
    if seen.helped:
        return DrawnPane([((f"{key:<6} ", "accent"), (what, "text")) for key, what in words.KEYS_TABLE])
    sheet = desk.sheet
    if sheet is None or seen.day is None:
        stopped = any(each.weight == Weight.STOP for each in found)
        none = words.TABLE_NO_DAYS if desk.working else words.TABLE_NONE_FOUND
        return DrawnPane([((words.TABLE_STOPPED if stopped else none, "soft"),)])
    stands = words.table_sheet(proved=sheet.proved, stale=desk.stale, working=desk.working)
    lines: list[Line] = [((stands, "wary" if desk.stale else "soft"),)]
    what, *why = held(sheet, seen.slot) or ("",)
    lines += [((what, "accent"),)] if what else []
    first_day = len(lines)
    for each in seen.glances:
        sign = shared.SIGN["chosen"] if each.day == seen.day else " "
        lines.append(((f"{sign} {each.name}  ", "accent" if each.day == seen.day else "name"), (each.told, "text")))
    lines.append(())
    first_bar = len(lines)
    drawn = drawn_day(sheet, seen.day, width, seen.slot, near=seen.near)
    lines += [*drawn.rows, ()]
    for told in why:
        lines += [((piece, "text"),) for piece in wrapped(told, width).splitlines()]
    return DrawnPane(lines, first_day, tuple(each.day for each in seen.glances), first_bar, drawn)


def findings(desk: Desk) -> tuple[Finding, ...]:
    """What is said of the text, the worst first; what its timetable gives up stands behind what must be mended."""
    if desk.read.snags:  # known before the process beside has looked
        return tuple(map(Finding.of, desk.read.snags))
    found, sheet = desk.found, desk.sheet
    if desk.found_of != desk.digest:  # places in another text: no key may act on them
        return tuple(msgspec.structs.replace(each, fix=None, line=0) for each in found)
    lost = given_up(sheet) if sheet is not None and not desk.stale and not desk.working else ()
    stops = [each for each in found if each.weight == Weight.STOP]
    clashes = [Finding("", int(Weight.MIND), line, words.TABLE_WAY_KEY) for line in lost]
    return (*stops, *clashes, *(each for each in found if each.weight != Weight.STOP))


def shown_findings(seen: Seen) -> int:
    """How many findings have room below."""
    if seen.pane == "found":
        return max(1, seen.below // 2)
    return SHOWN_FINDINGS if seen.wide else 1


def first_finding(seen: Seen) -> int:
    """The number of the first finding that is shown, from 0: so that the chosen one is."""
    return max(0, seen.found_at - shown_findings(seen) + 1) if seen.pane == "found" else 0


def below(desk: Desk, seen: Seen, found: Sequence[Finding], width: int) -> list[Line]:
    """What matters most: what a time that is tried would do, ways out, or findings."""
    if desk.trying is not None:
        told = desk.trying.told or (words.TABLE_TRYING,)
        return [*_wrapped(words.table_tried(desk.trying.minutes) + told[0], "accent", width),
                *(line for each in told[1:] for line in _wrapped(each, "wary", width))]  # fmt: skip
    if seen.in_ways:
        return list(_ways(desk, width))
    if not found:
        return [((words.TABLE_MORE_TO_COME if desk.working else words.TABLE_FINE if desk.found_of else "", "soft"),)]
    first, many = first_finding(seen), shown_findings(seen)
    lines: list[Line] = []
    rows = max(2, (seen.below - 2) // max(1, len(found[first : first + many])))  # for each, two at the least
    for number, each in enumerate(found[first : first + many], start=1):
        chosen = seen.pane == "found" and first + number - 1 == seen.found_at
        mend = words.table_mend(number, each.fix) if each.fix is not None else each.mend
        said = _wrapped(_finding(number, each), "chosen" if chosen else _role(each), width)
        does = _wrapped(mend, "accent" if each.fix is not None else "soft", width - 4)
        if len(said) + len(does) > rows:
            said, does = [fitted(_joined(said), width)], [fitted(_joined(does), width - 4)]
        lines += [*said, *((("    ", ""), *line) for line in does)]
    if len(found) > first + many:
        lines.append(((words.table_more(len(found) - first - many), "soft"),))
    if desk.found_of != desk.digest and not desk.read.snags:
        lines.append(((words.TABLE_FOUND_BEFORE, "wary"),))
    elif desk.working:
        lines.append(((words.TABLE_MORE_TO_COME, "soft"),))
    return lines


def _joined(lines: Sequence[Line]) -> Line:
    return ((" ".join(text for line in lines for text, _ in line), lines[0][0][1]),) if lines else ()


def _finding(number: int, each: Finding) -> str:
    key = f"{number} " if number < 10 else "  "
    code = f"{each.code}: " if each.code else ""
    return f"{key}{shared.SIGN[SIGNS[Weight(each.weight)]]} {code}{one_line(each.message)}"


def _role(each: Finding) -> str:
    return "wary" if each.weight > Weight.NOTE else "text"


def _ways(desk: Desk, width: int) -> Iterator[Line]:
    if desk.ways is None:
        yield ((words.TABLE_WAYS_SOUGHT if desk.looking_for_ways else words.TABLE_NO_WAYS, "soft"),)
    elif not desk.ways:
        yield ((words.TABLE_NO_WAYS, "soft"),)
    for number, way in enumerate(desk.ways or (), start=1):
        yield fitted(((f"{number} {one_line(way.what)}", "text"),), width)
        yield fitted(((f"    {one_line('; '.join(filter(None, (way.brings, way.costs))))}", "soft"),), width)


def _wrapped(text: str, role: str, width: int) -> list[Line]:
    return [((line, role),) for line in wrapped(one_line(text), width).splitlines()]


def said(desk: Desk, adding: Row | None, text: str, width: int) -> list[Line]:
    """What is asked or answered: a line changed here and in the file, what is added, why a phrase is refused."""
    if desk.planning.both:
        both = desk.planning.both[0]
        here, there = (one_line("".join(side).strip(), 60) for side in (both.here, both.there))
        left = len(desk.planning.both) - 1
        return [((words.table_both(both.line, left), "wary"), (words.table_here(here), "text")),
                ((words.table_there(there), "text"),)]  # fmt: skip
    lines: list[Line] = [] if adding is None else [((words.table_adds(adds(adding)), "soft"),)]
    return [*lines, *_wrapped(text, "wary", width)[: 2 - len(lines)]]


def keys(desk: Desk, seen: Seen) -> Sequence[tuple[str, str]]:
    """The keys that do something now."""
    if desk.planning.both:
        return words.KEYS_TABLE_BOTH
    if seen.typing:
        return words.KEYS_TABLE_TYPING
    if desk.trying is not None:
        return words.KEYS_TABLE_TRYING
    if seen.in_ways:
        return words.KEYS_TABLE_WAYS
    if seen.pane == "days":
        return words.KEYS_TABLE_DAYS
    if seen.pane == "found":
        return words.KEYS_TABLE_FOUND
    return words.KEYS_TABLE_WIDE if seen.width >= words.TABLE_WIDE_KEYS else words.KEYS_TABLE_BAR
