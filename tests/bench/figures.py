"""The figures in DEVELOPERS.md, measured: `python tests/bench/figures.py [SECONDS [cpu]]`; `cpu`: of ticking alone.
Run on demand; nothing here is a test.

Each is the median of several runs in fresh processes with warm files, printed beside its goal and a floor.
"""

import asyncio
import os
import resource
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from datetime import timedelta
from pathlib import Path

import pexpect

HERE = Path(__file__).parents[2]
sys.path.insert(0, str(HERE))

LONG_TABLE = str(HERE / "plans" / "long-table.yaml")
FIRST = "On time"
READY = "┃"  # the line of now in the lanes: the first picture, in bare lines, has none
LANTERN = str(HERE / "plans" / "lantern-supper.yaml")


def median(run: Callable[[], float], times: int = 5) -> float:
    return statistics.median(run() for _ in range(times))


def help_seconds(env: dict[str, str]) -> float:
    began = time.perf_counter()
    subprocess.run([sys.executable, "-m", "board", "--help"], env=env, check=True, stdout=subprocess.DEVNULL)
    return time.perf_counter() - began


def first_paint_seconds(env: dict[str, str], command: list[str], sign: str) -> float:
    """From starting the process until the sign stands on a real terminal."""
    began = time.perf_counter()
    process = pexpect.spawn(sys.executable, command, dimensions=(36, 120), env=env, encoding="utf-8", timeout=20)
    process.expect_exact(sign)
    seconds = time.perf_counter() - began
    process.close(force=True)
    return seconds


BARE = (
    "from textual.app import App\nfrom textual.widgets import Digits\n"
    "class Bare(App):\n    def compose(self):\n        yield Digits('00:00')\n"
    "    def on_mount(self):\n        self.n = 0\n        self.set_interval(1, self.tick)\n"
    "    def tick(self):\n        self.n += 1\n"
    "        self.query_one(Digits).update(f'{self.n // 60:02}:{self.n % 60:02}')\n"
    "Bare().run()\n"
)


def solve_figures() -> None:
    from board.plan.load import PlanFile, read_plan
    from board.schedule.audit.validate import validate
    from board.schedule.formulate import problem_of
    from board.schedule.solver.solve import solve
    from board.schedule.to_run_sheet import to_run_sheet

    text = Path(LANTERN).read_text(encoding="utf-8")
    began = time.perf_counter()
    plan = read_plan(text, LANTERN)
    read = time.perf_counter() - began
    assert isinstance(plan, PlanFile)
    problem = problem_of(plan.plan, plan.filled)
    answers = []
    for _ in range(5):
        began = time.perf_counter()
        solution = solve(problem)
        answers.append(time.perf_counter() - began)
    sheet = to_run_sheet(plan, problem, solution)
    wrong = validate(plan, sheet)
    show("plan read", read, "s", None)
    show(f"sheet of the bundled plan, proved {solution.proved}, valid {not wrong}", statistics.median(answers), "s", 5)


def key_seconds(env: dict[str, str], command: list[str]) -> float:
    """From a key sent to a real terminal until its effect is drawn there: the bell goes off and on."""
    process = pexpect.spawn(sys.executable, command, dimensions=(36, 120), env=env, encoding="utf-8", timeout=20)
    process.delaybeforesend = None
    process.expect_exact(READY)
    drain(process, 1.5)
    seconds = []
    for _ in range(6):
        began, drawn = time.perf_counter(), ""
        process.send("b")
        while "bell o" not in drawn:  # what was drawn before the key is read away already
            drawn += process.read_nonblocking(65536, timeout=5)
        seconds.append(time.perf_counter() - began)
        drain(process, 0.7)
    process.close(force=True)
    return statistics.median(seconds)


async def tick_milliseconds() -> float:
    """Median milliseconds of one tick with all of the screen drawn."""
    from board.app.timetables import sheet_of
    from board.base.clock import StoppedClock
    from board.screens.app import BoardApp
    from board.session.session import unlogged_evening

    sheet = sheet_of(Path(LANTERN))
    clock = StoppedClock(sheet.arrive)
    app = BoardApp(unlogged_evening(sheet, clock), bell=False)
    ticks = []
    async with app.run_test(size=(120, 36)) as pilot:
        await pilot.pause()
        for _ in range(100):
            clock.set(clock.now() + timedelta(seconds=1))
            began = time.perf_counter()
            app.live.tick()
            app.screen._compositor.render_strips()
            ticks.append((time.perf_counter() - began) * 1000)
    return statistics.median(ticks)


def forecast_milliseconds(plan: str) -> tuple[float, int]:
    """Median milliseconds of one forecast in mid-evening, and how many pieces of work it moves."""
    from board.app.timetables import sheet_of
    from board.base.clock import StoppedClock
    from board.rehearsal.player import catch_up
    from board.session.session import unlogged_evening

    sheet = sheet_of(Path(plan))
    clock = StoppedClock(min(slot.start for slot in sheet.slots))
    evening = unlogged_evening(sheet, clock)
    catch_up(evening, clock, sheet.arrive)
    clock.set(sheet.arrive + timedelta(minutes=25))  # the guests are late: everything behind them moves
    evening.look()
    seconds = []
    for _ in range(200):
        began = time.perf_counter()
        evening.look()
        seconds.append(time.perf_counter() - began)
    return statistics.median(seconds) * 1000, len(sheet.slots)


