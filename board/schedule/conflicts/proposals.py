"""What a host might change to remove a clash, judged by the clash alone. Nothing here is tried yet. Pure.

A proposal's weight is the minutes a host would rather work than make the change: a rough order for trying, common
practice, no source. A family of proposals is one change by more and more minutes; the least that helps is enough.
"""

import math
from collections.abc import Container, Iterator
from dataclasses import dataclass
from datetime import timedelta
from itertools import combinations
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.facts.safety import HOT_HOLDING_CELSIUS
from board.plan.edit.edits import (
    AddHelper,
    AddOven,
    AddWay,
    BuyDish,
    DropDay,
    DropDish,
    EarlierHours,
    Edit,
    MoreOfTool,
    MoreRings,
    MoreRoom,
    PushCourse,
    SetOn,
)
from board.plan.load import PlanFile
from board.plan.phrases.stations import Heat, Keep, Station
from board.plan.phrases.to_phrase import keep_text, station_text
from board.plan.phrases.when import clock_of, minute_of
from board.plan.places import Loc
from board.plan.resolve.assume import CourseWanted, Task
from board.plan.resolve.links import is_written
from board.schedule.conflicts import words
from board.schedule.conflicts.clashes import HANDS, OVENS, Clash, Taken
from board.schedule.conflicts.violations import Violation
from board.schedule.dependencies import way_of
from board.schedule.problem import LITRE, Problem
from board.schedule.solution import Solution

# What is tried, and in which order: ours.
PUSHES = (5, 10, 15, 20, 30, 45, 60)  # minutes a course may be put off
EARLIER = (30, 60, 120, 240)  # minutes by which the hours may begin sooner
EARLIEST = 7 * 60  # nobody is asked to begin before seven
WIDEST = 25  # °C a step may be asked to accept beyond what it says; common practice, no source
BOUGHT = 5  # minutes to plate what was bought ready; common practice, no source
SHARE, KEEP, ANOTHER_DAY, MORE, HELPER, OVEN, BUY, DROP = 4, 6, 8, 12, 20, 30, 45, 60  # weights


@dataclass(frozen=True)
class Proposal:
    """Edits to the plan, in a host's words. Of one `family` only the first that helps is wanted."""

    what: str
    edits: tuple[Edit, ...]
    weight: int
    family: str


@dataclass(frozen=True)
class Case:
    """A plan, its solution, and the clashes behind what that gives up."""

    file: PlanFile
    problem: Problem
    solution: Solution
    clashes: dict[Violation, Clash]

    @property
    def tasks(self) -> list[Task]:
        return list(self.file.filled.tasks.values())


def proposals(case: Case) -> list[Proposal]:
    """All that might help, the lightest first; each only once."""
    found: dict[tuple[Edit, ...], Proposal] = {}
    for violation, clash in case.clashes.items():
        for proposal in _Proposer(case, violation, clash).all():
            found.setdefault(proposal.edits, proposal)
    return sorted(found.values(), key=lambda p: p.weight)


