"""The account of a rehearsed night adds up to what came, blames nobody for nothing, and tells no alternative that is
worse. How a night is weighed is our own; there is no outside source for it."""

import dataclasses
import random
from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime

import msgspec
import pytest

from board.app.sessions import _with_night
from board.evening.events import CoursePushed, EveningClosed, Event, GuestsDelayed, NightDrawn
from board.evening.wishes import Close, Later, LeaveOut, Push, TakeBack, TakeSheet, Wish
from board.rehearsal.account import Account, NotPushed, account
from board.rehearsal.account_lines import account_lines, said
from board.rehearsal.draw import MINUTE, Mishaps, Night, NightWish, draw_night, night_event, night_in
from board.rehearsal.live_night import NightEvening, Offered
from board.rehearsal.player import AsDrawn
from board.rehearsal.replay import Habits, Toll, played_on, toll, total
from board.review.trace import Answer
from board.sheet.run_sheet import Keeping, RunSheet
from tests.conftest import Host, at

CALM = Night()


class Practised:
    """A night on the board. `to` answers every call at once up to a moment; so does `to_the_end`."""

    def __init__(self, sheet: RunSheet, night: Night) -> None:
        self.host = Host(sheet, min(slot.start for slot in sheet.slots) - 2 * MINUTE)
        self.host.evening.begin_night(night_event(night, sheet.arrive))
        self.evening = NightEvening(self.host.evening, night)
        self.own = AsDrawn(night)

    def to(self, clock: str) -> None:
        while self._step() and (moment := self._next()) is not None and moment < at(clock):
            self.host.clock.set(moment)
        self.host.clock.set(at(clock))

    def to_the_end(self) -> list[Event]:
        while self._step() and (moment := self._next()) is not None:
            self.host.clock.set(moment)
        return self.evening.told

    def wish(self, wish: Wish) -> None:
        assert self.evening.wish(wish) is None

    def _step(self) -> bool:
        while (deed := self.own.deed(self.evening.tick())) is not None:
            if deed.wish is not None:
                self.wish(deed.wish)
        return True

    def _next(self):
        return self.own.next(self.evening.tick())


class Late(Practised):
    """A host who answers some calls so many minutes late, and pushes the stew by ten."""

    def __init__(self, sheet: RunSheet, night: Night, late: dict[tuple[str, str], int], push_at: str) -> None:
        super().__init__(sheet, night)
        self.late, self.push_at = late, push_at

    def to_the_end(self) -> list[Event]:
        self.to(self.push_at)
        self.wish(Push("Stew", 10))
        while True:
            present = self.evening.tick()
            due = [c for c in present.due if present.now >= self._answered(c.raised or c.due, (c.slot, c.part))]
            deed = self.own.deed(dataclasses.replace(present, due=tuple(due))) if due else None
            if deed is not None and deed.wish is not None:
                self.wish(deed.wish)
            elif any(not step.settled for step in self.evening.state.steps.values()):
                self.host.clock.set(present.now + MINUTE)
            else:
                return self.evening.told

    def _answered(self, raised: datetime, call: tuple[str, str]) -> datetime:
        return raised + self.late.get(call, 0) * MINUTE


class Guesses(Practised):
    """A host who answers when the dice say so, and now and then decides something."""

    def __init__(self, sheet: RunSheet, night: Night, seed: int, *, decides: float = 0.0, late: float = 0.0) -> None:
        super().__init__(sheet, night)
        self.dice = random.Random(seed)
        self.decides, self.late = decides, late

    def play(self) -> list[Event]:
        until = None
        while True:
            present = self.evening.tick()
            if self.dice.random() < self.decides:
                self._decide()
                present = self.evening.tick()
            if until is None and present.due and self.dice.random() < self.late:
                until = present.now + self.dice.randint(1, 12) * MINUTE
            if until is not None and present.now < until:
                self.host.clock.set(present.now + MINUTE)
                continue
            until = None
            deed = self.own.deed(present)
            if deed is not None:
                if deed.wish is not None:
                    self.wish(deed.wish)
            elif (moment := self.own.next(present)) is not None:
                self.host.clock.set(moment)
            else:
                return self.evening.told

    def _decide(self) -> None:
        sheet = self.evening.sheet
        ahead = [s for s in sheet.slots if s.kind == "step" and self.evening.state.steps[s.id].status == "to-come"]
        match self.dice.randint(0, 3):
            case 0 | 1:
                self.evening.wish(Push(self.dice.choice(sheet.courses).name, self.dice.choice((5, 10, 15))))
            case 2 if ahead:
                self.evening.wish(LeaveOut(self.dice.choice(ahead).id))
            case _:
                self.evening.wish(TakeBack())


