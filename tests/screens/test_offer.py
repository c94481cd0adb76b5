"""A better timetable is offered in a line, taken with one key, and taken back with another."""

import pytest

from board.evening.events import OfferMade
from board.evening.wishes import WriteNote
from board.log.record import from_line, to_line
from board.plan.load import PlanFile
from board.screens.app import BoardApp
from board.session.replan.advisor import Advisor
from board.session.replan.anew import worked_out_anew
from board.view.look import happened
from tests.conftest import at
from tests.examples import first
from tests.screens.conftest import Recorder, screen_text
from tests.session.replan.conftest import Slipping, pie, pie_sheet, slipping  # noqa: F401  # fixtures
from tests.session.replan.test_advisor import Slow


async def test_an_offer_is_shown_taken_and_taken_back(pie: PlanFile, slipping: Slipping) -> None:  # noqa: F811
    solver = Slow()
    slipping.until(at("18:31"))
    app = BoardApp(slipping.evening, chime=Recorder(), advisor=Advisor(solver))
    async with app.run_test(size=(110, 36)) as pilot:
        await pilot.pause()
        app.live.tick()
        assert len(solver.asked) == 1
        await pilot.press("r")
        assert "Still looking for a better timetable" in screen_text(app)
        solver.found_nothing = True
        app.live.tick()
        await pilot.press("r")
        assert "No timetable found in the time there is" in screen_text(app)

        old = slipping.evening.sheet
        solver.ready = worked_out_anew(pie, slipping.evening.state, slipping.clock.now())
        app.live.tick()
        await pilot.pause()
        assert "r: Main 19:30 instead of 19:" in screen_text(app)
        assert "Main 19:" in screen_text(app).split("r: Main")[0]  # the courses stay in sight above it

        await pilot.press("r")
        await pilot.pause()
        assert slipping.evening.sheet is not old
        assert "New timetable in use · u undoes" in screen_text(app)

        await pilot.press("u")
        assert slipping.evening.sheet == old
        assert "undone: the new timetable" in screen_text(app)


async def test_an_offer_that_is_left_stands_once_in_the_log_and_in_look_back(
    pie: PlanFile,  # noqa: F811
    slipping: Slipping,  # noqa: F811
) -> None:
    solver, evening = Slow(), slipping.evening
    slipping.until(at("18:31"))
    app = BoardApp(evening, chime=Recorder(), advisor=Advisor(solver, heard=evening.offered))
    async with app.run_test(size=(110, 36)) as pilot:
        await pilot.pause()
        app.live.tick()
        solver.ready = worked_out_anew(pie, evening.state, slipping.clock.now())
        app.live.tick()
        evening.wish(WriteNote("not now"))
        for _ in range(3):  # weighed again after an answer, it is the same offer
            app.live.tick()
        assert len(solver.asked) == 2

        (made,) = [event for event in evening.told if isinstance(event, OfferMade)]
        main = next(each for each in made.courses if each.course == "Main")
        assert main.offered == at("19:30") < main.served
        told = happened(app.live.viewer, evening.told, slipping.clock.now())
        assert [line.text for line in told if line.text.startswith("offered: ")] == [
            f"offered: Main 19:30 instead of {main.served:%H:%M}"
        ]
        assert from_line(to_line(made)) == made


@pytest.mark.parametrize("width", first(1, [80, 60, 120]))
async def test_beside_an_offer_the_courses_and_every_key_stay(
    pie: PlanFile,  # noqa: F811
    slipping: Slipping,  # noqa: F811
    width: int,
) -> None:
    solver = Slow()
    slipping.until(at("18:31"))
    app = BoardApp(slipping.evening, chime=Recorder(), advisor=Advisor(solver))
    async with app.run_test(size=(width, 36)) as pilot:
        await pilot.pause()
        app.live.tick()
        solver.ready = worked_out_anew(pie, slipping.evening.state, slipping.clock.now())
        for clock in ("18:36", "18:45"):  # as it is called; when it waits so long that a frame stands around it
            slipping.clock.set(at(clock))
            app.live.tick()
            for height in (36, 24, 23, 21, 20, 18, 11):
                await pilot.resize_terminal(width, height)
                await pilot.pause()

                shown = screen_text(app)
                assert "r: Main " in shown
                assert shown.index("Main ") < shown.index("r: Main ")  # the line of courses
                assert app.live.keys.region.bottom == height
        assert app.live.said.has_class("-overdue")

        await pilot.press("r")
        await pilot.pause()
        assert "r: Main" not in screen_text(app)
        assert not app.live.better.display
