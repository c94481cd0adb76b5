"""How lessons are put into words."""

import pytest

from board.output import words as output_words


@pytest.mark.parametrize(
    ("minutes", "told"),
    [((18.4, 20, 22), "18, 20, 22"), ((7,), "7"), ((17, 17, 17.2, 17, 17), "17 (5 times)"),
     ((12, 13, 14, 20, 31), "12 to 31 (5 times)")],
)  # fmt: skip
def test_what_it_took_is_told_whole_while_it_is_few(minutes: tuple[float, ...], told: str) -> None:
    assert output_words.took(minutes) == told
