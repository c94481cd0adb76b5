"""What is never left on the heat, by a step's words. NFPA's cooking-safety advice tells the two kinds apart: `frying,
grilling or broiling` is stayed with, `simmering, baking, roasting or boiling` is looked at regularly. Boiling sugar:
common practice, no source.
"""

import pytest

from board.facts.watched import goes_on, watched


@pytest.mark.parametrize(
    ("words", "place", "kind"),
    [
        ("deep-fry the chips", "stovetop", "hot fat"),
        ("fry the doughnuts in batches", "stovetop", "hot fat"),
        ("sear the duck breasts", "stovetop", "hot fat"),
        ("sauté the chicken livers", "stovetop", "hot fat"),
        ("season and stir-fry the prawns", "stovetop", "hot fat"),
        ("heat the oil", "stovetop", "hot fat"),
        ("lower the samosas into the hot oil", "worktop", "hot fat"),
        ("brown the mince", "stovetop", "hot fat"),
        ("deep-fat-fry the calamari", "stovetop", "hot fat"),
        ("crisp up the pancetta", "stovetop", "hot fat"),
        ("grill the halloumi", "oven", "a grill"),
        ("broil the peppers", "oven", "a grill"),
        ("gratin under the grill", "oven", "a grill"),
        ("caramelise the sugar", "stovetop", "boiling sugar"),
        ("make a dark caramel", "stovetop", "boiling sugar"),
        ("boil the sugar syrup", "stovetop", "boiling sugar"),
        ("flambé the bananas", "stovetop", "a flame"),
        ("torch the meringue", "worktop", "a flame"),
        ("set the pudding alight", "front-of-house", "a flame"),
    ],
)
def test_what_burns_is_watched(words: str, place: str, kind: str) -> None:
    assert watched(words, place) == kind


@pytest.mark.parametrize(
    ("words", "place"),
    [
        ("simmer the stock", "stovetop"),
        ("boil the potatoes", "stovetop"),
        ("bake until brown", "oven"),
        ("crisp the skin", "oven"),
        ("roast the potatoes in duck fat", "oven"),
        ("reheat and brown the gratins", "oven"),
        ("sear in a very hot oven", "oven"),
        ("air-fry the sprouts", "worktop"),
        ("slice the fried aubergine", "worktop"),
        ("caramelise the onions", "stovetop"),
        ("warm the caramel", "stovetop"),
        ("cool the caramel", "worktop"),
        ("dissolve the sugar in the cream", "stovetop"),
        ("wash the frying pan", "worktop"),
        ("scoop the brown sugar", "worktop"),
        ("chill the fried shallots", "fridge"),
        ("set out the candlesticks", "front-of-house"),
    ],
)
def test_what_only_wants_looking_at_is_not(words: str, place: str) -> None:
    assert watched(words, place) is None


@pytest.mark.parametrize("words", ["fry the onions, then simmer the lentils", "brown the shanks and braise them"])
def test_a_step_may_go_on_with_what_is_only_looked_at(words: str) -> None:
    assert goes_on(words)
    assert not goes_on("fry the onions")
