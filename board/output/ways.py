"""Ways out of what a run sheet gives up, numbered, each with its price."""

from collections.abc import Sequence

from rich.console import Console

from board.output import words
from board.output.tables import cell, paragraph
from board.schedule.conflicts.ways_out import WayOut


def print_ways(ways: Sequence[WayOut], plan: str, out: Console) -> None:
    """The cheapest first, and how to take one. `plan` is the file as the user named it."""
    out.print()
    out.print(cell(words.WAYS_OUT if ways else words.NO_WAYS_OUT, "bold"))
    for number, way in enumerate(ways, start=1):
        out.print(paragraph(words.way_line(number, way.what), indent=2))
        out.print(paragraph(way.price, "dim", indent=5))
    if ways:
        out.print(cell(words.how_to_take(plan), indent=2))


def print_taken(lines: Sequence[str], plan: str, out: Console) -> None:
    """What was changed in the plan, as its lines before and after."""
    out.print(cell(words.taken(plan), "bold"))
    for line in lines:
        out.print(cell(line, indent=2))
