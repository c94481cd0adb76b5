"""The front door: words in, exit codes out. Each command calls the rooms and says what came of it.

Imports are made where they are needed: `--help` and the board must not wait for plan reader or solver.
"""

import argparse
import json
import os
import sys
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, NoReturn

from board import __version__, words
from board.exits import ExitCode

if TYPE_CHECKING:
    from board.sessions import Dress
    from board.timetable.run_sheet import RunSheet

FEWEST_EVENINGS, MOST_EVENINGS = 100, 1_000_000


class _Parser(argparse.ArgumentParser):
    def error(self, message: str) -> NoReturn:
        self.print_usage(sys.stderr)
        self.exit(ExitCode.USAGE, f"{self.prog}: {message}\n")


def _parser() -> _Parser:
    parser = _Parser(prog=words.PROGRAM, description=words.CLI_ABOUT, epilog=words.CLI_EXAMPLES,
                     formatter_class=argparse.RawDescriptionHelpFormatter)  # fmt: skip
    parser.add_argument("--version", action="version", version=f"{words.PROGRAM} {__version__}")
    commands = parser.add_subparsers(dest="command", metavar="command", parser_class=_Parser)

    def command(name: str, run: Callable[[argparse.Namespace], int], *, takes: str | None = "plan") -> _Parser:
        about, example = words.COMMANDS[name]
        made = commands.add_parser(name, help=about, description=about, epilog=words.example(example),
                                   formatter_class=argparse.RawDescriptionHelpFormatter)  # fmt: skip
        made.set_defaults(run=run)
        if takes is not None:
            made.add_argument(takes, type=Path, help=words.ARGUMENTS[takes])
        return made

    check = command("check", _check)
    guests = command("guests", _guests)
    guests.add_argument("--json", action="store_true", help=words.OPTIONS["json"])
    guests.add_argument("--markdown", action="store_true", help=words.OPTIONS["markdown"])
    sheet = command("sheet", _sheet)
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
    for each in (check, sheet):
        each.add_argument("--limit", type=_seconds, metavar="SECONDS", help=words.OPTIONS["limit"])
    provisions = command("provisions", _provisions)
    how = provisions.add_mutually_exclusive_group()
    how.add_argument("--json", action="store_true", help=words.OPTIONS["json"])
    how.add_argument("--markdown", action="store_true", help=words.OPTIONS["markdown"])
    how.add_argument("--tick", action="store_true", help=words.OPTIONS["tick"])
    how.add_argument("--html", type=Path, metavar="FILE", help=words.OPTIONS["provisions-html"])
    provisions.add_argument("--paper", choices=("a4", "letter"), default="a4", help=words.OPTIONS["paper"])
    odds = command("odds", _odds)
    odds.add_argument("--evenings", type=_evenings, metavar="N", default=10_000, help=words.OPTIONS["evenings"])
    odds.add_argument("--seed", type=_seed, metavar="N", default=1, help=words.OPTIONS["seed"])
    odds.add_argument("--json", action="store_true", help=words.OPTIONS["json"])
    live = command("live", _live)
    rehearse = command("rehearse", _rehearse)
    for each in (live, rehearse):
        each.add_argument("--log", type=Path, help=words.OPTIONS["log"])
        each.add_argument("--no-log", action="store_true", help=words.OPTIONS["no-log"])
        each.add_argument("--theme", choices=words.THEMES, help=words.OPTIONS["theme"])
        each.add_argument("--say", type=_command, metavar="COMMAND", help=words.OPTIONS["say"])
        each.add_argument("--no-bell", action="store_true", help=words.OPTIONS["no-bell"])
    rehearse.add_argument("--speed", type=_speed, default=10.0, help=words.OPTIONS["speed"])
    rehearse.add_argument("--from", dest="start", metavar="HH:MM", type=_clock, help=words.OPTIONS["from"])
    rehearse.add_argument("--fresh", action="store_true", help=words.OPTIONS["fresh-rehearsal"])
    rehearse.add_argument("--plain", action="store_true", help=words.OPTIONS["plain"])
    rehearse.add_argument("--mishaps", choices=("calm", "usual", "rough"), help=words.OPTIONS["mishaps"])
    rehearse.add_argument("--seed", type=_seed, metavar="N", default=1, help=words.OPTIONS["mishaps-seed"])
    watch = command("watch", _watch, takes="log")
    watch.add_argument("--theme", choices=words.THEMES, help=words.OPTIONS["theme"])
    watch.add_argument("--for", dest="who", metavar="NAME", help=words.OPTIONS["for"])
    review = command("review", _review, takes=None)
    review.add_argument("logs", type=Path, nargs="+", metavar="log", help=words.LOGS_TO_REVIEW)
    review.add_argument("--json", action="store_true", help=words.OPTIONS["json"])
    calendar = command("calendar", _calendar)
    calendar.add_argument("-o", "--output", type=Path, metavar="FILE", help=words.OPTIONS["calendar-output"])
    dish = command("dish", _dish, takes="recipe")
    dish.add_argument("-o", "--output", type=Path, metavar="FILE", help=words.OPTIONS["dish-output"])
    new = command("new", _new, takes=None)
    new.add_argument("file", type=Path, nargs="?", metavar="FILE", help=words.ARGUMENTS["new-plan"])
    for option in words.NEW_ASKS:
        new.add_argument(f"--{option}", metavar=option.upper(), help=words.NEW_OPTIONS[option])
    table = command("table", _table)
    table.add_argument("--course", metavar="COURSE", help=words.OPTIONS["course"])
    table.add_argument("--markdown", action="store_true", help=words.OPTIONS["markdown"])
    table.add_argument("--json", action="store_true", help=words.OPTIONS["json"])
    review.add_argument("--html", type=Path, metavar="FILE", help=words.OPTIONS["review-html"])
    review.add_argument("--odds", action="store_true", help=words.OPTIONS["odds"])
    lessons = command("lessons", _lessons, takes=None)
    lessons.add_argument("plan", type=Path, nargs="?", help=words.ARGUMENTS["plan"])
    lessons.add_argument("logs", type=Path, nargs="*", metavar="log", help=words.LOGS_TO_LEARN_FROM)
    lessons.add_argument("--take", type=_chosen, metavar="WHICH", help=words.OPTIONS["take-lessons"])
    lessons.add_argument("--book", action="store_true", help=words.OPTIONS["book"])
    lessons.add_argument("--into-book", action="store_true", help=words.OPTIONS["into-book"])
    lessons.add_argument("--no-effect", action="store_true", help=words.OPTIONS["no-effect"])
    lessons.add_argument("--limit", type=_seconds, metavar="SECONDS", help=words.OPTIONS["limit"])
    lessons.add_argument("--json", action="store_true", help=words.OPTIONS["json"])
    logs = command("logs", _logs, takes=None)
    logs.add_argument("logs", type=Path, nargs="*", metavar="log", help=words.LOGS_TO_LIST)
    logs.add_argument("--csv", action="store_true", help=words.OPTIONS["csv"])
    logs.add_argument("--anonymise", type=Path, metavar="LOG", help=words.OPTIONS["anonymise"])
    logs.add_argument("-o", "--out", type=Path, metavar="FILE", help=words.OPTIONS["out"])
    logs.add_argument("--names", metavar="A,B", default="", help=words.OPTIONS["names"])
    logs.add_argument("--plan", type=Path, help=words.OPTIONS["guests-of"])
    logs.add_argument("--keep-notes", action="store_true", help=words.OPTIONS["keep-notes"])
    schema = command("schema", _schema, takes=None)
    schema.add_argument("--log", action="store_true", help=words.OPTIONS["schema-log"])
    return parser


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
    numbers = text.replace(" ", "").split(",")
    if not all(each.isascii() and each.isdecimal() and 1 <= int(each) <= 9999 for each in numbers):
        raise argparse.ArgumentTypeError(words.bad_lessons(text))
    return tuple(int(each) for each in numbers)


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


