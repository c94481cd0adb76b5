"""An evening played on, from one moment at which something is due to the next, by a host of one kind or another.

Without a screen: for plain output, for tests, and for what lies before a rehearsal that begins in mid-evening.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.base.clock import StoppedClock
from board.base.plain import one_line
from board.evening.calls import Call
from board.evening.wishes import Close, Done, Settle, Wish
from board.rehearsal import words
from board.rehearsal.draw import Night, instead, is_unheard, night_score, really_over, truly_over, unheard_until
from board.session.session import Evening
from board.view.board import headline
from board.view.present import Present

NEVER = datetime.max.replace(tzinfo=UTC)


class Stuck(Exception):
    """What is answered can never be: a fault of the program, not of the plan."""


@dataclass(frozen=True)
class Deed:
    """What the host does at a moment, in words too. `wish`: None where there is nothing to tell the board."""

    wish: Wish | None
    sign: str = ""
    said: str = ""


class AtOnce:
    """A host who answers each call the moment it is due, on an evening that goes by the sheet."""

    def deed(self, present: Present) -> Deed | None:
        return self.done(present, present.due[0]) if present.due else None

    def next(self, present: Present) -> datetime | None:
        """The moment at which there will be something to do."""
        return present.coming[0].due if present.coming else None

    def score(self, evening: Evening, answered: int) -> Iterator[str]:
        """How it went."""
        courses = evening.look().courses
        on_time = sum(1 for course in courses if course.is_served and course.late_minutes == 0)
        left_out = sum(1 for step in evening.state.steps.values() if step.status == "left-out")
        yield words.played_summary(answered, len(courses), on_time, left_out)

    def done(self, present: Present, call: Call) -> Deed:
        slot = present.state.sheet.by_id()[call.slot]
        return Deed(Done(*call.key), shared.PART_SIGN[call.part], one_line(headline(slot, call)))


class AsDrawn(AtOnce):
    """The same host on a drawn night: what is ready early is ended, a forgotten call answered when it is heard."""

    def __init__(self, night: Night) -> None:
        self.night = night

    def deed(self, present: Present) -> Deed | None:
        for slot, called in truly_over(self.night, present):
            if not called:
                return Deed(Settle(slot.id), shared.SIGN["finished"], words.ready_early(one_line(slot.name)))
        call = next((call for call in present.due if self.hears(present, call)), None)
        if call is None:
            return None
        slot = present.state.sheet.by_id()[call.slot]
        other = instead(self.night, present.state, slot, call.part, present.now)
        return self.done(present, call) if other is None else Deed(other.wish, shared.SIGN["wrong"], other.said)

    def hears(self, present: Present, call: Call) -> bool:
        """Whether a call that is due is answered now."""
        return not is_unheard(self.night, present, call)

    def next(self, present: Present) -> datetime | None:
        state = present.state
        moments = [
            super().next(present),
            *(really_over(self.night, state, slot) for slot in state.sheet.slots if not slot.ends_by_itself),
            *(unheard_until(self.night, state, slot) for slot in self.night.forgotten),
        ]
        return min((moment for moment in moments if moment is not None and moment > present.now), default=None)

    def score(self, evening: Evening, answered: int) -> Iterator[str]:
        yield ""
        yield from night_score(evening, self.night)


def advance(
    evening: Evening, clock: StoppedClock, host: AtOnce, until: datetime = NEVER
) -> Iterator[tuple[datetime, Deed]]:
    """All that the host does before a moment, and when; the clock is moved from one thing to the next. Raises Stuck,
    OSError."""
    while True:
        present = evening.tick()
        deed = host.deed(present) if present.now < until else None
        if deed is not None:
            refused = evening.wish(deed.wish) if deed.wish is not None else None
            if refused is not None:
                raise Stuck(refused.words)
            yield present.now, deed
        elif (moment := host.next(present)) is not None and moment < until:
            clock.set(moment)
        else:
            return


def catch_up(evening: Evening, clock: StoppedClock, until: datetime) -> None:
    """Answers everything due before a moment on time, as if it had gone by the sheet. Raises as above."""
    list(advance(evening, clock, AtOnce(), until))
    clock.set(until)


def play(evening: Evening, clock: StoppedClock, night: Night | None = None) -> Iterator[str]:
    """The whole evening as lines, as they happen; by the sheet, or as a night has it. Raises as above."""
    host = AtOnce() if night is None else AsDrawn(night)
    zone = ZoneInfo(evening.sheet.zone)
    answered, served = 0, set[str]()
    for moment, deed in advance(evening, clock, host):
        at = shared.day_and_clock(moment.astimezone(zone))
        answered += 1
        yield words.played(at, deed.sign, deed.said)
        for course in evening.tick().forecast.courses:
            if course.is_served and course.name not in served:
                served.add(course.name)
                yield words.played_course(at, one_line(course.name), course.late_minutes)
    evening.wish(Close())
    yield from host.score(evening, answered)
