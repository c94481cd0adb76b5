"""What can be anaphylaxis stands first wherever guests' needs are listed."""

from rich.console import Console

from board.checks.allergens.guests_eat import matrix
from board.checks.allergens.plates import plates
from board.checks.plan.every import check
from board.output.guests import guests_form, guests_markdown, print_guests
from board.output.table import table_leaf
from board.plan.load import PlanFile
from board.plan.snag import Snag, Weight
from board.sheet import said
from tests.conftest import read

PLAN = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: ['Pia, no milk', 'Tomas, vegan', 'Ines, vegetarian, no sesame, EpiPen for nuts', 2 others, host]
hands: {host: {hours: {on the day: '9:00 - 23:30'}}}
courses:
  - course: Main
    at: 19:15
    dishes:
      - dish: Butter pie
        ingredients: [100 g butter, 100 g glimmer paste]
        steps: [{step: make the pie, takes: 30 min}]
      - dish: Walnut bread
        ingredients: [100 g tahini, 100 g walnuts, 100 g lard]
        steps: [{step: bake it, takes: 30 min}]
      - dish: Rice for Ines
        only for: Ines
        ingredients: [100 g rice]
        steps: [{step: boil it, takes: 30 min}]
"""


def file() -> PlanFile:
    found = read(PLAN)
    assert isinstance(found, PlanFile), found
    return found


def of_guests(snags: list[Snag], weight: Weight) -> list[Snag]:
    return [snag for snag in snags if snag.code.startswith("guests") and snag.weight is weight]


def test_in_check_it_stands_before_the_allergies_of_others() -> None:
    """The butter pie stands first in the plan; what could be anaphylaxis is told before it."""
    stops = of_guests(check(file()), Weight.STOP)

    assert [(snag.code, snag.severe) for snag in stops] == [("guests 1", True), ("guests 1", False)]
    assert stops[0].message.startswith(
        "Walnut bread is not safe for Ines (severe allergy to nuts, no sesame): walnuts: holds walnuts"
    )
    assert [(snag.about.dish, snag.about.guests) for snag in stops] == [
        ("Walnut bread", ("Ines",)), ("Butter pie", ("Pia",)),
    ]  # fmt: skip
    assert stops[0].about.foods == ("walnuts", "tahini")


def test_in_a_finding_about_several_the_guest_comes_first() -> None:
    (unknown,) = [snag for snag in check(file()) if snag.code == "guests 3"]

    assert unknown.about.guests == ("Ines", "Pia", "Tomas")
    assert unknown.severe


def test_on_the_page_of_guests() -> None:
    found = matrix(file())
    out = Console(width=100, record=True)
    print_guests("Supper", found, out)

    for page in (out.export_text(), guests_markdown("Supper", found)):
        assert 0 < page.index("Ines, severe allergy to nuts, no sesame, vegetarian") < page.index("Pia, no milk")
    assert [guest["severe"] for guest in guests_form("Supper", found)["guests"]] == [[], [], ["nuts"], [], []]


def test_where_plates_differ_which_board_and_leaves_show() -> None:
    lines = [said.plate(each) for each in plates(file(), matrix(file()))["Main"]]

    assert [line.split(":")[0] for line in lines] == [
        "Ines (severe allergy to nuts, no sesame, vegetarian)", "Pia (no milk)",
    ]  # fmt: skip


def test_at_the_table() -> None:
    leaf = table_leaf(file().plan)

    assert [(chair.name, chair.must_not) for chair in leaf.guests] == [
        ("Ines", ("severe allergy to nuts", "no sesame", "vegetarian")), ("Pia", ("no milk",)), ("Tomas", ("vegan",)),
    ]  # fmt: skip
