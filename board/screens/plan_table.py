"""The planning table: the plan on the left, its days on the right, what matters most below; one at a time where the
window is small. It places what desk and view say."""

from collections import deque
from collections.abc import Callable, Iterator
from datetime import date
from typing import ClassVar

from textual import events
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Container
from textual.message import Message
from textual.screen import Screen
from textual.suggester import Suggester
from textual.widgets import Input

from board.base import words as shared
from board.base.plain import one_line
from board.base.wrap import wrapped
from board.plan.edit.save import CannotEdit
from board.plan.places import Loc
from board.plan.snag import Weight
from board.screens import words
from board.screens.dressed import DressedApp
from board.screens.lines import Line, Lines, fitted
from board.screens.listing import Listing
from board.screens.palette import next_theme
from board.session.background import Finding
from board.session.plan_desk import Change, Desk, Made, add, adds, move, retype, take_out
from board.session.planning import Outside
from board.sheet.run_sheet import RunSheet
from board.view.days import Glance, day_of_slot, day_rows, glances, held
from board.view.plan_tree import Row, first_opened, row_at, row_at_line, shown, with_seen

WIDE = (100, 30)  # from here on all panes stand beside one another
HEARD_SECONDS, LOOKED_SECONDS = 0.1, 0.5
SHOWN_FINDINGS = 3
PANES = ("plan", "days", "found")
SIGNS = {Weight.STOP: "stop", Weight.ASK: "ask", Weight.MIND: "mind", Weight.NOTE: "note"}
Job = Callable[[], Made | CannotEdit | Outside | Loc | None]


class _Completes(Suggester):
    """Whatever the screen says a phrase may go on as."""

    def __init__(self, found: Callable[[str], Iterator[str]]) -> None:
        super().__init__(use_cache=False, case_sensitive=True)
        self.found = found

    async def get_suggestion(self, value: str) -> str | None:
        return next(self.found(value), None) if value else None


