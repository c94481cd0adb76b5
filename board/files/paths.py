"""Where files are kept (logs, run sheets) and how they are named."""

import contextlib
import json
import re
from collections.abc import Iterable
from pathlib import Path

from platformdirs import user_cache_path, user_data_path

from board.files.cache import SheetCache
from board.sheet.run_sheet import RunSheet

APP = "platecall"


def logs_folder() -> Path:
    """The usual folder of run logs, whether it exists or not."""
    return user_data_path(APP) / "logs"


def shelf_folder() -> Path:
    """The folder of the host's own dishes, whether it exists or not."""
    return user_data_path(APP) / "dishes"


def cache() -> SheetCache:
    """The kept run sheets, in the user's cache folder."""
    return SheetCache(user_cache_path(APP) / "sheets")


def live_log(sheet: RunSheet) -> Path:
    """The log of an event, named by the event and its date: one log for each."""
    return logs_folder() / f"{file_name(sheet.plan)}-{sheet.date}.jsonl"


def newest_log() -> Path | None:
    """The log of a real evening, not a rehearsal, that was written last in the usual folder; None if there is none."""
    with contextlib.suppress(OSError):
        logs = [file for file in logs_folder().glob("*.jsonl") if "-rehearsal-" not in file.name]
        return max(logs, key=lambda file: file.stat().st_mtime, default=None)
    return None


def logs_naming(dishes: Iterable[str]) -> list[Path]:
    """Logs of real evenings in the usual folder that may tell who ate one of these, by name keys: by their bytes."""
    wanted = [json.dumps(dish, ensure_ascii=False)[1:-1] for dish in dishes]
    found = []
    for path in sorted(logs_folder().glob("*.jsonl")):
        if "-rehearsal-" not in path.name:
            with contextlib.suppress(OSError):
                text = path.read_bytes().decode(errors="replace").casefold()
                if '"eaters":' in text and any(each in text for each in wanted):
                    found.append(path)
    return found


def rehearsal_log(sheet: RunSheet, *, fresh: bool) -> Path:
    """The last rehearsal's log if it can be resumed and `fresh` is not set, else the next free number."""
    folder, stem = logs_folder(), f"{file_name(sheet.plan)}-{sheet.date}-rehearsal"
    number = 1
    while (folder / f"{stem}-{number}.jsonl").exists():
        number += 1
    last = folder / f"{stem}-{number - 1}.jsonl"
    if not fresh and number > 1 and _can_go_on(last, sheet):
        return last
    return folder / f"{stem}-{number}.jsonl"


def _can_go_on(path: Path, sheet: RunSheet) -> bool:
    """Whether a rehearsal is of this very timetable and has not been ended."""
    from board.evening.fold import fold_all
    from board.evening.state import begin
    from board.log.read import NoLog, read_log

    try:
        contents = read_log(path.read_bytes(), path.name, cache().all)
    except (OSError, NoLog):
        return False
    past = contents.opened.sheet
    if past.digest != sheet.digest or past.slots != sheet.slots:
        return False
    return not fold_all(begin(sheet), contents.events).closed


def file_name(text: str, instead: str = "evening") -> str:
    """A text as a file name without ending: lower case, hyphens, at most 80 bytes; `instead` if nothing is left."""
    name = re.sub(r"[^\w]+", "-", text.casefold()).strip("-_")
    return name.encode()[:80].decode(errors="ignore") or instead  # file systems limit names in bytes
