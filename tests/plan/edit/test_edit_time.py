"""Another time for a step, in the plan's own words."""

from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from hypothesis import given, settings
from hypothesis import strategies as st

from board.plan.edit.edit_time import MoveWork
from board.plan.edit.save import CannotEdit, edit
from board.plan.load import PlanFile, read_plan
from board.plan.phrases.to_phrase import moment_text
from board.plan.phrases.when import Moment, parse_moment
from board.plan.places import Loc
from tests.examples import times
from tests.plan.edit.test_edit_lines import SMALL

DUBLIN = ZoneInfo("Europe/Dublin")
STEP: Loc = ("courses", 0, "dishes", 0, "steps", 0)
EVENING = datetime(2026, 11, 28, 18, 45, tzinfo=DUBLIN)


@given(st.integers(-60 * 24 * 400, 60 * 30))
@settings(max_examples=times(50))
def test_a_moment_is_read_back_as_it_was(minutes: int) -> None:
    at = (datetime(2026, 11, 28, 12) + timedelta(minutes=minutes)).replace(tzinfo=DUBLIN)  # noqa: DTZ001  # a clock's face
    event = EVENING.date()
    if (event - at.date()).days > 366:
        return
    moment = Moment.model_validate(parse_moment(moment_text(at, event)))

    assert (moment.day.on(event), moment.clock) == (at.date(), f"{at:%H:%M}")


def test_moments_stand_as_a_host_writes_them() -> None:
    days = [(0, "18:45"), (-1, "fri 18:45"), (-7, "7 days before 18:45"), (1, "2026-11-29 18:45")]

    assert [moment_text(EVENING + timedelta(days=day), EVENING.date()) for day, _ in days] == [text for _, text in days]


def moved(text: str, *, sooner: bool, loc: Loc = STEP) -> str | CannotEdit:
    file = read_plan(text, "plan.yaml")
    assert isinstance(file, PlanFile)
    from board.plan.edit.save import data_of

    made = MoveWork(loc, EVENING, EVENING + timedelta(minutes=30), sooner=sooner).changes(file, data_of(text))
    return made if isinstance(made, CannotEdit) else edit(text, made)


def test_a_step_is_moved_by_one_line_of_its_own() -> None:
    assert moved(SMALL, sooner=False) == SMALL.replace("30 min\n", "30 min\n            not before: 18:45\n")
    assert moved(SMALL, sooner=True) == SMALL.replace("30 min\n", "30 min\n            not after: 19:15\n")
    assert isinstance(moved(SMALL, sooner=True, loc=("courses", 7)), CannotEdit)


def test_what_it_says_of_its_other_end_gives_way_only_as_far_as_it_must() -> None:
    early = SMALL.replace("30 min\n", "30 min\n            not after: 19:00\n")
    late = SMALL.replace("30 min\n", "30 min\n            not after: 20:00\n")

    assert "not after: 19:15" in str(moved(early, sooner=False))
    assert "not after: 20:00" in str(moved(late, sooner=False))


def test_a_job_in_one_line_gets_a_line_for_it() -> None:
    text = f"{SMALL}jobs:\n  - lay the table\n"

    assert str(moved(text, sooner=False, loc=("jobs", 0))).endswith(
        "jobs:\n  - {job: lay the table, not before: 18:45}\n"
    )
