"""What somebody does: steps and jobs, the ways to do them, and what they wait for."""

import re
from typing import Annotated, Any, Literal

from pydantic import BeforeValidator, Field

from board.plan.model.part import Noted, PlanModel, Words, YesNo, one_or_many
from board.plan.phrases.durations import Attended, Minutes, Takes
from board.plan.phrases.food_safety import Cools, FoodClass, Thaws, Until
from board.plan.phrases.phrase import Phrase
from board.plan.phrases.quantities import IngredientLine
from board.plan.phrases.stations import Keeps, Where
from board.plan.phrases.when import Day, Moment, parse_day, parse_moment

Lines = Annotated[
    list[IngredientLine], BeforeValidator(one_or_many, json_schema_input_type=IngredientLine | list[IngredientLine])
]
DayWord = Annotated[Day, Phrase(parse_day, "day before")]


class Ref(PlanModel):
    """Another piece of work, with the least and most minutes between its end and the start of this one. `order_only`:
    nothing of what it made is taken up."""

    step: Words
    at_least: Minutes = 0
    at_most: Minutes | None = None
    at_once: bool = False
    order_only: bool = False


_GAP = re.compile(r"(.*?)\s*,\s*(?:(at least|at most)\s+([^,]+)|(at once|order only))", re.IGNORECASE)


def parse_ref(text: str) -> dict[str, object]:
    """`simmer the broth, at least 10 min, at most 2 h`; `bake the rolls, at once`; `sear the beef, order only`."""
    found: dict[str, object] = {}
    while match := _GAP.fullmatch(text.strip()):
        text = match[1]
        if match[4]:
            found[match[4].lower()] = True
        else:
            found[match[2].lower()] = match[3].strip()
    return {"step": text.strip(), **found}


RefLine = Annotated[Ref, Phrase(parse_ref, "simmer the broth, at least 10 min")]
Refs = Annotated[list[RefLine], BeforeValidator(one_or_many, json_schema_input_type=RefLine | list[RefLine])]


class Way(PlanModel):
    """One way to do a step: where, how long, how much of it needs hands, how long its result keeps."""

    where: Where | None = None
    takes: Takes | None = None
    attended: Attended | None = None
    keeps: Keeps | None = None


class Work(Way):
    """What steps and jobs share. `hands`: how many people it takes. `with_guests`: can be done with guests around.

    `cooks`: the class of food it cooks; `reheats`: food cooked earlier; `cools`: how hot food is cooled; `thaws`: how
    much; `perishable`: whether its result spoils unchilled; `washes`: tools that are clean after it; `puts_away`:
    courses whose leftovers it chills; `noted`: the host's notes from past evenings; `how`: the method, in a sentence or
    three; `uses`: what goes in at this moment, out of the dish's ingredients; `decide`: a question at its start: it is
    done on a yes, and left out on a no.
    """

    or_: Annotated[list[Way], BeforeValidator(one_or_many, json_schema_input_type=Way | list[Way])] = []
    after: Refs | None = None
    before: Refs | None = None
    best_within: Minutes | None = None
    day: DayWord | None = None
    not_before: Annotated[Moment, Phrase(parse_moment, "sat 14:00")] | None = None
    not_after: Annotated[Moment, Phrase(parse_moment, "sat 17:00")] | None = None
    who: Annotated[list[Words], BeforeValidator(one_or_many, json_schema_input_type=str | list[str])] | None = None
    hands: int = Field(default=1, ge=1, le=10)
    look_for: Words | None = None
    how: Words | None = None
    uses: Lines = []
    decide: Words | None = None
    until: Until | None = None
    cooks: FoodClass | None = None
    reheats: YesNo | None = None
    cools: Cools | None = None
    thaws: Thaws | None = None
    perishable: YesNo | None = None
    washes: Annotated[list[Words], BeforeValidator(one_or_many, json_schema_input_type=str | list[str])] = []
    puts_away: Annotated[list[Words], BeforeValidator(one_or_many, json_schema_input_type=str | list[str])] = []
    with_guests: YesNo = False
    noted: Noted = []
    call: Words | None = None
    call_at_end: Words | None = None

    @property
    def says_where(self) -> bool:
        """Whether any way of it names its place; else that is assumed."""
        return any(way.where is not None for way in (self, *self.or_))

    @property
    def on_heat(self) -> bool:
        """Whether any way that names its place is in an oven or on a ring."""
        return any(way.where is not None and way.where.on_heat for way in (self, *self.or_))


Guessed = Literal[
    "where", "takes", "attended", "keeps", "best within", "cooks", "reheats", "until", "cools", "perishable",
]  # fmt: skip


class Step(Work):
    """One thing somebody does for a dish. It follows the step before it, or what `after` names.

    `leaves`: what it leaves over that can be used elsewhere (`6 egg yolks`).
    `guessed`: keys the program filled in; `check` asks about each until it is taken off the list.
    """

    step: Words
    leaves: Lines = []
    guessed: Annotated[list[Guessed], BeforeValidator(one_or_many, json_schema_input_type=Guessed | list[Guessed])] = []


class Job(Work):
    """Work that belongs to no dish: flowers, table, ice, candles, coats. Bare text such as `lay the table` is one too.

    `supplies`: what must be bought or brought for it.
    """

    job: Words
    supplies: Lines = []


def _read_job(value: Any) -> Any:
    return {"job": value} if isinstance(value, str) else value


JobLine = Annotated[Job, BeforeValidator(_read_job, json_schema_input_type=str | Job)]
