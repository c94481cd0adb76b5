"""Before a live evening on a plan with stops, which must be mended before anybody eats: the host reads them and types a
word. A whole word cannot be typed by mistake, as a key can."""

from collections.abc import Callable
from pathlib import Path

from board.app import words
from board.app.terminal import answer_to
from board.base import words as shared
from board.base.errors import Trouble
from board.base.exits import ExitCode
from board.base.plain import one_line
from board.evening.fold import fold_all
from board.evening.state import begin
from board.files.paths import cache
from board.log.read import NoLog, read_log
from board.sheet import said
from board.sheet.run_sheet import RunSheet
from board.sheet.told import Stop, which


def ask_about_stops(sheet: RunSheet, path: Path | None, ask: Callable[[str], str] = input) -> bool:
    """True if the host was asked and begins all the same; False if there is nothing to ask, or the evening in the log
    at `path` has it accepted already. Raises Trouble if the host does not begin."""
    stops = _open_stops(sheet, path)
    if not stops:
        return False
    print(words.STOPS_HEAD)
    for stop in stops:
        print(f"  {shared.stop_line(one_line(said.stop(stop)))}")
    if answer_to(words.STOPS_ASK, ask) != words.UNDERSTOOD:
        raise Trouble(words.STOPS_NOT_ACCEPTED, ExitCode.STOP)
    return True


def _open_stops(sheet: RunSheet, path: Path | None) -> tuple[Stop | str, ...]:
    """The stops not yet accepted: of the evening in the log if there is one, else of the sheet."""
    try:
        contents = read_log(path.read_bytes(), path.name, cache().all) if path is not None and path.is_file() else None
    except (OSError, NoLog):
        contents = None  # opening the log reports why it cannot be read
    if contents is None:
        return sheet.stops
    state = fold_all(begin(contents.opened.sheet), [contents.opened, *contents.events])
    accepted = [which(stop) for stop in state.stops_accepted]
    return () if accepted == [which(stop) for stop in state.sheet.stops] else state.sheet.stops
