"""Markdown as plain lines for a terminal: no colour, no box, nothing wider than asked for where words allow. Pure."""

import re
import textwrap
from collections.abc import Iterator

_BULLET = re.compile(r"(- |\d+\. )(.+)", re.DOTALL)
_FENCE = "```"


def shown(markdown: str, width: int) -> str:
    """Its lines at most `width` columns wide; what stands in a fence is indented and kept as it is."""
    return "\n".join(_lines(markdown, width)) + "\n"


def _lines(markdown: str, width: int) -> Iterator[str]:
    for number, block in enumerate(_blocks(markdown)):
        if number:
            yield ""
        if block.startswith(_FENCE):
            yield from (f"    {line}".rstrip() for line in block.split("\n")[1:-1])
        elif heading := re.fullmatch(r"(#+) (.+)", block):
            said = _plain(heading[2])
            yield from textwrap.wrap(said, width)
            yield ("=" if len(heading[1]) == 1 else "-") * min(len(said), width)
        else:
            for item in re.split(r"\n(?=- |\d+\. )", block):
                yield from _wrapped(item, width)


def _wrapped(item: str, width: int) -> list[str]:
    match = _BULLET.fullmatch(item)
    mark, text = (match[1], match[2]) if match else ("", item)
    return textwrap.wrap(
        _plain(" ".join(text.split())), width, initial_indent=mark, subsequent_indent=" " * len(mark),
        break_long_words=False, break_on_hyphens=False,
    )  # fmt: skip


def _blocks(markdown: str) -> Iterator[str]:
    """Headings, fences, lists and paragraphs, each as it is written."""
    pieces = re.split(r"(^```.*?^```$)", markdown.strip(), flags=re.MULTILINE | re.DOTALL)
    for piece in pieces:
        if piece.startswith(_FENCE):
            yield piece
        else:
            yield from (block.strip("\n") for block in re.split(r"\n\s*\n", piece) if block.strip())


def _plain(text: str) -> str:
    """Without Markdown's marks; what is typed keeps its marks where they tell it from the words around it."""
    return re.sub(r"\*\*(.+?)\*\*", r"\1", text)
