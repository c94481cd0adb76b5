"""guests 12: what a dish makes against the portions of those who are served it."""

import pytest

from board.checks.plan.portions import portions_suffice
from board.plan.load import PlanFile
from board.plan.snag import Weight
from tests.conftest import read

PLAN = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [Ines, host, 4 others]
hands: {{host: {{hours: {{on the day: '9:00 - 23:30'}}}}}}
courses:
  - course: Soup
    at: 19:15
    dishes:
      - dish: Leek soup
        {keys}
        ingredients: [1 kg leeks]
        steps: [{{step: simmer the soup, where: stovetop, takes: 30 min}}]
"""


def found(*keys: str) -> list[tuple[Weight, str]]:
    file = read(PLAN.format(keys="\n        ".join(keys)))
    assert isinstance(file, PlanFile), file
    return [(snag.weight, snag.message) for snag in portions_suffice(file)]


@pytest.mark.parametrize(
    ("keys", "weight", "says"),
    [
        (["makes: 1.2 l", "a guest: 250 ml"], Weight.MIND, "makes 1.2 l; 6 are served it, 250 ml each: 1.5 l"),
        (["makes: 10", "a guest: 2"], Weight.MIND, "makes 10; 6 are served it, 2 each: 12"),
        (["makes: 24 shells", "a guest: 2 shells"], Weight.NOTE, "makes 24 shells; 6 are served it, 2 shells each: 12"),
        (["makes: 1.2 l", "a guest: 200 g"], Weight.ASK, "The two are not compared"),
        (["makes: 1 l", "a guest: 200 ml", "not for: Ines"], None, ""),
        (["makes: 1.5 l", "a guest: 250 ml"], None, ""),
        (["makes: 1.5 l", "a guest: 200 to 300 ml"], None, ""),
        (["makes: 1.2 l"], None, ""),
    ],
)
def test_it_is_enough_for_those_who_are_served_it(keys: list[str], weight: Weight | None, says: str) -> None:
    snags = found(*keys)

    assert [each for each, _ in snags] == ([] if weight is None else [weight])
    assert all(says in message for _, message in snags)


def test_what_it_makes_grows_with_its_amounts() -> None:
    assert found("for: 3", "makes: 0.75 l", "a guest: 250 ml") == []
    assert len(found("for: 3", "scale: as written", "makes: 0.75 l", "a guest: 250 ml")) == 1
