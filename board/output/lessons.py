"""What evenings teach of a plan, as text and for other programs."""

from rich.console import Console

from board.base import words as shared
from board.learning.changes import Lesson, Lessons
from board.learning.effect import Alone, CourseEffect, Effect
from board.learning.moves import Move
from board.output import words
from board.output.schemas.lessons import AloneForm, CourseEffectForm, LessonsForm, MoveForm
from board.output.tables import cell, paragraph, table
from board.review.observe import Observed

SHARES = ((words.EFFECT_PLAN, "right"), (words.EFFECT_TAUGHT, "right"), (words.EFFECT_ANEW, "right"))


def print_lessons(event: str, found: Lessons, brings: Effect | None, plan: str, out: Console) -> None:
    """A row a lesson, numbered; what they bring together; what was set aside. `plan`: the file as it was named."""
    title = words.lessons_title(event, len(found.fresh), found.known, found.rehearsals)
    out.print(cell(title, "bold"))
    if not found.fresh:
        out.print(cell(words.NO_EVENINGS))
        return
    out.print()
    if found.lessons:
        _rows(found, out)
    else:
        none = words.NO_LESSONS if found.touched else words.ONLY_SAID_STEPS if found.only_said else words.NO_STEPS
        out.print(cell(none))
    if brings is not None:
        _effect(found, brings, out)
    for question, (yes, answers) in found.decided.items():
        out.print(paragraph(words.decided_so(question, yes, answers)))
    _notes(found, out)
    _aside(found, out)
    if found.lessons or found.notes:
        out.print()
        out.print(cell(words.how_to_take_lessons(plan)))
        out.print(cell(words.LESSONS_CAUTION, "dim"))


def _rows(found: Lessons, out: Console) -> None:
    rows = table(
        (words.LESSON_NUMBER, "right"),
        (words.LESSON_WHAT, "left"),
        (words.LESSON_BEFORE, "left"),
        (words.LESSON_AFTER, "left"),
        (words.LESSON_TOOK, "left"),
        (words.LESSON_RANGE, "left"),
    )
    for number, lesson in enumerate(found.lessons, 1):
        low, high = map(round, lesson.estimate.range)
        rows.add_row(
            str(number),
            cell(lesson.name),
            cell(words.lesson_before(lesson.before, said=lesson.said)),
            cell(lesson.after, "bold"),
            cell(_seen(lesson)),
            cell(words.late_between(low, high) if lesson.later else words.between(low, high)),
        )
    out.print(rows)


def _seen(lesson: Lesson) -> str:
    minutes = lesson.estimate.minutes
    told = words.came_late(minutes) if lesson.later else words.took(minutes)
    return words.seen_once(told) if lesson.once else told


def _effect(found: Lessons, brings: Effect, out: Console) -> None:
    out.print()
    if brings.stops:
        out.print(cell(words.EFFECT_STOPS, "bold"))
        for stop in brings.stops:
            out.print(paragraph(shared.stop_line(stop), indent=2))
        out.print()
    out.print(cell(words.LESSONS_EFFECT, "bold"))
    rows = table((words.EFFECT_COURSE, "left"), (words.EFFECT_CAME, "right"), *SHARES)
    for each in brings.courses:
        came = found.came.get(each.name)
        rows.add_row(cell(each.name), shared.REVIEW_NONE if came is None else words.came_on_time(*came), *_shares(each))
    out.print(rows)
    if brings.stopped is not None:
        out.print(cell(words.EFFECT_STOPPED))
        for line in brings.stopped.splitlines():
            out.print(paragraph(line, indent=2))
    print_change(brings, out)
    if len(found.lessons) > 1:
        _alone(brings, out)
    if not brings.proved:
        out.print(cell(words.EFFECT_UNPROVED, "dim"))
    out.print(cell(words.EFFECT_READ, "dim"))


def print_change(brings: Effect, out: Console) -> None:
    """What the new timetable moves and gives up."""
    for said, what in ((words.EFFECT_GIVES_UP, brings.given_up), (words.EFFECT_NO_LONGER, brings.no_longer)):
        if what:
            out.print(cell(said))
            for each_what in what:
                out.print(paragraph(each_what, indent=2))
    if brings.moved:
        out.print(paragraph(words.effect_moved([words.moved(move.name, move.minutes) for move in brings.moved])))


def _alone(brings: Effect, out: Console) -> None:
    """Each lesson that changes a course's odds, by itself."""
    out.print()
    out.print(cell(words.LESSONS_ALONE, "bold"))
    if brings.alone:
        rows = table(
            (words.LESSON_NUMBER, "right"),
            (words.LESSON_WHAT, "left"),
            (words.EFFECT_COURSE, "left"),
            *SHARES,
            (words.EFFECT_THEN, "left"),
        )
        for each in brings.alone:
            first = (str(each.number), cell(each.lesson.name))
            then = [*_then(each), *[""] * len(each.courses)]
            for course, said in zip(each.courses, then, strict=False):
                rows.add_row(*first, cell(course.name), *_shares(course), cell(said))
                first = ("", cell(""))
            for said in then[len(each.courses) : -len(each.courses)]:
                rows.add_row("", "", "", "", "", "", cell(said))
        out.print(rows)
    out.print(cell(words.others_alone(some=bool(brings.alone)), "dim"))
    if brings.unweighed:
        out.print(cell(words.unweighed(brings.unweighed), "dim"))
    elif any(not each.found for each in brings.alone):
        out.print(cell(words.ALONE_NOT_FOUND, "dim"))


