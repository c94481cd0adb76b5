"""Back from a late course to its first cause, by hand on the little supper."""

from datetime import timedelta

import msgspec
import pytest

from board.evening.events import (
    CallRaised,
    ClockJumped,
    EveningOpened,
    Event,
    SheetTaken,
    StepFinished,
    StepStarted,
)
from board.evening.fold import fold_all
from board.evening.state import begin
from board.evening.wishes import DelayGuests, Later, Lengthen, Settle
from board.review.trace import Traced, answered_late, away_planned_and_actual, traced
from board.sheet.run_sheet import Attended, Dependency, RunSheet
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
    events: list[Event] = [
        EveningOpened(n=1, at=at("16:58"), rehearsal=False, sheet=little),
        CallRaised(n=2, at=at("17:00"), slot="chop", part="start"),
        ClockJumped(n=3, at=at("18:01"), seconds=3600),
        StepStarted(n=4, at=at("18:03"), slot="chop"),
    ]
    assert [(a.slot.id, a.minutes) for a in answered_late(fold_all(begin(little), events))] == [("chop", 3)]


def test_minutes_away_are_reckoned_by_what_was_done(host: Host) -> None:
    """Between 18:30 and the clearing the plan has the sauce's 10 minutes; it took 14."""
    cook(host, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"),
         ("18:30", "stew"), ("18:30", "arrive"), ("18:35", "sauce"), ("18:49", "sauce"), ("18:50", "serve"),
         ("19:00", "serve"))  # fmt: skip

    assert away_planned_and_actual(host.evening.state) == ({"host": 10}, {"host": 14})


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

    assert traced(fold_all(begin(opened.sheet), [opened, *events])) == []


def test_the_first_time_a_call_was_answered_late_is_the_one_told(host: Host) -> None:
    """Called at 17:00 and put off four minutes later; called again at 17:09, and begun at 17:12."""
    host.at("17:00")
    host.at("17:04")
    host.wish(Later("chop", "start", 0, 5))
    host.at("17:09")
    cook(host, ("17:12", "chop"))

    assert [(a.slot.id, a.minutes) for a in answered_late(host.evening.state)] == [("chop", 4)]


@pytest.mark.parametrize(("answered", "told"), [("17:01", []), ("17:02", [("chop", "start", 2)])])
def test_an_answer_is_late_from_two_minutes_on(host: Host, answered: str, told: list[tuple[str, str, int]]) -> None:
    host.at("17:00")
    cook(host, (answered, "chop"))

    assert [(a.slot.id, a.part, a.minutes) for a in answered_late(host.evening.state)] == told


def test_guests_who_come_late_are_a_cause_though_nobody_said_so_before(host: Host) -> None:
    cook(host, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"),
         ("18:30", "stew"), ("18:35", "sauce"), ("18:45", "sauce"), ("18:55", "arrive"), ("18:55", "serve"),
         ("19:05", "serve"))  # fmt: skip

    assert links(host) == [("arrive", "guests", 25)]


def test_a_course_a_minute_late_is_late(little: RunSheet) -> None:
    opened = EveningOpened(n=1, at=at("16:58"), rehearsal=False, sheet=little)
    events: list[Event] = [
        StepStarted(n=2, at=at("18:50"), slot="serve"),
        StepFinished(n=3, at=at("19:01"), slot="serve"),
    ]

    assert [(each.late_minutes, each.first) for each in traced(fold_all(begin(opened.sheet), [opened, *events]))] == [
        (1, None)
    ]


@pytest.mark.parametrize(("stew_ends", "away"), [("18:31", 10 + 1), ("18:40", 10 + 2)])
def test_the_last_hands_on_a_step_are_at_its_real_end(host: Host, stew_ends: str, away: int) -> None:
    """Two minutes at the end of the stew, of which those from 18:30 on are away from the guests; and the sauce."""
    cook(host, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"),
         ("18:30", "arrive"), (stew_ends, "stew"), ("18:40", "sauce"), ("18:50", "sauce"), ("18:50", "serve"),
         ("19:00", "serve"))  # fmt: skip

    assert away_planned_and_actual(host.evening.state)[1] == {"host": away}


def with_sauce(sheet: RunSheet, **changes: object) -> RunSheet:
    slots = tuple(msgspec.structs.replace(s, **changes) if s.id == "sauce" else s for s in sheet.slots)
    return msgspec.structs.replace(sheet, slots=slots)


def happened(*steps: tuple[str, str, str]) -> list[Event]:
    """Begun and ended, with no call."""
    events: list[Event] = []
    for id_, start, end in steps:
        events += [
            StepStarted(n=len(events) + 2, at=at(start), slot=id_),
            StepFinished(n=len(events) + 3, at=at(end), slot=id_),
        ]
    return events


