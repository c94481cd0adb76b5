"""Pins the surroundings before anything draws, and reads plans out of a test's own text."""

import os

for name in ("NO_COLOR", "TEXTUAL_THEME", "COLORTERM", "FORCE_COLOR"):
    os.environ.pop(name, None)
os.environ.update(TZ="UTC", LC_ALL="C.UTF-8", COLUMNS="120", TERM="xterm-256color")

import textwrap
from collections.abc import Callable
from pathlib import Path

import pytest

from board.plan.load import PlanFile, read_plan
from board.plan.snag import Snag

PLANS = Path(__file__).parent.parent / "plans"

HEAD = """
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [8 guests]
hands:
  host:
    hours:
      on the day: 9:00 - 23:30
"""


def read(text: str) -> PlanFile | list[Snag]:
    """A plan out of indented text, as if it stood in supper.yaml."""
    return read_plan(textwrap.dedent(text).lstrip("\n"), "supper.yaml")


@pytest.fixture(scope="session")
def plan_from() -> Callable[[str], PlanFile]:
    """Reads a plan that must be sound."""

    def make(text: str) -> PlanFile:
        found = read(text)
        assert isinstance(found, PlanFile), "\n".join(snag.render() for snag in found)
        return found

    return make


@pytest.fixture(scope="session")
def lantern() -> PlanFile:
    """The bundled plan."""
    found = read_plan((PLANS / "lantern-supper.yaml").read_text(encoding="utf-8"), "plans/lantern-supper.yaml")
    assert isinstance(found, PlanFile)
    return found
