"""The planning table without its screen: what a plan's text holds, what the host wishes of one of its lines, and the
timetable that answers. Reads and writes no file itself; asks the process beside for timetables and never waits."""

import copy
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from datetime import timedelta
from functools import lru_cache
from typing import Any, Protocol
from zoneinfo import ZoneInfo

from board.base.plan_digest import digest_of
from board.plan.edit import edit_lines
from board.plan.edit.edits import MoveWork, SettleStep
from board.plan.edit.save import BYTE_ORDER_MARK, CannotEdit, Put, edit
from board.plan.edit.source import Source, read_source
from board.plan.edit.yaml_text import scalar
from board.plan.load import PlanFile, plan_of, value_snag, words_known
from board.plan.places import Loc, Places, read_yaml
from board.plan.snag import Fix, Snag, Weight, in_order
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
from board.session.planning import Outside, Planning
from board.sheet.run_sheet import RunSheet, Slot
from board.view import tried
from board.view.plan_tree import Row, raw_rows, rows_of

# A dish's name or a recipe's file → its lines of a plan, from `- dish:` on; or why there are none.
Dish = Callable[[str, PlanFile | None], list[str] | CannotEdit]
_Asked = PlanText | PlanProved | PlanTried | PlanWays


class Keeper(Protocol):
    """The plan's file."""

    def write(self, old: str, new: str) -> str:
        """Puts a text in place of another; why it could not, or nothing."""

    def read(self) -> str | None:
        """What the file holds if it changed since it was looked at; None if it did not, or cannot be read."""

    def changed(self) -> bool:
        """Whether it may have."""


@dataclass(frozen=True)
class Reading:
    """A plan's text understood: its rows, and what makes it unusable, the worst first. `file`: None if that is so.
    `places` None: it is no YAML."""

    text: str
    rows: tuple[Row, ...]
    data: Any
    places: Places | None
    file: PlanFile | None
    snags: tuple[Snag, ...]


@lru_cache(maxsize=64)  # so that going back is at once
def reading(text: str, name: str) -> Reading:
    """Takes up to a second. Raises nothing."""
    source = read_source(text.removeprefix(BYTE_ORDER_MARK))  # known where an edit made the text
    if isinstance(source, Source):
        wrong: list[Snag] = []
        data, places = source.data, source.places.named(name)
    else:
        data, places, wrong = read_yaml(text, name)
    plan = plan_of(text, copy.deepcopy(data), places, wrong)
    if not isinstance(data, dict) or not data:
        return Reading(text, raw_rows(text), None, None, None, tuple(plan) if isinstance(plan, list) else ())
    file, snags = (plan, []) if isinstance(plan, PlanFile) else (None, in_order(plan))
    return Reading(text, rows_of(data, places), data, places, file, tuple(snags))


@dataclass(frozen=True)
class Made:
    """A change that may be taken: the text read, and the part that is chosen then."""

    read: Reading
    at: Loc


Change = Callable[[Reading], tuple[str, Loc] | CannotEdit]


def retype(row: Row, typed: str) -> Change:
    """Another phrase in a line."""

    def change(at: Reading) -> tuple[str, Loc] | CannotEdit:
        if at.places is None:
            return edit_lines.line_retyped(at.text, int(row.loc[0]), typed), row.loc
        return _at(edit_lines.retyped(at.text, row.edits, typed), row.loc)

    return change


def take_out(row: Row) -> Change:
    """A line with all that stands under it taken out."""

    def change(at: Reading) -> tuple[str, Loc] | CannotEdit:
        if at.places is None:
            return edit_lines.line_removed(at.text, int(row.loc[0])), row.loc
        return _at(edit_lines.removed(at.text, row.loc), row.loc)

    return change


def move(row: Row, by: int) -> Change:
    """A line, with all that stands under it, one place up (-1) or down (1) in its list."""
    return lambda at: edit_lines.moved(at.text, row.loc, by)


def add(row: Row, typed: str, dish: Dish) -> Change:
    """What is added at a line (`adds`), out of what was typed."""

    def change(at: Reading) -> tuple[str, Loc] | CannotEdit:
        said = edit_lines.value_of(typed)
        if isinstance(said, CannotEdit):
            return said
        holder, behind = _place(row, at.data)
        kind, name = adds(row), " ".join(typed.split())
        if kind == "line" and behind is None:
            return _at(edit_lines.key_added(at.text, holder, typed), (*holder, typed.partition(":")[0].strip()))
        lines = _lines(kind, name, at, dish)
        if isinstance(lines, CannotEdit):
            return lines
        if behind is None:  # the first of its kind
            data, _, _ = read_yaml("\n".join([*lines, ""]), "")
            return _at(edit(at.text, [Put(holder, data)]), (*holder, 0))
        return _at(edit_lines.added(at.text, (*holder, behind), lines), (*holder, behind + 1))

    return change


def adds(row: Row) -> str:
    """What `add` adds at a line: a course, dish, step or job, an entry, or a line of its part (`word: value`)."""
    by_group = {"courses": "course", "dishes": "dish", "steps": "step", "jobs": "job"}
    if row.kind == "group":
        return by_group.get(row.key, "entry")
    if row.kind in ("dish", "step", "job"):
        return row.kind
    if row.kind == "course":
        return "dish"
    return "entry" if row.loc and isinstance(row.loc[-1], int) else "line"


