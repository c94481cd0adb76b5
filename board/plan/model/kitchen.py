"""The kitchen: ovens and how fast they heat and cool, rings, fridge and freezer, tools."""

import re
from typing import Annotated, Any

from pydantic import AfterValidator, BeforeValidator, Field, model_validator

from board.facts.heat import ROOM_CELSIUS
from board.plan.model.part import Celsius, PlanModel, YesNo
from board.plan.phrases.durations import Minutes, decimal
from board.plan.phrases.phrase import Phrase
from board.plan.phrases.stations import HeatRate, OvenWay, parse_cools, parse_heats


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
    """One oven: its shelves, temperature range, and how fast it heats and cools, door shut and ajar. °C."""

    shelves: int = Field(default=2, ge=1, le=20)
    low: Celsius = 50.0
    high: Celsius = 250.0
    heats: Annotated[HeatRate, AfterValidator(_rises), Phrase(parse_heats, "15 min to 180 C")] | None = None
    cools: Cools | None = None
    cools_ajar: Cools | None = None

    @property
    def rates(self) -> dict[OvenWay, HeatRate | None]:
        """Its rates, by the plan's keys; None where not given."""
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
    """`ovens: 1` is one oven called oven; `ovens: 2` gives oven 1 and oven 2."""
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
    """What there is to cook with. `to_the_table`: minutes to walk between kitchen and table; `wash_up`: whether washing
    up that the plan does not write is on the timetable all the same."""

    ovens: Annotated[dict[str, Oven], BeforeValidator(_ovens, json_schema_input_type=int | dict[str, Oven])] = {
        "oven": Oven()
    }
    rings: int = Field(default=4, ge=0, le=20)
    fridge: Litres | None = None
    freezer: Litres | None = None
    to_the_table: Minutes = 0
    tools: dict[str, Annotated[int, Field(ge=1, le=1000)]] = {}
    fridge_at: Celsius | None = None
    wash_up: YesNo = True
