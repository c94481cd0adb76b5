"""One cook, a roast that runs by itself and a sauce that wants stirring: small enough to play minute by minute."""

from dataclasses import dataclass

import msgspec

from board.sheet.run_sheet import Attended, CourseSlot, Lasts, RunSheet, Slot
from tests.conftest import at, follows, slot

SAUCE_AT, ROAST_MINUTES, SERVE_AT, SERVING = 14, 30, 30, 3
SAUCES = range(12, 24)  # minutes, each as likely as the others


@dataclass(frozen=True)
class Brief:
    """When the roast wants the cook: minutes after its start, or before its end (then negative), and for how long."""

    at: int
    minutes: int
    kind: str


END = (Brief(-4, 4, "end"),)
LOOK_IN = (Brief(26, 2, "look-in"),)
BOTH = (*LOOK_IN, Brief(-2, 2, "end"))


def one_cook(*briefs: Brief, sauce: Lasts | None = None) -> RunSheet:
    """Roast 18:00-18:30, the cook at it as told; sauce 18:14-18:26, hands on all the time; served 18:30-18:33."""
    parts = tuple(
        Attended(at(f"18:{begin}"), at(f"18:{begin + b.minutes}"), "host", b.kind)
        for b in briefs
        for begin in [b.at % ROAST_MINUTES]
    )
    slots = (
        slot("roast", "18:00", "18:30", lane="oven", attended=parts, lasts=Lasts(30, 30, 30)),
        slot("sauce", "18:14", "18:26", lasts=sauce or Lasts(12, 12, 12)),
        slot("serve", "18:30", "18:33", kind="serve", attended=(), waits=follows("roast", "sauce"),
             lasts=Lasts(3, 3, 3)),
    )  # fmt: skip
    course = CourseSlot("Roast", at("18:33"), at("18:33"), "serve", "none", may_slip=0)
    return RunSheet("One cook", "UTC", "0" * 64, "2026-11-28", at("18:00"), (course,), slots, hands=("host",))


def minute_by_minute(sauce: int, *briefs: Brief) -> int:
    """How late the course is, played a minute at a time: the cook is at the roast when it wants him, else at the
    sauce from 18:14 on."""
    at_roast = {b.at % ROAST_MINUTES + n for b in briefs for n in range(b.minutes)}
    minute, left = SAUCE_AT, sauce
    while left:
        left -= minute not in at_roast
        minute += 1
    return max(minute, ROAST_MINUTES, SERVE_AT) - SERVE_AT


def with_sauce_of(sheet: RunSheet, minutes: int) -> RunSheet:
    """What a forecast plays if the sauce takes so long."""

    def longer(each: Slot) -> Slot:
        end = at(f"18:{SAUCE_AT + minutes}")
        return msgspec.structs.replace(each, end=end, attended=(Attended(each.start, end, "host", "all"),))

    return msgspec.structs.replace(sheet, slots=tuple(longer(s) if s.id == "sauce" else s for s in sheet.slots))
