"""`platecall dishes`: from a plan to the shelf, from the shelf into another plan, and who had what."""

from pathlib import Path

import pytest

from board.app.dishes import from_shelf
from board.base.exits import ExitCode
from board.files.paths import logs_folder
from board.files.plans import plan_in
from board.plan.model.courses import Dish
from tests.whole.conftest import Run
from tests.whole.test_lessons_command import PLAN, live

SUPPER = PLAN.replace("[4 guests]", "[Ada, Rory, 2 others]")
LATER = SUPPER.replace("Soup supper", "Winter supper").replace("2026-11-28", "2026-12-19")
WAITING = LATER.partition("      - dish")[0] + "      - from shelf: LEEK soup   # again\n"


@pytest.fixture
def plan(home: Path) -> Path:
    path = home / "supper.yaml"
    path.write_text(SUPPER, encoding="utf-8")
    return path


@pytest.fixture
def later(home: Path) -> Path:
    path = home / "later.yaml"
    path.write_text(WAITING, encoding="utf-8")
    return path


def evening(plan: Path, *, rehearsal: bool = False) -> None:
    logs_folder().mkdir(parents=True)
    live(plan, logs_folder() / "soup-supper-2026-11-28.jsonl", rehearsal=rehearsal)


def test_a_dish_is_kept_listed_shown_and_dropped(run: Run, plan: Path) -> None:
    assert "No dish is kept yet" in run("dishes")[1]
    code, out, _ = run("dishes", "keep", str(plan), "leek  SOUP")
    assert (code, "Kept: Leek soup" in out) == (0, True)

    listed = run("dishes")[1]
    assert "Leek soup" in listed
    assert "Soup" in listed
    assert "25 min" in listed  # 20 of cutting, 5 at the stove
    assert "takes: 25 to 30 to 35 min   # as the book says" in run("dishes", "show", "Leek soup")[1]
    code, out, _ = run("dishes", "drop", "leek soup")
    assert code == 0
    assert Path(out.strip().rpartition(" lies at ")[2]).is_file()
    assert "No dish is kept yet" in run("dishes")[1]


def test_the_logs_tell_when_it_was_last_served_and_the_plan_to_whom(run: Run, plan: Path) -> None:
    run("dishes", "keep", str(plan), "Leek soup")
    assert "28 Nov 2026" not in run("dishes")[1]  # planned is not served
    evening(plan)

    listed = run("dishes")[1]
    assert "28 Nov 2026" in listed
    assert "Ada, Rory, 2 others" in listed
    run("dishes", "keep", str(plan), "Leek soup")
    (logs_folder() / "soup-supper-2026-11-28.jsonl").unlink()
    assert "28 Nov 2026" in run("dishes")[1]  # what a log once showed stays known


def test_a_rehearsal_serves_nobody(run: Run, plan: Path) -> None:
    run("dishes", "keep", str(plan), "Leek soup")
    evening(plan, rehearsal=True)

    assert "28 Nov 2026" not in run("dishes")[1]


def test_a_plan_takes_a_dish_from_the_shelf_and_check_tells_who_had_it(run: Run, plan: Path, later: Path) -> None:
    run("dishes", "keep", str(plan), "Leek soup")
    code, _, told = run("check", str(later))
    assert (code, "plan 17" in told) == (ExitCode.STOP, True)

    code, out, _ = run("dishes", "fill", str(later))
    assert code == 0
    assert "Written out: LEEK soup" in out
    assert "      # again\n      - dish: Leek soup\n" in later.read_text()
    (copy,) = later.parent.glob("later.yaml.bak-*")
    assert copy.read_text() == WAITING
    assert "had Leek soup" not in run("check", str(later), "--all")[1]
    evening(plan)
    assert "Ada and Rory had Leek soup on 28 November" in run("check", str(later), "--all")[1]


