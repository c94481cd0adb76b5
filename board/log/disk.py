"""One file that is to hold given lines, in order, each once and whole, whatever becomes of disk and folder.

What could not be written stays in memory and is tried again. Between two tries the file may lack lines at its end; it
never holds half a line that is built upon, nor one twice, for each is written at the very place it belongs.
"""

import errno
import os
import re
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager, suppress
from pathlib import Path

from filelock import FileLock, Timeout

from board.log import words

try:
    import fcntl
except ImportError:  # no Unix: the lock file beside it has to do
    fcntl = None  # type: ignore[assignment]


PRIVATE = 0o600  # logs, their copies, what is kept of plans: for the host alone
AS_BYTES: int = getattr(os, "O_BINARY", 0)  # Windows turns line ends otherwise
PART, LEFT_SECONDS = ".part", 600.0
_A_PART = re.compile(rf"\..+-[0-9a-f]{{12}}{re.escape(PART)}", re.DOTALL)


class LogInUse(Exception):
    """Another board has this log open."""


class LineFile:
    """Lines on disk under a lock. `lines` are all there should be; the first `kept` of them are written and synced.

    Locked are the name that `path` leads to, by a file beside it, and the file itself, whatever other names it has.
    `aside`: the copy made of a file found damaged, before its unsound rest is cut off.
    """

    def __init__(self, path: Path) -> None:
        self.path = path = Path(os.path.realpath(path))
        self.lines: list[bytes] = []
        self.kept = 0
        self.aside: Path | None = None
        self._bytes = 0
        self._damaged = False
        self._tail = b""  # what was found after the lines, and may be cut off
        self._file: int | None = None
        self._held: int | None = None  # the file, locked
        self._lock: FileLock | None = None
        self._lock_path = path.with_name(path.name + ".lock")

    def found(self, lines: Sequence[bytes], tail: bytes = b"", *, damaged: bool) -> None:
        """The file begins with these lines; the tail that follows them in it is torn or, worth a copy, damaged."""
        self.lines, self.kept, self._bytes = list(lines), len(lines), sum(len(line) for line in lines)
        self._tail, self._damaged = tail, damaged

    def put_in_place(self, data: bytes) -> None:
        """The file holds `data` from now on; as it was, it is set aside. Raises OSError."""
        self.aside = set_aside(self.path)
        replace_whole(self.path, data)
        self._hold()

    def lock(self) -> None:
        """Takes the lock, again where folder or lock file have vanished. Raises LogInUse, OSError."""
        if self._lock is None or not self._lock_path.exists():
            self._unlock()
            self._lock_name()
        try:
            self._hold()
        except LogInUse:
            self._unlock()
            raise

    def _lock_name(self) -> None:
        private_folder(self.path.parent)
        lock = FileLock(self._lock_path)
        try:
            lock.acquire(timeout=0)
        except Timeout:
            raise LogInUse(str(self.path)) from None
        self._lock = lock
        _sweep(self._lock_path)

    def _hold(self) -> None:
        """Locks the file that lies there, if there is one. Where a system cannot, its name alone is locked."""
        there = _stat(self.path)
        if there is None or fcntl is None:
            return
        if self._held is not None and os.path.samestat(os.fstat(self._held), there):
            return
        self._let_go()
        with suppress(PermissionError):
            self._held = os.open(self.path, os.O_RDONLY)
            try:
                fcntl.flock(self._held, fcntl.LOCK_EX | fcntl.LOCK_NB)
            except BlockingIOError:
                self._let_go()
                raise LogInUse(str(self.path)) from None
            except OSError:
                return

    def _let_go(self) -> None:
        if self._held is not None:
            with suppress(OSError):
                os.close(self._held)
            self._held = None

    def sync(self) -> None:
        """All lines are on the disk after this. Raises OSError; whole lines that found room count as kept."""
        try:
            self.lock()
        except LogInUse:
            raise OSError(errno.EBUSY, words.log_taken(self.path.name)) from None
        self._reach()
        if self.kept < len(self.lines):
            self._write()

    def _reach(self) -> None:
        """Holds the file that lies at the path; one that vanished is begun anew, a stranger's is set aside."""
        there = _stat(self.path)
        if self._file is not None:
            mine = os.fstat(self._file)
            if there is not None and os.path.samestat(mine, there):
                if there.st_size < self._bytes:  # somebody cut it
                    self.kept = self._bytes = 0
                elif not self._ends_as_left(self._file):
                    raise OSError(errno.EBUSY, words.foreign_lines(self.path.name))
                return
            os.close(self._file)
            self._file = None
        if there is not None and self.kept and not self._is_ours():
            set_aside(self.path)
            self.path.unlink()
            there = None
        if there is not None and self._damaged:
            self.aside = set_aside(self.path)
        self._damaged = False
        file = os.open(self.path, os.O_RDWR | os.O_CREAT | AS_BYTES, PRIVATE)
        if there is not None and there.st_size > self._bytes and not self._ends_as_left(file):
            os.close(file)
            raise OSError(errno.EBUSY, words.foreign_lines(self.path.name))
        self._file = file
        with suppress(OSError, AttributeError):
            os.fchmod(file, PRIVATE)  # an older version let others read it
        if there is None:
            self.kept = self._bytes = 0
            self._hold()
            sync_folder(self.path.parent)
        elif there.st_size > self._bytes:
            os.ftruncate(file, self._bytes)
            os.fsync(file)
        self._tail = b""

    def _ends_as_left(self, file: int) -> bool:
        """Whether the last line kept stands where it was written, and after it nothing but what this program began to
        write, or found there and may cut off."""
        last = self.lines[self.kept - 1] if self.kept else b""
        os.lseek(file, self._bytes - len(last), os.SEEK_SET)
        rest = os.read(file, os.fstat(file).st_size)
        mine, more = rest[: len(last)], rest[len(last) :]
        return mine == last and (more == self._tail or b"".join(self.lines[self.kept :]).startswith(more))

    def _is_ours(self) -> bool:
        """Whether what lies at the path begins with all that was kept."""
        return self.path.read_bytes().startswith(b"".join(self.lines[: self.kept]))

    def _write(self) -> None:
        """The lines not yet kept, at the place where the kept ones end."""
        assert self._file is not None
        rest = self.lines[self.kept :]
        data, written = memoryview(b"".join(rest)), 0
        try:
            os.lseek(self._file, self._bytes, os.SEEK_SET)
            while written < len(data):
                written += os.write(self._file, data[written:])
            os.ftruncate(self._file, self._bytes + written)
            os.fsync(self._file)
        except OSError:
            self._keep_whole_lines(rest, written)
            raise
        self.kept, self._bytes = len(self.lines), self._bytes + written

    def _keep_whole_lines(self, rest: Sequence[bytes], written: int) -> None:
        """After a failure: cuts a half line off, and counts the lines before it once they are synced."""
        whole, size = 0, 0
        while whole < len(rest) and size + len(rest[whole]) <= written:
            size += len(rest[whole])
            whole += 1
        with suppress(OSError):
            assert self._file is not None
            os.ftruncate(self._file, self._bytes + size)
            os.fsync(self._file)
            self.kept, self._bytes = self.kept + whole, self._bytes + size

    def _unlock(self) -> None:
        self._let_go()
        if self._lock is not None:
            with suppress(OSError):
                self._lock_path.unlink()  # while it is held; the file's own lock keeps apart who comes just then
            with suppress(OSError):
                self._lock.release(force=True)
            self._lock = None

    def close(self) -> None:
        if self._file is not None:
            with suppress(OSError):
                os.close(self._file)
            self._file = None
        self._unlock()


