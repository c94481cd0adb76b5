"""The plan: what the host writes. Frozen pydantic models; unknown keys are refused.

A key in the file is the field's name with spaces for underscores. Defaults that the program assumes are None
here and are filled, and listed, in `assume.py`; so a Plan says only what its host said.
"""

import re
from datetime import date
from typing import Annotated, Any, Literal

from pydantic import AfterValidator, BaseModel, BeforeValidator, ConfigDict, Field, model_validator

from board.kitchen.heat import ROOM_CELSIUS
from board.kitchen.rule_sets import DEFAULT_RULES, RULE_SET_NAMES
from board.plan.care import Cools as CoolsDown
from board.plan.care import FoodClass, Thaws, Until
from board.plan.drinking import HowMuchLine, PairingLine
from board.plan.durations import Attended, Minutes, Takes, WholeMinutes, decimal, parse_minutes
from board.plan.guests import GuestLine, guests_of
from board.plan.labels import Holds
from board.plan.phrase import Phrase, near
from board.plan.quantities import IngredientLine
from board.plan.seats import Seats
from board.plan.shopping import OpenHours, PackLine, Pantry, PriceLine
from board.plan.stations import HeatRate, Keeps, On, OvenWay, parse_celsius, parse_cools, parse_heats
from board.plan.tableware import LaidWith
from board.plan.when import (
    Day,
    DaySpan,
    Moment,
    Span,
    parse_clock,
    parse_date,
    parse_day,
    parse_day_span,
    parse_moment,
    parse_spans,
    parse_zone,
)

Celsius = Annotated[float, Phrase(parse_celsius, "74 C")]
Clock = Annotated[str, Phrase(parse_clock, "19:30")]
Words = Annotated[str, Field(min_length=1, max_length=300)]
LongWords = Annotated[str, Field(min_length=1, max_length=5000)]
DayWord = Annotated[Day, Phrase(parse_day, "day before")]


def _one_or_many(value: Any) -> Any:
    """`after: x` is read like `after: [x]`."""
    return value if isinstance(value, list) or value is None else [value]


Noted = Annotated[list[LongWords], BeforeValidator(_one_or_many, json_schema_input_type=str | list[str])]


def _yes_no(text: str) -> bool:
    """YAML 1.2 leaves `yes` a word; hosts write it all the same."""
    if text.lower() in ("yes", "no"):
        return text.lower() == "yes"
    raise ValueError(f"{text!r} is neither yes nor no; write yes or no")


def _read_yes_no(value: Any) -> Any:
    return _yes_no(value) if isinstance(value, str) else value


YesNo = Annotated[bool, BeforeValidator(_read_yes_no, json_schema_input_type=bool | Literal["yes", "no"])]


class PlanModel(BaseModel):
    """What all parts of a plan share."""

    model_config = ConfigDict(
        extra="forbid",
        frozen=True,
        alias_generator=lambda name: name.rstrip("_").replace("_", " "),
    )


def _rises(rate: HeatRate) -> HeatRate:
    if rate.end <= rate.start:
        raise ValueError("an oven that heats ends hotter than it began; write for example 15 min to 180 C")
    return rate


def _falls(rate: HeatRate) -> HeatRate:
    if not ROOM_CELSIUS < rate.end < rate.start:
        raise ValueError(
            f"an oven that cools ends colder than it began, and above the room's {ROOM_CELSIUS:g} C; "
            "write for example 25 min from 200 to 120 C"
        )
    return rate


Cools = Annotated[HeatRate, AfterValidator(_falls), Phrase(parse_cools, "25 min from 200 to 120 C")]


class Oven(PlanModel):
    """One oven: how many shelves, how hot it goes, how fast it heats and cools, with the door shut and ajar. °C."""

    shelves: int = Field(default=2, ge=1, le=20)
    low: Celsius = 50.0
    high: Celsius = 250.0
    heats: Annotated[HeatRate, AfterValidator(_rises), Phrase(parse_heats, "15 min to 180 C")] | None = None
    cools: Cools | None = None
    cools_ajar: Cools | None = None

    @property
    def rates(self) -> dict[OvenWay, HeatRate | None]:
        """What it says of how fast it changes, by key."""
        return {"heats": self.heats, "cools": self.cools, "cools ajar": self.cools_ajar}

    @model_validator(mode="after")
    def _in_order(self) -> "Oven":
        if self.low >= self.high:
            raise ValueError("an oven's low must lie below its high; write for example low: 50 C and high: 250 C")
        return self


