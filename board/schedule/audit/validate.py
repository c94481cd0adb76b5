"""Whether a run sheet holds. Every rule is derived again from the plan, independently of whatever computed the sheet.

`validate` returns one plain sentence per fault; an empty list means the sheet holds. Soft limits (a late course, a
result kept too long, too few hours) may be broken if the sheet says so, with the minutes, among what was given up.
"""

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from itertools import islice, product
from zoneinfo import ZoneInfo

from board.base.words import day_and_clock
from board.plan.load import PlanFile
from board.schedule.audit.validate_clocks import StandsOut, clocks_are_as_planned, perishables
from board.schedule.audit.validate_hours import (
    everybody_walks_to_the_table,
    heats_with_nobody_home,
    kept_hot_with_nobody_home,
    nobody_is_in_two_places,
    out_of_hours,
)
from board.schedule.audit.validate_kitchen import kitchen_snags
from board.schedule.audit.validate_off import switched_off
from board.schedule.audit.validate_table import table_is_as_planned
from board.schedule.audit.validate_waits import waits_and_give
from board.schedule.audit.validate_ways import Done, fitting_ways, has_no_place, readings, whole_minutes
from board.sheet import said
from board.sheet.run_sheet import Lasts, RunSheet, Slot
from board.sheet.told import GivenUp, Late, NoPlace, NotReady, OverHours, PastClock, PastLimit, WaitsPast, What

READINGS_TRIED = 64  # combinations tried, where slots fit several ways


# The ids of the slots it is about, in the order of their work; of a late course its name, of a dish also its course's.
About = tuple[str, ...]


@dataclass(frozen=True)
class Bent:
    """A soft limit the sheet breaks and must report as given up. `minutes` None: only a name must match."""

    sentence: str
    kinds: tuple[type[What], ...]
    about: About
    minutes: int | None = None

    def is_told_by(self, given: GivenUp) -> bool:
        told = isinstance(given.what, self.kinds) and _about(given.what) == self.about
        return told and (self.minutes is None or self.minutes == given.minutes)


def _about(told: What) -> About:
    match told:
        case Late(course=course):
            return (course,)
        case OverHours(slot=slot):
            return (slot,)
        case PastClock(dish=dish, course=course):
            return (dish, course)
        case _:
            return (told.slot, told.following)


def validate(plan_file: PlanFile, sheet: RunSheet) -> list[str]:
    """One sentence for each fault; an empty list if the sheet holds."""
    snags = [*_every_task_stands_once(plan_file, sheet), *_times_can_be_read(plan_file, sheet)]
    if snags:
        return snags  # the other rules count on these
    snags += _links_hold(plan_file, sheet)
    snags += _courses_agree(plan_file, sheet)
    snags += _as_many_do_a_slot_as_it_takes(plan_file, sheet)
    snags += _guests_and_spreads_are_as_planned(plan_file, sheet)
    snags += table_is_as_planned(plan_file, sheet)
    snags += clocks_are_as_planned(plan_file, sheet)
    snags += nobody_is_in_two_places(plan_file.plan, sheet.slots)
    snags += everybody_walks_to_the_table(plan_file.plan, sheet.slots)
    snags += switched_off(plan_file.plan, sheet)
    snags += _snags_of_the_best_reading(plan_file, sheet)
    return snags + list(waits_and_give(sheet, ZoneInfo(plan_file.plan.zone)))


# --- slots --------------------------------------------------------------------------------------------------
def _every_task_stands_once(plan_file: PlanFile, sheet: RunSheet) -> Iterator[str]:
    tasks = plan_file.filled.tasks
    counted = Counter(slot.id for slot in sheet.slots)
    for id_, task in tasks.items():
        if counted[id_] != 1:
            yield f"{task.node.name} ({id_}) stands {counted[id_]} times in the run sheet, not once"
    for slot in sheet.slots:
        known = tasks.get(slot.id)
        if known is None and (not slot.of_a_dial or counted[slot.id] > 1):
            yield f"{slot.name} ({slot.id}) is no work of this plan"
        names = (known.node.name, f"{known.node.name} in {known.node.dish}") if known is not None else ()
        if known is not None and (slot.kind != known.node.kind or slot.name not in names):
            yield f"{slot.id} is the {known.node.kind} {known.node.name}, told as {slot.kind} {slot.name}"


