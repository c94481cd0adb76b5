"""What a way of cooking is made of: a pattern and its steps, as the tables of `families` write them. Pure.

All figures in the tables are common practice, no source. Handwork is for TABLE_SIZE eaters, amounts are a head.
"""

import re
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from board.plan.phrases.food_safety import FoodClass

TABLE_SIZE = 8  # eaters that the minutes of handwork are for

Place = Literal["worktop", "stovetop", "oven", "fridge", "freezer"]
Minutes = tuple[int, int, int]  # low, likely, high
THE_FOOD = "the food"  # `cooks` follows from the dish's own food


@dataclass(frozen=True, kw_only=True)
class Step:
    """One step. `{it}` in its texts is the dish's food.

    `heat`: the oven's °C; `shelf`: eaters that one oven shelf feeds. `rings`: at most, for a full table. `grows`:
    whether its minutes grow with the eaters. `own`: the dish's food has its own minutes. `moist`: a ring does where
    there is no oven. `uses`: words of the ingredient lines that go in here, `{it}` for the food, `{beside}` for what
    the name gives beside it; `leaves`: what it leaves over, a head.
    """

    name: str
    place: Place = "worktop"
    minutes: Minutes
    grows: bool = False
    own: bool = False
    heat: int = 0
    shelf: int = 8
    rings: int = 1
    moist: bool = False
    tool: str = ""
    attended: str = ""
    after: str = ""
    look: str = ""
    best: str = ""
    keeps: str = ""
    cooks: FoodClass | Literal["the food", ""] = ""
    reheats: bool = False
    until: str = ""
    cools: str = ""
    perishable: bool | None = None
    uses: tuple[str, ...] = ()
    leaves: str = ""
    how: str = ""

    @property
    def by_hand(self) -> bool:
        """Whether it is handwork throughout, on no fire and in no fridge."""
        return self.place == "worktop" and not self.attended


@dataclass(frozen=True, kw_only=True, eq=False)
class Pattern:
    """A way of cooking. `name`: in the host's words; `course`: where such a dish usually stands.

    `words`: names of the dish itself (`gratin`), several words of one in order; `done`: what was done to it
    (`braised`); `alone`: foods that are usually made so when nothing else is said. `of`: kinds of food it is for, by
    `main_food.Kind`; all if empty. `food`: the main ingredient where the dish names none, a head; "": it has none.
    `bought`: it is bought ready, so that the name is the food; `minced`: its meat is.
    `share`: of a main dish's meat or fish.
    `own`: words of a food → minutes of the step with its `own`.
    """

    name: str
    course: str
    words: tuple[str, ...] = ()
    done: tuple[str, ...] = ()
    alone: tuple[str, ...] = ()
    of: frozenset[str] = frozenset()
    food: str = ""
    bought: bool = False
    minced: bool = False
    share: Fraction | None = None
    ingredients: tuple[str, ...] = ()
    steps: tuple[Step, ...]
    own: dict[str, Minutes] | None = None


def listed(text: str) -> tuple[str, ...]:
    """`a, b c, d` as three."""
    return tuple(" ".join(each.split()) for each in text.split(",") if each.strip())


def a_head(text: str) -> tuple[str, ...]:
    """`1/2 eggs, baked through (dairy), to taste salt` as two ingredient lines."""
    return tuple(re.split(r",\s*(?=\d|to taste)", text))


def by_hand(name: str, low: int, likely: int, high: int, **more: object) -> Step:
    """Handwork, which grows with the eaters."""
    return Step(name=name, minutes=(low, likely, high), grows=True, **more)  # type: ignore[arg-type]


def on_ring(name: str, low: int, likely: int, high: int, **more: object) -> Step:
    """On a ring; attended throughout unless it says otherwise."""
    return Step(name=name, place="stovetop", minutes=(low, likely, high), **more)  # type: ignore[arg-type]


def in_oven(heat: int, name: str, low: int, likely: int, high: int, **more: object) -> Step:
    """In the oven, at °C."""
    given = {"attended": LOOK_IN, **more}
    return Step(name=name, place="oven", heat=heat, minutes=(low, likely, high), **given)  # type: ignore[arg-type]


def chilled(name: str, low: int, likely: int, high: int, **more: object) -> Step:
    """In the fridge, by itself."""
    given = {"attended": "2 min at the start", **more}
    return Step(name=name, place="fridge", minutes=(low, likely, high), **given)  # type: ignore[arg-type]


def frozen(name: str, low: int, likely: int, high: int, **more: object) -> Step:
    """In the freezer, by itself."""
    given = {"attended": "2 min at the start", **more}
    return Step(name=name, place="freezer", minutes=(low, likely, high), **given)  # type: ignore[arg-type]


def left(name: str, low: int, likely: int, high: int, **more: object) -> Step:
    """Left to itself at the worktop: rests, proves, cools."""
    given = {"attended": "1 min at the start", **more}
    return Step(name=name, minutes=(low, likely, high), **given)  # type: ignore[arg-type]


LOOK_IN = "2 min at the start, 1 min every 20 min, 2 min at the end"
SIMMERS = "4 min at the start, 1 min every 12 min, 2 min at the end"
ENDS = "2 min at the start, 2 min at the end"


def cooled(what: str, deep: int = 5, days: str = "2 days", **more: object) -> Step:
    """Cooled in ice water, to be kept cold. The dish wants ice among its ingredients."""
    return left(f"cool the {what} in ice water", 40, 50, 60, **{
        "attended": "4 min at the start, 1 min every 20 min", "cools": f"{deep} cm deep, metal, ice bath",
        "keeps": f"{days} in the fridge", "uses": ("ice",),
        "how": "Spread it shallow in metal, set that in ice and water, and stir now and then. Into the fridge once it "
            "is cold.",
        **more,
    })  # fmt: skip


def reheated(what: str, low: int, likely: int, high: int, **more: object) -> Step:
    """Heated again on a ring, to what reheated food needs."""
    return on_ring(f"reheat the {what}", low, likely, high, **{
        "reheats": True, "until": "74 C", "attended": "2 min at the start, 1 min every 8 min, 2 min at the end",
        "best": "15 min", "keeps": "45 min on the stovetop, 1 ring", **more,
    })  # fmt: skip