MOST_LITRES = 10_000.0


def _litres(text: str) -> float:
    match = re.fullmatch(r"(\d+(?:[.,]\d+)?)\s*(?:l|litres?|liters?)", text, re.IGNORECASE)
    if match is None:
        raise ValueError(f"{text!r} is not an amount of room; write for example 45 litres")
    litres = decimal(match[1])
    if litres > MOST_LITRES:
        raise ValueError(f"{text!r} is more than a kitchen holds; check the figure")
    return litres


Litres = Annotated[float, Phrase(_litres, "45 litres")]


def _ovens(value: Any) -> Any:
    """`ovens: 1` is one oven called oven; `ovens: 2` are called oven 1 and oven 2."""
    if isinstance(value, int) and not isinstance(value, bool):
        if not 0 <= value <= 10:
            raise ValueError(f"{value} ovens are no kitchen's; write how many there are, 0 to 10")
        return {"oven": {}} if value == 1 else {f"oven {n + 1}": {} for n in range(value)}
    if isinstance(value, str):
        raise ValueError(f"{value!r} is not a number of ovens; write `ovens: 1`, or each by its name")
    if isinstance(value, dict):
        return {name: {} if oven is None else oven for name, oven in value.items()}
    return value


class Kitchen(PlanModel):
    """What there is to cook with. `to_the_table`: minutes to walk between the kitchen and the table."""

    ovens: Annotated[dict[str, Oven], BeforeValidator(_ovens, json_schema_input_type=int | dict[str, Oven])] = {
        "oven": Oven()
    }
    rings: int = Field(default=4, ge=0, le=20)
    fridge: Litres | None = None
    freezer: Litres | None = None
    to_the_table: Minutes = 0
    tools: dict[str, Annotated[int, Field(ge=1, le=1000)]] = {}
    fridge_at: Celsius | None = None


def _is_day(text: str) -> str:
    parse_day(text)
    return text


class Hand(PlanModel):
    """A person who can work: their hours by day, and when they are away from it."""

    hours: dict[Annotated[str, AfterValidator(_is_day)], Annotated[list[Span], Phrase(parse_spans, "17:30 - 22:00")]]
    away: dict[str, Annotated[DaySpan, Phrase(parse_day_span, "sat 17:40 - 18:10")]] = {}


Count = Annotated[int, Field(ge=0, le=1000)]


class Table(PlanModel):
    """What the house has to eat from and with: free names with how many there are.

    `laid_with`: what each guest has for the whole meal; `wash_between`: what runs short is washed between courses.
    """

    model_config = ConfigDict(extra="allow")
    __pydantic_extra__: dict[str, Count]

    chairs: Count | None = None
    seats_at_the_table: Count | None = None
    laid_with: LaidWith | None = None
    wash_between: YesNo = False

    @model_validator(mode="after")
    def _each_has_a_name(self) -> "Table":
        if not all(re.search(r"[^\W\d_]", name) and len(name) <= 60 for name in self.pieces):
            raise ValueError("a piece of the table has a short name; write for example soup bowls: 8")
        return self

    @property
    def pieces(self) -> dict[str, int]:
        """By name as the plan has it."""
        return dict(self.__pydantic_extra__)


class Ref(PlanModel):
    """Another piece of work, with the least and most time between its end and this one's start. Minutes."""

    step: Words
    at_least: Minutes = 0
    at_most: Minutes | None = None
    at_once: bool = False


_GAP = re.compile(r"(.*?)\s*,\s*(?:(at least|at most)\s+([^,]+)|(at once))", re.IGNORECASE)


def parse_ref(text: str) -> dict[str, object]:
    """`simmer the broth, at least 10 min, at most 2 h`; `bake the shells, at once`."""
    found: dict[str, object] = {}
    while match := _GAP.fullmatch(text.strip()):
        text = match[1]
        if match[4]:
            found["at once"] = True
        else:
            found[match[2].lower()] = match[3].strip()
    return {"step": text.strip(), **found}


RefLine = Annotated[Ref, Phrase(parse_ref, "simmer the broth, at least 10 min")]
Refs = Annotated[list[RefLine], BeforeValidator(_one_or_many, json_schema_input_type=RefLine | list[RefLine])]


class Way(PlanModel):
    """One way to do a step: where, how long, how much of it needs hands, how its result keeps."""

    on: On | None = None
    takes: Takes | None = None
    attended: Attended | None = None
    keeps: Keeps | None = None


