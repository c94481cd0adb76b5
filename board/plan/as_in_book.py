"""Lengths a plan takes from the cook's book: `takes: as in the book`. Pure: the book is handed in as figures.

A step is looked up by its words and its lane, whatever the dish, else by its kind of work. The plan is read once with
a stand-in, which tells each step's lane, and once more with what was found.
"""

import copy
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any

from board.plan.assume import Filled
from board.plan.durations import Spread, takes_text
from board.plan.known_again import first_word, fold
from board.plan.places import Loc, Places
from board.plan.snag import Snag, Weight
from board.plan_digest import AS_IN_BOOK

STAND_IN = "1 min"


@dataclass(frozen=True, slots=True)
class BookFigure:
    """How long work takes this cook, and from how many evenings that is known."""

    takes: Spread
    evenings: int


@dataclass(frozen=True)
class BookFigures:
    """What the book knows: by a step's words and its lane, and by the first word and the lane; both words folded.
    `digest` names the book's content."""

    steps: Mapping[tuple[str, str], BookFigure] = field(default_factory=dict)
    kinds: Mapping[tuple[str, str], BookFigure] = field(default_factory=dict)
    digest: str = ""

    def of(self, words: str, lane: str) -> tuple[BookFigure, bool] | None:
        """The figure for a step, and whether it is of this very step and not of its kind of work alone."""
        folded = fold(words)
        if (found := self.steps.get((folded, lane))) is not None:
            return found, True
        kind = self.kinds.get((first_word(folded), lane))
        return None if kind is None else (kind, False)


@dataclass(frozen=True, slots=True)
class _Asked:
    """A length to be taken: the step's words, its lane, and whether it thaws."""

    words: str
    lane: str
    thaws: bool


def asked_of_book(raw: Any) -> list[Loc]:
    """Paths of all `takes` that say so."""
    return list(_asked(raw, ()))


def _asked(data: Any, loc: Loc) -> Iterator[Loc]:
    inside = data.items() if isinstance(data, dict) else enumerate(data) if isinstance(data, list) else ()
    for key, value in inside:
        if key == "takes" and isinstance(value, str) and AS_IN_BOOK.fullmatch(value.strip()):
            yield (*loc, key)
        yield from _asked(value, (*loc, key))


def put(raw: dict[str, Any], texts: Mapping[Loc, str]) -> dict[str, Any]:
    """The plan's data with other words at these paths; what was given is left as it is."""
    made = copy.deepcopy(raw)
    for loc, text in texts.items():
        around: Any = made
        for piece in loc[:-1]:
            around = around[piece]
        around[loc[-1]] = text
    return made


def taken_from(
    book: BookFigures | None, locs: list[Loc], filled: Filled, places: Places
) -> tuple[dict[Loc, str], list[str], list[Snag]]:
    """By path the words to read instead, a line for `check` each, and P15 for what the book cannot tell."""
    asked = _work_at(filled)
    texts: dict[Loc, str] = {}
    lines: dict[str, list[str]] = {}
    snags: list[Snag] = []
    for loc in locs:
        work = asked.get(loc[:-1])
        found = book.of(work.words, work.lane) if book is not None and work is not None and not work.thaws else None
        if work is None or found is None:
            message, mend = _why_not(book, work)
            snags.append(Snag("P15", Weight.STOP, message, mend, places.of(loc)))
            continue
        figure, exact = found
        takes = figure.takes
        texts[loc] = takes_text(takes.low, takes.likely, takes.high)
        lines.setdefault(_line(texts[loc], figure.evenings, work, exact=exact), []).append(work.words)
    return texts, [f"{line}: {', '.join(dict.fromkeys(who))}" for line, who in lines.items()], snags


def _work_at(filled: Filled) -> dict[Loc, _Asked]:
    """By the path of a step, a job or another way of doing it."""
    found: dict[Loc, _Asked] = {}
    for task in filled.tasks.values():
        node = task.node
        for number, way in enumerate(task.ways):
            work = _Asked(node.name, way.on.lane or "worktop", task.work is not None and task.work.thaws is not None)
            found[node.loc if number == 0 else (*node.loc, "or", number - 1)] = work
            if number == 1:
                found[(*node.loc, "or")] = work  # a single way may stand there without a list
    return found


def _line(text: str, evenings: int, work: _Asked, *, exact: bool) -> str:
    from_ = f"from {evenings} evening{'s' if evenings != 1 else ''}"
    kind = "" if exact else f", by its kind of work ({work.lane}, {first_word(fold(work.words))})"
    return f"takes {text}, as in the book, {from_}{kind}"


def _why_not(book: BookFigures | None, work: _Asked | None) -> tuple[str, str]:
    mend = "Write a length, for example `takes: 25 min`."
    if work is None:
        return "only how long a step or a job takes can be as in the book", mend
    if work.thaws:
        return "what thaws takes as long as its weight asks, and not as in the book", "Leave `takes` out."
    if book is None:
        return "there is no cook's book yet to take this length from", mend
    kind = first_word(fold(work.words))
    return f"the book knows neither {work.words!r} nor other work of its kind ({work.lane}, {kind})", mend
