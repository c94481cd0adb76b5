"""Wrong signs put into the decision core, one at a time, and whether the room's own tests mind: `mutants.py --sample 10`.

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
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from importlib.machinery import ModuleSpec
from pathlib import Path
from types import ModuleType
from typing import Any

import hypothesis
import ortools.sat.python.cp_model  # noqa: F401  # slow to import, so before the forks; nothing of the program is
import pydantic  # noqa: F401
import pytest

TREE = Path(__file__).parents[2]
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
NOT_HERE = ("board.schedule.solver", "board.session.replan.worker", "board.session.replan.client")  # decide nothing
DEAREST = "dearest = next((gain for gain in gains if gain), 0)  # in the order of the aims"
IN_HALF_HOUR = "if part.end > plated - HALF_HOUR and part.start < plated"
# Mutants that nobody can tell from the original: the module, the line as it stands, what was put there; and why.
EQUAL: dict[tuple[str, str, str], str] = {
    ("board.session.replan.gain", DEAREST, "1"): "no gain at all is not enough, and asked for first",
    ("board.session.replan.gain", DEAREST, "-1"): "the same",
    ("board.session.replan.gain", "if not enough or dearest < 0:", "dearest <= 0"): "the same",
    ("board.session.replan.gain", "if not enough or dearest < 0:", "1"): "the same; gains are whole",
    (
        "board.checks.plan.precedence",
        "for id_ in self.order[self.order.index(first) + 1 :]:",
        "0",
    ): "nothing follows itself",
    ("board.sheet.company", 'found = ("", -1)', "2"): "any number below zero",
    ("board.sheet.company", IN_HALF_HOUR, "part.end >= plated - HALF_HOUR"): "adds no minute",
    ("board.sheet.company", IN_HALF_HOUR, "part.start <= plated"): "adds no minute",
}
FLIPPED: dict[type[ast.AST], Callable[[], Any]] = {
    ast.Lt: ast.LtE, ast.LtE: ast.Lt, ast.Gt: ast.GtE, ast.GtE: ast.Gt, ast.Eq: ast.NotEq, ast.NotEq: ast.Eq,
    ast.Add: ast.Sub, ast.Sub: ast.Add, ast.And: ast.Or, ast.Or: ast.And,
}  # fmt: skip
SWAPPED = {"min": "max", "max": "min"}
Place = tuple[str, int]  # a module, and the line of a statement
Trees = dict[str, ast.AST]


@dataclass(frozen=True)
class Mutant:
    """One wrong sign. `statement`: the line of the smallest statement in a function around it, else 0."""

    module: str
    line: int
    column: int
    statement: int
    before: str
    after: str

    def __str__(self) -> str:
        return f"{self.module}:{self.line}:{self.column}  {self.before}  →  {self.after}"


def path_of(module: str) -> Path:
    return TREE / (module.replace(".", "/") + ".py")


def tree_of(module: str) -> ast.AST:
    return ast.parse(path_of(module).read_text(encoding="utf-8"))


def wrong(node: ast.AST, tells_bool: bool) -> Iterator[tuple[str, Any]]:
    """What can be put wrong about one node: which of its attributes, and what is put there."""
    match node:
        case ast.Compare(ops=ops):
            flips = [(n, FLIPPED[type(op)]()) for n, op in enumerate(ops) if type(op) in FLIPPED]
            yield from (("ops", [*ops[:n], flip, *ops[n + 1 :]]) for n, flip in flips)
        case ast.BinOp(op=op) | ast.AugAssign(op=op) | ast.BoolOp(op=op) if type(op) in FLIPPED:
            yield "op", FLIPPED[type(op)]()
        case ast.UnaryOp(op=ast.Not(), operand=operand):
            yield "operand", ast.UnaryOp(ast.Not(), operand)  # twice not: as if there were none
        case ast.Call(func=ast.Name(id="min" | "max" as name)):
            yield "func", ast.Name(SWAPPED[name], ast.Load())
        case ast.Constant(value=value) if type(value) is int and value in (0, 1):
            yield from (("value", value + by) for by in (1, -1))
        case ast.Return(value=ast.expr() as value) if tells_bool:
            yield "value", ast.UnaryOp(ast.Not(), value)


def walk(node: ast.AST, statement: int = 0, tells_bool: bool = False) -> Iterator[tuple[ast.AST, int, bool]]:
    """Every node that is no annotation, the statement it stands in, and whether its function tells a bool."""
    yield node, statement, tells_bool
    function = isinstance(node, ast.FunctionDef)
    if function:
        tells_bool = isinstance(node.returns, ast.Name) and node.returns.id == "bool"  # type: ignore[attr-defined]
    said = (getattr(node, "annotation", None), getattr(node, "returns", None))
    for child in [each for each in ast.iter_child_nodes(node) if each not in said]:
        inner = child.lineno if (statement or function) and isinstance(child, ast.stmt) else statement
        yield from walk(child, inner, tells_bool)


def mutants(module: str) -> Iterator[tuple[Mutant, ast.AST]]:
    """Each, and the module's tree with it in place; the tree is good until the next is asked for."""
    tree = tree_of(module)
    for node, statement, tells_bool in list(walk(tree)):
        for name, put in wrong(node, tells_bool):
            right, before = getattr(node, name), ast.unparse(node)
            setattr(node, name, put)
            place = node.lineno, node.col_offset + 1  # type: ignore[attr-defined]
            yield Mutant(module, *place, statement, before, ast.unparse(node)), ast.fix_missing_locations(tree)
            setattr(node, name, right)


