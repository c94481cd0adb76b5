"""Solved run sheets on disk, found by the plan's content, so that the board opens without plan reader or solver.

Only the program that made a sheet reads it again: the key holds a fingerprint of the code that reads and solves plans,
since a changed rule must never show an old timetable. Wording is not part of the fingerprint: a sheet holds codes,
which become words when it is shown.
"""

import hashlib
import os
import re
from pathlib import Path

import msgspec

from board.sheet.run_sheet import Moment, RunSheet, restore, store

_ROOMS = ("base", "facts", "plan", "sheet", "schedule", "checks", "shopping")
_WORDING = re.compile(r"sheet/said\.py|.*/words(\.py|/.*)")
# A sheet keeps a stop as the check worded it: in the words of `checks`, with times and temperatures worded here.
_FIGURES = "base/words/times.py"
NEWEST_KEPT = 50


def fingerprint(board: Path = Path(__file__).parents[1]) -> str:
    """SHA-256 (hex) of names, sizes and times of the files whose rules make a sheet. Raises OSError."""
    digest = hashlib.sha256()
    for room in _ROOMS:
        for file in sorted((board / room).rglob("*.py")):
            name, stat = file.relative_to(board).as_posix(), file.stat()
            if name == _FIGURES or not _WORDING.fullmatch(name):
                digest.update(f"{name} {stat.st_size} {stat.st_mtime_ns}\n".encode())
    return digest.hexdigest()


class LastTime(msgspec.Struct, frozen=True):
    """What a plan file's sheet was, before it last changed and since; and who has told what moved then."""

    now: RunSheet
    before: RunSheet | None = None
    told: tuple[str, ...] = ()


class SheetCache:
    """A folder of sheets. If it cannot be used it acts empty: that costs time, never an answer."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def _path(self, digest: str) -> Path:
        key = hashlib.sha256(f"{digest} {fingerprint()}".encode()).hexdigest()[:40]
        return self.folder / f"{key}.json"

    def get(self, digest: str) -> RunSheet | None:
        """The sheet for a plan's digest; None if there is none that can be read."""
        try:
            return restore(self._path(digest).read_bytes())
        except (OSError, msgspec.DecodeError, UnicodeDecodeError):
            return None

    def put(self, sheet: RunSheet) -> None:
        """Keeps a sheet, and deletes the oldest beyond `NEWEST_KEPT`. Raises nothing if the disk fails: the sheet is
        then not kept."""
        _keep(self._path(sheet.digest), store(sheet))

    def last(self, plan: Path) -> RunSheet | None:
        """The sheet that a plan file gave when it was last told of; None where there is none that can be read."""
        try:
            return msgspec.json.decode(self._last_path(plan).read_bytes(), type=LastTime).now
        except (OSError, msgspec.DecodeError, UnicodeDecodeError):
            return None

    def _last_path(self, plan: Path) -> Path:
        name = hashlib.sha256(os.fsencode(plan.absolute())).hexdigest()[:40]
        return self.folder / "last" / f"{name}.json"

    def before(self, plan: Path, sheet: RunSheet, teller: str) -> RunSheet | None:
        """The sheet that a plan file gave before this one, other in its times; None where there is none, or the same
        `teller` was given it already. Remembers this one. A file that cannot be read is taken for none."""
        path = self._last_path(plan)
        try:
            last = msgspec.json.decode(path.read_bytes(), type=LastTime)
        except (OSError, msgspec.DecodeError, UnicodeDecodeError):
            last = LastTime(sheet)
        else:
            if _times(last.now) != _times(sheet):
                last = LastTime(sheet, last.now)
        if teller in last.told:
            return None
        _keep(path, msgspec.json.encode(msgspec.structs.replace(last, told=(*last.told, teller))))
        return last.before


def _times(sheet: RunSheet) -> dict[str, tuple[Moment, Moment]]:
    return {slot.id: (slot.start, slot.end) for slot in sheet.slots}


def _keep(path: Path, data: bytes) -> None:
    """Writes a file whole, and deletes the oldest beside it beyond `NEWEST_KEPT`. Raises nothing if the disk fails."""
    import tempfile  # imported here: opening the board must not wait for it

    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        handle, name = tempfile.mkstemp(dir=path.parent, suffix=".part")
        with os.fdopen(handle, "wb") as file:
            file.write(data)
        os.replace(name, path)
        for old in sorted(path.parent.glob("*.json"), key=lambda f: f.stat().st_mtime)[:-NEWEST_KEPT]:
            old.unlink(missing_ok=True)
    except OSError:
        return
