"""What the food of each step has become: whether it spoils unchilled, and why. Pure.

Followed step by step along the links of a dish: an ingredient enters where a step's words name it; what no step names
enters where the main branch first takes more in. Heat makes plants spoil, a dry bake ends the spoiling of its dough,
cutting makes melons, leaves and tomatoes spoil. Which foods these are: `facts.spoiling`; which words: `facts.workings`.
"""

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import Literal

from board.base.in_turn import in_turn
from board.facts import deeds, workings
from board.facts.food import raw_class
from board.facts.mentions import mentioned
from board.facts.phrases import NEUTRAL, folded, stems
from board.facts.spoiling import TCS, Spoiling, spoiling
from board.plan.model.courses import Dish
from board.plan.model.model import Plan
from board.plan.places import Loc
from board.plan.resolve.going_in import foods_of
from board.plan.resolve.links import Link, Linked, Node, name_key
from board.plan.resolve.spoils import dish_at

COLD = ("fridge", "freezer")
PROVES_AT = 60.0  # °C; an oven below this raises dough and warms plates, and cooks nothing


@dataclass(frozen=True, slots=True)
class Become:
    """A step's food at its end. `why`: what in it spoils, with the source; `sure`: False where that is not known.

    `raw`: a raw food that the step begins with. `heats`: by this step; `anew`: plants, for the first time; `part`: not
    through; `binds`: raw egg or dough. `heated`: by this or one before. `cooked`: the class it was cooked as;
    `to_cook`: the class it is yet to be cooked as. `reheats`: it heats again what was cooked before (`reheated`).
    """

    spoils: bool = False
    why: str = ""
    sure: bool = True
    raw: str | None = None
    heats: bool = False
    anew: bool = False
    part: bool = False
    binds: bool = False
    heated: bool = False
    cooked: str | None = None
    to_cook: str | None = None
    reheats: bool = False


NOTHING = Become()

_State = Literal["keeps", "raw", "cut", "part-cooked", "cooked"]
_RANK: dict[_State, int] = {"keeps": 0, "raw": 1, "cut": 2, "part-cooked": 3, "cooked": 4}


@dataclass(frozen=True, slots=True)
class _Item:
    """One food of a dish. `words`: the stems by which a step may name it."""

    food: str
    is_: Spoiling
    words: frozenset[str]

    def called(self, pattern: re.Pattern[str]) -> bool:
        return pattern.search(self.is_.name) is not None or pattern.search(folded(self.food)) is not None

    @property
    def spoils_as_it_is(self) -> bool:
        return self.is_.when == "as it is"


_Held = dict[_Item, _State]

_DOUGH = re.compile(
    r"flour|pastry|dough|bread|\boats?\b|oatmeal|semolina|(?:ground|flaked) (?:almond|hazelnut)|filo|phyllo|biscuit|"
    r"crumb|cornmeal|polenta|puff|shortcrust|brioche|croissant"
)
_FRESH = re.compile(
    r"milk|cream|creme|yog|cheese|ricotta|mascarpone|quark|skyr|kefir|custard|labneh|mozzarella|feta|burrata|fraiche"
)
_EGG, _YEAST = re.compile(r"\begg|yolk"), re.compile(r"yeast|sourdough|\bdough")
_SWEET = re.compile(r"sugar|honey|syrup|treacle|molasses|chocolate|condensed|mincemeat|marzipan|jam\b")
_GARLIC, _OIL = re.compile(r"\bgarlic\b(?! (?:powder|granule|salt|oil|butter))"), re.compile(r"\boils?\b")
_ACID = re.compile(r"vinegar|lemon|lime\b|verjuice|pickle|caper|gherkin|citric|\bolives?$|tamarind|balsamic|wine")
_BOUND = re.compile(r"pastry|puff|shortcrust|filo|phyllo|dough")  # dough that is bought


def what_becomes(plan: Plan, linked: Linked) -> dict[str, Become]:
    """For every step, by its id."""
    found: dict[str, Become] = {}
    dishes: dict[Loc, list[Node]] = {}
    for node in linked.nodes.values():
        if node.kind == "step":
            dishes.setdefault(node.loc[:4], []).append(node)
    for loc, chain in dishes.items():
        dish = dish_at(plan, loc)
        if dish is not None:
            found |= _Dish(dish, chain, linked.taken_up).become()
    return found


