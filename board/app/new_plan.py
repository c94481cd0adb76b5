"""Writes a new plan. What options leave open is asked at a terminal; without one, the usual is taken.

Apart from the clock, only this file looks at the machine's time settings, and only for the name of its zone.
"""

import contextlib
import shlex
import warnings
from collections.abc import Callable, Mapping
from datetime import date, datetime
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

from board.app import words
from board.base import words as shared
from board.base.errors import Trouble
from board.base.exits import ExitCode
from board.base.plain import one_line
from board.files.paths import file_name
from board.files.whole import write_new
from board.importing.starter.answers import Answers, defaults, readers
from board.importing.starter.plan_text import plan_text
from board.plan.phrases.when import parse_zone

Ask = Callable[[str], str]  # a prompt → what was typed; raises EOFError at the end
Say = Callable[[str], object]
_OF_NO_PLACE = ("UTC", "Etc/UTC", "Etc/GMT", "GMT")


def new_plan(path: Path | None, given: Mapping[str, str | None], now: datetime, ask: Ask | None, say: Say) -> str:
    """Writes the plan and returns the message for the host. `given`: options by name, None if not used. Raises
    Trouble."""
    if path is not None and (path.exists() or path.is_symlink()):
        raise Trouble(shared.is_there_already(one_line(path)))
    answers = gather(given, now, machine_zone(), ask, say)
    target = path or _free_name(answers)
    write_new(target, plan_text(answers).encode())
    return words.new_written(one_line(target), shlex.quote(one_line(target)))


def gather(given: Mapping[str, str | None], now: datetime, zone: str | None, ask: Ask | None, say: Say) -> Answers:
    """All answers: from options first, then asked for, else the usual. Raises Trouble for an option that cannot be
    read."""
    today = _today(given.get("zone") or zone, now)
    usual = defaults(today, zone)
    read = readers(today)
    found: dict[str, Any] = {}
    for name in read:
        option = given.get(name)
        if option is not None:
            try:
                found[name] = read[name](option)
            except ValueError as wrong:
                raise Trouble(one_line(words.new_wrong_option(name, str(wrong))), ExitCode.USAGE) from None
    if ask is not None and len(found) < len(read):
        say(words.NEW_INTRO)
    for name in read:
        if name in found:
            continue
        of_no_place = name == "zone" and usual.get(name) in _OF_NO_PLACE
        if ask is not None and of_no_place:
            say(words.new_zone_of_no_place(usual[name]))
        if ask is None or (name == "zone" and name in usual and not of_no_place):
            if name not in usual:
                raise Trouble(words.NEW_ZONE_UNKNOWN, ExitCode.USAGE)
            found[name] = read[name](usual[name])
        else:
            found[name] = _asked(name, usual.get(name, ""), read[name], ask, say)
            if name == "date":
                say(words.new_date(found[name]))
    return Answers(**found)


def _asked(name: str, usual: str, read: Callable[[str], Any], ask: Ask, say: Say) -> Any:
    """Asks until the answer can be read. Raises Trouble at the end of input."""
    while True:
        try:
            typed = ask(words.new_question(words.NEW_ASKS[name], usual))
            return read(typed if typed.strip() else usual)
        except EOFError:
            raise Trouble(words.NEW_ENDED) from None
        except ValueError as wrong:  # also for bytes that are not text
            say(words.new_wrong(one_line(wrong)))


def _today(zone: str | None, now: datetime) -> date:
    with contextlib.suppress(ValueError):
        return now.astimezone(ZoneInfo(parse_zone(one_line(zone or "UTC")))).date()
    return now.date()


def machine_zone() -> str | None:
    """The name of the machine's time zone; None if it has no known one."""
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            import tzlocal

            return parse_zone(str(tzlocal.get_localzone_name()))
    except (LookupError, ValueError, OSError, AttributeError):
        return None


def _free_name(answers: Answers) -> Path:
    """A file name from the event's name, numbered if it is taken."""
    stem, number = file_name(answers.event), 2
    path = Path(f"{stem}.yaml")
    while path.exists() or path.is_symlink():
        path, number = Path(f"{stem}-{number}.yaml"), number + 1
    return path