def night_of(sheet: RunSheet, seed: int) -> Night:
    mishaps: Mishaps = ("calm", "usual", "rough")[seed % 3]
    return draw_night(sheet, mishaps, seed)


def found(told: Sequence[Event], offers: Sequence[Offered] = ()) -> Account:
    made = account(told, offers)
    assert made is not None
    return made


def of(made: Account) -> tuple[int, int, int]:
    """Minutes late: by the night, by the host, saved."""
    night, cost, saved = (total(share.toll for share in each) for each in (made.night, made.cost, made.saved))
    return night.minutes_late, cost.minutes_late, saved.minutes_late


def worth(told: Sequence[Event], *more: Event) -> Toll:
    """What comes of an evening that is played on from its last event."""
    drawn = next(event for event in told if isinstance(event, NightDrawn))
    return toll(played_on(night_in(drawn), [*told, *more], [*told, *more][-1].at))


@pytest.mark.parametrize("seed", range(12))
def test_night_and_host_add_up_to_what_came(little: RunSheet, seed: int) -> None:
    told = Guesses(little, night_of(little, seed), seed, decides=0.15, late=0.2).play()
    made = found(told)

    parts = [made.planned, *(share.toll for share in (*made.night, *made.yours))]
    assert (total(parts) - made.came).is_nothing
    assert made.came == worth(told)
    both = total(s.toll for s in made.cost) - total(s.toll for s in made.saved)
    assert (both - total(s.toll for s in made.yours)).is_nothing


@pytest.mark.parametrize("seed", range(6))
def test_who_answers_at_once_and_decides_nothing_costs_and_saves_nothing(little: RunSheet, seed: int) -> None:
    night = night_of(little, seed)
    told = Guesses(little, night, seed).play()
    made = found(told)

    assert (made.cost, made.saved) == ((), ())
    assert all(isinstance(each.about, NotPushed) for each in made.mattered)
    assert (made.planned + total(share.toll for share in made.night) - made.came).is_nothing
    assert "Your answers and decisions changed nothing." in list(said(made, little))


@pytest.mark.parametrize("seed", range(12, 20))
def test_no_alternative_that_is_told_is_worse_when_it_is_played(little: RunSheet, seed: int) -> None:
    told = Guesses(little, night_of(little, seed), seed, decides=0.3).play()
    for each in found(told).mattered:
        if isinstance(each.about, Offered | NotPushed) or not isinstance(each.better, int):
            continue
        i = next(i for i, event in enumerate(told) if event.n == each.about.n)
        other = [msgspec.structs.replace(each.about, minutes=each.better)] if each.better else []
        drawn = night_in(next(event for event in told if isinstance(event, NightDrawn)))
        instead = toll(played_on(drawn, [*told[:i], *other], each.about.at))

        assert instead.betters(worth(told[: i + 1]))


@pytest.mark.parametrize("seed", range(4))
def test_a_host_played_again_by_their_habits_comes_to_the_same(little: RunSheet, seed: int) -> None:
    night = Night({"stew": (65 + 5 * seed) * MINUTE}, guests_late=5 * seed)
    told = Late(little, night, {("serve", "start"): 7, ("stew", "end"): 3 * seed}, push_at="18:00").to_the_end()
    first = next(i for i, event in enumerate(told, 1) if isinstance(event, NightDrawn))
    late = {("serve", "start"): 7 * MINUTE, ("stew", "end"): 3 * seed * MINUTE}
    again = played_on(night, told[:first], told[first - 1].at, Habits(late, [(at("18:00"), Push("Stew", 10))]))

    assert toll(again) == worth(told)
    assert found(told).cost != ()


