"""How long a step's result must stand until it is taken up, by the days and hours that the plan gives the two. Pure."""

from collections.abc import Callable, Mapping
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from board.plan.model.model import Plan
from board.plan.phrases.when import Moment, instant
from board.plan.resolve.links import Linked, Node

DAY_MINUTES = 24 * 60


def written_stands(plan: Plan, linked: Linked, wanted: Mapping[str, datetime]) -> dict[str, int]:
    """Minutes, by step, where it must stand: from the day it is given to a later one of what follows, a night and half
    a day; from the hour by which it is done to the hour before which what follows does not begin. `wanted`: servings
    by id, in UTC. What is given neither in between may be done on either side."""
    return _Written(plan, linked, wanted).stands()


class _Written:
    def __init__(self, plan: Plan, linked: Linked, wanted: Mapping[str, datetime]) -> None:
        self.plan, self.nodes, self.wanted = plan, linked.nodes, wanted
        self.then: dict[str, list[str]] = {}
        for link in linked.taken_up:
            if link.firm:
                self.then.setdefault(link.first, []).append(link.second)

    def stands(self) -> dict[str, int]:
        found = {id_: max(self._nights(node), self._hours(node)) for id_, node in self.nodes.items()}
        return {id_: minutes for id_, minutes in found.items() if minutes > 0}

    def _nights(self, node: Node) -> int:
        day = self._day(node)
        if node.kind != "step" or day is None:
            return 0
        later = [found for each in self._first(node, self._day) if (found := self._day(each)) is not None]
        nights = (min(later, default=day) - day).days
        return nights * DAY_MINUTES + DAY_MINUTES // 2 if nights > 0 else 0

    def _hours(self, node: Node) -> int:
        if node.kind != "step" or node.work is None or node.work.not_after is None:
            return 0
        done = self._at(node.work.not_after)
        later = [found for each in self._first(node, self._begins) if (found := self._begins(each)) is not None]
        return max(0, round((min(later, default=done) - done) / timedelta(minutes=1)))

    def _first(self, node: Node, told: Callable[[Node], object]) -> list[Node]:
        """The first pieces of work from there on, along each way, that are given what is asked for."""
        queue = list(self.then.get(node.id, []))
        seen, found = set(queue), list[Node]()
        while queue:
            here = self.nodes[queue.pop()]
            if told(here) is not None:
                found.append(here)
                continue
            new = [other for other in self.then.get(here.id, []) if other not in seen]
            seen.update(new)
            queue += new
        return found

    def _day(self, node: Node) -> date | None:
        if node.kind == "serve":
            return self.plan.date
        return node.work.day.on(self.plan.date) if node.work is not None and node.work.day is not None else None

    def _begins(self, node: Node) -> datetime | None:
        if node.kind == "serve":
            return self.wanted[node.id]
        return self._at(node.work.not_before) if node.work is not None and node.work.not_before is not None else None

    def _at(self, moment: Moment) -> datetime:
        return instant(moment.day.on(self.plan.date), moment.clock, ZoneInfo(self.plan.zone))
