"""Changes to when courses are served, and to what is in them. Pure."""

import math
from collections.abc import Iterator
from datetime import timedelta

from board.base import words as shared
from board.plan.edit.edits import BuyDish, DropDish, Edit, PushCourse, SetGap
from board.plan.model.courses import Dish
from board.plan.resolve.assume import CourseWanted
from board.plan.resolve.links import name_key
from board.schedule.conflicts import words
from board.schedule.conflicts.proposal import Clashed, Proposal
from board.schedule.dependencies import end_of

# What is tried, and in which order: ours.
SOONER = (5, 10, 15, 20, 30)  # minutes a course may be served before it was wanted
LATER = (0, 5, 10, 15, 25, 40, 55)  # and after: beyond the next five, or beyond when a late one goes out anyway
ROUND = 5  # minutes; nobody is asked to the table at 19:37
BOUGHT = 5  # minutes to plate what was bought ready; common practice, no source
EARLY, LATE, BUY, DROP = 6, 20, 45, 60  # weights


def proposed(clashed: Clashed) -> Iterator[Proposal]:
    """A course goes out sooner or later, or does without a dish."""
    late = clashed.late_course()
    for number, course in clashed.courses():
        yield from _later(clashed, number, course)
        if course.name != late:
            yield from _sooner(clashed, number, course)
        elif number:
            yield from _sooner(clashed, number - 1, clashed.file.filled.courses[number - 1])
    yield from _without_a_dish(clashed)


def _sooner(clashed: Clashed, number: int, course: CourseWanted) -> Iterator[Proposal]:
    """Not before the guests are there, nor before the course before is eaten; the courses after stay where they are."""
    floor = clashed.file.filled.arrive
    if number:
        before = clashed.file.filled.courses[number - 1]
        floor = before.wanted + timedelta(minutes=before.eaten)
    for minutes in SOONER:
        if course.wanted - timedelta(minutes=minutes) >= floor:
            edits = (_moved(clashed, number, course, -minutes), *_staying(clashed, number, course, minutes))
            at = clashed.clock(course.wanted - timedelta(minutes=minutes))
            what = words.way_serve_sooner(course.name, minutes, at)
            yield Proposal((what,), edits, EARLY + minutes, f"serve sooner {course.name}")


def _later(clashed: Clashed, number: int, course: CourseWanted) -> Iterator[Proposal]:
    """A late course from when it goes out anyway; what is wanted so long after it follows."""
    least = ROUND
    if course.name == clashed.late_course():
        served = end_of(clashed.problem, clashed.case.solution, clashed.problem.servings[number].job)
        late = served - clashed.problem.servings[number].wanted
        least = math.ceil(late / ROUND) * ROUND
    for minutes in (least + more for more in LATER):
        at = clashed.clock(course.wanted + timedelta(minutes=minutes))
        edit = _moved(clashed, number, course, minutes)
        what = words.way_serve_later(course.name, minutes, at)
        yield Proposal((what,), (edit,), LATE + minutes, f"serve later {course.name}")


def _moved(clashed: Clashed, number: int, course: CourseWanted, minutes: int) -> Edit:
    """The edit that moves a course by so many minutes; one wanted so long after something stays written so."""
    after = clashed.file.plan.courses[number].at.after
    if after is not None and after.minutes + minutes > 0:
        return SetGap(course.name, after.minutes + minutes)
    at = (course.wanted + timedelta(minutes=minutes)).astimezone(clashed.zone)
    return PushCourse(course.name, shared.bare_clock(at))


def _staying(clashed: Clashed, number: int, course: CourseWanted, minutes: int) -> Iterator[Edit]:
    """The edits by which the courses that are wanted so long after it stay at their times."""
    for n, other in enumerate(clashed.file.plan.courses):
        after = other.at.after
        if after is None:
            continue
        follows = n == number + 1 if after.course_before else name_key(after.course or "") == name_key(course.name)
        if follows:
            yield SetGap(other.course, after.minutes + minutes)


def _without_a_dish(clashed: Clashed) -> Iterator[Proposal]:
    tasks = clashed.case.tasks
    dishes = dict.fromkeys((n.course, n.dish) for job in clashed.jobs() if (n := tasks[job].node).dish)
    for course, dish in dishes:
        assert course is not None  # every dish is in a course
        assert dish is not None
        if _is_eaten(clashed, course, dish):
            yield Proposal((words.way_buy(dish),), (BuyDish(course, dish, BOUGHT),), BUY, f"buy {dish}")
            yield Proposal((words.way_drop(dish),), (DropDish(course, dish),), DROP, f"drop {dish}")


def _is_eaten(clashed: Clashed, course: str, dish: str) -> bool:
    """`ingredients: nothing` stands for what nobody eats: warm plates."""
    dishes = (d for c in clashed.file.plan.courses if name_key(c.course) == name_key(course) for d in c.dishes)
    found: Dish | None = next((d for d in dishes if name_key(d.dish) == name_key(dish)), None)
    return found is not None and bool(found.ingredients or "ingredients" not in found.model_fields_set)
