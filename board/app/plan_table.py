"""Opens a plan at the planning table: its file, the process beside, and the screen put together."""

from pathlib import Path
from textwrap import dedent
from typing import TYPE_CHECKING

from board.app import words
from board.app.dishes import from_shelf, shelf
from board.app.rewriting import put_aside, rewritten
from board.app.terminal import tell
from board.base.clock import WallClock
from board.base.errors import Trouble
from board.base.exits import ExitCode
from board.base.plain import one_line
from board.base.signals import ending_in_order
from board.files.claims import claimed
from board.files.plans import read_bytes, read_text, write_plan
from board.files.preferences import read_settings, settings_file
from board.importing.starter.menu_courses import usual_way
from board.importing.ways.ways import Setting, dish_lines
from board.plan.edit.save import CannotEdit
from board.session.background import Background
from board.session.plan_desk import Desk, opened
from board.session.plan_watcher import stamp_of

if TYPE_CHECKING:
    from board.plan.load import PlanFile
    from board.screens.dressed import DressedApp, Fallen

RECIPES = (".html", ".htm", ".json")
USUAL = Setting(8, 1, 4)  # where the plan cannot be read: as a plan assumes that says nothing


class PlanOnDisk:
    """A plan's file. The first change of a sitting is made after a copy beside it."""

    def __init__(self, path: Path) -> None:
        self.path = path
        self.copy: Path | None = None
        self._stamp = stamp_of(path)

    def write(self, old: str, new: str) -> str:
        """Puts a text in place of another; why it could not, or nothing."""
        try:
            if self.copy is None:
                self.copy = rewritten(self.path, old, new, WallClock().now().date().isoformat())[1]
            else:
                write_plan(self.path, old, new)
        except Trouble as trouble:
            return str(trouble)
        self._stamp = stamp_of(self.path)
        return ""

    def changed(self) -> bool:
        """Whether the file may have changed since it was looked at."""
        return stamp_of(self.path) not in (None, self._stamp)

    def read(self) -> str | None:
        """What the file holds if it changed since it was looked at; None if it did not, or cannot be read."""
        stamp = stamp_of(self.path)
        if stamp is None or stamp == self._stamp:
            return None
        try:
            text = read_text(self.path)
        except Trouble:
            return None
        self._stamp = stamp
        return text


def lines_of_dish(name: str, file: "PlanFile | None") -> list[str] | CannotEdit:
    """A dish as lines of a plan, for as many as eat: out of a recipe's file, of the host's own shelf, else by the way
    its words tell."""
    if Path(name).suffix.casefold() in RECIPES:
        return _lines_of_recipe(Path(name).expanduser())
    at = USUAL
    if file is not None:
        kitchen = file.plan.kitchen
        at = Setting(
            max(1, sum(guest.count for guest in file.plan.guests)), len(kitchen.ovens), kitchen.rings, kitchen.tools
        )
    return from_shelf(name, at.eaters) or dish_lines(name, usual_way(name), at)


def plan_of_course(typed: str) -> str | CannotEdit:
    """A plan to begin with, out of a course as a menu has it; all else is assumed, and marked so."""
    from board.app.new_plan import from_menu, machine_zone, today_in
    from board.importing.starter.menu import read_menu
    from board.importing.starter.not_a_menu import NotAMenu

    now, zone = WallClock().now(), machine_zone()
    try:
        menu = read_menu(typed, today_in(zone, now))
        return from_menu(menu, words.NEW_STDIN, {}, now, zone, None, lambda _: None, from_shelf).text
    except NotAMenu as wrong:
        return CannotEdit(one_line(wrong))
    except Trouble as trouble:
        return CannotEdit(one_line(trouble))


def _lines_of_recipe(path: Path) -> list[str] | CannotEdit:
    from board.importing.recipe.dish import dish_from
    from board.importing.recipe.documents import NotARecipe

    try:
        text = dish_from(read_bytes(path)).text
    except NotARecipe as wrong:
        return CannotEdit(words.no_recipe(one_line(path), str(wrong)))
    except Trouble as trouble:
        return CannotEdit(str(trouble))
    return dedent(text).strip("\n").splitlines()


@ending_in_order()
def run_table(path: Path, theme: str | None) -> tuple[Path | None, str | None]:
    """Shows the table until the host leaves it; the copy that was made beside the plan, if one was, and the key it was
    left by, if that goes on elsewhere. Raises Trouble."""
    from board.screens.in_place import EndedByFault, kept_open
    from board.screens.plan_table import PlanTableApp

    text, keeper, background = read_text(path), PlanOnDisk(path), Background(path)
    with claimed(path) as ours:
        dishes = [kept.name for _, kept in shelf().dishes]
        desk = opened(text, one_line(path), keeper, background, lines_of_dish, plan_of_course, dishes)
        desk.looking_on = not ours

        def table(fallen: "Fallen | None") -> "DressedApp[str]":
            desk.trying = None if fallen is not None else desk.trying  # whatever it was that was tried
            return PlanTableApp(desk, theme if fallen is None else None, read_settings(settings_file()).theme)

        try:
            left = kept_open(table, lambda app: app.run())
        except EndedByFault as fault:
            told = [words.by_fault(words.TABLE_FAILED, one_line(fault))]
            told.append(_put_aside(path, desk) or words.table_is_whole(one_line(path)))
            raise Trouble("\n".join(told), ExitCode.FAULT) from None
        except SystemExit:  # it was asked to end
            if lost := _put_aside(path, desk):
                tell(lost)
            raise
        finally:
            background.close()
    if lost := _put_aside(path, desk):
        raise Trouble(lost)
    return keeper.copy, left


def _put_aside(path: Path, desk: Desk) -> str:
    """What could not be written into the plan goes into a file of its own; what to tell of it, empty if there was
    nothing."""
    if desk.looking_on or not desk.planning.unsaved:
        return ""
    aside = put_aside(path, desk.planning.text, WallClock().now().date().isoformat())
    return words.table_unsaved(one_line(path), one_line(desk.unwritten), "" if aside is None else one_line(aside))
