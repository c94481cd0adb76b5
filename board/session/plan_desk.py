"""The planning table without its screen: what a plan's text holds, what the host wishes of one of its lines, and the
timetable that answers. Reads and writes no file itself; asks the process beside for timetables and never waits."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from datetime import timedelta
from typing import Protocol
from zoneinfo import ZoneInfo

from board.base.plan_digest import digest_of
from board.checks.plan.guesses import guesses
from board.checks.sheet.assessed import of_plan
from board.plan.edit import edit_lines
from board.plan.edit.edits import MoveWork
from board.plan.edit.save import CannotEdit, edit
from board.plan.load import value_snag, words_known
from board.plan.places import Loc, follow
from board.plan.snag import Snag, Weight
from board.session.background import (
    Answer,
    Background,
    Finding,
    PlanProved,
    PlanText,
    PlanTried,
    PlanWays,
    Way,
)
from board.session.line_changes import Begin, Change, Dish, Made, Reading, adds, at_part, place, reading
from board.session.planning import Outside, Planning
from board.session.settling import Settling
from board.sheet.run_sheet import RunSheet, Slot
from board.view import tried
from board.view.plan_tree import Row

_Asked = PlanText | PlanProved | PlanTried | PlanWays


class Keeper(Protocol):
    """The plan's file."""

    def write(self, old: str, new: str) -> str:
        """Puts a text in place of another; why it could not, or nothing."""

    def read(self) -> str | None:
        """What the file holds if it changed since it was looked at; None if it did not, or cannot be read."""

    def changed(self) -> bool:
        """Whether it may have."""


@dataclass
class Trying:
    """Another time for a slot that stands in the plan at `loc`, not taken yet: minutes later, below 0 sooner. `text`:
    the plan with it, once made; `sheet`: its timetable; `told`: what it would do."""

    loc: Loc
    slot: Slot
    minutes: int = 0
    text: str = ""
    sheet: RunSheet | None = None
    told: tuple[str, ...] = ()

    def change(self, at: Reading, zone: ZoneInfo) -> tuple[str, Loc] | CannotEdit:
        by = timedelta(minutes=self.minutes)
        start, end = ((each + by).astimezone(zone) for each in (self.slot.start, self.slot.end))
        to = MoveWork(self.loc, start, end, sooner=self.minutes < 0)
        made = CannotEdit("") if at.file is None else to.changes(at.file, at.data)
        return made if isinstance(made, CannotEdit) else at_part(edit(at.text, made), self.loc)


