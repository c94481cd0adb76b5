"""How long those who eat stay seated once a course is served, and what gets them up. Pure."""

from collections.abc import Callable, Collection, Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta

from board.sheet.company import sitters
from board.sheet.run_sheet import Attended, CourseSlot, RunSheet, Slot

MINUTE = timedelta(minutes=1)


@dataclass(frozen=True, slots=True)
class Up:
    """Work that gets somebody up within the stretch. `leads_to`: the next course it is for, if any."""

    slot: Slot
    part: Attended
    leads_to: CourseSlot | None

    @property
    def minutes(self) -> int:
        return round((self.part.end - self.part.start) / MINUTE)


@dataclass(frozen=True, slots=True)
class Quiet:
    """A course that is eaten seated. `until`: when the first who sits gets up, for the clearing at the latest;
    `missing`: by how many minutes that is sooner than the stretch asks for; `ups`: all within it, in order of time."""

    course: CourseSlot
    served: datetime
    until: datetime
    missing: int
    ups: tuple[Up, ...]

    @property
    def broken(self) -> int:
        """What is missing, and the minutes of all work within the stretch, none for more than all of it."""
        once = {(up.slot.id, up.part.start): up.minutes for up in self.ups}  # however many people it takes
        return self.missing + sum(min(self.course.stretch, minutes) for minutes in once.values())


def quiet(
    sheet: RunSheet,
    span: Callable[[Slot], tuple[datetime, datetime]],
    work: Iterable[tuple[Slot, Iterable[Attended]]],
    left_out: Collection[str] = (),
) -> tuple[Quiet, ...]:
    """Of each course that is served and eaten seated. `span`: when a slot begins and ends, as planned, as it looks or
    as it was; `work`: when hands are on what, told likewise. What is done beside the guests gets nobody up."""
    slots, seated = sheet.by_id(), sitters(sheet)
    parts = sorted(
        ((part, slot) for slot, each in work if not slot.with_guests for part in each if part.who in seated),
        key=lambda found: (found[0].start, found[1].id),
    )
    found = []
    for course in sheet.courses:
        if not course.stretch or course.serve in left_out:
            continue
        served, cleared = span(slots[course.serve])[1], span(slots[course.clear])[0]
        asked = served + course.stretch * MINUTE
        after = [(part, slot) for part, slot in parts if part.end > served and slot.id != course.serve]
        ends = [part.start for part, _ in after] + ([cleared] if cleared >= served else [])
        until = max(served, min(ends, default=served))
        ups = tuple(Up(slot, part, leads_to(sheet, slot)) for part, slot in after if part.start < asked)
        found.append(Quiet(course, served, until, max(0, round((asked - until) / MINUTE)), ups))
    return tuple(found)


def as_planned(sheet: RunSheet) -> tuple[Quiet, ...]:
    """As planned."""
    return quiet(sheet, lambda slot: (slot.start, slot.end), ((slot, slot.attended) for slot in sheet.slots))


def leads_to(sheet: RunSheet, slot: Slot) -> CourseSlot | None:
    """The first course to go out of those a piece of work is for."""
    slots, serves = sheet.by_id(), {course.serve: course for course in sheet.courses}
    seen, queue = set[str](), [slot.id]
    while queue:
        id_ = queue.pop()
        if id_ not in seen:
            seen.add(id_)
            queue += slots[id_].then if id_ not in serves and id_ in slots else ()
    return next((course for course in sheet.courses if course.serve in seen), None)
