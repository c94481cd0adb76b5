"""A drawn night on an evening as the board has it: what is answered too soon, what goes unheard, what is told."""

from datetime import timedelta

import pytest

from board.evening.events import GuestsDelayed, StepStretched
from board.evening.wishes import Close, Done, EndUnread, Later, Settle, TakeBack, TakeReading
from board.rehearsal.draw import Night, night_score
from board.rehearsal.live_night import NightEvening
from board.session.replan.gain import Costs, Offer
from board.sheet.run_sheet import RunSheet
from board.view.present import Present
from tests.conftest import Host, at


def minutes(count: int) -> timedelta:
    return timedelta(minutes=count)


class Practice:
    """The little supper with a night over it: stew planned from 17:30 to 18:30, guests at 18:30."""

    def __init__(self, sheet: RunSheet, night: Night) -> None:
        self.host = Host(sheet, at("16:58"))
        self.evening = NightEvening(self.host.evening, night)

    def at(self, clock: str) -> Present:
        self.host.clock.set(at(clock))
        return self.evening.tick()

    def done(self, id_: str) -> Present:
        call = next(call for call in self.evening.tick().due if call.slot == id_)
        assert self.evening.wish(Done(*call.key)) is None
        return self.evening.tick()

    def stew_on(self) -> None:
        self.at("17:00")
        self.done("chop")
        self.at("17:20")
        self.done("chop")
        self.at("17:30")
        self.done("stew")
        for clock in ("17:50", "18:10"):
            self.at(clock)
            self.done("stew")

    def took(self, id_: str) -> timedelta:
        step = self.evening.state.steps[id_]
        assert step.started is not None
        assert step.finished is not None
        return step.finished - step.started


def test_an_end_answered_too_soon_stretches_the_step_and_says_by_how_much(little: RunSheet) -> None:
    practice = Practice(little, Night({"stew": minutes(67)}))
    practice.stew_on()
    practice.at("18:30")
    present = practice.done("stew")
    practice.at("18:37")
    practice.done("stew")

    assert present.told == ("stew is not ready yet: 7 min more, by the look of it",)
    assert [e.minutes for e in practice.evening.told if isinstance(e, StepStretched)] == [7]
    assert practice.took("stew") == minutes(67)
    assert practice.evening.tick().told == ()


@pytest.mark.parametrize(("lasts", "told", "stretched"), [(67, "17 min", [7]), (60, "10 min", [])])
def test_an_end_answered_before_its_call_moves_it_only_by_what_is_more(
    little: RunSheet, lasts: int, told: str, stretched: list[int]
) -> None:
    practice = Practice(little, Night({"stew": minutes(lasts)}))
    practice.stew_on()
    practice.at("18:20")
    assert practice.evening.wish(Settle("stew")) is None

    assert practice.evening.tick().told == (f"stew is not ready yet: {told} more, by the look of it",)
    assert [e.minutes for e in practice.evening.told if isinstance(e, StepStretched)] == stretched
    practice.at("18:30")
    if stretched:
        practice.at("18:37")
    practice.done("stew")
    assert practice.took("stew") == minutes(lasts)


def test_every_way_to_end_a_step_meets_the_same_truth(little: RunSheet) -> None:
    for wish in (Settle("stew"), EndUnread("stew"), TakeReading("stew", 80.0, "end")):
        practice = Practice(little, Night({"stew": minutes(67)}))
        practice.stew_on()
        practice.at("18:30")

        assert practice.evening.wish(wish) is None
        assert practice.evening.state.steps["stew"].status == "under-way"
        assert practice.evening.tick().told == ("stew is not ready yet: 7 min more, by the look of it",)
        assert practice.evening.state.readings == ()


def test_a_forgotten_call_is_logged_when_due_and_heard_when_the_night_lets_it(little: RunSheet) -> None:
    practice = Practice(little, Night(forgotten={"stew": minutes(6)}))
    practice.stew_on()
    unheard, still = practice.at("18:30"), practice.at("18:35")
    heard, after = practice.at("18:36"), practice.at("18:37")

    assert [c.slot for c in (*unheard.due, *still.due) if c.slot == "stew"] == []
    assert practice.evening.state.raised["stew", "end", 0] == at("18:30")
    assert "stew" in [c.slot for c in heard.due]
    assert [c.slot for c in heard.raised if c.slot == "stew"] == ["stew"]
    assert heard.told == ("The end of 'stew' went unheard for 6 min.",)
    assert (after.told, [c.slot for c in after.raised if c.slot == "stew"]) == ((), [])


def test_guests_come_by_the_drawn_minutes_and_once(little: RunSheet) -> None:
    practice = Practice(little, Night(guests_late=12))
    practice.stew_on()
    practice.at("18:30")
    present = practice.done("arrive")
    practice.at("18:42")
    practice.done("arrive")

    assert present.told == ("the guests are 12 min late",)
    assert [e.minutes for e in practice.evening.told if isinstance(e, GuestsDelayed)] == [12]
    assert practice.evening.state.steps["arrive"].finished == at("18:42")


def test_what_is_ready_early_is_told_once_and_left_to_the_host(little: RunSheet) -> None:
    practice = Practice(little, Night({"chop": minutes(12)}))
    practice.at("17:00")
    practice.done("chop")
    early, later = practice.at("17:12"), practice.at("17:13")

    assert (early.told, later.told) == (("chop is ready before its time",), ())
    assert practice.evening.wish(Settle("chop")) is None
    assert practice.took("chop") == minutes(13)


def test_what_the_night_has_nothing_against_goes_as_always(little: RunSheet) -> None:
    practice = Practice(little, Night({"stew": minutes(67)}))
    practice.stew_on()
    practice.at("18:30")
    practice.evening.wish(Later("stew", "end"))
    practice.evening.wish(TakeBack())

    assert practice.evening.tick().told == ()
    assert practice.evening.state.steps["stew"].put_off == {}


def test_a_night_gone_on_with_knows_what_has_happened(little: RunSheet) -> None:
    night = Night(guests_late=12, forgotten={"stew": minutes(6)})
    practice = Practice(little, night)
    practice.stew_on()
    practice.at("18:30")
    practice.done("arrive")
    again = NightEvening(practice.evening, night)
    practice.host.clock.set(at("18:42"))
    present = again.tick()

    assert {"stew", "arrive"} <= {call.slot for call in present.due}
    assert again.wish(Done("arrive", "start")) is None
    assert again.state.steps["arrive"].settled
    assert [e.minutes for e in again.told if isinstance(e, GuestsDelayed)] == [12]


def test_each_new_timetable_that_is_offered_is_kept_in_mind_once(little: RunSheet) -> None:
    practice = Practice(little, Night())
    late = Offer(little, before=Costs(late=12, kept=0, away=0), after=Costs(late=4, kept=0, away=0), courses=())
    practice.at("17:30")
    practice.evening.offered(late)
    practice.at("17:31")
    practice.evening.offered(late)

    (kept,) = practice.evening.offers
    assert (kept.sheet, kept.at, kept.promised) == (little, at("17:30"), 8)
    assert kept.events <= len(practice.evening.told)


def test_the_score_of_an_evening_ended_early_says_what_was_not_served(little: RunSheet) -> None:
    practice = Practice(little, Night({"stew": minutes(67)}, guests_late=12, oven="old oven"))
    practice.stew_on()
    practice.evening.wish(Close())
    score = list(night_score(practice.evening, practice.evening.night))

    assert "Stew was not served." in score
    assert "The old oven was slow all night." in score
    assert not any("guests came" in line for line in score)
