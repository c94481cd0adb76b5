"""Commands about house and guests: who may eat what, the table, what to buy, a calendar, new dishes and plans.

Each takes the parsed arguments and returns an exit code. Raises Trouble.
"""

import argparse
import sys
from typing import TYPE_CHECKING

from board.app import words
from board.app.terminal import file_written, fitted, has_terminal, print_json, tell, working, write_page
from board.base.exits import ExitCode

if TYPE_CHECKING:
    pass


def guests(arguments: argparse.Namespace) -> int:
    """`guests PLAN`: who may eat what."""
    from board.checks.allergens.guests_eat import matrix
    from board.files.plans import read_plan_file
    from board.output.guests import guests_form, guests_markdown, print_guests
    from board.output.tables import console

    plan = read_plan_file(arguments.plan)
    found = matrix(plan)
    if arguments.html is not None:
        from board.output.guests_page import guests_page

        write_page(arguments.html, guests_page(plan.plan.event, found, arguments.paper))
    elif arguments.json:
        print_json(guests_form(plan.plan.event, found))
    elif arguments.markdown:
        print(guests_markdown(plan.plan.event, found))
    else:
        print_guests(plan.plan.event, found, console())
    return ExitCode.DONE


def table(arguments: argparse.Namespace) -> int:
    """`table PLAN`: who sits where, one cover, and what to get out, for the whole meal or one course."""
    from board.base.errors import Trouble
    from board.files.plans import read_plan_file
    from board.output.table import NoSuchCourse, table_leaf
    from board.output.table_out import print_table, table_form, table_markdown
    from board.output.tables import console

    plan = read_plan_file(arguments.plan).plan
    try:
        leaf = table_leaf(plan, arguments.course)
    except NoSuchCourse as wrong:
        raise Trouble(words.table_no_course(wrong.name, wrong.known, wrong.meant), ExitCode.USAGE) from None
    if arguments.html is not None:
        from board.output.table_page import table_page

        write_page(arguments.html, table_page(leaf, arguments.paper))
    elif arguments.json:
        print_json(table_form(plan, leaf))
    elif arguments.markdown:
        print(table_markdown(leaf), end="")
    else:
        print_table(leaf, console())
    return ExitCode.DONE


def card(arguments: argparse.Namespace) -> int:
    """`card PLAN`: the menu as a card for the table; with `--plates`, whose plate is different."""
    from board.base.plain import one_line
    from board.checks.allergens.guests_eat import matrix
    from board.checks.allergens.plates import plates
    from board.files.plans import read_plan_file
    from board.output.card import card, card_page, print_card
    from board.output.tables import console

    plan = read_plan_file(arguments.plan)
    eaten = matrix(plan)
    own = plates(plan, eaten) if arguments.plates else {}
    made = card(plan.plan, eaten, own)
    if arguments.html is not None:
        write_page(arguments.html, card_page(made, arguments.paper))
    else:
        print_card(made, console())
    if asked := [(plate.guest, dish) for course in own.values() for plate in course for dish in plate.asked]:
        tell(one_line(words.card_to_ask(asked), 600))
    return ExitCode.DONE


def provisions(arguments: argparse.Namespace) -> int:
    """`provisions PLAN`: what to buy, when and where; with `--tick`, a list to tick off."""
    from board.app.timetables import sheet_of
    from board.base.errors import Trouble
    from board.files.pantry import in_the_house
    from board.files.plans import read_plan_file
    from board.output.provisions import print_provisions, provisions_form, provisions_markdown
    from board.output.tables import console
    from board.shopping.errands import provisions

    if arguments.tick and not has_terminal():
        raise Trouble(words.NO_TERMINAL_TICK)
    plan = read_plan_file(arguments.plan)
    house = in_the_house(plan, arguments.plan)
    with working():
        found = provisions(plan, sheet_of(arguments.plan, plan=plan), house)
    if arguments.tick:
        from board.app.sessions import run_ticking

        run_ticking(found, arguments.plan)
    elif arguments.html is not None:
        from board.output.provisions_page import provisions_page

        write_page(arguments.html, provisions_page(found, arguments.paper))
    elif arguments.json:
        print_json(provisions_form(found))
    elif arguments.markdown:
        print(provisions_markdown(found))
    else:
        print_provisions(found, console())
    return ExitCode.DONE


