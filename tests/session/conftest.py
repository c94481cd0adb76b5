"""Waiting, which no board ever does, for what is worked out beside it."""

import time

from board.session.background import Answer, Background, Request
from board.session.plan_watcher import PlanWatcher
from board.sheet.changed import Changed


def heard(background: Background, kind: type[Request]) -> Answer:
    """The answer, as soon as it is there."""
    end = time.monotonic() + 60
    while time.monotonic() < end:
        if (found := background.answer(kind)) is not None:
            return found
        time.sleep(0.02)
    raise AssertionError("it never answered")


def wait_for(watcher: PlanWatcher) -> Changed | None:
    """What one look at the plan's file brings in the end."""
    end = time.monotonic() + 60
    while time.monotonic() < end:
        found = watcher.look()
        if found is not None or not watcher.busy:
            return found
        time.sleep(0.02)
    raise AssertionError("it never ended")
