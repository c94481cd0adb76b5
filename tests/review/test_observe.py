"""A log → how long steps took: by hand, on the little supper."""

import msgspec
import pytest

from board.evening.events import BoardReopened, CallRaised, ClockJumped, EveningOpened, Event, StepFinished, StepStarted
from board.evening.wishes import DelayGuests, Done, Lengthen, Settle, TakeBack
from board.log.record import mark_of, to_line
from board.review.observe import Observed, PastEvening, observe
from board.review.one_clock import by_one_clock
from board.sheet.run_sheet import Attended, Dependency, Lasts, RunSheet, Use
from tests.conftest import Host, at, slot


@pytest.fixture
def timed(little: RunSheet) -> RunSheet:
    """The little supper where each length may vary: low four fifths, high five fourths."""

    def lasts(minutes: int) -> Lasts:
        return Lasts(minutes * 4 // 5, minutes, minutes * 5 // 4)

    slots = [
        msgspec.structs.replace(s, lasts=lasts(round((s.end - s.start).total_seconds() / 60))) for s in little.slots
    ]
    return msgspec.structs.replace(little, slots=tuple(slots))


@pytest.fixture
def cook(timed: RunSheet) -> Host:
    return Host(timed, at("16:58"))


def past(host: Host) -> PastEvening:
    opened, *events = host.evening.told
    assert isinstance(opened, EveningOpened)
    return observe(opened, events, mark_of(to_line(opened)))


def seen(host: Host) -> dict[str, Observed]:
    return {step.name: step for step in past(host).steps}


def do(host: Host, *answers: tuple[str, str]) -> None:
    for clock, id_ in answers:
        host.at(clock)
        host.answer(id_)


def test_minutes_run_from_answer_to_answer(cook: Host) -> None:
    do(cook, ("17:00", "chop"), ("17:24", "chop"))

    assert seen(cook)["chop"].minutes == 24
    assert seen(cook)["chop"].planned == Lasts(16, 20, 25)
    assert seen(cook)["chop"].key == ("", "chop", "worktop")


def test_a_late_start_is_no_longer_step(cook: Host) -> None:
    do(cook, ("17:00", "chop"), ("17:20", "chop"), ("17:45", "stew"), ("18:05", "stew"), ("18:25", "stew"),
       ("18:45", "stew"))  # fmt: skip

    assert seen(cook)["stew"].minutes == 60


def test_an_answer_taken_back_never_happened(cook: Host) -> None:
    do(cook, ("17:00", "chop"), ("17:20", "chop"))
    cook.at("17:21")
    cook.wish(TakeBack())
    do(cook, ("17:23", "chop"))

    assert seen(cook)["chop"].minutes == 23


def test_while_hands_were_on_other_work_a_finished_step_waited(cook: Host) -> None:
    """The stew's end is called at 18:30; the host is on the sauce from 18:29 to 18:38 and answers at 18:40: eight
    minutes of that were other work, and two are the host's own."""
    do(cook, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"))
    cook.at("18:29")
    sauce = next(call for call in cook.at("18:29").coming if call.slot == "sauce")
    assert cook.evening.wish(_begin(sauce.slot)) is None
    cook.at("18:30")
    cook.at("18:38")
    assert cook.evening.wish(Settle("sauce")) is None
    do(cook, ("18:40", "stew"))

    assert seen(cook)["stew"].minutes == 62
    assert seen(cook)["sauce"].minutes == 9


def _begin(slot_id: str) -> Done:
    return Done(slot_id, "start")


def test_what_the_host_called_not_ready_is_not_taken_off(cook: Host) -> None:
    do(cook, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"))
    cook.at("18:30")
    assert cook.evening.wish(Lengthen(("stew",), 10)) is None
    sauce = next(call for call in cook.at("18:31").coming if call.slot == "sauce")
    assert cook.evening.wish(_begin(sauce.slot)) is None
    cook.at("18:39")
    assert cook.evening.wish(Settle("sauce")) is None
    do(cook, ("18:40", "stew"))

    assert seen(cook)["stew"].minutes == 70


def test_left_open_by_mistake_is_set_aside(cook: Host) -> None:
    """Over three times its high of 25 min, and its end was called and nothing said."""
    do(cook, ("17:00", "chop"), ("18:16", "chop"))

    assert seen(cook)["chop"].aside == "forgotten"


def test_as_long_as_that_with_not_ready_said_is_true(cook: Host) -> None:
    do(cook, ("17:00", "chop"))
    cook.at("17:20")
    assert cook.evening.wish(Lengthen(("chop",), 56)) is None
    do(cook, ("18:16", "chop"))

    assert seen(cook)["chop"].aside is None
    assert seen(cook)["chop"].minutes == 76


@pytest.mark.parametrize(
    ("answered", "said", "aside"), [("18:37", False, "unheard"), ("18:37", True, None), ("18:34", False, None)]
)
def test_an_end_bell_that_went_by_unheard_is_no_length(
    cook: Host, answered: str, said: bool, aside: str | None
) -> None:
    """The stew's end is called at 18:30; after 5 min with nobody at it the bell was missed, unless it was put off."""
    do(cook, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"))
    cook.at("18:30")
    if said:
        cook.wish(Lengthen(("stew",), 7))
    do(cook, (answered, "stew"))

    assert seen(cook)["stew"].aside == aside


def test_a_bell_that_rang_while_hands_were_on_other_work_was_not_missed(cook: Host) -> None:
    do(cook, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"))
    cook.at("18:29")
    assert cook.evening.wish(_begin("sauce")) is None
    cook.at("18:30")
    cook.at("18:38")
    assert cook.evening.wish(Settle("sauce")) is None
    do(cook, ("18:40", "stew"))

    assert seen(cook)["stew"].aside is None


def test_begun_and_ended_at_once_is_no_time(cook: Host) -> None:
    cook.at("17:10")
    assert cook.evening.wish(Settle("chop")) is None

    assert seen(cook)["chop"].aside == "untimed"


def test_an_oven_gone_cold_is_no_length(timed: RunSheet) -> None:
    """Told to the board as such."""
    host = Host(timed, at("16:58"))
    do(host, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"))
    host.at("17:40")
    assert host.evening.wish(Lengthen(("stew",), 15, "oven")) is None
    do(host, ("18:45", "stew"))

    assert seen(host)["stew"].aside == "cold-oven"


def opened(sheet: RunSheet) -> EveningOpened:
    return EveningOpened(n=1, at=at("16:58"), rehearsal=False, sheet=sheet)


def test_a_board_shut_over_the_end_is_an_interruption_and_one_shut_before_is_none(timed: RunSheet) -> None:
    events: list[Event] = [StepStarted(n=2, at=at("17:00"), slot="chop"), BoardReopened(n=3, at=at("17:15"))]
    long = observe(opened(timed), [*events, StepFinished(n=4, at=at("17:40"), slot="chop")])
    short = observe(opened(timed), [*events, StepFinished(n=4, at=at("17:22"), slot="chop")])

    assert [step.aside for step in long.steps] == ["interrupted"]
    assert [(step.minutes, step.aside) for step in short.steps] == [(22, None)]


def test_a_clock_set_by_hand_lengthens_nothing(timed: RunSheet) -> None:
    """Begun 17:00, the clock put an hour ahead at 17:10 (then 18:10), ended 18:21 by the new clock: 21 minutes."""
    past_evening = observe(
        opened(timed),
        [
            StepStarted(n=2, at=at("17:00"), slot="chop"),
            ClockJumped(n=3, at=at("18:10"), seconds=3600),
            StepFinished(n=4, at=at("18:21"), slot="chop"),
        ],
    )

    assert [(step.minutes, step.aside) for step in past_evening.steps] == [(21, None)]


def test_moments_are_told_by_the_clock_as_it_was_last_set() -> None:
    events: list[Event] = [
        CallRaised(n=1, at=at("17:00"), slot="a", part="start"),
        ClockJumped(n=2, at=at("16:40"), seconds=-1800),
        CallRaised(n=3, at=at("16:50"), slot="b", part="start"),
        ClockJumped(n=4, at=at("17:50"), seconds=600, slept=True),
        ClockJumped(n=5, at=at("18:00"), seconds=60),
    ]

    assert by_one_clock(events)[1] == at("16:31")  # half an hour back, a minute ahead
    assert by_one_clock(events)[3] == at("16:51")
    assert by_one_clock(events)[5] == at("18:00")


def test_what_ended_because_the_plan_said_so_says_nothing(timed: RunSheet) -> None:
    found = observe(
        opened(timed),
        [
            StepStarted(n=2, at=at("17:00"), slot="chop"),
            StepFinished(n=3, at=at("17:20"), slot="chop", by_itself=True),
        ],
    )

    assert found.steps == ()


def test_turns_of_an_oven_are_seen_where_the_log_knows_what_they_came_from(little: RunSheet) -> None:
    def turn(id_: str, before: int | None) -> RunSheet:
        use = Use("oven", 0, at("17:00"), at("17:15"), 200, before=before)
        heat = slot(id_, "17:00", "17:15", kind="heat", lane="oven", uses=(use,), attended=())
        return msgspec.structs.replace(little, slots=(heat, *little.slots))

    events = [StepStarted(n=2, at=at("17:00"), slot="h"), StepFinished(n=3, at=at("17:19"), slot="h")]
    (known,) = observe(opened(turn("h", 20)), events).turns

    assert (known.oven, known.before, known.after, known.ajar, known.minutes) == ("oven", 20, 200, False, 19)
    assert observe(opened(turn("h", None)), events).turns == ()


def test_the_mark_of_a_log_is_that_of_its_first_line(cook: Host, timed: RunSheet) -> None:
    other = Host(timed, at("16:59"))

    assert past(cook).mark == past(cook).mark
    assert past(cook).mark != past(other).mark
    assert len(past(cook).mark) == 8


def dine_until_served(host: Host) -> None:
    """The supper on time till the stew is on the table at 19:00."""
    do(host, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"))
    do(host, ("18:30", "stew"), ("18:30", "arrive"), ("18:35", "sauce"), ("18:45", "sauce"), ("18:50", "serve"))
    do(host, ("19:00", "serve"))


def dine(host: Host) -> None:
    """And eaten till 19:30, as planned."""
    dine_until_served(host)
    host.at("19:30")


def sat(host: Host) -> list[tuple[float, str | None]]:
    return [(sitting.minutes, sitting.aside) for sitting in past(host).sits]


def test_guests_sit_from_the_serving_to_the_clearing(cook: Host) -> None:
    dine(cook)
    do(cook, ("19:50", "clear"), ("19:58", "clear"))
    (sitting,) = past(cook).sits

    assert (sitting.key.words, sitting.name, sitting.planned) == ("stew", "Stew: eaten in", Lasts(30, 30, 30))
    assert sat(cook) == [(50, None)]


def test_a_clearing_told_with_one_key_was_over_by_then(cook: Host) -> None:
    dine(cook)
    cook.at("19:50")
    cook.wish(Settle("clear"))

    assert sat(cook) == [(45, None)]  # the clearing takes five


def test_where_the_timetable_clears_late_the_guests_did_not_sit_longer(little: RunSheet) -> None:
    """Planned to need 30 min and to be cleared after 40, for want of hands: cleared at its call, they needed 30; ten
    minutes after it, 40."""
    *others, clear = little.slots
    waits = (*clear.waits, Dependency("serve", "end", 40, "hands"))
    clear = msgspec.structs.replace(clear, start=at("19:40"), end=at("19:45"), waits=waits)
    late = msgspec.structs.replace(little, slots=(*others, clear))
    found = []
    for cleared in ("19:40", "19:50"):
        host = Host(late, at("16:58"))
        dine(host)
        host.at("19:40")
        do(host, (cleared, "clear"), ("19:58", "clear"))
        found += sat(host)

    assert found == [(30, None), (40, None)]


def test_while_hands_were_elsewhere_the_table_waited(little: RunSheet) -> None:
    """The clearing is called at 19:30; the host makes coffee from 19:25 to 19:42 and clears at 19:50."""
    coffee = slot("coffee", "19:25", "19:40", attended=(Attended(at("19:25"), at("19:40"), "host", "all"),))
    host = Host(msgspec.structs.replace(little, slots=(*little.slots, coffee)), at("16:58"))
    dine_until_served(host)
    host.at("19:25")
    host.wish(Done("coffee", "start", 0))
    host.at("19:30")
    do(host, ("19:42", "coffee"), ("19:50", "clear"), ("19:56", "clear"))

    assert sat(host) == [(50 - 12, None)]


def test_a_course_cleared_three_times_too_late_is_set_aside_unless_it_was_said(cook: Host, timed: RunSheet) -> None:
    dine(cook)
    cook.at("20:50")
    cook.wish(Settle("clear"))
    other = Host(timed, at("16:58"))
    dine(other)
    other.at("19:31")
    assert other.wish(DelayGuests(60, "Stew")) is None
    other.at("20:50")
    other.wish(Settle("clear"))

    assert sat(cook) == [(105, "forgotten")]
    assert sat(other) == [(105, None)]


def test_of_a_course_eaten_standing_nothing_is_known(little: RunSheet) -> None:
    (course,) = little.courses
    host = Host(msgspec.structs.replace(little, courses=(msgspec.structs.replace(course, standing=True),)), at("16:58"))
    dine(host)
    host.at("19:50")
    host.wish(Settle("clear"))

    assert sat(host) == []
