"""Work at the table grows with those who sit at it. Every figure is common practice, no source."""

from typing import get_args

import pytest

from board.facts.serving import At, table_minutes


@pytest.mark.parametrize("what", get_args(At))
def test_a_small_table_takes_five_minutes_and_a_long_one_more(what: At) -> None:
    minutes = [table_minutes(what, guests) for guests in range(25)]
    assert minutes[:9] == [5] * 9
    assert minutes == sorted(minutes)
    assert minutes[24] > 5


def test_a_plate_each_takes_longer_than_dishes_for_all() -> None:
    assert table_minutes("serve", 24) == 15 > table_minutes("serve-shared", 24)
