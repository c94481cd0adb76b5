"""What a rehearsed night cost, what its host cost and saved, and what mattered. Pure; the same log, the same account.

At any moment an evening is worth what would come of it if every call were answered at once from then on and nothing
more decided. That worth changes only by what the host does or leaves waiting. So what the timetable is late by itself,
what the night adds, and all these changes make up what really came.
"""

from bisect import bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import assert_never

from msgspec.structs import replace as replace_event

from board.evening.calls import calls
from board.evening.events import (
    CallPutOff,
    CoursePushed,
    DishDropped,
    EveningClosed,
    EveningOpened,
    Event,
    GuestsDelayed,
    NightDrawn,
    Part,
    ReadingTaken,
    SheetTaken,
    StepLeftOut,
    StepStretched,
    TakenBack,
)
from board.evening.fold import fold_all
from board.evening.forecast import Forecaster
from board.evening.slip_wishes import oven_of
from board.evening.state import State, begin
from board.evening.wishes import DelayGuests, DropDish, Later, LeaveOut, Lengthen, Push, TakeSheet, Wish
from board.rehearsal.draw import MINUTE, Night, instead, night_in
from board.rehearsal.live_night import Offered
from board.rehearsal.player import Stuck
from board.rehearsal.replay import Habits, Toll, played_on, toll
from board.review.measure import measured
from board.review.trace import Answer, answered_late

Decision = CoursePushed | SheetTaken | DishDropped | StepLeftOut | StepStretched | GuestsDelayed | CallPutOff
# Bounds on what is played, all ours: what is beyond them counts in the sums, but is not told by itself.
MOST_LATE, MOST_DECISIONS, MOST_PLAYED, MOST_OFFERS = 6, 8, 3, 3
PUSHES = (5, 10, 15, 20, 30, 45)  # minutes tried in place of a push
WOULD_PUSH = (5, 10)  # minutes tried where none was made
MOST_COURSES, MOST_MOMENTS = 2, 2  # for which, and at which, such a push is tried
TOLD = 2  # decisions


@dataclass(frozen=True, slots=True)
class Mishap:
    """A part of the night. `about`: an oven or a slot's name; `minutes`: how late the guests were, how long a call went
    unheard."""

    what: str  # guests, lengths, oven, unheard
    about: str = ""
    minutes: int = 0


@dataclass(frozen=True, slots=True)
class Share:
    """A cause and the toll it added; what it took off is below 0. `cause` None: answers a little late, or early."""

    cause: Mishap | Answer | Decision | None
    toll: Toll


@dataclass(frozen=True, slots=True)
class NotPushed:
    """A push that could have been made when the board was told that something takes longer."""

    course: str
    minutes: int
    at: datetime


@dataclass(frozen=True, slots=True)
class Mattered:
    """A decision, an offer that was left, or a push not made. `added`: what the decision did. `better`: what would have
    been: a push of so many minutes, 0 for nothing at all, or the moment to take the offer; None if no better was found.
    `gain`: what that, or the push not made, takes off besides."""

    about: Decision | Offered | NotPushed
    added: Toll
    better: int | datetime | None
    gain: Toll

    @property
    def weight(self) -> tuple[int, int, int]:
        """Food out too long before minutes late, those before food past its best."""
        return max(_weight(self.added), _weight(self.gain))


@dataclass(frozen=True)
class Account:
    """`planned`, the night's shares and `yours` add up to what `came`, course by course."""

    planned: Toll
    night: tuple[Share, ...]
    yours: tuple[Share, ...]
    came: Toll
    mattered: tuple[Mattered, ...]

    @property
    def cost(self) -> tuple[Share, ...]:
        """What made it worse."""
        return tuple(share for share in self.yours if not _is_gain(share.toll))

    @property
    def saved(self) -> tuple[Share, ...]:
        """What made it better, as tolls taken off."""
        return tuple(replace(share, toll=-share.toll) for share in self.yours if _is_gain(share.toll))


