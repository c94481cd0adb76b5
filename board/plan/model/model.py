"""The plan as the host writes it. Frozen pydantic models; unknown keys are refused.

Its parts are in `courses`, `work`, `kitchen`, `hands`, `table` and `drinking`. A key in the file is the field's name
with spaces for underscores. Defaults that the program assumes are None here; `assume.py` fills and lists them, so a
Plan holds only what its host said.
"""

from collections.abc import Iterator
from datetime import date
from typing import Annotated, Literal

from pydantic import BaseModel, BeforeValidator, Field, model_validator

from board.facts.phrases import stems
from board.facts.rule_sets import DEFAULT_RULES, RULE_SET_NAMES
from board.plan.model.courses import Course
from board.plan.model.drinking import DrinksLine
from board.plan.model.hands import Hand
from board.plan.model.kitchen import Kitchen
from board.plan.model.part import Celsius, Clock, LongWords, Noted, PlanModel, Words
from board.plan.model.shopping import OpenHours, PackLine, Pantry, PriceLine
from board.plan.model.table import Table
from board.plan.model.work import JobLine
from board.plan.phrases.guests import GuestLine, guests_of
from board.plan.phrases.labels import Holds
from board.plan.phrases.phrase import Phrase, near
from board.plan.phrases.seats import Seats
from board.plan.phrases.stations import Station
from board.plan.phrases.when import DATE_PATTERN, parse_date, parse_zone


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


def _units(text: str) -> str:
    if text.lower() in ("metric", "us"):
        return text.lower()
    raise ValueError(f"{text!r} is no system of measures here; write metric or us")


class Plan(PlanModel):
    """One event. `rules`: its food-safety rule set. `seats`: who sits where. `units`: for amounts and temperatures;
    None: as written.

    `drinks`: amounts worked out from the guests; `shopping`: trips by day; `shops`: opening hours by section; `pantry`:
    what is in the house; `packs`, `prices`: how foods are sold.

    `noted`: notes on whole evenings. `history`: what its figures were learned from, one line each time. `lessons`
    writes both.
    """

    event: Words
    date: Annotated[date, Phrase(parse_date, "2026-11-28", DATE_PATTERN, numbers=False)]
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
    jobs: list[JobLine] = []
    foods: dict[Annotated[str, Field(min_length=1, max_length=100)], Holds] = {}
    drinks: DrinksLine | None = None
    shopping: OpenHours = {}
    shops: dict[Words, OpenHours] = {}
    pantry: Pantry = []
    packs: dict[Words, PackLine] = {}
    prices: dict[Words, PriceLine] = {}
    noted: Noted = []
    history: list[LongWords] = []

    @model_validator(mode="after")
    def _tools_as_the_kitchen_has_them(self) -> "Plan":
        """`wide pans` is the kitchen's `wide pan`: one and several are the same tool."""
        known = {stems(tool): tool for tool in self.kitchen.tools}
        for station in _stations([self.courses, self.jobs]):
            asked = {
                tool if tool in self.kitchen.tools else known.get(stems(tool), tool): count
                for tool, count in station.tools.items()
            }
            if len(asked) == len(station.tools):
                station.tools.clear()  # frozen fields cannot be set anew, what they hold can
                station.tools.update(asked)
        return self

    @property
    def guest_count(self) -> int:
        return sum(guest.count for guest in self.guests)


def _stations(part: object) -> Iterator[Station]:
    """Every place in a part of the plan where work is done or food is kept."""
    if isinstance(part, Station):
        yield part
    elif isinstance(part, BaseModel):
        for name in type(part).model_fields:
            yield from _stations(getattr(part, name))
    elif isinstance(part, list | tuple | dict):
        for each in part.values() if isinstance(part, dict) else part:
            yield from _stations(each)
