"""How much must lie between two pieces of work, whatever the timetable. Pure; minutes."""

from graphlib import TopologicalSorter

from board.plan.load import PlanFile
from board.plan.resolve.links import Link


class Between:
    """The longest chain of work from the end of one thing to the start of another. `shortest`: with the low lengths,
    not the likely ones."""

    def __init__(self, file: PlanFile, *, shortest: bool = False) -> None:
        tasks, links = file.filled.tasks, [link for link in file.filled.links if link.firm]
        self.takes = {
            id_: min(way.takes.low if shortest else way.takes.likely for way in task.ways)
            for id_, task in tasks.items()
        }
        self.before: dict[str, list[Link]] = {id_: [] for id_ in tasks}
        for link in links:
            self.before[link.second].append(link)
        followed = {id_: {link.first for link in before} for id_, before in self.before.items()}
        self.order = list(TopologicalSorter(followed).static_order())
        self.known: dict[str, dict[str, tuple[int, tuple[str, ...]]]] = {}

    def longest(self, first: str, second: str) -> tuple[int, tuple[str, ...]] | None:
        """The least minutes between the two, and the ids of the work in between; None if no chain links them."""
        if first not in self.known:
            self.known[first] = self._from(first)
        return self.known[first].get(second)

    def _from(self, first: str) -> dict[str, tuple[int, tuple[str, ...]]]:
        """For each successor, near or far: minutes from the end of the first to its start, and the work in between."""
        found: dict[str, tuple[int, tuple[str, ...]]] = {}
        for id_ in self.order[self.order.index(first) + 1 :]:
            reached: list[tuple[int, tuple[str, ...]]] = []
            for link in self.before[id_]:
                if link.first == first:
                    reached.append((link.least, ()))
                elif link.first in found:
                    minutes, through = found[link.first]
                    reached.append((minutes + self.takes[link.first] + link.least, (*through, link.first)))
            if reached:
                found[id_] = max(reached, key=lambda way: way[0])
        return found
