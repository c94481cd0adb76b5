"""How fast hot food cools to the fridge's temperature, by estimate, piece by piece of its path. Pure; °C, minutes.

An estimate proves nothing; a probe does.
"""

import math
from collections.abc import Iterator
from dataclasses import dataclass, field

from board.checks.plan.figures import Figures
from board.checks.sheet.paths import HOT_LANES, Paths, length, minutes_between
from board.checks.sheet.timed import Timed
from board.facts.cooling import CoolingPlace, Estimate, estimate
from board.facts.eaten_raw import only_browns_ice
from board.facts.limits import CoolingStage
from board.plan.phrases.durations import short
from board.plan.phrases.food_safety import Cooling
from board.plan.places import Loc
from board.plan.resolve.going_in import foods_of
from board.plan.snag import Snag, Weight
from board.schedule.safety_facts import FREEZER_CELSIUS, ambient_of
from board.sheet import said
from board.sheet.run_sheet import Slot

OFF_THE_BOIL = 100.0  # where the plan does not say how hot it gets
ROOM_MINUTES = 60  # in the room without a word of how it cools; common practice, no source


@dataclass(frozen=True, slots=True)
class Piece:
    """Minutes in one place, with its rate of fall there; None while it is kept hot."""

    minutes: float
    falls: Estimate | None


def fall_times(pieces: list[Piece], start: float, stages: tuple[CoolingStage, ...]) -> tuple[list[float], float]:
    """Minutes from the start of the first stage to each stage's end (infinite if never reached), and to the end of the
    last piece. The time before the first stage starts does not count; but where it never does, though the food stands
    to cool, all of that time does: so deep a pot is the slowest of all."""
    goals = [stages[0].start.celsius, *(stage.end.celsius for stage in stages)]
    reached = [0.0 if start < goals[0] else math.inf, *(math.inf for _ in stages)]
    celsius, passed = start, 0.0
    for piece in pieces:
        if piece.falls is not None:
            for n, goal in enumerate(goals):
                after = piece.falls.minutes_to(celsius, goal) if celsius > goal else 0.0
                if math.isinf(reached[n]) and after <= piece.minutes:
                    reached[n] = passed + after
            celsius = piece.falls.celsius_after(celsius, piece.minutes)
        passed += piece.minutes
    began = reached[0]
    if math.isinf(began):
        return [math.inf for _ in stages], sum(piece.minutes for piece in pieces if piece.falls is not None)
    return [end - began for end in reached[1:]], passed - began


@dataclass
class _Path:
    """The path of a hot result until it is reheated, served, or spoils no more: each stay with its place and slot."""

    stays: list[tuple[float, str | None, Slot | None]] = field(default_factory=list)

    def and_then(self, *stays: tuple[float, str | None, Slot | None]) -> "_Path":
        return _Path([*self.stays, *stays])


def hot_food_cools_in_time(timed: Timed) -> list[Snag]:
    """food 14: hot food cools too slowly by the estimate (mind); or goes cold, or stands in the room for more than an
    hour, and the plan does not say how it cools (ask). Source: the rule set's `cooling`."""
    say, paths = timed.say, timed.paths
    late: dict[Loc, tuple[float, Snag]] = {}
    unsaid: dict[tuple[str, str], list[Slot]] = {}
    for slot in paths.steps():
        if not _is_hot(paths, say, slot):
            continue
        for path in _paths_from(paths, slot):
            if any(_wishes(paths, path)):
                found = _too_slow(paths, say, slot, path)
                if found is not None and found[0] > late.get(found[1], (0.0,))[0]:
                    late[found[1]] = (found[0], found[2])
            elif _goes_cold(path):
                unsaid.setdefault((slot.course or "", slot.dish or ""), []).append(slot)
    notes = [_unsaid(paths, say, list({slot.id: slot for slot in slots}.values())) for slots in unsaid.values()]
    return [snag for _, snag in late.values()] + notes


def _is_hot(paths: Paths, say: Figures, slot: Slot) -> bool:
    """Whether its result spoils and is hot: by the core temperature if the plan gives one, else by where it is made."""
    core = paths.task(slot).care.core
    if _is_round_ice(paths, slot):
        return False
    if core is None:
        return paths.spoils(slot) and slot.lane in HOT_LANES
    return paths.spoils(slot) and (slot.cooks is not None or say.rules.danger_high.at_least(core.celsius))


def _is_round_ice(paths: Paths, slot: Slot) -> bool:
    """Whether it only browns the outside of an ice, which was never hot."""
    loc = paths.task(slot).node.loc
    dish = paths.file.plan.courses[int(loc[1])].dishes[int(loc[3])]
    return only_browns_ice(dish.dish, (line.food for _, line in foods_of(dish)), slot.name, round(length(slot)))


