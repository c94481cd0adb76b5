"""What evenings taught → changes to the plan: what it says now, what it would say, and why. Pure."""

import re
from collections.abc import Iterable, Mapping, Sequence, Set
from dataclasses import dataclass, field, replace
from datetime import timedelta
from typing import Literal

import msgspec

from board.learning.learn import SAID_NOTHING, Estimate, learn, planned_range
from board.learning.moments import Shift, learn_moments
from board.learning.notes import Note, notes_for
from board.learning.ovens import DEFAULTS, Rate, Way, learn_ovens, way_of
from board.odds.result import WITHIN_MINUTES
from board.plan.edit.edit import Edit
from board.plan.edit.edit_lessons import SetOvenTime, SetTakes
from board.plan.load import PlanFile
from board.plan.phrases.durations import takes_text
from board.plan.phrases.stations import rate_text
from board.plan.places import Loc
from board.plan.resolve.known_again import name_key
from board.plan.resolve.links import eaten_minutes, is_written, labels
from board.review.came import GUESTS
from board.review.kinds import Key, key_of, key_of_moment, key_of_sitting, key_of_slot, moment_label, sitting_label
from board.review.observe import Observed, OvenTurn, PastEvening
from board.sheet.run_sheet import CourseSlot, Lasts, RunSheet, Slot
from board.sheet.sittings import sitting_wait

# How much is enough to offer a change: ours.
FEW = 3  # evenings after which a plan's single figure becomes three
LEAST_MINUTES, LEAST_SHARE, LEAST_WIDTH = 1, 0.05, 1 / 3  # a smaller change is not offered
Word = Literal["takes", "eaten in"]
About = Key | tuple[str, Way]
_MARK = re.compile(r"\[([0-9a-f]{8})\]")


@dataclass(frozen=True)
class Lesson:
    """A change to one figure of the plan. `before`, `after`: its text; `said`: whether the host wrote it, or it is
    assumed.

    `about`: the step, with `lasts` as the plan would read it; the oven, whose turns then take `share` times as long; or
    when the guests come or a course is wanted, with `later`.
    """

    name: str
    before: str
    after: str
    said: bool
    estimate: Estimate
    edit: Edit
    about: About
    lasts: Lasts | None = None
    share: float = 1.0
    told: tuple[float, float] | None = None  # minutes, the plan's own range for four evenings in five
    once: bool = False  # seen on one evening and on none before: to be chosen by its number only
    moved: int = 0  # minutes its likely length becomes longer or shorter, or its moment later or sooner
    later: Mapping[str, int] = field(default_factory=dict)  # of a moment: minutes, by the names of all it moves


@dataclass(frozen=True)
class Lessons:
    """All lessons, in the plan's order. `fresh`: evenings not learned from before; `known`: how many were;
    `rehearsals`: how many rehearsal logs were left out; `aside`: by evening's date, what was set aside; `strange`: how
    many steps of these evenings the plan lacks; `notes`: of fresh evenings; `touched`: whether any of those has a step
    of the plan; `only_said`: whether one has a step of it whose times were only said; `came`: by course, on how many of
    its fresh evenings it was out within 5 min of its time, and of how many; `decided`: what steps ask, with how often
    the answer was yes, and how often there was one."""

    lessons: tuple[Lesson, ...]
    fresh: tuple[PastEvening, ...]
    known: int
    rehearsals: int
    aside: tuple[tuple[str, Observed | OvenTurn], ...]
    strange: int
    notes: tuple[Note, ...] = ()
    touched: bool = True
    only_said: bool = False
    came: Mapping[str, tuple[int, int]] = field(default_factory=dict)
    decided: Mapping[str, tuple[int, int]] = field(default_factory=dict)

    def first(self) -> tuple[Lesson, ...]:
        """All lessons, the one that moves most minutes first; what was seen once last."""
        return tuple(sorted(self.lessons, key=lambda lesson: (lesson.once, -lesson.moved)))


@dataclass(frozen=True, slots=True)
class _Figure:
    """A length in the plan, where it stands, whether the host wrote it, and under which word."""

    name: str
    loc: Loc
    lasts: Lasts
    said: bool
    word: Word = "takes"


