"""The run sheet: what, who, where, from when to when. Frozen and solver-free; the board lives on it alone.

All moments are aware datetimes in UTC. It is stored with msgspec, so that opening the board needs neither the
plan's models nor the solver.
"""

from datetime import datetime, timedelta
from typing import Literal

import msgspec

from board.facts.cooling import Assumption
from board.plan.resolve.assumed import Assumed
from board.sheet import words
from board.sheet.told import OFF, Caution, DialTurn, GivenUp, OvenOff, Plate, StillOpen, Stop
from board.sheet.told import Moment as Moment

# Reasons of a wait; the first two must be over before a step is called.
ORDER, HEAT, HANDS, TABLE = "order", "heat", "hands", "table"
DAY_MINUTES = 24 * 60
SlotKind = Literal["step", "job", "arrive", "seat", "serve", "clear", "heat", "off"]


class Attended(msgspec.Struct, frozen=True, gc=False):
    """A stretch that needs somebody's hands. `kind`: all, start, look-in, end."""

    start: Moment
    end: Moment
    who: str
    kind: str


class Use(msgspec.Struct, frozen=True, gc=False):
    """So much of something for a while; `celsius` is the oven's setting, None elsewhere. `off`: it is left to cool.

    Of a change of setting, `before` is what it comes from in °C, where that is known; `ajar`: it cools door ajar.
    """

    what: str
    amount: float
    start: Moment
    end: Moment
    celsius: int | None = None
    off: bool = False
    before: int | None = None
    ajar: bool = False


class Dependency(msgspec.Struct, frozen=True, gc=False):
    """Starts no earlier than `minutes` after the `anchor` (start or end) of slot `after`. `reason` is a word for why:

    order (what it follows), heat (its oven's setting), hands, table (those who eat stay seated), oven, or the name of
    what both need.
    """

    after: str
    anchor: Literal["start", "end"]
    minutes: int
    reason: str

    @property
    def must(self) -> bool:
        """Whether what it waits for must be over, not only expected to be."""
        return self.reason in (ORDER, HEAT)


class Keeping(msgspec.Struct, frozen=True, gc=False):
    """How long a result may stand, in minutes, and where; None: the place it should be kept in was not to be had.
    `exposed`: it spoils, and stands there neither hot nor cold enough."""

    minutes: int
    where: str | None
    exposed: bool = False

    @property
    def for_safety(self) -> bool:
        """Its limit is a matter of safety: it spoils where it stands, or is chilled for a day or more. Else only of how
        good it is. Ours."""
        return self.exposed or (self.where == "fridge" and self.minutes >= DAY_MINUTES)


class Stage(msgspec.Struct, frozen=True, gc=False):
    """A limit of cooling as its rule writes it: down to `celsius` (the same as `fahrenheit`) within so many minutes of
    passing `begins`, °C."""

    begins: float
    celsius: float
    fahrenheit: float
    within_minutes: int
    source: str


class Cooling(msgspec.Struct, frozen=True, gc=False):
    """An estimate of how something cools: Newton's constant a minute, what is around it in °C, what was assumed, and
    the stages it should meet, the warmest first."""

    constant: float
    ambient: float
    assumed: tuple[Assumption | str, ...] = ()
    stages: tuple[Stage, ...] = ()


class Lasts(msgspec.Struct, frozen=True, gc=False):
    """How long something may last, in minutes; all equal for one figure."""

    low: int
    likely: int
    high: int


class SoMuch(msgspec.Struct, frozen=True, gc=False, omit_defaults=True):
    """So much of a food, scaled as its dish is: `low` to `high` of `measure`, a unit as in a plan (empty: pieces);
    both None: some, as `measure` says."""

    food: str
    low: float | None = None
    high: float | None = None
    measure: str = ""


