"""The installed command in a real terminal: a log that cannot be kept, a plan that cannot be used, looking on."""

import re
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pexpect
import pytest

from board.log.read import read_log
from tests.whole.conftest import LANTERN, Run
from tests.whole.test_terminal import Terminal, env

__all__ = ["env"]


def ended(board: Terminal) -> tuple[str, int | None]:
    """All it still says, and its exit code."""
    board.process.expect(pexpect.EOF)
    said = board.process.before
    board.process.close()
    return " ".join(str(said).split()), board.process.exitstatus


@pytest.mark.slow
def test_where_nothing_can_be_kept_the_board_says_so_before_it_begins_and_can_go_without(
    tmp_path: Path, env: dict[str, str]
) -> None:
    (tmp_path / "logs").write_text("in the way")
    words = ["rehearse", LANTERN, "--speed", "1"]
    refused = Terminal([*words, "--log", str(tmp_path / "logs" / "evening.jsonl")], (120, 24), env)
    said, code = ended(refused)
    assert code == 1
    assert "--no-log" in said

    board = Terminal([*words, "--no-log"], (80, 24), env)
    board.wait_for("no run log: leaving the board forgets the evening")
    board.press("q")
    board.process.send("l")
    said, code = ended(board)

    assert code == 0
    assert list((tmp_path / "data").rglob("*.jsonl")) == []


@pytest.mark.slow
def test_left_while_the_log_cannot_be_written_the_evening_lies_elsewhere_whole(
    tmp_path: Path, env: dict[str, str]
) -> None:
    log = tmp_path / "logs" / "evening.jsonl"
    board = Terminal(["rehearse", LANTERN, "--speed", "1", "--from", "18:20", "--log", str(log)], (100, 30), env)
    board.wait_for("┃")
    for file in log.parent.iterdir():
        file.unlink()
    log.parent.rmdir()
    log.parent.write_text("in the way")
    for key in ("n", "still here", "\r"):
        board.press(key)
    board.wait_for("NOT ON DISK YET: 1 answer")
    board.press("q")
    board.process.send("l")
    said, code = ended(board)

    assert code == 1
    assert "could not be written to its end" in said
    carried = read_log((tmp_path / "evening.jsonl").read_bytes(), "x")  # home
    assert carried.dropped is None
    assert [e.text for e in carried.events if hasattr(e, "text")] == ["still here"]


@pytest.mark.slow
def test_an_evening_goes_on_though_its_plan_cannot_be_used_any_more(tmp_path: Path, env: dict[str, str]) -> None:
    plan, log = tmp_path / "supper.yaml", tmp_path / "evening.jsonl"
    coming = datetime.now(UTC).date() + timedelta(days=2)  # an evening that is over opens no board
    text = re.sub("^date: .*$", f"date: {coming}", Path(LANTERN).read_text(encoding="utf-8"), flags=re.M)
    plan.write_text(text, encoding="utf-8")
    first = Terminal(["live", str(plan), "--log", str(log)], (80, 24), env)
    first.wait_for("┃")
    first.kill()
    plan.write_text(text.replace("courses:", "curses:"), encoding="utf-8")

    again = Terminal(["live", str(plan), "--log", str(log)], (80, 24), env)
    again.wait_for("As it is now it gives no timetable")
    again.press("\r")
    assert "Nibbles" in again.wait_for("free until")
    again.kill()


@pytest.mark.slow
def test_another_terminal_looks_on_while_the_first_runs(tmp_path: Path, env: dict[str, str]) -> None:
    log = tmp_path / "evening.jsonl"
    looking = Terminal(["watch", str(log)], (100, 30), env)
    looking.wait_for("There is no evening in")
    board = Terminal(["rehearse", LANTERN, "--speed", "1", "--from", "18:20", "--log", str(log)], (80, 24), env)
    board.wait_for("┃")
    looking.wait_for("looking on")
    board.press("j")
    board.press("x")
    left_out = [e.slot for e in read_log(log.read_bytes(), "x").events if type(e).__name__ == "StepLeftOut"]
    assert len(left_out) == 1
    looking.press("q")
    _, code = ended(looking)

    assert code == 0
    board.kill()


@pytest.mark.parametrize("command", ["watch", "review"])
def test_what_is_no_run_log_is_told(run: Run, tmp_path: Path, command: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("board.app.live_commands.has_terminal", lambda: True)
    path = tmp_path / "notes.txt"
    path.write_text("two lemons\n")

    code, _, err = run(command, str(path))

    assert code == 1
    assert "notes.txt:1: this is not a run log" in err


def test_a_damaged_log_is_reviewed_as_far_as_it_is_sound(run: Run, tmp_path: Path) -> None:
    log = tmp_path / "evening.jsonl"
    run("rehearse", LANTERN, "--plain", "--log", str(log))
    lines = log.read_bytes().splitlines(keepends=True)
    log.write_bytes(b"".join([*lines[:40], b'{"event":"Sm', *lines[41:]]))

    code, out, err = run("review", str(log))

    assert code == 0
    told = re.search(r":41: this line is damaged: .*; lines 41 to (\d+) were left", " ".join(err.split()))
    assert told is not None
    assert int(told[1]) == len(lines) - 1
    assert "Lantern supper" in out
