"""Draws the pictures in screenshots/: `python -m board.screens.picture [FOLDER]`.

The real board on the bundled plan, with a stopped clock.
"""

import asyncio
import sys
from datetime import datetime, timedelta
from pathlib import Path

from board.clock import StoppedClock
from board.desk import bundled_plan, sheet_of
from board.evening import Evening, unlogged_evening
from board.playthrough import catch_up
from board.run.wishes import Done
from board.screens.app import BoardApp
from board.timetable.run_sheet import RunSheet

# name, theme, minutes after the guests arrive, size, how many due calls are answered, keys pressed
PICTURES: tuple[tuple[str, str, float, tuple[int, int], int, tuple[str, ...]], ...] = (
    ("live-120x36", "dark", 20.5, (120, 36), 0, ()),
    ("light-120x36", "light", 60.5, (120, 36), 1, ()),
    ("live-80x24", "dark", 57.5, (80, 24), 1, ()),
    ("push-120x36", "dark", 62.0, (120, 36), 9, ("p", "down", "right")),
)


def evening_at(sheet: RunSheet, moment: datetime, answered: int) -> tuple[Evening, StoppedClock]:
    """The evening with everything before the last few minutes answered on time."""
    clock = StoppedClock(min(slot.start for slot in sheet.slots))
    evening = unlogged_evening(sheet, clock)
    catch_up(evening, clock, moment - timedelta(minutes=2))
    for _ in range(3):
        clock.set(clock.now() + timedelta(seconds=40))
        for call in evening.tick().due[:answered]:
            evening.wish(Done(*call.key))
    return evening, clock


async def draw(sheet: RunSheet, folder: Path) -> None:
    for name, theme, minutes, size, answered, keys in PICTURES:
        evening, _ = evening_at(sheet, sheet.arrive + timedelta(minutes=minutes), answered)
        app = BoardApp(evening, theme=theme)
        app.title = sheet.plan
        async with app.run_test(size=size) as pilot:
            await pilot.pause()
            await pilot.press(*keys)
            await pilot.pause()
            (folder / f"{name}.svg").write_text(app.export_screenshot(), encoding="utf-8")


if __name__ == "__main__":
    target = Path(sys.argv[1] if len(sys.argv) > 1 else "screenshots")
    target.mkdir(exist_ok=True)
    asyncio.run(draw(sheet_of(bundled_plan()), target))
