"""When an unanswered call rings, and what it sounds like. Pure: (calls, now, what was heard) → strokes of the bell.

Three sounds: one stroke is something to begin, two a look in, three something that burns or spoils. A call rings when
raised, after 1, 3, 6 and 10 minutes, then every 5; what burns twice as fast. The end of work in hand rings no more than
once, and only for what is to be begun then. While guests are at the table, only what burns or spoils is heard.
"""

from collections.abc import Mapping, Sequence
from datetime import datetime

from board.evening.calls import Call, Sound
from board.evening.state import CallKey, State

# How often and how hard a call rings: ours.
FIRST_RINGS = (0.0, 1.0, 3.0, 6.0, 10.0)  # minutes after the call
THEN_EVERY = 5.0  # minutes
PRESSING = (1, 2, 2, 3)  # how a call looks after its first rings; the last repeats
BURNS_FASTER = 2.0
STROKES: dict[Sound, int] = {"begin": 1, "look-in": 2, "burns": 3}

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


def insistence(call: Call, now: datetime) -> int:
    """1 calm, 2 pressing, 3 overdue."""
    if call.in_hand:
        return 1
    rings = rings_by(waited_minutes(call, now), burns=call.burns)
    return PRESSING[min(rings, len(PRESSING)) - 1]


def strokes(ringing: Sequence[Call]) -> int:
    """How often the bell strikes for calls that ring together: for what must not wait, if any is among them."""
    return max((STROKES[call.sound] for call in ringing if call.sound is not None), default=1)


def at_table(state: State) -> bool:
    """Whether guests sit over a course: it is served, and not cleared."""
    status = {id_: step.status for id_, step in state.steps.items()}
    return any(
        status.get(course.serve) == "finished" and status.get(course.clear) == "to-come"
        for course in state.sheet.courses
        if not course.standing
    )


def to_ring(due: Sequence[Call], now: datetime, heard: Heard, *, at_table: bool = False) -> tuple[list[Call], Heard]:
    """The calls that ring now, and what has been heard after that. A call put off and raised again starts over. If
    rings were missed (board closed, clock jumped), only the last is made up for; what was due while guests sat at the
    table is not."""
    ringing, known = [], {}
    called = {call.slot for call in due if call.part == "start"}
    for call in due:
        if call.sound is None or (call.in_hand and call.then in called):
            continue
        since = call.raised or now
        rings = 1 if call.in_hand else rings_by(waited_minutes(call, now), burns=call.burns)
        before = heard.get(call.key)
        rings_now = before is None or before[0] != since or before[1] < rings
        if rings_now and (call.sound == "burns" or not at_table):
            ringing.append(call)
        known[call.key] = (since, rings)
    return ringing, known
