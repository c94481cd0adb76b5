"""Readings as typed, °C and °F, and which of them are to fall.

°F to °C by definition (NIST SP 811, B.8). Which figures a core or a probe can show: common practice, no source.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.base.words import to_fahrenheit
from board.facts.degrees import is_cooling, read_degrees, to_celsius


@pytest.mark.parametrize(
    ("text", "celsius"),
    [
        ("74", 74), ("74 C", 74), ("74c", 74), (" 74 °C ", 74), ("73,9", 73.9), ("73.9 º C", 73.9), ("74 deg C", 74),
        ("74 °", 74),
        ("165 F", 73 + 8 / 9), ("165f", 73 + 8 / 9), ("165.2f", 74), ("165,2 °F", 74), ("-18", -18), ("−18 C", -18),
        ("0", 0), ("+4 C", 4),
    ],
)  # fmt: skip
def test_a_reading_is_read_as_typed(text: str, celsius: float) -> None:
    assert read_degrees(text, fahrenheit=False, wanted=74) == pytest.approx(celsius, abs=1e-9)


@pytest.mark.parametrize(
    ("text", "celsius"), [("165", 73 + 8 / 9), ("74 C", 74), ("40", 4 + 4 / 9), ("145 f", 62 + 7 / 9)]
)
def test_a_bare_figure_is_in_the_unit_of_the_plan(text: str, celsius: float) -> None:
    assert read_degrees(text, fahrenheit=True, wanted=74) == pytest.approx(celsius, abs=1e-9)


@pytest.mark.parametrize(
    "text",
    [
        "",
        " ",
        "hot",
        "74 K",
        "7 4",
        "74..",
        "74.5.1",
        "C",
        "1e2",
        "٧٤",
        "74 C C",
        "--4",
        "nan",
        "inf F",
        "12345",
    ],
)
def test_what_is_no_temperature_is_told(text: str) -> None:
    assert read_degrees(text, fahrenheit=False, wanted=74) == "nonsense"


@pytest.mark.parametrize(
    ("text", "fahrenheit", "wanted", "found"),
    [
        ("165", False, 74.0, "which-unit"),  # °F, said to a plan in °C: nothing that holds water gets so hot
        ("95", False, 74.0, "which-unit"),  # 95 °F is a raw bird; 95 °C one that nobody would still read
        ("84", False, 63.0, "which-unit"),
        ("95 C", False, 74.0, 95.0),
        ("95 F", False, 74.0, 35.0),
        ("88", False, 74.0, 88.0),  # a thigh well done
        ("95", False, 0.0, 95.0),  # off the boil, as it begins to cool
        ("95", False, 90.0, 95.0),
        ("15", True, 5.0, "which-unit"),  # 15 °C is too warm, 15 °F would be frozen
        ("15 C", True, 5.0, 15.0),
        ("40", True, 5.0, to_celsius(40, "F")),
        ("0", True, -18.0, to_celsius(0, "F")),
        ("165", True, 74.0, to_celsius(165, "F")),
        ("74", True, 74.0, "which-unit"),  # done, if it is °C
        ("89", True, 74.0, "which-unit"),
        ("73", True, 74.0, to_celsius(73, "F")),  # neither unit says done
        ("90", True, 74.0, to_celsius(90, "F")),
        ("74 F", True, 74.0, to_celsius(74, "F")),
        ("121", False, 121.0, 121.0),  # sugar at the hard ball
        ("165 C", False, 74.0, 165.0),  # said outright
        ("999", False, 130.0, "no-probe"),
        ("-100 C", False, 74.0, "no-probe"),
        ("999", True, 74.0, "no-probe"),
    ],
)
def test_a_figure_that_cannot_be_meant_is_asked_about(
    text: str, fahrenheit: bool, wanted: float, found: float | str
) -> None:
    assert read_degrees(text, fahrenheit=fahrenheit, wanted=wanted) == found


@pytest.mark.parametrize(
    ("fahrenheit", "celsius"), [(145, 62.8), (155, 68.3), (160, 71.1), (165, 73.9), (135, 57.2), (140, 60.0), (41, 5.0)]
)
def test_the_figures_of_the_codes_turn_over_and_back(fahrenheit: int, celsius: float) -> None:
    """°F of FDA Food Code 3-401.11, 3-501.16 and of the USDA FSIS home chart; °C by NIST SP 811, B.8, to a tenth."""
    read = read_degrees(f"{fahrenheit} F", fahrenheit=False, wanted=74)

    assert isinstance(read, float)
    assert round(read, 1) == celsius
    assert to_fahrenheit(read) == pytest.approx(fahrenheit, abs=1e-9)


@given(st.decimals(-50, 290, places=1))
def test_a_reading_typed_in_either_unit_comes_back(celsius: object) -> None:
    read = read_degrees(f"{celsius} C", fahrenheit=True, wanted=74)
    again = read_degrees(f"{to_fahrenheit(float(str(celsius))):.3f} F", fahrenheit=False, wanted=74)

    assert read == float(str(celsius))
    assert again == pytest.approx(read, abs=0.001)


@given(st.text(max_size=12))
def test_whatever_is_typed_is_a_temperature_of_a_probe_or_a_word_for_why_not(text: str) -> None:
    found = read_degrees(text, fahrenheit=False, wanted=74)

    assert found in ("nonsense", "which-unit", "no-probe") or (isinstance(found, float) and -60 <= found <= 300)


@pytest.mark.parametrize(
    ("lane", "wanted", "cooling"),
    [("fridge", 5, True), ("fridge", 74, True), ("worktop", 20, True), ("worktop", 54, False), ("oven", 4, False),
     ("stovetop", 20, False)],
)  # fmt: skip
def test_what_stands_in_the_cold_or_is_wanted_no_warmer_than_the_room_is_to_cool(
    lane: str, wanted: float, cooling: bool
) -> None:
    assert is_cooling(lane, wanted) is cooling
