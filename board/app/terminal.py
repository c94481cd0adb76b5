"""What commands need from the terminal they are typed at."""

import contextlib
import os
import signal
import sys
import threading
from collections.abc import Callable, Iterator
from pathlib import Path
from types import FrameType
from typing import TextIO

from board.app import words
from board.base.plain import as_json, one_line
from board.base.wrap import asked_width, wrapped


def say_working(what: str = words.WORKING) -> None:
    """Says on a terminal's stderr what is being worked out: a timetable."""
    if sys.stderr.isatty():
        print(what, file=sys.stderr)


@contextlib.contextmanager
def working(what: str = words.WORKING) -> Iterator[None]:
    """Says on a terminal what is being worked out, a timetable unless told, and clears that line at the end."""
    say_working(what)
    try:
        yield
    finally:
        if sys.stderr.isatty():
            sys.stderr.write("\r\x1b[K\x1b[1A\x1b[K")
            sys.stderr.flush()


@contextlib.contextmanager
def interrupts() -> Iterator[threading.Event]:
    """Remembers that the keyboard stopped what is going on, also where a search has ended by it with what it had."""
    stopped = threading.Event()

    def stop(number: int, frame: FrameType | None) -> None:
        stopped.set()
        raise KeyboardInterrupt

    before = signal.signal(signal.SIGINT, stop)
    try:
        yield stopped
    finally:
        signal.signal(signal.SIGINT, before)


def has_terminal() -> bool:
    """Whether stdin and stdout are both terminals."""
    return all(stream is not None and stream.isatty() for stream in (sys.stdin, sys.stdout))


def answer_to(prompt: str, ask: Callable[[str], str]) -> str:
    """What was typed, without spaces around it; empty where the input has ended."""
    try:
        return ask(prompt).strip()
    except EOFError:
        return ""


def says_yes(prompt: str, ask: Callable[[str], str]) -> bool:
    """Whether `y` or `yes` was typed."""
    return answer_to(prompt, ask).casefold() in words.YES


def tell(text: object) -> None:
    """Prints a message to stderr: wrapped to the width of a terminal, elsewhere unchanged. Ignores a closed pipe."""
    try:
        print(fitted(str(text)), file=sys.stderr, flush=True)
    except BrokenPipeError:  # nobody is reading any more
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stderr.fileno())


def print_json(form: object) -> None:
    """Data for other programs, one object or a list of them, each with the number of its format."""
    from board.output.schemas.published import numbered

    print(as_json(numbered(form)))


def file_written(say: Callable[[str], str], path: Path) -> None:
    """Tells that a file was written; of standard output there is nothing to tell."""
    if path != Path("-"):
        tell(say(one_line(path)))


def write_page(to: Path, page: str) -> None:
    """Writes an HTML page, and tells it; replaces only a page made by this program. Raises Trouble."""
    from board.files.whole import write_over
    from board.output.frame import is_page

    write_over(to, page.encode(), is_page, words.not_overwritten)
    file_written(words.page_written, to)


def fitted(text: str, stream: TextIO | None = None) -> str:
    """A text as a stream shows it; without one, as stderr does."""
    stream = sys.stderr if stream is None else stream
    if stream is None or not stream.isatty():
        asked = asked_width()
        return wrapped(text, asked) if asked else text
    try:
        width = os.get_terminal_size(stream.fileno()).columns
    except (OSError, ValueError):
        return text
    return wrapped(text, width) if width > 0 else text
