"""Run logs in a list, and evenings looked back on: one in full, several in one table."""

from collections.abc import Mapping, Sequence
from datetime import datetime
from itertools import groupby
from typing import Any
from zoneinfo import ZoneInfo

from rich.cells import cell_len
from rich.console import Console
from rich.text import Text

from board.base import words as shared
from board.base.plain import one_line
from board.odds.result import WITHIN_MINUTES
from board.output import words
from board.output.review import print_review, review_form
from board.output.schemas.logs import LogsForm
from board.output.schemas.review import EveningForm
from board.output.tables import cell, paragraph, table
from board.review.eaten import Eaten
from board.review.looked_back import Listed, LookedBack
from board.review.trace import Link
from board.view.wrap_words import pad

MOST_ANSWERS, MOST_BESIDE = 6, 3
LEFT_COLUMNS = 2  # date and plan are text; figures stand to the right


def logs_form(logs: Sequence[Listed]) -> LogsForm:
    """As data. `late_minutes`: of the latest course, None where none was served or that was only said."""
    return {
        "logs": [
            {"path": log.path, "date": log.date, "event": log.plan, "rehearsal": log.rehearsal, "ended": log.ended,
             "late_minutes": log.late, "said": log.said}
            for log in logs
        ]
    }  # fmt: skip


def print_logs(logs: Sequence[Listed], out: Console) -> None:
    """Two lines a log: what it is of, and where it lies, whole, to be copied."""
    if not logs:
        out.print(cell(words.NO_LOGS))
        return
    rows = [
        (
            one_line(log.date),
            words.REHEARSED if log.rehearsal else words.EVENING,
            log.ended,
            words.log_late(log.late, said=log.said),
        )
        for log in logs
    ]
    widths = [max(map(cell_len, column)) for column in zip(*rows, strict=True)]
    for log, row in zip(logs, rows, strict=True):
        told = "  ".join(pad(each, width) for each, width in zip(row, widths, strict=True))
        out.print(Text.assemble(told, "  ", cell(log.plan, "bold")))
        out.print(cell(log.path, "dim", indent=2), soft_wrap=True)


def print_eaten(guests: Mapping[str, Sequence[Eaten]], out: Console) -> None:
    """By guest, a line an evening, and what was noted when a course was cleared."""
    if not guests:
        out.print(cell(words.NOBODY_ATE))
    for name, dishes in sorted(guests.items(), key=lambda each: each[0].casefold()):
        out.print(cell(name, "bold"))
        for (day, plan), those in groupby(dishes, key=lambda each: (each.date, each.plan)):
            served = list(those)
            out.print(paragraph(words.eaten_on(day, plan, [each.dish for each in served]), indent=2))
            for note in dict.fromkeys((each.course, note) for each in served for note in each.notes):
                out.print(paragraph(words.noted_at_clearing(*note), indent=4))


def causes(evening: LookedBack) -> list[str]:
    """A line a late course: from its first cause to its serving."""
    return [
        words.traced(
            each.course,
            each.late_minutes,
            [_link(link) for link in each.links],
        )
        for each in evening.traced
    ]


def _link(link: Link) -> str:
    if link.slot.kind == "arrive":
        return words.guests_came(link.minutes)
    return words.traced_link(link.slot.name, link.why, link.minutes)


def late_answers(evening: LookedBack, most: int | None = MOST_ANSWERS) -> list[str]:
    """The longest first; None: all of them."""
    return [words.late_answer(a.slot.name, a.part, a.minutes) for a in evening.answers[:most]]


def next_lines(evening: LookedBack) -> list[str]:
    """A line a change to the plan that would have helped."""
    zone = ZoneInfo(evening.review.zone)
    return [
        words.NEXT_TIME[each.change].format(
            at=shared.day_and_clock(each.at.astimezone(zone)),
            name=one_line(each.slot.name),
            minutes=each.minutes,
            who=one_line(each.who),
            where=words.at_once(one_line(each.where)),
            beside=", ".join(one_line(other.name) for other in each.beside),
            besides=words.besides([one_line(other.name) for other in each.beside[:MOST_BESIDE]]),
            call=words.CALL_KEYS.get(each.part, ""),
        )
        for each in evening.next_time
    ]


def odds_lines(evening: LookedBack) -> list[str]:
    """What the odds gave each course, and what came."""
    return [
        words.odds_came(c.name, words.chance(evening.chances[c.name], certain=False), on_time=_on_time(c.late_minutes))
        for c in evening.review.courses
        if evening.chances is not None and c.name in evening.chances and c.late_minutes is not None
    ]


