"""How far each slot can slip before a course goes out later than it is due. Pure; seconds or minutes, as handed in."""

from collections.abc import Mapping, Sequence

from board.sheet.run_sheet import HANDS, Slot

READY = "ready"  # the reason of a wait that is a wish: the guests come whether or not it is done


def latest_starts(
    slots: Sequence[Slot],
    lengths: Mapping[str, float],
    due: Mapping[str, float],
    unit: float = 1.0,
    free: frozenset[tuple[str, str]] = frozenset(),
) -> dict[str, float]:
    """The latest start of every slot that leads to one in `due` (id → its start), in the unit of `lengths`.

    `slots` must stand in the run sheet's order; `unit` is how many of the unit make a minute;
    a wait for hands between a pair in `free` (slot, what it waits for) is void.
    """
    latest: dict[str, float] = dict(due)
    for slot in reversed(slots):
        if slot.id not in latest:
            continue
        for wait in slot.waits:
            if wait.reason == HANDS and (slot.id, wait.after) in free:
                continue
            bound = latest[slot.id] - wait.minutes * unit
            if wait.anchor == "end":
                bound -= lengths[wait.after]
            latest[wait.after] = min(latest.get(wait.after, bound), bound)
    return latest
