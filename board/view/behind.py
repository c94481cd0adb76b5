"""A step that the host can say was done, as a row. Pure."""

from board.base import words as shared
from board.base.plain import one_line
from board.evening.events import Said
from board.view import words
from board.view.board import Viewer


def said_row(viewer: Viewer, said: Said, *, ticked: bool) -> tuple[str, str]:
    """Its text, `Fri 17:00–17:30  brown the beef (Beef shin)` behind a sign, and its role on the screen."""
    slot = viewer.slots[said.slot]
    over = said.finished is not None
    sign = shared.SIGN[("finished" if over else "under-way") if ticked else "box"]
    end = shared.clock(viewer.local(said.finished)) if said.finished is not None else words.STILL
    at = shared.from_to(shared.day_and_clock(viewer.local(said.started)), end)
    dish = f" ({one_line(slot.dish)})" if slot.dish is not None and slot.kind in ("step", "job") else ""
    return f"{sign} {at:<16} {one_line(slot.name)}{dish}", "text" if ticked else "soft"
