"""How the evening went, on one page: lines of text with tones, for a given width, on the board and on paper. Pure.

A chart has one row for each course, and from `DETAILED` cells on also for each step: a bar for the plan, marks for the
actual start and end, and the minutes of delay, so it reads without colour. All texts are safe for a terminal.
"""

from collections.abc import Callable, Sequence
from datetime import datetime
from typing import Literal
from zoneinfo import ZoneInfo

from rich.cells import cell_len

from board.base import words as shared
from board.base.plain import one_line
from board.review.leftovers import LeftReview
from board.review.measure import ReadingReview, Review, StepReview
from board.sheet import said
from board.view import words
from board.view.bars import Chart, Span
from board.view.wrap_words import cut, pad, wrap_words

Tone = Literal["title", "head", "text", "soft", "late", "planned", "actual"]
Segment = tuple[str, Tone]
PageLine = tuple[Segment, ...]

DETAILED = 100  # cells; from this width on, steps are drawn too
HEAD_WIDTH = 14
MOST, MOST_DETAILED = 3, 6  # lines about steps that ran over, and about results that stood
NAME_WIDTH = 22


def closing(evening: Review, width: int, *, every_step: bool = True) -> tuple[PageLine, ...]:
    """The page, at most `width` cells wide; below 40, as if 40. `every_step`: also a bar a step, if it is wide."""
    width = max(40, width)
    return tuple(_clipped(line, width) for line in _Page(evening, width).lines(every_step=every_step))


def _clipped(line: PageLine, width: int) -> PageLine:
    """The line cut to this many cells."""
    kept: list[Segment] = []
    for text, tone in line:
        kept.append((cut(text, width), tone))
        width -= cell_len(kept[-1][0])
        if width <= 0:
            break
    return tuple(kept)


def decided_words(of: Review) -> list[str]:
    """Each question with its answer. Not yet safe to show."""
    return [shared.decided(question, words.YES if yes else words.NO) for question, yes in of.decided()]


