"""The cook's book: how long work took this cook, over all plans, and how fast the ovens are. Pure; minutes.

The book holds only what was seen, by evening, and nothing computed from it: so no evening counts twice, and evenings
may be entered in any order. A step is known by its words and lane, an oven by its name.
"""

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from typing import TypeVar

from board.learning.changes import FEW, known_to
from board.learning.figures import median
from board.learning.learn import Estimate, estimate, prior
from board.learning.ovens import DEFAULTS, Rate, Way, oven_prior, share_of_turn, way_of
from board.plan.load import PlanFile
from board.plan.resolve.known_again import first_word, name_key
from board.review.kinds import Kind
from board.review.observe import PastEvening
from board.sheet.run_sheet import Lasts

Seen = tuple[str, float]  # an evening's mark, minutes
Work = tuple[str, str]  # a step's words, casefolded, and its lane
Turn = tuple[str, Way]
T = TypeVar("T")

# The temperatures between which the book counts an oven's minutes.
RATES: Mapping[Way, Rate] = {**DEFAULTS, "cools ajar": DEFAULTS["cools"]}


@dataclass(frozen=True)
class Book:
    """`evenings`: by mark, its date and its plan's name; `steps` and `ovens`: minutes seen, by evening."""

    evenings: Mapping[str, tuple[str, str]] = field(default_factory=dict)
    steps: Mapping[Work, tuple[Seen, ...]] = field(default_factory=dict)
    ovens: Mapping[Turn, tuple[Seen, ...]] = field(default_factory=dict)


@dataclass(frozen=True)
class Added:
    """The book with evenings added; how many told something new, how many nothing new, how many were rehearsals."""

    book: Book
    fresh: int
    known: int
    rehearsals: int


@dataclass(frozen=True, slots=True)
class Learned:
    """One figure of the book: of a step (`where`: its lane) or of an oven (`where`: its way, between the temperatures
    of that rate). `marks`: the evenings it comes from."""

    name: str
    where: str
    lasts: Lasts
    estimate: Estimate
    marks: frozenset[str]


def into_book(book: Book, file: PlanFile, evenings: Iterable[PastEvening]) -> Added:
    """The book with what these evenings tell of this plan's steps and ovens. Each evening enters a step or an oven
    once; rehearsals and minutes set aside are left out. Raises nothing."""
    works, rates = known_to(file)
    turns = {(name_key(oven), way) for oven, way in rates}
    every = {evening.mark: evening for evening in evenings}
    entered, steps, ovens = dict(book.evenings), dict(book.steps), dict(book.ovens)
    lived = sorted((e for e in every.values() if not e.rehearsal), key=lambda e: (e.date, e.mark))
    fresh = 0
    for evening in lived:
        seen_steps: dict[Work, list[float]] = defaultdict(list)
        seen_ovens: dict[Turn, list[float]] = defaultdict(list)
        for step in evening.steps:
            if step.aside is None and step.key in works:
                seen_steps[step.key.words, step.key.lane].append(step.minutes)
        for turn in evening.turns:
            about = name_key(turn.oven), way_of(turn.before, turn.after, ajar=turn.ajar)
            minutes = turn.minutes * share_of_turn(RATES[about[1]], turn)
            if turn.aside is None and about in turns and minutes > 0:
                seen_ovens[about].append(minutes)
        new = _entered(steps, seen_steps, evening.mark) | _entered(ovens, seen_ovens, evening.mark)
        if new:
            entered[evening.mark] = evening.date, evening.plan
            fresh += 1
    return Added(Book(entered, steps, ovens), fresh, len(lived) - fresh, len(every) - len(lived))


def _entered(there: dict[T, tuple[Seen, ...]], seen: Mapping[T, list[float]], mark: str) -> bool:
    """Enters what the book lacks from this evening; returns whether there was any."""
    new = False
    for about, minutes in seen.items():
        known = there.get(about, ())
        if all(each != mark for each, _ in known):
            there[about] = tuple(sorted((*known, *((mark, round(each, 1)) for each in minutes))))
            new = True
    return new


def steps_in(book: Book) -> list[Learned]:
    """A figure for each step, by lane and words."""
    found = sorted(book.steps.items(), key=lambda each: (each[0][1], each[0][0]))
    return [_learned(words, lane, seen) for (words, lane), seen in found]


def kinds_in(book: Book, least_steps: int = 1) -> list[Learned]:
    """A figure for each kind of work with at least that many steps, by lane and first word."""
    return [
        _learned(kind.verb, kind.lane, [each for seen in alike for each in seen])
        for kind, alike in sorted(_by_kind(book).items())
        if len(alike) >= least_steps
    ]


def ovens_in(book: Book) -> list[Learned]:
    """One figure for each oven and way, in minutes between the temperatures of `RATES`, as in a plan.

    The default rate counts as one evening, to damp a single odd turn. From `FEW` evenings on, the median of what was
    seen replaces it, so an unusual oven is shown as it is.
    """
    found = []
    for (oven, way), seen in sorted(book.ovens.items()):
        rate, marks = RATES[way], _marks(seen)
        each = [minutes for _, minutes in seen]
        before = rate if len(marks) < FEW else Rate(median(each), rate.start, rate.end)
        learned = estimate(oven_prior(before, 0), each)
        minutes = max(1, round(learned.middle))
        lasts = Lasts(minutes, minutes, minutes)
        found.append(Learned(oven, way, lasts, Estimate(learned.belief, len(marks)), marks))
    return found


def _by_kind(book: Book) -> dict[Kind, list[tuple[Seen, ...]]]:
    """What was seen of each kind of work, step by step; a step without a first word has no kind."""
    found: dict[Kind, list[tuple[Seen, ...]]] = defaultdict(list)
    for (words, lane), seen in sorted(book.steps.items()):
        if verb := first_word(words):
            found[Kind(lane, verb)].append(seen)
    return found


def _learned(name: str, where: str, seen: Iterable[Seen]) -> Learned:
    """The median of what was seen serves as the plan; a single figure becomes three from `FEW` evenings on."""
    pairs = sorted(seen)
    minutes, marks = [each for _, each in pairs], _marks(pairs)
    middle = max(1, round(median(minutes)))
    found = Estimate(estimate(prior(Lasts(middle, middle, middle)), minutes).belief, len(marks))
    lasts = found.lasts
    if found.evenings < FEW:
        lasts = Lasts(lasts.likely, lasts.likely, lasts.likely)
    return Learned(name, where, lasts, found, marks)


def _marks(seen: Iterable[Seen]) -> frozenset[str]:
    return frozenset(mark for mark, _ in seen)
