"""A rough night practised on the board with keys alone, from the afternoon to the score."""

from datetime import timedelta

import pytest

from board.base.clock import StoppedClock, VirtualClock
from board.evening.events import GuestsDelayed, StepStretched
from board.rehearsal.draw import draw_night, night_score
from board.rehearsal.live_night import NightEvening
from board.rehearsal.player import catch_up
from board.screens.app import BoardApp
from board.screens.reading import ReadingScreen
from board.session.session import unlogged_evening
from board.sheet.run_sheet import RunSheet
from tests.screens.test_whole_evening import Seconds

SEED = 3


@pytest.mark.slow  # a whole night; parts of it are played elsewhere
async def test_a_rough_night_from_the_afternoon_to_its_score(lantern_sheet: RunSheet) -> None:
    start = lantern_sheet.arrive - timedelta(minutes=90)
    stopped = StoppedClock(min(slot.start for slot in lantern_sheet.slots))
    before = unlogged_evening(lantern_sheet, stopped)
    catch_up(before, stopped, start)
    settled = {id_ for id_, step in before.state.steps.items() if step.status != "to-come"}
    night = draw_night(lantern_sheet, "rough", SEED)
    seconds = Seconds()
    virtual = before.clock = VirtualClock(start, 10.0, monotonic=seconds)
    evening = NightEvening(before, night)
    app = BoardApp(evening, virtual=virtual, bell=False)
    heard: list[str] = []

    async with app.run_test(size=(120, 36)) as pilot:
        await pilot.pause()
        for _ in range(900):
            present = app.live.present
            assert present is not None
            if isinstance(app.screen, ReadingScreen):
                await pilot.press(*"75 C", "enter")
            elif present.due:
                await pilot.press("space")
            elif any(not call.silent for call in present.coming):
                await pilot.press("j")
            elif all(step.settled for step in evening.state.steps.values()):
                break
            else:
                seconds.now += 6.0  # a minute of the evening: a call goes unheard
                app.live.tick()
            if not heard or app.live.heard[0] != heard[-1]:
                heard.append(app.live.heard[0])
            seconds.now += 0.1
        await pilot.press("q")
        await pilot.press("e")
        await pilot.press("escape")

    state = evening.state
    assert state.closed
    assert [e.minutes for e in evening.told if isinstance(e, GuestsDelayed) and e.course is None] == [night.guests_late]
    stretched = [e for e in evening.told if isinstance(e, StepStretched)]
    assert stretched
    assert sum("is not ready yet" in line for line in heard) > 0
    assert any("went unheard" in line for line in heard)
    for slot in lantern_sheet.slots:
        step = state.steps[slot.id]
        if slot.id in night.lasts and slot.id not in settled and not slot.ends_by_itself:
            assert step.started is not None
            assert step.finished is not None
            assert step.finished - step.started >= night.lasts[slot.id] - timedelta(seconds=1), slot.name
    score = list(night_score(evening, night))
    assert f"The guests came {night.guests_late} min late." in score
    assert not any("was not served" in line for line in score)
