"""What a timetable of a tiny plan is worth, aim by aim, and whether it can be at all.

Written from the manual and the docstring of `aims.py`; nothing is shared with the timetable's own reckoning. Each aim
is a sum over steps and over what stands between two steps, and none of its terms is below nought. A further aim is
one more function in `AIMS`, in the order of `answer.AIMS`.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from itertools import combinations, pairwise

from tests.outside.tiny_plans import ARRIVE, CHANGE, HEATING, SEAT, SERVE, Gap, Step, Tiny

GRID = 5
DAY, PAUSE, LAST_HOURS = 24 * 60, 15, 180
TAKES_ROOM = ("ring", "oven", "hot")  # and so may have to go without; the fridge has no end here
Span = tuple[int, int]


@dataclass(frozen=True)
class Placed:
    """A step's start, all who do it, and whether its result has the place it is kept in. `step`: by the way chosen."""

    step: Step
    start: int
    hands: tuple[str, ...]
    kept: bool

    @property
    def end(self) -> int:
        return self.start + self.step.minutes

    def attended(self) -> list[Span]:
        return [(self.start + a, self.start + b) for a, b in self.step.parts()]


Timetable = dict[int, Placed]  # by number of the step; the serving comes after the last


class Evening:
    """A tiny plan with its serving, and what follows what."""

    def __init__(self, tiny: Tiny) -> None:
        self.tiny = tiny
        served = tuple(Gap(n) for n in tiny.last_steps())
        own = []
        if tiny.sit is not None:  # they come to the table at most ten minutes before it is served
            served = (*served, Gap(len(tiny.steps), 0, 10))
            own.append(Step("guests to the table", SEAT, "all", keeps=10_000, is_seating=True))
        self.steps = [*tiny.steps, *own, Step("serve", SERVE, "all", follows=served)]
        self.serving = len(self.steps) - 1
        self.then: dict[int, list[tuple[int, Gap]]] = {n: [] for n in range(len(self.steps))}
        for n, step in enumerate(self.steps):
            for gap in step.follows:
                self.then[gap.step].append((n, gap))
        self.takers = {n: [then for then, gap in each if not gap.order_only] for n, each in self.then.items()}
        self.opens = min(a for spans in tiny.hours.values() for a, _ in spans)
        every = [way for s in self.steps for way in (s, s.other) if way is not None]
        reach = sum(s.minutes + sum(g.least for g in s.follows) for s in every) + sum(
            max(HEATING.values()) for s in every if s.oven or s.keeps_in == "oven"
        )
        bounds = [b for s in self.steps for b in (s.not_before, s.not_after) if b is not None]
        first = min([self.opens, *bounds]) - reach
        last = max([tiny.wanted + 20, *(b for spans in tiny.hours.values() for _, b in spans), *bounds]) + reach
        self.starts = range(first, last + 1, GRID)
        self.in_hours: dict[tuple[Step, str], list[int]] = {}  # starts that keep hours, as they are asked for

    def choices(self, number: int) -> list["Placed"]:
        """Every way to place a step: how, its start, who does it, and whether its result gets its place."""
        step = self.steps[number]
        return [
            Placed(way, start, hands, kept)
            for way in (step, step.other)
            if way is not None
            for start in self.starts
            for hands in ([()] if way.attended == "none" else combinations(self._may(way), way.people))
            for kept in ((True, False) if way.keeps_in in TAKES_ROOM else (True,))
        ]

    def _may(self, way: Step) -> list[str]:
        return [way.who] if way.who else list(self.tiny.hours)

    def free(self, name: str) -> list[Span]:
        """Her hours, but for the host's time away and at the shops."""
        gone = [self.tiny.away, self.tiny.trip] if name == "host" else []
        return _without(self.tiny.hours[name], gone)

    def home(self) -> list[Span]:
        """When anybody is: stretches that touch are one. Who is away is busy in the house, who is at the shops is not."""
        spans: list[Span] = []
        at_home = [_without(s, [self.tiny.trip] if name == "host" else []) for name, s in self.tiny.hours.items()]
        for a, b in sorted(span for of_one in at_home for span in of_one):
            if spans and a <= spans[-1][1]:
                spans[-1] = (spans[-1][0], max(b, spans[-1][1]))
            else:
                spans.append((a, b))
        return spans


