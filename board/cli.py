"""The front door: words in, exit codes out. Each command calls the rooms and says what came of it.

Imports are made where they are needed: `--help` and the board must not wait for plan reader or solver.
"""

import argparse
import contextlib
import functools
import io
import os
import sys
from collections.abc import Callable, Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, NoReturn

from board import __version__
from board.app import dish_commands as shelf
from board.app import house_commands as house
from board.app import live_commands as evening
from board.app import log_commands as afterwards
from board.app import manual_commands as manual
from board.app import plan_commands as planning
from board.app import words
from board.app.completion import SHELLS, completion
from board.app.option_rules import wrong_together
from board.app.terminal import has_terminal, tell
from board.base import words as shared
from board.base.exits import ExitCode
from board.base.near import nearest
from board.base.plain import one_line, plain

if TYPE_CHECKING:
    from ipaddress import IPv4Address, IPv6Address

STDIN = "-"  # as a file's name: standard input or output
_ABOUT_ALL = ("-h", "--help", "--version")
FEWEST_EVENINGS, MOST_EVENINGS = 100, 1_000_000


class _Parser(argparse.ArgumentParser):
    def error(self, message: str) -> NoReturn:
        self.print_usage(sys.stderr)
        tell(f"{self.prog}: {plain(message)}")
        self.exit(ExitCode.USAGE)

    def _check_value(self, action: argparse.Action, value: object) -> None:
        """An unknown command is told with the one that was surely meant."""
        if action.choices is not None and value not in action.choices:
            known = [str(choice) for choice in action.choices]
            near = nearest(str(value), known)
            raise argparse.ArgumentError(action, words.bad_choice(one_line(value, 60), near[0] if near else "", known))

    def understood(self, argv: Sequence[str] | None, into: argparse.Namespace | None = None) -> argparse.Namespace:
        """All of the words, options in any place; what is left over is told with the option that was surely meant.
        `into`: what the commands before these words gave."""
        typed = list(sys.argv[1:] if argv is None else argv)
        commands = self._commands()
        first = typed[0] if typed else ""
        if first not in commands and (not first.startswith("-") or first in _ABOUT_ALL):
            return self.parse_args(typed, into)
        name = next((word for word in typed if word in commands), None)
        if name is None:
            return self.parse_args(typed, into)
        typed.remove(name)
        return commands[name]._read(typed, into or argparse.Namespace(command=name))

    def _read(self, typed: list[str], into: argparse.Namespace) -> argparse.Namespace:
        """The words after the command's own."""
        if self._commands():
            return self.understood(typed, into)
        found, left = self.parse_known_intermixed_args(typed, into)
        if left:
            meant = (self._near_option(each) for each in left)
            self.error(words.not_understood([one_line(each, 60) for each in left], next(filter(None, meant), "")))
        paths = [each for value in vars(found).values() for each in (value if isinstance(value, list) else [value])]
        wrong = wrong_together(self.prog.split()[-1], self._given(typed, found), from_stdin=Path(STDIN) in paths)
        if wrong is not None:
            self.error(wrong)
        return found

    def _commands(self) -> "Mapping[str, _Parser]":
        """The parsers below this one, by their words."""
        return next((a.choices for a in self._actions if isinstance(a, argparse._SubParsersAction)), {})

    def _given(self, typed: Sequence[str], found: argparse.Namespace) -> frozenset[str]:
        """Long names of the options that were typed, and names of the arguments beyond the first."""
        options = typed[: typed.index("--")] if "--" in typed else typed
        given: set[str] = set()
        for each in options:
            if each.startswith("-") and each != STDIN:
                word = each.partition("=")[0] if each.startswith("--") else each[:2]
                known = self._known()
                meant = [word] if word in known or word[:2] != "--" else [o for o in known if o.startswith(word)]
                given |= {a.option_strings[-1] for a in self._actions if not set(meant).isdisjoint(a.option_strings)}
        return frozenset(given | ({"logs"} if getattr(found, "logs", None) else set()))

    def _known(self) -> list[str]:
        return [option for action in self._actions for option in action.option_strings]

    def _near_option(self, typed: str) -> str:
        """An option of this command that was surely meant, or none."""
        if not typed.startswith("-") or typed == STDIN:
            return ""
        return next(iter(nearest(typed.partition("=")[0], self._known(), alike=0.7)), "")


