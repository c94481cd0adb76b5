"""Looking on, by Pilot: the same board, following within a second, with no key that answers."""

from pathlib import Path

import msgspec
import pytest
from textual.pilot import Pilot

from board.base import words as shared
from board.base.clock import StoppedClock
from board.evening.wishes import Done, Settle, WriteNote
from board.log import words as log_words
from board.log.follow import Follower
from board.log.write import RunLog
from board.screens import words
from board.screens.watch import WatchApp
from board.session.session import Evening, open_evening
from board.sheet.run_sheet import Attended, RunSheet
from board.view import words as view_words
from tests.conftest import at, slot
from tests.evening.test_clocks import TO_THE_FILLING, custard_supper
from tests.screens.conftest import Recorder, screen_text

SIZE = (120, 36)
FOLLOWED = 0.9  # what is appended shows within a second


class Watching:
    """A running evening, and somebody who looks on at it."""

    def __init__(self, path: Path, sheet: RunSheet, who: str | None = None) -> None:
        self.path = path
        self.sheet = sheet
        self.clock = StoppedClock(at("17:00"))
        self.chime = Recorder()
        self.app = WatchApp(Follower(path), self.clock, who, chime=self.chime)

    def run(self, *, rehearsal: bool = False) -> Evening:
        self.log = RunLog(self.path)
        return open_evening(self.sheet, self.clock, self.log, rehearsal=rehearsal)

    def shown(self) -> str:
        return screen_text(self.app)  # type: ignore[arg-type]


@pytest.fixture
def watching(tmp_path: Path, little: RunSheet) -> Watching:
    return Watching(tmp_path / "evening.jsonl", little)


async def comes(pilot: Pilot[None], watching: Watching, text: str) -> None:
    """A loaded machine may take longer than a second."""
    for _ in range(60):
        if text in watching.shown():
            return
        await pilot.pause(0.25)
    raise AssertionError(text)


async def test_it_waits_for_an_evening_and_then_follows_it(watching: Watching) -> None:
    async with watching.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        assert "There is no evening in" in watching.shown()

        evening = watching.run()
        evening.tick()
        await comes(pilot, watching, "Little supper")
        await comes(pilot, watching, shared.LOOKING_ON)
        evening.wish(Done("chop", "start"))

        await comes(pilot, watching, "20:00 chop")  # it runs, with its countdown


async def test_no_key_answers_and_none_is_offered(watching: Watching) -> None:
    evening = watching.run()
    evening.tick()
    before = watching.path.read_bytes()
    async with watching.app.run_test(size=SIZE) as pilot:
        await pilot.pause(FOLLOWED)
        shown = watching.shown()

        await pilot.press("space", "enter", "l", "x", "u", "p", "a", "s", "c", "n", "h", "j", "e")
        await pilot.pause()

        assert watching.path.read_bytes() == before
        assert "space" not in shown
        assert "later" not in shown
        assert len(watching.app.screen_stack) <= 2


async def test_a_course_pressed_opens_nothing_for_nothing_can_be_pushed_here(watching: Watching) -> None:
    evening = watching.run()
    evening.tick()
    before = watching.path.read_bytes()
    async with watching.app.run_test(size=SIZE) as pilot:
        await pilot.pause(FOLLOWED)
        row = next(n for n, line in enumerate(watching.shown().splitlines()) if line.startswith("  Stew 19:00"))

        await pilot.click(offset=(4, row))
        await pilot.pause()

        assert words.PUSH_TITLE not in watching.shown()
        assert watching.path.read_bytes() == before


async def test_one_can_look_zoom_ask_for_help_and_leave(watching: Watching) -> None:
    watching.run().tick()
    async with watching.app.run_test(size=SIZE) as pilot:
        await pilot.pause(FOLLOWED)
        before = watching.shown()

        await pilot.press("down", "down")
        await pilot.pause()
        assert words.NOT_CALLED in watching.shown()
        assert "space" not in watching.shown()
        await pilot.press("z")
        await pilot.pause()
        assert watching.shown() != before
        await pilot.press("question_mark")
        await pilot.pause()
        assert words.HELP_TITLE in watching.shown()
        await pilot.press("escape")
        await pilot.press("q")
        await pilot.pause()

        assert not watching.app.is_running


async def test_calls_are_silent_unless_the_bell_is_wanted(watching: Watching) -> None:
    watching.run()
    watching.clock.set(at("16:59"))
    async with watching.app.run_test(size=SIZE) as pilot:
        await pilot.pause(FOLLOWED)
        watching.clock.set(at("17:00"))
        await pilot.pause(1.2)
        assert watching.chime.rung == 0

        await pilot.press("b")
        watching.clock.set(at("18:30"))
        await pilot.pause(1.2)

        assert watching.chime.rung == 1


