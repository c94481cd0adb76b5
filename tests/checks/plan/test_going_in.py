"""buying 7: what goes in at the steps against what the dish has, and a food that only a step names."""

import pytest

from board.checks.allergens.guests_eat import matrix
from board.checks.allergens.verdict import Verdict
from board.checks.plan.going_in import no_more_goes_in_than_there_is
from board.plan.load import PlanFile
from board.plan.snag import Snag, Weight
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.shopping.errands import provisions
from tests.conftest import read
from tests.plan.resolve.test_going_in import file


def snags(has: str, first: str, second: str = "") -> list[Snag]:
    return no_more_goes_in_than_there_is(file(has, first, second))


@pytest.mark.parametrize(
    ("has", "first", "second", "says"),
    [
        ("3 eggs", "2 eggs", "2 eggs", "Pie uses 4 eggs, and has 3"),
        ("250 g butter", "0.2 kg butter", "100 g butter", "Pie uses 300 g butter, and has 250 g"),
        ("2 cups oats", "3 cups oats", "", "Pie uses 3 cups oats, and has 2 cups"),
    ],
)
def test_more_than_the_dish_has(has: str, first: str, second: str, says: str) -> None:
    (snag,) = snags(has, first, second)

    assert (snag.code, snag.weight, snag.message) == ("buying 7", Weight.MIND, says)
    assert "raise the amount among its `ingredients`" in snag.mend
    assert snag.place is not None
    assert "uses" in snag.place.text


def test_what_cannot_be_compared_is_asked() -> None:
    (snag,) = snags("1 jar mystery paste", "2 tbsp mystery paste")

    assert snag.weight is Weight.ASK
    assert "uses 2 tbsp mystery paste, and has 1 jar" in snag.message


def test_a_food_that_the_dish_does_not_list_is_told_with_the_one_meant() -> None:
    (snag,) = snags("250 g butter", "100 g buter")

    assert "uses buter, which it does not list. Did you mean 'butter'?" in snag.message


def test_all_that_the_bundled_plan_uses_is_there(lantern: PlanFile) -> None:
    assert no_more_goes_in_than_there_is(lantern) == []
    assert sum(bool(step.uses) for c in lantern.plan.courses for d in c.dishes for step in d.steps) >= 12


NUTS = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: ['Ines, no tree nuts', host]
hands: {host: {hours: {on the day: '9:00 - 23:30'}}}
courses:
  - course: Sweet
    at: 19:15
    dishes:
      - dish: Pears
        ingredients: [6 pears, 100 g butter]
        steps:
          - {step: bake the pears, where: 'oven at 190 C', takes: 30 min, MORE}
"""


@pytest.mark.parametrize(
    ("more", "verdict"),
    [
        ("uses: [6 pears]", Verdict.SAFE),
        ("uses: [50 g walnuts]", Verdict.NOT_SAFE),
        ("uses: ['100 g butter, contains tree nuts']", Verdict.NOT_SAFE),
        ("uses: ['100 g butter, may contain tree nuts']", Verdict.ASK),
        ("how: scatter the walnuts over them", Verdict.ASK),
    ],
)
def test_a_food_that_only_a_step_names_is_weighed_for_the_guests(more: str, verdict: Verdict) -> None:
    found = read(NUTS.replace("MORE", more))
    assert isinstance(found, PlanFile), found

    assert matrix(found).answers[0, 0].verdict is verdict


def test_what_a_question_may_add_is_bought_and_weighed_and_not_asked_of_the_list() -> None:
    found = read(NUTS.replace("MORE", "decide: with nuts?, uses: [50 g walnuts]"))
    assert isinstance(found, PlanFile)

    assert no_more_goes_in_than_there_is(found) == []
    assert matrix(found).answers[0, 0].verdict is Verdict.NOT_SAFE
    assert "walnuts" in {each.item.food for each in provisions(found, make_sheet(found, solve), []).to_buy}


def test_it_is_bought() -> None:
    found = read(NUTS.replace("MORE", "uses: [50 g walnuts]"))
    assert isinstance(found, PlanFile)

    bought = provisions(found, make_sheet(found, solve), []).to_buy

    assert {each.item.food for each in bought} == {"pears", "butter", "walnuts"}


def test_its_line_is_where_the_finding_stands() -> None:
    found = read(NUTS.replace("MORE", "uses: [50 g walnuts]"))
    assert isinstance(found, PlanFile)

    (reason,) = matrix(found).answers[0, 0].reasons

    assert "walnuts" in found.places.of(reason.loc).text
