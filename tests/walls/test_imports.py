"""The house has one direction, and walls that are sentences. Each is guarded twice: by reading every import, and by
looking at what a fresh interpreter really loads."""

import ast
import functools
import re
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

import pytest

BOARD = Path(__file__).parents[2] / "board"

# Left to right; each may use only what stands left of it (rooms of one group not one another).
RANKS: list[set[str]] = [
    {"board.base"},
    {"board.facts"},
    {"board.plan.snag", "board.plan.findings", "board.plan.phrases"},
    {"board.plan.places"},
    {"board.plan.model"},
    {"board.plan.resolve"},
    {"board.plan.load", "board.plan.schema"},
    {"board.plan.edit"},
    {"board.sheet"},
    {"board.schedule"},
    {"board.schedule.solver"},
    {"board.checks.raw_food"},
    {"board.checks.allergens"},
    {"board.checks.plan"},
    {"board.checks.sheet"},
    {"board.shopping"},
    {"board.importing.recipe", "board.importing.shelf", "board.importing.ways"},
    {"board.importing.starter"},
    {"board.evening"},
    {"board.log"},
    {"board.odds"},
    {"board.review"},
    {"board.learning"},
    {"board.view"},
    {"board.session"},
    {"board.rehearsal"},
    {"board.files"},
    {"board.manual.pages", "board.manual.shown"},
    {"board.output", "board.screens"},
    {"board.share", "board.manual"},
    {"board.app"},
    {"board.cli"},
    {"board.__main__"},
]
RANK = {room: rank for rank, group in enumerate(RANKS) for room in group}

PURE = (
    "facts", "plan", "sheet", "schedule", "checks", "shopping", "importing", "evening", "odds", "review", "learning",
    "view",
)  # fmt: skip


def room_of(module: str) -> str | None:
    """The longest known room a module lies in; None for the bare package and everything outside it."""
    pieces = module.split(".")
    for count in range(len(pieces), 1, -1):
        if ".".join(pieces[:count]) in RANK:
            return ".".join(pieces[:count])
    return None


@functools.cache
def modules() -> list[tuple[str, Path]]:
    found = []
    for file in sorted(BOARD.rglob("*.py")):
        name = ".".join(("board", *file.relative_to(BOARD).with_suffix("").parts)).removesuffix(".__init__")
        if file.name != "__init__.py" or file.parent.name == "words":
            found.append((name, file))
    return found


@functools.cache
def imports(file: Path, *, at_once: bool = False) -> frozenset[str]:
    """Dotted names a file imports; `at_once`: only those it imports as it is loaded itself."""
    found: set[str] = set()
    for node in _statements(ast.parse(file.read_text(encoding="utf-8")), at_once):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.module:
            found |= {node.module, *(f"{node.module}.{alias.name}" for alias in node.names)}
    return frozenset(found)


def _statements(node: ast.AST, at_once: bool) -> list[ast.AST]:
    found: list[ast.AST] = [node]
    for child in ast.iter_child_nodes(node):
        later = isinstance(child, ast.FunctionDef | ast.AsyncFunctionDef) or (
            isinstance(child, ast.If) and "TYPE_CHECKING" in ast.dump(child.test)
        )
        if not (at_once and later):
            found += _statements(child, at_once)
    return found


def test_every_file_lies_in_a_room_with_a_place_in_the_house() -> None:
    assert [name for name, _ in modules() if room_of(name) is None] == []


def test_no_file_lies_loose() -> None:
    assert {file.name for file in BOARD.glob("*.py")} == {"__init__.py", "__main__.py", "cli.py"}


def test_a_room_uses_only_what_stands_left_of_it() -> None:
    climbs = [
        f"{name} uses {other}"
        for name, file in modules()
        for other in imports(file)
        if (own := room_of(name)) and (room := room_of(other)) and room != own and RANK[room] >= RANK[own]
    ]

    assert climbs == []


def test_the_validator_shares_nothing_with_what_computes_a_sheet() -> None:
    """It reads a run sheet and a plan; of the facts it takes constants and the figures of a rule set, and writes every
    formula anew."""
    own = {(name, file) for name, file in modules() if name.startswith("board.schedule.audit")}
    sheet = {"board.sheet.run_sheet", "board.sheet.told", "board.sheet.said"}
    allowed = {*sheet, "board.facts.heat", "board.facts.rule_sets", *(name for name, _ in own)}

    assert len(own) >= 5
    for name, file in own:
        rooms = ("board.schedule", "board.sheet", "board.facts")
        used = {m for m, _ in modules() if m in imports(file) and m.startswith(rooms)}
        assert used <= allowed, name
        from_heat = {i.removeprefix("board.facts.heat.") for i in imports(file) if i.startswith("board.facts.heat.")}
        assert all(constant.isupper() for constant in from_heat), name


OF_THE_DAY = {"datetime.now", "datetime.today", "datetime.utcnow", "date.today", "time.time", "time.monotonic"}


def test_only_the_clock_reads_the_time() -> None:
    """`time.perf_counter` measures how long a solve took, and is no time of day."""
    readers = {
        name
        for name, file in modules()
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8")))
        if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name)
        if f"{node.value.id}.{node.attr}" in OF_THE_DAY
    }

    assert readers == {"board.base.clock"}


