"""Before a live evening on a machine whose clock is a day or more off, as far as log and plan file can tell: the host
is asked. Its calls would all ring at once, or never."""

from collections.abc import Callable
from contextlib import suppress
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

from board.app import words
from board.app.terminal import says_yes
from board.base.errors import Trouble
from board.evening.fold import fold_all
from board.evening.state import begin
from board.log.read import LogContents
from board.sheet.run_sheet import RunSheet

FAR = timedelta(days=1)  # ours


def ask_about_clock(
    sheet: RunSheet, contents: LogContents | None, plan: Path, now: datetime, ask: Callable[[str], str] = input
) -> None:
    """`contents`: of the log that is gone on with. Raises Trouble unless the clock is plausible or the host says it is
    right."""
    found = _off(sheet, contents, plan, now)
    if found is None:
        return
    what, moment = found
    zone = ZoneInfo(sheet.zone)
    print(words.clock_far_off(now.astimezone(zone), what, moment.astimezone(zone)))
    if not says_yes(words.CLOCK_ASK, ask):
        raise Trouble(words.CLOCK_NOT_RIGHT)


def _off(sheet: RunSheet, contents: LogContents | None, plan: Path, now: datetime) -> tuple[str, datetime] | None:
    """What the clock does not go with, and when that was; None where it is plausible."""
    if contents is None:
        with suppress(OSError, ValueError, OverflowError):
            saved = datetime.fromtimestamp(plan.stat().st_mtime, UTC)
            if now <= saved - FAR:
                return words.PLAN_SAVED, saved
        return None
    last = max(event.at for event in (contents.opened, *contents.events))
    if now <= last - FAR:
        return words.LAST_IN_LOG, last
    end = max(slot.end for slot in contents.opened.sheet.slots)
    if now < max(end, last) + FAR or fold_all(begin(contents.opened.sheet), contents.events).closed:
        return None
    return words.EVENING_ENDS, end