class Work(Way):
    """What steps and jobs have in common. `with_guests`: it can be done while they stand by.

    `cooks`: the class of food it cooks; `reheats`: what was cooked before; `cools`: how something hot is cooled;
    `thaws`: how much; `perishable`: whether its result spoils out of the cold; `washes`: tools clean after it;
    `puts_away`: courses whose leftovers it puts into the cold; `noted`: what its host noted on evenings before.
    """

    or_: Annotated[list[Way], BeforeValidator(_one_or_many, json_schema_input_type=Way | list[Way])] = []
    after: Refs | None = None
    before: Refs | None = None
    best_within: Minutes | None = None
    day: DayWord | None = None
    not_before: Annotated[Moment, Phrase(parse_moment, "sat 14:00")] | None = None
    not_after: Annotated[Moment, Phrase(parse_moment, "sat 17:00")] | None = None
    who: Annotated[list[Words], BeforeValidator(_one_or_many, json_schema_input_type=str | list[str])] | None = None
    look_for: Words | None = None
    until: Until | None = None
    cooks: FoodClass | None = None
    reheats: YesNo | None = None
    cools: CoolsDown | None = None
    thaws: Thaws | None = None
    perishable: YesNo | None = None
    washes: Annotated[list[Words], BeforeValidator(_one_or_many, json_schema_input_type=str | list[str])] = []
    puts_away: Annotated[list[Words], BeforeValidator(_one_or_many, json_schema_input_type=str | list[str])] = []
    with_guests: YesNo = False
    noted: Noted = []
    call: Words | None = None
    call_at_end: Words | None = None


Guessed = Literal["on", "takes", "attended"]


class Step(Work):
    """One thing somebody does for a dish. Follows the step written before it, or what `after` names.

    `guessed`: keys of it that a program filled in; `check` asks about each until it is taken out of the list.
    """

    step: Words
    guessed: Annotated[
        list[Guessed], BeforeValidator(_one_or_many, json_schema_input_type=Guessed | list[Guessed])
    ] = []


class Job(Work):
    """Work that belongs to no dish: flowers, table, ice, candles, coats. `lay the table` alone is one too.

    `needs`: what must be bought for it.
    """

    job: Words
    needs: Annotated[
        list[IngredientLine],
        BeforeValidator(_one_or_many, json_schema_input_type=IngredientLine | list[IngredientLine]),
    ] = []


def _read_job(value: Any) -> Any:
    return {"job": value} if isinstance(value, str) else value


def _names(value: Any) -> Any:
    """`only for: Tomas, Maud` and `only for: Tomas and Maud` are read like a list; a list's names stand as they are."""
    return re.split(r"\s*,\s*(?:and\s+)?|\s+and\s+", value.strip()) if isinstance(value, str) else value


def _nothing(value: Any) -> Any:
    """`ingredients: nothing` says that nobody eats of it: warm plates."""
    return [] if isinstance(value, str) and value.strip().casefold() == "nothing" else value


Names = Annotated[list[Words], Field(min_length=1), BeforeValidator(_names, json_schema_input_type=str | list[str])]


def _scale(text: str) -> str:
    folded = " ".join(text.lower().split())
    if folded in ("linear", "as written"):
        return folded
    raise ValueError(f"{text!r} is no way to scale a dish; write linear or as written")


class Dish(PlanModel):
    """What is on the plate. `perishable`: whether it spoils out of the cold; None: told from its ingredients.

    `by_time_alone`: kept safe by time alone, where the rule set allows that. `only_for`, `not_for`: guests by name;
    `instead_of`: the dish of the same course that those it is only for are not served. `laid_with`: what each guest who
    eats it has for it; `served_in`: what stands on the table for all. `scale`: whether its amounts grow with the
    guests; None: where the course's dishes do not feed the table as written.
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
    steps: list[Step] = Field(min_length=1)


class AfterCourse(BaseModel):
    """So long after another course goes out (or after the guests arrive, where `course` is None). Minutes."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    minutes: WholeMinutes
    course: str | None = None
    course_before: bool = False


