"""What is not proved is named, with by how much it may still be bettered; and never more is called proved than is."""

import pytest

from board.output.words.sheet import AIMS, sheet_state
from board.plan.load import PlanFile
from board.schedule.formulate import problem_of
from board.schedule.solution import AIMS as IN_ORDER
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import to_run_sheet
from board.sheet.told import StillOpen


@pytest.mark.parametrize(
    ("still_open", "said"),
    [
        ((StillOpen("give", 5),), "Open: 5 minutes of give; all else is proved"),
        ((StillOpen("busiest", 1), StillOpen("give", 5)),
         "Open: 1 minute in your busiest half hour, 5 minutes of give; all else is proved"),
        ((StillOpen("company", 12),), "Open: 12 minutes away from the guests; all that counts more is proved"),
        ((StillOpen("busiest", 3), StillOpen("give")),
         "Open: 3 minutes in your busiest half hour; not looked into: minutes of give; all else is proved"),
        ((StillOpen("hours", 3),), "Open: 3 minutes of work outside your hours"),
        ((StillOpen("clocks", 1), StillOpen("keeps", 20)),
         "Open: 1 dish out past the clock, 20 minutes past what things keep; all that counts more is proved"),
        ((StillOpen("clocks"),), "not looked into: dishes out past the clock; all that counts more is proved"),
        ((), "the best found, not proved"),
    ],
)  # fmt: skip
def test_what_is_open_is_named(still_open: tuple[StillOpen, ...], said: str) -> None:
    assert sheet_state(False, still_open) == said


def test_every_aim_has_its_words_in_its_order() -> None:
    assert [aim for aim in AIMS if aim != "spared"] == list(IN_ORDER)


def test_a_sheet_cut_short_says_which_aims_stayed_open(lantern: PlanFile, monkeypatch: pytest.MonkeyPatch) -> None:
    """Where time is up before the search found anything, the list schedule stands: what is not nought is open."""
    monkeypatch.setattr("board.schedule.solver.search.Clock.left", lambda _: 0.0)
    problem = problem_of(lantern.plan, lantern.filled)
    solution = solve(problem)
    sheet = to_run_sheet(lantern, problem, solution)

    assert not sheet.proved
    assert [each.aim for each in sheet.still_open] == [aim.aim for aim in solution.aims if not aim.proved]
    assert sheet.still_open[-1] == StillOpen("give", None)
