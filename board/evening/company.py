"""Minutes away from the guests of each who sits, and how long they stay seated: as it looks, and as it was. Pure."""

from collections.abc import Collection, Iterable, Iterator
from datetime import datetime

from board.evening.forecast import Forecast
from board.evening.hands import parts
from board.evening.state import State
from board.sheet.company import away
from board.sheet.quiet import Quiet, quiet
from board.sheet.run_sheet import Attended, RunSheet, Slot


def away_by_forecast(sheet: RunSheet, forecast: Forecast, of: Collection[str] | None = None) -> dict[str, int]:
    """As it looks; `of`: what of the work is counted, all of it unless told."""
    return away(sheet, lambda slot: forecast.slots[slot.id].start, _work(sheet, forecast, of), forecast.left_out)


def quiet_by_forecast(sheet: RunSheet, forecast: Forecast, of: Collection[str] | None = None) -> tuple[Quiet, ...]:
    """How long those who eat stay seated, as it looks; `of`: as above."""

    def span(slot: Slot) -> tuple[datetime, datetime]:
        ahead = forecast.slots[slot.id]
        return ahead.start, ahead.end

    return quiet(sheet, span, _work(sheet, forecast, of), forecast.left_out)


def _work(sheet: RunSheet, forecast: Forecast, of: Collection[str] | None) -> Iterator[tuple[Slot, Iterable[Attended]]]:
    for slot in sheet.slots:
        if slot.id not in forecast.left_out and (of is None or slot.id in of):
            yield slot, parts(slot, forecast.slots[slot.id].start, forecast.slots[slot.id].end)


def away_as_it_was(state: State) -> dict[str, int]:
    """By when work was begun and ended; what is under way, and a part of a step, by its length."""

    def begins(slot: Slot) -> datetime:
        return state.steps[slot.id].started or slot.start

    work = (
        (slot, parts(slot, step.started, step.finished or step.started + step.lasts(slot)))
        for slot in state.sheet.slots
        if (step := state.steps[slot.id]).started is not None
    )
    left_out = {id_ for id_, step in state.steps.items() if step.status == "left-out"}
    return away(state.sheet, begins, work, left_out)
