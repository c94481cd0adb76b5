"""buying 8: what one dish leaves over, offered to another that needs it while it keeps.

Raw egg whites and yolks keep 2 days at least: FoodSafety.gov, cold food storage chart; raw whole cuts 3; soups and
stews, stock among them, 3.
"""

import pytest

from board.base.clock import StoppedClock
from board.checks.sheet.every import safety_check
from board.evening.events import EveningOpened
from board.evening.wishes import Done
from board.facts.rule_sets import rule_set
from board.output.leaves import WALL, leaves
from board.output.provisions import provisions_markdown
from board.output.sheet_form import outside_form
from board.plan.load import PlanFile
from board.plan.resolve.left_over import keeps
from board.plan.snag import Snag, Weight
from board.rehearsal.player import catch_up
from board.review.measure import measured
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.session.session import unlogged_evening
from board.sheet.run_sheet import RunSheet, restore, store
from board.shopping.errands import provisions
from board.view.board import Viewer
from board.view.closing import closing
from tests.conftest import read

PLAN = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [host, 5 others]
kitchen: {{fridge: 60 litres}}
hands:
  host:
    hours: {{4 days before: '17:00 - 22:00', day before: '17:00 - 22:00', on the day: '9:00 - 23:30'}}
courses:
  - course: Sweet
    at: 20:15
    dishes:
      - dish: Meringues
        for: 3
        scale: linear
        ingredients: [3 egg whites, 300 g sugar]
        steps:
          - {{step: separate the eggs, takes: 10 min, day: {first}, leaves: {left}, keeps: 4 days in the fridge}}
          - {{step: bake the meringues, where: 'oven at 110 C', takes: 90 min, keeps: 2 days in the room}}
      - dish: Lemon parfait
        for: 6
        ingredients: [{needs}, 120 g caster sugar]
        steps:
          - {{step: weigh the sugar, takes: 5 min, day: {first}, keeps: 4 days in the room}}
          - {{step: whisk it over steam, where: stovetop, takes: 20 min, day: {then}, until: 71 C, uses: ['{needs}']}}
"""


def supper(
    left: str = "3 egg yolks", needs: str = "5 egg yolks", first: str = "day before", then: str = "on the day"
) -> tuple[PlanFile, RunSheet]:
    file = read(PLAN.format(left=left, needs=needs, first=first, then=then))
    assert isinstance(file, PlanFile), file
    return file, make_sheet(file, solve)


def snags(file: PlanFile, sheet: RunSheet) -> list[Snag]:
    return [snag for snag in safety_check(file, sheet) if snag.code == "buying 8"]


def test_another_dish_that_needs_it_is_named_with_how_much_and_till_when() -> None:
    """Meringues for three are made for six: six yolks are left. Friday and two days is Sunday."""
    (snag,) = snags(*supper())

    assert snag.message == (
        "6 egg yolks, left from Meringues on Fri 27 Nov, in the fridge until Sun 29 Nov: "
        "Lemon parfait needs 5 egg yolks"
    )
    assert snag.weight is Weight.NOTE
    assert snag.place is not None
    assert "leaves: 3 egg yolks" in snag.place.text
    assert "FoodSafety.gov" in snag.source


def test_too_old_by_then_is_to_be_minded() -> None:
    (snag,) = snags(*supper(first="4 days before"))

    assert snag.weight is Weight.MIND
    assert snag.message.endswith("Lemon parfait needs 5 egg yolks on Sat 28 Nov, when it is too old")
    assert "whole eggs for Lemon parfait" in snag.mend


def test_before_it_is_there_it_is_told_so() -> None:
    file, sheet = supper(first="on the day", then="day before")

    assert [snag.message.rpartition(", ")[2] for snag in snags(file, sheet)] == ["before it is there"]


@pytest.mark.parametrize(("left", "needs"), [("3 egg yolks", "3 eggs"), ("3 egg yolks", "5 pears")])
def test_another_food_is_no_offer(left: str, needs: str) -> None:
    file, sheet = supper(left, needs)

    assert snags(file, sheet) == []
    assert [each.needed_by for each in sheet.left] == [()]


@pytest.mark.parametrize(
    ("food", "days"),
    [("egg yolks", 2), ("egg whites", 2), ("chicken stock", 3), ("beef shin", 3), ("half an onion", 3), ("sugar", 180)],
)
def test_how_long_it_keeps(food: str, days: int) -> None:
    assert keeps(food, rule_set("home"))[0] == days


def test_it_is_told_on_the_list_and_counted_by_nobody() -> None:
    file, sheet = supper("200 ml double cream", "100 ml double cream")
    found = provisions(file, sheet, [])

    (cream,) = (each.item for each in found.to_buy if "cream" in each.item.food)
    assert cream.parts[0].bought == 100
    assert found.left == (
        "400 ml double cream, left from Meringues on Fri 27 Nov, in the fridge until Mon 30 Nov: "
        "Lemon parfait needs 100 ml double cream",
    )
    assert "left from Meringues" in provisions_markdown(found)


def test_the_evening_ends_with_what_is_still_good() -> None:
    """By when it was really left: a yolk of Friday evening is good on Saturday night, one of Tuesday is not."""
    told = []
    for first in ("day before", "4 days before"):
        _, sheet = supper(first=first)
        start, over = min(slot.start for slot in sheet.slots), max(slot.end for slot in sheet.slots)
        clock = StoppedClock(start)
        evening = unlogged_evening(sheet, clock)
        catch_up(evening, clock, over)
        review = measured(evening.state, EveningOpened(n=0, at=start, rehearsal=False, sheet=sheet))
        told.append("\n".join(" ".join(text for text, _ in line) for line in closing(review, 80)))

    fresh, old = told
    assert "Left to use" in fresh
    assert "6 egg yolks, left from Meringues on Fri 27 Nov" in fresh
    assert "egg yolks" not in old


def test_its_step_says_on_paper_and_on_the_board_that_it_is_kept() -> None:
    _, sheet = supper()
    (leaf,) = leaves(sheet, WALL)
    step = sheet.by_id()[sheet.left[0].slot]
    clock = StoppedClock(step.start)
    evening = unlogged_evening(sheet, clock)
    catch_up(evening, clock, step.start)
    evening.tick()
    evening.wish(Done(step.id, "start", 0))
    clock.set(step.end)

    due = Viewer(sheet).view(evening.tick()).due

    (row,) = (row for day in leaf.days for row in day.rows if row.what.startswith("separate the eggs"))
    assert "keep 6 egg yolks: 2 days in the fridge" in row.told
    (call,) = (each for each in due if each.key[:2] == (step.id, "end"))
    assert call.look_for == "keep 6 egg yolks: 2 days in the fridge"


def test_it_is_kept_with_the_sheet_and_told_to_other_programs() -> None:
    _, sheet = supper()

    (leaves,) = (each["leaves"] for each in outside_form(sheet, valid=True)["steps"] if each["leaves"])
    assert (leaves[0]["food"], leaves[0]["low"], leaves[0]["needed_by"]) == ("egg yolks", 6, ["Lemon parfait"])
    assert restore(store(sheet)) == sheet
