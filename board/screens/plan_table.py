"""The planning table: the plan on the left, its days on the right, what matters most below; one at a time where the
window is small. It takes keys and says what is to be done; `plan_panes` draws."""

from collections.abc import Callable
from datetime import date

from textual import events
from textual.app import ComposeResult
from textual.containers import Container
from textual.message import Message

from board.base.plain import one_line
from board.plan.edit.save import CannotEdit
from board.plan.places import Loc
from board.screens import plan_panes, words
from board.screens.dressed import DressedApp
from board.screens.lines import Lines
from board.screens.listing import Listing
from board.screens.palette import next_theme
from board.screens.plan_panes import DrawnPane, Seen
from board.screens.settling import SettleScreen
from board.screens.typed import Typed, TypingScreen
from board.session.background import Finding
from board.session.line_changes import (
    NOTHING_THERE,
    Change,
    Made,
    add,
    at_part,
    mend,
    missing,
    move,
    retype,
    take_out,
    way_out,
)
from board.session.plan_desk import Desk
from board.session.planning import BY_AN_EDITOR, Outside
from board.session.settling import Settling
from board.sheet.run_sheet import RunSheet
from board.view.days import Glance, day_of_slot, glances, in_time
from board.view.plan_tree import Row, first_opened, row_at, row_at_line, shown, with_seen

WIDE = (100, 30)  # from here on all panes stand beside one another
HEARD_SECONDS, LOOKED_SECONDS = 0.1, 0.5
TRIED_MINUTES = 15  # sooner or later by one key
LEAST_BELOW = {"wide": 8, "narrow": 3}  # rows
LEAST_ABOVE = 3
SAID_ROWS = 2  # while there is little to say
PANES = ("plan", "days", "found")
LEAVE_IT_TRIED = ("left", "right", "enter", "z", "v", "comma", "full_stop")  # all else puts off what is tried
LINE_KEYS = ("enter", "delete", "+", "[", "]")
MOVES = {"up": -1, "down": 1, "home": -100_000, "end": 100_000}
Result = Made | CannotEdit | Outside | Settling | Loc | None
Job = Callable[[], Result]


class Pane(Lines):
    """Lines that are drawn for their size, and say when they have another."""

    class Resized(Message):
        """It has another size."""

    def on_resize(self) -> None:
        self.post_message(self.Resized())


class Days(Pane):
    """The days; a click says where it was."""

    class Clicked(Message):
        """Row and column, counted from 0."""

        def __init__(self, row: int, column: int) -> None:
            super().__init__()
            self.row = row
            self.column = column

    def on_click(self, event: events.Click) -> None:
        if (at := event.get_content_offset(self)) is not None:
            self.post_message(self.Clicked(at.y, at.x))


