"""A search that nobody waits for any more."""

import threading

from board.plan.load import PlanFile
from board.schedule.formulate import problem_of
from board.schedule.solver.solve import NoAnswer, solve


def test_a_search_that_is_halted_ends_with_what_there_is(lantern: PlanFile) -> None:
    """And says that it did not look at all there is."""
    halt = threading.Event()
    halt.set()

    try:
        found = solve(problem_of(lantern.plan, lantern.filled), 60.0, halt=halt)
    except NoAnswer:
        return
    assert not found.proved
