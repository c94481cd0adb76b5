"""The cook's book from the words typed to the file on disk, and back into a plan."""

import os
from datetime import timedelta
from pathlib import Path

import pytest

from board.app.sessions import first_moment
from board.app.timetables import sheet_of
from board.base.clock import StoppedClock
from board.base.exits import ExitCode
from board.log.write import RunLog
from board.rehearsal.draw import Night, draw_night
from board.rehearsal.player import play
from board.session.session import open_evening
from tests.whole.conftest import Run
from tests.whole.printed import keeps_to
from tests.whole.test_lessons_command import PLAN, live

NEW_PLAN = PLAN.replace("Soup supper", "Pear supper").replace(
    "25 to 30 to 35 min   # as the book says", "as in the book"
)


BAKED = PLAN.replace("where: stovetop, 1 ring", "where: oven at 175 C")
SLOW = 24  # minutes from cold to 175 °C; the usual oven takes 15


def slow_evening(folder: Path, day: int, minutes: int = SLOW) -> tuple[Path, Path]:
    """A plan that says nothing of its oven, and the log of an evening on which that heated slowly."""
    plan, log = folder / f"supper-{day}.yaml", folder / f"evening-{day}.jsonl"
    plan.write_text(BAKED.replace("2026-11-28", f"2026-11-{day}"), encoding="utf-8")
    sheet = sheet_of(plan)
    lasts = dict(draw_night(sheet, "calm", 1).lasts)
    lasts |= {slot.id: timedelta(minutes=minutes) for slot in sheet.slots if slot.kind == "heat"}
    clock, kept = StoppedClock(first_moment(sheet, None)), RunLog(log)
    list(play(open_evening(sheet, clock, kept, rehearsal=False), clock, Night(lasts)))
    kept.close()
    return plan, log


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    path = tmp_path / "supper.yaml"
    path.write_text(PLAN, encoding="utf-8")
    return path


@pytest.fixture
def book(home: Path) -> Path:
    return home / "XDG_DATA_HOME" / "platecall" / "book.yaml"


def test_an_evening_is_added_once_and_shown(run: Run, plan: Path, book: Path, tmp_path: Path) -> None:
    log = live(plan, tmp_path / "evening.jsonl")
    code, out, _ = run("lessons", str(plan), str(log), "--into-book")
    first = book.read_text(encoding="utf-8")
    _, again, _ = run("lessons", str(plan), str(log), str(log), "--into-book")
    _, shown, _ = run("lessons", "--book")
    _, form, _ = run("lessons", "--book", "--json")

    assert code == ExitCode.DONE
    assert "1 evening added" in out
    assert "0 evenings added" in again
    assert book.read_text(encoding="utf-8") == first
    assert [path.name for path in book.parent.iterdir() if "part" in path.name] == []
    assert "The cook's book: 1 evening" in shown
    assert "simmer the soup" in shown
    steps = {each["step"]: each["likely_minutes"] for each in keeps_to("book", form)["steps"]}
    assert steps["simmer the soup"] == 45
    assert plan.read_text(encoding="utf-8") == PLAN


def test_a_new_plan_takes_its_lengths_from_the_book(run: Run, plan: Path, book: Path, tmp_path: Path) -> None:
    new = tmp_path / "pears.yaml"
    new.write_text(NEW_PLAN, encoding="utf-8")
    refused, _, why = run("check", str(new))
    run("lessons", str(plan), str(live(plan, tmp_path / "evening.jsonl")), "--into-book")
    code, out, _ = run("lessons", str(new), "--from-book")
    checked, _, _ = run("check", str(new))
    again, nothing, _ = run("lessons", str(new), "--from-book")
    written = new.read_text(encoding="utf-8")

    assert refused == ExitCode.STOP
    assert "pears.yaml:19:20: plan 15: `takes` waits for a figure of the cook's book" in why
    assert (code, checked, again) == (ExitCode.DONE,) * 3
    assert "simmer the soup: 45 min, from 1 evening" in out
    assert "takes: 45 min" in written
    assert "'simmer the soup'; from 2026-11-28 [" in written
    assert NEW_PLAN in [each.read_text(encoding="utf-8") for each in tmp_path.glob("pears.yaml.bak-*")]
    assert "Nothing in the plan says `as in the book`." in nothing


def test_without_a_book_nothing_is_written_and_what_is_missing_is_told(run: Run, book: Path, tmp_path: Path) -> None:
    new = tmp_path / "pears.yaml"
    new.write_text(NEW_PLAN, encoding="utf-8")
    code, _, err = run("lessons", str(new), "--from-book")

    assert code == ExitCode.STOP
    assert "the book knows neither 'simmer the soup' nor other work of its kind" in err
    assert new.read_text(encoding="utf-8") == NEW_PLAN
    assert list(tmp_path.glob("*.bak-*")) == []


