"""Jobs that put leftovers away, as lines to paste: as few as meet every deadline of a sheet. Pure."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta

from board.checks.sheet.clocks import DishClock
from board.plan.edit.yaml_text import Layout, flow
from board.sheet.run_sheet import RunSheet

TAKES, SPARE, LONGEST_WAIT = 10, 5, 60  # minutes: of the job; before a deadline; longest after clearing; ours


@dataclass(frozen=True, slots=True)
class Left:
    """A course's leftovers, their deadline, and the dish that sets it."""

    course: str
    by: datetime
    first: DishClock


def together(sheet: RunSheet, left: list[Left]) -> Iterator[list[Left]]:
    """Groups that one job can put away, after the last is cleared and before any deadline."""
    group: list[Left] = []
    for each in sorted(left, key=lambda one: _ends(sheet, one.course)[1]):
        by = min(one.by for one in (*group, each))
        if group and _ends(sheet, each.course)[1] + timedelta(minutes=TAKES + SPARE) > by:
            yield group
            group = []
        group.append(each)
    if group:
        yield group


def job_line(sheet: RunSheet, group: list[Left]) -> str:
    """A `jobs` entry that puts these courses' leftovers away in time."""
    names = [each.course for each in group]
    job = {
        "job": f"put away what is left of {' and '.join(names)}",
        "after": after(sheet, group, TAKES),
        "takes": f"{TAKES} min",
        "puts away": names if len(names) > 1 else names[0],
    }
    return flow(job, Layout())


def after(sheet: RunSheet, group: list[Left], takes: int) -> str:
    """The `after` text of such a job of `takes` minutes; if there is no time to wait for clearing, while the last
    course is still being eaten."""
    by = min(each.by for each in group)
    last = max((each.course for each in group), key=lambda name: _ends(sheet, name)[1])
    served, cleared = _ends(sheet, last)
    if (spare := _minutes(by - cleared) - takes) >= 0:
        return f"clear {last}, at most {min(max(0, spare - SPARE), LONGEST_WAIT)} min"
    most = max(0, _minutes(by - served) - takes - SPARE)
    return f"serve {last}, at least {max(0, most - TAKES)} min, at most {most} min"


def _ends(sheet: RunSheet, course: str) -> tuple[datetime, datetime]:
    """When a course is out, and when it is cleared."""
    slots = sheet.by_id()
    found = next(each for each in sheet.courses if each.name == course)
    return slots[found.serve].end, slots[found.clear].end


def _minutes(length: timedelta) -> int:
    return int(length / timedelta(minutes=1))
