"""The wall's sheet, the plates and the list on the page say what paper and terminal say."""

from collections.abc import Callable
from pathlib import Path

import pytest

from board.base import words as shared
from board.output.leaves import WALL, leaves
from board.plan.load import PlanFile
from board.share import words
from board.share.papers import FromPlan, plates, to_buy, wall
from board.sheet.run_sheet import RunSheet
from board.shopping.errands import provisions


@pytest.fixture(scope="module")
def lantern_papers(lantern: PlanFile, lantern_sheet: RunSheet) -> FromPlan:
    return FromPlan(lantern, provisions(lantern, lantern_sheet, lantern.plan.pantry))


def test_the_wall_has_every_row_of_the_printed_leaf(lantern_sheet: RunSheet) -> None:
    paper, (leaf,) = wall(lantern_sheet), leaves(lantern_sheet, WALL)

    rows = [(row.lead, row.what) for part in paper.parts[1:] for row in part.rows]
    assert rows == [(f"{row.start}–{row.end}", row.what) for day in leaf.days for row in day.rows]
    assert paper.notes == leaf.notes


def test_guests_stand_with_what_they_must_not_have_and_the_usual_caution(
    lantern: PlanFile, lantern_sheet: RunSheet
) -> None:
    paper = plates(lantern_sheet, lantern)

    assert {row.lead: row.what for row in paper.parts[0].rows}["Ines"] == "no tree nuts"
    assert paper.notes == (shared.GUESTS_CAUTION,)
    assert paper.warnings == ()


def test_without_a_plan_the_plates_of_the_sheet_stay_and_it_says_what_is_missing(lantern_sheet: RunSheet) -> None:
    with_plates = [course.name for course in lantern_sheet.courses if course.plates]

    paper = plates(lantern_sheet, None)

    assert [part.title for part in paper.parts] == with_plates
    assert paper.warnings == (words.NO_PLAN,)
    assert to_buy(FromPlan()).warnings == (words.NO_PLAN,)


def test_a_food_is_ticked_however_often_it_is_sent(lantern_papers: FromPlan) -> None:
    assert lantern_papers.tick(0, ticked=True)
    assert lantern_papers.tick(0, ticked=True)
    first = next(row for part in to_buy(lantern_papers).parts for row in part.rows)
    assert (first.tick, first.ticked) == (0, True)

    assert lantern_papers.tick(0, ticked=False)
    assert not any(row.ticked for part in to_buy(lantern_papers).parts for row in part.rows)
    assert not lantern_papers.tick(-1, ticked=True)
    assert not lantern_papers.tick(len(lantern_papers.foods), ticked=True)


def test_every_food_has_a_number_of_its_own(lantern_papers: FromPlan) -> None:
    rows = [row for part in to_buy(lantern_papers).parts for row in part.rows]

    assert [row.tick for row in rows] == list(range(len(rows)))
    assert [row.what for row in rows] == [food.food for food in lantern_papers.foods]


def test_what_goes_into_a_dish_is_what_the_plan_writes(lantern_papers: FromPlan) -> None:
    """The tartlets are written for the eight who come."""
    assert lantern_papers.made_of["Onion and thyme tartlets"][:3] == (
        "5 onions", "250 g plain flour", "125 g butter",
    )  # fmt: skip


def test_of_two_dishes_of_one_name_no_amounts_are_told(
    plan_from: Callable[[str], PlanFile], lantern_sheet: RunSheet, tmp_path: Path
) -> None:
    from tests.conftest import HEAD

    dish = "{{dish: Salad, ingredients: [{0} g leaves], steps: [{{step: toss {0}, takes: 5 min, keeps: 1 h}}]}}"
    courses = [f"  - {{course: C{n}, at: {at}, dishes: [{dish.format(n)}]}}" for n, at in ((1, "19:00"), (2, "20:00"))]
    plan = plan_from("\n".join([HEAD.strip(), "courses:", *courses]))
    from board.schedule.solver.solve import solve
    from board.schedule.to_run_sheet import make_sheet

    found = FromPlan(plan, provisions(plan, make_sheet(plan, solve), ()))

    assert "Salad" not in found.made_of
    assert len(found.foods) >= 1
