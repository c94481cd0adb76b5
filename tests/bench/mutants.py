"""Wrong signs put into the decision core, one at a time, and whether the room's own tests mind: `mutants.py`.

`--seed S`; `--only MODULE` or a whole room, more than once; `--tests PATH`, in place of the room's own; `--again FILE`,
only what lived by an earlier run's output. Nothing on disk is touched: tests run in a fork that compiles one module
from a changed tree.

A first run of a room's tests notes which test comes by which statement. A mutant meets only the tests that come by it,
the quickest first, until one fails (killed) or `--seconds` of tests have passed (lived).
"""

import argparse
import ast
import builtins
import os
import pickle
import random
import signal
import sys
import tempfile
import time
from collections import Counter
from collections.abc import Iterator, Sequence
from importlib.machinery import ModuleSpec
from pathlib import Path
from types import ModuleType
from typing import Any

import hypothesis
import ortools.sat.python.cp_model  # noqa: F401  # slow to import, so before the forks; nothing of the program is
import pydantic  # noqa: F401
import pytest

sys.path.insert(0, str(Path(__file__).parents[2]))

from tests.bench.wrong_signs import EQUAL, TREE, Mutant, Noting, mutants, path_of, tree_of

ROOMS = {  # and their own tests
    "board.evening": ["tests/evening"],
    "board.schedule": ["tests/schedule"],
    "board.checks.plan": ["tests/checks/plan"],
    "board.checks.sheet": ["tests/checks/sheet"],
    "board.shopping": ["tests/shopping"],
    "board.review": ["tests/review"],
    "board.session.replan": ["tests/session/replan"],
    "board.sheet": ["tests/sheet", "tests/checks/sheet/test_exposure.py"],
}
NOT_HERE = ("board.schedule.solver", "board.session.replan.anew")  # decide nothing
Place = tuple[str, int]  # a module, and the line of a statement
Trees = dict[str, ast.AST]


class Changed:
    """Finds and loads modules from trees in place of their files."""

    def __init__(self, trees: Trees) -> None:
        self.trees = trees

    def find_spec(self, name: str, *_: Any) -> ModuleSpec | None:
        return ModuleSpec(name, self, origin=str(path_of(name))) if name in self.trees else None  # type: ignore[arg-type]

    def create_module(self, _: ModuleSpec) -> None:
        return None

    def exec_module(self, module: ModuleType) -> None:
        exec(compile(self.trees[module.__name__], str(path_of(module.__name__)), "exec"), module.__dict__)  # type: ignore[arg-type]


class Notes:
    """What each test comes by, and its seconds. What a fixture came by counts for every test that asks for it."""

    def __init__(self, file: Path) -> None:
        self.file, self.now, self.fixtures = file, set[Place](), dict[int, set[Place]]()
        self.tests: dict[str, tuple[float, set[Place]]] = {}

    def _anew(self) -> set[Place]:
        """What was noted; the set itself stays the one that is written to."""
        noted = set(self.now)
        self.now.clear()
        return noted

    @pytest.hookimpl(wrapper=True)
    def pytest_fixture_setup(self, fixturedef: Any) -> Iterator[None]:
        outside = self._anew()
        made = yield
        self.fixtures[id(fixturedef)] = set(self.now)
        self.now |= outside
        return made

    @pytest.hookimpl(wrapper=True)
    def pytest_runtest_protocol(self, item: Any) -> Iterator[None]:
        self._anew()
        begun = time.perf_counter()
        done = yield
        asked = [id(each) for several in item._fixtureinfo.name2fixturedefs.values() for each in several]
        places = self.now.union(*(self.fixtures.get(each, ()) for each in asked))
        self.tests[item.nodeid] = time.perf_counter() - begun, places
        return done

    def pytest_sessionfinish(self) -> None:
        self.file.write_bytes(pickle.dumps(self.tests))


