"""What `review --json` prints: one evening, or a list of them."""

from typing import Literal, TypedDict

from board.output.schemas.units import At, Celsius, Minutes, Share


class ReviewedCourseForm(TypedDict):
    """`said`: when it was served was only told afterwards, and whether it was late is not known."""

    name: str
    wanted: At | None
    planned: At | None
    served: At | None
    late_minutes: Minutes | None
    pushed_minutes: Minutes
    said: bool


class ReviewedStepForm(TypedDict):
    """`said`: its times were only told afterwards."""

    id: str
    name: str
    status: str
    planned_start: At | None
    planned_minutes: Minutes
    started: At | None
    finished: At | None
    actual_minutes: Minutes | None
    answered_late_minutes: Minutes | None
    said: bool


class ReadingForm(TypedDict):
    at: At | None
    about: str
    celsius: Celsius
    wanted_celsius: Celsius | None
    reached: bool | None


class TooColdForm(TypedDict):
    at: At | None
    about: str
    celsius: Celsius
    ended: Literal["open", "heated", "left-out", "served"]
    last_celsius: Celsius
    last_at: At | None


class KeptForm(TypedDict):
    id: str
    stood_minutes: Minutes
    limit_minutes: Minutes
    where: str


class PutAwayForm(TypedDict):
    course: str
    at: At | None
    dish: str
    stood_minutes: Minutes
    limit_minutes: Minutes


class DecidedForm(TypedDict):
    question: str
    yes: bool


class SlipForm(TypedDict):
    """Keys that do not apply are null."""

    at: At
    kind: str
    steps: list[str]
    minutes: Minutes | None
    oven: str | None
    course: str | None
    dish: str | None


class NoteForm(TypedDict):
    at: At | None
    about: str | None
    text: str


class OfferedCourseForm(TypedDict):
    """When it would have gone out, as it stood and as offered."""

    name: str
    served: At | None
    offered: At | None


class OfferForm(TypedDict):
    """A better timetable that the board offered. `gained`: minutes by kind of cost (`lost`: dishes). `taken`: it was,
    and stayed in use."""

    at: At | None
    courses: list[OfferedCourseForm]
    gained: dict[str, int]
    taken: bool


class ReviewForm(TypedDict):
    plan: str
    rehearsal: bool
    began: At | None
    ended: At | None
    closed: bool
    courses: list[ReviewedCourseForm]
    steps: list[ReviewedStepForm]
    readings: list[ReadingForm]
    too_cold: list[TooColdForm]
    ended_without_reading: list[str]
    stops_accepted: list[str]
    kept: list[KeptForm]
    put_away: list[PutAwayForm]
    put_away_not_told: list[str]
    left: list[str]
    decided: list[DecidedForm]
    slips: list[SlipForm]
    offers: list[OfferForm]
    notes: list[NoteForm]


class LinkForm(TypedDict):
    id: str
    why: str
    minutes: Minutes


class TracedForm(TypedDict):
    """What made a course late, link by link."""

    course: str
    late_minutes: Minutes
    links: list[LinkForm]


class AnsweredForm(TypedDict):
    id: str
    part: str
    minutes: Minutes


class NextTimeForm(TypedDict):
    """What in the plan would have helped."""

    id: str
    change: str
    at: At
    minutes: Minutes | None
    who: str | None
    where: str | None
    beside: list[str]


class AwayOfForm(TypedDict):
    planned: Minutes | None
    actual: Minutes


class AwayForm(TypedDict):
    """From the guests, in the kitchen; `of`: each who sits."""

    planned: Minutes
    actual: Minutes
    of: dict[str, AwayOfForm]


class EveningForm(ReviewForm):
    """An evening, planned and actual, with what was behind it. `odds`: of each course, beforehand."""

    late_because: list[TracedForm]
    answers_late: list[AnsweredForm]
    next_time: list[NextTimeForm]
    away_minutes: AwayForm
    odds: dict[str, Share] | None
    rehearsed_night: list[str]
