"""The commands of `dishes`: a shelf of dishes of one's own.

Each takes the parsed arguments and returns an exit code. Raises Trouble.
"""

import argparse

from board.app import words
from board.app.terminal import tell
from board.base.exits import ExitCode


def dishes(arguments: argparse.Namespace) -> int:
    """`dishes`: what there is. STOP if a file cannot be read."""
    from board.app.dishes import listed
    from board.base.plain import one_line
    from board.files.paths import shelf_folder
    from board.output.shelf import print_shelf
    from board.output.tables import console

    found, wrong = listed()
    print_shelf([(each.kept, each.last) for each in found], one_line(shelf_folder()), console())
    for each in wrong:
        tell(each)
    return ExitCode.STOP if wrong else ExitCode.DONE


def show(arguments: argparse.Namespace) -> int:
    """`dishes show NAME`."""
    from board.app.dishes import the_dish
    from board.base.plain import one_line
    from board.output.shelf import print_kept
    from board.output.tables import console

    found = the_dish(arguments.name)
    print_kept(found.kept, found.last, one_line(found.path), console())
    return ExitCode.DONE


def keep(arguments: argparse.Namespace) -> int:
    """`dishes keep PLAN NAME`."""
    from board.app.dishes import keep

    print(keep(arguments.plan, arguments.name, arguments.course))
    return ExitCode.DONE


def drop(arguments: argparse.Namespace) -> int:
    """`dishes drop NAME`."""
    from board.app.dishes import drop

    print(drop(arguments.name))
    return ExitCode.DONE


def fill(arguments: argparse.Namespace) -> int:
    """`dishes fill PLAN`: STOP if a dish is missing, or the plan cannot be read with those that are not."""
    from board.app.dishes import fill, unknown
    from board.base.plain import one_line
    from board.files.plans import read_plan_file

    found, copy = fill(arguments.plan)
    shown = one_line(arguments.plan)
    if copy is not None:
        print(words.shelf_filled([one_line(name, 60) for name in found.written], shown, one_line(copy)))
    elif not found.missing:
        print(words.nothing_to_fill(shown))
    for name in found.missing:
        tell(unknown(name))
    if found.missing:
        return ExitCode.STOP
    read_plan_file(arguments.plan)  # tells what the kitchen of this plan lacks
    return ExitCode.DONE
