"""Reads run logs from their files: to list, look back on, and pass on. Raises Trouble if one cannot be read."""

from collections.abc import Callable, Sequence
from contextlib import suppress
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from board.app import words
from board.app.terminal import working
from board.base.errors import Trouble
from board.base.plain import one_line
from board.evening.events import NightDrawn
from board.evening.fold import fold_all
from board.evening.state import begin
from board.files.paths import cache, logs_folder
from board.files.plans import read_bytes, read_plan_file, shown
from board.files.whole import write_new
from board.log.read import LogContents, NoLog, read_log
from board.log.share import as_csv, as_lines, without_names
from board.review.eaten import Eaten, by_guest
from board.review.looked_back import Listed, LookedBack
from board.review.measure import measured
from board.review.next_time import next_time
from board.review.trace import answered_late, away_planned_and_actual, traced

if TYPE_CHECKING:
    pass

PLAYED_EVENINGS, SEED = 4_000, 1
T = TypeVar("T")


def contents_of(path: Path) -> LogContents:
    """The readable part of a log. Raises Trouble."""
    try:
        return read_log(read_bytes(path), shown(path), cache().all)
    except NoLog as wrong:
        raise Trouble(one_line(wrong)) from None


def look_back_on(
    paths: Sequence[Path], *, odds: bool = False, night: bool = False
) -> tuple[list[LookedBack], list[str]]:
    """Each evening whose log can be read, and messages about the others. Raises Trouble if the only one cannot be
    read."""
    return _each(paths, lambda path: look_back(path, odds=odds, night=night))


def _each(paths: Sequence[Path], read: Callable[[Path], T]) -> tuple[list[T], list[str]]:
    found, wrong = [], []
    for path in paths:
        try:
            found.append(read_apart(path, read))
        except Trouble as trouble:
            if len(paths) == 1:
                raise
            wrong.append(str(trouble))
    return found, wrong


def read_apart(path: Path, read: Callable[[Path], T]) -> T:
    """What is read of one log. Raises Trouble whatever is wrong with it: no log may keep the others from being read."""
    try:
        return read(path)
    except (ArithmeticError, LookupError, ValueError, TypeError, RecursionError) as wrong:
        raise Trouble(words.log_makes_no_sense(one_line(path), one_line(f"{type(wrong).__name__}: {wrong}"))) from None


def look_back(path: Path, *, odds: bool = False, night: bool = False) -> LookedBack:
    """The evening in a log. `odds`: also the share of evenings in which each course should be on time.
    `night`: also the account of a rehearsal's mishaps, which takes seconds. Raises Trouble."""
    contents = contents_of(path)
    sheet = contents.opened.sheet
    state = fold_all(begin(sheet), [contents.opened, *contents.events])
    chances = None
    if odds:
        from board.odds.many import on_time  # imported only when asked for: nothing else here needs arrays

        chances = on_time(sheet, PLAYED_EVENINGS, SEED, assume=True)
    account: tuple[str, ...] = ()
    if night and any(isinstance(event, NightDrawn) for event in contents.events):
        from board.rehearsal.account_lines import account_lines  # imported only when asked for

        with working(words.PLAYING_AGAIN):
            account = tuple(account_lines([contents.opened, *contents.events]))
    return LookedBack(
        date=sheet.date,
        review=measured(state, contents.opened),
        traced=tuple(traced(state)),
        answers=tuple(answered_late(state)),
        away=away_planned_and_actual(state),
        chances=chances,
        account=account,
        next_time=next_time(state),
        dropped=contents.dropped,
    )


def listed(paths: Sequence[Path]) -> tuple[list[Listed], list[str]]:
    """These logs, or all in the usual folder, by date; and messages about those that cannot be read. In the folder,
    other files are skipped. Raises Trouble if the only one named cannot be read."""
    found, wrong = _each(paths, _listed) if paths else _in_folder()
    return sorted(found, key=lambda each: (each.date, str(each.path))), wrong


def _in_folder() -> tuple[list[Listed], list[str]]:
    found = []
    for path in sorted(logs_folder().glob("*.jsonl")):
        with suppress(Trouble):
            found.append(read_apart(path, _listed))
    return found, []


def _listed(path: Path) -> Listed:
    contents = contents_of(path)
    opened = contents.opened
    review = measured(fold_all(begin(opened.sheet), [opened, *contents.events]), opened)
    ended = words.LOG_CLOSED if review.closed else words.LOG_OPEN
    if contents.damage is not None:
        ended = words.LOG_NEWER if contents.damage == "newer" else words.LOG_DAMAGED
    late = [course.late_minutes for course in review.courses if course.late_minutes is not None]
    said = any(course.said for course in review.courses)
    return Listed(str(path), opened.sheet.date, review.plan, opened.rehearsal, ended, max(late, default=None), said)


def eaten_by_guest(paths: Sequence[Path]) -> tuple[dict[str, list[Eaten]], list[str]]:
    """By guest, what these logs, or all in the usual folder, had each served; and messages about those that cannot be
    read. Rehearsals are left out. Raises Trouble if the only one named cannot be read."""
    logs, wrong = _each(paths or [Path(each.path) for each in listed(())[0]], contents_of)
    real = [log for log in logs if not log.opened.rehearsal]
    return by_guest(fold_all(begin(log.opened.sheet), [log.opened, *log.events]) for log in real), wrong


def csv_of(paths: Sequence[Path]) -> str:
    """Every event of these logs, or of all in the usual folder, as one CSV table. Raises Trouble."""
    logs = []
    for path in paths or [Path(each.path) for each in listed(())[0]]:
        contents = contents_of(path)
        logs.append((path.name, [contents.opened, *contents.events]))
    return as_csv(logs)


def anonymise(path: Path, out: Path | None, names: Sequence[str], plan: Path | None, *, notes: bool) -> str:
    """Writes a copy of a log without names to the new file `out`. Returns the message for the host. Raises Trouble."""
    if out is None:
        raise Trouble(words.ANONYMISE_NEEDS_OUT, code=64)
    if plan is not None:
        names = [*names, *(guest.name for guest in read_plan_file(plan).plan.guests if guest.count == 1)]
    # `host` is a role, not a name; groups of guests are left out above.
    names = [name for name in names if name.casefold() != "host"]
    if not names:
        raise Trouble(words.ANONYMISE_NEEDS_NAMES, code=64)
    contents = contents_of(path)
    events = without_names([contents.opened, *contents.events], names, words.GUEST_STAND_IN, notes=notes)
    write_new(out, as_lines(events))
    return words.anonymised(one_line(out), len({name.casefold() for name in names}))
