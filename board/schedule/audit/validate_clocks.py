"""Whether a run sheet's clocks are those its plan calls for, and how long each dish stands out until it is eaten.

Part of `validate`; derived from the plan and the times of the slots, by the ways that were chosen. Minutes are ints.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from board.base.in_turn import in_turn
from board.facts.rule_sets import rule_set
from board.plan.load import PlanFile
from board.plan.model.courses import Course, Dish
from board.plan.model.model import Plan
from board.plan.places import Loc
from board.plan.resolve.at_table import dish_spoils
from board.schedule.audit.validate_ways import Done, has_no_place, whole_minutes
from board.sheet.run_sheet import RunSheet

ROOM = ("worktop", "front-of-house", "room")  # where it is neither hot nor cold


@dataclass(frozen=True, slots=True)
class Perishable:
    """A dish that spoils, with its place in the plan and the minutes it may stand out."""

    dish: str
    loc: Loc
    limit: int


def perishables(plan_file: PlanFile) -> Iterator[Perishable]:
    plan = plan_file.plan
    for c, course in enumerate(plan.courses):
        for d, dish in enumerate(course.dishes):
            loc: Loc = ("courses", c, "dishes", d)
            if dish_spoils(plan, plan_file.filled, loc).does:
                yield Perishable(dish.dish, loc, _limit(plan, course, dish))


def _limit(plan: Plan, course: Course, dish: Dish) -> int:
    """By time alone where the rules have that; else as long as the air lets it, which is a usual room if not told."""
    rules = rule_set(plan.rules)
    if dish.by_time_alone and rules.time_alone is not None:
        return rules.time_alone.minutes
    air = None if plan.air is None else plan.air.outdoors if course.outdoors else plan.air.indoors
    usual = air is None or rules.out.hot_air.at_most(air)
    return rules.out.minutes if usual else rules.out.hot_air_minutes


def clocks_are_as_planned(plan_file: PlanFile, sheet: RunSheet) -> Iterator[str]:
    courses = plan_file.plan.courses
    wanted = [(each.dish, courses[int(each.loc[1])].course, each.limit) for each in perishables(plan_file)]
    if [(clock.dish, clock.course, clock.limit_minutes) for clock in sheet.clocks] != wanted:
        yield "the run sheet has other clocks than its plan calls for"


Stood = dict[bool, int]  # minutes of what is raw still, and (True) of what was cooked through, each of the longest
_Known = dict[tuple[str, bool], Stood]  # by the id of a step, and whether all that came into it counts


class StandsOut:
    """What stands out on the way of all food through a run sheet."""

    def __init__(self, plan_file: PlanFile, sheet: RunSheet, done: list[Done]) -> None:
        self.plan = plan_file.plan
        self.filled = plan_file.filled
        self.slots = sheet.by_id()
        self.done = {each.slot.id: each for each in done}
        self.makers: dict[str, list[str]] = {}
        self.takers: dict[str, list[str]] = {}
        for link in self.filled.taken_up:
            self.takers.setdefault(link.first, []).append(link.second)
            if self.filled.tasks[link.first].node.kind == "step":
                self.makers.setdefault(link.second, []).append(link.first)

    def told_amiss(self) -> Iterator[str]:
        for id_, each in self.done.items():
            keeping = each.slot.keeping
            if (each.slot.exposed, keeping is not None and keeping.exposed) != (self._during(id_), self._after(id_)):
                yield f"{each.slot.name} is told to stand out, or not to, unlike in the plan"

    def minutes(self, of: Perishable) -> int:
        """Until the dish is eaten, of its part that stood longest."""
        course = self.filled.courses[int(of.loc[1])]
        serve = self.slots[course.serve]
        came = self._come(self.makers.get(course.serve, []), course.serve, of, {})
        return max(came.values(), default=0) + whole_minutes(serve.end - serve.start) + course.eaten

    def _come(self, makers: list[str], taker: str, of: Perishable | None, known: _Known) -> Stood:
        """What comes from those, and has waited for the taker. `of`: only what of that dish is in it; None: all."""
        found: Stood = {}
        for maker in makers:
            waits = whole_minutes(self.slots[taker].start - self.slots[maker].end)
            waited = max(0, waits) if self._after(maker) else 0
            for cooked, minutes in self._through(maker, of, known).items():
                found[cooked] = max(found.get(cooked, 0), minutes + waited)
        return found

    def _through(self, id_: str, of: Perishable | None, known: _Known) -> Stood:
        """When that step is over. All that came into a step of the dish counts, be it of others; of what came into
        another dish's step, only what is the last of the dish asked for."""

        def before(key: tuple[str, bool]) -> list[tuple[str, bool]]:
            taker, every = key
            return [(each, every or self._is_whole(each, of)) for each in self._counted(taker, None if every else of)]

        asked = id_, self._is_whole(id_, of)
        for taker, every in in_turn(asked, before, known):
            within = None if every else of
            came = self._come(self._counted(taker, within), taker, within, known)
            known[taker, every] = self._and_meanwhile(taker, came or ({False: 0} if every else {}))
        return known[asked]

    def _is_whole(self, id_: str, of: Perishable | None) -> bool:
        return of is None or self._is_of(of, id_)

    def _counted(self, id_: str, of: Perishable | None) -> list[str]:
        """The steps whose results it takes up that count."""
        makers = self.makers.get(id_, [])
        return makers if of is None else [m for m in makers if not self._is_of(of, m) or self._is_last(of, m)]

    def _and_meanwhile(self, id_: str, came: Stood) -> Stood:
        """Cooked through, what was raw begins anew; what was cooked before does not."""
        if came and self.filled.tasks[id_].care.fresh:
            came = {True: came.get(True, 0)}
        slot = self.slots[id_]
        more = whole_minutes(slot.end - slot.start) if self._during(id_) else 0
        return {cooked: minutes + more for cooked, minutes in came.items()}

    def _is_of(self, of: Perishable, id_: str) -> bool:
        return self.filled.tasks[id_].node.loc[:4] == of.loc

    def _is_last(self, of: Perishable, id_: str) -> bool:
        """Whether nothing of the dish, and no serving, takes up what that step made."""
        tasks = self.filled.tasks
        return not any(tasks[then].node.kind == "serve" or self._is_of(of, then) for then in self.takers[id_])

    def _during(self, id_: str) -> bool:
        """As planned; of a slot that no way fits, which is told already, as it says."""
        if (each := self.done.get(id_)) is None:
            return self.slots[id_].exposed
        where, work = each.way.where, each.task.work
        bath = work.cools.bath if work is not None and work.cools is not None else None
        if bath in ("cold water", "ice bath") or (work is not None and work.thaws is not None):
            return False
        warm = where.heat.want if where.place == "oven" and where.heat is not None else None
        lukewarm = warm is not None and not rule_set(self.plan.rules).hot_holding.at_least(warm)
        return each.task.care.spoils and (where.place in ROOM or lukewarm)

    def _after(self, id_: str) -> bool:
        """The same of what it made, in its place or for want of it."""
        if (each := self.done.get(id_)) is None:
            keeping = self.slots[id_].keeping
            return keeping is not None and keeping.exposed
        care, keeps = each.task.care, each.way.keeps
        if keeps is None:
            return False
        return care.spoils and (has_no_place(each.slot) or keeps.where.place in ROOM)
