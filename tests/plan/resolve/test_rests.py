"""A rest in the switched-off oven follows one bake of its own at once; all else is told at its place.

Its heat and its lengths are ours: any would do.
"""

import pytest

from board.plan.load import PlanFile
from tests.conftest import HEAD, read

PEARS = (
    HEAD
    + """\
courses:
  - course: Sweet
    at: 20:30
    dishes:
      - dish: Pears on porridge
        steps:
          - step: slice the pears
            takes: 20 min
          - step: dry the slices
            where: oven at 100 C
            takes: 70 min
          - step: rest the slices
            where: oven off, door ajar
            takes: 45 min
          - step: top the porridge
            takes: 10 min
"""
)


def test_a_rest_right_after_its_bake_follows_it_at_once() -> None:
    file = read(PEARS)

    assert isinstance(file, PlanFile)
    first, second = "pears-on-porridge/dry-the-slices", "pears-on-porridge/rest-the-slices"
    link = next(k for k in file.filled.links if k.second == second)
    assert (link.first, link.least, link.most) == (first, 0, 0)
    on = file.filled.tasks[second].ways[0].where
    assert (on.off, on.ajar, on.heat) == (True, True, None)


@pytest.mark.parametrize(
    ("old", "new", "place", "words"),
    [
        ("where: oven at 100 C", "where: worktop", "22:20", "follows nothing baked"),
        ("takes: 70 min", "takes: 0 min", "22:20", "follows nothing baked"),
        ("45 min\n", "45 min\n            after: dry the slices, at least 10 min\n", "22:20", "leave out `at least`"),
        ("step: top the porridge", "step: rest again\n            where: oven off\n            after: dry the slices",
         "25:20", "so does 'rest the slices' after the same bake"),
        ("where: oven off, door ajar", "where: oven off at 90 C", "22:20", "then it has no setting"),
        ("where: oven off, door ajar", "where: fridge, off", "22:20", "only an oven can be off"),
        ("takes: 10 min", "takes: 10 min\n            keeps: 1 h in the oven off", "26:20", "nothing keeps in an oven"),
    ],
)  # fmt: skip
def test_what_is_no_rest_is_told_at_its_place(old: str, new: str, place: str, words: str) -> None:
    assert PEARS.count(old) == 1
    found = read(PEARS.replace(old, new))

    assert isinstance(found, list)
    told = "\n".join(snag.render() for snag in found)
    assert f"supper.yaml:{place}: plan " in told
    assert words in told
