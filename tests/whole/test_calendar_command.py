"""`platecall calendar`: to stdout as it is, or into a file that is replaced whole or left as it was."""

import os
import stat
from pathlib import Path

import icalendar
import msgspec
import pytest

from board.base.exits import ExitCode
from board.files import whole as writing
from board.sheet.run_sheet import RunSheet
from tests.whole.conftest import LANTERN, Run


@pytest.fixture(autouse=True)
def _solved(lantern_sheet: RunSheet, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("board.app.timetables._work_out", lambda *_: lantern_sheet)


def left(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir() if not path.name.startswith("XDG"))


def test_it_goes_to_stdout_with_the_line_ends_of_the_standard(run: Run) -> None:
    code, out, _ = run("calendar", LANTERN)

    assert code == ExitCode.DONE
    assert out.startswith("BEGIN:VCALENDAR\r\n")
    assert out.count("\n") == out.count("\r\n")
    assert icalendar.Calendar.from_ical(out).walk("VEVENT")


def test_what_must_be_mended_before_anybody_eats_is_said(
    run: Run, lantern_sheet: RunSheet, monkeypatch: pytest.MonkeyPatch
) -> None:
    stopped = msgspec.structs.replace(lantern_sheet, stops=("food 1: the chicken\x1b[2J is not done",))
    monkeypatch.setattr("board.app.timetables.sheet_of", lambda *_, **__: stopped)

    code, out, err = run("calendar", LANTERN)

    assert code == ExitCode.DONE
    assert out.startswith("BEGIN:VCALENDAR")
    assert "food 1: the chicken\ufffd[2J is not done" in err


def test_an_older_calendar_is_replaced_whole_its_mode_and_link_kept(run: Run, tmp_path: Path) -> None:
    real, link = tmp_path / "real.ics", tmp_path / "supper.ics"
    link.symlink_to("real.ics")
    first, _, err = run("calendar", LANTERN, "-o", str(link))
    real.chmod(0o640)
    before = real.read_bytes()
    real.write_bytes(before + b"BEGIN:VCALENDAR\r\n" * 1000)

    second, out, _ = run("calendar", LANTERN, "-o", str(link))

    assert (first, second) == (ExitCode.DONE, ExitCode.DONE)
    assert "Written" in err
    assert out == ""
    assert link.is_symlink()
    assert len(real.read_bytes()) == len(before)
    assert stat.S_IMODE(real.stat().st_mode) == 0o640
    assert left(tmp_path) == ["real.ics", "supper.ics"]


def test_a_new_file_has_the_mode_of_any_file_of_the_users(run: Run, tmp_path: Path) -> None:
    (tmp_path / "touched").touch()

    run("calendar", LANTERN, "-o", str(tmp_path / "supper.ics"))

    assert (tmp_path / "supper.ics").stat().st_mode == (tmp_path / "touched").stat().st_mode


def test_a_file_of_another_kind_is_left_alone(run: Run, tmp_path: Path) -> None:
    """A slip of the fingers must not cost a host the plan."""
    plan = tmp_path / "supper.yaml"
    plan.write_text("event: Mine\n")

    code, _, err = run("calendar", LANTERN, "-o", str(plan))

    assert code == ExitCode.FAILED
    assert "another kind of file" in err
    assert plan.read_text() == "event: Mine\n"


@pytest.mark.parametrize("where", ["folder", "none/supper.ics", "pipe", "ring", "a\0b.ics", "protected.ics"])
def test_where_nothing_can_be_written_that_is_told(run: Run, tmp_path: Path, where: str) -> None:
    (tmp_path / "folder").mkdir()
    os.mkfifo(tmp_path / "pipe")
    (tmp_path / "ring").symlink_to("ring")
    (tmp_path / "protected.ics").write_text("BEGIN:VCALENDAR\r\n")
    (tmp_path / "protected.ics").chmod(0o444)
    before = left(tmp_path)

    code, out, err = run("calendar", LANTERN, "-o", str(tmp_path / where))

    assert code == ExitCode.FAILED
    assert out == ""
    assert err.strip()
    assert "Traceback" not in err
    assert left(tmp_path) == before
    assert (tmp_path / "protected.ics").read_text() == "BEGIN:VCALENDAR\n"


@pytest.mark.parametrize("already", [True, False])
def test_on_a_full_disk_the_old_file_stays_and_no_half_one_is_left(
    run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, already: bool
) -> None:
    target = tmp_path / "supper.ics"
    if already:
        target.write_bytes(b"BEGIN:VCALENDAR\r\nold")

    def full(_: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(writing.os, "fsync", full)
    code, _, err = run("calendar", LANTERN, "-o", str(target))

    assert code == ExitCode.FAILED
    assert "No space left on device" in err
    assert left(tmp_path) == (["supper.ics"] if already else [])
    assert not already or target.read_bytes() == b"BEGIN:VCALENDAR\r\nold"


def test_a_plan_that_is_none_is_told_before_anything_is_written(run: Run, tmp_path: Path) -> None:
    code, _, err = run("calendar", str(tmp_path / "none.yaml"), "-o", str(tmp_path / "x.ics"))

    assert code == ExitCode.FAILED
    assert "no such file" in err
    assert left(tmp_path) == []
