"""A dish's words → the ways of cooking that fit, and a dish of a plan written by one. Pure; common practice, no source.

What a pattern fills in stands under the step's `guessed`.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace

from board.facts.food import facts
from board.facts.phrases import folded, holds, stems, words_of
from board.facts.seasoning import seasons
from board.facts.standing import is_by_hand
from board.importing.ways import words
from board.importing.ways.families import bought
from board.importing.ways.families.methods import METHODS
from board.importing.ways.finding import (
    BETWEEN,
    COURSES,
    PATTERNS,
    as_bought,
    found,
    is_cooked_for,
    named_foods,
    only_bought,
    side_by_side,
    the_thing,
    unsaid,
)
from board.importing.ways.going_with import GoingWith, going_with, is_shape
from board.importing.ways.main_food import (
    NamedFood,
    beside_line,
    hottest,
    is_meatless,
    line_for,
    main_line,
    minutes_of,
    without_meat,
)
from board.importing.ways.pattern import TABLE_SIZE, THE_FOOD, Minutes, Pattern, Step, by_hand
from board.plan.edit.yaml_text import scalar
from board.plan.phrases.durations import short
from board.plan.resolve.assume import LONG_BY_HAND_MINUTES

MOST_SHELVES = 2  # of an oven that nobody has described, as the plan assumes
LONGEST_FOOD = 40
VEGETABLES = "200 g vegetables (veg)"  # a head, where the name only says that there is no meat in it
BESIDE, SERVED = "{beside}", "{served}"
PLATE = by_hand("plate", 4, 5, 7)
_FILLINGS = frozenset(stems("cream custard milk mascarpone curd ganache"))  # they make a cake spoil
_BY_NAME = {pattern.name: pattern for pattern in PATTERNS}


@dataclass(frozen=True)
class Setting:
    """How many eat, and the cooking equipment. `tools`: how many of each; a step names those that the kitchen has."""

    eaters: int
    ovens: int
    rings: int
    tools: Mapping[str, int] = field(default_factory=dict)


def _with_a_drink(dish: str) -> tuple[str, ...]:
    """`Coffee and petits fours` as two; one where the drink is one thing (`gin and tonic`)."""
    drink, *others = (piece.strip() for piece in BETWEEN.split(dish))
    kinds = [next((pattern.course for pattern in found(piece)), "") for piece in (drink, *others)]
    return (drink, *others) if kinds[0] == "drink" and not {"drink", ""}.intersection(kinds[1:]) else (dish,)


ONE = Setting(1, 1, 1)


@dataclass(frozen=True)
class Way:
    """A way of cooking. `name` in the host's words ("braised"); `course`: where such a dish usually stands in a meal
    ("nibbles", "starter", "main", "side", "cheese", "sweet", "drink")."""

    name: str
    course: str


def ways_for(dish: str) -> tuple[Way, ...]:
    """The ways that fit a dish's words, the most telling first; none where it says nothing of how it is made."""
    patterns = found(dish)
    name = as_bought(dish)
    usual = found(name)[:1] if name is not None else ()
    return tuple(Way(pattern.name, usual[0].course if usual else pattern.course) for pattern in patterns)


def apart(dish: str) -> tuple[str, ...]:
    """The dish, and each thing beside it that is cooked on its own: `roast chicken with mashed potatoes and capers` →
    `roast chicken with capers`, `mashed potatoes`. Whole where what goes with it belongs into it."""
    if len(served := _with_a_drink(dish)) > 1:
        return served
    thing, said, after = dish.partition(" with ")
    main, *others = side_by_side(thing)
    if (main, *others) != (thing,):
        joined = " and " if " with " in main else " with "
        return (*apart(f"{main}{joined}{after}" if said else main), *others)
    pattern = next(iter(found(thing)), None)
    if not said or pattern is None or pattern is not next(iter(found(dish)), None):
        return (dish,)
    if any(BESIDE in step.uses for step in pattern.steps):
        return (dish,)
    pieces = [piece.strip() for piece in BETWEEN.split(after) if piece.strip()]
    own = [piece for piece in pieces if is_cooked_for(piece)]
    rest = [piece for piece in pieces if piece not in own]
    return (f"{thing} with {' and '.join(rest)}" if rest else thing, *own) if own else (dish,)


def served_with(dish: str, way: Way) -> tuple[str, ...]:
    """What its name says is served with it, bought."""
    return tuple(food.said for food in _going(dish, way).served)


def left_out(dish: str, way: Way) -> tuple[str, ...]:
    """What its name says goes with it, and no table of foods has: it is in no ingredient and no step."""
    return _going(dish, way).unknown


