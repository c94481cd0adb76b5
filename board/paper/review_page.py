"""Evenings looked back on as one page for a browser: everything in it, nothing fetched, every foreign word escaped."""

from collections.abc import Iterable, Sequence
from html import escape
from zoneinfo import ZoneInfo

from board import words
from board.paper.evenings import Evening, causes, clock, late_answers, odds_lines
from board.plain import one_line

STYLE = (
    "body{font:16px/1.45 system-ui,sans-serif;max-width:60rem;margin:2rem auto;padding:0 1rem;color:#1b1b1b;"
    "background:#fff}table{border-collapse:collapse;margin:.5rem 0 1rem}th,td{padding:.2rem .8rem .2rem 0;"
    "text-align:left;border-bottom:1px solid #999}td.n,th.n{text-align:right}h2{margin-top:2.5rem}"
    "@media print{h2{break-before:page}h2:first-of-type{break-before:avoid}}"
)
_HEAD = (
    '<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n'
    "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">\n"
    '<meta name="viewport" content="width=device-width">\n'
)


def page(evenings: Sequence[Evening]) -> str:
    """HTML 5, UTF-8."""
    parts = [_HEAD, f"<title>{_text(words.EVENINGS_TITLE)}</title>\n<style>{STYLE}</style>\n</head>\n<body>\n"]
    parts.append(f"<h1>{_text(words.EVENINGS_TITLE)}</h1>\n")
    for evening in evenings:
        parts += _evening(evening)
    return "".join([*parts, "</body>\n</html>\n"])


def _evening(evening: Evening) -> Iterable[str]:
    review, zone = evening.review, ZoneInfo(evening.review.zone)
    yield f"<h2>{_text(review.plan)}, {_text(evening.date)}</h2>\n"
    yield f"<p>{_text(words.away_was(*evening.away))}</p>\n"
    yield _table(
        (words.REVIEW_COURSE, words.REVIEW_WANTED, words.REVIEW_PLANNED, words.REVIEW_SERVED, words.REVIEW_LATE),
        [
            (
                c.name,
                clock(c.wanted, zone),
                clock(c.planned, zone),
                clock(c.served, zone),
                words.log_late(c.late_minutes),
            )
            for c in review.courses
        ],
    )
    notes = [f"{clock(note.at, zone)} {note.text}" for note in review.notes]
    for title, lines in (
        (words.REVIEW_CAUSES, causes(evening)),
        (words.REVIEW_LATE_ANSWERS, late_answers(evening)),
        (words.REVIEW_ODDS, odds_lines(evening)),
        (words.REVIEW_NOTES, notes),
    ):
        if lines:
            yield f"<h3>{_text(title)}</h3>\n<ul>{''.join(f'<li>{_text(line)}</li>' for line in lines)}</ul>\n"
    yield _table(
        (words.REVIEW_STEP, words.REVIEW_PLANNED, words.REVIEW_BEGUN, words.REVIEW_MINUTES, words.REVIEW_TOOK),
        [
            (
                s.slot.name,
                clock(s.slot.start, zone),
                clock(s.started, zone),
                str(s.planned_minutes),
                words.STATES[s.status] if s.actual_minutes is None else str(s.actual_minutes),
            )
            for s in sorted(review.steps, key=lambda s: s.slot.start)
        ],
    )


def _table(head: Sequence[str], rows: Iterable[Sequence[str]]) -> str:
    titles = "".join(f"<th>{_text(title)}</th>" for title in head)
    body = "".join(f"<tr>{''.join(f'<td>{_text(each)}</td>' for each in row)}</tr>\n" for row in rows)
    return f"<table>\n<tr>{titles}</tr>\n{body}</table>\n"


def _text(text: object) -> str:
    return escape(one_line(text))
