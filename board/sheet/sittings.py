"""What waits until a course is eaten, and for how long. Pure."""

from datetime import datetime, timedelta

from board.sheet.run_sheet import ORDER, CourseSlot, Dependency, Lasts, RunSheet, Slot


def sitting_wait(slot: Slot, course: CourseSlot) -> Dependency | None:
    """The wait of a slot for the guests over a course: of its clearing; after a standing course, of the sitting down or
    the next serving too. None where it does not wait for them."""
    kinds = ("clear", "seat", "serve") if course.standing else ("clear",)
    if slot.kind not in kinds:
        return None
    for wait in slot.waits:
        if (wait.after, wait.anchor, wait.reason) == (course.serve, "end", ORDER) and _is_for_eating(wait, course):
            return wait
    return None


def _is_for_eating(wait: Dependency, course: CourseSlot) -> bool:
    """A timetable worked out anew in mid-course has fewer minutes left to eat."""
    return wait.minutes > 0 or (course.eaten is not None and course.eaten.likely == 0)


def sitting(sheet: RunSheet, course: CourseSlot) -> Lasts:
    """How long the guests are planned to sit over a course, minutes; one figure where the plan said nothing."""
    if course.eaten is not None:
        return course.eaten
    wait = sitting_wait(sheet.by_id()[course.clear], course)
    minutes = wait.minutes if wait is not None else 0
    return Lasts(minutes, minutes, minutes)


def eaten_by(sheet: RunSheet, name: str, served: datetime) -> datetime:
    """When a course that goes out at a moment is likely eaten. Raises StopIteration for an unknown course."""
    course = next(each for each in sheet.courses if each.name == name)
    return served + timedelta(minutes=sitting(sheet, course).likely)