def _going(dish: str, way: Way) -> GoingWith:
    return _Writer(dish, _BY_NAME[way.name], ONE).beside if way.name in _BY_NAME else GoingWith()


def taken_for(dish: str, way: Way) -> str | None:
    """The way's name, where words of the dish's name say that it may be another dish; else None."""
    pattern = _BY_NAME.get(way.name)
    if pattern is None or pattern not in found(dish)[:1] or pattern in bought.FAMILY or pattern.bought:
        return None
    return way.name if unsaid(dish) else None


def says_bought(piece: str) -> bool:
    """Whether the words say that something is bought, and nothing else: `from the bakery`."""
    return only_bought(piece)


def all_ways() -> tuple[Way, ...]:
    """Every way, for a host to choose from, in the order of a meal."""
    ordered = sorted(PATTERNS, key=lambda pattern: COURSES.index(pattern.course))
    return tuple(Way(pattern.name, pattern.course) for pattern in ordered)


def dish_lines(dish: str, way: Way | None, at: Setting) -> list[str]:
    """The dish as YAML lines of a plan, without indent, from `- dish:` on. No way: a bare dish that says so.

    Where the kitchen lacks what the way needs, the next that fits the dish's words is taken, or the dish is left bare;
    a comment tells.
    """
    if way is None:
        return _bare(dish, at, words.WAY_UNKNOWN)
    asked = _BY_NAME[way.name]
    pattern = next((each for each in (asked, *found(dish)) if _fits(each, at)), None)
    if pattern is None:
        return _bare(dish, at, words.way_needs(asked.name, _lacks(asked, at)))
    doubt = words.way_taken_for(way.name) if taken_for(dish, way) is not None else ""
    remark = doubt if pattern is asked else words.way_instead(pattern.name, asked.name, _lacks(asked, at))
    return list(_Writer(dish, pattern, at).lines(remark))


def _bare(dish: str, at: Setting, why: str) -> list[str]:
    return [
        f"- dish: {scalar(dish)}",
        f"  for: {at.eaters}",
        "  steps:",
        f"    - step: {scalar(words.way_make(dish))}",
        f"      takes: 30 min  # {why}",
        "      guessed: [takes]",
    ]


def _fits(pattern: Pattern, at: Setting) -> bool:
    return not _lacks(pattern, at)


def _lacks(pattern: Pattern, at: Setting) -> str:
    """What the kitchen lacks for it; "" if nothing."""
    if any(_place(step, at) == "oven" for step in pattern.steps) and not at.ovens:
        return words.AN_OVEN
    return words.A_RING if any(_place(step, at) == "stovetop" for step in pattern.steps) and not at.rings else ""


def _place(step: Step, at: Setting) -> str:
    return "stovetop" if step.moist and not at.ovens else step.place