def account(told: Sequence[Event], offers: Sequence[Offered] = ()) -> Account | None:
    """The account of an evening, from all its events. None if no night was drawn for it, if a course was neither served
    nor left out, or if it cannot be played again."""
    begun = next((i for i, event in enumerate(told, 1) if isinstance(event, NightDrawn)), None)
    if begun is None or not _all_served(state_of(told)):
        return None
    try:
        return _Books(tuple(e for e in told if not isinstance(e, EveningClosed)), begun, offers).account()
    except Stuck:
        return None


def _all_served(state: State) -> bool:
    """Whether every course was served or left out."""
    return all(state.steps[course.serve].settled for course in state.sheet.courses)


def state_of(told: Sequence[Event]) -> State:
    """The evening after these events."""
    opened = told[0]
    assert isinstance(opened, EveningOpened)
    return fold_all(begin(opened.sheet), told)


def _weight(toll: Toll) -> tuple[int, int, int]:
    return abs(toll.unsafe), abs(toll.minutes_late), abs(toll.stood)


def _is_gain(toll: Toll) -> bool:
    return (toll.minutes_late, toll.unsafe, toll.stood) < (0, 0, 0)


def _wish(event: Decision) -> Wish:
    """The wish a decision came of."""
    match event:
        case CoursePushed():
            return Push(event.course, event.minutes)
        case SheetTaken():
            return TakeSheet(event.sheet)
        case DishDropped():
            return DropDish(event.dish, event.course)
        case StepLeftOut():
            return LeaveOut(event.slot)
        case StepStretched():
            return Lengthen(event.slots, event.minutes, event.oven)
        case GuestsDelayed():
            return DelayGuests(event.minutes, event.course)
        case CallPutOff():
            return Later(event.slot, event.part, event.number, event.minutes)
        case _:
            assert_never(event)