def test_work_of_other_hands_takes_the_host_from_nobody(little: RunSheet) -> None:
    sheet = with_sauce(little, attended=(Attended(at("18:35"), at("18:45"), "aide", "all"),))

    assert away_planned_and_actual(fold_all(begin(sheet), happened(("sauce", "18:35", "18:45")))) == (
        {"host": 0},
        {"host": 0},
    )


def test_a_wait_on_a_start_lets_go_some_minutes_after_it(little: RunSheet) -> None:
    """The sauce may begin an hour after the stew has, which was half an hour late."""
    opened = EveningOpened(
        n=1,
        at=at("16:58"),
        rehearsal=False,
        sheet=with_sauce(little, waits=(Dependency("stew", "start", 60, "order"),)),
    )
    events = happened(("stew", "18:00", "18:55"), ("sauce", "19:00", "19:10"), ("serve", "19:10", "19:20"))
    (found,) = traced(fold_all(begin(opened.sheet), [opened, *events]))

    assert [(link.slot.id, link.why, link.minutes) for link in found.links] == [("stew", "began late", 30)]


LINKS_OF_A_MINUTE = {  # the sauce, planned 18:40-18:50 and plated at once: when it was really made, called to its end
    "it took longer": ("18:40", "18:51", None, [("sauce", "took longer", 1)]),
    "its end was answered late": ("18:40", "18:51", "18:50", [("sauce", "answered late", 1)]),
    "it began late": ("18:41", "18:51", None, [("sauce", "began late", 1)]),
    "it took longer, and was answered late too": (
        "18:40", "18:55", "18:53", [("sauce", "took longer", 3), ("sauce", "answered late", 2)],
    ),
}  # fmt: skip


@pytest.mark.parametrize(("start", "end", "called", "told"), LINKS_OF_A_MINUTE.values(), ids=LINKS_OF_A_MINUTE)
def test_a_cause_is_told_from_a_minute_on(
    little: RunSheet, start: str, end: str, called: str | None, told: list[tuple[str, str, int]]
) -> None:
    late = at(end) - at("18:50")
    opened = EveningOpened(
        n=1, at=at("16:58"), rehearsal=False, sheet=with_sauce(little, start=at("18:40"), end=at("18:50"), attended=())
    )
    events: list[Event] = [
        StepStarted(n=2, at=at(start), slot="sauce"),
        StepFinished(n=4, at=at(end), slot="sauce"),
        StepStarted(n=5, at=at("18:50") + late, slot="serve"),
        StepFinished(n=6, at=at("19:00") + late, slot="serve"),
    ]
    if called is not None:
        events.insert(1, CallRaised(n=3, at=at(called), slot="sauce", part="end"))
    (found,) = traced(fold_all(begin(opened.sheet), [opened, *events]))

    assert [(link.slot.id, link.why, link.minutes) for link in found.links] == told
    assert found.first == found.links[0]


@pytest.mark.parametrize(("came", "away"), [("18:20", 5), ("18:30", 0), (None, 0)])
def test_minutes_away_count_from_when_the_guests_really_came(little: RunSheet, came: str | None, away: int) -> None:
    """The sauce was made 18:15-18:25; where nobody told when they came, they came when planned."""
    steps = [("arrive", came, came)] if came is not None else []

    state = fold_all(begin(little), happened(("sauce", "18:15", "18:25"), *steps))

    assert away_planned_and_actual(state)[1] == {"host": away}


def test_looking_in_is_away_as_long_after_the_real_start_as_planned(little: RunSheet) -> None:
    """The stew begun at 18:10: a minute each at 18:30 and 18:50, and two at its end."""
    assert away_planned_and_actual(fold_all(begin(little), happened(("stew", "18:10", "19:10"))))[1] == {"host": 4}


def test_what_a_timetable_that_was_taken_had_late_already_is_a_cause_by_itself(little: RunSheet) -> None:
    """Twenty minutes late when it was taken; the sauce took ten more, of which five were free."""
    by = timedelta(minutes=20)
    later = tuple(
        msgspec.structs.replace(each, start=each.start + by, end=each.end + by)
        if each.id in ("sauce", "serve", "clear")
        else each
        for each in little.slots
    )
    course = msgspec.structs.replace(little.courses[0], served=little.courses[0].served + by)
    sheet = msgspec.structs.replace(little, slots=later, courses=(course,))
    opened = EveningOpened(n=1, at=at("16:58"), rehearsal=False, sheet=little)
    taken = SheetTaken(n=2, at=at("18:50"), sheet=sheet)
    events = [
        msgspec.structs.replace(event, n=event.n + 1)
        for event in happened(("sauce", "18:55", "19:15"), ("serve", "19:15", "19:25"))
    ]
    (found,) = traced(fold_all(begin(little), [opened, taken, *events]))

    assert [(link.slot.id, link.why, link.minutes) for link in found.links] == [
        ("serve", "taken", 20),
        ("sauce", "took longer", 10),
    ]
    assert found.late_minutes == 25
