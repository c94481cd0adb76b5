"""What stands by itself, known by the words of a step. Common practice, no source."""

import pytest

from board.facts.standing import is_by_hand, lies_cold, stands_in


@pytest.mark.parametrize(
    ("words", "minutes", "place"),
    [
        ("leave it in the fridge", 120, "fridge"),
        ("chill", 240, "fridge"),
        ("chill until set", 240, "fridge"),
        ("cover the mousse and chill it", 180, "fridge"),
        ("refrigerate the terrine overnight", 600, "fridge"),
        ("put the jelly into the refrigerator", 240, "fridge"),
        ("thaw the prawns in the fridge", 600, "fridge"),
        ("leave in the freezer", 360, "freezer"),
        ("freeze until firm", 360, "freezer"),
        ("put the glasses in the deep freezer", 60, "freezer"),
        ("let it prove overnight", 600, "room"),
        ("second prove", 60, "room"),
        ("slowly drain the curd", 120, "room"),
        ("drain", 240, "room"),
        ("let the dough rise", 90, "room"),
        ("rest the beef", 30, "room"),
        ("soak the chickpeas", 600, "room"),
        ("salt and leave overnight", 600, "room"),
        ("Macérate the strawberries", 60, "room"),
        ("brine the chops", 240, "room"),
        ("leave to cool", 40, "room"),
        ("infuse the milk", 30, "room"),
        ("take the joint out", 90, "room"),
        ("bring the cheese to room temperature", 90, "room"),
        ("wrap the dough and rest it", 30, "room"),
        ("allow the tuiles to dry", 60, "room"),
        ("dry the meringues", 120, "room"),
        ("dry-brine the bird", 600, "room"),
        ("take the cake out of the freezer and leave it in the fridge", 300, "fridge"),
    ],
)
def test_what_stands_by_itself(words: str, minutes: int, place: str) -> None:
    assert stands_in(words, minutes) == place


@pytest.mark.parametrize(
    ("words", "minutes"),
    [
        ("drain the pasta", 2),
        ("rinse and drain the rice", 5),
        ("dry the salad leaves", 30),
        ("wash and dry the leaves", 60),
        ("dry and salt the fish", 60),
        ("take the ice cream out", 2),
        ("chill, stirring every half hour", 180),
        ("cool the custard over ice, whisking", 20),
        ("set the table", 15),
        ("set out the cheeses", 30),
        ("mix the dough and let it rise", 90),
        ("cut the rested dough", 30),
        ("slice the soaked figs", 20),
        ("rest, then carve", 40),
        ("whip the chilled cream", 10),
        ("fill the cooled shells", 30),
        ("unmould the set creams", 30),
        ("make room in the fridge", 30),
        ("find the butter in the fridge", 30),
        ("keep stirring", 30),
        ("bake and cool the shells", 60),
        ("stand by the grill", 30),
        ("let the guests in", 30),
        ("make the freezer jam", 60),
        ("fry the resting onions", 60),
    ],
)
def test_what_wants_hands_does_not(words: str, minutes: int) -> None:
    assert stands_in(words, minutes) is None


@pytest.mark.parametrize(
    ("words", "minutes", "cold"),
    [
        ("marinate the chicken", 180, True),
        ("rub the lamb with spices and leave it overnight", 720, True),
        ("brine the bird", 600, True),
        ("marinate the chicken on the counter", 180, False),
        ("marinate the chicken", 30, False),
        ("bring the joint to room temperature", 180, False),
        ("let the beef lose its chill", 60, False),
    ],
)
def test_what_lies_raw_in_salt_or_overnight_lies_cold(words: str, minutes: int, cold: bool) -> None:
    """USDA FSIS, marinating: in the fridge, never on the counter; from memory."""
    assert lies_cold(words, minutes) is cold


@pytest.mark.parametrize(
    "words",
    [
        "knead the dough",
        "peel and cut the roots",
        "roll out the pastry",
        "pick the crab",
        "open the clams",
        "brown the oxtail",
        "deep-fry the courgettes",
        "cook the blinis",
        "top and tail the beans",
    ],
)
def test_what_is_done_by_hand(words: str) -> None:
    assert is_by_hand(words)


@pytest.mark.parametrize(
    "words", ["simmer the stock", "reduce the wine", "the ragu", "cook the beans", "smoke the ham"]
)
def test_what_may_want_none(words: str) -> None:
    assert not is_by_hand(words)
