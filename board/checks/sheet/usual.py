"""Whether jobs to which the plan gives no time stand at their usual hour in the timetable. Pure."""

from datetime import timedelta

from board.base import words as shared
from board.checks.sheet.timed import Timed
from board.plan.snag import Snag, Weight


def jobs_stand_at_their_usual_hour(timed: Timed) -> list[Snag]:
    """time 12: a job that is sooner or later than is usual, since the hands had no time for it then. What is not done
    at all before it should be is among what the timetable gives up; what chills may chill for longer."""
    slots, found = timed.sheet.by_id(), []
    for link in timed.file.filled.links:
        first, second = slots[link.first], slots[link.second]
        gap = int((second.start - first.end) / timedelta(minutes=1))
        least, most = (0 if link.firm else link.least), link.most
        if not link.usual or gap < 0 or first.lane == "fridge" or (least <= gap and (most is None or gap <= most)):
            continue
        of_job, other = (second, first) if link.firm else (first, second)
        order = "after" if link.firm else "before"
        usual = f"{f'{shared.short(link.least)} to' if link.least else 'at most'} {shared.short(most or 0)} is usual"
        message = f"{of_job.name} stands {shared.short(gap)} {order} {other.name}; {usual}"
        own = f"{order}: {other.name}, at most {shared.short(gap)}"
        mend = f"Give it a time of its own, as `{own}`, or free hands then."
        place = timed.file.places.of(timed.file.filled.tasks[of_job.id].node.loc)
        found.append(Snag("time 12", Weight.MIND, message, mend, place))
    return found