def _stat(path: Path) -> os.stat_result | None:
    try:
        return os.stat(path)
    except FileNotFoundError:
        return None


def private_folder(folder: Path) -> None:
    """The folder, made where it is missing, as are those above it: for the host alone. Raises OSError."""
    if not folder.is_dir():
        private_folder(folder.parent)
        folder.mkdir(exist_ok=True, mode=0o700)


def sync_folder(folder: Path) -> None:
    """The new name reaches the disk; some systems cannot sync a folder, and the file is sound without it."""
    with suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def replace_whole(target: Path, data: bytes, ready: Callable[[Path], None] | None = None) -> None:
    """The file then holds `data`, whole and synced, or is as it was. Follows a link. `ready` sees the new file before
    it takes the name, and may raise. Raises OSError and ValueError."""
    target = Path(os.path.realpath(target))
    with _part(target, data, PRIVATE) as part:
        if ready is not None:
            ready(part)
        part.replace(target)
    sync_folder(target.parent)


def place_new(target: Path, data: bytes, mode: int = PRIVATE) -> None:
    """A new file that holds `data`, whole and synced, or none. `mode`: minus the bits of the user's umask. Raises
    FileExistsError where there is one, other OSErrors and ValueError."""
    with _part(target, data, mode) as part:
        try:
            os.link(part, target)  # never takes a name that is taken
        except FileExistsError:
            raise
        except OSError:  # a stick's file system has no second names
            if target.exists():
                raise FileExistsError(errno.EEXIST, os.strerror(errno.EEXIST), str(target)) from None
            part.rename(target)
    sync_folder(target.parent)


@contextmanager
def _part(target: Path, data: bytes, mode: int) -> Iterator[Path]:
    """The bytes, synced, in a file beside the target, which is gone at the end. What a kill left in the folder goes
    with it."""
    import secrets  # only here: opening the board must not wait for it

    part = target.parent / f".{target.name[:40]}-{secrets.token_hex(6)}{PART}"
    handle = os.open(part, os.O_WRONLY | os.O_CREAT | os.O_EXCL | AS_BYTES, mode)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        _sweep(part)
        yield part
    finally:
        with suppress(OSError):
            part.unlink()


def _sweep(made: Path) -> None:
    """Deletes parts that nobody can be writing any more, so much older are they than the file just made beside them."""
    with suppress(OSError):
        now = made.stat().st_mtime
        for each in os.scandir(made.parent):
            if _A_PART.fullmatch(each.name) and now - each.stat(follow_symlinks=False).st_mtime > LEFT_SECONDS:
                os.unlink(each.path)


def set_aside(path: Path) -> Path:
    """A synced copy of the file under the next free name beside it; nothing is deleted. Raises OSError."""
    return write_next_free(path.with_name(f"{path.stem}.damaged{path.suffix}"), path.read_bytes())


def numbered(path: Path, number: int) -> str:
    """`log-2.jsonl`; of a copy, whose date is no suffix, `plan.yaml.bak-2026-11-28-2`."""
    if ".bak-" in path.name:
        return f"{path.name}-{number}"
    return f"{path.stem}-{number}{path.suffix}"


def write_next_free(path: Path, data: bytes) -> Path:
    """The bytes in a new file of that name, or the next free one with a number; where it lies. Raises OSError."""
    number = 1
    while True:
        place = path if number == 1 else path.with_name(numbered(path, number))
        try:
            place_new(place, data)
        except FileExistsError:
            number += 1
        else:
            return place
