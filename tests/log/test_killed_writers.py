"""A writer killed at any system call leaves the file as it was or as it was to be; see `tests/bench/killed_writers`."""

from pathlib import Path

import pytest

from board.log.disk import LineFile, place_new, replace_whole
from tests.bench.killed_writers import Writer, kill_at_each


def prepare(folder: Path) -> None:
    (folder / "there").write_bytes(b"as it was\n")
    (folder / "log.jsonl").write_bytes(b"one\n")


def line_added(folder: Path) -> None:
    file = LineFile(folder / "log.jsonl")
    file.found([b"one\n"], (folder / "log.jsonl").read_bytes()[4:], damaged=False)
    file.lines += [b"two\n", b"three\n"]
    file.sync()
    file.close()


@pytest.mark.slow  # a process for each moment
@pytest.mark.parametrize(
    ("write", "least"),
    [
        (lambda folder: replace_whole(folder / "there", b"as it is to be\n"), 8),
        (lambda folder: (folder / "new").exists() or place_new(folder / "new", b"whole\n"), 8),
        (line_added, 8),
    ],
    ids=["replaced", "new", "a line"],
)
def test_whole_or_as_it_was(tmp_path: Path, write: Writer, least: int) -> None:
    moments, broke = kill_at_each(prepare, write, tmp_path)

    assert moments >= least
    assert broke == []


def test_one_that_writes_in_place_is_found_out(tmp_path: Path) -> None:
    def in_place(folder: Path) -> None:
        import os

        with os.fdopen(os.open(folder / "there", os.O_WRONLY | os.O_TRUNC), "wb") as file:
            file.write(b"as it is to be\n")

    assert kill_at_each(prepare, in_place, tmp_path)[1]
