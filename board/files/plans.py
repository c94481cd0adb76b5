"""Plan files: read as text and as plans, and written as a whole."""

import codecs
import contextlib
import os
import stat
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from board.base import words as shared
from board.base.errors import Trouble, why_of
from board.base.plain import one_line
from board.files import words

if TYPE_CHECKING:
    from board.plan.load import PlanFile

LARGEST_BYTES = 64_000_000
STDIN = Path("-")
_taken: tuple[object, bytes] | None = None  # what came on standard input: it can be read only once


def shown(path: Path) -> str:
    """A file's name in messages, one line."""
    return words.STDIN if path == STDIN else one_line(path)


def read_bytes(path: Path) -> bytes:
    """The bytes of a regular file of at most `LARGEST_BYTES`, or of standard input for `-`. Raises Trouble."""
    if path == STDIN:
        return _stdin()
    try:
        if path.exists() and not path.is_dir():
            if not path.is_file():
                raise Trouble(shared.not_a_file(one_line(path)))
            if path.stat().st_size > LARGEST_BYTES:
                raise Trouble(words.too_large(one_line(path)))
        return path.read_bytes()
    except IsADirectoryError:
        raise Trouble(words.is_folder(one_line(path))) from None
    except FileNotFoundError:
        raise Trouble(words.no_such_file(one_line(path))) from None
    except (OSError, ValueError) as wrong:
        raise Trouble(shared.cannot_read(one_line(path), why_of(wrong))) from None


def read_text(path: Path) -> str:
    """The file's UTF-8 text, without byte-order mark. Raises Trouble (code 2 if it is not UTF-8)."""
    return _decoded(read_bytes(path), shown(path))


def is_blank(path: Path) -> bool:
    """Whether it is a file of nothing but white space, in which nothing can be lost. Raises nothing."""
    with contextlib.suppress(Trouble, OSError, ValueError):
        return path != STDIN and path.is_file() and not read_text(path).strip()
    return False


def _stdin() -> bytes:
    global _taken
    if _taken is None or _taken[0] is not sys.stdin:
        try:
            data = sys.stdin.buffer.read(LARGEST_BYTES + 1)
        except (OSError, ValueError, AttributeError) as wrong:  # closed
            raise Trouble(shared.cannot_read(words.STDIN, why_of(wrong))) from None
        if len(data) > LARGEST_BYTES:
            raise Trouble(words.too_large(words.STDIN))
        _taken = (sys.stdin, data)
    return _taken[1]


def _decoded(data: bytes, shown: str) -> str:
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError as wrong:
        line = data.count(b"\n", 0, wrong.start) + 1
        raise Trouble(words.not_utf8(shown, line), code=2) from None


def write_plan(path: Path, old_text: str, new_text: str) -> None:
    """Replaces `old_text` in the file by `new_text`, as a whole. Raises Trouble, also if the file has changed since; it
    is then as it was.

    Follows a link; keeps mode and byte-order mark. `old_text` is what `read_text` returned.
    """
    from board.log.disk import replace_whole  # imported here: opening the board must not wait for it

    shown = one_line(path)
    target = path.resolve()
    try:
        mark = _mark_of(target, old_text, shown)
        before = target.stat()
        if not before.st_mode & 0o222 or not os.access(target, os.W_OK):
            raise Trouble(words.plan_protected(shown))

        def ready(part: Path) -> None:
            make_alike(part, before)
            _mark_of(target, old_text, shown)  # an editor may have saved in the meantime

        replace_whole(target, mark + new_text.removeprefix("\ufeff").encode(), ready)
    except (OSError, ValueError) as wrong:
        why = why_of(wrong)
        raise Trouble(words.plan_not_written(shown, why)) from None


def _mark_of(target: Path, text: str, shown: str) -> bytes:
    """The file's byte-order mark, or nothing. Raises Trouble if the file no longer holds the text."""
    data = read_bytes(target)
    mark = codecs.BOM_UTF8 if data.startswith(codecs.BOM_UTF8) else b""
    if data.removeprefix(mark) != text.removeprefix("\ufeff").encode():
        raise Trouble(words.plan_moved_on(shown))
    return mark


def make_alike(part: Path, before: os.stat_result) -> None:
    """Gives a file another file's mode, and its owner if that is allowed. Raises OSError."""
    if hasattr(os, "chown"):
        with contextlib.suppress(OSError):
            os.chown(part, before.st_uid, before.st_gid)
    part.chmod(stat.S_IMODE(before.st_mode))


def read_plan_file(path: Path) -> "PlanFile":
    """The plan in a file. Raises Trouble (code 2, with its snags as text)."""
    return plan_in(read_text(path), path)


_LOG_BEGINS = '{"event":"EveningOpened"'  # as in `board.log.read`, which is not imported to save time


def plan_in(text: str, path: Path) -> "PlanFile":
    """The plan in the text of a file. Raises Trouble, as above; also for a run log."""
    from board.plan.load import read_plan

    if text.startswith(_LOG_BEGINS):
        raise Trouble(words.log_for_plan(shown(path)), code=2)
    found = read_plan(text, shown(path))
    if isinstance(found, list):
        snags = [snag.render() for snag in found]
        raise Trouble("\n".join([*snags, words.snag_count(len(snags)), shared.MORE_MAY_SHOW]), code=2)
    return found