@dataclass
class Desk:
    """`sheet`: the newest timetable, of the text with the digest `sheet_of`; `found`: what is said of the text with
    the digest `found_of`. `unwritten`: why the text is not on disk."""

    name: str
    planning: Planning
    read: Reading
    keeper: Keeper
    background: Background
    dish: Dish
    begin: Begin
    dishes: Sequence[str] = ()  # that are known by name
    sheet: RunSheet | None = None
    sheet_of: str = ""
    found: tuple[Finding, ...] = ()
    found_of: str = ""
    unwritten: str = ""
    looking_on: bool = False
    parts: dict[Loc, str] = field(default_factory=dict)
    trying: Trying | None = None
    ways: tuple[Way, ...] | None = None  # of the text as it is; None: not looked for
    _near: RunSheet | None = None
    _open: dict[type[_Asked], str] = field(default_factory=dict)  # digests asked for

    @property
    def digest(self) -> str:
        return digest_of(self.planning.text)

    @property
    def stale(self) -> bool:
        """Whether the timetable is of the text before the last change."""
        return self.sheet is not None and self.sheet_of != self.digest

    @property
    def working(self) -> bool:
        return PlanText in self._open or PlanProved in self._open

    @property
    def looking_for_ways(self) -> bool:
        return PlanWays in self._open

    # --- changes ---------------------------------------------------------------------------------------------
    def made(self, change: Change) -> Made | CannotEdit:
        """Tries a change; it may take a second. Refused where the plan could not be used after it, unless it cannot
        be now and does not get worse."""
        found = change(self.read)
        if isinstance(found, CannotEdit):
            return found
        new = reading(found[0], self.name)
        snag = self._worse(new)
        return Made(new, found[1]) if snag is None else CannotEdit(_in_words(snag))

    def _worse(self, new: Reading) -> Snag | None:
        """What a text brings that is worse than before. Where something is mended, more may show that stood behind."""
        known, now = ({(snag.code, snag.message) for snag in read.snags} for read in (self.read, new))
        if self.read.places is None or known - now:
            return None
        return next((snag for snag in new.snags if (snag.code, snag.message) not in known), None)

    def take(self, made: Made) -> None:
        """Takes a change, onto disk at once."""
        trying = self.trying
        self.planning.change(made.read.text, made.at)
        self._now(made.read)
        if trying is not None and trying.text == made.read.text and trying.sheet is not None:
            self.sheet, self.sheet_of = trying.sheet, self.digest

    def back(self) -> Loc | None:
        """Goes back one change; the part it was at, None if there is none. It may take a second."""
        return self._stepped(self.planning.back())

    def again(self) -> Loc | None:
        """The same with the change that was taken back last."""
        return self._stepped(self.planning.again())

    def _stepped(self, at: Loc | None) -> Loc | None:
        if at is not None:
            self._now(reading(self.planning.text, self.name))
        return at

    def choose(self, *, here: bool) -> None:
        """Takes this side or the file's of the first lines that were changed on both; the plan changes with the last of
        them."""
        self.planning.choose(here=here)
        if not self.planning.both:
            self._now(reading(self.planning.text, self.name))

    def _now(self, read: Reading) -> None:
        self.read, self.trying, self.ways = read, None, None
        self.save()
        self.ask()

    def save(self) -> None:
        """Writes what is not on disk; tried again at each look."""
        if not self.planning.unsaved:
            self.unwritten = ""
        elif not self.planning.both and not self.looking_on:
            self.unwritten = self.keeper.write(self.planning.on_disk, self.planning.text)
            if not self.unwritten:
                self.planning.saved(self.planning.text)

    # --- what comes from elsewhere ---------------------------------------------------------------------------
    def changed_elsewhere(self) -> bool:
        """Whether a look at the file is worth while."""
        return self.keeper.changed()

    def look(self) -> Outside | None:
        """What an editor did to the file, once."""
        disk = self.keeper.read()
        outside = self.planning.outside(disk) if disk is not None else None
        if outside is not None:
            self._now(reading(self.planning.text, self.name))
        return outside

    def ask(self) -> None:
        """Asks for the timetable of the text as it is. The search of the text before ends by that."""
        self._near = self.sheet if self.sheet is not None else self._near
        self._open.clear()
        self._ask(PlanText(self.planning.text, self._near))

    def _ask(self, request: _Asked) -> None:
        self.background.ask(request, anew=True)
        self._open[type(request)] = digest_of(request.text)

    def hear(self) -> bool:
        """Takes what answers there are; whether there was one."""
        heard = False
        for kind in tuple(self._open):
            answer = self.background.answer(kind)
            if answer is not None and answer.digest in ("", self._open[kind]):  # else of a text before
                del self._open[kind]
                heard = True
                if kind is PlanTried:
                    self._take_tried(answer)
                elif kind is PlanWays:
                    self.ways = answer.ways
                elif answer.digest:
                    self._take(kind, answer)
        return heard

    def _take(self, kind: type[_Asked], answer: Answer) -> None:
        self.found, self.found_of = answer.found, answer.digest
        self.parts = {tuple(loc): slot for loc, slot in answer.parts}
        if answer.sheet is not None:
            self.sheet, self.sheet_of = answer.sheet, answer.digest
            self._try_again(answer.sheet)
        if kind is PlanText and answer.parts and not (answer.sheet is not None and answer.sheet.proved):
            self._ask(PlanProved(self.planning.text, self._near))

    # --- another time ----------------------------------------------------------------------------------------
    def try_time(self, loc: Loc, minutes: int) -> None:
        """So many minutes later (below 0: sooner) than was tried last for the work at a path."""
        slot = self.sheet.by_id().get(self.slot_at(loc)) if self.sheet is not None and not self.stale else None
        if slot is not None:
            before = self.trying.minutes if self.trying is not None and self.trying.slot == slot else 0
            own = next(part for part, id_ in self.parts.items() if id_ == slot.id)
            self.trying = Trying(own, slot, before + minutes) if before + minutes else None

    def _try_again(self, sheet: RunSheet) -> None:
        """What was tried is weighed against the newest timetable."""
        if self.trying is not None:
            slot = sheet.by_id().get(self.trying.slot.id)
            self.trying = None if slot is None else Trying(self.trying.loc, slot, self.trying.minutes)

    def ask_tried(self) -> None:
        """Makes the text with the time that is tried, and asks what comes of it. Takes a part of a second."""
        trying = self.trying
        if trying is not None and self.sheet is not None:
            found = trying.change(self.read, ZoneInfo(self.sheet.zone))
            if isinstance(found, CannotEdit):
                trying.text, trying.told = self.planning.text, (found.reason,)
            else:
                trying.text = found[0]
                self._ask(PlanTried(found[0], self.sheet))

    def _take_tried(self, answer: Answer) -> None:
        trying = self.trying
        if trying is None or self.sheet is None or answer.digest != digest_of(trying.text):
            return
        trying.sheet = answer.sheet
        stop = next((each.message for each in answer.found if each.weight == Weight.STOP), "")
        trying.told = tried.told(self.sheet, answer.sheet, trying.slot.id, stop)

    def taken_time(self) -> Change | None:
        """What was tried as a change, once it is known what it does."""
        trying = self.trying
        if trying is None or trying.sheet is None:
            return None
        return lambda _: (trying.text, trying.loc)

    # --- guesses ---------------------------------------------------------------------------------------------
    def settling(self) -> Settling | None:
        """The plan's guesses, what decides most first; None where there are none, or the plan cannot be read. May take
        a part of a second."""
        file = self.read.file
        if file is None:
            return None
        found = guesses(file, of_plan(file).snags, None if self.stale else self.sheet)
        return Settling(self.planning.text, file, found) if found else None

    # --- ways out --------------------------------------------------------------------------------------------
    def look_for_ways(self) -> None:
        """Asks for ways out of what the timetable gives up."""
        if self.sheet is not None and self.sheet.given_up and not self.stale and self.ways is None:
            self._ask(PlanWays(self.planning.text))

    # --- of a line -------------------------------------------------------------------------------------------
    def slot_at(self, loc: Loc) -> str:
        """The slot of the step or job that a path lies in; empty for none."""
        while loc and loc not in self.parts:
            loc = loc[:-1]
        return self.parts.get(loc, "")

    def wrong(self, row: Row, typed: str) -> str:
        """What is wrong with a phrase while it is typed, by itself; empty for nothing. Takes a millisecond."""
        if self.read.places is None:
            return ""
        value = edit_lines.value_of(typed, follow(self.read.data, row.edits))
        if isinstance(value, CannotEdit):
            return value.reason
        snag = value_snag(self.read.data, row.edits, value, self.read.places)
        return "" if snag is None else _in_words(snag)

    def completions(self, row: Row, typed: str, *, adding: bool) -> Iterator[str]:
        """What a line may go on as: words that its part may have, or phrases that stand under the same word."""
        kind = adds(row, self.read) if adding else ""
        if kind in ("plan", "raw"):
            return
        if kind == "line":
            part, _ = place(row, self.read.data)
            there = follow(self.read.data, part)
            yield from (f"{word}: " for word in words_known(part) if f"{word}: ".startswith(typed)
                        and not (isinstance(there, dict) and word in there))  # fmt: skip
        elif kind == "dish":
            yield from (name for name in self.dishes if name.startswith(typed) and name != typed)
        else:
            same = (each.phrase for each in self.read.rows if each.key == row.key and each.phrase)
            yield from (phrase for phrase in dict.fromkeys(same) if phrase.startswith(typed) and phrase != typed)


def opened(
    text: str,
    name: str,
    keeper: Keeper,
    background: Background,
    dish: Dish,
    begin: Begin,
    dishes: Sequence[str] = (),
) -> Desk:
    """A desk on a plan's text as the file holds it; a timetable is asked for at once."""
    desk = Desk(name, Planning.of(text), reading(text, name), keeper, background, dish, begin, dishes)
    desk.ask()
    return desk


def _in_words(snag: Snag) -> str:
    """What is wrong, and the mend, as sentences."""
    message = snag.message if snag.message.endswith(("?", "!", ".")) or not snag.mend else f"{snag.message}."
    return " ".join(filter(None, (message, snag.mend)))