def slip_key_seconds(env: dict[str, str], command: list[str]) -> float:
    """From the key until all that may have gone wrong stands on a real terminal with its costs."""
    process = pexpect.spawn(sys.executable, command, dimensions=(36, 120), env=env, encoding="utf-8", timeout=20)
    process.delaybeforesend = None
    process.expect_exact(READY)
    drain(process, 1.5)
    seconds = []
    for _ in range(6):
        began, drawn = time.perf_counter(), ""
        process.send("w")
        while "esc leaves" not in drawn:
            drawn += process.read_nonblocking(65536, timeout=5)
        seconds.append(time.perf_counter() - began)
        drain(process, 0.7)
        process.send("\x1b")
        drain(process, 0.7)
    process.close(force=True)
    return statistics.median(seconds)


def ticking_share(env: dict[str, str], command: list[str], sign: str, seconds: float) -> tuple[float, float, float]:
    """CPU share of a core over some seconds of standing there, of the board and of a bare screen that ticks beside it
    under the same load, and the board's resident memory, MB."""
    both = [
        pexpect.spawn(sys.executable, words, dimensions=(36, 120), env=env, encoding="utf-8", timeout=30)
        for words in (command, ["-c", BARE])
    ]
    for process, drawn in zip(both, (sign, "│"), strict=True):
        process.expect_exact(drawn)
    for process in both:
        drain(process, 2)
    before, began = [cpu_of(process.pid) for process in both], time.perf_counter()
    while (passed := time.perf_counter() - began) < seconds:
        for process in both:
            drain(process, 0.5)
    board, bare = ((cpu_of(each.pid) - was) / passed for each, was in zip(both, before, strict=True))
    memory = int(Path(f"/proc/{both[0].pid}/statm").read_text().split()[1]) * resource.getpagesize() / 1e6
    for process in both:
        process.close(force=True)
    return board, bare, memory


def drain(process: "pexpect.spawn[str]", seconds: float) -> None:
    end = time.perf_counter() + seconds
    while time.perf_counter() < end:
        try:
            process.read_nonblocking(65536, timeout=0.2)
        except pexpect.TIMEOUT:
            continue


def cpu_of(pid: int) -> float:
    fields = Path(f"/proc/{pid}/stat").read_text().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def show(what: str, value: float, unit: str, goal: float | None) -> None:
    print(f"{what:<62}{value:>9.3f} {unit:<3}" + (f" (goal ≤ {goal:g})" if goal is not None else ""), flush=True)


def main() -> None:
    seconds = float(sys.argv[1]) if len(sys.argv) > 1 else 60.0
    with tempfile.TemporaryDirectory() as home:
        env = {**os.environ, "HOME": home, "XDG_DATA_HOME": f"{home}/d", "XDG_CACHE_HOME": f"{home}/c",
               "PYTHONPATH": str(HERE), "TERM": "xterm-256color"}  # fmt: skip
        # As on a user's machine: compiled files are kept.
        for name in ("PYTHONDONTWRITEBYTECODE", "PYTHONUNBUFFERED"):
            env.pop(name, None)
        os.environ.update(XDG_CACHE_HOME=env["XDG_CACHE_HOME"])
        rehearse = ["-m", "board", "rehearse", LANTERN, "--speed", "1", "--no-bell", "--log"]
        subprocess.run(
            [sys.executable, "-m", "board", "sheet", LANTERN], env=env, check=True, stdout=subprocess.DEVNULL
        )
        if sys.argv[2:] == ["cpu"]:
            show_ticking(env, [*rehearse, f"{home}/tick.jsonl"], seconds)
            return
        show("--help", median(lambda: help_seconds(env)), "s", 0.3)
        solve_figures()
        numbers = iter(range(100))
        for what, sign, goal in (
            ("first picture with a kept sheet", FIRST, 0.6),
            ("the board stands", READY, None),
        ):
            paint = median(lambda s=sign: first_paint_seconds(env, [*rehearse, f"{home}/{next(numbers)}.jsonl"], s))
            show(what, paint, "s", goal)
        show(
            "  floor: a bare screen of the same library",
            median(lambda: first_paint_seconds(env, ["-c", BARE], "│")),
            "s",
            None,
        )
        show("a key's effect on a real terminal", key_seconds(env, [*rehearse, f"{home}/key.jsonl"]) * 1000, "ms", 50)
        show(
            "what went wrong, with all costs", slip_key_seconds(env, [*rehearse, f"{home}/slip.jsonl"]) * 1000, "ms", 50
        )
        for plan in (LANTERN, LONG_TABLE):
            milliseconds, pieces = forecast_milliseconds(plan)
            show(f"one forecast, {pieces} pieces", milliseconds, "ms", 5)
        show("one tick, all of the screen drawn", asyncio.run(tick_milliseconds()), "ms", None)
        show_ticking(env, [*rehearse, f"{home}/tick.jsonl"], seconds)


def show_ticking(env: dict[str, str], command: list[str], seconds: float) -> None:
    share, bare, memory = ticking_share(env, command, READY, seconds)
    show(f"CPU while ticking at 1×, over {seconds:g} s", share * 100, "%", 2)
    show("  against a bare screen that ticks beside it", share / max(bare, 1e-9), "×", 2)
    show("memory while ticking", memory, "MB", None)


if __name__ == "__main__":
    main()