class Slot(msgspec.Struct, frozen=True, gc=False):
    """One piece of work with its time. `lasts` None: as long as it stands here, as an oven's change does.

    `named`: the plan's own words, or the turn of an oven's dial; `name` says either.

    `cooks`: the class of food it cooks. `hold_minutes`: how long its core is held at `core_celsius`. `exposed`: while
    it lasts, what spoils stands neither hot nor cold enough. `fresh`: cooked through, so that a new clock begins.
    `raw`: what its dish has in it that is raw and wants cooking, in the plan's words. `noted`: what its host noted
    of it on evenings before; of a course, at its serving. `how`: its method; `goes_in`: what goes in as it begins.
    `decide`: what is asked at its start; it is begun on a yes, and left out on a no.
    """

    id: str
    named: str | DialTurn = msgspec.field(name="name")
    kind: SlotKind
    lane: str
    start: Moment
    end: Moment
    dish: str | None = None
    course: str | None = None
    attended: tuple[Attended, ...] = ()
    uses: tuple[Use, ...] = ()
    give_minutes: int | None = None
    waits: tuple[Dependency, ...] = ()
    then: tuple[str, ...] = ()  # its successors
    keeping: Keeping | None = None
    best_within: int | None = None
    look_for: str | None = None
    core_celsius: float | None = None
    call: str | OvenOff | None = None
    call_at_end: str | None = None
    turn: DialTurn | None = None  # as it begins, its oven's dial is turned, in no time of its own
    lasts: Lasts | None = None
    with_guests: bool = False
    way: int = 0  # which of the problem's ways was chosen
    cooks: str | None = None
    hold_minutes: float = 0.0
    exposed: bool = False
    fresh: bool = False
    cooling: Cooling | None = None
    raw: str | None = None
    noted: tuple[str, ...] = ()
    # The same among the ways of the plan. Not written where there is none: so an older log keeps its mark, by which
    # plans and the cook's book name it.
    plan_way: int | msgspec.UnsetType = msgspec.UNSET
    method: str | msgspec.UnsetType = msgspec.field(default=msgspec.UNSET, name="how")
    question: str | msgspec.UnsetType = msgspec.field(default=msgspec.UNSET, name="decide")
    amounts: tuple[SoMuch, ...] | msgspec.UnsetType = msgspec.field(default=msgspec.UNSET, name="goes_in")

    @property
    def how(self) -> str:
        """Its method; empty where the plan gives none."""
        return "" if self.method is msgspec.UNSET else self.method

    @property
    def decide(self) -> str:
        """What is asked at its start; empty where it is simply done."""
        return "" if self.question is msgspec.UNSET else self.question

    @property
    def goes_in(self) -> tuple[SoMuch, ...]:
        """What goes in as it begins."""
        return () if self.amounts is msgspec.UNSET else self.amounts

    @property
    def name(self) -> str:
        """In the words of the plan; an oven's change, in the program's of today."""
        if isinstance(self.named, str):
            return self.named
        turn = self.named
        if turn.celsius == OFF:
            return words.switch_off(turn.oven)
        return words.heat_oven(turn.oven, turn.celsius, turn.before, turn.fahrenheit, turn.as_written)

    @property
    def people(self) -> tuple[str, ...]:
        """All whose hands it needs; where they are several, each has every part of it."""
        return tuple(dict.fromkeys(part.who for part in self.attended))

    @property
    def parts(self) -> tuple[Attended, ...]:
        """When it needs hands, each part once, however many people it takes."""
        return tuple({(part.start, part.kind): part for part in self.attended}.values())

    @property
    def of_a_dial(self) -> bool:
        """No work of the plan's: an oven's dial is turned, or something is switched off."""
        return self.kind in ("heat", "off")

    @property
    def whole(self) -> bool:
        """Hands are on it from start to end."""
        return any(part.kind == "all" for part in self.attended)

    @property
    def on_heat(self) -> bool:
        """It is done in an oven or on a ring."""
        return self.lane in ("oven", "stovetop")

    @property
    def ends_by_itself(self) -> bool:
        """Nobody is needed at its end, no probe is wanted, and nothing hot is left: it stood in the fridge, say."""
        return (
            not self.on_heat
            and self.core_celsius is None
            and self.end > self.start
            and not any(part.kind == "all" or part.end == self.end for part in self.attended)
        )


class CourseSlot(msgspec.Struct, frozen=True, gc=False):
    """A course: when it was wanted and when it is served. `serve` and `clear` are ids of slots.

    `eaten`: how long the guests sit over it, which the clearing waits for. `pushed`: minutes by which the host had
    pushed it when this sheet was worked out; they are in `served` already.
    `plates`: whose plate is different. `sits`: `stretch`, as it is stored.
    """

    name: str
    wanted: Moment
    served: Moment
    serve: str
    clear: str
    may_slip: int
    standing: bool = False
    eaten: Lasts | None = None
    pushed: int = 0
    plates: tuple[Plate | str, ...] = ()
    # Not written where there is none: so an older log keeps its mark, by which plans and the cook's book name it.
    sits: int | msgspec.UnsetType = msgspec.UNSET

    @property
    def stretch(self) -> int:
        """Minutes from its serving in which nobody who eats is to get up."""
        return 0 if self.sits is msgspec.UNSET else self.sits

    @property
    def late_minutes(self) -> int:
        return round((self.served - self.wanted).total_seconds() / 60)


class SpoilClock(msgspec.Struct, frozen=True, gc=False):
    """How long what a dish is made of may stand neither hot nor cold enough, over its whole path, and by which rule.

    `serve`, `clear`, `away`: ids of the slots that send it out, take it from the table, and put what is left of it
    into the cold (None: no job does).
    """

    dish: str
    course: str
    limit_minutes: int
    source: str
    serve: str
    clear: str
    away: str | None = None


class RawLimit(msgspec.Struct, frozen=True, gc=False):
    """How long raw food may stand out before it is cooked through, in minutes, and by which rule."""

    minutes: int
    source: str


class InCold(msgspec.Struct, frozen=True, gc=False):
    """What takes room in the fridge or freezer (`place`), from when to when. `what`: a slot's id, or what is bought,
    in the plan's words. `litres` None: nothing says how many."""

    place: str
    what: str
    start: Moment
    end: Moment
    litres: float | None = None
    bought: bool = False