def _command(text: str) -> tuple[str, ...]:
    from board.speech import command_of

    try:
        return command_of(text)
    except ValueError:
        raise argparse.ArgumentTypeError(words.bad_command(text)) from None


def _clock(text: str) -> tuple[int, int]:
    hours, _, minutes = text.partition(":")
    if not (hours.isdecimal() and minutes.isdecimal() and int(hours) < 24 and int(minutes) < 60):
        raise argparse.ArgumentTypeError(words.bad_clock(text))
    return int(hours), int(minutes)


def main(argv: Sequence[str] | None = None) -> int:
    """Runs one command; never lets a traceback out for something the user can mend."""
    arguments = _parser().parse_args(argv)
    if arguments.command is None:
        arguments.run = lambda _: _welcome()
    from board.desk import Trouble

    try:
        code = int(arguments.run(arguments))
        if sys.stdout is not None:
            sys.stdout.flush()  # what cannot be written is told here, not at the very end
        return code
    except Trouble as trouble:
        print(trouble, file=sys.stderr)
        return trouble.code
    except KeyboardInterrupt:
        return 130
    except BrokenPipeError:
        return _pipe_closed()
    except OSError as wrong:
        print(words.cannot_print(wrong.strerror or str(wrong)), file=sys.stderr)
        return ExitCode.FAILED


