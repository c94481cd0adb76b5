"""A plan edited while its evening runs: noticed by its stamp, worked out beside, told once and in steps."""

import os
import sys
from collections.abc import Iterator
from pathlib import Path

import msgspec
import pytest

from board.base.plan_digest import digest_of
from board.files.paths import cache
from board.session.background import Background
from board.session.plan_watcher import PlanWatcher
from board.sheet.changed import Changed, changed
from board.sheet.run_sheet import RunSheet
from board.view.board import Viewer
from board.view.changed import MOST_LINES, changed_lines
from tests.conftest import at, slot
from tests.session.conftest import wait_for


@pytest.fixture
def plan(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "cache"))
    path = tmp_path / "supper.yaml"
    path.write_text("event: one\n")
    return path


def edit(path: Path, text: str) -> str:
    path.write_text(text)
    stamp = os.stat(path).st_mtime_ns + 1_000_000_000
    os.utime(path, ns=(stamp, stamp))
    return digest_of(text)


def of_plan(sheet: RunSheet, path: Path) -> RunSheet:
    return msgspec.structs.replace(sheet, digest=digest_of(path.read_text()))


def later(sheet: RunSheet, digest: str) -> RunSheet:
    """The little supper with its sauce later, no chopping, and a salad."""
    slots = [s for s in sheet.slots if s.id not in ("chop", "sauce")]
    return msgspec.structs.replace(
        sheet, digest=digest, slots=(*slots, slot("sauce", "18:40", "18:50"), slot("salad", "18:00", "18:10"))
    )


def test_steps_new_gone_and_at_other_times_are_found(little: RunSheet) -> None:
    found = changed(little, later(little, "x"))

    assert [s.id for s in found.added] == ["salad"]
    assert [s.id for s in found.gone] == ["chop"]
    assert [(old.start, new.start) for old, new in found.moved] == [(at("18:35"), at("18:40"))]
    assert changed(little, little) == Changed()


def test_they_are_told_in_lines_and_not_too_many(little: RunSheet) -> None:
    viewer = Viewer(little)
    lines = changed_lines(viewer, changed(little, later(little, "x")), at("17:00"))

    assert lines == ["+ salad, 18:00–18:10", "− chop", "~ sauce: 18:35–18:45 → 18:40–18:50"]
    many = Changed(gone=tuple(slot(f"step {n}", "17:00", "17:10") for n in range(40)))
    assert len(changed_lines(viewer, many, at("17:00"))) == MOST_LINES
    assert changed_lines(viewer, many, at("17:00"))[-1] == "… and 29 more"


@pytest.fixture
def watcher(plan: Path, little: RunSheet) -> Iterator[PlanWatcher]:
    """By the program's own process."""
    sheet, background = of_plan(little, plan), Background(plan)
    yield PlanWatcher(plan, sheet, sheet.digest, background)
    background.close()


def test_a_plan_left_alone_is_not_even_asked_about(watcher: PlanWatcher) -> None:
    assert watcher.look() is None
    assert not watcher.busy


def test_an_edit_is_told_once_from_a_kept_sheet(plan: Path, little: RunSheet, watcher: PlanWatcher) -> None:
    cache().put(later(little, edit(plan, "event: two\n")))

    found = wait_for(watcher)

    assert found is not None
    assert [s.id for s in found.added] == ["salad"]
    assert wait_for(watcher) is None
    edit(plan, "event: one\n")  # back as it was
    assert wait_for(watcher) is None
    edit(plan, "event: two\n")
    assert wait_for(watcher) is not None


def test_saved_without_a_change_there_is_nothing_to_tell(plan: Path, watcher: PlanWatcher) -> None:
    edit(plan, "event: one\n")

    assert wait_for(watcher) is None


@pytest.mark.slow
def test_a_plan_that_gives_no_timetable_is_told_and_so_is_one_that_does_again(plan: Path, watcher: PlanWatcher) -> None:
    edit(plan, "event: no more than this\n")

    assert wait_for(watcher) == Changed(usable=False)

    plans = Path(__file__).parents[2] / "plans"
    edit(plan, (plans / "garden-lunch.yaml").read_text(encoding="utf-8"))
    found = wait_for(watcher)
    assert found is not None
    assert found.usable
    assert {s.id for s in found.gone} >= {"chop", "stew", "sauce"}


def test_a_process_that_dies_over_an_edit_leaves_it_without_a_timetable(plan: Path, little: RunSheet) -> None:
    sheet = of_plan(little, plan)
    watcher = PlanWatcher(plan, sheet, sheet.digest, Background(plan, (sys.executable, "-c", "raise SystemExit(1)")))
    edit(plan, "event: two\n")

    assert wait_for(watcher) == Changed(usable=False)


def test_while_an_editor_puts_the_file_in_its_place_nothing_is_told(plan: Path, watcher: PlanWatcher) -> None:
    plan.unlink()

    assert watcher.look() is None
    assert not watcher.busy
