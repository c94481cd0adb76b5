"""What is best eaten at once, and may stand while a step is done whose words do not say that it takes it up: ask."""

from datetime import timedelta

from board.checks.sheet.timed import Timed
from board.facts.keeping import PRACTICE
from board.plan.phrases.durations import short
from board.plan.resolve.beside import Doubt, doubts
from board.plan.resolve.links import labels
from board.plan.snag import Snag, Weight

MINUTE = timedelta(minutes=1)


def what_is_eaten_at_once_waits_for_nothing(timed: Timed) -> list[Snag]:
    """keeping 4: a step's words do not say whether it goes on with what the one before made, which is best eaten at
    once, or is another part of the dish beside it; and beside it, that would stand longer than is usual.

    Source: common practice, no source."""
    filled = timed.file.filled
    nodes = {id_: task.node for id_, task in filled.tasks.items()}
    return [
        snag for doubt in doubts(timed.file.plan, nodes, filled.links) if (snag := _asked(timed, doubt)) is not None
    ]


def _asked(timed: Timed, doubt: Doubt) -> Snag | None:
    slots = timed.sheet.by_id()
    stands = max(((slots[id_].start - slots[doubt.first].end) // MINUTE for id_ in doubt.then), default=0)
    if stands <= doubt.within:
        return None
    names = labels(each.node for each in timed.file.filled.tasks.values())
    first, second = names[doubt.first], names[doubt.second]
    message = (
        f"does {second} go on with {first}, or is it done beside it? Beside it, that would stand {short(stands)} until "
        f"{names[doubt.then[-1]]}, and is to be eaten within {short(doubt.within)}"
    )
    mend = (
        f"If it is beside it, write `after: nothing` at {second}; if it goes on with it, name in its words what it is."
    )
    place = timed.file.places.of(timed.file.filled.tasks[doubt.second].node.loc)
    return Snag("keeping 4", Weight.ASK, message, mend, place, source=PRACTICE)
