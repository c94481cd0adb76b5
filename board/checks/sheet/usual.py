"""Whether jobs to which the plan gives no time stand at their usual hour in the timetable. Pure."""

from collections import Counter
from collections.abc import Iterator
from datetime import datetime, timedelta

from board.base import words as shared
from board.checks.sheet.timed import Timed
from board.plan.resolve.absences import absences, free_of
from board.plan.snag import Snag, Weight
from board.sheet.run_sheet import Slot

GUESSED_HOURS = ("last-hours", "any-time-by-words")  # no hour is usual
_MOST_NAMED = 2  # of what had the hands


def jobs_stand_at_their_usual_hour(timed: Timed) -> list[Snag]:
    """time 12: a job that is sooner or later than is usual, since the hands had no time for it then. What is not done
    at all before it should be is among what the timetable gives up; what chills may chill for longer."""
    slots, found = timed.sheet.by_id(), []
    guessed = {id_ for each in timed.file.filled.assumed if each.kind in GUESSED_HOURS for id_ in each.tasks}
    for link in timed.file.filled.links:
        first, second = slots[link.first], slots[link.second]
        gap = int((second.start - first.end) / timedelta(minutes=1))
        least, most = (0 if link.firm else link.least), link.most
        if not link.usual or gap < 0 or first.lane == "fridge" or (least <= gap and (most is None or gap <= most)):
            continue
        of_job, other = (second, first) if link.firm else (first, second)
        if of_job.id in guessed:
            continue
        order = "after" if link.firm else "before"
        usual = f"{f'{shared.short(link.least)} to' if link.least else 'at most'} {shared.short(most or 0)} is usual"
        message = f"{of_job.name} stands {shared.short(gap)} {order} {other.name}; {usual}"
        near, far = timedelta(minutes=link.least), timedelta(minutes=most or 0) + (of_job.end - of_job.start)
        if link.firm:
            had = _had_the_hands(timed, of_job, first.end + near, first.end + far)
        else:
            had = _had_the_hands(timed, of_job, second.start - far, second.start - near)
        mend = f"{had}Free hands then, let somebody else do it, or leave it out."
        place = timed.file.places.of(timed.file.filled.tasks[of_job.id].node.loc)
        found.append(Snag("time 12", Weight.MIND, message, mend, place))
    return found


def _had_the_hands(timed: Timed, job: Slot, start: datetime, end: datetime) -> str:
    """What kept those who may do a job from it meanwhile, the longest first, as a sentence; empty if nothing did."""
    minutes = Counter[str]()
    for name, since, until in _taken(timed, job):
        minutes[name] += max(0, int((min(end, until) - max(start, since)) / timedelta(minutes=1)))
    named = [name for name, so_long in minutes.most_common() if so_long]
    if named:
        more = [f"{len(named) - _MOST_NAMED} more"] if len(named) > _MOST_NAMED else []
        return f"Then the hands are at: {', '.join([*named[:_MOST_NAMED], *more])}. "
    hours = (span for who in _who(timed, job) for span in free_of(timed.file.plan, who))
    return "" if any(since < end and start < until for since, until in hours) else "Nobody has hours then. "


def _taken(timed: Timed, job: Slot) -> Iterator[tuple[str, datetime, datetime]]:
    who = _who(timed, job)
    for slot in timed.sheet.slots:
        if slot.id != job.id:
            yield from ((slot.name, part.start, part.end) for part in slot.attended if part.who in who)
    for name in who:
        yield from ((each.what, each.start, each.end) for each in absences(timed.file.plan, name))


def _who(timed: Timed, job: Slot) -> list[str]:
    """Those who may do it."""
    work = timed.file.filled.tasks[job.id].work
    return list((work.who if work is not None else None) or timed.file.plan.hands)