def whole_parser() -> _Parser:
    """Of the whole command line."""
    plan = _plan_to_try()
    parser = _Parser(prog=words.PROGRAM, description=words.CLI_ABOUT, epilog=words.examples(plan),
                     formatter_class=argparse.RawDescriptionHelpFormatter)  # fmt: skip
    parser.add_argument("--version", action="version", version=f"{words.PROGRAM} {__version__}")
    command = _Commands(parser, plan)
    for kind in (_before, _timetable, _evening, _afterwards):
        kind(command)
    made = command("completion", functools.partial(completion, parser=parser), takes=None)
    made.add_argument("shell", choices=SHELLS, help=words.SHELL)
    return parser


class _Commands:
    """Makes the commands; `plan`: of their examples."""

    def __init__(self, parser: _Parser, plan: str) -> None:
        self.plan = plan
        self._made = parser.add_subparsers(dest="command", metavar="command", parser_class=_Parser)

    def __call__(self, name: str, run: Callable[[argparse.Namespace], int], *, takes: str | None = "plan") -> _Parser:
        """One of this name; `takes` is its one argument, None for none or others."""
        about, example = words.COMMANDS[name]
        made = self._made.add_parser(name, help=about, description=about, epilog=words.example(example, self.plan),
                                     formatter_class=argparse.RawDescriptionHelpFormatter)  # fmt: skip
        made.set_defaults(run=run)
        if takes is not None:
            made.add_argument(takes, type=Path, help=words.ARGUMENTS[takes])
        return made


def _before(command: _Commands) -> None:
    """What a plan is begun with, and looked over by."""
    new = command("new", house.new, takes=None)
    new.add_argument("file", type=Path, nargs="?", metavar="FILE", help=words.ARGUMENTS["new-plan"])
    for option in words.NEW_ASKS:
        new.add_argument(f"--{option}", metavar=option.upper(), help=words.NEW_OPTIONS[option])
    new.add_argument("--menu", type=Path, metavar="MENU", help=words.NEW_MENU)
    new.add_argument("--beside", type=Path, metavar="MENU", help=words.NEW_BESIDE)
    new.add_argument("--limit", type=_seconds, metavar="SECONDS", help=words.NEW_LIMIT)
    dish = command("dish", house.dish, takes="recipe")
    dish.add_argument("-o", "--output", type=Path, metavar="FILE", help=words.OPTIONS["dish-output"])
    table = command("plan", _plan)
    table.add_argument("--theme", choices=shared.THEMES, help=words.OPTIONS["theme"])
    check = command("check", planning.check)
    check.add_argument("--all", action="store_true", help=words.OPTIONS["all-findings"])
    check.add_argument("--json", action="store_true", help=words.OPTIONS["json"])
    check.add_argument("--limit", type=_seconds, metavar="SECONDS", help=words.OPTIONS["limit"])
    command("settle", planning.settle)
    _shelf(command("dishes", shelf.dishes, takes=None), command.plan)
    guests = command("guests", house.guests)
    guests.add_argument("--json", action="store_true", help=words.OPTIONS["json"])
    guests.add_argument("--markdown", action="store_true", help=words.OPTIONS["markdown"])
    _page(guests)
    laid = command("table", house.table)
    laid.add_argument("--course", metavar="COURSE", help=words.OPTIONS["course"])
    laid.add_argument("--markdown", action="store_true", help=words.OPTIONS["markdown"])
    laid.add_argument("--json", action="store_true", help=words.OPTIONS["json"])
    _page(laid)
    card = command("card", house.card)
    card.add_argument("--plates", action="store_true", help=words.OPTIONS["plates"])
    _page(card)
    provisions = command("provisions", house.provisions)
    how = provisions.add_mutually_exclusive_group()
    how.add_argument("--json", action="store_true", help=words.OPTIONS["json"])
    how.add_argument("--markdown", action="store_true", help=words.OPTIONS["markdown"])
    how.add_argument("--tick", action="store_true", help=words.OPTIONS["tick"])
    how.add_argument("--html", type=Path, metavar="FILE", help=words.OPTIONS["provisions-html"])
    provisions.add_argument("--paper", choices=("a4", "letter"), default="a4", help=words.OPTIONS["paper"])