def lessons_for(file: PlanFile, evenings: Iterable[PastEvening]) -> Lessons:
    """What these evenings teach about this plan. An evening given twice counts once; a rehearsal, not at all."""
    every = {evening.mark: evening for evening in sorted(evenings, key=lambda e: (e.date, e.mark))}
    lived = [evening for evening in every.values() if not evening.rehearsal]
    figures, sittings, rates = _figures(file), _sittings(file), _rates(file)
    history = file.plan.history
    known_ovens = {key: marks_of(history, oven_label(*key)) for key in rates}
    ovens = learn_ovens(rates, lived, known_ovens)
    found = _lengths(file, figures, lived)
    # Sittings lean on one another only, not on the cook's work.
    found += _lengths(file, sittings, [replace(evening, steps=evening.sits) for evening in lived])
    found += [_oven(file, key, rates[key], ovens[key], once=not known_ovens[key]) for key in rates if key in ovens]
    known_moments = _moments_known(file)
    shifts = learn_moments(file.plan, lived, known_moments)
    found += [_moment(shift, once=not known_moments[shift.moment.name]) for shift in shifts]
    through = marks_of(history, "")
    fresh = tuple(evening for evening in lived if evening.mark not in through)
    return Lessons(
        tuple(lesson for lesson in found if lesson is not None),
        fresh=fresh,
        known=len(lived) - len(fresh),
        rehearsals=len(every) - len(lived),
        aside=tuple(_aside(file, {*figures, *sittings}, fresh)),
        notes=notes_for(file, fresh),
        touched=any(step.key in figures for evening in fresh for step in evening.steps),
        only_said=any(key in figures for evening in fresh for key in evening.said),
        came=_came(file, fresh),
        decided=_decided({*figures}, fresh),
        strange=len({step.key for evening in fresh for step in evening.steps} - set(figures)),
    )


def _decided(steps: Set[Key], fresh: Sequence[PastEvening]) -> dict[str, tuple[int, int]]:
    """What steps of the plan ask: how often the answer was yes, and how often there was one."""
    found: dict[str, list[bool]] = {}
    for key, question, yes in (each for evening in fresh for each in evening.decided):
        if key in steps:
            found.setdefault(question, []).append(yes)
    return {question: (sum(answers), len(answers)) for question, answers in found.items()}


def known_to(file: PlanFile) -> tuple[frozenset[Key], frozenset[tuple[str, Way]]]:
    """The steps, and the ovens' ways, that evenings can tell about in this plan."""
    return frozenset(_figures(file)), frozenset(_rates(file))


def oven_label(oven: str, way: Way) -> str:
    return f"{oven} {way}"


ALL = "all lessons"


def history_lines(date: str, taken: Sequence[Lesson], lessons: Lessons, notes: Sequence[Note] = ()) -> tuple[str, ...]:
    """Lines to add to the plan's history: the day, the lessons taken, and the evenings by date and mark.

    If every lesson and note was taken, changes too small to offer count as learned too.
    """
    rest: list[Lesson | Note] = [lesson for lesson in lessons.lessons if lesson not in taken]
    rest += [note for note in lessons.notes if note not in notes]
    evenings = [(evening.date, evening.mark) for evening in lessons.fresh]
    return history_of(date, [lesson.name for lesson in taken] if rest else None, evenings)


def history_of(date: str, names: Sequence[str] | None, evenings: Sequence[tuple[str, str]]) -> tuple[str, ...]:
    """Lines for a plan's history: the day, the figures learned (None: all), and the evenings by date and mark."""
    said = [ALL] if names is None else [f"'{name}'" for name in names]
    when = [f"{day} [{mark}]" for day, mark in evenings]
    return tuple(
        f"{date}: {', '.join(what)}; from {', '.join(those)}" for what in _by(8, said) for those in _by(40, when)
    )


def marks_of(history: Iterable[str], name: str) -> frozenset[str]:
    """Marks of the logs this figure was learned from, including logs from which everything was learned."""
    return frozenset(
        mark
        for line in history
        if f": {ALL};" in line or (name and f"'{name}'" in line)
        for mark in _MARK.findall(line)
    )


