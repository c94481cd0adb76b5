"""Who sits at the table, and for how long nobody of them gets up once a course is served. Pure."""

from collections.abc import Mapping, Sequence
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
    makers: dict[str, list[str]] = {}  # whose results are taken up soon after they are done
    for link in links:
        if link.least < COLD_AFTER_MINUTES and link.first in own:
            makers.setdefault(link.second, []).append(link.first)
    waiting = list(makers.get(serve_id(course.course), []))
    seen: set[str] = set()
    while waiting:
        id_ = waiting.pop()
        if id_ in seen:
            continue
        seen.add(id_)
        hot = _comes_hot(own[id_])
        if hot:
            return True
        if hot is None:
            waiting += makers.get(id_, [])
    return False


def _comes_hot(task: "Task") -> bool | None:
    """None: as what it takes up."""
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
    return None
