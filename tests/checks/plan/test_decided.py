"""food 32: what makes food safe is never left to a question. The rule is our own."""

import pytest

from board.checks.plan.decided import nothing_safe_hangs_on_a_question
from board.plan.load import PlanFile
from board.plan.snag import Weight
from tests.conftest import read

PLAN = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [4 guests]
kitchen: {{fridge: 60 litres, tools: {{board: 1}}}}
hands: {{host: {{hours: {{on the day: '9:00 - 23:30'}}}}}}
courses:
  - course: Main
    at: 20:00
    dishes:
      - dish: Supper
        ingredients: ["{food}", 200 ml vegetable stock]
        steps:
          - {{step: "{step}", takes: 20 min, where: {where}, decide: shall I?{more}}}
"""


def found(step: str, food: str = "1 kg carrots", where: str = "worktop", more: str = "") -> list[str]:
    file = read(PLAN.format(step=step, food=food, where=where, more=more and f", {more}"))
    assert isinstance(file, PlanFile), file
    snags = nothing_safe_hangs_on_a_question(file)
    assert all((snag.code, snag.weight, snag.safety) == ("food 32", Weight.STOP, True) for snag in snags)
    assert all(snag.place is not None and "decide" in snag.place.text for snag in snags)
    return [snag.message for snag in snags]


@pytest.mark.parametrize(
    ("step", "more"),
    [
        ("warm it", "until: 74 C"),
        ("warm it", "reheats: yes"),
        ("wipe it", "washes: board"),
        ("chill it", "cools: '5 cm deep, metal, ice bath'"),
    ],
)
def test_what_makes_food_safe_by_its_keys(step: str, more: str) -> None:
    assert len(found(step, more=more)) == 1


def test_what_cooks_raw_food() -> None:
    assert len(found("fry the chicken", "1 kg chicken thighs", "stovetop")) == 1


def test_what_only_tastes_better_may_be_left_out() -> None:
    assert found("thin the sauce", where="stovetop", more="uses: [100 ml vegetable stock]") == []