def _times_can_be_read(plan_file: PlanFile, sheet: RunSheet) -> Iterator[str]:
    for slot in sheet.slots:
        moments = [slot.start, slot.end]
        moments += [at for part in slot.attended for at in (part.start, part.end)]
        moments += [at for use in slot.uses for at in (use.start, use.end)]
        if not all(_is_a_whole_minute(at) for at in moments):
            yield f"{slot.name} has a time that is not a whole minute in UTC"
        elif slot.end < slot.start:
            yield f"{slot.name} ends before it starts"
        if slot.kind == "heat" and not _turns_an_oven(plan_file, slot):
            yield f"{slot.name} does not tell which oven is turned, and to what"
    if not all(_is_a_whole_minute(at) for course in sheet.courses for at in (course.wanted, course.served)):
        yield "a course has a time that is not a whole minute in UTC"


def _is_a_whole_minute(at: datetime) -> bool:
    return at.tzinfo is not None and at.utcoffset() == UTC.utcoffset(None) and at.second == at.microsecond == 0


def _turns_an_oven(plan_file: PlanFile, slot: Slot) -> bool:
    return bool(slot.uses) and slot.uses[0].what in plan_file.plan.kitchen.ovens and slot.uses[0].celsius is not None


def _as_many_do_a_slot_as_it_takes(plan_file: PlanFile, sheet: RunSheet) -> Iterator[str]:
    for slot in sheet.slots:
        task = plan_file.filled.tasks.get(slot.id)
        may = (task.work.who if task and task.work else None) or list(plan_file.plan.hands)
        who = {part.who for part in slot.attended}
        takes = task.work.hands if task and task.work else 1
        if who and len(who) != takes:
            yield f"{slot.name} takes {takes} of them, and is given to {', '.join(sorted(who))}"
        for name in sorted(who - set(may)):
            yield f"{slot.name} is given to {name}, who is not among {', '.join(may)}"


def _guests_and_spreads_are_as_planned(plan_file: PlanFile, sheet: RunSheet) -> Iterator[str]:
    """The plan says which steps can be done beside the guests; an oven's change of setting has no spread."""
    for slot in sheet.slots:
        task = plan_file.filled.tasks.get(slot.id)
        with_guests = bool(task and task.work and task.work.with_guests)
        if slot.with_guests != with_guests:
            yield f"{slot.name} is told as done {'with' if slot.with_guests else 'without'} guests, unlike in the plan"
        if task is None and slot.lasts is not None:
            yield f"{slot.name} is told to last longer or shorter than it stands here"


# --- order and courses --------------------------------------------------------------------------------------
def _links_hold(plan_file: PlanFile, sheet: RunSheet) -> Iterator[str]:
    """The guests arrive on time, and firm links are kept."""
    slots = sheet.by_id()
    for slot in sheet.slots:
        if slot.kind == "arrive" and slot.start != plan_file.filled.arrive:
            yield f"{slot.name} stands at {_clock(plan_file, slot.start)}, not when the guests are due"
    for link in plan_file.filled.links:
        first, second = slots[link.first], slots[link.second]
        gap = whole_minutes(second.start - first.end)
        when = f"{second.name} starts at {_clock(plan_file, second.start)}, {gap} min after {first.name} ends"
        if link.firm and gap < link.least:
            yield f"{when}; at least {link.least} min was wanted"


def _courses_agree(plan_file: PlanFile, sheet: RunSheet) -> Iterator[str]:
    slots = sheet.by_id()
    filled = plan_file.filled
    if sheet.arrive != filled.arrive or sheet.digest != plan_file.digest:
        yield "the run sheet is of another plan, or the guests arrive at another time"
    if [course.name for course in sheet.courses] != [course.name for course in filled.courses]:
        yield "the run sheet has other courses than the plan"
        return
    for told, wanted, written in zip(sheet.courses, filled.courses, plan_file.plan.courses, strict=True):
        given = written.eaten_in
        eaten = None if given is None else Lasts(given.low, given.likely, given.high)
        facts = (wanted.wanted, wanted.serve, wanted.clear, wanted.may_slip, wanted.standing, eaten)
        if (told.wanted, told.serve, told.clear, told.may_slip, told.standing, told.eaten) != facts:
            yield f"{told.name} is told otherwise than in the plan"
        serve = slots[wanted.serve]
        at, due = _clock(plan_file, serve.end), _clock(plan_file, wanted.wanted)
        if told.served != serve.end:
            yield f"{told.name} is told to be served at {_clock(plan_file, told.served)}, and is at {at}"
        if serve.end < wanted.wanted:
            yield f"{told.name} is served at {at}, before {due}"


def _clock(plan_file: PlanFile, at: datetime) -> str:
    return day_and_clock(at.astimezone(ZoneInfo(plan_file.plan.zone)))


