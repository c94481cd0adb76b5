"""time 12: jobs outside their usual hour; plan 19: what waits for the guests, by its words, and stands before them.

Common practice, no source.
"""

import pytest

from board.checks.sheet.every import safety_check
from board.plan.load import PlanFile
from board.plan.snag import Snag
from board.schedule.audit.validate import validate
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from tests.conftest import read

TEXT = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [4 guests]
hands: {{host: {{hours: {{on the day: '9:00 - {until}'}}, away: {{rest: '{away}'}}}}}}
courses:
  - course: Main
    at: 20:00
    may slip: 0 min
    dishes: [{{dish: Lentils, steps: [{{step: boil them, takes: 20 min}}]}}]
jobs:
  - {job}
"""


def found(job: str, away: str = "9:00 - 9:01", until: str = "23:00") -> list[Snag]:
    file = read(TEXT.format(job=job, away=away, until=until))
    assert isinstance(file, PlanFile), file
    sheet = make_sheet(file, solve)
    assert validate(file, sheet) == []
    return [snag for snag in safety_check(file, sheet) if snag.code == "time 12"]


def test_a_job_at_its_hour_is_not_told_of() -> None:
    assert found("light the candles") == []


@pytest.mark.parametrize(
    ("job", "away", "message"),
    [
        ("light the candles", "18:10 - 18:40", "20 min before guests arrive; at most 15 min is usual"),
        ("open the red", "18:20 - 19:40", "1 h 45 before serve Main; 30 min to 1 h is usual"),
        ("make coffee", "20:05 - 20:50", "50 min after serve Main; 5 min to 30 min is usual"),
    ],
)
def test_a_job_that_the_hands_have_no_time_for_then_is_told_with_what_had_them(
    job: str, away: str, message: str
) -> None:
    (snag,) = found(job, away)

    assert snag.message == f"{job} stands {message}"
    assert snag.mend == "Then the hands are at: rest. Free hands then, let somebody else do it, or leave it out."
    assert snag.place is not None
    assert snag.place.line == 13
    assert not snag.safety


@pytest.mark.parametrize(
    ("job", "away", "until", "had"),
    [
        ("light the candles", "18:00 - 19:00", "23:00", "Then the hands are at: rest. "),
        ("light the candles", "9:00 - 9:01", "18:10", "Nobody has hours then. "),
        ("{job: light the candles, who: host}", "18:05 - 18:35", "23:00", "Then the hands are at: rest. "),
    ],
)
def test_the_mend_never_writes_in_how_far_off_it_was_found(job: str, away: str, until: str, had: str) -> None:
    (snag,) = found(job, away, until)

    assert snag.mend == f"{had}Free hands then, let somebody else do it, or leave it out."


@pytest.mark.parametrize(
    ("job", "told"),
    [
        ("pass round the olives once everybody is here", 1),
        ("{job: pass round the olives once everybody is here, after: guests arrive}", 0),
        ("set out the olives before the guests arrive", 0),
    ],
)
def test_a_job_for_after_the_arrival_is_told_where_it_stands_before(job: str, told: int) -> None:
    file = read(TEXT.format(job=job, away="9:00 - 9:01", until="23:00"))
    assert isinstance(file, PlanFile), file
    snags = [snag for snag in safety_check(file, make_sheet(file, solve)) if snag.code == "plan 19"]

    assert len(snags) == told
    assert all("Write `after: guests arrive`" in snag.mend for snag in snags)
