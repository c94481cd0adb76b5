"""`platecall dish`: a saved recipe to stdout or into a new file; what is none is told, and nothing is fetched."""

import json
import socket
from pathlib import Path

import pytest

from board.base.exits import ExitCode
from tests.whole.conftest import Run

LOAF = {
    "@context": "https://schema.org",
    "@type": "Recipe",
    "name": "Oat loaf",
    "url": "https://nowhere.invalid/oat-loaf",
    "image": "https://nowhere.invalid/oat-loaf.jpg",
    "recipeIngredient": ["200 g oats"],
    "recipeInstructions": ["Bake at 180 C for 40 minutes."],
}


@pytest.fixture
def loaf(tmp_path: Path) -> Path:
    path = tmp_path / "loaf.json"
    path.write_text(json.dumps(LOAF))
    return path


@pytest.fixture(autouse=True)
def _offline(monkeypatch: pytest.MonkeyPatch) -> None:
    def never(*_: object, **__: object) -> None:
        raise AssertionError("went online")

    monkeypatch.setattr(socket.socket, "connect", never)
    monkeypatch.setattr(socket, "getaddrinfo", never)


def test_a_json_file_and_a_page_give_the_same_dish(run: Run, loaf: Path, tmp_path: Path) -> None:
    page = tmp_path / "loaf.html"
    page.write_text(f'<html><script type="application/ld+json">{json.dumps(LOAF)}</script></html>')

    first, second = run("dish", str(loaf)), run("dish", str(page))

    assert first == second
    code, out, err = first
    assert code == ExitCode.DONE
    assert "- dish: Oat loaf\n" in out
    assert err == ""


def test_it_is_written_into_a_new_file_and_never_over_another(run: Run, loaf: Path, tmp_path: Path) -> None:
    part = tmp_path / "part.yaml"

    code, out, err = run("dish", str(loaf), "-o", str(part))
    assert (code, out) == (ExitCode.DONE, "")
    assert "Written" in err
    before = part.read_bytes()
    assert b"- dish: Oat loaf\n" in before

    loaf.write_text(json.dumps({**LOAF, "name": "Rye loaf"}))
    code, _, err = run("dish", str(loaf), "-o", str(part))
    assert code == ExitCode.FAILED
    assert "there already" in err
    assert part.read_bytes() == before


def test_of_several_the_first_is_taken_and_said(run: Run, loaf: Path) -> None:
    loaf.write_text(json.dumps([LOAF, {**LOAF, "name": "Rye\x1b[2J loaf"}]))

    code, out, err = run("dish", str(loaf))

    assert code == ExitCode.DONE
    assert "there are 2 recipes in this file; the first is taken: Oat loaf" in err
    assert "Oat loaf" in out


@pytest.mark.parametrize(
    ("data", "said"),
    [(b"<html>nothing</html>", "no recipe"), (b"{broken", "not JSON"), (b"[" * 100_000, "nested too deeply")],
    ids=["a page without one", "broken", "deep"],
)  # fmt: skip
def test_what_is_no_recipe_exits_2_with_one_line(run: Run, tmp_path: Path, data: bytes, said: str) -> None:
    path = tmp_path / "ev\x1bil.html"
    path.write_bytes(data)

    code, out, err = run("dish", str(path))

    assert (code, out) == (ExitCode.STOP, "")
    assert said in err
    assert err.count("\n") == 1
    assert "\x1b" not in err


@pytest.mark.parametrize("which", ["none.html", "folder"])
def test_what_is_no_file_exits_1(run: Run, tmp_path: Path, which: str) -> None:
    (tmp_path / "folder").mkdir()

    code, out, err = run("dish", str(tmp_path / which))

    assert (code, out) == (ExitCode.FAILED, "")
    assert err.count("\n") == 1


def test_another_language_is_told(run: Run, tmp_path: Path) -> None:
    said = "Die Butter mit dem Zucker rühren. Den Teig in eine Form geben und für 40 Minuten backen."
    path = tmp_path / "kuchen.json"
    path.write_text(json.dumps({**LOAF, "recipeInstructions": [said]}))

    code, out, err = run("dish", str(path))

    assert code == ExitCode.DONE
    assert "not English (German)" in out
    assert "not English (German)" in err
