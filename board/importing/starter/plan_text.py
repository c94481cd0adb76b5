"""Answers, and a menu if there is one → the text of a valid plan, with comments. Pure."""

import textwrap
from collections.abc import Collection, Iterator, Mapping, Sequence

from board.importing.starter import words
from board.importing.starter.answers import Answers
from board.importing.starter.for_whom import ForWhom
from board.importing.starter.head import Helper
from board.importing.starter.menu import Menu
from board.importing.starter.menu_courses import (
    NOBODY,
    Choose,
    Own,
    between,
    course_minutes,
    courses_of,
    first_after,
    usual_way,
)
from board.importing.starter.placeholders import Course, Setting, courses
from board.importing.ways import ways
from board.plan.edit.yaml_text import key, scalar
from board.plan.phrases.when import clock_of, minute_of

# Hours of a new plan, for the host to change: ours.
WORK_BEFORE_MINUTES = 8 * 60  # on the day of the event
EARLIEST_WORK = "07:00"
AFTER_LAST_MINUTES = 75


def plan_text(answers: Answers, assumed: Collection[str] = ()) -> str:
    """YAML that is a valid plan, whatever the event is called; its dishes are placeholders. `assumed`: answers that
    nobody gave, by name; a comment says so at each."""
    place = Setting(answers.guests + 1, answers.ovens, answers.rings)
    chosen = courses(answers.courses, place)
    first = minute_of(answers.arrive) + first_after(place.n, standing=bool(chosen[0].keys))
    last = first + between(place.n) * (len(chosen) - 1)
    guests = [f"{answers.guests} guest{'s' if answers.guests != 1 else ''}"]
    return _text([words.NEW_HEAD], answers, guests, Menu(()), chosen, first, last, assumed)


def menu_plan_text(
    menu: Menu,
    answers: Answers,
    assumed: Collection[str] = (),
    choose: Choose = usual_way,
    own: Own | None = None,
    only: Mapping[str, ForWhom] = NOBODY,
) -> str:
    """The same of a menu. `choose`, `own`, `only`: as in `courses_of`. Raises NotAMenu for hours of courses that
    cannot be."""
    minutes = course_minutes(menu, answers.arrive, answers.guests + 1)
    at = ways.Setting(answers.guests + 1, answers.ovens, answers.rings)
    chosen = courses_of(menu, answers.arrive, at, choose, own, only)
    guests = list(menu.guests) or [f"{answers.guests} guest{'s' if answers.guests != 1 else ''}"]
    head = [words.NEW_MENU_HEAD, *(f"# {_comment(note)}" for note in menu.notes)]
    return _text(head, answers, guests, menu, chosen, minutes[0], minutes[-1], assumed)


def _comment(text: str) -> str:
    """A text that stays one comment, whatever stands in it."""
    return text if text.isprintable() else scalar(text, quoted=True)


def _text(
    head: list[str],
    answers: Answers,
    guests: Sequence[str],
    menu: Menu,
    chosen: list[Course],
    first: int,
    last: int,
    assumed: Collection[str] = (),
) -> str:
    def taken(name: str) -> str:
        return f"  {words.ASSUMED}" if name in assumed else ""

    parts = [
        *head,
        f"event: {scalar(answers.event)}{taken('event')}",
        f"date: {answers.date.isoformat()}{taken('date')}",
        f"zone: {scalar(answers.zone)}{taken('zone')}",
        f"arrive: {answers.arrive}{taken('arrive')}",
        "",
        words.NEW_GUESTS,
        "guests:",
        *(f"  - {scalar(entry)}{taken('guests')}" for entry in guests),
        "  - host",
        "",
        words.NEW_KITCHEN,
        "kitchen:",
        f"  ovens: {answers.ovens}{taken('ovens')}",
        f"  rings: {answers.rings}{taken('rings')}",
        *(f"  {place}: {litres}" for place, litres in menu.cold.items()),
        "",
        words.NEW_HANDS,
        "hands:",
        *_hands(answers, menu.helpers, last + AFTER_LAST_MINUTES),
        "",
        words.NEW_COURSES,
        "courses:",
        *_courses(chosen, first, answers.guests + 1),
        words.NEW_JOBS,
        "jobs:",
        *_jobs(chosen, answers.guests + 1),
    ]
    return "\n".join(parts) + "\n"


def _hands(answers: Answers, helpers: Sequence[Helper], end: int) -> Iterator[str]:
    arrive = minute_of(answers.arrive)
    start = max(minute_of(EARLIEST_WORK), arrive - WORK_BEFORE_MINUTES)
    yield "  host:"
    yield "    hours:"
    yield "      day before: 18:00 - 22:00"
    yield f"      on the day: {clock_of(start)} - {clock_of(end)}"
    yield "    away:"
    yield "      get dressed: 25 min from 1 h before guests arrive"
    yield "      greet the guests: 10 min from guests arrive"
    for helper in helpers:
        comes, goes = helper.start or answers.arrive, helper.end or clock_of(end)
        unsaid = "" if helper.start and helper.end else f"  {words.assumed_hours(helper.start, helper.end)}"
        yield f"  {key(helper.name)}:"
        yield "    hours:"
        yield f"      on the day: {comes} - {goes}{unsaid}"
        if helper.hired:
            yield "    hired: yes"


def _courses(chosen: list[Course], first: int, eaters: int) -> Iterator[str]:
    at = clock_of(first)
    for course in chosen:
        yield f"  - course: {scalar(course.name)}"
        yield f"    at: {course.at or at}"
        yield f"    eaten in: {course.eaten}"
        yield "    may slip: 15 min"
        if course.keys:
            yield textwrap.indent(course.keys, "    ").rstrip()
        yield "    dishes:"
        yield textwrap.indent(course.dishes, "      ")
        at = f"{between(eaters)} min after the course before"


def _when_put_away(course: Course) -> str:
    """After its clearing; what is eaten standing is cleared later, so soon after it is eaten."""
    if "standing: yes" not in course.keys:
        return f"clear {course.name}, at most 30 min"
    eaten = int(course.eaten.split()[-2])
    return f"serve {course.name}, at least {eaten} min, at most {eaten + 40} min"


def _jobs(chosen: list[Course], eaters: int) -> Iterator[str]:
    yield "  - tidy the room"
    yield "  - lay the table"
    yield "  - set out the drinks"
    if not any("drink:" in course.keys for course in chosen):
        bottles = f"{-(-eaters // 3)} bottle{'s' if eaters > 3 else ''}"  # two glasses each; common practice, no source
        yield f"  - {{job: chill the wine, day: on the day, supplies: {bottles} white wine (drinks)}}"
    yield "  - make room for coats"
    for course in chosen:
        if course.spoils:
            yield f"  - job: {scalar(f'put what is left of {course.name} into the cold')}"
            yield "    where: worktop"
            yield "    takes: 4 min"
            yield f"    after: {scalar(_when_put_away(course))}"
            yield f"    puts away: {scalar(course.name)}"
