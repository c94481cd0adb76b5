"""How long what spoils lies in the fridge between its steps, and how much warm food goes in at once. Pure."""

from dataclasses import dataclass
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from board.base.in_turn import in_turn
from board.checks.plan.figures import Figures
from board.checks.plan.holding import most_days
from board.checks.sheet.paths import HOT_LANES, Paths, length, minutes_between
from board.checks.sheet.timed import Timed
from board.facts.rule_set import READY_TO_EAT, Interval, Verdict, fridge_days
from board.plan.places import Loc
from board.plan.snag import About, Snag, Weight
from board.sheet.run_sheet import Slot

DAY_MINUTES = 24 * 60
WARM_SHARE = 0.1  # of the fridge's litres, at once: common practice, no source
WARM_WITHIN = timedelta(minutes=60)  # of leaving the heat, and of one another: common practice, no source


@dataclass(frozen=True, slots=True)
class _Life:
    """Time since its ingredients were prepared: that moment, and the stays in the fridge and freezer since."""

    made: datetime
    stretches: tuple[Interval, ...] = ()

    def then(self, minutes: float, place: str | None) -> "_Life":
        if place not in ("fridge", "freezer") or not minutes:
            return self
        return _Life(self.made, (*self.stretches, Interval(minutes / DAY_MINUTES, place == "freezer")))

    @property
    def days(self) -> float:
        return fridge_days(self.stretches)

    def calendar_day(self, left: datetime, zone: ZoneInfo) -> int:
        """The day it was prepared is day 1; whole days in the freezer do not count."""
        frozen = sum(stretch.days for stretch in self.stretches if stretch.frozen)
        return (left.astimezone(zone).date() - self.made.astimezone(zone).date()).days + 1 - int(frozen)


class _Lives:
    """The fridge life of every result, along its longest path in the cold."""

    def __init__(self, paths: Paths) -> None:
        self.paths = paths
        self.known: dict[str, _Life] = {}

    def at_end_of(self, slot: Slot) -> _Life:
        for id_ in in_turn(
            slot.id, lambda taker: [each.id for each in self._before(self.paths.slots[taker])], self.known
        ):
            self.known[id_] = self._at_end_of(self.paths.slots[id_])
        return self.known[slot.id]

    def _before(self, slot: Slot) -> list[Slot]:
        makers = [] if slot.fresh else self.paths.makers.get(slot.id, [])
        return [maker for maker in makers if self.paths.spoils(maker)]

    def _at_end_of(self, slot: Slot) -> _Life:
        before = [self.taken_up(maker, slot) for maker in self._before(slot)]
        life = max(before, key=lambda each: each.days, default=_Life(slot.end if slot.fresh else slot.start))
        work = self.paths.task(slot).work
        thaws = work is not None and work.thaws is not None  # frozen food does not age
        return life if thaws else life.then(length(slot), self.paths.way(slot).where.place)

    def taken_up(self, maker: Slot, taker: Slot) -> _Life:
        where = maker.keeping.where if maker.keeping is not None else None
        return self.at_end_of(maker).then(minutes_between(maker, taker), where)


def nothing_lies_cold_too_long(timed: Timed) -> list[Snag]:
    """food 12: a result stays in the fridge longer than its life: mind past the lower figure, stop past the upper.
    Source: the rule set's `fridge_lives`, and its days for what is ready to eat, where the day of preparation is day 1.

    Only the worst of each dish.
    """
    say, paths = timed.say, timed.paths
    lives, zone = _Lives(paths), ZoneInfo(timed.sheet.zone)
    worst: dict[tuple[str, str], tuple[int, float, Snag]] = {}
    for slot in paths.steps():
        for taker in paths.takers(slot) if paths.spoils(slot) else ():
            life = lives.taken_up(slot, taker)
            head = paths.task(slot).care.life
            day = life.calendar_day(taker.start, zone)
            verdict = _verdict(say, head, life, day)
            if verdict != "fine":
                snag = _lies_too_long(paths, say, slot, head, life, day, verdict)
                key, rank = (slot.course or "", slot.dish or ""), (snag.weight, life.days, snag)
                worst[key] = max(worst.get(key, rank), rank, key=lambda each: each[:2])
    return [snag for _, _, snag in worst.values()]