def _page(command: _Parser) -> None:
    """A page of what the command tells."""
    command.add_argument("--html", type=Path, metavar="FILE", help=words.OPTIONS["page"])
    command.add_argument("--paper", choices=("a4", "letter"), default="a4", help=words.OPTIONS["paper"])


def _plan(arguments: argparse.Namespace) -> int:
    """The planning table, and what it is left for; on a terminal, a plan that is not there yet, or in an empty file, is
    begun first."""
    from board.files.plans import is_blank

    to_begin = not arguments.plan.exists() or is_blank(arguments.plan)
    if has_terminal() and to_begin and (code := _run(["new", str(arguments.plan)])):
        return code
    following = planning.plan(arguments)
    return _run(following) if following else ExitCode.DONE


def _run(argv: list[str]) -> int:
    arguments = whole_parser().understood(argv)
    return int(arguments.run(arguments))


def _bare_plan(argv: Sequence[str]) -> list[str]:
    """The words of a command line; where a plan alone stands there, those that open it at the table."""
    alone = len(argv) == 1 and argv[0].casefold().endswith((".yaml", ".yml"))
    return ["plan", *argv] if alone else list(argv)


def _shelf(dishes: _Parser, plan: str) -> None:
    """What is done with dishes of one's own."""
    actions = dishes.add_subparsers(dest="action", metavar="action", parser_class=_Parser)
    runs = {"keep": shelf.keep, "show": shelf.show, "drop": shelf.drop, "fill": shelf.fill}
    for name, (about, example) in words.DISHES_ACTIONS.items():
        made = actions.add_parser(name, help=about, description=about, epilog=words.example(example, plan),
                                  formatter_class=argparse.RawDescriptionHelpFormatter)  # fmt: skip
        made.set_defaults(run=runs[name])
        if name in ("keep", "fill"):
            made.add_argument("plan", type=Path, help=words.ARGUMENTS["plan"])
        if name != "fill":
            made.add_argument("name", help=words.DISH_NAME)
        if name == "keep":
            made.add_argument("--course", metavar="COURSE", help=words.DISH_COURSE)


def _timetable(command: _Commands) -> None:
    """The timetable, its odds, and where else it goes."""
    sheet = command("sheet", planning.sheet)
    sheet.add_argument("--by", choices=("day", "person", "lane"), default="day", help=words.OPTIONS["by"])
    sheet.add_argument("--json", action="store_true", help=words.OPTIONS["json"])
    sheet.add_argument("--why", metavar="STEP", help=words.OPTIONS["why"])
    sheet.add_argument("--fresh", action="store_true", help=words.OPTIONS["fresh-sheet"])
    sheet.add_argument("--ways-out", type=_count, metavar="N", help=words.OPTIONS["ways-out"])
    sheet.add_argument("--take", type=_count, metavar="K", help=words.OPTIONS["take"])
    sheet.add_argument("--for", dest="whom", metavar="WHO", help=words.OPTIONS["leaf"])
    sheet.add_argument("--markdown", action="store_true", help=words.OPTIONS["markdown"])
    sheet.add_argument("--html", type=Path, metavar="FILE", help=words.OPTIONS["html"])
    sheet.add_argument("--paper", choices=("a4", "letter"), default="a4", help=words.OPTIONS["paper"])
    sheet.add_argument("--limit", type=_seconds, metavar="SECONDS", help=words.OPTIONS["limit"])
    odds = command("odds", planning.odds)
    odds.add_argument("--evenings", type=_evenings, metavar="N", default=10_000, help=words.OPTIONS["evenings"])
    odds.add_argument("--seed", type=_seed, metavar="N", default=1, help=words.OPTIONS["seed"])
    odds.add_argument("--json", action="store_true", help=words.OPTIONS["json"])
    calendar = command("calendar", house.calendar)
    calendar.add_argument("-o", "--output", type=Path, metavar="FILE", help=words.OPTIONS["calendar-output"])


