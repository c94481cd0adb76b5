"""A rehearsal with mishaps: the same night twice, what is drawn comes to pass, the log tells it."""

from datetime import timedelta

import pytest

from board.base.clock import StoppedClock
from board.evening.events import GuestsDelayed, StepStretched
from board.rehearsal.draw import Mishaps, Night, draw_night
from board.rehearsal.player import play
from board.session.session import unlogged_evening
from board.sheet.run_sheet import RunSheet
from tests.conftest import at
from tests.examples import first


def played(sheet: RunSheet, night: Night) -> tuple[list[str], dict[str, float], list[object]]:
    """The lines, minutes by slot, and the events."""
    clock = StoppedClock(at("16:58"))
    evening = unlogged_evening(sheet, clock)
    lines = list(play(evening, clock, night))
    steps = evening.state.steps
    took = {
        id_: (step.finished - step.started) / timedelta(minutes=1)
        for id_, step in steps.items()
        if step.started and step.finished
    }
    return lines, took, list(evening.told)


def minutes(count: int) -> timedelta:
    return timedelta(minutes=count)


def test_steps_take_what_was_drawn_longer_or_shorter(little: RunSheet) -> None:
    lines, took, told = played(little, Night({"chop": minutes(15), "stew": minutes(70), "sauce": minutes(10)}))

    assert (took["chop"], took["stew"], took["sauce"]) == (15, 70, 10)
    assert [e.minutes for e in told if isinstance(e, StepStretched)] == [10]
    assert any("stew is not ready yet: 10 min more" in line for line in lines)
    assert any("chop is ready before its time" in line for line in lines)


def test_late_guests_a_forgotten_end_and_the_score_in_words(little: RunSheet) -> None:
    night = Night({"stew": minutes(60)}, guests_late=25, forgotten={"stew": minutes(7)})
    lines, took, told = played(little, night)
    score = lines[lines.index("How the night went") :]

    assert took["stew"] == 67
    assert [e.minutes for e in told if isinstance(e, GuestsDelayed)] == [25]
    assert "The guests came 25 min late." in score
    assert "The end of 'stew' went unheard for 7 min." in score
    assert any(line.startswith("Stew was") for line in score)
    assert not any("points" in line for line in score)


def test_a_calm_night_of_single_figures_is_the_timetable(little: RunSheet) -> None:
    lines, took, _ = played(little, draw_night(little, "calm", 1))

    assert (took["chop"], took["stew"], took["sauce"]) == (20, 60, 10)
    assert "Stew was on time." in lines


@pytest.mark.parametrize("mishaps", first(1, ["usual", "calm", "rough"]))
def test_the_same_seed_draws_the_same_night_and_all_courses_go_out(lantern_sheet: RunSheet, mishaps: Mishaps) -> None:
    night = draw_night(lantern_sheet, mishaps, 5)
    clock = StoppedClock(min(s.start for s in lantern_sheet.slots) - minutes(2))
    evening = unlogged_evening(lantern_sheet, clock)
    list(play(evening, clock, night))

    assert night == draw_night(lantern_sheet, mishaps, 5) != draw_night(lantern_sheet, mishaps, 6)
    assert all(step.settled for step in evening.state.steps.values())
    assert evening.state.closed
