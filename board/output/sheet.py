"""The run sheet as text: by day, by person or by lane."""

from collections.abc import Iterable, Sequence
from datetime import datetime
from zoneinfo import ZoneInfo

from rich.cells import cell_len
from rich.console import Console
from rich.table import Table
from rich.text import Text

from board.base import words as shared
from board.base.plain import one_line
from board.checks.sheet.clocks import dish_clocks
from board.output import words
from board.output.cold import cold_lines
from board.output.day_blocks import BlockLines, day_lines, what_with_moments
from board.output.leaves import Leaf, course_line, left_by, method, where_of
from board.output.moved import moved_lines
from board.output.rests import without_rest
from board.output.tables import cell, paragraph, table
from board.plan.resolve.assumed import Assumed
from board.sheet import quiet, said
from board.sheet.blocks import with_moments
from board.sheet.company import as_planned, busiest
from board.sheet.guesses import guesses
from board.sheet.run_sheet import RunSheet, Slot


def print_sheet(sheet: RunSheet, by: str, out: Console, moved: Sequence[tuple[Slot, Slot]] = ()) -> None:
    """Headings, then by day the blocks of work with their steps, else a row a slot, in order of time. `moved`: what
    begins at another time than before, as it was and as it is."""
    zone = ZoneInfo(sheet.zone)
    out.print(cell(sheet.plan, "bold"))
    _stops(sheet, out)
    _courses(sheet, zone, out)
    for line in moved_lines(sheet, moved):
        out.print(paragraph(line, indent=2))
    if by == "day":
        _blocks(sheet, out)
    else:
        _rows(sheet, by, zone, out)
    _noted(sheet, out)
    _clocks(sheet, zone, out)
    _cold(sheet, out)
    _given_up(sheet, out)
    _plates(sheet, out)
    _cautions(sheet, out)


TIMES_WIDTH = len("17:00–18:15")


def _blocks(sheet: RunSheet, out: Console) -> None:
    for day in day_lines(sheet):
        out.print()
        out.print(cell(day.title, "bold"))
        rows = Table.grid(padding=(0, 2, 0, 0))
        rows.add_column(justify="right", no_wrap=True, min_width=TIMES_WIDTH)
        rows.add_column()
        for block in day.blocks:
            title = _title(block, out.width - TIMES_WIDTH - len("  "))
            box = "" if block.steps else f"{shared.SIGN['box']} "
            rows.add_row(cell(block.at, "bold"), _line(box + title, "bold", block.tail))
            for step in block.steps:
                rows.add_row(step.at, _line(f"{shared.SIGN['box']} {step.what}", "", step.tail))
            if block.meanwhile:
                rows.add_row("", cell(block.meanwhile, "dim"))
        out.print(rows)


def _title(block: BlockLines, width: int) -> str:
    """In one line, where there are steps below that tell the rest; whole, where there are none."""
    who = f"{block.who} · " if block.who else ""
    titles = [
        who + words.block_title(block.about, block.names[:told], len(block.names) - told)
        for told in range(len(block.names), 0, -1)
    ]
    return next((title for title in titles if cell_len(title) <= width), titles[-1]) if block.steps else titles[0]


def _line(what: str, style: str, tail: Sequence[str]) -> Text:
    line = cell(what, style)
    for each in tail:
        line.append(" · ", "dim").append_text(cell(each, "dim"))
    return line


def _rows(sheet: RunSheet, by: str, zone: ZoneInfo, out: Console) -> None:
    guessed = guesses(sheet)
    for title, slots in _groups(sheet, by):
        out.print()
        out.print(cell(title, "bold"))
        rows = table((words.SHEET_FROM, "right"), (words.SHEET_TO, "right"), ("", "left"), (words.SHEET_WHAT, "left"),
                     (words.SHEET_WHERE, "left"), (words.SHEET_WHO, "left"), (words.SHEET_GIVE, "right"))  # fmt: skip
        day = None
        for slot, moments in with_moments(slots):
            start, end = slot.start.astimezone(zone), slot.end.astimezone(zone)
            if start.date() != day:
                day = start.date()
                rows.add_row("", "", "", cell(shared.full_day(start), "dim"), "", "", "")
            what = what_with_moments(
                _what(sheet, slot, guessed.get(slot.id, ())),
                slot,
                moments,
                lambda at: shared.clock(at.astimezone(zone)),
            )
            rows.add_row(
                shared.clock(start),
                _end(start, end),
                shared.SIGN["box"],
                cell(what),
                cell(where_of(slot, sheet), "dim"),
                cell(", ".join(slot.people), "dim"),
                words.give_in_column(slot.give_minutes),
            )
        out.print(rows)


def _stops(sheet: RunSheet, out: Console) -> None:
    """Stops: what must be mended before anybody eats. They come first."""
    if sheet.stops:
        out.print(cell(words.SHEET_STOPS, "bold"))
        for line in sheet.stops:
            out.print(paragraph(shared.stop_line(said.stop(line)), indent=2))
        out.print()


def _noted(sheet: RunSheet, out: Console) -> None:
    """Of the evening as a whole, on evenings before."""
    if sheet.noted:
        out.print()
        out.print(cell(words.SHEET_NOTED, "bold"))
        for line in sheet.noted:
            out.print(paragraph(line, indent=2))


def _plates(sheet: RunSheet, out: Console) -> None:
    """Whose plate is different."""
    for course in sheet.courses:
        if course.plates:
            out.print()
            out.print(cell(words.sheet_plates(one_line(course.name)), "bold"))
            for each in course.plates:
                out.print(paragraph(said.plate(each), indent=2))


