"""The page for helpers' phones: where it is served, and what of the plan it shows."""

from pathlib import Path
from socket import socket

from board.base.errors import Trouble
from board.files.pantry import in_the_house, read_ticks, ticks_path
from board.files.plans import read_plan_file
from board.share.address import Address, addresses, chosen, listening
from board.share.papers import FromPlan
from board.share.served import Served
from board.sheet.run_sheet import RunSheet
from board.shopping.errands import provisions
from board.shopping.ticks import Ticks


def bound_at(asked: Address | None) -> socket:
    """At the address asked for; None: the only one there is. Raises Trouble."""
    return listening(chosen(asked, addresses()))


def page_for(bound: socket, plan: Path, sheet: RunSheet) -> Served:
    """The page at that socket, with what the plan has beside the sheet."""
    return Served(bound, _from_plan(plan, sheet))


def _from_plan(path: Path, sheet: RunSheet) -> FromPlan:
    """Nothing, if it cannot be read or the sheet is not its own."""
    try:
        plan = read_plan_file(path)
        if plan.digest != sheet.digest:
            return FromPlan()
        found = provisions(plan, sheet, in_the_house(plan, path))
    except Trouble:
        return FromPlan()
    return FromPlan(plan, found, Ticks(read_ticks(ticks_path(path)) or {}))
