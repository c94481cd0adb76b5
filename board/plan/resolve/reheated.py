"""Which steps heat again what was cooked before: by their words, and by what they follow. Pure."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace

from board.base.in_turn import in_turn
from board.facts import workings
from board.facts.phrases import folded
from board.plan.resolve.become import COLD, Become
from board.plan.resolve.links import Link, Linked, Node, name_key


def with_reheating(
    linked: Linked, found: Mapping[str, Become], overnight: frozenset[str] = frozenset()
) -> dict[str, Become]:
    """What each step's food has become, and whether the step heats again what was cooked before. `overnight`: ids of
    the steps that the plan's days and hours let stand for long, which is in the cold where it says nothing else."""
    return _Again({id_: linked.nodes[id_] for id_ in found}, linked.taken_up, found, overnight).told()


@dataclass(frozen=True, slots=True, order=True)
class _Past:
    """What was done to the food before: `cooked` through, and since then `stood`, 1 in the room or 2 in the cold."""

    cooked: bool = False
    stood: int = 0

    def then(self, stood: int) -> "_Past":
        return _Past(self.cooked, max(self.stood, stood))


@dataclass
class _Again:
    """Which steps heat again what was cooked before."""

    steps: Mapping[str, Node]
    links: Iterable[Link]
    found: Mapping[str, Become]
    overnight: frozenset[str]
    makers: dict[str, list[str]] = field(default_factory=dict)
    known: dict[str, _Past] = field(default_factory=dict)

    def told(self) -> dict[str, Become]:
        for link in self.links:
            if link.first in self.steps and link.second in self.steps:
                self.makers.setdefault(link.second, []).append(link.first)
        return {id_: replace(become, reheats=self._reheats(id_)) for id_, become in self.found.items()}

    def _reheats(self, id_: str) -> bool:
        node, text, become = self.steps[id_], folded(self.steps[id_].name), self.found[id_]
        work, past = node.work, self._before(id_)
        if work is None:
            return False
        if work.reheats is not None:
            return work.reheats
        if name_key(node.name).startswith("reheat ") or workings.reheats_by_word(text):
            return True
        if work.cooks not in (None, "leftovers") or become.raw is not None or become.binds or not past.cooked:
            return False
        if workings.heats_what_is_cooked(text) or (past.stood and workings.warms(text)):
            return True
        return past.stood == 2 and self._on_heat(node) and become.spoils and not workings.FINISHES_TOP.search(text)

    def _on_heat(self, node: Node) -> bool:
        work = node.work
        return work is not None and any(
            (where := way.where or work.where) is not None and where.on_heat and not where.off
            for way in (work, *work.or_)
        )

    def _before(self, id_: str) -> _Past:
        return max((self._kept(maker) for maker in self.makers.get(id_, [])), default=_Past())

    def _kept(self, id_: str) -> _Past:
        """When its result is taken up."""
        work = self.steps[id_].work
        silent = "fridge" if id_ in self.overnight else ""
        place = work.keeps.where.place if work is not None and work.keeps is not None else silent
        return self._after(id_).then(2 if place in COLD else 1 if place == "room" else 0)

    def _after(self, id_: str) -> _Past:
        for each in in_turn(id_, lambda taker: self.makers.get(taker, []), self.known):
            self.known[each] = self._done(self.steps[each], self.found[each], self._before(each))
        return self.known[id_]

    def _done(self, node: Node, become: Become, before: _Past) -> _Past:
        if become.heats and become.spoils:
            return _Past() if become.part and not before.cooked else _Past(cooked=True)
        work = node.work
        place = work.where.place if work is not None and work.where is not None else ""
        cools = work is not None and work.cools is not None
        cold = place in COLD or cools or workings.CHILLS.search(folded(node.name))
        return before.then(2 if cold else 0)
