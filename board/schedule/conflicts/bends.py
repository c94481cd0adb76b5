"""What may bend in a timetable, one by one: a course late, something kept too long, work out of hours. Pure."""

from dataclasses import dataclass
from typing import Literal

from board.schedule.answer import Answer
from board.schedule.question import Question
from board.schedule.waits import end_of, way_of
from board.schedule.windows import allowed_starts

Kind = Literal["out-of-hours", "not-at-once", "late", "not-ready", "waits", "past-limit", "no-place"]

LEVEL: dict[Kind, int] = {  # lower ones are dearer, as the aims are ordered
    "out-of-hours": 0,
    "not-at-once": 0,
    "late": 1,
    "not-ready": 2,
    "waits": 2,
    "past-limit": 2,
    "no-place": 2,
}


@dataclass(frozen=True, slots=True)
class Bend:
    """One thing that bends. `index` is of a job (out-of-hours, no-place), a serving (late) or an order (the rest)."""

    kind: Kind
    index: int

    @property
    def level(self) -> int:
        return LEVEL[self.kind]


def amounts(question: Question, answer: Answer) -> dict[Bend, int]:
    """How far each thing bends in an answer, in minutes (hours and places: 1); what does not bend is left out."""
    found: dict[Bend, int] = {}
    for n, job in enumerate(question.jobs):
        way, who, start = way_of(question, answer, n), answer.who[n], answer.starts[n]
        hand = question.hands[who] if who is not None else None
        windows = allowed_starts(question, job, way, hand)
        found[Bend("out-of-hours", n)] = int(job.fixed is None and not any(a <= start < b for a, b in windows))
        found[Bend("no-place", n)] = int(not answer.kept[n])
    for n, serving in enumerate(question.servings):
        found[Bend("late", n)] = end_of(question, answer, serving.job) - serving.wanted
    for n, order in enumerate(question.orders):
        wait = answer.starts[order.second] - end_of(question, answer, order.first)
        hold = way_of(question, answer, order.first).hold
        limit = hold.limit if hold is not None else None
        if order.most is not None:
            found[Bend("not-at-once" if order.most == order.least else "waits", n)] = wait - order.most
        if not order.firm:
            found[Bend("not-ready", n)] = order.least - wait
        if limit is not None:
            found[Bend("past-limit", n)] = wait - (limit if answer.kept[order.first] else 0)
    return {bend: amount for bend, amount in found.items() if amount > 0}