class NeededBy(msgspec.Struct, frozen=True, gc=False):
    """A dish that needs the food of what another leaves over: how much, and when it takes it up. `in_time`: after it is
    left and before it is too old."""

    course: str
    dish: str
    much: SoMuch
    start: Moment
    in_time: bool = True


class LeftOver(msgspec.Struct, frozen=True, gc=False):
    """What a slot leaves over, how many days it then keeps in the fridge and by which source, and who needs it."""

    slot: str
    what: SoMuch
    days: int
    source: str
    needed_by: tuple[NeededBy, ...] = ()

    def use_by(self, left: datetime) -> datetime:
        """By when it is used, left at that moment."""
        return left + timedelta(days=self.days)


class Eaters(msgspec.Struct, frozen=True, gc=False):
    """Who is to be served a dish, without the host; groups by how many they are."""

    course: str
    dish: str
    to: tuple[str, ...]


class RunSheet(msgspec.Struct, frozen=True, gc=False):
    """The computed timetable. `slots` stand in an order in which nothing comes before what it waits for."""

    plan: str
    zone: str
    digest: str
    date: str
    arrive: Moment
    courses: tuple[CourseSlot, ...]
    slots: tuple[Slot, ...]
    hands: tuple[str, ...] = ()
    given_up: tuple[GivenUp, ...] = ()
    assumed: tuple[Assumed | str, ...] = ()
    proved: bool = False
    still_open: tuple[StillOpen, ...] = ()  # where it is not, what may still be bettered; in the order of the aims
    solve_seconds: float = 0.0
    fahrenheit: bool = False  # °F stands first
    as_written: bool = True  # and the plan writes its temperatures in what stands first
    rules: str = ""  # the food-safety rules it was weighed by
    clocks: tuple[SpoilClock, ...] = ()
    raw_limit: RawLimit | None = None  # None: nothing raw is cooked through
    stops: tuple[Stop | str, ...] = ()  # what `check` says must be mended before anybody eats
    cautions: tuple[Caution | str, ...] = ()
    noted: tuple[str, ...] = ()  # of the evening as a whole, on evenings before
    # Not written where there is none: so an older log keeps its mark, by which plans and the cook's book name it.
    hired_hands: tuple[str, ...] | msgspec.UnsetType = msgspec.field(default=msgspec.UNSET, name="hired")
    cold_stays: tuple[InCold, ...] | msgspec.UnsetType = msgspec.field(default=msgspec.UNSET, name="cold")
    cold_litres: dict[str, float] | msgspec.UnsetType = msgspec.field(default=msgspec.UNSET, name="cold_room")
    lefts: tuple[LeftOver, ...] | msgspec.UnsetType = msgspec.field(default=msgspec.UNSET, name="left")
    recipes: dict[str, str] | msgspec.UnsetType = msgspec.field(default=msgspec.UNSET, name="sources")
    measures: str | msgspec.UnsetType = msgspec.field(default=msgspec.UNSET, name="units")
    served_to: tuple[Eaters, ...] | msgspec.UnsetType = msgspec.field(default=msgspec.UNSET, name="eaters")

    @property
    def eaters(self) -> tuple[Eaters, ...]:
        """Who is to be served each dish, by course; none in a sheet of before that was kept."""
        return () if self.served_to is msgspec.UNSET else self.served_to

    @property
    def left(self) -> tuple[LeftOver, ...]:
        """What its steps leave over for another use."""
        return () if self.lefts is msgspec.UNSET else self.lefts

    @property
    def sources(self) -> dict[str, str]:
        """Dishes whose recipe the plan says the source of."""
        return {} if self.recipes is msgspec.UNSET else self.recipes

    @property
    def units(self) -> str | None:
        """The plan's measures, `metric` or `us`; None: as written."""
        return None if self.measures is msgspec.UNSET else self.measures

    @property
    def hired(self) -> tuple[str, ...]:
        """Hands that do not sit at the table."""
        return () if self.hired_hands is msgspec.UNSET else self.hired_hands

    @property
    def cold(self) -> tuple[InCold, ...]:
        """What takes room in the fridge and the freezer."""
        return () if self.cold_stays is msgspec.UNSET else self.cold_stays

    @property
    def cold_room(self) -> dict[str, float]:
        """Litres of the fridge and the freezer, where the plan says them."""
        return {} if self.cold_litres is msgspec.UNSET else self.cold_litres

    def by_id(self) -> dict[str, Slot]:
        return {slot.id: slot for slot in self.slots}

    def taking_up(self, id_: str) -> set[str]:
        """The slots that take a slot's result up, and theirs: its food is in all of them."""
        then = {slot.id: slot.then for slot in self.slots}
        found: set[str] = set()
        queue = [id_]
        for here in queue:
            new = [each for each in then.get(here, ()) if each not in found]
            found.update(new)
            queue += new
        return found


def store(sheet: RunSheet) -> bytes:
    """The sheet as JSON, for the cache and the head of a run log."""
    return msgspec.json.encode(sheet)


def restore(data: bytes) -> RunSheet:
    """The sheet back. Raises msgspec.DecodeError (ValidationError among them) when it is not one."""
    return msgspec.json.decode(data, type=RunSheet)
