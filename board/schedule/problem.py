"""The problem a solver solves: whole numbers and elapsed minutes only. Frozen, and knows neither plan nor solver.

Minute 0 is `origin`; every start is a whole minute after it, whatever the clocks on the wall do meanwhile.
"""

import math
from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from datetime import datetime

from board.facts.heat import ROOM_CELSIUS, OvenRates, minutes_between
from board.schedule.intervals import Window, without

LONGEST_CHANGE = 24 * 60  # an oven never takes longer than a day to change
A_TRIFLE = 0.001  # of a minute; changes of heat are reckoned no finer

RINGS = "rings"  # the resource that is on heat
FRONT = "front-of-house"  # the lane of what is done in the room and not in the kitchen
NO_PLACE = 30  # a result without its place costs this many minutes past its limit; ours
LITRE = 10  # fridge and freezer room is counted in tenths of a litre


@dataclass(frozen=True, slots=True)
class Part:
    """A stretch of a step that needs hands: so many minutes after its start. `kind`: all, start, look-in, end."""

    offset: int
    length: int
    kind: str


@dataclass(frozen=True, slots=True)
class Demand:
    """So much of a resource, by its index."""

    resource: int
    amount: int


@dataclass(frozen=True, slots=True)
class OvenUse:
    """Shelves of an oven at a temperature within a range. Whole °C, the range rounded inwards.

    `off`: the whole oven, switched off right after a bake at `baked_at`; `want` is then how warm the rest leaves it.
    """

    oven: int
    shelves: int
    low: int
    want: int
    high: int
    off: bool = False
    baked_at: int | None = None

    def agrees(self, other: "OvenUse") -> bool:
        """Whether one setting does for both."""
        return not (self.off or other.off) and self.meets(other)

    def meets(self, other: "OvenUse") -> bool:
        """Whether their ranges have a temperature in common."""
        return max(self.low, other.low) <= min(self.high, other.high)


@dataclass(frozen=True, slots=True)
class Hold:
    """What a result needs while it stands, and for how many minutes at most. `limit` None: no limit.

    `oven` is taken only from `ready_in` minutes after the step's end: the oven it was baked in changes first. `spoils`:
    without its place it would stand neither hot nor cold enough; `exposed`: it does so in its place too.
    """

    limit: int | None
    demands: tuple[Demand, ...] = ()
    oven: OvenUse | None = None
    where: str = "room"
    hot: bool = False  # somebody must be at home meanwhile
    ready_in: int = 0
    spoils: bool = False
    exposed: bool = False


@dataclass(frozen=True, slots=True)
class Way:
    """One way to do a task, with one oven chosen."""

    number: int  # which of the plan's ways
    lane: str
    minutes: int
    parts: tuple[Part, ...]
    demands: tuple[Demand, ...] = ()
    oven: OvenUse | None = None
    hold: Hold | None = None
    hot: bool = False  # something is lit meanwhile: somebody must be at home
    warm_up: int = 0  # minutes its oven needs from cold, at the most
    hold_warm_up: int = 0  # and the oven its result is kept in, before its end
    may_run_over: int = 0  # minutes beyond the likely, at the most
    exposed: bool = False  # what spoils stands neither hot nor cold enough meanwhile

    def bakes_for(self, rest: "Way") -> bool:
        """Whether a rest in an oven that was switched off can follow this bake: same oven, and the setting its heat was
        worked out from."""
        if self.oven is None:
            return self.lane == "oven"  # its oven was freed for a clash
        assert rest.oven is not None
        return (self.oven.oven, self.oven.want) == (rest.oven.oven, rest.oven.baked_at) and not self.oven.off


@dataclass(frozen=True, slots=True)
class Job:
    """One task of the problem."""

    id: str
    ways: tuple[Way, ...]
    hands: tuple[int, ...]  # who may do it
    crew: int = 1  # how many of them it takes, all the while hands are on it
    window: Window | None = None  # the days or times it was given
    fixed: int | None = None  # starts exactly then
    best_within: int | None = None
    early: bool = False  # leads to no serving: the sooner the better
    with_guests: bool = False  # the guests may stand by: it takes nobody away from them
    earliest: int = 0  # a hard lower bound for its start
    alike: tuple[str, ...] = ()  # what others have in common with it, so that they are best done with it

    @property
    def is_trip(self) -> bool:
        """Whether it can be done at one time only, as a trip to the shops."""
        return self.window is not None and all(way.minutes == self.window[1] - self.window[0] for way in self.ways)


@dataclass(frozen=True, slots=True)
class Order:
    """`second` starts at least `least` after `first` ends; `most` bends at a price unless equal to `least`. The minutes
    of a `usual` one bend more lightly: its plan does not ask for them. `takes_up`: what the first made stands until
    then."""

    first: int
    second: int
    least: int
    most: int | None
    firm: bool
    usual: bool = False
    takes_up: bool = True

    @property
    def ready(self) -> int:
        """Minutes before `second` by which `first` must be over where it is not firm."""
        return 0 if self.usual else self.least


