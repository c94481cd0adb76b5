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

from board.sheet.run_sheet import RunSheet, restore, store

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
        import tempfile  # imported here: opening the board must not wait for it

        path = self._path(sheet.digest)
        try:
            self.folder.mkdir(parents=True, exist_ok=True)
            handle, name = tempfile.mkstemp(dir=self.folder, suffix=".part")
            with os.fdopen(handle, "wb") as file:
                file.write(store(sheet))
            os.replace(name, path)
            for old in sorted(self.folder.glob("*.json"), key=lambda f: f.stat().st_mtime)[:-NEWEST_KEPT]:
                old.unlink(missing_ok=True)
        except OSError:
            return
