"""What a run sheet says: what is given up and why, what holds a step where it is."""

from collections.abc import Iterable, Mapping, Sequence
from datetime import datetime

from board.base.dial import in_both_scales
from board.base.words.evening import kept_where
from board.base.words.times import clock, day_and_clock, degrees, dial, short, span
from board.plan.resolve.assumed import Kind, Value

# --- what is assumed ----------------------------------------------------------------------------------------------

_ANY_TIME = "is done any time before the guests arrive"
ASSUMED: dict[Kind, str] = {
    "before-guests": "is done before the guests arrive, if it can be",
    "last-hours": (
        "is done in the last {most} before {event}, which is a guess (say when, for example `before: guests arrive, at "
        "most 1 h`)"
    ),
    "any-time": f"{_ANY_TIME} (say when, for example `before: guests arrive, at most 1 h`)",
    "any-time-by-words": f"{_ANY_TIME} (when it is, say with `day:`, `after:` or `before:`)",
    "chilled": "is cold at most {most} before {event}, and then stays in the fridge, as usual",
    "soon-before": "is done in the last {most} before {event}, as usual",
    "before": "is done {least} to {most} before {event}, as usual",
    "soon-after": "is done within {most} after {event}, as usual",
    "after": "is done {least} to {most} after {event}, as usual",
    "place": "is done {place}",
    "place-and-hands": "is done {place}, with hands on it all the time",
    "fridge-room": "needs no fridge room worth counting",
    "shelf": "takes 1 shelf",
    "ring": "takes 1 ring",
    "takes": "takes {minutes}",
    "thaws": "thaws in {minutes}",
    "hands": "needs hands all the time",
    "hands-throughout": "needs hands all the time, for {minutes} (say `attended:`)",
    "hands-in-part": "needs hands for {work} of its {minutes} (say `attended:`)",
    "hands-at-start": "needs hands {start} at the start",
    "hands-at-both-ends": "needs hands {start} at the start and {end} at the end",
    "hands-for-fresh-water": "needs hands {start} at the start, and {look} every {every} for fresh water",
    "keeps": "keeps {minutes} in the room, to be careful (say `keeps:`)",
    "keeps-as": "keeps {minutes} {kept}, as is usual for {of}",
    "keeps-cold": "keeps {minutes} in the fridge it came from, to be careful (say `keeps:`)",
    "keeps-by-times": "keeps {minutes} {kept}, as your times let it stand (say `keeps:`)",
    "keeps-past": "keeps {minutes} {kept} by your times; usual is {usual} {usually}, for {of}",
    "best-within": "served within {minutes} of being ready, if it can be",
    "guessed": "{keys} guessed, and not confirmed",
    "core": "is done at {celsius} °C in the middle ({rules})",
    "seat": "{minutes} to bring the guests to the table",
    "serve": "{minutes} to plate and carry a course",
    "clear": "{minutes} to clear a course",
    "eaten": "eaten in {minutes}",
    "sit": "nobody who eats gets up for {minutes} once it is served",
    "sit-hot": "nobody who eats gets up for {minutes} once it is served, as something of it is hot",
    "may-slip": "may go out up to {minutes} late",
    "laid": "is laid with {pieces}",
    "laid-throughout": "is laid with {pieces}: the whole meal",
    "wash-a-piece": "{each} min to wash a piece of the table, at least {least}",
    "clear-down": (
        "{minutes} to clear down the kitchen in the last {most} before the guests arrive (a job of that name goes "
        "before it; `wash up: no` under kitchen leaves it out)"
    ),
    "wash-a-tool": (
        "{minutes} to wash a tool before another dish goes into it (`wash up: no` under kitchen leaves it out)"
    ),
    "kitchen": "an ordinary kitchen: one oven with two shelves, four rings",
    "one-oven": "the kitchen has one oven with two shelves",
    "rings": "the kitchen has {rings} rings",
    "shelves": "has {shelves} shelves",
    "oven-range": "goes from {low} to {high} °C",
    "oven-heats": "heats from cold to {to} °C in {minutes}",
    "oven-cools": "cools from {begin} to {to} °C in {minutes}",
    "away": "{who} is away {since} to {until}, as no time is given",
    "read-as": "{words!r} is read as {meant}",
    "part-of-name": "{words!r} is read as part of the name",
    "not-weighed": "{words!r} is not weighed: all of {meant} counts",
    "red-meat": "an allergy to {words} is read as no {meant}: milk and gelatine are asked about too",
}
# The same where it decided a line of the sheet, in as few words as will do.
GUESSED: dict[Kind, str] = {
    "keeps": "keeps {minutes}: assumed, say keeps:",
    "keeps-as": "keeps {minutes} {kept}: assumed",
    "keeps-cold": "keeps {minutes} in the fridge: assumed, say keeps:",
    "keeps-by-times": "keeps {minutes} {kept}: your times, say keeps:",
    "keeps-past": "keeps {minutes} {kept}: your times",
    "best-within": "best within {minutes}: assumed",
    "takes": "{minutes}: assumed",
    "seat": "{minutes} for {guests} guests: assumed",
    "serve": "{minutes} for {guests} guests: assumed, say serve:",
    "clear": "{minutes} for {guests} guests: assumed, say clear:",
    "eaten": "eaten in {minutes}: assumed",
    "guessed": "{keys} guessed",
    "oven-heats": "heating time: assumed",
    "last-hours": "hour: a guess, say before:",
    "any-time": "hour: assumed, say before:",
    "hands-throughout": "hands all the time: assumed, say attended:",
    "hands-in-part": "hands {work} of {minutes}: assumed, say attended:",
}
USUAL_HOUR, USUAL_HOUR_AND_LENGTH = "usual hour: assumed", "usual hour and length: assumed"
_FOR_SO_MANY: dict[Kind, str] = {
    "seat": " ({guests} guests)",
    "serve": " ({guests} guests, one pair of hands; say `serve:`)",
    "clear": " ({guests} guests, one pair of hands; say `clear:`)",
}
_IN_MINUTES = ("minutes", "work", "start", "end", "look", "every", "least", "most", "stands", "usual")
_PLACES = {
    "worktop": "at the worktop", "front-of-house": "front of house", "fridge": "in the fridge",
    "freezer": "in the freezer",
}  # fmt: skip
KEPT = {
    "room": "in the room", "fridge": "in the fridge", "freezer": "in the freezer", "hot": "off the heat",
    "soft": "out of the freezer",
}  # fmt: skip
_EVENTS = {
    "guests": "the guests arrive",
    "table": "the guests come to the table",
    "work": "{name!r}",
    "served": "{name} is served",
    "cleared": "{name} is cleared",
}


