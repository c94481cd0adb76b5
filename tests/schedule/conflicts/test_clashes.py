"""A clash is irreducible, whatever the plan, and is told with what is fought over, and by what."""

from collections.abc import Iterator

from board.schedule.conflicts.clashes import HANDS, clash_behind, letting_go, takings
from board.schedule.conflicts.violations import amounts
from board.schedule.formulate import problem_of
from board.schedule.problem import Problem
from board.schedule.solution import Solution
from board.schedule.solver.feasible import can
from board.schedule.solver.solve import solve
from board.sheet.run_sheet import RunSheet
from board.sheet.told import Chain, Fight, FightForHands, FightForThing, Fights
from tests.conftest import read
from tests.schedule.conflicts.clash_cases import HEAD, ONE_PAN, Worked
from tests.schedule.random_plans import plan_text


def fought_over(sheet: RunSheet) -> tuple[Fight, ...]:
    """What is behind the first thing given up."""
    why = sheet.given_up[0].why
    assert isinstance(why, Fights)
    return why.over


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
    assert worked.clashes[late].taken == ()
    why = worked.sheet.given_up[0].why
    assert isinstance(why, Chain)
    assert why.hours_begin


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

    assert {(t.what) for clash in worked.clashes.values() for t in clash.taken} == {HANDS}
    (only,) = fought_over(worked.sheet)
    assert isinstance(only, FightForHands)
    assert [taker.slot for taker in only.takers] == ["plaited-loaf/plait-the-dough"]


def test_a_clash_over_a_tool_counts_what_there_is() -> None:
    fresh = ONE_PAN.replace("takes: 20 min", "takes: 4 min").replace("keeps: 60 min hot", "keeps: 1 min hot")
    (pan,) = fought_over(Worked(fresh).sheet)

    assert isinstance(pan, FightForThing)
    assert (pan.thing, pan.there_is) == ("big pan", 1)
    assert ("barley-with-seeds/turn-the-barley-in-the-seeds", True) in [(t.slot, t.kept) for t in pan.takers]
