"""What is in one ingredient: by the table of foods, by the host's own list, by the label, and what nobody knows."""

from collections.abc import Collection, Mapping
from dataclasses import dataclass

from board.facts.allergens import Allergen
from board.facts.food import of_the_host, understood
from board.facts.foods.entry import RawClass
from board.facts.held import HEAVIEST_FIRST, Facts, Stems
from board.facts.named import named
from board.facts.origins import Origin, Trait, with_what_follows
from board.facts.phrases import foreign, stems
from board.facts.raw_keeps import BY_SECTION
from board.facts.reading import Meant
from board.plan.model.model import Plan
from board.plan.phrases.quantities import Ingredient
from board.plan.places import Loc

BY_THE_TABLE = "by the table of foods"
BY_ITS_LABEL = "by its label"
BY_THE_PLAN = "as the plan's foods say"


@dataclass(frozen=True)
class Stuff:
    """One ingredient taken apart. `holds`, `may_hold`, `only_named`: what is in it, may be in it, or is named as
    what it lacks or is for, each with how that is known. `written`: the food with the words in its brackets.
    `cleared`: what its label says it is free from. `meant`: foods that unknown words are one letter away from.
    """

    food: str
    written: str
    loc: Loc
    words: Stems
    holds: Mapping[Trait, str]
    may_hold: Mapping[Trait, str]
    only_named: Mapping[Trait, str]
    cleared: frozenset[Trait]
    unknown: tuple[str, ...]
    meant: tuple[Meant, ...]
    made: bool
    parts: tuple[Facts, ...]
    raw_class: RawClass | None


def host_foods(plan: Plan) -> dict[Stems, Facts]:
    """The foods whose labels the host wrote down, by the stems of their names."""
    return {stems(name): of_the_host(name, _held(words)) for name, words in plan.foods.items() if stems(name)}


def stuff_of(ingredient: Ingredient, loc: Loc, own: Mapping[Stems, Facts]) -> Stuff:
    """What is in an ingredient. Its own label overrides the table, but never removes the label's own `may contain`."""
    written = _written(ingredient)
    found = understood(written, own)
    cleared = frozenset[Trait]().union(*(said.cleared for word in ingredient.free_from if (said := named(word))))
    by_label = dict.fromkeys(with_what_follows(_held(ingredient.contains)), BY_ITS_LABEL)
    may_by_label = with_what_follows(_held(ingredient.may_contain)) | _meant_with(by_label)
    own_names = {value.name for value in own.values()}
    by_name: dict[Trait, str] = {}
    for part in found.known:
        how = BY_THE_PLAN if part.name in own_names else BY_THE_TABLE
        by_name |= {trait: how for trait in part.traits if trait not in cleared}
    holds = {**by_name, **by_label}
    hidden = {each.what: each.source for part in found.known for each in part.hidden if each.what not in cleared}
    may = {**hidden, **dict.fromkeys(may_by_label | _meant_with(may_by_label), BY_ITS_LABEL)}
    beside = {trait: BY_THE_TABLE for part in found.named for trait in part.traits if trait not in cleared}
    done = found.cooked_through or ingredient.unit in ("tin", "jar")
    classes = {part.raw_class for part in found.known}
    return Stuff(
        ingredient.food,
        written,
        loc,
        stems(written),
        holds,
        {trait: how for trait, how in may.items() if trait not in holds},
        {trait: how for trait, how in beside.items() if trait not in holds and trait not in may},
        cleared,
        found.unknown,
        found.meant,
        any(part.made for part in found.known),
        (*found.known, *found.named),
        None if done else next((each for each in HEAVIEST_FIRST if each in classes), None),
    )


# Brackets at the end hold the section of the shop; but a host may also write `(or cream)`, `(sesame)` there.
_SHOP = frozenset(word for section in BY_SECTION for word in stems(section)) | frozenset(
    stems(
        """shop market stall counter aisle fridge freezer frozen chilled cupboard pantry larder cellar garden allotment
        farm supermarket grocer greengrocer fishmonger butcher baker bakery delicatessen wholesaler online bulk
        health store
        world international specialist asian local corner home fresh section produce meat fish vegetable fruit
        chiller household off licence wine merchant drink the and a at from"""
    )
)


def _written(ingredient: Ingredient) -> str:
    """The food, with the words in its last brackets unless they are a section of the shop."""
    section = ingredient.section or ""
    is_shop = all(word in _SHOP for word in stems(section)) and not foreign(section)
    return ingredient.food if is_shop else f"{ingredient.food} ({section})"


def _meant_with(traits: Collection[Trait]) -> frozenset[Trait]:
    """What a label leaves open: milk with or without its lactose, lactose and its milk, which cereal."""
    found: set[Trait] = set()
    if Allergen.MILK in traits or Origin.DAIRY in traits:
        found |= {Origin.LACTOSE, Allergen.MILK}
    if Origin.GLUTEN in traits:
        found |= {Allergen.WHEAT, Allergen.RYE, Allergen.BARLEY}
    return frozenset(found)


def _held(words: tuple[str, ...] | list[str]) -> frozenset[Trait]:
    return frozenset[Trait]().union(*(said.holds for word in words if (said := named(word))))
