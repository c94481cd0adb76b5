"""Figures from the cook's book, where a plan says `as in the book`: how long a step takes, how fast an oven changes.
Pure: the book is passed in.

A step is looked up by its words and lane, whatever the dish; failing that, by its kind of work. An oven is looked up
only by name, because ovens differ. The plan is read twice: with stand-ins, to learn each step's lane, then with the
figures found.
"""

import copy
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any, get_args

from board.base.plain import one_line
from board.base.plan_digest import is_as_in_book
from board.facts.heat import COOLS_FROM, COOLS_MINUTES, COOLS_TO, HEATS_MINUTES, HEATS_TO, ROOM_CELSIUS
from board.plan.phrases.durations import Spread, takes_text
from board.plan.phrases.stations import HeatRate, OvenWay, rate_text
from board.plan.places import Loc, Places
from board.plan.resolve.assume import Filled
from board.plan.resolve.known_again import first_word, name_key
from board.plan.snag import Snag, Weight

OVENS: Loc = ("kitchen", "ovens")
_HEATS = rate_text(HEATS_MINUTES, ROOM_CELSIUS, HEATS_TO)
_COOLS = rate_text(COOLS_MINUTES, COOLS_FROM, COOLS_TO)
_AJAR = rate_text(10, COOLS_FROM, COOLS_TO)  # example only; no rate with the door ajar is ever assumed
_STAND_INS = {"takes": "1 min", "heats": _HEATS, "cools": _COOLS, "cools ajar": _AJAR}
_NAMES_SHOWN, _NAME_CHARACTERS = 4, 30


@dataclass(frozen=True, slots=True)
class BookFigure:
    """How long work takes this cook, and the marks of the evenings it was learned from."""

    takes: Spread
    marks: frozenset[str]


@dataclass(frozen=True, slots=True)
class OvenFigure:
    """How fast an oven heats or cools, and the marks of the evenings it was learned from."""

    rate: HeatRate
    marks: frozenset[str]


@dataclass(frozen=True)
class BookFigures:
    """What the book knows: steps by words and lane, kinds by first word and lane, ovens by name and way. Words and
    names are folded. `digest` identifies the content."""

    steps: Mapping[tuple[str, str], BookFigure] = field(default_factory=dict)
    kinds: Mapping[tuple[str, str], BookFigure] = field(default_factory=dict)
    ovens: Mapping[tuple[str, str], OvenFigure] = field(default_factory=dict)
    digest: str = ""

    def of(self, words: str, lane: str) -> tuple[BookFigure, bool] | None:
        """The figure for a step, and whether it is for this very step rather than its kind of work."""
        folded = name_key(words)
        if (found := self.steps.get((folded, lane))) is not None:
            return found, True
        kind = self.kinds.get((first_word(folded), lane))
        return None if kind is None else (kind, False)

    def of_oven(self, name: str, way: str) -> OvenFigure | None:
        """The figure for an oven and way; None if unknown."""
        return self.ovens.get((name_key(name), way))


@dataclass(frozen=True, slots=True)
class Taken:
    """What a plan takes from the book. `texts`: words to read instead, by path. `lines`: for `check`. `snags`: plan 15
    for what the book does not know. `marks`: evenings behind each figure, by its path in the plan. `of_kind`: unsure 2
    for each duration known only by kind of work."""

    texts: dict[Loc, str]
    lines: tuple[str, ...]
    snags: list[Snag]
    marks: dict[Loc, frozenset[str]]
    of_kind: tuple[Snag, ...]


@dataclass(frozen=True, slots=True)
class _Asked:
    """A duration to look up: the step's words, lane, whether it thaws, and its path in the plan."""

    words: str
    lane: str
    thaws: bool
    loc: Loc


@dataclass(frozen=True, slots=True)
class _Answer:
    """A figure from the book: its path, its words, what `check` says about whom, and its evenings."""

    loc: Loc
    text: str
    line: str
    whose: str
    marks: frozenset[str]
    kind: str = ""  # kind of work, if nothing more exact is known


WIDEST = 10  # a kind whose longest is over this many times its shortest says nothing; ours
LENGTH = "Write a length, for example `takes: 25 min`."
_NotThere = tuple[str, str]  # why, and how to fix it


def asked_of_book(raw: Any) -> list[Loc]:
    """Paths of every `takes` and every oven rate that is `as in the book`."""
    return list(_asked(raw, ()))


def _asked(data: Any, loc: Loc) -> Iterator[Loc]:
    inside = data.items() if isinstance(data, dict) else enumerate(data) if isinstance(data, list) else ()
    for key, value in inside:
        if is_as_in_book(value) and (key == "takes" or _is_rate((*loc, key))):
            yield (*loc, key)
        yield from _asked(value, (*loc, key))


def _is_rate(loc: Loc) -> bool:
    return len(loc) == len(OVENS) + 2 and loc[: len(OVENS)] == OVENS and loc[-1] in get_args(OvenWay)


def stand_ins(locs: Iterable[Loc]) -> dict[Loc, str]:
    """What to read at these paths until the book has been asked."""
    return {loc: _STAND_INS[str(loc[-1])] for loc in locs}


def put(raw: dict[str, Any], texts: Mapping[Loc, str]) -> dict[str, Any]:
    """A copy of the plan's data with new words at these paths."""
    made = copy.deepcopy(raw)
    for loc, text in texts.items():
        around: Any = made
        for piece in loc[:-1]:
            around = around[piece]
        around[loc[-1]] = text
    return made


