"""Opens an evening on a log and runs it: live on the board, rehearsed, or played line by line."""

import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime, timedelta
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar
from zoneinfo import ZoneInfo

from board.app import words
from board.app.confirm_clock import ask_about_clock
from board.app.confirm_stops import ask_about_stops
from board.app.opened_early import opened_early
from board.app.splash import FirstPicture
from board.app.terminal import fitted, tell, working
from board.app.timetables import sheet_of
from board.base import words as shared
from board.base.clock import Clock, StoppedClock, VirtualClock, WallClock
from board.base.errors import Trouble
from board.base.exits import ExitCode
from board.base.plain import one_line
from board.base.signals import ending_in_order
from board.evening.events import EveningOpened, NightDrawn
from board.files.paths import cache, newest_log
from board.files.preferences import read_settings, remember_theme, settings_file
from board.log.follow import Follower
from board.log.read import LogContents, NoLog, read_log
from board.log.write import LogInUse, Memory, RunLog
from board.rehearsal.draw import Mishaps, Night, NightWish, night_event, night_in, night_score
from board.rehearsal.live_night import NightEvening
from board.rehearsal.player import Stuck, catch_up, play
from board.session.session import Evening, open_evening, unlogged_evening
from board.sheet.changed import Changed, changed
from board.sheet.run_sheet import RunSheet

if TYPE_CHECKING:
    from socket import socket

    from board.screens.dressed import DressedApp, Fallen
    from board.shopping.errands import Provisions

R = TypeVar("R")

BEFORE_FIRST = timedelta(minutes=2)  # from the start of a rehearsal to its first call


def first_moment(sheet: RunSheet, clock: tuple[int, int] | None) -> datetime:
    """When a rehearsal begins: at a clock time (hour, minute) on the day of the event, else shortly before the first
    call. An aware datetime."""
    if clock is None:
        return min(slot.start for slot in sheet.slots) - BEFORE_FIRST
    day = sheet.arrive.astimezone(ZoneInfo(sheet.zone))
    return day.replace(hour=clock[0], minute=clock[1], second=0, microsecond=0)


def _quoted(path: Path) -> str:
    """A path as it is typed at a shell's prompt."""
    import shlex  # imported here: opening the board must not wait for it

    return one_line(shlex.quote(str(path)))


def planned_or_begun(plan: Path, path: Path | None) -> tuple[RunSheet, bool]:
    """The plan's run sheet and True. If the plan cannot be used, the sheet in the log at `path` and False.

    An evening under way must not end because its plan was edited or lost. Raises Trouble.
    """
    try:
        return sheet_of(plan), True
    except Trouble as trouble:
        if path is None or not path.is_file():
            begun = newest_log()
            if begun is None:
                raise
            hint = words.go_on_from_log(_quoted(plan), _quoted(begun))
            raise Trouble(f"{trouble}\n{hint}", trouble.code) from None
        try:
            return read_log(path.read_bytes(), one_line(path), cache().all).opened.sheet, False
        except (OSError, NoLog):
            raise trouble from None


@contextmanager
def opened_log(path: Path, also: Path | None = None) -> Iterator[RunLog]:
    """The log, locked for one board. `also`: a folder for a second copy. Raises Trouble if it cannot be locked, read or
    written."""
    shown = one_line(path)
    try:
        log = RunLog(path, cache().all, also)
    except LogInUse:
        raise Trouble(words.log_in_use(shown, _quoted(path))) from None
    except NoLog as wrong:
        raise Trouble(words.log_unreadable(one_line(wrong))) from None
    except OSError as wrong:
        raise Trouble(words.cannot_keep(shown, one_line(wrong.strerror or wrong))) from None
    ended: Trouble | SystemExit | None = None
    try:
        yield log
    except OSError as wrong:
        ended = Trouble(words.cannot_keep(shown, one_line(wrong.strerror or wrong)))
    except (Trouble, SystemExit) as left:
        ended = left
    finally:
        lost = _carried_off(log, shown)
        log.close()
    if log.copy_trouble:
        tell(words.copy_not_whole(one_line(also), one_line(log.copy_trouble)))
    if lost and isinstance(ended, SystemExit):
        tell(lost)
    elif lost:
        raise Trouble("\n".join([*([str(ended)] if ended else []), lost]), getattr(ended, "code", ExitCode.FAILED))
    if ended is not None:
        raise ended