def _evening(command: _Commands) -> None:
    """The evening itself, rehearsed, live and looked on at."""
    rehearse = command("rehearse", evening.rehearse)
    live = command("live", evening.live)
    for each in (live, rehearse):
        each.add_argument("--log", type=Path, help=words.OPTIONS["log"])
        each.add_argument("--also", type=Path, metavar="FOLDER", help=words.OPTIONS["also"])
        each.add_argument("--no-log", action="store_true", help=words.OPTIONS["no-log"])
        each.add_argument("--theme", choices=shared.THEMES, help=words.OPTIONS["theme"])
        each.add_argument("--say", type=_command, metavar="COMMAND", help=words.OPTIONS["say"])
        each.add_argument("--no-bell", action="store_true", help=words.OPTIONS["no-bell"])
        each.add_argument(
            "--share", nargs="?", type=_address, const=True, metavar="ADDRESS", help=words.OPTIONS["share"]
        )
    rehearse.add_argument("--speed", type=_speed, default=10.0, help=words.OPTIONS["speed"])
    rehearse.add_argument("--from", dest="start", metavar="HH:MM", type=_clock, help=words.OPTIONS["from"])
    rehearse.add_argument("--fresh", action="store_true", help=words.OPTIONS["fresh-rehearsal"])
    rehearse.add_argument("--plain", action="store_true", help=words.OPTIONS["plain"])
    rehearse.add_argument("--mishaps", choices=("calm", "usual", "rough"), help=words.OPTIONS["mishaps"])
    rehearse.add_argument("--seed", type=_seed, metavar="N", default=1, help=words.OPTIONS["mishaps-seed"])
    watch = command("watch", evening.watch, takes="log")
    watch.add_argument("--theme", choices=shared.THEMES, help=words.OPTIONS["theme"])
    watch.add_argument("--for", dest="who", metavar="NAME", help=words.OPTIONS["for"])


