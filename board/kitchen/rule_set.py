"""Stand-in until the rule sets land."""

from dataclasses import dataclass

WATER_CHANGE_MINUTES = 30


@dataclass(frozen=True)
class Degrees:
    fahrenheit: float
    celsius: float

    def at_least(self, celsius: float) -> bool:
        return celsius >= self.celsius

    def at_most(self, celsius: float) -> bool:
        return celsius <= self.celsius


@dataclass(frozen=True)
class Cook:
    degrees: Degrees
    hold_seconds: int
    rest_minutes: int
    source: str


@dataclass(frozen=True)
class OutLimit:
    minutes: int
    source: str


@dataclass(frozen=True)
class RuleSet:
    name: str

    @property
    def title(self) -> str:
        return f"{self.name} rules"

    @property
    def danger_high(self) -> Degrees:
        return Degrees(140, 60)

    def cook_for(self, food_class: str) -> Cook | None:
        return Cook(Degrees(165, 74), 0, 0, "")

    def out_limit(
        self, air_celsius: float | None, *, by_time_alone: bool = False, warmest_celsius: float | None = None
    ) -> OutLimit:
        hot = air_celsius is not None and air_celsius > 32.2223
        return OutLimit(60 if hot else 120, "USDA FSIS")


def thaw_fridge_minutes(kilos: float) -> int:
    return 1440


def thaw_water_minutes(kilos: float) -> int:
    return 60