@dataclass(frozen=True, slots=True)
class Resource:
    """Rings, room in the fridge, a tool: so much of it, cumulative."""

    name: str
    capacity: int


@dataclass(frozen=True, slots=True)
class OvenFacts:
    """An oven: shelves and rates."""

    name: str
    shelves: int
    rates: OvenRates

    def change_minutes(self, before: int, after: int) -> int:
        """Whole minutes to go from one setting to another."""
        return math.ceil(min(minutes_between(self.rates, before, after), LONGEST_CHANGE) - A_TRIFLE)

    def change_between(self, before: OvenUse, after: OvenUse) -> int:
        """Whole minutes between two uses that no one setting does for. Switching off takes none."""
        return 0 if after.off else self.change_minutes(before.want, after.want)


@dataclass(frozen=True, slots=True)
class OvenNow:
    """An oven's state when an evening is resumed. `celsius` None: cold.

    `used_until`: when it was last on for something; `free_from`: when its dial may be turned again.
    """

    celsius: int | None
    used_until: int
    free_from: int


@dataclass(frozen=True, slots=True)
class Hand:
    """A person. `free`: working hours less absences; `home`: those less trips to the shops.

    `tied`: those absences that go by when the guests come; `untied`: free were it not for them. `sits`: eats with the
    guests.
    """

    name: str
    free: tuple[Window, ...]
    home: tuple[Window, ...]
    tied: tuple[Window, ...] = ()
    untied: tuple[Window, ...] = ()
    sits: bool = True

    def later(self, minutes: int) -> "Hand":
        """With the guests coming so many minutes later."""
        if not self.tied or not minutes:
            return self
        tied = tuple((start + minutes, end + minutes) for start, end in self.tied)
        return replace(self, free=tuple(without(self.untied, tied)), tied=tied)


@dataclass(frozen=True, slots=True)
class Serving:
    """A course goes out when `job` ends: never before `wanted`; each minute later costs, beyond `slip` more."""

    name: str
    job: int
    wanted: int
    slip: int


@dataclass(frozen=True, slots=True)
class Sitting:
    """For so many `minutes` from the end of `job`, which serves a course, nobody who sits gets up, if it can be."""

    name: str
    job: int
    minutes: int


@dataclass(frozen=True, slots=True)
class Stood:
    """Food that stands neither hot nor cold enough while `job` lasts or, with `until`, from its end until that begins,
    wherever the way chosen is `exposed`. It adds to the longest of `after`: of others, by index, all of them before it.
    `gone`: minutes of it that are over.
    """

    job: int
    until: int | None
    after: tuple[int, ...]
    gone: int = 0


@dataclass(frozen=True, slots=True)
class Clock:
    """A dish that spoils: the longest of `after`, its serving and the `eaten` minutes at the table are together no more
    than `limit` minutes, or cost."""

    dish: str
    course: str
    serve: int
    eaten: int
    limit: int
    after: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Day:
    """A day by the clock on the wall: its first minute, and when people sit down to supper."""

    begins: int
    supper: Window


@dataclass(frozen=True)
class Problem:
    """All there is to decide, and nothing about how."""

    origin: datetime
    horizon: int
    jobs: tuple[Job, ...]
    orders: tuple[Order, ...]
    resources: tuple[Resource, ...]
    ovens: tuple[OvenFacts, ...]
    hands: tuple[Hand, ...]
    servings: tuple[Serving, ...]
    opens: int = 0  # the first minute of anybody's hours; what lies before is out of hours
    days: tuple[Day, ...] = ()  # from the first of anybody's hours to the dinner's own
    host: int = 0  # whose busiest half hour counts
    arrives: int = 0
    ovens_now: dict[int, OvenNow] = field(
        default_factory=dict
    )  # of a resumed evening; otherwise all are cold early enough
    spared: int | None = None  # a helper to use as little as possible, if the aim "spared" is wanted
    walk: int = 0  # minutes between the kitchen and the table
    dinner_over: int | None = None  # the job whose start ends the dinner: clearing the last course
    clocks: tuple[Clock, ...] = ()
    stood: tuple[Stood, ...] = ()  # what adds up on them
    sittings: tuple[Sitting, ...] = ()
    index: dict[str, int] = field(default_factory=dict)

    def crew(self, who: Iterable[int]) -> list[Hand]:
        """People by their indexes."""
        return [self.hands[hand] for hand in who]

    def oven_ready(self, use: OvenUse, heat: int) -> int:
        """The minute from which the oven of a resumed evening has this setting, °C; 0 where it is cold early enough."""
        has = self.ovens_now.get(use.oven)
        if has is None or use.off:
            return 0
        stands = round(ROOM_CELSIUS) if has.celsius is None else has.celsius
        return has.free_from + self.ovens[use.oven].change_minutes(stands, heat)
