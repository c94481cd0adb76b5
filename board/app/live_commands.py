"""Commands of the evening itself: live, rehearse, watch.

Each takes the parsed arguments and returns an exit code. Raises Trouble.
"""

import argparse
import sys
from typing import TYPE_CHECKING

from board.app import words
from board.app.terminal import fitted, has_terminal, tell, working
from board.base.exits import ExitCode

if TYPE_CHECKING:
    from socket import socket

    from board.app.sessions import Dress


def live(arguments: argparse.Namespace) -> int:
    """`live PLAN`: the board during the evening."""
    from datetime import timedelta
    from zoneinfo import ZoneInfo

    _without_collecting()
    from board.app.sessions import planned_or_begun, run_board
    from board.base.clock import WallClock
    from board.base.errors import Trouble
    from board.files.paths import live_log

    _needs_terminal()
    bound = _bound(arguments)
    with working():
        sheet, usable = planned_or_begun(arguments.plan, arguments.log)
    path = None if arguments.no_log else arguments.log or live_log(sheet)
    clock = WallClock()
    if not (path and path.exists()) and clock.now() > max(slot.end for slot in sheet.slots) + timedelta(hours=12):
        raise Trouble(words.long_past(sheet.date, clock.now().astimezone(ZoneInfo(sheet.zone))))
    also, dress = arguments.also, _dress(arguments)
    run_board(sheet, path, clock, dress, plan=arguments.plan, also=also, usable=usable, page_at=bound)
    return ExitCode.DONE


def _dress(arguments: argparse.Namespace) -> "Dress":
    from board.app.sessions import Dress

    return Dress(bell=not arguments.no_bell, theme=arguments.theme, say=arguments.say)


def _bound(arguments: argparse.Namespace) -> "socket | None":
    """Where the page for helpers' phones is served, if it is asked for. Raises Trouble."""
    if arguments.share is None:
        return None
    from board.share.address import addresses, chosen, listening

    return listening(chosen(None if arguments.share is True else arguments.share, addresses()))


def _without_collecting() -> None:
    """Switches the garbage collector off: while modules load it costs time and finds nothing. The board switches it
    on."""
    import gc

    gc.disable()


def _needs_terminal() -> None:
    from board.base.errors import Trouble

    if not has_terminal():
        raise Trouble(words.NO_TERMINAL)


def rehearse(arguments: argparse.Namespace) -> int:
    """`rehearse PLAN`: the evening against a virtual clock, on the board or as lines of text."""
    _without_collecting()
    from board.app.sessions import first_moment, night_of, play_plainly, run_board
    from board.app.timetables import sheet_of
    from board.base.clock import VirtualClock
    from board.base.errors import Trouble
    from board.base.plain import one_line
    from board.files.paths import rehearsal_log
    from board.sheet import said

    plain = arguments.plain or not has_terminal()
    if plain and arguments.share is not None:
        raise Trouble(words.NO_BOARD_TO_SHARE)
    bound = _bound(arguments)
    with working():
        sheet = sheet_of(arguments.plan)
    if sheet.stops:
        tell(words.stops_rehearsed([one_line(said.stop(stop)) for stop in sheet.stops]))
    start = first_moment(sheet, arguments.start)
    night = None if arguments.mishaps is None else night_of(arguments.plan, arguments.mishaps, arguments.seed)
    fresh = plain or arguments.fresh or arguments.start is not None or night is not None
    path = arguments.log or rehearsal_log(sheet, fresh=fresh)
    if plain:
        for line in play_plainly(sheet, path, start, night, arguments.also):
            print(fitted(line, sys.stdout))
    else:
        clock = VirtualClock(start, arguments.speed)
        path = None if arguments.no_log else path
        also, dress = arguments.also, _dress(arguments)
        run_board(sheet, path, clock, dress, plan=arguments.plan, also=also, wish=night, page_at=bound)
    return ExitCode.DONE


def watch(arguments: argparse.Namespace) -> int:
    """`watch LOG`: a running evening, watched from another terminal."""
    from board.app.sessions import run_watch

    _needs_terminal()
    run_watch(arguments.log, arguments.who, arguments.theme)
    return ExitCode.DONE
