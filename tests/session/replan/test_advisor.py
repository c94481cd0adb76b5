"""The host is asked only where there is something to gain, and never waits for the answer."""

import sys
import time
from collections.abc import Sequence
from datetime import datetime
from pathlib import Path

from board.evening.events import Event
from board.evening.wishes import Done, TakeSheet
from board.plan.load import PlanFile
from board.session.replan.advisor import Advisor
from board.session.replan.client import Anew
from board.session.replan.worker import worked_out_anew
from board.sheet.run_sheet import RunSheet
from tests.conftest import at
from tests.session.replan.conftest import PIE, Slipping


class Slow:
    """A solver whose answer is put in by hand."""

    def __init__(self) -> None:
        self.asked: list[datetime] = []
        self.waiting = False
        self.ready: RunSheet | None = None

    def ask(self, events: Sequence[Event], now: datetime) -> bool:
        self.asked.append(now)
        self.waiting = True
        return True

    def answer(self) -> RunSheet | None:
        ready, self.ready = self.ready, None
        self.waiting = self.waiting and ready is None
        return ready

    def close(self) -> None:
        pass


def looked(advisor: Advisor, slipping: Slipping) -> object:
    present = slipping.evening.tick()
    return advisor.look(present.state, present.forecast)


def test_an_evening_in_hand_is_left_alone(slipping: Slipping) -> None:
    solver = Slow()
    slipping.clock.set(at("17:58"))

    assert looked(Advisor(solver), slipping) is None
    assert solver.asked == []


def test_an_evening_that_slips_is_asked_about_once_and_again_when_something_happens(slipping: Slipping) -> None:
    solver = Slow()
    advisor = Advisor(solver)
    slipping.until(at("18:31"))
    for _ in range(3):
        looked(advisor, slipping)
    assert len(solver.asked) == 1
    solver.waiting = False  # it found nothing
    looked(advisor, slipping)
    assert len(solver.asked) == 1
    slipping.clock.set(at("18:34"))
    looked(advisor, slipping)
    assert len(solver.asked) == 2


def test_an_answer_becomes_an_offer_and_goes_when_the_evening_moves_on(pie: PlanFile, slipping: Slipping) -> None:
    solver = Slow()
    advisor = Advisor(solver)
    slipping.until(at("18:31"))
    looked(advisor, slipping)
    solver.ready = worked_out_anew(pie, slipping.evening.state, slipping.clock.now())

    assert looked(advisor, slipping) is not None
    slipping.to_the_end()
    assert looked(advisor, slipping) is None


def test_the_real_process_answers_and_its_sheet_can_be_taken(tmp_path: Path, slipping: Slipping) -> None:
    plan = tmp_path / "pie.yaml"
    plan.write_text(PIE.lstrip("\n"), encoding="utf-8")
    anew = Anew(plan, slipping.evening.sheet.digest)
    advisor = Advisor(anew)
    slipping.until(at("18:31"))
    try:
        began = time.monotonic()
        while looked(advisor, slipping) is None and time.monotonic() - began < 60:
            time.sleep(0.05)
        assert advisor.offer is not None
        assert slipping.evening.wish(TakeSheet(advisor.offer.sheet)) is None
    finally:
        advisor.close()


def test_a_plan_that_has_changed_or_a_process_that_dies_leaves_the_evening_as_it_is(
    tmp_path: Path, slipping: Slipping
) -> None:
    plan = tmp_path / "pie.yaml"
    plan.write_text(PIE.lstrip("\n").replace("60 min", "50 min"), encoding="utf-8")
    slipping.until(at("18:31"))
    for anew in (Anew(plan, slipping.evening.sheet.digest), Anew(tmp_path / "gone.yaml", "0" * 64)):
        assert anew.ask(slipping.evening.state.history, slipping.clock.now())
        began = time.monotonic()
        while not anew.given_up and time.monotonic() - began < 30:
            time.sleep(0.05)
        assert anew.given_up
        assert anew.answer() is None
        assert not anew.ask([], slipping.clock.now())
        anew.close()
    broken = Anew(plan, "")
    broken.command = [sys.executable + "-none"]
    broken.ask([], slipping.clock.now())
    began = time.monotonic()
    while not broken.given_up and time.monotonic() - began < 10:
        time.sleep(0.02)
    assert broken.given_up
    broken.close()
    assert slipping.evening.wish(Done("guests-arrive", "start")) is None
