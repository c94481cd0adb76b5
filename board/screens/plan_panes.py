"""What the planning table shows, pane by pane, as lines. Holds nothing; `plan_table` says what is seen."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date

import msgspec

from board.base import words as shared
from board.base.plain import one_line
from board.base.wrap import wrapped
from board.plan.snag import Weight
from board.screens import words
from board.screens.lines import Line, fitted
from board.session.background import Finding, Way
from board.session.line_changes import adds
from board.session.plan_desk import Desk
from board.view.days import DrawnDay, Glance, drawn_day, given_up, held
from board.view.plan_tree import Row

SHOWN_FINDINGS = 3
SIGNS = {Weight.STOP: "stop", Weight.ASK: "ask", Weight.MIND: "mind", Weight.NOTE: "note"}


@dataclass(frozen=True, slots=True)
class Seen:
    """What the screen stands at. `below`: rows that there may be under the panes; `slot`: of the chosen line; `day`:
    that is drawn."""

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
        name = words.TABLE_KEYS if pane == "days" and seen.helped else name
        if seen.wide or pane == seen.pane:
            sign = shared.SIGN["chosen"] if pane == seen.pane else " "
            line.append((f"{sign} {name}   ", "accent" if pane == seen.pane else "soft"))
    if desk.looking_on:
        line.append((words.TABLE_LOOKS_ON, "wary"))
    elif desk.unwritten:
        line.append((words.TABLE_UNWRITTEN, "presses"))
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


def days(desk: Desk, seen: Seen, width: int, rows: int, found: Sequence[Finding]) -> DrawnPane:
    """How the timetable stands, its days at a glance, one of them drawn, and what holds the chosen step. Where that is
    more than there are rows, without blank lines, then without the other days."""
    if seen.helped:
        return DrawnPane(_help(width))
    sheet = desk.sheet
    if sheet is None or seen.day is None:
        stopped = any(each.weight == Weight.STOP for each in found)
        none = words.TABLE_NO_DAYS if desk.working else words.TABLE_NONE_FOUND
        return DrawnPane([((words.TABLE_STOPPED if stopped else none, "soft"),)])
    stands = words.table_sheet(proved=sheet.proved, stale=desk.stale, working=desk.working)
    lines: list[Line] = [((stands, "wary" if desk.stale else "soft"),)]
    what, *why = held(sheet, seen.slot) or ("",)
    lines += [((what, "accent"),)] if what else []
    drawn = drawn_day(sheet, seen.day, width, seen.slot, near=seen.near)
    told = [((piece, "text"),) for each in why for piece in wrapped(each, width).splitlines()]
    most = rows - len(lines) - len(drawn.rows) - len(told)
    shown = [each for each in seen.glances if len(seen.glances) <= most or each.day == seen.day]
    blank: list[Line] = [()] if len(shown) + 2 <= most else []
    first_day = len(lines)
    for each in shown:
        sign = shared.SIGN["chosen"] if each.day == seen.day else " "
        lines.append(((f"{sign} {each.name}  ", "accent" if each.day == seen.day else "name"), (each.told, "text")))
    lines += blank
    first_bar = len(lines)
    lines += [*drawn.rows, *blank, *told]
    return DrawnPane(lines, first_day, tuple(each.day for each in shown), first_bar, drawn)


def window(lines: Sequence[Line], at: int, rows: int, *, there: bool) -> list[Line]:
    """So many of the lines as there are rows, from that one on; the last row tells of more. `there`: the keys go to
    this pane."""
    seen = list(lines[at : at + rows])
    if len(lines) > at + rows and rows > 1:
        seen[-1] = ((words.table_further(len(lines) - at - rows + 1, there=there), "soft"),)
    return seen


def _help(width: int) -> list[Line]:
    lines: list[Line] = []
    for key, what in words.KEYS_TABLE:
        first, *more = wrapped(what, max(10, width - 7)).splitlines()
        lines += [((f"{key:<6} ", "accent"), (first, "text")), *((("       ", ""), (each, "text")) for each in more)]
    return lines


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


def findings_shown(seen: Seen, found: Sequence[Finding], width: int) -> tuple[int, list[list[Line]]]:
    """The number of the first finding that has room below, from 0, and the lines of each that has: where they are gone
    through the chosen one whole, the others in two at the most."""
    room = max(2, seen.below - 1)  # a line is left for how many more there are
    if seen.pane != "found":
        several = found[: SHOWN_FINDINGS if seen.wide else 1]
        rows = max(2, room // max(1, len(several)))
        return 0, [_lines_of(number, each, width, rows) for number, each in enumerate(several, start=1)]
    at = min(seen.found_at, len(found) - 1)
    whole = [_lines_of(n, each, width, room, chosen=n - 1 == at) for n, each in enumerate(found, start=1)]
    if sum(map(len, whole)) <= room:
        return 0, whole
    taken = [len(lines) if n == at else min(2, len(lines)) for n, lines in enumerate(whole)]
    first, last = at, at + 1
    while first and sum(taken[first - 1 : last]) <= room:
        first -= 1
    while last < len(found) and sum(taken[first : last + 1]) <= room:
        last += 1
    return first, [
        _lines_of(n - first + 1, found[n], width, room if n == at else 2, chosen=n == at) for n in range(first, last)
    ]


def _lines_of(number: int, each: Finding, width: int, rows: int, *, chosen: bool = False) -> list[Line]:
    """A finding and its mend, in so many rows at the most, whole where that is enough. The chosen one tells what it
    stands on, too."""
    said = _wrapped(_finding(number, each), "chosen" if chosen else _role(each), width)
    key = words.table_mend(f"{number} ", each.fix) if each.fix is not None else ""
    mend = f"{each.mend} [{each.source}]" if chosen and each.source else each.mend
    does = [*_wrapped(mend if chosen or not key else "", "soft", width - 4), *_wrapped(key, "accent", width - 4)]
    if len(said) + len(does) > rows and not chosen:
        said, does = [fitted(_joined(said), width)], [fitted(_joined(does), width - 4)] if does else []
    return _cut([*said, *((("    ", ""), *line) for line in does)], rows, width)


def _cut(lines: Sequence[Line], rows: int, width: int) -> list[Line]:
    """So many rows at the most; that there is more is told by an ellipsis."""
    if len(lines) <= rows:
        return list(lines)
    return [*lines[: rows - 1], fitted(_joined([lines[rows - 1], (("…" * width, ""),)]), width)] if rows > 0 else []


def below(desk: Desk, seen: Seen, found: Sequence[Finding], width: int) -> list[Line]:
    """What matters most: what a time that is tried would do, ways out, or findings."""
    if desk.trying is not None:
        told = desk.trying.told or (words.TABLE_TRYING,)
        return [*_wrapped(words.table_tried(desk.trying.minutes) + told[0], "accent", width),
                *(line for each in told[1:] for line in _wrapped(each, "wary", width))]  # fmt: skip
    if seen.in_ways:
        return _ways(desk, seen, width)
    if not found:
        return [((words.TABLE_MORE_TO_COME if desk.working else words.TABLE_FINE if desk.found_of else "", "soft"),)]
    first, shown = findings_shown(seen, found, width)
    lines = [line for each in shown for line in each]
    if len(found) > len(shown):
        lines.append(
            ((words.table_more(first, len(found) - first - len(shown), in_turn=seen.pane == "found"), "soft"),)
        )
    elif seen.pane != "found" and any(text.endswith("…") for line in lines for text, _ in line):
        lines.append(((words.TABLE_WHOLE, "soft"),))
    if desk.found_of != desk.digest and not desk.read.snags:
        lines.append(((words.TABLE_FOUND_BEFORE, "wary"),))
    elif desk.working and desk.read.file is not None:
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


def _ways(desk: Desk, seen: Seen, width: int) -> list[Line]:
    if not desk.ways:
        sought = desk.ways is None and desk.looking_for_ways
        return [((words.TABLE_WAYS_SOUGHT if sought else words.TABLE_NO_WAYS, "soft"),)]
    lines: list[Line] = []
    for number, way in enumerate(desk.ways, start=1):  # two rows are left for each that follows
        lines += _way(number, way, seen.below - len(lines) - 2 * (len(desk.ways) - number), width)
    return lines


def _way(number: int, way: Way, rows: int, width: int) -> list[Line]:
    what = _wrapped(f"{number} {one_line(way.what)}", "text", width)
    does = _wrapped("; ".join(filter(None, (way.brings, way.costs))), "soft", width - 4)
    if len(what) + len(does) > rows:
        what, does = [fitted(_joined(what), width)], [fitted(_joined(does), width - 4)] if does else []
    return [*what, *((("    ", ""), *line) for line in does)]


def _wrapped(text: str, role: str, width: int) -> list[Line]:
    return [((line, role),) for line in wrapped(one_line(text), width).splitlines()]


def said(desk: Desk, adding: Row | None, text: str, rows: int, width: int) -> list[Line]:
    """What is asked or answered, in so many rows at the most: lines changed here and in the file, what is added, why a
    phrase is refused."""
    if desk.planning.both:
        both = desk.planning.both[0]
        head = ((words.table_both(both.line, len(desk.planning.both) - 1), "wary"),)
        sides = zip((words.TABLE_HERE, words.TABLE_THERE), (both.here, both.there), strict=True)
        return [
            head,
            *(line for name, side in sides for line in _cut(_side(name, side, width), (rows - 1) // 2, width)),
        ]
    text = text or words.table_unwritten(desk.unwritten) * bool(desk.unwritten)  # until there is more to say
    lines = [] if adding is None else _wrapped(words.table_adds(adds(adding, desk.read)), "soft", width)
    return _cut([*lines, *_wrapped(text, "wary", width)], rows, width)


def _side(name: str, lines: Sequence[str], width: int) -> list[Line]:
    """Lines as one side has them, the first behind its name."""
    told = [piece for line in lines for piece in wrapped(one_line(line), width - len(name)).splitlines()]
    behind = [name, *[" " * len(name)] * len(told)]
    return [
        ((before, "accent"), (each, "text"))
        for before, each in zip(behind, told or [words.TABLE_NO_LINE], strict=False)
    ]


def keys(desk: Desk, seen: Seen) -> Sequence[tuple[str, str]]:
    """The keys that do something now."""
    if desk.planning.both:
        return words.KEYS_TABLE_BOTH
    if seen.typing:
        return words.KEYS_TABLE_TYPING
    if desk.trying is not None:
        return words.KEYS_TABLE_TRYING
    if seen.in_ways:
        return words.KEYS_TABLE_WAYS if desk.ways else words.KEYS_TABLE_WAYS[1:]
    if seen.helped:
        return words.KEYS_TABLE_HELP
    if seen.pane == "days":
        return words.KEYS_TABLE_DAYS
    if seen.pane == "found":
        return words.KEYS_TABLE_FOUND
    bar = words.KEYS_TABLE_WIDE if seen.width >= words.TABLE_WIDE_KEYS else words.KEYS_TABLE_BAR
    if not desk.planning.taken_back:
        return bar
    behind = next(n for n, (key, _) in enumerate(bar, start=1) if key == "u")
    return (*bar[:behind], words.KEY_TABLE_AGAIN, *bar[behind:])
