"""A published scheduling problem, entered as a plan: its machines are tools, its jobs are dishes.

Source: FT06, Fisher & Thompson, in Muth & Thompson (eds.), *Industrial Scheduling*, 1963; optimum 55. A schedule
timed backwards is the mirrored problem, whose optimum is the same; so both ways round must come to 55.
"""

from collections.abc import Callable

import pytest

from board.plan.load import PlanFile
from board.timetable.cpsat.solve import solve
from board.timetable.question import Question
from board.timetable.run_sheet import RunSheet
from board.timetable.write_up import make_sheet

FT06 = (
    ((2, 1), (0, 3), (1, 6), (3, 7), (5, 3), (4, 6)),
    ((1, 8), (2, 5), (4, 10), (5, 10), (0, 10), (3, 4)),
    ((2, 5), (3, 4), (5, 8), (0, 9), (1, 1), (4, 7)),
    ((1, 5), (0, 5), (2, 5), (3, 3), (4, 8), (5, 9)),
    ((2, 9), (1, 3), (4, 5), (5, 4), (0, 3), (3, 1)),
    ((1, 3), (3, 3), (5, 9), (0, 10), (4, 4), (2, 1)),
)
Jobs = tuple[tuple[tuple[int, int], ...], ...]


def as_plan(jobs: Jobs, minutes_before: int) -> str:
    """Every job a dish, its operations steps that need nobody; the kitchen opens so many minutes before the course."""
    opens = 18 * 60 - minutes_before
    dishes = "".join(
        f"      - dish: job {j}\n        steps:\n"
        + "".join(
            f"          - {{step: j{j} o{o}, on: 'worktop, m{m}', takes: {d} min, attended: none, keeps: 9 days in the room}}\n"
            for o, (m, d) in enumerate(job)
        )
        for j, job in enumerate(jobs)
    )
    return (
        "event: Six by six\ndate: 2026-06-06\nzone: UTC\narrive: 18:00\nguests: [6 guests]\n"
        f"kitchen: {{tools: {{{', '.join(f'm{m}: 1' for m in range(6))}}}}}\n"
        f"hands: {{host: {{hours: {{on the day: '{opens // 60:02d}:{opens % 60:02d} - 23:59'}}}}}}\n"
        "courses:\n  - course: All\n    at: 18:00\n    standing: yes\n    serve: 0 min\n    clear: 0 min\n    dishes:\n" + dishes
    )  # fmt: skip


def on_time_first(question: Question) -> object:
    return solve(question, aims=("hours", "courses"))


@pytest.mark.parametrize("jobs", [FT06, tuple(job[::-1] for job in FT06)], ids=["forwards", "backwards"])
@pytest.mark.parametrize(("minutes_before", "late"), [(0, 55), (54, 1), (55, 0)])
def test_ft06_takes_55_minutes_both_ways_round(
    plan_from: Callable[[str], PlanFile], jobs: Jobs, minutes_before: int, late: int
) -> None:
    sheet: RunSheet = make_sheet(plan_from(as_plan(jobs, minutes_before)), on_time_first)  # type: ignore[arg-type]

    assert sheet.courses[0].late_minutes == late
    assert sheet.proved
