"""How long a step's result keeps where its plan is silent: it stays where its step left it, as food of its kind does.

Which kinds there are: `facts.keeping`. The rule set goes before it: what spoils never stands out longer than its limit,
nor in the fridge longer than its life, over all of its stays. What is of no known kind keeps its careful hours. Pure.
"""

import math
import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from graphlib import TopologicalSorter
from typing import TYPE_CHECKING, Literal, get_args

from board.facts import deeds, workings
from board.facts import keeping as facts
from board.facts.food import raw_class
from board.facts.phrases import folded
from board.facts.rule_set import RuleSet
from board.plan.model.model import Plan
from board.plan.phrases.stations import Keep, Station
from board.plan.resolve.assumed import Kind, Value
from board.plan.resolve.become import NOTHING, PROVES_AT, Become
from board.plan.resolve.going_in import foods_of
from board.plan.resolve.nodes import Link, Node
from board.plan.resolve.spoils import dish_at

if TYPE_CHECKING:
    from board.plan.resolve.assume import FilledWay, Task

KEEPS_MINUTES = 120  # in the room; the usual two-hour limit for perishable food (USDA FSIS)
BEST_WITHIN_MINUTES = 15  # for a hot dish before serving; common practice, no source
TO_COOL_MINUTES = 30  # hot food that spoils, until it is cooled; ours
TEMPERS_MINUTES = 60  # raw meat and fish out of the fridge before the heat; common practice, no source
STAYS_HOT_MINUTES = 45  # so long a piece of work at the worktop, or a rest, leaves hot food hot; ours
STAYS_COLD_MINUTES = 60  # and so long cold food cold enough to go back into the fridge; ours
COOL_AFTER_MINUTES = 20  # who lets hot food stand so long by the plan's word lets it cool; ours
ROOM_TO_SPARE = 30  # minutes added to what must lie between by the plan's own word; ours
DAY_MINUTES = 24 * 60
_CRUSTS = ("meringues", "whisked egg whites")
_NOT_YET_SERVED = ("hot food that is to be cooled", "raw food out of the fridge")

State = Literal["frozen", "soft", "hot", "cold", "room"]
Place = Literal["room", "fridge", "freezer"]
End = Literal["table", "cold", "other", "pan"]  # of several, the first decides

_FREEZES = re.compile(r"\b(?:re-?freeze|freeze|churn|(?:in|into|to) the (?:deep )?freezer|firm up in the freezer)\b")
_THAWED = re.compile(
    r"\b(?:(?:out of|from) the (?:deep )?freezer|defrost|thaw|freezer to (?:the )?fridge|"
    r"(?:let|leave)\b.*\bsoften)\b|^soften\b"
)
_CHILLS = re.compile(
    r"\b(?:chill|refrigerate|(?:in|into|to) the (?:fridge|refrigerator|icebox|larder)|set (?:cold|overnight))\b"
)
_TAKEN_OUT = re.compile(
    r"\b(?:out of|from) the (?:fridge|refrigerator|icebox)\b|\bto (?:come to )?room temperature\b|"
    r"\b(?:come|bring) (?:it |them |the [\w ]+ )?(?:up )?to room\b|"
    r"\btake the (?:\w+ )*(?:meat|cheeses?|steaks?|roast|joint) out\b"
)
_BREWS = re.compile(r"^(?:brew|make)\b[\w ]*\b(?:coffee|tea|espressos?)$")
_COOLS = re.compile(r"\b(?:cool|cools|cooling|go cold|get cold)\b")
_MAKES_ICE = re.compile(r"\b(?:churn|make|mix|blend|whisk|cook|base|custard|syrup)\b")
_WRAPS = re.compile(r"^(?:wrap|cover|seal|label|put .*\bback)\b")
_YEAST = re.compile(
    r"\b(?:yeast|sourdough|levain|bread|rolls?|buns?|pizzas?|focaccia|brioche|baguettes?|naans?|ciabatta|challah)\b"
)
_FLOURED = re.compile(r"\b(?:flour|pastry|dough|oats|oatmeal|filo|phyllo)\b")
_LOAVES = ("bread", "rolls or flat bread")
_SAVOURY = re.compile(r"\b(?:livers?|foie gras|duck|smoked|fish|ham|salmon|trout|mushrooms?)\b")  # of a parfait
_FINISHES = re.compile(
    r"^(?:unmou?ld|turn (?:\w+ )*out|plate|garnish|decorate|top|finish|slice|cut|portion|spoon|pipe|arrange|dress|"
    r"carve|dish|scatter|fill|serve|pour|ladle|divide)\b"
)
_SERVED_COLD = re.compile(
    r"\b(?:salade?s?|cold|chilled|iced|ceviche|tartare|carpaccio|terrines?|pates?|sandwich(?:es)?|antipast\w+|"
    r"crudites|(?:cole)?slaws?|gazpacho|vichyssoise|dips?|gravlax|canapes?|cheese ?board)\b"
)


