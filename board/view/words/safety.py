"""Food safety on the board: readings to take, holds, clocks, cooling and stops."""

from collections.abc import Sequence
from math import ceil

from board.base.words.signs import SIGN
from board.base.words.times import degrees, span

# --- readings that are asked for ---------------------------------------------------------------------------------

READ_FIRST = "read it"


def call_reheat(name: str) -> str:
    return f"Heat again: {name}"


def too_cold(celsius: float, at: str, wanted: str, fahrenheit: bool) -> str:
    """`to 74 °C (165 °F) all through; was 50 °C (122 °F) at 18:42`: it fits a line of 80 beside how long it waits."""
    return f"to {wanted} all through; was {degrees(celsius, fahrenheit)} at {at}"


def reading_hot(text: str, limit: str) -> str:
    return f"{text}; {limit} or above is hot enough"


def reading_cold(text: str, limit: str, wanted: str) -> str:
    return f"{text}, below the {limit} of hot food: heat it to {wanted} all through, or leave it out"


def reading_not_yet(text: str, wanted: str) -> str:
    return f"{text}; {wanted} wanted, all through"


COLD_ENDED = {
    "heated": "heated again, {}",
    "left-out": "left out",
    "served": "went out without being heated again",
    "open": "not heated again",
}


def closing_cold(reading: str, ended: str) -> str:
    return f"{reading}, too cold for food kept hot; {ended}"


def ended_with_reading(text: str) -> str:
    return f"{text}; done"


def held_from(text: str, minutes: float, since: str) -> str:
    return f"{text}, held from {since} for {minutes:g} min"


def reading_holds(text: str, minutes: int, wanted: float) -> str:
    return f"{text}; to be held {wanted:g} min, asked again in {minutes} min"


# --- clocks ------------------------------------------------------------------------------------------------------

CLOCK_SIGN = {False: SIGN["clock"], True: SIGN["past"]}  # by whether its limit is reached
CLOCK_TOLD = {
    "soon": "soon out too long",
    "over": "out too long. Don't serve or keep it",
    "put-away": "leftovers to be put away",
}

RAW_TOLD = {
    "soon": "raw, and soon out too long",
    "over": "raw, and out too long: throw it out; cooking does not mend it",
}


def told_clock(name: str, what: str, *, raw: bool = False) -> str:
    return f"{name}: {(RAW_TOLD if raw else CLOCK_TOLD)[what]}"


def raw_of(dish: str, food: str) -> str:
    return f"{dish}, raw {food}"


def raw_soon(name: str, out: int, limit: int, until: str) -> str:
    return f"{name}: may be out {out} of {limit} min; cook or chill by {until}"


def raw_over(name: str, limit: int) -> str:
    return f"{name}: may be out {_limit(limit)}. If so, throw it out; cooking does not mend it"


def clock_runs(name: str, out: int, until: str, *, raw: bool) -> str:
    return f"{name}: out {out} min; {'cook' if raw else 'eat'} or chill by {until}"


def clock_too_long(text: str) -> str:
    return f"{text}. At this rate it won't be"


def clock_soon(name: str, out: int, limit: int, until: str) -> str:
    return f"{name}: out {out} of {limit} min; eat it, chill it or keep it hot by {until}"


def clock_over(name: str, limit: int) -> str:
    return f"{name}: out {_limit(limit)}. Don't serve or keep it"


def put_away(course: str, by: str, *, keyed: bool = False) -> str:
    """`keyed`: with the key that tells the board that it is done."""
    key = " · f when it is" if keyed else ""
    return f"{course} leftovers: in the fridge, in shallow dishes, by {by}{key}"


def is_put_away(course: str) -> str:
    return f"put away: {course} leftovers"


def answer_put_away(course: str) -> str:
    return f"{course} leftovers put away"


def left_over(course: str, limit: int) -> str:
    return f"{course} leftovers: out {_limit(limit)}. Don't serve or keep them"


def _limit(minutes: int) -> str:
    hours = minutes // 60
    return f"{hours} hour{'s' if hours != 1 else ''}" if minutes % 60 == 0 else span(minutes)


def not_heated(name: str, wanted: float | None, read: float | None, fahrenheit: bool) -> str:
    """Of a heating that was left out: what its dish still has to be told of."""
    last = f", last read {degrees(read, fahrenheit)}" if read is not None else ""
    goal = f"; {degrees(wanted, fahrenheit)} wanted" if wanted is not None else ""
    return f"not heated through ({name} left out{last}{goal}): heat it, or don't serve it"


# The usual cautions, so short that they are read at the call. Common practice, no source.
CALL_CAUTIONS = {
    "flame": "Flame: away from cloth, hair",
    "charcoal": "Charcoal: outdoors only, never inside",
    "blades": "Blade: dry board, no hurry",
    "hot-fat": "Hot fat: never use water",
}

# --- what cools --------------------------------------------------------------------------------------------------


def core_reads(celsius: float, fahrenheit: bool) -> str:
    return f"core {degrees(celsius, fahrenheit)}"


def with_cooling(text: str, cooling: str) -> str:
    return f"{text}; {cooling}"


def cooling_outlook(stages: Sequence[str], readings: int, *, in_time: bool) -> str:
    based = f"an estimate by {readings} readings" if readings else "an estimate"
    mend = "" if in_time else ": shallower, ice, stir"
    return f"{based}: {'; '.join(stages)}{mend}"


def both_degrees(celsius: float, in_fahrenheit: float, fahrenheit: bool) -> str:
    """The pair a rule writes, the plan's unit first."""
    in_c, in_f = f"{celsius:g} °C", f"{in_fahrenheit:g} °F"
    return f"{in_f} ({in_c})" if fahrenheit else f"{in_c} ({in_f})"


def cooling_stage(cold: str, at: str, late_minutes: float) -> str:
    return f"{cold} at {at}, {'in time' if late_minutes <= 0 else f'{span(ceil(late_minutes))} late'}"


def cooling_never(cold: str) -> str:
    return f"{cold} never, where it stands"


# --- stops -------------------------------------------------------------------------------------------------------

TOLD_STOPS = "begun although something must be mended before anybody eats"