def _afterwards(command: _Commands) -> None:
    """What an evening leaves."""
    review = command("review", afterwards.review, takes=None)
    review.add_argument("logs", type=Path, nargs="+", metavar="log", help=words.LOGS_TO_REVIEW)
    review.add_argument("--plan", type=Path, metavar="PLAN", help=words.OPTIONS["review-plan"])
    review.add_argument("--all", action="store_true", help=words.OPTIONS["review-all"])
    review.add_argument("--json", action="store_true", help=words.OPTIONS["json"])
    review.add_argument("--html", type=Path, metavar="FILE", help=words.OPTIONS["review-html"])
    review.add_argument("--paper", choices=("a4", "letter"), default="a4", help=words.OPTIONS["paper"])
    review.add_argument("--odds", action="store_true", help=words.OPTIONS["odds"])
    lessons = command("lessons", afterwards.lessons, takes=None)
    lessons.add_argument("plan", type=Path, nargs="?", help=words.ARGUMENTS["plan"])
    lessons.add_argument("logs", type=Path, nargs="*", metavar="log", help=words.LOGS_TO_LEARN_FROM)
    lessons.add_argument("--take", type=_chosen, metavar="WHICH", help=words.OPTIONS["take-lessons"])
    lessons.add_argument("--book", action="store_true", help=words.OPTIONS["book"])
    lessons.add_argument("--into-book", action="store_true", help=words.OPTIONS["into-book"])
    lessons.add_argument("--from-book", action="store_true", help=words.OPTIONS["from-book"])
    lessons.add_argument("--no-effect", action="store_true", help=words.OPTIONS["no-effect"])
    lessons.add_argument("--each", action="store_true", help=words.OPTIONS["each"])
    lessons.add_argument("--limit", type=_seconds, metavar="SECONDS", help=words.OPTIONS["limit"])
    lessons.add_argument("--json", action="store_true", help=words.OPTIONS["json"])
    logs = command("logs", afterwards.logs, takes=None)
    logs.add_argument("logs", type=Path, nargs="*", metavar="log", help=words.LOGS_TO_LIST)
    logs.add_argument("--json", action="store_true", help=words.OPTIONS["json"])
    logs.add_argument("--csv", action="store_true", help=words.OPTIONS["csv"])
    logs.add_argument("--guests", action="store_true", help=words.OPTIONS["guests-ate"])
    logs.add_argument("--anonymise", type=Path, metavar="LOG", help=words.OPTIONS["anonymise"])
    logs.add_argument("-o", "--out", type=Path, metavar="FILE", help=words.OPTIONS["out"])
    logs.add_argument("--names", metavar="A,B", default="", help=words.OPTIONS["names"])
    logs.add_argument("--plan", type=Path, help=words.OPTIONS["guests-of"])
    logs.add_argument("--keep-notes", action="store_true", help=words.OPTIONS["keep-notes"])
    schema = command("schema", afterwards.schema, takes=None)
    schema.add_argument("--log", action="store_true", help=words.OPTIONS["schema-log"])
    schema.add_argument("--of", type=_printed, metavar="COMMAND", help=words.OPTIONS["schema-of"])
    told = command("help", manual.tell, takes=None)
    told.add_argument("words", nargs="*", metavar="WORD", help=words.WORDS_ASKED)


def _speed(text: str) -> float:
    try:
        value = float(text.lower().removesuffix("x").removeprefix("×"))
    except ValueError:
        value = 0.0
    if not 1 <= value <= 240:
        raise argparse.ArgumentTypeError(words.bad_speed(text))
    return value


def _count(text: str) -> int:
    if not text.isdecimal() or not 1 <= int(text) <= 50:
        raise argparse.ArgumentTypeError(words.bad_count(text))
    return int(text)


def _chosen(text: str) -> tuple[int, ...]:
    """Numbers from 1; none of them stands for all."""
    if text.strip().casefold() == "all":
        return ()
    numbers: list[int] = []
    for each in text.replace(" ", "").replace("–", "-").split(","):
        first, dash, last = each.partition("-")
        if not (_is_number(first) and (_is_number(last) or not dash)):
            raise argparse.ArgumentTypeError(words.bad_lessons(text))
        numbers += range(int(first), int(last or first) + 1)
    if not numbers:
        raise argparse.ArgumentTypeError(words.bad_lessons(text))
    return tuple(dict.fromkeys(numbers))


def _is_number(text: str) -> bool:
    return text.isascii() and text.isdecimal() and 1 <= int(text) <= 9999


def _seconds(text: str) -> float:
    try:
        value = float(text)
    except ValueError:
        value = 0.0
    if not 0.1 <= value <= 86_400:
        raise argparse.ArgumentTypeError(words.bad_seconds(text))
    return value


def _evenings(text: str) -> int:
    number = _whole(text)
    if number is None or not FEWEST_EVENINGS <= number <= MOST_EVENINGS:
        raise argparse.ArgumentTypeError(words.bad_evenings(text, FEWEST_EVENINGS, MOST_EVENINGS))
    return number