def _pipe_closed() -> int:
    """`| head` closed the pipe; stdout points at nothing then, so that no flush complains."""
    os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    return ExitCode.DONE


def _welcome() -> int:
    from board.desk import bundled_plan

    print(words.welcome(str(bundled_plan())))
    return ExitCode.DONE


def _check(arguments: argparse.Namespace) -> int:
    from board.checks.every import check, stops
    from board.desk import read_plan_file, sheet_of
    from board.paper.check import print_check
    from board.plan.snag import Weight, in_order
    from board.safety.every import safety_check

    plan = read_plan_file(arguments.plan)
    snags = check(plan)
    sheet = None
    if not stops(plan):
        _say_working()
        sheet = sheet_of(arguments.plan, plan=plan, limit=arguments.limit)
        snags = in_order([*snags, *safety_check(plan, sheet)])
    print_check(plan, snags, sheet)
    stopped = any(snag.weight is Weight.STOP for snag in snags)
    return ExitCode.STOP if stopped else ExitCode.DONE


def _guests(arguments: argparse.Namespace) -> int:
    from board.checks.guests_eat import matrix
    from board.desk import read_plan_file
    from board.paper.guests import guests_form, guests_markdown, print_guests
    from board.paper.tables import console

    plan = read_plan_file(arguments.plan)
    found = matrix(plan)
    if arguments.json:
        print(json.dumps(guests_form(plan.plan.event, found), ensure_ascii=False, indent=2))
    elif arguments.markdown:
        print(guests_markdown(plan.plan.event, found))
    else:
        print_guests(plan.plan.event, found, console())
    return ExitCode.DONE


def _say_working() -> None:
    if sys.stderr.isatty():
        print(words.WORKING, file=sys.stderr)


def _sheet(arguments: argparse.Namespace) -> int:
    from board.desk import read_plan_file, sheet_of
    from board.paper.sheet import print_sheet
    from board.paper.tables import console

    _say_working()
    if arguments.take is not None or arguments.ways_out is not None:
        return _ways_out(arguments)
    plan = read_plan_file(arguments.plan) if arguments.json else None
    sheet = sheet_of(arguments.plan, plan=plan, fresh=arguments.fresh, limit=arguments.limit)
    if plan is not None:
        from board.plain import one_line
        from board.safety.clocks import clocks_form
        from board.timetable.run_sheet import outside_form
        from board.timetable.validate import validate

        wrong = validate(plan, sheet)
        for each in wrong:
            print(one_line(each), file=sys.stderr)
        form = {**outside_form(sheet, valid=not wrong), "clocks": clocks_form(sheet)}
        print(json.dumps(form, ensure_ascii=False, indent=2))
    elif arguments.why is not None:
        _why(sheet, arguments.why)
    elif arguments.whom is not None or arguments.markdown or arguments.html is not None:
        _leaves(sheet, arguments)
    else:
        print_sheet(sheet, arguments.by, console())
        if sheet.given_up:
            print(words.ask_for_ways(arguments.plan))
    return ExitCode.DONE


def _leaves(sheet: "RunSheet", arguments: argparse.Namespace) -> None:
    """The sheet for the wall or for people: in the terminal, as Markdown, or as a page to print."""
    from board.desk import Trouble
    from board.paper.frame import is_page
    from board.paper.leaves import WALL, NoSuchPerson, leaves
    from board.paper.markdown import markdown
    from board.paper.page import page
    from board.paper.sheet import print_leaves
    from board.paper.tables import console
    from board.plain import one_line
    from board.writing import write_over

    whom = arguments.whom or WALL
    try:
        found = leaves(sheet, whom)
    except NoSuchPerson as wrong:
        known = tuple(one_line(name) for name in wrong.known)
        raise Trouble(words.no_such_person(one_line(wrong.name, 60), known), ExitCode.USAGE) from None
    if arguments.html is not None:
        made = page(found, arguments.paper, wall=whom == WALL).encode()
        write_over(arguments.html, made, is_page, words.not_overwritten)
        print(words.page_written(one_line(arguments.html)))
    elif arguments.markdown:
        print(markdown(found), end="")
    else:
        print_leaves(found, console())


