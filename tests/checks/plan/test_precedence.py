"""What must lie between two pieces of work, summed by hand over links written out."""

from types import SimpleNamespace
from typing import Any

import pytest

from board.checks.plan.precedence import Between
from board.plan.phrases.durations import Spread
from board.plan.resolve.links import Link


def spread(low: int, likely: int, high: int) -> Spread:
    return Spread(low=low, likely=likely, high=high)


TAKES: dict[str, list[Spread]] = {  # low, likely, high of each way to do it
    "mix": [spread(1, 5, 9)],
    "knead": [spread(8, 10, 20)],
    "prove": [spread(90, 90, 90), spread(50, 60, 70)],
    "shape": [spread(3, 4, 5)],
    "bake": [spread(30, 35, 40)],
}


def between(*links: Link, shortest: bool = False) -> Between:
    tasks = {id_: SimpleNamespace(ways=[SimpleNamespace(takes=each) for each in ways]) for id_, ways in TAKES.items()}
    file: Any = SimpleNamespace(filled=SimpleNamespace(tasks=tasks, links=list(links)))
    return Between(file, shortest=shortest)


def test_what_follows_at_once_has_only_its_least_gap_between() -> None:
    ways = between(Link("mix", "knead", 7))

    assert ways.longest("mix", "knead") == (7, ())


@pytest.mark.parametrize(("shortest", "minutes"), [(False, 2 + 10 + 3 + 60 + 6), (True, 2 + 8 + 3 + 50 + 6)])
def test_gaps_and_the_quickest_way_of_all_that_lies_between_are_added_up(shortest: bool, minutes: int) -> None:
    """On likely lengths, or on the low ones; neither what is before nor what comes after counts."""
    ways = between(
        Link("mix", "knead", 2), Link("knead", "prove", 3), Link("prove", "shape", 6), Link("shape", "bake", 100),
        shortest=shortest,
    )  # fmt: skip

    assert ways.longest("mix", "shape") == (minutes, ("knead", "prove"))


@pytest.mark.parametrize(
    ("direct", "found"), [(14, (15, ("knead",))), (15, (15, ())), (16, (16, ()))], ids=["shorter", "as long", "longer"]
)
def test_of_two_ways_between_the_longest_counts(direct: int, found: tuple[int, tuple[str, ...]]) -> None:
    """By the kneading it is 2 + 10 + 3 minutes; of two as long the one written first is told."""
    ways = between(Link("mix", "shape", direct), Link("mix", "knead", 2), Link("knead", "shape", 3))

    assert ways.longest("mix", "shape") == found


@pytest.mark.parametrize(("first", "second"), [("knead", "mix"), ("mix", "prove"), ("mix", "mix"), ("shape", "bake")])
def test_nothing_lies_between_what_need_not_follow(first: str, second: str) -> None:
    """Before it, beside it, itself, or after it by a link that may bend."""
    ways = between(Link("mix", "knead"), Link("prove", "bake"), Link("shape", "bake", firm=False))

    assert ways.longest(first, second) is None


def test_a_link_that_may_bend_adds_nothing_to_a_firm_one() -> None:
    ways = between(Link("mix", "bake", 1), Link("mix", "knead", 50, firm=False), Link("knead", "bake", 50))

    assert ways.longest("mix", "bake") == (1, ())
