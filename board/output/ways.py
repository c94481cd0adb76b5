"""Ways out of what a run sheet gives up, numbered, each with its price."""

from collections.abc import Sequence

from rich.console import Console

from board.output import words
from board.output.tables import cell, paragraph
from board.schedule.conflicts.ways_out import WayOut


def print_ways(ways: Sequence[WayOut], plan: str, out: Console, *, all_tried: bool) -> None:
    """The best first, and how to take one. `plan` is the file as the user named it."""
    out.print()
    whole = words.WAYS_OUT if all(not way.remains for way in ways) else words.WAYS_IN_PART
    out.print(paragraph(whole if ways else words.NO_WAYS_OUT, "bold"))
    for number, way in enumerate(ways, start=1):
        out.print(paragraph(words.way_line(number, way.what), indent=2))
        for line in filter(None, (way.brings, way.costs)):
            out.print(paragraph(line, "dim", indent=5))
    if not all_tried:
        out.print(paragraph(words.NOT_ALL_TRIED, indent=2))
    if ways:
        out.print(cell(words.how_to_take(plan), indent=2))


def print_taken(lines: Sequence[str], plan: str, out: Console, what: str = "") -> None:
    """What was changed in the plan, in words if there are any, and as its lines before and after."""
    out.print(cell(words.taken(plan), "bold"))
    if what:
        out.print(paragraph(what, indent=2))
    for line in lines:
        out.print(cell(line, indent=2))