class CourseTime(BaseModel):
    """When a course should stand before the guests: a clock time, or so long after something."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    clock: Clock | None = None
    after: AfterCourse | None = None

    @model_validator(mode="after")
    def _one_of_two(self) -> "CourseTime":
        if (self.clock is None) == (self.after is None):
            raise ValueError("a course's time is either a clock time or so long after something; write 19:15")
        return self


def parse_course_time(text: str) -> dict[str, object]:
    """`19:15`; `45 min after the course before`; `10 min after guests arrive`; `40 min after Broth`."""
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
    """What is served together. `serve` and `clear` are the minutes to plate and carry, and to take away. `drink`: what
    is poured with it. `noted`: what was noted of its serving and clearing."""

    course: Words
    at: Annotated[CourseTime, Phrase(parse_course_time, "19:15")]
    eaten_in: Takes | None = None
    may_slip: Minutes | None = None
    serve: Minutes | None = None
    clear: Minutes | None = None
    standing: YesNo = False
    outdoors: YesNo = False
    laid_with: LaidWith | None = None
    served_in: LaidWith | None = None
    drink: Annotated[
        list[PairingLine], BeforeValidator(_one_or_many, json_schema_input_type=PairingLine | list[PairingLine])
    ] = []
    noted: Noted = []
    dishes: list[Dish] = Field(min_length=1)


class Air(PlanModel):
    """Air temperature, °C, where it matters."""

    indoors: Celsius | None = None
    outdoors: Celsius | None = None


def _rule_set(text: str) -> str:
    if text.lower() in RULE_SET_NAMES:
        return text.lower()
    raise ValueError(
        f"{text!r} is no set of food-safety rules here.{near(text, RULE_SET_NAMES)}; use {' or '.join(RULE_SET_NAMES)}"
    )


class Drinks(PlanModel):
    """How much of each there should be; what is not named is not reckoned. `children`: guests who get no alcohol and
    no coffee."""

    wine: HowMuchLine | None = None
    sparkling: HowMuchLine | None = None
    beer: HowMuchLine | None = None
    soft_drinks: HowMuchLine | None = None
    water: HowMuchLine | None = None
    ice: HowMuchLine | None = None
    coffee: HowMuchLine | None = None
    children: int = Field(default=0, ge=0, le=200)


_ALL_USUAL = ("wine", "soft drinks", "water", "ice", "coffee")


def _drinks(value: Any) -> Any:
    """`drinks: usual` reckons all that is usual."""
    if isinstance(value, str) and value.lower() in ("usual", "as usual", "yes"):
        return dict.fromkeys(_ALL_USUAL, "usual")
    if isinstance(value, str):
        raise ValueError(f"{value!r} is not how much there is to drink; write usual, or for example wine: usual")
    return value


def _units(text: str) -> str:
    if text.lower() in ("metric", "us"):
        return text.lower()
    raise ValueError(f"{text!r} is no system of measures here; write metric or us")


class Plan(PlanModel):
    """One event. `rules`: the set of food-safety rules it is weighed by; `seats`: who sits where. `units`: how amounts
    and temperatures are shown, None: as written.

    `drinks`: what is reckoned by the guests; `shopping`: trips to the shops by day; `shops`: when the shop of a section
    is open; `pantry`: what is in the house; `packs`, `prices`: how foods are sold.
    `noted`: what was noted of evenings before as a whole. `history`: what its figures were learned from, a line each
    time. `lessons` writes both.
    """

    event: Words
    date: Annotated[date, Phrase(parse_date, "2026-11-28")]
    zone: Annotated[str, Phrase(parse_zone, "Europe/Dublin")]
    arrive: Clock
    air: Air | None = None
    rules: Annotated[str, Phrase(_rule_set, "home")] = DEFAULT_RULES
    units: Annotated[Literal["metric", "us"], Phrase(_units, "metric")] | None = None
    guests: Annotated[
        list[GuestLine],
        BeforeValidator(guests_of, json_schema_input_type=int | str | list[GuestLine]),
        Field(min_length=1),
    ]
    seats: Seats | None = None
    table: Table | None = None
    kitchen: Kitchen = Kitchen()
    hands: dict[str, Hand] = Field(min_length=1)
    courses: list[Course] = Field(min_length=1)
    jobs: list[Annotated[Job, BeforeValidator(_read_job, json_schema_input_type=str | Job)]] = []
    foods: dict[Annotated[str, Field(min_length=1, max_length=100)], Holds] = {}
    drinks: Annotated[Drinks, BeforeValidator(_drinks, json_schema_input_type=str | Drinks)] | None = None
    shopping: OpenHours = {}
    shops: dict[Words, OpenHours] = {}
    pantry: Pantry = []
    packs: dict[Words, PackLine] = {}
    prices: dict[Words, PriceLine] = {}
    noted: Noted = []
    history: list[LongWords] = []

    @property
    def guest_count(self) -> int:
        return sum(guest.count for guest in self.guests)
