"""The whole evening played line by line, every call answered the moment it is due. For plain output and tests."""

from collections.abc import Iterator
from datetime import datetime
from zoneinfo import ZoneInfo

from board.base import words
from board.base.clock import StoppedClock
from board.base.plain import one_line
from board.evening.calls import Call
from board.evening.wishes import Close, Done
from board.session.session import Evening
from board.view.board import headline
from board.view.present import Present


class Stuck(Exception):
    """A call that can never be answered: a fault of the program, not of the plan."""


def catch_up(evening: Evening, clock: StoppedClock, until: datetime) -> None:
    """Answers everything due before a moment on time, as if it had gone by the sheet. Raises Stuck, OSError."""
    while True:
        present = evening.tick()
        if present.due and present.now < until:
            _answer(evening, present.due[0])
        elif present.coming and present.coming[0].due < until:
            clock.set(present.coming[0].due)
        else:
            clock.set(until)
            return


def _answer(evening: Evening, call: Call) -> None:
    refusal = evening.wish(Done(*call.key))
    if refusal is not None:
        raise Stuck(refusal.words)


def play(evening: Evening, clock: StoppedClock) -> Iterator[str]:
    """Lines as they happen; the clock is moved from call to call. Raises Stuck, OSError."""
    zone = ZoneInfo(evening.sheet.zone)
    slots = evening.sheet.by_id()
    answered, served = 0, set[str]()
    while True:
        present = evening.tick()
        at = words.day_and_clock(present.now.astimezone(zone))
        if present.due:
            call = present.due[0]
            _answer(evening, call)
            answered += 1
            yield words.played(at, words.PART_SIGN[call.part], one_line(headline(slots[call.slot], call)))
            for course in evening.tick().forecast.courses:
                if course.is_served and course.name not in served:
                    served.add(course.name)
                    yield words.played_course(at, one_line(course.name), course.late_minutes)
        elif present.coming:
            clock.set(present.coming[0].due)
        else:
            break
    evening.wish(Close())
    yield summary(present, answered)


def summary(present: Present, answered: int) -> str:
    """How it went, in one line."""
    courses = present.forecast.courses
    on_time = sum(1 for course in courses if course.is_served and course.late_minutes == 0)
    left_out = sum(1 for step in present.state.steps.values() if step.status == "left-out")
    return words.played_summary(answered, len(courses), on_time, left_out)
