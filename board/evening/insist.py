"""How hard an unanswered call rings. Pure: (calls, now, what was heard) → strokes of the bell.

A call rings when raised, after 1, 3, 6 and 10 minutes, then every 5; with one stroke, then two, then three. What burns
(the end on a hot lane) rings twice as fast.
"""

from collections.abc import Mapping, Sequence
from datetime import datetime

from board.evening.calls import Call
from board.evening.state import CallKey

# How often and how hard a call rings: ours.
FIRST_RINGS = (0.0, 1.0, 3.0, 6.0, 10.0)  # minutes after the call
THEN_EVERY = 5.0  # minutes
STROKES = (1, 2, 2, 3)  # of the first rings; the last one repeats
BURNS_FASTER = 2.0

# By waiting call: since when it waits, and how often it has rung.
Heard = Mapping[CallKey, tuple[datetime, int]]


def waited_minutes(call: Call, now: datetime) -> float:
    """Minutes since the call was raised; 0 if it was not."""
    return max(0.0, (now - call.raised).total_seconds() / 60) if call.raised is not None else 0.0


def rings_by(minutes: float, *, burns: bool) -> int:
    """How often a call has rung after waiting that many minutes; the first ring is the call itself."""
    pace = minutes * BURNS_FASTER if burns else minutes
    last = FIRST_RINGS[-1]
    if pace < last:
        return sum(1 for ring in FIRST_RINGS if ring <= pace)
    return len(FIRST_RINGS) + int((pace - last) // THEN_EVERY)


def strokes(rings: int) -> int:
    """Strokes of ring number `rings`, counted from 1."""
    return STROKES[min(rings, len(STROKES)) - 1]


def insistence(call: Call, now: datetime) -> int:
    """1 calm, 2 pressing, 3 overdue: the strokes of the last ring."""
    return strokes(rings_by(waited_minutes(call, now), burns=call.burns))


def to_ring(due: Sequence[Call], now: datetime, heard: Heard) -> tuple[list[Call], Heard]:
    """The calls that ring now, and what has been heard after that. A call put off and raised again starts over. If
    rings were missed (board closed, clock jumped), only the last is made up for."""
    ringing, known = [], {}
    for call in due:
        if call.silent:
            continue
        since = call.raised or now
        rings = rings_by(waited_minutes(call, now), burns=call.burns)
        before = heard.get(call.key)
        if before is None or before[0] != since or before[1] < rings:
            ringing.append(call)
        known[call.key] = (since, rings)
    return ringing, known
