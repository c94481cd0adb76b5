"""What commands ask of the terminal they are typed at."""

import sys

from board import words


def say_working() -> None:
    if sys.stderr.isatty():
        print(words.WORKING, file=sys.stderr)


def has_terminal() -> bool:
    return all(stream is not None and stream.isatty() for stream in (sys.stdin, sys.stdout))
