"""Each item in words: how much to buy, of what, and notes. For paper and the tick list. Pure."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.facts.called import as_bought
from board.plan.resolve.amounts import EACH, Amount, measure_for, standard_of, total
from board.plan.resolve.scaling import Scaled, scale
from board.sheet.shown import amount_words, by_hand_words, sizes_taken
from board.shopping import words
from board.shopping.days import Bought
from board.shopping.errands import Errand, Provisions
from board.shopping.items import Item, Part
from board.shopping.needs import Need


@dataclass(frozen=True, slots=True)
class Row:
    """One line. `amount` and `food`: words, not yet safe for a terminal; `cost`: "" if none."""

    key: str
    amount: str
    food: str
    notes: tuple[str, ...]
    dishes: tuple[str, ...]
    cost: str


def errand_title(errand: Errand, zone: str) -> str:
    """The day with the trip's times, or that no trip suits."""
    if errand.day is None:
        return words.PROVISIONS_NO_TRIP
    if errand.trip is None:
        return words.provisions_day(errand.day)
    start, end = (at.astimezone(ZoneInfo(zone)) for at in (errand.trip.start, errand.trip.end))
    return words.provisions_trip(errand.day, shared.clock(start), shared.clock(end))


def row_to_buy(bought: Bought, units: str | None) -> Row:
    item = bought.item
    parts = [part for part in item.parts if part.short is None or part.short > 0]
    notes = [note for part in item.parts for note in _notes(part, item, units)]
    notes += [words.unlike_in_the_house(_words(amount, item, units)) for amount in item.unlike]
    notes += _doubts(bought)
    if sum(part.need.low is not None for part in item.parts) > 1:
        notes.append(words.SIDE_BY_SIDE)
    amount = " + ".join(_to_buy(part, item, units) for part in parts)
    cost = shared.money(item.cost, item.sign) if item.cost is not None else ""
    return Row(item.key, amount, _foods(item, units), tuple(notes), _dishes(item), cost)


def row_in_house(item: Item, units: str | None) -> Row:
    amount = " + ".join(_words(part.need, item, units) for part in item.parts)
    note = words.FROM_TAP if item.tap else words.ENOUGH_IN_THE_HOUSE
    return Row(item.key, amount, _foods(item, units), (note,), _dishes(item), "")


def grown_rows(found: Provisions) -> Iterator[tuple[str, tuple[str, ...]]]:
    """Each scaled dish, with its amounts as now measured."""
    for dish in found.grown:
        made = shared.number(dish.written_for * dish.factor)
        title = words.dish_grown(dish.dish, dish.written_for, made, shared.number(dish.factor))
        lines = [_scaled_words(n.scaled, found.units) for n in found.needs if n.for_what == dish.dish]
        yield title, (*lines, *([words.PROVISIONS_TIMES] if dish.times else []))


def made_of(found: Provisions) -> dict[str, tuple[str, ...]]:
    """Each dish and job with all that goes into it, as now measured. Not yet safe to show."""
    about: dict[str, tuple[str, ...]] = {}
    for need in found.needs:
        about[need.for_what] = (*about.get(need.for_what, ()), _scaled_words(need.scaled, found.units))
    return about


def proposed_days(found: Provisions) -> tuple[date, ...]:
    """Days on the list that are no trip of the plan."""
    return tuple(e.day for e in found.errands if e.day is not None and e.trip is None)


def _foods(item: Item, units: str | None) -> str:
    """What to ask for; where the plan says `or`, the first thing and the others, each with its own amount."""
    open_ = [need for need in item.needs if need.line.choices]
    if not open_:
        return item.food
    first, *others = open_[0].line.choices
    told = [as_bought(first.food)]
    for number, other in enumerate(others, start=1):
        alike = (other.low, other.high, other.measure) == (first.low, first.high, first.measure)
        told.append(as_bought(other.food) if alike else _in_all(open_, number, units))
    return words.either(told)


