"""What goes with the main thing of a dish, by its name: served with it as it is bought, cooked with it, or unknown.
Pure; common practice, no source."""

from dataclasses import dataclass

from board.facts.food import facts, understood
from board.facts.mentions import FORMS
from board.facts.phrases import holds, stems
from board.facts.seasoning import seasons
from board.importing.ways.finding import beside, goes_into_it, named_foods
from board.importing.ways.main_food import NamedFood
from board.importing.ways.pattern import Pattern

# What a roast has of itself.
_OF_ITSELF = frozenset(map(stems, ("crackling", "pork crackling", "skin", "crisp skin", "crispy skin", "juices")))


@dataclass(frozen=True)
class GoingWith:
    """`served`: bought, and set out with it (`parfait with brioche toast`); `into`: goes in at some step; `unknown`:
    the words that no table has, as they stand."""

    served: tuple[NamedFood, ...] = ()
    into: tuple[NamedFood, ...] = ()
    unknown: tuple[str, ...] = ()


def going_with(dish: str, pattern: Pattern, main: NamedFood | None, listed: tuple[str, ...]) -> GoingWith:
    """`main`: its own food; `listed`: the stems of what is among its ingredients anyway."""
    own = {stem for each in pattern.words for stem in stems(each)}
    itself = (
        [stems(each) for each in pattern.words] if pattern.course == "drink" and not pattern.food else []
    )  # an espresso holds no more of it
    named = [each for each in named_foods(dish) if each != main and not holds(listed, stems(each.said))]
    named = [each for each in named if stems(each.said) not in _OF_ITSELF]
    named = [each for each in named if stems(each.said) not in (*itself, stems(dish))]  # meringues are made, not bought
    as_it_is = pattern.bought or pattern.course in ("drink", "cheese")  # what stands beside these is not cooked
    served: list[NamedFood] = []
    into = [each for each in named if not each.made]
    unknown: list[str] = []
    pieces = [
        piece
        for piece in beside(dish)
        if stems(piece) not in _OF_ITSELF and not own.issuperset(stems(piece)) and not _is_in(listed, stems(piece))
    ]
    for piece in pieces:
        known = facts(piece)
        inside = [each for each in named if holds(stems(piece), stems(each.said))]
        if known is None:
            served += [each for each in inside if each.made]
            unknown += [piece] if understood(piece).unknown else []
        elif goes_into_it(piece):
            into += [each for each in inside if each.made]
        elif known.raw_class is None and (known.made or not inside or as_it_is):
            (into if seasons(piece) and not as_it_is else served).append(NamedFood(piece, "other", known.made))
    into += [each for each in named if each.made and not is_shape(each, pattern) and not _is_aside(each, dish)]
    taken = [stems(each.said) for each in served]
    bought_whole = main is not None and main.said == dish
    left = [each for each in into if not bought_whole and not any(holds(words, stems(each.said)) for words in taken)]
    return GoingWith(tuple(served), tuple(dict.fromkeys(left)), tuple(unknown))


def _is_in(listed: tuple[str, ...], words: tuple[str, ...]) -> bool:
    """Whether it is bought for the dish already: a chocolate sauce is made of its chocolate."""
    return holds(listed, words) or (words[-1:] == ("sauce",) and holds(listed, words[:-1]))


def is_shape(food: NamedFood, pattern: Pattern) -> bool:
    """Whether a made food is rather what the dish is: the pasta of a pasta dish, a gratin."""
    own = {stem for each in pattern.words for stem in stems(each)}
    return stems(food.said)[-1] in own | FORMS


def _is_aside(food: NamedFood, dish: str) -> bool:
    return any(holds(stems(piece), stems(food.said)) for piece in beside(dish))
