"""Long lines broken between words at a width, and a quoted line of a plan kept over its caret."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.base.wrap import columns, wrapped
from board.plan.snag import Place, Snag, Weight

LONG = "the oven cannot take all of this at once, and nobody would want it to"


def test_a_message_breaks_between_words_under_its_own_indent() -> None:
    made = wrapped(f"supper.yaml:3:8: plan 7: {LONG}\n    {LONG}\n  short", 40).split("\n")

    assert made == [
        "supper.yaml:3:8: plan 7: the oven cannot",
        "    take all of this at once, and nobody",
        "    would want it to",
        "    the oven cannot take all of this at",
        "    once, and nobody would want it to",
        "  short",
    ]


def test_a_word_longer_than_the_line_is_left_whole() -> None:
    assert wrapped("see " + "x" * 50 + " there", 30) == "see\n" + "x" * 50 + "\nthere"


@pytest.mark.parametrize("column", [5, 39, 60, 100, 118])
def test_a_quoted_line_is_cut_and_its_caret_stands_under_its_sign(column: int) -> None:
    line = "a" * (column - 1) + "Y" + "b" * (120 - column)
    text = Snag("plan 7", Weight.STOP, "off", "Mend it.", Place("supper.yaml", 3, column, line)).render()

    _, shown, caret, mend = wrapped(text, 40).split("\n")

    assert shown[caret.index("^")] == "Y"
    assert len(shown) <= 40
    assert shown.endswith("…") or column > 60
    assert mend == "    Mend it."


def test_what_fits_stays_as_it_is() -> None:
    text = Snag("plan 7", Weight.STOP, "off", "Mend it.", Place("supper.yaml", 3, 8, "takes: 20")).render()

    assert wrapped(text, 80) == text


@given(st.text(alphabet="ab 魚é\n", max_size=300), st.integers(20, 90))
def test_no_word_is_lost_and_none_is_broken(text: str, width: int) -> None:
    made = wrapped(text, width)

    assert made.split() == text.split()
    assert all(columns(line) <= width or " " not in line.strip() for line in made.split("\n"))
