"""Changes to who does what, and when they have time for it. Pure."""

from collections.abc import Container, Iterator
from dataclasses import dataclass, replace
from datetime import timedelta

from board.base import words as shared
from board.plan.edit.edits import AddHelper, DropDay, MoreHours, MoveAway, SetWho, StretchHours
from board.plan.model.hands import Hand
from board.plan.phrases.when import Day, Span, clock_of, instant, minute_of
from board.plan.resolve.hours import day_of
from board.plan.resolve.links import is_written
from board.schedule.conflicts import words
from board.schedule.conflicts.clashes import HANDS
from board.schedule.conflicts.proposal import Clashed, Proposal
from board.schedule.dependencies import end_of

# What is tried, and in which order: ours.
BEFORE = (10, 20, 30, 45, 60, 90, 120, 180, 240)  # minutes by which hours may begin sooner
AFTER = (10, 20, 30, 45, 60)  # and end later
EARLIEST = 7 * 60  # nobody is asked to begin before seven
EVENING, EVENINGS = 18 * 60, (30, 60, 90, 120, 180, 240)  # an evening begins at six, and lasts so many minutes
AWAY_EARLIER, AWAY_LATER = (15, 30, 45, 60, 90), (15, 30)
MOST_PEOPLE = 2  # of whom more hours are asked
WHO, AWAY, HOURS, ANOTHER_DAY, HELPER = 3, 4, 4, 8, 20  # weights
DAY_MINUTES = 24 * 60


@dataclass(frozen=True, slots=True)
class _ByTheClock:
    """A time away with a start and an end, by the clock of its day."""

    day: Day
    start: str
    end: str


def proposed(clashed: Clashed) -> Iterator[Proposal]:
    """Somebody else does it; it is done another day; there are more hours, or others; a helper comes."""
    if clashed.over_hands:
        yield from _somebody_else(clashed)
        yield from _away_at_another_time(clashed)
    yield from _another_day(clashed)
    yield from _longer(clashed)
    yield from _an_evening(clashed)
    if clashed.over_hands:
        yield from _a_helper(clashed)


