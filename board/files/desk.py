"""Between the command line and the rooms: plan files in, run sheets out, and where logs and cached sheets lie."""

import codecs
import contextlib
import os
import re
import stat
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from platformdirs import user_cache_path, user_data_path

from board.base import words
from board.base.plain import one_line
from board.files.bookshelf import BookTrouble, figures_for, plan_digest
from board.files.cache import SheetCache
from board.sheet.run_sheet import RunSheet

if TYPE_CHECKING:
    from collections.abc import Callable

    from board.plan.load import PlanFile
    from board.schedule.solver.solve import Progress

APP = "platecall"


class Trouble(Exception):
    """Something the user must be told, in words ready for the terminal; `code` is the exit code."""

    def __init__(self, text: str, code: int = 1) -> None:
        super().__init__(text)
        self.code = code


def logs_folder() -> Path:
    return user_data_path(APP) / "logs"


def cache() -> SheetCache:
    return SheetCache(user_cache_path(APP) / "sheets")


def bundled_plan(name: str = "lantern-supper.yaml") -> Path:
    """The plan that comes along: in the source tree, or inside the installed package."""
    here = Path(__file__).parents[1]
    beside = here.parent / "plans" / name
    return beside if beside.exists() else here / "bundled" / name


LARGEST_BYTES = 64_000_000


def read_bytes(path: Path) -> bytes:
    """What is in a regular file of sane size. Raises Trouble."""
    try:
        if path.exists() and not path.is_dir():
            if not path.is_file():
                raise Trouble(words.not_a_file(one_line(path)))
            if path.stat().st_size > LARGEST_BYTES:
                raise Trouble(words.too_large(one_line(path)))
        return path.read_bytes()
    except IsADirectoryError:
        raise Trouble(words.is_folder(one_line(path))) from None
    except FileNotFoundError:
        raise Trouble(words.no_such_file(one_line(path))) from None
    except (OSError, ValueError) as wrong:
        raise Trouble(words.cannot_read(one_line(path), one_line(getattr(wrong, "strerror", None) or wrong))) from None


def read_text(path: Path) -> str:
    """The file's text. Raises Trouble."""
    data = read_bytes(path)
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError as wrong:
        line = data.count(b"\n", 0, wrong.start) + 1
        raise Trouble(words.not_utf8(one_line(path), line), code=2) from None


def write_plan(path: Path, old_text: str, new_text: str) -> None:
    """The file that held `old_text` then holds `new_text`, whole, or is as it was. Raises Trouble.

    A link is followed, mode and byte-order mark are kept. `old_text` is what `read_text` gave for the file.
    """
    from board.log.disk import replace_whole  # only here: opening the board must not wait for it

    shown = one_line(path)
    target = path.resolve()
    try:
        mark = _mark_of(target, old_text, shown)
        before = target.stat()
        if not before.st_mode & 0o222 or not os.access(target, os.W_OK):
            raise Trouble(words.plan_protected(shown))

        def ready(part: Path) -> None:
            make_alike(part, before)
            _mark_of(target, old_text, shown)  # an editor may have saved meanwhile

        replace_whole(target, mark + new_text.removeprefix("\ufeff").encode(), ready)
    except (OSError, ValueError) as wrong:
        why = one_line(getattr(wrong, "strerror", None) or wrong)
        raise Trouble(words.plan_not_written(shown, why)) from None


def _mark_of(target: Path, text: str, shown: str) -> bytes:
    """The byte-order mark a file begins with, if any. Raises Trouble where it no longer holds the text."""
    data = read_bytes(target)
    mark = codecs.BOM_UTF8 if data.startswith(codecs.BOM_UTF8) else b""
    if data.removeprefix(mark) != text.removeprefix("\ufeff").encode():
        raise Trouble(words.plan_moved_on(shown))
    return mark


def make_alike(part: Path, before: os.stat_result) -> None:
    """Gives a file the owner, where that is allowed, and the mode of another."""
    if hasattr(os, "chown"):
        with contextlib.suppress(OSError):
            os.chown(part, before.st_uid, before.st_gid)
    part.chmod(stat.S_IMODE(before.st_mode))


def read_plan_file(path: Path) -> "PlanFile":
    """The plan in a file. Raises Trouble (code 2 with its snags as text)."""
    return plan_in(read_text(path), path)


_LOG_BEGINS = '{"event":"EveningOpened"'  # as `board.log.read` has it, which the board need not wait for here


def plan_in(text: str, path: Path) -> "PlanFile":
    """The plan in the text of a file. Raises Trouble, as above."""
    from board.plan.load import read_plan

    if text.startswith(_LOG_BEGINS):
        raise Trouble(words.log_for_plan(one_line(path)), code=2)
    try:
        book = figures_for(text)
    except BookTrouble as wrong:
        raise Trouble(str(wrong), code=2 if wrong.broken else 1) from None
    found = read_plan(text, one_line(path), book)
    if isinstance(found, list):
        snags = [snag.render() for snag in found]
        raise Trouble("\n".join([*snags, words.snag_count(len(snags)), words.MORE_MAY_SHOW]), code=2)
    return found


