"""Commands after an evening: review, lessons, the cook's book, logs; and the schemas.

Each takes the parsed arguments and returns an exit code. Raises Trouble.
"""

import argparse
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from board.app import words
from board.app.terminal import answer_to, print_json, says_yes, tell, working, write_page
from board.base import words as shared
from board.base.exits import ExitCode
from board.base.plain import as_json

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from board.app.learning import Chosen, Learning, Taking
    from board.learning.changes import Lesson
    from board.review.looked_back import LookedBack
    from board.review.observe import PastEvening

    Ask = Callable[[str], str]


def review(arguments: argparse.Namespace) -> int:
    """`review LOG…`: evenings looked back on. FAILED if a log cannot be read."""
    from board.app.reading_logs import look_back_on
    from board.base.plain import one_line
    from board.output.evenings import evening_form, print_evening, print_evenings
    from board.output.tables import console

    night = len(arguments.logs) == 1 and arguments.html is None
    evenings, unreadable = look_back_on(arguments.logs, odds=arguments.odds, night=night)
    for why in unreadable:
        tell(why)
    if not evenings:
        return ExitCode.FAILED
    for each in evenings:
        if each.dropped:
            tell(one_line(each.dropped))
    if arguments.html is not None:
        from board.output.review_page import page

        write_page(arguments.html, page(evenings, arguments.paper))
    elif arguments.json:
        forms = [evening_form(each) for each in evenings]
        print_json(forms[0] if len(forms) == 1 else forms)
    elif len(evenings) == 1 and not arguments.all:
        ended = _first_screen(arguments, evenings[0])
        return ended or (ExitCode.FAILED if unreadable else ExitCode.DONE)
    elif len(evenings) == 1:
        print_evening(evenings[0], console())
    else:
        print_evenings(evenings, console())
    return ExitCode.FAILED if unreadable else ExitCode.DONE


def _first_screen(arguments: argparse.Namespace, evening: "LookedBack") -> int:
    """What an evening comes to, and what it teaches the plan: taken by its number, where somebody can type it."""
    from board.app.learning import all_evenings, learn_from, read_evenings
    from board.app.terminal import has_terminal
    from board.base.plain import one_line
    from board.output.first_screen import MOST_LESSONS, print_first
    from board.output.tables import console

    log = one_line(arguments.logs[0])
    if arguments.plan is None:
        print_first(evening, log, (), console())
        return ExitCode.DONE
    learning = learn_from(arguments.plan, lambda: [*all_evenings()[0], *read_evenings(arguments.logs)[0]])
    few = learning.found.first()[:MOST_LESSONS]
    print_first(evening, log, few, console())
    if not few or not has_terminal():
        return ExitCode.DONE
    return _taken_by_number(arguments.plan, learning, few)


def _taken_by_number(plan: Path, learning: "Learning", few: "Sequence[Lesson]", ask: "Ask" = input) -> int:
    from board.app.learning import Chosen

    typed = answer_to(words.which_lessons(len(few)), ask)
    taken = tuple(lesson for n, lesson in enumerate(few, 1) if str(n) in typed)
    if not taken:
        return ExitCode.DONE
    return _taken_up(plan, learning, Chosen(taken), None, ask)


def lessons(arguments: argparse.Namespace) -> int:
    """`lessons PLAN`: what past evenings teach the plan, shown or written into it or into the cook's book."""
    from board.base.errors import Trouble

    if arguments.book:
        return _book(arguments)
    wanted = (arguments.into_book, arguments.from_book, arguments.take is not None)
    if arguments.plan is None or sum(wanted) > 1:
        raise Trouble(words.BOOK_NEEDS_PLAN if arguments.plan is None else words.BOOK_OR_PLAN, ExitCode.USAGE)
    if arguments.from_book:
        return _from_book(arguments.plan)

    from board.app.learning import add_to_book, all_evenings, chosen, learn_from, read_evenings, taking
    from board.base.plain import one_line
    from board.output.lessons import lessons_form, print_lessons
    from board.output.tables import console

    evenings: list[PastEvening] = []

    def read() -> "list[PastEvening]":
        found, said = read_evenings(arguments.logs) if arguments.logs else all_evenings()
        for each in said:
            tell(each)
        evenings.extend(found)
        return evenings

    learning = learn_from(arguments.plan, read)
    if arguments.into_book:
        added, book = add_to_book(learning, evenings)
        print(words.book_added(added.fresh, added.known, added.rehearsals))
        print(shared.book_lies_at(one_line(book)))
        return ExitCode.DONE
    if arguments.take is not None:
        taken = chosen(learning, arguments.take or None)
        if arguments.no_effect:
            return _written(arguments.plan, learning, taking(learning, taken))
        return _taken_up(arguments.plan, learning, taken, arguments.limit)
    brings, trouble = None, None
    if learning.found.lessons and not arguments.no_effect:
        from board.app.impact import effect  # imported here: it loads the solver

        try:
            with working():
                brings = effect(learning, learning.found.lessons, arguments.limit, each=arguments.each)
        except Trouble as wrong:  # what was learned is shown all the same
            trouble = wrong
    if arguments.json:
        print_json(lessons_form(learning.found, brings))
    else:
        print_lessons(learning.file.plan.event, learning.found, brings, str(arguments.plan), console())
    if trouble is not None:
        sys.stdout.flush()
        raise trouble
    return ExitCode.DONE


