"""Whatever comes in at a terminal, and whatever fails in the screen library, the board stays or is opened again."""

import os
import signal
import sys
import time
from pathlib import Path

import pexpect
import pytest

from board.base.exits import ExitCode
from board.evening.events import NoteWritten
from board.log.read import read_log
from tests.whole.conftest import LANTERN
from tests.whole.test_terminal import Terminal
from tests.whole.test_terminal import env as own_env

__all__ = ["own_env"]

pytestmark = pytest.mark.slow
READY = "┃"


@pytest.fixture(scope="module")
def cache(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The timetable is worked out once for all."""
    return tmp_path_factory.mktemp("cache")


@pytest.fixture
def env(own_env: dict[str, str], cache: Path) -> dict[str, str]:
    return {**own_env, "XDG_CACHE_HOME": str(cache)}


# Faults put into the program under test: a key that fails in a note, and one that fails in whatever is shown.
FAULTS = """
import sys
from board.screens import ask, live, ticking
def fail(self, event):
    if event.key == "f5":
        raise ZeroDivisionError("a fault of the test")
ask.NoteScreen.on_key = fail
live.LiveScreen.on_key = fail
ticking.TickScreen.on_key = fail
from board.cli import main
sys.exit(main(sys.argv[1:]))
"""
F5 = "\x1b[15~"


class Faulty(Terminal):
    """As a terminal, with f5 as the key that fails."""

    def __init__(self, words: list[str], env: dict[str, str]) -> None:
        super().__init__(["--version"], (80, 24), env)
        self.process.close(force=True)
        self.process = pexpect.spawn(
            sys.executable, ["-c", FAULTS, *words], dimensions=(24, 80), env=env, encoding="utf-8", timeout=30
        )


def rehearsal(log: Path) -> list[str]:
    return ["rehearse", LANTERN, "--from", "18:20", "--speed", "1", "--log", str(log), "--no-bell"]


def type_bytes(board: Terminal, data: bytes) -> None:
    os.write(board.process.child_fd, data)
    board.look(0.3)


def notes(log: Path) -> list[str]:
    return [each.text for each in read_log(log.read_bytes(), log.name).events if isinstance(each, NoteWritten)]


def end(board: Terminal) -> int | None:
    """Its exit code, once it has ended."""
    left = time.monotonic() + 20
    while board.process.isalive() and time.monotonic() < left:
        board.look(0.05)
    board.process.close(force=True)
    return board.process.exitstatus


WRONG_BYTES = {
    "é of Latin-1": b"\xe9 ",
    "a mouse report beyond column 95": b"\x1b[M \x80\x85",
    "a code point there is none of": b"\x1b[99999999;1u",
    "a repeat as some terminals report it": b"\x1b[110;1:2u",
    "a code that is two": b"\x1b[1:2;3:4u",
    "a window of no size": b"\x1b[48;0;0;0;0t",
    "a window of a million rows": b"\x1b[48;999999;999999;9;9t",
    "half a sequence": b"\x1b[<0;",
    "surrogates and what is beyond": b"\xed\xa0\x80\xf5\x80\x80\x80\xff\xfe",
}


def test_no_byte_ends_the_board(tmp_path: Path, env: dict[str, str]) -> None:
    log = tmp_path / "evening.jsonl"
    board = Terminal(rehearsal(log), (80, 24), env)
    board.wait_for(READY)

    for data in WRONG_BYTES.values():
        type_bytes(board, data)
    time.sleep(0.5)
    board.press("n")
    board.press("still here\r")

    assert "note kept" in board.look(0.5)
    assert notes(log) == ["still here"]
    board.kill()


def test_a_paste_that_never_ends_ends(tmp_path: Path, env: dict[str, str]) -> None:
    board = Terminal(rehearsal(tmp_path / "evening.jsonl"), (80, 24), env)
    board.wait_for(READY)

    type_bytes(board, b"\x1b[200~abc")
    board.look(2.6)
    board.press("?")

    assert "every key" in board.look(0.5).casefold() or "closes" in board.look(0.5)
    board.kill()


def test_a_fault_opens_the_board_again_with_the_note_being_typed(tmp_path: Path, env: dict[str, str]) -> None:
    log = tmp_path / "evening.jsonl"
    board = Faulty(rehearsal(log), env)
    board.wait_for(READY)
    board.press("n")
    board.press("less salt ")

    began = time.monotonic()
    board.process.send(F5)
    board.wait_for("Opened again", 10)
    seconds = time.monotonic() - began
    shown = board.wait_for("less salt")
    board.press("next time\r")

    assert seconds <= 2.0
    assert "Traceback" not in shown
    assert notes(log) == ["less salt next time"]
    board.press(" ")
    assert "Opened again" not in board.look(0.5)  # once
    board.kill()


def test_a_board_that_falls_again_and_again_ends_with_a_code_of_its_own(tmp_path: Path, env: dict[str, str]) -> None:
    log = tmp_path / "evening.jsonl"
    board = Faulty(rehearsal(log), env)
    board.wait_for(READY)
    for _ in range(12):
        if not board.process.isalive():
            break
        board.process.send(F5)
        board.look(0.7)

    assert end(board) == ExitCode.FAULT
    shown = " ".join("\n".join(board.screen.display).split())
    assert "the run log is whole" in shown
    assert "ZeroDivisionError" in shown
    assert read_log(log.read_bytes(), log.name).dropped is None


def test_the_list_to_tick_is_opened_again(tmp_path: Path, env: dict[str, str]) -> None:
    plan = tmp_path / "supper.yaml"
    plan.write_bytes(Path(LANTERN).read_bytes())
    ticking = Faulty(["provisions", str(plan), "--tick"], env)
    ticking.wait_for("0 of", 60)
    ticking.press(" ")
    ticking.process.send("\x1b[15~")

    shown = ticking.wait_for("Opened again", 10)

    assert "1 of" in shown
    ticking.press("q")
    assert end(ticking) == ExitCode.DONE


def test_watching_goes_on_after_wrong_bytes(tmp_path: Path, env: dict[str, str]) -> None:
    log = tmp_path / "evening.jsonl"
    board = Terminal(rehearsal(log), (80, 24), env)
    board.wait_for(READY)
    watching = Terminal(["watch", str(log)], (80, 24), env)
    watching.wait_for(READY)

    for data in WRONG_BYTES.values():
        type_bytes(watching, data)
    watching.press("?")
    watching.wait_for("closes")
    board.kill()
    watching.kill()


@pytest.mark.parametrize("number", [signal.SIGTERM, signal.SIGHUP, signal.SIGQUIT, signal.SIGINT])
def test_a_signal_ends_the_board_in_good_order(tmp_path: Path, env: dict[str, str], number: signal.Signals) -> None:
    log = tmp_path / "evening.jsonl"
    board = Terminal(rehearsal(log), (80, 24), env)
    board.wait_for(READY)
    drawn = ""

    os.kill(board.process.pid, number)
    while True:
        try:
            drawn += board.process.read_nonblocking(65536, timeout=10)
        except pexpect.EOF:
            break
    board.process.close()

    assert board.process.exitstatus == 128 + number
    assert "\x1b[?1049l" in drawn
    assert drawn.rindex("\x1b[?25h") > 0
    assert "Traceback" not in drawn
    assert read_log(log.read_bytes(), log.name).dropped is None
    assert not list(tmp_path.glob("*.lock"))


def test_a_terminal_that_goes_away_ends_the_board(tmp_path: Path, env: dict[str, str]) -> None:
    log = tmp_path / "evening.jsonl"
    board = Terminal(rehearsal(log), (80, 24), env)
    board.wait_for(READY)
    pid = board.process.pid

    os.close(board.process.child_fd)
    left, status = time.monotonic() + 15, 0
    while time.monotonic() < left:
        found, status = os.waitpid(pid, os.WNOHANG)
        if found:
            break
        time.sleep(0.05)

    assert found == pid
    assert os.waitstatus_to_exitcode(status) == 128 + signal.SIGHUP
    assert not list(tmp_path.glob("*.lock"))


def test_ctrl_c_asks_in_our_words(tmp_path: Path, env: dict[str, str]) -> None:
    board = Terminal(rehearsal(tmp_path / "evening.jsonl"), (80, 24), env)
    board.wait_for(READY)

    board.press("\x03")

    assert "Leave the board" in board.look(0.5)
    board.kill()
