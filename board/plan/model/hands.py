"""Who can work, and when."""

from typing import Annotated

from board.plan.model.part import PlanModel
from board.plan.phrases.phrase import Phrase
from board.plan.phrases.when import DayKey, DaySpan, Span, parse_day_span, parse_spans


class Hand(PlanModel):
    """A person who can work: their hours by day, and when they are away."""

    hours: dict[DayKey, Annotated[list[Span], Phrase(parse_spans, "17:30 - 22:00")]]
    away: dict[str, Annotated[DaySpan, Phrase(parse_day_span, "sat 17:40 - 18:10")]] = {}
