"""From run logs to a plan that has learned from them: what they teach, and the changed plan file."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path
from zoneinfo import ZoneInfo

from board.app import words
from board.app.reading_logs import contents_of, read_apart
from board.app.rewriting import rewritten
from board.app.timetables import refuse_stopped
from board.base.clock import WallClock
from board.base.errors import Trouble
from board.base.plain import one_line
from board.checks.plan.every import check
from board.files.cook_book import BookTrouble, book_file, read_book_file, rewrite
from board.files.paths import logs_folder
from board.files.plans import plan_in, read_text
from board.learning.book import Added, Book, into_book
from board.learning.changes import Lesson, Lessons, history_lines, lessons_for
from board.learning.from_book import written_from_book
from board.learning.notes import Note
from board.plan.edit.edits import AddHistory, AddNotes, CannotEdit, Edit, Together, apply_all
from board.plan.load import PlanFile
from board.plan.places import Loc
from board.plan.snag import Snag
from board.review.observe import PastEvening, observe


@dataclass(frozen=True)
class Learning:
    """A plan: its path, text and content, and what evenings teach about it."""

    path: Path
    text: str
    file: PlanFile
    found: Lessons


def read_evenings(paths: Sequence[Path]) -> tuple[list[PastEvening], list[str]]:
    """The evening in each log, and messages about what was left out of damaged ones. Raises Trouble."""
    found, said = [], []
    for path in paths:
        evening, dropped = read_apart(path, _observed)
        if dropped:
            said.append(one_line(dropped))
        found.append(evening)
    return found, said


def _observed(path: Path) -> tuple[PastEvening, str | None]:
    contents = contents_of(path)
    return observe(contents.opened, contents.events, contents.mark), contents.dropped


def all_evenings() -> tuple[list[PastEvening], list[str]]:
    """The same for every log in the usual folder; a file that cannot be read is skipped with a message. Raises
    nothing."""
    found: list[PastEvening] = []
    said: list[str] = []
    for path in sorted(logs_folder().glob("*.jsonl")):
        try:
            more, told = read_evenings([path])
        except Trouble as trouble:
            said.append(words.log_skipped(str(trouble).splitlines()[0]))
        else:
            found += more
            said += told
    return found, said


def learn_from(path: Path, evenings: Callable[[], Iterable[PastEvening]]) -> Learning:
    """What evenings teach about the plan in a file; they are read after it. Raises Trouble."""
    text = read_text(path)
    file = plan_in(text, path)
    return Learning(path, text, file, lessons_for(file, evenings()))


def add_to_book(learning: Learning, evenings: Iterable[PastEvening]) -> tuple[Added, Path]:
    """Adds to the cook's book what these evenings showed about the plan's work. Returns what was added, and the book's
    path. Raises Trouble."""
    path, told = book_file(), list(evenings)
    added: list[Added] = []

    def change(book: Book) -> Book:
        added.append(into_book(book, learning.file, told))
        return added[0].book

    try:
        rewrite(path, change)
    except BookTrouble as wrong:
        raise Trouble(str(wrong), code=2 if wrong.broken else 1) from None
    return added[0], path


def the_book() -> tuple[Book, Path]:
    """The cook's book and its path. Raises Trouble."""
    path = book_file()
    try:
        return read_book_file(path), path
    except BookTrouble as wrong:
        raise Trouble(str(wrong), code=2 if wrong.broken else 1) from None


@dataclass(frozen=True, slots=True)
class Chosen:
    """Lessons and notes to be taken into the plan."""

    lessons: tuple[Lesson, ...] = ()
    notes: tuple[Note, ...] = ()


def chosen(learning: Learning, numbers: Sequence[int] | None) -> Chosen:
    """The lessons and notes with these numbers; for None, all but lessons seen once. Counted from 1, lessons first.
    Raises Trouble for an unknown number, or if nothing is left."""
    lessons, notes = learning.found.lessons, learning.found.notes
    count = len(lessons) + len(notes)
    for number in numbers or ():
        if not 1 <= number <= count:
            raise Trouble(words.no_such_lesson(number, count))
    if not count:
        raise Trouble(words.no_such_lesson(1, 0))
    wanted = numbers
    if wanted is None:
        wanted = [n for n in range(1, count + 1) if n > len(lessons) or not lessons[n - 1].once]
        if not wanted:
            raise Trouble(words.ALL_SEEN_ONCE)
    return Chosen(
        tuple(lesson for n, lesson in enumerate(lessons, 1) if n in wanted),
        tuple(note for n, note in enumerate(notes, len(lessons) + 1) if n in wanted),
    )


@dataclass(frozen=True)
class Taking:
    """A plan with lessons and notes in it, as text and as content, that nobody has written yet; `date`: today."""

    text: str
    file: PlanFile
    date: str


def taking(learning: Learning, taken: Chosen) -> Taking:
    """The plan with all of these in it. Raises Trouble, also if it would then have stops."""
    date = WallClock().now().astimezone(ZoneInfo(learning.file.plan.zone)).date().isoformat()
    history = history_lines(date, taken.lessons, learning.found, taken.notes)
    text, file = changed(learning, taken.lessons, taken.notes, history)
    try:
        refuse_stopped(check(file))
    except Trouble as trouble:
        raise Trouble(words.lessons_stop(str(trouble)), trouble.code) from None
    return Taking(text, file, date)


def take(learning: Learning, made: Taking) -> tuple[list[str], Path]:
    """Writes the plan after a copy beside it. Returns the changed lines and the copy's path. Raises Trouble."""
    return rewritten(learning.path, learning.text, made.text, made.date)


@dataclass(frozen=True)
class FromBook:
    """What the cook's book wrote into a plan: figures in words, changed lines, the copy's path. `missing`: what the
    book does not have."""

    told: tuple[str, ...]
    lines: list[str]
    copy: Path | None
    missing: tuple[Snag, ...]


def write_from_book(path: Path) -> FromBook:
    """Writes the book's figures where the plan says `as in the book`, after a copy beside it. Raises Trouble."""
    text, book = read_text(path), the_book()[0]
    now = WallClock().now()
    found = written_from_book(text, one_line(path), book, now)
    if isinstance(found, list):
        raise Trouble("\n".join(snag.render() for snag in found), code=2)
    lines, copy = rewritten(path, text, found.text, now.date().isoformat()) if found.told else ([], None)
    return FromBook(found.told, lines, copy, found.missing)


def changed(
    learning: Learning, taken: Sequence[Lesson], notes: Sequence[Note] = (), history: tuple[str, ...] = ()
) -> tuple[str, PlanFile]:
    """The plan with these lessons, notes and history lines, as text and as content. Raises Trouble."""
    by_place: dict[Loc, list[str]] = {}
    for note in notes:
        by_place.setdefault(note.loc, []).append(note.text)
    # One after another: a figure and a note may belong to the same line.
    edits: list[Edit] = [Together(tuple(lesson.edit for lesson in taken))] if taken else []
    edits += [AddNotes(loc, tuple(texts)) for loc, texts in by_place.items()]
    edits += [AddHistory(history)] if history else []
    made = apply_all(learning.text, learning.file, edits)
    if isinstance(made, CannotEdit):
        raise Trouble(one_line(made.reason))
    return made
