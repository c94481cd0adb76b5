"""More hands, and more hours for the hands in the plan. All clock times are 'HH:MM'."""

import re
from dataclasses import dataclass
from typing import Any

from board.plan.edit import words
from board.plan.edit.edit import Edit
from board.plan.edit.save import Append, CannotEdit, Change, Put
from board.plan.load import PlanFile
from board.plan.model.model import Plan
from board.plan.phrases.when import Span, minute_of, parse_clock, parse_span
from board.plan.places import Loc
from board.plan.resolve.hours import day_of

_DASH = re.compile(r"\s*(?:–|-|\bto\b)\s*")
_DAY_MINUTES = 24 * 60


@dataclass(frozen=True)
class AddHelper(Edit):
    """Adds a person to the hands, with one span of hours. Refused if the name is taken."""

    name: str
    day: str
    start: str
    end: str

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        if self.name in file.plan.hands:
            return CannotEdit(words.edit_hands_there(self.name))
        return [Put(("hands", self.name), {"hours": {self.day: f"{self.start} - {self.end}"}})]


@dataclass(frozen=True)
class EarlierHours(Edit):
    """Lets the first hours of a day begin at `start`. On a day without hours they last until `end`, or else until the
    latest end the person has on any other day. Refused if they begin by then already, or if no end is known."""

    hand: str
    day: str
    start: str
    end: str | None = None

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        if (problem := _unknown(file.plan, self.hand, self.day, self.start, self.end or "0:00")) is not None:
            return problem
        hours = file.plan.hands[self.hand].hours
        spans = [(span.start, word, n) for word in _same_day(file.plan, self.hand, self.day)
                 for n, span in enumerate(hours[word])]  # fmt: skip
        if spans:
            first, word, number = min(spans)
            if first <= parse_clock(self.start):
                return CannotEdit(words.edit_hours_already(self.hand, self.day, first))
            return [_begin_at(self.hand, word, number, self.start, data)]
        end = self.end or _latest_end([span for day in hours.values() for span in day], self.start)
        if end is None:
            return CannotEdit(words.edit_until_when(self.hand, self.day))
        return [Put(("hands", self.hand, "hours", self.day), f"{self.start} - {end}")]


@dataclass(frozen=True)
class MoreHours(Edit):
    """Adds a span of hours to a day: `17:00 - 22:00`. Refused if the hours cover it already."""

    hand: str
    day: str
    span: str

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        try:
            new = Span.model_validate(parse_span(self.span))
        except ValueError as wrong:
            return CannotEdit(words.edit_would_spoil(_said(wrong)))
        if (problem := _unknown(file.plan, self.hand, self.day)) is not None:
            return problem
        hours = file.plan.hands[self.hand].hours
        days = _same_day(file.plan, self.hand, self.day)
        if any(_covers(span, new) for word in days for span in hours[word]):
            return CannotEdit(words.edit_hours_covered(self.hand, self.day, self.span))
        if not days:
            return [Put(("hands", self.hand, "hours", self.day), self.span)]
        loc: Loc = ("hands", self.hand, "hours", days[0])
        said = data["hands"][self.hand]["hours"][days[0]]
        if isinstance(said, list):
            return [Append(loc, {"start": new.start, "end": new.end})]
        later = [n for n, span in enumerate(hours[days[0]]) if span.start > new.start]
        return [Put(loc, _with_span(said, later[0] if later else len(hours[days[0]]), self.span))]


def _unknown(plan: Plan, hand: str, day: str, *clocks: str) -> CannotEdit | None:
    """The refusal for an unknown person, day or clock time; None if all are known."""
    if hand not in plan.hands:
        return CannotEdit(words.edit_nobody(hand))
    try:
        day_of(plan, day)
        for clock in clocks:
            parse_clock(clock)
    except ValueError as wrong:
        return CannotEdit(words.edit_would_spoil(_said(wrong)))
    return None


def _said(wrong: ValueError) -> str:
    return str(wrong).partition("; ")[0]


def _same_day(plan: Plan, hand: str, day: str) -> list[str]:
    """The keys in a person's hours that mean this day, in whichever words."""
    wanted = day_of(plan, day)
    return [word for word in plan.hands[hand].hours if day_of(plan, word) == wanted]


def _begin_at(hand: str, word: str, number: int, start: str, data: Any) -> Change:
    loc: Loc = ("hands", hand, "hours", word)
    said = data["hands"][hand]["hours"][word]
    if isinstance(said, list):
        return Put((*loc, number, "start"), start)
    pieces = str(said).split(",")
    old = pieces[number]
    lead = old[: len(old) - len(old.lstrip())]
    dash = _DASH.search(old.strip())
    pieces[number] = lead + start + (old.strip()[dash.start() :] if dash else "")
    return Put(loc, ",".join(pieces))


def _with_span(said: str, before: int, span: str) -> str:
    """`9:30 - 13:00, 14:00 - 23:00` with another span inserted; the others stay as written."""
    pieces = said.split(",")
    if before == 0:
        return ",".join([span, " " + pieces[0].lstrip(), *pieces[1:]])
    return ",".join([*pieces[:before], " " + span, *pieces[before:]])


def _minutes(span: Span) -> tuple[int, int]:
    """Start and end in minutes from the day's midnight. An end at or before the start is on the next day."""
    start, end = (minute_of(clock) for clock in (span.start, span.end))
    return start, end if end > start else end + _DAY_MINUTES


def _covers(span: Span, other: Span) -> bool:
    (start, end), (first, last) = _minutes(span), _minutes(other)
    return start <= first and last <= end


def _latest_end(spans: list[Span], start: str) -> str | None:
    """The clock time of the latest end; None if it is not after the start."""
    latest = max(spans, key=lambda span: _minutes(span)[1], default=None)
    clock = parse_clock(start)
    if latest is None or _minutes(latest)[1] <= minute_of(clock):
        return None
    return latest.end
