"""Two run sheets of one event → what the later one has otherwise. Pure."""

from dataclasses import dataclass

from board.sheet.run_sheet import RunSheet, Slot


@dataclass(frozen=True, slots=True)
class Changed:
    """A plan edited since its evening began: steps added, gone, and at other times (as they were, as they are).

    `usable` False: it gives no timetable as it is now, and the rest is empty.
    """

    added: tuple[Slot, ...] = ()
    gone: tuple[Slot, ...] = ()
    moved: tuple[tuple[Slot, Slot], ...] = ()
    usable: bool = True


def changed(before: RunSheet, after: RunSheet) -> Changed:
    """In the order of time. An oven's heating is the timetable's own, and not told; nor what takes its place by
    another name is matched with it: a step is known by its words."""
    old, new = _told(before), _told(after)
    return Changed(
        added=tuple(slot for id_, slot in new.items() if id_ not in old),
        gone=tuple(slot for id_, slot in old.items() if id_ not in new),
        moved=tuple(
            (old[id_], slot)
            for id_, slot in new.items()
            if id_ in old and (old[id_].start, old[id_].end) != (slot.start, slot.end)
        ),
    )


def _told(sheet: RunSheet) -> dict[str, Slot]:
    return {slot.id: slot for slot in sorted(sheet.slots, key=lambda slot: slot.start) if not slot.of_a_dial}
