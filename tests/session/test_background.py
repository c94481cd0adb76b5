"""One process works things out beside the board: kinds of requests do not wait for one another, and it ends with the
board, also where that is killed."""

import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

import pytest

from board.app.worker import Searches
from board.session.background import Background, EditedPlan, PlanProved, PlanText, PlanTried, RestOfEvening
from tests.conftest import PLANS, at
from tests.screens.test_speech import is_running
from tests.session.conftest import heard
from tests.session.replan.conftest import PIE, Slipping, pie, pie_sheet, slipping  # noqa: F401  # fixtures

# A process that answers what is asked last first.
BACKWARDS = """
import json, sys
kinds = [json.loads(sys.stdin.readline())["type"] for _ in range(2)]
for kind in reversed(kinds):
    print(json.dumps({"to": kind, "digest": kind}), flush=True)
sys.stdin.read()
"""
# A board that asks for a timetable, and then hangs; its worker says who it is.
BOARD = """
import sys, time
from pathlib import Path
from board.session.background import Background, EditedPlan
background = Background(Path(sys.argv[1]), (sys.executable, "-c", sys.argv[2]))
background.ask(EditedPlan(()))
time.sleep(600)
"""
WORKER = """
import os, runpy, sys
print(os.getpid(), file=open(os.environ["WHO"], "w"))
runpy.run_module("board.app.worker", run_name="__main__")
"""


def test_it_is_started_only_when_it_is_asked(tmp_path: Path) -> None:
    ran = tmp_path / "ran"
    background = Background(ran, (sys.executable, "-c", "import sys; open(sys.argv[1], 'w')"))

    assert background.answer(EditedPlan) is None
    assert not ran.exists()
    background.ask(EditedPlan(()))
    heard(background, EditedPlan)
    assert ran.exists()


def test_answers_come_in_any_order_and_each_once(tmp_path: Path) -> None:
    background = Background(tmp_path / "plan.yaml", (sys.executable, "-c", BACKWARDS))

    assert background.ask(EditedPlan(()))
    assert background.ask(RestOfEvening((), at("18:00")))
    assert heard(background, EditedPlan).digest == "EditedPlan"
    assert heard(background, RestOfEvening).digest == "RestOfEvening"
    assert background.answer(EditedPlan) is None
    background.close()


def test_an_evening_that_slips_does_not_wait_for_the_timetable_of_an_edited_plan(
    tmp_path: Path,
    slipping: Slipping,  # noqa: F811
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    plan = tmp_path / "pie.yaml"
    plan.write_text(PIE.lstrip("\n"), encoding="utf-8")
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "cache"))
    background = Background(plan)
    slipping.until(at("18:31"))
    asked = RestOfEvening(slipping.evening.state.history, slipping.clock.now())
    background.ask(asked)
    assert heard(background, RestOfEvening).sheet is not None
    plan.write_text((PLANS / "long-table.yaml").read_text(encoding="utf-8"), encoding="utf-8")
    background.ask(EditedPlan(()))  # takes as long as the search may
    background.ask(asked)

    assert heard(background, RestOfEvening).sheet is not None
    assert background.answer(EditedPlan) is None
    background.close()


def test_it_ends_with_a_board_that_is_killed_in_the_midst_of_it(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path))
    monkeypatch.setenv("WHO", str(tmp_path / "who"))
    board = subprocess.Popen([sys.executable, "-c", BOARD, str(PLANS / "long-table.yaml"), WORKER])
    until(lambda: (tmp_path / "who").is_file() and (tmp_path / "who").read_text() != "")
    worker = int((tmp_path / "who").read_text())
    time.sleep(2)  # by now it searches
    assert is_running(worker)
    board.kill()
    board.wait()

    until(lambda: not is_running(worker))


def until(is_so: Callable[[], bool]) -> None:
    end = time.monotonic() + 20
    while not is_so():
        assert time.monotonic() < end
        time.sleep(0.02)


def test_a_newer_text_is_asked_about_while_an_older_is_open(tmp_path: Path) -> None:
    background = Background(tmp_path / "plan.yaml", (sys.executable, "-c", BACKWARDS))

    assert background.ask(PlanText("older"))
    assert not background.ask(PlanText("newer"))
    assert background.ask(PlanText("newer"), anew=True)
    heard(background, PlanText)
    background.close()


def test_another_text_of_the_plan_ends_every_search_of_the_one_before() -> None:
    """And another one tried ends only what was tried before."""
    searches = Searches()
    first, tried = searches.halt_of(PlanText("first")), searches.halt_of(PlanTried("first, later"))
    assert searches.halt_of(PlanProved("first")) is first
    again = searches.halt_of(PlanTried("first, later still"))
    assert (first.is_set(), tried.is_set(), again.is_set()) == (False, True, False)
    evening = searches.halt_of(EditedPlan(()))

    assert not searches.halt_of(PlanText("second")).is_set()
    assert (first.is_set(), again.is_set(), evening.is_set()) == (True, True, False)


def test_a_plans_text_is_looked_over_without_its_file(tmp_path: Path) -> None:
    """First what is wrong with it, then a timetable near the one that stood, and every piece of work by its path."""
    path = tmp_path / "two.yaml"
    text = (PLANS / "two-ring-flat.yaml").read_text(encoding="utf-8")
    background = Background(path)

    background.ask(PlanText(text.replace("arrive:", "arive:")))
    wrong = heard(background, PlanText)
    assert wrong.sheet is None
    assert wrong.found[0].line == text.splitlines().index(next(t for t in text.splitlines() if "arrive:" in t)) + 1
    background.ask(PlanProved(text))
    proved = heard(background, PlanProved)
    background.close()

    assert proved.sheet is not None
    assert proved.sheet.proved
    assert {slot for _, slot in proved.parts} >= {
        slot.id for slot in proved.sheet.slots if slot.kind in ("step", "job")
    }
    assert dict(proved.parts).keys() >= {("courses", 0, "dishes", 0, "steps", 0)}
    assert list(proved.found) == sorted(proved.found, key=lambda each: -each.weight)
    assert not path.exists()
