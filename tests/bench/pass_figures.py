"""How often a command works out the same thing, and how long it takes: `python tests/bench/pass_figures.py [PLAN]`.
Run on demand; nothing here is a test.

Each command starts with nothing kept. Calls are counted in one run, seconds are the median of several others, each in a
process of its own.
"""

import contextlib
import io
import os
import statistics
import subprocess
import sys
import tempfile
import time
from collections import Counter
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

HERE = Path(__file__).parents[2]
sys.path.insert(0, str(HERE))

LANTERN = str(HERE / "plans" / "lantern-supper.yaml")
COMMANDS = ("check", "sheet", "guests", "provisions", "table")
TIMES = 5


@contextlib.contextmanager
def nothing_kept() -> Iterator[None]:
    before = dict(os.environ)
    with tempfile.TemporaryDirectory() as home:
        os.environ.update({name: home for name in ("XDG_CACHE_HOME", "XDG_DATA_HOME", "HOME")})
        try:
            yield
        finally:
            os.environ.clear()
            os.environ.update(before)


def run(words: list[str]) -> None:
    from board.cli import main

    with nothing_kept(), contextlib.redirect_stdout(io.StringIO()), contextlib.suppress(SystemExit):
        main(words)


def worked_out() -> tuple[list[Callable[..., Any]], list[Callable[..., Any]]]:
    """What should be worked out once for a plan: the checks, and what stands behind them."""
    from board.checks.allergens import guest_snags, guests_eat, plates
    from board.checks.plan import cautions, every
    from board.checks.sheet import clocks
    from board.checks.sheet import every as with_sheet
    from board.schedule import formulate

    checks = [*every.CHECKS, guest_snags.guests_can_eat_what_they_are_served, *with_sheet.CHECKS]
    behind = [formulate.problem_of, guests_eat.matrix, clocks.dish_clocks, plates.plates, cautions.cautions]
    return checks, [every.check, with_sheet.safety_check, *behind]


def calls(words: list[str]) -> None:
    from tests.whole.counted import counted

    checks, behind = worked_out()
    with counted([*checks, *behind]) as found:
        run(words)
    once = Counter(found[name] for name in {check.__name__ for check in checks})
    print("  checks:", ", ".join(f"{many} run {count}×" for count, many in sorted(once.items())))
    print("  " + ", ".join(f"{each.__name__} {found[each.__name__]}×" for each in behind))


def seconds(words: list[str]) -> None:
    """Prints seconds of all but the imports; and of the processor, without the solver's, which hardly know the load."""
    from board.schedule.solver import solve

    worked_out()
    solving, real = [0.0], solve.solve

    def timed(*given: Any, **named: Any) -> Any:
        began = time.thread_time()
        try:
            return real(*given, **named)
        finally:
            solving[0] += time.thread_time() - began

    solve.solve = timed  # type: ignore[assignment]  # the same with a watch
    began, worked = time.perf_counter(), time.thread_time()
    run(words)
    print(time.perf_counter() - began, time.thread_time() - worked - solving[0])


def main(plan: str) -> None:
    for command in COMMANDS:
        words = [sys.executable, __file__, plan, command]
        print(command, flush=True)
        subprocess.run([*words, "calls"], check=True)
        done = [subprocess.run([*words, "seconds"], check=True, capture_output=True, text=True) for _ in range(TIMES)]
        whole, rest = zip(*(map(float, each.stdout.split()) for each in done), strict=True)
        print(
            f"  {statistics.median(whole):.2f} s; of the processor, without the solver, {statistics.median(rest):.3f} s"
        )
    print(f"load {os.getloadavg()[0]:.1f}")


if __name__ == "__main__":
    if sys.argv[2:]:
        {"calls": calls, "seconds": seconds}[sys.argv[3]]([sys.argv[2], sys.argv[1]])
    else:
        main(sys.argv[1] if sys.argv[1:] else LANTERN)
