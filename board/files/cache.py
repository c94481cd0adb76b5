"""Solved run sheets on disk, found by the plan's content, so that the board opens without plan reader or solver.

Only the program that made a sheet reads it again: the key holds a fingerprint of the code that reads and solves plans,
since a changed rule must never show an old timetable. Wording is not part of the fingerprint: a sheet holds codes,
which become words when it is shown.
"""

import hashlib
import os
import re
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path

import msgspec

from board.log.disk import private_folder, replace_whole
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
            return restore(_sound(self._path(digest).read_bytes()))
        except (OSError, msgspec.DecodeError, UnicodeDecodeError):
            return None

    def put(self, sheet: RunSheet) -> None:
        """Keeps a sheet, and deletes the oldest beyond `NEWEST_KEPT`. Raises nothing if the disk fails: the sheet is
        then not kept."""
        _keep(self._path(sheet.digest), store(sheet))

    def all(self) -> Iterator[RunSheet]:
        """Every sheet that can be read, whatever code made it, the newest first. For logs that have lost their own."""
        with suppress(OSError):
            files = sorted(self.folder.rglob("*.json"), key=lambda file: file.stat().st_mtime, reverse=True)
            for file in files:
                with suppress(OSError, msgspec.DecodeError, UnicodeDecodeError):
                    yield restore(_sound(file.read_bytes())) if file.parent == self.folder else self._last_of(file).now

    def last(self, plan: Path) -> RunSheet | None:
        """The sheet that a plan file gave when it was last told of; None where there is none that can be read."""
        try:
            return self._last_of(self._last_path(plan)).now
        except (OSError, msgspec.DecodeError, UnicodeDecodeError):
            return None

    def _last_of(self, path: Path) -> LastTime:
        return msgspec.json.decode(_sound(path.read_bytes()), type=LastTime)

    def _last_path(self, plan: Path) -> Path:
        name = hashlib.sha256(os.fsencode(plan.absolute())).hexdigest()[:40]
        return self.folder / "last" / f"{name}.json"

    def before(self, plan: Path, sheet: RunSheet, teller: str) -> RunSheet | None:
        """The sheet that a plan file gave before this one, other in its times; None where there is none, or the same
        `teller` was given it already. Remembers this one. A file that cannot be read is taken for none."""
        path = self._last_path(plan)
        try:
            last = self._last_of(path)
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


def _sound(data: bytes) -> bytes:
    """A kept file without its checksum, which stands in a line of its own at the end. Raises msgspec.DecodeError where
    a word was altered."""
    body, _, sum_ = data.rstrip(b"\n").rpartition(b"\n")
    if sum_ != hashlib.sha256(body).hexdigest().encode():
        raise msgspec.DecodeError
    return body


def _keep(path: Path, data: bytes) -> None:
    """Writes a file whole and synced, with a checksum, and deletes the oldest beside it beyond `NEWEST_KEPT`. Raises
    nothing if the disk fails."""
    try:
        private_folder(path.parent)
        replace_whole(path, data + b"\n" + hashlib.sha256(data).hexdigest().encode() + b"\n")
        for old in sorted(path.parent.glob("*.json"), key=lambda f: f.stat().st_mtime)[:-NEWEST_KEPT]:
            old.unlink(missing_ok=True)
    except OSError:
        return
