"""`check` and `sheet` say what moved since the plan file's last sheet."""

from pathlib import Path

import pytest

from tests.whole.conftest import Run

PLAN = """\
event: Soup and bread
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: 2
kitchen: {wash up: no}
hands:
  host:
    hours:
      on the day: 16:00 - 22:00
courses:
  - course: Soup
    at: 19:30
    dishes:
      - dish: Leek soup
        steps:
          - {step: chop the leeks, takes: 10 min, keeps: 0 min}
          - {step: cook the soup, where: stovetop, takes: 40 min, keeps: 0 min}
          - {step: ladle it, takes: 5 min, keeps: 0 min}
"""


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    path = tmp_path / "soup.yaml"
    path.write_text(PLAN)
    return path


def moved(run: Run, command: str, plan: Path) -> list[str]:
    _, out, _ = run(command, str(plan))
    return [line.strip() for line in out.splitlines() if "since last time" in line]


def test_what_an_edit_moves_is_said_once_by_each(run: Run, plan: Path) -> None:
    """Ten minutes more on the hob: that and the chopping, which it follows at once, begin ten minutes sooner."""
    assert moved(run, "sheet", plan) == moved(run, "check", plan) == []
    plan.write_text(PLAN.replace("40 min", "50 min"))

    (line,) = moved(run, "check", plan)

    assert line.startswith("2 moved since last time: chop the leeks ")
    assert "; cook the soup " in line
    assert line.count(", was ") == 2
    assert "ladle" not in line
    assert moved(run, "sheet", plan) == [line]
    assert moved(run, "check", plan) == moved(run, "sheet", plan) == []


def test_nothing_is_said_where_nothing_moved_or_another_file_came_before(run: Run, plan: Path) -> None:
    moved(run, "sheet", plan)
    plan.write_text(PLAN + "# a note of mine\n")
    assert moved(run, "sheet", plan) == []

    other = plan.with_name("other.yaml")
    other.write_text(PLAN.replace("40 min", "50 min"))

    assert moved(run, "sheet", other) == []