def test_the_same_log_gives_the_same_account(little: RunSheet) -> None:
    told = Guesses(little, night_of(little, 5), 5, decides=0.2, late=0.2).play()

    assert list(account_lines(told)) == list(account_lines(told))


def test_a_late_answer_costs_what_it_held_up(little: RunSheet) -> None:
    evening = Practised(little, CALM)
    evening.to("18:50")
    evening.evening.tick()
    evening.host.clock.set(at("18:56"))
    made = found(evening.to_the_end())

    assert of(made) == (0, 6, 0)
    (share,) = made.cost
    assert isinstance(share.cause, Answer)
    assert "You cost 6 min: 'serve' called 18:50, answered 18:56 (Stew 6)." in list(said(made, little))


def test_what_goes_unheard_is_the_nights_and_what_waits_after_it_is_the_hosts(little: RunSheet) -> None:
    evening = Practised(little, Night({"stew": 60 * MINUTE}, forgotten={"stew": 25 * MINUTE}))
    evening.to("18:55")
    evening.host.clock.set(at("18:59"))
    made = found(evening.to_the_end())

    assert of(made) == (5, 4, 0)
    assert [each.cause.minutes for each in made.cost if isinstance(each.cause, Answer)] == [4]


def test_the_mishaps_of_a_night_are_told_apart(little: RunSheet) -> None:
    night = Night({"stew": 90 * MINUTE}, guests_late=22)
    made = found(Practised(little, night).to_the_end())

    assert next(said(made, little)).startswith("The night cost ")
    assert {getattr(share.cause, "what", "") for share in made.night} == {"guests", "lengths"}
    assert of(made)[0] == made.came.minutes_late > 0


def test_a_needless_push_is_better_not_done(little: RunSheet) -> None:
    evening = Practised(little, CALM)
    evening.to("18:00")
    evening.wish(Push("Stew", 15))
    lines = list(said(found(evening.to_the_end()), little))

    assert "18:00 pushed Stew by 15 min (Stew 15" in lines[1]
    assert lines[-1].startswith("18:00 you pushed Stew by 15 min: cost 15 min")
    assert lines[-1].endswith(" Better not done.")


def test_what_was_taken_back_at_once_counts_for_nothing(little: RunSheet) -> None:
    evening = Practised(little, CALM)
    evening.to("18:00")
    evening.wish(Push("Stew", 15))
    evening.wish(TakeBack())
    made = found(evening.to_the_end())

    assert (made.yours, made.mattered) == ((), ())


@pytest.fixture
def slack(little: RunSheet) -> RunSheet:
    """The little supper by a timetable that serves twenty minutes after the time wanted."""
    slots = tuple(
        msgspec.structs.replace(s, start=s.start + 20 * MINUTE, end=s.end + 20 * MINUTE)
        if s.id in ("serve", "clear")
        else s
        for s in little.slots
    )
    return msgspec.structs.replace(little, slots=slots)


def offered(evening: NightEvening, sheet: RunSheet) -> None:
    evening.offers.append(Offered(sheet, evening.now(), len(evening.told), 20))


def test_a_new_timetable_taken_has_saved_what_it_took_off(slack: RunSheet, little: RunSheet) -> None:
    evening = Practised(slack, CALM)
    evening.to("18:00")
    offered(evening.evening, little)
    evening.to("18:10")
    evening.wish(TakeSheet(little))
    made = found(evening.to_the_end(), evening.evening.offers)

    assert (made.planned.minutes_late, *of(made), made.came.minutes_late) == (20, 0, 0, 20, 0)
    lines = list(said(made, little))
    assert "Late in all: 20 \N{MINUS SIGN} 20 = 0 min." in lines
    assert lines[-1].startswith("18:10 you took the new timetable: saved 20 min")


