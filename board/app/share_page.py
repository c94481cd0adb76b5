"""The page for helpers' phones, with what it shows of the plan."""

from pathlib import Path
from socket import socket

from board.base.errors import Trouble
from board.files.pantry import in_the_house, read_ticks, ticks_path
from board.files.plans import read_plan_file
from board.share.papers import FromPlan
from board.share.served import Served
from board.sheet.run_sheet import RunSheet
from board.shopping.errands import provisions
from board.shopping.ticks import Ticks


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
