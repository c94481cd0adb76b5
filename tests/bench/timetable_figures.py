"""The timetable's figures, measured: `python tests/bench/timetable_figures.py`. Run on demand; nothing here is a test.

Each stands beside its goal. Ends with 1 if a sheet is wrong or missing; a slow machine alone changes nothing.
"""

import os
import resource
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path

HERE = Path(__file__).parents[2]
sys.path.insert(0, str(HERE))

from board.plan.load import PlanFile, read_plan
from board.schedule.audit.validate import validate
from board.schedule.dependencies import end_of
from board.schedule.formulate import problem_of
from board.schedule.near import starts_of
from board.schedule.problem import Problem
from board.schedule.solution import AIMS, Solution
from board.schedule.solver.aims import Aims
from board.schedule.solver.library import cp_model
from board.schedule.solver.limits import Limits
from board.schedule.solver.solve import COSTLY, NoAnswer, Progress, solve
from board.schedule.solver.variables import Variables
from board.schedule.to_run_sheet import make_sheet, to_run_sheet
from board.sheet.run_sheet import RunSheet
from tests.schedule.large_plans import large_plan
from tests.schedule.random_plans import plan_text

RANDOM_PLANS = 100
DISHES = range(4, 17)
RANDOM_SECONDS = 5.0
SMALL_GAP = 0.05


@dataclass
class Bench:
    """Prints figures, and remembers what is wrong."""

    wrong: list[str] = field(default_factory=list)

    def show(self, what: str, value: float, unit: str, goal: float) -> None:
        verdict = "" if value <= goal else "  MISSED"
        print(f"{what:<58}{value:>9.2f} {unit:<3} (goal ≤ {goal:g}){verdict}", flush=True)

    def must(self, holds: bool, what: str) -> None:
        if not holds:
            self.wrong.append(what)
            print(f"WRONG: {what}", flush=True)


def read(name: str, text: str) -> PlanFile:
    found = read_plan(text, name)
    if not isinstance(found, PlanFile):
        raise SystemExit("\n".join(snag.render() for snag in found))
    return found


def bundled(name: str) -> PlanFile:
    return read(name, (HERE / "plans" / name).read_text(encoding="utf-8"))


@contextmanager
def solver_seconds() -> Iterator[list[float]]:
    """How long each call of the solver alone took, meanwhile."""
    spent: list[float] = []
    whole = cp_model.CpSolver.solve

    def timed(self: cp_model.CpSolver, *rest: object) -> object:
        began = time.perf_counter()
        try:
            return whole(self, *rest)  # type: ignore[arg-type]
        finally:
            spent.append(time.perf_counter() - began)

    cp_model.CpSolver.solve = timed  # type: ignore[assignment, method-assign]
    try:
        yield spent
    finally:
        cp_model.CpSolver.solve = whole  # type: ignore[method-assign]


def timed_sheet(plan: PlanFile, solver: Callable[[Problem], Solution]) -> tuple[RunSheet, float]:
    began = time.perf_counter()
    sheet = make_sheet(plan, solver)
    return sheet, time.perf_counter() - began


def supper(bench: Bench) -> None:
    """The bundled supper: proved, and how much of the time is the solver's own."""
    plan, whole, alone = bundled("lantern-supper.yaml"), [], []
    for _ in range(5):
        with solver_seconds() as spent:
            sheet, seconds = timed_sheet(plan, solve)
        whole.append(seconds)
        alone.append(sum(spent))
        bench.must(sheet.proved, "the bundled supper is not proved")
        bench.must(not (found := validate(plan, sheet)), f"the bundled supper: {found[:3]}")
    bench.show("bundled supper, proved", statistics.median(whole), "s", 2)
    shares = [a / b for a, b in zip(whole, alone, strict=True)]
    bench.show("  all of its sheet, as a multiple of the solver alone", statistics.median(shares), "×", 1.5)


def long_table(bench: Bench) -> None:
    """The largest bundled plan: when the costly aims stand at their final values, and when all is proved or nearly."""
    plan = bundled("long-table.yaml")
    problem = problem_of(plan.plan, plan.filled)
    began = time.perf_counter()
    seen: list[tuple[float, Progress]] = []
    solution = solve(problem, watch=lambda progress: seen.append((time.perf_counter() - began, progress)))
    seconds = time.perf_counter() - began
    final = {result.aim: result.value for result in solution.aims}
    # Where they can all be nought, they are from the first answer told of the next aim on; else the last of them says.
    sign = COSTLY[-1] if any(final[aim] for aim in COSTLY) else AIMS[len(COSTLY)]
    enough = final[COSTLY[-1]] if sign == COSTLY[-1] else sys.maxsize
    good = min(at for at, progress in seen if progress.aim == sign and progress.value <= enough)
    bench.show("long table, to a first answer with the costly aims final", good, "s", 3)
    print(f"  costly aims {[final[aim] for aim in COSTLY]}, proved {solution.proved}, gap {solution.gap:.1%}")
    bench.show("  to proved, or a gap of 5 %", seconds if solution.gap <= SMALL_GAP else float("inf"), "s", 20)
    sheet = make_sheet(plan, lambda _: solution)
    bench.must(not (found := validate(plan, sheet)), f"the long table: {found[:3]}")