def _place(row: Row, data: Any) -> tuple[Loc, int | None]:
    """The list and the number in it that something goes behind; for a line `word: value` its part, and None."""
    if row.kind == "course":
        holder: Loc = (*row.loc, "dishes")
    elif row.kind == "group":
        holder = row.loc
    elif row.loc and isinstance(row.loc[-1], int):
        return row.loc[:-1], row.loc[-1]
    else:
        return row.loc[:-1], None
    there = _follow(data, holder)
    return holder, len(there) - 1 if isinstance(there, list) and there else None


def _lines(kind: str, name: str, at: Reading, dish: Dish) -> list[str] | CannotEdit:
    match kind:
        case "dish":
            return dish(name, at.file)
        case "course":
            course, _, first = name.partition(":")
            of_dish = dish(first.strip() or course.strip(), at.file)
            if isinstance(of_dish, CannotEdit):
                return of_dish
            head = [f"- course: {scalar(course.strip())}", "  at: 45 min after the course before", "  dishes:"]
            return [*head, *(f"    {line}" for line in of_dish)]
        case "step":
            return [f"- step: {scalar(name)}", "  takes: 10 min", "  guessed: [takes]"]
    return [f"- {scalar(name)}"]


def mend(fix: Fix) -> Change:
    """A finding's mend."""

    def change(at: Reading) -> tuple[str, Loc] | CannotEdit:
        if fix.how != "settle" or at.file is None:
            return _at(edit_lines.fixed(at.text, fix), fix.loc)
        made = SettleStep(fix.loc, {fix.new: None}).changes(at.file, at.data)
        return made if isinstance(made, CannotEdit) else _at(edit(at.text, made), (*fix.loc, fix.new))

    return change


def way_out(way: Way) -> Change:
    """A way out of what the timetable gives up."""
    return lambda at: (way.text, ())


def _at(text: str | CannotEdit, loc: Loc) -> tuple[str, Loc] | CannotEdit:
    return text if isinstance(text, CannotEdit) else (text, loc)


def _follow(data: Any, loc: Loc) -> Any:
    for piece in loc:
        try:
            data = data[piece]
        except (KeyError, IndexError, TypeError):
            return None
    return data


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
        return made if isinstance(made, CannotEdit) else _at(edit(at.text, made), self.loc)


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
        if new.snags and (not self.read.snags or len(new.snags) > len(self.read.snags)) and self._new_snag(new):
            snag = self._new_snag(new)
            return CannotEdit("; ".join(filter(None, (snag.message, snag.mend))) if snag else "")
        return Made(new, found[1])

    def _new_snag(self, new: Reading) -> Snag | None:
        known = {(snag.code, snag.message) for snag in self.read.snags}
        return next((snag for snag in new.snags if (snag.code, snag.message) not in known), None)

    def take(self, made: Made) -> None:
        """Takes a change, onto disk at once."""
        trying = self.trying
        self.planning.change(made.read.text, made.at)
        self._now(made.read)
        if trying is not None and trying.text == made.read.text and trying.sheet is not None:
            self.sheet, self.sheet_of = trying.sheet, self.digest

    def before(self) -> Reading | None:
        """What `back` goes back to; it may take a second to read."""
        return reading(self.planning.before[-1][0], self.name) if self.planning.before else None

    def back(self) -> Loc | None:
        """Goes back one change; the part it was at, None if there is none."""
        at = self.planning.back()
        if at is not None:
            self._now(reading(self.planning.text, self.name))
        return at

    def choose(self, *, here: bool) -> None:
        """Takes this side or the file's of what was changed on both."""
        self.planning.choose(here=here)
        self._now(reading(self.planning.text, self.name))

    def _now(self, read: Reading) -> None:
        self.read, self.trying, self.ways = read, None, None
        self.save()
        self.ask()

    def save(self) -> None:
        """Writes what is not on disk; tried again at each look."""
        if self.planning.unsaved and not self.planning.both and not self.looking_on:
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
        value = edit_lines.value_of(typed, _follow(self.read.data, row.edits))
        if isinstance(value, CannotEdit):
            return value.reason
        snag = value_snag(self.read.data, row.edits, value, self.read.places)
        return "" if snag is None else "; ".join(filter(None, (snag.message, snag.mend)))

    def completions(self, row: Row, typed: str, *, adding: bool) -> Iterator[str]:
        """What a line may go on as: words that its part may have, or phrases that stand under the same word."""
        if adding and adds(row) == "line":
            there = _follow(self.read.data, row.loc[:-1])
            yield from (f"{word}: " for word in words_known(row.loc[:-1]) if f"{word}: ".startswith(typed)
                        and not (isinstance(there, dict) and word in there))  # fmt: skip
        elif adding and adds(row) == "dish":
            yield from (name for name in self.dishes if name.startswith(typed) and name != typed)
        else:
            same = (each.phrase for each in self.read.rows if each.key == row.key and each.phrase)
            yield from (phrase for phrase in dict.fromkeys(same) if phrase.startswith(typed) and phrase != typed)


def opened(
    text: str, name: str, keeper: Keeper, background: Background, dish: Dish, dishes: Sequence[str] = ()
) -> Desk:
    """A desk on a plan's text as the file holds it; a timetable is asked for at once."""
    desk = Desk(name, Planning.of(text), reading(text, name), keeper, background, dish, dishes)
    desk.ask()
    return desk