class _Books:
    """`told[:begun]` lies before the night."""

    def __init__(self, told: tuple[Event, ...], begun: int, offers: Sequence[Offered]) -> None:
        self.told = told
        self.begun = begun
        self.offers = offers
        drawn = told[begun - 1]
        assert isinstance(drawn, NightDrawn)
        self.night = replace(night_in(drawn), evenings=0)
        self.state = state_of(told)
        self.index = {event.n: i for i, event in enumerate(told)}
        self.late = sorted(self._late(), key=lambda each: -each.minutes)[:MOST_LATE]
        self.decisions = self._decisions()
        self._worth: dict[tuple[int, datetime], Toll] = {}

    def account(self) -> Account:
        planned = self._played(Night(), self.begun, self._moment(self.begun))
        night = tuple(self._mishaps(list(self._nights()), planned, self._after(self.begun)))
        yours = tuple(self._yours())
        return Account(planned, night, yours, self._after(len(self.told)), tuple(self._mattered(yours)))

    def _moment(self, events: int) -> datetime:
        return self.told[events - 1].at

    def _played(self, night: Night, events: int, now: datetime, *more: Event) -> Toll:
        return toll(played_on(night, (*self.told[:events], *more), now))

    def _at(self, events: int, now: datetime) -> Toll:
        """What the evening is worth after so many events, at a moment."""
        if (events, now) not in self._worth:
            self._worth[events, now] = self._played(self.night, events, now)
        return self._worth[events, now]

    def _after(self, events: int) -> Toll:
        return self._at(events, self._moment(events))

    def _before(self, event: int) -> Toll:
        return self._at(event, self.told[event].at)

    def _mishaps(self, parts: Sequence[tuple[Mishap, Night]], before: Toll, after: Toll) -> Iterator[Share]:
        """What each part of the night adds to the parts before it. Halved, so that parts that change nothing are played
        together."""
        if before == after:
            return
        if len(parts) == 1:
            yield Share(parts[0][0], after - before)
            return
        middle = len(parts) // 2
        between = self._played(parts[middle - 1][1], self.begun, self._moment(self.begun))
        yield from self._mishaps(parts[:middle], before, between)
        yield from self._mishaps(parts[middle:], between, after)

    def _nights(self) -> Iterator[tuple[Mishap, Night]]:
        """From the first mishap to the whole night, one more each time."""
        whole, slots = self.night, state_of(self.told[: self.begun]).sheet.by_id()
        slow = {id_ for id_ in whole.lasts if id_ in slots and whole.oven and oven_of(slots[id_]) == whole.oven}
        night = Night(guests_late=whole.guests_late)
        if whole.guests_late:
            yield Mishap("guests", minutes=whole.guests_late), night
        usual = {id_: lasts for id_, lasts in whole.lasts.items() if id_ not in slow}
        night = replace(night, lasts=usual, sits=whole.sits, oven=whole.oven)
        if slow:
            yield Mishap("lengths"), night
        night = replace(night, lasts=whole.lasts)
        yield Mishap("oven", whole.oven or "") if slow else Mishap("lengths"), night
        for id_, minutes in whole.forgotten.items():
            night = replace(night, forgotten={**night.forgotten, id_: minutes})
            yield Mishap("unheard", slots[id_].name if id_ in slots else id_, round(minutes / MINUTE)), night

    def _yours(self) -> list[Share]:
        """Every change of the evening's worth, by cause; those that come to nothing are left out."""
        found: dict[object, Share] = {}

        def add(cause: Answer | Decision | None, added: Toll) -> None:
            key = cause.n if isinstance(cause, Decision) else cause and (cause.slot.id, cause.part, cause.called)
            known = found.get(key)
            found[key] = Share(cause, added if known is None else known.toll + added)

        here = self.begun
        for event, decision in self.decisions[:MOST_DECISIONS]:
            for cause, added in self._split(here, self._after(here), event, self._before(event)):
                add(cause, added)
            add(decision, self._after(event + 1) - self._before(event))
            here = event + 1
        for cause, added in self._split(here, self._after(here), len(self.told), self._after(len(self.told))):
            add(cause, added)
        return [share for share in found.values() if not share.toll.is_nothing]

    def _decisions(self) -> list[tuple[int, Decision | None]]:
        """Where the host decided something; where it was taken back, with what it was (None: an answer)."""
        found: list[tuple[int, Decision | None]] = []
        for i in range(self.begun, len(self.told)):
            event = self.told[i]
            if isinstance(event, Decision) and not self._is_no_choice(i, event):
                found.append((i, event))
            elif isinstance(event, TakenBack):
                targets = [self.told[self.index[n]] for n in event.targets if n in self.index]
                found.append((i, next((each for each in targets if isinstance(each, Decision)), None)))
        return found

    def _is_no_choice(self, i: int, event: Decision) -> bool:
        """Whether the night put this in the place of an answer, or the board put a call off for what a probe showed."""
        if isinstance(event, CallPutOff):
            return isinstance(self.told[i - 1], ReadingTaken) and self.told[i - 1].n == event.n - 1
        if not isinstance(event, StepStretched | GuestsDelayed):
            return False
        state = state_of(self.told[:i])
        slots = state.sheet.by_id()
        wish = (
            Lengthen(event.slots, event.minutes)
            if isinstance(event, StepStretched)
            else DelayGuests(event.minutes, event.course)
        )
        part: Part = "end" if isinstance(event, StepStretched) else "start"
        others = (instead(self.night, state, slots[id_], part, event.at) for id_ in event.slots if id_ in slots)
        return any(other is not None and other.wish == wish for other in others)

    def _split(self, here: int, worth: Toll, there: int, then: Toll) -> Iterator[tuple[Answer | None, Toll]]:
        """What changed between two decisions, by the call that waited. Halved at late answers until each change has one
        cause; where nothing changed in all, nothing is played."""
        if worth == then:
            return
        inner = sorted({end for each in self.late if here < (end := self._end_of(each)) < there})
        if inner:
            middle = inner[len(inner) // 2]
            between = self._after(middle)
            yield from self._split(here, worth, middle, between)
            yield from self._split(middle, between, there, then)
        else:
            yield self._waiting(here, there), then - worth

    def _end_of(self, late: Answer) -> int:
        """How many events there were once it was answered."""
        return bisect_right(self.told, late.answered, key=lambda event: event.at)

    def _waiting(self, here: int, there: int) -> Answer | None:
        """The late answer for which a stretch waited: of several, the one the board lists first."""
        since, until = self._moment(here), self.told[min(there, len(self.told) - 1)].at
        waited = {(a.slot.id, a.part): a for a in self.late if a.called < until and a.answered > since}
        if len(waited) > 1:
            state = state_of(self.told[:here])
            due, _ = calls(Forecaster(state.sheet).forecast(state, until), state)
            first = next((call for call in due if (call.slot, call.part) in waited), None)
            if first is not None:
                return waited[first.slot, first.part]
        return next(iter(waited.values()), None)

    def _late(self) -> Iterator[Answer]:
        """Calls that waited a minute or longer since they could be heard, in this part of the evening."""
        since = self._moment(self.begun)
        for each in answered_late(self.state, 1):
            unheard = self.night.forgotten.get(each.slot.id, timedelta()) if each.part == "end" else timedelta()
            called = max(each.called + unheard, since)
            minutes = round((each.answered - called) / MINUTE)
            if minutes >= 1:
                yield replace(each, minutes=minutes, called=called)

    def _mattered(self, yours: Sequence[Share]) -> list[Mattered]:
        """The weightiest decisions and left offers."""
        undone = {n for event in self.told if isinstance(event, TakenBack) for n in event.targets}
        made = [
            (share.cause, share.toll)
            for share in sorted(yours, key=lambda each: _weight(each.toll), reverse=True)
            if isinstance(share.cause, Decision) and share.cause.n not in undone
        ]
        found = [self._decided(*each) for each in made[:MOST_PLAYED]]
        found += [*self._left(), *self._not_pushed()]
        return sorted(found, key=lambda each: each.weight, reverse=True)[:TOLD]

    def _decided(self, event: Decision, added: Toll) -> Mattered:
        """A decision beside the best of what could have been done in its place."""
        i = self.index[event.n]
        best, better = self._after(i + 1), None
        others: list[tuple[int | datetime, Toll]] = [(0, self._before(i))]
        if isinstance(event, CoursePushed):
            pushes = (replace_event(event, minutes=minutes) for minutes in PUSHES if 0 < minutes < event.minutes)
            others += [(push.minutes, self._played(self.night, i, event.at, push)) for push in pushes]
        elif isinstance(event, SheetTaken):
            # Taken sooner, it is weighed by what it would have added then: what happened in between is no part of it.
            first = next((o for o in self.offers if o.sheet == event.sheet and o.at < event.at - MINUTE), None)
            if first is not None:
                others.append((first.at, self._after(i + 1) + self._if_taken(first) - added))
        for what, other in others:
            if other.betters(best) and self._holds(event, what):
                best, better = other, what
        return Mattered(event, added, better, self._after(i + 1) - best)

    def _holds(self, event: Decision, what: int | datetime) -> bool:
        """Whether it is no worse for this host either: with the answers and decisions that came after."""
        i = self.index[event.n]
        if isinstance(what, datetime):
            offer = next(offer for offer in self.offers if offer.at == what)
            return self._holds_if_taken(offer)
        other = [replace_event(event, minutes=what)] if isinstance(event, CoursePushed) and what else []
        habits = self._habits(i + 1, event.at)
        return self._no_worse(self.told[:i], event.at, other, [event], habits)

    def _holds_if_taken(self, offer: Offered) -> bool:
        habits = self._habits(offer.events, offer.at)
        return self._no_worse(self.told[: offer.events], offer.at, [self._taken(offer)], [], habits)

    def _no_worse(
        self, told: Sequence[Event], now: datetime, other: Sequence[Event], made: Sequence[Event], habits: Habits
    ) -> bool:
        was, would_be = (toll(played_on(self.night, [*told, *each], now, habits)) for each in (made, other))
        return would_be == was or would_be.betters(was)

    def _habits(self, events: int, now: datetime) -> Habits:
        """How the host went on after so many events."""
        late = {(a.slot.id, a.part): a.minutes * MINUTE for a in self._late() if a.answered > now}
        undone = {n for event in self.told if isinstance(event, TakenBack) for n in event.targets}
        later = ((i, event) for i, event in self.decisions if i >= events and event is not None)
        return Habits(
            late,
            [(event.at, _wish(event)) for i, event in later if event is self.told[i] and event.n not in undone],
        )

    def _if_taken(self, offer: Offered) -> Toll:
        """What a new timetable would have added when it was offered."""
        taken = self._played(self.night, offer.events, offer.at, self._taken(offer))
        return taken - self._at(offer.events, offer.at)

    def _taken(self, offer: Offered) -> SheetTaken:
        return SheetTaken(n=self.told[offer.events - 1].n + 1, at=offer.at, sheet=offer.sheet)

    def _not_pushed(self) -> Iterator[Mattered]:
        """For each course whose food stood too long: the push that would have spared it most, at the last moments when
        something was told to take longer."""
        for course in list(dict.fromkeys(self._stood_too_long()))[:MOST_COURSES]:
            best: Mattered | None = None
            for i in self._told_of_delay(course)[:MOST_MOMENTS]:
                for minutes in WOULD_PUSH:
                    event = self.told[i]
                    push = CoursePushed(n=event.n + 1, at=event.at, course=course, minutes=minutes)
                    gain = self._after(i + 1) - self._played(self.night, i + 1, event.at, push)
                    weighs = best is None or _weight(gain) > best.weight
                    if weighs and (-gain).betters(Toll()) and self._push_holds(i + 1, push):
                        best = Mattered(NotPushed(course, minutes, event.at), Toll(), None, gain)
            if best is not None:
                yield best

    def _push_holds(self, events: int, push: CoursePushed) -> bool:
        return self._no_worse(self.told[:events], push.at, [push], [], self._habits(events, push.at))

    def _stood_too_long(self) -> Iterator[str]:
        """Courses, the one whose food stood longest for what it keeps first."""
        opened = self.told[0]
        assert isinstance(opened, EveningOpened)
        for kept in measured(self.state, opened).kept_longest():
            if kept.share > 1 and kept.slot.course is not None:
                yield kept.slot.course

    def _told_of_delay(self, course: str) -> list[int]:
        """Where the night told of a delay before a course was plated, the last first."""
        serve = {c.name: c.serve for c in self.state.sheet.courses}.get(course)
        plated = self.state.steps[serve].started if serve is not None else None
        return [
            i
            for i in reversed(range(self.begun, len(self.told)))
            if isinstance(event := self.told[i], StepStretched | GuestsDelayed)
            and self._is_no_choice(i, event)
            and plated is not None
            and event.at < plated
        ]

    def _left(self) -> Iterator[Mattered]:
        """Offers that were left and would have helped."""
        taken = [event.sheet for event in self.told if isinstance(event, SheetTaken)]
        left = [offer for offer in self.offers if offer.events >= self.begun and offer.sheet not in taken]
        for offer in sorted(left, key=lambda each: -each.promised)[:MOST_OFFERS]:
            added = self._if_taken(offer)
            if added.betters(Toll()) and self._holds_if_taken(offer):
                yield Mattered(offer, Toll(), offer.at, -added)
