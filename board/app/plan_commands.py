"""Commands before the evening: check, sheet in all its forms, odds.

Each takes the parsed arguments and returns an exit code. Raises Trouble.
"""

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

from board.app import words
from board.app.terminal import has_terminal, print_json, tell, working, write_page
from board.base.exits import ExitCode

if TYPE_CHECKING:
    from collections.abc import Sequence

    from board.checks.sheet.assessed import Assessed
    from board.plan.load import PlanFile
    from board.plan.snag import Snag
    from board.sheet.run_sheet import RunSheet


def plan(arguments: argparse.Namespace) -> list[str]:
    """`plan PLAN`: the planning table. The words of the command that the host goes on with, none if there is none.
    Raises Trouble, first of all for what is no file or an empty one."""
    from board.app.plan_table import run_table
    from board.base.errors import Trouble
    from board.base.plain import one_line
    from board.files.plans import plan_in, read_text

    if not (text := read_text(arguments.plan)).strip():
        plan_in(text, arguments.plan)
    if not has_terminal():
        raise Trouble(words.NO_TERMINAL_FOR_PLAN)
    copy, left = run_table(arguments.plan, arguments.theme)
    if copy is not None:
        print(words.table_copy(one_line(arguments.plan), one_line(copy)))
    page = str(arguments.plan.with_suffix(".html"))
    following = {"s": ["sheet"], "p": ["sheet", "--html", page], "g": ["guests"], "b": ["provisions"],
                 "r": ["rehearse"], "l": ["live"]}  # fmt: skip
    return [*following[left], str(arguments.plan)] if left else []


def check(arguments: argparse.Namespace) -> int:
    """`check PLAN`: what there is to mend. STOP if the plan has stops."""
    from dataclasses import replace

    from board.app.timetables import moved_since
    from board.base.clock import WallClock
    from board.files.plans import read_plan_file
    from board.output.check import print_check
    from board.output.check_form import check_form
    from board.plan.snag import Weight, in_order

    found = assessed(read_plan_file(arguments.plan), arguments.plan, arguments.limit)
    if had := _had_by_guests(found.file):
        found = replace(found, snags=tuple(in_order([*found.snags, *had])))
    moved = moved_since(arguments.plan, found.sheet, "check") if found.sheet is not None else ()
    now = WallClock().now()
    if arguments.json:
        print_json(check_form(found, now))
    else:
        print_check(found, now=now, whole=arguments.all, moved=moved)
    stopped = any(snag.weight is Weight.STOP for snag in found.snags)
    return ExitCode.STOP if stopped else ExitCode.DONE


def _had_by_guests(file: "PlanFile") -> "Sequence[Snag]":
    """Where dishes are kept, or logs name one of the plan's; else nothing that reads logs and books is waited for."""
    from board.files.paths import logs_naming, shelf_folder
    from board.plan.resolve.known_again import name_key

    dishes = {name_key(dish.dish) for course in file.plan.courses for dish in course.dishes}
    if not any(shelf_folder().glob("*.yaml")) and not logs_naming(dishes):
        return ()
    from board.app.dishes import had_by_guests

    return had_by_guests(file)


def settle(arguments: argparse.Namespace) -> int:
    """`settle PLAN`: goes through its guesses; without a terminal, lists them and changes nothing."""
    from board.app.settle import ask, write
    from board.base.plain import one_line
    from board.checks.plan.guesses import guesses
    from board.files.plans import plan_in, read_text

    text, shown = read_text(arguments.plan), one_line(arguments.plan)
    plan = assessed(plan_in(text, arguments.plan), arguments.plan)
    found = guesses(plan.file, plan.snags, plan.sheet)
    if not found:
        print(words.nothing_guessed(shown))
    elif not has_terminal():
        print(words.guesses_listed(len(found), shown))
        for each in found:
            print(f"  {one_line(words.guess_line(each.dish, each.step, each.key, each.text, each.why))}")
    elif answers := ask(text, plan.file, found):
        copy, lost = write(arguments.plan, text, plan.file, found, answers)
        print(words.settled(len(answers) - lost, len(found) - len(answers), lost, shown, one_line(copy)))
    else:
        print(words.NOTHING_SETTLED)
    return ExitCode.DONE