# --- what hangs on the ways chosen, and what must be told ---------------------------------------------------
def _snags_of_the_best_reading(plan_file: PlanFile, sheet: RunSheet) -> list[str]:
    """A sheet does not name the way chosen: if slots fit several, any combination that holds will do."""
    slots, kitchen = sheet.by_id(), plan_file.plan.kitchen
    fitting = [
        (task, slots[id_], *fitting_ways(plan_file.plan, task, slots[id_]))
        for id_, task in plan_file.filled.tasks.items()
    ]
    choices = product(*(readings(kitchen, task, slot, ways) for task, slot, ways, _ in fitting if ways))
    best: list[str] | None = None
    for chosen in islice(choices, READINGS_TRIED):
        found = _snags_of(plan_file, sheet, list(chosen))
        if best is None or len(found) < len(best):
            best = found
        if not best:
            break
    return [why for *_, why in fitting if why] + (best or [])


def _snags_of(plan_file: PlanFile, sheet: RunSheet, done: list[Done]) -> list[str]:
    stands_out = StandsOut(plan_file, sheet, done)
    bent = [
        *_late_courses(sheet),
        *_bent_links(plan_file, sheet),
        *_past_their_clocks(plan_file, stands_out),
        *_results_past_their_limit(plan_file, sheet, done),
        *_hours_broken(plan_file, sheet),
    ]
    return [
        *stands_out.told_amiss(),
        *_kept_hot_alone(plan_file, sheet, done),
        *kitchen_snags(plan_file.plan, plan_file.filled, done, sheet.slots),
        *(f"{each.sentence}, and it is not told" for each in bent if not any(map(each.is_told_by, sheet.given_up))),
        *(
            f"told as given up, but it is not so: {said.what(sheet, given.what)} ({given.minutes} min)"
            for given in sheet.given_up
            if not any(each.is_told_by(given) for each in bent)
        ),
    ]


def _late_courses(sheet: RunSheet) -> Iterator[Bent]:
    for course in sheet.courses:
        late = whole_minutes(course.served - course.wanted)
        if late > 0:
            yield Bent(f"{course.name} goes out {late} min late", (Late,), (course.name,), late)


def _bent_links(plan_file: PlanFile, sheet: RunSheet) -> Iterator[Bent]:
    slots = sheet.by_id()
    for link in plan_file.filled.links:
        first, second = slots[link.first], slots[link.second]
        gap = whole_minutes(second.start - first.end)
        about = (first.id, second.id)
        least = 0 if link.usual else link.least
        if not link.firm and gap < least:
            yield Bent(f"{second.name} does not wait for {first.name}", (NotReady,), about, least - gap)
        if link.most is not None and gap > link.most and not link.usual:
            words = f"{second.name} begins {gap} min after {first.name}, at most {link.most} min was wanted"
            yield Bent(words, (WaitsPast,), about, gap - link.most)


def _past_their_clocks(plan_file: PlanFile, stands_out: StandsOut) -> Iterator[Bent]:
    for each in perishables(plan_file):
        minutes = stands_out.minutes(each)
        if minutes > each.limit:
            words = f"{each.dish} stands out {minutes} min until it is eaten, and may for {each.limit}"
            about = (each.dish, plan_file.filled.courses[int(each.loc[1])].name)
            yield Bent(words, (PastClock,), about, minutes - each.limit)


def _results_past_their_limit(plan_file: PlanFile, sheet: RunSheet, done: list[Done]) -> Iterator[Bent]:
    slots = sheet.by_id()
    keeps = {each.slot.id: each.way.keeps for each in done}
    for link in plan_file.filled.taken_up:
        limit = keeps.get(link.first)
        first, second = slots[link.first], slots[link.second]
        stands = whole_minutes(second.start - first.end)
        minutes = None if limit is None else 0 if has_no_place(first) else limit.minutes
        if minutes is not None and stands > minutes:
            words = f"what {first.name} made stands {stands} min until {second.name}, and keeps {minutes}"
            yield Bent(words, (NoPlace, PastLimit), (first.id, second.id), stands - minutes)


def _kept_hot_alone(plan_file: PlanFile, sheet: RunSheet, done: list[Done]) -> Iterator[str]:
    slots = sheet.by_id()
    for each in done:
        then = [slots[link.second].start for link in plan_file.filled.taken_up if link.first == each.slot.id]
        if each.way.keeps is None or not then or has_no_place(each.slot):
            continue
        yield from kept_hot_with_nobody_home(plan_file.plan, each.way.keeps, each.slot, max(then))


def _hours_broken(plan_file: PlanFile, sheet: RunSheet) -> Iterator[Bent]:
    slots = sheet.by_id()
    for id_, task in plan_file.filled.tasks.items():
        for sentence in out_of_hours(plan_file.plan, task, slots[id_]):
            yield Bent(sentence, (OverHours,), (id_,))
    for slot in sheet.slots:
        if slot.kind == "heat":
            for sentence in heats_with_nobody_home(plan_file.plan, slot):
                yield Bent(sentence, (OverHours,), (slot.id,))