def _taken_up(plan: Path, learning: "Learning", taken: "Chosen", limit: float | None, ask: "Ask" = input) -> int:
    """Says what the new timetable moves and gives up, then writes the lessons; where it gives up more and somebody can
    type, only if that is wanted. STOP if they have brought stops."""
    from board.app.impact import effect_of_taking  # imported here: it loads the solver
    from board.app.learning import taking
    from board.app.terminal import has_terminal
    from board.output.lessons import print_change
    from board.output.tables import console

    made = taking(learning, taken)
    sys.stdout.flush()
    with working():
        brings = effect_of_taking(learning, made, limit)
    print_change(brings, console())
    sys.stdout.flush()
    if brings.stops:
        tell(words.TAKING_STOPS)
    for stop in brings.stops:
        tell(f"  {stop}")
    loses = bool(brings.given_up or brings.stops)
    if loses and has_terminal() and not says_yes(words.TAKE_ALL_THE_SAME, ask):
        print(words.NOTHING_TAKEN)
        return ExitCode.DONE
    _written(plan, learning, made)
    return ExitCode.STOP if brings.stops else ExitCode.DONE


def _written(plan: Path, learning: "Learning", made: "Taking") -> int:
    from board.app.learning import take
    from board.base.plain import one_line
    from board.output.tables import console
    from board.output.ways import print_taken

    lines, copy = take(learning, made)
    print_taken(lines, str(plan), console())
    tell(words.backup_lies_at(one_line(copy)))
    return ExitCode.DONE


def _from_book(plan: Path) -> int:
    from board.app.learning import write_from_book
    from board.base.plain import one_line
    from board.output.tables import console
    from board.output.ways import print_taken

    found = write_from_book(plan)
    for each in found.told:
        print(one_line(each))
    if found.copy is not None:
        print_taken(found.lines, str(plan), console())
        tell(words.backup_lies_at(one_line(found.copy)))
    elif not found.missing:
        print(words.NOTHING_FROM_BOOK)
    for snag in found.missing:
        tell(snag.render())
    return ExitCode.STOP if found.missing else ExitCode.DONE


def _book(arguments: argparse.Namespace) -> int:
    from board.app.learning import the_book
    from board.base.errors import Trouble
    from board.base.plain import one_line
    from board.output.book import book_form, print_book
    from board.output.tables import console

    if arguments.plan is not None or arguments.take is not None or arguments.into_book or arguments.from_book:
        raise Trouble(words.BOOK_ALONE, ExitCode.USAGE)
    book, path = the_book()
    if arguments.json:
        print_json(book_form(book))
    else:
        print_book(book, one_line(path), console())
    return ExitCode.DONE


def logs(arguments: argparse.Namespace) -> int:
    """`logs`: run logs listed, who ate what, as CSV, or without names. FAILED if a log cannot be read."""
    from board.app.reading_logs import anonymise, csv_of, eaten_by_guest, listed
    from board.output.evenings import logs_form, print_eaten, print_logs
    from board.output.tables import console

    if arguments.anonymise is not None:
        names = [name for name in arguments.names.split(",") if name.strip()]
        tell(anonymise(arguments.anonymise, arguments.out, names, arguments.plan, notes=arguments.keep_notes))
    elif arguments.csv:
        sys.stdout.write(csv_of(arguments.logs))
    else:
        if arguments.guests:
            eaten, unreadable = eaten_by_guest(arguments.logs)
            print_eaten(eaten, console())
        else:
            found, unreadable = listed(arguments.logs)
            if arguments.json:
                print_json(logs_form(found))
            else:
                print_logs(found, console())
        for why in unreadable:
            tell(why)
        return ExitCode.FAILED if unreadable else ExitCode.DONE
    return ExitCode.DONE


def schema(arguments: argparse.Namespace) -> int:
    """`schema`: the JSON Schema of plan files, of run logs, or of what a command prints."""
    if arguments.of is not None:
        from board.output.schemas.published import schema_of

        print(as_json(schema_of(arguments.of)))
        return ExitCode.DONE
    if arguments.log:
        from board.log.share import schema

        print(as_json(schema()))
        return ExitCode.DONE
    from board.plan.schema import json_schema

    print(as_json(json_schema()))
    return ExitCode.DONE
