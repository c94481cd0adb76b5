"""Every finding has one name, listed once, with what it weighs, and every room says what it is about."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from board.plan.findings import FINDINGS, ROOMS, weights

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


def test_every_room_says_what_it_is_about() -> None:
    assert set(ROOMS) == rooms()


def weighed_in_code() -> dict[str, set[str]]:
    """By finding, the weights that the code gives it in so many words."""
    found: dict[str, set[str]] = {}
    for path in (ROOT / "board").rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and ast.unparse(node.func) == "Snag" and len(node.args) > 1:
                code, weight = (ast.unparse(each).strip("'") for each in node.args[:2])
                if code in FINDINGS and weight.startswith("Weight."):
                    found.setdefault(code, set()).add(weight.removeprefix("Weight.").casefold())
    return found


def test_a_finding_weighs_what_the_table_says() -> None:
    found = weighed_in_code()

    assert len(found) > 60
    assert {name: given for name, given in found.items() if not given <= set(weights(name))} == {}


@pytest.mark.parametrize("name", FINDINGS)
def test_its_weights_are_known_the_worst_first(name: str) -> None:
    order = ("stop", "ask", "mind", "note")

    assert list(weights(name)) == sorted(weights(name), key=order.index)
    assert weights(name)


FOR_ALL = {"food 7"}  # the one fridge there is


def test_every_finding_that_can_stop_a_meal_names_what_it_is_about() -> None:
    """So that a stop which a log holds is told from others by more than its words."""
    silent, stops = set(), 0
    for path in (ROOT / "board" / "checks").rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and ast.unparse(node.func) == "Snag" and can_stop(node):
                stops += 1
                code = ast.unparse(node.args[0]).strip("'")
                silent |= {code} - {code for key in node.keywords if key.arg == "about"}

    assert stops > 20
    assert silent == FOR_ALL


def can_stop(snag: ast.Call) -> bool:
    """Whether it is about somebody's safety, and not always of less weight."""
    safety = [key.value for key in snag.keywords if key.arg == "safety"]
    less = ("Weight.ASK", "Weight.MIND", "Weight.NOTE")
    return bool(safety) and ast.unparse(snag.args[1]) not in less