def _carried_off(log: RunLog, shown: str) -> str:
    """Where an evening was saved that could not be written to its own log; empty if it was."""
    log.mind()
    if log.unkept is None:
        return ""
    why = one_line(log.unkept.why)
    place = log.rescue()
    if place is None:
        return words.evening_lost(shown, why, log.unkept.answers)
    return words.evening_elsewhere(shown, why, one_line(place))


@dataclass(frozen=True, slots=True)
class Dress:
    """How the board looks and sounds. `theme`: the one asked for, None for the usual; `say`: a speech command and its
    arguments."""

    bell: bool = True
    theme: str | None = None
    say: tuple[str, ...] | None = None


@ending_in_order()
def run_board(
    sheet: RunSheet,
    path: Path | None,
    clock: Clock,
    dress: Dress,
    *,
    plan: Path,
    also: Path | None = None,
    usable: bool = True,
    wish: NightWish | None = None,
    page_at: "socket | None" = None,
) -> None:
    """Runs the board until the host leaves it, live or as a rehearsal, depending on the clock. `path`: its log; None
    for no log. `also`: a folder for a second copy of it.

    Live, the host must first accept the plan's stops. Raises Trouble.

    `plan`: the sheet's plan file, watched for edits, and used to solve the rest again when the evening slips. `usable`:
    False if the sheet comes from the log instead. `wish`: the mishaps of a rehearsal. `page_at`: where the page
    for helpers' phones is served.
    """
    virtual = clock if isinstance(clock, VirtualClock) else None
    in_spite = virtual is None and ask_about_stops(sheet, path)
    if path is None:
        _run_without_log(sheet, clock, virtual, dress, plan=plan, in_spite=in_spite, wish=wish, page_at=page_at)
        return
    with opened_log(path, also) as log:
        if log.contents is not None:
            _belongs(sheet, log.contents, path, rehearsal=virtual is not None)
        if virtual is None:
            ask_about_clock(sheet, log.contents, plan, clock.now())
        else:
            virtual.pause(True)  # the board releases it once it is shown
            if log.contents is not None:
                virtual.jump_to(_last_moment(log.contents))
        greeting = _greeting(log)
        if virtual is None and not greeting:
            greeting = opened_early(sheet, clock.now(), _quoted(plan))
        evening = _begin(sheet, log, virtual) if virtual and log.contents is None else None
        evening = evening or open_evening(sheet, clock, log, rehearsal=virtual is not None)
        if in_spite:
            evening.accept_stops()
        evening, night = _with_night(evening, wish)
        _show(evening, virtual, dress, greeting=greeting, plan=plan, planned=sheet, usable=usable, page_at=page_at)
    _print_score(evening, night)
    lived = virtual is None and evening.state.closed
    print(words.left_board(_quoted(path), _quoted(plan) if lived else None))
    if lived:
        print(words.what_it_taught(_quoted(plan), _quoted(path)))


def night_of(plan: Path, mishaps: Mishaps, seed: int) -> NightWish:
    """A night for a rehearsal of this plan, based on the logs in the usual folder. Raises Trouble."""
    from board.app.learning import all_evenings, learn_from  # imported only when a night is asked for

    found = learn_from(plan, lambda: all_evenings()[0]).found
    return NightWish(mishaps, seed, found.lessons, len(found.fresh))


def _with_night(evening: Evening, wish: NightWish | None) -> tuple[Evening, Night | None]:
    """The evening with a night drawn over it, from the sheet it began with."""
    drawn = next((event for event in evening.told if isinstance(event, NightDrawn)), None)
    if drawn is not None:  # an evening gone on with has the night it began with
        night = night_in(drawn)
    elif wish is not None:
        night = _begin_night(evening, wish)
    else:
        return evening, None
    return NightEvening(evening, night), night


def _begin_night(evening: Evening, wish: NightWish) -> Night:
    """Draws the night from the sheet the evening began with, and logs it."""
    opened = next(event for event in evening.told if isinstance(event, EveningOpened))
    night = wish.draw(opened.sheet)
    evening.begin_night(night_event(night, opened.at))
    return night


def _print_score(evening: Evening, night: Night | None) -> None:
    """Prints how the night went, if the host ended it."""
    if night is not None and evening.state.closed:
        from board.rehearsal.account_lines import account_lines  # imported only when a night is over

        for line in night_score(evening, night):
            print(line, flush=True)  # before the account, which takes seconds
        offers = evening.offers if isinstance(evening, NightEvening) else ()
        with working(words.PLAYING_AGAIN):
            lines = list(account_lines(evening.told, offers))
        for line in lines:
            print(fitted(line, sys.stdout))
        print()


