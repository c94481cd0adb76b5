"""Draws the pictures in screenshots/, all that the README shows: `python -m tests.bench.pictures [FOLDER]`.

The real board on the bundled plan, with a stopped clock; the planning table on it; and what `check` says of that plan
with two mistakes in it.
"""

import asyncio
import io
import sys
from datetime import datetime, timedelta
from itertools import takewhile
from pathlib import Path
from threading import Event
from typing import NamedTuple, cast

from rich.console import Console
from rich.segment import Segment

from board.app.plan_commands import assessed
from board.app.plan_table import PlanOnDisk, lines_of_dish, plan_of_course
from board.app.timetables import sheet_of
from board.app.worker import looked_over
from board.base.clock import StoppedClock
from board.evening.wishes import Done
from board.files.bundled import bundled_plan
from board.files.plans import plan_in, read_text
from board.output import words as output_words
from board.output.check import print_check
from board.rehearsal.player import catch_up
from board.screens.app import BoardApp
from board.screens.palette import LOOKS
from board.screens.plan_table import PlanTableApp, PlanTableScreen
from board.session.background import Answer, Background, PlanProved, PlanText, PlanTried, Request
from board.session.plan_desk import opened
from board.session.session import Evening, unlogged_evening
from board.sheet.run_sheet import RunSheet
from tests.bench.pixels import draw_cells


class Shot(NamedTuple):
    """One picture of the board: when it is taken, how large, and what was pressed before."""

    name: str
    theme: str
    minutes: float  # after the guests arrive
    size: tuple[int, int]
    answered: int = 0  # how many due calls, each 40 seconds of the last
    unanswered: float = 2  # minutes before the picture in which nothing else is answered
    keys: tuple[str, ...] = ()


SHOTS = (
    Shot("board-120x36", "dark", 20.5, (120, 36)),
    Shot("board-80x24", "light", 57.5, (80, 24), answered=1),
    Shot("late-call", "dark", 104.0, (120, 36), unanswered=8),
    Shot("push-cost", "dark", 62.0, (120, 36), answered=9, keys=("p", "right")),
)


class TableShot(NamedTuple):
    """One picture of the planning table: the line that is chosen, and what was pressed then."""

    name: str
    theme: str
    size: tuple[int, int]
    line: str
    keys: tuple[str, ...] = ()


TABLE_SHOTS = (
    TableShot("plan-80x24", "light", (80, 24), "reheat the broth"),
    TableShot("plan-120x36", "dark", (120, 36), "braise the beef", ("tab", "z", "right", "right")),
    TableShot("plan-160x50", "dark", (160, 50), "roast the roots"),
)

MISTAKES = (
    ("1 l whole milk, 90 g cornflour,", "1 l whole milk, 60 g ground almonds,"),
    ("- 90 g cornflour (baking)", "- 60 g ground almonds (baking)"),  # for Ines, who must not eat tree nuts
    ("dinner plates: 10", "dinner plates: 6"),  # for eight
)
CHECK_WIDTH = 104


def evening_at(sheet: RunSheet, moment: datetime, shot: Shot) -> Evening:
    """The evening with everything before the last few minutes answered on time."""
    clock = StoppedClock(min(slot.start for slot in sheet.slots))
    evening = unlogged_evening(sheet, clock)
    catch_up(evening, clock, moment - timedelta(minutes=shot.unanswered))
    for _ in range(3):
        clock.set(clock.now() + timedelta(seconds=20 * shot.unanswered))
        for call in evening.tick().due[: shot.answered]:
            evening.wish(Done(*call.key))
    return evening


async def draw_board(sheet: RunSheet, shot: Shot, folder: Path) -> None:
    app = BoardApp(evening_at(sheet, sheet.arrive + timedelta(minutes=shot.minutes), shot), theme=shot.theme)
    app.title = sheet.plan
    async with app.run_test(size=shot.size) as pilot:
        await pilot.pause()
        await pilot.press(*shot.keys)
        await pilot.pause()
        rows = [list(strip) for strip in app.screen._compositor.render_strips()]
    draw_cells(rows, folder / f"{shot.name}.png", LOOKS[shot.theme].theme)


class Beside:
    """The process beside the table, in this one: what is asked is answered at once."""

    def __init__(self) -> None:
        self.answers: dict[type[Request], Answer] = {}

    def ask(self, request: Request, *, anew: bool = False) -> bool:
        assert isinstance(request, PlanText | PlanProved | PlanTried)
        kind = type(request)
        self.answers[kind] = looked_over(kind.__name__, bundled_plan(), request.text, request.near, None, Event())
        return anew

    def answer(self, kind: type[Request]) -> Answer | None:
        return self.answers.pop(kind, None)


async def draw_table(shot: TableShot, folder: Path) -> None:
    path = bundled_plan()
    desk = opened(
        read_text(path), path.name, PlanOnDisk(path), cast("Background", Beside()), lines_of_dish, plan_of_course
    )
    app = PlanTableApp(desk, shot.theme, None)
    async with app.run_test(size=shot.size) as pilot:
        await pilot.pause(0.5)
        screen = app.screen
        assert isinstance(screen, PlanTableScreen)
        screen.show(screen._seen(next(row.loc for row in desk.read.rows if row.text == shot.line)))
        await pilot.press(*shot.keys)
        while desk.trying is not None and not desk.trying.told:
            await pilot.pause(0.2)
        await pilot.pause(0.3)
        rows = [list(strip) for strip in app.screen._compositor.render_strips()]
    draw_cells(rows, folder / f"{shot.name}.png", LOOKS[shot.theme].theme)


def mistaken_plan() -> str:
    """The bundled plan with two mistakes in it."""
    text = read_text(bundled_plan())
    for right, wrong in MISTAKES:
        assert right in text, f"the plan no longer says {right}"
        text = text.replace(right, wrong)
    return text


def draw_check(folder: Path) -> None:
    """What `check` says, as far as the list of what is assumed."""
    out = Console(
        file=io.StringIO(),
        width=CHECK_WIDTH,
        height=100,
        force_terminal=True,
        highlight=False,
        markup=False,
        record=True,
    )
    path = Path(bundled_plan().name)
    out.print(f"$ platecall check {path}")
    plan = plan_in(mistaken_plan(), path)
    print_check(assessed(plan, path), out)
    rows = Segment.split_and_crop_lines(out._record_buffer, CHECK_WIDTH, include_new_lines=False)
    shown = takewhile(lambda row: output_words.CHECK_ASSUMED not in "".join(segment.text for segment in row), rows)
    draw_cells(list(shown)[:-1], folder / "check.png", LOOKS["dark"].theme)  # a line is left empty before that list


def draw_all(folder: Path) -> None:
    sheet = sheet_of(bundled_plan())
    for shot in SHOTS:
        asyncio.run(draw_board(sheet, shot, folder))
    for each in TABLE_SHOTS:
        asyncio.run(draw_table(each, folder))
    draw_check(folder)


if __name__ == "__main__":
    target = Path(sys.argv[1] if len(sys.argv) > 1 else "screenshots")
    target.mkdir(exist_ok=True)
    draw_all(target)