def assumed(kind: Kind, values: Mapping[str, Value], about: Sequence[str]) -> str:
    """`takes 25 min: lay the table, fold the napkins`."""
    spoken = {name: _value(name, value) for name, value in values.items()}
    if "event" in values:
        spoken["event"] = _EVENTS[spoken["event"]].format_map(spoken)
    told = ASSUMED[kind].format_map(spoken) + ("; the food rules go first" if "food" in values else "")
    told += _FOR_SO_MANY[kind].format_map(spoken) if "guests" in values else ""
    told += f"; and before {spoken['ahead']}" if "ahead" in values else ""
    told += " (of no known job: say `takes:`)" if "ours" in values else ""
    return f"{told}: {', '.join(about)}" if about else told


def guessed(kind: Kind, values: Mapping[str, Value]) -> str:
    """`keeps 1 day in the fridge: assumed`."""
    told = GUESSED.get(kind, USUAL_HOUR).format_map({name: _value(name, value) for name, value in values.items()})
    return f"{told}, say takes:" if "ours" in values else told


def _value(name: str, value: Value) -> str:
    match value:
        case tuple():
            return " and ".join(map(repr, value)) if name == "ahead" else ", ".join(value)
        case str() if name in ("since", "until"):
            at = datetime.fromisoformat(value)
            return day_and_clock(at) if name == "since" else clock(at)
        case str():
            return {"place": _PLACES, "kept": KEPT, "usually": KEPT}.get(name, {}).get(value, value)
        case int() if name in _IN_MINUTES:
            return short(value)
        case _:
            return f"{value:g}"


# --- cooling -----------------------------------------------------------------------------------------------------

COOLING_TAKEN = {
    "newton": "it falls fast at first and ever slower, by Newton's law, and is stirred now and then",
    "depth": "twice as deep takes four times as long (Dickerson & Read 1973)",
    "unsourced": "the figures behind it are common practice, no source: a probe goes before them",
    "shallow-in-air": "so shallow a layer in still air may well take longer than this says",
    "readings": "it goes on falling as the probe's readings show, where it stands now",
}


def cooling_stands(depth_cm: float, vessel: str, place: str, ambient_celsius: float) -> str:
    return f"{depth_cm:g} cm deep, uncovered, in {vessel}; {place} at {degrees(ambient_celsius)}"


# --- guests' plates ----------------------------------------------------------------------------------------------


