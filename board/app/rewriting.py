"""Writes a changed plan over its file, after a copy beside it. Raises Trouble; the file is then as it was."""

import difflib
from contextlib import suppress
from pathlib import Path
from tempfile import gettempdir

from platformdirs import user_data_path

from board.app import words
from board.base.errors import Trouble
from board.base.plain import one_line
from board.files.paths import APP
from board.files.plans import write_plan
from board.log.disk import write_next_free


def rewritten(path: Path, old: str, new: str, date: str) -> tuple[list[str], Path]:
    """Returns the changed lines and the copy's path; `date`, in ISO 8601, is part of its name."""
    copy = _backup(path, date)
    try:
        write_plan(path, old, new)
    except Trouble:
        with suppress(OSError):
            copy.unlink()
        raise
    lines = difflib.unified_diff(old.splitlines(), new.splitlines(), lineterm="", n=0)
    return [line for line in lines if line[:1] in "+-" and line[:3] not in ("+++", "---")], copy


def put_aside(path: Path, text: str, date: str) -> Path | None:
    """What could not be written into a plan, in a new file named by it and the `date`: beside it, else in the first
    folder of ours that takes it; None if none does. Raises nothing."""
    for folder in (path.absolute().parent, user_data_path(APP), Path(gettempdir())):
        with suppress(OSError, ValueError):
            return write_next_free(folder / f"{path.name}.unsaved-{date}", text.encode(errors="replace"))
    return None


def _backup(path: Path, date: str) -> Path:
    """Copies the plan to the next free name beside it."""
    target = path.resolve()
    try:
        copy = write_next_free(target.with_name(f"{target.name}.bak-{date}"), target.read_bytes())
        copy.chmod(target.stat().st_mode & 0o777)  # a private plan stays private
    except OSError as wrong:
        raise Trouble(words.backup_not_written(one_line(path), one_line(wrong.strerror or wrong))) from None
    return copy
