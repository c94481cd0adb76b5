"""A clock a day or more off, as far as the run log or the plan file can tell, is asked about before the board opens."""

import io
import os
import sys
from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from board.app.confirm_clock import ask_about_clock
from board.app.sessions import Dress, run_board
from board.base.clock import StoppedClock
from board.base.errors import Trouble
from board.evening.events import EveningClosed
from board.log.read import LogContents, read_log
from board.log.write import RunLog
from board.session.session import open_evening
from board.sheet.run_sheet import RunSheet
from tests.conftest import at


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    """Saved on 28 November at noon."""
    path = tmp_path / "supper.yaml"
    path.write_text("event: Supper\n", encoding="utf-8")
    os.utime(path, (at("12:00").timestamp(),) * 2)
    return path


@pytest.fixture
def begun(little: RunSheet, tmp_path: Path) -> LogContents:
    """An evening opened at 16:58 on 28 November; by its timetable it ends at 19:35."""
    path = tmp_path / "evening.jsonl"
    open_evening(little, StoppedClock(at("16:58")), RunLog(path), rehearsal=False).close()
    return read_log(path.read_bytes(), path.name)


def asked(sheet: RunSheet, contents: LogContents | None, plan: Path, now: datetime) -> bool:
    questions: list[str] = []

    def ask(question: str) -> str:
        questions.append(question)
        return "Y "

    ask_about_clock(sheet, contents, plan, now, ask)
    return bool(questions)


@pytest.mark.parametrize(
    ("now", "wanted"),
    [
        (at("16:58") - timedelta(days=1), True),  # a day before the log's last line
        (at("16:59") - timedelta(days=1), False),  # a clock that lost less goes on, as a jump
        (at("19:34") + timedelta(days=1), False),
        (at("19:35") + timedelta(days=1), True),  # a day after the evening's end
        (at("19:35") + timedelta(days=9999), True),
    ],
)
def test_an_evening_gone_on_with(
    little: RunSheet, begun: LogContents, plan: Path, now: datetime, *, wanted: bool
) -> None:
    assert asked(little, begun, plan, now) == wanted


@pytest.mark.parametrize(("days", "wanted"), [(-9999, True), (-1, True), (-0.99, False), (0.1, False)])
def test_a_new_evening_by_when_the_plan_was_saved(little: RunSheet, plan: Path, days: float, *, wanted: bool) -> None:
    assert asked(little, None, plan, at("12:00") + timedelta(days=days)) == wanted


def test_a_plan_that_is_gone_asks_nothing(little: RunSheet, tmp_path: Path) -> None:
    assert not asked(little, None, tmp_path / "none.yaml", at("12:00") - timedelta(days=9999))


def test_an_evening_that_was_ended_is_looked_at_any_day(little: RunSheet, begun: LogContents, plan: Path) -> None:
    ended = replace(begun, events=(*begun.events, EveningClosed(n=2, at=at("19:40"))))

    assert not asked(little, ended, plan, at("19:35") + timedelta(days=30))


@pytest.mark.parametrize("typed", ["", "n", "what"])
def test_anything_but_yes_leaves(
    little: RunSheet, begun: LogContents, plan: Path, typed: str, capsys: pytest.CaptureFixture[str]
) -> None:
    with pytest.raises(Trouble, match="Set the machine's clock"):
        ask_about_clock(little, begun, plan, at("16:00") - timedelta(days=3), lambda _: typed)

    assert capsys.readouterr().out == (
        "This machine's clock says Wed 25 Nov 2026 16:00; the run log's last line is from Sat 28 Nov 2026 16:58.\n"
    )


def test_no_answer_at_all_leaves(little: RunSheet, begun: LogContents, plan: Path) -> None:
    def nobody(_: str) -> str:
        raise EOFError

    with pytest.raises(Trouble, match="not opened"):
        ask_about_clock(little, begun, plan, at("16:00") - timedelta(days=3), nobody)


def test_the_board_is_not_opened_and_the_log_stays_as_it_was(
    little: RunSheet, begun: LogContents, plan: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    log = tmp_path / "evening.jsonl"
    before = log.read_bytes()
    monkeypatch.setattr(sys, "stdin", io.StringIO("no\n"))

    with pytest.raises(Trouble, match="not opened"):
        run_board(little, log, StoppedClock(at("16:00") - timedelta(days=3)), Dress(), plan=plan)

    assert log.read_bytes() == before
    RunLog(log).close()  # nobody holds it
