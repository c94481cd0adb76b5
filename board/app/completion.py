"""`completion`: a script that lets a shell complete commands, options and files, made from the parser itself."""

import argparse
from collections.abc import Iterator
from pathlib import Path

from board.base.exits import ExitCode

SHELLS = ("bash", "zsh", "fish")


def completion(arguments: argparse.Namespace, parser: argparse.ArgumentParser) -> int:
    """`completion SHELL`: prints the script."""
    import shtab

    for action in _actions(parser):
        if action.type is Path:
            action.complete = shtab.FILE  # type: ignore[attr-defined]  # read by shtab, unknown to argparse
    print(shtab.complete(parser, shell=arguments.shell))
    return ExitCode.DONE


def _actions(parser: argparse.ArgumentParser) -> Iterator[argparse.Action]:
    for action in parser._actions:
        yield action
        if isinstance(action, argparse._SubParsersAction):
            for each in action.choices.values():
                yield from _actions(each)
