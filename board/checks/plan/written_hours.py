"""Whether hours, and times away, can be meant as they are written. A timetable can be made all the same: mind."""

from collections.abc import Iterator
from datetime import timedelta

from board.plan.load import PlanFile
from board.plan.phrases.when import is_small_hours
from board.plan.places import Loc
from board.plan.resolve.absences import free_of
from board.plan.resolve.hours import day_of
from board.plan.snag import Snag, Weight


def stretches_end_after_they_begin(file: PlanFile) -> list[Snag]:
    """time 5: an interval that crosses midnight and passes the small hours; most likely its times are swapped."""
    found = []
    for start, end, loc in _stretches(file):
        if end > start or is_small_hours(end):
            continue
        if end == start:
            message = f"{start} - {end} begins and ends at the same time, so it is read as a whole day"
        else:
            message = f"{start} - {end} ends before it begins, so it is read as ending on the next day"
        mend = "Write the earlier time first; for work through the night, write two stretches, one under each day."
        found.append(Snag("time 5", Weight.MIND, message, mend, file.places.of(loc)))
    return found


def _stretches(file: PlanFile) -> Iterator[tuple[str, str, Loc]]:
    for name, hand in file.plan.hands.items():
        for day, spans in hand.hours.items():
            yield from ((span.start, span.end, ("hands", name, "hours", day, n)) for n, span in enumerate(spans))
        for what, away in hand.away.items():
            if away.start is not None and away.end is not None:
                yield away.start, away.end, ("hands", name, "away", what)


def hours_lie_before_the_event_is_over(file: PlanFile) -> list[Snag]:
    """time 6: hours on a day after the event, but for the small hours of the next."""
    found = []
    last = file.plan.date
    for name, hand in file.plan.hands.items():
        for word, spans in hand.hours.items():
            day = day_of(file.plan, word)
            night = day == last + timedelta(days=1) and all(is_small_hours(span.start) for span in spans)
            if day > last and spans and not night:
                message = f"{name} has hours on {day.isoformat()}, after the event on {last.isoformat()}"
                mend = "Check the day, or take the line out; hours past midnight are written `18:00 - 1:00`."
                place = file.places.of(("hands", name, "hours", word), key=True)
                found.append(Snag("time 6", Weight.MIND, message, mend, place))
    return found


def everybody_has_hours(file: PlanFile) -> list[Snag]:
    """time 7: a pair of hands with no hours on any day, or away for all of them."""
    found = []
    for name, hand in file.plan.hands.items():
        if not any(hand.hours.values()):
            message = f"{name} has no hours at all, so nothing can be given to them"
            mend = "Add hours, for example `hours: {on the day: '15:00 - 22:00'}`, or take them out of the hands."
            found.append(Snag("time 7", Weight.MIND, message, mend, file.places.of(("hands", name, "hours"))))
        elif not free_of(file.plan, name):
            message = f"{name} is away for all the hours they have, so nothing can be given to them"
            mend = "Shorten the time away, or give longer hours."
            found.append(Snag("time 7", Weight.MIND, message, mend, file.places.of(("hands", name, "away"))))
    return found


MOST_JOBS = 6  # named; the rest are counted


def unknown_jobs_have_a_time(file: PlanFile) -> list[Snag]:
    """time 13: jobs that are none of the usual ones, by their words, and to which the plan gives no time: when? One
    line about all of them; until it is answered they are put into the last hours before the guests come."""
    guessed = [each for each in file.filled.assumed if each.kind == "last-hours"]
    ids = [id_ for each in guessed for id_ in each.tasks]
    if not ids:
        return []
    names = [file.filled.tasks[id_].node.name for id_ in ids]
    more = [f"{len(names) - MOST_JOBS} more"] if len(names) > MOST_JOBS else []
    message = f"{', '.join([*names[:MOST_JOBS], *more])}: when? No time is given, and the words name no usual job"
    mend = (
        f"Write it, as `{{job: {names[0]}, before: 'guests arrive, at most 1 h'}}`, or with `after:`, `day:`. Until "
        "then it is taken to be in the last hours before the guests come."
    )
    place = file.places.of(file.filled.tasks[ids[0]].node.loc)
    return [Snag("time 13", Weight.ASK, message, mend, place)]
