"""The command line itself: options in any place, none ignored, `-` for the standard streams, nothing but data on
stdout (common practice of command lines; `-`: POSIX.1-2017, Base Definitions 12.2, guideline 13)."""

import io
import itertools
import re
import shlex
import sys
from pathlib import Path
from typing import Any

import pytest

from board import __version__
from board.app import words
from board.app.option_rules import NEEDS, NOT_WITH
from board.base.exits import ExitCode
from tests.whole.conftest import LANTERN, Run


@pytest.fixture
def piped(monkeypatch: pytest.MonkeyPatch) -> None:
    """The lantern supper comes on standard input."""
    monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(Path(LANTERN).read_bytes()), encoding="utf-8"))


def test_the_version_is_told(run: Run) -> None:
    assert run("--version") == (ExitCode.DONE, f"platecall {__version__}\n", "")


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        (["check", "--jsn", LANTERN], "--json"),
        (["sheet", LANTERN, "--whi", "x"], "--why"),
        (["check", LANTERN, "--jsno"], "--json"),
        (["dishes", "keep", "--corse", "Main", LANTERN, "x"], "--course"),
    ],
)
def test_a_wrong_option_shows_that_commands_usage_and_the_option_meant(run: Run, typed: list[str], meant: str) -> None:
    code, _, err = run(*typed)

    assert code == ExitCode.USAGE
    assert f"usage: platecall {' '.join(typed[: 2 if typed[0] == 'dishes' else 1])} " in err
    assert f"Did you mean {meant}?" in err


@pytest.mark.parametrize(
    "typed",
    [
        ["--json", "table", LANTERN],
        ["table", "--json", LANTERN],
        ["table", LANTERN, "--json"],
        ["--course", "Main", "table", "--json", LANTERN],
    ],
)
def test_options_stand_anywhere(run: Run, typed: list[str]) -> None:
    code, out, err = run(*typed)

    assert (code, err) == (ExitCode.DONE, "")
    assert out.startswith("{")


def test_options_stand_between_logs(run: Run, tmp_path: Path) -> None:
    _, _, err = run("review", str(tmp_path / "a.jsonl"), "--json", str(tmp_path / "b.jsonl"))

    assert "a.jsonl" in err
    assert "b.jsonl" in err


def _filled(command: str, option: str) -> list[str]:
    values = {"--by": "lane", "--why": "broth", "--ways-out": "1", "--take": "1", "--for": "wall", "--html": "x.html",
              "--paper": "letter", "--limit": "5", "--names": "Ines", "--out": "x", "--plan": LANTERN,
              "--log": "x", "--seed": "3", "--anonymise": "x", "--theme": "ansi", "--say": "true",
              "--speed": "9", "--of": "check", "--also": "x"}  # fmt: skip
    if option == "--log" and command == "schema":
        return [option]
    return [option, values[option]] if option in values else [option] if option.startswith("-") else ["extra.jsonl"]


def _words(command: str) -> list[str]:
    return [command] if command in ("logs", "schema") else [command, LANTERN]


@pytest.mark.parametrize(("command", "option"), [(c, o) for c, rows in NEEDS.items() for o in rows])
def test_an_option_that_would_be_ignored_alone_is_refused(run: Run, command: str, option: str) -> None:
    code, out, err = run(*_words(command), *_filled(command, option))

    assert (code, out) == (ExitCode.USAGE, "")
    assert NEEDS[command][option] in err
    assert f"usage: platecall {command} " in err


@pytest.mark.parametrize(
    ("command", "one", "other"), [(c, a, b) for c, rows in NOT_WITH.items() for a, others in rows for b in others]
)
def test_options_of_which_one_would_be_ignored_are_refused(run: Run, command: str, one: str, other: str) -> None:
    code, out, err = run(*_words(command), *_filled(command, one), *_filled(command, other))

    assert (code, out) == (ExitCode.USAGE, "")
    assert one in err


FORMS = ("--json", "--markdown", "--html", "--csv")


@pytest.mark.parametrize("command", words.COMMANDS)
def test_no_form_of_output_is_ignored_for_another(run: Run, command: str) -> None:
    """Every command: of two forms, and of a paper's size for what is no page, one would be ignored."""
    _, shown, _ = run(command, "--help")
    forms = [form for form in FORMS if f" {form} " in shown.replace("\n", " ").replace("]", " ").replace("[", " ")]

    for one, other in itertools.combinations(forms, 2):
        code, out, err = run(*_words(command), *_filled(command, one), *_filled(command, other))
        assert (code, out) == (ExitCode.USAGE, ""), (one, other)
        assert one in err
    if " --paper " in shown:
        assert NEEDS[command]["--paper"] == "--html"


@pytest.mark.usefixtures("piped")
@pytest.mark.parametrize(
    "typed", [["check", "-"], ["guests", "-"], ["table", "-"], ["provisions", "-"], ["sheet", "-", "--json"]]
)
def test_a_plan_comes_on_standard_input(run: Run, typed: list[str]) -> None:
    code, out, _ = run(*typed)

    assert code == ExitCode.DONE
    assert "Lantern supper" in out


