"""The first screen of an evening looked back on: courses with one cause each, what to change, notes; the rest is under
`--all`."""

from collections.abc import Sequence
from datetime import datetime
from zoneinfo import ZoneInfo

from rich.cells import cell_len
from rich.console import Console
from rich.text import Text

from board.base import words as shared
from board.base.plain import one_line
from board.learning.changes import Lesson
from board.output import words
from board.output.evenings import away_line, next_lines
from board.review.looked_back import LookedBack
from board.review.measure import CourseReview
from board.review.trace import Link, Traced
from board.view.wrap_words import cut, pad, wrap_words

LINES = 24  # of the smallest terminal
MOST_LESSONS, MOST_NOTES, MOST_CHANGES = 3, 3, 3
LEAST_WIDTH, NAME_WIDTH, TIME_WIDTH = 40, 22, 9


def print_first(evening: LookedBack, log: str, lessons: Sequence[Lesson], out: Console) -> None:
    """At most LINES lines, two of them kept for what the command says after it. `lessons`: the first few are shown."""
    for line, style in first_screen(evening, log, lessons, max(LEAST_WIDTH, out.width)):
        out.print(Text(line, style), soft_wrap=True)


def first_screen(
    evening: LookedBack, log: str, lessons: Sequence[Lesson], width: int, lines: int = LINES - 2
) -> list[tuple[str, str]]:
    """Its lines, each with its style. Where they are too many, causes go first, of the least late course, then notes
    and the account from their ends."""
    screen = _Screen(evening, width)
    last = (words.review_all(log), "dim")
    told = screen.rehearsed()
    taught = [(cut(each, width), "") for each in _numbered(lessons)]
    changes = screen.next_time()
    noted = screen.notes()
    fixed = [*screen.head(), last]
    room = lines - len(fixed) - len(evening.review.courses)
    for part in (told, taught, changes, noted):
        part[max(0, room) :] = []
        room -= len(part)
    return [*screen.head(), *screen.courses(max(0, room)), *told, *taught, *changes, *noted, last]


def _numbered(lessons: Sequence[Lesson]) -> list[str]:
    few = lessons[:MOST_LESSONS]
    if not few:
        return []
    return [
        words.TO_LEARN,
        *(f"  {n}  {words.to_learn(x.name, x.before, x.after, once=x.once)}" for n, x in enumerate(few, 1)),
    ]


class _Screen:
    def __init__(self, evening: LookedBack, width: int) -> None:
        self.evening, self.width = evening, width
        self.review = evening.review
        self.zone = ZoneInfo(self.review.zone)
        self.last_day = self.review.ended.astimezone(self.zone).date()

    def at(self, moment: datetime) -> str:
        local = moment.astimezone(self.zone)
        return shared.clock(local) if local.date() == self.last_day else shared.day_and_clock(local)

    def head(self) -> list[tuple[str, str]]:
        of = self.review
        day = shared.short_day(of.ended.astimezone(self.zone))
        title = shared.closing_title(one_line(of.plan, 60), day, of.rehearsal, of.closed)
        name = pad(shared.CLOSING_COURSES, self._name_width())
        row = f"{name}{shared.REVIEW_WANTED:>{TIME_WIDTH}}{shared.CLOSING_OUT:>{TIME_WIDTH}}"
        away = "".join(away_line(self.evening))
        return [(cut(title, self.width), "bold"), (cut(away, self.width), "dim"), (row, "bold")]

    def _name_width(self) -> int:
        longest = max((cell_len(one_line(c.name)) for c in self.review.courses), default=0)
        return min(NAME_WIDTH, max(longest, len(shared.CLOSING_COURSES)))

    def courses(self, room: int) -> list[tuple[str, str]]:
        """A line a course, and the cause below the latest `room` of them."""
        worst = sorted(self.evening.traced, key=lambda each: -each.late_minutes)[:room]
        shown, before = list[tuple[str, str]](), list[Traced]()
        causes = {each.course: each for each in self.evening.traced if each in worst}
        for course in self.review.courses:
            shown.append((self._course(course), "bold" if (course.late_minutes or 0) > 0 else ""))
            if (traced := causes.get(course.name)) is not None:
                shown.append((f"  {self._cause(traced, before)}", ""))
                before.append(traced)
        return shown

    def _course(self, course: CourseReview) -> str:
        out = self.at(course.served) if course.served else shared.REVIEW_NONE
        late = shared.ONLY_SAID if course.said else ""
        if course.late_minutes is not None:
            late = shared.closing_late(course.late_minutes)
        name = pad(cut(one_line(course.name), NAME_WIDTH), self._name_width())
        return cut(f"{name}{self.at(course.wanted):>{TIME_WIDTH}}{out:>{TIME_WIDTH}}  {late}".rstrip(), self.width)

    def _cause(self, traced: Traced, before: Sequence[Traced]) -> str:
        """The chain in one line; what an earlier course's line says already is named by that course; where it is too
        long, the lightest links go."""
        links, first = list(traced.links), ""
        for other in reversed(before):
            if other.links and traced.links[: len(other.links)] == other.links:
                links, first = links[len(other.links) :], words.as_course(one_line(other.course))
                break
        if not links and not first:
            return words.NO_LINKS
        left = {n: _short(link) for n, link in enumerate(links)}
        lightest = sorted(left, key=lambda n: links[n].minutes)
        line = words.chain(first, [left[n] for n in sorted(left)], gone=False)
        while cell_len(line) > self.width - 2 and len(left) > 1:
            del left[lightest.pop(0)]
            line = words.chain(first, [left[n] for n in sorted(left)], gone=True)
        return cut(line, self.width - 2)

    def notes(self) -> list[tuple[str, str]]:
        names = {step.slot.id: step.slot.name for step in self.review.steps}
        notes = self.review.notes
        told = [shared.closing_note(self.at(n.at), names.get(n.slot or ""), n.text) for n in notes[:MOST_NOTES]]
        told += [words.more_notes(len(notes) - MOST_NOTES)] if len(notes) > MOST_NOTES else []
        return self._under(words.YOUR_NOTES, told)

    def next_time(self) -> list[tuple[str, str]]:
        """Those that cost most minutes first."""
        lines = zip(self.evening.next_time, next_lines(self.evening), strict=True)
        worst = sorted(lines, key=lambda each: -each[0].minutes)[:MOST_CHANGES]
        return self._under(words.REVIEW_NEXT_TIME, [line for _, line in worst])

    def rehearsed(self) -> list[tuple[str, str]]:
        """The account of a rehearsed night, wrapped."""
        lines = [part for line in self.evening.account for part in wrap_words(one_line(line), self.width - 2)]
        return self._under(words.REVIEW_NIGHT, lines)

    def _under(self, head: str, lines: Sequence[str]) -> list[tuple[str, str]]:
        return [(head, "bold"), *((cut(f"  {one_line(line)}", self.width), "") for line in lines)] if lines else []


def _short(link: Link) -> str:
    name = words.THE_GUESTS if link.slot.kind == "arrive" else one_line(link.slot.name)
    return words.short_link(name, link.why, link.minutes)
