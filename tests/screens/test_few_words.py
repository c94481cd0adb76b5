"""A played evening on the smallest usual board, weighed minute by minute: few words, and none of what matters cut off.

The evening is the bundled lantern supper, answered by a host who takes a minute over each call.
"""

import re
from collections.abc import AsyncIterator
from datetime import timedelta
from statistics import median
from zoneinfo import ZoneInfo

import pytest

from board.base.clock import StoppedClock
from board.evening.wishes import Done
from board.rehearsal.player import catch_up
from board.screens.app import BoardApp
from board.session.session import unlogged_evening
from board.sheet.run_sheet import RunSheet
from tests.screens.conftest import Kitchen, Recorder, screen_text

MOST_WORDS = 110  # ours: what is taken in at a glance or two


async def played(sheet: RunSheet, size: tuple[int, int]) -> AsyncIterator[BoardApp]:
    """The board at each minute from 18:00 to 22:00."""
    day = sheet.arrive.astimezone(ZoneInfo(sheet.zone))
    now, over = day.replace(hour=18, minute=0), day.replace(hour=22, minute=0)
    clock = StoppedClock(min(slot.start for slot in sheet.slots))
    evening = unlogged_evening(sheet, clock)
    catch_up(evening, clock, now)
    app = BoardApp(evening, chime=Recorder())
    async with app.run_test(size=size) as pilot:
        await pilot.pause()
        while now <= over:
            due = evening.peek().due
            clock.set(now)
            for call in due:  # a minute old
                evening.wish(Done(*call.key))
                app.live.on_key()  # by which what was said is read
            app.live.tick()
            await pilot.pause()
            yield app
            now += timedelta(minutes=1)


def words_on(app: BoardApp) -> int:
    """What is read: each word of letters or figures, and those drawn in large letters."""
    text = screen_text(app)
    call = app.live.chosen_call
    title = call.headline if call is not None else app.live.board.headline if app.live.board is not None else ""
    large = "" if title in text else title
    return sum(1 for word in f"{text} {large}".split() if re.search(r"\w", word))


def shows_a_method(app: BoardApp) -> bool:
    """Whether the plan's own words of how it is done, or of what goes in, stand under the call or the work in hand."""
    view, call = app.live.board, app.live.chosen_call
    assert view is not None
    shown = call if call is not None else view
    return bool(shown.how or shown.amounts)


@pytest.mark.slow
async def test_a_board_of_24_rows_says_no_more_than_is_read_at_a_glance(lantern_sheet: RunSheet) -> None:
    counted = [(words_on(app), shows_a_method(app)) async for app in played(lantern_sheet, (80, 24))]

    bare, methodical = ([count for count, with_method in counted if with_method is wanted] for wanted in (False, True))
    assert len(counted) == 241
    assert len(methodical) >= 20
    assert median(count for count, _ in counted) <= MOST_WORDS - 15
    assert max(bare) <= MOST_WORDS + 5, f"most {sorted(bare)[-20:]}"
    assert max(methodical) <= MOST_WORDS + 20, f"most {sorted(methodical)[-20:]}"  # read once, by who does it


async def played_by_the_quarter(sheet: RunSheet, size: tuple[int, int]) -> AsyncIterator[BoardApp]:
    count = 0
    async for app in played(sheet, size):
        count += 1
        if app.live.board is not None and (app.live.board.due or count % 15 == 0):
            yield app


def in_one(text: str) -> str:
    return " ".join(text.replace("▌", " ").replace("▐", " ").split())


@pytest.mark.slow
@pytest.mark.parametrize("size", [(60, 24), (80, 24), (120, 36)])
async def test_nothing_of_the_state_the_call_and_its_keys_is_cut_off(
    lantern_sheet: RunSheet, size: tuple[int, int]
) -> None:
    """By words, since a long line goes on in the next."""
    lost = []
    async for app in played_by_the_quarter(lantern_sheet, size):
        view, call = app.live.board, app.live.chosen_call
        assert view is not None
        text = in_one(screen_text(app))
        wanted = [view.standing, view.course.told if view.course else "", view.seated]
        if call is not None:
            wanted += [*call.detail.split(" · "), *call.look_for.split(), call.caution, f"space {call.answer}"]
            wanted += ["l later", "x leave out"]
        lost += [(view.clock, each) for each in wanted if each and not set(each.split()) <= set(text.split())]

    assert lost == []


async def test_what_was_said_stays_until_a_key_is_pressed_and_hides_no_course(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        kitchen.app.live.say("the stew was stirred")
        await pilot.pause(0.05)
        kitchen.set("16:59")
        await pilot.pause()
        assert "the stew was stirred" in kitchen.shown()
        assert "Stew 19:00" in kitchen.shown()

        await pilot.press("z")
        await pilot.pause()

        assert "the stew was stirred" not in kitchen.shown()