def taught(sheet: RunSheet, taken: Sequence[Lesson]) -> RunSheet:
    """The same timetable, with the lengths that were learned."""
    lasts = {lesson.about: lesson.lasts for lesson in taken if lesson.lasts is not None}
    shares = {lesson.about: lesson.share for lesson in taken if lesson.lasts is None}
    sits = {course.name: lasts.get(key_of_sitting(course.name)) for course in sheet.courses}
    slots = [_taught(slot, lasts, shares) for slot in sheet.slots]
    for course in sheet.courses:
        if (learned := sits[course.name]) is not None:
            slots = [_sat_longer(slot, course, learned.likely) for slot in slots]
    courses = tuple(msgspec.structs.replace(c, eaten=sits[c.name] or c.eaten) for c in sheet.courses)
    later = {name: minutes for lesson in taken for name, minutes in lesson.later.items()}
    if later:
        slots = [_later(slot, later.get(GUESTS, 0)) if slot.kind == "arrive" else slot for slot in slots]
        courses = tuple(
            msgspec.structs.replace(c, wanted=c.wanted + timedelta(minutes=later.get(name_key(c.name), 0)))
            for c in courses
        )
    return msgspec.structs.replace(sheet, slots=tuple(slots), courses=courses)


def _later(slot: Slot, minutes: int) -> Slot:
    by = timedelta(minutes=minutes)
    return msgspec.structs.replace(slot, start=slot.start + by, end=slot.end + by)


def _came(file: PlanFile, evenings: Sequence[PastEvening]) -> dict[str, tuple[int, int]]:
    late = {course.course: list[int]() for course in file.plan.courses}
    for evening in evenings:
        if name_key(evening.plan) == name_key(file.plan.event):
            for name, minutes in evening.late:
                if name in late:
                    late[name].append(minutes)
    return {name: (sum(m <= WITHIN_MINUTES for m in each), len(each)) for name, each in late.items() if each}


def _by(count: int, items: list[str]) -> list[list[str]]:
    return [items[at : at + count] for at in range(0, len(items), count)]


def _figures(file: PlanFile) -> dict[Key, _Figure]:
    """Lengths by key. A key with two lengths is left out, since an evening could be about either; so is thawing, whose
    length follows from weight, and what is no line of the plan."""
    found: dict[Key, _Figure] = {}
    twice: set[Key] = set()
    names = labels(task.node for task in file.filled.tasks.values())
    for task in file.filled.tasks.values():
        node, work = task.node, task.work
        if work is None or work.thaws is not None or not is_written(node):
            continue
        for number, way in enumerate(task.ways):
            own = number > 0 and work.or_[number - 1].takes is not None
            loc: Loc = (*node.loc, "or", number - 1) if own else node.loc
            said = own or work.takes is not None
            figure = _Figure(names[node.id], loc, Lasts(way.takes.low, way.takes.likely, way.takes.high), said)
            key = key_of(node.dish, node.name, way.where.lane or "worktop")
            if found.setdefault(key, figure) != figure:
                twice.add(key)
    return {key: figure for key, figure in found.items() if key not in twice and figure.lasts.likely > 0}


def _rates(file: PlanFile) -> dict[tuple[str, Way], Rate]:
    found: dict[tuple[str, Way], Rate] = {}
    for name, oven in file.plan.kitchen.ovens.items():
        for way, rate in oven.rates.items():
            if rate is not None:
                found[name, way] = Rate(rate.minutes, rate.start, rate.end)
            elif way in DEFAULTS:
                found[name, way] = DEFAULTS[way]
    return found


def _sittings(file: PlanFile) -> dict[Key, _Figure]:
    """How long guests sit over each course, by key; courses eaten standing are left out, as nobody can tell."""
    found: dict[Key, _Figure] = {}
    for number, course in enumerate(file.plan.courses):
        if not course.standing:
            said, likely = course.eaten_in, eaten_minutes(course)
            lasts = Lasts(said.low, likely, said.high) if said is not None else Lasts(likely, likely, likely)
            name, loc = sitting_label(course.course), ("courses", number)
            found[key_of_sitting(course.course)] = _Figure(name, loc, lasts, said is not None, "eaten in")
    return found


def _lengths(file: PlanFile, figures: dict[Key, _Figure], evenings: Sequence[PastEvening]) -> list[Lesson | None]:
    known = {key: marks_of(file.plan.history, figure.name) for key, figure in figures.items()}
    learned = learn({key: figure.lasts for key, figure in figures.items()}, evenings, known)
    return [_step(figures[key], key, learned[key], once=not known[key]) for key in figures if key in learned]