def _ways_out(arguments: argparse.Namespace) -> int:
    """The sheet with ways out of what it gives up; or the plan with one of them written into it."""
    from board.mending import find_ways, take
    from board.paper.sheet import print_sheet
    from board.paper.tables import console
    from board.paper.ways import print_taken, print_ways

    out = console()
    mending = find_ways(arguments.plan, max(arguments.ways_out or 0, arguments.take or 0), arguments.limit)
    if arguments.take is None:
        print_sheet(mending.sheet, arguments.by, out)
        print_ways(mending.ways, str(arguments.plan), out)
        return ExitCode.DONE
    lines = take(arguments.plan, mending, arguments.take)
    print_taken(lines, str(arguments.plan), out)
    return ExitCode.DONE


def _provisions(arguments: argparse.Namespace) -> int:
    from board.desk import Trouble, read_plan_file, sheet_of
    from board.larder import in_the_house
    from board.paper.provisions import print_provisions, provisions_form, provisions_markdown
    from board.paper.tables import console
    from board.provisions.errands import provisions

    if arguments.tick and not _has_terminal():
        raise Trouble(words.NO_TERMINAL_TICK)
    plan = read_plan_file(arguments.plan)
    house = in_the_house(plan, arguments.plan)
    _say_working()
    found = provisions(plan, sheet_of(arguments.plan, plan=plan), house)
    if arguments.tick:
        from board.sessions import run_ticking

        run_ticking(found, arguments.plan)
    elif arguments.html is not None:
        from board.paper.frame import is_page
        from board.paper.provisions_page import provisions_page
        from board.plain import one_line
        from board.writing import write_over

        write_over(arguments.html, provisions_page(found, arguments.paper).encode(), is_page, words.not_overwritten)
        print(words.page_written(one_line(arguments.html)))
    elif arguments.json:
        print(json.dumps(provisions_form(found), ensure_ascii=False, indent=2))
    elif arguments.markdown:
        print(provisions_markdown(found))
    else:
        print_provisions(found, console())
    return ExitCode.DONE


def _odds(arguments: argparse.Namespace) -> int:
    from board.desk import sheet_of

    _say_working()
    sheet = sheet_of(arguments.plan)

    from board.odds.many import odds  # after the sheet: what cannot be planned is told without waiting for numpy
    from board.paper.odds import odds_form, print_odds
    from board.paper.tables import console

    found = odds(sheet, arguments.evenings, arguments.seed)
    if arguments.json:
        print(json.dumps(odds_form(found), ensure_ascii=False, indent=2))
    else:
        print_odds(found, console())
    return ExitCode.DONE


def _why(sheet: "RunSheet", name: str) -> None:
    from board.desk import Trouble
    from board.plain import plain
    from board.timetable.why import NotFound, find, why

    try:
        lines = why(sheet, find(sheet, name))
    except NotFound as wrong:
        raise Trouble(plain(wrong)) from None
    print("\n".join(plain(line) for line in lines))


def _live(arguments: argparse.Namespace) -> int:
    from datetime import timedelta

    _without_collecting()
    from board.clock import WallClock
    from board.desk import Trouble, live_log
    from board.sessions import planned_or_begun, run_board

    _needs_terminal()
    _say_working()
    sheet, usable = planned_or_begun(arguments.plan, arguments.log)
    path = None if arguments.no_log else arguments.log or live_log(sheet)
    clock = WallClock()
    if not (path and path.exists()) and clock.now() > max(slot.end for slot in sheet.slots) + timedelta(hours=12):
        raise Trouble(words.long_past(sheet.date))
    run_board(sheet, path, clock, _dress(arguments), plan=arguments.plan, usable=usable)
    return ExitCode.DONE


def _dress(arguments: argparse.Namespace) -> "Dress":
    from board.sessions import Dress

    return Dress(bell=not arguments.no_bell, theme=arguments.theme, say=arguments.say)


