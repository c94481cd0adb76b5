"""Pins the surroundings before anything draws, and reads plans out of a test's own text."""

import os

for name in ("NO_COLOR", "TEXTUAL_THEME", "COLORTERM", "FORCE_COLOR", "COLUMNS"):
    os.environ.pop(name, None)
os.environ.update(TZ="UTC", LC_ALL="C.UTF-8", TERM="xterm-256color")

import textwrap
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, settings

from board.base.clock import StoppedClock
from board.evening.wishes import Done, Refusal, Wish
from board.plan.load import PlanFile, read_plan
from board.plan.snag import Snag
from board.session.session import unlogged_evening
from board.sheet.run_sheet import Attended, CourseSlot, Dependency, Keeping, RunSheet, Slot, Use
from board.view.present import Present
from tests.examples import NEW_EXAMPLES, times

# How long drawing takes says how busy the machine is. The same examples each time, unless new ones are looked for.
settings.register_profile(
    "ours",
    max_examples=times(100),
    deadline=None,
    derandomize=not NEW_EXAMPLES,
    suppress_health_check=[HealthCheck.too_slow],
)
settings.load_profile("ours")

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


@pytest.fixture(scope="session")
def lantern_sheet(lantern: PlanFile) -> RunSheet:
    """The bundled plan's run sheet, solved once for all tests."""
    from board.schedule.solver.solve import solve
    from board.schedule.to_run_sheet import make_sheet

    return make_sheet(lantern, solve)


@pytest.fixture(scope="session")
def keep_lantern(lantern: PlanFile, lantern_sheet: RunSheet) -> Callable[[Path], None]:
    """Puts the bundled plan's sheet into a cache folder, as the command that worked it out would have."""
    from board.app.timetables import with_all
    from board.checks.sheet.assessed import of_plan
    from board.files.cache import SheetCache

    sheet = with_all(of_plan(lantern), lantern_sheet).the_sheet
    return lambda folder: SheetCache(folder).put(sheet)


UTC_DAY = datetime(2026, 11, 28, tzinfo=UTC)


def at(clock: str) -> datetime:
    """`18:42` on the day of the little sheet, in UTC."""
    hours, minutes = clock.split(":")
    return UTC_DAY + timedelta(hours=int(hours), minutes=int(minutes))


def slot(id_: str, start: str, end: str, **more: Any) -> Slot:
    """A slot of the little sheet: attended all the time on the worktop unless told otherwise."""
    begin, over = at(start), at(end)
    usual: dict[str, Any] = {
        "named": id_,
        "kind": "step",
        "lane": "worktop",
        "attended": (Attended(begin, over, "host", "all"),) if over > begin else (),
    }
    return Slot(id=id_, start=begin, end=over, **{**usual, **more})


def follows(*ids: str) -> tuple[Dependency, ...]:
    return tuple(Dependency(id_, "end", 0, "order") for id_ in ids)


@pytest.fixture
def little() -> RunSheet:
    """A supper small enough to reckon by hand, one course wanted at 19:00.

    chop 17:00-17:20 (hands) → stew 17:30-18:30 (ring; look-ins after 20 and 40 min, 2 min at the end), keeps 30 min,
    best within 20 → serve 18:50-19:00; sauce 18:35-18:45 (hands, after chop's hands), keeps 15 min → serve.
    Guests arrive 18:30. Clear 19:30-19:35 after the serving, least 30 min.
    """
    stew_parts = (
        Attended(at("17:50"), at("17:51"), "host", "look-in"),
        Attended(at("18:10"), at("18:11"), "host", "look-in"),
        Attended(at("18:28"), at("18:30"), "host", "end"),
    )
    serve = slot("serve", "18:50", "19:00", kind="serve", lane="front-of-house", course="Stew",
                 waits=(*follows("stew", "sauce", "arrive"),), then=("clear",))  # fmt: skip
    slots = (
        slot("chop", "17:00", "17:20", then=("stew",), keeping=Keeping(120, "room"), course="Stew"),
        slot("stew", "17:30", "18:30", lane="stovetop", attended=stew_parts, waits=follows("chop"), then=("serve",),
             keeping=Keeping(30, "hot"), best_within=20, course="Stew", look_for="tender", core_celsius=74.0,
             call="Stew on", uses=(Use("rings", 1, at("17:30"), at("18:30")),)),
        slot("arrive", "18:30", "18:30", kind="arrive", lane="front-of-house", then=("serve",)),
        slot("sauce", "18:35", "18:45", waits=(Dependency("chop", "end", 0, "hands"),), then=("serve",),
             keeping=Keeping(15, "hot"), course="Stew"),
        serve,
        slot("clear", "19:30", "19:35", kind="clear", lane="front-of-house", course="Stew",
             waits=(Dependency("serve", "end", 30, "order"),)),
    )  # fmt: skip
    course = CourseSlot("Stew", at("19:00"), at("19:00"), "serve", "clear", may_slip=10)
    return RunSheet(
        plan="Little supper", zone="UTC", digest="0" * 64, date="2026-11-28", arrive=at("18:30"),
        courses=(course,), slots=slots, hands=("host",), proved=True,
    )  # fmt: skip


class Host:
    """An evening on a stopped clock: `at` moves it, `answer` answers a due call, `wish` anything else."""

    def __init__(self, sheet: RunSheet, start: datetime) -> None:
        self.clock = StoppedClock(start)
        self.evening = unlogged_evening(sheet, self.clock)

    def at(self, when: str) -> Present:
        self.clock.set(at(when))
        return self.evening.tick()

    def answer(self, id_: str) -> Present:
        call = next(call for call in self.evening.tick().due if call.slot == id_)
        refusal = self.evening.wish(Done(*call.key))
        assert refusal is None, refusal
        return self.evening.tick()

    def wish(self, wish: Wish) -> Refusal | None:
        return self.evening.wish(wish)


@pytest.fixture
def host(little: RunSheet) -> Host:
    return Host(little, at("16:58"))
