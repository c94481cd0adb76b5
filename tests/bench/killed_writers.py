"""Writers killed (SIGKILL) just before and just after each of their system calls, and in the middle of each write.

What must hold: every file is as it was or as it was to be, a run log lacks lines at its end only, and the same writer
afterwards does all of it and leaves nothing beside.
"""

import os
import shutil
import signal
from collections.abc import Callable
from pathlib import Path
from typing import Any

from board.log import disk

CALLS = ("open", "fsync", "ftruncate", "link", "unlink", "rename", "replace", "chmod", "fchmod", "mkdir")
Files = dict[str, bytes]
Writer = Callable[[Path], object]


class _Killer:
    """Kills its process at the `at`-th moment; each call is one before it and one after it, a write one within, too."""

    def __init__(self, at: int) -> None:
        self.left = at

    def moment(self) -> None:
        self.left -= 1
        if self.left == 0:
            os.kill(os.getpid(), signal.SIGKILL)

    def around(self, real: Callable[..., Any]) -> Callable[..., Any]:
        def call(*given: Any, **named: Any) -> Any:
            self.moment()
            found = real(*given, **named)
            self.moment()
            return found

        return call

    def in_halves(self, real: Callable[[Any, Any], int]) -> Callable[[Any, Any], int]:
        def write(handle: Any, data: Any) -> int:
            self.moment()
            half = real(handle, data[: (len(data) + 1) // 2])
            self.moment()
            return half  # a short write, as the system may make one

        return write


class _Halves:
    """A file that is written in halves."""

    def __init__(self, file: Any, killer: _Killer) -> None:
        self.file, self.killer = file, killer

    def __enter__(self) -> "_Halves":
        return self

    def __exit__(self, *_: object) -> None:
        self.file.close()

    def __getattr__(self, name: str) -> Any:
        return getattr(self.file, name)

    def write(self, data: bytes) -> None:
        for half in (data[: len(data) // 2], data[len(data) // 2 :]):
            self.file.write(half)
            self.file.flush()
            self.killer.moment()


def _arm(at: int) -> None:
    killer, fdopen, write = _Killer(at), os.fdopen, os.write
    for name in CALLS:
        setattr(os, name, killer.around(getattr(os, name)))
    os.write = killer.in_halves(write)
    os.fdopen = lambda *given, **named: _Halves(fdopen(*given, **named), killer)  # type: ignore[assignment]


def killed_at(at: int, write: Writer, folder: Path) -> bool:
    """Runs the writer in a process of its own; whether it was killed before it was done. Raises AssertionError where it
    ended by anything else."""
    process = os.fork()
    if process == 0:
        code = 1
        try:
            _arm(at)
            write(folder)
            code = 0
        finally:
            os._exit(code)
    _, status = os.waitpid(process, 0)
    assert os.WIFSIGNALED(status) or os.WEXITSTATUS(status) == 0, f"moment {at}: the writer failed"
    return os.WIFSIGNALED(status)


def files_in(folder: Path) -> Files:
    """All but locks and what is being written."""
    return {
        each.relative_to(folder).as_posix(): each.read_bytes()
        for each in sorted(folder.rglob("*"))
        if each.is_file() and not each.name.endswith((".lock", disk.PART))
    }


def kill_at_each(prepare: Writer, write: Writer, folder: Path) -> tuple[int, list[str]]:
    """How many moments there were, and what broke. `prepare` makes what lies in a folder before."""
    whole = folder / "whole"
    whole.mkdir(parents=True)
    prepare(whole)
    before = files_in(whole)
    write(whole)
    after, at, broke = files_in(whole), 0, []
    while True:
        at += 1
        place = folder / str(at)
        place.mkdir()
        prepare(place)
        if not killed_at(at, write, place):
            return at - 1, broke
        broke += [f"moment {at}: {name} is neither" for name in _neither(before, files_in(place), after)]
        for part in place.rglob(f"*{disk.PART}"):
            os.utime(part, (1, 1))  # long ago
        write(place)
        for each in {path.parent for path in place.rglob("*") if path.is_file()}:
            disk.replace_whole(each / "next", b"")  # whatever is written next there cleans up
        left = [each.name for each in place.rglob(f"*{disk.PART}")]
        lacks = [name for name, data in after.items() if files_in(place).get(name) != data]
        broke += [f"moment {at}: left over {left}, not made {lacks}"] if left or lacks else []
        shutil.rmtree(place)


def _neither(before: Files, found: Files, after: Files) -> list[str]:
    return [
        name
        for name, data in found.items()
        if data not in (before.get(name), after.get(name))
        and not (name.endswith(".jsonl") and data.startswith(before.get(name, b"")) and after[name].startswith(data))
    ]
