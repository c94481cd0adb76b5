"""A first timetable by list scheduling: no search, and never undone. Pure; no solver.

What follows the guests' coming or a serving is placed forwards, as early as it can be; all else backwards from its
successors, as late as it can be, the most urgent first: serial schedule generation with the latest start as priority
(Kolisch 1996). Steps that follow one another at once are placed together. What does not fit within the hours makes its
course later; what still does not fit breaks its hours. Minutes of free hands, rings, room and ovens are the bits of
whole numbers.
"""

import heapq
import time
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from itertools import combinations, islice, product

from board.schedule.intervals import Window
from board.schedule.problem import FRONT, NO_PLACE, Demand, Hold, Job, Order, OvenUse, Problem, Way
from board.schedule.solution import Solution
from board.schedule.windows import allowed_starts, home_windows

# Ours: by how much a course is put later at the most, and at first, and how many mixes of ways are weighed.
MOST_LATER, LATER_MINUTES, MOST_MIXES = 160, 10, 24
SHORT, LOOK_BACK = 120, 4  # minutes of keeping that are looked at ahead, and over how many steps
SECONDS = 0.7  # of putting courses later, within their hours and then out of them


def list_schedule(problem: Problem) -> Solution | None:
    """A timetable that keeps every hard limit, with no aims weighed; None where this way finds none."""
    until = time.perf_counter() + SECONDS
    later: dict[int, int] = {}
    over_hours = False
    while True:
        attempt = _Attempt(problem, later, over_hours=over_hours)
        try:
            attempt.place_all()
        except _TooLate as stuck:
            course = _course_after(problem, stuck.job)
            in_time = time.perf_counter() < until
            if course is not None and in_time and later.get(course, 0) < MOST_LATER:
                later[course] = max(LATER_MINUTES, later.get(course, 0) * 2)
            elif not over_hours:
                later, over_hours, until = {}, True, time.perf_counter() + SECONDS
            else:
                return None
        else:
            return attempt.solution()


def _course_after(problem: Problem, job: int) -> int | None:
    """The serving of the first course that waits for a job; None if none does that can be later."""
    reached = _reached(problem, [job])
    waiting = [s for s in problem.servings if s.job in reached and problem.jobs[s.job].fixed is None]
    return min(waiting, key=lambda s: (s.wanted, s.job)).job if waiting else None


def _reached(problem: Problem, jobs: Iterable[int]) -> set[int]:
    then: dict[int, list[int]] = {}
    for order in problem.orders:
        then.setdefault(order.first, []).append(order.second)
    found, todo = set(jobs), list(jobs)
    while todo:
        for other in then.get(todo.pop(), []):
            if other not in found:
                found.add(other)
                todo.append(other)
    return found


class _TooLate(Exception):
    """A job finds no place before the steps that follow it."""

    def __init__(self, job: int) -> None:
        super().__init__(job)
        self.job = job


@dataclass(frozen=True, slots=True)
class _Choice:
    """A start for one job, with its way and all who do it; `over`: out of hours."""

    start: int
    way: int
    who: tuple[int, ...]
    kept: bool
    over: bool


@dataclass(frozen=True, slots=True)
class _InOven:
    start: int
    end: int
    use: OvenUse
    job: int
    is_hold: bool


def _least(order: Order) -> int:
    """Minutes between the two that are not given up here."""
    return order.least if order.firm else order.ready


def _ones(start: int, end: int) -> int:
    """Bits set for the minutes of a stretch."""
    start = max(start, 0)
    return ((1 << (end - start)) - 1) << start if end > start else 0


def _shift(bits: int, by: int) -> int:
    return bits << by if by >= 0 else bits >> -by


def _runs(free: int, offset: int, length: int) -> int:
    """Starts whose stretch of `length` minutes, `offset` minutes after them, is free throughout."""
    have = 1
    while have < length:
        step = min(have, length - have)
        free &= free >> step
        have += step
    return _shift(free, -offset)


