"""Lines of styled text, of which only changed ones are redrawn: most stay the same from second to second.

A line is a tuple of (text, role), its text already safe; a role is one of the look's or rich's style words. A line that
is too long is cut with an ellipsis. Nothing in it is read as markup.
"""

from collections.abc import Sequence
from functools import lru_cache

from rich.cells import cell_len, set_cell_size
from rich.segment import Segment
from rich.style import Style
from textual.geometry import Region
from textual.strip import Strip
from textual.widget import Widget

from board.screens.palette import look_of

Line = tuple[tuple[str, str], ...]


class Lines(Widget):
    """A widget drawn line by line. Subclasses define `show`, which passes its lines to `put`."""

    def __init__(self, *, id: str) -> None:
        super().__init__(id=id)
        self._lines: tuple[Line, ...] = ()

    def put(self, lines: Sequence[Line]) -> None:
        """Shows these lines from the top; only changed ones are redrawn."""
        before, self._lines = self._lines, tuple(lines)
        for y in range(max(len(before), len(self._lines))):
            if _at(before, y) != _at(self._lines, y):
                self.refresh(Region(0, y, self.size.width, 1))

    def wear(self, tone: str) -> None:
        """Sets its one style class; setting the same again costs nothing."""
        if not self.has_class(tone):
            self.set_classes(tone)

    def render_line(self, y: int) -> Strip:
        width, base, roles = self.size.width, self.rich_style, look_of(self.app).roles
        strip = Strip([Segment(text, base + _style(roles.get(role, role))) for text, role in _at(self._lines, y)])
        if strip.cell_length > width:
            strip = Strip([*strip.crop(0, max(0, width - 1)), Segment("…", base)])
        return strip.adjust_cell_length(width, base)


def fitted(line: Line, width: int) -> Line:
    """The line at exactly this width: cut with an ellipsis, or padded."""
    found: list[tuple[str, str]] = []
    left = width
    for text, role in line:
        if cell_len(text) > left:
            found.append((f"{set_cell_size(text, max(0, left - 1))}…"[: max(0, left)], role))
            return tuple(found)
        found.append((text, role))
        left -= cell_len(text)
    return (*found, (" " * left, ""))


def _at(lines: Sequence[Line], y: int) -> Line:
    return lines[y] if y < len(lines) else ()


@lru_cache(maxsize=64)
def _style(words: str) -> Style:
    return Style.parse(words)
