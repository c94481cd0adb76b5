"""The names most like one that nothing has."""

from board.base.near import LONGEST_CHARACTERS, nearest


def test_the_most_alike_come_first_as_they_are_written() -> None:
    assert nearest("onion tart", ["Onion soup", "Gravy", "Onion tartlets"], most=3, alike=0.5) == [
        "Onion tartlets", "Onion soup",
    ]  # fmt: skip
    assert nearest("onion tart", ["Onion tartlets", "Soup"]) == ["Onion tartlets"]


def test_nothing_is_near_enough_to_what_is_quite_another_name() -> None:
    assert nearest("gravy", ["Soup", "Onion tartlets"]) == []
    assert nearest("soups", ["Soup"], alike=0.9) == []


def test_what_makes_two_spellings_one_is_the_askers() -> None:
    assert nearest("SOUP", ["soup"]) == ["soup"]
    assert nearest("SOUP", ["soup"], fold=str) == []


def test_a_long_name_is_compared_as_far_as_a_long_name_goes() -> None:
    assert nearest("a" * LONGEST_CHARACTERS + "b" * 100_000, ["a" * LONGEST_CHARACTERS]) == ["a" * LONGEST_CHARACTERS]
