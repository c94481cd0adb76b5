"""Opening an evening on a log and putting the board on it: live, rehearsed, or played line by line."""

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime, timedelta
from functools import partial
from pathlib import Path
from zoneinfo import ZoneInfo

from board import words
from board.clock import Clock, StoppedClock, VirtualClock
from board.desk import Trouble
from board.evening import Evening, open_evening
from board.log.read import LogContents, NoLog
from board.log.write import LogInUse, RunLog
from board.plain import one_line
from board.playthrough import Stuck, catch_up, play
from board.settings import read_settings, remember_theme, settings_file
from board.timetable.run_sheet import RunSheet

BEFORE_FIRST = timedelta(minutes=2)  # a rehearsal begins a little before the first call


def first_moment(sheet: RunSheet, clock: tuple[int, int] | None) -> datetime:
    """Where a rehearsal begins: a clock time on the event's day, else shortly before the first call."""
    if clock is None:
        return min(slot.start for slot in sheet.slots) - BEFORE_FIRST
    day = sheet.arrive.astimezone(ZoneInfo(sheet.zone))
    return day.replace(hour=clock[0], minute=clock[1], second=0, microsecond=0)


@contextmanager
def opened_log(path: Path) -> Iterator[RunLog]:
    """The log held for one board. Raises Trouble where it cannot be."""
    shown = one_line(path)
    try:
        log = RunLog(path)
    except LogInUse:
        raise Trouble(words.log_in_use(shown)) from None
    except NoLog as wrong:
        raise Trouble(words.log_unreadable(one_line(wrong))) from None
    except OSError as wrong:
        raise Trouble(words.cannot_keep(shown, one_line(wrong.strerror or wrong))) from None
    try:
        yield log
    except OSError as wrong:
        raise Trouble(words.cannot_keep(shown, one_line(wrong.strerror or wrong))) from None
    finally:
        log.close()


@dataclass(frozen=True, slots=True)
class Dress:
    """How the board looks and sounds. `theme`: the one asked for, None for the usual; `say`: a speech command."""

    bell: bool = True
    theme: str | None = None
    say: tuple[str, ...] | None = None


def run_board(sheet: RunSheet, path: Path, clock: Clock, dress: Dress, *, plan: Path | None = None) -> None:
    """The board on a log, live or rehearsed as the clock is, until it is left.

    With the plan's file, what is left of an evening that slips is worked out anew beside it.
    """
    virtual = clock if isinstance(clock, VirtualClock) else None
    with opened_log(path) as log:
        if log.contents is not None:
            _belongs(sheet, log.contents, path, rehearsal=virtual is not None)
        if virtual is not None:
            virtual.pause(True)  # the board lets it go when it stands
            if log.contents is not None:
                virtual.jump_to(_last_moment(log.contents))
        greeting = _greeting(sheet, log.contents)
        evening = _begin(sheet, log, virtual) if virtual and log.contents is None else None
        evening = evening or open_evening(sheet, clock, log, rehearsal=virtual is not None)
        _show(evening, virtual, dress, greeting=greeting, plan=plan)
    print(words.left_board(one_line(path)))


def _begin(sheet: RunSheet, log: RunLog, virtual: VirtualClock) -> Evening:
    """A new rehearsal; where it begins in mid-evening, what lies before went by the sheet."""
    start = virtual.now()  # it is held
    stopped = StoppedClock(min(start, first_moment(sheet, None)))
    evening = open_evening(sheet, stopped, log, rehearsal=True)
    catch_up(evening, stopped, start)
    evening.clock = virtual
    return evening


def _belongs(sheet: RunSheet, contents: LogContents, path: Path, *, rehearsal: bool) -> None:
    """The log is of this event, and of the same kind of evening. Raises Trouble."""
    opened = contents.opened
    if (opened.sheet.plan, opened.sheet.date) != (sheet.plan, sheet.date):
        raise Trouble(words.log_of_another(one_line(path), words.OTHER_EVENING))
    if opened.rehearsal != rehearsal:
        kind = words.A_REHEARSAL if opened.rehearsal else words.A_REAL_EVENING
        raise Trouble(words.log_of_another(one_line(path), kind))


def _show(evening: Evening, virtual: VirtualClock | None, dress: Dress, *, greeting: str, plan: Path | None) -> None:
    from board.anew.advisor import Advisor
    from board.anew.client import Anew
    from board.screens.app import BoardApp

    file = settings_file()
    advisor = Advisor(Anew(plan.resolve(), evening.sheet.digest)) if plan is not None else None
    app = BoardApp(
        evening,
        virtual=virtual,
        bell=dress.bell,
        greeting=greeting,
        advisor=advisor,
        theme=dress.theme,
        remembered=read_settings(file).theme,
        remember=partial(remember_theme, file),
        say=dress.say,
    )
    try:
        app.run()
    finally:
        if advisor is not None:
            advisor.close()
    if app.return_code:
        raise Trouble(words.BOARD_FAILED)


def _last_moment(contents: LogContents) -> datetime:
    return max(event.at for event in (contents.opened, *contents.events))


def _greeting(sheet: RunSheet, contents: LogContents | None) -> str:
    """What to say when an evening is gone on with."""
    if contents is None:
        return ""
    said = [words.gone_on(len(contents.events))]
    if contents.dropped:
        said.append(contents.dropped)
    if contents.opened.sheet.digest != sheet.digest:
        said.append(words.PLAN_CHANGED)
    return " ".join(said)


def play_plainly(sheet: RunSheet, path: Path, start: datetime) -> Iterator[str]:
    """The evening as lines, every call answered on time; the log is kept as in any other."""
    clock = StoppedClock(start)
    with opened_log(path) as log:
        if log.contents is not None:
            raise Trouble(words.log_not_empty(one_line(path)))
        evening = open_evening(sheet, clock, log, rehearsal=True)
        try:
            yield from play(evening, clock)
        except Stuck as stuck:
            raise Trouble(words.stuck(one_line(stuck))) from None
    yield words.log_lies_at(one_line(path))
