"""Answers → the text of a valid plan, with comments. Pure."""

import textwrap
from collections.abc import Iterator

from board.importing.starter import words
from board.importing.starter.answers import Answers
from board.importing.starter.menu import Course, Setting, courses
from board.plan.edit.yaml_text import scalar
from board.plan.phrases.when import clock_of, minute_of

# Hours and course times of a new plan, for the host to change: ours.
WORK_BEFORE_MINUTES = 8 * 60  # on the day of the event
EARLIEST_WORK = "07:00"
FIRST_STANDING, FIRST_SEATED, BETWEEN = 25, 35, 45  # minutes after the guests arrive; between courses
AFTER_LAST_MINUTES = 75


def plan_text(answers: Answers) -> str:
    """YAML that is a valid plan, whatever the event is called."""
    eaters = answers.guests + 1
    menu = courses(answers.courses, Setting(eaters, answers.ovens, answers.rings))
    first = minute_of(answers.arrive) + (FIRST_STANDING if menu[0].keys else FIRST_SEATED)
    parts = [
        words.NEW_HEAD,
        f"event: {scalar(answers.event)}",
        f"date: {answers.date.isoformat()}",
        f"zone: {scalar(answers.zone)}",
        f"arrive: {answers.arrive}",
        "",
        words.NEW_GUESTS,
        "guests:",
        f"  - {answers.guests} guest{'s' if answers.guests != 1 else ''}",
        "  - host",
        "",
        words.NEW_KITCHEN,
        "kitchen:",
        f"  ovens: {answers.ovens}",
        f"  rings: {answers.rings}",
        "",
        words.NEW_HANDS,
        "hands:",
        *_hands(answers, first + BETWEEN * (len(menu) - 1) + AFTER_LAST_MINUTES),
        "",
        words.NEW_COURSES,
        "courses:",
        *_courses(menu, first, eaters),
        words.NEW_JOBS,
        "jobs:",
        *_jobs(menu, eaters),
    ]
    return "\n".join(parts) + "\n"


def _hands(answers: Answers, end: int) -> Iterator[str]:
    arrive = minute_of(answers.arrive)
    start = max(minute_of(EARLIEST_WORK), arrive - WORK_BEFORE_MINUTES)
    yield "  host:"
    yield "    hours:"
    yield "      day before: 18:00 - 22:00"
    yield f"      on the day: {clock_of(start)} - {clock_of(end)}"
    yield "    away:"
    yield "      get dressed: 25 min from 1 h before guests arrive"
    yield "      greet the guests: 10 min from guests arrive"


def _courses(menu: list[Course], first: int, eaters: int) -> Iterator[str]:
    at = clock_of(first)
    for course in menu:
        yield f"  - course: {course.name}"
        yield f"    at: {at}"
        yield f"    eaten in: {course.eaten}"
        yield "    may slip: 15 min"
        yield f"    serve: {4 + eaters // 5} min"
        if course.keys:
            yield textwrap.indent(course.keys, "    ").rstrip()
        yield "    dishes:"
        yield textwrap.indent(course.dishes, "      ")
        at = f"{BETWEEN} min after the course before"


def _jobs(menu: list[Course], eaters: int) -> Iterator[str]:
    yield "  - tidy the room"
    yield "  - lay the table"
    yield "  - set out the drinks"
    bottles = f"{-(-eaters // 3)} bottle{'s' if eaters > 3 else ''}"  # two glasses each; common practice, no source
    yield f"  - {{job: chill the wine, day: on the day, supplies: {bottles} white wine (drinks)}}"
    yield "  - make room for coats"
    for course in menu:
        if course.spoils:
            yield f"  - job: put what is left of {course.name} into the cold"
            yield "    where: worktop"
            yield "    takes: 4 min"
            yield f"    after: clear {course.name}, at most 20 min"
            yield f"    puts away: {course.name}"
