"""Which call a key means. Pure: the board as shown and the call that was chosen → a call of it."""

from collections.abc import Iterable

from board.evening.state import CallKey
from board.view.board import BoardView, CallView


def chosen_call(view: BoardView, chosen: CallKey | None) -> CallView | None:
    """The call keys act on: the one chosen, else the first that is due."""
    return _of(chosen, (*view.due, *view.coming)) or (view.due[0] if view.due else None)


def meant_call(view: BoardView, chosen: CallKey | None) -> CallView | None:
    """The call an answer means: the one keys act on, else the end of what hands are on now."""
    call = chosen_call(view, chosen)
    return coming_call(view, view.busy) if call is None else call


def coming_call(view: BoardView, key: CallKey | None) -> CallView | None:
    """The call of that key, if it is still to come."""
    return _of(key, view.coming)


def beside(view: BoardView, chosen: CallKey | None, step: int) -> CallKey | None:
    """So many calls below the one keys act on, round the end; from none, the first or the last; None without calls."""
    keys = [call.key for call in (*view.due, *view.coming)]
    if not keys:
        return None
    current = chosen_call(view, chosen)
    if current is None:
        return keys[0] if step > 0 else keys[-1]
    return keys[(keys.index(current.key) + step) % len(keys)]


def _of(key: CallKey | None, calls: Iterable[CallView]) -> CallView | None:
    return next((call for call in calls if call.key == key), None)
