"""Food safety on the board: readings to take, holds, clocks, cooling and stops."""

from collections.abc import Sequence
from math import ceil

from board.base.words.signs import SIGN
from board.base.words.times import degrees, span

# --- readings that are asked for ---------------------------------------------------------------------------------

READ_FIRST = "read it"


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
    "over": "out too long: do not serve or keep it",
    "put-away": "to be put away, what is left of it",
}

RAW_TOLD = {
    "soon": "raw, and soon out too long",
    "over": "raw, and out too long: throw it away, cooking does not mend it",
}


def told_clock(name: str, what: str, *, raw: bool = False) -> str:
    return f"{name}: {(RAW_TOLD if raw else CLOCK_TOLD)[what]}"


def raw_of(dish: str, food: str) -> str:
    return f"{dish}, raw {food}"


def raw_too_long(text: str) -> str:
    return f"{text}; as it looks, past that before it is cooked"


def raw_soon(name: str, out: int, limit: int, until: str) -> str:
    return f"{name}: may be out {out} of {limit} min; into the cold or cooked by {until}"


def raw_over(name: str, limit: int) -> str:
    return f"{name}, mind: may be out for {_limit(limit)}; if so, throw it away, cooking does not mend it"


def clock_runs(name: str, out: int, limit: int, until: str) -> str:
    return f"{name}: out {out} of {limit} min, until {until}"


def clock_too_long(text: str) -> str:
    return f"{text}; as it looks, past that before it is eaten"


def clock_soon(name: str, out: int, limit: int, until: str) -> str:
    return f"{name}: out {out} of {limit} min; into the cold, kept hot or eaten by {until}"


def clock_over(name: str, limit: int) -> str:
    return f"{name}, mind: out for {_limit(limit)}; do not serve or keep it"


def put_away(course: str, by: str, *, keyed: bool = False) -> str:
    """`keyed`: with the key that tells the board that it is done."""
    key = " · f when it is" if keyed else ""
    return f"put away what is left of {course} by {by}{key} (into the cold, shallow)"


def is_put_away(course: str) -> str:
    return f"put away: what is left of {course}"


def answer_put_away(course: str) -> str:
    return f"that what is left of {course} is put away"


def left_over(course: str, limit: int) -> str:
    return f"what is left of {course}, mind: out for {_limit(limit)}; do not serve or keep it"


def _limit(minutes: int) -> str:
    return f"{minutes // 60} h" if minutes % 60 == 0 else span(minutes)


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
