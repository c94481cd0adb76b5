"""Plan → the problem to solve. Pure; knows no solver."""

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from board.facts.batches import batches
from board.facts.heat import ROOM_CELSIUS, OvenRates, celsius_after, cooling_constant, default_rates, heating_rate
from board.facts.rests import SUPPER_BETWEEN
from board.facts.rule_sets import rule_set
from board.plan.model.kitchen import Oven
from board.plan.model.model import Plan
from board.plan.phrases.stations import Station
from board.plan.phrases.when import instant
from board.plan.resolve.absences import absences, free_of
from board.plan.resolve.assume import Filled, FilledWay, Task
from board.plan.resolve.food_safety import Care, is_exposed, is_exposed_where_kept
from board.plan.resolve.given_time import ALWAYS, given_time
from board.plan.resolve.hours import home_of, hours_of
from board.schedule.clocks import clocks_of
from board.schedule.intervals import Window, merged
from board.schedule.problem import (
    LITRE,
    RINGS,
    Clock,
    Day,
    Demand,
    Hand,
    Hold,
    Job,
    Order,
    OvenFacts,
    OvenUse,
    Part,
    Problem,
    Resource,
    Serving,
    Sitting,
    Stood,
    Way,
)
from board.schedule.safety_facts import spoil_clocks

EARLIER = 12 * 60  # minutes before the first given hour from which out-of-hours work may start


def oven_rates(oven: Oven) -> OvenRates:
    """A plan's figures for an oven, else the usual ones."""
    usual, heats, cools, ajar = default_rates(), oven.heats, oven.cools, oven.cools_ajar
    return OvenRates(
        heating_rate(heats.minutes, heats.start, heats.end) if heats else usual.heating,
        cooling_constant(cools.minutes, cools.start, cools.end) if cools else usual.cooling,
        cooling_constant(ajar.minutes, ajar.start, ajar.end) if ajar else None,
    )


def problem_of(plan: Plan, filled: Filled) -> Problem:
    """The problem a plan poses. Raises nothing for a plan that `load` accepted."""
    return _Builder(plan, filled).build()


@dataclass(frozen=True, slots=True)
class _Passed:
    """A task, as food passes through it."""

    id: str
    kind: str
    dish: str | None
    course: str | None
    fresh: bool
    then: tuple[str, ...]


