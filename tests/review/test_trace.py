"""Back from a late course to its first cause, by hand on the little supper."""

import pytest

from board.evening.events import ClockJumped, EveningOpened, Event, StepFinished, StepStarted
from board.evening.fold import fold_all
from board.evening.state import begin
from board.evening.wishes import DelayGuests, Later, Lengthen, Settle
from board.review.trace import Traced, answered_late, away_planned_and_actual, traced
from board.sheet.run_sheet import RunSheet
from tests.conftest import Host, at


def links(host: Host) -> list[tuple[str, str, int]]:
    (found,) = traced(host.evening.state)
    return [(link.slot.id, link.why, link.minutes) for link in found.links]


def cook(host: Host, *answers: tuple[str, str]) -> None:
    for clock, id_ in answers:
        host.at(clock)
        host.answer(id_)


def test_a_course_on_time_has_no_cause(host: Host) -> None:
    cook(host, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"),
         ("18:30", "stew"), ("18:30", "arrive"), ("18:35", "sauce"), ("18:45", "sauce"), ("18:50", "serve"),
         ("19:00", "serve"))  # fmt: skip

    assert traced(host.evening.state) == []
    assert answered_late(host.evening.state) == []


def test_a_stew_not_ready_is_the_first_cause(host: Host) -> None:
    """Begun ten minutes late because chopping took 20 longer than planned; and 15 more on the ring."""
    cook(host, ("17:00", "chop"))
    host.at("17:20")
    host.wish(Lengthen(("chop",), 20))
    cook(host, ("17:40", "chop"), ("17:40", "stew"), ("18:00", "stew"), ("18:20", "stew"))
    host.at("18:40")
    host.wish(Lengthen(("stew",), 15))
    host.answer("arrive")
    cook(host, ("18:40", "sauce"), ("18:50", "sauce"), ("18:55", "stew"), ("18:55", "serve"), ("19:05", "serve"))

    assert links(host) == [("chop", "took longer", 20), ("stew", "took longer", 15)]


def test_an_answer_that_came_late_is_told_from_a_step_that_took_longer(host: Host) -> None:
    cook(host, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"),
         ("18:30", "arrive"), ("18:35", "sauce"), ("18:45", "sauce"))  # fmt: skip
    cook(host, ("19:02", "stew"), ("19:02", "serve"), ("19:12", "serve"))

    assert links(host) == [("stew", "answered late", 32)]
    assert [(a.slot.id, a.part, a.minutes) for a in answered_late(host.evening.state)] == [("stew", "end", 32)]


def test_guests_who_came_late_are_the_first_cause(host: Host) -> None:
    cook(host, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"),
         ("18:30", "stew"))  # fmt: skip
    host.wish(DelayGuests(25))
    cook(host, ("18:35", "sauce"), ("18:45", "sauce"))
    host.at("18:55")
    host.wish(Settle("arrive"))
    cook(host, ("18:55", "serve"), ("19:05", "serve"))

    assert links(host)[0][:2] == ("arrive", "guests")


def test_a_call_put_off_began_late(host: Host) -> None:
    cook(host, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"),
         ("18:30", "stew"), ("18:30", "arrive"), ("18:35", "sauce"), ("18:45", "sauce"))  # fmt: skip
    host.at("18:50")
    host.wish(Later("serve", "start", 0, 15))
    cook(host, ("19:05", "serve"), ("19:15", "serve"))

    assert links(host) == [("serve", "began late", 15)]
    assert answered_late(host.evening.state) == []


def test_a_clock_set_by_hand_makes_no_answer_late(little: RunSheet) -> None:
    """Called 17:00, the clock an hour ahead at 17:01, answered 18:03 by the new clock: two minutes."""
    from board.evening.events import CallRaised

    events: list[Event] = [
        EveningOpened(n=1, at=at("16:58"), rehearsal=False, sheet=little),
        CallRaised(n=2, at=at("17:00"), slot="chop", part="start"),
        ClockJumped(n=3, at=at("18:01"), seconds=3600),
        StepStarted(n=4, at=at("18:03"), slot="chop"),
    ]
    from board.evening.fold import fold_all
    from board.evening.state import begin

    assert [(a.slot.id, a.minutes) for a in answered_late(fold_all(begin(little), events))] == [("chop", 3)]


def test_minutes_away_are_reckoned_by_what_was_done(host: Host) -> None:
    """Between 18:30 and the clearing the plan has the sauce's 10 minutes; it took 14."""
    cook(host, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"),
         ("18:30", "stew"), ("18:30", "arrive"), ("18:35", "sauce"), ("18:49", "sauce"), ("18:50", "serve"),
         ("19:00", "serve"))  # fmt: skip

    assert away_planned_and_actual(host.evening.state) == (10, 14)


def test_a_log_is_traced_like_the_evening_itself(little: RunSheet) -> None:
    opened = EveningOpened(n=1, at=at("16:58"), rehearsal=False, sheet=little)
    events: list[Event] = [
        StepStarted(n=2, at=at("18:50"), slot="serve"),
        StepFinished(n=3, at=at("19:20"), slot="serve"),
    ]

    assert traced(fold_all(begin(little), [opened, *events])) == [Traced("Stew", 20, ())]


@pytest.mark.parametrize("late", [0, -5])
def test_early_or_punctual_is_not_late(little: RunSheet, late: int) -> None:
    from datetime import timedelta

    opened = EveningOpened(n=1, at=at("16:58"), rehearsal=False, sheet=little)
    events: list[Event] = [
        StepStarted(n=2, at=at("18:40"), slot="serve"),
        StepFinished(n=3, at=at("19:00") + timedelta(minutes=late), slot="serve"),
    ]

    assert traced(fold_all(begin(little), [opened, *events])) == []
