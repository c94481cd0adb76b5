"""What is eaten: dishes, and the courses they belong to."""

import re
from typing import Annotated, Any, Literal

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, model_validator

from board.plan.model.drinking import PairingLine
from board.plan.model.part import Clock, Noted, PlanModel, Words, YesNo, one_or_many
from board.plan.model.work import Step
from board.plan.phrases.durations import Lasts, Minutes, WholeMinutes, parse_minutes
from board.plan.phrases.phrase import Phrase
from board.plan.phrases.portions import PortionWords
from board.plan.phrases.quantities import IngredientLine
from board.plan.phrases.tableware import LaidWith
from board.plan.phrases.when import parse_clock


def _names(value: Any) -> Any:
    """`only for: Tomas, Maud` or `Tomas and Maud` becomes a list; names already in a list are left alone."""
    return re.split(r"\s*,\s*(?:and\s+)?|\s+and\s+", value.strip()) if isinstance(value, str) else value


def _nothing(value: Any) -> Any:
    """`ingredients: nothing` means nobody eats it, as with warm plates."""
    return [] if isinstance(value, str) and value.strip().casefold() == "nothing" else value


Names = Annotated[list[Words], Field(min_length=1), BeforeValidator(_names, json_schema_input_type=str | list[str])]


def _scale(text: str) -> str:
    folded = " ".join(text.lower().split())
    if folded in ("linear", "as written"):
        return folded
    raise ValueError(f"{text!r} is no way to scale a dish; write linear or as written")


class Dish(PlanModel):
    """What is on the plate. `perishable`: whether it spoils unchilled; None: judged by its ingredients.

    `by_time_alone`: kept safe by time alone, where the rule set allows it. `only_for`, `not_for`: guests by name.
    `instead_of`: the dish of this course that the `only_for` guests do not get. `laid_with`: tableware for each
    guest who eats it. `served_in`: pieces on the table for all to share. `scale`: whether amounts grow with the
    guests; None: only if the course's dishes, as written, do not feed the table. `makes`: how much it comes to, as
    written; `a_guest`: how much of that each who is served it gets. `source`: where the recipe is from.
    """

    dish: Words
    for_: int | None = Field(default=None, ge=1, le=500)
    only_for: Names | None = None
    instead_of: Words | None = None
    not_for: Names | None = None
    scale: Annotated[Literal["linear", "as written"], Phrase(_scale, "as written")] | None = None
    ingredients: Annotated[
        list[IngredientLine],
        BeforeValidator(_nothing, json_schema_input_type=list[IngredientLine] | Literal["nothing"]),
    ] = []
    perishable: YesNo | None = None
    by_time_alone: YesNo = False
    laid_with: LaidWith | None = None
    served_in: LaidWith | None = None
    makes: PortionWords | None = None
    a_guest: PortionWords | None = None
    source: Words | None = None
    steps: list[Step] = Field(min_length=1)


class AfterCourse(BaseModel):
    """Minutes after another course goes out, or after the guests arrive if `course` is None."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    minutes: WholeMinutes
    course: str | None = None
    course_before: bool = False


class CourseTime(BaseModel):
    """When a course should be on the table: a clock time, or some time after something else."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    clock: Clock | None = None
    after: AfterCourse | None = None

    @model_validator(mode="after")
    def _one_of_two(self) -> "CourseTime":
        if (self.clock is None) == (self.after is None):
            raise ValueError("a course's time is either a clock time or so long after something; write 19:15")
        return self


def parse_course_time(text: str) -> dict[str, object]:
    """`19:15`; `45 min after the course before`; `10 min after guests arrive`; `40 min after Broth`. Raises
    ValueError."""
    match = re.fullmatch(r"(.+?)\s+after\s+(?:the\s+)?(.+)", text, re.IGNORECASE)
    if match is None:
        return {"clock": parse_clock(text)}
    what = match[2].strip()
    after: dict[str, object] = {"minutes": parse_minutes(match[1])}
    if what in ("course before", "one before"):
        after["course_before"] = True
    elif not re.fullmatch(r"guests\s+arrive", what, re.IGNORECASE):
        after["course"] = what
    return {"after": after}


class Course(PlanModel):
    """What is served together. `serve`: minutes to plate and carry; `clear`: minutes to clear. `drink`: what is poured
    with it. `sit`: minutes from its serving in which nobody who eats gets up; 0 for none. `noted`: notes on its serving
    and clearing."""

    course: Words
    at: Annotated[CourseTime, Phrase(parse_course_time, "19:15")]
    eaten_in: Lasts | None = None
    may_slip: Minutes | None = None
    serve: Minutes | None = None
    clear: Minutes | None = None
    sit: Minutes | None = None
    standing: YesNo = False
    outdoors: YesNo = False
    laid_with: LaidWith | None = None
    served_in: LaidWith | None = None
    drink: Annotated[
        list[PairingLine], BeforeValidator(one_or_many, json_schema_input_type=PairingLine | list[PairingLine])
    ] = []
    noted: Noted = []
    dishes: list[Dish] = Field(min_length=1)
