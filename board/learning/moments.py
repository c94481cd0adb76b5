"""When the guests of a plan really come, and when its courses are best wanted. Pure; minutes after the plan's own.

A moment is late by so many minutes, not by a share, so the minutes themselves are taken as normal; the belief, its
outliers and its yardsticks are those of lengths (`learn`).
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from zoneinfo import ZoneInfo

from board.base.words.times import short
from board.learning.figures import believing
from board.learning.learn import PRIOR_SPREAD, Estimate, Lateness, estimate, weight
from board.plan.edit.edit import Edit
from board.plan.edit.edits import PushCourse, SetArrival, SetGap
from board.plan.model.model import Plan
from board.plan.phrases.when import clock_of, minute_of
from board.plan.resolve.course_times import wanted_moments
from board.plan.resolve.known_again import name_key
from board.review.came import GUESTS, minute_from
from board.review.observe import PastEvening

# Ours: how much a moment varies from evening to evening, how far a plan has it wrong, and the steps hosts write.
VARIES, OFF, STEP = 6.0, 8.0, 5


@dataclass(frozen=True, slots=True)
class Moment:
    """The guests' coming (`name` empty) or a course's time. `minute`: from midnight; with `after`, from that course or
    from the guests' coming (empty), as `words` says it."""

    name: str
    minute: int
    after: str | None = None
    words: str = ""

    def text(self, later: int = 0) -> str:
        """As the plan writes it."""
        if self.after is None:
            return clock_of(self.minute + later)
        return f"{short(self.minute + later)} after {self.words}"

    def edit(self, later: int) -> Edit:
        """What writes it so many minutes later."""
        if not self.name:
            return SetArrival(self.text(later))
        return PushCourse(self.name, self.text(later)) if self.after is None else SetGap(self.name, self.minute + later)


@dataclass(frozen=True, slots=True)
class Shift:
    """A moment that evenings had `later` (below 0: sooner) by so many minutes, and by how much each then moves, itself
    and what the plan has after it, by name."""

    moment: Moment
    estimate: Estimate
    later: int
    moved: Mapping[str, int]


def moments_of(plan: Plan) -> tuple[Moment, ...]:
    """The guests' coming first, then the courses in their order."""
    found, before = [Moment(GUESTS, minute_of(plan.arrive))], GUESTS
    zone = ZoneInfo(plan.zone)
    for course, wanted in zip(plan.courses, wanted_moments(plan), strict=True):
        after = course.at.after
        if after is None:
            found.append(Moment(course.course, minute_from(plan.date, wanted, zone)))
        else:
            anchor = before if after.course_before else after.course or GUESTS
            words = "the course before" if after.course_before else anchor or "guests arrive"
            found.append(Moment(course.course, after.minutes, anchor, words))
        before = course.course
    return tuple(found)


def learn_moments(plan: Plan, evenings: Iterable[PastEvening], known: Mapping[str, frozenset[str]]) -> Iterator[Shift]:
    """What evenings of this plan (by its name) say is at another time. `known`: by name, marks of the logs learned from
    before."""
    own = [evening for evening in evenings if name_key(evening.plan) == name_key(plan.event)]
    moments = moments_of(plan)
    first = min((each.minute for each in moments if each.name and each.after is None), default=None)
    for moment in moments:
        marks = known.get(moment.name, frozenset())
        late = [each for evening in own if evening.mark not in marks for each in _late(moment, evening)]
        if not late:
            continue
        seen = sum(1 for evening in own if evening.mark in marks)
        found = estimate(believing(0.0, weight(VARIES, OFF) + seen, PRIOR_SPREAD + seen / 2, VARIES), late, Lateness)
        later = STEP * round(found.middle / STEP)
        if not moment.name and first is not None:  # nobody can be served before the guests are there
            later = min(later, max(0, first - moment.minute))
        if abs(later) >= STEP and found.surprises:
            yield Shift(moment, found, later, _moved(moment.name, later, moments))


def _late(moment: Moment, evening: PastEvening) -> Iterator[float]:
    """Minutes after the plan's, of one evening; none where it was not seen, or what it is wanted after."""
    came = {name_key(name): minute for name, minute in evening.came}
    here = came.get(name_key(moment.name))
    start = 0 if moment.after is None else came.get(name_key(moment.after))
    if here is not None and start is not None:
        yield here - start - moment.minute


def _moved(name: str, later: int, moments: Sequence[Moment]) -> dict[str, int]:
    found = {name_key(name): later}
    for each in moments:
        if each.after is not None and name_key(each.after) in found:
            found[name_key(each.name)] = later
    return found
