"""Whether a sheet tells who sits, and for how long nobody gets up, as the plan has it. Part of `validate`."""

from collections.abc import Iterator

from board.plan.load import PlanFile
from board.plan.model.courses import Course
from board.plan.resolve.assume import CourseWanted, Task
from board.sheet.run_sheet import RunSheet

HOT, OTHER = 12, 8  # minutes, where the plan says none
LUKEWARM = 60  # minutes in the room after which food is not meant to be hot


def table_is_as_planned(plan_file: PlanFile, sheet: RunSheet) -> Iterator[str]:
    """A sentence for each hand told to sit that is hired, or the other way about, and each stretch that is wrong."""
    hired = {name for name, hand in plan_file.plan.hands.items() if hand.hired}
    for name in sorted(hired ^ set(sheet.hired)):
        yield f"{name} is told {'not ' if name in sheet.hired else ''}to sit at the table, unlike in the plan"
    nobody = hired == set(plan_file.plan.hands)
    for told, wanted, written in zip(sheet.courses, plan_file.filled.courses, plan_file.plan.courses, strict=False):
        given = written.sit if written.sit is not None else HOT if _is_hot(plan_file, wanted, written) else OTHER
        asked = 0 if written.standing or nobody else min(given, wanted.eaten)
        if told.stretch != asked:
            yield f"{told.name} is told to be sat over for {told.stretch} min, and is for {asked}"


def _is_hot(plan_file: PlanFile, wanted: CourseWanted, written: Course) -> bool:
    """Whether the heat of any of its steps lasts till it is served: it goes on from one to the next till one cools."""
    eaten = {d.dish for d in written.dishes if d.ingredients or "ingredients" not in d.model_fields_set}
    own = {
        id_: task
        for id_, task in plan_file.filled.tasks.items()
        if task.node.course == written.course and task.node.dish in eaten and not _goes_cold(task)
    }
    soon = [(link.first, link.second) for link in plan_file.filled.taken_up if link.least < LUKEWARM]
    hot, before = {id_ for id_, task in own.items() if _is_heated(task)}, set[str]()
    while hot != before:
        before = set(hot)
        hot |= {second for first, second in soon if first in hot and second in own}
    return any(first in hot and second == wanted.serve for first, second in soon)


def _is_heated(task: Task) -> bool:
    kept = task.work.keeps if task.work else None
    return task.ways[0].where.on_heat or (kept is not None and kept.where.hot)


def _goes_cold(task: Task) -> bool:
    """Whether what a step makes is cold when it is taken up: it cools, or stands for long and is not best soon."""
    on, kept = task.ways[0].where, task.work.keeps if task.work else None
    if kept is None:
        return on.place in ("fridge", "freezer") or (task.work is not None and task.work.cools is not None)
    if kept.where.hot:
        return False
    stands = kept.where.place in ("fridge", "freezer") or kept.minutes > LUKEWARM
    best = task.work.best_within if task.work else None
    best_soon = on.on_heat and best is not None and best <= LUKEWARM
    cools = not on.on_heat and (
        on.place in ("fridge", "freezer") or (task.work is not None and task.work.cools is not None)
    )
    return cools or (stands and not best_soon)
