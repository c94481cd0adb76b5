"""Between two whole minutes nothing is worked out again unless something happens; and nothing is told late for it."""

from datetime import timedelta

import pytest

from board.evening.forecast import Forecaster
from board.evening.wishes import Later
from tests.conftest import Host, at


@pytest.fixture
def worked_out(monkeypatch: pytest.MonkeyPatch) -> list[object]:
    """A forecast each."""
    found: list[object] = []
    forecast = Forecaster.forecast
    monkeypatch.setattr(Forecaster, "forecast", lambda *args: (found.append(1), forecast(*args))[1])
    return found


def test_quiet_seconds_are_not_worked_out_again(host: Host, worked_out: list[object]) -> None:
    first = host.at("16:30")
    before = len(worked_out)
    for second in range(1, 60):
        host.clock.set(at("16:30") + timedelta(seconds=second))
        present = host.evening.tick()
        assert present.now == present.forecast.now == host.clock.now()
        assert (present.due, present.coming, present.raised) == (first.due, first.coming, ())

    assert len(worked_out) == before
    host.at("16:31")
    assert len(worked_out) == before + 1


def test_what_comes_due_within_a_minute_is_called_at_its_second(host: Host) -> None:
    host.at("17:00")
    host.clock.set(at("17:00") + timedelta(seconds=20))
    call = host.evening.tick().due[0]
    assert host.evening.wish(Later(call.slot, call.part, call.number, 5)) is None
    again = at("17:05") + timedelta(seconds=20)

    host.clock.set(again - timedelta(seconds=1))
    assert call.key not in {each.key for each in host.evening.tick().due}
    host.clock.set(again)
    assert call.key in {each.key for each in host.evening.tick().raised}


def test_a_clock_that_goes_back_within_the_minute_is_worked_out_again(host: Host, worked_out: list[object]) -> None:
    host.clock.set(at("16:30") + timedelta(seconds=40))
    host.evening.tick()
    before = len(worked_out)

    host.clock.set(at("16:30") + timedelta(seconds=10))
    host.evening.tick()

    assert len(worked_out) == before + 1