def plate(name: str, needs: Iterable[str], own: Sequence[str], never: Sequence[str], asked: Sequence[str]) -> str:
    """One guest's plate at one course: `Tomas (vegetarian): Lentils, not Beef shin`."""
    told = [", ".join(own)] if own else []
    told += [f"not {', '.join(never)}"] if never else []
    told += [f"ask before serving {', '.join(asked)}"] if asked else []
    return f"{name} ({', '.join(needs)}): {', '.join(told)}"


# --- at the table ------------------------------------------------------------------------------------------------


def up(at: str, who: str, name: str, kind: str) -> str:
    """`19:27 Ada for 'roast the roots'`; `who`: empty where one sits."""
    part = {"look-in": "a look at ", "end": "the end of "}.get(kind, "")
    return f"{at}{f' {who}' if who else ''} for {part}{name!r}"


def ups(each: Sequence[str], course: str, at: str) -> str:
    """Together, with the course that they are for."""
    return ", ".join(each) + (f" ({course} {at})" if course else "")


# --- times and temperatures --------------------------------------------------------------------------------------


# --- the timetable -----------------------------------------------------------------------------------------------


def dial_alone(celsius: int, fahrenheit: bool = False, as_written: bool = True) -> str:
    """`165 °C`: the one that stands first."""
    in_c, in_f = in_both_scales(celsius, in_fahrenheit=fahrenheit == as_written)
    return in_f if fahrenheit else in_c


def heat_oven(oven: str, celsius: int, came_from: int | None, fahrenheit: bool = False, as_written: bool = True) -> str:
    verb = "heat" if came_from is None or celsius >= came_from else "let"
    tail = f"{'' if verb == 'heat' else 'cool '}to {dial_alone(celsius, fahrenheit, as_written)}"
    return f"{verb} the {oven} {tail}"


def call_heat(
    oven: str,
    celsius: int,
    came_from: int | None,
    *,
    ajar: bool = False,
    fahrenheit: bool = False,
    as_written: bool = True,
) -> str:
    down = " down" if came_from is not None and celsius < came_from else ""
    door = ", door ajar until it is there" if ajar else ""
    return f"{oven[:1].upper()}{oven[1:]}{down} to {dial(celsius, fahrenheit, as_written)}{door}"


def switch_off(what: str) -> str:
    return f"turn the {what} off"


def call_off(what: str) -> str:
    return f"Turn the {what} off"


def call_rest(oven: str, *, ajar: bool) -> str:
    return f"{oven[:1].upper()}{oven[1:]} off, door {'ajar' if ajar else 'shut'}, all stays inside"


def call_heated(oven: str, celsius: int, fahrenheit: bool = False, as_written: bool = True) -> str:
    return f"{oven[:1].upper()}{oven[1:]} at {dial_alone(celsius, fahrenheit, as_written)}?"


def late(course: str, minutes: int) -> str:
    return f"{course} goes out {minutes} min late"


def over_hours(name: str, when: str) -> str:
    return f"{name} ({when}) lies outside the hours given"


def past_limit(name: str, stands: str, limit: str, where: str) -> str:
    return f"{name} stands {stands}, and keeps {limit} ({where})"


def past_clock(dish: str, stands: str, limit: str) -> str:
    return f"{dish} stands out {stands} until it is eaten, and may for {limit} (food 10)"


def longest(stretch: str) -> str:
    return f"the longest is {stretch}"


AT_THE_TABLE, CARRIED = "at the table", "plated and carried"


def kept_after(name: str) -> str:
    return f"kept after {name}"


def waits_past(second: str, first: str, waits: str, most: str) -> str:
    return f"{second} begins {waits} after {first}, at most {most} was wanted"


def not_ready_for(first: str, second: str) -> str:
    return f"{first} is not done when {second}"


def no_place(name: str, stands: str, where: str) -> str:
    return f"{name} stands {stands} without the place it should be kept in ({where})"


GIVEN_UP_SINCE = {
    "not-its-time": "it does not fit into the time it was given",
    "no-hours-left": "no hours of a free pair of hands are left for it",
    "nobody-home": "something hot would run with nobody at home",
}
HOURS_BEGIN = "the hours given begin only then"
OWN_TIME = "the time it was given begins only then"
NOTHING_KNOWN = "what holds it is not known"


def causes(each: list[str], *, on_top: bool) -> str:
    """Several, each enough by itself; or what comes on top of the first."""
    return ("; and on top of that: " if on_top else "; and even without that: ").join(each)


def all_there_is(resource: str, capacity: float) -> str:
    """What there is of something that more is wanted of."""
    if resource == "rings":
        return "one ring is" if capacity == 1 else f"{capacity:g} rings are"
    if resource in ("fridge", "freezer"):
        return f"{capacity:g} litres of {resource} room are"
    return f"only one {resource} is" if capacity == 1 else f"{capacity:g} of {resource} are"


