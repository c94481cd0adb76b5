"""Who sits at the table, and for how long nobody of them gets up once a course is served. Pure."""

from collections.abc import Iterator, Mapping, Sequence
from typing import TYPE_CHECKING

from board.facts.sitting import SIT_HOT_MINUTES, SIT_MINUTES
from board.plan.model.courses import Course
from board.plan.model.model import Plan
from board.plan.resolve.course_times import eaten_minutes
from board.plan.resolve.nodes import Link, serve_id

if TYPE_CHECKING:
    from board.plan.resolve.assume import Task

COLD_AFTER_MINUTES = 60  # what stands in the room for longer is not meant to be eaten hot; ours


def sitters(plan: Plan) -> tuple[str, ...]:
    """All pairs of hands but the hired ones, as named in the plan."""
    return tuple(name for name, hand in plan.hands.items() if not hand.hired)


def sit_minutes(plan: Plan, course: Course, *, hot: bool) -> int:
    """Minutes from its serving; never longer than it is eaten. None where it is eaten standing, or nobody sits."""
    if course.standing or not sitters(plan):
        return 0
    usual = SIT_HOT_MINUTES if hot else SIT_MINUTES
    return min(usual if course.sit is None else course.sit, eaten_minutes(course))


def is_hot(course: Course, tasks: Mapping[str, "Task"], links: Sequence[Link]) -> bool:
    """Whether anything that is eaten comes to the table hot: heated last, and neither cooled nor left to stand."""
    eaten = {dish.dish for dish in course.dishes if dish.ingredients or "ingredients" not in dish.model_fields_set}
    own = {id_: task for id_, task in tasks.items() if task.node.course == course.course and task.node.dish in eaten}
    return any(_comes_hot(last, own, links) for last in _before(serve_id(course.course), own, links))


def _before(id_: str, own: Mapping[str, "Task"], links: Sequence[Link]) -> Iterator[str]:
    """What is taken up soon after it is done."""
    return (k.first for k in links if k.second == id_ and k.least < COLD_AFTER_MINUTES and k.first in own)


def _comes_hot(id_: str, own: Mapping[str, "Task"], links: Sequence[Link]) -> bool:
    task = own[id_]
    on, work = task.ways[0].where, task.work
    keeps = work.keeps if work is not None else None
    if keeps is not None and keeps.where.hot:
        return True
    if keeps is not None and (keeps.where.place in ("fridge", "freezer") or keeps.minutes > COLD_AFTER_MINUTES):
        best = work.best_within if work is not None else None  # as written, for it is not assumed of what is cold
        return on.on_heat and best is not None and best <= COLD_AFTER_MINUTES
    if on.on_heat:
        return True
    if on.place in ("fridge", "freezer") or (work is not None and work.cools is not None):
        return False
    return any(_comes_hot(each, own, links) for each in _before(id_, own, links))