def calendar(arguments: argparse.Namespace) -> int:
    """`calendar PLAN`: the timetable as an iCalendar file (source: RFC 5545)."""
    from board.app.timetables import sheet_of

    with working():
        sheet = sheet_of(arguments.plan)

    from board.base.clock import WallClock
    from board.base.plain import one_line
    from board.files.plans import STDIN, read_bytes
    from board.files.whole import write_over
    from board.output.calendar import calendar, is_calendar
    from board.sheet import said

    if sheet.stops:
        tell(words.stops_rehearsed([one_line(said.stop(stop)) for stop in sheet.stops]))
    to = arguments.output
    before = read_bytes(to) if to is not None and to != STDIN and to.is_file() else b""
    data = calendar(sheet, WallClock().now(), before if is_calendar(before) else b"")
    if arguments.output is None:
        sys.stdout.buffer.write(data)  # as bytes: its lines end in CRLF on every system
    else:
        write_over(arguments.output, data, is_calendar, words.not_a_calendar)
        file_written(words.written_to, arguments.output)
    return ExitCode.DONE


def dish(arguments: argparse.Namespace) -> int:
    """`dish RECIPE`: a saved recipe as a dish for a plan."""
    from board.base.errors import Trouble
    from board.base.plain import one_line
    from board.files.plans import read_bytes
    from board.importing.recipe.dish import dish_from
    from board.importing.recipe.documents import NotARecipe

    shown = one_line(arguments.recipe)
    try:
        dish = dish_from(read_bytes(arguments.recipe))
    except NotARecipe as wrong:
        raise Trouble(words.no_recipe(shown, str(wrong)), code=ExitCode.STOP) from None
    if dish.recipes > 1:
        tell(words.recipe_several(shown, dish.recipes, dish.name))
    if dish.language:
        tell(words.recipe_foreign(shown, dish.language))
    if arguments.output is None:
        sys.stdout.buffer.write(dish.text.encode())  # UTF-8 like a plan file, whatever the terminal's encoding
    else:
        from board.files.whole import write_new

        write_new(arguments.output, dish.text.encode())
        file_written(words.dish_written, arguments.output)
    return ExitCode.DONE


def new(arguments: argparse.Namespace) -> int:
    """`new`: a new plan file, from a menu, options and answers; or two menus beside each other."""
    from board.app.dishes import from_shelf
    from board.app.new_plan import new_plan
    from board.base.clock import WallClock
    from board.base.errors import Trouble
    from board.files.whole import STDOUT

    given = {option: getattr(arguments, option) for option in words.NEW_ASKS}
    if arguments.beside is not None:
        if arguments.menu is None:
            raise Trouble(words.BESIDE_ALONE, ExitCode.USAGE)
        if arguments.file is not None:
            raise Trouble(words.BESIDE_WRITES_NOTHING, ExitCode.USAGE)
        from board.app.beside import seen_beside
        from board.output.menus import print_beside
        from board.output.tables import console

        with working():
            seen = seen_beside((arguments.menu, arguments.beside), given, WallClock().now(), arguments.limit)
        print_beside(seen, console())
        return ExitCode.DONE
    if arguments.limit is not None:
        raise Trouble(words.LIMIT_ALONE, ExitCode.USAGE)
    ask = input if has_terminal() else None
    now = WallClock().now()
    said = new_plan(arguments.file, given, now, ask, print, arguments.menu, from_shelf)
    if arguments.file == STDOUT:
        tell(said)
    else:
        print(fitted(said, sys.stdout))
    return ExitCode.DONE
