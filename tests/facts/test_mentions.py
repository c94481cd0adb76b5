"""Foods named in a dish's name or a step's words; common practice, no source."""

import pytest

from board.facts.mentions import mentioned


def said(text: str) -> list[str]:
    return [mention.said for mention in mentioned(text) if mention.food.traits]


@pytest.mark.parametrize(
    ("text", "foods"),
    [
        ("Chicken satay", ["chicken", "satay"]),
        ("stir in the peanut butter", ["peanut butter"]),
        ("butter the tin", ["butter"]),
        ("brush with egg wash", ["egg wash"]),
        ("finish with a nut of butter", ["butter"]),
        ("Prawn toast", ["prawn toast"]),
        ("fold in the crème fraîche", ["creme fraiche"]),
        ("scatter with toasted hazelnuts and serve", ["hazelnuts"]),
        ("serve with toast", ["toast"]),
        ("deglaze with white wine", ["white wine"]),
    ],
)
def test_a_food_that_is_named_is_seen(text: str, foods: list[str]) -> None:
    assert said(text) == foods


@pytest.mark.parametrize(
    "text",
    [
        "lift out with a fish slice", "arrange on the cheese board", "fill the milk jug",
        "open with an oyster knife", "lay out the wine glasses", "set the egg timer", "serve without nuts",
        "no nuts here", "rub until like breadcrumbs", "roll into balls the size of a walnut",
        "form walnut-sized balls", "until as thick as cream", "until nut-brown", "char the peppers",
        "mince the garlic", "bone the leg", "toast until golden", "wrap in foil", "crumble over the top",
        "fish out the bay leaf", "seed the chillies", "Cauliflower steaks", "set out the bread knife",
    ],
)  # fmt: skip
def test_a_tool_a_verb_a_likeness_and_what_is_left_out_are_no_foods(text: str) -> None:
    assert said(text) == []