def hands_there_are(people: int, names: Sequence[str] = ()) -> str:
    """`names`: who they are, where they are not all there are."""
    if names:
        return " and ".join(f"{name}'s" for name in names) + " hands are"
    return "one pair of hands is" if people == 1 else f"{people} pairs of hands are"


def clash_over(there_is: str, listed: str) -> str:
    return f"{there_is} not enough for {listed}"


def clash_of_hours(listed: str, names: Sequence[str] = ()) -> str:
    whose = " or ".join(f"{name}'s" for name in names) or "any hands"
    return f"no free hours of {whose} suit {listed}"


def clash_over_oven(oven: str | None, listed: str, shelves: int | None) -> str:
    """`shelves` where one setting would do for all, and only the room is short."""
    which = f"the {oven}" if oven is not None else "the ovens"
    why = "no one setting does for all of them" if shelves is None else f"there is room for {shelves} shelves"
    return f"{which} cannot take {listed}: {why}"


def accepts(low: int, high: int, *, off: bool) -> str:
    if off:
        return "switched off"
    return f"{low} °C" if low == high else f"{low} to {high} °C"


def taken_of(thing: str, amount: float) -> str:
    """How much of something is wanted, where that is worth telling."""
    if thing in ("fridge", "freezer"):
        return f"{amount:g} l"
    return f"{amount:g}" if amount > 1 else ""


def keeping_it(name: str) -> str:
    return f"keeping what comes of '{name}'"


def some_of(things: list[str], most: int) -> str:
    if len(things) > most + 1:
        return f"{', '.join(things[:most])} and {len(things) - most} more"
    return f"{', '.join(things[:-1])} and {things[-1]}" if len(things) > 1 else things[0]


REASONS = {
    "order": "it comes first",
    "hands": "the same hands",
    "oven": "the oven",
    "heat": "the oven's heat",
    "table": "nobody gets up before",
}
WHY_WAITS_FOR_NOTHING = "  it waits for nothing; it stands where it keeps best until it is wanted"
WHY_NO_GIVE = "  no course hangs on it"


def several_steps(name: str, which: list[str]) -> str:
    return f"{name!r} could be several steps: {'; '.join(which)}. Write more of its words"


def no_such_step(name: str, guess: str) -> str:
    return f"no step is called {name!r}.{guess}"


def why_stands(name: str, start: str, end: str) -> str:
    return f"{name}: {start} to {end}"


def why_waits(name: str, until: str, reason: str, *, tight: bool) -> str:
    mark = "held by" if tight else "after"
    return f"  {mark} {name}, until {until} ({REASONS.get(reason, reason)})"


def why_is_waited_for(name: str, at: str, reason: str, *, tight: bool) -> str:
    mark = "holds" if tight else "before"
    return f"  {mark} {name}, at {at} ({REASONS.get(reason, 'the guests come' if reason == 'ready' else reason)})"


def why_keeps(stands: int, limit: int, where: str | None) -> str:
    return f"  its result stands {span(stands)} of {span(limit)} ({kept_where(where)})"


def why_assumed(told: str) -> str:
    return f"  assumed: {told}"


def why_give(minutes: int) -> str:
    return f"  it can slip {span(minutes)} before a course is late or the guests are there"


# --- ways out ----------------------------------------------------------------------------------------------------


def waits_for(name: str, until: str, reason: str) -> str:
    because = {
        "order": "it comes first",
        "hands": "the hands are busy",
        "oven": "the oven",
        "heat": "the oven's heat",
        "table": "nobody gets up before",
    }.get(reason, reason)
    return f"waits for {name} until {until} ({because})"


def taken_up(name: str, at: str) -> str:
    return f"it is taken up by {name} at {at}"


# --- what is left over --------------------------------------------------------------------------------------------


def left_from(much: str, dish: str, since: str, until: str) -> str:
    return f"{much}, left from {dish} on {since}, in the fridge until {until}"


def with_needs(told: str, needs: Sequence[str]) -> str:
    return f"{told}: {'; '.join(needs)}" if needs else told


def needs_left(dish: str, much: str) -> str:
    return f"{dish} needs {much}"


def needs_left_else(dish: str, much: str, when: str, *, too_late: bool) -> str:
    return f"{dish} needs {much} on {when}, {'when it is too old' if too_late else 'before it is there'}"


def keep_left(much: str, days: int) -> str:
    return f"keep {much}: {'1 day' if days == 1 else f'{days} days'} in the fridge"
