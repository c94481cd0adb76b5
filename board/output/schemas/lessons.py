"""What `lessons --json` prints."""

from typing import Literal, TypedDict

from board.output.schemas.units import Count, Date, Minutes, PartMinutes, Range80, Share


class LearnedFromForm(TypedDict):
    date: Date
    plan: str
    mark: str


class LessonForm(TypedDict):
    """`number`: as `--take` takes it. Minutes of a `time` are after the plan's own."""

    number: Count
    name: str
    of: Literal["length", "time"]
    before: str
    after: str
    evenings: Count
    seen_once: bool
    minutes: list[PartMinutes]
    middle_minutes: PartMinutes
    range_80_minutes: Range80
    planned_range_80_minutes: Range80 | None


class LessonNoteForm(TypedDict):
    number: Count
    about: str | None
    text: str


class DecisionsForm(TypedDict):
    question: str
    yes: Count
    answers: Count


class CameForm(TypedDict):
    evenings: Count
    on_time: Count


class CourseEffectForm(TypedDict):
    """The share of evenings on which it goes out on time."""

    course: str
    by_plan: Share
    as_learned: Share
    worked_out_anew: Share | None


class MoveForm(TypedDict):
    name: str
    minutes: Minutes


class AloneForm(TypedDict):
    """What one lesson brings by itself."""

    number: Count
    courses: list[CourseEffectForm]
    moved: MoveForm | None
    gives_up: list[str]


class AsideForm(TypedDict):
    """What was not learned from, and why."""

    date: Date
    what: str
    minutes: PartMinutes
    why: Literal["forgotten", "interrupted", "cold-oven", "untimed", "unheard"] | None


class LessonsForm(TypedDict):
    """`known`: evenings learned from before. `effect` and what follows it: what all lessons bring, null or empty where
    it was not worked out."""

    evenings: list[LearnedFromForm]
    known: Count
    rehearsals: Count
    lessons: list[LessonForm]
    notes: list[LessonNoteForm]
    decided: list[DecisionsForm]
    on_time_then: dict[str, CameForm]
    effect: list[CourseEffectForm] | None
    not_weighed: list[Count]
    alone: list[AloneForm]
    gives_up: list[str]
    no_longer_gives_up: list[str]
    stopped: str | None
    stops: list[str]
    proved: bool | None
    moved: list[MoveForm]
    aside: list[AsideForm]