def _somebody_else(clashed: Clashed) -> Iterator[Proposal]:
    """Another of the hands does a step that the plan gives to some of them only, and that one person can do."""
    everybody = range(len(clashed.problem.hands))
    over_hands = [taken.job for taken in clashed.clash.taken if taken.what == HANDS]
    for job in over_hands or clashed.jobs():
        mine, node = clashed.problem.jobs[job].hands, clashed.case.tasks[job].node
        if not is_written(node) or clashed.problem.jobs[job].crew > 1:
            continue
        minutes = sum(part.length for part in clashed.problem.jobs[job].ways[0].parts)
        for other in (hand for hand in everybody if hand not in mine):
            who = clashed.problem.hands[other].name
            what = words.way_who(who, clashed.name(job), [clashed.problem.hands[hand].name for hand in mine])
            yield Proposal((what,), (SetWho(node.loc, who),), WHO + minutes // 5, f"who {job} {who}", f"who {who}")


def _away_at_another_time(clashed: Clashed) -> Iterator[Proposal]:
    """What keeps somebody away before the guests come is moved; what is about the guests themselves stays."""
    plan = clashed.file.plan
    for name in clashed.people():
        for what, span in _by_the_clock(plan.hands[name]).items():
            start, end = minute_of(span.start), minute_of(span.end)
            if end <= start or instant(span.day.on(plan.date), span.end, clashed.zone) > clashed.file.filled.arrive:
                continue
            for minutes in (*(-each for each in AWAY_EARLIER), *AWAY_LATER):
                moved = start + minutes, end + minutes
                if moved[0] >= EARLIEST and _may_move(clashed, name, what, span, moved):
                    times = clock_of(moved[0]), clock_of(moved[1])
                    told = words.way_away(name, what, minutes, shared.from_to(*times))
                    weight = AWAY + abs(minutes) // 10
                    yield Proposal((told,), (MoveAway(name, what, *times),), weight, f"away {name} {what}")


def _by_the_clock(hand: Hand) -> dict[str, _ByTheClock]:
    """Times away that have a start and an end; those that go by what happens move with it."""
    return {
        what: _ByTheClock(away.day or Day(), away.start, away.end)
        for what, away in hand.away.items()
        if away.start is not None and away.end is not None
    }


def _may_move(clashed: Clashed, name: str, what: str, old: _ByTheClock, moved: tuple[int, int]) -> bool:
    """Whether it ends before the guests come and meets nothing else that keeps them away."""
    plan, day = clashed.file.plan, old.day.on(clashed.file.plan.date)
    if moved[1] >= DAY_MINUTES or instant(day, clock_of(moved[1]), clashed.zone) > clashed.file.filled.arrive:
        return False
    spans = _by_the_clock(plan.hands[name])
    others = [span for key, span in spans.items() if key != what and span.day.on(plan.date) == day]
    return all(minute_of(o.end) <= moved[0] or moved[1] <= minute_of(o.start) for o in others)


def _another_day(clashed: Clashed) -> Iterator[Proposal]:
    """A step that says how long it keeps is no longer held to its day or time; if need be, on an evening before."""
    for job in clashed.jobs():
        if is_held(clashed, job):
            whenever = at_another_time(clashed, job)
            yield whenever
            for evening in _an_evening(clashed):
                yield replace(whenever.and_(evening, 0), kin=whenever.family, grows=True)


def is_held(clashed: Clashed, job: int) -> bool:
    """Whether the host wrote a day or time for it, and how long it keeps."""
    node, work = clashed.case.tasks[job].node, clashed.case.tasks[job].work
    if work is None or work.keeps is None or not is_written(node):
        return False
    return bool(work.day or work.not_before or work.not_after)


def at_another_time(clashed: Clashed, job: int) -> Proposal:
    """It is no longer held to its day or time."""
    what, edit = words.way_another_day(clashed.name(job)), DropDay(clashed.case.tasks[job].node.loc)
    return Proposal((what,), (edit,), ANOTHER_DAY, f"day {job}", timed=((0, job),))


def _an_evening(clashed: Clashed) -> Iterator[Proposal]:
    """Hours on the last evening before on which somebody has none."""
    plan = clashed.file.plan
    for name in clashed.people()[:MOST_PEOPLE]:
        taken = {day_of(plan, word) for word in plan.hands[name].hours}
        days = next((days for days in (1, 2) if plan.date - timedelta(days=days) not in taken), None)
        for minutes in EVENINGS if days is not None else ():
            assert days is not None
            times = clock_of(EVENING), clock_of(EVENING + minutes)
            edit = MoreHours(name, words.day_key(days), f"{times[0]} - {times[1]}")
            what = words.way_evening(name, days, shared.from_to(*times))
            yield Proposal((what,), (edit,), ANOTHER_DAY + minutes // 4, f"evening {name}", grows=True)


def _longer(clashed: Clashed) -> Iterator[Proposal]:
    """Hours begin a little sooner or end a little later, at each edge they have, up to the next hours."""
    plan = clashed.file.plan
    for name in clashed.people()[:MOST_PEOPLE]:
        for word, spans in plan.hands[name].hours.items():
            days, edges = (plan.date - day_of(plan, word)).days, [_edges(span) for span in spans]
            for number, (start, end) in enumerate(edges):
                floor = max([EARLIEST, *(until for _, until in edges if until <= start)])
                for minutes in (minutes for minutes in BEFORE if start - minutes >= floor):
                    at = clock_of(start - minutes)
                    what, edit = words.way_sooner(name, days, at, minutes), StretchHours(name, word, number, start=at)
                    yield _hours(what, edit, minutes, f"sooner {number}")
                ceiling = min([start + DAY_MINUTES - 1, *(since for since, _ in edges if since >= end)])
                for minutes in (minutes for minutes in AFTER if end + minutes <= ceiling):
                    at = clock_of(end + minutes)
                    what, edit = words.way_longer(name, days, at, minutes), StretchHours(name, word, number, end=at)
                    yield _hours(what, edit, minutes, f"later {number}")


def _hours(what: str, edit: StretchHours, minutes: int, edge: str) -> Proposal:
    kin = f"hours {edit.hand} {edit.day}"
    return Proposal((what,), (edit,), HOURS + minutes // 4, f"{kin} {edge}", kin, grows=True)


def _edges(span: Span) -> tuple[int, int]:
    """In minutes from the day's midnight; an end at or before the start is on the next day."""
    start, end = minute_of(span.start), minute_of(span.end)
    return start, end if end > start else end + DAY_MINUTES


def _a_helper(clashed: Clashed) -> Iterator[Proposal]:
    """A helper for the hours around the clash, on its day; trying shows how little of them is enough."""
    jobs, solution = clashed.jobs(), clashed.case.solution
    first = clashed.local(min(solution.starts[job] for job in jobs) - 60)
    last = clashed.local(max(end_of(clashed.problem, solution, job) for job in jobs) + 30)
    days = (clashed.file.plan.date - first.date()).days
    end = last.strftime("%H:%M") if last.date() == first.date() else "23:59"
    name = unused(words.A_HELPER, clashed.file.plan.hands)
    edit = AddHelper(name, words.day_key(days), first.strftime("%H:%M"), end)
    yield Proposal((words.A_HELPER,), (edit,), HELPER, "helper")


def unused(name: str, taken: Container[str]) -> str:
    """The name, with a number after it if it is taken."""
    number, found = 2, name
    while found in taken:
        found, number = f"{name} {number}", number + 1
    return found