def test_a_new_timetable_taken_too_late_is_told_with_when_it_was_offered(slack: RunSheet, little: RunSheet) -> None:
    evening = Practised(slack, CALM)
    evening.to("18:00")
    offered(evening.evening, little)
    evening.to("19:00")
    evening.wish(TakeSheet(little))
    told = evening.to_the_end()
    (mattered,) = found(told, evening.evening.offers).mattered

    assert (mattered.added.minutes_late, mattered.better, mattered.gain.minutes_late) == (-10, at("18:00"), 10)


def test_an_offer_that_was_left_is_told_with_what_it_would_have_saved(slack: RunSheet, little: RunSheet) -> None:
    evening = Practised(slack, CALM)
    evening.to("18:00")
    offered(evening.evening, little)
    told = evening.to_the_end()
    made = found(told, evening.evening.offers)

    (mattered,) = made.mattered
    assert (mattered.better, mattered.gain.minutes_late) == (at("18:00"), 20)
    assert (made.yours, of(made)) == ((), (0, 0, 0))
    assert any("18:00 you left the new timetable that was offered" in line for line in said(made, little))


def test_an_evening_ended_before_its_courses_has_no_account_and_says_so(little: RunSheet) -> None:
    evening = Practised(little, CALM)
    evening.to("18:00")
    evening.wish(Close())
    told = evening.evening.told

    assert isinstance(told[-1], EveningClosed)
    assert account(told) is None
    assert [line.split(":")[0] for line in account_lines(told)] == ["What the night cost is not told"]


def test_an_evening_without_a_drawn_night_has_no_account_and_nothing_is_said(host: Host) -> None:
    host.evening.tick()

    assert account(host.evening.told) is None
    assert list(account_lines(host.evening.told)) == []


def test_the_log_keeps_the_whole_night(little: RunSheet) -> None:
    night = replace(draw_night(little, "rough", 4), sits={"Stew": 33 * MINUTE}, oven="old oven", evenings=3)
    line = msgspec.json.encode(night_event(night, little.arrive))

    assert night_in(msgspec.json.decode(line, type=NightDrawn)) == night


def test_an_end_put_off_by_the_host_is_not_called_early(little: RunSheet) -> None:
    evening = Practised(little, Night({"chop": 20 * MINUTE}))
    evening.to("17:20")
    evening.evening.tick()
    evening.wish(Later("chop", "end"))
    evening.host.clock.set(at("17:22"))

    assert evening.evening.tick().told == ()


def test_a_push_that_would_have_spared_food_is_told_and_does_when_played(little: RunSheet) -> None:
    short = Keeping(8, "hot")
    slots = tuple(msgspec.structs.replace(s, keeping=short) if s.id == "sauce" else s for s in little.slots)
    sheet = msgspec.structs.replace(little, slots=slots)
    told = Practised(sheet, Night(guests_late=5, forgotten={"stew": 26 * MINUTE})).to_the_end()
    made = found(told)

    (mattered,) = made.mattered
    assert mattered.about == NotPushed("Stew", 5, at("18:30"))
    i = next(i for i, event in enumerate(told) if isinstance(event, GuestsDelayed))
    push = CoursePushed(n=told[i].n + 1, at=told[i].at, course="Stew", minutes=5)
    assert worth(told[: i + 1]) - worth(told[: i + 1], push) == mattered.gain
    assert mattered.gain.stood > 0
    assert "18:30 a push of Stew by 5 min would have spared food" in list(said(made, sheet))[-1]


def test_an_evening_gone_on_with_keeps_the_night_it_began_with(little: RunSheet) -> None:
    begun = Practised(little, Night({"stew": 70 * MINUTE}, guests_late=5))
    begun.to("18:00")
    again, night = _with_night(begun.host.evening, NightWish("rough", 9))

    assert isinstance(again, NightEvening)
    assert night == again.night == begun.evening.night
    assert sum(isinstance(event, NightDrawn) for event in again.told) == 1
