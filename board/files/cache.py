"""Solved run sheets on disk, by the plan's content, so that the board opens without plan reader or solver.

A sheet is only taken back by the program that made it: its key holds the fingerprint of the code that reads plans
and solves them, since a changed rule must never show an old timetable. Wording is no part of it: a sheet holds codes,
and its words are said when it is shown.
"""

import hashlib
import os
from pathlib import Path

import msgspec

from board.sheet.run_sheet import RunSheet, restore, store

_ROOMS = ("base", "facts", "plan", "sheet", "schedule", "checks")
_WORDING = ("base/words/", "sheet/said.py")
# What a check says of a stop is kept as it said it, in the words of `checks`, with times and temperatures in these.
_FIGURES = "base/words/times.py"
NEWEST_KEPT = 50


def fingerprint(board: Path = Path(__file__).parents[1]) -> str:
    """Names and sizes and times of the files whose rules make a sheet."""
    digest = hashlib.sha256()
    for room in _ROOMS:
        for file in sorted((board / room).rglob("*.py")):
            name, stat = file.relative_to(board).as_posix(), file.stat()
            if name == _FIGURES or not name.startswith(_WORDING):
                digest.update(f"{name} {stat.st_size} {stat.st_mtime_ns}\n".encode())
    return digest.hexdigest()


class SheetCache:
    """A folder of sheets. Trouble with it costs time, never an answer: it then acts empty."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def _path(self, digest: str) -> Path:
        key = hashlib.sha256(f"{digest} {fingerprint()}".encode()).hexdigest()[:40]
        return self.folder / f"{key}.json"

    def get(self, digest: str) -> RunSheet | None:
        try:
            return restore(self._path(digest).read_bytes())
        except (OSError, msgspec.DecodeError, UnicodeDecodeError):
            return None

    def put(self, sheet: RunSheet) -> None:
        import tempfile  # only here: opening the board must not wait for it

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
