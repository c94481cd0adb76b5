"""Long texts broken into lines by width in cells. Pure."""

from collections.abc import Iterable, Iterator

from rich.cells import cell_len

from board.base.wrap import words_of


def wrap_words(text: str, width: int, most: int | None = None) -> list[str]:
    """The text in lines of at most `width` cells, broken between words if possible. At most `most` lines, the last
    ending in an ellipsis if text is lost."""
    width = max(2, width)
    lines = [""]
    for word in _pieces(words_of(" ".join(text.split())), width):
        longer = f"{lines[-1]} {word}" if lines[-1] else word
        if cell_len(longer) <= width:
            lines[-1] = longer
        else:
            lines.append(word)
    if most is not None and len(lines) > most:
        lines = [*lines[: most - 1], cut(f"{lines[most - 1]} {lines[most]}", width)]
    return lines


def cut(text: str, width: int) -> str:
    """The text in at most `width` cells, with an ellipsis if text is lost."""
    if cell_len(text) <= width:
        return text
    while text and cell_len(text) > width - 1:
        text = text[:-1]
    return f"{text.rstrip()}…"


def pad(text: str, width: int) -> str:
    """The text in exactly `width` cells."""
    text = cut(text, width)
    return text + " " * (width - cell_len(text))


def _pieces(found: Iterable[str], width: int) -> Iterator[str]:
    """The words; one too long for a line is cut into pieces that fit."""
    for word in found:
        piece = ""
        for char in word:
            if cell_len(piece + char) > width:
                yield piece
                piece = ""
            piece += char
        yield piece