class _Dish:
    """One dish, its steps, and what follows what among them."""

    def __init__(self, dish: Dish, chain: list[Node], links: Iterable[Link]) -> None:
        self.dish, self.name = dish, folded(dish.dish)
        self.chain = {node.id: node for node in chain}
        self.texts = {node.id: folded(node.name) for node in chain}
        self.makers: dict[str, list[str]] = {id_: [] for id_ in self.chain}
        self.takers: dict[str, list[str]] = {id_: [] for id_ in self.chain}
        for link in links:
            if link.first in self.chain and link.second in self.chain:
                self.makers[link.second].append(link.first)
                self.takers[link.first].append(link.second)
        self.items = list(_items(dish, self.texts.values()))
        self.named = {id_: self._named_in(text) for id_, text in self.texts.items()}
        self.lengths: dict[str, int] = {}
        self.enters = self._entries()
        self.held: dict[str, tuple[_Held, _Held]] = {}

    def become(self) -> dict[str, Become]:
        return {id_: self._become(id_) for id_ in self.chain}

    def _become(self, id_: str) -> Become:
        before, after = self._through(id_)
        why, sure = _reason(after)
        nearby = [id_, *self._all(id_, self.makers)]
        heats, part = self._heats(id_), self._part(id_)
        plants = not any(i.is_.when in ("as it is", "unknown") or state == "cooked" for i, state in before.items())
        uncooked = [item for item, state in before.items() if state not in ("keeps", "cooked")]
        return Become(
            spoils=bool(why),
            why=why,
            sure=sure,
            raw=next((item.food for item in uncooked if raw_class(item.food)), None),
            heats=heats,
            anew=heats and plants and not part,
            part=heats and part,
            binds=heats and any(i.called(_DOUGH) or (i.spoils_as_it_is and i.called(_EGG)) for i in uncooked),
            heated=any(self._heats(other) for other in nearby),
            cooked=next((found for other in nearby if (found := self._cooks(other))), None),
            to_cook=next((found for other in self._all(id_, self.takers) if (found := self._cooks(other))), None),
        )

    def _cooks(self, id_: str) -> str | None:
        work = self.chain[id_].work
        return work.cooks if work is not None else None

    def _all(self, id_: str, ways: Mapping[str, list[str]]) -> list[str]:
        """Every step on its branch in one direction, the nearest first."""
        found: dict[str, None] = {}
        reached = list(ways[id_])
        while reached:
            for other in reached:
                found[other] = None
            reached = list(dict.fromkeys(more for other in reached for more in ways[other] if more not in found))
        return list(found)

    # what enters where

    def _named_in(self, text: str) -> list[_Item]:
        words = set(stems(text))
        return [item for item in self.items if item.words & words]

    def _entries(self) -> dict[str, list[_Item]]:
        """What enters at each step beside what its words name."""
        found: dict[str, list[_Item]] = {id_: [] for id_ in self.chain}
        anywhere = {item for items in self.named.values() for item in items}
        unnamed = [item for item in self.items if item not in anywhere]
        starts = [id_ for id_, makers in self.makers.items() if not makers]
        self._said_cooked(starts, found)
        nameless = [id_ for id_ in starts if not self.named[id_] and not workings.speaks_of_tools(self.texts[id_])]
        for id_ in nameless or sorted(starts, key=self._length, reverse=True)[:1]:
            for item in unnamed:
                found[self._entry(id_, item)].append(item)
        return found

    def _said_cooked(self, starts: list[str], found: dict[str, list[_Item]]) -> None:
        """What a step is said to cook or reheat, and no ingredient is."""
        raw = {raw_class(item.food) for item in self.items}
        for id_, node in self.chain.items():
            cooks = self._cooks(id_)
            again = node.work is not None and node.work.reheats
            if cooks is None and not again and not name_key(node.name).startswith("reheat "):
                continue
            if not self.items:
                for start in starts:
                    found[start].append(_Item("", Spoiling("as it is", cooks or "food cooked before"), frozenset()))
            elif cooks is not None and not raw & {cooks, *(_RAW_AS if cooks in _MIXED else ())} - {None}:
                found[id_].append(_Item("", Spoiling("as it is", cooks), frozenset()))

    def _length(self, id_: str) -> int:
        """Of its longest branch, in steps."""
        for each in in_turn(id_, self.takers.__getitem__, self.lengths):
            self.lengths[each] = 1 + max((self.lengths[taker] for taker in self.takers[each]), default=0)
        return self.lengths[id_]

    def _entry(self, start: str, item: _Item) -> str:
        """The step from `start` on at which an unnamed food enters: the first that names no food or heats; cream and
        the like not into a dry bake with something made of it later."""
        path = self._path(start)
        fresh = item.spoils_as_it_is and item.called(_FRESH)
        for number, id_ in enumerate(path):
            late = [other for other in path[number + 1 :] if not workings.ONLY_KEEPS.search(self.texts[other])]
            if fresh and late and self._heats(id_) and self._form(id_) == "dry":
                continue
            if self._heats(id_) or not self.named[id_] or number == len(path) - 1:
                return id_
        return path[-1]

    def _path(self, start: str) -> list[str]:
        path = [start]
        while takers := self.takers[path[-1]]:
            path.append(max(takers, key=self._length))
        return path

    # what happens in a step

    def _through(self, id_: str) -> tuple[_Held, _Held]:
        for each in in_turn(id_, self.makers.__getitem__, self.held):
            before = self._before(each)
            self.held[each] = before, self._worked(each, before)
        return self.held[id_]

    def _before(self, id_: str) -> _Held:
        before: _Held = {}
        for maker in self.makers[id_]:
            for item, state in self.held[maker][1].items():
                if item not in before or _RANK[state] > _RANK[before[item]]:
                    before[item] = state
        for item in (*self.named[id_], *self.enters[id_]):
            before.setdefault(item, "cooked" if item.is_.ready else "raw")
        return before

    def _worked(self, id_: str, before: _Held) -> _Held:
        text, heats = self.texts[id_], self._heats(id_)
        if heats and self._dry(id_, before):
            return dict.fromkeys(before, "keeps")
        if self._sweet(id_, before):
            return dict.fromkeys(before, "keeps")
        if self._pickles(id_, before, heats=heats):
            return {item: state if item.spoils_as_it_is else "keeps" for item, state in before.items()}
        if heats and not workings.DRIES.search(text):
            done: _State = "part-cooked" if self._part(id_) else "cooked"
            return {item: state if state in ("keeps", "cooked") else done for item, state in before.items()}
        if not heats and self._cuts(text):
            return {
                item: "cut" if item.is_.when == "once cut" and state == "raw" else state
                for item, state in before.items()
            }
        return before

    def _heats(self, id_: str) -> bool:
        work = self.chain[id_].work
        if work is None:
            return False
        where = work.where or next((way.where for way in work.or_ if way.where is not None), None)
        if where is not None and where.on_heat and not where.off:
            return work.thaws is None and (where.heat is None or where.heat.want >= PROVES_AT)
        text = self.texts[id_]
        return deeds.says_heat(text) or workings.SWELLS.search(text) is not None

    def _part(self, id_: str) -> bool:
        """Whether what heats it next is its cooking."""
        work = self.chain[id_].work
        said = work is not None and (work.cooks is not None or work.until is not None)
        return not said and workings.PART_COOKS.search(self.texts[id_]) is not None

    def _cuts(self, text: str) -> bool:
        if workings.WHOLE.search(text):
            return False
        return workings.CUTS.search(text) is not None or not workings.LEAVES_ALONE.search(text)

    def _form(self, id_: str) -> Literal["dry", "moist", "sweet", ""]:
        """What is made there, by the step's words, else by the dish's name."""
        for text in (self.texts[id_], self.name):
            if workings.MOIST_FORM.search(_without_verb(text)):
                return "moist"
            if workings.DRY_FORM.search(text):
                return "dry"
            if workings.SWEET_FORM.search(text):
                return "sweet"
        return ""

    def _dry(self, id_: str, held: _Held) -> bool:
        """Whether a step bakes it dry: by its form; without one, dough with no milk or cream and no vegetable in it."""
        alive = [item for item, state in held.items() if state != "keeps"]
        if any(i.spoils_as_it_is and not (i.called(_EGG) or i.called(_FRESH) or i.called(_BOUND)) for i in alive):
            return False
        bound = any(item.called(_DOUGH) for item in held)
        sweet = any(item.called(_SWEET) for item in held)
        plants = any(item.is_.when in ("once cooked", "once cut") and not item.called(_DOUGH) for item in alive)
        if plants and not (sweet and bound) and not any(item.called(_YEAST) for item in held):
            return False
        form = self._form(id_)
        if form == "dry":
            return bound or sweet or not alive
        fresh = any(item.spoils_as_it_is and item.called(_FRESH) for item in alive)
        return form == "" and bound and not fresh and not plants and self._in_oven(id_)

    def _in_oven(self, id_: str) -> bool:
        work = self.chain[id_].work
        return work is not None and any(
            way.where is not None and way.where.place == "oven" for way in (work, *work.or_)
        )

    def _sweet(self, id_: str, held: _Held) -> bool:
        """Caramel, ganache, jam: cream and fruit in much sugar."""
        sweet = self._form(id_) == "sweet" and any(item.called(_SWEET) for item in held)
        return sweet and not any(
            item.spoils_as_it_is and (item.called(_EGG) or not item.called(_FRESH)) for item in held
        )

    def _pickles(self, id_: str, held: _Held, *, heats: bool) -> bool:
        says = [other for other, text in self.texts.items() if workings.PICKLES.search(text)]
        sour = any(item.called(_ACID) for item in held) or "vinegar" in self.texts[id_]
        return sour and (id_ in says or (not says and heats and workings.PICKLES.search(self.name) is not None))