def _cautions(sheet: RunSheet, out: Console) -> None:
    """The usual cautions, once each, after everything else."""
    if sheet.cautions:
        out.print()
        out.print(cell(words.CAUTIONS_TITLE, "bold"))
        for line in sheet.cautions:
            out.print(paragraph(said.caution(line), "dim", indent=2))


def _clocks(sheet: RunSheet, zone: ZoneInfo, out: Console) -> None:
    clocks = dish_clocks(sheet)
    if not clocks:
        return
    out.print()
    out.print(cell(words.SHEET_CLOCKS, "bold"))
    rows = table((words.CLOCK_DISH, "left"), (words.CLOCK_COURSE, "left"), (words.CLOCK_OUT, "right"),
                 (words.CLOCK_LIMIT, "right"), (words.CLOCK_RUNS_OUT, "left"))  # fmt: skip
    for each in clocks:
        ends = each.runs_out.astimezone(zone) if each.runs_out is not None else None
        rows.add_row(
            cell((f"{shared.SIGN['past']} " if each.too_long else "") + each.clock.dish),
            cell(each.clock.course, "dim"),
            str(each.out_minutes),
            str(each.clock.limit_minutes),
            cell(words.CLOCK_IN_TIME if ends is None else shared.day_and_clock(ends)),
        )
    out.print(rows)
    out.print(paragraph(words.clocks_by(sheet.rules), "dim", indent=2))


def _cold(sheet: RunSheet, out: Console) -> None:
    lines = list(cold_lines(sheet))
    if lines:
        out.print()
        out.print(cell(words.SHEET_COLD, "bold"))
        for line in lines:
            out.print(paragraph(line, indent=2))


def _end(start: datetime, end: datetime) -> str:
    return shared.clock(end) if end.date() == start.date() else shared.day_and_clock(end)


def _courses(sheet: RunSheet, zone: ZoneInfo, out: Console) -> None:
    for slot in sheet.slots:
        if slot.kind == "arrive":
            out.print(cell(f"{shared.day_and_clock(slot.start.astimezone(zone))} {slot.name}", indent=2))
    sat = {each.course.name: each for each in quiet.as_planned(sheet)}
    for course in sheet.courses:
        tail = words.min_late(course.late_minutes) if course.late_minutes > 0 else ""
        out.print(cell(f"{course_line(course, sat.get(course.name), zone)}{tail}", indent=2))
        if course.name in sat and sat[course.name].ups:
            out.print(paragraph(words.up_for(said.ups(sheet, sat[course.name])), "dim", indent=4))
    before, minutes = busiest(sheet)
    out.print(cell(words.away_from_guests(as_planned(sheet)), indent=2))
    if minutes > 0:
        out.print(cell(words.busiest_before(before, minutes), indent=2))
    for line in without_rest(sheet):
        out.print(cell(line, indent=2))
    out.print(cell(words.sheet_state(sheet.proved, sheet.still_open), "dim", indent=2))


def _groups(sheet: RunSheet, by: str) -> Iterable[tuple[str, list[Slot]]]:
    groups: dict[str, list[Slot]] = {}
    slots = sorted(sheet.slots, key=lambda s: s.start)
    if by == "lane":
        groups = {shared.LANES[lane]: [] for lane in shared.LANES}
    if by == "person":
        groups = {hand: [] for hand in sheet.hands}
    for slot in slots:
        if by == "lane":
            groups[shared.LANES[slot.lane]].append(slot)
        else:
            people = dict.fromkeys(part.who for part in slot.attended) or {words.SHEET_NOBODY: None}
            for who in people:
                groups.setdefault(who, []).append(slot)
    return [(title, found) for title, found in groups.items() if found]


def _what(sheet: RunSheet, slot: Slot, guessed: Sequence[Assumed]) -> str:
    tail = [words.to_decide(one_line(slot.decide))] if slot.decide else []
    tail += method(slot, sheet)
    tail += [shared.look_for(slot.look_for)] if slot.look_for else []
    tail += left_by(slot, sheet)
    if slot.core_celsius is not None:
        tail.append(shared.core(slot.core_celsius))
    tail += [shared.noted(note) for note in slot.noted]
    tail += said.guessed(guessed)
    return " · ".join([slot.name, *tail])


def _given_up(sheet: RunSheet, out: Console) -> None:
    if not sheet.given_up:
        return
    out.print()
    out.print(cell(words.SHEET_GIVEN_UP, "bold"))
    for line in said.all_given_up(sheet):
        out.print(paragraph(line, indent=2))


def print_leaves(leaves: Sequence[Leaf], out: Console) -> None:
    """Leaves in a terminal, one below the other."""
    for number, leaf in enumerate(leaves):
        if number:
            out.print()
            out.rule(style="dim")
        out.print(cell(leaf.title, "bold"))
        out.print(cell(leaf.about, "dim"))
        for course in leaf.courses:
            out.print(cell(course, indent=2))
        for day in leaf.days:
            out.print()
            out.print(cell(day.title, "bold"))
            rows = table((words.SHEET_FROM, "right"), (words.SHEET_TO, "right"), ("", "left"),
                         (words.SHEET_WHAT, "left"), (words.SHEET_WHERE, "left"),
                         (words.SHEET_WHO, "left"))  # fmt: skip
            for row in day.rows:
                what = " · ".join([row.what, *row.told])
                style = "bold" if row.course else ""
                rows.add_row(
                    row.start,
                    row.end,
                    shared.SIGN["box"],
                    cell(what, style),
                    cell(row.where, "dim"),
                    cell(row.who, "dim"),
                )
            out.print(rows)
        out.print()
        for note in leaf.notes:
            out.print(paragraph(note, "dim", indent=2))