def _step(figure: _Figure, key: Key, learned: Estimate, *, once: bool) -> Lesson | None:
    """`once`: no evening is in the plan's figure yet."""
    lasts, now = learned.lasts, figure.lasts
    if now.low == now.high and learned.evenings < FEW:
        lasts = Lasts(lasts.likely, lasts.likely, lasts.likely)
    if not _matters(now, lasts, learned):
        return None
    edit = SetTakes(figure.loc, lasts.low, lasts.likely, lasts.high, figure.word)
    before, after = (takes_text(each.low, each.likely, each.high) for each in (now, lasts))
    told = planned_range(now)
    first = once and learned.evenings == 1
    moved = abs(lasts.likely - now.likely)
    return Lesson(
        figure.name, before, after, figure.said, learned, edit, key, lasts, told=told, once=first, moved=moved
    )


def _matters(now: Lasts, then: Lasts, learned: Estimate) -> bool:
    """Whether the middle moves enough, or the spread does. A single figure says nothing of its spread, so evenings that
    vary no more than the assumed spread teach nothing."""
    moved = abs(then.likely - now.likely)
    if moved >= LEAST_MINUTES and moved >= LEAST_SHARE * now.likely and learned.surprises:
        return True
    if now.low == now.high and learned.belief.sigma <= SAID_NOTHING:
        return False
    width, before = then.high - then.low, now.high - now.low
    return (
        learned.evenings >= FEW
        and learned.spreads
        and abs(width - before) > max(2 * LEAST_MINUTES, LEAST_WIDTH * max(width, before))
    )


def _oven(file: PlanFile, key: tuple[str, Way], rate: Rate, learned: Estimate, *, once: bool) -> Lesson | None:
    oven, way = key
    minutes = max(1, round(learned.middle))
    moved = abs(minutes - rate.minutes)
    if moved < LEAST_MINUTES or moved < LEAST_SHARE * rate.minutes or not learned.surprises:
        return None
    said = file.plan.kitchen.ovens[oven].rates[way] is not None
    before, after = (rate_text(each, rate.start, rate.end) for each in (round(rate.minutes), minutes))
    return Lesson(
        oven_label(oven, way),
        before,
        after,
        said,
        learned,
        SetOvenTime(oven, way, minutes, after),
        key,
        share=minutes / rate.minutes,
        once=once and learned.evenings == 1,
        moved=round(moved),
    )


def _moments_known(file: PlanFile) -> dict[str, frozenset[str]]:
    history = file.plan.history
    return {name: marks_of(history, moment_label(name)) for name in ("", *(c.course for c in file.plan.courses))}


def _moment(shift: Shift, *, once: bool) -> Lesson:
    moment, later = shift.moment, shift.later
    return Lesson(
        moment_label(moment.name),
        moment.text(),
        moment.text(later),
        True,
        shift.estimate,
        moment.edit(later),
        key_of_moment(moment.name),
        once=once and shift.estimate.evenings == 1,
        moved=abs(later),
        later=shift.moved,
    )


def _sat_longer(slot: Slot, course: CourseSlot, minutes: int) -> Slot:
    """What waits for the guests over a course waits `minutes` from its serving."""
    old = sitting_wait(slot, course)
    if old is None:
        return slot
    new = msgspec.structs.replace(old, minutes=minutes)
    return msgspec.structs.replace(slot, waits=tuple(new if wait is old else wait for wait in slot.waits))


def _taught(slot: Slot, lasts: Mapping[About, Lasts], shares: Mapping[About, float]) -> Slot:
    """A turn of the dial changes in the same proportion as the oven's own figure."""
    learned = lasts.get(key_of_slot(slot)) if slot.kind in ("step", "job") else None
    for use in slot.uses if slot.kind == "heat" else ():
        if use.before is not None and use.celsius is not None:
            share = shares.get((use.what, way_of(use.before, use.celsius, ajar=use.ajar)))
            if share is not None:
                minutes = round((slot.end - slot.start).total_seconds() / 60 * share)
                learned = Lasts(max(0, minutes - 1), minutes, minutes + 1)
    return msgspec.structs.replace(slot, lasts=learned) if learned is not None else slot


def _aside(file: PlanFile, keys: Set[Key], fresh: Sequence[PastEvening]) -> Iterable[tuple[str, Observed | OvenTurn]]:
    for evening in fresh:
        seen = (*evening.steps, *evening.sits)
        yield from ((evening.date, step) for step in seen if step.aside is not None and step.key in keys)
        ovens = {name_key(oven) for oven in file.plan.kitchen.ovens}
        turns = (turn for turn in evening.turns if turn.aside is not None and name_key(turn.oven) in ovens)
        yield from ((evening.date, turn) for turn in turns)