def test_a_menu_that_repeats_is_told_though_no_dish_is_kept(run: Run, plan: Path, later: Path) -> None:
    later.write_text(LATER, encoding="utf-8")
    assert "had Leek soup" not in run("check", str(later), "--all")[1]
    evening(plan)

    assert "Ada and Rory had Leek soup on 28 November" in run("check", str(later), "--all")[1]
    assert "had Leek soup" not in run("check", str(plan), "--all")[1]  # that evening itself
    _, told, _ = run("logs", "--guests")
    assert "Ada\n  2026-11-28 Soup supper: Leek soup\n" in told
    assert "2 others\n" in told


def test_a_dish_that_is_not_there_is_one_message_with_the_nearest_names(run: Run, plan: Path, later: Path) -> None:
    run("dishes", "keep", str(plan), "Leek soup")
    later.write_text(WAITING.replace("LEEK soup", "leak soup"))
    code, _, told = run("dishes", "fill", str(later))

    assert code == ExitCode.STOP
    assert told.count("\n") == 1
    assert "Did you mean Leek soup?" in told
    assert later.read_text() == WAITING.replace("LEEK soup", "leak soup")
    assert list(later.parent.glob("*.bak-*")) == []
    for words in (("show", "leek"), ("drop", "soup"), ("keep", str(plan), "Leek sup")):
        code, _, told = run("dishes", *words)
        assert (code, "Did you mean Leek soup?" in told) == (ExitCode.USAGE, True)


def test_two_dishes_of_one_name_are_told_apart_by_their_course(run: Run, plan: Path) -> None:
    second = SUPPER.partition("  - course: Soup")[2].replace("at: 19:15   # sharp", "at: 20:15")
    second = second.replace("cut the leeks", "warm the bread").replace("simmer the soup", "ladle it out")
    plan.write_text(f"{SUPPER}  - course: Late{second}")
    code, _, told = run("dishes", "keep", str(plan), "Leek soup")

    assert (code, "say --course with one of Soup, Late" in told) == (ExitCode.USAGE, True)
    assert run("dishes", "keep", str(plan), "Leek soup", "--course", "late")[0] == 0


def test_a_damaged_file_is_told_and_the_others_are_listed(run: Run, plan: Path, home: Path) -> None:
    run("dishes", "keep", str(plan), "Leek soup")
    (home / "XDG_DATA_HOME" / "platecall" / "dishes" / "bad.yaml").write_text("kept: 2026-11-28\ndishes: 3\n")
    code, out, told = run("dishes")

    assert code == ExitCode.STOP
    assert "Leek soup" in out
    assert "bad.yaml:2:" in told


def test_the_shelf_as_a_menu_asks_it(run: Run, plan: Path) -> None:
    run("dishes", "keep", str(plan), "Leek soup")
    lines = from_shelf("leek soup", 6)

    assert lines is not None
    assert lines[0] == "- dish: Leek soup"
    assert from_shelf("no such", 6) is None


def test_a_new_menu_takes_from_the_shelf_first_and_says_so(run: Run, plan: Path, home: Path) -> None:
    run("dishes", "keep", str(plan), "leek soup")
    (home / "menu.txt").write_text("19 Dec 18:30, 6 guests: Ada, 5 others\nStarter: LEEK soup\nMain: beef stew\n")

    code, out, err = run("new", str(home / "later.yaml"), "--menu", str(home / "menu.txt"), "--zone", "Europe/Dublin")

    assert (code, err) == (0, "")
    assert "From your shelf: LEEK soup\n" in out
    written = plan_in((home / "later.yaml").read_text(encoding="utf-8"), home / "later.yaml").plan
    soup = written.courses[0].dishes[0]
    assert soup.dish == "Leek soup"
    assert [step.step for step in soup.steps] == [step.step for step in kept_soup(plan).steps]
    assert written.guest_count == 7


def kept_soup(plan: Path) -> Dish:
    return plan_in(plan.read_text(encoding="utf-8"), plan).plan.courses[0].dishes[0]