def _without_verb(text: str) -> str:
    return re.sub(r"^cream (?:the|together)\b", "", text)


def _items(dish: Dish, texts: Iterable[str]) -> Iterator[_Item]:
    """What the plan says is in a dish; where it says nothing, what its name and its steps name."""
    said = [(each.food, each.unit) for _, line in foods_of(dish) for each in line.choices or (line,)]
    if "ingredients" not in dish.model_fields_set:
        named = (each.food.name for text in (dish.dish, *texts) for each in mentioned(text))
        said = [(food, "") for food in dict.fromkeys(named)]
    known: set[str] = set()
    for food, unit in said:
        words = frozenset(word for word in stems(food) if word not in NEUTRAL and not word.isdecimal())
        words = words or frozenset(stems(food))
        known |= words
        for each in spoiling(food, unit):
            yield _Item(food, each, words | frozenset(stems(each.name)[-1:]))
    for text in texts:
        for filling in workings.FILLINGS.findall(_without_verb(text)):
            if not known & set(stems(filling)):
                yield _Item(filling, Spoiling("as it is", filling), frozenset(stems(filling)))


_MIXED = ("roast", "injected meat", "stuffed", "casserole", "leftovers", "held eggs")
_RAW_AS = ("poultry", "ground meat", "whole cut", "fish", "eggs")