def assessed(plan: "PlanFile", path: Path, limit: float | None = None) -> "Assessed":
    """The plan with its snags, the most serious first; and with its timetable if there are no stops. `limit`: seconds.
    Raises Trouble."""
    from board.app.timetables import with_timetable
    from board.checks.plan.every import stops
    from board.checks.sheet.assessed import of_plan

    found = of_plan(plan)
    if stops(found.snags):
        return found
    with working():
        return with_timetable(found, path, limit=limit)


def sheet(arguments: argparse.Namespace) -> int:
    """`sheet PLAN`: the timetable, by day, person or lane, for the wall, or as data; or ways out of what it gives
    up."""
    from board.app.timetables import moved_since, sheet_of
    from board.files.plans import read_plan_file
    from board.output.sheet import print_sheet
    from board.output.tables import console

    if arguments.take is not None or arguments.ways_out is not None:
        return _ways_out(arguments)
    with working():
        plan = read_plan_file(arguments.plan) if arguments.json else None
        sheet = sheet_of(arguments.plan, plan=plan, fresh=arguments.fresh, limit=arguments.limit)
    if plan is not None:
        from board.base.plain import one_line
        from board.output.sheet_form import outside_form
        from board.schedule.audit.validate import validate

        wrong = validate(plan, sheet)
        for each in wrong:
            tell(one_line(each))
        print_json(outside_form(sheet, valid=not wrong))
    elif arguments.why is not None:
        _why(sheet, arguments.why)
    elif arguments.whom is not None or arguments.markdown or arguments.html is not None:
        _leaves(sheet, arguments)
    else:
        print_sheet(sheet, arguments.by, console(), moved_since(arguments.plan, sheet, "sheet"))
        if sheet.given_up:
            tell(words.ask_for_ways(arguments.plan))
    return ExitCode.DONE


def _leaves(sheet: "RunSheet", arguments: argparse.Namespace) -> None:
    """Prints or writes the sheet for the wall or for a person: in the terminal, as Markdown, or as a page."""
    from board.base.errors import Trouble
    from board.base.plain import one_line
    from board.output.leaves import WALL, NoSuchPerson, leaves
    from board.output.markdown import markdown
    from board.output.page import page
    from board.output.sheet import print_leaves
    from board.output.tables import console
    from board.output.wall import wall_page

    whom = arguments.whom or WALL
    try:
        found = leaves(sheet, whom)
    except NoSuchPerson as wrong:
        known = tuple(one_line(name) for name in wrong.known)
        raise Trouble(words.no_such_person(one_line(wrong.name, 60), known), ExitCode.USAGE) from None
    if arguments.html is not None:
        made = wall_page(sheet, found[0], arguments.paper) if whom == WALL else page(found, arguments.paper)
        write_page(arguments.html, made)
    elif arguments.markdown:
        print(markdown(found), end="")
    else:
        print_leaves(found, console())


def _ways_out(arguments: argparse.Namespace) -> int:
    """Prints the sheet with ways out of what it gives up; or writes one of them into the plan."""
    from board.app.resolve_conflicts import find_ways, take
    from board.output.sheet import print_sheet
    from board.output.tables import console
    from board.output.ways import print_taken, print_ways

    out = console()
    with working():
        mending = find_ways(arguments.plan, max(arguments.ways_out or 0, arguments.take or 0), arguments.limit)
    if arguments.take is None:
        print_sheet(mending.sheet, arguments.by, out)
        print_ways(mending.ways[: arguments.ways_out], str(arguments.plan), out, all_tried=mending.all_tried)
        return ExitCode.DONE
    way, lines = take(arguments.plan, mending, arguments.take)
    print_taken(lines, str(arguments.plan), out, way.what)
    return ExitCode.DONE


def _why(sheet: "RunSheet", name: str) -> None:
    from board.base.errors import Trouble
    from board.base.plain import one_line
    from board.sheet.why import NotFound, find, why

    try:
        lines = why(sheet, find(sheet, name))
    except NotFound as wrong:
        raise Trouble(one_line(wrong)) from None
    print("\n".join(one_line(line) for line in lines))


def odds(arguments: argparse.Namespace) -> int:
    """`odds PLAN`: the chance that each course goes out on time."""
    from board.app.timetables import sheet_of

    with working():
        sheet = sheet_of(arguments.plan)

    from board.odds.many import odds  # after the sheet: a plan that fails need not wait for numpy
    from board.output.odds import odds_form, print_odds
    from board.output.tables import console

    found = odds(sheet, arguments.evenings, arguments.seed, assume=True)
    if arguments.json:
        print_json(odds_form(found))
    else:
        print_odds(found, console())
    return ExitCode.DONE