def test_the_core_touches_no_file_and_no_terminal() -> None:
    core = [(name, file) for name, file in modules() if name.split(".")[1] in PURE]
    outside = {"textual", "os", "pathlib", "sys", "subprocess"}
    doers = {
        name
        for name, file in core
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8")))
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in {"open", "input", "print"}
    }
    users = {name for name, file in core if {i.split(".")[0] for i in imports(file)} & outside}

    assert len(core) > 200
    users.remove("board.schedule.solver.library")  # which keeps one module from being loaded, and touches nothing else
    assert doers | users == set()


@pytest.mark.parametrize(
    ("library", "room"),
    [
        ("ortools", "board.schedule.solver"),
        ("textual", "board.screens"),
        ("numpy", "board.odds"),
        ("aiohttp", "board.share"),
    ],
)
def test_a_heavy_library_stays_in_its_room(library: str, room: str) -> None:
    users = {name for name, file in modules() if library in {i.split(".")[0] for i in imports(file)}}

    assert users
    assert all(name.startswith(room) for name in users), users


def packages() -> list[Path]:
    """Every room's own file, but for the words, which are reached as one."""
    return sorted(file for file in BOARD.rglob("__init__.py") if file.parent != BOARD and file.parent.name != "words")


def face(package: Path) -> set[str]:
    """What a room's docstring names for the others."""
    told = ast.get_docstring(ast.parse(package.read_text(encoding="utf-8"))) or ""
    return set(re.findall(r"`(\w+)`", told.partition("For the other rooms:")[2]))


@pytest.mark.parametrize("package", packages(), ids=lambda file: str(file.parent.relative_to(BOARD)))
def test_a_folder_shows_its_face_and_nothing_more_is_used_of_it(package: Path) -> None:
    """Its file holds a docstring alone, which names the modules that other rooms may use."""
    own = ".".join(("board", *package.parent.relative_to(BOARD).parts))
    used = {
        other.removeprefix(f"{own}.").partition(".")[0]
        for name, file in modules()
        if not name.startswith(f"{own}.") and name != own
        for other in imports(file)
        if other.startswith(f"{own}.")
    }
    inside = {path.stem for path in package.parent.iterdir() if path.suffix == ".py" or (path / "__init__.py").exists()}

    assert len(ast.parse(package.read_text(encoding="utf-8")).body) == 1
    assert used & inside <= face(package) | NO_FACE.get(own, set()) <= inside


# Data that is read as a folder: the file itself is the list.
NO_FACE = {
    "board.facts.foods": {file.stem for file in (BOARD / "facts" / "foods").glob("*.py")},
    "board.facts.rules": {file.stem for file in (BOARD / "facts" / "rules").glob("*.py")},
}


HEAVY = {"ortools", "pydantic", "ruamel", "textual", "dateutil", "numpy", "aiohttp", "segno", "psutil"}
READING = {"pydantic", "ruamel", "dateutil"}


@dataclass(frozen=True)
class Wall:
    """What can be loaded without some libraries."""

    opened: tuple[str, ...]
    without: frozenset[str]


WALLS = {
    "the command line loads nothing heavy before it knows what is asked": Wall(("board.cli",), frozenset(HEAVY)),
    "the board opens without the solver, the plan reader and arrays": Wall(
        ("board.app.sessions", "board.screens.app"), frozenset(HEAVY - {"textual"})
    ),
    "what is due is drawn before the screen library is there": Wall(
        ("board.app.sessions", "board.app.splash"), frozenset(HEAVY)
    ),
    "an evening goes on without plan reader, solver and screens": Wall(
        (
            "board.evening.fold", "board.evening.forecast", "board.evening.calls", "board.evening.decide",
            "board.session.session", "board.log.write", "board.view.board",
        ),
        frozenset(HEAVY),
    ),
    "a kept sheet is found without reading the plan": Wall(
        ("board.files.plans", "board.files.cache"), frozenset(HEAVY)
    ),
    "odds want arrays and nothing else": Wall(
        ("board.odds.many", "board.output.odds"), frozenset(HEAVY - {"numpy"})
    ),
    "the rule of the evening and told odds want no arrays": Wall(
        ("board.evening.rule", "board.odds.result"), frozenset(HEAVY)
    ),
    "a plan is read and checked without the solver": Wall(
        ("board.plan.load", "board.checks.sheet.assessed"), frozenset(HEAVY - READING)
    ),
    "a timetable is asked for and written without the solver": Wall(
        ("board.schedule.to_run_sheet",), frozenset(HEAVY - READING)
    ),
}  # fmt: skip


@pytest.mark.parametrize("wall", WALLS.values(), ids=WALLS)
def test_a_wall_holds_by_what_is_imported(wall: Wall) -> None:
    files = dict(modules())
    seen: set[str] = set()
    to_see = list(wall.opened)
    while to_see:
        name = to_see.pop()
        if name in files and name not in seen:
            seen.add(name)
            to_see += imports(files[name], at_once=True)
    roots = {each.split(".")[0] for name in seen for each in imports(files[name], at_once=True)}

    assert set(wall.opened) <= seen
    assert roots & wall.without == set()


@pytest.mark.parametrize("wall", WALLS.values(), ids=WALLS)
def test_a_wall_holds_in_a_fresh_interpreter(wall: Wall) -> None:
    """A look at the text alone would miss what libraries load, and imports made later."""
    code = f"import sys\nimport {', '.join(wall.opened)}\nprint(*{{m.split('.')[0] for m in sys.modules}})"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, cwd=BOARD.parent)

    assert set(done.stdout.split()) & wall.without == set()