_FIRST: dict[str, int] = {"as it is": 0, "once cooked": 1, "once cut": 2, "unknown": 9}


def _reason(held: Mapping[_Item, _State]) -> tuple[str, bool]:
    """Why it spoils, and whether that is known; empty if it does not."""
    found = [item for item, state in held.items() if _does_spoil(item.is_, state)]
    found.sort(key=lambda item: _FIRST[item.is_.when])
    if found and found[0].is_.when != "unknown":
        first = found[0].is_
        done = {"once cooked": "cooked ", "once cut": "cut "}.get(first.when, "")
        done = "cooked " if first.when == "once cut" and held[found[0]] != "cut" else done
        return f"{done}{first.name} ({TCS})", True
    garlic = any(item.called(_GARLIC) and state != "keeps" for item, state in held.items())
    if garlic and any(item.called(_OIL) for item in held) and not any(item.called(_ACID) for item in held):
        return f"garlic in oil ({TCS})", True
    return (f"{found[0].is_.name!r}, which is not known: taken to spoil", False) if found else ("", True)


def _does_spoil(food: Spoiling, state: _State) -> bool:
    match food.when:
        case "never":
            return False
        case "once cooked":
            return state in ("part-cooked", "cooked")
        case "once cut":
            return state in ("cut", "part-cooked", "cooked")
        case "as it is" | "unknown":
            return state != "keeps"
