"""What waits while another part of its dish is done: hot food, an ice, dressed leaves, followed by a step about other
things. Pure.

A step that follows another as written goes on with what that made, unless its words are plain: they do something to a
food of the dish, or to a sauce or the like, that the step before does not speak of; they say nothing of what it made,
and join nothing. Then what the first made is also taken up by the first later step of which that is not so, or by
serving. Only of what is best eaten at once: all else may stand. The order stays as it is written.
"""

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from board.facts import deeds, workings
from board.facts import keeping as facts
from board.facts.mentions import mentioned
from board.facts.phrases import NEUTRAL, folded, listed_words, stems
from board.plan.model.courses import Dish
from board.plan.model.model import Plan
from board.plan.model.work import Work
from board.plan.places import Loc
from board.plan.resolve.going_in import foods_of
from board.plan.resolve.nodes import Link, Linked, Node, serve_id
from board.plan.resolve.spoils import dish_at

_CLAUSE = r"(?:^|[,;&] ?|\b(?:and|then) )"
_JOINS = re.compile(
    r"\b(?:it|them|these|those|this|all|everything|both|together|through|over|around|on top|alongside|into|onto)\b|"
    r"\bin$|\b(?:stir|whisk|beat|mix|put|add) in\b|"
    rf"{_CLAUSE}(?:plate|serve|assemble|build|toss|fold|top|dress|pour|spoon|drizzle|cover|fill|stuff|layer|add|"
    r"combine|finish|garnish|decorate|arrange|divide|dish up|return|coat|glaze|brush|baste|scatter|sprinkle|spread|"
    r"pipe|sandwich|wrap|deglaze|season)\b"
)
_WHERE = re.compile(
    r"\b(?:in|into|on|onto|over|under) (?:an? |the )?(?:\w+ )?(?:bowl|pan|tray|jug|pot|board|rack|water|heat|oven|"
    r"grill|microwave|processor|blender)\b"
)
_WHAT_FOR = re.compile(
    r"\b(?:for|while|as|meanwhile) (?:the |an? )?[^,;]*|\bto (?:go with|garnish|serve|decorate|finish)\b[^,;]*"
)
_BEFORE_WHERE = re.compile(r"\b(?:with|in|on|to|under|from|until|till|at|by)\b")
_VERB = re.compile(rf"{_CLAUSE}(?:deep[- ]|pan[- ]|stir[- ]|shallow[- ])?[\w-]+")
_BESIDE = re.compile(r"\b(?:with|on|and|over)\b|[,;:&(]")
_OUT_OF_FREEZER = re.compile(r"\b(?:scoop|quenelle|soften|unmould|unmold|turn out|out of the freezer|take out)\b")
_PARTS = listed_words(
    "sauce gravy jus dressing vinaigrette custard syrup salsa mayonnaise mayo aioli pesto coulis caramel croutons mash"
)
# What some of these are made of: `bake the custards` goes on with yolks and cream that were whisked together.
_MADE_OF = {
    part: listed_words(foods)
    for part, foods in (
        ("custard", "egg yolk milk cream"), ("mayonnaise", "egg yolk"), ("mayo", "egg yolk"), ("aioli", "egg yolk"),
        ("caramel", "sugar"), ("syrup", "sugar"), ("pesto", "basil"), ("crouton", "bread"), ("mash", "potato celeriac"),
    )
}  # fmt: skip
_ANY_FOOD = listed_words("meat joint bird fish roast food mix mixture piece half pan tray rack plate bowl dish paper")
_DONE_TO_IT = re.compile(
    rf"{_CLAUSE}(?:rest|carve|slice|cut|drain|strain|scoop|peel|let|leave|keep|hold|turn|chill|cool)\b"
)
_NOT_THINGS = NEUTRAL | listed_words("in into on onto to until for with from at out up off down well through aside")


