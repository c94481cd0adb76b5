"""A dish out of a plan, as a file, and into another plan."""

from datetime import date

import pytest

from board.importing.shelf.fill import Filled, filled
from board.importing.shelf.had import had_before
from board.importing.shelf.kept import Evening, KeptDish, read_kept
from board.importing.shelf.taking import Figure, Taken, dishes_called, evening_of, take
from board.plan.load import PlanFile, read_plan
from board.plan.resolve.scaling import guests_fed
from tests.conftest import HEAD

PLAN = (
    HEAD.replace("[8 guests]", '["Ada, no milk", Rory, host, 5 others]')
    + """
courses:
  - course: Nibbles
    at: 18:45
    dishes:
      - dish: Onion tartlets   # the small ones
        for: 8
        not for: Ada
        source: the blue notebook
        ingredients: [5 onions, 250 g plain flour]
        steps:
          - step: soften the onions
            who: host
            takes: 30 min   # low heat
            noted: low flame (2026-01-01)
            guessed: [takes]
          # while it rests
          - step: bake the tartlets
            where: oven at 190 C
            takes: 20 min
            attended: 2 min at the start, 3 min at the end
            after: [soften the onions, light the candles]
            not before: "17:00"
      - dish: Olives
        steps: [{step: set out the olives, takes: 2 min}]
  - course: Main
    at: 19:30
    dishes:
      - dish: Olives
        steps: [{step: warm the olives, takes: 5 min}]
jobs:
  - {job: light the candles, takes: 2 min}
"""
)
TART = ("courses", 0, "dishes", 0)
TODAY = date(2026, 11, 29)


def file(text: str = PLAN) -> PlanFile:
    found = read_plan(text, "supper.yaml")
    assert isinstance(found, PlanFile), [snag.render() for snag in found]
    return found


def taken(
    figures: dict[tuple[str, str], Figure] | None = None,
    before: KeptDish | None = None,
    served: tuple[Evening, ...] = (),
) -> Taken:
    made = take(PLAN, file(), TART, figures or {}, before, served, TODAY)
    assert isinstance(made, Taken)
    return made


def test_a_dish_is_kept_as_written_without_what_belongs_to_its_evening() -> None:
    found = taken()

    assert found.kept.lines_for(8) == [
        "- dish: Onion tartlets   # the small ones",
        "  for: 8",
        "  source: the blue notebook",
        "  ingredients: [5 onions, 250 g plain flour]",
        "  steps:",
        "    - step: soften the onions",
        "      takes: 30 min   # low heat",
        "      noted: low flame (2026-01-01)",
        "      guessed: [takes]",
        "    # while it rests",
        "    - step: bake the tartlets",
        "      where: oven at 190 C",
        "      takes: 20 min",
        "      attended: 2 min at the start, 3 min at the end",
        "      after: [soften the onions]",
    ]
    assert set(found.left_out) == {"not for", "who", "after", "not before"}
    assert (found.kept.course, found.kept.hands) == ("Nibbles", 35)
    assert found.kept.planned == (Evening(on=date(2026, 11, 28), evening="Test supper", to=("Rory", "5 others")),)


def test_what_enough_evenings_taught_stands_in_it_and_is_a_guess_no_more() -> None:
    sure, one = Figure("35 to 40 to 50 min", 3, sure=True), Figure("26 min", 1, sure=False)
    kept = taken({("soften the onions", "worktop"): sure, ("bake the tartlets", "oven"): one}).kept

    assert "      takes: 35 to 40 to 50 min   # low heat" in kept.lines_for(8)
    assert "      takes: 20 min" in kept.lines_for(8)
    assert not any("guessed" in line for line in kept.lines_for(8))
    assert "soften the onions: 35 to 40 to 50 min, from 3 evenings" in kept.text
    assert "bake the tartlets: 26 min, from 1 evening" in kept.text


def test_kept_again_its_evenings_stay_and_those_that_logs_show_are_served() -> None:
    before = taken().kept
    older = Evening(on=date(2026, 6, 6), evening="Garden", to=("Ada",))
    again = taken(before=before, served=(older, evening_of(file(), TART))).kept

    assert again.planned == ()
    assert [each.on for each in again.served] == [date(2026, 6, 6), date(2026, 11, 28)]