def _without_collecting() -> None:
    """Python's collector finds nothing while modules load, and looks all the same; the board switches it on again."""
    import gc

    gc.disable()


def _has_terminal() -> bool:
    return all(stream is not None and stream.isatty() for stream in (sys.stdin, sys.stdout))


def _needs_terminal() -> None:
    from board.desk import Trouble

    if not _has_terminal():
        raise Trouble(words.NO_TERMINAL)


def _rehearse(arguments: argparse.Namespace) -> int:
    _without_collecting()
    from board.clock import VirtualClock
    from board.desk import rehearsal_log, sheet_of
    from board.plain import one_line
    from board.sessions import first_moment, play_plainly, run_board

    _say_working()
    sheet = sheet_of(arguments.plan)
    if sheet.stops:
        print(words.stops_rehearsed([one_line(stop) for stop in sheet.stops]), file=sys.stderr)
    start = first_moment(sheet, arguments.start)
    plain = arguments.plain or not _has_terminal()
    night = None if arguments.mishaps is None else (arguments.mishaps, arguments.seed)
    fresh = plain or arguments.fresh or arguments.start is not None or night is not None
    path = arguments.log or rehearsal_log(sheet, fresh=fresh)
    if plain:
        for line in play_plainly(sheet, path, start, arguments.mishaps, arguments.seed):
            print(line)
    else:
        clock = VirtualClock(start, arguments.speed)
        path = None if arguments.no_log else path
        run_board(sheet, path, clock, _dress(arguments), plan=arguments.plan, mishaps=night)
    return ExitCode.DONE


def _watch(arguments: argparse.Namespace) -> int:
    from board.sessions import run_watch

    _needs_terminal()
    run_watch(arguments.log, arguments.who, arguments.theme)
    return ExitCode.DONE


def _review(arguments: argparse.Namespace) -> int:
    from board.evenings import look_back, write_page
    from board.paper.evenings import evening_form, print_evening, print_evenings
    from board.paper.tables import console
    from board.plain import one_line

    evenings = [look_back(path, odds=arguments.odds) for path in arguments.logs]
    for each in evenings:
        if each.dropped:
            print(one_line(each.dropped), file=sys.stderr)
    if arguments.html is not None:
        write_page(arguments.html, evenings)
    elif arguments.json:
        forms = [evening_form(each) for each in evenings]
        print(json.dumps(forms[0] if len(forms) == 1 else forms, ensure_ascii=False, indent=2))
    elif len(evenings) == 1:
        print_evening(evenings[0], console())
    else:
        print_evenings(evenings, console())
    return ExitCode.DONE


def _lessons(arguments: argparse.Namespace) -> int:
    from board.desk import Trouble

    if arguments.book:
        return _book(arguments)
    if arguments.plan is None or (arguments.into_book and arguments.take is not None):
        raise Trouble(words.BOOK_NEEDS_PLAN if arguments.plan is None else words.BOOK_OR_PLAN, ExitCode.USAGE)

    from board.learning import add_to_book, all_evenings, chosen, effect, learn_from, read_evenings, take
    from board.paper.lessons import lessons_form, print_lessons
    from board.paper.tables import console
    from board.paper.ways import print_taken
    from board.plain import one_line

    evenings, said = read_evenings(arguments.logs) if arguments.logs else all_evenings()
    for each in said:
        print(each, file=sys.stderr)
    learning = learn_from(arguments.plan, evenings)
    if arguments.into_book:
        added, book = add_to_book(learning, evenings)
        print(words.book_added(added.fresh, added.known, added.rehearsals))
        print(words.book_lies_at(one_line(book)))
        return ExitCode.DONE
    if arguments.take is not None:
        lines, copy = take(learning, chosen(learning, arguments.take or None))
        print_taken(lines, str(arguments.plan), console())
        print(words.backup_lies_at(one_line(copy)))
        return ExitCode.DONE
    brings = None
    if learning.found.lessons and not arguments.no_effect:
        _say_working()
        brings = effect(learning, learning.found.lessons, arguments.limit)
    if arguments.json:
        print(json.dumps(lessons_form(learning.found, brings), ensure_ascii=False, indent=2))
    else:
        print_lessons(learning.file.plan.event, learning.found, brings, str(arguments.plan), console())
    return ExitCode.DONE


