"""`as in the book`, written out: the cook's book's figures in place of the words. Pure: a plan's text and the book in,
the text with figures out.

A step is looked up by its words and its lane, whatever the dish, else by its kind of work; an oven by its name alone,
for no oven tells of another. The evenings behind a figure go into the plan's `history`, so that they are not learned
from again.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from zoneinfo import ZoneInfo

from board.base.plain import one_line
from board.learning.book import RATES, Book, Learned, kinds_in, ovens_in, steps_in
from board.learning.changes import history_of, oven_label
from board.plan.edit.edits import AddHistory
from board.plan.edit.save import CannotEdit, Change, Put, edit
from board.plan.load import PlanFile, read_plan
from board.plan.model.work import Step
from board.plan.phrases.durations import takes_text
from board.plan.phrases.stations import rate_text
from board.plan.places import Loc, Places, read_yaml
from board.plan.resolve.assume import Filled, Task
from board.plan.resolve.from_book import EXAMPLES, asked_of_book, is_rate, stand_ins
from board.plan.resolve.known_again import first_word, name_key
from board.plan.resolve.links import labels
from board.plan.snag import Snag, Weight

WIDEST = 10  # a kind of work whose longest is over so many times its shortest tells nothing; ours
_NAMES_SHOWN, _NAME_CHARACTERS = 4, 30


@dataclass(frozen=True)
class Written:
    """A plan's text with figures of the book in it. `told`: each figure in words. `missing`: where the book has none,
    and the plan still waits for one."""

    text: str
    told: tuple[str, ...]
    missing: tuple[Snag, ...]


@dataclass(frozen=True, slots=True)
class _Figure:
    """What is written at a path: `name` as lessons know it, `kind` where no more than the kind of work is known."""

    loc: Loc
    name: str
    text: str
    marks: frozenset[str]
    kind: str = ""
    guessed: Change | None = None


@dataclass(frozen=True, slots=True)
class _Asked:
    """A length to be written: the work, its name, the lane it is done in, and whether it is another way of it."""

    task: Task
    name: str
    lane: str
    other_way: bool


@dataclass(frozen=True)
class _Known:
    """The book's figures by what they are of; words and names folded."""

    steps: Mapping[tuple[str, str], Learned] = field(default_factory=dict)
    kinds: Mapping[tuple[str, str], Learned] = field(default_factory=dict)
    ovens: Mapping[tuple[str, str], Learned] = field(default_factory=dict)


def written_from_book(text: str, name: str, book: Book, now: datetime) -> Written | list[Snag]:
    """The plan with the book's figures in place of `as in the book`; or all that is wrong with it otherwise.

    `name`: of its file; `now`: aware, for the day in its history. Raises nothing.
    """
    raw, places, snags = read_yaml(text, name)
    asked = asked_of_book(raw) if not snags else []
    ready = edit(text, [Put(loc, words) for loc, words in stand_ins(asked).items()]) if asked else text
    file = read_plan(ready if isinstance(ready, str) else text, name)
    if isinstance(file, list):
        return file
    found, missing = _looked_up(book, asked, file, places)
    changes: list[Change] = [Put(each.loc, each.text) for each in found]
    changes += [each.guessed for each in found if each.guessed is not None]
    date = now.astimezone(ZoneInfo(file.plan.zone)).date().isoformat()
    history = AddHistory(_lines(book, found, date)).changes(file, raw)
    assert not isinstance(history, CannotEdit)  # a line can always be added
    made = edit(text, [*changes, *history]) if found else text
    if isinstance(made, CannotEdit):
        return [Snag("plan 15", Weight.STOP, made.reason, "Write the figure by hand.", places.at(1, 1))]
    return Written(made, tuple(_told(each) for each in found), tuple(missing))


def _lines(book: Book, found: list[_Figure], date: str) -> tuple[str, ...]:
    """A line of history for all figures that are known from the same evenings."""
    by_evenings: dict[frozenset[str], list[str]] = {}
    for each in found:
        by_evenings.setdefault(each.marks, []).append(each.name)
    return tuple(
        line
        for marks, names in by_evenings.items()
        for line in history_of(date, names, sorted((book.evenings[mark][0], mark) for mark in marks))
    )