def against_raw(bench: Bench) -> None:
    """Processor time against the same model and aims, minimised one after the other with the library's own settings;
    and of a sheet asked again after one edit, against the first."""
    for pieces, goal in ((36, 2.0), (70, 1.3), (159, 0.2)):
        text = large_plan(pieces)
        problem = problem_of((plan := read("large", text)).plan, plan.filled)
        began = time.process_time()
        solution = solve(problem)
        ours = time.process_time() - began
        raw, proved = _raw_seconds(problem)
        bench.show(f"{len(problem.jobs)} pieces, against a raw model ({raw:.1f} s)", ours / raw, "×", goal)
        print(f"  proved {solution.proved}, the raw one {proved}")
        edited = read("edited", text.replace("takes: 10 min", "takes: 12 min", 1))
        other = problem_of(edited.plan, edited.filled)
        began = time.process_time()
        again = solve(other, near=starts_of(solution, problem, other), stay="last")
        spent = time.process_time() - began
        moved = sum(a != b for a, b in zip(solution.starts, again.starts, strict=True))
        bench.show(f"  asked again after one edit, {moved} moved, against the first", spent / ours, "×", 0.5)


def _all_aims(aims: Aims) -> dict[str, cp_model.LinearExprT]:
    return {**aims.soon(), **aims.of_the_days(), **aims.late()}


def _raw_seconds(problem: Problem, most: float = 60.0) -> tuple[float, bool]:
    variables = Variables(problem)
    Limits(variables).add()
    began, proved = time.process_time(), True
    for expression in _all_aims(Aims(variables)).values():
        variables.model.minimize(expression)
        solver = cp_model.CpSolver()
        solver.parameters.num_workers = 1
        solver.parameters.max_time_in_seconds = most
        status = solver.solve(variables.model)
        proved &= status == cp_model.OPTIMAL
        if status in (cp_model.OPTIMAL, cp_model.FEASIBLE):
            variables.model.add(expression <= round(solver.objective_value))
    return time.process_time() - began, proved


def three_hundred(bench: Bench) -> None:
    """A first answer at once, and how late courses are after a minute, against five minutes."""
    plan = read("three hundred", large_plan(300))
    problem = problem_of(plan.plan, plan.filled)
    began = time.process_time()
    solve(problem, limit_seconds=0.01)
    bench.show(f"{len(problem.jobs)} pieces, to a first answer", time.process_time() - began, "s", 2)
    best = late_minutes(problem, solve(problem, limit_seconds=300))
    minute = solve(problem, limit_seconds=60)
    bench.must(not validate(plan, to_run_sheet(plan, problem, minute)), "three hundred pieces")
    bench.show("  minutes late after 60 s, beyond 1.1 × those after 300 s",
               late_minutes(problem, minute) - 1.1 * best, "min", 0)  # fmt: skip


def late_minutes(problem: Problem, solution: Solution) -> int:
    """Of all courses together."""
    return sum(max(0, end_of(problem, solution, s.job) - s.wanted) for s in problem.servings)


def random_plans(bench: Bench) -> None:
    """A hundred plans drawn at random: a sheet each, and nothing wrong with it."""
    taken, proved = [], 0
    for seed in range(RANDOM_PLANS):
        dishes = DISHES[seed % len(DISHES)]
        name = f"random plan {seed} of {dishes} dishes"
        plan = read(name, plan_text(seed, dishes))
        try:
            sheet, seconds = timed_sheet(plan, lambda problem: solve(problem, limit_seconds=RANDOM_SECONDS))
        except NoAnswer:
            bench.must(False, f"{name} has no answer in {RANDOM_SECONDS:g} s")
            continue
        except Exception as fault:  # a fault of ours: named, and the rest goes on
            bench.must(False, f"{name}: {type(fault).__name__}: {fault}")
            continue
        taken.append(seconds)
        proved += sheet.proved
        bench.must(not (found := validate(plan, sheet)), f"{name}: {len(found)} complaints, {found[:3]}")
    print(f"random plans, {DISHES[0]} to {DISHES[-1]} dishes: {len(taken)} sheets, {proved} proved", flush=True)
    bench.show("  median", statistics.median(taken), "s", RANDOM_SECONDS)
    bench.show("  slowest", max(taken), "s", RANDOM_SECONDS + 1)


def memory(bench: Bench) -> None:
    """The most a process ever held that does nothing but work out the long table's sheet."""
    command = [sys.executable, "-m", "board", "sheet", str(HERE / "plans" / "long-table.yaml"), "--fresh"]
    with tempfile.TemporaryDirectory() as kept:
        env = {**os.environ, "XDG_CACHE_HOME": kept}
        subprocess.run(command, cwd=HERE, env=env, check=True, stdout=subprocess.DEVNULL)
    bench.show("peak memory of a sheet of the long table", _peak_megabytes(), "MB", 400)


def _peak_megabytes() -> float:
    """Of the largest child so far. Linux counts in kilobytes, macOS in bytes."""
    peak = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss
    return peak / 1e6 if sys.platform == "darwin" else peak * 1024 / 1e6


def main() -> int:
    bench = Bench()
    for measure in (supper, long_table, memory, against_raw, random_plans, three_hundred):
        measure(bench)
    print(f"{len(bench.wrong)} wrong" if bench.wrong else "nothing wrong")
    return 1 if bench.wrong else 0


if __name__ == "__main__":
    sys.exit(main())
