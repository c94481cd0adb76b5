"""time 13: jobs that are none of the usual ones, by their words, and have no time of their own."""

import pytest

from board.checks.plan.every import check
from board.plan.load import PlanFile
from board.plan.snag import Snag, Weight
from tests.conftest import HEAD, read

DINNER = (
    HEAD
    + """
courses:
  - {course: Soup, at: 19:15, dishes: [{dish: Leek soup, steps: [{step: heat it, takes: 5 min}]}]}
jobs: [%s]
"""
)


def found(*jobs: str) -> list[Snag]:
    file = read(DINNER % ", ".join(jobs))
    assert isinstance(file, PlanFile), file
    return [snag for snag in check(file) if snag.code == "time 13"]


def test_they_are_asked_about_once_and_all_named() -> None:
    (snag,) = found("decant the olive oil", "lay the table", "tune the piano", "set fire to the wicks")

    assert snag.weight is Weight.ASK
    assert snag.message.startswith("decant the olive oil, tune the piano: when?")
    assert "before:" in snag.mend
    assert snag.place is not None


def test_of_many_some_are_named() -> None:
    (snag,) = found(*(f"tune piano {n}" for n in range(9)))

    assert "tune piano 5, 3 more: when?" in snag.message


@pytest.mark.parametrize(
    "job",
    ["{job: tune the piano, day: on the day, not after: '16:00'}", "{job: tune the piano, before: heat it}",
     "{job: tune the piano, not before: '15:00'}", "tune the piano on Friday", "play charades afterwards",
     "blow out the candles", "bring the cheeses to room temperature"],
)  # fmt: skip
def test_what_has_a_time_or_is_known_is_not_asked_about(job: str) -> None:
    assert found(job) == []