def test_an_ovens_rate_goes_from_three_evenings_through_the_book_into_a_new_plan_and_is_mended_there(
    run: Run, book: Path, tmp_path: Path
) -> None:
    new = tmp_path / "tart.yaml"
    ovens = "kitchen:\n  wash up: no\n  ovens:\n    Oven: {heats: as in the book}\n"
    new.write_text(BAKED.replace("kitchen: {wash up: no}\n", ovens), encoding="utf-8")
    other = tmp_path / "other.yaml"
    other.write_text(new.read_text(encoding="utf-8").replace("Oven:", "range:"), encoding="utf-8")
    for day in (10, 14, 21):
        plan, log = slow_evening(tmp_path, day)
        run("lessons", str(plan), str(log), "--into-book")
    code, _, _ = run("lessons", str(new), "--from-book")
    written = new.read_text(encoding="utf-8")
    unknown, _, which = run("lessons", str(other), "--from-book")
    _, later = slow_evening(tmp_path, 28, SLOW + 12)
    taken, said, _ = run("lessons", str(new), str(later), "--take", "1")
    book.write_text(book.read_text(encoding="utf-8").replace("way: heats", "way: heat"), encoding="utf-8")
    broken = run("lessons", str(other), "--from-book")

    assert code == ExitCode.DONE
    assert f"    Oven: {{heats: {SLOW} min to 175 C}}\n" in written
    assert unknown == ExitCode.STOP
    assert (
        "other.yaml:9:20: plan 15: the book does not know how fast 'range' heats; the oven it knows is 'oven'" in which
    )
    assert broken[:2] == (ExitCode.STOP, "")
    assert "book.yaml:" in broken[2]
    assert "'heat' is nothing an oven does" in broken[2]
    assert taken == ExitCode.DONE
    assert f"- Oven: {{heats: {SLOW} min to 175 C}}" in said
    assert "    Oven: {heats: 32 min to 175 C}\n" in new.read_text(encoding="utf-8")  # 24 · e^(2.5 · 0.15 / 1.25)


def test_a_broken_book_is_one_message_and_stays_as_it_is(run: Run, plan: Path, book: Path, tmp_path: Path) -> None:
    log = live(plan, tmp_path / "evening.jsonl")
    run("lessons", str(plan), str(log), "--into-book")
    broken = book.read_text(encoding="utf-8").replace("took: ", "took: around ", 1)
    book.write_text(broken, encoding="utf-8")
    new = tmp_path / "pears.yaml"
    new.write_text(NEW_PLAN, encoding="utf-8")

    for words in (
        ("lessons", "--book"),
        ("lessons", str(plan), str(log), "--into-book"),
        ("lessons", str(new), "--from-book"),
    ):
        code, out, err = run(*words)
        assert (code, out) == (ExitCode.STOP, "")
        assert "the cook's book cannot be read; it is left as it is" in err
        assert "book.yaml:" in err
        assert "is not the mark of an evening and its minutes" in err
    assert book.read_text(encoding="utf-8") == broken
    assert run("lessons", str(plan), str(log), "--no-effect")[0] == ExitCode.DONE


@pytest.mark.skipif(os.name != "posix" or os.geteuid() == 0, reason="root may write everywhere")
def test_a_folder_that_cannot_be_written_loses_nothing(run: Run, plan: Path, book: Path, tmp_path: Path) -> None:
    log = live(plan, tmp_path / "evening.jsonl")
    book.parent.mkdir(parents=True, exist_ok=True)
    book.parent.chmod(0o500)
    code, _, err = run("lessons", str(plan), str(log), "--into-book")
    book.parent.chmod(0o700)

    assert code == ExitCode.FAILED
    assert "could not be written" in err


def test_a_disk_that_fails_midway_leaves_the_book_as_it_was(
    run: Run, plan: Path, book: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    first, second = live(plan, tmp_path / "one.jsonl"), tmp_path / "two.yaml"
    run("lessons", str(plan), str(first), "--into-book")
    before = book.read_bytes()
    second.write_text(PLAN.replace("2026-11-28", "2026-12-05"), encoding="utf-8")
    log = live(second, tmp_path / "two.jsonl")

    def full(_: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    code, _, err = run("lessons", str(second), str(log), "--into-book")

    assert code == ExitCode.FAILED
    assert "No space left on device" in err
    assert book.read_bytes() == before
    assert [path.name for path in book.parent.iterdir() if path.suffix == ".part"] == []


@pytest.mark.parametrize(
    "words",
    [
        ("lessons",),
        ("lessons", "p.yaml", "--book"),
        ("lessons", "p.yaml", "--into-book", "--take", "all"),
        ("lessons", "p.yaml", "--from-book", "--into-book"),
        ("lessons", "--from-book"),
    ],
)
def test_what_does_not_go_together_is_refused(run: Run, words: tuple[str, ...]) -> None:
    code, _, err = run(*words)

    assert code == ExitCode.USAGE
    assert len(err.splitlines()) == 1