async def test_a_rehearsal_says_what_time_it_shows(watching: Watching) -> None:
    evening = watching.run(rehearsal=True)
    watching.clock.set(at("17:13"))
    evening.wish(WriteNote("x"))
    async with watching.app.run_test(size=SIZE) as pilot:
        await pilot.pause(FOLLOWED)

        assert words.NEWEST_EVENT in watching.shown()
        assert "┃17:13" in watching.shown()


async def test_a_log_that_goes_is_said_and_its_return_seen(watching: Watching) -> None:
    evening = watching.run()
    evening.tick()
    async with watching.app.run_test(size=SIZE) as pilot:
        await pilot.pause(FOLLOWED)
        watching.path.unlink()
        await pilot.pause(FOLLOWED)
        assert log_words.LOG_GONE in watching.shown()

        evening.wish(Done("chop", "start"))
        await pilot.pause(FOLLOWED)

        assert log_words.LOG_GONE not in watching.shown()
        assert "20:00 chop" in watching.shown()


async def test_for_one_person_only_their_steps_show(tmp_path: Path, little: RunSheet) -> None:
    sauce = next(slot for slot in little.slots if slot.id == "sauce")
    theirs = msgspec.structs.replace(sauce, attended=(Attended(sauce.start, sauce.end, "Mira", "all"),))
    slots = tuple(theirs if slot.id == "sauce" else slot for slot in little.slots)
    sheet = msgspec.structs.replace(little, slots=slots, hands=("host", "Mira"))
    watching = Watching(tmp_path / "evening.jsonl", sheet, "mira")
    watching.run().tick()
    async with watching.app.run_test(size=SIZE) as pilot:
        await pilot.pause(FOLLOWED)

        assert "Mira's steps" in watching.shown()
        shown = watching.shown().casefold()
        assert "sauce" in shown
        assert "chop" not in shown
        assert "stew 19:00" in shown  # the course stays


async def test_a_helper_is_told_their_own_next_call_however_many_are_ahead(tmp_path: Path, little: RunSheet) -> None:
    """Eight calls of Mira's are ahead, and none of the host's is among them."""
    theirs = tuple(slot(f"fold napkin {n}", f"18:0{n}", f"18:0{n + 1}", kind="job") for n in range(8))
    theirs = tuple(
        msgspec.structs.replace(each, attended=(Attended(each.start, each.end, "Mira", "all"),)) for each in theirs
    )
    sheet = msgspec.structs.replace(little, slots=(*little.slots, *theirs), hands=("host", "Mira"))
    watching = Watching(tmp_path / "evening.jsonl", sheet, "Mira")
    evening = watching.run()
    evening.tick()
    async with watching.app.run_test(size=SIZE) as pilot:
        await pilot.pause(FOLLOWED)

        assert headline(watching) == view_words.free_until("18:00")
        assert "Your next, in 1 h 00: Fold napkin 0" in watching.shown()
        for each in theirs:
            evening.wish(Settle(each.id))
        await pilot.pause(FOLLOWED)

        assert headline(watching) == view_words.NOTHING_YOURS


def headline(watching: Watching) -> str:
    """What stands in large letters."""
    assert watching.app.board is not None
    assert watching.app.board.board is not None
    return watching.app.board.board.headline


async def test_a_name_nobody_has_ends_it_with_the_names_there_are(tmp_path: Path, little: RunSheet) -> None:
    watching = Watching(tmp_path / "evening.jsonl", little, "Otto")
    async with watching.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        watching.run()
        await pilot.pause(FOLLOWED)

    assert watching.app.return_value == shared.nobody_called("Otto", ["host"])


async def test_clocks_of_what_spoils_are_seen_there_too(tmp_path: Path) -> None:
    watching = Watching(tmp_path / "evening.jsonl", custard_supper())
    async with watching.app.run_test(size=SIZE) as pilot:
        evening = watching.run()
        for clock, id_ in TO_THE_FILLING[:-1]:
            watching.clock.set(at(clock))
            call = next(c for c in evening.tick().due if c.slot == id_)
            evening.wish(Done(*call.key))
        watching.clock.set(at("18:28"))
        await pilot.pause(FOLLOWED)
        await pilot.pause(FOLLOWED)

        assert "◔ custard: out 48 min; eat or chill by 19:40" in watching.shown()
        assert [type(e).__name__ for e in evening.told].count("ClockWarned") == 0
