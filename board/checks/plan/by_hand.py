"""Long work that is timed as if hands were on it all the time, though nothing says so. Pure."""

from board.base.words.times import short
from board.plan.load import PlanFile
from board.plan.snag import Snag, Weight


def long_work_says_its_hands(file: PlanFile) -> list[Snag]:
    """unsure 3: a step of 45 min or more in no oven, fridge or freezer, whose words tell neither that it stands by
    itself nor that it is work for hands, and without `attended`. It is timed with hands on it all the time, and that
    may be why a timetable gives something up. Or a step of 20 min or more that is both, as `mix the dough and let it
    rise`, on no heat: from 45 min on it is timed with 20 min of work. Our own limits."""
    found = []
    for each in file.filled.assumed:
        if each.kind not in ("hands-throughout", "hands-in-part"):
            continue
        for id_ in each.tasks:
            node, minutes = file.filled.tasks[id_].node, each.values["minutes"]
            assert isinstance(minutes, int)
            message = f"{node.name}: are hands on it all {short(minutes)}? It is timed as if they were"
            mend = "Write `attended: 5 min at the start` if it goes by itself from there, else `attended: all`."
            if isinstance(work := each.values.get("work"), int):
                message = f"{node.name}: how much of its {short(minutes)} is work? It is timed with {short(work)} of it"
                mend = "Make two steps of it, or write `attended: 10 min at the start` with your own minutes."
            found.append(Snag("unsure 3", Weight.ASK, message, mend, file.places.of((*node.loc, "step"))))
    return found