def _without(spans: list[Span], gone: list[Span | None]) -> list[Span]:
    for out in filter(None, gone):
        spans = [(a, min(b, out[0])) for a, b in spans] + [(max(a, out[1]), b) for a, b in spans]
    return sorted((a, b) for a, b in spans if a < b)


def within(spans: list[Span], start: int, end: int) -> bool:
    return any(a <= start and end <= b for a, b in spans)


def keeps_hours(evening: Evening, placed: Placed) -> bool:
    """All hands-on stretches in that person's hours; hot things, and the heating of a cold oven, with somebody home."""
    step, home = placed.step, evening.home()
    hands = all(within(evening.free(name), a, b) for name in placed.hands for a, b in placed.attended())
    hot = not (step.ring or step.oven) or within(home, placed.start, placed.end)
    heated = not step.oven or within(home, placed.start - HEATING[step.oven], placed.start)
    early = step.not_before is not None and placed.start < step.not_before
    late = step.not_after is not None and placed.end > step.not_after
    return placed.start >= evening.opens and hands and hot and heated and not early and not late


def waits(evening: Evening, found: Timetable) -> Iterator[tuple[Placed, Gap, int]]:
    """Everything that stands until something takes it up, with the minutes it stands."""
    for n, placed in found.items():
        for then, gap in evening.then[n]:
            if then in found:
                yield placed, gap, found[then].start - placed.end
    served = found.get(evening.serving)
    for placed in found.values():
        if served is not None and placed.step.since_served is not None:
            yield _no_food(served), placed.step.since_served, placed.start - served.end


def _no_food(served: Placed) -> Placed:
    """The serving, as what comes after it waits for it: nothing of it is kept."""
    return replace(served, step=replace(served.step, keeps=10_000))


# --- the aims, each from what is said of it; minutes. None grows smaller as more steps are placed --------------------
def hours(evening: Evening, found: Timetable) -> int:
    """Hands-on minutes of all that does not keep its hours (1 where there are none), and ten for each minute between
    what should follow at once."""
    over = [p for p in found.values() if not keeps_hours(evening, p)]
    apart = [wait - (gap.most or 0) for _, gap, wait in waits(evening, found) if gap.at_once]
    return sum(sum(b - a for a, b in p.attended()) or 1 for p in over) + 10 * sum(max(0, wait) for wait in apart)


def outside(evening: Evening, found: Timetable) -> int:
    """Minutes to the nearest start that would keep its hours, of all that does not, by whose hands are furthest off;
    where no start does, to the nearest at which the fewest minutes lie outside."""
    far = 0
    for placed in found.values():
        if not keeps_hours(evening, placed):
            far += max(_far_off(evening, placed, who) for who in placed.hands or ("",))
    return far


def _far_off(evening: Evening, placed: Placed, who: str) -> int:
    key = (placed.step, who)
    if key not in evening.in_hours:
        alone = [replace(placed, start=start, hands=(who,) if who else ()) for start in evening.starts]
        outside = [_outside_minutes(evening, each) for each in alone]
        least = [each.start for each, minutes in zip(alone, outside, strict=True) if minutes == min(outside)]
        evening.in_hours[key] = least
    return min(abs(start - placed.start) for start in evening.in_hours[key])


def _outside_minutes(evening: Evening, placed: Placed) -> int:
    """Of hands out of their hours, of heat with nobody at home, of what lies outside its own time, added up. Who is at
    the shops is at work, in hours of her own."""
    step, home = placed.step, evening.home()
    run = (placed.start, placed.end)
    hours = {
        name: _without(evening.tiny.hours[name], [evening.tiny.away] if name == "host" else []) for name in placed.hands
    }
    asked = [(hours[name], span) for name in placed.hands for span in placed.attended()]
    if step.ring or step.oven:
        asked.append((home, run))
    if step.oven:
        asked.append((home, (placed.start - HEATING[step.oven], placed.start)))
    bounds = (step.not_before, step.not_after)
    if bounds != (None, None):
        asked.append(([(bounds[0] if bounds[0] is not None else -9_999, bounds[1] or 99_999)], run))
    asked.append(([(evening.opens, 99_999)], run))
    return sum(b - a - sum(max(0, min(b, until) - max(a, since)) for since, until in spans) for spans, (a, b) in asked)


def courses(evening: Evening, found: Timetable) -> int:
    """Minutes late, and four more for each beyond what may slip."""
    served = found.get(evening.serving)
    late = served.end - evening.tiny.wanted if served else 0
    return max(0, late) + 4 * max(0, late - evening.tiny.may_slip)


