"""A clash is irreducible, whatever the plan; and is told in plain words."""

from collections.abc import Iterator

import pytest

from board.schedule.conflicts.clashes import HANDS, OVENS, clash_behind, letting_go, takings
from board.schedule.conflicts.violations import amounts
from board.schedule.formulate import problem_of
from board.schedule.problem import Problem
from board.schedule.solution import Solution
from board.schedule.solver.feasible import can
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import to_run_sheet
from board.sheet import said
from board.sheet.run_sheet import RunSheet
from board.sheet.told import Chain, Late
from tests.conftest import read
from tests.schedule.conflicts.clash_cases import HEAD, ONE_PAN, Worked
from tests.schedule.conflicts.ways_cases import LATE_NORA, OVEN_AND_HANDS, TIME_AND_HANDS
from tests.schedule.conflicts.ways_cases import OVEN_AND_FRIDAY as CRACKERS_TOO
from tests.schedule.random_plans import plan_text


def why_of(sheet: RunSheet) -> str:
    """Why the first thing was given up, in words."""
    return said.why(sheet, sheet.given_up[0].why)


def clashing_plans(wanted: int) -> Iterator[tuple[Problem, Solution]]:
    for seed in range(60):
        file = read(plan_text(seed, dishes=4))
        problem = problem_of(file.plan, file.filled)  # type: ignore[union-attr]  # random plans are sound
        solution = solve(problem, 10)
        if amounts(problem, solution):
            wanted -= 1
            yield problem, solution
        if not wanted:
            return
    raise AssertionError("too few random plans clash for the test to mean anything")


@pytest.mark.slow
def test_no_taking_of_a_clash_can_be_spared() -> None:
    for problem, solution in clashing_plans(5):
        bent = amounts(problem, solution)
        everything = set(takings(problem))
        for violation in list(bent)[:3]:
            taken = set(clash_behind(problem, violation, bent, can).taken)
            assert can(letting_go(problem, everything - taken), violation, bent) is False
            for each in taken:
                assert can(letting_go(problem, (everything - taken) | {each}), violation, bent) is not False


def test_what_time_alone_forbids_is_no_fight() -> None:
    """Two hours of soaking cannot be over 30 min after the only hours begin, whoever and whatever is free."""
    worked = Worked(
        HEAD
        + """
hands:
  host:
    hours:
      on the day: 18:00 - 23:00
courses:
  - course: Main
    at: 18:40
    dishes:
      - dish: Beans
        steps:
          - {step: put the beans to soak, takes: 2 min, day: on the day}
          - {step: let them soak, takes: 2 h, attended: none}
"""
    )

    late = next(violation for violation in worked.clashes if violation.kind == "late")
    assert [(clash.taken, clash.by_time) for clash in worked.clashes[late]] == [((), True)]
    assert "the hours given begin only then" in why_of(worked.sheet)


def test_hands_that_suit_nobody_are_told_as_hours() -> None:
    worked = Worked(
        HEAD
        + """
hands:
  host:
    hours:
      on the day: 18:00 - 18:20, 18:40 - 23:00
courses:
  - course: Main
    at: 19:30
    dishes:
      - dish: Plaited loaf
        steps:
          - {step: plait the dough, takes: 30 min, not after: '18:50', keeps: 3 h}
          - {step: bake the loaf, where: oven at 200 C, takes: 30 min}
"""
    )

    assert {t.what for clashes in worked.clashes.values() for clash in clashes for t in clash.taken} == {HANDS}
    assert "no free hours of any hands suit plait the dough" in why_of(worked.sheet)


def test_a_clash_over_a_tool_counts_what_there_is() -> None:
    fresh = ONE_PAN.replace("takes: 20 min", "takes: 4 min").replace("keeps: 60 min hot", "keeps: 1 min hot")
    why = why_of(Worked(fresh).sheet)

    assert why.startswith("only one big pan is not enough for")
    assert "keeping what comes of 'turn the barley in the seeds'" in why


def test_an_oven_and_hands_that_each_make_a_course_late_are_both_told() -> None:
    """Once the soup is cleared there are 20 min: for a bake of 15 at 150 °C and one of 12 at 220 °C, in one oven; and
    for two things of 12 min of one person's."""
    worked = Worked(OVEN_AND_HANDS)
    clashes = next(clashes for violation, clashes in worked.clashes.items() if violation.kind == "late")

    assert [{taken.what for taken in clash.taken} for clash in clashes] == [{OVENS}, {HANDS}]
    bent = amounts(worked.problem, worked.solution)
    for clash in clashes:  # either is enough for it
        rest = set(takings(worked.problem)) - set(clash.taken)
        assert can(letting_go(worked.problem, rest), clash.violation, bent) is False
    why = why_of(worked.sheet)
    assert why.startswith("the oven cannot take bake the pears (Sat ")
    assert "; and even without that: Nora's hands are not enough for " in why


def test_what_makes_a_course_later_than_time_alone_does_is_told_on_top_of_it() -> None:
    """130 min of soaking, 20 of whisking and 5 of plating from 17:30 on: 20:05, 15 min after 19:50. The 15 min of the
    salad, by the same hands as the whisking, make it 20:20."""
    worked = Worked(TIME_AND_HANDS)
    why = why_of(worked.sheet)

    assert said.what(worked.sheet, worked.sheet.given_up[0].what) == "Main goes out 30 min late"
    first, _, more = why.partition("; and on top of that: ")
    assert first.startswith("waits for whisk the beans until ")
    assert "let the beans soak until 19:40 (it comes first); the hours given begin only then" in first
    assert more.startswith("Nora's hands are not enough for ")
    assert "whisk the beans" in more
    assert "dress the salad" in more


def test_what_lacks_a_minute_by_time_alone_is_told_without_a_fight() -> None:
    alone = Worked(TIME_AND_HANDS.replace("takes: 15 min, who: Nora", "takes: 15 min, who: host"))

    assert "on top of" not in why_of(alone.sheet)
    assert "let the beans soak" in why_of(alone.sheet)


def test_a_chain_tells_all_that_holds_a_step_until_the_same_minute() -> None:
    """Without a search for clashes: the salad waits for hands, and for the beans to be soaked."""
    worked = Worked(TIME_AND_HANDS)
    bare = to_run_sheet(worked.file, worked.problem, worked.solution)
    [chain] = [given.why for given in bare.given_up if isinstance(given.what, Late)]

    assert isinstance(chain, Chain)
    held = {link.reason for link in chain.links}
    assert "hands" in held
    assert "order" in held


def test_what_is_fought_over_by_the_same_steps_is_told_once() -> None:
    worked = Worked(CRACKERS_TOO)
    lines = said.all_given_up(worked.sheet)

    assert len(worked.sheet.given_up) == 2
    assert len(lines) == 1
    assert lines[0].count("the oven cannot take") == 1
    assert "Main goes out" in lines[0]
    assert "bake the beans stands" in lines[0]


def test_hours_of_one_who_alone_may_do_it_are_told_as_theirs() -> None:
    assert "no free hours of Nora's suit shell the peas" in why_of(Worked(LATE_NORA).sheet)
