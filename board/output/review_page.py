"""Evenings looked back on as a page that prints: several in one table first, then each on sheets of its own.

Foreign text is escaped.
"""

from collections.abc import Iterable, Iterator, Sequence
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.base.plain import one_line
from board.output import words
from board.output.evenings import LEFT_COLUMNS, away_line, causes, clock, in_one_table, late_answers, odds_lines
from board.output.frame import PaperSize, as_html, class_, document
from board.output.review import offer_lines
from board.output.review_days import days
from board.review.looked_back import LookedBack
from board.review.measure import Review
from board.sheet import said
from board.view.closing import MOST_DETAILED, cold_words, decided_words, kept_caution, put_away_words, read_words
from board.view.slipped import slip_words

MOST_COLUMNS = 10  # of the table of evenings: more are not legible across a sheet of paper
BEHIND = 2  # columns behind those of courses


def page(evenings: Sequence[LookedBack], paper: PaperSize) -> str:
    """A whole HTML document, UTF-8."""
    title = words.EVENINGS_TITLE
    body: list[str] = []
    if len(evenings) == 1:
        title = shared.said_together([evenings[0].review.plan, evenings[0].date])
    else:
        body += _all(evenings)
    for evening in evenings:
        body += _evening(evening)
    return document(one_line(title), "\n".join(body), paper)


def _all(evenings: Sequence[LookedBack]) -> Iterator[str]:
    head, rows = in_one_table(evenings)
    text_columns = LEFT_COLUMNS
    if len(head) > MOST_COLUMNS:
        text_columns += 1
        courses = head[LEFT_COLUMNS:-BEHIND]
        rows = [[*row[:LEFT_COLUMNS], _in_one_cell(courses, row), *row[-BEHIND:]] for row in rows]
        head = [*head[:LEFT_COLUMNS], words.REVIEW_LATE, *head[-BEHIND:]]
    yield f'<section class="told">\n<h1>{as_html(words.EVENINGS_TITLE)}</h1>'
    yield from _table(head, rows, text_columns, "day")
    yield "</section>"


def _in_one_cell(courses: Sequence[str], row: Sequence[str]) -> str:
    """How late each of an evening's courses was."""
    late = zip(courses, row[LEFT_COLUMNS:-BEHIND], strict=True)
    return ", ".join(f"{course} {told}" for course, told in late if told != words.NOT_SERVED) or words.NOT_SERVED


def _evening(evening: LookedBack) -> Iterator[str]:
    review, zone = evening.review, ZoneInfo(evening.review.zone)
    day = shared.short_day(review.ended.astimezone(zone))
    span = shared.review_span(clock(review.began, zone), clock(review.ended, zone))
    title = shared.closing_title(review.plan, day, review.rehearsal, review.closed)
    yield f'<section class="told">\n<h1>{as_html(title)}</h1>'
    yield f'<p class="about">{as_html(shared.said_together([evening.date, span, *away_line(evening)]))}</p>'
    if evening.dropped:
        yield f"<p><strong>{as_html(evening.dropped)}</strong></p>"
    yield from _courses(review, zone)
    yield '<div class="notes">'
    yield from _list(shared.STOPS_ACCEPTED, [shared.stop_line(said.stop(stop)) for stop in review.stops])
    yield from _list(words.REVIEW_CAUSES, causes(evening))
    yield from _list(words.REVIEW_ODDS, odds_lines(evening))
    yield from _list(words.REVIEW_LATE_ANSWERS, late_answers(evening, None), "short")
    yield from _what_was(review, zone)
    yield "</div>"
    yield from days(review, zone)
    yield "</section>"


def _courses(review: Review, zone: ZoneInfo) -> Iterator[str]:
    head = (
        shared.REVIEW_COURSE, shared.REVIEW_WANTED, shared.REVIEW_PLANNED, shared.REVIEW_SERVED, words.REVIEW_LATE,
        words.REVIEW_PUSHED,
    )  # fmt: skip
    rows = [
        (
            c.name,
            clock(c.wanted, zone),
            clock(c.planned, zone),
            clock(c.served, zone),
            shared.ONLY_SAID
            if c.said
            else words.NOT_SERVED
            if c.late_minutes is None
            else shared.closing_late(c.late_minutes),
            shared.signed(c.pushed) if c.pushed else shared.REVIEW_NONE,
        )
        for c in review.courses
    ]
    yield f"<h2>{as_html(shared.CLOSING_COURSES)}</h2>"
    yield from _table(head, rows, 1)


