"""The planning table without its screen: what a plan's text holds, what the host wishes of one of its lines, and the
timetable that answers. Reads and writes no file itself; asks the process beside for timetables and never waits."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any, Protocol

from board.base.plan_digest import digest_of
from board.plan.edit import edit_lines
from board.plan.edit.save import CannotEdit, Put, edit
from board.plan.edit.yaml_text import scalar
from board.plan.load import PlanFile, read_plan, value_snag, words_known
from board.plan.places import Loc, Places, read_yaml
from board.plan.snag import Snag, in_order
from board.session.background import Answer, Background, Finding, PlanProved, PlanText
from board.session.planning import Outside, Planning
from board.sheet.run_sheet import RunSheet
from board.view.plan_tree import Row, raw_rows, rows_of

Dish = Callable[[str, PlanFile | None], list[str]]  # a dish's name → its lines of a plan, from `- dish:` on


class Keeper(Protocol):
    """The plan's file."""

    def write(self, old: str, new: str) -> str:
        """Puts a text in place of another; why it could not, or nothing."""

    def read(self) -> str | None:
        """What the file holds if it changed since it was looked at; None if it did not, or cannot be read."""


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
    data, places, wrong = read_yaml(text, name)
    if not isinstance(data, dict) or not data:
        found = wrong or read_plan(text, name)
        return Reading(text, raw_rows(text), None, None, None, tuple(found) if isinstance(found, list) else ())
    plan = read_plan(text, name)
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


def _lines(kind: str, name: str, at: Reading, dish: Dish) -> list[str]:
    match kind:
        case "dish":
            return dish(name, at.file)
        case "course":
            course, _, first = name.partition(":")
            under = [f"    {line}" for line in dish(first.strip() or course.strip(), at.file)]
            return [f"- course: {scalar(course.strip())}", "  at: 45 min after the course before", "  dishes:", *under]
        case "step":
            return [f"- step: {scalar(name)}", "  takes: 10 min", "  guessed: [takes]"]
    return [f"- {scalar(name)}"]


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
class Desk:
    """`sheet`: the newest timetable, of the text with the digest `sheet_of`; `found`: what is said of the text with
    the digest `found_of`. `unwritten`: why the text is not on disk."""

    name: str
    planning: Planning
    read: Reading
    keeper: Keeper
    background: Background
    dish: Dish
    sheet: RunSheet | None = None
    sheet_of: str = ""
    found: tuple[Finding, ...] = ()
    found_of: str = ""
    unwritten: str = ""
    looking_on: bool = False
    parts: dict[Loc, str] = field(default_factory=dict)
    _near: RunSheet | None = None
    _open: dict[type[PlanText | PlanProved], str] = field(default_factory=dict)  # digests asked for

    @property
    def digest(self) -> str:
        return digest_of(self.planning.text)

    @property
    def stale(self) -> bool:
        """Whether the timetable is of the text before the last change."""
        return self.sheet is not None and self.sheet_of != self.digest

    @property
    def working(self) -> bool:
        return bool(self._open)

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
        self.planning.change(made.read.text, made.at)
        self._now(made.read)

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
        self.read = read
        self.save()
        self.ask()

    def save(self) -> None:
        """Writes what is not on disk; tried again at each look."""
        if self.planning.unsaved and not self.planning.both and not self.looking_on:
            self.unwritten = self.keeper.write(self.planning.on_disk, self.planning.text)
            if not self.unwritten:
                self.planning.saved(self.planning.text)

    # --- what comes from elsewhere ---------------------------------------------------------------------------
    def look(self) -> Outside | None:
        """What an editor did to the file, once."""
        disk = self.keeper.read()
        outside = self.planning.outside(disk) if disk is not None else None
        if outside is not None:
            self._now(reading(self.planning.text, self.name))
        return outside

    def ask(self) -> None:
        """Asks for the timetable of the text as it is; an answer under way is waited for by nobody."""
        self._near = self.sheet if self.sheet is not None else self._near
        self._ask(PlanText)

    def _ask(self, kind: type[PlanText | PlanProved]) -> None:
        if kind not in self._open and self.background.ask(kind(self.planning.text, self._near)):
            self._open[kind] = self.digest

    def hear(self) -> bool:
        """Takes what answers there are; whether there was one."""
        heard = False
        for kind in (PlanText, PlanProved):
            answer = self.background.answer(kind) if kind in self._open else None
            if answer is not None:
                heard = True
                asked = self._open.pop(kind)
                if asked != self.digest:
                    self._ask(PlanText)
                elif answer.digest:
                    self._take(kind, answer)
        return heard

    def _take(self, kind: type[PlanText | PlanProved], answer: Answer) -> None:
        self.found, self.found_of = answer.found, answer.digest
        self.parts = {tuple(loc): slot for loc, slot in answer.parts}
        if answer.sheet is not None:
            self.sheet, self.sheet_of = answer.sheet, answer.digest
        if kind is PlanText and answer.parts and not (answer.sheet is not None and answer.sheet.proved):
            self._ask(PlanProved)

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
        else:
            same = (each.phrase for each in self.read.rows if each.key == row.key and each.phrase)
            yield from (phrase for phrase in dict.fromkeys(same) if phrase.startswith(typed) and phrase != typed)


def opened(text: str, name: str, keeper: Keeper, background: Background, dish: Dish) -> Desk:
    """A desk on a plan's text as the file holds it; a timetable is asked for at once."""
    desk = Desk(name, Planning.of(text), reading(text, name), keeper, background, dish)
    desk.ask()
    return desk
