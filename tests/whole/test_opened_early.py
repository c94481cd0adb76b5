"""A board opened days ahead says for when it is."""

from datetime import timedelta

import pytest

from board.app.opened_early import opened_early
from board.sheet.run_sheet import RunSheet
from tests.conftest import at


@pytest.mark.parametrize(("days", "early"), [(7, True), (1, True), (0.99, False), (0, False), (-0.1, False)])
def test_it_is_early_a_day_before_the_first_call(little: RunSheet, days: float, early: bool) -> None:
    """The guests come on 28 November; its first step is at 17:00."""
    said = opened_early(little, at("17:00") - timedelta(days=days), "supper.yaml")

    wanted = "The evening is Sat 28 Nov. First call Sat 28 Nov 17:00: chop. To shop: platecall provisions supper.yaml"
    assert said == (wanted if early else "")
