"""What `sheet --json` prints."""

from typing import TypedDict

from board.output.schemas.units import At, Celsius, Litres, Minutes


class OpenForm(TypedDict):
    """An aim of the timetable that is not proved the best, and by how much it could be better yet."""

    aim: str
    by: int | None


class CourseForm(TypedDict):
    """`sit_till`: until when nobody who eats gets up."""

    name: str
    wanted: At
    served: At
    late_minutes: Minutes
    sit_till: At | None


class HandsForm(TypedDict):
    start: At
    end: At
    who: str


class UseForm(TypedDict):
    what: str
    amount: float
    start: At
    end: At
    celsius: Celsius | None


class FoodForm(TypedDict):
    """`low` and `high` in `unit`, which is empty for pieces; null where the plan says no figure."""

    food: str
    low: float | None
    high: float | None
    unit: str


class LeftForm(FoodForm):
    """What a step leaves. `needed_by`: dishes."""

    use_by: At
    needed_by: list[str]


class StepForm(TypedDict):
    """`goes_in`: what goes in as it begins. `give_minutes`: how long it can slip before a course goes out late."""

    id: str
    dish: str | None
    course: str | None
    lane: str
    start: At
    end: At
    attended: list[HandsForm]
    uses: list[UseForm]
    decide: str | None
    how: str | None
    goes_in: list[FoodForm]
    leaves: list[LeftForm]
    give_minutes: Minutes | None
    noted: list[str]
    assumed: list[str]


class GivenUpForm(TypedDict):
    what: str
    why: str
    minutes: Minutes


HourForm = TypedDict("HourForm", {"from": At, "litres": Litres})


class ColdDayForm(TypedDict):
    """How full the fridge or the freezer is on a day; `room`: what is free for the meal."""

    place: str
    fullest: At
    litres: Litres
    room: Litres | None
    hours: list[HourForm]


class ColdThingForm(TypedDict):
    place: str
    what: str
    litres: Litres | None
    start: At
    end: At


class ColdForm(TypedDict):
    days: list[ColdDayForm]
    things: list[ColdThingForm]


class ClockForm(TypedDict):
    """A dish that spoils: how long it stands out, and how long it may."""

    dish: str
    course: str
    minutes_out: Minutes
    limit_minutes: Minutes
    runs_out: At | None
    source: str


class SheetForm(TypedDict):
    """`valid`: an audit from the plan alone finds no fault. `away_minutes`: from the guests, of each who sits.
    `sources`: where each dish's recipe is from."""

    plan: str
    zone: str
    proved: bool
    open: list[OpenForm]
    solve_seconds: float
    valid: bool
    away_minutes: dict[str, int]
    courses: list[CourseForm]
    steps: list[StepForm]
    given_up: list[GivenUpForm]
    assumed: list[str]
    rules: str
    stops: list[str]
    cautions: list[str]
    noted: list[str]
    cold: ColdForm
    sources: dict[str, str]
    clocks: list[ClockForm]
