"""Hands do one thing at a time, in the forecast."""

import pytest

from board.evening.forecast import Forecaster
from board.evening.state import begin
from tests.conftest import at
from tests.evening.one_cook import BOTH, END, LOOK_IN, SAUCES, Brief, minute_by_minute, one_cook, with_sauce_of


@pytest.mark.parametrize("sauce", SAUCES)
@pytest.mark.parametrize("briefs", [END, LOOK_IN, BOTH, ()])
def test_a_sauce_that_runs_long_gives_way_to_the_roast(briefs: tuple[Brief, ...], sauce: int) -> None:
    """Of 12 minutes it ends at 18:26, as planned; of 20 it would at 18:34, and with four minutes at the roast between,
    at 18:38: the course is not four minutes late but eight."""
    sheet = with_sauce_of(one_cook(*briefs), sauce)

    forecast = Forecaster(sheet).forecast(begin(sheet), at("17:00"))

    assert forecast.courses[0].late_minutes == minute_by_minute(sauce, *briefs)
    assert forecast.slots["roast"].end == at("18:30")