def _book(arguments: argparse.Namespace) -> int:
    from board.desk import Trouble
    from board.learning import the_book
    from board.paper.book import book_form, print_book
    from board.paper.tables import console
    from board.plain import one_line

    if arguments.plan is not None or arguments.take is not None or arguments.into_book:
        raise Trouble(words.BOOK_ALONE, ExitCode.USAGE)
    book, path = the_book()
    if arguments.json:
        print(json.dumps(book_form(book), ensure_ascii=False, indent=2))
    else:
        print_book(book, one_line(path), console())
    return ExitCode.DONE


def _logs(arguments: argparse.Namespace) -> int:
    from board.evenings import anonymise, csv_of, listed
    from board.paper.evenings import print_logs
    from board.paper.tables import console

    if arguments.anonymise is not None:
        names = [name for name in arguments.names.split(",") if name.strip()]
        print(anonymise(arguments.anonymise, arguments.out, names, arguments.plan, notes=arguments.keep_notes))
    elif arguments.csv:
        sys.stdout.write(csv_of(arguments.logs))
    else:
        print_logs(listed(arguments.logs), console())
    return ExitCode.DONE


def _calendar(arguments: argparse.Namespace) -> int:
    from board.desk import sheet_of

    _say_working()
    sheet = sheet_of(arguments.plan)

    from board.clock import WallClock
    from board.paper.calendar import calendar, is_calendar
    from board.plain import one_line
    from board.writing import write_over

    if sheet.stops:
        print(words.stops_rehearsed([one_line(stop) for stop in sheet.stops]), file=sys.stderr)
    data = calendar(sheet, WallClock().now())
    if arguments.output is None:
        sys.stdout.buffer.write(data)  # as it is: its lines end in CRLF on every system
    else:
        write_over(arguments.output, data, is_calendar, words.not_a_calendar)
        print(words.written_to(one_line(arguments.output)), file=sys.stderr)
    return ExitCode.DONE


def _dish(arguments: argparse.Namespace) -> int:
    from board.desk import Trouble, read_bytes
    from board.plain import one_line
    from board.recipe.dish import dish_from
    from board.recipe.documents import NotARecipe

    shown = one_line(arguments.recipe)
    try:
        dish = dish_from(read_bytes(arguments.recipe))
    except NotARecipe as wrong:
        raise Trouble(words.no_recipe(shown, str(wrong)), code=ExitCode.STOP) from None
    if dish.recipes > 1:
        print(words.recipe_several(shown, dish.recipes, dish.name), file=sys.stderr)
    if arguments.output is None:
        sys.stdout.buffer.write(dish.text.encode())  # as a plan file is, whatever the terminal's encoding
    else:
        from board.writing import write_new

        write_new(arguments.output, dish.text.encode())
        print(words.dish_written(one_line(arguments.output)), file=sys.stderr)
    return ExitCode.DONE


def _new(arguments: argparse.Namespace) -> int:
    from board.clock import WallClock
    from board.new_plan import new_plan

    given = {option: getattr(arguments, option) for option in words.NEW_ASKS}
    print(new_plan(arguments.file, given, WallClock().now(), input if _has_terminal() else None, print))
    return ExitCode.DONE


def _table(arguments: argparse.Namespace) -> int:
    from board.desk import Trouble, read_plan_file
    from board.paper.table import NoSuchCourse, table_leaf
    from board.paper.table_out import print_table, table_form, table_markdown
    from board.paper.tables import console

    plan = read_plan_file(arguments.plan).plan
    try:
        leaf = table_leaf(plan, arguments.course)
    except NoSuchCourse as wrong:
        raise Trouble(words.table_no_course(wrong.name, wrong.known, wrong.meant), ExitCode.USAGE) from None
    if arguments.json:
        print(json.dumps(table_form(plan, leaf), ensure_ascii=False, indent=2))
    elif arguments.markdown:
        print(table_markdown(leaf), end="")
    else:
        print_table(leaf, console())
    return ExitCode.DONE


def _schema(arguments: argparse.Namespace) -> int:
    if arguments.log:
        from board.log.share import schema

        print(json.dumps(schema(), ensure_ascii=False, indent=2))
        return ExitCode.DONE
    from board.plan.schema import json_schema

    print(json.dumps(json_schema(), ensure_ascii=False, indent=2))
    return ExitCode.DONE
