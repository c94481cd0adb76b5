"""A played evening on the smallest usual board, weighed minute by minute: few words, and none of what matters cut off.

The evening is the bundled lantern supper, answered by a host who takes a minute over each call.
"""

import re
from collections.abc import AsyncIterator
from datetime import timedelta
from statistics import median
from zoneinfo import ZoneInfo

from board.base.clock import StoppedClock
from board.evening.wishes import Done
from board.rehearsal.player import catch_up
from board.screens.app import BoardApp
from board.session.session import unlogged_evening
from board.sheet.run_sheet import RunSheet
from tests.screens.conftest import Recorder, screen_text

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


async def test_a_board_of_24_rows_never_says_more_than_is_read_at_a_glance(lantern_sheet: RunSheet) -> None:
    counted = [words_on(app) async for app in played(lantern_sheet, (80, 24))]

    assert len(counted) == 241
    assert max(counted) <= MOST_WORDS, f"median {median(counted)}, most {sorted(counted)[-20:]}"