def waits_beside(plan: Plan, chains: Sequence[Sequence[Node]], linked: Linked) -> list[Link]:
    """The links to what takes up such food in the end, besides the step that is written next."""
    found: list[Link] = []
    for chain in chains:
        dish = dish_at(plan, chain[0].loc) if chain else None
        if dish is not None:
            found += _Line(dish, chain, linked.nodes, linked.taken_up).links()
    return found


@dataclass(frozen=True, slots=True)
class Doubt:
    """`second` does something of which the words do not say whether `first`, best eaten at once, goes on in it or waits
    beside it, for what is in `then`; by id. `within`: minutes in which it is to be eaten."""

    first: str
    second: str
    then: tuple[str, ...]
    within: int


def doubts(plan: Plan, nodes: Mapping[str, Node], links: Iterable[Link]) -> list[Doubt]:
    """All of a plan, whose links are as `waits_beside` left them."""
    chains: dict[Loc, list[Node]] = {}
    for node in nodes.values():
        if node.kind == "step":
            chains.setdefault(node.loc[:4], []).append(node)
    links = [link for link in links if link.takes_up]
    dishes = ((dish_at(plan, loc), chain) for loc, chain in chains.items())
    return [each for dish, chain in dishes if dish is not None for each in _Line(dish, chain, nodes, links).doubts()]


@dataclass(frozen=True, slots=True)
class _Said:
    """A step's words, without what they are for and where it is done. `about`: the things they name; `done_to`: those
    that it does something to; `joins`: it says that it puts things together."""

    joins: bool
    about: frozenset[str]
    done_to: frozenset[str]