def _spread(bits: int, minutes: int) -> int:
    """Each minute and so many after it."""
    have = 0
    while have < minutes:
        step = min(have + 1, minutes - have)
        bits |= bits << step
        have += step
    return bits


def _windows(windows: Iterable[Window]) -> int:
    bits = 0
    for start, end in windows:
        bits |= _ones(start, end)
    return bits


class _Attempt:
    """One pass over all jobs. `later`: minutes by which courses go out after they are wanted."""

    def __init__(self, problem: Problem, later: dict[int, int], *, over_hours: bool) -> None:
        self.problem = problem
        self.later = later
        self.over_hours = over_hours
        longest = max((way.minutes for job in problem.jobs for way in job.ways), default=0)
        self.end = problem.horizon + longest + 1
        self.all = _ones(0, self.end)
        self.placed: dict[int, _Choice] = {}
        self.kitchen = [0] * len(problem.hands)  # minutes each is at work in the kitchen
        self.front = [0] * len(problem.hands)  # in the room
        self.walks = [0] * len(problem.hands)  # in the room, or on the way
        self.taken: dict[int, list[tuple[int, int, int]]] = {}
        self.ovens: dict[int, list[_InOven]] = {}
        self.before: dict[int, list[Order]] = {}
        self.after: dict[int, list[Order]] = {}
        self.taking: dict[int, list[Order]] = {}  # those of them that take up what it made
        for order in problem.orders:
            self.before.setdefault(order.second, []).append(order)
            self.after.setdefault(order.first, []).append(order)
            if order.takes_up:
                self.taking.setdefault(order.first, []).append(order)
        self.wanted = {s.job: s.wanted + later.get(s.job, 0) for s in problem.servings}
        self.home = home_windows(problem)
        self.blocks = self._chains()

    # --- the order of work
    def place_all(self) -> None:
        for n, job in enumerate(self.problem.jobs):
            if job.fixed is not None:
                self._put(n, _Choice(job.fixed, 0, tuple(sorted(job.hands)[: job.crew]), True, False))
        arrival = (n for n, job in enumerate(self.problem.jobs) if job.fixed == self.problem.arrives)
        spine = _reached(self.problem, [*(s.job for s in self.problem.servings), *arrival])
        for block in self._in_order([b for b in self.blocks if spine & set(b)]):
            self._place(block, latest=None)
        rest = [b for b in self.blocks if b[0] not in self.placed]
        loose = [b for b in rest if not any(self._followers(b))]
        self._backwards([b for b in rest if b not in loose])
        for block in loose:
            self._place_loose(block)
        self._keep_what_was_placed_forwards()

    def _chains(self) -> list[tuple[int, ...]]:
        """Jobs that follow one another at once, together; each other job alone. Fixed ones stand already."""
        follows: dict[int, int] = {}
        for order in sorted(self.problem.orders, key=lambda o: not self._is_rest(o)):
            if self._at_once(order) and order.first not in follows and order.second not in follows.values():
                follows[order.first] = order.second
        found = []
        for n, job in enumerate(self.problem.jobs):
            if job.fixed is None and n not in follows.values():
                chain = [n]
                while chain[-1] in follows:
                    chain.append(follows[chain[-1]])
                found.append(tuple(chain))
        return found

    def _is_rest(self, order: Order) -> bool:
        return any(way.oven is not None and way.oven.off for way in self.problem.jobs[order.second].ways)

    def _at_once(self, order: Order) -> bool:
        """Whether the second is to follow the first at once, and can: one pair of hands may have to walk between."""
        first, second = self.problem.jobs[order.first], self.problem.jobs[order.second]
        if order.usual or order.most != order.least or first.fixed is not None or second.fixed is not None:
            return False
        lanes = {way.lane == FRONT for way in (*first.ways, *second.ways) if way.parts}
        return self._is_rest(order) or order.least >= self.problem.walk or len(lanes) < 2

    def _followers(self, block: tuple[int, ...]) -> Iterator[Order]:
        return (order for n in block for order in self.after.get(n, []) if order.second not in block)

    def _in_order(self, blocks: list[tuple[int, ...]]) -> list[tuple[int, ...]]:
        """Each after those it waits for."""
        of = {n: block for block in blocks for n in block}
        waits = {
            block: {of[o.first] for n in block for o in self.before.get(n, []) if of.get(o.first, block) != block}
            for block in blocks
        }
        found: list[tuple[int, ...]] = []
        ready = [(self._first_wanted(b), b) for b in blocks if not waits[b]]
        heapq.heapify(ready)
        while ready:
            _, block = heapq.heappop(ready)
            found.append(block)
            for other in blocks:
                if block in waits[other]:
                    waits[other].discard(block)
                    if not waits[other]:
                        heapq.heappush(ready, (self._first_wanted(other), other))
        return found

    def _first_wanted(self, block: tuple[int, ...]) -> int:
        return min((self.wanted[n] for n in block if n in self.wanted), default=0)

    def _backwards(self, blocks: list[tuple[int, ...]]) -> None:
        """The one that must start latest first, once all its successors are placed."""
        of = {n: block for block in blocks for n in block}
        missing = {b: {of[o.second] for o in self._followers(b) if o.second in of} for b in blocks}
        heap = [(-self._latest(b), b) for b in blocks if not missing[b]]
        heapq.heapify(heap)
        leads: dict[tuple[int, ...], list[tuple[int, ...]]] = {}
        for block, others in missing.items():
            for other in others:
                leads.setdefault(other, []).append(block)
        while heap:
            _, block = heapq.heappop(heap)
            self._place(block, latest=self._latest(block))
            for other in leads.get(block, []):
                missing[other].discard(block)
                if not missing[other]:
                    heapq.heappush(heap, (-self._latest(other), other))

    def _latest(self, block: tuple[int, ...]) -> int:
        """The latest start of a block by what stands after it."""
        latest, offset = self.problem.horizon, 0
        for place, n in enumerate(block):
            minutes = min(way.minutes for way in self.problem.jobs[n].ways)
            for order in self.after.get(n, []):
                if order.second in self.placed:
                    latest = min(latest, self.placed[order.second].start - _least(order) - minutes - offset)
            offset += minutes + (self._gap(block, place) if place + 1 < len(block) else 0)
        return latest

    def _gap(self, block: tuple[int, ...], place: int) -> int:
        pair = (block[place], block[place + 1])
        return next(o.least for o in self.after[pair[0]] if o.second == pair[1] and o.most == o.least)

    # --- one block
    def _place(self, block: tuple[int, ...], latest: int | None) -> None:
        for over in (False, True) if self.over_hours else (False,):
            found = max(self._mixes(block, latest, over=over), key=lambda each: each[0], default=None)
            if found is not None:
                for n, choice in zip(block, found[1], strict=True):
                    self._put(n, choice)
                return
        raise _TooLate(block[-1])

    def _place_loose(self, block: tuple[int, ...]) -> None:
        """What nothing waits for: before the guests, else as soon as it can be."""
        try:
            self._place(block, latest=self.problem.arrives)
        except _TooLate:
            self._place(block, latest=None)

    def _mixes(self, block: tuple[int, ...], latest: int | None, *, over: bool) -> Iterator[tuple[int, list[_Choice]]]:
        """For each mix of ways: what speaks for it (less is worse), and the choices. `latest` None: forwards."""
        for ways in islice(product(*(range(len(self.problem.jobs[n].ways)) for n in block)), MOST_MIXES):
            if not self._rests_fit(block, ways):
                continue
            offsets = self._offsets(block, ways)
            masks = [self._starts(n, way, over=over) for n, way in zip(block, ways, strict=True)]
            whole = self.all
            for mask, offset in zip(masks, offsets, strict=True):
                whole &= _shift(self._any(mask), -offset)
            whole &= ~_ones(0, self._earliest(block, ways, offsets))
            if latest is None:
                if whole:
                    start = (whole & -whole).bit_length() - 1
                    yield -start, self._choices(block, ways, masks, offsets, start, (True,) * len(block), over=over)
                continue
            yield from self._kept_or_not(block, ways, masks, offsets, whole, over=over)

    def _kept_or_not(
        self, block: tuple[int, ...], ways: tuple[int, ...], masks: list[dict[tuple[int, ...], int]],
        offsets: list[int], whole: int, *, over: bool,
    ) -> Iterator[tuple[int, list[_Choice]]]:  # fmt: skip
        """The latest start at which every result has its place, and the latest at all."""
        latest = self._latest_for(block, ways, offsets)
        whole &= _ones(0, latest + 1)
        whole = (whole & self._in_good_time(block, offsets, over=over)) or whole
        since = [self._kept_since(n, way) for n, way in zip(block, ways, strict=True)]
        bounds = [since[k] - offsets[k] - self._way(n, ways[k]).minutes for k, n in enumerate(block)]
        kept = whole & ~_ones(0, max([0, *bounds]))
        if kept:
            start = kept.bit_length() - 1
            choices = self._choices(block, ways, masks, offsets, start, (True,) * len(block), over=over)
            yield -self._cost(block, choices), choices
        if whole and not kept:
            start = whole.bit_length() - 1
            stays = tuple(start >= bound for bound in bounds)
            choices = self._choices(block, ways, masks, offsets, start, stays, over=over)
            yield -self._cost(block, choices), choices

    def _in_good_time(self, block: tuple[int, ...], offsets: list[int], *, over: bool) -> int:
        """Starts of a block before which what keeps only shortly can be made, by what stands so far."""
        bits = self.all
        for n, offset in zip(block, offsets, strict=True):
            bits &= _shift(self._fed(n, block, LOOK_BACK, over=over), -offset)
        return bits

    def _fed(self, n: int, block: tuple[int, ...], depth: int, *, over: bool) -> int:
        """Starts of a job that its results of short keeping can reach, each made from its own."""
        bits = self.all
        for order in self.before.get(n, []) if depth else []:
            first = order.first
            least, most = _least(order), self._stands_at_most(order)
            if first in self.placed or first in block or most is None or most < least:
                continue
            leading = self._fed(first, block, depth - 1, over=over)
            ends = 0
            for number, way in enumerate(self.problem.jobs[first].ways):
                ends |= (self._any(self._starts(first, number, over=over)) & leading) << way.minutes
            bits &= _spread(ends << least, most - least)
        return bits

    def _stands_at_most(self, order: Order) -> int | None:
        """Minutes a result keeps until the next step, where these are few."""
        ways = self.problem.jobs[order.first].ways if order.takes_up else ()
        limits = [way.hold.limit if way.hold else None for way in ways]
        known = [limit for limit in (*limits, None if order.usual else order.most) if limit is not None]
        return min(known) if known and min(known) <= SHORT else None

    def _cost(self, block: tuple[int, ...], choices: list[_Choice]) -> int:
        """Minutes past what the results keep; then minutes they wait at all."""
        past = waits = 0
        for n, choice in zip(block, choices, strict=True):
            way = self._way(n, choice.way)
            end = choice.start + way.minutes
            last = max(
                (self.placed[o.second].start for o in self.taking.get(n, []) if o.second in self.placed), default=end
            )
            limit = way.hold.limit if way.hold else None
            if not choice.kept:
                past += NO_PLACE + last - end
            elif limit is not None:
                past += max(0, last - end - limit)
            waits += last - end
        return past * 10_000 + waits

    def _way(self, n: int, way: int) -> Way:
        return self.problem.jobs[n].ways[way]

    def _offsets(self, block: tuple[int, ...], ways: tuple[int, ...]) -> list[int]:
        offsets = [0]
        for place in range(len(block) - 1):
            offsets.append(offsets[-1] + self._way(block[place], ways[place]).minutes + self._gap(block, place))
        return offsets

    def _rests_fit(self, block: tuple[int, ...], ways: tuple[int, ...]) -> bool:
        """A rest in an oven that was switched off follows a bake in that oven, at the heat it was reckoned from."""
        for place, n in enumerate(block):
            use = self._way(n, ways[place]).oven
            if use is None or not use.off:
                continue
            before = [(block[place - 1], ways[place - 1])] if place else self._baked_before(n)
            if not all(self._way(job, way).bakes_for(self._way(n, ways[place])) for job, way in before):
                return False
        return True

    def _baked_before(self, n: int) -> list[tuple[int, int]]:
        at_once = [o.first for o in self.before.get(n, []) if o.most == o.least and o.takes_up]
        return [
            (first, self.placed[first].way)
            for first in at_once
            if first in self.placed and any(way.oven for way in self.problem.jobs[first].ways)
        ]

    def _earliest(self, block: tuple[int, ...], ways: tuple[int, ...], offsets: list[int]) -> int:
        """By what stands before it, and by when a course is wanted."""
        bounds = [0]
        for n, way, offset in zip(block, ways, offsets, strict=True):
            bounds.append(self.problem.jobs[n].earliest - offset)
            if n in self.wanted:
                bounds.append(self.wanted[n] - self._way(n, way).minutes - offset)
            for order in self.before.get(n, []):
                if order.first in self.placed:
                    bounds.append(self._end(order.first) + _least(order) - offset)
        return max(bounds)

    def _latest_for(self, block: tuple[int, ...], ways: tuple[int, ...], offsets: list[int]) -> int:
        bounds = [self.problem.horizon]
        for n, way, offset in zip(block, ways, offsets, strict=True):
            for order in self.after.get(n, []):
                if order.second in self.placed:
                    taken_up = self.placed[order.second].start - _least(order)
                    bounds.append(taken_up - self._way(n, way).minutes - offset)
        return min(bounds)

    def _end(self, n: int) -> int:
        choice = self.placed[n]
        return choice.start + self._way(n, choice.way).minutes

    def _choices(
        self, block: tuple[int, ...], ways: tuple[int, ...], masks: list[dict[tuple[int, ...], int]],
        offsets: list[int], start: int, kept: tuple[bool, ...], *, over: bool,
    ) -> list[_Choice]:  # fmt: skip
        found = []
        for k, n in enumerate(block):
            at = start + offsets[k]
            who = next(crew for crew, mask in masks[k].items() if mask >> at & 1)
            keeps_hours = over and any(
                bits >> at & 1 for crew, bits in self._starts(n, ways[k], over=False).items() if crew == who
            )
            found.append(_Choice(at, ways[k], who, kept[k], over and not keeps_hours))
        return found

    # --- when a job may start
    @staticmethod
    def _any(masks: dict[tuple[int, ...], int]) -> int:
        bits = 0
        for mask in masks.values():
            bits |= mask
        return bits

    def _starts(self, n: int, number: int, *, over: bool) -> dict[tuple[int, ...], int]:
        """For each crew that may do it, the starts at which hands, things and ovens are free."""
        job, way = self.problem.jobs[n], self._way(n, number)
        free = self.all
        for demand in way.demands:
            free &= _runs(self.all & ~self._lacking(demand), 0, way.minutes) if way.minutes else self.all
        if way.oven is not None and way.minutes:
            fits = 0
            for use in self._settings(way):
                fits |= self._bakes_from(n, way, use)
            free &= fits
        crews: Iterable[tuple[int, ...]] = combinations(job.hands, job.crew) if way.parts else ((),)
        return {crew: mask for crew in crews if (mask := free & self._hand_starts(job, way, crew, over=over))}

    def _hand_starts(self, job: Job, way: Way, crew: tuple[int, ...], *, over: bool) -> int:
        bits = self.all
        if not over:
            bits = _windows(allowed_starts(self.problem, job, way, *self.problem.crew(crew)))
        walk = self.problem.walk
        for hand, part in product(crew, way.parts):
            if way.lane == FRONT:
                bits &= _runs(self.all & ~(self.kitchen[hand] | self.front[hand]), part.offset, part.length)
                bits &= _runs(self.all & ~self.kitchen[hand], part.offset, part.length + walk)
                if walk:
                    bits &= _shift(_runs(self.all & ~self.kitchen[hand], part.offset, walk), walk) | _ones(0, walk)
            else:
                bits &= _runs(self.all & ~(self.kitchen[hand] | self.walks[hand]), part.offset, part.length)
        return bits

    def _lacking(self, demand: Demand) -> int:
        """Minutes at which there is less of it than is asked for."""
        capacity = self.problem.resources[demand.resource].capacity
        if demand.amount > capacity:
            return self.all
        return self._crowded(
            ((start, end, amount) for start, end, amount in self.taken.get(demand.resource, [])),
            capacity - demand.amount,
        )

    @staticmethod
    def _crowded(taken: Iterable[tuple[int, int, int]], most: int) -> int:
        """Minutes at which more than `most` is taken."""
        edges = sorted(edge for start, end, amount in taken for edge in ((start, amount), (end, -amount)))
        bits = level = since = 0
        for at, change in edges:
            if level > most:
                bits |= _ones(since, at)
            level, since = level + change, at
        return bits

    def _settings(self, way: Way) -> list[OvenUse]:
        """Its use of an oven at each setting worth a try: its own, then those of what bakes there already."""
        use, hold = way.oven, way.hold
        assert use is not None
        if use.off:
            return [use]
        low, high = use.low, use.high
        if hold is not None and hold.oven is not None and hold.oven.oven == use.oven and use.agrees(hold.oven):
            low, high = max(low, hold.oven.low), min(high, hold.oven.high)  # it is kept as it was baked
        others = [s.use.want for s in self.ovens.get(use.oven, []) if not (s.is_hold or s.use.off)]
        has = self.problem.ovens_now.get(use.oven)
        stands = [has.celsius] if has is not None and has.celsius is not None else []
        heats = [max(low, min(high, use.want)), *(heat for heat in (*stands, *others) if low <= heat <= high)]
        return [replace(use, low=heat, want=heat, high=heat) for heat in dict.fromkeys(heats)]

    def _bakes_from(self, n: int, way: Way, use: OvenUse) -> int:
        """The starts at which it has that setting from its start to its end."""
        free = _runs(self.all & ~self._oven_taken(n, use, is_hold=False), 0, way.minutes)
        return free & ~_ones(0, self.problem.oven_ready(use, use.want))

    def _oven_taken(self, n: int, use: OvenUse, *, is_hold: bool) -> int:
        """Minutes at which the oven has no shelf for it, or is at, or on its way to or from, another heat."""
        facts = self.problem.ovens[use.oven]
        bits = self._crowded(
            ((s.start, s.end, s.use.shelves) for s in self.ovens.get(use.oven, [])), facts.shelves - use.shelves
        )
        for spell in self.ovens.get(use.oven, []):
            if spell.job == n or use.agrees(spell.use) or self._takes_over(n, is_hold, spell):
                continue
            bits |= _ones(
                spell.start - facts.change_between(use, spell.use), spell.end + facts.change_between(spell.use, use)
            )
        return bits

    def _takes_over(self, n: int, is_hold: bool, spell: _InOven) -> bool:
        """Whether the one successor takes a kept result out of the oven: the dial is then turned for it."""
        if is_hold == spell.is_hold:
            return False
        kept, step = (n, spell.job) if is_hold else (spell.job, n)
        return [order.second for order in self.taking.get(kept, [])] == [step]

    def _kept_since(self, n: int, number: int) -> int:
        """The earliest end from which its result can stand in its place until the next step."""
        hold = self._way(n, number).hold
        starts = self._taken_up(n)
        if hold is None or not starts:
            return 0
        return self._place_since(n, hold, max(starts))

    def _taken_up(self, n: int) -> list[int]:
        """The starts of those that take it up and are placed."""
        return [self.placed[o.second].start for o in self.taking.get(n, []) if o.second in self.placed]

    def _place_since(self, n: int, hold: Hold, until: int) -> int:
        since = 0
        for demand in hold.demands:
            since = max(since, (self._lacking(demand) & _ones(0, until)).bit_length())
        if hold.oven is not None:
            taken = self._oven_taken(n, hold.oven, is_hold=True) & _ones(0, until)
            since = max(since, taken.bit_length() - hold.ready_in)
        if hold.hot:
            warm = max((way.hold_warm_up for way in self.problem.jobs[n].ways), default=0)
            since = max(since, next((a + warm for a, b in self.home if a + warm <= until <= b), until))
        return since

    # --- what is placed
    def _put(self, n: int, choice: _Choice) -> None:
        self.placed[n] = choice
        way = self._way(n, choice.way)
        end = choice.start + way.minutes
        for hand, part in product(choice.who, way.parts):
            at, done = choice.start + part.offset, choice.start + part.offset + part.length
            if way.lane == FRONT:
                self.front[hand] |= _ones(at, done)
                self.walks[hand] |= _ones(at - self.problem.walk, done + self.problem.walk)
            else:
                self.kitchen[hand] |= _ones(at, done)
        oven = None
        if way.oven is not None and way.minutes:
            fit = (use for use in self._settings(way) if self._bakes_from(n, way, use) >> choice.start & 1)
            oven = next(fit, way.oven)
        self._take(n, way.demands, oven, choice.start, end, is_hold=False)
        until = max(
            (self.placed[o.second].start for o in self.taking.get(n, []) if o.second in self.placed), default=end
        )
        if choice.kept and way.hold is not None and all(o.second in self.placed for o in self.taking.get(n, [])):
            self._hold(n, way.hold, end, until)

    def _hold(self, n: int, hold: Hold, end: int, until: int) -> None:
        self._take(n, hold.demands, None, end, until, is_hold=True)
        self._take(n, (), hold.oven, end + hold.ready_in, until, is_hold=True)

    def _take(
        self, n: int, demands: tuple[Demand, ...], oven: OvenUse | None, start: int, end: int, *, is_hold: bool
    ) -> None:
        if end <= start:
            return
        for demand in demands:
            self.taken.setdefault(demand.resource, []).append((start, end, demand.amount))
        if oven is not None:
            self.ovens.setdefault(oven.oven, []).append(_InOven(start, end, oven, n, is_hold))

    def _keep_what_was_placed_forwards(self) -> None:
        """A result whose successors came after it has its place where there is still room."""
        for n, choice in list(self.placed.items()):
            hold = self._way(n, choice.way).hold
            orders = self.taking.get(n, [])
            if hold is None or not orders or self._stood_when_placed(n):
                continue
            end, until = self._end(n), max(self.placed[o.second].start for o in orders)
            if end < until and self._place_since(n, hold, until) > end:
                self.placed[n] = _Choice(choice.start, choice.way, choice.who, False, choice.over)
            else:
                self._hold(n, hold, end, until)

    def _stood_when_placed(self, n: int) -> bool:
        places = {job: place for place, job in enumerate(self.placed)}
        return all(places[o.second] < places[n] for o in self.taking.get(n, []))

    def solution(self) -> Solution:
        each = [self.placed[n] for n in range(len(self.problem.jobs))]
        return Solution(
            tuple(c.start for c in each),
            tuple(c.way for c in each),
            tuple(c.who for c in each),
            tuple(c.kept for c in each),
            (),
            0.0,
        )
