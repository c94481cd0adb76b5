"""An evening looked back on, as text."""

from datetime import datetime
from typing import Any
from zoneinfo import ZoneInfo

from rich.console import Console

from board import words
from board.lessons.measure import Review, StepReview
from board.paper.tables import cell, table
from board.run.events import DishDropped, GuestsDelayed, StepStretched
from board.view.slipped import slip_words

SLIP_KINDS: dict[type, str] = {StepStretched: "longer", GuestsDelayed: "guests", DishDropped: "dropped"}


def print_review(review: Review, out: Console) -> None:
    """Courses, what ran over, what was left out, every step planned and actual, notes."""
    zone = ZoneInfo(review.zone)
    out.print(cell(words.review_title(review.plan, review.rehearsal, review.closed), "bold"))
    out.print(cell(words.review_span(_at(review.began, zone), _at(review.ended, zone)), "dim"))
    out.print()
    _courses(review, zone, out)
    _ran_over(review, out)
    _slips(review, zone, out)
    _named(words.REVIEW_LEFT_OUT, review.left_out(), out)
    _named(words.REVIEW_NOT_REACHED, review.not_reached(), out)
    _steps(review, zone, out)
    if review.notes:
        out.print()
        out.print(cell(words.REVIEW_NOTES, "bold"))
        names = {s.slot.id: s.slot.name for s in review.steps}
        for note in review.notes:
            about = f" ({names[note.slot]})" if note.slot in names else ""
            out.print(cell(f"{_at(note.at, zone)}{about}  {note.text}", indent=2))


def _at(moment: datetime | None, zone: ZoneInfo) -> str:
    return words.day_and_clock(moment.astimezone(zone)) if moment else words.REVIEW_NONE


def _courses(review: Review, zone: ZoneInfo, out: Console) -> None:
    rows = table(
        (words.REVIEW_COURSE, "left"),
        (words.REVIEW_WANTED, "right"),
        (words.REVIEW_PLANNED, "right"),
        (words.REVIEW_SERVED, "right"),
        (words.REVIEW_LATE, "right"),
        (words.REVIEW_PUSHED, "right"),
    )
    for course in review.courses:
        late = course.late_minutes
        rows.add_row(
            cell(course.name),
            _at(course.wanted, zone),
            _at(course.planned, zone),
            _at(course.served, zone),
            words.REVIEW_NONE if late is None else words.signed(late),
            words.signed(course.pushed) if course.pushed else words.REVIEW_NONE,
        )
    out.print(rows)


def _ran_over(review: Review, out: Console) -> None:
    out.print()
    over = review.ran_over()
    if not over:
        out.print(cell(words.REVIEW_NOTHING_OVER))
        return
    out.print(cell(words.REVIEW_RAN_OVER, "bold"))
    for step in over[:10]:
        out.print(cell(words.ran_over(step.slot.name, step.planned_minutes, step.actual_minutes or 0), indent=2))


def _slips(review: Review, zone: ZoneInfo, out: Console) -> None:
    if review.slips:
        out.print()
        out.print(cell(words.SLIPPED, "bold"))
    names = {s.slot.id: s.slot for s in review.steps}
    for slip in review.slips:
        out.print(cell(f"{_at(slip.at, zone)} {slip_words(slip, names)}", indent=2))


def _named(title: str, steps: list[StepReview], out: Console) -> None:
    if steps:
        out.print()
        out.print(cell(f"{title}: " + ", ".join(step.slot.name for step in steps)))


def _steps(review: Review, zone: ZoneInfo, out: Console) -> None:
    out.print()
    rows = table(
        (words.REVIEW_STEP, "left"),
        (words.REVIEW_PLANNED, "right"),
        (words.REVIEW_BEGUN, "right"),
        (words.REVIEW_MINUTES, "right"),
        (words.REVIEW_TOOK, "right"),
        (words.REVIEW_ANSWERED, "right"),
    )
    for step in sorted(review.steps, key=lambda s: s.slot.start):
        took = words.STATES[step.status] if step.actual_minutes is None else str(step.actual_minutes)
        rows.add_row(
            cell(step.slot.name),
            _at(step.slot.start, zone),
            _at(step.started, zone),
            str(step.planned_minutes),
            took,
            words.REVIEW_NONE if not step.answered_late else words.signed(step.answered_late),
        )
    out.print(rows)


def review_form(review: Review) -> dict[str, Any]:
    """The review for other programs. Times ISO 8601 in the plan's zone, lengths in whole minutes."""
    zone = ZoneInfo(review.zone)

    def iso(moment: datetime | None) -> str | None:
        return moment.astimezone(zone).isoformat() if moment else None

    return {
        "plan": review.plan,
        "rehearsal": review.rehearsal,
        "began": iso(review.began),
        "ended": iso(review.ended),
        "closed": review.closed,
        "courses": [
            {
                "name": c.name,
                "wanted": iso(c.wanted),
                "planned": iso(c.planned),
                "served": iso(c.served),
                "late_minutes": c.late_minutes,
                "pushed_minutes": c.pushed,
            }
            for c in review.courses
        ],
        "steps": [
            {
                "id": s.slot.id,
                "name": s.slot.name,
                "status": s.status,
                "planned_start": iso(s.slot.start),
                "planned_minutes": s.planned_minutes,
                "started": iso(s.started),
                "finished": iso(s.finished),
                "actual_minutes": s.actual_minutes,
                "answered_late_minutes": s.answered_late,
            }
            for s in review.steps
        ],
        "slips": [_slip_form(slip, zone) for slip in review.slips],
        "notes": [{"at": iso(n.at), "about": n.slot, "text": n.text} for n in review.notes],
    }


def _slip_form(slip: StepStretched | GuestsDelayed | DishDropped, zone: ZoneInfo) -> dict[str, Any]:
    """One slip; what it is not about is null."""
    return {
        "at": slip.at.astimezone(zone).isoformat(),
        "kind": SLIP_KINDS[type(slip)],
        "steps": list(slip.slots),
        "minutes": None if isinstance(slip, DishDropped) else slip.minutes,
        "oven": slip.oven if isinstance(slip, StepStretched) else None,
        "course": None if isinstance(slip, StepStretched) else slip.course,
        "dish": slip.dish if isinstance(slip, DishDropped) else None,
    }
