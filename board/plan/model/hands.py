"""Who can work, and when."""

from typing import Annotated

from board.plan.model.part import PlanModel, YesNo
from board.plan.phrases.away import Away, parse_away
from board.plan.phrases.phrase import Phrase
from board.plan.phrases.when import DayKey, Span, parse_spans


class Hand(PlanModel):
    """A person who can work: their hours by day, and when they are away, by the clock, by what happens or for how
    long. `hired`: comes to work, and does not sit at the table."""

    hours: dict[DayKey, Annotated[list[Span], Phrase(parse_spans, "17:30 - 22:00")]]
    hired: YesNo = False
    away: dict[str, Annotated[Away, Phrase(parse_away, "10 min from guests arrive")]] = {}