def test_another_number_of_eaters_is_left_to_the_plans_own_rule() -> None:
    """`for` and amounts are as they were tried; `scale: linear` has the plan reckon them (as everywhere in a plan)."""
    lines = taken().kept.lines_for(6)
    text = HEAD.replace("8 guests", "6 guests") + "courses:\n  - course: Nibbles\n    at: 18:45\n    dishes:\n"
    plan = file(text + "\n".join(f"      {line}" for line in lines)).plan

    assert guests_fed(plan, plan.courses[0], plan.courses[0].dishes[0]) == 6
    assert "  for: 8" in lines


def test_dishes_are_found_by_name_in_a_course_or_in_any() -> None:
    assert dishes_called(file(), "onion  TARTLETS", None) == [TART]
    assert len(dishes_called(file(), "olives", None)) == 2
    assert dishes_called(file(), "olives", "main") == [("courses", 1, "dishes", 0)]
    assert dishes_called(file(), "tart", None) == []


@pytest.mark.parametrize(
    ("spoil", "line"),
    [
        (lambda text: text.replace("takes: 20 min", "takes: 20 parsecs"), "takes: 20 parsecs"),
        (lambda text: text.replace("hands: 35 min", "hnds: 35 min"), "hnds: 35 min"),
        (lambda text: text.replace("kept: 2026-11-29", "kept: someday"), "kept: someday"),
        (lambda text: text.replace("  steps:", "  steps: [", 1), ""),
        (lambda text: "[]", ""),
        (lambda text: "", ""),
        (lambda text: text.partition("dishes:")[0] + "dishes: []\n", "dishes: []"),
    ],
)
def test_a_damaged_file_is_told_at_its_line(spoil: object, line: str) -> None:
    assert callable(spoil)
    found = read_kept(spoil(taken().kept.text), "tart.yaml")

    assert isinstance(found, list)
    assert found[0].place is not None
    assert line in found[0].place.text
    assert found[0].render().startswith("tart.yaml:")


def shelf(name: str, eaters: int | None) -> list[str] | None:
    return taken().kept.lines_for(eaters) if name.casefold() == "onion tartlets" else None


WAITING = PLAN.replace(
    "      - dish: Olives\n        steps: [{step: warm",
    "      - from shelf: ONION tartlets   # Rory's wish\n        only for: Rory\n        for: 4\n"
    "      - dish: Olives\n        steps: [{step: warm",
).replace("Onion tartlets   # the small ones", "Bread")


def test_a_plan_that_waits_for_the_shelf_says_how_it_is_written_out() -> None:
    found = read_plan(WAITING, "supper.yaml")

    assert isinstance(found, list)
    assert [(snag.code, snag.place.text.strip() if snag.place else "") for snag in found] == [
        ("plan 17", "- from shelf: ONION tartlets   # Rory's wish")
    ]
    assert "`platecall dishes fill PLAN`" in found[0].mend


def test_what_a_plan_wants_from_the_shelf_is_written_out_in_its_place() -> None:
    made = filled(WAITING, "supper.yaml", shelf)
    assert isinstance(made, Filled)
    dish = file(made.text).plan.courses[1].dishes[0]

    assert (dish.dish, dish.for_, dish.only_for) == ("Onion tartlets", 4, ["Rory"])
    assert "      # Rory's wish\n      - dish: Onion tartlets   # the small ones\n" in made.text
    assert made.text.startswith(WAITING.partition("      - from shelf")[0])
    assert made.text.endswith(WAITING.partition("for: 4\n")[2])


def test_a_name_that_the_shelf_lacks_is_told_and_left() -> None:
    text = WAITING.replace("ONION tartlets", "'[b]../../etc[/b]'")
    assert filled(text, "supper.yaml", shelf) == Filled(text, (), ("[b]../../etc[/b]",))


def test_guests_who_had_a_dish_are_told_by_the_last_time_they_had_it() -> None:
    evenings = [
        ("onion TARTLETS", Evening(on=date(2026, 6, 6), evening="Garden", to=("rory", "Ada", "5 others"))),
        ("Olives", Evening(on=date(2025, 5, 1), evening="Spring", to=("Ada", "Rory"))),
        ("Olives", Evening(on=date(2025, 4, 1), evening="Easter", to=("Rory",))),
        ("Olives", Evening(on=date(2027, 1, 1), evening="Later", to=("Ada",))),
    ]

    told = [snag.message for snag in had_before(file(), evenings)]

    assert told == [
        "Rory had Onion tartlets on 6 June",  # Ada is not served them this time
        "Ada and Rory had Olives on 1 May 2025",
        "Ada and Rory had Olives on 1 May 2025",
    ]
