"""Whether the least time between a result and its successor exceeds its shelf life or allowed wait: mind. Whether it
exceeds what is usual for such food, where the plan says nothing of how long it keeps: ask.

Uses likely lengths and the least gaps, so no timetable can do better. Minutes.
"""

from collections.abc import Mapping

from board.checks.plan.precedence import Between
from board.facts import keeping as facts
from board.plan.load import PlanFile
from board.plan.phrases.durations import short
from board.plan.places import Loc
from board.plan.resolve.assumed import Value
from board.plan.resolve.links import Link, labels, name_key
from board.plan.snag import Snag, Weight
from board.sheet.said import kept


def results_keep_until_they_are_taken_up(file: PlanFile) -> list[Snag]:
    """keeping 1: a result waits longer for what takes it up than it keeps. keeping 2: it waits longer than `at most` or
    `at once` allows."""
    ways_between = Between(file)
    found = []
    for link in file.filled.links:
        minutes, through = ways_between.longest(link.first, link.second) or (link.least, ())
        keeps = _keeps(file, link.first) if link.takes_up else None
        if keeps is not None and minutes > keeps:
            found.append(_keeps_too_short(file, link, keeps, minutes, through))
        if link.most is not None and minutes > link.most and not link.usual:
            found.append(_follows_too_late(file, link, minutes, through))
    return list(dict.fromkeys(found))


def no_time_is_longer_than_usual(file: PlanFile) -> list[Snag]:
    """keeping 3: a plan that does not say how long something keeps makes it stand, by its own days, hours and order,
    longer than food of its kind usually does. The timetable takes the plan's times; whether the food is still as it
    should be, only the host can say. Food safety is weighed apart.

    Source: common practice, no source, unless `facts.keeping` names one beside that kind."""
    return [
        _longer_than_usual(file, id_, told.values)
        for told in file.filled.assumed
        if told.kind == "keeps-past"
        for id_ in told.tasks
    ]


def _longer_than_usual(file: PlanFile, id_: str, told: Mapping[str, Value]) -> Snag:
    names = labels(task.node for task in file.filled.tasks.values())
    then = [link.second for link in file.filled.taken_up if link.first == id_]
    stands, usual = told["stands"], told["usual"]
    assert isinstance(stands, int)
    assert isinstance(usual, int)
    message = (
        f"{names[id_]}: your times make it stand {short(stands)}; usual is {short(usual)} "
        f"{kept(str(told['usually']))}, for {told['of']}"
    )
    mend = "Make it later, or say with `keeps:` how long it may stand."
    if len(then) > 1:
        mend = f"Write `after: nothing` at {names[then[0]]} if that need not wait for it. {mend}"
    place, source = file.places.of(_loc(file, id_)), facts.source_of(str(told["of"]))
    return Snag("keeping 3", Weight.ASK, message, mend, place, source=source)


def _keeps(file: PlanFile, id_: str) -> int | None:
    """Minutes the result keeps, done the way that keeps longest; None: no limit."""
    keeps = [way.keeps.minutes if way.keeps else None for way in file.filled.tasks[id_].ways]
    return None if None in keeps else max(minutes for minutes in keeps if minutes is not None)


def _keeps_too_short(file: PlanFile, link: Link, keeps: int, minutes: int, through: tuple[str, ...]) -> Snag:
    names = labels(task.node for task in file.filled.tasks.values())
    message = (
        f"{names[link.first]} keeps {short(keeps)}, and {names[link.second]} takes it up "
        f"{short(minutes)} later at the soonest{_because(names, through)}"
    )
    mend = "Let it keep longer or elsewhere, or make it later, with `after:` on what lies between."
    return Snag("keeping 1", Weight.MIND, message, mend, file.places.of((*_loc(file, link.first), "keeps")))


def _follows_too_late(file: PlanFile, link: Link, minutes: int, through: tuple[str, ...]) -> Snag:
    names = labels(task.node for task in file.filled.tasks.values())
    wanted = "at once" if link.most == link.least else f"within {short(link.most or 0)}"
    message = (
        f"{names[link.second]} should follow {names[link.first]} {wanted}, and can do so "
        f"{short(minutes)} later at the soonest{_because(names, through)}"
    )
    mend = "Allow more time between, or change what lies between."
    place = file.places.of(_asked_at(file, link))
    return Snag("keeping 2", Weight.MIND, message, mend, place)


def _because(names: dict[str, str], through: tuple[str, ...]) -> str:
    return f", after {', then '.join(names[id_] for id_ in through)}" if through else ""


def _loc(file: PlanFile, id_: str) -> Loc:
    return file.filled.tasks[id_].node.loc


def _asked_at(file: PlanFile, link: Link) -> Loc:
    """Where the plan states the link: under `after` of the second or `before` of the first; else the second itself."""
    for id_, other, key in ((link.second, link.first, "after"), (link.first, link.second, "before")):
        work, named = file.filled.tasks[id_].work, file.filled.tasks[other].node
        refs = (work.after if key == "after" else work.before) if work else None
        for number, ref in enumerate(refs or []):
            if name_key(ref.step) in (name_key(named.name), name_key(f"{named.name} in {named.dish}")):
                return (*_loc(file, id_), key, number)
    return _loc(file, link.second)
