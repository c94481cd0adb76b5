"""Temperatures as a hand sets them. Common practice, no source; °F by definition (NIST SP 811, B.8)."""

import pytest

from board.base import words as shared
from board.base.dial import dial_celsius, dial_fahrenheit
from board.facts.degrees import to_celsius
from board.sheet.words import dial_alone


@pytest.mark.parametrize(
    ("fahrenheit", "celsius"), [(225, 107), (400, 200), (350, 180), (300, 150), (325, 160), (375, 190), (450, 230)]
)
def test_from_fahrenheit_to_a_dial_in_celsius(fahrenheit: float, celsius: int) -> None:
    assert dial_celsius(to_celsius(fahrenheit, "F")) == celsius


@pytest.mark.parametrize(("celsius", "fahrenheit"), [(180, 350), (200, 400), (150, 300), (220, 425), (80, 175)])
def test_from_celsius_to_a_dial_in_fahrenheit(celsius: float, fahrenheit: int) -> None:
    assert dial_fahrenheit(celsius) == fahrenheit


def test_a_low_oven_is_set_to_the_degree() -> None:
    assert [dial_celsius(c) for c in (93.3, 107.2, 114.4, 115.1)] == [93, 107, 114, 120]


@pytest.mark.parametrize("fahrenheit", [175, 200, 225, 300, 320, 325, 340, 350, 375, 400, 425, 450, 475, 500])
def test_a_setting_written_in_fahrenheit_comes_back_as_written(fahrenheit: int) -> None:
    celsius = round(to_celsius(fahrenheit, "F"))

    assert dial_alone(celsius, fahrenheit=True) == f"{fahrenheit} °F"
    assert shared.dial(celsius, as_written=False).endswith(f" °C ({fahrenheit} °F)")


@pytest.mark.parametrize(
    ("celsius", "fahrenheit"), [(160, 325), (165, 325), (180, 350), (190, 375), (200, 400), (220, 425), (95, 205)]
)
def test_a_setting_written_in_celsius_is_told_at_a_mark_of_a_dial_in_fahrenheit(celsius: int, fahrenheit: int) -> None:
    assert shared.dial(celsius) == f"{celsius} °C ({fahrenheit} °F)"
    assert shared.dial(celsius, fahrenheit=True, as_written=False) == f"{fahrenheit} °F ({celsius} °C)"


@pytest.mark.parametrize(("fahrenheit", "celsius"), [(325, 160), (340, 170), (350, 180), (375, 190), (175, 79)])
def test_a_setting_written_in_fahrenheit_is_told_at_a_mark_of_a_dial_in_celsius(fahrenheit: int, celsius: int) -> None:
    there = round(to_celsius(fahrenheit, "F"))

    assert shared.dial(there, fahrenheit=True) == f"{fahrenheit} °F ({celsius} °C)"
    assert shared.dial(there, as_written=False) == f"{celsius} °C ({fahrenheit} °F)"


def test_a_core_temperature_is_no_setting_and_stays_exact() -> None:
    """°F by definition, NIST SP 811, B.8."""
    assert shared.degrees(63) == "63 °C (145.4 °F)"
    assert shared.degrees(82) == "82 °C (179.6 °F)"