def digest_in(text: str) -> str:
    """What names the sheet of a plan's text: with what the cook's book says where the plan asks it. Raises Trouble."""
    try:
        return plan_digest(text)
    except BookTrouble as wrong:
        raise Trouble(str(wrong), code=2 if wrong.broken else 1) from None


def sheet_of(
    path: Path, *, plan: "PlanFile | None" = None, fresh: bool = False, limit: float | None = None
) -> RunSheet:
    """The plan's run sheet: kept, or worked out now; `plan` where it was read already. Raises Trouble.

    A sheet that is not proved, for want of the time it was given, is not kept.
    """
    store = cache()
    digest = plan.digest if plan is not None else digest_in(read_text(path))
    if not fresh and (sheet := store.get(digest)) is not None:
        return sheet
    sheet = _work_out(plan if plan is not None else read_plan_file(path), limit)
    if sheet.proved or limit is None:
        store.put(sheet)
    return sheet


def refuse_stopped(plan: "PlanFile") -> None:
    """Raises Trouble for a plan with snags that must be mended first."""
    from board.checks.plan.every import stops

    if found := stops(plan):
        raise Trouble("\n".join([*(snag.render() for snag in found), words.MORE_MAY_SHOW]), code=2)


def _work_out(plan: "PlanFile", limit: float | None) -> RunSheet:
    """Checks and solves, telling how far it is where somebody watches. Only here is the solver loaded."""
    from board.checks.sheet.every import with_warnings
    from board.schedule.solver.feasible import can
    from board.schedule.solver.solve import LIMIT_SECONDS, NoAnswer, solve
    from board.schedule.write_up import make_sheet

    refuse_stopped(plan)

    with Telling() as telling:
        try:
            sheet = make_sheet(plan, lambda q: solve(q, limit or LIMIT_SECONDS, watch=telling.progress), can)
            return with_warnings(plan, sheet)
        except NoAnswer:
            raise Trouble(words.NO_ANSWER) from None


class Telling:
    """One line on a terminal that says how far a long search is; wiped away at the end, silent where nobody watches."""

    def __enter__(self) -> "Telling":
        watched = sys.stderr.isatty()
        self.progress: Callable[[Progress], None] | None = self._progress if watched else None
        self._watched = watched
        return self

    def _progress(self, progress: "Progress") -> None:
        self._say(words.progress(progress.aim, progress.value, progress.bound))

    def trying(self, what: str) -> None:
        if self._watched:
            self._say(words.trying(one_line(what)))

    def _say(self, text: str) -> None:
        sys.stderr.write(f"\r\x1b[K{text[:78]}")
        sys.stderr.flush()

    def __exit__(self, *_: object) -> None:
        if self._watched:
            sys.stderr.write("\r\x1b[K")


def live_log(sheet: RunSheet) -> Path:
    """One log an event: named by the event and its date."""
    return logs_folder() / f"{file_name(sheet.plan)}-{sheet.date}.jsonl"


def newest_log() -> Path | None:
    """The log of a real evening that was written last, in the usual folder."""
    with contextlib.suppress(OSError):
        logs = [file for file in logs_folder().glob("*.jsonl") if "-rehearsal-" not in file.name]
        return max(logs, key=lambda file: file.stat().st_mtime, default=None)
    return None


def rehearsal_log(sheet: RunSheet, *, fresh: bool) -> Path:
    """The last rehearsal if it can be gone on with, else the next free number."""
    folder, stem = logs_folder(), f"{file_name(sheet.plan)}-{sheet.date}-rehearsal"
    number = 1
    while (folder / f"{stem}-{number}.jsonl").exists():
        number += 1
    last = folder / f"{stem}-{number - 1}.jsonl"
    if not fresh and number > 1 and _can_go_on(last, sheet):
        return last
    return folder / f"{stem}-{number}.jsonl"


def _can_go_on(path: Path, sheet: RunSheet) -> bool:
    """Whether a rehearsal is of this very timetable and was not ended."""
    from board.evening.fold import fold_all
    from board.evening.state import begin
    from board.log.read import NoLog, read_log

    try:
        contents = read_log(path.read_bytes(), path.name)
    except (OSError, NoLog):
        return False
    past = contents.opened.sheet
    if past.digest != sheet.digest or past.slots != sheet.slots:
        return False
    return not fold_all(begin(sheet), contents.events).closed


def file_name(text: str) -> str:
    name = re.sub(r"[^\w]+", "-", text.casefold()).strip("-_")
    return name.encode()[:80].decode(errors="ignore") or "evening"  # file systems count bytes
