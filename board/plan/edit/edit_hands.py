"""More hands, other hours for the hands in the plan, and who does what. All clock times are 'HH:MM'."""

import re
from dataclasses import dataclass
from typing import Any

from board.plan.edit import words
from board.plan.edit.edit import Edit, written
from board.plan.edit.save import Append, CannotEdit, Change, Put
from board.plan.load import PlanFile
from board.plan.model.model import Plan
from board.plan.phrases.when import Span, minute_of, parse_clock, parse_span
from board.plan.places import Loc, follow
from board.plan.resolve.hours import day_of

_DASH = re.compile(r"\s*(?:–|-|\bto\b)\s*")
_CLOCK = r"\d{1,2}(?::\d{2})?(?:\s*[ap]\.?m\.?)?"
_CLOCKS = re.compile(rf"{_CLOCK}{_DASH.pattern}{_CLOCK}\s*$", re.IGNORECASE)
_DAY_MINUTES = 24 * 60


@dataclass(frozen=True)
class AddHelper(Edit):
    """Adds a person to the hands, hired, with one span of hours. Refused if the name is taken."""

    name: str
    day: str
    start: str
    end: str

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        if self.name in file.plan.hands:
            return CannotEdit(words.edit_hands_there(self.name))
        return [Put(("hands", self.name), {"hours": {self.day: f"{self.start} - {self.end}"}, "hired": "yes"})]


@dataclass(frozen=True)
class StretchHours(Edit):
    """Sets the edges of one stretch of a day's hours, counted from 0 as written. Refused for a stretch that is not
    there, or if nothing would change."""

    hand: str
    day: str
    number: int
    start: str | None = None
    end: str | None = None

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        if (problem := _unknown(file.plan, self.hand, self.day, self.start or "0:00", self.end or "0:00")) is not None:
            return problem
        days = _same_day(file.plan, self.hand, self.day)
        word = self.day if self.day in days else next(iter(days), self.day)
        spans = file.plan.hands[self.hand].hours.get(word, [])
        if not 0 <= self.number < len(spans):
            return CannotEdit(words.edit_no_stretch(self.hand, self.day))
        span = spans[self.number]
        start, end = (parse_clock(new) if new else old for new, old in ((self.start, span.start), (self.end, span.end)))
        if (start, end) == (span.start, span.end):
            return CannotEdit(words.edit_hours_covered(self.hand, self.day, f"{start} - {end}"))
        return _put_span(("hands", self.hand, "hours", word), self.number, span, start, end, data)


@dataclass(frozen=True)
class MoveAway(Edit):
    """Moves a time somebody is away, by its name, to other clock times of the same day. Refused for an unknown name, or
    if nothing would change."""

    hand: str
    what: str
    start: str
    end: str

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        if self.hand not in file.plan.hands:
            return CannotEdit(words.edit_nobody(self.hand))
        span = file.plan.hands[self.hand].away.get(self.what)
        if span is None or span.start is None:
            return CannotEdit(words.edit_no_away(self.hand, self.what))
        if (span.start, span.end) == (self.start, self.end):
            return CannotEdit(words.edit_away_there(self.hand, self.what, self.start))
        loc: Loc = ("hands", self.hand, "away", self.what)
        said = data["hands"][self.hand]["away"][self.what]
        if isinstance(said, dict):
            return [Put((*loc, "start"), self.start), Put((*loc, "end"), self.end)]
        clocks = _CLOCKS.search(str(said))
        day = str(said)[: clocks.start()] if clocks is not None else ""
        return [Put(loc, f"{day}{self.start} - {self.end}")]


@dataclass(frozen=True)
class SetWho(Edit):
    """Says who does the step or job at a path: one of the hands. Refused for anybody else, for a path without work, and
    if nothing would change."""

    loc: Loc
    who: str

    def changes(self, file: PlanFile, data: Any) -> list[Change] | CannotEdit:
        if self.who not in file.plan.hands:
            return CannotEdit(words.edit_nobody(self.who))
        loc, work = written(data, self.loc)
        if isinstance(work, str):  # a job written on one line
            return [Put(loc, {"job": work, "who": self.who})]
        if not isinstance(work, dict):
            return CannotEdit(words.EDIT_NO_STEP)
        if work.get("who") in (self.who, [self.who]):
            return CannotEdit(words.edit_does_it(self.who))
        return [Put((*loc, "who"), self.who)]


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


def _put_span(loc: Loc, number: int, old: Span, start: str, end: str, data: Any) -> list[Change]:
    """The changes that set a stretch of a day's hours; an edge that stays is left as written."""
    said = follow(data, loc)
    if isinstance(said, list):
        edges = (("start", old.start, start), ("end", old.end, end))
        return [Put((*loc, number, key), new) for key, was, new in edges if new != was]
    pieces = str(said).split(",")
    text = pieces[number].strip()
    lead = pieces[number][: len(pieces[number]) - len(pieces[number].lstrip())]
    dash = _DASH.search(text)
    assert dash is not None  # it was read as a stretch
    first = text[: dash.start()] if start == old.start else start
    last = text[dash.end() :] if end == old.end else end
    pieces[number] = lead + first + dash.group() + last
    return [Put(loc, ",".join(pieces))]


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