def stood_out(evening: Evening, found: Timetable) -> int:
    """Minutes on the dish's clock until it is eaten, nought before it is known when that is: of each way that food
    comes to the serving, what it stands on the bench and in the room, anew from when it is first cooked through; the
    longest counts."""
    served = found.get(evening.serving)
    if served is None:
        return 0
    minutes = []
    for route in _routes(evening, found, [evening.serving]):
        out, cooked = 0, False
        for n, then in pairwise(route):
            placed = found[n]
            if evening.steps[n].through and not cooked:
                out, cooked = 0, True
            if not (placed.step.ring or placed.step.oven):
                out += placed.step.minutes
            if placed.step.keeps_in == "" or not placed.kept:
                out += found[then].start - placed.end
        minutes.append(out)
    return max(minutes) + served.step.minutes + evening.tiny.eaten


def _routes(evening: Evening, found: Timetable, route: list[int]) -> Iterator[list[int]]:
    """Every way to that step from as far back as steps are placed."""
    before = [gap.step for gap in evening.steps[route[0]].follows if gap.step in found and not gap.order_only]
    for n in before:
        yield from _routes(evening, found, [n, *route])
    if not before:
        yield route


def clocks(evening: Evening, found: Timetable) -> int:
    """1 where the dish stands out for longer than its clock gives it."""
    return int(_past_its_clock(evening, found) > 0)


def _past_its_clock(evening: Evening, found: Timetable) -> int:
    clock = evening.tiny.clock
    return max(0, stood_out(evening, found) - clock) if clock is not None else 0


def keeps(evening: Evening, found: Timetable) -> int:
    """Minutes past a limit of keeping (none at all, and 30 more, without its place), of waiting, or past a clock; and
    minutes that what should be ready for the guests is late for them."""
    total = _past_its_clock(evening, found)
    for placed, gap, wait in waits(evening, found):
        if not gap.order_only:
            total += max(0, wait - placed.step.keeps) if placed.kept else wait + 30
        if gap.most is not None and not gap.at_once:
            total += max(0, wait - gap.most)
    return total + sum(max(0, p.end - ARRIVE) for p in found.values() if p.step.is_job and p.step.since_served is None)


def freshness(evening: Evening, found: Timetable) -> int:
    """Minutes past its best."""
    best = [(p.step.best_within, wait) for p, gap, wait in waits(evening, found) if not gap.order_only]
    return sum(max(0, wait - within) for within, wait in best if within is not None)


def usual(evening: Evening, found: Timetable) -> int:
    """Minutes by which jobs are done sooner than is usual."""
    return sum(max(0, ARRIVE - p.end - p.step.usual) for p in found.values() if p.step.usual is not None)


