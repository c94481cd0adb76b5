"""An address as a QR code (ISO/IEC 18004) in half blocks, two modules a character. Pure."""

from collections.abc import Iterator

import segno

QUIET = 4  # modules of light around it: ISO/IEC 18004, 5.3.8 (from memory)
_HALVES = {(0, 0): " ", (1, 0): "▀", (0, 1): "▄", (1, 1): "█"}


def drawn(text: str) -> tuple[str, ...]:
    """Its rows, dark as the blocks, with their light margin; to be shown dark on light."""
    return tuple(_rows(text))


def _rows(text: str) -> Iterator[str]:
    modules = [list(row) for row in segno.make_qr(text, error="l").matrix_iter(border=QUIET)]
    if len(modules) % 2:
        modules.append([0] * len(modules[0]))
    for upper, lower in zip(modules[::2], modules[1::2], strict=True):
        yield "".join(_HALVES[bool(a), bool(b)] for a, b in zip(upper, lower, strict=True))
