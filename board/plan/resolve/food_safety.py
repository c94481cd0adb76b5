"""What a piece of work means for food safety; gaps in the plan are filled from its rule set. Pure."""

from dataclasses import dataclass

from board.facts import deeds
from board.facts.rule_set import RuleSet
from board.facts.rule_sets import rule_set
from board.plan.model.model import Plan
from board.plan.model.work import Work
from board.plan.phrases.food_safety import Core, rule_class
from board.plan.phrases.stations import Station
from board.plan.resolve.assumed import Assumptions
from board.plan.resolve.become import Become
from board.plan.resolve.fridge_life import life_class
from board.plan.resolve.links import Node
from board.plan.resolve.spoils import KEEPS, Spoils, dish_at

_OF_UNKNOWN_HEAT = (deeds.names_bath, deeds.only_warms, deeds.only_keeps_warm)
OUT_OF_CONTROL = ("worktop", "front-of-house", "room")  # neither hot nor cold enough


@dataclass(frozen=True, slots=True)
class Care:
    """`core`: what the middle must reach. `spoils`: whether its result spoils unchilled, by the host's word first;
    `by`: what it does by itself, and why. `fresh`: it cooks the food through, so a new clock begins. `raw`: a raw food
    that it begins with. `life`: its class of fridge life."""

    core: Core | None = None
    cooks: str | None = None
    reheats: bool = False
    spoils: bool = False
    fresh: bool = False
    by: Spoils = KEEPS
    raw: str | None = None
    life: str | None = None


NO_CARE = Care()


def care_of(plan: Plan, node: Node, become: Become, assumed: Assumptions) -> Care:
    """The care of one piece of work, whose food has `become` so; what is assumed is added."""
    work = node.work
    if work is None:
        return NO_CARE
    rules = rule_set(plan.rules)
    core = work.until
    if core is None and work.cooks is not None and (cook := rules.cook_for(rule_class(work.cooks))) is not None:
        core = Core(celsius=cook.degrees.celsius, minutes=cook.hold_seconds / 60)
        assumed.of(node, "core", celsius=cook.degrees.celsius, rules=rules.title)
    hot = work.where is not None and (work.where.on_heat or in_hot_tool(work.where, node.name))
    through = core is not None and rules.danger_high.at_least(core.celsius)
    fresh = hot and not become.reheats and (through or (core is None and become.anew))
    by, word = Spoils(become.spoils, become.why, become.sure), by_host(plan, node)
    life = life_class(become, node) if node.kind == "step" else None
    return Care(core, work.cooks, become.reheats, by.does if word is None else word, fresh, by, become.raw, life)


def by_host(plan: Plan, node: Node) -> bool | None:
    """Whether it spoils by the host's word of the step, else of its dish; None if they say nothing. A job's result
    spoils by their word only."""
    if node.work is not None and node.work.perishable is not None:
        return node.work.perishable
    dish = dish_at(plan, node.loc)
    return dish.perishable if dish is not None else False


def in_hot_tool(where: Station, name: str) -> bool:
    """Whether work of this name is done in a tool that heats by itself: a slow cooker, a water bath."""
    if where.place not in OUT_OF_CONTROL or deeds.stands(name):
        return False
    said = deeds.names_hot_tool(name) and (deeds.says_heat(name) or deeds.only_keeps_warm(name))
    return said or any(deeds.names_hot_tool(tool) or deeds.names_bath(tool) for tool in where.tools)


def tool_is_hot(care: Care, where: Station, name: str, rules: RuleSet) -> bool | None:
    """Whether such a tool keeps its food at hot holding or above: by the core temperature it is left to reach, as a
    bath is no cooler; else by its own heat, which a bath has not. None where nothing tells. FDA Food Code 3-501.16(A)
    excepts food that is being cooked, from memory."""
    if care.core is not None:
        return rules.hot_holding.at_least(care.core.celsius)
    text = " ".join((name, *where.tools))
    return None if any(tells(text) for tells in _OF_UNKNOWN_HEAT) else True


def is_exposed(care: Care, where: Station, work: Work | None, rules: RuleSet, name: str) -> bool:
    """Whether perishable food is neither hot nor cold enough during this work of this name. What a tool of unknown heat
    cooks is asked about (food 2), and taken to be hot.

    Cooling in water or ice is judged by the cooling stages and their own limits instead (FDA Food Code 3-501.16(A)
    excepts cooling, from memory), and thawing in cold water by the time it is given (food 8). Cooling in the room
    counts, and so does an oven set below hot holding.
    """
    cools = work.cools if work is not None else None
    bathed = cools is not None and cools.bath in ("cold water", "ice bath")
    if work is not None and work.thaws is not None:
        return False
    if in_hot_tool(where, name):
        return care.spoils and tool_is_hot(care, where, name, rules) is False
    lukewarm = where.place == "oven" and where.heat is not None and not rules.hot_holding.at_least(where.heat.want)
    return care.spoils and (where.place in OUT_OF_CONTROL or lukewarm) and not bathed


def is_exposed_where_kept(care: Care, where: Station) -> bool:
    """Whether what was made is perishable, and neither hot nor cold enough where it is kept."""
    return care.spoils and where.place in OUT_OF_CONTROL