def taken_from(book: BookFigures | None, locs: list[Loc], filled: Filled, places: Places) -> Taken:
    """Looks up each of these figures."""
    asked = _work_at(filled)
    texts: dict[Loc, str] = {}
    marks: dict[Loc, frozenset[str]] = {}
    lines: dict[str, list[str]] = {}
    snags: list[Snag] = []
    of_kind: list[Snag] = []
    for loc in locs:
        answer = _oven_answer(book, loc) if _is_rate(loc) else _work_answer(book, asked.get(loc[:-1]))
        if not isinstance(answer, _Answer):
            snags.append(Snag("plan 15", Weight.STOP, *answer, places.of(loc)))
            continue
        if answer.kind:
            message = (
                f"{answer.whose}: the book gives {answer.text}, {_from(answer.marks)}, and knows only its kind of work "
                f"({answer.kind})"
            )
            of_kind.append(
                Snag("unsure 2", Weight.MIND, message, "Write a length if that is not right.", places.of(loc))
            )
        texts[loc] = answer.text
        marks[answer.loc] = answer.marks
        lines.setdefault(answer.line, []).append(answer.whose)
    told = (f"{line}: {', '.join(dict.fromkeys(who))}" for line, who in lines.items())
    return Taken(texts, tuple(told), snags, marks, tuple(of_kind))


def _work_at(filled: Filled) -> dict[Loc, _Asked]:
    """By the path of a step, a job or an alternative way."""
    found: dict[Loc, _Asked] = {}
    for task in filled.tasks.values():
        node = task.node
        thaws = task.work is not None and task.work.thaws is not None
        for number, way in enumerate(task.ways):
            loc = node.loc if number == 0 else (*node.loc, "or", number - 1)
            found[loc] = _Asked(node.name, way.where.lane or "worktop", thaws, loc)
            if number == 1:
                found[(*node.loc, "or")] = found[loc]  # a single way may be written without a list
    return found


def _work_answer(book: BookFigures | None, work: _Asked | None) -> _Answer | _NotThere:
    found = book.of(work.words, work.lane) if book is not None and work is not None and not work.thaws else None
    if work is None or found is None:
        return _why_no_length(book, work)
    figure, exact = found
    text = takes_text(figure.takes.low, figure.takes.likely, figure.takes.high)
    kind = "" if exact else f"{work.lane}, {first_word(name_key(work.words))}"
    if kind and figure.takes.high > WIDEST * figure.takes.low:
        message = f"the book knows no more than the kind of work of {work.words!r} ({kind}), and that took {text}"
        return message, LENGTH
    line = f"takes {text}, as in the book, {_from(figure.marks)}{f', by its kind of work ({kind})' if kind else ''}"
    return _Answer((*work.loc, "takes"), text, line, work.words, figure.marks, kind)


def _why_no_length(book: BookFigures | None, work: _Asked | None) -> _NotThere:
    mend = LENGTH
    if work is None:
        return "only how long a step or a job takes, and an oven's rates, can be as in the book", mend
    if work.thaws:
        return "what thaws takes as long as its weight asks, and not as in the book", "Leave `takes` out."
    if book is None:
        return "there is no cook's book yet to take this length from", mend
    kind = first_word(name_key(work.words))
    return f"the book knows neither {work.words!r} nor other work of its kind ({work.lane}, {kind})", mend


def _oven_answer(book: BookFigures | None, loc: Loc) -> _Answer | _NotThere:
    name, way = str(loc[-2]), str(loc[-1])
    found = book.of_oven(name, way) if book is not None else None
    if found is None:
        return _why_no_rate(book, name, way), _rate_mend(way)
    text = found.rate.text
    return _Answer(loc, text, f"{way} {text}, as in the book, {_from(found.marks)}", name, found.marks)


def _rate_mend(way: str) -> str:
    without = "nothing is then planned with the door ajar" if way == "cools ajar" else "the usual rate is then assumed"
    return f"Write the rate, for example `{way}: {_STAND_INS[way]}`, or leave `{way}` out: {without}."


def _why_no_rate(book: BookFigures | None, name: str, way: str) -> str:
    """Lists the ovens the book knows; none is used, because another oven says nothing about this one."""
    if book is None:
        return "there is no cook's book yet to take this rate from"
    ways = [each for oven, each in book.ovens if oven == name_key(name)]
    others = sorted({oven for oven, _ in book.ovens})
    about = f"the book does not know {_HOW_FAST[way].format(_quoted(name))}"
    if ways:
        return f"{about}; of this oven it knows `{'` and `'.join(ways)}`"
    if not others:
        return f"{about}; it knows no oven yet"
    more = f" and {len(others) - _NAMES_SHOWN} more" if len(others) > _NAMES_SHOWN else ""
    ovens = "the oven it knows is" if len(others) == 1 else "the ovens it knows are"
    return f"{about}; {ovens} {', '.join(map(_quoted, others[:_NAMES_SHOWN]))}{more}"


_HOW_FAST = {
    "heats": "how fast {} heats",
    "cools": "how fast {} cools",
    "cools ajar": "how fast {} cools with the door ajar",
}


def _quoted(name: str) -> str:
    return repr(one_line(name, _NAME_CHARACTERS))


def _from(marks: frozenset[str]) -> str:
    return f"from {len(marks)} evening{'s' if len(marks) != 1 else ''}"