def _on_time(late: int | None) -> bool:
    return late is not None and late <= WITHIN_MINUTES


def print_evening(evening: LookedBack, out: Console) -> None:
    """The review, then what was behind it."""
    print_review(evening.review, out)
    for title, lines in (
        (words.REVIEW_CAUSES, causes(evening)),
        (words.REVIEW_LATE_ANSWERS, late_answers(evening)),
        (words.REVIEW_NEXT_TIME, next_lines(evening)),
        (words.REVIEW_ODDS, odds_lines(evening)),
        (words.REVIEW_NIGHT, evening.account),
    ):
        if lines:
            out.print()
            out.print(cell(title, "bold"))
            for line in lines:
                out.print(paragraph(line, indent=2))
    for line in away_line(evening):
        out.print()
        out.print(cell(line))


def away_line(evening: LookedBack) -> list[str]:
    """How long the host was in the kitchen while guests were there; nothing where that was only said."""
    return [] if any(c.said for c in evening.review.courses) else [shared.away_was(*evening.away)]


def in_one_table(evenings: Sequence[LookedBack]) -> tuple[list[str], list[list[str]]]:
    """Its head and a row an evening: date, plan, how late each course of any was, minutes away, answers late."""
    names = list(dict.fromkeys(c.name for evening in evenings for c in evening.review.courses))
    head = [words.LOG_DATE, words.LOG_PLAN, *names, words.EVENINGS_AWAY, words.EVENINGS_LATE_ANSWERS]
    return head, [_in_one_row(evening, names) for evening in evenings]


def _in_one_row(evening: LookedBack, names: Sequence[str]) -> list[str]:
    late = {c.name: c.late_minutes for c in evening.review.courses}
    said = {c.name for c in evening.review.courses if c.said}
    planned, actual = (sum(each.values()) for each in evening.away)
    return [
        evening.date,
        evening.review.plan,
        *(_late(late.get(n), said=n in said) for n in names),
        words.away_of(actual, planned),
        str(len(evening.answers)),
    ]


def _late(minutes: int | None, *, said: bool) -> str:
    if minutes is None:
        return shared.ONLY_SAID if said else words.NOT_SERVED
    return shared.signed(minutes)


def print_evenings(evenings: Sequence[LookedBack], out: Console) -> None:
    """A row an evening, then what made courses late."""
    head, rows = in_one_table(evenings)
    printed = table(*((_title(title), "left" if n < LEFT_COLUMNS else "right") for n, title in enumerate(head)))
    for row in rows:
        printed.add_row(*map(cell, row))
    out.print(printed)
    for evening in evenings:
        for line in causes(evening):
            out.print(paragraph(f"{evening.date} {line}"))


def _title(name: str) -> str:
    return str(cell(name))


def evening_form(evening: LookedBack) -> EveningForm:
    """The review's form, with what was behind it. Minutes; shares from 0 to 1."""
    planned, actual = evening.away
    return {
        **review_form(evening.review),
        "late_because": [
            {
                "course": each.course,
                "late_minutes": each.late_minutes,
                "links": [{"id": link.slot.id, "why": link.why, "minutes": link.minutes} for link in each.links],
            }
            for each in evening.traced
        ],
        "answers_late": [{"id": a.slot.id, "part": a.part, "minutes": a.minutes} for a in evening.answers],
        "next_time": [
            {
                "id": each.slot.id,
                "change": each.change,
                "at": clock_iso(each.at, evening.review.zone),
                "minutes": each.minutes or None,
                "who": each.who or None,
                "where": each.where or None,
                "beside": [other.id for other in each.beside],
            }
            for each in evening.next_time
        ],
        "away_minutes": {
            "planned": sum(planned.values()),
            "actual": sum(actual.values()),
            "of": {who: {"planned": planned.get(who), "actual": minutes} for who, minutes in actual.items()},
        },
        "odds": evening.chances,
        "rehearsed_night": list(evening.account),
    }


def clock_iso(moment: datetime, zone: str) -> str:
    return moment.astimezone(ZoneInfo(zone)).isoformat()


def clock(moment: datetime | None, zone: Any) -> str:
    """Day and clock time, or that there is none."""
    return shared.day_and_clock(moment.astimezone(zone)) if moment else shared.REVIEW_NONE
