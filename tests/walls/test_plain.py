"""The one door for foreign text: whatever comes in, nothing a terminal would obey goes out."""

import unicodedata

from hypothesis import given
from hypothesis import strategies as st

from board.base.plain import one_line, plain, to_ascii_letters


@given(st.text())
def test_plain_is_idempotent_and_leaves_no_control_or_direction_mark(text: str) -> None:
    once = plain(text)

    assert plain(once) == once
    for sign in once:
        assert sign in "\t\n" or unicodedata.category(sign) not in ("Cc", "Cs")
        assert unicodedata.bidirectional(sign) not in ("RLO", "LRO", "RLE", "LRE", "PDF", "RLI", "LRI", "FSI", "PDI")
    assert len(once) == len(text)


@given(st.text(), st.integers(1, 40))
def test_one_line_is_one_line_and_no_longer_than_asked(text: str, limit: int) -> None:
    line = one_line(text, limit)

    assert "\n" not in line
    assert len(line) <= limit


def test_escape_sequences_and_marks_become_visible() -> None:
    assert plain("soup\x1b]0;X\x07\x1b[2J\x9b\u202e\u200b") == "soup\ufffd]0;X\ufffd\ufffd[2J\ufffd\ufffd\ufffd"


def test_letters_lose_their_accents_but_never_their_meaning() -> None:
    assert to_ascii_letters("Crème brûlée, 80 °C") == "Creme brulee, 80 C"
    assert to_ascii_letters("餃子") is None
