"""How many nights lie between a step and what takes it up, by the days that the plan gives the two. Pure."""

from datetime import date

from board.plan.model.model import Plan
from board.plan.resolve.links import Linked, Node


def nights_between(plan: Plan, linked: Linked) -> dict[str, int]:
    """By step, where there are any: from its day to the next that is given a later one; what is served is eaten on the
    event's day. What is given none in between may be done on either."""
    then: dict[str, list[str]] = {}
    for link in linked.links:
        if link.firm:
            then.setdefault(link.first, []).append(link.second)
    found: dict[str, int] = {}
    for id_, node in linked.nodes.items():
        day = _day(plan, node)
        if node.kind == "step" and day is not None:
            later = [other for each in then.get(id_, []) for other in _days_from(plan, linked, then, each)]
            nights = (min(later, default=day) - day).days
            if nights > 0:
                found[id_] = nights
    return found


def _day(plan: Plan, node: Node) -> date | None:
    if node.kind == "serve":
        return plan.date
    return node.work.day.on(plan.date) if node.work is not None and node.work.day is not None else None


def _days_from(plan: Plan, linked: Linked, then: dict[str, list[str]], id_: str) -> list[date]:
    """The first days that are given from there on, along each way."""
    seen, queue, found = {id_}, [id_], list[date]()
    while queue:
        here = queue.pop()
        day = _day(plan, linked.nodes[here])
        if day is not None:
            found.append(day)
            continue
        new = [other for other in then.get(here, []) if other not in seen]
        seen.update(new)
        queue += new
    return found
