"""Which keys do something at this moment, beside those of the call. Pure: the board as shown → keys, few enough to be
read."""

from collections.abc import Iterator
from datetime import timedelta

from board.evening.answers import answers_of
from board.evening.clocks import next_to_put_away
from board.evening.readings import can_be_read
from board.view.board import BoardView
from board.view.marks import slot_to_mark
from board.view.present import Present

MOST, FEWEST = 6, 4
GUESTS_SOON = timedelta(minutes=45)  # from this long before they are due, guests may come early
MARK_KEYS = {"arrive": "a", "seat": "s", "clear": "c"}
HELP = "?"


def keys_now(view: BoardView, at: Present, *, offered: bool, rehearsal: bool) -> tuple[str, ...]:
    """What presses first, and always the key to all the others; from four to six."""
    found = list(_that_act(view, at, offered=offered, rehearsal=rehearsal))
    found += ("n", "o")[: max(0, FEWEST - 1 - len(found))]
    return (*found[: MOST - 1], HELP)


def _that_act(view: BoardView, at: Present, *, offered: bool, rehearsal: bool) -> Iterator[str]:
    if offered:
        yield "r"
    if next_to_put_away(at.clocks) is not None:
        yield "f"
    if at.behind:
        yield "y"
    due = {call.key[0] for call in view.due[:1]}
    for what, key in MARK_KEYS.items():
        slot = slot_to_mark(at.state, what)
        if slot is not None and slot not in due and _is_near(what, slot, at):
            yield key
            break
    if answers_of(at.state):
        yield "u"
    ahead = any(course.is_ahead for course in at.forecast.courses)
    yield from ("w", "p") if ahead else ()
    if rehearsal and view.coming:
        yield "j"
    if can_be_read(at.state, at.forecast):
        yield "t"
    if not view.due and not view.coming:
        yield "q"


def _is_near(what: str, slot: str, at: Present) -> bool:
    """Guests sit down once they are there, and are cleared once they were served."""
    arrived = slot_to_mark(at.state, "arrive") is None
    if what == "arrive":
        return at.forecast.slots[slot].start - at.now <= GUESTS_SOON
    return arrived
