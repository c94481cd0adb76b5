"""The installed command in a real terminal: keys, kill −9, resume. pexpect is the terminal, pyte its screen."""

import os
import signal
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

import pexpect
import pyte
import pytest

from board.evening.fold import fold_all
from board.evening.state import State, begin
from board.log.read import read_log
from board.screens.held import HELD_SECONDS
from tests.whole.conftest import LANTERN


class Terminal:
    """A process under a pseudo-terminal, and what its screen shows."""

    def __init__(self, words: list[str], size: tuple[int, int], env: dict[str, str]) -> None:
        self.columns, self.rows = size
        self.screen = pyte.Screen(self.columns, self.rows)
        self.stream = pyte.Stream(self.screen)
        self.process = pexpect.spawn(
            sys.executable, ["-m", "board", *words], dimensions=(self.rows, self.columns), env=env, encoding="utf-8",
            timeout=30,
        )  # fmt: skip

    def look(self, seconds: float = 0.15) -> str:
        """The screen after reading for a while."""
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            try:
                self.stream.feed(self.process.read_nonblocking(65536, timeout=0.05))
            except pexpect.TIMEOUT:
                continue
            except pexpect.EOF:
                break
        return "\n".join(self.screen.display)

    def wait_for(self, text: str, seconds: float = 90.0) -> str:
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            shown = self.look()
            if text in shown:
                return shown
        raise AssertionError(f"{text!r} never came:\n{shown}")

    def press(self, key: str) -> None:
        self.process.send(key)
        self.look(0.6)

    def kill(self) -> None:
        os.kill(self.process.pid, signal.SIGKILL)
        self.process.wait()


@pytest.fixture
def env(tmp_path: Path, keep_lantern: Callable[[Path], None]) -> dict[str, str]:
    """Where the bundled plan's timetable has been worked out before."""
    keep_lantern(tmp_path / "cache" / "platecall" / "sheets")
    here = Path(__file__).parents[2]
    return {
        **os.environ,
        "HOME": str(tmp_path),
        "XDG_DATA_HOME": str(tmp_path / "data"),
        "XDG_CACHE_HOME": str(tmp_path / "cache"),
        "PYTHONPATH": str(here),
        "TERM": "xterm-256color",
        "LANG": "C.UTF-8",
    }


def state_of(log: Path) -> State:
    contents = read_log(log.read_bytes(), log.name)
    return fold_all(begin(contents.opened.sheet), [contents.opened, *contents.events])


@pytest.mark.slow
def test_an_evening_killed_twice_goes_on_where_it_stopped(tmp_path: Path, env: dict[str, str]) -> None:
    log = tmp_path / "evening.jsonl"
    words = ["rehearse", LANTERN, "--speed", "10", "--from", "18:20", "--log", str(log), "--no-bell"]
    answered: list[dict[str, str]] = []

    for _ in range(3):
        board = Terminal(words, (80, 24), env)
        board.wait_for("┃")
        for _ in range(3):
            board.press("j")
            board.press(" ")
        board.press("h")
        answered.append({id_: step.status for id_, step in state_of(log).steps.items()})
        board.kill()
        with log.open("ab") as torn:
            torn.write(b'{"event":"StepFinished","n":')  # as if it died while writing

    board = Terminal(words, (80, 24), env)
    board.wait_for("Gone on with")
    after = {id_: step.status for id_, step in state_of(log).steps.items()}
    board.press("q")
    board.press("e")
    board.wait_for("closes this page")
    board.press("q")
    board.process.expect(pexpect.EOF)
    board.process.close()

    assert after == answered[-1]
    assert len({tuple(a.items()) for a in answered}) == 3  # each board did get answers in
    assert board.process.exitstatus == 0
    assert state_of(log).closed


def test_a_second_board_on_the_same_log_is_refused(tmp_path: Path, env: dict[str, str]) -> None:
    log = tmp_path / "evening.jsonl"
    words = ["rehearse", LANTERN, "--log", str(log)]
    first = Terminal(words, (80, 24), env)
    first.wait_for("┃")

    second = Terminal(words, (80, 24), env)
    second.process.expect("another board has this run log open")
    second.process.expect(pexpect.EOF)
    second.process.close()

    assert second.process.exitstatus == 1
    first.kill()


def test_what_is_due_is_read_before_the_board_stands(tmp_path: Path, env: dict[str, str]) -> None:
    board = Terminal(["rehearse", LANTERN, "--no-log", "--from", "19:19", "--no-bell"], (80, 24), env)
    drawn = ""
    while "┃" not in drawn:
        drawn += board.process.read_nonblocking(65536, timeout=30)
    first = drawn[: drawn.index("┃")]
    board.kill()

    assert "the keys work in a moment" in first
    assert "Broth at 19:" in first
    assert first.count("\x1b[?1049h") >= 1  # on the other screen, where the host's own lines are safe


@pytest.mark.slow
def test_the_hosts_own_lines_come_back_after_the_board(tmp_path: Path, env: dict[str, str]) -> None:
    board = Terminal(["rehearse", LANTERN, "--no-log", "--from", "19:19", "--no-bell"], (80, 24), env)
    board.wait_for("┃")
    board.press("q")
    time.sleep(1.2 * HELD_SECONDS)  # the same key sooner would be one held down
    board.process.send("q")
    board.process.expect(pexpect.EOF)
    left = board.process.before

    assert "\x1b[?1049l" in left
    assert left.rindex("\x1b[?25h") > 0  # the cursor shows again
    assert "No run log was kept" in left[left.rindex("\x1b[?1049l") :]


@pytest.mark.slow
def test_a_night_with_mishaps_is_practised_on_the_board_and_ends_in_words(tmp_path: Path, env: dict[str, str]) -> None:
    log = tmp_path / "night.jsonl"
    night = ["--mishaps", "rough", "--seed", "3"]
    board = Terminal(["rehearse", LANTERN, *night, "--from", "18:20", "--log", str(log), "--no-bell"], (80, 40), env)
    board.wait_for("┃")
    board.press("j")
    board.press(" ")
    board.press("q")
    board.press("e")
    board.wait_for("closes this page")
    board.press("q")
    left = board.wait_for("How the night went")
    board.process.close()

    assert "was slow all night." in left
    assert "was not served." in left
    assert state_of(log).closed


def test_what_is_wrong_with_a_plan_breaks_between_words_on_a_terminal(tmp_path: Path, env: dict[str, str]) -> None:
    plan = tmp_path / "plan.yaml"
    plan.write_text("event: x\nkitchen: {hobs: 4}\n")
    piped = subprocess.run(
        [sys.executable, "-m", "board", "check", str(plan)], env=env, capture_output=True, text=True, check=False
    ).stderr
    terminal = Terminal(["check", str(plan)], (100, 60), env)

    terminal.wait_for("to mend")
    shown = [line.rstrip() for line in terminal.screen.display]

    assert max(map(len, piped.split("\n"))) > 100
    assert " ".join(shown).split() == piped.split()


@pytest.mark.slow
def test_what_is_said_while_a_timetable_is_worked_out_is_wiped_away(env: dict[str, str], tmp_path: Path) -> None:
    cold = {**env, "XDG_CACHE_HOME": str(tmp_path / "cold")}
    terminal = Terminal(["check", LANTERN], (80, 200), cold)

    shown = terminal.wait_for("pieces of work")

    assert "working out" not in shown