def passes(trees: Trees, tests: Sequence[str], seconds: float, notes: Notes | None = None) -> bool:
    """Whether tests pass in time, in a process of their own, with these modules changed."""
    if not (pid := os.fork()):
        os.setsid()
        os.chdir(TREE)
        os.dup2(os.open(os.devnull, os.O_WRONLY), 1)
        os.dup2(1, 2)
        builtins._come_by = notes.now.add if notes else None  # type: ignore[attr-defined]
        sys.meta_path.insert(0, Changed(trees))  # type: ignore[arg-type]
        found = [hypothesis.Phase.explicit, hypothesis.Phase.generate]  # no need to make what fails small
        hypothesis.settings.register_profile("mutants", derandomize=True, database=None, phases=found)
        hypothesis.settings.load_profile("mutants")
        os._exit(pytest.main(["-x", "-p", "no:cacheprovider", *tests], [notes] if notes else []))
    until = time.monotonic() + seconds
    while time.monotonic() < until:
        done, status = os.waitpid(pid, os.WNOHANG)
        if done:
            return status == 0
        time.sleep(0.02)
    os.killpg(pid, signal.SIGKILL)
    os.waitpid(pid, 0)
    return False


Tests = dict[str, tuple[float, set[Place]]]


def seen(modules: Sequence[str], tests: Sequence[str]) -> Tests:
    """The tests as they run with nothing wrong."""
    with tempfile.TemporaryDirectory() as folder:
        notes = Notes(Path(folder) / "notes")
        if not passes({each: Noting(each).visit(tree_of(each)) for each in modules}, tests, 1800, notes):
            raise SystemExit(f"{' '.join(tests)}: a test fails with nothing wrong")
        found: Tests = pickle.loads(notes.file.read_bytes())
        return found


def is_killed(mutant: Mutant, tree: ast.AST, tests: Tests, seconds: float) -> bool:
    chosen, lasts = [], 0.0
    for test, (takes, places) in sorted(tests.items(), key=lambda each: each[1][0]):
        comes_by = not mutant.statement or (mutant.module, mutant.statement) in places
        if comes_by and (not chosen or lasts + takes <= seconds):
            chosen, lasts = [*chosen, test], lasts + takes
    return bool(chosen) and not passes({mutant.module: tree}, chosen, 30 + 3 * lasts)


def modules_of(room: str, only: Sequence[str]) -> list[str]:
    files = sorted((TREE / room.replace(".", "/")).rglob("*.py"))
    names = [".".join(file.relative_to(TREE).with_suffix("").parts) for file in files]
    deciding = [m for m in names if not m.startswith(NOT_HERE) and not m.endswith(".words")]
    return [m for m in deciding if any(f"{m}.".startswith(f"{o}.") for o in only or [room])]


def drawn(module: str, sample: int, seed: int) -> set[str]:
    every = [str(each) for each, _ in mutants(module)]
    return set(random.Random(f"{seed} {module}").sample(every, min(sample, len(every))))


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--sample", type=int, default=10, help="so many of each module")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--only", action="append")
    parser.add_argument("--tests", nargs="+")
    parser.add_argument("--again", type=Path)
    parser.add_argument("--seconds", type=float, default=20)
    args = parser.parse_args()
    again = args.again.read_text(encoding="utf-8") if args.again else None
    for room, own in ROOMS.items():
        wanted = {module: drawn(module, args.sample, args.seed) for module in modules_of(room, args.only)}
        if again is not None:
            wanted = {m: {each for each in names if f"lived   {each}\n" in again} for m, names in wanted.items()}
        wanted = {module: names for module, names in wanted.items() if names}
        if not wanted:
            continue
        tests, counts = seen(list(wanted), args.tests or own), Counter[str]()
        for module, names in wanted.items():
            lines = path_of(module).read_text(encoding="utf-8").splitlines()
            for mutant, tree in mutants(module):
                if str(mutant) not in names:
                    continue
                equal = (module, lines[mutant.line - 1].strip(), mutant.after) in EQUAL
                found = "equal" if equal else "killed" if is_killed(mutant, tree, tests, args.seconds) else "lived"
                counts[found] += 1
                print(f"{found:<7} {mutant}", flush=True)
        told = counts["killed"] + counts["lived"]
        print(f"{room}: killed {counts['killed']} of {told}, {counts['equal']} equal", flush=True)


if __name__ == "__main__":
    main()
