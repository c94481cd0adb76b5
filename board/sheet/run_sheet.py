"""The run sheet: what, who, where, from when to when. Frozen and solver-free; the board lives on it alone.

All moments are aware datetimes in UTC. It is stored with msgspec, so that opening the board needs neither the
plan's models nor the solver.
"""

from datetime import datetime
from typing import Annotated, Any, Literal

import msgspec

ORDER, HEAT, HANDS = "order", "heat", "hands"  # reasons of a wait; the first two must be over before a step is called
Moment = Annotated[datetime, msgspec.Meta(tz=True)]  # aware; what is read back from a file without a zone is refused
SlotKind = Literal["step", "job", "arrive", "seat", "serve", "clear", "heat"]


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

    order (what it follows), heat (its oven's setting), hands, oven, or the name of what both need.
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
    """How long a result may stand, in minutes, and where. `exposed`: it spoils, and stands there neither hot nor cold
    enough."""

    minutes: int
    where: str
    exposed: bool = False


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
    assumed: tuple[str, ...] = ()
    stages: tuple[Stage, ...] = ()


class Lasts(msgspec.Struct, frozen=True, gc=False):
    """How long something may last, in minutes; all equal for one figure."""

    low: int
    likely: int
    high: int


class Slot(msgspec.Struct, frozen=True, gc=False):
    """One piece of work with its time. `lasts` None: as long as it stands here, as an oven's change does.

    `cooks`: the class of food it cooks. `hold_minutes`: how long its core is held at `core_celsius`. `exposed`: while
    it lasts, what spoils stands neither hot nor cold enough. `fresh`: cooked through, so that a new clock begins.
    `raw`: what its dish has in it that is raw and wants cooking, in the plan's words. `noted`: what its host noted
    of it on evenings before; of a course, at its serving.
    """

    id: str
    name: str
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
    then: tuple[str, ...] = ()  # what takes its result up
    keeping: Keeping | None = None
    best_within: int | None = None
    look_for: str | None = None
    core_celsius: float | None = None
    call: str | None = None
    call_at_end: str | None = None
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

    @property
    def whole(self) -> bool:
        """Hands are on it from start to end."""
        return any(part.kind == "all" for part in self.attended)

    @property
    def ends_by_itself(self) -> bool:
        """Nobody is needed at its end, no probe is wanted, and nothing hot is left: it stood in the fridge, say."""
        return (
            self.lane not in ("oven", "stovetop")
            and self.core_celsius is None
            and self.end > self.start
            and not any(part.kind == "all" or part.end == self.end for part in self.attended)
        )


class CourseSlot(msgspec.Struct, frozen=True, gc=False):
    """A course: when it was wanted and when it is served. `serve` and `clear` are ids of slots.

    `eaten`: how long the guests sit over it, which the clearing waits for. `pushed`: minutes by which the host had
    pushed it when this sheet was worked out; they are in `served` already.
    `plates`: whose plate is different.
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
    plates: tuple[str, ...] = ()

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


class GivenUp(msgspec.Struct, frozen=True, gc=False):
    """Something that could not be had, and why."""

    what: str
    why: str
    minutes: int


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
    assumed: tuple[str, ...] = ()
    proved: bool = False
    gap: float = 0.0
    solve_seconds: float = 0.0
    fahrenheit: bool = False  # the plan writes its temperatures in °F
    rules: str = ""  # the food-safety rules it was weighed by
    clocks: tuple[SpoilClock, ...] = ()
    raw_limit: RawLimit | None = None  # None: nothing raw is cooked through
    stops: tuple[str, ...] = ()  # what `check` says must be mended before anybody eats
    cautions: tuple[str, ...] = ()
    noted: tuple[str, ...] = ()  # of the evening as a whole, on evenings before

    def by_id(self) -> dict[str, Slot]:
        return {slot.id: slot for slot in self.slots}


def store(sheet: RunSheet) -> bytes:
    """The sheet as JSON, for the cache and the head of a run log."""
    return msgspec.json.encode(sheet)


def restore(data: bytes) -> RunSheet:
    """The sheet back. Raises msgspec.DecodeError (ValidationError among them) when it is not one."""
    return msgspec.json.decode(data, type=RunSheet)


def outside_form(sheet: RunSheet, *, valid: bool) -> dict[str, Any]:
    """The form `sheet --json` prints; tools outside rely on its keys. Times in the plan's zone, ISO 8601."""
    from zoneinfo import ZoneInfo

    zone = ZoneInfo(sheet.zone)

    def iso(at: datetime) -> str:
        return at.astimezone(zone).isoformat()

    return {
        "plan": sheet.plan,
        "zone": sheet.zone,
        "proved": sheet.proved,
        "gap": sheet.gap,
        "solve_seconds": sheet.solve_seconds,
        "valid": valid,
        "courses": [
            {"name": c.name, "wanted": iso(c.wanted), "served": iso(c.served), "late_minutes": c.late_minutes}
            for c in sheet.courses
        ],
        "steps": [
            {
                "id": s.id,
                "dish": s.dish,
                "course": s.course,
                "lane": s.lane,
                "start": iso(s.start),
                "end": iso(s.end),
                "attended": [{"start": iso(a.start), "end": iso(a.end), "who": a.who} for a in s.attended],
                "uses": [
                    {"what": u.what, "amount": u.amount, "start": iso(u.start), "end": iso(u.end), "celsius": u.celsius}
                    for u in s.uses
                ],
                "give_minutes": s.give_minutes,
                "noted": list(s.noted),
            }
            for s in sheet.slots
        ],
        "given_up": [{"what": g.what, "why": g.why, "minutes": g.minutes} for g in sheet.given_up],
        "assumed": list(sheet.assumed),
        "rules": sheet.rules,
        "stops": list(sheet.stops),
        "cautions": list(sheet.cautions),
        "noted": list(sheet.noted),
    }
