"""The bundled evening played on the virtual clock with keys alone, as a host at rehearsal would."""

from datetime import datetime, timedelta

import pytest

from board.base.clock import StoppedClock, VirtualClock
from board.rehearsal.player import catch_up
from board.screens.app import BoardApp
from board.screens.reading import ReadingScreen
from board.session.session import unlogged_evening
from board.sheet.run_sheet import RunSheet, Slot


class Seconds:
    """A monotonic clock moved by hand."""

    def __init__(self) -> None:
        self.now = 0.0

    def __call__(self) -> float:
        return self.now


@pytest.mark.slow
async def test_the_bundled_evening_from_the_afternoon_to_the_last_plate(lantern_sheet: RunSheet) -> None:
    start = lantern_sheet.arrive - timedelta(minutes=90)
    stopped = StoppedClock(min(slot.start for slot in lantern_sheet.slots))
    evening = unlogged_evening(lantern_sheet, stopped)
    catch_up(evening, stopped, start)
    seconds = Seconds()
    virtual = VirtualClock(start, 10.0, monotonic=seconds)
    evening.clock = virtual
    app = BoardApp(evening, virtual=virtual, bell=False)

    async with app.run_test(size=(120, 36)) as pilot:
        await pilot.pause()
        for _ in range(400):
            present = evening.tick()
            if isinstance(app.screen, ReadingScreen):
                await pilot.press(*"75 C", "enter")
            elif present.due:
                await pilot.press("space")
            elif present.coming:
                await pilot.press("j")
            else:
                break
            seconds.now += 0.1  # a second of the evening passes
        state = evening.state

    assert {reading.slot for reading in state.readings} == {s.id for s in lantern_sheet.slots if _is_read(s, start)}
    assert state.unread == ()
    assert all(step.status == "finished" for step in state.steps.values())
    for course in evening.tick().forecast.courses:
        assert course.is_served
        assert course.late_minutes <= 1, course  # each answer came a second or so after its call


def _is_read(slot: Slot, start: datetime) -> bool:
    return slot.core_celsius is not None and slot.end >= start


async def test_pause_and_speed_of_the_virtual_clock(lantern_sheet: RunSheet) -> None:
    seconds = Seconds()
    start = min(slot.start for slot in lantern_sheet.slots) - timedelta(minutes=2)
    virtual = VirtualClock(start, 10.0, monotonic=seconds)
    app = BoardApp(unlogged_evening(lantern_sheet, virtual), virtual=virtual, bell=False)

    async with app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        seconds.now = 3.0
        assert virtual.now() - start == timedelta(seconds=30)
        await pilot.press("h")
        seconds.now = 60.0
        assert virtual.now() - start == timedelta(seconds=30)
        await pilot.press("h", "full_stop")
        seconds.now = 61.0

        assert virtual.now() - start == timedelta(seconds=50)