def _what_was(review: Review, zone: ZoneInfo) -> Iterator[str]:
    """What was noted, ran over, was left out, measured, kept, put away, and slipped."""
    over = [shared.ran_over(s.slot.name, s.planned_minutes, s.actual_minutes or 0) for s in review.ran_over()]
    slots = {step.slot.id: step.slot for step in review.steps}
    notes = [
        shared.closing_note(clock(note.at, zone), slots[note.slot].name if note.slot in slots else None, note.text)
        for note in review.notes
    ]
    slips = [f"{clock(slip.at, zone)} {slip_words(slip, slots)}" for slip in review.slips]
    yield from _list(shared.REVIEW_NOTES, notes)
    yield from _list(shared.REVIEW_RAN_OVER, over[:MOST_DETAILED] or [shared.REVIEW_NOTHING_OVER], "short")
    yield from _list(shared.REVIEW_LEFT_OUT, [step.slot.name for step in review.left_out()], "short")
    yield from _list(shared.REVIEW_NOT_REACHED, [step.slot.name for step in review.not_reached()], "short")
    yield from _list(shared.REVIEW_LEFT_OPEN, [step.slot.name for step in review.left_open()], "short")
    yield from _readings(review, zone)
    yield from _kept(review)
    yield from _put_away(review, zone)
    yield from _list(shared.LEFT_TO_USE, review.left)
    yield from _list(shared.DECIDED, decided_words(review))
    yield from _list(words.SLIPPED, slips, "short")
    yield from _list(words.OFFERED, list(offer_lines(review)), "short")


def _readings(review: Review, zone: ZoneInfo) -> Iterator[str]:
    read = [shared.closing_reading(r.slot.name, clock(r.at, zone), read_words(r, review.fahrenheit))
            for r in review.readings]  # fmt: skip
    unread = [shared.told_unread(step.slot.name) for step in review.unread]
    short = {text for text, r in zip(read, review.readings, strict=True) if r.lacks}
    cold = cold_words(review, lambda at: clock(at, zone))
    mended = {text for text, spell in zip(cold, review.cold, strict=True) if spell.ended in ("heated", "left-out")}
    marked = (short | set(unread) | set(cold)) - mended
    yield from _list(shared.CLOSING_READINGS, [*read, *unread, *cold], marked=marked)


def _kept(review: Review) -> Iterator[str]:
    """Results that stood, against how long they may; any past its limit is marked, with the caution."""
    kept = review.kept_longest()
    told = [shared.closing_kept(k.slot.name, k.stood_minutes, k.limit_minutes, k.where) for k in kept]
    past = {text for text, k in zip(told, kept, strict=True) if k.over}
    yield from _list(shared.CLOSING_KEPT, told, "short", marked=past, caution=kept_caution(review))


def _put_away(review: Review, zone: ZoneInfo) -> Iterator[str]:
    """When leftovers went into the cold; any past the limit is marked, with the caution. Courses without an answer come
    last."""
    told = [put_away_words(each, clock(each.at, zone)) for each in review.put_away]
    past = {text for text, each in zip(told, review.put_away, strict=True) if each.over}
    untold = [shared.closing_not_told(review.not_told)] if review.not_told else []
    caution = shared.KEPT_TOO_LONG if past else ""
    yield from _list(shared.CLOSING_PUT_AWAY, [*told, *untold], marked=past, caution=caution)


def _table(head: Sequence[str], rows: Iterable[Sequence[str]], text_columns: int, first: str = "") -> Iterator[str]:
    """Figures stand to the right. `first`: the class of the first column, if any."""
    classes = [first, *[""] * (text_columns - 1), *["n"] * (len(head) - text_columns)]

    def line(tag: str, cells: Sequence[str]) -> str:
        made = (f"<{tag}{class_(c, worn=bool(c))}>{as_html(x)}</{tag}>" for c, x in zip(classes, cells, strict=True))
        return f"<tr>{''.join(made)}</tr>"

    yield f'<table class="told wide">\n<thead>\n{line("th", head)}\n</thead>\n<tbody>'
    yield from (line("td", row) for row in rows)
    yield "</tbody>\n</table>"


def _list(
    title: str, lines: Iterable[str], kind: str = "", marked: Iterable[str] = (), caution: str = ""
) -> Iterator[str]:
    """A heading with its lines; nothing where there are none. Marked ones stand out without colour."""
    bold = set(marked)
    items = "".join(
        f"<li><strong>{as_html(shared.COST_PAST)} {as_html(line)}</strong></li>"
        if line in bold
        else f"<li>{as_html(line)}</li>"
        for line in lines
    )
    if items:
        told = f'<p class="legend"><strong>{as_html(caution)}</strong></p>\n' if caution else ""
        yield f"<h3>{as_html(title)}</h3>\n{told}<ul{class_(kind, worn=bool(kind))}>{items}</ul>"
