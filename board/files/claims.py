"""Who has a plan file open at the planning table: the first, until it is left."""

import hashlib
import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from filelock import FileLock, Timeout
from platformdirs import user_cache_path

from board.files.paths import APP
from board.log.disk import private_folder


@contextmanager
def claimed(path: Path) -> Iterator[bool]:
    """Whether the plan file is this process's to write, under any of its names; True where nothing can be locked."""
    name = hashlib.sha256(os.fsencode(path.resolve())).hexdigest()[:40]
    folder = user_cache_path(APP) / "tables"
    lock = FileLock(folder / f"{name}.lock")
    try:
        private_folder(folder)
        lock.acquire(timeout=0)
    except Timeout:
        yield False
        return
    except OSError:
        yield True
        return
    try:
        yield True
    finally:
        lock.release()