class _Builder:
    def __init__(self, plan: Plan, filled: Filled) -> None:
        self.plan = plan
        self.filled = filled
        self.origin = self._origin()
        self.oven_facts = tuple(
            OvenFacts(name, oven.shelves, oven_rates(oven)) for name, oven in plan.kitchen.ovens.items()
        )
        self.ovens = {name: n for n, name in enumerate(plan.kitchen.ovens)}
        self.resources: dict[str, Resource] = {RINGS: Resource(RINGS, plan.kitchen.rings)}
        if plan.kitchen.fridge is not None:
            self.resources["fridge"] = Resource("fridge", math.floor(plan.kitchen.fridge * LITRE))
        if plan.kitchen.freezer is not None:
            self.resources["freezer"] = Resource("freezer", math.floor(plan.kitchen.freezer * LITRE))
        for tool, count in plan.kitchen.tools.items():
            self.resources[f"tool:{tool}"] = Resource(tool, count)
        self.resource_index = {key: n for n, key in enumerate(self.resources)}

    def _origin(self) -> datetime:
        return self._opens() - timedelta(minutes=EARLIER)

    def _opens(self) -> datetime:
        return min([*(start for start, _ in self._all_hours()), self.filled.arrive])

    def _all_hours(self) -> list[tuple[datetime, datetime]]:
        return [span for hand in self.plan.hands for span in hours_of(self.plan, hand)]

    def minute(self, at: datetime) -> int:
        return round((at - self.origin).total_seconds() / 60)

    def build(self) -> Problem:
        index = {id_: n for n, id_ in enumerate(self.filled.tasks)}
        hands = tuple(self._hand(name) for name in self.plan.hands)
        leads = self._leads_to_serving()
        jobs = tuple(self._job(task, early=id_ not in leads) for id_, task in self.filled.tasks.items())
        servings = tuple(
            Serving(c.name, index[c.serve], self.minute(c.wanted), c.may_slip) for c in self.filled.courses
        )
        sittings = tuple(Sitting(c.name, index[c.serve], c.sit) for c in self.filled.courses if c.sit)
        orders = tuple(
            Order(index[k.first], index[k.second], k.least, k.most, k.firm, k.usual, k.takes_up)
            for k in self.filled.links
        )
        longest = sum(max(way.minutes for way in job.ways) for job in jobs) + sum(o.least for o in orders)
        clocks, stood = self._clocks(jobs)
        latest = max([s.wanted for s in servings] + [end for hand in hands for _, end in hand.home])
        return Problem(
            origin=self.origin,
            # Room to do everything in sequence, so that a late solution always exists.
            horizon=latest + longest + 24 * 60,
            jobs=jobs,
            orders=orders,
            resources=tuple(self.resources.values()),
            ovens=self.oven_facts,
            hands=hands,
            servings=servings,
            opens=EARLIER,
            days=tuple(self._days()),
            host=list(self.plan.hands).index("host") if "host" in self.plan.hands else 0,
            walk=self.plan.kitchen.to_the_table,
            arrives=self.minute(self.filled.arrive),
            dinner_over=index[self.filled.courses[-1].clear],
            clocks=clocks,
            stood=stood,
            sittings=sittings,
            index=index,
        )

    def _days(self) -> Iterator[Day]:
        zone, last = ZoneInfo(self.plan.zone), self.plan.date
        day = min(self._opens().astimezone(zone).date(), last)
        while day <= last:
            begins, *supper = (self.minute(instant(day, at, zone)) for at in ("00:00", *SUPPER_BETWEEN))
            yield Day(begins, (supper[0], supper[1]))
            day += timedelta(days=1)

    def _clocks(self, jobs: tuple[Job, ...]) -> tuple[tuple[Clock, ...], tuple[Stood, ...]]:
        then: dict[str, list[str]] = {}
        for link in self.filled.taken_up:
            then.setdefault(link.first, []).append(link.second)
        passed = [
            _Passed(id_, t.node.kind, t.node.dish, t.node.course, t.care.fresh, tuple(then.get(id_, ())))
            for id_, t in self.filled.tasks.items()
        ]
        eaten = {course.serve: course.eaten for course in self.filled.courses}
        by_id = {job.id: (n, job) for n, job in enumerate(jobs)}
        return clocks_of(by_id, passed, spoil_clocks(self.plan, self.filled), eaten)

    def _hand(self, name: str) -> Hand:
        def windows(spans: Iterable[tuple[datetime, datetime]]) -> tuple[Window, ...]:
            return tuple(merged([(self.minute(a), self.minute(b)) for a, b in spans]))

        free, home = windows(free_of(self.plan, name)), windows(home_of(self.plan, name))
        tied = windows((each.start, each.end) for each in absences(self.plan, name) if each.tied)
        untied = windows(free_of(self.plan, name, tied=False)) if tied else ()
        return Hand(name, free, home, tied, untied, sits=not self.plan.hands[name].hired)

    def _leads_to_serving(self) -> set[str]:
        """Ids of every predecessor, near or far, of a serving or of the guests' arrival."""
        before: dict[str, list[str]] = {}
        for link in self.filled.links:
            before.setdefault(link.second, []).append(link.first)
        found: set[str] = set()
        queue = ["guests-arrive", *(c.serve for c in self.filled.courses)]
        while queue:
            id_ = queue.pop()
            if id_ not in found:
                found.add(id_)
                queue += before.get(id_, [])
        # A clearing precedes the next serving, but should still be done at once.
        return found - {c.clear for c in self.filled.courses}

    def _job(self, task: Task, *, early: bool) -> Job:
        work = task.work
        names = list(self.plan.hands)
        who = [names.index(n) for n in dict.fromkeys(work.who)] if work and work.who else list(range(len(names)))
        return Job(
            id=task.node.id,
            ways=tuple(way for n, filled in enumerate(task.ways) for way in self._ways(n, filled, task)),
            hands=tuple(who),
            crew=work.hands if work else 1,
            window=self._window(task),
            fixed=self.minute(self.filled.arrive) if task.node.kind == "arrive" else None,
            best_within=task.best_within,
            early=early,
            with_guests=work.with_guests if work else False,
            alike=tuple(_alike(task)),
        )

    def _window(self, task: Task) -> Window | None:
        given = given_time(self.plan, task.work)
        return None if given == ALWAYS else (self.minute(given[0]), self.minute(given[1]))

    def _ways(self, number: int, way: FilledWay, task: Task) -> Iterable[Way]:
        """The way, once for each oven it could use and for each setting a rest could follow."""
        minutes = way.takes.likely
        exposed = is_exposed(task.care, way.where, task.work, rule_set(self.plan.rules), task.node.name)
        for oven, use in self._oven_uses(way, task.node.id):
            hold = self._hold(way, task.care, oven, use)
            yield Way(
                number=number,
                lane=way.where.lane or "worktop",
                minutes=minutes,
                parts=parts_of(way, minutes),
                demands=self._demands(way.where),
                oven=use,
                hold=hold,
                hot=way.where.hot,
                warm_up=self._warm_up(use) if minutes and not way.where.off else 0,
                hold_warm_up=self._warm_up(hold.oven)
                if hold and (use is None or hold.oven is None or hold.oven.oven != use.oven)
                else 0,
                may_run_over=way.takes.high - minutes,
                exposed=exposed,
            )

    def _oven_uses(self, way: FilledWay, id_: str) -> Iterable[tuple[int | None, OvenUse | None]]:
        for oven in self._ovens_for(way.where):
            if way.where.off and oven is not None:
                yield from ((oven, self._rest(way, oven, celsius)) for celsius in self._baked_at(id_))
            else:
                yield oven, self._oven_use(way.where, oven)

    def _baked_at(self, id_: str) -> list[int]:
        """The settings of the bake's ways, in °C, that a rest may follow at once."""
        bakes = [link.first for link in self.filled.taken_up if link.second == id_ and link.most == link.least]
        ways = [way for bake in bakes for way in self.filled.tasks[bake].ways]
        return sorted({round(way.where.heat.want) for way in ways if way.where.heat is not None})

    def _rest(self, way: FilledWay, oven: int, celsius: int) -> OvenUse:
        """The whole oven, switched off at this setting (°C); `want` is how warm the rest leaves it."""
        facts = self.oven_facts[oven]
        left = round(celsius_after(facts.rates, celsius, way.takes.likely, ajar=way.where.ajar))
        return OvenUse(oven, facts.shelves, left, left, left, off=True, baked_at=celsius)

    def _ovens_for(self, on: Station) -> list[int | None]:
        """Ovens that would do: the one named, else all that reach the heat."""
        if on.place != "oven":
            return [None]
        if on.oven is not None:
            return [self.ovens[on.oven]]
        reach = [
            n
            for n, oven in enumerate(self.plan.kitchen.ovens.values())
            if on.heat is None or (oven.low <= on.heat.want <= oven.high and oven.shelves >= (on.shelves or 1))
        ]
        return list(reach) or list(range(len(self.ovens)))

    def _oven_use(self, on: Station, oven: int | None) -> OvenUse | None:
        if oven is None or on.heat is None:
            return None
        want = round(on.heat.want)
        low, high = math.ceil(on.heat.low - 1e-9), math.floor(on.heat.high + 1e-9)
        return OvenUse(oven, on.shelves or 1, min(low, want), want, max(high, want))

    def _warm_up(self, use: OvenUse | None) -> int:
        if use is None:
            return 0
        return self.oven_facts[use.oven].change_minutes(round(ROOM_CELSIUS), use.high)

    def _demands(self, on: Station) -> tuple[Demand, ...]:
        wanted: list[tuple[str, int]] = []
        if on.place == "stovetop" or on.rings:
            wanted.append(("rings", on.rings or 1))
        if on.place in ("fridge", "freezer") and on.litres is not None and on.place in self.resource_index:
            wanted.append((on.place, math.ceil(on.litres * LITRE)))
        wanted += [(f"tool:{tool}", count) for tool, count in on.tools.items()]
        return tuple(Demand(self.resource_index[key], amount) for key, amount in wanted)

    def _hold(self, way: FilledWay, care: Care, oven: int | None, use: OvenUse | None) -> Hold | None:
        """How its result is kept; in the oven of the step itself only once that has come to its heat."""
        if way.keeps is None:
            return None
        where = way.keeps.where
        chosen = None
        if where.place == "oven":
            options = self._ovens_for(where)
            chosen = oven if oven in options else options[0]
        kept = self._oven_use(where, chosen)
        ready_in = 0
        if kept is not None and use is not None and use.oven == kept.oven and way.takes.likely and not use.meets(kept):
            ready_in = self.oven_facts[kept.oven].change_between(use, kept)
        return Hold(
            way.keeps.minutes,
            self._demands(where),
            kept,
            where.place,
            where.hot,
            ready_in,
            spoils=care.spoils,
            exposed=is_exposed_where_kept(care, where),
        )


def _alike(task: Task) -> Iterator[str]:
    """Its dish, or that it is a job; what is at the board or the peeler; foods; tools that stay dry of heat."""
    node = task.node
    yield f"dish:{node.course}/{node.dish}" if node.dish else "dish:"
    if node.kind == "step":
        yield from batches(node.name)
        for way in task.ways[:1]:
            if way.where.place == "worktop":
                yield from (f"tool:{tool}" for tool in way.where.tools)


def parts_of(way: FilledWay, minutes: int) -> tuple[Part, ...]:
    """When a step of that length needs hands, from its start."""
    attended = way.attended
    if attended.whole:
        return (Part(0, minutes, "all"),) if minutes else ()
    start = min(attended.start, minutes)
    end = min(attended.end, minutes - start)
    parts = [Part(0, start, "start")] if start else []
    if attended.every and attended.look:
        for at in range(attended.every, minutes - end - attended.look + 1, attended.every):
            if at >= start:  # the first may fall where hands are busy with the step anyway
                parts.append(Part(at, attended.look, "look-in"))
    if end:
        parts.append(Part(minutes - end, end, "end"))
    return tuple(parts)