class PlanTableScreen(Screen[None]):
    """Work that may take a second is done in a thread, one after another; keys go on meanwhile."""

    CSS_PATH = "plan_table.tcss"
    BINDINGS: ClassVar[list[BindingType]] = [Binding("ctrl+q", "app.quit", show=False)]
    AUTO_FOCUS = ""
    types_figures = True

    class Ready(Message):
        """A job is done."""

        def __init__(self, result: Made | CannotEdit | Outside | Loc | None) -> None:
            super().__init__()
            self.result = result

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.opened = first_opened(desk.read.rows)
        self.raw = desk.read.places is None  # lines of what is no YAML
        self.rows: tuple[Row, ...] = ()  # those that can be seen
        self.pane = "plan"
        self.glanced: tuple[RunSheet, tuple[Glance, ...]] | None = None
        self.day: date | None = None  # None: the chosen step's, or the event's
        self.editing: Row | None = None
        self.adding = False
        self.said = ""
        self.helped = False  # the keys stand where the days do
        self.busy = False
        self.jobs: deque[Callable[[], Job | None]] = deque()  # each made when its turn comes

    def compose(self) -> ComposeResult:
        yield Lines(id="table-top")
        with Container(id="table-panes"):
            yield Listing(id="table-plan")
            yield Lines(id="table-days")
        yield Lines(id="table-found")
        yield Lines(id="table-said")
        yield Input(id="table-typed", suggester=_Completes(self._completions), select_on_focus=False)
        yield Lines(id="table-keys")

    def on_mount(self) -> None:
        self.listing = self.query_one(Listing)
        self.typed = self.query_one(Input)
        self.typed.cursor_blink = False
        self.set_focus(None)
        self.set_interval(HEARD_SECONDS, self._hear)
        self.set_interval(LOOKED_SECONDS, self._look)
        at = 0
        if self.desk.read.snags and (place := self.desk.read.snags[0].place) is not None:
            at = self._seen_line(place.line)
        self.call_after_refresh(self.show, at)

    def on_resize(self) -> None:
        self.call_after_refresh(self.show)

    # --- keys ------------------------------------------------------------------------------------------------
    @property
    def chosen(self) -> Row | None:
        """The line that is chosen."""
        return self.rows[self.listing.at] if self.listing.at < len(self.rows) else None

    def on_key(self, event: events.Key) -> None:
        if self.editing is not None:
            if event.key == "escape":
                event.stop()
                self._typed_over()
                self.show()
            return
        event.stop()
        event.prevent_default()
        self.said = ""
        sign, key = event.character or "", event.key
        if self.desk.planning.both:
            if sign in ("1", "2"):
                self.desk.choose(here=sign == "1")
        elif key == "q":
            self.app.exit()
            return
        elif sign in words.TABLE_GOES_ON and sign:
            self.app.exit(sign)
            return
        elif sign == "?":
            self.helped = not self.helped
            self.pane = "days" if self.helped else "plan"
        elif key == "v":
            self.app.theme = next_theme(self.app.theme)
        elif key == "tab":
            self.pane = PANES[(PANES.index(self.pane) + 1) % len(PANES)]
        elif key == "f":
            self.pane = "plan" if self.pane == "found" else "found"
        elif sign in (",", "."):
            self._another_day(-1 if sign == "," else 1)
        elif sign.isdecimal():
            self._go_to(int(sign))
        elif key in ("up", "down", "pageup", "pagedown", "home", "end"):
            page = self.listing.page()
            self.day = None
            rows = {
                "up": -1,
                "down": 1,
                "pageup": -page,
                "pagedown": page,
                "home": -len(self.rows),
                "end": len(self.rows),
            }
            self.listing.move(rows[key])
        elif (row := self.chosen) is not None:
            self._of_line(row, key, sign)
        self.show()

    def _of_line(self, row: Row, key: str, sign: str) -> None:
        if key in ("left", "right"):
            self._fold(row, out=key == "right")
        elif key == "u":
            self._do(lambda: self._back)
        elif self.desk.looking_on:
            self.said = words.TABLE_LOOKING_ON
        elif key == "enter" and row.phrase is not None:
            self._type(row, row.phrase, adding=False)
        elif key == "enter" and row.folds:
            self._fold(row, out=row.loc not in self.opened)
        elif key == "enter":
            self.said = words.TABLE_SEVERAL_LINES
        elif sign == "+":
            self._type(row, "", adding=True)
        elif key == "delete":
            self.said = words.table_out(" ".join(filter(None, (row.key, row.text))))
            self._do(lambda: self._change(take_out(row)))
        elif sign in ("[", "]"):
            by = -1 if sign == "[" else 1
            self._do(lambda: self._change(move(now, by)) if (now := self.chosen) is not None else None)

    def _fold(self, row: Row, *, out: bool) -> None:
        if row.folds and out:
            self.opened |= {row.loc}
        elif row.folds and row.loc in self.opened:
            self.opened -= {row.loc}
        elif not out:  # of what does not fold, or is folded: up to what it is in
            above = [n for n, each in enumerate(self.rows[: self.listing.at]) if each.level < row.level]
            self.listing.move((above[-1] if above else 0) - self.listing.at)

    def _another_day(self, by: int) -> None:
        if self.desk.sheet is not None:
            days = [each.day for each in self._glanced(self.desk.sheet)]
            at = days.index(now) if (now := self._shown_day()) in days else 0
            self.day = days[max(0, min(at + by, len(days) - 1))]

    def _go_to(self, number: int) -> None:
        found = self._findings()
        if 1 <= number <= min(len(found), 9) and found[number - 1].line:
            self.pane = "plan"
            self.day = None
            self.show(self._seen_line(found[number - 1].line))

    def _seen_line(self, line: int) -> int:
        """The number of the row that a line of the file stands in, unfolded so that it is seen."""
        row = row_at_line(self.desk.read.rows, line)
        return 0 if row is None else self._seen(row.loc)

    def _seen(self, loc: Loc) -> int:
        self.opened = with_seen(self.desk.read.rows, self.opened, loc)
        return row_at(shown(self.desk.read.rows, self.opened), loc)

    # --- a line typed ----------------------------------------------------------------------------------------
    def _type(self, row: Row, text: str, *, adding: bool) -> None:
        self.editing, self.adding = row, adding
        self.add_class("-typing")
        self.typed.value = text
        self.typed.cursor_position = len(text)
        self.typed.focus()

    def _typed_over(self) -> None:
        self.editing, self.said = None, ""
        self.remove_class("-typing")
        self.set_focus(None)

    def _completions(self, typed: str) -> Iterator[str]:
        row = self.editing
        return iter(()) if row is None else self.desk.completions(row, typed, adding=self.adding)

    def on_input_changed(self, event: Input.Changed) -> None:
        if self.editing is not None and not self.adding:
            self.said = self.desk.wrong(self.editing, event.value)
        self._show_said()

    def on_input_submitted(self, event: Input.Submitted) -> None:
        row = self.editing
        if row is None or self.busy:
            return
        if not self.adding and event.value == row.phrase:
            self._typed_over()
        elif self.adding:
            self._do(lambda: self._change(add(row, event.value, self.desk.dish)))
        else:
            self._do(lambda: self._change(retype(row, event.value)))
        self.show()

    # --- what takes a while ----------------------------------------------------------------------------------
    def _do(self, make: Callable[[], Job | None]) -> None:
        self.jobs.append(make)
        self._next()

    def _next(self) -> None:
        while not self.busy and self.jobs:
            job = self.jobs.popleft()()
            if job is not None:
                self.busy = True
                self.run_worker(lambda job=job: self.post_message(self.Ready(job())), thread=True)

    def _change(self, change: Change) -> Job:
        return lambda: self.desk.made(change)

    def _back(self) -> Loc:
        self.desk.before()
        at = self.desk.back()
        return (words.TABLE_NOTHING_BACK,) if at is None else at

    def on_plan_table_screen_ready(self, event: Ready) -> None:
        self.busy = False
        result, at = event.result, None
        if result is None:  # a look at the file that found nothing
            self._next()
            return
        if isinstance(result, CannotEdit):
            self.said = result.reason
        elif isinstance(result, Made):
            self._typed_over()
            self.desk.take(result)
            at = self._seen(result.at)
        elif isinstance(result, Outside):
            self.said = "" if result.both else words.table_outside(len(result.changed))
        elif result == (words.TABLE_NOTHING_BACK,):
            self.said = words.TABLE_NOTHING_BACK
        else:
            at = self._seen(result)
        self.show(at)
        self._next()

    def _hear(self) -> None:
        if self.desk.hear():
            self.show()

    def _look(self) -> None:
        self.desk.save()
        if not self.busy and not self.jobs and self.editing is None:
            self._do(lambda: self.desk.look)

    # --- what is shown ---------------------------------------------------------------------------------------
    @property
    def wide(self) -> bool:
        return self.size.width >= WIDE[0] and self.size.height >= WIDE[1]

    def show(self, at: int | None = None) -> None:
        """Shows all of it, with another row chosen if asked."""
        if not self.is_mounted:
            return
        self.set_class(not self.wide, "-narrow")
        for pane in PANES:
            self.set_class(self.pane == pane, f"-{pane}")
        if self.raw and self.desk.read.places is not None:  # it can be read now
            self.opened = first_opened(self.desk.read.rows)
        self.raw = self.desk.read.places is None
        self.rows = shown(self.desk.read.rows, self.opened)
        self.listing.show([self._line(row) for row in self.rows], self.listing.at if at is None else at)
        top, days, found, keys = (self.query_one(f"#table-{id_}", Lines) for id_ in ("top", "days", "found", "keys"))
        top.put([self._top()])
        days.put(list(self._days(max(20, days.size.width))))
        found.put(self._found(max(20, self.size.width - 2), found.size.height))
        typing, both = self.editing is not None, bool(self.desk.planning.both)
        keys.put(
            [((words.table_keys(typing=typing, both=both, wide=self.size.width >= words.TABLE_WIDE_KEYS), "soft"),)]
        )
        self._show_said()

    def _top(self) -> Line:
        pane = "" if self.wide else f"{words.TABLE_PANES[self.pane]}   "
        line: list[tuple[str, str]] = [(f"{one_line(self.desk.name, 40)}   {pane}", "accent")]
        if self.desk.looking_on:
            line.append((words.TABLE_LOOKING_ON, "wary"))
        elif self.desk.unwritten:
            line.append((words.table_unwritten(one_line(self.desk.unwritten)), "presses"))
        return tuple(line)

    def _line(self, row: Row) -> Line:
        fold = " " if not row.folds else "-" if row.loc in self.opened else "+"
        name = "accent" if row.kind == "course" else "name" if row.kind in ("dish", "job") else "text"
        line: list[tuple[str, str]] = [(f"{'  ' * row.level}{fold} ", "soft")]
        if row.kind in ("line", "group") and row.key:
            line.append((f"{row.key}: " if row.text else row.key, "soft"))
        line.append((row.text, name))
        if row.beside and row.loc not in self.opened:
            line.append((f"   {row.beside}", "soft"))
        return tuple(line)

    def _shown_day(self) -> date | None:
        sheet = self.desk.sheet
        if sheet is None:
            return None
        if self.day is not None:
            return self.day
        row = self.chosen
        own = day_of_slot(sheet, self.desk.slot_at(row.loc)) if row is not None else None
        return own or date.fromisoformat(sheet.date)

    def _glanced(self, sheet: RunSheet) -> tuple[Glance, ...]:
        """Worked out once for a timetable."""
        if self.glanced is None or self.glanced[0] is not sheet:
            self.glanced = (sheet, glances(sheet))
        return self.glanced[1]

    def _days(self, width: int) -> Iterator[Line]:
        if self.helped:
            yield from (((f"{key:<6} ", "accent"), (what, "text")) for key, what in words.KEYS_TABLE)
            return
        sheet, day = self.desk.sheet, self._shown_day()
        if sheet is None or day is None:
            stopped = any(each.weight == Weight.STOP for each in self._findings())
            none = words.TABLE_NO_DAYS if self.desk.working else words.TABLE_NONE_FOUND
            yield ((words.TABLE_STOPPED if stopped else none, "soft"),)
            return
        stands = words.table_sheet(proved=sheet.proved, stale=self.desk.stale, working=self.desk.working)
        yield ((stands, "wary" if self.desk.stale else "soft"),)
        for each in self._glanced(sheet):
            sign = shared.SIGN["chosen"] if each.day == day else " "
            yield ((f"{sign} {each.name}  ", "accent" if each.day == day else "name"), (each.told, "text"))
        yield ()
        slot = self.desk.slot_at(self.chosen.loc) if self.chosen is not None else ""
        yield from day_rows(sheet, day, width, slot)
        yield ()
        for line in held(sheet, slot):
            yield from (((piece, "text"),) for piece in wrapped(line, width).splitlines())

    def _findings(self) -> tuple[Finding, ...]:
        if self.desk.read.snags:  # known before the process beside has looked
            return tuple(
                Finding(each.code, int(each.weight), each.message, each.mend, each.place.line if each.place else 0)
                for each in self.desk.read.snags
            )
        return self.desk.found

    def _found(self, width: int, height: int) -> list[Line]:
        found = self._findings()
        if not found:
            return [((words.TABLE_FINE if self.desk.found_of else "", "soft"),)]
        whole = self.pane == "found"
        many = max(1, height // 2) if whole else SHOWN_FINDINGS if self.wide else 1
        lines: list[Line] = []
        for number, each in enumerate(found[:many], start=1):
            sign = shared.SIGN[SIGNS[Weight(each.weight)]]
            told = f"{number} {sign} {each.code}: {one_line(each.message)}"
            lines.append(fitted(((told, "wary" if each.weight > Weight.NOTE else "text"),), width))
            if self.wide or whole:
                lines.append(fitted(((f"    {one_line(each.mend)}", "soft"),), width))
        if len(found) > many:
            lines.append(((words.table_more(len(found) - many), "soft"),))
        return lines

    def _show_said(self) -> None:
        said = self.query_one("#table-said", Lines)
        if self.desk.planning.both:
            both = self.desk.planning.both[0]
            here, there = ("".join(side).strip() for side in (both.here, both.there))
            said.put([((words.table_both(both.line), "wary"), (words.table_here(one_line(here, 60)), "text")),
                      ((words.table_there(one_line(there, 60)), "text"),)])  # fmt: skip
            return
        lines: list[Line] = []
        if self.editing is not None and self.adding:
            lines.append(((words.table_adds(adds(self.editing)), "soft"),))
        width = max(20, self.size.width - 2)
        lines += [((line, "wary"),) for line in wrapped(one_line(self.said), width).splitlines()[: 2 - len(lines)]]
        said.put(lines)


class PlanTableApp(DressedApp[str]):
    """The table, until it is left; the key by which, of those that go on elsewhere, or none."""

    def __init__(self, desk: Desk, theme: str | None, remembered: str | None) -> None:
        super().__init__(theme=theme, remembered=remembered)
        self.desk = desk

    def on_mount(self) -> None:
        self.dress()
        self.push_screen(PlanTableScreen(self.desk))
