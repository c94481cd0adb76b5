"""Whether each piece of work fits the times it is given, and into anybody's hours at all. The timetable bends where
it does not: mind.
"""

from collections.abc import Collection
from datetime import datetime

from board.plan.load import PlanFile
from board.plan.model.model import Plan
from board.plan.phrases.durations import short
from board.plan.places import Loc
from board.plan.resolve.absences import free_of
from board.plan.resolve.assume import FilledWay, Task
from board.plan.resolve.given_time import ALWAYS, given_time
from board.plan.resolve.hours import Interval
from board.plan.snag import Snag, Weight


def work_fits_the_times_it_is_given(file: PlanFile) -> list[Snag]:
    """time 10: `day`, `not before` and `not after` leave less time than the work takes."""
    found = []
    for task in file.filled.tasks.values():
        if task.work is None:
            continue
        first, last = given_time(file.plan, task.work)
        takes, there = min(way.takes.likely for way in task.ways), _minutes(first, last)
        if there < takes:
            left = f"only {short(there)} lie" if there > 0 else "no time lies"
            message = f"{task.node.name} takes {short(takes)}, and {left} between the times it is given"
            mend = "Move `not before` or `not after` apart, or change its day."
            place = file.places.of(_first_of(file, task, "not after", "not before", "day"), key=True)
            found.append(Snag("time 10", Weight.MIND, message, mend, place))
    return found


def work_fits_somebodys_hours(file: PlanFile) -> list[Snag]:
    """time 8: hands-on work longer than any interval of hours it may lie in. time 9: nobody who may do it has hours
    then."""
    plan = file.plan
    hours = {name: free_of(plan, name) for name in plan.hands}
    found = []
    for task in file.filled.tasks.values():
        piece = min(_longest_piece(way) for way in task.ways)
        if task.work is None or not piece or not _longest(given_time(plan, task.work), hours, plan.hands):
            continue  # where nobody at all has hours then, another check says so
        if _minutes(*given_time(plan, task.work)) < min(way.takes.likely for way in task.ways):
            continue  # and so it does of too little time
        longest = _longest(given_time(plan, task.work), hours, task.work.who or plan.hands)
        if not longest:
            found.append(_nobody(file, task, task.work.who or []))
        elif longest < piece:
            found.append(_too_long(file, task, piece, longest))
    return found


def _longest_piece(way: FilledWay) -> int:
    """Minutes of the longest interval that needs hands."""
    minutes, attended = way.takes.likely, way.attended
    return minutes if attended.whole else min(minutes, max(attended.start, attended.end, attended.look))


def _longest(given: Interval, hours: dict[str, list[Interval]], who: Collection[str]) -> int:
    """Minutes of the longest stretch of hours of these people within a time; 0 where there is none."""
    cut = [(max(start, given[0]), min(end, given[1])) for name in who for start, end in hours[name]]
    return max([0, *(_minutes(start, end) for start, end in cut)])


def _minutes(start: datetime, end: datetime) -> int:
    return round((end - start).total_seconds() / 60)


def _then(plan: Plan, task: Task) -> str:
    return "" if given_time(plan, task.work) == ALWAYS else " in the time it is given"


def _nobody(file: PlanFile, task: Task, who: list[str]) -> Snag:
    message = f"{task.node.name} is only for {' or '.join(who)}, and they have no hours{_then(file.plan, task)}"
    mend = "Add hours for them then, name somebody else, or change when it is done."
    return Snag("time 9", Weight.MIND, message, mend, file.places.of(_first_of(file, task, "who")))


def _too_long(file: PlanFile, task: Task, piece: int, longest: int) -> Snag:
    who = " or ".join(task.work.who) if task.work and task.work.who else "anybody"
    message = (
        f"{task.node.name} needs hands for {short(piece)} on end, and the longest stretch of hours {who} has"
        f"{_then(file.plan, task)} is {short(longest)}"
    )
    mend = "Give longer hours, make two steps of it, or say with `attended:` when it needs no hands."
    return Snag("time 8", Weight.MIND, message, mend, file.places.of(_first_of(file, task, "takes")))


def _first_of(file: PlanFile, task: Task, *keys: str) -> Loc:
    """The path of the first of these keys that the work has in the file; else of the work itself."""
    paths: list[Loc] = [(*task.node.loc, key) for key in keys]
    return next((path for path in paths if path in file.places.values), task.node.loc)
