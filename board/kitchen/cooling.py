"""Stand-in until the rule sets land."""

from dataclasses import dataclass


@dataclass(frozen=True)
class Estimate:
    constant_per_minute: float
    ambient_celsius: float
    assumptions: tuple[str, ...] = ()


def estimate(depth_cm: float, vessel: str, bath: str, ambient_celsius: float) -> Estimate:
    return Estimate(0.01, ambient_celsius)
