"""A live evening on a plan that could hurt somebody: the stops are read, and a word typed, before the board opens."""

from pathlib import Path

import pexpect
import pytest

from board.base.exits import ExitCode
from board.evening.events import StopsAccepted
from board.log.read import read_log
from board.sheet.told import Stop
from tests.examples import first
from tests.whole.conftest import LANTERN, Run
from tests.whole.test_holds import ended
from tests.whole.test_kept_safe import PLAN
from tests.whole.test_terminal import Terminal, env, state_of

__all__ = ["env"]

FAR_OFF = PLAN.replace("2026-11-28", "2099-11-28").lstrip()  # a plan whose evening is not over
ASKED = "type understood"


@pytest.fixture
def plan(tmp_path: Path) -> str:
    path = tmp_path / "supper.yaml"
    path.write_text(FAR_OFF, encoding="utf-8")
    return str(path)


def asked(plan: str, log: Path, env: dict[str, str]) -> Terminal:
    """The board's command, up to its question."""
    board = Terminal(["live", plan, "--log", str(log), "--no-bell"], (100, 30), env)
    board.process.expect(ASKED, timeout=120)
    return board


@pytest.mark.slow
def test_understood_opens_the_board_and_the_log_and_the_review_say_so(
    tmp_path: Path, env: dict[str, str], plan: str, run: Run
) -> None:
    log = tmp_path / "evening.jsonl"
    board = asked(plan, log, env)
    before = " ".join(str(board.process.before).split())
    assert "This must be mended before anybody eats" in before
    assert "food 1: braise the thighs" in before
    assert not log.exists()  # nothing has begun

    board.process.sendline("understood")
    board.wait_for("┃")
    board.kill()

    accepted = state_of(log).stops_accepted
    assert [isinstance(stop, Stop) and stop.finding for stop in accepted] == ["food 1", "food 10"]
    again = Terminal(["live", plan, "--log", str(log), "--no-bell"], (100, 30), env)
    assert ASKED not in again.wait_for("┃")  # gone on with, and not asked again
    again.press("q")
    again.press("e")
    again.wait_for("closes this page")
    again.press("q")
    again.wait_for("What it taught: platecall lessons")
    again.process.close()
    events = read_log(log.read_bytes(), "x").events
    assert sum(isinstance(event, StopsAccepted) for event in events) == 1
    _, out, _ = run("review", str(log), "--all")
    assert "In spite of" in out
    assert "food 1" in out
    _, told, _ = run("review", str(log), "--json")
    assert '"stops_accepted": [' in told


@pytest.mark.parametrize("typed", first(1, ["yes", "", "Understood!"]))
def test_anything_else_leaves_with_2_and_begins_nothing(
    tmp_path: Path, env: dict[str, str], plan: str, typed: str
) -> None:
    log = tmp_path / "evening.jsonl"
    board = asked(plan, log, env)

    board.process.sendline(typed)
    said, code = ended(board)

    assert code == ExitCode.STOP
    assert "The board was not opened" in said
    assert not log.exists()


def test_without_a_terminal_it_is_refused(run: Run, plan: str) -> None:
    code, _, err = run("live", plan)

    assert code == ExitCode.FAILED
    assert "needs a terminal" in err


def test_a_rehearsal_tells_them_in_one_line_and_asks_nothing(run: Run, plan: str) -> None:
    code, _, err = run("rehearse", plan, "--plain")

    assert code == ExitCode.DONE
    (line,) = [each for each in err.splitlines() if "before anybody eats" in each]
    assert "food 1: braise the thighs" in line
    assert "food 10: Cream salad" in line


def test_a_plan_without_stops_is_opened_at_once(tmp_path: Path, env: dict[str, str]) -> None:
    soon = tmp_path / "supper.yaml"
    soon.write_text(Path(LANTERN).read_text(encoding="utf-8"), encoding="utf-8")
    log = tmp_path / "evening.jsonl"
    board = Terminal(["rehearse", str(soon), "--speed", "1", "--log", str(log)], (100, 30), env)

    board.wait_for("┃", 120)

    with pytest.raises(pexpect.TIMEOUT):
        board.process.expect(ASKED, timeout=0.2)
    board.kill()
    assert not any(isinstance(event, StopsAccepted) for event in read_log(log.read_bytes(), "x").events)
