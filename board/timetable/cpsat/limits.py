"""What is physical and never bends: order, one pair of hands at a time, rings, tools, room, ovens.

One family of limits is one method, and its name is the sentence it enforces.
"""

from collections.abc import Sequence
from itertools import combinations

from ortools.sat.python.cp_model import IntervalVar, LinearExprT, LiteralT

from board.timetable.cpsat.variables import Spell, Variables
from board.timetable.question import Demand, OvenUse


class Limits:
    """Adds every hard limit of the question to the model."""

    def __init__(self, variables: Variables) -> None:
        self.v = variables
        self.model = variables.model
        self.question = variables.question
        self.taken: dict[int, list[tuple[Spell, int]]] = {}
        self.in_oven: dict[int, list[tuple[Spell, OvenUse]]] = {}
        self.followers: dict[int, list[int]] = {}
        for order in self.question.orders:
            self.followers.setdefault(order.first, []).append(order.second)

    def add(self) -> None:
        self._a_job_follows_what_it_waits_for()
        self._a_course_goes_out_no_earlier_than_wanted()
        self._hands_do_one_thing_at_a_time()
        self._a_job_takes_what_it_uses_from_start_to_end()
        self._a_result_takes_its_place_until_it_is_taken_up()
        self._nothing_is_taken_beyond_what_there_is()
        self._an_oven_holds_no_more_than_its_shelves()
        self._an_oven_has_one_temperature_at_a_time()

    def _a_job_follows_what_it_waits_for(self) -> None:
        for order in self.question.orders:
            first, second = self.v.jobs[order.first], self.v.jobs[order.second]
            if order.most is not None and order.most == order.least:
                self.model.add(second.start == first.end + order.least)
            elif order.firm:
                self.model.add(second.start >= first.end + order.least)

    def _a_course_goes_out_no_earlier_than_wanted(self) -> None:
        for serving in self.question.servings:
            self.model.add(self.v.jobs[serving.job].end >= serving.wanted)

    def _hands_do_one_thing_at_a_time(self) -> None:
        busy: dict[int, list[IntervalVar]] = {}
        for variables in self.v.jobs:
            for way, literal in zip(variables.job.ways, variables.ways, strict=True):
                for part in way.parts:
                    for hand, who in variables.who.items():
                        start = variables.start + part.offset
                        present = self._both(literal, who)
                        busy.setdefault(hand, []).append(self._fixed(start, part.length, present, "part"))
        for intervals in busy.values():
            self.model.add_no_overlap(intervals)

    def _both(self, one: LiteralT, other: LiteralT) -> LiteralT:
        if one is self.v.true:
            return other
        if other is self.v.true:
            return one
        both = self.model.new_bool_var("both")
        self.model.add_bool_and(one, other).only_enforce_if(both)
        self.model.add_bool_or(both, ~one, ~other)
        return both

    def _fixed(self, start: LinearExprT, length: int, literal: LiteralT, name: str) -> IntervalVar:
        if literal is self.v.true:
            return self.model.new_fixed_size_interval_var(start, length, name)
        return self.model.new_optional_fixed_size_interval_var(start, length, literal, name)

    def _a_job_takes_what_it_uses_from_start_to_end(self) -> None:
        for n, variables in enumerate(self.v.jobs):
            for way, literal in zip(variables.job.ways, variables.ways, strict=True):
                if way.minutes == 0 or not (way.demands or way.oven):
                    continue
                interval = self._fixed(variables.start, way.minutes, literal, f"use {variables.job.id}")
                spell = Spell(n, variables.start, variables.start + way.minutes, interval, literal)
                self._take(spell, way.demands, way.oven)

    def _take(self, spell: Spell, demands: tuple[Demand, ...], oven: OvenUse | None) -> None:
        for demand in demands:
            self.taken.setdefault(demand.resource, []).append((spell, demand.amount))
        if oven is not None:
            self.in_oven.setdefault(oven.oven, []).append((spell, oven))

    def _a_result_takes_its_place_until_it_is_taken_up(self) -> None:
        for n, variables in enumerate(self.v.jobs):
            followers = [self.v.jobs[f].start for f in self.followers.get(n, [])]
            for way, literal in zip(variables.job.ways, variables.ways, strict=True):
                hold = way.hold
                if hold is None or not (hold.demands or hold.oven) or not followers:
                    continue
                until = self._last(followers, variables.job.id)
                start = variables.start + way.minutes
                size = self.model.new_int_var(0, self.question.horizon, f"hold {variables.job.id}")
                if literal is self.v.true:
                    interval = self.model.new_interval_var(start, size, until, "hold")
                else:
                    interval = self.model.new_optional_interval_var(start, size, until, literal, "hold")
                self._take(Spell(n, start, until, interval, literal, is_hold=True), hold.demands, hold.oven)

    def _last(self, starts: Sequence[LinearExprT], name: str) -> LinearExprT:
        if len(starts) == 1:
            return starts[0]
        last = self.model.new_int_var(0, self.question.horizon, f"last of {name}")
        self.model.add_max_equality(last, starts)
        return last

    def _nothing_is_taken_beyond_what_there_is(self) -> None:
        for number, taken in self.taken.items():
            capacity = self.question.resources[number].capacity
            if all(2 * amount > capacity for _, amount in taken):
                self.model.add_no_overlap([spell.interval for spell, _ in taken])
            else:
                self.model.add_cumulative([s.interval for s, _ in taken], [a for _, a in taken], capacity)

    def _an_oven_holds_no_more_than_its_shelves(self) -> None:
        for number, taken in self.in_oven.items():
            shelves = self.question.ovens[number].shelves
            self.model.add_cumulative([s.interval for s, _ in taken], [use.shelves for _, use in taken], shelves)

    def _an_oven_has_one_temperature_at_a_time(self) -> None:
        for number, taken in self.in_oven.items():
            facts = self.question.ovens[number]
            for (one, use), (other, other_use) in combinations(taken, 2):
                if one.job == other.job or max(use.low, other_use.low) <= min(use.high, other_use.high):
                    continue
                if (one.is_hold and other.job in self.followers.get(one.job, [])) or (
                    other.is_hold and one.job in self.followers.get(other.job, [])
                ):
                    continue  # the very next step takes it over out of the oven
                first = self.model.new_bool_var("first")
                there = facts.change_minutes(use.want, other_use.want)
                back = facts.change_minutes(other_use.want, use.want)
                present = [x for x in (one.literal, other.literal) if x is not self.v.true]
                self.model.add(one.end + there <= other.start).only_enforce_if(first, *present)
                self.model.add(other.end + back <= one.start).only_enforce_if(~first, *present)
