"""What `check` prints: as data, and the order and length of its text."""

from pathlib import Path

import pytest

from board.base.exits import ExitCode
from board.output.check import MOST_LINES
from tests.conftest import PLANS
from tests.whole.conftest import LANTERN, Run, cold_home, home, run
from tests.whole.printed import keeps_to

__all__ = ["cold_home", "home", "run"]
BUNDLED = sorted(PLANS.glob("*.yaml"))
MENUS = sorted((PLANS.parent / "tests/importing/menus").glob("*.txt"))


def test_check_as_data_holds_what_the_text_counts(run: Run) -> None:
    form = keeps_to("check", run("check", LANTERN, "--json")[1])

    assert sum(form["counts"].values()) == len(form["findings"])
    assert form["timetable"]["holds"]
    assert form["assumed"]


def test_the_verdict_stands_before_what_is_to_mend_or_mind(run: Run) -> None:
    _, out, _ = run("check", LANTERN)

    assert out.index("The timetable holds") < out.index("! MIND")
    assert len(out.splitlines()) <= 40
    assert "(--all tells them)." in out


def test_assumptions_of_one_kind_are_one_line_and_ten_lines_at_most(run: Run) -> None:
    _, out, _ = run("check", LANTERN)
    _, whole, _ = run("check", LANTERN, "--all")

    def assumed(text: str) -> list[str]:
        return text.partition("Assumed, because the plan does not say")[2].split("\n\n")[0].splitlines()[1:]

    assert 0 < len(assumed(out)) <= 10 < len(assumed(whole))


@pytest.mark.slow
@pytest.mark.parametrize("plan", [*BUNDLED, *MENUS], ids=lambda path: path.stem)
def test_every_plan_at_hand_is_checked_on_forty_lines(run: Run, tmp_path: Path, plan: Path) -> None:
    if plan in MENUS:
        menu, plan = plan, tmp_path / "supper.yaml"
        assert run("new", str(plan), "--menu", str(menu), "--zone", "Europe/Dublin")[0] == ExitCode.DONE

    _, out, _ = run("check", str(plan))

    assert 10 < len(out.splitlines()) <= MOST_LINES
