"""The board, the closing page and the review tell the same minutes, whatever second a course came out in."""

from datetime import timedelta

import pytest

from board.evening.events import EveningOpened
from board.evening.forecast import Forecaster
from board.review.measure import measured
from board.review.observe import observe
from board.review.trace import traced
from board.sheet.run_sheet import RunSheet
from board.view.bars import Span
from tests.conftest import Host, at


@pytest.mark.parametrize("seconds", [0, 1, 29, 31, 59, 60, 89, 91, 280, 299, 330, 599])
def test_a_course_is_as_late_on_the_board_as_in_the_review(little: RunSheet, seconds: int) -> None:
    host = Host(little, at("16:58"))
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"),
                       ("18:30", "stew"), ("18:30", "arrive"), ("18:35", "sauce"), ("18:45", "sauce"),
                       ("18:50", "serve")):  # fmt: skip
        host.at(clock)
        host.answer(id_)
    out = at("19:00") + timedelta(seconds=seconds)
    host.clock.set(out)
    host.answer("serve")
    state = host.evening.state
    opened = state.history[0]
    assert isinstance(opened, EveningOpened)
    by_the_clocks = seconds // 60  # 19:04:40 shows as 19:04: four minutes after 19:00

    (on_board,) = Forecaster(little).forecast(state, out).courses
    (reviewed,) = measured(state, opened).courses
    assert on_board.late_minutes == reviewed.late_minutes == by_the_clocks
    assert observe(opened, host.evening.told[1:]).late == (("Stew", by_the_clocks),)
    assert [each.late_minutes for each in traced(state)] == ([by_the_clocks] if by_the_clocks else [])
    serve = little.by_id()["serve"]
    assert Span("", (serve.start, serve.end), out, out).later_minutes == by_the_clocks