def _told(each: _Figure) -> str:
    return f"{each.name}: {each.text}, {_from(each.marks)}{f', by its kind of work ({each.kind})' if each.kind else ''}"


def _looked_up(book: Book, asked: list[Loc], file: PlanFile, places: Places) -> tuple[list[_Figure], list[Snag]]:
    steps, kinds, ovens = ({(e.name, e.where): e for e in of(book)} for of in (steps_in, kinds_in, ovens_in))
    known, work = _Known(steps, kinds, ovens), _work_at(file.filled)
    found, missing = [], []
    for loc in asked:
        answer = _rate(known, loc) if is_rate(loc) else _length(known, loc, work.get(loc[:-1]))
        if isinstance(answer, _Figure):
            found.append(answer)
        else:
            missing.append(Snag("plan 15", Weight.STOP, *answer, places.of(loc)))
    return found, missing


def _work_at(filled: Filled) -> dict[Loc, _Asked]:
    """By the path of a step, a job or another way of doing it."""
    names = labels(task.node for task in filled.tasks.values())
    found: dict[Loc, _Asked] = {}
    for task in filled.tasks.values():
        node = task.node
        for number, way in enumerate(task.ways):
            asked = _Asked(task, names[node.id], way.where.lane or "worktop", number > 0)
            found[node.loc if number == 0 else (*node.loc, "or", number - 1)] = asked
            if number == 1:
                found[(*node.loc, "or")] = asked  # a single way may stand there without a list
    return found


_Missing = tuple[str, str]  # why, and how to mend it


def _length(known: _Known, loc: Loc, asked: _Asked | None) -> _Figure | _Missing:
    mend = f"Write a length, for example `takes: {EXAMPLES['takes']}`."
    if asked is None:
        return "only how long a step or a job takes, and an oven's rates, can be as in the book", mend
    work, words = asked.task.work, asked.task.node.name
    if work is not None and work.thaws is not None:
        return "what thaws takes as long as its weight asks, and not as in the book", "Leave `takes` out."
    verb = first_word(name_key(words))
    own, kind = known.steps.get((name_key(words), asked.lane)), known.kinds.get((verb, asked.lane))
    learned = own or kind
    if learned is None:
        return f"the book knows neither {words!r} nor other work of its kind ({asked.lane}, {verb})", mend
    lasts = learned.lasts
    text = takes_text(lasts.low, lasts.likely, lasts.high)
    if own is not None:
        return _Figure(loc, asked.name, text, learned.marks)
    if lasts.high > WIDEST * lasts.low:
        why = f"the book knows no more than the kind of work of {words!r} ({asked.lane}, {verb}), and that took {text}"
        return why, mend
    guessed = None
    if isinstance(work, Step) and not asked.other_way:  # `check` asks about it until it is confirmed
        guessed = Put((*loc[:-1], "guessed"), [*work.guessed, "takes"])
    return _Figure(loc, asked.name, text, learned.marks, f"{asked.lane}, {verb}", guessed)


def _rate(known: _Known, loc: Loc) -> _Figure | _Missing:
    name, way = str(loc[-2]), str(loc[-1])
    learned = known.ovens.get((name_key(name), way))
    if learned is None:
        without = "nothing is then planned with the door ajar" if way == "cools ajar" else "the usual rate is assumed"
        mend = f"Write the rate, for example `{way}: {EXAMPLES[way]}`, or leave `{way}` out: {without}."
        return _why_no_rate(known, name, way), mend
    about = next(each for each in RATES if each == way)
    rate = RATES[about]
    return _Figure(loc, oven_label(name, about), rate_text(learned.lasts.likely, rate.start, rate.end), learned.marks)


def _why_no_rate(known: _Known, name: str, way: str) -> str:
    """Names the ovens the book knows and takes none of them for this one: another oven tells nothing of it."""
    ways = [each for oven, each in known.ovens if oven == name_key(name)]
    others = sorted({oven for oven, _ in known.ovens})
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
