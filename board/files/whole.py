"""Files the program makes for its host, beside plans and logs: written as a whole or not at all."""

import os
import sys
from collections.abc import Callable
from pathlib import Path

from board.base import words as shared
from board.base.errors import Trouble, why_of
from board.base.plain import one_line
from board.files import words
from board.files.plans import make_alike, read_bytes
from board.log.disk import place_new, replace_whole

STDOUT = Path("-")
NEW_FILE_MODE = 0o666  # minus the bits of the user's umask


def write_over(path: Path, data: bytes, is_ours: Callable[[bytes], bool], not_ours: Callable[[str], str]) -> None:
    """Makes the file hold `data`. Replaces only an empty file or one of our own kind, by `is_ours`; `not_ours` words
    the error for another kind.

    Follows a link, keeps the mode; `-` is standard output. Raises Trouble; an existing file is then as it was.
    """
    if path == STDOUT:
        _print(data)
        return
    target = _real(path)
    if not target.exists():
        write_new(path, data)
        return
    if (before := read_bytes(path)) and not is_ours(before):
        raise Trouble(not_ours(one_line(path)))
    try:
        mode = target.stat()
        if not os.access(target, os.W_OK) or not mode.st_mode & 0o222:
            raise PermissionError(13, words.WRITE_PROTECTED)
        replace_whole(target, data, lambda part: make_alike(part, mode))
    except (OSError, ValueError) as wrong:
        raise _failed(path, wrong) from None


def write_new(path: Path, data: bytes) -> None:
    """Writes a new file; an existing one is never touched. Raises Trouble. `-` is standard output."""
    if path == STDOUT:
        _print(data)
        return
    target = _real(path)
    try:
        place_new(target, data, NEW_FILE_MODE)
    except FileExistsError:
        raise Trouble(shared.is_there_already(one_line(path))) from None
    except (OSError, ValueError) as wrong:
        raise _failed(path, wrong) from None


def _print(data: bytes) -> None:
    """As bytes: UTF-8 and line ends as they are, on every system. Raises OSError."""
    sys.stdout.flush()
    sys.stdout.buffer.write(data)
    sys.stdout.buffer.flush()


def _real(path: Path) -> Path:
    """The path with its links followed. Raises Trouble for a loop of links or an impossible name."""
    try:
        return path.resolve()
    except (OSError, RuntimeError, ValueError) as wrong:
        raise _failed(path, wrong) from None


def _failed(path: Path, wrong: Exception) -> Trouble:
    return Trouble(words.cannot_write(one_line(path), why_of(wrong)))
