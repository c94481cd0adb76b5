"""An evening's days as printable tables: a row a course and a step, with its times and minutes, and a bar of the plan
on the day's common scale, marked where it really started and ended. Foreign text is escaped.

Each is a table row, so that a browser may break the page between any two.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.base.plain import one_line
from board.output import words
from board.output.frame import as_html, class_
from board.output.review import answered
from board.output.time_bars import Axis, bar, sample, scale
from board.review.measure import CourseReview, Review, StepReview
from board.view.bars import Span

HEAD = (
    words.REVIEW_STEP, shared.CLOSING_PLANNED, shared.CLOSING_ACTUAL, words.REVIEW_MINUTES, words.REVIEW_TOOK,
    words.REVIEW_ANSWERED,
)  # fmt: skip
LEGEND = (
    ("planned", shared.CLOSING_PLANNED), ("began", shared.CLOSING_BEGAN), ("ended", shared.CLOSING_ENDED),
)  # fmt: skip
TEXT_COLUMNS = 3  # name and two stretches; figures stand to the right
WIDTHS = ("", "span", "span", "min", "took", "answered", "bars", "later")  # classes of the columns


@dataclass(frozen=True, slots=True)
class _Row:
    """Its bar, and the figures beside it."""

    span: Span
    took: str
    answered: str = shared.REVIEW_NONE


def days(review: Review, zone: ZoneInfo) -> Iterator[str]:
    """A table a day, by each row's planned start; the day's courses first."""
    courses: dict[date, list[_Row]] = {}
    steps: dict[date, list[_Row]] = {}
    for course in review.courses:
        courses.setdefault(course.at_table[0].astimezone(zone).date(), []).append(_of_course(course))
    for step in sorted(review.steps, key=lambda step: step.slot.start):
        steps.setdefault(step.slot.start.astimezone(zone).date(), []).append(_of_step(step))
    for day in sorted({*courses, *steps}):
        yield from _Day(day, courses.get(day, []), steps.get(day, []), zone).lines()


def _of_step(step: StepReview) -> _Row:
    slot = step.slot
    return _Row(
        Span(slot.name, (slot.start, slot.end), step.started, step.finished, slot.ends_by_itself),
        shared.STATES[step.status] if step.actual_minutes is None else str(step.actual_minutes),
        answered(step),
    )


def _of_course(course: CourseReview) -> _Row:
    span = Span(course.name, course.at_table, *(course.was_at_table or ()))
    if span.began is None:
        return _Row(span, words.NOT_SERVED)
    return _Row(span, str(_minutes(span.began, span.ended)) if span.ended else shared.STATES["under-way"])


def _minutes(start: datetime, end: datetime) -> int:
    return round((end - start).total_seconds() / 60)


class _Day:
    """One scale for the whole day. A day stays on one sheet of paper if it fits; if not, the next sheet repeats its
    head with the times."""

    def __init__(self, day: date, courses: Sequence[_Row], steps: Sequence[_Row], zone: ZoneInfo) -> None:
        self.day, self.courses, self.steps, self.zone = day, courses, steps, zone
        self.axis = Axis([row.span for row in (*courses, *steps)], zone)

    def lines(self) -> Iterator[str]:
        legend = " &#160; ".join(f"{sample(kind)} {as_html(told)}" for kind, told in LEGEND)
        title = shared.full_day(datetime.combine(self.day, time(), self.zone))
        yield f'<div class="whole">\n<h2>{as_html(title)}</h2>'
        yield f'<p class="legend">{legend}</p>'
        columns = "".join(f"<col{class_(width, worn=bool(width))}>" for width in WIDTHS)
        yield f'<table class="told">\n<colgroup>{columns}</colgroup>'
        titles = "".join(
            f"<th{class_('n', worn=n >= TEXT_COLUMNS)}>{as_html(each)}</th>" for n, each in enumerate(HEAD)
        )
        whole = self._from_to(self.axis.start, self.axis.start + self.axis.length)
        later = f'<th class="n">{as_html(words.REVIEW_LATER)}</th>'
        yield f'<thead>\n<tr>{titles}<th class="bars">{scale(self.axis, whole)}</th>{later}</tr>\n</thead>'
        for group, rows in ((shared.CLOSING_AT_TABLE, self.courses), (shared.CLOSING_STEPS, self.steps)):
            if rows:
                yield f'<tbody>\n<tr class="group"><th class="group" colspan="{len(WIDTHS)}">{as_html(group)}</th></tr>'
                yield from (self._row(row) for row in rows)
                yield "</tbody>"
        yield "</table>\n</div>"

    def _row(self, row: _Row) -> str:
        span, later = row.span, row.span.later_minutes
        planned = self._from_to(*span.planned)
        actual = shared.REVIEW_NONE if span.began is None else self._from_to(span.began, span.ended)
        figures = "".join(f'<td class="n">{as_html(x)}</td>' for x in (_minutes(*span.planned), row.took, row.answered))
        drawn = bar(self.axis, span, one_line(words.closing_bars(span.name, planned, actual)))
        return (
            f"<tr><td>{as_html(span.name)}</td><td>{as_html(planned)}</td><td>{as_html(actual)}</td>{figures}"
            f'<td class="bars">{drawn}</td>'
            f'<td class="n">{as_html(shared.REVIEW_NONE if later is None else shared.signed(later))}</td></tr>'
        )

    def _from_to(self, start: datetime, end: datetime | None) -> str:
        return shared.from_to(self._at(start), self._at(end) if end else "")

    def _at(self, moment: datetime) -> str:
        """The clock time, with the day if it is another."""
        local = moment.astimezone(self.zone)
        return shared.clock(local) if local.date() == self.day else shared.day_and_clock(local)
