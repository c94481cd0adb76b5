"""An oven, and the rings, are called off after their last use, each day, and not where a rest has done it already."""

from datetime import datetime, timedelta

import pytest

from board.evening.calls import Call, calls
from board.evening.decide import decide
from board.evening.fold import fold_all
from board.evening.forecast import Forecaster
from board.evening.state import begin
from board.evening.wishes import Done
from board.plan.load import PlanFile
from board.schedule.audit.validate import validate
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet.run_sheet import RunSheet
from board.view.board import headline
from tests.conftest import HEAD, read


def sheet_of(*dishes: str, kitchen: str = "ovens: 1") -> RunSheet:
    plan = read(
        HEAD
        + f"kitchen: {{{kitchen}, wash up: no}}\ncourses:\n  - course: Main\n    at: 20:00\n    dishes:\n"
        + "".join(
            f"      - {{dish: Dish {number}, steps: [{steps}]}}\n" for number, steps in enumerate(dishes, start=1)
        )
    )
    assert isinstance(plan, PlanFile), [snag.render() for snag in plan]
    sheet = make_sheet(plan, solve)
    assert validate(plan, sheet) == []
    return sheet


def offs(sheet: RunSheet) -> list[tuple[str, datetime]]:
    return [(slot.name, slot.start) for slot in sheet.slots if slot.kind == "off"]


def end_of(sheet: RunSheet, name: str) -> datetime:
    return next(slot.end for slot in sheet.slots if slot.name == name)


ROAST = "{step: roast, where: oven at 200 C, takes: 40 min, keeps: 20 min hot}"
GRATIN = "{step: bake, where: oven at 200 C, takes: 30 min, keeps: 20 min hot}"


def test_the_oven_is_off_when_the_last_of_several_is_out() -> None:
    sheet = sheet_of(ROAST, GRATIN)

    ((name, at),) = offs(sheet)
    assert name == "turn the oven off"
    assert at == max(end_of(sheet, "roast"), end_of(sheet, "bake"))


def test_each_oven_is_told_by_its_name() -> None:
    small = GRATIN.replace("oven at", "small oven at")
    sheet = sheet_of(ROAST.replace("oven at", "big oven at"), small, kitchen="ovens: {big oven: {}, small oven: {}}")

    assert {name for name, _ in offs(sheet)} == {"turn the big oven off", "turn the small oven off"}


def test_a_rest_in_the_oven_has_switched_it_off_already() -> None:
    dry = "{step: dry, where: oven at 120 C, takes: 1 h, keeps: 1 h}"
    sheet = sheet_of(f"{dry}, {{step: rest, where: oven off, takes: 1 h, keeps: 2 h}}")

    assert offs(sheet) == []


def test_what_is_kept_in_the_oven_holds_it_on_until_it_is_served() -> None:
    kept = "{step: bake, where: oven at 90 C, takes: 30 min, keeps: 40 min in the oven at 90 C}"
    busy = "{step: sear, where: stovetop, takes: 20 min, keeps: 1 min hot}"
    sheet = sheet_of(kept, busy)

    oven = next(slot for slot in sheet.slots if slot.kind == "off" and slot.lane == "oven")
    assert oven.start >= end_of(sheet, "bake")
    assert {wait.reason for wait in oven.waits} <= {"order", "oven"}


def test_between_two_bakes_soon_after_one_another_it_stays_on() -> None:
    first = "{step: roast, where: oven at 200 C, takes: 20 min, keeps: 30 min hot}"
    second = "{step: crisp, where: oven at 220 C, takes: 10 min, keeps: 5 min hot}"
    sheet = sheet_of(f"{first}, {{step: carve, takes: 10 min, keeps: 10 min hot}}, {second}")

    assert [at for _, at in offs(sheet)] == [end_of(sheet, "crisp")]


@pytest.mark.parametrize(("keeps", "times"), [("1 h hot", 1), ("1 day in the fridge", 2)])
def test_a_day_ahead_has_its_own_end(keeps: str, times: int) -> None:
    day = ", day: day before" if times == 2 else ""
    hours = "hands: {host: {hours: {day before: '15:00 - 20:00', on the day: '15:00 - 23:00'}}}\n"
    stew = f"{{step: stew, where: 'stovetop', takes: 40 min, keeps: {keeps}{day}}}"
    again = "{step: reheat, where: stovetop, takes: 15 min, keeps: 5 min hot}"
    text = HEAD.partition("hands:")[0] + hours
    plan = read(
        text
        + "kitchen: {wash up: no}\ncourses:\n  - course: Main\n    at: 20:00\n    dishes:\n"
        + f"      - {{dish: Stew, steps: [{stew}, {again}]}}\n"
    )
    assert isinstance(plan, PlanFile), [snag.render() for snag in plan]
    sheet = make_sheet(plan, solve)

    assert validate(plan, sheet) == []
    assert [name for name, _ in offs(sheet)] == ["turn the rings off"] * times


def test_the_board_calls_it_and_not_before_all_is_out() -> None:
    sheet = sheet_of(ROAST, GRATIN)
    state, at = begin(sheet), sheet.slots[0].start
    asked: list[str] = []
    for _ in range(600):
        due, _coming = calls(Forecaster(sheet).forecast(state, at), state)
        for call in due:
            asked.append(_said(sheet, call))
            if asked[-1] == "Turn the oven off":
                inside = [s.id for s in sheet.slots if s.kind == "step" and not state.steps[s.id].settled]
                assert inside == []
            if call.part == "end" and sheet.by_id()[call.slot].name == "roast" and asked.count(asked[-1]) < 10:
                continue  # it wants nine minutes more
            decided = decide(state, Done(call.slot, call.part, call.number), at)
            if isinstance(decided, list):
                state = fold_all(state, decided)
        at += timedelta(minutes=1)

    assert "Turn the oven off" in asked


def _said(sheet: RunSheet, call: Call) -> str:
    return headline(sheet.by_id()[call.slot], call)
