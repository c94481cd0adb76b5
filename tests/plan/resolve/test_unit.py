"""Which unit a plan is written in."""

import pytest

from board.plan.resolve.unit import writes_fahrenheit


@pytest.mark.parametrize(
    ("text", "fahrenheit"),
    [
        ("until: 165 F", True),
        ("until: 165 °F", True),
        ("where: oven at 350 f", True),
        ("until: 74 C", False),
        ("", False),
        ("until: 74 C\nwhere: oven at 350 F\nuntil: 165 F", True),
        ("until: 74 C  # 165 F, 350 F", False),
        ("until: 165 F\nwhere: oven at 180 C", False),  # as many of each
        ("date: 2026-11-28\ntakes: 25 min", False),
    ],
)
def test_the_unit_of_most_temperatures_is_the_plans(text: str, fahrenheit: bool) -> None:
    assert writes_fahrenheit(text.split("\n")) is fahrenheit
