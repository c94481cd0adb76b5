"""What commands ask of the terminal they are typed at."""

import os
import sys

from board import words
from board.wrap import wrapped


def say_working() -> None:
    if sys.stderr.isatty():
        print(words.WORKING, file=sys.stderr)


def has_terminal() -> bool:
    return all(stream is not None and stream.isatty() for stream in (sys.stdin, sys.stdout))


def tell(text: object) -> None:
    """Talk to stderr; on a terminal broken between words at its width, elsewhere as it is."""
    print(fitted(str(text)), file=sys.stderr)


def fitted(text: str) -> str:
    """Talk as stderr shows it."""
    if sys.stderr is None or not sys.stderr.isatty():
        return text
    try:
        width = os.get_terminal_size(sys.stderr.fileno()).columns
    except (OSError, ValueError):
        return text
    return wrapped(text, width) if width > 0 else text