def _seed(text: str) -> int:
    number = _whole(text)
    if number is None:
        raise argparse.ArgumentTypeError(words.bad_seed(text))
    return number


def _whole(text: str) -> int | None:
    """A number of up to 18 ASCII digits, which `10_000` and `10,000` are too."""
    digits = text.replace("_", "").replace(",", "")
    return int(digits) if digits.isascii() and digits.isdecimal() and len(digits) <= 18 else None


def _printed(text: str) -> str:
    """A command that prints data, as its schema is named."""
    from board.output.schemas.published import FORMS

    if text not in FORMS:
        near = nearest(text, FORMS)
        raise argparse.ArgumentTypeError(words.bad_choice(one_line(text, 60), near[0] if near else "", [*FORMS]))
    return text


def _command(text: str) -> tuple[str, ...]:
    from board.screens.speech import command_of

    try:
        return command_of(text)
    except ValueError:
        raise argparse.ArgumentTypeError(words.bad_command(text)) from None


def _address(text: str) -> "IPv4Address | IPv6Address":
    """Of `--share`; refused at once, for a plan after it would be taken for one."""
    from ipaddress import ip_address

    try:
        return ip_address(text)
    except ValueError:
        raise argparse.ArgumentTypeError(words.bad_address(one_line(text, 60))) from None


def _clock(text: str) -> tuple[int, int]:
    hours, _, minutes = text.partition(":")
    if not (hours.isdecimal() and minutes.isdecimal() and int(hours) < 24 and int(minutes) < 60):
        raise argparse.ArgumentTypeError(words.bad_clock(text))
    return int(hours), int(minutes)


def main(argv: Sequence[str] | None = None) -> int:
    """Runs one command; never lets a traceback out for something the user can mend."""
    _open_streams()
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="replace")  # a sign that the terminal cannot show is `?`
    try:
        arguments = whole_parser().understood(_bare_plan(sys.argv[1:] if argv is None else argv))
    except SystemExit:
        with contextlib.suppress(BrokenPipeError):
            _flush()
            raise
        raise SystemExit(_pipe_closed()) from None
    if arguments.command is None:
        arguments.run = lambda _: _welcome()
    from board.base.errors import Trouble

    try:
        code = int(arguments.run(arguments))
        _flush()
        return code
    except Trouble as trouble:
        tell(trouble)
        return trouble.code
    except KeyboardInterrupt:
        return 130
    except BrokenPipeError:
        return _pipe_closed()
    except OSError as wrong:
        tell(words.cannot_print(wrong.strerror or str(wrong)))
        return ExitCode.FAILED


def _open_streams() -> None:
    """A stream that was closed before the start points at nothing, so that no file of ours takes its number."""
    for number, name in enumerate(("stdin", "stdout", "stderr")):
        try:
            os.fstat(number)
        except OSError:
            handle = os.open(os.devnull, os.O_RDWR)  # gets the lowest number that is free: this one
            stream = os.fdopen(handle, "w" if number else "r", encoding="utf-8")
            setattr(sys, name, stream)
            setattr(sys, f"__{name}__", stream)


def _flush() -> None:
    """What cannot be written is told here, not at the very end."""
    if sys.stdout is not None:
        sys.stdout.flush()


def _pipe_closed() -> int:
    """`| head` closed the pipe; stdout points at nothing then, so that no flush complains."""
    os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    return ExitCode.DONE


def _plan_to_try() -> str:
    """The plan that comes along, as it is typed from here."""
    import shlex

    from board.files.bundled import bundled_plan

    path = bundled_plan()
    with contextlib.suppress(OSError, ValueError):  # the folder is gone, or another
        path = path.relative_to(Path.cwd())
    return shlex.quote(str(path))


def _welcome() -> int:
    print(words.welcome(_plan_to_try()))
    return ExitCode.DONE