class PlanTableScreen(TypingScreen):
    """Work that may take a second is done in a thread; keys wait for it in their order, and nothing else does."""

    CSS_PATH = "plan_table.tcss"
    AUTO_FOCUS = ""
    held_is_one_act = False  # all there is to do can be undone

    class Ready(Message):
        """A job is done."""

        def __init__(self, result: Result) -> None:
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
        self.near = False  # the hours around a step, not its whole day
        self.drawn = DrawnPane()
        self.editing: Row | None = None
        self.adding = False
        self.said = ""
        self.done = ""  # what to say once what is being done is done
        self.helped = False  # the keys stand where the days do
        self.days_stood: tuple[object, ...] = ()  # what was seen of the days
        self.scrolled = 0  # lines of the days, or of the keys, that are above what is seen
        self.in_ways = False  # ways out stand where the findings do
        self.found_at = 0
        self.stands: set[str] = set()  # what the style sheet goes by
        self.rows_of: dict[str, int] = {}  # that panes have, as last set

    def compose(self) -> ComposeResult:
        yield Lines(id="table-top")
        with Container(id="table-panes"):
            yield Listing(id="table-plan")
            yield Days(id="table-days")
        yield Pane(id="table-found")
        yield Lines(id="table-said")
        yield Lines(id="table-typed")
        yield Lines(id="table-keys")

    def on_mount(self) -> None:
        self.listing = self.query_one(Listing)
        self.set_interval(HEARD_SECONDS, self._hear)
        self.set_interval(LOOKED_SECONDS, self._look)
        at = 0
        if self.desk.read.snags and (place := self.desk.read.snags[0].place) is not None:
            at = self._seen_line(place.line)
        self.call_after_refresh(self.show, at)

    def on_resize(self) -> None:
        self.call_after_refresh(self.show)

    def on_pane_resized(self) -> None:
        self.show()

    # --- keys ------------------------------------------------------------------------------------------------
    @property
    def chosen(self) -> Row | None:
        """The line that is chosen."""
        return self.rows[self.listing.at] if self.listing.at < len(self.rows) else None

    def pressed(self, key: str, sign: str) -> None:
        if self.typed is not None:
            self._type(key, sign, self.typed)
            return
        self.said = ""
        if self.desk.planning.both:
            if sign in ("1", "2"):
                self._do(lambda: self.desk.choose(here=sign == "1"))
            elif key == "q":
                self.app.exit()
            self.show()
            return
        if self.desk.trying is not None and key not in LEAVE_IT_TRIED:
            self.desk.trying = None
        if not self._of_the_table(key, sign):
            self._of_the_pane(key, sign)
        self.show()

    def _of_the_table(self, key: str, sign: str) -> bool:
        """A key that means the same in every pane; whether it is one."""
        if key == "q":
            self.app.exit()
        elif sign in words.TABLE_GOES_ON and sign:
            self.app.exit(sign)
        elif sign == "?":
            self.helped = not self.helped
            self.pane = "days" if self.helped else "plan"
        elif key == "v":
            self.app.theme = next_theme(self.app.theme)
        elif key == "escape":
            self.pane = self.pane if self.in_ways else "plan"
            self.in_ways = self.helped = False
        elif key == "tab":
            self.helped = False
            self.pane = PANES[(PANES.index(self.pane) + 1) % len(PANES)]
        elif key == "f":
            self.helped = False
            self.pane = "plan" if self.pane == "found" else "found"
        elif key == "w":
            self._ways()
        elif key == "z":
            self.near = not self.near
        elif sign in (",", "."):
            self._another_day(-1 if sign == "," else 1)
        elif sign.isdecimal():
            self._figure(int(sign))
        elif key in ("u", "a") and self.desk.looking_on:
            self.said = words.TABLE_LOOKING_ON
        elif key in ("u", "a"):
            self._do(self._back if key == "u" else self._again)
        else:
            return False
        return True

    def _of_the_pane(self, key: str, sign: str) -> None:
        page = max(1, (self.query_one(Days) if self.pane == "days" else self.listing).size.height - 1)
        by = {**MOVES, "pageup": -page, "pagedown": page}.get(key)
        row = self.chosen
        if self.pane == "days" and by is not None and (self.helped or key.startswith("page")):
            self.scrolled = max(0, min(self.scrolled + by, len(self.drawn.lines) - self.query_one(Days).size.height))
        elif self.pane == "found" and (by is not None or key == "enter"):
            if by is None:
                self._go_to(self.found_at)
            else:
                self.found_at = max(0, min(self.found_at + by, len(self._findings()) - 1))
        elif self.desk.trying is not None and key == "enter":
            if (change := self.desk.taken_time()) is not None:
                self._take_change(change)
        elif self.pane == "days" and key in ("left", "right"):
            self._try(TRIED_MINUTES if key == "right" else -TRIED_MINUTES)
        elif self.pane == "days" and by is not None:
            self._another_slot(by)
        elif self.pane != "plan" and (key in LINE_KEYS or sign in LINE_KEYS):
            self._leave_to_the_plan(key)
        elif by is not None:
            self.day = None
            self.listing.move(by)
        elif row is not None or sign == "+":
            self._of_line(row or NOTHING_THERE, key, sign)

    def _leave_to_the_plan(self, key: str) -> None:
        """Nothing is changed at a line that may not be seen."""
        if key == "enter":
            self.pane, self.helped = "plan", False
        else:
            self.said = words.TABLE_CHANGED_IN_PLAN

    def _of_line(self, row: Row, key: str, sign: str) -> None:
        if key in ("left", "right"):
            self._fold(row, out=key == "right")
        elif key == "enter" and row.phrase is None and row.folds:
            self._fold(row, out=row.loc not in self.opened)
        elif key == "enter" and row.phrase is None:
            self.said = words.TABLE_SEVERAL_LINES
        elif key not in ("enter", "delete") and sign not in ("+", "[", "]"):
            return
        elif self.desk.looking_on:
            self.said = words.TABLE_LOOKING_ON
        elif key == "enter":
            self._begin(row, row.phrase or "", adding=False)
        elif sign == "+":
            self._begin(row, "", adding=True)
        elif key == "delete":
            self._take_change(take_out(row), words.table_out(" ".join(filter(None, (row.key, row.text)))))
        else:
            self._take_change(move(row, -1 if sign == "[" else 1))

    def _fold(self, row: Row, *, out: bool) -> None:
        if row.folds and out:
            self.opened |= {row.loc}
        elif row.folds and row.loc in self.opened:
            self.opened -= {row.loc}
        elif not out:  # of what does not fold, or is folded: up to what it is in
            above = [n for n, each in enumerate(self.rows[: self.listing.at]) if each.level < row.level]
            self.listing.move((above[-1] if above else 0) - self.listing.at)

    def _figure(self, number: int) -> None:
        """Takes a way out, makes a finding's mend, or goes to its line: what stands below with that number."""
        if self.in_ways:
            ways = self.desk.ways or ()
            if 1 <= number <= len(ways):
                self.in_ways = False
                self._take_change(way_out(ways[number - 1]), words.table_done(one_line(ways[number - 1].what)))
            return
        if found := self._findings():
            first, shown = plan_panes.findings_shown(self._seen_now(), found, self._across())
            if 1 <= number <= len(shown):
                self._mend(first + number - 1)

    def _mend(self, number: int) -> None:
        """What is known to mend a finding, or its line to do it at."""
        fix = self._findings()[number].fix
        if fix is None:
            self._go_to(number)
        elif self.desk.looking_on:
            self.said = words.TABLE_LOOKING_ON
        elif fix.how == "begin":
            self._begin(missing(fix), fix.new, adding=True)
        elif fix.how == "ask":
            self._do(self._settling)
        else:
            self._take_change(mend(fix), words.table_done(words.table_mend("", fix)))

    def _go_to(self, number: int) -> None:
        found = self._findings()
        if number < len(found) and found[number].line:
            self.pane = "plan"
            self.day = None
            self.show(self._seen_line(found[number].line))
        elif number < len(found):
            self.said = words.TABLE_NO_LINE_OF_ITS_OWN

    def _ways(self) -> None:
        sheet = self.desk.sheet
        if self.in_ways:
            self.in_ways = False
        elif sheet is None or self.desk.working:
            self.said = words.TABLE_NO_DAYS
        elif not sheet.given_up:
            self.said = words.TABLE_NOTHING_LOST
        else:
            self.in_ways = True
            self.desk.look_for_ways()

    # --- days ------------------------------------------------------------------------------------------------
    def _another_day(self, by: int) -> None:
        if self.desk.sheet is not None:
            days = [each.day for each in self._glanced(self.desk.sheet)]
            at = days.index(now) if (now := self._shown_day()) in days else 0
            self.day = days[max(0, min(at + by, len(days) - 1))]

    def _another_slot(self, by: int) -> None:
        """What is done so many pieces of work later on the day that is shown."""
        sheet, day = self.desk.sheet, self._shown_day()
        if sheet is None or day is None:
            return
        slots = [slot for slot in in_time(sheet, day) if slot in self.desk.parts.values()]
        now = self._chosen_slot()
        at = slots.index(now) + by if now in slots else 0
        if slots:
            self._choose_slot(slots[max(0, min(at, len(slots) - 1))])

    def _choose_slot(self, slot: str) -> None:
        loc = next((part for part, id_ in self.desk.parts.items() if id_ == slot), None)
        if loc is not None:
            self.show(self._seen(loc))

    def _try(self, minutes: int) -> None:
        slot = self._chosen_slot()
        if self.desk.looking_on or not slot or self.chosen is None or self.desk.stale:
            self.said = words.TABLE_LOOKING_ON if self.desk.looking_on else words.TABLE_NO_TIME
        else:
            self.desk.try_time(self.chosen.loc, minutes)

    def _chosen_slot(self) -> str:
        return self.desk.slot_at(self.chosen.loc) if self.chosen is not None else ""

    def on_listing_moved(self) -> None:
        self.show()

    def on_days_clicked(self, event: Days.Clicked) -> None:
        if self.busy or self.typed is not None:
            return
        self.pane = "days"
        day, slot = self.drawn.at(event.row + self.scrolled, event.column)
        self.day = day or self.day
        if slot:
            self._choose_slot(slot)
        self.show()

    def _seen_line(self, line: int) -> int:
        """The number of the row that a line of the file stands in, unfolded so that it is seen."""
        row = row_at_line(self.desk.read.rows, line)
        return 0 if row is None else self._seen(row.loc)

    def _seen(self, loc: Loc) -> int:
        self.opened = with_seen(self.desk.read.rows, self.opened, loc)
        return row_at(shown(self.desk.read.rows, self.opened), loc)

    # --- a line typed ----------------------------------------------------------------------------------------
    def _begin(self, row: Row, text: str, *, adding: bool) -> None:
        self.editing, self.adding, self.typed = row, adding, Typed(text)

    def _type(self, key: str, sign: str, typed: Typed) -> None:
        more = self._suggested()
        if key == "escape":
            self._typed_over()
        elif key == "enter":
            self._submit(typed.text)
        elif key in ("right", "tab") and more:
            typed.put(more)
        else:
            typed.press(key, sign)
        if key in ("escape", "enter"):
            self.show()
        else:
            self.was_typed()

    def was_typed(self) -> None:
        if self.editing is not None and self.typed is not None and not self.adding:
            self.said = self.desk.wrong(self.editing, self.typed.text)
        self._show_typed()

    def _submit(self, text: str) -> None:
        row = self.editing
        if row is None or (not self.adding and text == row.phrase):
            self._typed_over()
        else:
            desk = self.desk
            begun = words.TABLE_BEGUN if desk.read.says_nothing and self.adding else ""
            self._take_change(add(row, text, desk.dish, desk.begin) if self.adding else retype(row, text), begun)

    def _typed_over(self) -> None:
        self.editing, self.typed, self.said = None, None, ""

    def _suggested(self) -> str:
        """What the text may go on as."""
        row, typed = self.editing, self.typed
        if row is None or typed is None or not typed.text or typed.at < len(typed.text):
            return ""
        whole = next(self.desk.completions(row, typed.text, adding=self.adding), "")
        return whole[len(typed.text) :]

    # --- what takes a while ----------------------------------------------------------------------------------
    def _do(self, job: Job) -> None:
        """Keys wait until it is done."""
        self.busy = True
        self.run_worker(lambda: self.post_message(self.Ready(job())), thread=True)

    def _take_change(self, change: Change, done: str = "") -> None:
        """`done`: what to say then."""
        if self.desk.looking_on:
            self.said = words.TABLE_LOOKING_ON
        else:
            self.done = done
            self._do(lambda: self.desk.made(change))

    def _back(self) -> Loc | CannotEdit:
        at = self.desk.back()
        self.done = words.TABLE_BACK_OUTSIDE if at == BY_AN_EDITOR else words.TABLE_TAKEN_BACK
        return CannotEdit(words.TABLE_NOTHING_BACK) if at is None else at

    def _again(self) -> Loc | CannotEdit:
        at = self.desk.again()
        self.done = words.TABLE_AGAIN_OUTSIDE if at == BY_AN_EDITOR else ""
        return CannotEdit(words.TABLE_NOTHING_AGAIN) if at is None else at

    def _settling(self) -> Settling | CannotEdit:
        return self.desk.settling() or CannotEdit(words.TABLE_NOTHING_GUESSED)

    def _settle(self, settling: Settling) -> None:
        """Goes through the guesses; keys wait until the host comes back, and the file is not looked at."""
        asked = SettleScreen(self.desk.name, settling)

        def answered(_: None) -> None:
            self.busy = False
            if asked.answers:
                self._take_change(lambda _: at_part(settling.answered(asked.answers), ()),
                                  words.table_settled(len(asked.answers)))  # fmt: skip
            self.go_on()

        self.busy = True
        self.app.push_screen(asked, answered)

    def on_plan_table_screen_ready(self, event: Ready) -> None:
        self.busy = False
        result, at = event.result, None
        done, self.done = self.done, ""
        if isinstance(result, CannotEdit):
            self.said = result.reason
        elif isinstance(result, Settling):
            self._settle(result)
        elif isinstance(result, Made):
            self._typed_over()
            self.desk.take(result)
            self.said = done
            at = self._seen(result.at) if result.at else None
        elif isinstance(result, Outside):
            self.said = "" if result.both else words.table_outside(len(result.changed))
        elif result is not None:
            self.said = done
            at = self._seen(result) if result not in ((), BY_AN_EDITOR) else None
        self.show(at)
        self.go_on()

    def _hear(self) -> None:
        if self.desk.hear():
            self.show()
        trying = self.desk.trying
        if trying is not None and not trying.text and not self.busy:
            self._do(self.desk.ask_tried)

    def _look(self) -> None:
        if self.busy:  # what is being done is written by itself
            return
        unwritten = self.desk.unwritten
        self.desk.save()
        if self.desk.unwritten != unwritten:
            self.show()
        if self.typed is None:
            self._do_quietly()

    def _do_quietly(self) -> None:
        """Looks what an editor did to the file; if nothing, no key has to wait for that."""
        if self.desk.changed_elsewhere():
            self._do(self.desk.look)

    # --- what is shown ---------------------------------------------------------------------------------------
    @property
    def wide(self) -> bool:
        return self.size.width >= WIDE[0] and self.size.height >= WIDE[1]

    def show(self, at: int | None = None) -> None:
        """Shows all of it, with another row chosen if asked."""
        if not self.is_mounted:
            return
        stands = {f"-{self.pane}", "-wide" if self.wide else "-narrow"}
        if stands != self.stands:
            self.set_classes(stands)
            self.stands = stands
        self.found_at = max(0, min(self.found_at, len(self._findings()) - 1))
        if self.raw and self.desk.read.places is not None:  # it can be read now
            self.opened = first_opened(self.desk.read.rows)
        self.raw = self.desk.read.places is None
        self.rows = shown(self.desk.read.rows, self.opened)
        lines = [plan_panes.line_of(row, opened=row.loc in self.opened) for row in self.rows]
        self.listing.show(lines, self.listing.at if at is None else at)
        top, found, keys = (self.query_one(f"#table-{id_}", Lines) for id_ in ("top", "found", "keys"))
        self._show_typed()
        self._show_days()
        seen, findings = self._seen_now(), self._findings()
        top.put([plan_panes.top(self.desk, seen)])
        below = plan_panes.below(self.desk, seen, findings, self._across())[: seen.below]
        least = seen.below if self.pane == "found" and not self.wide else LEAST_BELOW["wide" if self.wide else "narrow"]
        self._tall("found", min(seen.below, max(least, len(below))))
        found.put(below)
        keys.put([((words.table_keys(plan_panes.keys(self.desk, seen), self._across()), "soft"),)])

    def _show_days(self) -> None:
        """In their own pane they take what rows they need, then what matters most has the rest."""
        days, seen = self.query_one(Days), self._seen_now()
        stands = (seen.helped, seen.day, seen.slot, seen.near)
        self.scrolled = self.scrolled if stands == self.days_stood else 0
        self.days_stood = stands
        rows = self._free() if self.pane == "days" else self._free() - seen.below
        self.drawn = plan_panes.days(self.desk, seen, max(20, days.size.width), rows, self._findings())
        days.put(plan_panes.window(self.drawn.lines, self.scrolled, days.size.height, there=self.pane == "days"))

    def _across(self) -> int:
        return max(20, self.size.width - 2)

    def _tall(self, pane: str, rows: int) -> None:
        """Gives a pane so many rows; what has them already is not laid out anew."""
        if self.rows_of.get(pane) != rows:
            self.rows_of[pane] = rows
            self.query_one(f"#table-{pane}").styles.height = rows

    def _seen_now(self) -> Seen:
        sheet = self.desk.sheet
        return Seen(
            pane=self.pane, wide=self.wide, width=self.size.width, below=self._most_below(),
            helped=self.helped, near=self.near, in_ways=self.in_ways, typing=self.typed is not None,
            day=self._shown_day(), slot=self._chosen_slot(), found_at=self.found_at,
            glances=self._glanced(sheet) if sheet is not None else (),
        )  # fmt: skip

    def _free(self) -> int:
        """Rows for the panes and what matters most."""
        return self.size.height - 2 - self.rows_of.get("said", SAID_ROWS) - (self.typed is not None)  # names, keys

    def _most_below(self) -> int:
        """Rows that may be taken by what matters most: all where it is gone through, or else so many that the plan
        stays in view, and no line of the days is lost."""
        free, telling = self._free(), self.in_ways or self.desk.trying is not None
        if self.pane == "found" and not self.wide:
            return free
        most = free if telling else max(LEAST_BELOW["wide"] * self.wide, self.size.height // 3)
        if self.pane == "days" and not telling:
            most = min(most, free - len(self.drawn.lines))
        return max(0, min(most, free - LEAST_ABOVE))

    def _show_typed(self) -> None:
        self.query_one("#table-typed").display = self.typed is not None
        width, most = self._across(), self.size.height - 6
        lines = plan_panes.said(self.desk, self.editing if self.adding else None, self.said, most, width)
        least = 0 if self.pane != "plan" and not self.wide else SAID_ROWS
        self._tall("said", max(least, len(lines)))
        self.query_one("#table-said", Lines).put(lines)
        typed = [self.typed.line(width, self._suggested())] if self.typed is not None else []
        self.query_one("#table-typed", Lines).put(typed)

    def _shown_day(self) -> date | None:
        sheet = self.desk.sheet
        if sheet is None:
            return None
        return self.day or day_of_slot(sheet, self._chosen_slot()) or date.fromisoformat(sheet.date)

    def _glanced(self, sheet: RunSheet) -> tuple[Glance, ...]:
        """Worked out once for a timetable."""
        if self.glanced is None or self.glanced[0] is not sheet:
            self.glanced = (sheet, glances(sheet))
        return self.glanced[1]

    def _findings(self) -> tuple[Finding, ...]:
        """What is said of the text, the worst first; what its timetable gives up among it."""
        return plan_panes.findings(self.desk)


class PlanTableApp(DressedApp[str]):
    """The table, until it is left; the key by which, of those that go on elsewhere, or none."""

    def __init__(self, desk: Desk, theme: str | None, remembered: str | None) -> None:
        super().__init__(theme=theme, remembered=remembered)
        self.desk = desk

    def on_mount(self) -> None:
        self.dress()
        self.push_screen(PlanTableScreen(self.desk))
