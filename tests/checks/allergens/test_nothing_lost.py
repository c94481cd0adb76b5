"""A strange word in an ingredient line, or a measure that is not read, takes no finding away; one letter wrong is
asked about."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from board.checks.allergens.guests_eat import Answer
from board.checks.allergens.verdict import Verdict
from tests.checks.allergens.test_guests_eat import GUESTS, answer, verdict

LINES = [
    "200 g double cream", "6 cod fillets, breaded", "2 tbsp soy sauce", "1 jar red pesto (deli)", "100 g hard cheese",
    "300 g chicken thighs, marinated in yogurt", "2 eggs, beaten with 1 tbsp milk", "1 loaf rye bread, sliced",
    "250 g prawns (with shells on)", "80 g walnuts or pecans", "500 ml white wine", "100 g bean sprouts", "20 g glorp",
]  # fmt: skip


def stopped(found: Answer) -> set[tuple[str, str]]:
    """The needs that are not met, by the table."""
    return {(reason.need.words, reason.verdict.name) for reason in found.reasons if reason.verdict is Verdict.NOT_SAFE}


@settings(deadline=None)
@given(st.sampled_from(GUESTS), st.sampled_from(LINES), st.text("bcdfgjkmpqvwxz", min_size=9), st.integers(1, 9))
def test_a_strange_word_in_a_line_takes_no_finding_away(guest: str, line: str, strange: str, where: int) -> None:
    amount, *words = line.split(" ")
    before = answer(guest, line)

    after = answer(guest, " ".join([amount, *words[:where], strange, *words[where:]]))

    assert after.verdict >= before.verdict
    assert stopped(before) <= stopped(after)


@pytest.mark.parametrize(
    ("guest", "line"),
    [
        ("Ines, no milk", "2 schlucks cream"),
        ("Ines, no milk", "3 noggins of double cream"),
        ("Ines, no tree nuts", "2 fistfuls walnuts"),
        ("Ines, coeliac", "1 gill beer"),
        ("Ines, no fish", "2 firkins herring"),
    ],
)
def test_a_measure_that_is_not_read_takes_no_finding_away(guest: str, line: str) -> None:
    assert verdict(guest, line) == "NOT_SAFE"


@pytest.mark.parametrize(
    ("guest", "line", "meant"),
    [
        ("Ines, no tree nuts", "100 g cashws", "'cashws': do you mean cashews?"),
        ("Ines, no sesame", "2 tbsp tahni", "'tahni': do you mean tahini?"),
        ("Ines, no milk", "200 g potatoes (with buttre)", "'buttre': do you mean butter?"),
    ],
)
def test_a_slip_is_asked_about_with_the_food_meant(guest: str, line: str, meant: str) -> None:
    found = answer(guest, line)

    assert found.verdict is Verdict.ASK
    assert meant in [reason.why for reason in found.reasons]


def test_a_slip_is_told_to_nobody_it_could_not_harm() -> None:
    whys = [reason.why for reason in answer("Ines, no fish", "100 g cashws").reasons]

    assert whys == ["not in the table of foods: cashws"]