def _at_most(best: int) -> int:
    """Minutes that hot food can be kept at a pinch, where it is as it should be for so many."""
    return max(best, min(2 * best, facts.HOT_AT_MOST))


@dataclass(frozen=True, slots=True)
class Kept:
    """A default: `keep`, and how it is told of as assumed."""

    keep: Keep
    kind: Kind
    values: dict[str, Value]


@dataclass
class Keeping:
    """The defaults of a plan's steps. `tasks`: with every value filled but what keeps, which is None where the plan is
    silent, and what spoils told. `stands`: minutes, as `written_stands` gives them."""

    plan: Plan
    rules: RuleSet
    tasks: Mapping[str, "Task"]
    links: list[Link]
    becomes: Mapping[str, Become]
    stands: Mapping[str, int]
    makers: dict[str, list[Link]] = field(default_factory=dict)
    takers: dict[str, list[Link]] = field(default_factory=dict)
    made: dict[str, facts.Keeps | None] = field(default_factory=dict)
    states: dict[tuple[str, int], State] = field(default_factory=dict)
    found: dict[tuple[str, int], Kept | None] = field(default_factory=dict)
    between: dict[str, int] = field(default_factory=dict)
    cooked_later: dict[str, bool] = field(default_factory=dict)
    leads: dict[str, End] = field(default_factory=dict)
    later: dict[str, int] = field(default_factory=dict)
    spent: dict[str, float] = field(default_factory=dict)

    def __post_init__(self) -> None:
        for link in self.links:
            if link.firm:
                self.makers.setdefault(link.second, []).append(link)
                self.takers.setdefault(link.first, []).append(link)
        follows = {id_: {link.first for link in self.makers.get(id_, [])} for id_ in self.tasks}
        order = list(TopologicalSorter(follows).static_order())
        self.between = self._between({id_: n for n, id_ in enumerate(order)})
        for id_ in reversed(order):  # one by one, so that none calls itself through a long dish
            self._is_cooked_later(id_), self._still_to_stand(id_), self._leads(id_)
        for id_ in order:
            self._state(id_, 0), self.kept(id_, 0), self._spent(id_)

    def kept(self, id_: str, number: int) -> Kept | None:
        """What is taken of a way of a step; None for what is no step, or where the plan says it."""
        key = id_, number
        if key not in self.found:
            task = self.tasks[id_]
            silent = task.node.kind == "step" and task.ways[number].keeps is None and not self._is_lasting(id_)
            self.found[key] = self._long_enough(id_, number, self._usual(id_, number)) if silent else None
        return self.found[key]

    def best_within(self, id_: str) -> int | None:
        """Minutes within which a dish that goes hot from its last step to the table is best; None where it does not."""
        kind = self._kind(id_)
        if self._state(id_, 0) != "hot" or self._leads(id_) != "table" or self._dry(id_, kind):
            return None
        return min(BEST_WITHIN_MINUTES, self._best(id_, kind))

    def _best(self, id_: str, kind: facts.Keeps | None) -> int:
        """Minutes off the heat in which hot food is as it should be."""
        minutes = (kind and kind.hot) or facts.HOT_MINUTES
        off_heat = not self.tasks[id_].ways[0].where.on_heat
        return min(minutes, facts.PLATED_MINUTES) if off_heat and _FINISHES.search(self._text(id_)) else minutes

    def _is_lasting(self, id_: str) -> bool:
        """Whether it makes no food, and nothing that gets cold."""
        return workings.makes_no_food(self._text(id_)) and self._made(id_) is None

    # what it is, and how warm

    def _text(self, id_: str) -> str:
        return folded(self.tasks[id_].node.name)

    def _made(self, id_: str) -> facts.Keeps | None:
        """The kind that its own words name. Dough with yeast in it is another."""
        node = self.tasks[id_].node
        if id_ not in self.made:
            on_heat = self.tasks[id_].ways[0].where.on_heat
            cut = None if on_heat else facts.cut_of(node.name, (*self._foods(node), node.dish or ""))
            made = facts.made_in(node.name, node.dish or "", on_heat=on_heat) or cut
            if made is not None and made.name == "pastry or biscuit dough" and self._has_yeast(node):
                made = facts.by_name("yeast dough")
            made = self._as_it_is(id_, made)
            if made is not None and made.soft and _SAVOURY.search(folded(node.dish or "")):
                made = self._of_dish(id_)
            self.made[id_] = made
        return self.made[id_]

    def _foods(self, node: Node) -> list[str]:
        dish = dish_at(self.plan, node.loc)
        return [each.food for _, line in foods_of(dish) for each in line.choices or (line,)] if dish else []

    def _has_yeast(self, node: Node) -> bool:
        return any(_YEAST.search(folded(food)) for food in (*self._foods(node), node.dish or ""))

    def _kind(self, id_: str) -> facts.Keeps | None:
        """By its own words, else by its dish's; a part that is still to be cooked is no such dish yet."""
        raw = not self._become(id_).heated and self._is_cooked_later(id_)
        kind = self._made(id_) or (None if raw else self._of_dish(id_))
        return facts.BAKED if kind is None and self._is_baked_dry(id_) else kind

    def _is_baked_dry(self, id_: str) -> bool:
        task = self.tasks[id_]
        baked = task.ways[0].where.place == "oven" and self._become(id_).heats and not self._spoils(id_)
        return baked and any(_FLOURED.search(folded(food)) for food in self._foods(task.node))

    def _of_dish(self, id_: str) -> facts.Keeps | None:
        return self._as_it_is(id_, facts.kind_of_dish(self.tasks[id_].node.dish or ""))

    def _as_it_is(self, id_: str, kind: facts.Keeps | None) -> facts.Keeps | None:
        """Not bread, where it spoils when it is baked: a loaf of meat or vegetables."""
        loaf = kind is not None and kind.name in _LOAVES
        return None if loaf and self._become(id_).heated and self._spoils(id_) else kind

    def _is_cooked_later(self, id_: str) -> bool:
        if id_ not in self.cooked_later:
            own = self.tasks[id_].node.loc[:4]
            then = [self.tasks[e.second] for e in self.takers.get(id_, [])]
            self.cooked_later[id_] = any(
                each.ways[0].where.on_heat or self._is_cooked_later(each.node.id)
                for each in then
                if each.node.kind == "step" and each.node.loc[:4] == own
            )
        return self.cooked_later[id_]

    def _become(self, id_: str) -> Become:
        return self.becomes.get(id_, NOTHING)

    def _spoils(self, id_: str) -> bool:
        return self.tasks[id_].care.spoils

    def _before(self, id_: str) -> list[Link]:
        return [link for link in self.makers.get(id_, []) if self.tasks[link.first].node.kind == "step"]

    def _dry(self, id_: str, kind: facts.Keeps | None) -> bool:
        """Baked, or of sugar or fruit: it keeps in the room, hot or not."""
        return kind is not None and kind.room is not None and kind.hot is None and not self._spoils(id_)

    def _is_ice(self, id_: str) -> bool:
        return self._ice(id_) is not None or "frozen" in folded(self.tasks[id_].node.dish or "")

    def _ice(self, id_: str) -> facts.Keeps | None:
        kinds = (self._made(id_), self._of_dish(id_))
        return next((kind for kind in kinds if kind is not None and kind.soft), None)

    def _state(self, id_: str, number: int) -> State:
        """What a step leaves it as."""
        key = id_, number
        if key not in self.states:
            self.states[key] = self._left(id_, self.tasks[id_].ways[number])
        return self.states[key]

    def _left(self, id_: str, way: "FilledWay") -> State:
        text, where, minutes = self._text(id_), way.where, way.takes.likely
        before = {self._taken_up(link) for link in self._before(id_)}
        thawed = _THAWED.search(text) is not None
        if not thawed and (where.place == "freezer" or _FREEZES.search(text)):
            return "frozen"
        if self._is_heated(where, text):
            return "soft" if self._is_ice(id_) and self._stays_ice(id_, before, where) else "hot"
        if "frozen" in before and _WRAPS.search(text):
            return "frozen"
        if self._serves_ice(id_) or (self._is_ice(id_) and (before & {"frozen", "soft"} or thawed)):
            return "soft"
        if where.place == "fridge" or _CHILLS.search(text):
            return "cold"
        if where.off:
            return "hot" if "hot" in before else "room"
        if _TAKEN_OUT.search(text) or thawed or _BREWS.search(text):
            return "room"
        work = self.tasks[id_].work
        if (work is not None and work.cools is not None) or _COOLS.search(text):
            return "cold" if self._spoils(id_) else "room"
        made = self._made(id_)
        eaten_cold = made is not None and made.hot is None
        if "hot" in before and minutes <= STAYS_HOT_MINUTES and not eaten_cold:
            return "hot"
        fresh = self._spoils(id_) and (eaten_cold or not self._become(id_).heated)
        return "cold" if ("cold" in before or fresh) and minutes <= STAYS_COLD_MINUTES else "room"

    def _is_heated(self, where: Station, text: str) -> bool:
        if where.on_heat:
            return not where.off and (where.heat is None or where.heat.want >= PROVES_AT)
        cold = _CHILLS.search(text) or _COOLS.search(text) or facts.is_raw_work(text)
        return where.place == "worktop" and not cold and deeds.heats_by_word(text)

    def _stays_ice(self, id_: str, before: set[State], where: Station) -> bool:
        """Whether an ice stays one in the heat: out of the freezer, or browned in its crust, as a baked Alaska."""
        made = self._made(id_)
        crust = made is None or made.soft is not None or made.name in _CRUSTS
        return "frozen" in before or ("soft" in before and where.place == "oven" and crust)

    def _serves_ice(self, id_: str) -> bool:
        """Whether it takes up an ice by its words, bought or of another dish."""
        return facts.names_an_ice(self._text(id_)) and not _MAKES_ICE.search(self._text(id_))

    def _taken_up(self, link: Link) -> State:
        """How warm it is when it is taken up."""
        state = self._state(link.first, 0)
        keep = self.tasks[link.first].ways[0].keeps
        kept = self.kept(link.first, 0)
        keep = keep or (kept.keep if kept is not None else None)
        match keep.where.place if keep is not None else "room":
            case "fridge":
                return "cold" if state != "soft" else "soft"
            case "freezer":
                return "frozen"
            case "hot" | "oven" | "stovetop":
                return "hot"
            case _:
                long = keep is not None and keep.minutes > STAYS_HOT_MINUTES
                cools = state == "hot" and (link.least >= COOL_AFTER_MINUTES or long)
                return "room" if cools or state == "frozen" else state

    def _leads(self, id_: str) -> End:
        """Where hot food goes, some of it at least: hot to the table, by no more than short work; to be cooled; back
        onto the heat, as the juices of a roast."""
        if id_ not in self.leads:
            self.leads[id_] = self._led(id_)
        return self.leads[id_]

    def _led(self, id_: str) -> End:
        found: set[End] = set()
        for link in self.takers.get(id_, []):
            taker = self.tasks[link.second]
            if taker.node.kind == "serve":
                found.add("other" if self._is_served_cold(id_) else "table")
            elif taker.node.kind == "step":
                found.add(self._leads_through(link, taker))
        return next((end for end in get_args(End) if end in found), "other")

    def _leads_through(self, link: Link, taker: "Task") -> End:
        text, way = self._text(link.second), taker.ways[0]
        cools = taker.work is not None and taker.work.cools is not None
        if cools or way.where.place in ("fridge", "freezer") or _COOLS.search(text) or _CHILLS.search(text):
            return "cold"
        if way.where.on_heat and not way.where.off:
            return "pan"
        made = self._made(link.second)
        if (
            (made is not None and made.hot is None)
            or link.least >= COOL_AFTER_MINUTES
            or way.takes.likely > STAYS_HOT_MINUTES
        ):
            return "other"
        return self._leads(link.second)

    def _is_served_cold(self, id_: str) -> bool:
        made, kind = self._made(id_), self._of_dish(id_)
        if made is not None:
            return made.hot is None
        cold = kind is not None and kind.hot is None and (kind.fridge or kind.out or kind.room)
        return bool(cold) or self._is_named_cold(id_)

    def _is_named_cold(self, id_: str) -> bool:
        return _SERVED_COLD.search(folded(self.tasks[id_].node.dish or "")) is not None

    # how long

    def _usual(self, id_: str, number: int) -> Kept:
        way, kind, state = self.tasks[id_].ways[number], self._kind(id_), self._state(id_, number)
        if state in ("frozen", "soft"):
            kind = self._ice(id_) or kind
        if state == "frozen":
            return self._as("freezer", (kind and kind.freezer) or facts.FREEZER_MINUTES, kind, "frozen food", id_)
        if state == "soft":
            soft = (kind and kind.soft) or facts.SOFT_MINUTES
            again = any(self._taken_up(link) == "soft" for link in self._before(id_))
            left = (
                facts.STAYS_SOFT_MINUTES
                if again or way.where.on_heat
                else max(soft - way.takes.likely, facts.STAYS_SOFT_MINUTES)
            )
            place: Place = "fridge" if way.where.place == "fridge" else "room"
            return self._as(place, left, kind, "an ice that softens", id_)
        if kind is not None and kind.out is not None and way.where.place != "fridge":
            return self._as("room", kind.out, kind, kind.name, id_)
        if state == "hot":
            return self._hot(id_, kind)
        return self._cold(id_, way, kind) if state == "cold" else self._in_the_room(id_, kind)

    def _hot(self, id_: str, kind: facts.Keeps | None) -> Kept:
        if kind is not None and self._dry(id_, kind):
            return self._as("room", kind.room or 0, kind, kind.name, id_)
        to = self._leads(id_)
        made = self._made(id_)
        if to == "pan" and made is not None and made.quick and not self._is_named_cold(id_):
            return self._as("room", _at_most(made.hot or facts.HOT_MINUTES), made, made.name, id_)
        if to == "table" and (made is None or made.hot is not None):
            hot = kind if kind is not None and kind.hot else None
            return self._as("room", _at_most(self._best(id_, hot)), hot, "hot food", id_)
        if any(self._become(link.second).reheats for link in self.takers.get(id_, [])):
            return self._as("fridge", (kind and kind.fridge) or facts.IN_FRIDGE_MINUTES, kind, "cooked food", id_)
        if to == "cold" and self._spoils(id_):
            return self._as("room", TO_COOL_MINUTES, None, "hot food that is to be cooled", id_)
        return self._in_the_room(id_, kind, fridge=False)

    def _cold(self, id_: str, way: "FilledWay", kind: facts.Keeps | None) -> Kept:
        in_fridge = way.where.place == "fridge"
        if kind is not None and kind.room is not None and not self._spoils(id_) and not in_fridge and not kind.fridge:
            return self._as("room", kind.room, kind, kind.name, id_)
        raw = self._become(id_).raw
        usual = kind.fridge if kind is not None else None
        if usual is None and raw is not None and raw_class(raw) != "eggs":
            kind, usual = facts.RAW, facts.RAW.fridge
        elif usual is None and in_fridge and self._become(id_).heated and self._spoils(id_):
            kind, usual = facts.COOKED, facts.COOKED.fridge
        minutes = usual or (facts.IN_FRIDGE_MINUTES if in_fridge else facts.BACK_IN_FRIDGE_MINUTES)
        finished = _FINISHES.search(self._text(id_)) and self._made(id_) in (None, self._of_dish(id_))
        if not in_fridge and finished and self._leads(id_) in ("table", "other"):
            minutes = min(minutes, facts.BACK_IN_FRIDGE_MINUTES)
        if not in_fridge and self._goes_into_the_cold(id_):
            minutes = min(minutes, KEEPS_MINUTES)
        return self._as("fridge", minutes, kind if usual else None, "", id_)

    def _goes_into_the_cold(self, id_: str) -> bool:
        """Whether all that follows is done in the fridge or the freezer."""
        takers = [self.tasks[link.second].ways[0].where.place for link in self.takers.get(id_, [])]
        return bool(takers) and all(place in ("fridge", "freezer") for place in takers)

    def _in_the_room(self, id_: str, kind: facts.Keeps | None, *, fridge: bool = True) -> Kept:
        spoils, out = self._spoils(id_), _TAKEN_OUT.search(self._text(id_)) is not None
        if out and self._become(id_).raw is not None:
            return self._as("room", TEMPERS_MINUTES, None, "raw food out of the fridge", id_)
        if kind is not None and not out and kind.room is not None:
            return self._as("room", kind.room, kind, kind.name, id_)
        if kind is not None and not out and kind.fridge is not None and fridge and not (spoils and self._warm(id_)):
            return self._as("fridge", kind.fridge, kind, kind.name, id_)
        return self._as("room", KEEPS_MINUTES, None, "", id_)

    def _warm(self, id_: str) -> bool:
        """Whether it was hot not long before, and is not said to be what is made cold."""
        made = self._made(id_)
        return (made is None or made.hot is not None) and any(
            self._state(link.first, 0) == "hot" for link in self._before(id_)
        )

    def _as(self, place: Place, minutes: int, kind: facts.Keeps | None, of: str, id_: str) -> Kept:
        """`of`: what food it is, where its kind has no such line; nothing: it is of no known kind."""
        least, air = min(minutes, KEEPS_MINUTES), self.plan.air
        if place == "room" and self._spoils(id_):
            minutes = min(minutes, KEEPS_MINUTES, self.rules.out_limit(air.indoors if air else None).minutes)
        elif place == "fridge" and self._spoils(id_):
            minutes = max(least, math.floor(min(minutes, self._life_left(id_))))
        keep = Keep(minutes=minutes, where=Station(place=place))
        name = kind.name if kind is not None else of
        if name:
            soft = kind is not None and kind.soft and place != "freezer" and self._state(id_, 0) == "soft"
            told = "soft" if soft else "hot" if place == "room" and self._is_hot_until_then(id_, minutes) else place
            return Kept(keep, "keeps-as", {"minutes": minutes, "kept": told, "of": name})
        if place == "fridge":
            return Kept(keep, "keeps-cold", {"minutes": minutes})
        return Kept(keep, "keeps", {"minutes": minutes})

    def _is_hot_until_then(self, id_: str, minutes: int) -> bool:
        return self._state(id_, 0) == "hot" and minutes <= STAYS_HOT_MINUTES

    # what the rule set and the plan's own times ask for

    def _life_left(self, id_: str) -> float:
        """Minutes in the fridge that the rule set leaves it, when all stays before last as long as they may."""
        life = self.rules.fridge_lives.get(self.tasks[id_].care.life or "")
        days = [float(life.lower_days)] if life is not None else []
        if self.rules.ready_to_eat_days is not None:
            days.append(float(self.rules.ready_to_eat_days - 1))
        later = KEEPS_MINUTES * self._still_to_stand(id_)
        return min(days) * DAY_MINUTES - self._spent(id_) - later if days else math.inf

    def _still_to_stand(self, id_: str) -> int:
        """How many more stays may come, of as little as they are ever given, until it is cooked through or served."""
        if id_ not in self.later:
            then = [self.tasks[link.second] for link in self.takers.get(id_, [])]
            steps = [each.node.id for each in then if each.node.kind == "step" and not each.care.fresh]
            self.later[id_] = max((1 + self._still_to_stand(each) for each in steps), default=0)
        return self.later[id_]

    def _spent(self, id_: str) -> float:
        """The most minutes in the fridge until the end of a step, since it was cooked through."""
        if id_ not in self.spent:
            task = self.tasks[id_]
            way = task.ways[0]
            own = float(way.takes.high) if way.where.place == "fridge" else 0.0
            before = (
                [] if task.care.fresh else [self._spent(e.first) + self._cold_stay(e.first) for e in self._before(id_)]
            )
            self.spent[id_] = max(before, default=0.0) + own
        return self.spent[id_]

    def _cold_stay(self, id_: str) -> int:
        kept = self.kept(id_, 0)
        keep = self.tasks[id_].ways[0].keeps or (kept.keep if kept is not None else None)
        return keep.minutes if keep is not None and keep.where.place == "fridge" else 0

    def _long_enough(self, id_: str, number: int, kept: Kept) -> Kept:
        """At least until it can be taken up by the plan's own order and times; told as theirs, where it is past what
        is usual."""
        if kept.keep.where.place == "fridge" and self._is_taken_up_soon(id_, number):
            return self._as("room", KEEPS_MINUTES, None, "what its plan takes up soon", id_)
        needed = max(self.between.get(id_, 0), self.stands.get(id_, 0))
        if needed <= kept.keep.minutes:
            return kept
        place = kept.keep.where.place
        if place == "room" and needed > KEEPS_MINUTES - ROOM_TO_SPARE and self._spoils(id_):
            place = "fridge"
        assert place in ("room", "fridge", "freezer")
        kind = self._kept_cold(id_) if place == "fridge" else None
        usual = (kind.fridge if kind is not None else None) or 0
        if needed <= usual:
            return self._as("fridge", usual, kind, "", id_)
        longer = self._as(place, needed + min(ROOM_TO_SPARE, kept.keep.minutes), None, "", id_).keep
        told: dict[str, Value] = {"minutes": longer.minutes, "kept": place}
        past = {**kept.values, "minutes": kept.keep.minutes}
        if usual and kind is not None:
            past = {"minutes": usual, "kept": place, "of": kind.name}
        if "of" not in past or past["of"] in _NOT_YET_SERVED:
            return Kept(longer, "keeps-by-times", told)
        than = {"stands": needed, "usual": past["minutes"], "usually": past["kept"], "of": past["of"]}
        return Kept(longer, "keeps-past", {**told, **than})

    def _kept_cold(self, id_: str) -> facts.Keeps | None:
        """Its kind, as it keeps in the fridge; what is known to be eaten hot has none there."""
        kind = self._kind(id_)
        if kind is None and self._become(id_).heated:
            return facts.COOKED
        return kind

    def _is_taken_up_soon(self, id_: str, number: int) -> bool:
        """Whether the plan lets it wait so shortly that nobody puts it back into the fridge."""
        links = self.takers.get(id_, [])
        soon = {link.second for link in links if link.most is not None and link.most <= ROOM_TO_SPARE}
        out = self.tasks[id_].ways[number].where.place != "fridge"
        return out and bool(links) and soon == {link.second for link in links}

    def _between(self, order: Mapping[str, int]) -> dict[str, int]:
        """The most minutes that must lie between a step and one that takes it up, by other work and by least gaps."""
        found = {
            first: max(link.least for link in links)
            for first, links in self.takers.items()
            if any(link.least for link in links)
        }
        forked = [id_ for id_, links in self.takers.items() if len(links) > 1 and self.tasks[id_].node.kind == "step"]
        for id_ in forked:
            found[id_] = max(found.get(id_, 0), self._longest(id_, order))
        return found

    def _longest(self, first: str, order: Mapping[str, int]) -> int:
        last = max(order[link.second] for link in self.takers[first])
        reached = {link.second: link.least for link in self.takers[first]}
        queue = sorted(reached, key=order.__getitem__)
        while queue:
            id_ = queue.pop(0)
            over = reached[id_] + min(way.takes.likely for way in self.tasks[id_].ways)
            for link in self.takers.get(id_, []):
                if order[link.second] <= last:
                    if link.second not in reached:
                        queue = sorted([*queue, link.second], key=order.__getitem__)
                    reached[link.second] = max(reached.get(link.second, 0), over + link.least)
        return max(reached[link.second] for link in self.takers[first])