def _run_without_log(
    sheet: RunSheet,
    clock: Clock,
    virtual: VirtualClock | None,
    dress: Dress,
    *,
    plan: Path,
    in_spite: bool,
    wish: NightWish | None,
    page_at: "socket | None",
) -> None:
    """Runs the board without a log, as the host asked; the board keeps saying that nothing is saved."""
    if virtual is not None:
        virtual.pause(True)
        evening = _begin(sheet, Memory(), virtual)
    else:
        ask_about_clock(sheet, None, plan, clock.now())
        evening = unlogged_evening(sheet, clock, rehearsal=False)
        if in_spite:
            evening.accept_stops()
    evening, night = _with_night(evening, wish)
    early = opened_early(sheet, clock.now(), _quoted(plan)) if virtual is None else ""
    greeting = ". ".join(filter(None, (words.NO_LOG, early)))
    _show(evening, virtual, dress, greeting=greeting, plan=plan, planned=sheet, page_at=page_at)
    _print_score(evening, night)
    print(words.NO_LOG_LEFT)


def _begin(sheet: RunSheet, log: RunLog | Memory, virtual: VirtualClock) -> Evening:
    """A new rehearsal. If it begins in the middle, everything before went as in the sheet."""
    start = virtual.now()  # the clock is paused
    stopped = StoppedClock(min(start, first_moment(sheet, None)))
    if isinstance(log, RunLog):
        evening = open_evening(sheet, stopped, log, rehearsal=True)
    else:
        evening = unlogged_evening(sheet, stopped)
    catch_up(evening, stopped, start)
    evening.clock = virtual
    return evening


def _belongs(sheet: RunSheet, contents: LogContents, path: Path, *, rehearsal: bool) -> None:
    """Raises Trouble unless the log is of this event and of the same kind of evening."""
    opened = contents.opened
    if (opened.sheet.plan, opened.sheet.date) != (sheet.plan, sheet.date):
        raise Trouble(words.log_of_another(one_line(path), words.OTHER_EVENING))
    if opened.rehearsal != rehearsal:
        kind = words.A_REHEARSAL if opened.rehearsal else words.A_REAL_EVENING
        raise Trouble(words.log_of_another(one_line(path), kind))


def _show(
    evening: Evening,
    virtual: VirtualClock | None,
    dress: Dress,
    *,
    greeting: str,
    plan: Path,
    planned: RunSheet,
    usable: bool = True,
    page_at: "socket | None" = None,
) -> None:
    """Shows the board. `planned` is the sheet of the plan as it is now; the evening keeps its own."""
    first = FirstPicture()
    first.draw(evening, shared.REHEARSAL if virtual else "")
    try:
        _run_app(evening, virtual, dress, greeting=greeting, plan=plan, planned=planned, usable=usable, page_at=page_at)
    except BaseException:
        first.leave()
        raise


def _run_app(
    evening: Evening,
    virtual: VirtualClock | None,
    dress: Dress,
    *,
    greeting: str,
    plan: Path,
    planned: RunSheet,
    usable: bool,
    page_at: "socket | None",
) -> None:
    # Imported here: the screen library takes longest to load, and the first picture is on screen by now.
    from board.screens.app import BoardApp
    from board.screens.dressed import DressedApp, Fallen
    from board.session.background import Background
    from board.session.plan_watcher import PlanWatcher
    from board.session.replan.advisor import Advisor

    page = None
    if page_at is not None:
        from board.app.share_page import page_for  # a web server and the plan reader: loaded for nobody else

        page = page_for(page_at, plan, planned)
    file = settings_file()
    background = Background(plan)
    news = changed(evening.sheet, planned) if planned.digest != evening.sheet.digest else None
    if not usable:
        news = Changed(usable=False)
    advisor = Advisor(background, heard=evening.offered)
    eye = PlanWatcher(plan, evening.sheet, planned.digest if usable else "", background)

    def board(fallen: Fallen | None) -> DressedApp[None]:
        settings = read_settings(file)
        return BoardApp(
            evening,
            virtual=virtual,
            bell=dress.bell,
            greeting=greeting,
            advisor=advisor,
            theme=dress.theme if fallen is None else settings.theme or dress.theme,
            remembered=settings.theme,
            remember=partial(remember_theme, file),
            say=dress.say,
            plan_eye=eye,
            changed=news if fallen is None else None,
            page=page,
            fallen=fallen,
        )

    try:
        _kept_open(board, words.BOARD_FAILED)
    finally:
        background.close()
        if page_at is not None:
            page_at.close()