class _Line:
    def __init__(self, dish: Dish, chain: Sequence[Node], nodes: Mapping[str, Node], links: Iterable[Link]) -> None:
        self.dish, self.chain, self.nodes = dish, chain, nodes
        self.takers: Mapping[str, list[str]] = {node.id: [] for node in chain}
        for link in links:
            if link.first in self.takers:
                self.takers[link.first].append(link.second)
        name = _one_word(dish.dish)
        head = _BESIDE.split(name, maxsplit=1)[0]
        foods = frozenset(word for food in self._foods() for word in stems(_one_word(food)))
        last = frozenset(stems(head)[-1:])
        if "ingredients" not in self.dish.model_fields_set:
            foods -= last  # what the dish is called is all of it, and no food beside others
        self.whole = last - foods
        self.head = frozenset(stems(head))
        self.said: dict[str, _Said] = {}
        self.made: dict[str, frozenset[str]] = {}
        self.things = (foods | _PARTS | frozenset(stems(name.removeprefix(head)))) - _NOT_THINGS

        for before, node in zip([None, *chain], chain, strict=False):
            self.made[node.id] = self._made(before, node)

    def _made(self, before: Node | None, node: Node) -> frozenset[str]:
        """The things that it may be made of: of its words, and the foods of the steps that it goes on with."""
        own = self._said(node).about | self._used(node)
        own |= frozenset() if own & self.things else self.head
        goes_on = before is not None and node.id in self.takers[before.id] and self._goes_on(before, node)
        return own | (self.made[before.id] - _PARTS) if before is not None and goes_on else own

    def _foods(self) -> Iterator[str]:
        if "ingredients" in self.dish.model_fields_set:
            yield from (each.food for _, line in foods_of(self.dish) for each in line.choices or (line,))
        else:
            yield from (each.food.name for text in (self.dish.dish, *(n.name for n in self.chain))
                        for each in mentioned(text))  # fmt: skip

    def links(self) -> Iterator[Link]:
        for first, second in self._pairs():
            waits = workings.makes_no_food(folded(second.name)) or self._eaten_within(first) is not None
            if waits and not self._goes_on(first, second):
                yield from (Link(first.id, id_) for id_ in self._taken_up_by(first, second))

    def doubts(self) -> Iterator[Doubt]:
        for first, second in self._pairs():
            within = self._eaten_within(first)
            if within is None or not self._goes_on(first, second):
                continue
            if self._is_of_something_else(first, second):
                yield Doubt(first.id, second.id, tuple(self._taken_up_by(first, second)), within)

    def _pairs(self) -> Iterator[tuple[Node, Node]]:
        """Steps of which the second follows as it is written, and alone."""
        for first, second in zip(self.chain, self.chain[1:], strict=False):
            if second.work is not None and second.work.after is None and self.takers[first.id] == [second.id]:
                yield first, second

    def _is_of_something_else(self, first: Node, then: Node) -> bool:
        """Whether its words name a thing that nothing in the plan accounts for, and heat or put together nothing."""
        said, where = self._said(then), then.work.where if then.work is not None else None
        known = self.made[first.id] | self.whole | self.head | _ANY_FOOD
        on_heat = (where is not None and where.on_heat) or deeds.heats_by_word(folded(then.name))
        goes_on = on_heat or said.joins or _DONE_TO_IT.search(folded(then.name)) is not None
        return bool(said.about) and not said.about & known and not self._used(then) & known and not goes_on

    def _taken_up_by(self, first: Node, second: Node) -> Iterator[str]:
        """The first that go on with it from `second` on, along each way; else serving."""
        queue, seen = [second.id], {second.id}
        while queue:
            id_ = queue.pop(0)
            takers = [other for other in self.takers[id_] if other not in seen]
            seen.update(takers)
            if not self.takers[id_]:
                yield serve_id(first.course or "")
            for other in takers:
                if other in self.takers and not self._goes_on(first, self.nodes[other]):
                    queue.append(other)
                else:
                    yield other

    def _eaten_within(self, node: Node) -> int | None:
        """Minutes within which what it makes is to be eaten, by the plan or as its kind is; None: it may stand."""
        assert node.work is not None
        written = [limit for limit in _written(node.work) if limit is not None]
        if written and min(written) <= facts.AT_ONCE_MINUTES:
            return min(written)
        where, text = node.work.where, folded(node.name)
        if workings.makes_no_food(text):
            return None
        on_heat = where is not None and where.on_heat and not where.off
        kind = facts.made_in(node.name, self.dish.dish, on_heat=on_heat)
        if kind is None and _OUT_OF_FREEZER.search(text):
            kind = facts.kind_of_dish(self.dish.dish)
            return kind.soft if kind is not None else None
        if kind is None or facts.is_raw_work(text):
            return None
        return facts.eaten_within(kind, hot=on_heat or deeds.heats_by_word(text))

    def _goes_on(self, first: Node, then: Node) -> bool:
        """Whether a later step may go on with what the first made."""
        if workings.makes_no_food(folded(then.name)):
            return False
        made, after = self.made[first.id], self._said(then)
        own = after.done_to - made - {part for part, foods in _MADE_OF.items() if made & foods}
        named = (after.about | self._used(then)) & (made | self.whole)
        return not own or bool(named) or after.joins

    def _said(self, node: Node) -> _Said:
        if node.id not in self.said:
            self.said[node.id] = self._read(node)
        return self.said[node.id]

    def _read(self, node: Node) -> _Said:
        text = _WHAT_FOR.sub(" ", _WHERE.sub(" ", _one_word(node.name))).strip()
        about = frozenset(stems(_VERB.sub(" ", text))) - _NOT_THINGS
        done_to = frozenset(stems(_VERB.sub(" ", _BEFORE_WHERE.split(text, maxsplit=1)[0]))) & self.things
        return _Said(_JOINS.search(text) is not None, about, done_to)

    def _used(self, node: Node) -> frozenset[str]:
        lines = node.work.uses if node.work is not None else []
        return frozenset(word for line in lines for word in stems(_one_word(line.food))) & self.things


def _written(work: Work) -> Iterator[int | None]:
    yield work.best_within
    yield from (each.keeps.minutes for each in (work, *work.or_) if each.keeps is not None)


def _one_word(text: str) -> str:
    """Folded; ice cream is no cream."""
    return re.sub(r"\bice[ -]creams?\b", "icecream", folded(text))
