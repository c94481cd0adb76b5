"""The code in half blocks holds every module of the symbol, with the light margin a reader needs."""

import pytest
import segno

from board.share.code import QUIET, drawn

ADDRESSES = (
    "http://192.168.1.20:8430/V7m0_q-fX9b2Lr4TzYc1Aw/",
    "http://[fd12:3456:789a:1::abcd]:8430/abcdefghijklmnopqrstuv/",
)


def modules(rows: tuple[str, ...]) -> list[list[int]]:
    """Two rows of modules out of each row of signs."""
    upper, lower = {"▀": 1, "█": 1, "▄": 0, " ": 0}, {"▄": 1, "█": 1, "▀": 0, " ": 0}
    return [[half[sign] for sign in row] for row in rows for half in (upper, lower)]


@pytest.mark.parametrize("address", ADDRESSES)
def test_it_is_the_symbol_with_four_light_modules_around(address: str) -> None:
    symbol = [[int(bool(module)) for module in row] for row in segno.make_qr(address, error="l").matrix]
    found, size = modules(drawn(address)), len(symbol)

    assert QUIET == 4
    assert [row[QUIET : QUIET + size] for row in found[QUIET : QUIET + size]] == symbol
    inside = [row[QUIET : QUIET + size] for row in found[QUIET : QUIET + size]]
    assert sum(map(sum, found)) == sum(map(sum, inside))  # nothing dark in the margin
    assert {len(row) for row in found} == {size + 2 * QUIET}


@pytest.mark.parametrize("address", ADDRESSES)
def test_its_corners_are_those_of_a_qr_code(address: str) -> None:
    """The finder pattern of ISO/IEC 18004, 6.3.3: 7 × 7, a ring, a light ring, 3 × 3 (from memory)."""
    finder = [[1] * 7, [1, 0, 0, 0, 0, 0, 1], *[[1, 0, 1, 1, 1, 0, 1]] * 3, [1, 0, 0, 0, 0, 0, 1], [1] * 7]
    found, size = modules(drawn(address)), len(drawn(address)[0]) - 2 * QUIET

    for y, x in ((0, 0), (0, size - 7), (size - 7, 0)):
        assert [row[QUIET + x : QUIET + x + 7] for row in found[QUIET + y : QUIET + y + 7]] == finder


def test_it_fits_the_smallest_usual_window() -> None:
    """80 columns and 24 rows, beside the names and within a frame."""
    for address in ADDRESSES:
        assert len(drawn(address)) <= 22
        assert len(drawn(address)[0]) <= 44
