"""An app kept open: when a fault ends it, it is opened again in its place, with what was being typed."""

from collections.abc import Callable

from textual.app import ReturnType

from board.base.clock import seconds_passed
from board.screens.dressed import DressedApp, Fallen

STOOD_SECONDS = 5.0  # an app that stood so long before it fell can be used
MOST_FAULTS = 5


class EndedByFault(Exception):
    """Opened again and again, it fell each time; the text says by what."""


def kept_open(
    make: Callable[[Fallen | None], DressedApp[ReturnType]],
    run: Callable[[DressedApp[ReturnType]], ReturnType | None],
) -> ReturnType | None:
    """What the app returns in the end. `make` is handed what the one before fell by. Raises EndedByFault, and
    SystemExit where a signal ended it."""
    fallen: Fallen | None = None
    faults = 0
    while faults <= MOST_FAULTS:
        app, began = make(fallen), seconds_passed()
        try:
            result = run(app)
        except Exception as wrong:
            app.fell(wrong)
        if app.fallen is None:
            if app.ended_by is not None:
                raise SystemExit(128 + app.ended_by)
            return result
        fallen = app.fallen
        faults = faults + 1 if seconds_passed() - began < STOOD_SECONDS else 1
    raise EndedByFault("" if fallen is None else fallen.why)
