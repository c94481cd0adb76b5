"""Whether a question may leave out what makes food safe."""

from board.checks.raw_food import dishes, heats
from board.plan.load import PlanFile
from board.plan.resolve.assume import Task
from board.plan.snag import About, Snag, Weight


def nothing_safe_hangs_on_a_question(file: PlanFile) -> list[Snag]:
    """food 32: a step with `decide:` cooks raw food, has a core temperature, reheats, cools, thaws, washes or puts
    away: on a no it is left out, and all that counts on it fails. Our own rule."""
    cooks = {task.node.id for work in dishes(file) if work.raw for task in work.tasks if heats(task)}
    found = []
    for id_, task in file.filled.tasks.items():
        if task.work is not None and task.work.decide and (id_ in cooks or _matters(task)):
            message = f"{task.node.name}: food is safe only once this is done, and `decide` may leave it out"
            mend = "Take `decide` away, or make a step of its own of what may be left out."
            place = file.places.of((*task.node.loc, "decide"))
            found.append(Snag("food 32", Weight.STOP, message, mend, place, safety=True, about=About((id_,))))
    return found


def _matters(task: Task) -> bool:
    work = task.work
    assert work is not None
    said = (work.cooks, work.cools, work.thaws, work.washes, work.puts_away)
    return task.care.core is not None or task.care.reheats or any(said)
