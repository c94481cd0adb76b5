"""What evenings teach of a plan, as text and for other programs."""

from typing import Any, Protocol

from rich.console import Console

from board import words
from board.lessons.changes import Lessons
from board.lessons.moves import Move
from board.lessons.observe import Observed
from board.paper.tables import cell, paragraph, table


class CourseShares(Protocol):
    """How often a course is on time, by the plan, as learned, and worked out anew."""

    @property
    def name(self) -> str: ...
    @property
    def by_plan(self) -> float: ...
    @property
    def as_learned(self) -> float: ...
    @property
    def anew(self) -> float: ...


class Brings(Protocol):
    """What lessons bring."""

    @property
    def courses(self) -> tuple[CourseShares, ...]: ...
    @property
    def given_up(self) -> tuple[int, int]: ...
    @property
    def moved(self) -> tuple[Move, ...]: ...


def print_lessons(event: str, found: Lessons, brings: Brings | None, plan: str, out: Console) -> None:
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
        out.print(cell(words.NO_LESSONS))
    if brings is not None:
        _effect(brings, out)
    _aside(found, out)
    if found.lessons:
        out.print()
        out.print(cell(words.how_to_take_lessons(plan)))
        out.print(cell(words.LESSONS_CAUTION, "dim"))


def _rows(found: Lessons, out: Console) -> None:
    rows = table(
        (words.LESSON_NUMBER, "right"),
        (words.LESSON_WHAT, "left"),
        (words.LESSON_BEFORE, "left"),
        (words.LESSON_AFTER, "left"),
        (words.LESSON_WHY, "left"),
    )
    for number, lesson in enumerate(found.lessons, 1):
        low, high = lesson.estimate.range
        rows.add_row(
            str(number),
            cell(lesson.name),
            cell(words.lesson_before(lesson.before, said=lesson.said)),
            cell(lesson.after, "bold"),
            cell(words.lesson_why(lesson.estimate.evenings, round(low), round(high))),
        )
    out.print(rows)


def _effect(brings: Brings, out: Console) -> None:
    out.print()
    out.print(cell(words.LESSONS_EFFECT, "bold"))
    rows = table(
        (words.EFFECT_COURSE, "left"),
        (words.EFFECT_PLAN, "right"),
        (words.EFFECT_TAUGHT, "right"),
        (words.EFFECT_ANEW, "right"),
    )
    for each in brings.courses:
        shares = (each.by_plan, each.as_learned, each.anew)
        rows.add_row(cell(each.name), *(words.chance(share, certain=False) for share in shares))
    out.print(rows)
    before, after = brings.given_up
    if before or after:
        out.print(cell(words.effect_more(after, before)))
    if brings.moved:
        out.print(paragraph(words.effect_moved([words.moved(move.name, move.minutes) for move in brings.moved])))
    out.print(cell(words.EFFECT_READ, "dim"))


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


def lessons_form(found: Lessons, brings: Brings | None) -> dict[str, Any]:
    """The lessons for other programs. Minutes; shares from 0 to 1; numbers as `--take` takes them."""
    return {
        "evenings": [{"date": each.date, "plan": each.plan, "mark": each.mark} for each in found.fresh],
        "known": found.known,
        "rehearsals": found.rehearsals,
        "lessons": [
            {
                "number": number,
                "name": lesson.name,
                "before": lesson.before,
                "after": lesson.after,
                "evenings": lesson.estimate.evenings,
                "middle_minutes": round(lesson.estimate.middle, 2),
                "range_80_minutes": [round(each, 2) for each in lesson.estimate.range],
            }
            for number, lesson in enumerate(found.lessons, 1)
        ],
        "effect": None
        if brings is None
        else [
            {"course": c.name, "by_plan": c.by_plan, "as_learned": c.as_learned, "worked_out_anew": c.anew}
            for c in brings.courses
        ],
        "moved": [] if brings is None else [{"name": m.name, "minutes": m.minutes} for m in brings.moved],
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
