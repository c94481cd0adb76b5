"""Which slot the keys for arrived, seated and cleared refer to. Pure."""

from board.evening.state import State


def slot_to_mark(state: State, what: str) -> str | None:
    """The id of the next open slot of that kind; for `clear`, only of a course that was served. None if there is
    none."""
    slots = [slot for slot in state.sheet.slots if slot.kind == what and not state.steps[slot.id].settled]
    if what != "clear":
        return slots[0].id if slots else None
    served = {c.clear for c in state.sheet.courses if state.steps[c.serve].status == "finished"}
    return next((slot.id for slot in slots if slot.id in served), None)