class _Writer:
    """One dish, written by one pattern for one kitchen."""

    def __init__(self, dish: str, pattern: Pattern, at: Setting) -> None:
        self.name, self.pattern, self.at = dish, pattern, at
        name = as_bought(dish) if pattern in bought.FAMILY else None
        self.dish = dish = dish if name is None else name
        foods = named_foods(dish)
        self.known: NamedFood | None = None
        if pattern.food:
            self.known = self._as_it_is() or self._suiting(foods) or self._bought()
            self.known = self._minced(self.known)
        self.plain = is_meatless(dish) or (self.known is not None and self.known.kind == "other")  # no meat in it
        self.food = pattern.food
        if self.plain and pattern.food and without_meat(pattern.food) is None:
            self.food = VEGETABLES
        self.it = self.known.said if self.known is not None else _plain(self.food)
        self.minutes = minutes_of(self.known, dish, pattern)
        self.main = self._main()
        tables = map(without_meat, pattern.ingredients) if self.plain else pattern.ingredients
        self.others = [line_for(line, at.eaters) for line in tables if line is not None]
        if self.known is not None:
            self.others = [line for line in self.others if not holds(stems(self.it), stems(_plain(line)))]
        listed = stems(" . ".join([self.main, *self.others]))
        self.beside = going_with(dish, pattern, self.known, listed)
        parts = [facts(food.said) for food in (*self.beside.into, *self.beside.served)]
        spoils = any(part is not None and part.perishable and not seasons(part.name) for part in parts)
        self.filled = pattern.course == "sweet" and (spoils or bool(_FILLINGS.intersection(stems(dish))))
        self.plated = bool(self.beside.served) and not pattern.steps[-1].by_hand

    def _suiting(self, foods: tuple[NamedFood, ...]) -> NamedFood | None:
        """What this way is done to: the first food of its kind; else the first of the thing itself, whatever it is
        (`mushroom stew`)."""
        suiting = next((each for each in foods if self._suits(each)), None)
        if suiting is not None or self.pattern.bought:
            return suiting
        own = named_foods(the_thing(self.dish))
        plain = [each for each in own if not (each.made or each.is_drink)]
        sauces = [each for each in own if each.made and not is_shape(each, self.pattern)]
        return next(iter((*(each for each in plain if not seasons(each.said)), *plain, *sauces)), None)

    def _as_it_is(self) -> NamedFood | None:
        """The dish itself, where its name says that it is bought."""
        if self.pattern not in bought.FAMILY or self.name == self.dish:
            return None
        return NamedFood(self.dish.partition(" with ")[0], "other", made=True)

    def _bought(self) -> NamedFood | None:
        """The dish itself, where it is bought as it is and the table of foods has it."""
        name = folded(self.dish)
        known = facts(name) if self.pattern.bought and len(name) < LONGEST_FOOD else None
        return NamedFood(name, known.raw_class or "other", known.made) if known is not None else None

    def _minced(self, food: NamedFood | None) -> NamedFood | None:
        if food is None or not self.pattern.minced or food.kind not in ("poultry", "whole cut"):
            return food
        return NamedFood(f"minced {food.said}", "poultry" if food.kind == "poultry" else "ground meat")

    def _suits(self, food: NamedFood) -> bool:
        """Whether it can be what this way is done to."""
        bought = self.pattern.bought or self.pattern.course == "drink"
        if not bought and (food.made or food.is_drink or seasons(food.said)):
            return False
        return not self.pattern.of or food.kind in self.pattern.of

    def _main(self) -> str:
        if not self.pattern.food:
            return ""
        if self.known is None:
            return line_for(self.food, self.at.eaters)
        if not self._suits(self.known) and (self.known.made or seasons(self.known.said)):  # by the spoon
            return beside_line(self.known, self.at.eaters)
        return main_line(self.known, self.pattern, self.at.eaters)

    def lines(self, remark: str) -> Iterator[str]:
        yield f"- dish: {scalar(self.name)}" + (f"  # {remark}" if remark else "")
        yield f"  for: {self.at.eaters}"
        yield "  ingredients:"
        if self.main:
            yield f"    - {scalar(self.main)}" + ("" if self.known is not None else f"  # {words.WAY_FOOD_UNKNOWN}")
        yield from (f"    - {scalar(line)}" for line in self.others)
        for food in self.beside.served:
            yield f"    - {scalar(beside_line(food, self.at.eaters))}  # {words.WAY_BOUGHT_BESIDE}"
        for food in self.beside.into:
            yield f"    - {scalar(beside_line(food, self.at.eaters))}  # {self._beside_said()}"
        yield "  steps:"
        for step in self.steps():
            yield from self._step(step)

    def steps(self) -> Iterator[Step]:
        """The pattern's; what is served with the dish is in the last, or in one more where that is on the fire."""
        *first, last = self.pattern.steps
        foods = [food.said for food in self.beside.served]
        yield from first
        if self.plated:
            yield last
            thing = the_thing(self.dish)
            said = words.set_out(foods) if any(food in thing for food in foods) else words.plate_with(thing, foods)
            last = replace(PLATE, name=said, best=last.best, keeps=last.keeps)
        elif foods:
            last = replace(last, name=words.serve_with(last.name, foods), how=last.how or METHODS.get(last.name, ""))
        yield replace(last, uses=(*last.uses, SERVED)) if foods else last

    def _beside_said(self) -> str:
        placed = any(BESIDE in step.uses for step in self.pattern.steps)
        return words.WAY_FOOD_FROM_NAME if placed else words.WAY_FOOD_BESIDE

    def _step(self, step: Step) -> Iterator[str]:
        yield f"    - step: {scalar(self._said(step.name))}"
        guessed = []
        for key, value, is_guess, remark in self._keys(step):
            if not value:
                continue
            yield f"      {key}: {value}" + (f"  # {remark}" if remark else "")
            if is_guess:
                guessed.append(key)
        yield f"      guessed: [{', '.join(guessed)}]"

    def _keys(self, step: Step) -> Iterator[tuple[str, str, bool, str]]:
        """Each key with its value ("": absent), whether it stands under `guessed`, and a remark."""
        place, remark = self._where(step)
        after = [self._said(name.strip()) for name in step.after.split(",")] if step.after else []
        yield "where", place, True, remark
        yield "after", scalar(after[0]) if len(after) == 1 else _flow(after), False, ""
        yield "takes", self._takes(step), True, ""
        yield "attended", step.attended or self._hands(step), True, ""
        cooks = self._cooks(step)
        yield "cooks", cooks or "", True, ""
        yield "reheats", "yes" if step.reheats else "", True, ""
        yield "until", step.until, True, ""
        yield "cools", step.cools, True, ""
        spoils = self.filled and step.keeps.endswith("in the room")
        yield "perishable", "no" if step.perishable is False and not spoils else "", True, ""
        yield "look for", scalar(self._said(step.look)) if step.look else "", False, ""
        yield "best within", step.best, True, ""
        yield "keeps", self._keeps(step), True, ""
        yield "uses", _flow(self._uses(step)), False, ""
        yield "leaves", scalar(line_for(step.leaves, self.at.eaters)) if step.leaves else "", False, ""
        how = self._said(step.how or METHODS.get(step.name, ""))
        yield "how", scalar(how) if how else "", False, ""

    def _said(self, text: str) -> str:
        return text.replace("{it}", self.it)

    def _hands(self, step: Step) -> str:
        """Said of long work at which hands stay, as cooking in batches, where its words do not tell."""
        long = self._minutes(step)[1] >= LONG_BY_HAND_MINUTES and not is_by_hand(step.name)
        return "all" if long and _place(step, self.at) != "oven" else ""

    def _minutes(self, step: Step) -> list[int]:
        minutes: Minutes = self.minutes if step.own and self.minutes is not None else step.minutes
        grown = max(1.0, self.at.eaters / TABLE_SIZE) if step.grows else 1.0
        return [max(1, round(each * grown)) for each in minutes]

    def _takes(self, step: Step) -> str:
        figures = self._minutes(step)
        said = [short(each) for each in dict.fromkeys(figures)]
        if all(each < 60 for each in figures):
            said[:-1] = [each.removesuffix(" min") for each in said[:-1]]
        return " to ".join(said)

    def _where(self, step: Step) -> tuple[str, str]:
        place = _place(step, self.at)
        tools = [step.tool] if step.tool in self.at.tools else []
        if place == "oven":
            wanted = -(-self.at.eaters // step.shelf)
            shelves = min(wanted, MOST_SHELVES)
            setting = f"oven at {step.heat} C ({step.heat - 10} to {step.heat + 10} C)"
            room = f"{shelves} shel{'f' if shelves == 1 else 'ves'}"
            return ", ".join([setting, room, *tools]), words.way_shelves(wanted) if wanted > shelves else ""
        if place == "stovetop":
            rings = min(self.at.rings, step.rings if self.at.eaters > TABLE_SIZE else 1)
            return ", ".join(["stovetop", f"{rings} ring{'s' if rings > 1 else ''}", *tools]), ""
        if place == "worktop" and not (tools or step.attended):
            return "", ""
        return ", ".join([place, *tools]), ""

    def _keeps(self, step: Step) -> str:
        if self.filled and step.perishable is False and step.keeps.endswith("in the room"):
            return "1 day in the fridge" if "day" in step.keeps else "1 h in the room"
        if "stovetop" in step.keeps and not self.at.rings:
            return step.keeps.partition(" on the stovetop")[0] + " hot"
        return step.keeps

    def _cooks(self, step: Step) -> str | None:
        """From the dish's own food; left out where the name does not tell it, so that the program asks."""
        own = self.known.kind if self.known is not None else ""
        if step.cooks == THE_FOOD:
            return hottest(own)
        if self.plain and step.cooks and step.cooks != "eggs":
            return "eggs" if any(holds(stems(line), ("egg",)) for line in self.others) else None
        return hottest(step.cooks, own) if step.cooks else None

    def _uses(self, step: Step) -> list[str]:
        found = []
        for wanted in step.uses:
            if wanted == "{it}":
                found += [_without_section(self.main)]
            elif wanted == BESIDE:
                found += [_without_section(beside_line(food, self.at.eaters)) for food in self.beside.into]
            elif wanted == SERVED:
                found += [_without_section(beside_line(food, self.at.eaters)) for food in self.beside.served]
            else:
                found += [_without_section(line) for line in self.others if holds(stems(line), stems(wanted))]
        return [line for line in dict.fromkeys(found) if not line.startswith("to taste")]


def _plain(line: str) -> str:
    """The food of a line of the tables: `stewing meat` of `240 g stewing meat (butcher)`."""
    bare = _without_section(line).partition(",")[0]
    kept = [word for word in bare.split() if not word[0].isdigit() and word not in _MEASURES]
    return " ".join(kept)


_MEASURES = frozenset(
    words_of(
        "g kg ml l tbsp tsp bunch bunches clove cloves stick sticks sheet sheets sprig sprigs bottle bottles to taste"
    )
)


def _without_section(line: str) -> str:
    return line.rpartition(" (")[0] if line.endswith(")") else line


def _flow(values: list[str]) -> str:
    return f"[{', '.join(scalar(each, in_flow=True) for each in values)}]" if values else ""
