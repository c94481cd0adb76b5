"""Steps that become perishable by using another dish's perishable result: a tart with custard in it. Pure."""

from collections.abc import Mapping

from board.plan.model.model import Plan
from board.plan.places import Loc
from board.plan.resolve.food_safety import by_host
from board.plan.resolve.links import Link, Node


def spoils_by_what_it_takes_up(
    plan: Plan, nodes: Mapping[str, Node], links: list[Link], spoils: frozenset[str]
) -> frozenset[str]:
    """Ids of steps whose results spoil: by their own dish, or because they use the final result of another dish that
    spoils, and the steps after those. The host's `perishable: no` overrides this."""
    steps = [link for link in links if nodes[link.first].kind == nodes[link.second].kind == "step"]
    onward = {link.first for link in links if _dish(nodes[link.first]) == _dish(nodes[link.second])}
    onward |= {link.first for link in links if nodes[link.second].kind == "serve"}
    found, taken_up = set(spoils), set[str]()
    changed = True
    while changed:
        changed = False
        for link in steps:
            first, second = nodes[link.first], nodes[link.second]
            same = _dish(first) == _dish(second)
            follows = link.first in (taken_up if same else found - onward)
            if follows and link.second not in found and by_host(plan, second) is not False:
                found.add(link.second)
                taken_up.add(link.second)
                changed = True
    return frozenset(found)


def _dish(node: Node) -> Loc:
    return node.loc[:4] if node.kind == "step" else node.loc
