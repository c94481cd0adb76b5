"""The time work is given: one reading for what `check` says of it and for the timetable.

The clocks of Dublin go back on 2026-10-25 at 2:00 Irish time (IANA time zone database).
"""

from collections.abc import Callable
from datetime import UTC, datetime, timedelta

import pytest

from board.checks.plan.time_windows import work_fits_the_times_it_is_given
from board.plan.load import PlanFile
from board.plan.resolve.given_time import ALWAYS, given_time
from board.schedule.formulate import problem_of

PLAN = """
event: Night of the clocks
date: 2026-10-25
zone: Europe/Dublin
arrive: 18:30
guests: [2 guests]
hands: {{host: {{hours: {{on the day: 9:00 - 23:30}}}}}}
courses:
  - course: Soup
    at: '19:30'
    dishes:
      - dish: Broth
        steps: [{{step: simmer, takes: {takes}, {given}}}]
"""


def utc(day: int, hours: int) -> datetime:
    return datetime(2026, 10, day, hours, tzinfo=UTC)


@pytest.mark.parametrize(
    ("given", "first", "last"),
    [
        ("day: day before", utc(23, 23), utc(25, 5)),  # 5 h past midnight and one more: the clocks went back
        ("day: on the day", utc(24, 23), utc(26, 5)),
        ("not before: '03:00'", utc(25, 3), ALWAYS[1]),
        ("not after: day before 23:00", ALWAYS[0], utc(24, 22)),
        ("day: day before, not before: '03:00', not after: '04:00'", utc(25, 3), utc(25, 4)),
        ("call: now", *ALWAYS),
    ],
)
def test_the_timetable_and_the_check_read_it_alike(
    plan_from: Callable[[str], PlanFile], given: str, first: datetime, last: datetime
) -> None:
    file = plan_from(PLAN.format(takes="10 min", given=given))
    (task,) = (task for task in file.filled.tasks.values() if task.node.name == "simmer")
    problem = problem_of(file.plan, file.filled)
    window = problem.jobs[problem.index[task.node.id]].window

    assert given_time(file.plan, task.work) == (first, last)
    assert window == (
        None if (first, last) == ALWAYS else tuple((at - problem.origin) / timedelta(minutes=1) for at in (first, last))
    )


@pytest.mark.parametrize(("takes", "fits"), [("30 h", True), ("31 h", False)])
def test_a_day_whose_clocks_go_back_is_an_hour_longer(
    plan_from: Callable[[str], PlanFile], takes: str, fits: bool
) -> None:
    """From midnight to five the next morning are 29 hours, and one more."""
    file = plan_from(PLAN.format(takes=takes, given="day: day before, attended: none"))

    assert (work_fits_the_times_it_is_given(file) == []) is fits
