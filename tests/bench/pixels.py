"""Cells of a terminal as a PNG: no window around them, no font left to whoever looks. Same cells, same bytes.

The letters are DejaVu Sans Mono as matplotlib carries it: free to use, box lines that join, and our signs.
"""

from collections.abc import Iterable, Sequence
from functools import cache
from importlib.metadata import distribution
from pathlib import Path

from fontTools.ttLib import TTFont
from PIL import Image, ImageDraw, ImageFont
from rich.cells import cell_len
from rich.color import Color
from rich.segment import Segment
from rich.style import Style
from textual.theme import Theme

# Pixels. At this size letters are as wide as their cells, and upright lines reach over both ends of theirs.
WIDE, HIGH, LETTER, BASELINE, MARGIN = 12, 23, 20, 18, 10

RGB = tuple[int, int, int]


class MissingSigns(Exception):
    """Signs the font does not have: a picture without them would not be true."""


def draw_cells(rows: Sequence[Sequence[Segment]], file: Path, look: Theme) -> None:
    """The rows into a PNG file; what has no colours of its own takes the look's. Raises MissingSigns."""
    refuse_missing(segment.text for row in rows for segment in row)
    plain = Style(color=look.foreground, bgcolor=look.background)
    width = max(sum(segment.cell_length for segment in row) for row in rows)
    size = (width * WIDE + 2 * MARGIN, len(rows) * HIGH + 2 * MARGIN)
    image = Image.new("RGB", size, _rgb(plain.bgcolor))
    for number, row in enumerate(rows):
        column = 0
        for segment in row:
            for letter in segment.text:
                at = (MARGIN + column * WIDE, MARGIN + number * HIGH)
                _draw_cell(image, at, letter, plain + (segment.style or Style()))
                column += cell_len(letter)
    image.save(file, optimize=True)


def refuse_missing(texts: Iterable[str]) -> None:
    """Raises MissingSigns with every sign that would not be seen."""
    used = {letter for text in texts for letter in text}
    known = TTFont(_font_file(bold=False)).getBestCmap().keys() & TTFont(_font_file(bold=True)).getBestCmap().keys()
    if missing := sorted(letter for letter in used if ord(letter) not in known or not cell_len(letter)):
        raise MissingSigns("the font lacks " + ", ".join(f"{letter} (U+{ord(letter):04X})" for letter in missing))


def _draw_cell(image: Image.Image, at: tuple[int, int], letter: str, style: Style) -> None:
    front, back = _rgb(style.color), _rgb(style.bgcolor)
    if style.reverse:
        front, back = back, front
    if style.dim:
        front = _between(front, back)
    shape = _shape(letter, bool(style.bold))
    image.paste(back, (*at, at[0] + shape.width, at[1] + HIGH))
    image.paste(front, at, shape)


@cache
def _shape(letter: str, bold: bool) -> Image.Image:
    """How much of each pixel of its cell a letter covers; what reaches over the cell's edge is cut off."""
    shape = Image.new("L", (cell_len(letter) * WIDE, HIGH))
    ImageDraw.Draw(shape).text((0, BASELINE), letter, fill=255, font=_font(bold), anchor="ls")
    return shape.point([17 * round(level / 17) for level in range(256)])  # fewer shades make a smaller file


@cache
def _font(bold: bool) -> ImageFont.FreeTypeFont:
    return ImageFont.truetype(_font_file(bold), LETTER, layout_engine=ImageFont.Layout.BASIC)


def _font_file(bold: bool) -> Path:
    """Found, not imported: matplotlib itself is not needed."""
    name = f"DejaVuSansMono{'-Bold' if bold else ''}.ttf"
    return Path(str(distribution("matplotlib").locate_file(f"matplotlib/mpl-data/fonts/ttf/{name}")))


def _rgb(color: Color | None) -> RGB:
    assert color is not None
    red, green, blue = color.get_truecolor()
    return red, green, blue


def _between(one: RGB, other: RGB) -> RGB:
    red, green, blue = ((a + b) // 2 for a, b in zip(one, other, strict=True))
    return red, green, blue
