"""`help`: the manual. Takes the parsed arguments and returns an exit code. Raises Trouble."""

import argparse
import shutil

from board.app import words
from board.base.exits import ExitCode

WIDEST = 80  # columns; longer lines read badly


def tell(arguments: argparse.Namespace) -> int:
    """`help WORD…`: what the manual says of it. USAGE, with the nearest names, where it says nothing."""
    from board.base.errors import Trouble
    from board.base.plain import one_line
    from board.manual import asked, shown

    what = " ".join(arguments.words)
    found = asked.answer(what, words.COMMANDS)
    if found is None:
        raise Trouble(asked.not_known(one_line(what, 60), words.COMMANDS), ExitCode.USAGE)
    print(shown.shown(found, min(shutil.get_terminal_size((WIDEST, 24)).columns, WIDEST)), end="")
    return ExitCode.DONE
