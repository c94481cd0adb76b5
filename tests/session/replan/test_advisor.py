"""The host is asked only where there is something to gain, and never waits for the answer."""

import sys
import time
from pathlib import Path

import pytest

from board.evening.wishes import Done, TakeSheet
from board.plan.load import PlanFile
from board.session.background import Answer, Background, Request, RestOfEvening
from board.session.replan.advisor import Advisor
from board.session.replan.anew import worked_out_anew
from board.session.replan.gain import Offer
from board.sheet.run_sheet import RunSheet
from tests.conftest import at
from tests.session.conftest import heard
from tests.session.replan.conftest import PIE, Slipping

WORKER = [sys.executable, "-m", "board.app.worker"]


class Slow:
    """A solver whose answer is put in by hand."""

    def __init__(self) -> None:
        self.asked: list[Request] = []
        self.ready: RunSheet | None = None
        self.found_nothing = False

    def ask(self, request: Request) -> bool:
        self.asked.append(request)
        return True

    def answer(self, kind: type[Request]) -> Answer | None:
        found = Answer(kind.__name__, sheet=self.ready) if self.ready or self.found_nothing else None
        self.ready, self.found_nothing = None, False
        return found


def looked(advisor: Advisor, slipping: Slipping) -> object:
    present = slipping.evening.tick()
    return advisor.look(present.state, present.forecast)


def test_an_evening_in_hand_is_left_alone(slipping: Slipping) -> None:
    solver = Slow()
    slipping.clock.set(at("17:58"))

    assert looked(Advisor(solver), slipping) is None
    assert solver.asked == []


def test_a_search_that_found_nothing_in_its_time_is_told_and_made_again(slipping: Slipping) -> None:
    solver = Slow()
    advisor = Advisor(solver)
    slipping.until(at("18:31"))
    looked(advisor, slipping)
    assert (advisor.searching, advisor.found_nothing) == (True, False)

    solver.found_nothing = True
    looked(advisor, slipping)
    assert (advisor.offer, advisor.searching, advisor.found_nothing) == (None, False, True)

    slipping.until(at("18:34"))
    looked(advisor, slipping)
    assert (len(solver.asked), advisor.searching) == (2, True)


def test_an_evening_that_slips_is_asked_about_once_and_again_when_something_happens(slipping: Slipping) -> None:
    solver = Slow()
    advisor = Advisor(solver)
    slipping.until(at("18:31"))
    for _ in range(3):
        looked(advisor, slipping)
    assert len(solver.asked) == 1
    solver.found_nothing = True
    looked(advisor, slipping)
    assert len(solver.asked) == 1
    slipping.clock.set(at("18:34"))
    looked(advisor, slipping)
    assert len(solver.asked) == 2


def test_an_answer_becomes_an_offer_and_goes_when_the_evening_moves_on(pie: PlanFile, slipping: Slipping) -> None:
    solver = Slow()
    told: list[Offer] = []
    advisor = Advisor(solver, heard=told.append)
    slipping.until(at("18:31"))
    looked(advisor, slipping)
    solver.ready = worked_out_anew(pie, slipping.evening.state, slipping.clock.now())

    offer = looked(advisor, slipping)
    assert offer is not None
    assert told == [offer]
    slipping.to_the_end()
    assert looked(advisor, slipping) is None
    assert told == [offer]


def test_the_real_process_answers_and_its_sheet_can_be_taken(tmp_path: Path, slipping: Slipping) -> None:
    plan = tmp_path / "pie.yaml"
    plan.write_text(PIE.lstrip("\n"), encoding="utf-8")
    background = Background(plan)
    advisor = Advisor(background)
    slipping.until(at("18:31"))
    try:
        began = time.monotonic()
        while looked(advisor, slipping) is None and time.monotonic() - began < 60:
            time.sleep(0.05)
        assert advisor.offer is not None
        assert slipping.evening.wish(TakeSheet(advisor.offer.sheet)) is None
    finally:
        background.close()


@pytest.mark.parametrize(
    ("plan", "command"),
    [
        ("pie.yaml", WORKER),  # has moved on
        ("gone.yaml", WORKER),
        ("pie.yaml", [sys.executable + "-none"]),
        ("pie.yaml", [sys.executable, "-c", "raise SystemExit(1)"]),
        ("pie.yaml", [sys.executable, "-c", "import time; print('nonsense', flush=True); time.sleep(600)"]),
    ],
)
def test_a_plan_that_has_changed_or_a_process_that_dies_leaves_the_evening_as_it_is(
    tmp_path: Path, slipping: Slipping, plan: str, command: list[str]
) -> None:
    (tmp_path / "pie.yaml").write_text(PIE.lstrip("\n").replace("60 min", "50 min"), encoding="utf-8")
    slipping.until(at("18:31"))
    background = Background(tmp_path / plan, command)
    advisor = Advisor(background)

    for _ in range(2):  # asked once more, it is started once more
        request = RestOfEvening(slipping.evening.state.history, slipping.clock.now())
        assert background.ask(request)
        assert not background.ask(request)
        assert heard(background, RestOfEvening).sheet is None
    background.close()
    assert looked(advisor, slipping) is None
    assert slipping.evening.wish(Done("guests-arrive", "start")) is None
