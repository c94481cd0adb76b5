"""How a finding is printed: place, words, the line with its spot, how to mend it; and nothing a terminal obeys."""

import re
import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.plan.load import read_plan
from board.plan.snag import Place, Snag, Weight, in_order
from tests.plan.test_bad_plans import SOUND


def snag(message: str = "this is off", line: str = "takes: 20", column: int = 8, mend: str = "Mend it.") -> Snag:
    return Snag("plan 7", Weight.STOP, message, mend, Place("supper.yaml", 3, column, line))


def test_a_snag_prints_its_place_the_line_a_caret_and_how_to_mend_it() -> None:
    found = read_plan(SOUND.lstrip().replace("takes: 10 min", "taks: 10 min"), "supper.yaml")

    assert isinstance(found, list)
    assert found[0].render().split("\n") == [
        "supper.yaml:21:13: plan 5 'taks' is not a word of a step.",
        "                taks: 10 min",
        "                ^",
        "    Did you mean 'takes'?",
    ]


def test_a_snag_without_a_place_prints_its_words_alone() -> None:
    assert Snag("plan 2", Weight.STOP, "nothing here").render() == "plan 2 nothing here"


def test_an_empty_line_is_not_printed() -> None:
    assert snag(line="   ").render() == "supper.yaml:3:8: plan 7 this is off\n    Mend it."


@pytest.mark.parametrize(
    ("line", "column", "stands_over"),
    [
        ("takes: 20", 8, "2"),
        ("\t\ttakes: 20", 10, "2"),
        ("step: 魚を焼く", 7, "魚"),
        ("魚: 焼く", 4, "焼"),
        ("cre\u0300me: 20", 9, "2"),
        ("a: " + "x" * 300 + "Y" + "z" * 300, 304, "Y"),
        ("x" * 110 + "Y", 111, "Y"),
    ],
)
def test_the_caret_stands_under_its_sign(line: str, column: int, stands_over: str) -> None:
    shown, caret = snag(line=line, column=column).render().split("\n")[1:3]

    assert sign_at(shown, caret.index("^")) == stands_over
    assert len(shown) < 130


def sign_at(text: str, column: int) -> str:
    """The sign a terminal draws at a column: wide signs take two, accents none (Unicode annex 11)."""
    for sign in text:
        width = 0 if unicodedata.combining(sign) else 2 if unicodedata.east_asian_width(sign) in "WF" else 1
        if column < width:
            return sign
        column -= width
    return ""


def test_a_caret_past_the_end_of_its_line_stands_just_behind_it() -> None:
    assert snag(line="takes:", column=40).render().split("\n")[2] == "    " + " " * 6 + "^"


def test_a_long_piece_of_the_file_is_cut_short_and_the_words_around_it_are_kept() -> None:
    first = snag(message=f"'{'x' * 5000}' is not a length of time").render().split("\n")[0]

    assert first.endswith("x…' is not a length of time")
    assert len(first) < 150


# What a terminal would obey: escape and other control signs (ECMA-48), and marks that turn the reading direction
# (Unicode annex 9). Square brackets are no danger in plain print, and come out as written.
OBEYED = {
    "an escape": "\x1b[31mred", "a bell": "\x07", "a one-byte escape": "\x9b31m", "a backspace": "\b",
    "a delete": "\x7f", "a turned direction": "\u202etxet", "an isolate": "\u2066x\u2069", "a joiner": "\u200d",
    "a line separator": "a\u2028b", "half a character": "\ud83d", "a tag": "\U000e0041", "a return": "a\rb",
}  # fmt: skip


@pytest.mark.parametrize("text", OBEYED.values(), ids=OBEYED)
def test_nothing_a_terminal_obeys_is_printed(text: str) -> None:
    printed = Snag("plan 7", Weight.STOP, f"{text} is off", f"Mend {text}.", Place(f"{text}.yaml", 1, 1, text)).render()

    assert is_safe(printed)


@pytest.mark.parametrize("escape", [r"\e[2J", r"\x9b31m", r"\u202e", r"\u2066", r"\0", r"\a", r"\ud800"])
def test_escapes_written_out_in_yaml_come_out_safe(escape: str) -> None:
    for old in ("Test supper", "2026-11-28", "Europe/Dublin", "cut the leeks", "10 min", "stovetop, 1 ring", "Main"):
        found = read_plan(SOUND.lstrip().replace(old, f'"{escape}"') + f'"{escape}": 1\n', "supper.yaml")

        assert isinstance(found, list)
        assert all(is_safe(each.render()) for each in found)


@given(st.text(), st.text(), st.integers(1, 10_000))
def test_whatever_a_plan_holds_prints_as_a_few_safe_lines(words: str, line: str, column: int) -> None:
    printed = snag(message=words, line=line, column=column, mend=words).render()

    assert is_safe(printed)
    assert printed.count("\n") <= 3


UNSAFE = re.compile(
    "[\x00-\x09\x0b-\x1f\x7f-\x9f\u200b-\u200f\u2028-\u202e\u2060-\u206f\ud800-\udfff\U000e0000-\U000e007f]"
)


def is_safe(printed: str) -> bool:
    """No control sign but the line feed, no direction mark, no half of a character."""
    return not UNSAFE.search(printed)


def test_markup_is_printed_as_it_was_written() -> None:
    assert "'[b]bold[/b]' is off" in snag(message="'[b]bold[/b]' is off").render()


def test_the_heaviest_come_first_then_the_order_of_the_file() -> None:
    note = Snag("guests 10", Weight.NOTE, "a", place=Place("f", 1, 1))
    stops = [
        Snag("plan 1", Weight.STOP, "a", place=Place("f", line, column)) for line, column in ((2, 9), (2, 1), (1, 5))
    ]

    assert in_order([note, *stops]) == [stops[2], stops[1], stops[0], note]
