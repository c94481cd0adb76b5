"""Figures of the planning table on the bundled plan: `python -m tests.bench.plan_table_figures [ROUNDS]`.

From a key to all of the screen drawn; from a taken change to the first new timetable, and to the proved one.
"""

import asyncio
import statistics
import sys
import tempfile
import time
from pathlib import Path

from board.app.plan_table import PlanOnDisk, lines_of_dish, plan_of_course
from board.files.bundled import bundled_plan
from board.files.plans import read_text
from board.screens.plan_table import PlanTableApp, PlanTableScreen
from board.session.background import Background
from board.session.line_changes import Made, retype
from board.session.plan_desk import Desk, opened

KEYS = ("down", "down", "right", "down", "tab", "down", "right", "escape", "z", "tab", "f", "f", "tab")
LONGEST_WAIT = 120.0  # seconds


def waited(desk: Desk, *, proved: bool) -> float:
    """Seconds until the timetable of the text as it is is there."""
    began = time.perf_counter()
    while time.perf_counter() - began < LONGEST_WAIT:
        desk.hear()
        if desk.sheet is not None and not desk.stale and (desk.sheet.proved or not proved):
            return time.perf_counter() - began
        time.sleep(0.005)
    raise SystemExit("no timetable came")


def changes(desk: Desk, rounds: int) -> tuple[list[float], list[float], list[float]]:
    """Seconds to read a change, and from then on to the first and to the proved timetable."""
    read, first, proved = [], [], []
    for number in range(rounds):
        row = next(row for row in desk.read.rows if row.key == "takes" and row.phrase is not None)
        began = time.perf_counter()
        made = desk.made(retype(row, f"{21 + number} min"))
        assert isinstance(made, Made), made
        desk.take(made)
        read.append(time.perf_counter() - began)
        first.append(waited(desk, proved=False))
        proved.append(first[-1] + waited(desk, proved=True))
    return read, first, proved


async def keys(desk: Desk) -> list[float]:
    """Seconds from a key to all lines drawn, each as the screen itself takes it."""
    found = []
    app = PlanTableApp(desk, None, None)
    async with app.run_test(size=(120, 36)) as pilot:
        await pilot.pause()
        screen = app.screen
        assert isinstance(screen, PlanTableScreen)
        for key in KEYS:
            began = time.perf_counter()
            screen.pressed(key, "")
            list(screen._compositor.render_strips())
            found.append(time.perf_counter() - began)
            await pilot.pause()
    return found


def told(what: str, seconds: list[float]) -> str:
    return f"{what:<44} median {statistics.median(seconds) * 1000:6.0f} ms, most {max(seconds) * 1000:6.0f} ms"


def main(rounds: int) -> None:
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "plan.yaml"
        text = read_text(bundled_plan())
        path.write_text(text, encoding="utf-8")
        background = Background(path)
        desk = opened(text, path.name, PlanOnDisk(path), background, lines_of_dish, plan_of_course)
        print(
            f"opened: first timetable {waited(desk, proved=False):.1f} s, proved {waited(desk, proved=True):.1f} s more"
        )
        print(told("a key, to all of the screen drawn", asyncio.run(keys(desk))))
        read, first, proved = changes(desk, rounds)
        print(told("a change read and written", read))
        print(told("from there to the first timetable", first))
        print(told("from there to the proved one", proved))
        background.close()


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 5)
