"""A lock file held while a file of the host's is changed: one program at a time."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

LOCK_SECONDS = 5


@contextmanager
def held(lock_file: Path, in_use: Exception, failed: Callable[[OSError], Exception]) -> Iterator[None]:
    """Holds the lock, in a folder that it makes. Raises `in_use` where another keeps it, and what `failed` makes of a
    disk's refusal."""
    from filelock import FileLock, Timeout

    from board.log.disk import private_folder

    lock = FileLock(lock_file, mode=0o600)
    try:
        private_folder(lock_file.parent)
        lock.acquire(timeout=LOCK_SECONDS)
    except Timeout:
        raise in_use from None
    except OSError as wrong:
        raise failed(wrong) from None
    try:
        yield
    finally:
        lock.release()
