"""What stands on a screen comes from one place: no file of screens or view holds words of its own."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

BOARD = Path(__file__).parents[2] / "board"
TOOLS = ("picture.py", "pixels.py")  # no screens: they draw the README's pictures and speak to developers only
FILES = sorted(
    file
    for file in (
        *(BOARD / "screens").glob("*.py"),
        *(BOARD / "view").glob("*.py"),
        BOARD / "rehearsal" / "player.py",
    )
    if file.name not in TOOLS
)

# Names of things (ids, style classes, keys, colours, file names, formats, markup without words) are no words.
LABEL = re.compile(r"[A-Z]|[a-z]{2,} [a-z]{2,}")
STYLE = re.compile(r"(?:bold|dim|italic|reverse|on|#[0-9a-f]{6}|\s)+|\[.*\]|.*\.tcss")


def literals(file: Path) -> Iterator[tuple[int, str]]:
    """Strings of a file that are neither docstrings nor annotations nor types' words."""
    tree = ast.parse(file.read_text(encoding="utf-8"))
    skipped = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.Module | ast.ClassDef | ast.FunctionDef | ast.AsyncFunctionDef) and node.body:
            first = node.body[0]
            if isinstance(first, ast.Expr) and isinstance(first.value, ast.Constant):
                skipped.add(id(first.value))
        if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "Binding":
            skipped |= {id(argument) for argument in node.args}
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in skipped:
            yield node.lineno, node.value


@pytest.mark.parametrize("file", FILES, ids=lambda file: f"{file.parent.name}/{file.name}")
def test_no_words_but_those_of_the_word_list(file: Path) -> None:
    wordy = [
        f"{file.name}:{line}: {text!r}"
        for line, text in literals(file)
        if LABEL.search(text) and not STYLE.fullmatch(text) and text not in ("UTC",)
    ]

    assert wordy == []


def test_the_guard_itself_would_see_a_word(tmp_path: Path) -> None:
    bad = tmp_path / "bad.py"
    bad.write_text('"""Doc words are fine."""\nlabel = "Free till then"\nother = "keep it warm"\nfine = "call-panel"\n')

    found = [text for _, text in literals(bad) if LABEL.search(text)]

    assert found == ["Free till then", "keep it warm"]


DECIDE = (
    "facts", "plan", "sheet", "schedule", "checks", "shopping", "importing", "evening", "log", "odds", "review",
    "learning", "session", "rehearsal",
)  # fmt: skip
LOOKS = ("startswith", "endswith", "index", "find", "count", "partition", "removeprefix", "removesuffix")


def weighed_words(file: Path) -> Iterator[str]:
    """Words of the word list that a file compares, looks for in something, or matches by."""
    tree = ast.parse(file.read_text(encoding="utf-8"))
    by_name, whole = set[str](), set[str]()
    for node in ast.walk(tree):
        if isinstance(node, ast.ImportFrom) and (node.module or "").startswith("board.base.words"):
            by_name |= {alias.asname or alias.name for alias in node.names}
        if isinstance(node, ast.ImportFrom) and node.module == "board.base":
            whole |= {alias.asname or alias.name for alias in node.names if alias.name == "words"}
    for node in ast.walk(tree):
        weighed: list[ast.AST] = []
        if isinstance(node, ast.Compare):
            weighed = [node.left, *node.comparators]
        elif isinstance(node, ast.MatchValue):
            weighed = [node.value]
        elif isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) and node.func.attr in LOOKS:
            weighed = [node.func.value, *node.args]
        for each in (inner for part in weighed for inner in ast.walk(part)):
            if isinstance(each, ast.Name) and each.id in by_name:
                yield each.id
            if isinstance(each, ast.Attribute) and isinstance(each.value, ast.Name) and each.value.id in whole:
                yield f"{each.value.id}.{each.attr}"


@pytest.mark.parametrize("room", DECIDE)
def test_nothing_is_decided_by_a_word(room: str) -> None:
    """What is stored and decided by are codes: with a better word, old logs and kept sheets would be read otherwise."""
    files = sorted((BOARD / room).rglob("*.py"))

    assert files
    assert {file.name: found for file in files if (found := list(weighed_words(file)))} == {}


def test_that_guard_too_would_see_one(tmp_path: Path) -> None:
    bad = tmp_path / "bad.py"
    bad.write_text(
        "from board.base import words\nfrom board.base.words import NO_PLACE\n"
        "a = where == NO_PLACE\nb = text in (words.LATE, 'x')\nc = text.startswith(words.late('Main'))\n"
        "match text:\n    case words.TIGHT:\n        d = 1\n"
        "fine = words.late(course) if minutes > 0 else words.ON_TIME\n"
    )

    assert sorted(weighed_words(bad)) == ["NO_PLACE", "words.LATE", "words.TIGHT", "words.late"]


def test_no_word_is_defined_twice() -> None:
    """They are reached as one; of two of one name, one would silently take the other's place."""
    found: dict[str, str] = {}
    for file in sorted((BOARD / "base" / "words").glob("*.py")):
        for node in ast.parse(file.read_text(encoding="utf-8")).body:
            targets = [node.name] if isinstance(node, ast.FunctionDef) else []
            if isinstance(node, ast.Assign | ast.AnnAssign):
                each = node.targets if isinstance(node, ast.Assign) else [node.target]
                targets = [n.id for target in each for n in ast.walk(target) if isinstance(n, ast.Name)]
            for name in targets:
                if not name.startswith("_"):
                    assert found.setdefault(name, file.name) == file.name, f"{name} in {found[name]} and {file.name}"
