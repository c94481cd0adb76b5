"""Looking back during the evening, probe readings, and the closing page."""

from board.base.words.evening import kept_where
from board.base.words.looking_back import CLOSING_BEGAN, CLOSING_ENDED, CLOSING_PLANNED, CLOSING_STEPS
from board.base.words.signs import SIGN
from board.base.words.times import degrees, degrees_alone, missing, span


def plates(lines: list[str]) -> str:
    return "; ".join(lines)


LOOK_SIGNS = {
    "later": SIGN["again"],
    "slip": SIGN["wrong"],
    "out": SIGN["left-out"],
    "push": SIGN["moved"],
    "note": SIGN["noted"],
    "reading": SIGN["reading"],
    "warned": SIGN["mind"],
    "stops": SIGN["stop"],
    "past": SIGN["past"],
    "put-away": SIGN["finished"],
    "said": SIGN["finished"],
    "back": SIGN["undone"],
    "board": SIGN["board"],
}


def told_said(over: int, going: int, names: str) -> str:
    more = f", {going} under way" if going else ""
    return f"said, not seen: {over} done{more}: {names}"


def told_called(headline: str) -> str:
    return f"called: {headline}"


def told_by(text: str, who: str) -> str:
    return f"{text} (said by {who})"


def told_begun(name: str) -> str:
    return f"begun: {name}"


def told_looked_in(name: str) -> str:
    return f"looked in: {name}"


def told_done(name: str, by_itself: bool) -> str:
    return f"ended by itself: {name}" if by_itself else f"done: {name}"


def told_later(name: str, minutes: int) -> str:
    return f"later: {name}, again in {minutes} min"


def told_offered(brings: str) -> str:
    return f"offered: {brings}"


def told_note(text: str, about: str | None) -> str:
    return f"note on {about}: {text}" if about else f"note: {text}"


def told_warned(name: str) -> str:
    return f"about to go past its best: {name}"


def told_undone(text: str) -> str:
    return f"{text} (undone)"


TOLD_NIGHT = "a night of mishaps began"
TOLD_OPENED, TOLD_REOPENED, TOLD_CLOSED = "the board was opened", "the board came back", "the evening was ended"
TOLD_NOTHING = "an answer"


def about_step(pieces: list[str]) -> str:
    return " · ".join(pieces)


def note_line(clock: str, text: str) -> str:
    return f"{clock} “{text}”"


def reading(celsius: float, wanted: float, lacks: float, fahrenheit: bool) -> str:
    """`core 71 °C (159.8 °F), 3 °C below the 74 wanted`."""
    core = f"core {degrees(celsius, fahrenheit)}"
    if not lacks:
        return f"{core}, {degrees_alone(wanted, fahrenheit)} wanted"
    side = "below" if celsius < wanted else "above"
    return f"{core}, {missing(lacks, fahrenheit)} {side} the {degrees_alone(wanted, fahrenheit)} wanted"


def reading_at(celsius: float, clock: str, wanted: float, fahrenheit: bool) -> str:
    """`core 71 °C (159.8 °F) at 18:42, 74 wanted`, for a call's detail."""
    return f"core {degrees(celsius, fahrenheit)} at {clock}, {degrees_alone(wanted, fahrenheit)} wanted"


def reading_again(text: str, minutes: int) -> str:
    return f"{text}; asked again in {minutes} min"


def soon_over(name: str, limit: str, where: str | None) -> str:
    return f"{name}: good only until {limit} ({kept_where(where)})"


KEPT_PAST_BEST = "What stood past its best: taste it, use it or leave it."
CLOSING_LEGEND = " · ".join(
    [*(f"{SIGN[mark]} {mark}" for mark in (CLOSING_PLANNED, CLOSING_BEGAN, CLOSING_ENDED)), "then how much later"]
)


def closing_pushed(minutes: int) -> str:
    return f"pushed {span(minutes)}"


def closing_put_away(course: str, at: str, dish: str, stood: int, limit: int) -> str:
    """`Main, 22:10: custard had been out 85 of 120 min`."""
    over = f", {span(stood - limit)} past it" if stood > limit else ""
    return f"{course}, {at}: {dish} had been out {stood} of {limit} min{over}"


def closing_day(day: str) -> str:
    return f"{CLOSING_STEPS}, {day}"