class _Proposer:
    def __init__(self, case: Case, violation: Violation, clash: Clash) -> None:
        self.case = case
        self.file = case.file
        self.problem = case.problem
        self.violation = violation
        self.clash = clash
        self.zone = ZoneInfo(case.file.plan.zone)

    def all(self) -> Iterator[Proposal]:
        kinds = {taken.what for taken in self.clash.taken}
        yield from self._share_a_setting()
        yield from self._keep_it_elsewhere()
        yield from self._another_day()
        yield from self._more_of(kinds)
        if HANDS in kinds or not kinds:
            yield from self._earlier()
        if HANDS in kinds:
            yield from self._a_helper()
        yield from self._push()
        yield from self._without_a_dish()

    def _jobs(self) -> list[int]:
        """The steps of the clash; if time alone forces the violation, the step or steps it is about."""
        if self.clash.taken:
            return list(dict.fromkeys(taken.job for taken in self.clash.taken))
        if self.violation.kind in ("out-of-hours", "no-place"):
            return [self.violation.index]
        if self.violation.kind == "late":
            return [self.problem.servings[self.violation.index].job]
        order = self.problem.orders[self.violation.index]
        return [order.first, order.second]

    def _name(self, job: int) -> str:
        return self.case.tasks[job].node.name

    def _loc(self, job: int) -> Loc:
        """Where the way that was chosen stands in the plan."""
        number = way_of(self.problem, self.case.solution, job).number
        loc = self.case.tasks[job].node.loc
        return (*loc, "or", number - 1) if number else loc

    def _share_a_setting(self) -> Iterator[Proposal]:
        for one, other in combinations([t for t in self.clash.taken if t.what == OVENS], 2):
            for violations, stays in ((one, other), (other, one)):
                station, accepted = self._station(violations), self._station(stays)
                if station is None or accepted is None or station.heat is None or accepted.heat is None:
                    continue
                heat = _reaching(station.heat, accepted.heat)
                if heat is not None:
                    wider = station.model_copy(update={"heat": heat})
                    edit = SetOn(self._place(violations), self._written(violations, wider))
                    reach = heat.low if heat.low < station.heat.low else heat.high
                    weight = SHARE + round(abs(reach - station.heat.want) / 5)
                    what = words.way_share(self._name(violations.job), round(reach), kept=violations.kept)
                    yield Proposal(what, (edit,), weight, f"share {violations.job}")

    def _station(self, taken: Taken) -> Station | None:
        way = self.case.tasks[taken.job].ways[way_of(self.problem, self.case.solution, taken.job).number]
        if taken.kept:
            return way.keeps.where if way.keeps is not None else None
        return way.where

    def _place(self, taken: Taken) -> Loc:
        return (*self._loc(taken.job), "keeps" if taken.kept else "where")

    def _written(self, taken: Taken, station: Station) -> str:
        if not taken.kept:
            return station_text(station)
        return keep_text(Keep(minutes=self._keeps(taken).minutes, where=station))

    def _keeps(self, taken: Taken) -> Keep:
        keeps = self.case.tasks[taken.job].ways[way_of(self.problem, self.case.solution, taken.job).number].keeps
        assert keeps is not None  # it is kept somewhere
        return keeps

    def _keep_it_elsewhere(self) -> Iterator[Proposal]:
        """A hot result on a ring or in an insulated box, for as long as it keeps where it was."""
        for taken in self.clash.taken:
            if not taken.kept or not self._keeps(taken).where.on_heat:
                continue
            minutes = self._keeps(taken).minutes
            places = [(Station(place="stovetop", rings=1), words.ON_A_RING), (Station(place="hot"), words.IN_A_BOX)]
            for n, (place, where) in enumerate(places):
                if place.place == self._keeps(taken).where.place:
                    continue
                way = {"keeps": keep_text(Keep(minutes=minutes, where=place))}
                what = words.way_keep(self._name(taken.job), where, HOT_HOLDING_CELSIUS)
                edit = AddWay(self.case.tasks[taken.job].node.loc, way)
                yield Proposal(what, (edit,), KEEP + 2 * n, f"keep {taken.job} {where}")

    def _another_day(self) -> Iterator[Proposal]:
        for job in self._jobs():
            node, work = self.case.tasks[job].node, self.case.tasks[job].work
            if work is not None and is_written(node) and (work.day or work.not_before or work.not_after):
                what = words.way_another_day(self._name(job))
                yield Proposal(what, (DropDay(node.loc),), ANOTHER_DAY, f"day {job}")

    def _more_of(self, kinds: set[str | int]) -> Iterator[Proposal]:
        if OVENS in kinds:
            like = next(iter(self.file.plan.kitchen.ovens), None)
            name = _unused(words.SECOND_OVEN, self.file.plan.kitchen.ovens)
            yield Proposal(words.WAY_OVEN, (AddOven(name, like),), OVEN, "oven")
        for kind in kinds:
            if not isinstance(kind, int):
                continue
            resource = self.problem.resources[kind]
            if resource.name == "rings":
                for number in (1, 2):
                    yield Proposal(words.way_rings(number), (MoreRings(number),), MORE * number, "rings")
            elif resource.name in ("fridge", "freezer"):
                for litres in (10, 20, 40):
                    edit: Edit = MoreRoom(resource.name, resource.capacity / LITRE + litres)
                    yield Proposal(words.way_room(resource.name, litres), (edit,), MORE + litres // 4, resource.name)
            else:
                edit = MoreOfTool(resource.name, 1)
                yield Proposal(words.way_tool(resource.name), (edit,), MORE, f"tool {resource.name}")

    def _earlier(self) -> Iterator[Proposal]:
        """Those who may do it start earlier, on each day they have hours."""
        people = dict.fromkeys(h for job in self._jobs() for h in self.problem.jobs[job].hands)
        names = [self.problem.hands[h].name for h in people]
        for name in names[:2]:
            for day, spans in self.file.plan.hands[name].hours.items():
                first = min(minute_of(span.start) for span in spans)
                for minutes in EARLIER:
                    if first - minutes >= EARLIEST:
                        start = clock_of(first - minutes)
                        what = words.way_earlier(name, day, start, minutes)
                        weight = ANOTHER_DAY + minutes // 4
                        yield Proposal(what, (EarlierHours(name, day, start),), weight, f"earlier {name} {day}")

    def _a_helper(self) -> Iterator[Proposal]:
        """A helper for the hours around the clash, on its day; trying shows how little of them is enough."""
        jobs = self._jobs()
        starts = [self.case.solution.starts[job] for job in jobs]
        ends = [s + way_of(self.problem, self.case.solution, j).minutes for s, j in zip(starts, jobs, strict=True)]
        first, last = ((self.problem.origin + timedelta(minutes=m)).astimezone(self.zone)
                       for m in (min(starts) - 60, max(ends) + 30))  # fmt: skip
        days = (self.file.plan.date - first.date()).days
        end = last.strftime("%H:%M") if last.date() == first.date() else "23:59"
        name = _unused(words.A_HELPER, self.file.plan.hands)
        edit = AddHelper(name, words.day_of_plan(days), first.strftime("%H:%M"), end)
        yield Proposal(words.A_HELPER, (edit,), HELPER, "helper")

    def _push(self) -> Iterator[Proposal]:
        names = {self.case.tasks[job].node.course for job in self._jobs()}
        if self.violation.kind == "late":
            names.add(self.problem.servings[self.violation.index].name)
        for course in self.file.filled.courses:
            if course.name in names:
                yield from self._push_one(course)

    def _push_one(self, course: CourseWanted) -> Iterator[Proposal]:
        for minutes in PUSHES:
            at = shared.clock((course.wanted + timedelta(minutes=minutes)).astimezone(self.zone))
            what = words.way_push(course.name, minutes, at)
            yield Proposal(what, (PushCourse(course.name, at),), HELPER + minutes, f"push {course.name}")

    def _without_a_dish(self) -> Iterator[Proposal]:
        dishes = dict.fromkeys((n.course, n.dish) for job in self._jobs() if (n := self.case.tasks[job].node).dish)
        for course, dish in dishes:
            assert course is not None  # every dish is in a course
            assert dish is not None
            yield Proposal(words.way_buy(dish), (BuyDish(course, dish, BOUGHT),), BUY, f"buy {dish}")
            yield Proposal(words.way_drop(dish), (DropDish(course, dish),), DROP, f"drop {dish}")


def _reaching(heat: Heat, other: Heat) -> Heat | None:
    """The heat with its range just wide enough to overlap the other's; None if that asks too much."""
    if other.high < heat.low and heat.low - other.high <= WIDEST:
        return heat.model_copy(update={"low": float(math.floor(other.high))})
    if other.low > heat.high and other.low - heat.high <= WIDEST:
        return heat.model_copy(update={"high": float(math.ceil(other.low))})
    return None


def _unused(name: str, taken: Container[str]) -> str:
    number, found = 2, name
    while found in taken:
        found, number = f"{name} {number}", number + 1
    return found
