"""An evening looked back on, as text."""

from collections.abc import Iterator
from datetime import datetime
from zoneinfo import ZoneInfo

from rich.console import Console
from rich.text import Text

from board.base import words as shared
from board.evening.events import DishDropped, GuestsDelayed, StepStretched
from board.output import words
from board.output.schemas.review import ReviewForm, SlipForm
from board.output.tables import cell, table
from board.review.measure import Review, StepReview
from board.sheet import said
from board.view.closing import Tone, closing
from board.view.offer import what_it_brings
from board.view.slipped import slip_words

STYLES: dict[Tone, str] = {
    "title": "bold",
    "head": "bold",
    "text": "",
    "soft": "dim",
    "late": "bold",
    "planned": "dim",
    "actual": "bold",
}

SLIP_KINDS: dict[type, str] = {StepStretched: "longer", GuestsDelayed: "guests", DishDropped: "dropped"}


def print_review(review: Review, out: Console) -> None:
    """The closing page, what was not reached, and every step planned and actual."""
    zone = ZoneInfo(review.zone)
    for line in closing(review, out.width, every_step=False):  # the rows below say the same
        out.print(Text.assemble(*((text, STYLES[tone]) for text, tone in line)))
    if not review.closed:
        _named(shared.REVIEW_NOT_REACHED, review.not_reached(), out)
        _named(shared.REVIEW_LEFT_OPEN, review.left_open(), out)
    _slips(review, zone, out)
    _offers(review, out)
    _steps(review, zone, out)


def _at(moment: datetime | None, zone: ZoneInfo) -> str:
    return shared.day_and_clock(moment.astimezone(zone)) if moment else shared.REVIEW_NONE


def _slips(review: Review, zone: ZoneInfo, out: Console) -> None:
    if review.slips:
        out.print()
        out.print(cell(words.SLIPPED, "bold"))
    names = {s.slot.id: s.slot for s in review.steps}
    for slip in review.slips:
        out.print(cell(f"{_at(slip.at, zone)} {slip_words(slip, names)}", indent=2))


def offer_lines(review: Review) -> Iterator[str]:
    """What each timetable that was offered would have brought, and whether it was taken."""
    zone = ZoneInfo(review.zone)
    for each in review.offers:
        times = ((c.course, c.served, c.offered) for c in each.courses)
        brings = what_it_brings(lambda at, _: shared.clock(at.astimezone(zone)), times, dict(each.gained), each.at)
        yield f"{_at(each.at, zone)} {words.offered(brings, taken=each.taken)}"


def _offers(review: Review, out: Console) -> None:
    if review.offers:
        out.print()
        out.print(cell(words.OFFERED, "bold"))
    for line in offer_lines(review):
        out.print(cell(line, indent=2))


def _named(title: str, steps: list[StepReview], out: Console) -> None:
    if steps:
        out.print()
        out.print(cell(f"{title}: " + ", ".join(step.slot.name for step in steps)))


def _steps(review: Review, zone: ZoneInfo, out: Console) -> None:
    out.print()
    rows = table(
        (words.REVIEW_STEP, "left"),
        (shared.REVIEW_PLANNED, "right"),
        (words.REVIEW_BEGUN, "right"),
        (words.REVIEW_MINUTES, "right"),
        (words.REVIEW_TOOK, "right"),
        (words.REVIEW_ANSWERED, "right"),
    )
    for step in sorted(review.steps, key=lambda s: s.slot.start):
        took = shared.STATES[step.status] if step.actual_minutes is None else str(step.actual_minutes)
        rows.add_row(
            cell(step.slot.name),
            _at(step.slot.start, zone),
            _at(step.started, zone),
            str(step.planned_minutes),
            took,
            answered(step),
        )
    out.print(rows)


def answered(step: StepReview) -> str:
    """How late the call at its start was answered, `+4`; that its times are only said."""
    if step.said:
        return words.REVIEW_SAID
    return shared.signed(step.answered_late) if step.answered_late else shared.REVIEW_NONE


def review_form(review: Review) -> ReviewForm:
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
                "said": c.said,
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
                "said": s.said,
            }
            for s in review.steps
        ],
        "readings": [
            {
                "at": iso(r.at),
                "about": r.slot.id,
                "celsius": round(r.celsius, 2),
                "wanted_celsius": r.slot.core_celsius,
                "reached": None if r.slot.core_celsius is None else r.lacks == 0,
            }
            for r in review.readings
        ],
        "too_cold": [
            {
                "at": iso(c.read.at),
                "about": c.slot,
                "celsius": round(c.read.celsius, 2),
                "ended": c.ended,
                "last_celsius": round(c.last.celsius, 2),
                "last_at": iso(c.last.at),
            }
            for c in review.cold
        ],
        "ended_without_reading": [step.slot.id for step in review.unread],
        "stops_accepted": [said.stop(each) for each in review.stops],
        "kept": [
            {
                "id": k.slot.id,
                "stood_minutes": k.stood_minutes,
                "limit_minutes": k.limit_minutes,
                "where": shared.kept_where(k.where),
            }
            for k in review.kept
        ],
        "put_away": [
            {
                "course": p.course,
                "at": iso(p.at),
                "dish": p.dish,
                "stood_minutes": p.stood_minutes,
                "limit_minutes": p.limit_minutes,
            }
            for p in review.put_away
        ],
        "put_away_not_told": list(review.not_told),
        "left": list(review.left),
        "decided": [{"question": question, "yes": yes} for question, yes in review.decided()],
        "slips": [_slip_form(slip, zone) for slip in review.slips],
        "offers": [
            {
                "at": iso(each.at),
                "courses": [
                    {"name": c.course, "served": iso(c.served), "offered": iso(c.offered)} for c in each.courses
                ],
                "gained": dict(each.gained),
                "taken": each.taken,
            }
            for each in review.offers
        ],
        "notes": [{"at": iso(n.at), "about": n.slot, "text": n.text} for n in review.notes],
    }


def _slip_form(slip: StepStretched | GuestsDelayed | DishDropped, zone: ZoneInfo) -> SlipForm:
    """One slip; keys that do not apply are null."""
    return {
        "at": slip.at.astimezone(zone).isoformat(),
        "kind": SLIP_KINDS[type(slip)],
        "steps": list(slip.slots),
        "minutes": None if isinstance(slip, DishDropped) else slip.minutes,
        "oven": slip.oven if isinstance(slip, StepStretched) else None,
        "course": None if isinstance(slip, StepStretched) else slip.course,
        "dish": slip.dish if isinstance(slip, DishDropped) else None,
    }
