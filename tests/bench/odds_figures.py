"""The figures of the odds, measured: `python tests/bench/odds_figures.py`. Run on demand; nothing here is a test.

Each is the median of several runs in fresh processes, with the timetable worked out beforehand, beside its goal.
"""

import os
import statistics
import subprocess
import sys
import tempfile
from pathlib import Path

HERE = Path(__file__).parents[2]

# Prints seconds of work alone, and the most memory the process has held, MB.
CODE = """
import resource, sys, time
from pathlib import Path
from board.app.timetables import sheet_of
sheet = sheet_of(Path(sys.argv[1]))
from board.odds.many import odds
began = time.perf_counter()
odds(sheet, int(sys.argv[2]))
print(time.perf_counter() - began, resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1000, len(sheet.slots))
"""


def measure(plan: str, evenings: int, env: dict[str, str], times: int) -> tuple[float, float, int]:
    """Median seconds, most memory in MB, and how many slots the plan has."""
    runs = []
    for _ in range(times):
        command = [sys.executable, "-c", CODE, str(HERE / "plans" / plan), str(evenings)]
        done = subprocess.run(command, env=env, check=True, capture_output=True, text=True)
        runs.append([float(each) for each in done.stdout.split()])
    return statistics.median(r[0] for r in runs), max(r[1] for r in runs), int(runs[0][2])


def show(what: str, value: float, unit: str, goal: float | None) -> None:
    print(f"{what:<62}{value:>9.2f} {unit:<3}" + (f" (goal ≤ {goal:g})" if goal is not None else ""), flush=True)


def main() -> None:
    with tempfile.TemporaryDirectory() as home:
        env = {**os.environ, "XDG_CACHE_HOME": home, "PYTHONPATH": str(HERE)}
        for plan, goal in (("lantern-supper.yaml", 1), ("long-table.yaml", None)):  # the goal is for 40 steps
            measure(plan, 100, env, 1)  # works the timetable out, and keeps it
            seconds, memory, slots = measure(plan, 10_000, env, 5)
            show(f"10,000 evenings of {plan}, {slots} pieces", seconds, "s", goal)
            show("  most memory", memory, "MB", 400)
        seconds, memory, slots = measure("lantern-supper.yaml", 1_000_000, env, 1)
        show(f"1,000,000 evenings of lantern-supper.yaml, {slots} pieces", seconds, "s", None)
        show("  most memory", memory, "MB", 400)


if __name__ == "__main__":
    main()
