"""What goes in at a step, out of what its dish or job has: matched by food, scaled as the dish is, added up. Pure."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from board.facts.called import EGG_PARTS, same_food
from board.facts.food import understood
from board.facts.phrases import holds, stems
from board.facts.units import Standard
from board.plan.model.courses import Dish
from board.plan.model.model import Plan
from board.plan.model.work import Job, Work
from board.plan.phrases.quantities import Ingredient
from board.plan.places import Loc
from board.plan.resolve.amounts import EACH, Amount, Measure, measure_for, total
from board.plan.resolve.scaling import Scaled, factor_of, scale
from board.plan.resolve.spoils import dish_at

FROM_THE_TAP = ("water", "tap water", "cold water", "boiling water", "warm water")

Placed = tuple[Loc, Ingredient]  # where a line stands, counted from its dish or job


def used(whole: Dish | Job) -> list[Placed]:
    """Every line of `uses` in a dish or job, in order."""
    if isinstance(whole, Job):
        return [(("uses", n), line) for n, line in enumerate(whole.uses)]
    return [(("steps", s, "uses", n), line) for s, step in enumerate(whole.steps) for n, line in enumerate(step.uses)]


def listed(whole: Dish | Job) -> list[Ingredient]:
    """What is written down for a dish or job to have."""
    return whole.supplies if isinstance(whole, Job) else whole.ingredients


def foods_of(whole: Dish | Job) -> list[Placed]:
    """All that is in a dish or that a job takes: what is written down for it, then what only its steps use."""
    key = "supplies" if isinstance(whole, Job) else "ingredients"
    own: list[Placed] = [((key, n), line) for n, line in enumerate(listed(whole))]
    return own + list(unlisted(whole))


def all_lines(whole: Dish | Job) -> list[Placed]:
    """The same with every line of `uses` that says what its label says."""
    labelled = [(loc, line) for loc, line in used(whole) if line.contains or line.may_contain]
    found = foods_of(whole)
    return found + [each for each in labelled if each not in found]


def unlisted(whole: Dish | Job) -> Iterator[Placed]:
    """Lines of `uses` that none of the dish's or job's own accounts for. Water from the tap is in every kitchen."""
    for loc, line in used(whole):
        if same_food(line.food) not in FROM_THE_TAP and not matching(line, listed(whole)):
            yield loc, line


def matching(line: Ingredient, own: Sequence[Ingredient]) -> list[Ingredient]:
    """The lines that a use is out of: of the same food; else of one that goes by its words, as plain flour does by
    flour; else of one that the table of foods knows as the same, as melted butter is butter; else eggs, for their
    yolks and whites."""
    every = [each for other in own for each in other.choices or (other,)]
    wanted = [same_food(each.food) for each in line.choices or (line,)]
    words = [stems(each) for each in wanted]
    known = {name for each in wanted if (name := _known(each))}
    yolk = any(key in EGG_PARTS for key in wanted)
    return (
        [each for each in every if same_food(each.food) in wanted]
        or [each for each in every if any(holds(stems(each.food), said) for said in words)]
        or [each for each in every if _known(each.food) in known]
        or [each for each in every if yolk and same_food(each.food) == "egg"]
    )


def _known(food: str) -> str:
    """The one food that the table knows these words as; empty if they are several, or none."""
    found = understood(food)
    return found.known[0].name if len(found.known) == 1 and not found.unknown else ""


@dataclass(frozen=True, slots=True)
class Reckoned:
    """What steps use together of one food. `over`: more than there is; `unlike`: in units that are not compared; else
    as much as there is, or less. `uses`, `has`: in the kinds compared, as written where they are not."""

    verdict: Literal["fits", "over", "unlike"]
    loc: Loc
    food: str
    uses: tuple[Amount, ...]
    has: tuple[Amount, ...]
    units: frozenset[str]


def reckoned(whole: Dish | Job, standard: Standard) -> list[Reckoned]:
    """One for each food with a figure in `uses`, at the last line that uses it."""
    own = listed(whole)
    groups: dict[tuple[int, ...], list[Placed]] = {}
    for loc, line in used(whole):
        found = matching(line, own)
        if found and line.low is not None:
            groups.setdefault(tuple(sorted({id(each) for each in found})), []).append((loc, line))
    by_id = {id(each): each for line in own for each in line.choices or (line,)}
    return [_reckoned(lines, [by_id[key] for key in keys], standard) for keys, lines in groups.items()]


def _reckoned(lines: Sequence[Placed], own: Sequence[Ingredient], standard: Standard) -> Reckoned:
    loc, last = lines[-1]
    said = [line for _, line in lines]
    food = own[0].food if len(own) == 1 else last.food
    units = frozenset(each.measure for each in (*said, *own) if each.low is not None)
    for measure in _measures(food, units, standard):
        uses, has = _sum(said, measure, own), total(measure.amount(e.low, e.high, e.measure) for e in own)
        there = {each.kind: each.high for each in has}
        if any(each.unit == "to taste" for each in own):
            return Reckoned("fits", loc, food, uses, has, units)
        if all(each.kind in there for each in uses):
            pairs = [(each.high or 0.0, there[each.kind]) for each in uses]
            if any(high is None for _, high in pairs):
                continue
            over = any(much > (high or 0.0) * (1 + 1e-3) for much, high in pairs)
            return Reckoned("over" if over else "fits", loc, food, uses, has, units)
    return Reckoned("unlike", loc, food, _plainly(said), _plainly(own), units)


def _plainly(lines: Sequence[Ingredient]) -> tuple[Amount, ...]:
    return total(Amount(each.measure or EACH, each.low, each.high) for each in lines)


def _measures(food: str, units: frozenset[str], standard: Standard) -> Iterator[Measure]:
    """Ways to bring units together: as the shopping list does; by weight, where tables have it."""
    yield measure_for(food, units, standard)
    yield Measure(food, standard, by_weight=True, by_piece=False)


def _sum(lines: Sequence[Ingredient], measure: Measure, own: Sequence[Ingredient]) -> tuple[Amount, ...]:
    """Added up; of yolks and whites out of eggs, as many eggs as the more numerous of the two asks for."""
    parts: dict[str, float] = {}
    found = []
    out_of_eggs = all(same_food(each.food) == "egg" for each in own)
    for each in lines:
        part = EGG_PARTS.get(same_food(each.food)) if out_of_eggs and not each.measure else None
        if part is None:
            found.append(measure.amount(each.low, each.high, each.measure))
        else:
            parts[part] = parts.get(part, 0.0) + (each.high or 0.0)
    if parts:
        most = max(parts.values())
        found.append(measure.amount(most, most, ""))
    return total(found)


def goes_in(plan: Plan, loc: Loc, work: Work) -> Iterator[Scaled]:
    """What goes in at the work written at `loc`, at the factor of its dish. Counted things are whole only where all
    that the dish has goes in: of a part, each step would round up for itself."""
    dish = dish_at(plan, loc)
    factor = 1.0 if dish is None else factor_of(plan, plan.courses[int(loc[1])], dish)
    own = dish.ingredients if dish is not None else work.supplies if isinstance(work, Job) else []
    for line in work.uses:
        each = scale(line, factor)
        alike = [other for other in matching(line, own) if other.measure == line.measure]
        all_of_it = any((line.low, line.high) == (other.low, other.high) for other in alike)
        yield each if all_of_it else replace(each, whole=None)
