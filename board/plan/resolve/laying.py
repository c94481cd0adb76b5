"""The tableware of each course: what, how many, and what must be washed in between. Pure.

A course's pieces are dirty once it is cleared; pieces laid for the whole meal stay.
"""

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass

from board.facts.tableware import WHOLE_MEAL, at_hand, counted, names_the_main, piece_key, usual_cover, wash_minutes
from board.plan.model.courses import Course, Dish
from board.plan.model.model import Plan
from board.plan.phrases.tableware import Pieces
from board.plan.places import Loc
from board.plan.resolve.served import count_of, served


@dataclass(frozen=True, slots=True)
class Laid:
    """How many of one piece for one course; `course` counts from 0, None is the whole meal.

    `each`: for one guest; 0 if shared at the table. `total`: for everyone who eats it.
    """

    course: int | None
    piece: str
    each: int
    total: int
    assumed: bool
    loc: Loc


@dataclass(frozen=True, slots=True)
class Wash:
    """Pieces used by one course that a later one needs clean. Courses count from 0."""

    piece: str
    count: int
    after: int
    before: int


@dataclass(frozen=True, slots=True)
class Kind:
    """One kind of piece through the meal. `uses`: how many for which course; `house`: how many there are, if known.

    `borrow`: how many are missing for a single course; `washes` assumes that these are borrowed.
    """

    piece: str
    uses: tuple[tuple[int | None, int], ...]
    house: int | None
    borrow: int
    washes: tuple[Wash, ...]
    assumed: bool

    @property
    def total(self) -> int:
        return sum(count for _, count in self.uses)


@dataclass(frozen=True, slots=True)
class WashUp:
    """Pieces washed together: from one course, for a later one. `minutes`: by hand."""

    after: int
    before: int
    washes: tuple[Wash, ...]

    @property
    def minutes(self) -> int:
        return wash_minutes(sum(wash.count for wash in self.washes))

    @property
    def name(self) -> str:
        """`wash 4 dessert spoons and 8 soup bowls`; for more than `MOST_NAMED` kinds, only the count."""
        if len(self.washes) > MOST_NAMED:
            return f"wash {sum(wash.count for wash in self.washes)} pieces of the table"
        return f"wash {' and '.join(counted(wash.piece, wash.count) for wash in self.washes)}"


MOST_NAMED = 2  # kinds in the name of a wash-up


def laid(plan: Plan) -> tuple[Laid, ...]:
    """All pieces laid or shared: those for the whole meal first, then course by course."""
    return tuple(_laid(plan))


def eaters(plan: Plan, course: Course) -> int:
    """How many guests eat any dish of the course."""
    return count_of(plan, {guest for guests in served(plan, course) for guest in guests})


def is_shared(course: Course) -> bool:
    """Whether it comes as dishes for all, or is eaten standing: no plate is filled for each guest."""
    return course.standing or bool(course.served_in) or any(dish.served_in for dish in course.dishes)


def kinds(plan: Plan) -> tuple[Kind, ...]:
    """Every kind laid, with its uses and shortages, in the order first laid."""
    there = house(plan)
    uses: dict[str, Counter[int | None]] = {}
    told: dict[str, bool] = {}
    for each in laid(plan):
        uses.setdefault(each.piece, Counter())[each.course] += each.total
        told[each.piece] = told.get(each.piece, False) or not each.assumed
    return tuple(_kind(piece, used, there.get(piece), not told[piece]) for piece, used in uses.items())


def house(plan: Plan) -> dict[str, int]:
    """Counts of what the house has, by `piece_key`."""
    found: Counter[str] = Counter()
    for name, count in (plan.table.pieces if plan.table else {}).items():
        found[piece_key(name)] += count
    return dict(found)


def wash_ups(plan: Plan) -> tuple[WashUp, ...]:
    """What must be washed, grouped by source and target course, in the plan's order."""
    found: dict[tuple[int, int], list[Wash]] = {}
    for kind in kinds(plan):
        for wash in kind.washes:
            found.setdefault((wash.before, wash.after), []).append(wash)
    return tuple(WashUp(after, before, tuple(washes)) for (before, after), washes in sorted(found.items()))


def _laid(plan: Plan) -> Iterator[Laid]:
    there = frozenset(house(plan))
    seated = [c for c, course in enumerate(plan.courses) if not course.standing]
    whole = plan.table.laid_with if plan.table else None
    if whole is not None:
        yield from (_each(None, piece, plan.guest_count, ("table", "laid with")) for piece in whole)
    elif seated:
        yield from _assumed(plan, None, WHOLE_MEAL, there)
    for c, course in enumerate(plan.courses):
        said = list(_said(plan, c, course))
        if course.laid_with is None and all(dish.laid_with is None for dish in course.dishes) and c in seated:
            main_follows = any(names_the_main(later.course) for later in plan.courses[c + 1 :])
            cover = usual_cover(course.course, course.dishes[0].dish, main_follows=main_follows)
            yield from _assumed(plan, c, cover, there)
        yield from said


def _said(plan: Plan, c: int, course: Course) -> Iterator[Laid]:
    loc: Loc = ("courses", c)
    parts: list[tuple[Course | Dish, Loc, int]] = [(course, loc, eaters(plan, course))]
    for d, (dish, guests) in enumerate(zip(course.dishes, served(plan, course), strict=True)):
        parts.append((dish, (*loc, "dishes", d), count_of(plan, guests)))
    for part, at, people in parts:
        yield from (_each(c, piece, people, (*at, "laid with")) for piece in part.laid_with or [])
        for piece in part.served_in or []:
            yield Laid(c, piece.piece, 0, piece.count, False, (*at, "served in"))


def _each(course: int | None, pieces: Pieces, guests: int, loc: Loc) -> Laid:
    return Laid(course, pieces.piece, pieces.count, pieces.count * guests, False, loc)


def _assumed(plan: Plan, c: int | None, pieces: tuple[str, ...], there: frozenset[str]) -> Iterator[Laid]:
    guests = plan.guest_count if c is None else eaters(plan, plan.courses[c])
    loc: Loc = ("table",) if c is None else ("courses", c)
    for piece in pieces:
        yield Laid(c, at_hand(piece, there), 1, guests, True, loc)


def _kind(piece: str, used: Counter[int | None], there: int | None, assumed: bool) -> Kind:
    uses = tuple(used.items())
    if there is None:
        return Kind(piece, uses, None, 0, (), assumed)
    stays = used[None]
    most = stays + max((count for course, count in uses if course is not None), default=0)
    stock = max(there, most)
    return Kind(piece, uses, there, stock - there, tuple(_washes(piece, uses, stock - stays)), assumed)


def _washes(piece: str, uses: tuple[tuple[int | None, int], ...], clean: int) -> Iterator[Wash]:
    """First used, first washed: that leaves the most time."""
    dirty: list[tuple[int, int]] = []  # course, count
    for course, count in uses:
        if course is None or not count:
            continue
        while clean < count:
            after, there = dirty.pop(0)
            washed = min(there, count - clean)
            yield Wash(piece, washed, after, course)
            clean += washed
            if washed < there:
                dirty.insert(0, (after, there - washed))
        clean -= count
        dirty.append((course, count))
