"""The command: how a page is asked for, and a board that is killed right after a phone's answer."""

import json
import re
import subprocess
import sys
import urllib.error
import urllib.request
from ipaddress import ip_address
from pathlib import Path

import pytest

from board.app.share_page import page_for
from board.app.words import NO_BOARD_TO_SHARE, bad_address
from board.evening.events import StepStarted
from board.log.read import read_log
from board.share.address import listening
from board.sheet.run_sheet import RunSheet
from tests.conftest import PLANS
from tests.whole.conftest import LANTERN
from tests.whole.test_terminal import Terminal, env

__all__ = ["env"]  # a fixture


def said(*words: str) -> tuple[int, str]:
    done = subprocess.run([sys.executable, "-m", "board", *words], capture_output=True, text=True, check=False)
    return done.returncode, " ".join(done.stderr.split())


def test_a_plan_after_the_option_is_not_taken_for_an_address() -> None:
    code, told = said("live", "--share", LANTERN)

    assert code == 64
    assert bad_address(LANTERN) in told


def test_without_a_board_there_is_nothing_to_share() -> None:
    assert said("rehearse", LANTERN, "--plain", "--share") == (1, NO_BOARD_TO_SHARE)


def test_the_list_is_there_for_the_plan_of_this_very_sheet(lantern_sheet: RunSheet, little: RunSheet) -> None:
    plan = PLANS / "lantern-supper.yaml"
    with listening(ip_address("127.0.0.1"), 0) as bound:
        own, other = page_for(bound, plan, lantern_sheet), page_for(bound, plan, little)

    assert own._from_plan.plan is not None
    assert len(own._from_plan.foods) > 20
    assert other._from_plan.foods == []
    assert other._from_plan.plan is None


def asked(address: str, path: str, sent: object = None) -> dict[str, object]:
    origin = address.rsplit("/", 2)[0]
    request = urllib.request.Request(
        address + path,
        data=None if sent is None else json.dumps(sent).encode(),
        headers={"Origin": origin, "Content-Type": "application/json"},
    )
    with urllib.request.urlopen(request, timeout=20) as came:
        found: dict[str, object] = json.load(came)
    return found


def address_on(shown: str) -> str:
    """It may stand in two lines of the small screen."""
    lines = shown.splitlines()
    at = next(n for n, line in enumerate(lines) if "http://" in line)
    first = re.search(r"http://\S+", lines[at])
    assert first is not None
    rest = re.search(r"([\w-]+/) *│", lines[at + 1])
    return first[0] if first[0].endswith("/") or rest is None else first[0] + rest[1]


@pytest.mark.slow
def test_what_a_phone_was_told_is_kept_though_the_board_is_killed(tmp_path: Path, env: dict[str, str]) -> None:
    log = tmp_path / "evening.jsonl"
    words = [
        "rehearse",
        LANTERN,
        "--speed",
        "1",
        "--from",
        "18:20",
        "--log",
        str(log),
        "--no-bell",
        "--share",
        "127.0.0.1",
    ]
    board = Terminal(words, (120, 36), env)
    board.wait_for("┃", 120)
    board.press("j")
    board.press("m")
    address = address_on(board.wait_for("The page for phones"))
    board.press("\x1b")
    for _ in range(10):  # to the next start
        calls = asked(address, "now?for=host")["calls"]
        assert isinstance(calls, list)
        call = next((call for call in calls if call["is_due"] and call["part"] == "start"), None)
        if call is not None:
            break
        board.press(" ")
        board.press("j")
    assert call is not None

    told = asked(address, "done", {"for": "host", **{key: call[key] for key in ("slot", "part", "number")}})
    board.kill()

    assert str(told["said"]).endswith("on the board")
    kept = [each for each in read_log(log.read_bytes(), log.name).events if isinstance(each, StepStarted)]
    assert [each.by for each in kept if each.slot == call["slot"]] == ["host"]
    code = address.rsplit("/", 2)[1]
    written = [path for path in tmp_path.rglob("*") if path.is_file() and code.encode() in path.read_bytes()]
    assert written == []

    again = Terminal(words, (120, 36), env)
    again.wait_for("┃", 60)
    with pytest.raises((urllib.error.HTTPError, urllib.error.URLError)):
        asked(address, "now")  # each evening at the board has a code of its own
    again.kill()
