"""The house has one direction. Its walls are guarded twice: by reading every import, and by looking at what a
fresh interpreter really loads."""

import ast
import functools
import subprocess
import sys
from pathlib import Path

import pytest

BOARD = Path(__file__).parents[2] / "board"

# Left to right; each may use only what stands left of it (rooms in one group not one another).
LAYERS: list[set[str]] = [
    {
        "board.base.plain",
        "board.base.wrap",
        "board.base.words",
        "board.base.clock",
        "board.base.exits",
        "board.base.plan_digest",
    },
    {"board.files.settings"},
    {"board.facts"},
    {"board.plan"},
    {"board.importing.recipe", "board.importing.starter"},
    {"board.checks.plan", "board.schedule"},
    {"board.schedule.solver"},
    {"board.checks.sheet"},
    {"board.shopping"},
    {"board.evening"},
    {"board.odds"},
    {"board.view"},
    {"board.log"},
    {"board.learning"},
    {"board.files.bookshelf"},
    {"board.session.evening"},
    {"board.session"},
    {"board.session.playthrough", "board.session.watching"},
    {"board.rehearsal.night"},
    {"board.rehearsal.mishaps", "board.rehearsal.nightly"},
    {"board.screens.speech"},
    {"board.output", "board.screens", "board.files.cache"},
    {"board.files.desk"},
    {"board.files.writing"},
    {"board.app.evenings"},
    {
        "board.app.learning",
        "board.app.mending",
        "board.session.plan_eye",
        "board.app.first_picture",
        "board.app.consent",
        "board.files.larder",
    },
    {"board.app.new_plan", "board.app.effects"},
    {"board.app.sessions"},
    {"board.app"},
    {"board.screens.picture"},
    {"board.cli"},
    {"board.__main__"},
]
RANK = {room: rank for rank, group in enumerate(LAYERS) for room in group}

PURE = (
    "plan", "kitchen", "checks", "timetable", "safety", "provisions", "run", "odds", "lessons", "view", "recipe",
    "beginning",
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
        if name != "board":
            found.append((name, file))
    return found


@functools.cache
def imports(file: Path) -> set[str]:
    found: set[str] = set()
    for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.module:
            found |= {node.module, *(f"{node.module}.{alias.name}" for alias in node.names)}
    return found


def test_every_file_lies_in_a_room_with_a_place_in_the_house() -> None:
    assert [name for name, _ in modules() if room_of(name) is None] == []


@pytest.mark.parametrize(("name", "file"), modules(), ids=lambda value: value if isinstance(value, str) else "")
def test_a_room_uses_only_what_stands_left_of_it(name: str, file: Path) -> None:
    own = room_of(name)
    assert own is not None
    for other in imports(file):
        room = room_of(other)
        if room is None or room == own:
            continue
        inside = room.startswith(own + ".") or own.startswith(room + ".")
        allowed = RANK[room] < RANK[own]
        assert allowed, f"{name} uses {other}, which stands {'inside' if inside else 'right of'} {own}"


def test_the_validator_shares_nothing_with_what_computes_a_sheet() -> None:
    """It reads a run sheet and a plan; of the kitchen it takes constants, and writes every formula anew."""
    own = {(name, file) for name, file in modules() if name.startswith("board.schedule.audit.validate")}
    allowed = {"board.sheet.run_sheet", "board.facts.heat", *(name for name, _ in own)}

    assert len(own) >= 5
    for name, file in own:
        rooms = ("board.schedule", "board.facts")
        used = {m for m, _ in modules() if m in imports(file) and m.startswith(rooms)}
        assert used <= allowed, name
        from_heat = {i.removeprefix("board.facts.heat.") for i in imports(file) if i.startswith("board.facts.heat.")}
        assert all(constant.isupper() for constant in from_heat), name


@pytest.mark.parametrize(("name", "file"), modules(), ids=lambda value: value if isinstance(value, str) else "")
def test_only_the_clock_reads_the_time_and_the_core_touches_no_file(name: str, file: Path) -> None:
    """`time.perf_counter` measures how long a solve took, and is no time of day."""
    tree = ast.parse(file.read_text(encoding="utf-8"))
    called = {
        f"{node.func.value.id}.{node.func.attr}"
        for node in ast.walk(tree)
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) and isinstance(node.func.value, ast.Name)
    }
    if name != "board.base.clock":
        forbidden = {"datetime.now", "datetime.today", "datetime.utcnow", "date.today", "time.time", "time.monotonic"}
        assert not called & forbidden
    if name.split(".")[1] in PURE:
        names = {
            node.func.id for node in ast.walk(tree) if isinstance(node, ast.Call) and isinstance(node.func, ast.Name)
        }
        assert not names & {"open", "input", "print"}
        assert not {i.split(".")[0] for i in imports(file)} & {"textual", "os", "pathlib", "sys", "subprocess"}


def test_solver_and_screens_stay_in_their_rooms() -> None:
    for name, file in modules():
        roots = {i.split(".")[0] for i in imports(file)}
        assert "ortools" not in roots or name.startswith("board.schedule.solver"), name
        assert "textual" not in roots or name.startswith("board.screens"), name


def test_arrays_stay_with_the_odds() -> None:
    for name, file in modules():
        assert "numpy" not in {i.split(".")[0] for i in imports(file)} or name.startswith("board.odds"), name


def test_package_files_stay_empty() -> None:
    for file in BOARD.rglob("__init__.py"):
        if file.parent not in (BOARD, BOARD / "words"):  # the words are reached as one
            assert file.read_text() == "", file


def loaded_by(statement: str) -> set[str]:
    """Top-level names a fresh interpreter holds after a statement; a static look would miss deferred imports."""
    code = f"import sys\n{statement}\nprint('\\n'.join(sorted({{m.split('.')[0] for m in sys.modules}})))"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    return set(done.stdout.split())


HEAVY = {"ortools", "pydantic", "ruamel", "textual", "dateutil", "numpy"}


@pytest.mark.parametrize(
    ("statement", "allowed"),
    [
        ("import board.cli", set()),
        ("import board.evening.fold, board.evening.forecast, board.evening.calls, board.evening.decide", set()),
        ("import board.odds.many, board.output.odds", {"numpy"}),
        ("import board.evening.rule, board.odds.result", set()),
        ("import board.session.evening, board.log.write, board.view.board", set()),
        ("import board.files.desk, board.files.cache", set()),
        ("import board.app.sessions", set()),
        ("import board.screens.app", {"textual"}),
        ("import board.plan.load, board.checks.plan.every", {"pydantic", "ruamel", "dateutil"}),
        ("import board.schedule.write_up", {"pydantic", "ruamel", "dateutil"}),
    ],
)
def test_nothing_heavy_is_loaded_before_it_is_needed(statement: str, allowed: set[str]) -> None:
    assert loaded_by(statement) & HEAVY <= allowed


def test_the_first_picture_waits_for_no_screen_library() -> None:
    """It is there to be read while that library loads."""
    code = "import sys, board.app.sessions, board.app.first_picture\nprint([m for m in sys.modules if m.startswith('textual')])"
    loaded = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, cwd=BOARD.parent)

    assert loaded.stdout.strip() == "[]"
