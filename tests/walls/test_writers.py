"""Files are written in one way, whole or not at all: nothing but `log/disk` opens one to write, renames or replaces
one."""

import re
from pathlib import Path

BOARD = Path(__file__).parents[2] / "board"
WRITES = re.compile(
    r"""\.write_(text|bytes)\(|\bopen\([^)\n]*["'](?=[a-z+]*[wax+])[rwabxt+]+["']|O_(WRONLY|RDWR|CREAT|APPEND)"""
    r"""|\bos\.(replace|link|truncate)\(|\.rename\(|\bmkstemp|\bNamedTemporaryFile"""
)
NO_FILES = re.compile(r"os\.devnull")


def writers(code: str) -> list[str]:
    return [line.strip() for line in code.splitlines() if WRITES.search(line) and not NO_FILES.search(line)]


def test_only_the_disk_s_own_file_writes() -> None:
    found = {
        path.relative_to(BOARD).as_posix(): writers(path.read_text(encoding="utf-8")) for path in BOARD.rglob("*.py")
    }

    assert found.pop("log/disk.py")
    assert {name: lines for name, lines in found.items() if lines} == {}


def test_a_writer_is_known() -> None:
    for line in (
        'path.write_text("x")',
        'open(path, "w")',
        "path.open('ab')",
        "os.open(path, os.O_WRONLY)",
        "os.rename(a, b)",
    ):
        assert writers(line)
    for line in ('open(path, "rb")', 'path.open("r")', "text.replace(a, b)", "os.open(os.devnull, os.O_RDWR)"):
        assert not writers(line)
