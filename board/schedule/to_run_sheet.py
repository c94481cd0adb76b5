"""Problem and solution → run sheet: the words of the plan, and codes where it tells more. Pure; no solver."""

import heapq
import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta

import msgspec

from board.facts.heat import ROOM_CELSIUS
from board.facts.rule_sets import rule_set
from board.plan.load import PlanFile
from board.plan.model.work import Work
from board.plan.resolve.assume import FilledWay, Task
from board.plan.resolve.going_in import goes_in
from board.plan.resolve.left_over import all_left, who_needs
from board.plan.resolve.links import labels
from board.plan.resolve.scaling import Scaled
from board.plan.resolve.unit import writes_fahrenheit
from board.schedule.cold import in_the_cold, rooms
from board.schedule.conflicts.clashes import Can
from board.schedule.conflicts.explain import Clashes, Left, Teller, clashes_of
from board.schedule.dependencies import dependencies_of, end_of, resource_spells, spells_in_ovens, takers, way_of
from board.schedule.formulate import problem_of
from board.schedule.given_up import given_up
from board.schedule.oven_dial import Change, InOven, Setting, changes, settings
from board.schedule.problem import LITRE, RINGS, Problem, Way
from board.schedule.safety_facts import cooling_of, raw_limit, spoil_clocks
from board.schedule.solution import Solution
from board.schedule.switching_off import ovens_off, rings_off
from board.sheet.run_sheet import (
    HEAT,
    ORDER,
    Attended,
    CourseSlot,
    Dependency,
    Keeping,
    Lasts,
    LeftOver,
    NeededBy,
    RunSheet,
    Slot,
    SlotKind,
    SoMuch,
    Use,
)
from board.sheet.slack import READY, latest_starts
from board.sheet.told import OFF, DialTurn, GivenUp, OvenOff, StillOpen

Solver = Callable[[Problem], Solution]


def make_sheet(plan_file: PlanFile, solver: Solver, can: Can | None = None, left: Left = lambda: math.inf) -> RunSheet:
    """The run sheet of a plan; with `can`, it names the clashes behind what is given up, as far as the seconds that are
    `left` go. Raises what `solver` raises."""
    problem = problem_of(plan_file.plan, plan_file.filled)
    solution = solver(problem)
    clashes = clashes_of(problem, solution, can, left) if can is not None else None
    return to_run_sheet(plan_file, problem, solution, clashes)


def to_run_sheet(plan_file: PlanFile, problem: Problem, solution: Solution, clashes: Clashes | None = None) -> RunSheet:
    """The solution as a run sheet, with the oven's changes of setting as slots of their own."""
    return _Writer(plan_file, problem, solution, clashes or {}).sheet()


@dataclass(frozen=True)
class _Dial:
    oven: str
    settings: list[Setting]
    changes: list[Change]