def _paths_from(paths: Paths, slot: Slot) -> Iterator[_Path]:
    waiting = [(slot, taker, _Path()) for taker in reversed(paths.takers(slot))]
    while waiting:
        maker, taker, before = waiting.pop()
        where = maker.keeping.where if maker.keeping is not None else "room"
        path = before.and_then((minutes_between(maker, taker), where, None))
        if taker.kind == "serve" or taker.lane in HOT_LANES or not paths.spoils(taker):
            yield path
        else:
            path = path.and_then((length(taker), paths.way(taker).where.place, taker))
            waiting += [(taker, then, path) for then in reversed(paths.takers(taker))]


def _wishes(paths: Paths, path: _Path) -> list[Cooling | None]:
    """How deep and in what it lies in each stay: as said last; before anything is said, as said first."""
    said = [_wish(paths, slot) for _, _, slot in path.stays]
    last = next((wish for wish in said if wish is not None), None)
    found = []
    for wish in said:
        last = wish or last
        found.append(last)
    return found


def _wish(paths: Paths, slot: Slot | None) -> Cooling | None:
    work = paths.task(slot).work if slot is not None else None
    return work.cools if work is not None else None


def _pieces(paths: Paths, path: _Path) -> list[Piece]:
    found = []
    for (minutes, where, slot), wish in zip(path.stays, _wishes(paths, path), strict=True):
        if slot is not None and slot.cooling is not None:
            falls: Estimate | None = Estimate(slot.cooling.constant, slot.cooling.ambient, slot.cooling.assumed)
        elif where in ("hot", *HOT_LANES) or wish is None:
            falls = None
        else:
            bath: CoolingPlace = "fridge" if where in ("fridge", "freezer") else "room"
            ambient = FREEZER_CELSIUS if where == "freezer" else ambient_of(paths.file.plan, bath)
            falls = estimate(wish.depth_cm, wish.vessel, bath, ambient)
        found.append(Piece(minutes, falls))
    return found


def _too_slow(paths: Paths, say: Figures, slot: Slot, path: _Path) -> tuple[float, Loc, Snag] | None:
    """By how many minutes it is too slow, where the plan asks for cooling, and the snag."""
    core = paths.task(slot).care.core
    start = core.celsius if core is not None else OFF_THE_BOIL
    pieces, stages = _pieces(paths, path), say.rules.cooling
    taken, passed = fall_times(pieces, start, stages)
    so_far = [min(minutes, passed) for minutes in taken]
    if say.rules.cooled_in_time(*so_far):
        return None
    asked = next(each for _, _, each in path.stays if _wish(paths, each) is not None)
    assert asked is not None
    loc: Loc = (*paths.task(asked).node.loc, "cools")
    told = "; ".join(_told(say, minutes, passed, stage) for minutes, stage in zip(taken, stages, strict=True))
    message = (
        f"{slot.name}: by an estimate it falls from {say.limit(stages[0].start)} too slowly: {told}; "
        f"{say.rules.title} [{stages[-1].source}]"
    )
    slowest = max((piece for piece in pieces if piece.falls is not None), key=lambda piece: piece.minutes)
    granted = slowest.falls.assumptions if slowest.falls is not None else ()
    assumed = said.cooling(granted[0]) if granted else ""
    mend = (
        f"Shallower pans, metal, an ice bath, stirring; a probe decides. Taken for granted: {say.degrees(start)} off "
        f"the heat; {assumed}; Newton's law, with figures of common practice, no source."
    )
    over = max(minutes - stage.within_minutes for minutes, stage in zip(so_far, stages, strict=True))
    return over, loc, Snag("food 14", Weight.MIND, message, mend, paths.file.places.of(loc), safety=True)


def _told(say: Figures, minutes: float, passed: float, stage: CoolingStage) -> str:
    within = f"{short(stage.within_minutes)} allowed"
    if math.isinf(minutes):
        return f"{say.limit(stage.end)} not within {short(math.floor(passed))}, {within}"
    return f"{say.limit(stage.end)} after {short(math.ceil(minutes))}, {within}"


def _goes_cold(path: _Path) -> bool:
    """Whether it goes into the cold, or stands in the room for more than an hour."""
    cold = any(where in ("fridge", "freezer") and minutes > 0 for minutes, where, _ in path.stays)
    room = sum(minutes for minutes, where, _ in path.stays if where not in ("fridge", "freezer", "hot", *HOT_LANES))
    return cold or room > ROOM_MINUTES


def _unsaid(paths: Paths, say: Figures, slots: list[Slot]) -> Snag:
    stages = say.rules.cooling
    asks = " and ".join(f"{say.limit(stage.end)} within {short(stage.within_minutes)}" for stage in stages)
    message = (
        f"{', '.join(slot.name for slot in slots)}: hot, then cold, and nothing says how it cools; "
        f"{say.asks(f'{asks} of {say.limit(stages[0].start)}', stages[0].source)}"
    )
    mend = "Add `cools: 5 cm deep, metal, ice bath` (or fridge, room) at the step that cools it, and it is reckoned."
    task = paths.task(slots[0])
    key = "keeps" if task.work is not None and task.work.keeps is not None else "step"
    return Snag("food 14", Weight.ASK, message, mend, paths.file.places.of((*task.node.loc, key)), safety=True)