def company(evening: Evening, found: Timetable) -> int:
    """Hands-on minutes of those who eat, from the guests' coming to the end of the course, but for what is done at the
    table and what the guests may stand by. Of one alone, the minutes; of several, each one's first quarter of an hour
    counts once, the second twice, and so on."""
    sitters = [name for name in evening.tiny.hours if name not in evening.tiny.hired]
    away = [sum(max(0, b - a) for a, b in _away(evening, found, name)) for name in sitters]
    return sum(away) if len(sitters) < 2 else sum(1 + minute // 15 for minutes in away for minute in range(minutes))


def _away(evening: Evening, found: Timetable, name: str) -> Iterator[Span]:
    served = found.get(evening.serving)
    for n, placed in found.items():
        at_table = n == evening.serving or placed.step.is_seating or placed.step.shared
        if name in placed.hands and not at_table:
            for a, b in placed.attended():
                after = placed.step.since_served is not None
                over = served.end + evening.tiny.eaten if after and served is not None else b
                yield max(a, ARRIVE), min(b, over) if served is not None or not after else ARRIVE


def table(evening: Evening, found: Timetable) -> int:
    """Minutes by which the first who eats gets up too soon after the serving, and minutes of all work that lies in the
    stretch, none for more than all of it."""
    served, sit = found.get(evening.serving), evening.tiny.sit
    if served is None or not sit:
        return 0
    up = [
        (a, b)
        for n, p in found.items()
        if n != evening.serving and not p.step.shared and not (p.hands and {*p.hands} <= {*evening.tiny.hired})
        for a, b in p.attended()
        if a < served.end + sit and b > served.end
    ]
    quiet = min([sit, *(max(0, a - served.end) for a, _ in up)])
    return sit - quiet + sum(min(b - a, sit) for a, b in up)


def rest(evening: Evening, found: Timetable) -> int:
    """Minutes beyond two hours of each stretch of work before the guests that no quarter of an hour breaks, within a
    person's hours; and half an hour for each evening before with no half hour to eat between six and nine, where the
    hours alone would leave none."""
    total = 0
    for name in evening.tiny.hours:
        free = [(a, min(b, ARRIVE)) for a, b in _joined(evening.free(name), PAUSE) if a < ARRIVE]
        work = sorted(part for p in found.values() if name in p.hands for part in p.attended())
        for since, until in free:
            here = [(max(a, since), min(b, until)) for a, b in work if b > since and a < until]
            total += sum(max(0, b - a - 120) for a, b in _joined(here, PAUSE))
        for begins in range(-DAY, evening.starts[0] - DAY, -DAY):
            supper = (begins + 18 * 60, begins + 21 * 60)
            total += 30 * (not _leaves(evening.free(name), supper) and not _leaves(work, supper))
    return total


def _joined(spans: list[Span], pause: int) -> list[Span]:
    """Those with less than a pause between them as one."""
    found: list[Span] = []
    for a, b in sorted(spans):
        if found and a - found[-1][1] < pause:
            found[-1] = (found[-1][0], max(b, found[-1][1]))
        else:
            found.append((a, b))
    return found


def _leaves(spans: list[Span], supper: Span) -> bool:
    """Whether half an hour of it is free."""
    edges = sorted({supper[0], *(b for _, b in spans if supper[0] < b < supper[1])})
    return any(a + 30 <= supper[1] and not any(c < a + 30 and a < d for c, d in spans) for a in edges)


def day(evening: Evening, found: Timetable) -> int:
    """Hands-on minutes, anybody's, from three hours before the guests on."""
    return sum(b - a for p in found.values() for a, b in p.attended() if b > ARRIVE - LAST_HOURS)


def spread(evening: Evening, found: Timetable) -> int:
    """What is done before, at its price: each minute two for each day that it is early, four where its result keeps for
    less than two days; and on a day with more than two hours of work for each who works then three more, with more
    than three five more, with more than four six more."""
    loads: dict[int, int] = {}
    total = 0
    for placed in found.values():
        for a, b in placed.attended():
            if b <= ARRIVE - LAST_HOURS:
                early = -((b - 1) // DAY)  # what ends at midnight is of the day before
                loads[early] = loads.get(early, 0) + b - a
                short = not placed.step.is_job and placed.step.keeps < 2 * DAY
                total += (b - a) * early * (4 if short else 2)
    for early, load in loads.items():
        begins, ends = -early * DAY, ARRIVE - LAST_HOURS if not early else (1 - early) * DAY
        hands = sum(any(a < ends and begins < b for a, b in evening.free(name)) for name in evening.tiny.hours)
        for hours, price in ((2, 3), (3, 5), (4, 6)):
            total += max(0, load - hours * 60 * max(1, hands)) * price
    return total


def busiest(evening: Evening, found: Timetable) -> int:
    """The host's minutes of work in the half hour before the one course is plated."""
    if evening.serving not in found:
        return 0
    plated = found[evening.serving].start
    work = [s for n, p in found.items() if n != evening.serving and "host" in p.hands for s in p.attended()]
    return sum(max(0, min(b, plated) - max(a, plated - 30)) for a, b in work)


def give(evening: Evening, found: Timetable) -> int:
    """Minutes by which a step may run over without room for them before what takes it up, or before the guests."""
    missing = 0
    for placed, gap, wait in waits(evening, found):
        if gap.most is None or gap.most - gap.least >= placed.step.over:
            missing += max(0, placed.step.over - (wait - gap.least))
    ready = [p for p in found.values() if p.step.is_job and p.step.over]
    return missing + sum(max(0, p.step.over - (ARRIVE - p.end)) for p in ready)


AIMS: dict[str, Callable[[Evening, Timetable], int]] = {
    "hours": hours,
    "clocks": clocks,
    "courses": courses,
    "keeps": keeps,
    "outside": outside,
    "freshness": freshness,
    "usual": usual,
    "table": table,
    "company": company,
    "rest": rest,
    "day": day,
    "spread": spread,
    "busiest": busiest,
    "give": give,
}


def weigh(evening: Evening, found: Timetable) -> tuple[int, ...]:
    """What a timetable, or a part of one, is worth, aim by aim."""
    return tuple(aim(evening, found) for aim in AIMS.values())


# --- what can be at all ----------------------------------------------------------------------------------------------
def fits(evening: Evening, found: Timetable, new: Placed, number: int) -> bool:
    """Whether one more step can stand beside those placed; what follows it is placed already."""
    if number == evening.serving and (new.start < ARRIVE or new.end < evening.tiny.wanted):
        return False
    if new.step.is_seating and new.start < ARRIVE:
        return False
    after = new.step.since_served
    if after is not None and new.start < found[evening.serving].end + after.least:
        return False
    if any(found[then].start < new.end + gap.least for then, gap in evening.then[number]):
        return False
    out = evening.tiny.trip
    if out and "host" in new.hands and any(a < out[1] and out[0] < b for a, b in new.attended()):
        return False  # one thing at a time, in hours or out of them
    if any(_clash(new, other) for other in found.values()):
        return False
    everything = {**found, number: new}
    if not _somebody_minds_what_is_hot(evening, everything, number):
        return False
    rings = [(p.start, p.end) for p in everything.values() if p.step.ring]
    rings += [(p.end, stands) for n, p in everything.items() if (stands := _stands(evening, everything, n, "ring"))]
    oven = in_the_oven(evening, everything)
    return (
        all(sum(a <= at < b for a, b in rings) <= evening.tiny.rings for at, _ in rings)
        and all(sum(s.start <= each.start < s.end for s in oven) <= evening.tiny.shelves for each in oven)
        and not any(_one_dial(evening, one, other) for one, other in combinations(oven, 2))
    )


def _clash(one: Placed, other: Placed) -> bool:
    if {*one.hands} & {*other.hands}:
        spans = [(s, t) for s in one.attended() for t in other.attended()]
        if any(a < d and c < b for (a, b), (c, d) in spans):
            return True
    return one.step.pan and other.step.pan and one.start < other.end and other.start < one.end


def _stands(evening: Evening, found: Timetable, number: int, where: str = "") -> int | None:
    """Until when a step's result stands where it is kept (there, if named); None if it does not."""
    placed = found[number]
    then = [found[n].start for n in evening.takers[number]]
    right = placed.step.keeps_in == where if where else placed.step.keeps_in in TAKES_ROOM
    return max(then) if right and placed.kept and then and max(then) > placed.end else None


def _somebody_minds_what_is_hot(evening: Evening, found: Timetable, number: int) -> bool:
    """What is kept hot, in an oven or on a ring, has somebody at home; so has a cold oven that heats for it."""
    placed, until = found[number], _stands(evening, found, number)
    heats = HEATING[100] if placed.step.keeps_in == "oven" and not placed.step.oven else 0
    return until is None or within(evening.home(), placed.end - heats, until)


@dataclass(frozen=True)
class InOven:
    """A step, or what it made, in the oven at so many °C."""

    number: int
    start: int
    end: int
    celsius: int
    made: bool


def in_the_oven(evening: Evening, found: Timetable) -> list[InOven]:
    """What a step made goes in at once, or once the oven it was baked in has changed."""
    spells = [InOven(n, p.start, p.end, p.step.oven, made=False) for n, p in found.items() if p.step.oven]
    for n, placed in found.items():
        until = _stands(evening, found, n, "oven")
        ready = placed.end + CHANGE.get((placed.step.oven or 100, 100), 0)
        if until is not None and ready < until:
            spells.append(InOven(n, ready, until, 100, made=True))
    return spells


def _one_dial(evening: Evening, one: InOven, other: InOven) -> bool:
    """Whether both cannot be: at two heats, with no time to turn the dial. It is turned over what stays inside."""
    if one.number == other.number or one.celsius == other.celsius:
        return False
    first, second = sorted((one, other), key=lambda spell: (spell.start, spell.end))
    if not second.made:
        taken_up = evening.takers[first.number] == [second.number]
        at_once = any(
            n == second.number and gap.at_once and not gap.order_only for n, gap in evening.then[first.number]
        )
        if (taken_up if first.made else at_once) and second.start == first.end:
            return False
    return second.start < first.end + CHANGE[first.celsius, second.celsius]
