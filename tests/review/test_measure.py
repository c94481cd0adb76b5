"""An evening of the little supper measured by hand: what was planned beside what was."""

import pytest
from msgspec.structs import replace

from board.evening.events import EveningOpened, Event, StepFinished, StepLeftOut, StepStarted
from board.evening.fold import fold_all
from board.evening.wishes import Later, Push
from board.review.measure import KeptReview, Review, StepReview, measured, review
from board.sheet.run_sheet import RunSheet
from tests.conftest import Host, at


def opened(sheet: RunSheet) -> EveningOpened:
    return EveningOpened(n=1, at=at("16:58"), rehearsal=False, sheet=sheet)


def began(id_: str, clock: str) -> StepStarted:
    return StepStarted(n=2, at=at(clock), slot=id_)


def ended(id_: str, clock: str) -> StepFinished:
    return StepFinished(n=3, at=at(clock), slot=id_)


def reviewed(sheet: RunSheet, *events: Event) -> Review:
    return review(opened(sheet), [replace(event, n=n) for n, event in enumerate(events, 2)])


def step(found: Review, id_: str) -> StepReview:
    return next(each for each in found.steps if each.slot.id == id_)


@pytest.mark.parametrize(("end", "over", "told"), [("17:20", 0, False), ("17:21", 1, True), ("17:19", -1, False)])
def test_a_step_ran_over_from_a_minute_on(little: RunSheet, end: str, over: int, told: bool) -> None:
    found = reviewed(little, began("chop", "17:00"), ended("chop", end))

    assert (step(found, "chop").planned_minutes, step(found, "chop").ran_over) == (20, over)
    assert [each.slot.id for each in found.most_over()] == ["chop"] * told


def test_what_ran_over_most_comes_first_and_the_coming_of_guests_never_runs_over(little: RunSheet) -> None:
    found = reviewed(
        little, began("chop", "17:00"), ended("chop", "17:25"), began("sauce", "18:35"), ended("sauce", "18:55"),
        began("arrive", "18:30"), ended("arrive", "19:30"),
    )  # fmt: skip

    assert [(each.slot.id, each.ran_over) for each in found.ran_over(least=5)] == [("sauce", 10), ("chop", 5)]
    assert [each.slot.id for each in found.ran_over(least=6)] == ["sauce"]


def test_a_step_without_an_end_has_no_minutes(little: RunSheet) -> None:
    found = step(reviewed(little, began("chop", "17:00")), "chop")

    assert (found.actual_minutes, found.ran_over) == (None, None)


def test_each_step_is_left_out_or_not_reached_or_left_open_or_over(little: RunSheet) -> None:
    found = reviewed(
        little, began("chop", "17:00"), ended("chop", "17:20"), began("stew", "17:30"),
        StepLeftOut(n=4, at=at("18:00"), slot="sauce"),
    )  # fmt: skip

    assert [each.slot.id for each in found.left_out()] == ["sauce"]
    assert [each.slot.id for each in found.left_open()] == ["stew"]
    assert [each.slot.id for each in found.not_reached()] == ["arrive", "serve", "clear"]


@pytest.mark.parametrize(("begin_at", "stood"), [("17:25", 5), ("17:50", 30), ("17:10", 0)])
def test_a_result_stood_until_it_was_taken_up(little: RunSheet, begin_at: str, stood: int) -> None:
    found = reviewed(little, began("chop", "17:00"), ended("chop", "17:20"), began("stew", begin_at))

    assert [(each.slot.id, each.stood_minutes, each.limit_minutes) for each in found.kept] == [("chop", stood, 120)]
    assert len(found.kept_longest()) == (stood > 0)


def test_a_result_still_waited_for_stood_until_the_last_thing_that_happened(little: RunSheet) -> None:
    sheet = replace(
        little, slots=tuple(replace(s, then=("stew", "sauce")) if s.id == "chop" else s for s in little.slots)
    )
    events = [began("chop", "17:00"), ended("chop", "17:20"), began("stew", "17:30"), ended("arrive", "18:40")]
    gone = StepLeftOut(n=9, at=at("18:00"), slot="sauce")

    assert [each.stood_minutes for each in reviewed(sheet, *events).kept] == [80]
    assert [each.stood_minutes for each in reviewed(sheet, *events, gone).kept] == [10]


def test_what_nobody_takes_up_any_more_did_not_stand(little: RunSheet) -> None:
    gone = StepLeftOut(n=9, at=at("18:00"), slot="stew")

    assert reviewed(little, began("chop", "17:00"), ended("chop", "17:20"), gone).kept == ()


@pytest.mark.parametrize(("limit", "share"), [(10, 2.0), (20, 1.0), (1, 20.0), (0, 20.0)])
def test_the_share_of_its_limit_a_result_stood(little: RunSheet, limit: int, share: float) -> None:
    """No limit at all counts as a minute."""
    assert KeptReview(little.slots[0], 20, limit, "room").share == share


def test_the_longest_against_its_limit_comes_first(little: RunSheet) -> None:
    """The leeks stood 40 of 120 minutes, the stew 20 of its 30."""
    found = reviewed(
        little, began("chop", "16:00"), ended("chop", "16:50"), began("stew", "17:30"), ended("stew", "18:30"),
        began("serve", "18:50"),
    )  # fmt: skip

    assert [(each.slot.id, each.stood_minutes) for each in found.kept_longest()] == [("stew", 20), ("chop", 40)]


@pytest.mark.parametrize(("answered", "late"), [("17:00", 0), ("17:04", 4)])
def test_an_answer_is_late_from_the_first_call_on(host: Host, answered: str, late: int) -> None:
    """Called at 17:00 and, put off, once more; the call at its end is no call at its start."""
    host.at("17:00")
    if late:
        host.wish(Later("chop", "start", 0, 2))
        host.at("17:02")
    host.at(answered)
    host.answer("chop")
    state = host.at("17:30").state

    assert step(measured(state, opened(state.sheet)), "chop").answered_late == late


def test_what_began_before_it_was_called_was_not_answered_late(little: RunSheet) -> None:
    found = reviewed(little, began("chop", "16:40"), ended("chop", "16:50"))

    assert step(found, "chop").answered_late is None


def test_a_course_tells_its_own_pushes_and_how_late_it_was(host: Host) -> None:
    host.at("17:00")
    host.wish(Push("Stew", 5))
    host.wish(Push("Stew", 10))
    state = fold_all(host.evening.state, [replace(ended("serve", "19:17"), n=90)])

    (course,) = measured(state, opened(state.sheet)).courses

    assert (course.pushed, course.late_minutes) == (15, 17)


@pytest.mark.parametrize(
    ("events", "was"),
    [
        ((), None),
        ((began("serve", "18:50"),), (at("18:50"), None)),
        ((began("serve", "18:50"), ended("clear", "19:40")), (at("18:50"), at("19:40"))),
        ((began("serve", "18:50"), ended("clear", "18:45")), (at("18:50"), at("18:50"))),
    ],
)
def test_a_course_is_at_table_from_plating_to_clearing(
    little: RunSheet, events: tuple[Event, ...], was: object
) -> None:
    (course,) = reviewed(little, *events).courses

    assert course.at_table == (at("18:50"), at("19:35"))
    assert course.was_at_table == was


def test_the_evening_lasts_from_the_first_to_the_last_that_happened(little: RunSheet) -> None:
    found = reviewed(little, began("chop", "17:03"), ended("chop", "17:20"))
    idle = reviewed(little)

    assert (found.began, found.ended) == (at("17:03"), at("17:20"))
    assert (idle.began, idle.ended) == (at("16:58"), at("16:58"))