@pytest.mark.parametrize("text", ["event: [", ""])
def test_a_fault_on_standard_input_is_told_by_its_line(run: Run, monkeypatch: pytest.MonkeyPatch, text: str) -> None:
    monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(text.encode()), encoding="utf-8"))

    code, _, err = run("check", "-")

    assert code == ExitCode.STOP
    assert "standard input:1:" in err


@pytest.mark.parametrize(
    "typed", [["settle", "-"], ["sheet", "-", "--take", "1"], ["lessons", "-", "--take", "all"],
              ["lessons", "-", "--from-book"], ["dishes", "fill", "-"], ["live", "-"], ["watch", "-"]]
)  # fmt: skip
@pytest.mark.usefixtures("piped")
def test_what_writes_into_its_file_takes_none_from_standard_input(run: Run, typed: list[str]) -> None:
    code, out, err = run(*typed)

    assert (code, out) == (ExitCode.USAGE, "")
    assert "standard input" in err


@pytest.mark.parametrize(
    ("typed", "begins"),
    [(["calendar", LANTERN, "-o", "-"], "BEGIN:VCALENDAR"), (["sheet", LANTERN, "--html", "-"], "<!doctype html>"),
     (["provisions", LANTERN, "--html", "-"], "<!doctype html>")],
)  # fmt: skip
def test_a_dash_writes_to_standard_output(
    run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, typed: list[str], begins: str
) -> None:
    monkeypatch.chdir(tmp_path)
    kept = io.BytesIO()
    monkeypatch.setattr(sys, "stdout", io.TextIOWrapper(kept, encoding="utf-8"))

    code = run(*typed)[0]

    assert code == ExitCode.DONE
    assert kept.getvalue().decode().startswith(begins)
    assert not (tmp_path / "-").exists()


def test_a_new_plan_goes_to_standard_output(run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    kept = io.BytesIO()
    monkeypatch.setattr(sys, "stdout", io.TextIOWrapper(kept, encoding="utf-8"))
    menu = tmp_path / "menu.txt"
    menu.write_text("Main: Roast chicken\nSweet: Plum tart\n", encoding="utf-8")

    code, _, err = run("new", "-", "--menu", str(menu), "--zone", "Europe/Dublin")
    sys.stdout.flush()

    assert code == ExitCode.DONE, err
    assert "\nevent: " in f"\n{kept.getvalue().decode()}"
    assert not (tmp_path / "-").exists()


@pytest.mark.parametrize("typed", [["sheet"], ["sheet", "--by", "lane"], ["sheet", "--for", "wall"], ["guests"],
                                   ["table"], ["provisions"], ["check"], ["odds", "--evenings", "100"]])  # fmt: skip
def test_no_line_ends_in_spaces_or_is_wider_than_columns(
    run: Run, monkeypatch: pytest.MonkeyPatch, typed: list[str]
) -> None:
    monkeypatch.setenv("COLUMNS", "72")

    _, out, _ = run(typed[0], LANTERN, *typed[1:])

    lines = out.splitlines()
    assert len(lines) > 5
    assert [line for line in lines if line != line.rstrip()] == []
    assert [line for line in lines if len(line) > 72] == []


def test_a_written_page_leaves_standard_output_to_data(run: Run, tmp_path: Path) -> None:
    code, out, err = run("sheet", LANTERN, "--html", str(tmp_path / "wall.html"))

    assert (code, out) == (ExitCode.DONE, "")
    assert "wall.html" in err


def _as_long_as_it_takes(name: str, examples: str) -> Any:
    return pytest.param(name, marks=[pytest.mark.slow] if "platecall rehearse" in examples else [])


@pytest.mark.parametrize(
    "name",
    [_as_long_as_it_takes("", words.CLI_EXAMPLES)]
    + [_as_long_as_it_takes(name, example) for name, (_, example) in words.COMMANDS.items()],
)
def test_the_examples_in_help_run_as_they_are_printed(
    run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, name: str
) -> None:
    """But for what needs a terminal, which says so."""
    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(b""), encoding="utf-8"))
    _, out, _ = run(*([name] if name else []), "--help")
    examples = re.findall(r"^  (?:(.*) \| )?platecall (.+)$", out.split("example")[-1], re.MULTILINE)

    assert examples
    for fed, line in examples:
        if fed:
            printed = shlex.split(fed)[1].encode().decode("unicode_escape")
            monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(printed.encode()), encoding="utf-8"))
        typed, _, into = line.partition(" > ")
        kept = io.BytesIO()
        monkeypatch.setattr(sys, "stdout", io.TextIOWrapper(kept, encoding="utf-8"))
        code, _, err = run(*shlex.split(typed))
        sys.stdout.flush()
        if into:
            (tmp_path / into).write_bytes(kept.getvalue())
        assert code == ExitCode.DONE or "terminal" in err, f"{line}: {err}"