class Noting(ast.NodeTransformer):
    """Lets every statement of a function tell first that it is come by."""

    def __init__(self, module: str) -> None:
        self.module, self.in_function = module, False

    def visit(self, node: ast.AST) -> Any:
        outside, self.in_function = self.in_function, self.in_function or isinstance(node, ast.FunctionDef)
        node, self.in_function = self.generic_visit(node), outside
        if not (outside and isinstance(node, ast.stmt)):
            return node
        return [*ast.parse(f"_come_by(({self.module!r}, {node.lineno}))").body, node]


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
        sys.path.insert(0, str(TREE))
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


def seen(modules: Sequence[str], tests: Sequence[str]) -> dict[str, tuple[float, set[Place]]]:
    """The tests as they run with nothing wrong."""
    with tempfile.TemporaryDirectory() as folder:
        notes = Notes(Path(folder) / "notes")
        if not passes({each: Noting(each).visit(tree_of(each)) for each in modules}, tests, 1800, notes):
            raise SystemExit(f"{' '.join(tests)}: a test fails with nothing wrong")
        return pickle.loads(notes.file.read_bytes())


def killed(mutant: Mutant, tree: ast.AST, tests: dict[str, tuple[float, set[Place]]], seconds: float) -> bool:
    place, chosen, lasts = (mutant.module, mutant.statement), [], 0.0
    for test, (takes, places) in sorted(tests.items(), key=lambda each: each[1][0]):
        if (place in places or not mutant.statement) and (not chosen or lasts + takes <= seconds):
            chosen, lasts = [*chosen, test], lasts + takes
    return bool(chosen) and not passes({mutant.module: tree}, chosen, 30 + 3 * lasts)


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
        modules = [
            ".".join(p.relative_to(TREE).with_suffix("").parts)
            for p in sorted(path_of(room).with_suffix("").rglob("*.py"))
        ]
        modules = [m for m in modules if not m.startswith(NOT_HERE)]
        if args.only:
            modules = [m for m in modules if any(m == o or m.startswith(o + ".") for o in args.only)]
        drawn = {}
        for module in modules:
            every = [str(each) for each, _ in mutants(module)]
            drawn[module] = random.Random(f"{args.seed} {module}").sample(every, min(args.sample, len(every)))
        if not any(drawn.values()):
            continue
        tests, counts = seen(modules, args.tests or own), Counter()
        for module in modules:
            lines = path_of(module).read_text(encoding="utf-8").splitlines()
            for mutant, tree in mutants(module):
                if str(mutant) not in drawn[module] or (again is not None and f"lived   {mutant}\n" not in again):
                    continue
                equal = (module, lines[mutant.line - 1].strip(), mutant.after) in EQUAL
                found = "equal" if equal else "killed" if killed(mutant, tree, tests, args.seconds) else "lived"
                counts[found] += 1
                print(f"{found:<7} {mutant}", flush=True)
        print(
            f"{room}: killed {counts['killed']} of {counts['killed'] + counts['lived']}, {counts['equal']} equal",
            flush=True,
        )


if __name__ == "__main__":
    main()
