"""How long a dish takes to cool: estimated from depth, vessel and place, or from a probe. Pure. °C, minutes.

Newton's law, T = Ta + (T0 − Ta)·e^(−kt). Its constant goes with 1/depth²: Dickerson & Read 1973, "Cooling rates of
foods", abstract read. All other figures are common practice, no source. An estimate proves nothing safe: the probe
does.
"""

import math
from collections.abc import Sequence
from typing import Literal, get_args

import msgspec

from board.facts.heat import ROOM_CELSIUS, cooling_constant, fallen_to, minutes_to_fall

Vessel = Literal["metal", "glass", "earthenware", "plastic"]
CoolingPlace = Literal["room", "fridge", "cold water", "ice bath"]
VESSELS: tuple[Vessel, ...] = get_args(Vessel)
COOLING_PLACES: tuple[CoolingPlace, ...] = get_args(CoolingPlace)

# 5 cm of stew, uncovered, in metal, in a fridge at 4 °C, from 57 to 21 °C: common practice, no source.
REFERENCE_CM = 5.0
REFERENCE_CONSTANT = cooling_constant(minutes=120, start=57, end=21, room=4)

# Speed relative to the reference; common practice, no source. Dickerson & Read find most thin plastics of little
# weight; foamed ones are no vessel to cool in.
BY_VESSEL: dict[Vessel, float] = {"metal": 1.0, "glass": 0.8, "earthenware": 0.7, "plastic": 0.8}
BY_PLACE: dict[CoolingPlace, float] = {"room": 0.8, "fridge": 1.0, "cold water": 2.0, "ice bath": 3.0}

# °C if not measured; common practice, no source, but 4 °C (40 °F) for a fridge: USDA FSIS.
USUAL_CELSIUS: dict[CoolingPlace, float] = {
    "room": ROOM_CELSIUS,
    "fridge": 4.0,
    "cold water": 15.0,
    "ice bath": 1.0,
}


class Stands(msgspec.Struct, frozen=True, tag_field="code", tag="stands"):
    """How deep something stands, in what, and where at how many °C."""

    depth_cm: float
    vessel: str
    place: str
    ambient_celsius: float


class Law(msgspec.Struct, frozen=True, tag_field="code", tag="law"):
    """What else an estimate takes for granted, by its name."""

    law: Literal["newton", "depth", "unsourced", "shallow-in-air", "readings"]


Assumption = Stands | Law


class Estimate(msgspec.Struct, frozen=True):
    """Newton's constant for one dish where it stands, and its assumptions in plain words."""

    constant_per_minute: float
    ambient_celsius: float
    assumptions: tuple[Assumption | str, ...]  # a plain string: a sentence out of an older sheet

    def minutes_to(self, start_celsius: float, end_celsius: float) -> float:
        """Minutes from one temperature down to another; infinite if the surroundings are no colder."""
        return minutes_to_fall(self.constant_per_minute, start_celsius, end_celsius, self.ambient_celsius)

    def celsius_after(self, start_celsius: float, minutes: float) -> float:
        """°C after this many minutes."""
        return fallen_to(self.constant_per_minute, start_celsius, minutes, self.ambient_celsius)


def estimate(depth_cm: float, vessel: Vessel, place: CoolingPlace, ambient_celsius: float | None = None) -> Estimate:
    """The estimate without a probe; ambient None: the usual temperature of the place.

    Raises ValueError unless the depth is finite and above 0.
    """
    if not 0 < depth_cm < math.inf:
        raise ValueError(f"a dish stands deeper than {depth_cm:g} cm")
    ambient = USUAL_CELSIUS[place] if ambient_celsius is None else ambient_celsius
    constant = REFERENCE_CONSTANT * BY_VESSEL[vessel] * BY_PLACE[place] * (REFERENCE_CM / depth_cm) ** 2
    stands = Stands(depth_cm, vessel, place, ambient)
    assumptions: list[Assumption] = [stands, Law("newton"), Law("depth"), Law("unsourced")]
    if depth_cm < REFERENCE_CM and place in ("room", "fridge"):
        assumptions.append(Law("shallow-in-air"))
    return Estimate(constant, ambient, tuple(assumptions))


def fitted(readings: Sequence[tuple[float, float]], ambient_celsius: float) -> Estimate | None:
    """An estimate from probe readings, each (minutes from any origin, °C): least squares on the logarithm of the excess
    over the surroundings.

    None if there are fewer than two times, a reading is no warmer than the surroundings, or readings do not fall.
    """
    if any(not math.isfinite(celsius) or celsius <= ambient_celsius for _, celsius in readings):
        return None
    minutes = [minute for minute, _ in readings]
    logs = [math.log(celsius - ambient_celsius) for _, celsius in readings]
    if len(set(minutes)) < 2:
        return None
    mean_minute, mean_log = math.fsum(minutes) / len(minutes), math.fsum(logs) / len(logs)
    apart = math.fsum((minute - mean_minute) ** 2 for minute in minutes)
    together = math.fsum((m - mean_minute) * (log - mean_log) for m, log in zip(minutes, logs, strict=True))
    constant = -together / apart
    return Estimate(constant, ambient_celsius, (Law("readings"),)) if constant > 0 else None