def _verdict(say: Figures, head: str | None, life: _Life, day: int) -> Verdict:
    by_day = say.rules.ready_to_eat_days is not None
    head = READY_TO_EAT[0] if head is None and by_day else head
    if head is None or not life.days or not (head in say.rules.fridge_lives or (by_day and head in READY_TO_EAT)):
        return "fine"
    return say.rules.fridge_verdict(head, life.days, day)


def _lies_too_long(
    paths: Paths, say: Figures, slot: Slot, head: str | None, life: _Life, day: int, verdict: Verdict
) -> Snag:
    most, source = most_days(say, head) or (0.0, "")
    chart = say.rules.fridge_lives.get(head) if head is not None else None
    figures = f"{chart.lower_days:g} to {chart.upper_days:g} days" if chart is not None else f"{most:g} days"
    message = (
        f"{slot.name}: {life.days:.1f} days in the fridge, taken up on day {day}; {say.rules.title} give "
        f"{f'{head} ' if head else ''}{figures}, the day of preparation being day 1 [{source}]"
    )
    mend = "Make it later, or freeze it: the freezer stops the count and does not set it back."
    weight = Weight.STOP if verdict == "stop" else Weight.MIND
    task = paths.task(slot)
    key = "keeps" if task.work is not None and task.work.keeps is not None else "step"
    place, why = paths.file.places.of((*task.node.loc, key)), task.care.by.beside("")
    return Snag("food 12", weight, message, mend, place, safety=True, source=why, about=About((slot.id,)))


@dataclass(frozen=True, slots=True)
class _Entry:
    """Something warm put into the fridge."""

    at: datetime
    litres: float
    name: str
    loc: Loc


def not_too_much_warm_at_once(timed: Timed) -> list[Snag]:
    """food 13: warm food of more than a tenth of the fridge's litres is put in within an hour, less than an hour off
    the heat and not cooled before. Common practice, no source; why it matters: the rule set's `cold_holding`."""
    fridge = timed.file.plan.kitchen.fridge
    if fridge is None:
        return []
    say, paths = timed.say, timed.paths
    entries = sorted(dict.fromkeys(_warm_entries(paths)), key=lambda entry: entry.at)
    windows = [[other for other in entries if entry.at <= other.at <= entry.at + WARM_WITHIN] for entry in entries]
    most = max(windows, key=_litres, default=[])
    if _litres(most) <= fridge * WARM_SHARE:
        return []
    names = ", ".join(f"{entry.name} ({_room(entry.litres)})" for entry in most)
    asks = say.asks(f"{say.limit(say.rules.cold_holding)} or below", say.rules.holding_source)
    message = (
        f"{_room(_litres(most))} warm into a fridge of {fridge:g} within an hour, more than a tenth of it "
        f"[common practice, no source]: {names}; {asks} for all that lies there"
    )
    mend = "Cool it first, shallow or in ice and water (`cools: 5 cm deep, metal, ice bath`), or put it in by turns."
    return [Snag("food 13", Weight.MIND, message, mend, timed.file.places.of(most[0].loc), safety=True)]


def _room(litres: float) -> str:
    return "1 litre" if litres == 1 else f"{litres:g} litres"


def _litres(entries: list[_Entry]) -> float:
    return sum(entry.litres for entry in entries)


def _warm_entries(paths: Paths) -> list[_Entry]:
    found: list[_Entry] = []
    for slot in paths.steps():
        if slot.lane in HOT_LANES:
            found += _from(paths, slot, slot.end + WARM_WITHIN)
    return found


def _from(paths: Paths, slot: Slot, until: datetime) -> list[_Entry]:
    """Each entry of a slot's result into the cold, followed through later steps while it is still warm."""
    loc = paths.task(slot).node.loc
    keeps = paths.way(slot).keeps
    takers = [each for each in paths.takers(slot) if each.kind == "step"]
    if (
        slot.keeping is not None
        and slot.keeping.where == "fridge"
        and any(t.start > slot.end for t in paths.takers(slot))
    ):
        litres = keeps.where.litres if keeps is not None else None
        return [_Entry(slot.end, litres, slot.name, (*loc, "keeps"))] if litres and slot.end <= until else []
    found: list[_Entry] = []
    for taker in takers:
        station = paths.way(taker).where
        if taker.start > until or taker.lane in HOT_LANES or station.place == "freezer":
            continue
        if station.place == "fridge":
            entry = _Entry(taker.start, station.litres or 0, taker.name, (*paths.task(taker).node.loc, "where"))
            found += [entry] if station.litres else []
        elif taker.cooling is None:
            found += _from(paths, taker, until)
    return found
