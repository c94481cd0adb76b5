"""What a timetable of a tiny plan is worth, aim by aim, and whether it can be at all.

Written from the README and the docstring of `aims.py`; nothing is shared with the timetable's own reckoning. Each aim
is a sum over steps and over what stands between two steps, and none of its terms is below nought. A further aim is
one more function in `AIMS`, in the order of `answer.AIMS`.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from tests.outside.tiny_plans import ARRIVE, CHANGE, HEATING, SERVE, Gap, Step, Tiny

GRID = 5
Span = tuple[int, int]


@dataclass(frozen=True)
class Placed:
    """A step's start, who does it, and whether its result has the place it is kept in."""

    step: Step
    start: int
    hand: str | None
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
        self.serving = len(tiny.steps)
        served = tuple(Gap(n) for n in tiny.last_steps())
        self.steps = [*tiny.steps, Step("serve", SERVE, "all", follows=served)]
        self.then: dict[int, list[tuple[int, Gap]]] = {n: [] for n in range(len(self.steps))}
        for n, step in enumerate(self.steps):
            for gap in step.follows:
                self.then[gap.step].append((n, gap))
        self.opens = min(a for a, _ in tiny.hours.values())
        reach = sum(s.minutes + sum(g.least for g in s.follows) for s in self.steps) + sum(
            max(HEATING.values()) for s in self.steps if s.oven
        )
        bounds = [b for s in self.steps for b in (s.not_before, s.not_after) if b is not None]
        first = min([self.opens, *bounds]) - reach
        last = max([tiny.wanted, *(b for _, b in tiny.hours.values()), *bounds]) + reach
        self.starts = range(first, last + 1, GRID)

    def choices(self, number: int) -> list["Placed"]:
        """Every way to place a step: its start, who does it, and whether its result gets its place."""
        step = self.steps[number]
        people = [None] if step.attended == "none" else [step.who] if step.who else list(self.tiny.hours)
        kept = (True, False) if step.keeps_on_ring else (True,)
        return [Placed(step, start, hand, k) for start in self.starts for hand in people for k in kept]

    def free(self, name: str) -> list[Span]:
        a, b = self.tiny.hours[name]
        away = self.tiny.away if name == "host" else None
        return [(a, min(b, away[0])), (max(a, away[1]), b)] if away else [(a, b)]

    def home(self) -> list[Span]:
        """When anybody is: stretches that touch are one."""
        spans: list[Span] = []
        for a, b in sorted(self.tiny.hours.values()):
            if spans and a <= spans[-1][1]:
                spans[-1] = (spans[-1][0], max(b, spans[-1][1]))
            else:
                spans.append((a, b))
        return spans


def within(spans: list[Span], start: int, end: int) -> bool:
    return any(a <= start and end <= b for a, b in spans)


def keeps_hours(evening: Evening, placed: Placed) -> bool:
    """All hands-on stretches in that person's hours; hot things, and the heating of a cold oven, with somebody home."""
    step, home = placed.step, evening.home()
    hands = all(within(evening.free(placed.hand or ""), a, b) for a, b in placed.attended())
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


# --- the aims, each from what is said of it; minutes. None grows smaller as more steps are placed --------------------
def hours(evening: Evening, found: Timetable) -> int:
    """Hands-on minutes of all that does not keep its hours (1 where there are none), and ten for each minute between
    what should follow at once."""
    over = [p for p in found.values() if not keeps_hours(evening, p)]
    apart = [wait - (gap.most or 0) for _, gap, wait in waits(evening, found) if gap.at_once]
    return sum(sum(b - a for a, b in p.attended()) or 1 for p in over) + 10 * sum(max(0, wait) for wait in apart)


def courses(evening: Evening, found: Timetable) -> int:
    """Minutes late, and four more for each beyond what may slip."""
    served = found.get(evening.serving)
    late = served.end - evening.tiny.wanted if served else 0
    return max(0, late) + 4 * max(0, late - evening.tiny.may_slip)