class _Writer:
    def __init__(self, plan_file: PlanFile, problem: Problem, solution: Solution, clashes: Clashes) -> None:
        self.file = plan_file
        self.clashes = clashes
        self.problem = problem
        self.solution = solution
        written, units = writes_fahrenheit(plan_file.places.lines), plan_file.plan.units
        self.fahrenheit = units == "us" if units else written  # stands first
        self.as_written = self.fahrenheit == written
        self.offs: dict[str, int] = {}  # how often each oven, or the rings, were switched off so far
        self.turns: dict[int, DialTurn] = {}  # of no minutes, by the job that enters
        self.tasks: list[Task] = list(plan_file.filled.tasks.values())
        self.labels = labels(task.node for task in self.tasks)
        self.dials = [
            _Dial(problem.ovens[n].name, dial := self._dial(n, spells), changes(problem, n, dial))
            for n, spells in spells_in_ovens(problem, solution).items()
        ]

    def _dial(self, oven: int, spells: list[InOven]) -> list[Setting]:
        return settings(spells, self.problem.ovens[oven].change_minutes, self._takes_over)

    def _takes_over(self, first: InOven, second: InOven) -> bool:
        """Whether a step takes over a kept result as its only follower, or follows the step before at once."""
        if second.hold or second.start != first.end:
            return False
        if first.hold:
            return takers(self.problem, first.job) == [second.job]
        pair = (first.job, second.job)
        return any((o.first, o.second) == pair and o.most == o.least and o.takes_up for o in self.problem.orders)

    def at(self, minute: int) -> datetime:
        return self.problem.origin + timedelta(minutes=minute)

    def sheet(self) -> RunSheet:
        waits = dependencies_of(self.problem, self.solution)
        heats = self._heat_slots(waits)
        slots = [self._slot(n, waits[n]) for n in range(len(self.problem.jobs))] + heats + list(self._off_slots())
        slots = self._with_give(in_running_order(slots))
        courses = tuple(
            CourseSlot(
                c.name,
                c.wanted,
                self.at(end_of(self.problem, self.solution, self.problem.index[c.serve])),
                c.serve,
                c.clear,
                c.may_slip,
                c.standing,
                Lasts(course.eaten_in.low, c.eaten, course.eaten_in.high) if course.eaten_in else None,
                sits=c.sit or msgspec.UNSET,
            )
            for c, course in zip(self.file.filled.courses, self.file.plan.courses, strict=True)
        )
        plan = self.file.plan
        return RunSheet(
            plan=plan.event,
            zone=plan.zone,
            digest=self.file.digest,
            date=plan.date.isoformat(),
            arrive=self.file.filled.arrive,
            fahrenheit=self.fahrenheit,
            as_written=self.as_written,
            courses=courses,
            slots=tuple(slots),
            hands=tuple(plan.hands),
            given_up=tuple(self._given_up(slots)),
            assumed=self.file.filled.assumed,
            proved=self.solution.proved,
            still_open=tuple(
                StillOpen(aim.aim, aim.value - aim.bound if aim.searched else None)
                for aim in self.solution.aims
                if not aim.proved
            ),
            solve_seconds=round(self.solution.seconds, 3),
            rules=rule_set(plan.rules).title,
            clocks=spoil_clocks(plan, self.file.filled),
            raw_limit=raw_limit(self.file),
            noted=tuple(plan.noted),
            hired_hands=tuple(name for name, hand in plan.hands.items() if hand.hired) or msgspec.UNSET,
            cold_stays=tuple(in_the_cold(self.file, self.problem, self.solution)),
            cold_litres=rooms(plan.kitchen),
            lefts=tuple(self._left(slots)) or msgspec.UNSET,
            recipes={d.dish: d.source for c in plan.courses for d in c.dishes if d.source} or msgspec.UNSET,
            measures=plan.units or msgspec.UNSET,
        )

    def _given_up(self, slots: list[Slot]) -> Iterator[GivenUp]:
        """What is given up, with the clashes behind it where they are known."""
        teller = Teller(self.problem, self.solution)
        for violation, told in given_up(self.problem, self.solution, slots):
            clashes = self.clashes.get(violation, ()) if violation is not None else ()
            yield msgspec.structs.replace(told, why=teller.tell(clashes, told.why))

    def _slot(self, n: int, waits: list[Dependency]) -> Slot:
        task, job = self.tasks[n], self.problem.jobs[n]
        way = way_of(self.problem, self.solution, n)
        start = self.solution.starts[n]
        work, node = task.work, task.node
        chosen = task.ways[way.number]
        kind: SlotKind = node.kind
        if node.kind == "arrive":
            waits = waits + [
                Dependency(self.problem.jobs[o.first].id, "end", o.ready, READY)
                for o in self.problem.orders
                # Anything not done when the guests come no longer holds anybody up.
                if o.second == n and not o.firm and end_of(self.problem, self.solution, o.first) + o.ready <= start
            ]
        return Slot(
            id=job.id,
            named=self.labels[node.id],
            kind=kind,
            lane=way.lane,
            start=self.at(start),
            end=self.at(start + way.minutes),
            dish=node.dish,
            course=node.course,
            attended=tuple(
                Attended(self.at(start + p.offset), self.at(start + p.offset + p.length), hand.name, p.kind)
                for p in way.parts
                for hand in self.problem.crew(self.solution.who[n])
            ),
            uses=tuple(self._uses(n)),
            waits=tuple(waits),
            then=tuple(self.problem.jobs[f].id for f in takers(self.problem, n)),
            keeping=self._keeping(n),
            best_within=self._best_within(n),
            look_for=work.look_for if work else None,
            core_celsius=task.care.core.celsius if task.care.core else None,
            call=self._call(work, chosen, way),
            call_at_end=work.call_at_end if work else None,
            turn=self.turns.get(n),
            lasts=Lasts(chosen.takes.low, chosen.takes.likely, chosen.takes.high),
            with_guests=job.with_guests,
            way=self.solution.ways[n],
            cooks=task.care.cooks,
            hold_minutes=task.care.core.minutes if task.care.core else 0.0,
            exposed=way.exposed,
            fresh=task.care.fresh,
            cooling=cooling_of(self.file.plan, task, chosen),
            raw=task.care.raw,
            noted=self._noted(task),
            plan_way=way.number,
            method=(work.how if work else None) or msgspec.UNSET,
            question=(work.decide if work else None) or msgspec.UNSET,
            amounts=tuple(self._goes_in(task)) or msgspec.UNSET,
        )

    def _goes_in(self, task: Task) -> Iterator[SoMuch]:
        for each in goes_in(self.file.plan, task.node.loc, task.work) if task.work is not None else ():
            yield _so_much(each)

    def _left(self, slots: list[Slot]) -> Iterator[LeftOver]:
        plan, by_id = self.file.plan, {slot.id: slot for slot in slots}
        at = {task.node.loc: by_id[job.id] for task, job in zip(self.tasks, self.problem.jobs, strict=True)}
        for left in all_left(plan, rule_set(plan.rules)):
            slot = at[left.step]
            found = LeftOver(slot.id, _so_much(left.scaled), left.days, left.source)
            needed = []
            for each in who_needs(plan, left):
                own = [slot.start for loc, slot in at.items() if loc[:4] == each.at]
                start = at[each.step].start if each.step is not None else min(own)
                in_time = slot.end <= start <= found.use_by(slot.end)
                needed.append(NeededBy(each.course, each.dish, _so_much(each.scaled), start, in_time))
            yield msgspec.structs.replace(found, needed_by=tuple(needed))

    def _noted(self, task: Task) -> tuple[str, ...]:
        if task.node.kind == "serve":
            return next((tuple(c.noted) for c in self.file.plan.courses if c.course == task.node.course), ())
        return tuple(task.work.noted) if task.work is not None else ()

    def _call(self, work: Work | None, chosen: FilledWay, way: Way) -> str | OvenOff | None:
        """The host's own words; else, if an oven is to be switched off, words for that."""
        if work is not None and work.call is None and way.oven is not None and way.oven.off:
            return OvenOff(self.problem.ovens[way.oven.oven].name, chosen.where.ajar)
        return work.call if work else None

    def _keeping(self, n: int) -> Keeping | None:
        hold = way_of(self.problem, self.solution, n).hold
        if hold is None or hold.limit is None:
            return None
        if not self.solution.kept[n]:
            return Keeping(0, None, hold.spoils)
        return Keeping(hold.limit, hold.where, hold.exposed)

    def _best_within(self, n: int) -> int | None:
        """Minutes within which the next step is best begun; 0 if the next step follows at once; None: no limit."""
        limits = [o.least for o in self.problem.orders if o.first == n and o.most == o.least and o.takes_up]
        given = self.problem.jobs[n].best_within
        return min([*limits, *([given] if given is not None else [])], default=None)

    def _uses(self, n: int) -> list[Use]:
        way = way_of(self.problem, self.solution, n)
        start, end = self.solution.starts[n], end_of(self.problem, self.solution, n)
        found = []
        for demand in way.demands:
            name = self.problem.resources[demand.resource].name
            amount = demand.amount / LITRE if name in ("fridge", "freezer") else demand.amount
            found.append(Use(name, amount, self.at(start), self.at(end)))
        for dial in self.dials:
            for a, b, celsius, spell in _in_dial(dial, n):
                heat = None if spell.use.off else celsius
                found.append(Use(dial.oven, spell.use.shelves, self.at(a), self.at(b), heat, spell.use.off))
        return found

    def _heat_slots(self, waits: list[list[Dependency]]) -> list[Slot]:
        """A slot for each turn of a dial; what needs the new heat waits for it, and it waits for what is inside."""
        found = []
        for dial in self.dials:
            for number, change in enumerate(dial.changes):
                entering = {
                    self.problem.jobs[spell.job].id: spell.job
                    for setting in dial.settings
                    if setting.start == change.end
                    for spell in setting.spells
                    if spell.start == change.end and not spell.hold
                }
                inside = [s for s in _since_last_change(dial, number) if self._leaves(s) not in entering]
                slot = self._heat_slot(dial, number, change, inside)
                if change.start == change.end and entering:
                    self._turned_by_who_enters(slot, list(entering.values()), waits)
                    continue
                found.append(slot)
                for job in entering.values():
                    waits[job].append(Dependency(slot.id, "end", 0, HEAT))
        return found

    def _turned_by_who_enters(self, slot: Slot, entering: list[int], waits: list[list[Dependency]]) -> None:
        """A turn of no minutes is told as the first of them begins, and they wait for what it would have waited for."""
        assert isinstance(slot.named, DialTurn)
        self.turns[entering[0]] = slot.named
        for job in entering:
            waits[job] += [wait for wait in slot.waits if wait not in waits[job]]

    def _heat_slot(self, dial: _Dial, number: int, change: Change, inside: list[InOven]) -> Slot:
        task = self.tasks[change.job]
        return Slot(
            id=f"dial/{dial.oven}-{number + 1}",
            named=DialTurn(dial.oven, change.celsius, change.before, change.ajar, self.fahrenheit, self.as_written),
            kind="heat",
            lane="oven",
            start=self.at(change.start),
            end=self.at(change.end),
            course=task.node.course,
            uses=(self._turn(dial, number, change),),
            waits=tuple(
                Dependency(
                    self._leaves(spell), "start" if spell.hold else "end", min(0, change.start - spell.end), "oven"
                )
                for spell in inside
            ),
            then=(self.problem.jobs[change.job].id,),
        )

    def _off_slots(self) -> Iterator[Slot]:
        """A slot of no minutes where an oven, or the rings, are done with for now: once all is out or off."""
        for dial in self.dials:
            for minute, inside in ovens_off(dial.settings):
                frees = [(self._leaves(spell), "start" if spell.hold else "end") for spell in inside]
                yield self._off_slot(dial.oven, "oven", minute, frees)
        for number, spells in resource_spells(self.problem, self.solution).items():
            if self.problem.resources[number].name == RINGS:
                for minute, jobs in rings_off(spells):
                    frees = [(self.problem.jobs[job].id, anchor) for job, anchor in jobs]
                    yield self._off_slot(RINGS, "stovetop", minute, frees)

    def _off_slot(self, what: str, lane: str, minute: int, frees: list[tuple[str, str]]) -> Slot:
        self.offs[what] = self.offs.get(what, 0) + 1
        return Slot(
            id=f"dial/{what}-off-{self.offs[what]}",
            named=DialTurn(what, OFF),
            kind="off",
            lane=lane,
            start=self.at(minute),
            end=self.at(minute),
            waits=tuple(
                Dependency(id_, "end", 0, ORDER) if anchor == "end" else Dependency(id_, "start", 0, "oven")
                for id_, anchor in frees
            ),
        )

    def _turn(self, dial: _Dial, number: int, change: Change) -> Use:
        """The setting it changes from is known if the oven was on, and for the first turn from cold."""
        from_cold = change.before is None and number == 0 and not self.problem.ovens_now
        before = round(ROOM_CELSIUS) if from_cold else change.before
        start, end = self.at(change.start), self.at(change.end)
        return Use(dial.oven, 0, start, end, change.celsius, before=before, ajar=change.ajar)

    def _leaves(self, spell: InOven) -> str:
        """Whose end (or, for a result kept in the oven, whose start) empties its place."""
        if not spell.hold:
            return self.problem.jobs[spell.job].id
        taking = max((self.solution.starts[f], f) for f in takers(self.problem, spell.job))
        return self.problem.jobs[taking[1]].id

    def _with_give(self, slots: list[Slot]) -> list[Slot]:
        lengths = {s.id: (s.end - s.start).total_seconds() / 60 for s in slots}
        starts = {s.id: (s.start - self.problem.origin).total_seconds() / 60 for s in slots}
        due = {s.id: starts[s.id] for s in slots if s.kind in ("serve", "arrive")}
        latest = latest_starts(slots, lengths, due)
        return [
            msgspec.structs.replace(s, give_minutes=round(latest[s.id] - starts[s.id]) if s.id in latest else None)
            for s in slots
        ]


