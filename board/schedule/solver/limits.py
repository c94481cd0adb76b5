"""Hard constraints, set by physics: order, one pair of hands at a time, rings, tools, room, ovens.

Each family of constraints is one method, named by the sentence it enforces.
"""

from itertools import combinations

from board.schedule.problem import FRONT, Demand, OvenFacts, OvenUse
from board.schedule.solver.library import cp_model
from board.schedule.solver.oven_settings import Dialled, at_one_setting, dialled, kept_as_baked, time_to_change
from board.schedule.solver.variables import Spell, Variables
from board.schedule.windows import home_windows


class Limits:
    """Adds every hard limit of the problem to the model."""

    def __init__(self, variables: Variables) -> None:
        self.v = variables
        self.model = variables.model
        self.problem = variables.problem
        self.taken: dict[int, list[tuple[Spell, int]]] = {}
        self.in_oven: dict[int, list[tuple[Spell, OvenUse]]] = {}
        self.dialled: dict[int, list[Dialled]] = {}
        self.taken_up: dict[int, cp_model.LinearExprT | None] = {}
        self.takers: dict[int, list[int]] = {}
        for order in self.problem.orders:
            if order.takes_up:
                self.takers.setdefault(order.first, []).append(order.second)

    def add(self) -> None:
        self._a_job_follows_what_it_waits_for()
        self._a_course_goes_out_no_earlier_than_wanted()
        self._hands_do_one_thing_at_a_time()
        self._a_job_takes_what_it_uses_from_start_to_end()
        self._a_result_takes_its_place_until_it_is_taken_up()
        self._what_is_kept_hot_has_somebody_at_home()
        self._nothing_is_taken_beyond_what_there_is()
        self._an_oven_holds_no_more_than_its_shelves()
        self._an_oven_has_one_temperature_at_a_time()
        self._a_rest_stays_in_the_oven_of_its_bake()
        self._an_oven_begins_with_what_it_has()

    def _a_job_follows_what_it_waits_for(self) -> None:
        for order in self.problem.orders:
            first, second = self.v.jobs[order.first], self.v.jobs[order.second]
            if order.firm:
                self.model.add(second.start >= first.end + order.least)

    def _a_course_goes_out_no_earlier_than_wanted(self) -> None:
        for serving in self.problem.servings:
            self.model.add(self.v.jobs[serving.job].end >= serving.wanted)

    def _hands_do_one_thing_at_a_time(self) -> None:
        busy: dict[int, list[cp_model.IntervalVar]] = {}
        walk = self.problem.walk
        apart: dict[int, list[tuple[cp_model.IntervalVar, bool]]] = {}
        for variables in self.v.jobs:
            for way, literal in zip(variables.job.ways, variables.ways, strict=True):
                for part in way.parts:
                    for hand, who in variables.who.items():
                        start = variables.start + part.offset
                        present = self.v.both(literal, who)
                        interval = self._fixed(start, part.length, present, "part")
                        busy.setdefault(hand, []).append(interval)
                        if part.kind != "look-in" and not variables.job.is_trip:
                            self.v.at_work.setdefault(hand, []).append(interval)
                        if walk and way.lane == FRONT:
                            interval = self._fixed(start - walk, part.length + 2 * walk, present, "and the way there")
                        apart.setdefault(hand, []).append((interval, way.lane == FRONT))
        for hand, intervals in busy.items():
            self.model.add_no_overlap(intervals)
            if walk:
                self._nobody_is_in_the_kitchen_and_on_the_way(apart[hand])

    def _nobody_is_in_the_kitchen_and_on_the_way(self, parts: list[tuple[cp_model.IntervalVar, bool]]) -> None:
        """Walks to the table may overlap one another, since one may stay there, but never work in the kitchen."""
        front = max(1, sum(is_front for _, is_front in parts))
        demands = [1 if is_front else front for _, is_front in parts]
        self.model.add_cumulative([interval for interval, _ in parts], demands, front)

    def _fixed(
        self, start: cp_model.LinearExprT, length: int, literal: cp_model.LiteralT, name: str
    ) -> cp_model.IntervalVar:
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
            for way, literal in zip(variables.job.ways, variables.ways, strict=True):
                hold, until = way.hold, self._taken_up(n)
                if hold is None or until is None:
                    continue
                present = self.v.both(literal, variables.kept)
                end = variables.start + way.minutes
                if hold.demands:
                    self._take(self._hold(n, end, until, present), hold.demands, None)
                if hold.oven is not None:
                    stands = self._stands(end + hold.ready_in, until, present)
                    self._take(self._hold(n, end + hold.ready_in, until, stands), (), hold.oven)

    def _hold(
        self, n: int, start: cp_model.LinearExprT, until: cp_model.LinearExprT, present: cp_model.LiteralT
    ) -> Spell:
        size = self.model.new_int_var(0, self.problem.horizon, f"hold {self.v.jobs[n].job.id}")
        interval = self.model.new_optional_interval_var(start, size, until, present, "hold")
        return Spell(n, start, until, interval, present, is_hold=True)

    def _stands(
        self, start: cp_model.LinearExprT, until: cp_model.LinearExprT, present: cp_model.LiteralT
    ) -> cp_model.LiteralT:
        """Whether it is kept for any time at all: what is taken up at once, or before its oven is ready, is not."""
        stands = self.model.new_bool_var("stands")
        self.model.add_implication(stands, present)
        self.model.add(until <= start).only_enforce_if(present, ~stands)
        return stands

    def _taken_up(self, n: int) -> cp_model.LinearExprT | None:
        """When the last that takes it up starts; None if nothing does."""
        if n not in self.taken_up:
            starts = [self.v.jobs[f].start for f in self.takers.get(n, [])]
            last: cp_model.LinearExprT | None = starts[0] if starts else None
            if len(starts) > 1:
                last = self.model.new_int_var(0, self.problem.horizon, f"last of {self.v.jobs[n].job.id}")
                self.model.add_max_equality(last, starts)
            self.taken_up[n] = last
        return self.taken_up[n]

    def _what_is_kept_hot_has_somebody_at_home(self) -> None:
        """Where nobody is, it is not kept hot: it goes without its place, at a price."""
        home = home_windows(self.problem)
        for n, variables in enumerate(self.v.jobs):
            for way, literal in zip(variables.job.ways, variables.ways, strict=True):
                until = self._taken_up(n)
                if way.hold is not None and way.hold.hot and until is not None:
                    end = variables.start + way.minutes
                    stands = self._stands(end, until, self.v.both(literal, variables.kept))
                    within = [self._within(a + way.hold_warm_up, end, until, b) for a, b in home]
                    self.model.add_bool_or(*within, ~stands)

    def _within(
        self, since: int, start: cp_model.LinearExprT, until: cp_model.LinearExprT, end: int
    ) -> cp_model.LiteralT:
        within = self.model.new_bool_var("at home")
        self.model.add(start >= since).only_enforce_if(within)
        self.model.add(until <= end).only_enforce_if(within)
        return within

    def _nothing_is_taken_beyond_what_there_is(self) -> None:
        for number, taken in self.taken.items():
            capacity = self.problem.resources[number].capacity
            if all(2 * amount > capacity for _, amount in taken):
                self.model.add_no_overlap([spell.interval for spell, _ in taken])
            else:
                self.model.add_cumulative([s.interval for s, _ in taken], [a for _, a in taken], capacity)

    def _an_oven_holds_no_more_than_its_shelves(self) -> None:
        for number, taken in self.in_oven.items():
            shelves = self.problem.ovens[number].shelves
            self.model.add_cumulative([s.interval for s, _ in taken], [use.shelves for _, use in taken], shelves)

    def _an_oven_has_one_temperature_at_a_time(self) -> None:
        """What one setting does for may share it, from start to end; all else has the minutes of the change between."""
        for number, taken in self.in_oven.items():
            self.dialled[number] = dialled(self.v, number, taken)
            for one, other in combinations(self.dialled[number], 2):
                if one.spell.job == other.spell.job:
                    kept_as_baked(self.model, one, other)
                elif not (self._takes_over(one.spell, other.spell) or self._takes_over(other.spell, one.spell)):
                    self._share_or_change(self.problem.ovens[number], one, other)

    def _share_or_change(self, facts: OvenFacts, one: Dialled, other: Dialled) -> None:
        if one.shares_anyway(other):
            return
        apart = [x for x in (one.spell.literal, other.spell.literal) if x is not self.v.true]
        there, back = (
            self._one_before_the_other(*each) for each in ((one.spell, other.spell), (other.spell, one.spell))
        )
        if one.use.agrees(other.use):
            share = self.model.new_bool_var("share")
            at_one_setting(self.model, one, other, [share, *apart])
            apart.append(~share)
        first = self.model.new_bool_var("first")
        time_to_change(self.model, facts, one, other, [first, *apart, *there])
        time_to_change(self.model, facts, other, one, [~first, *apart, *back])

    def _an_oven_begins_with_what_it_has(self) -> None:
        for number in self.problem.ovens_now:
            for spell, use, heats in self.dialled.get(number, []):
                if use.off or spell.is_hold or self.v.jobs[spell.job].job.fixed is not None:
                    continue
                for heat, literal in heats.items():
                    ready = self.problem.oven_ready(use, heat)
                    self.model.add(spell.start >= ready).only_enforce_if(spell.literal, literal)

    def _a_rest_stays_in_the_oven_of_its_bake(self) -> None:
        for order in self.problem.orders:
            first, second = self.v.jobs[order.first], self.v.jobs[order.second]
            if order.most != order.least or not order.takes_up or not any(way.oven for way in first.job.ways):
                continue  # what else comes just before a rest is no bake
            for way, rests in zip(second.job.ways, second.ways, strict=True):
                if way.oven is None or not way.oven.off:
                    continue
                for before, literal in zip(first.job.ways, first.ways, strict=True):
                    if not before.bakes_for(way):
                        self.model.add_bool_or(~rests, ~literal)
                self.model.add(second.start == first.end).only_enforce_if(rests)

    def _takes_over(self, kept: Spell, step: Spell) -> bool:
        """Whether the one successor takes a kept result out of the oven: the dial is then turned for it."""
        return kept.is_hold and not step.is_hold and self.takers.get(kept.job) == [step.job]

    def _one_before_the_other(self, one: Spell, other: Spell) -> list[cp_model.LiteralT]:
        """No condition, except for a step that follows at once: the dial is turned with its food inside."""
        if one.is_hold or other.is_hold:
            return []
        at_once = (o for o in self.problem.orders if o.most == o.least and o.takes_up)
        if (one.job, other.job) not in ((order.first, order.second) for order in at_once):
            return []
        straight = self.model.new_bool_var("straight on")
        self.model.add(other.start == one.end).only_enforce_if(straight)
        return [~straight]
