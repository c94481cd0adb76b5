"""What commands ask of the terminal they are typed at."""

import contextlib
import os
import sys
from collections.abc import Iterator

from board.base import words
from board.base.wrap import wrapped


def say_working() -> None:
    if sys.stderr.isatty():
        print(words.WORKING, file=sys.stderr)


@contextlib.contextmanager
def working() -> Iterator[None]:
    """Says on a terminal that a timetable is worked out, and wipes that line away when it is there."""
    say_working()
    try:
        yield
    finally:
        if sys.stderr.isatty():
            sys.stderr.write("\r\x1b[K\x1b[1A\x1b[K")
            sys.stderr.flush()


def has_terminal() -> bool:
    return all(stream is not None and stream.isatty() for stream in (sys.stdin, sys.stdout))


def tell(text: object) -> None:
    """Talk to stderr; on a terminal broken between words at its width, elsewhere as it is."""
    try:
        print(fitted(str(text)), file=sys.stderr, flush=True)
    except BrokenPipeError:  # nobody reads on
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stderr.fileno())


def fitted(text: str) -> str:
    """Talk as stderr shows it."""
    if sys.stderr is None or not sys.stderr.isatty():
        return text
    try:
        width = os.get_terminal_size(sys.stderr.fileno()).columns
    except (OSError, ValueError):
        return text
    return wrapped(text, width) if width > 0 else text
