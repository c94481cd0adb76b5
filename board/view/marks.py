"""Which slot the keys for arrived, seated and cleared mean. Pure."""

from board.evening.state import State


def slot_to_mark(state: State, what: str) -> str | None:
    """The slot of that kind to settle next: for `clear` the course last served. None when there is none."""
    slots = [slot for slot in state.sheet.slots if slot.kind == what and not state.steps[slot.id].settled]
    if what != "clear":
        return slots[0].id if slots else None
    served = {c.clear for c in state.sheet.courses if state.steps[c.serve].status == "finished"}
    return next((slot.id for slot in slots if slot.id in served), None)
