"""What is poured against allergies: guests 6, once a guest; beer holds barley, a wine may be cleared with egg or milk.

EU labelling of finings: Implementing Regulation (EU) No 579/2012, from memory; barley in beer: Annex II of Regulation
(EU) No 1169/2011, cereals containing gluten.
"""

import pytest

from board.plan.load import PlanFile
from board.plan.snag import Snag, Weight
from tests.checks.allergens.test_guests_eat import GOOD, HEAD, plan, told
from tests.conftest import read


def said(guest: str, drinks: str) -> list[Snag]:
    return [snag for snag in told(plan(guest, GOOD, more=f"drinks: {drinks}\n")) if snag.code == "guests 6"]


@pytest.mark.parametrize(
    ("guest", "drinks", "says"),
    [
        ("Ines, no milk", "{wine: usual}", "wine: may be cleared with what is of milk"),
        ("Ines, no eggs", "{sparkling: 1 flute a guest}", "sparkling wine: may be cleared with what is of eggs"),
        ("Pieter, coeliac", "{beer: 1 bottle a guest}", "beer: holds gluten"),
        ("Ines, no sulphites", "usual", "wine: often holds sulphites"),
        ("Ines, no milk", "{wine: none, water: usual}", ""),
        ("Ines, no peanuts", "usual", ""),
        ("Tomas, vegetarian", "usual", ""),  # no allergy: what a guest drinks is theirs to say
        ("Mia, pregnant", "usual", ""),
        ("Ines", "usual", ""),
    ],
)
def test_a06_what_is_poured_is_asked_about_for_who_could_be_hurt(guest: str, drinks: str, says: str) -> None:
    found = said(guest, drinks)

    assert [snag.weight for snag in found] == ([Weight.ASK] if says else [])
    assert all(says in snag.message and snag.mend and snag.place is not None for snag in found)


def test_a06_is_one_line_a_guest_and_a_bottle_whose_label_was_read_is_settled() -> None:
    drink = "    drink: ['white wine, 3 bottles', 'our red, 2 bottles']\n"
    text = HEAD.replace("GUEST", "'Ines, no milk'") + "foods: {our red: nothing}\n"
    text += (
        f"courses:\n  - course: Main\n    at: 19:15\n{drink}    dishes: [{{dish: Pie, ingredients: [1 kg potatoes], "
    )
    text += "steps: [{step: make it, takes: 30 min}]}]\n"
    file = read(text)
    assert isinstance(file, PlanFile), file

    (snag,) = [each for each in told(file) if each.code == "guests 6"]

    assert "white wine" in snag.message
    assert "our red" not in snag.message
    assert snag.place is not None
    assert "white wine" in snag.place.text