def _in_all(needs: list[Need], number: int, units: str | None) -> str:
    """`4 celery hearts`: one of the things offered, for all dishes together."""
    lines = [scale(need.line.choices[number], need.scaled.factor) for need in needs]
    line = lines[0].line
    measure = measure_for(line.food, {line.measure}, standard_of(units))
    bought = total(measure.amount(*each.to_have, each.line.measure) for each in lines)
    amounts = " + ".join(amount_words(amount, units, {line.measure}) for amount in bought)
    return f"{amounts} {as_bought(line.food)}"


def _words(amount: Amount, item: Item, units: str | None) -> str:
    return amount_words(amount, units, item.units)


def _to_buy(part: Part, item: Item, units: str | None) -> str:
    if part.packs is not None:
        return words.packs_of(part.packs.count, part.packs.label)
    if part.bought is None:
        return part.need.kind
    shown = by_hand_words(part.need.kind, part.bought, units, item.units)[0]
    return words.pieces(shown) if part.need.kind == EACH and len(item.parts) > 1 else shown


def _notes(part: Part, item: Item, units: str | None) -> Iterator[str]:
    need, bought = part.need, part.bought
    if need.high is None or bought is None:
        return
    whole = part.least.high is not None and part.least.high - need.high > 1e-9
    rounded = by_hand_words(need.kind, bought, units, item.units)[1]
    sizes = [words.size_taken(*size) for size in sizes_taken(item.food, need, units, item.units)]
    if part.packs is not None or part.have is not None or whole or need.low != need.high:
        yield words.needed(_words(need, item, units))
    elif rounded:
        yield words.needed(rounded) if sizes else words.exactly(rounded)
    yield from sizes
    if part.have is not None:
        yield words.in_the_house(_words(part.have, item, units))
    if part.packs is not None and part.packs.left_over > 1e-9:
        left = Amount(need.kind, part.packs.left_over, part.packs.left_over)
        yield words.pack_left_over(_words(left, item, units))


def _doubts(bought: Bought) -> Iterator[str]:
    if bought.doubt == "keeps too short":
        yield words.keeps_too_short(bought.keep.days, bought.trip is not None)
    elif bought.doubt == "no trip before":
        yield words.NO_TRIP_BEFORE
    elif bought.doubt == "shop shut":
        yield words.SHOP_SHUT


def _dishes(item: Item) -> tuple[str, ...]:
    return tuple(dict.fromkeys(need.for_what for need in item.needs))


def _scaled_words(scaled: Scaled, units: str | None) -> str:
    """`190 g butter (exactly 187.5 g)`; `3 eggs (for 2.5)`; `1.75 tsp salt (…)`; `5 bulbs (for 4.5) or 3 hearts`."""
    line = scaled.line
    if line.choices:
        return words.either([_scaled_words(scale(each, scaled.factor), units) for each in line.choices])
    if scaled.low is None or scaled.high is None:
        return f"{line.unit} {line.food}".strip()
    measure = measure_for(line.food, {line.measure}, standard_of(units))
    amount, written = measure.amount(scaled.low, scaled.high, line.measure), {line.measure}
    assert amount.low is not None
    assert amount.high is not None
    if scaled.whole is not None:
        low, high = (float(each) for each in scaled.whole)
        exact, shown = (
            amount_words(amount, units, written),
            amount_words(Amount(amount.kind, low, high), units, written),
        )
        text = f"{words.whole_for(f'{shown} {line.food}', exact)}"
    elif amount.low != amount.high:
        text = f"{amount_words(amount, units, written)} {line.food}"
    else:
        shown, exact = by_hand_words(amount.kind, amount.high, units, written)
        sizes = [words.size_taken(*size) for size in sizes_taken(line.food, amount, units, written)]
        exactly = [] if not exact else [words.needed(exact) if sizes else words.exactly(exact)]
        text = f"{shown} {line.food}" + (f" ({', '.join([*exactly, *sizes])})" if exactly or sizes else "")
    return f"{text}; {words.by_hand(scaled.factor, scaled.hand.kind)}" if scaled.hand else text