def _so_much(scaled: Scaled) -> SoMuch:
    low, high = scaled.to_have
    return SoMuch(scaled.line.food, low, high, scaled.line.measure)


def _since_last_change(dial: _Dial, number: int) -> list[InOven]:
    """Uses of the oven since the last change that end before this one, or before it is over and would not bear it."""
    change = dial.changes[number]
    since = dial.changes[number - 1].end if number else -1
    inside = {s for setting in dial.settings if since <= setting.start < change.end for s in setting.spells}
    low, high = change.start, change.end

    def is_out(spell: InOven) -> bool:
        return spell.end <= low or (spell.end <= high and not spell.use.low <= change.celsius <= spell.use.high)

    return sorted(filter(is_out, inside), key=lambda s: (s.start, s.job))


def _in_dial(dial: _Dial, n: int) -> list[tuple[int, int, int, InOven]]:
    """Intervals of one setting for the job itself (not its kept result), joined while the setting is the same."""
    found: list[tuple[int, int, int, InOven]] = []
    for setting in dial.settings:
        for spell in setting.spells:
            if spell.job == n and not spell.hold:
                if found and found[-1][1] == setting.start and found[-1][2] == setting.celsius:
                    found[-1] = (found[-1][0], setting.end, setting.celsius, spell)
                else:
                    found.append((setting.start, setting.end, setting.celsius, spell))
    return found


def in_running_order(slots: list[Slot]) -> list[Slot]:
    """By start, with every slot after what it waits for."""
    by_id = {slot.id: slot for slot in slots}
    place = {slot.id: n for n, slot in enumerate(slots)}
    missing = {slot.id: len({w.after for w in slot.waits}) for slot in slots}
    then: dict[str, list[str]] = {}
    for slot in slots:
        for after in {w.after for w in slot.waits}:
            then.setdefault(after, []).append(slot.id)
    heap = [(slot.start, place[slot.id], slot.id) for slot in slots if not missing[slot.id]]
    heapq.heapify(heap)
    found: list[Slot] = []
    while heap:
        _, _, id_ = heapq.heappop(heap)
        found.append(by_id[id_])
        for other in then.get(id_, []):
            missing[other] -= 1
            if not missing[other]:
                heapq.heappush(heap, (by_id[other].start, place[other], other))
    assert len(found) == len(slots), "the waits of a run sheet run in a ring"
    return found
