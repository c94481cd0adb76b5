"""Ways out: each is the least change of its family that helps, and the plan it writes is the plan it was tried on."""

import difflib

import pytest

from board.schedule.audit.validate import validate
from tests.schedule.conflicts.clash_cases import HEAD, SQUASH_AND_POT, Worked

# The host has 40 min and two jobs of 25 that only suit then: 10 min are missing.
TOO_MUCH = (
    HEAD
    + """
hands:
  host:
    hours:
      on the day: 17:50 - 18:30, 18:50 - 23:00
courses:
  - course: Main
    at: 19:30
    dishes:
      - dish: Dumplings
        steps:
          - {step: fold the dumplings, takes: 25 min, keeps: 2 h}
          - {step: steam the dumplings, where: 'stovetop, 1 ring', takes: 12 min, attended: 1 min at the start}
jobs:
  - {job: lay the table, takes: 25 min}
"""
)

TWO_BAKES = (
    HEAD
    + """
hands:
  host:
    hours:
      on the day: 16:00 - 23:00
courses:
  - course: Main
    at: 19:30
    dishes:
      - dish: Gratin
        steps:
          - {step: bake the gratin, where: oven at 180 C (170 to 185 C), takes: 50 min, keeps: 5 min}
      - dish: Rolls
        steps:
          - {step: bake the rolls, where: oven at 200 C (195 to 210 C), takes: 15 min, keeps: 5 min}
"""
)


def whole(worked: Worked) -> list[str]:
    return [way.what for way in worked.ways() if not way.remains]


def test_earlier_hours_go_only_as_far_as_they_must() -> None:
    ways = whole(Worked(TOO_MUCH))

    assert [way for way in ways if "earlier" in way] == ["host begins 30 min earlier on the day, at 17:20"]


def test_a_helper_is_asked_for_no_longer_than_needed() -> None:
    worked = Worked(TOO_MUCH)
    helped = next(way for way in worked.ways() if "helper" in way.what)

    assert helped.what.startswith("a helper for 25 min of work, from ")
    hours = Worked(helped.text).file.plan.hands["helper"].hours["on the day"][0]
    start, end = (int(clock[:2]) * 60 + int(clock[3:]) for clock in (hours.start, hours.end))
    assert end - start == 25


def test_a_push_is_the_shortest_that_helps() -> None:
    """2 min of hands, 2 h of soaking and 5 min of plating from 18:00 on: 20:07, so 20:05 is pushed by 5 min."""
    soaked = Worked(
        HEAD
        + """
hands:
  host:
    hours:
      on the day: 18:00 - 23:00
courses:
  - course: Main
    at: 20:05
    dishes:
      - dish: Beans
        steps:
          - {step: put the beans to soak, takes: 2 min}
          - {step: let them soak, takes: 2 h, attended: none}
"""
    )

    assert [way for way in whole(soaked) if "later" in way] == ["serve Main 5 min later, at 20:10"]


def test_two_bakes_near_in_heat_share_a_setting_if_the_recipe_bears_it() -> None:
    """10 °C lie between what the two accept; each is asked to come as far as the other."""
    shared = [way for way in whole(Worked(TWO_BAKES)) if "stand at" in way]

    assert shared == [
        "let 'bake the gratin' stand at 195 °C (375 °F) too, if the recipe bears it",
        "let 'bake the rolls' stand at 185 °C (375 °F) too, if the recipe bears it",
    ]


@pytest.mark.parametrize("text", [TOO_MUCH, TWO_BAKES, SQUASH_AND_POT])
def test_what_is_offered_was_worked_out_from_the_text_it_writes(text: str) -> None:
    worked = Worked(text)
    ways = worked.ways()

    assert ways
    assert [way.remains > 0 for way in ways] == sorted(way.remains > 0 for way in ways)
    for way in ways:
        again = Worked(way.text)
        assert again.sheet.given_up == way.sheet.given_up
        assert validate(again.file, again.sheet) == []


def test_comments_and_layout_stay_but_for_the_lines_of_the_change() -> None:
    worked = Worked(SQUASH_AND_POT)
    way = next(way for way in worked.ways() if "on a ring" in way.what)

    changed = [line for line in difflib.ndiff(worked.text.splitlines(), way.text.splitlines()) if line[0] in "+-"]
    assert [line.lstrip("+ ") for line in changed] == ["or:", "- keeps: 1 h 15 on the stovetop, 1 ring"]


def test_nothing_is_offered_where_nothing_is_given_up() -> None:
    assert Worked(TOO_MUCH.replace("17:50", "17:00")).ways() == []
