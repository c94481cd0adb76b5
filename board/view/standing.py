"""Food that stands, and how much longer it may: shelf lives, and the clocks of food that spoils. Pure; safe for a
terminal."""

from collections.abc import Callable, Iterator, Mapping
from datetime import datetime, timedelta
from typing import NamedTuple

from board.base import words as shared
from board.base.plain import one_line
from board.evening.clocks import LeftOver, LiveClock, clock_of, is_near, left_over, stood_too_long, told_of
from board.evening.events import ClockWarned
from board.evening.forecast import Standing
from board.evening.gone_cold import gone_cold
from board.evening.readings import warns_from
from board.sheet.run_sheet import Slot
from board.view import words
from board.view.countdown import countdown
from board.view.present import Present

SAID_FROM = timedelta(minutes=30)  # a result gets a line from this long before its limit


class Stands(NamedTuple):
    """A line about food that stands. `presses`: something must be done about it."""

    text: str
    presses: bool
    sign: str = words.STATE_SIGN["keeping"]


class Standings:
    """Describes the food that stands in one sheet. `clock(moment, now)` writes a time; `keyed`: lines name the key that
    answers them."""

    def __init__(
        self, slots: Mapping[str, Slot], clock: Callable[[datetime, datetime], str], *, keyed: bool = True
    ) -> None:
        self.slots, self.clock, self.keyed = slots, clock, keyed

    def lines(self, at: Present) -> tuple[Stands, ...]:
        """The lines worth showing: what presses first, then what has the least time left."""
        found = [*self._too_cold(at), *self._keeping(at), *self._clocks(at)]
        found.sort(key=lambda each: (not each[1].presses, each[0]))
        return tuple(line for _, line in found)

    # --- kept hot, and too cold ------------------------------------------------------------------------------------
    def _too_cold(self, at: Present) -> Iterator[tuple[datetime, Stands]]:
        """What a probe found too cold, while its call is put off: it stays in sight."""
        due = {call.slot for call in at.due if call.part == "reheat"}
        for id_, spell in gone_cold(at.state).items():
            if id_ not in due:
                name = one_line(self.slots[id_].dish or self.slots[id_].name, 40)
                yield spell.read.at, Stands(words.call_reheat(name), presses=True, sign=shared.SIGN["stop"])

    # --- shelf life ----------------------------------------------------------------------------------------------
    def _keeping(self, at: Present) -> Iterator[tuple[datetime, Stands]]:
        """Only results with less than half an hour of shelf life left, or whose last successor will start too late; not
        those that a probe found too cold: they are no longer good."""
        cold = gone_cold(at.state)
        for each in at.forecast.keeping:
            if each.slot in cold:
                continue
            if each.until - at.now < SAID_FROM or each.taken_up > each.until:
                yield each.until, self._kept(each, at.now)

    def _kept(self, standing: Standing, now: datetime) -> Stands:
        left = (standing.until - now).total_seconds()
        name = one_line(self.slots[standing.slot].name, 40)
        if left < 0:
            keeping = self.slots[standing.slot].keeping
            safety = keeping is not None and keeping.for_safety
            return Stands(words.past_keeping(name, countdown(-left), standing.where, safety=safety), presses=True)
        limit = self.clock(standing.until, now)
        presses = now >= warns_from(standing) or standing.taken_up > standing.until
        return Stands(words.stands_until(name, limit, standing.where), presses)

    def soon_over(self, standing: Standing, now: datetime) -> str:
        """The warning about a result close to the end of its shelf life."""
        name = one_line(self.slots[standing.slot].name, 40)
        return words.soon_over(name, self.clock(standing.until, now), standing.where)

    def spoken_warning(self, standing: Standing, now: datetime) -> str:
        """The same for a voice: no signs, whole minutes."""
        left = max(0.0, (standing.until - now).total_seconds())
        return words.spoken_warning(one_line(self.slots[standing.slot].name, 40), left / 60)

    # --- clocks --------------------------------------------------------------------------------------------------
    def _clocks(self, at: Present) -> Iterator[tuple[datetime, Stands]]:
        """Dishes whose clock runs or has run out, and leftovers of cleared courses."""
        for each in told_of(at.clocks, at.now):
            yield each.until, self._dish(each, at.now)
        for left in left_over(at.clocks, at.now):
            text = self._left(left, at.now, keyed=self.keyed and not left.job)
            over = at.now >= left.until
            yield left.until, Stands(text, over or is_near(left.until, at.now), words.CLOCK_SIGN[over])

    def _dish(self, clock: LiveClock, now: datetime) -> Stands:
        if clock.over:
            return Stands(_over(clock), presses=True, sign=words.CLOCK_SIGN[True])
        until = self.clock(clock.until, now)
        told = words.clock_runs(_name(clock), int(clock.out_minutes), until, raw=clock.raw is not None)
        if clock.too_long:
            told = words.clock_too_long(told)
        presses = clock.too_long or is_near(clock.until, now)
        return Stands(told, presses, words.CLOCK_SIGN[False])

    def _left(self, left: LeftOver, now: datetime, *, keyed: bool = False) -> str:
        course = one_line(left.course, 40)
        if now >= left.until:
            return words.left_over(course, left.limit_minutes)
        return words.put_away(course, self.clock(left.until, now), keyed=keyed)

    def put_away(self, course: str, at: Present) -> tuple[str, bool]:
        """What is said when a course's leftovers are put away, and whether it is serious: they had stood beyond the
        limit."""
        late, name = stood_too_long(at.clocks, course), one_line(course, 40)
        return (words.is_put_away(name), False) if late is None else (words.left_over(name, late.limit_minutes), True)

    def clock_warning(self, warned: ClockWarned, at: Present) -> str:
        """The warning about a clock, given once."""
        found = clock_of(at.clocks, warned)
        if isinstance(found, LeftOver):
            return self._left(found, at.now)
        if found is None:
            name = one_line(warned.dish or warned.course, 40)
            return words.told_clock(name, warned.what, raw=warned.cooking is not None)
        if found.over:
            return _over(found)
        say = words.clock_soon if found.raw is None else words.raw_soon
        return say(_name(found), int(found.out_minutes), found.limit_minutes, self.clock(found.until, at.now))


def _name(clock: LiveClock) -> str:
    dish = one_line(clock.dish, 40)
    return dish if clock.raw is None else words.raw_of(dish, one_line(clock.raw, 30))


def _over(clock: LiveClock) -> str:
    return (words.clock_over if clock.raw is None else words.raw_over)(_name(clock), clock.limit_minutes)
