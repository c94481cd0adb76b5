"""Every finding has one name, listed once, and the README says what each room is about."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

from board.plan.findings import FINDINGS

ROOT = Path(__file__).parents[2]
NAME = re.compile(r"[a-z]+ \d+")


def rooms() -> set[str]:
    return {name.split()[0] for name in FINDINGS}


def named_in_code() -> Iterator[str]:
    """Strings in the program's code that name a finding."""
    for path in (ROOT / "board").rglob("*.py"):
        if path.name == "findings.py":
            continue
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            value = node.value if isinstance(node, ast.Constant) else None
            if isinstance(value, str) and NAME.fullmatch(value) and value.split()[0] in rooms():
                yield value


def test_what_the_code_finds_is_what_the_table_lists() -> None:
    whole_file = {"plan 1"}  # also told where a file is no text, in the words of the command line

    assert set(named_in_code()) | whole_file == set(FINDINGS)


def test_no_two_findings_say_the_same() -> None:
    assert len(set(FINDINGS.values())) == len(FINDINGS)


def test_the_readme_tells_every_room() -> None:
    text = (ROOT / "README.md").read_text(encoding="utf-8")

    assert {room for room in rooms() if f"| `{room}` |" not in text} == set()