def _kept_open(make: "Callable[[Fallen | None], DressedApp[R]]", failed: str) -> "R | None":
    """What the app returns when it is left. Raises Trouble if it falls again and again."""
    from board.screens.in_place import EndedByFault, kept_open

    try:
        return kept_open(make, lambda app: app.run())
    except EndedByFault as fault:
        raise Trouble(words.by_fault(failed, one_line(fault)), ExitCode.FAULT) from None


@ending_in_order()
def run_watch(path: Path, who: str | None, theme: str | None = None) -> None:
    """Watches the evening in a log, until the host leaves or it cannot go on. Raises Trouble."""
    from board.screens.watch import WatchApp

    shown, follower = one_line(path), Follower(path, cache().all)
    if path.exists() and not path.is_file():
        raise Trouble(shared.not_a_file(shown))
    follower.look()
    if follower.opened is None and follower.said:
        raise Trouble(words.log_unreadable(follower.said))

    def board(fallen: "Fallen | None") -> WatchApp:
        settings = read_settings(settings_file())
        return WatchApp(follower, WallClock(), who, theme=theme, remembered=settings.theme, fallen=fallen)

    ended = _kept_open(board, words.WATCH_FAILED)
    if ended:
        raise Trouble(f"{shown}: {ended}")


@ending_in_order()
def run_ticking(found: "Provisions", plan: Path) -> None:
    """Shows the list of provisions to tick off, until the host leaves; ticks are saved beside the plan. Raises
    Trouble."""
    from board.files.pantry import read_ticks, ticks_path, write_ticks
    from board.screens.ticking import TickApp, TickScreen
    from board.screens.words import opened_in_place
    from board.shopping.ticks import Ticks, entries

    path = ticks_path(plan)
    kept = read_ticks(path)
    ticks = Ticks(kept or {})
    broken = words.ticks_broken(one_line(path.name, 30)) if kept is None else ""

    def keep() -> str:
        if kept is None:
            return broken
        try:
            write_ticks(path, ticks.kept)
        except OSError as wrong:
            return words.ticks_not_kept(one_line(path.name, 30), one_line(wrong.strerror or wrong))
        return ""

    def board(fallen: "Fallen | None") -> TickApp:
        screen = TickScreen(shared.provisions_title(found.event, found.guests), list(entries(found)), ticks, keep)
        said = broken if fallen is None else opened_in_place(fallen.why)
        return TickApp(screen, read_settings(settings_file()).theme, said)

    _kept_open(board, words.TICKS_FAILED)


def _last_moment(contents: LogContents) -> datetime:
    return max(event.at for event in (contents.opened, *contents.events))


def _greeting(log: RunLog) -> str:
    """What to say when an evening is resumed; empty for a new one."""
    contents = log.contents
    if contents is None:
        return ""
    said = [words.gone_on(len(contents.events))]
    if contents.dropped:
        said.append(contents.dropped)
    if log.aside:
        said.append(words.set_aside(log.aside.name))
    return " ".join(said)


def play_plainly(
    sheet: RunSheet, path: Path, start: datetime, wish: NightWish | None = None, also: Path | None = None
) -> Iterator[str]:
    """Plays a rehearsal as lines of text, with every call answered on time, or with a night's mishaps. Logged like any
    other. Raises Trouble, also for a log that is not empty."""
    clock = StoppedClock(start)
    with opened_log(path, also) as log:
        if log.contents is not None:
            raise Trouble(words.log_not_empty(one_line(path)))
        evening = open_evening(sheet, clock, log, rehearsal=True)
        try:
            yield from play(evening, clock, None if wish is None else _begin_night(evening, wish))
            if wish is not None:
                from board.rehearsal.account_lines import account_lines  # imported only when a night is over

                with working(words.PLAYING_AGAIN):
                    lines = list(account_lines(evening.told))
                yield from lines
        except Stuck as stuck:
            raise Trouble(words.stuck(one_line(stuck))) from None
    yield words.log_lies_at(one_line(path))
