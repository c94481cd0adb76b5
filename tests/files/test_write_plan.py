"""A plan file on the disk: written whole or not at all, never over somebody else's change."""

import os
import stat
from pathlib import Path

import pytest

from board.base.errors import Trouble
from board.files import plans as desk
from board.files.plans import read_text, write_plan

OLD, NEW = "event: Supper\n", "event: Späte Jause\r\n"


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    path = tmp_path / "supper.yaml"
    path.write_bytes(OLD.encode())
    return path


def left(plan: Path) -> list[str]:
    return sorted(path.name for path in plan.parent.iterdir())


def test_the_new_text_is_written_byte_for_byte_and_nothing_lies_beside_it(plan: Path) -> None:
    write_plan(plan, read_text(plan), NEW)

    assert plan.read_bytes() == NEW.encode()
    assert left(plan) == ["supper.yaml"]


def test_the_mark_at_the_start_is_kept_and_never_doubled(plan: Path) -> None:
    plan.write_bytes(b"\xef\xbb\xbf" + OLD.encode())

    write_plan(plan, read_text(plan), NEW)
    assert plan.read_bytes() == b"\xef\xbb\xbf" + NEW.encode()
    write_plan(plan, "\ufeff" + NEW, "\ufeff" + OLD)
    assert plan.read_bytes() == b"\xef\xbb\xbf" + OLD.encode()


@pytest.mark.parametrize("mode", [0o600, 0o644, 0o664])
def test_the_mode_is_kept(plan: Path, mode: int) -> None:
    plan.chmod(mode)

    write_plan(plan, OLD, NEW)

    assert stat.S_IMODE(plan.stat().st_mode) == mode


def test_a_link_stays_a_link_and_what_it_points_at_is_written(plan: Path, tmp_path: Path) -> None:
    folder = tmp_path / "links"
    folder.mkdir()
    link = folder / "tonight.yaml"
    link.symlink_to(Path("..") / plan.name)

    write_plan(link, OLD, NEW)

    assert link.is_symlink()
    assert plan.read_bytes() == NEW.encode()
    assert left(link) == ["tonight.yaml"]


def test_a_file_changed_since_it_was_read_is_left_alone(plan: Path) -> None:
    plan.write_bytes(b"event: Breakfast\n")

    with pytest.raises(Trouble, match="changed since it was read; nothing was written"):
        write_plan(plan, OLD, NEW)

    assert plan.read_bytes() == b"event: Breakfast\n"
    assert left(plan) == ["supper.yaml"]


def test_a_file_changed_while_the_new_one_is_made_is_left_alone(plan: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def meanwhile(_: int) -> None:
        plan.write_bytes(b"event: Breakfast\n")

    monkeypatch.setattr(desk.os, "fsync", meanwhile)
    with pytest.raises(Trouble, match="changed since it was read"):
        write_plan(plan, OLD, NEW)

    assert plan.read_bytes() == b"event: Breakfast\n"
    assert left(plan) == ["supper.yaml"]


def test_a_file_that_is_gone_is_told(plan: Path) -> None:
    plan.unlink()

    with pytest.raises(Trouble):
        write_plan(plan, OLD, NEW)

    assert left(plan) == []


def test_a_write_protected_file_is_left_alone(plan: Path) -> None:
    plan.chmod(0o444)

    with pytest.raises(Trouble, match="write-protected"):
        write_plan(plan, OLD, NEW)

    assert plan.read_bytes() == OLD.encode()


@pytest.mark.skipif(not hasattr(os, "geteuid") or os.geteuid() == 0, reason="nothing is closed to the superuser")
def test_a_folder_that_lets_nothing_in_is_told(plan: Path) -> None:
    plan.parent.chmod(0o555)
    try:
        with pytest.raises(Trouble, match="could not be written"):
            write_plan(plan, OLD, NEW)
    finally:
        plan.parent.chmod(0o755)

    assert plan.read_bytes() == OLD.encode()


@pytest.mark.parametrize("where", ["fsync", "fdopen", "chown"])
def test_whatever_fails_the_old_file_stays_whole(plan: Path, monkeypatch: pytest.MonkeyPatch, where: str) -> None:
    """A full disk shows itself when writing or syncing; an owner that cannot be kept is no reason to fail."""

    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(desk.os, where, full)
    if where == "chown":
        write_plan(plan, OLD, NEW)
        assert plan.read_bytes() == NEW.encode()
    else:
        with pytest.raises(Trouble, match="No space left on device"):
            write_plan(plan, OLD, NEW)
        assert plan.read_bytes() == OLD.encode()
    assert left(plan) == ["supper.yaml"]


def test_a_folder_without_write_permission_is_told(plan: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    made = os.open

    def closed(path: str | Path, flags: int, mode: int = 0o777) -> int:
        if flags & os.O_CREAT:
            raise PermissionError(13, "Permission denied")
        return made(path, flags, mode)

    monkeypatch.setattr(os, "open", closed)
    with pytest.raises(Trouble, match="Permission denied"):
        write_plan(plan, OLD, NEW)

    assert plan.read_bytes() == OLD.encode()


def test_text_that_no_file_can_hold_is_refused(plan: Path) -> None:
    with pytest.raises(Trouble, match="could not be written"):
        write_plan(plan, OLD, "event: \ud800\n")

    assert plan.read_bytes() == OLD.encode()
