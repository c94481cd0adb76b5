"""Which call a key refers to. Pure: the board as shown and the chosen call → one of its calls."""

from collections.abc import Iterable

from board.evening.state import CallKey
from board.view.board import BoardView, CallView


def chosen_call(view: BoardView, chosen: CallKey | None) -> CallView | None:
    """The call that keys act on: the chosen one, else the first one due; None without either."""
    return _of(chosen, (*view.due, *view.coming)) or (view.due[0] if view.due else None)


def meant_call(view: BoardView, chosen: CallKey | None) -> CallView | None:
    """The call an answer refers to: the one keys act on, else the end of the step in hand."""
    call = chosen_call(view, chosen)
    return coming_call(view, view.busy) if call is None else call


def coming_call(view: BoardView, key: CallKey | None) -> CallView | None:
    """The call with that key, if it is still ahead."""
    return _of(key, view.coming)


def beside(view: BoardView, chosen: CallKey | None, step: int) -> CallKey | None:
    """The key `step` calls below the current one, wrapping around. With none current, the first or the last; None
    without calls."""
    keys = [call.key for call in (*view.due, *view.coming)]
    if not keys:
        return None
    current = chosen_call(view, chosen)
    if current is None:
        return keys[0] if step > 0 else keys[-1]
    return keys[(keys.index(current.key) + step) % len(keys)]


def _of(key: CallKey | None, calls: Iterable[CallView]) -> CallView | None:
    return next((call for call in calls if call.key == key), None)