class _Page:
    def __init__(self, evening: Review, width: int) -> None:
        self.evening, self.width = evening, width
        self.zone = ZoneInfo(evening.zone)
        self.most = MOST_DETAILED if width >= DETAILED else MOST
        self.last_day = evening.ended.astimezone(self.zone).date()
        self.names = {step.slot.id: step.slot.name for step in evening.steps}

    def lines(self, *, every_step: bool) -> list[PageLine]:
        lines = [*self._title(), *self._courses(), *self._at_table(), *self._told()]
        return [*lines, *self._every_step()] if every_step and self.width >= DETAILED else lines

    def at(self, moment: datetime) -> str:
        """The clock time, with its day if that is not the evening's last day."""
        local = moment.astimezone(self.zone)
        return shared.clock(local) if local.date() == self.last_day else shared.day_and_clock(local)

    def _title(self) -> list[PageLine]:
        of = self.evening
        title = shared.closing_title(
            one_line(of.plan, 60), shared.short_day(of.ended.astimezone(self.zone)), of.rehearsal, of.closed
        )
        return [((title, "title"),), ((shared.review_span(self.at(of.began), self.at(of.ended)), "soft"),), ()]

    def _courses(self) -> list[PageLine]:
        name_width = min(NAME_WIDTH, max((cell_len(one_line(c.name)) for c in self.evening.courses), default=0) + 1)
        name_width = max(name_width, len(shared.CLOSING_COURSES) + 1)
        head = f"{pad(shared.CLOSING_COURSES, name_width)} {shared.REVIEW_WANTED:>9} {shared.CLOSING_OUT:>9}"
        lines: list[PageLine] = [((head, "head"),)]
        for course in self.evening.courses:
            late = course.late_minutes
            out = self.at(course.served) if course.served else shared.REVIEW_NONE
            row = f"{pad(one_line(course.name), name_width)} {self.at(course.wanted):>9} {out:>9}"
            how = (
                f"  {shared.closing_late(late)}" if late is not None else f"  {shared.ONLY_SAID}" if course.said else ""
            )
            pushed = f", {words.closing_pushed(course.pushed)}" if course.pushed else ""
            lines.append(((row, "text"), (how, "late" if late and late > 0 else "soft"), (pushed, "soft")))
        return lines

    def _told(self) -> list[PageLine]:
        """What ran over, was left out, kept, put away, measured and noted."""
        of = self.evening
        over = [shared.ran_over(s.slot.name, s.planned_minutes, s.actual_minutes or 0) for s in of.ran_over()]
        kept = [
            shared.closing_kept(k.slot.name, k.stood_minutes, k.limit_minutes, k.where)
            for k in of.kept_longest()[: self.most]
        ]
        kept += [caution] if (caution := kept_caution(of)) else []
        readings = [
            shared.closing_reading(r.slot.name, self.at(r.at), read_words(r, of.fahrenheit)) for r in of.readings
        ]
        unread = [shared.told_unread(step.slot.name) for step in of.unread]
        notes = [shared.closing_note(self.at(n.at), self.names.get(n.slot or ""), n.text) for n in of.notes]
        return [
            (),
            *self._named(shared.STOPS_ACCEPTED, [shared.stop_line(said.stop(stop)) for stop in of.stops]),
            *self._named(shared.REVIEW_RAN_OVER, over[: self.most] or [shared.REVIEW_NOTHING_OVER]),
            *self._named(shared.REVIEW_LEFT_OUT, _listed(of.left_out())),
            *self._named(shared.DECIDED, decided_words(of)),
            *self._named(shared.REVIEW_NOT_REACHED, _listed(of.not_reached()) if of.closed else []),
            *self._named(shared.REVIEW_LEFT_OPEN, _listed(of.left_open()) if of.closed else []),
            *self._named(shared.CLOSING_KEPT, kept),
            *self._put_away(),
            *self._named(shared.LEFT_TO_USE, of.left),
            *self._named(shared.CLOSING_READINGS, [*readings, *unread, *cold_words(of, self.at)]),
            *self._named(shared.REVIEW_NOTES, notes),
        ]

    def _put_away(self) -> list[PageLine]:
        """Leftovers: when they were put away, which had stood beyond their limit, and the courses nobody reported."""
        told = [put_away_words(each, self.at(each.at)) for each in self.evening.put_away]
        if any(each.over for each in self.evening.put_away):
            told.append(shared.KEPT_TOO_LONG)
        lines = self._named(shared.CLOSING_PUT_AWAY, told)
        if not self.evening.not_told:
            return lines
        head, untold = "" if lines else shared.CLOSING_PUT_AWAY, shared.closing_not_told(self.evening.not_told)
        return [*lines, *self._named(head, [untold], "soft")]

    def _named(self, head: str, items: Sequence[str], tone: Tone = "text") -> list[PageLine]:
        """Items under one heading, which stands to the left of the first item."""
        lines: list[PageLine] = []
        for item in items:
            for line in wrap_words(one_line(item), self.width - HEAD_WIDTH):
                lines.append(((pad("" if lines else head, HEAD_WIDTH), "head"), (line, tone)))
        return lines

    def _at_table(self) -> list[PageLine]:
        """One row for each course: from plating to clearing."""
        spans = [Span(one_line(c.name), c.at_table, *(c.was_at_table or ())) for c in self.evening.courses]
        return self._chart(shared.CLOSING_AT_TABLE, spans, NAME_WIDTH)

    def _every_step(self) -> list[PageLine]:
        """One row for each step, by day."""
        days: dict[str, list[Span]] = {}
        for step in sorted(self.evening.steps, key=lambda s: s.slot.start):
            slot = step.slot
            if slot.kind == "heat" or slot.start == slot.end:
                continue
            day = shared.full_day(slot.start.astimezone(self.zone))
            days.setdefault(day, []).append(
                Span(one_line(slot.name), (slot.start, slot.end), step.started, step.finished, slot.ends_by_itself)
            )
        lines: list[PageLine] = []
        for day, spans in days.items():
            lines += self._chart(words.closing_day(day), spans, 2 * NAME_WIDTH)
        return lines

    def _chart(self, title: str, spans: Sequence[Span], name_width: int) -> list[PageLine]:
        if not spans:
            return []
        longest = max(cell_len(span.name) for span in spans)
        chart = Chart(spans, self.width, min(name_width, longest + 2), self.zone)
        head: PageLine = ((f"{title}   ", "head"), (words.CLOSING_LEGEND, "soft"))
        return [(), head, ((chart.times(), "soft"),), *(self._bar(chart, span) for span in spans)]

    def _bar(self, chart: Chart, span: Span) -> PageLine:
        bar: list[Segment] = [(text, kind or "text") for text, kind in chart.bar(span)]
        return ((chart.name(span), "text"), *bar, _later(span))


def _later(span: Span) -> Segment:
    """The minutes it ended later, after its bar; or a sign that it is still going on."""
    later = span.later_minutes
    if later is None:
        return (f" {words.STATE_SIGN['under-way']}" if span.began else "", "soft")
    return f" {shared.signed(later)}", "late" if later > 0 else "soft"


def read_words(read: ReadingReview, fahrenheit: bool) -> str:
    """A reading next to what was needed."""
    if read.slot.core_celsius is None:
        return words.core_reads(read.celsius, fahrenheit)
    return words.reading(read.celsius, read.slot.core_celsius, read.lacks, fahrenheit)


def cold_words(of: Review, at: Callable[[datetime], str]) -> list[str]:
    """What was read too cold while it was kept hot, and what came of it. `at` writes a moment."""
    names = {step.slot.id: step.slot.name for step in of.steps}
    told = []
    for spell in of.cold:
        reading = shared.closing_reading(
            names[spell.slot], at(spell.read.at), words.core_reads(spell.read.celsius, of.fahrenheit)
        )
        ended = words.COLD_ENDED[spell.ended].format(words.core_reads(spell.last.celsius, of.fahrenheit))
        told.append(words.closing_cold(reading, ended))
    return told


def kept_caution(of: Review) -> str:
    """What to do with results that stood past their limits: by what could spoil, else by what is past its best."""
    past = [each for each in of.kept if each.over]
    if any(each.slot.keeping is not None and each.slot.keeping.for_safety for each in past):
        return shared.KEPT_TOO_LONG
    return words.KEPT_PAST_BEST if past else ""


def put_away_words(each: LeftReview, at: str) -> str:
    """When a course's leftovers were put away, and how long they had stood out."""
    return words.closing_put_away(each.course, at, each.dish, each.stood_minutes, each.limit_minutes)


def _listed(steps: Sequence[StepReview]) -> list[str]:
    return [", ".join(step.slot.name for step in steps)] if steps else []
