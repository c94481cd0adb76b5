"""A rest in the switched-off oven follows one bake of its own at once; all else is told at its place."""

import pytest

from board.plan.load import PlanFile
from tests.conftest import HEAD, read

SHELLS = (
    HEAD
    + """\
courses:
  - course: Sweet
    at: 20:30
    dishes:
      - dish: Egg-white shells
        steps:
          - step: whisk the whites
            takes: 20 min
          - step: dry the shells
            where: oven at 225 F
            takes: 50 min
          - step: rest the shells
            where: oven off, door ajar
            takes: 60 min
          - step: fill the shells
            takes: 10 min
"""
)


def test_a_rest_right_after_its_bake_follows_it_at_once() -> None:
    file = read(SHELLS)

    assert isinstance(file, PlanFile)
    first, second = "egg-white-shells/dry-the-shells", "egg-white-shells/rest-the-shells"
    link = next(k for k in file.filled.links if k.second == second)
    assert (link.first, link.least, link.most) == (first, 0, 0)
    on = file.filled.tasks[second].ways[0].on
    assert (on.off, on.ajar, on.heat) == (True, True, None)


@pytest.mark.parametrize(
    ("old", "new", "place", "words"),
    [
        ("where: oven at 225 F", "where: worktop", "22:17", "follows nothing baked"),
        ("takes: 50 min", "takes: 0 min", "22:17", "follows nothing baked"),
        ("60 min\n", "60 min\n            after: dry the shells, at least 10 min\n", "22:17", "leave out `at least`"),
        ("step: fill the shells", "step: rest again\n            where: oven off\n            after: dry the shells",
         "25:17", "so does 'rest the shells' after the same bake"),
        ("where: oven off, door ajar", "where: oven off at 100 C", "22:17", "then it has no setting"),
        ("where: oven off, door ajar", "where: fridge, off", "22:17", "only an oven can be off"),
        ("takes: 10 min", "takes: 10 min\n            keeps: 1 h in the oven off", "26:20", "nothing keeps in an oven"),
    ],
)  # fmt: skip
def test_what_is_no_rest_is_told_at_its_place(old: str, new: str, place: str, words: str) -> None:
    assert SHELLS.count(old) == 1
    found = read(SHELLS.replace(old, new))

    assert isinstance(found, list)
    told = "\n".join(snag.render() for snag in found)
    assert f"supper.yaml:{place}: P" in told
    assert words in told
