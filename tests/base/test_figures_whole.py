"""A figure and its unit stay on one line, however narrow it is."""

import pytest

from board.base.wrap import words_of, wrapped
from board.view.wrap_words import wrap_words

FIGURES = ["1 h 30", "25 min", "74 °C", "1 h 05 min", "2 kg", "250 ml"]


@pytest.mark.parametrize("figure", FIGURES)
def test_no_width_breaks_a_figure(figure: str) -> None:
    text = f"the soup simmers for {figure}, then it rests for {figure} more"

    for width in range(20, 60):
        for lines in (wrapped(text, width).split("\n"), wrap_words(text, width)):
            assert sum(line.count(figure) for line in lines) == 2, (width, lines)
            assert " ".join(line.strip() for line in lines) == text


def test_what_is_no_figure_is_broken_between_words() -> None:
    assert words_of("serve 2 gratins at 7") == ["serve", "2", "gratins", "at", "7"]
