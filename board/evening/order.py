"""In which order a rule works out starts and ends, so that everything a moment hangs on is there before it. Pure.

Work that begins with hands goes by the sheet's order. A look-in or an end stands before the first work of its hands
that does not lead to it: so that work can give way to it.
"""

import heapq
from collections.abc import Mapping, Sequence
from graphlib import TopologicalSorter
from itertools import product

from board.evening.hands import Wanted
from board.sheet.run_sheet import HANDS, Slot
from board.sheet.slack import READY

Node = tuple[str, bool]  # a slot's start (False) or end (True)


def in_order(slots: Sequence[Slot], wanted: Mapping[str, Wanted]) -> tuple[Node, ...]:
    """Every slot's start and end. `slots` stand in an order in which nothing comes before what it waits for."""
    before = {node: _waited_for(slot, is_end=node[1]) for slot in slots for node in ((slot.id, False), (slot.id, True))}
    works: dict[str, list[Node]] = {}
    for slot in slots:
        if slot.id in wanted and wanted[slot.id].works:
            for who in wanted[slot.id].who:
                of_one = works.setdefault(who, [])
                before[slot.id, False].extend(of_one[-1:])
                of_one.append((slot.id, False))
    reach = _Reach(before)
    for slot in slots:
        for node, who in product(_briefs(slot, wanted), wanted[slot.id].who if slot.id in wanted else ()):
            work = next((w for w in works.get(who, ()) if not reach.leads(w, node)), None)
            if work is not None:
                before[work].append(node)
                reach.add(node, work)
    return _sorted(before, {slot.id: n for n, slot in enumerate(slots)})


def _waited_for(slot: Slot, *, is_end: bool) -> list[Node]:
    if is_end:
        return [(slot.id, False)]
    return [(w.after, w.anchor == "end") for w in slot.waits if w.reason not in (READY, HANDS)]


def _briefs(slot: Slot, wanted: Mapping[str, Wanted]) -> list[Node]:
    """What comes about by itself: the looks, known with the start, and the end."""
    if slot.id not in wanted:
        return []
    each = wanted[slot.id]
    return [(slot.id, is_end) for is_end, there in ((False, each.looks and not each.works), (True, each.last)) if there]


class _Reach:
    """What leads to what, as a set of bits for each."""

    def __init__(self, before: dict[Node, list[Node]]) -> None:
        self.bit = {node: 1 << n for n, node in enumerate(before)}
        self.to = dict(self.bit)
        for node in reversed(before):  # in the sheet's order nothing leads back
            for first in before[node]:
                self.to[first] |= self.to[node]

    def leads(self, first: Node, second: Node) -> bool:
        return bool(self.to[first] & self.bit[second])

    def add(self, first: Node, second: Node) -> None:
        further = self.to[second]
        for node, to in self.to.items():
            if to & self.bit[first]:
                self.to[node] = to | further


def _sorted(before: Mapping[Node, list[Node]], place: Mapping[str, int]) -> tuple[Node, ...]:
    sorter = TopologicalSorter(before)
    sorter.prepare()
    heap: list[tuple[int, Node]] = []
    found: list[Node] = []
    while sorter.is_active():
        for node in sorter.get_ready():
            heapq.heappush(heap, (place[node[0]], node))
        _, node = heapq.heappop(heap)
        sorter.done(node)
        found.append(node)
    return tuple(found)
