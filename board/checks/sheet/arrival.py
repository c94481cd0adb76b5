"""Whether what waits for the guests, by its words, stands after they arrive. Pure."""

import re
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.checks.sheet.timed import Timed
from board.facts.phrases import folded
from board.plan.snag import Snag, Weight

ARRIVE = "guests-arrive"
_AFTER_THEM = re.compile(
    r"\b(?:after|once|as soon as) (?:the |all the |our |my )?(?:guests|everybody|everyone|people|they)(?: all)?"
    r"(?: have| are|ve| has| is)? (?:all )?(?:arrived?|arrives|come|comes|came|here|there)\b"
)


def what_waits_for_the_guests_does(timed: Timed) -> list[Snag]:
    """plan 19: a step or job `after the guests arrive`, by its words, that the timetable puts before they do."""
    slots, found = timed.sheet.by_id(), []
    arrive = slots[ARRIVE].start
    for id_, task in timed.file.filled.tasks.items():
        if task.work is None or id_ not in slots or slots[id_].start >= arrive:
            continue
        if _AFTER_THEM.search(folded(task.node.name)):
            begins = shared.clock(slots[id_].start.astimezone(ZoneInfo(timed.sheet.zone)))
            message = f"{task.node.name}: nothing else says that it waits for the guests, and it begins at {begins}"
            place = timed.file.places.of(task.node.loc)
            found.append(Snag("plan 19", Weight.MIND, message, f"Write `after: {slots[ARRIVE].name}` at it.", place))
    return found
