"""One food on the list: what all dishes need, minus what is in the house, in packs, priced. Pure."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from board.facts.called import as_bought, plain_key, same_food
from board.plan.model.model import Plan
from board.plan.model.shopping import InTheHouse, Pack, Price
from board.plan.resolve.amounts import GRAMS, MILLILITRES, Amount, Measure, measure_for, standard_of, total
from board.plan.resolve.bought import shop_section, written_sections
from board.plan.resolve.going_in import FROM_THE_TAP
from board.plan.resolve.scaling import whole_up
from board.shopping import words
from board.shopping.eggs import bought_as, figures_of
from board.shopping.needs import Need


@dataclass(frozen=True, slots=True)
class Packs:
    """A number of packs, and what is left over, in the part's kind. `label`: the size as written."""

    count: int
    size: float
    left_over: float
    label: str


@dataclass(frozen=True, slots=True)
class Part:
    """One kind of amount of an item. `least`: `need` with counted things whole. `have`: in the house. `short`: what is
    missing; 0: nothing; None: some, without a figure. `cost`: hundredths."""

    need: Amount
    least: Amount
    have: Amount | None
    short: float | None
    packs: Packs | None = None
    cost: int | None = None

    @property
    def bought(self) -> float | None:
        """The amount bought; counted things are whole."""
        if self.packs is not None:
            return self.packs.count * self.packs.size
        if self.short is None or self.need.kind in (GRAMS, MILLILITRES):
            return self.short
        return float(whole_up(self.short))


@dataclass(frozen=True, slots=True)
class Item:
    """One food. `units`: as written for it. `sign`: the currency of its price."""

    key: str
    food: str
    section: str
    needs: tuple[Need, ...]
    parts: tuple[Part, ...]
    units: frozenset[str]
    sign: str = ""
    tap: bool = False
    unlike: tuple[Amount, ...] = ()  # in the house, in units that cannot be compared with the need

    @property
    def is_short(self) -> bool:
        return not self.tap and any(part.short is None or part.short > 0 for part in self.parts)

    @property
    def cost(self) -> int | None:
        """Hundredths; None if no part has a price."""
        costs = [part.cost for part in self.parts if part.cost is not None]
        return sum(costs) if costs else None


def items(plan: Plan, needs: Sequence[Need], house: Sequence[InTheHouse]) -> tuple[Item, ...]:
    """Each needed food once, in order of first appearance. `house`: what is there, pantry files included."""
    by_key: dict[str, list[Need]] = {}
    for need in needs:
        by_key.setdefault(bought_as(need), []).append(need)
    there: dict[str, list[InTheHouse]] = {}
    for each in house:
        there.setdefault(same_food(each.food), []).append(each)
    packs = {same_food(food): pack for food, pack in plan.packs.items()}
    prices = {same_food(food): price for food, price in plan.prices.items()}
    sections = written_sections(plan)
    return tuple(_item(plan, key, found, there.get(key, []), packs, prices, sections) for key, found in by_key.items())


def _item(
    plan: Plan,
    key: str,
    needs: Sequence[Need],
    there: Sequence[InTheHouse],
    packs: Mapping[str, Pack],
    prices: Mapping[str, Price],
    sections: Sequence[str],
) -> Item:
    pack, price = packs.get(key), prices.get(key)
    written = [need.line.measure if need.key == key else "" for need in needs if need.line.low is not None]
    units = {*written, *(h.measure for h in there if h.low is not None)}
    units |= {pack.unit} if pack else set()
    units |= {price.per} if price and price.per not in ("pack", "each") else set()
    standard = standard_of(plan.units)
    measure = measure_for(key, units, standard)
    exact, least = (
        total(
            measure_for(food, units, standard).amount(low, high, unit)
            for low, high, unit, food in figures_of(needs, whole=whole)
        )
        for whole in (False, True)
    )
    have = {a.kind: a for a in total(measure.amount(h.low, h.high, h.measure) for h in there if h.low is not None)}
    enough = any(h.low is None for h in there)
    parts = tuple(_part(a, b, have, enough, measure, pack, price) for a, b in zip(exact, least, strict=True))
    kinds = {part.need.kind for part in parts}
    said = next((need.line for need in needs if need.line.section), needs[0].line)
    return Item(
        key=key,
        food=_name([n.line.food for n in needs if n.key == key]),
        section=shop_section(said, sections),
        needs=tuple(needs),
        parts=parts,
        units=frozenset(written),
        sign=price.sign if price else "",
        tap=key in FROM_THE_TAP,
        unlike=tuple(a for kind, a in have.items() if kind not in kinds and any(p.need.low is not None for p in parts)),
    )


def _name(foods: Sequence[str]) -> str:
    """The name that was used first, in its longest spelling, and what else the plan calls it."""
    groups: dict[str, list[str]] = {}
    for food in foods:
        groups.setdefault(plain_key(food), []).append(as_bought(food))
    names = [max(group, key=len) for group in groups.values()] or [words.EGGS]
    return words.also_called(names[0], names[1:])


def _part(
    exact: Amount,
    least: Amount,
    have: Mapping[str, Amount],
    enough: bool,
    measure: Measure,
    pack: Pack | None,
    price: Price | None,
) -> Part:
    there = have.get(exact.kind)
    if least.high is None:
        return Part(exact, least, there, 0.0 if enough or have else None)
    missing = 0.0 if enough else max(0.0, least.high - (there.low or 0.0 if there else 0.0))
    short = 0.0 if missing < 1e-9 * least.high else missing
    packs = _packs(exact.kind, short, measure, pack)
    part = Part(exact, least, there, short, packs)
    return Part(exact, least, there, short, packs, _cost(part, measure, price))


def _packs(kind: str, short: float, measure: Measure, pack: Pack | None) -> Packs | None:
    """Enough whole packs for what is short; None if the units do not compare."""
    if pack is None or not short:
        return None
    size = measure.amount(pack.amount, pack.amount, pack.unit)
    if size.kind != kind or not size.low:
        return None
    count = whole_up(short / size.low)
    return Packs(count, size.low, max(0.0, count * size.low - short), f"{pack.amount:g} {pack.unit}".strip())


def _cost(part: Part, measure: Measure, price: Price | None) -> int | None:
    """Hundredths for what is bought, halves rounded up; None if the price does not apply."""
    bought = part.bought
    if price is None or bought is None:
        return None
    if not bought:
        return 0
    if price.per == "pack":
        if part.packs is None:
            return None
        return int(part.packs.count / price.amount * price.hundredths + 0.5)
    of_price = measure.amount(price.amount, price.amount, "" if price.per == "each" else price.per)
    if of_price.kind != part.need.kind or not of_price.low:
        return None
    return int(bought / of_price.low * price.hundredths + 0.5)
