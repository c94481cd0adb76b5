"""What stands on a screen comes from the rooms' words, each of which stands with the room that speaks it."""

import ast
import functools
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

BOARD = Path(__file__).parents[2] / "board"
# No screens: they draw the README's pictures and speak to developers only.
TOOLS = ("picture.py", "pixels.py")
FILES = sorted(
    file
    for file in (
        *(BOARD / "screens").glob("*.py"),
        *(BOARD / "view").glob("*.py"),
        BOARD / "rehearsal" / "player.py",
    )
    if file.name not in (*TOOLS, "words.py")
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
def test_no_words_but_those_of_the_word_lists(file: Path) -> None:
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


def taken(tree: ast.AST) -> tuple[dict[str, str], dict[str, str]]:
    """What a file has of words: single ones by their name in it, and whole lists; each with the list's module."""
    by_name, whole = dict[str, str](), dict[str, str]()
    for node in ast.walk(tree):
        if isinstance(node, ast.ImportFrom) and (module := node.module or "").startswith("board."):
            for alias in node.names:
                if found := re.match(r"board\.[\w.]*?\bwords\b", module):
                    by_name[alias.asname or alias.name] = found[0]
                elif alias.name == "words":
                    whole[alias.asname or alias.name] = f"{module}.words"
    return by_name, whole


def weighed_words(file: Path) -> Iterator[str]:
    """Words of the word lists that a file compares, looks for in something, or matches by."""
    tree = ast.parse(file.read_text(encoding="utf-8"))
    by_name, whole = taken(tree)
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
        "from board.base import words as shared\nfrom board.view import words\n"
        "from board.base.words import NO_PLACE\n"
        "a = where == NO_PLACE\nb = text in (words.LATE, 'x')\nc = text.startswith(shared.late('Main'))\n"
        "match text:\n    case words.TIGHT:\n        d = 1\n"
        "fine = words.late(course) if minutes > 0 else words.ON_TIME\n"
    )

    assert sorted(weighed_words(bad)) == ["NO_PLACE", "shared.late", "words.LATE", "words.TIGHT"]


def list_of(file: Path) -> str | None:
    """The list of words a file belongs to: `board.view.words`."""
    found = re.match(r".*?\bwords\b", ".".join(("board", *file.relative_to(BOARD).with_suffix("").parts)))
    return found[0] if found else None


LISTS: dict[str, list[Path]] = {}
for path in sorted(BOARD.rglob("*.py")):
    if of := list_of(path):
        LISTS.setdefault(of, []).append(path)


def statements(words: str) -> Iterator[tuple[Path, list[str], ast.stmt]]:
    """Each statement of a list that names words."""
    for file in LISTS[words]:
        for node in ast.parse(file.read_text(encoding="utf-8")).body:
            names = [node.name] if isinstance(node, ast.FunctionDef) else []
            if isinstance(node, ast.Assign | ast.AnnAssign):
                each = node.targets if isinstance(node, ast.Assign) else [node.target]
                names = [n.id for target in each for n in ast.walk(target) if isinstance(n, ast.Name)]
            yield file, [name for name in names if not name.startswith("_")], node


@pytest.mark.parametrize("words", LISTS)
def test_no_word_is_defined_twice(words: str) -> None:
    """They are reached as one; of two of one name, one would silently take the other's place."""
    found: dict[str, str] = {}
    for file, names, _ in statements(words):
        for name in names:
            assert found.setdefault(name, file.name) == file.name, f"{name} in {found[name]} and {file.name}"


@functools.cache
def spoken() -> dict[str, dict[str, set[str]]]:
    """By list and word, the rooms whose files say it."""
    found: dict[str, dict[str, set[str]]] = {words: {} for words in LISTS}
    for file in sorted(BOARD.rglob("*.py")):
        module = ".".join(("board", *file.relative_to(BOARD).parts))
        own = (words.removesuffix("words") for words in LISTS if module.startswith(words.removesuffix("words")))
        room = "board.app." if file.name == "cli.py" else next(own, file.relative_to(BOARD).parts[0])
        tree = ast.parse(file.read_text(encoding="utf-8"))
        by_name, whole = taken(tree)
        used = {(words, name) for name, words in by_name.items() if words != list_of(file)}
        for node in ast.walk(tree) if whole else ():
            if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name) and node.value.id in whole:
                used.add((whole[node.value.id], node.attr))
        for words, name in used:
            found[words].setdefault(name, set()).add(room)
    return found


def speakers(words: str) -> dict[str, set[str]]:
    """Every word of a list, and the rooms that use it; who uses a word uses the words in it."""
    found = {name: set(spoken()[words].get(name, ())) for _, names, _ in statements(words) for name in names}
    inner = [(names, {n.id for n in ast.walk(node) if isinstance(n, ast.Name)}) for _, names, node in statements(words)]
    for _ in range(len(inner)):  # as deep as words may stand in words
        for names, within in inner:
            rooms = set[str]().union(*(found[name] for name in names))
            for name in within & set(found):
                found[name] |= rooms
    return found


@pytest.mark.parametrize("words", LISTS)
def test_a_word_stands_with_the_room_that_speaks_it(words: str) -> None:
    """In the base stand those of several rooms, and the signs. A room's own are used, and by nobody else (which
    `test_imports` sees to)."""
    fewest = 2 if words == "board.base.words" else 1
    signs = {name for file, names, _ in statements(words) if file.name == "signs.py" for name in names}

    assert {name: rooms for name, rooms in speakers(words).items() if len(rooms) < fewest and name not in signs} == {}