def keeps(evening: Evening, found: Timetable) -> int:
    """Minutes past a limit of keeping (none at all, and 30 more, without its place) or of waiting; and minutes that
    what should be ready for the guests is late for them."""
    total = 0
    for placed, gap, wait in waits(evening, found):
        total += max(0, wait - placed.step.keeps) if placed.kept else wait + 30
        if gap.most is not None and not gap.at_once:
            total += max(0, wait - gap.most)
    return total + sum(max(0, p.end - ARRIVE) for p in found.values() if p.step.is_job)


def freshness(evening: Evening, found: Timetable) -> int:
    """Minutes past its best."""
    best = [(p.step.best_within, wait) for p, _, wait in waits(evening, found)]
    return sum(max(0, wait - within) for within, wait in best if within is not None)


def company(evening: Evening, found: Timetable) -> int:
    """The host's hands-on minutes after the guests came, but for the serving and what they may stand by."""
    return sum(
        b - max(a, ARRIVE)
        for n, p in found.items()
        if p.hand == "host" and n != evening.serving and not p.step.shared
        for a, b in p.attended()
        if b > ARRIVE
    )


def day(evening: Evening, found: Timetable) -> int:
    """Hands-on minutes, anybody's, on the day itself."""
    return sum(b - a for p in found.values() for a, b in p.attended() if b > 0)


def busiest(evening: Evening, found: Timetable) -> int:
    """The host's stretches of work that lie, with any part, in the half hour before the one course is plated."""
    if evening.serving not in found:
        return 0
    plated = found[evening.serving].start
    work = [s for n, p in found.items() if n != evening.serving and p.hand == "host" for s in p.attended()]
    return sum(b - a for a, b in work if b > plated - 30 and a < plated)


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
    "courses": courses,
    "keeps": keeps,
    "freshness": freshness,
    "company": company,
    "day": day,
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
    if any(found[then].start < new.end + gap.least for then, gap in evening.then[number]):
        return False
    if any(_clash(evening, new, other) for other in found.values()):
        return False
    everything = {**found, number: new}
    taken = [(p.start, p.end) for p in everything.values() if p.step.ring]
    taken += [s for n, p in everything.items() if (s := _on_ring(evening, everything, n, p)) is not None]
    return all(sum(a <= at < b for a, b in taken) <= evening.tiny.rings for at, _ in taken) and all(
        sum(a <= at < b for a, b in _in_oven(everything)) <= evening.tiny.shelves for at, _ in _in_oven(everything)
    )


def _clash(evening: Evening, one: Placed, other: Placed) -> bool:
    if one.hand is not None and one.hand == other.hand:
        spans = [(s, t) for s in one.attended() for t in other.attended()]
        if any(a < d and c < b for (a, b), (c, d) in spans):
            return True
    if one.step.pan and other.step.pan and one.start < other.end and other.start < one.end:
        return True
    if one.step.oven and other.step.oven and one.step.oven != other.step.oven:
        first, second = sorted((one, other), key=lambda p: p.start)
        return second.start < first.end + _change(evening, first, second)
    return False


def _change(evening: Evening, first: Placed, second: Placed) -> int:
    """Minutes to turn the dial; none where the second takes the first over at once, food and all."""
    at_once = any(gap.at_once and evening.steps[gap.step] is first.step for gap in second.step.follows)
    if at_once and second.start == first.end:
        return 0
    return CHANGE[first.step.oven or 0, second.step.oven or 0]


def _on_ring(evening: Evening, found: Timetable, number: int, placed: Placed) -> Span | None:
    then = [found[n].start for n, _ in evening.then[number]]
    return (placed.end, max(then)) if placed.step.keeps_on_ring and placed.kept and then else None


def _in_oven(found: Timetable) -> list[Span]:
    return [(p.start, p.end) for p in found.values() if p.step.oven]
