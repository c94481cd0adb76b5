"""Files whole or not at all, for the host alone; what a kill left is cleaned up."""

import os
from pathlib import Path

import pytest

from board.log import disk
from board.log.disk import place_new, replace_whole, write_next_free
from board.log.write import RunLog
from board.sheet.run_sheet import RunSheet
from tests.log.test_disk import opened


@pytest.mark.parametrize("place", [place_new, replace_whole, write_next_free])
def test_a_new_file_has_no_name_before_it_is_whole_and_synced(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, place: object
) -> None:
    target, synced, real = tmp_path / "page.html", [], os.fsync

    def sync(handle: int) -> None:
        synced.append(target.exists())
        real(handle)

    monkeypatch.setattr(os, "fsync", sync)
    place(target, b"whole")  # type: ignore[operator]

    assert synced[0] is False
    assert target.read_bytes() == b"whole"
    assert os.listdir(tmp_path) == ["page.html"]


def test_a_file_that_is_there_is_never_replaced_also_without_second_names(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    target = tmp_path / "plan.yaml"
    target.write_bytes(b"mine")
    with pytest.raises(FileExistsError):
        place_new(target, b"other")

    def no_links(*_: object) -> None:
        raise PermissionError

    monkeypatch.setattr(os, "link", no_links)
    with pytest.raises(FileExistsError):
        place_new(target, b"other")
    assert write_next_free(target, b"other").read_bytes() == b"other"
    assert target.read_bytes() == b"mine"


def test_what_a_kill_left_goes_at_the_next_start_and_not_what_is_being_written(tmp_path: Path) -> None:
    target, names = tmp_path / "page.html", ("page.html-0123456789ab", "page.html-ba9876543210", "notes-1")
    left, fresh, others = (tmp_path / f".{name}{disk.PART}" for name in names)
    for each in (left, fresh, others):
        each.write_bytes(b"half")
    os.utime(left, (1, 1))
    os.utime(others, (1, 1))

    replace_whole(target, b"whole")

    assert sorted(os.listdir(tmp_path)) == sorted([fresh.name, others.name, target.name])


def test_opening_a_log_cleans_its_folder(tmp_path: Path, little: RunSheet) -> None:
    left = tmp_path / f".evening-2.jsonl-0123456789ab{disk.PART}"
    left.write_bytes(b"half")
    os.utime(left, (1, 1))

    opened(tmp_path / "evening.jsonl", little)[0].close()

    assert os.listdir(tmp_path) == ["evening.jsonl"]


def test_a_link_stays_a_link(tmp_path: Path) -> None:
    target, link = tmp_path / "kept elsewhere.json", tmp_path / "settings.json"
    link.symlink_to(target)

    replace_whole(link, b"whole")

    assert link.is_symlink()
    assert target.read_bytes() == b"whole"


def test_logs_and_their_copies_are_for_the_host_alone(tmp_path: Path, little: RunSheet) -> None:
    path = tmp_path / "data" / "evening.jsonl"
    log, _ = opened(path, little)
    log.close()
    path.chmod(0o644)
    data = path.read_bytes()
    path.write_bytes(data + data[-80:-1].replace(b'"', b"'") + b"\n")

    log = RunLog(path)
    log.close()

    assert path.read_bytes() == data
    assert log.aside is not None  # a damaged last line as well as the middle
    for each in (path, log.aside):
        assert each.stat().st_mode & 0o777 == 0o600
    assert path.parent.stat().st_mode & 0o777 == 0o700
