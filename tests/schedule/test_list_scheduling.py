"""A first timetable without a search: it keeps every hard limit, and says nothing better of itself than is so."""

import time
from datetime import timedelta

import pytest

from board.plan.load import PlanFile, read_plan
from board.schedule.audit.validate import validate
from board.schedule.conflicts.violations import amounts
from board.schedule.formulate import problem_of
from board.schedule.list_scheduling import list_schedule
from board.schedule.solution import COSTLY
from board.schedule.solver.search import Clock, Effort, Found
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet, to_run_sheet
from tests.examples import first
from tests.schedule.large_plans import large_plan
from tests.schedule.random_plans import plan_text


def read(text: str) -> PlanFile:
    found = read_plan(text, "plan.yaml")
    assert isinstance(found, PlanFile), [snag.render() for snag in found]
    return found


@pytest.mark.parametrize("seed", first(12, range(40)))
def test_whatever_a_plan_asks_the_validator_finds_nothing_in_it(seed: int) -> None:
    plan = read(plan_text(seed, 3 + seed % 14))
    problem = problem_of(plan.plan, plan.filled)
    solution = list_schedule(problem)

    assert solution is not None
    assert validate(plan, to_run_sheet(plan, problem, solution)) == []


def test_the_work_of_a_short_dinner_is_placed_from_its_end(lantern: PlanFile) -> None:
    """The bundled supper can be had with no work out of hours; so it is, though some of it then keeps too long."""
    problem = problem_of(lantern.plan, lantern.filled)
    solution = list_schedule(problem)

    assert solution is not None
    broken = {violation.kind for violation in amounts(problem, solution)}
    assert broken.isdisjoint({"out-of-hours", "not-at-once", "not-ready"})


@pytest.mark.slow
def test_three_hundred_pieces_have_a_first_answer_when_time_is_up_at_once() -> None:
    plan = read(large_plan(300))
    problem = problem_of(plan.plan, plan.filled)
    began = time.process_time()
    solution = solve(problem, limit_seconds=0.01)
    seconds = time.process_time() - began
    sheet = to_run_sheet(plan, problem, solution)

    assert len(problem.jobs) >= 300
    assert validate(plan, sheet) == []
    assert not sheet.proved
    assert seconds < 10  # 1 s on the machine of the figures; this only sees a search that does not end


@pytest.mark.slow
def test_a_large_plan_is_bettered_piece_by_piece() -> None:
    """The longest a thing stands beyond what it keeps, and all that does, shrink; no course is late but for a dish that
    would be out past its clock."""
    plan = read(large_plan(180))
    problem = problem_of(plan.plan, plan.filled)
    first = list_schedule(problem)
    assert first is not None

    def past(kinds: set[str], each: dict[object, int]) -> int:
        return sum(by for violation, by in each.items() if violation.kind in kinds)  # type: ignore[attr-defined]

    before = amounts(problem, first)
    sheet = make_sheet(plan, lambda asked: solve(asked, limit_seconds=25))
    after = amounts(problem, solve(problem, limit_seconds=25))

    assert validate(plan, sheet) == []
    lost = [sum(by > 0 for violation, by in each.items() if violation.kind == "clock") for each in (before, after)]
    assert past({"out-of-hours"}, after) == 0  # type: ignore[arg-type]
    assert (lost[1], past({"late"}, after)) <= (lost[0], past({"late"}, before))  # type: ignore[arg-type]
    assert past({"past-limit"}, after) < past({"past-limit"}, before) / 2  # type: ignore[arg-type]


@pytest.mark.slow
def test_a_finishing_touch_that_the_clock_cut_is_not_kept(lantern: PlanFile, monkeypatch: pytest.MonkeyPatch) -> None:
    """Else a loaded machine would give another timetable than a quiet one: the touch stands or falls whole."""
    import board.schedule.solver.solve as module

    problem = problem_of(lantern.plan, lantern.filled)
    finished: list[str] = []
    whole = module.run

    def cut(model, effort: Effort, clock: Clock, aim: str, watch=None) -> Found:  # type: ignore[no-untyped-def]
        if aim in ("together", "prompt", "touch"):
            finished.append(aim)
            found = whole(model, Effort(0.001, 10.0, linear=effort.linear), clock, aim, watch)
            clock.seconds = 0.0  # the clock has run out meanwhile
            return Found(found.solver, module.cp_model.FEASIBLE)
        return whole(model, effort, clock, aim, watch)

    with monkeypatch.context() as patched:
        patched.setattr(module._Search, "_touch", lambda *_: None)
        without = solve(problem)
    monkeypatch.setattr(module, "run", cut)
    touched = solve(problem)

    assert finished == ["together", "together", "prompt", "touch"]  # two days' work, and the evening's
    assert touched.starts == without.starts


@pytest.mark.slow
def test_a_small_change_moves_little(lantern: PlanFile) -> None:
    """Two minutes more on one step: of the sixty-one pieces it moves those few that must give way, and no aim is worse
    than in a timetable worked out from nothing."""
    from pathlib import Path

    from board.schedule.near import starts_on

    text = (Path(__file__).parents[2] / "plans" / "lantern-supper.yaml").read_text(encoding="utf-8")
    before = make_sheet(lantern, solve)
    changed = read(text.replace("takes: 20 min", "takes: 22 min", 1))
    problem = problem_of(changed.plan, changed.filled)
    near = starts_on(before, problem, changed.plan.date)
    anew, kept = solve(problem), solve(problem, near=near, stay="last")

    def moved(starts: tuple[int, ...]) -> int:
        return sum(was is not None and was != now for was, now in zip(near, starts, strict=True))

    assert [aim.value for aim in kept.aims] == [aim.value for aim in anew.aims]
    assert kept.proved
    assert moved(kept.starts) <= 4 < moved(anew.starts)


def test_what_stays_first_stays_though_another_timetable_is_better_in_all_but_the_costly_aims(apples: PlanFile) -> None:
    problem = problem_of(apples.plan, apples.filled)
    known = solve(problem, aims=COSTLY)
    first, last = (solve(problem, near=known.starts, stay=stay) for stay in ("first", "last"))

    assert first.starts == known.starts != last.starts
    assert [each.value for each in first.aims[: len(COSTLY)]] == [each.value for each in known.aims]
    assert not any(each.searched for each in first.aims[len(COSTLY) :] if each.value)  # nothing is claimed of them


def test_what_was_known_for_another_day_moves_with_the_day(lantern: PlanFile, lantern_sheet) -> None:  # type: ignore[no-untyped-def]
    from board.schedule.near import starts_on

    problem = problem_of(lantern.plan, lantern.filled)
    here = starts_on(lantern_sheet, problem, lantern.plan.date)
    later = starts_on(lantern_sheet, problem, lantern.plan.date + timedelta(days=7))

    assert None not in here
    assert [b - a for a, b in zip(here, later, strict=True)] == [7 * 24 * 60] * len(here)  # type: ignore[operator]