def _then(alone: Alone) -> list[str]:
    """What comes of taking this one alone, beside the odds."""
    said = []
    if alone.moved is not None:
        name = "" if alone.moved.name == alone.lesson.name else alone.moved.name
        said.append(words.moved(name, alone.moved.minutes))
    return [*said, *(words.alone_gives_up(each) for each in alone.given_up)]


def _shares(course: CourseEffect) -> list[str]:
    shares = (course.by_plan, course.as_learned, course.anew)
    return [shared.REVIEW_NONE if share is None else words.chance(share, certain=False) for share in shares]


def _notes(found: Lessons, out: Console) -> None:
    if not found.notes:
        return
    out.print()
    out.print(cell(words.LESSONS_NOTES, "bold"))
    rows = table((words.LESSON_NUMBER, "right"), (words.LESSON_WHAT, "left"), (words.LESSON_NOTED, "left"))
    for number, note in enumerate(found.notes, len(found.lessons) + 1):
        rows.add_row(str(number), cell(note.name or words.THE_EVENING), cell(note.text))
    out.print(rows)


def _aside(found: Lessons, out: Console) -> None:
    if not found.aside and not found.strange:
        return
    out.print()
    if found.aside:
        out.print(cell(words.LESSONS_ASIDE, "bold"))
    for date, each in found.aside:
        name = each.name if isinstance(each, Observed) else words.oven_turn(each.oven, each.before, each.after)
        why = words.ASIDES[each.aside or "untimed"]
        out.print(paragraph(words.lesson_aside(date, name, round(each.minutes), why), indent=2))
    if found.strange:
        out.print(cell(words.strange_steps(found.strange), "dim"))


def lessons_form(found: Lessons, brings: Effect | None) -> LessonsForm:
    """The lessons for other programs. Minutes, of a moment (`of: time`) after the plan's own; shares from 0 to 1;
    numbers as `--take` takes them."""
    return {
        "evenings": [{"date": each.date, "plan": each.plan, "mark": each.mark} for each in found.fresh],
        "known": found.known,
        "rehearsals": found.rehearsals,
        "lessons": [
            {
                "number": number,
                "name": lesson.name,
                "of": "time" if lesson.later else "length",
                "before": lesson.before,
                "after": lesson.after,
                "evenings": lesson.estimate.evenings,
                "seen_once": lesson.once,
                "minutes": [round(each, 2) for each in lesson.estimate.minutes],
                "middle_minutes": round(lesson.estimate.middle, 2),
                "range_80_minutes": [round(each, 2) for each in lesson.estimate.range],
                "planned_range_80_minutes": None if lesson.told is None else [round(each, 2) for each in lesson.told],
            }
            for number, lesson in enumerate(found.lessons, 1)
        ],
        "notes": [
            {"number": number, "about": note.name or None, "text": note.text}
            for number, note in enumerate(found.notes, len(found.lessons) + 1)
        ],
        "decided": [{"question": q, "yes": yes, "answers": of} for q, (yes, of) in found.decided.items()],
        "on_time_then": {name: {"evenings": of, "on_time": count} for name, (count, of) in found.came.items()},
        "effect": None if brings is None else [_course_form(each) for each in brings.courses],
        "not_weighed": [] if brings is None else list(brings.unweighed),
        "alone": [] if brings is None else [_alone_form(each) for each in brings.alone],
        "gives_up": [] if brings is None else list(brings.given_up),
        "no_longer_gives_up": [] if brings is None else list(brings.no_longer),
        "stopped": None if brings is None else brings.stopped,
        "stops": [] if brings is None else list(brings.stops),
        "proved": None if brings is None else brings.proved,
        "moved": [] if brings is None else [_move_form(each) for each in brings.moved],
        "aside": [
            {
                "date": date,
                "what": each.name if isinstance(each, Observed) else each.oven,
                "minutes": round(each.minutes, 2),
                "why": each.aside,
            }
            for date, each in found.aside
        ],
    }


def _alone_form(alone: Alone) -> AloneForm:
    return {
        "number": alone.number,
        "courses": [_course_form(each) for each in alone.courses],
        "moved": None if alone.moved is None else _move_form(alone.moved),
        "gives_up": list(alone.given_up),
    }


def _course_form(course: CourseEffect) -> CourseEffectForm:
    return {
        "course": course.name,
        "by_plan": course.by_plan,
        "as_learned": course.as_learned,
        "worked_out_anew": course.anew,
    }


def _move_form(move: Move) -> MoveForm:
    return {"name": move.name, "minutes": move.minutes}
