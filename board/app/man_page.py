"""The man page, made from the command line's own parser and words when the package is built. Pure.

Source of the macros: man(7), as groff and mandoc read it.
"""

import argparse
import re
from collections.abc import Iterator

from board import __version__
from board.app import words
from board.manual import pages

SECTION = 1


def man_page(parser: argparse.ArgumentParser) -> str:
    """Its source, roff. `parser`: the whole command line's."""
    return "\n".join(_lines(parser)) + "\n"


def _lines(parser: argparse.ArgumentParser) -> Iterator[str]:
    yield f'.TH {words.PROGRAM.upper()} {SECTION} "" "{words.PROGRAM} {__version__}"'
    yield from (".SH NAME", rf"{words.PROGRAM} \- {_text(words.CLI_ABOUT)}")
    yield from (".SH SYNOPSIS", rf".B {words.PROGRAM}", r"\fIcommand\fR [\fIoption\fR ...]")
    yield ".SH COMMANDS"
    for name, each in _below(parser).items():
        yield from _command(name, each)
    yield from (".SH EXIT STATUS", _text(pages.sections(pages.page("trouble"))["Exit codes"]))
    yield ".SH SEE ALSO"
    for topic in pages.TOPICS:
        yield from (".TP", rf".B {words.PROGRAM} help {_text(topic)}", _text(pages.title(pages.page(topic))))


def _below(parser: argparse.ArgumentParser) -> dict[str, argparse.ArgumentParser]:
    return next((dict(a.choices) for a in parser._actions if isinstance(a, argparse._SubParsersAction)), {})


def _command(name: str, parser: argparse.ArgumentParser) -> Iterator[str]:
    """One command: what it does, how it is typed, its arguments and options; then those below it."""
    usage = " ".join(parser.format_usage().split()).removeprefix("usage: ")
    yield from (f".SS {_text(name)}", _text(parser.description or ""), ".PP", f".B {_text(usage)}")
    for action in parser._actions:
        if action.help and not isinstance(action, argparse._SubParsersAction | argparse._HelpAction):
            shown = ", ".join(action.option_strings) or str(action.metavar or action.dest)
            yield from (".TP", f".B {_text(shown)}", _text(action.help))
    for below, each in _below(parser).items():
        yield from _command(f"{name} {below}", each)


def _text(text: str) -> str:
    """As roff reads it: no letter of it becomes a request or an escape, and a hyphen can be copied."""
    plain = text.replace("\\", r"\e").replace("-", r"\-")
    return re.sub(r"^(?=[.'])", r"\\&", plain, flags=re.MULTILINE)
