"""What the board shows, as frozen words. Pure: a Present → a BoardView. All texts are safe for a terminal."""

from dataclasses import dataclass, replace
from datetime import datetime
from math import ceil
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.base.plain import one_line
from board.evening.calls import Call
from board.evening.events import SLIPS, Event, LeftoversPutAway
from board.evening.forecast import CourseForecast, Forecast
from board.evening.gone_cold import gone_cold, rules_of
from board.evening.hands import called
from board.evening.insist import at_table, insistence
from board.evening.readings import held_since, last_reading, wants_reading
from board.evening.state import CallKey, State
from board.evening.unheated import left_cold, unheated
from board.sheet import said
from board.sheet.company import host_of
from board.sheet.left import keeps
from board.sheet.quiet import leads_to
from board.sheet.run_sheet import RunSheet, Slot
from board.sheet.shown import amounts_of
from board.sheet.told import Caution
from board.view import words
from board.view.countdown import countdown, length
from board.view.present import Present
from board.view.quiet import hands_on
from board.view.slipped import slip_words
from board.view.standing import Standings, Stands

TIGHT_MINUTES = 3  # less slack than this is tight
MANY_COMING = 12
HOW_CELLS = 600  # of a method, at most
NAMING_LETTERS = 4  # a shorter word names no dish
JUMP_TOLD_SECONDS = 120  # how long a jump of the clock is shown


@dataclass(frozen=True, slots=True)
class CallView:
    """A call in words."""

    key: CallKey
    sign: str
    headline: str
    detail: str
    look_for: str
    clock: str
    countdown: str
    answer: str
    is_due: bool
    waits: str = ""  # for how long it has, from the first minute on
    insistence: int = 1  # 1 calm, 2 pressing, 3 overdue
    already: str = ""  # words for the key `done already`, if the call was overtaken
    ends: CallKey | None = None  # the work in hand that the same key ends
    then: str | None = None  # the slot that the same key begins
    why: str = ""  # why it stands first
    caution: str = ""  # of flame, hot fat or a blade in it
    how: str = ""  # its method, as it begins
    amounts: str = ""  # what goes in then
    refuse: str = ""  # the answer that leaves it out, where it asks a question


@dataclass(frozen=True, slots=True)
class CourseView:
    """The next course: its name, and in words when it goes out, how late, in how long."""

    title: str
    told: str
    is_late: bool


@dataclass(frozen=True, slots=True)
class BoardView:
    """The whole board except its lanes, which are drawn to the width."""

    title: str
    day: str
    clock: str
    standing: str  # words for on time, tight or late
    standing_sign: str
    course: CourseView | None
    due: tuple[CallView, ...]
    coming: tuple[CallView, ...]
    headline: str  # what to say when no call is due
    detail: str
    busy: CallKey | None  # the end of the step in hand
    how: str  # the method of that step
    amounts: str  # what goes in
    keeping: tuple[Stands, ...]  # the most urgent first
    courses: tuple[tuple[str, str], ...]  # every course: its name, and when it goes or went out, in words
    seated: str = ""  # until when the guests sit over a course
    free: str = ""  # until when whoever looks is free
    free_minutes: int | None = None  # until then, rounded up; None if they are not
    ahead: tuple[bool, ...] = ()  # of every course, whether it is still to go out
    notice: str = ""  # shown for a while: that the clock jumped


class Viewer:
    """Makes views of one sheet for one person, the host if `who` is None. Moments are aware datetimes; texts show them
    in the plan's time zone."""

    def __init__(self, sheet: RunSheet, who: str | None = None) -> None:
        self.sheet = sheet
        self.who = who or host_of(sheet)
        self.zone = ZoneInfo(sheet.zone)
        self.slots = sheet.by_id()
        self.standings = Standings(self.slots, self.clock)
        self._cold: tuple[State, bool] | None = None  # a state, and whether anything in it was left unheated
        self._amounts: dict[str, str] = {}  # by slot, once they were asked for: no tick changes them
        self.dangers: dict[str, list[str]] = {}  # by a step's name
        for each in sheet.cautions:
            if isinstance(each, Caution) and each.topic in words.CALL_CAUTIONS:
                for name in each.about:
                    self.dangers.setdefault(name, []).append(each.topic)

    def local(self, at: datetime) -> datetime:
        """A moment in the plan's time zone."""
        return at.astimezone(self.zone)

    def clock(self, at: datetime, now: datetime) -> str:
        """The clock time of a moment, with its day if that is not today."""
        here, there = self.local(now), self.local(at)
        return shared.clock(there) if here.date() == there.date() else shared.day_and_clock(there)

    def view(self, at: Present) -> BoardView:
        """The board at that moment."""
        local = self.local(at.now)
        standing = how_it_stands(at.forecast, at.due)
        headline, detail, busy = self._quiet(at)
        free = self._free_until(at)
        return BoardView(
            title=one_line(self.sheet.plan, 60),
            day=shared.short_day(local),
            clock=shared.clock(local),
            standing=standing,
            standing_sign=words.STANDING_SIGN.get(standing, ""),
            course=self._course(at),
            due=self._due(at),
            coming=tuple(self.call(call, at, is_due=False) for call in _heard(at.coming)[:MANY_COMING]),
            headline=headline,
            detail=detail,
            busy=busy,
            how=_how(self.slots[busy[0]]) if busy is not None else "",
            amounts=self.amounts(self.slots[busy[0]]) if busy is not None else "",
            keeping=self.standings.lines(at),
            ahead=tuple(course.is_ahead for course in at.forecast.courses),
            seated=self._seated(at),
            free="" if free is None else words.free_until(self.clock(free, at.now)),
            free_minutes=None if free is None else ceil((free - at.now).total_seconds() / 60),
            notice=self._notice(at),
            courses=tuple((course.name, self._course_words(course, at.now)) for course in at.forecast.courses),
        )

    def _notice(self, at: Present) -> str:
        jumped = at.state.jumped
        if jumped is None or (at.now - jumped.at).total_seconds() > JUMP_TOLD_SECONDS:
            return ""
        return words.clock_jumped(round(jumped.seconds), slept=jumped.slept)

    def _due(self, at: Present) -> tuple[CallView, ...]:
        """What is due, each with all that its key does; the first with why it is first."""
        in_hand = {call.then: call for call in at.due if call.in_hand and call.then is not None}
        found: list[CallView] = []
        for call in at.due:
            view = self.call(call, at, is_due=True)
            ended = in_hand.get(call.slot) if call.part == "start" else None
            asks = self.slots[call.then or call.slot].decide  # it wants an answer of its own
            if ended is not None and not asks and not wants_reading(at.state, self.slots[ended.slot]):
                answer = words.ends_and_begins(one_line(self.slots[ended.slot].name, 30))
                view = replace(view, ends=ended.key, answer=answer)
            elif call.then is not None and not asks and view.answer == words.DONE_END:
                begins = words.ends_then_begins(one_line(self.slots[call.then].name, 30))
                begun = self.slots[call.then]
                view = replace(view, then=call.then, answer=begins, how=_how(begun), amounts=self.amounts(begun))
            if not found and call.give_minutes is not None and call.give_minutes < TIGHT_MINUTES:
                view = replace(view, why=self._holds_up(call.slot))
            found.append(view)
        return tuple(found)

    def _holds_up(self, id_: str) -> str:
        """The course that goes out later for every minute it is put off."""
        slot = self.slots[id_]
        course = None if slot.kind == "serve" else leads_to(self.sheet, slot)
        return words.holds_up(one_line(course.name, 30)) if course is not None else ""

    def call(self, call: Call, at: Present, *, is_due: bool) -> CallView:
        """One call in words. Raises KeyError if its slot is not in the sheet."""
        slot = self.slots[call.slot]
        ahead = (call.due - at.now).total_seconds()
        return CallView(
            key=call.key,
            sign=shared.PART_SIGN[call.part],
            headline=one_line(headline(slot, call), 300),
            detail=one_line(self._too_cold(call, at) or self.detail(slot, call, at.state)),
            look_for=self._look_for(slot, call),
            clock=self.clock(call.due, at.now),
            countdown=words.waited(-ahead) if is_due else countdown(ahead),
            answer=answer_word(slot, call, at.state),
            is_due=is_due,
            waits=shared.span(int(-ahead // 60)) if is_due and ahead <= -60 else "",
            insistence=insistence(call, at.now) if is_due else 1,
            already=words.DONE_ALREADY if call.overtaken else "",
            caution=" · ".join([*self._unheated(call, at), *self._cautions(slot)]),
            refuse=words.NO if slot.decide and call.part == "start" else "",
            how=_how(slot) if call.part == "start" else "",
            amounts=self.amounts(slot) if call.part == "start" else "",
        )

    def _cautions(self, slot: Slot) -> list[str]:
        return [words.CALL_CAUTIONS[topic] for topic in self.dangers.get(slot.name, ())]

    def _unheated(self, call: Call, at: Present) -> list[str]:
        """What in it was to be heated through and was left out."""
        if self._cold is None or self._cold[0] is not at.state:
            self._cold = at.state, any(left_cold(at.state, slot) for slot in at.state.sheet.slots)
        found = unheated(at.state, call.slot) if call.part == "start" and self._cold[1] else ()
        return [
            words.not_heated(
                one_line(each.slot.name, 40),
                each.slot.core_celsius,
                None if each.read is None else each.read.celsius,
                self.sheet.fahrenheit,
            )
            for each in found
        ]

    def amounts(self, slot: Slot) -> str:
        """What goes in as it begins, in one line; empty if the plan names nothing."""
        if slot.id not in self._amounts:
            self._amounts[slot.id] = ", ".join(amounts_of(slot, self.sheet.units))
        return self._amounts[slot.id]

    def _look_for(self, slot: Slot, call: Call) -> str:
        """How to tell that it is done; for a course going out, which plates differ; then notes from past evenings."""
        told = []
        if slot.kind == "serve":
            plates = next((course.plates for course in self.sheet.courses if course.serve == slot.id), ())
            told += [words.plates([one_line(said.plate(each), 120) for each in plates])] if plates else []
        elif slot.look_for and call.part in ("look-in", "end"):
            told.append(one_line(shared.look_for(slot.look_for)))
        if call.part == "end":
            told += [keeps(self.sheet, left) for left in self.sheet.left if left.slot == slot.id]
        if slot.noted:  # newest first: the oldest is cut if they do not fit
            told.append(shared.noted(" · ".join(one_line(note, 160) for note in reversed(slot.noted))))
        return " · ".join(told)

    def detail(self, slot: Slot, call: Call, state: State | None = None) -> str:
        """Who, where, at what heat, for how long, and for which dish."""
        in_oven = any(use.celsius is not None or use.off for use in slot.uses)
        pieces = [] if in_oven else [shared.LANES[slot.lane].lower()]
        for use in sorted(slot.uses, key=lambda use: use.celsius is None and not use.off):
            told = {"fahrenheit": self.sheet.fahrenheit, "as_written": self.sheet.as_written}
            if call.part == "start":
                pieces.append(shared.use(use.what, use.amount, use.celsius, off=use.off, **told))
            elif use.celsius is not None or use.off:
                pieces.append(use.what)  # what is set and taken matters no more
        lasts = state.steps[slot.id].lasts(slot) if state is not None else slot.end - slot.start
        if call.part == "start" and lasts:
            pieces.append(length(lasts.total_seconds()))
        if call.part == "end" and slot.core_celsius is not None:
            pieces.append(self._core(slot, slot.core_celsius, call, state))
        if who := self._who(slot):
            pieces.insert(0, who)
        said_already = headline(slot, call)
        if slot.kind in ("step", "job") and slot.name.casefold() not in said_already.casefold():
            pieces.insert(0, slot.name)
            said_already = f"{said_already} {slot.name}"
        name = "" if slot.kind == "serve" else slot.dish or slot.course or ""
        if _names(said_already, name, all_words=call.part == "start"):
            name = ""
        return " · ".join([*dict.fromkeys(pieces), *([name] if name else [])])

    def _too_cold(self, call: Call, at: Present) -> str:
        """What a probe showed in food kept hot, and what mends it; empty for any other call."""
        spell = gone_cold(at.state).get(call.slot) if call.part == "reheat" else None
        if spell is None:
            return ""
        wanted = rules_of(self.sheet).reheat.degrees
        figures = words.both_degrees(wanted.celsius, wanted.fahrenheit, self.sheet.fahrenheit)
        return words.too_cold(spell.last.celsius, self.clock(spell.last.at, at.now), figures, self.sheet.fahrenheit)

    def _core(self, slot: Slot, wanted: float, call: Call, state: State | None) -> str:
        """The core temperature needed and for how long; after a reading, what the probe showed."""
        read = last_reading(state, slot.id) if state is not None else None
        if state is None or read is None:
            told = shared.core(wanted, self.sheet.fahrenheit)
            return shared.held_for(told, slot.hold_minutes) if slot.hold_minutes else told
        told = words.reading_at(read.celsius, self.clock(read.at, call.due), wanted, self.sheet.fahrenheit)
        since = held_since(state, slot) if slot.hold_minutes else None
        return words.held_from(told, slot.hold_minutes, self.clock(since, call.due)) if since is not None else told

    def _course(self, at: Present) -> CourseView | None:
        ahead = next((c for c in at.forecast.courses if c.is_ahead), None)
        if ahead is None:
            return None
        name, left = one_line(ahead.name, 24), (ahead.served - at.now).total_seconds()
        return CourseView(
            title=name,
            told=words.next_course(
                name, self.clock(ahead.served, at.now), length(left) if left >= 60 else "", ahead.late_minutes
            ),
            is_late=ahead.slip_minutes > 0,
        )

    def _seated(self, at: Present) -> str:
        """Until when the guests sit over the course that was served, as it looks; empty if they do not."""
        if not at_table(at.state):
            return ""
        status = {id_: step.status for id_, step in at.state.steps.items()}
        ends = [
            at.forecast.slots[course.clear].start
            for course in self.sheet.courses
            if not course.standing and status[course.serve] == "finished" and status[course.clear] == "to-come"
        ]
        return words.at_table_until(self.clock(max(ends), at.now)) if ends and max(ends) > at.now else ""

    def _course_words(self, course: CourseForecast, now: datetime) -> str:
        name, served = one_line(course.name, 20), self.clock(course.served, now)
        if course.is_served:
            return words.course_out(name, served)
        return (
            words.course_dropped(name) if course.is_left_out else words.course_ahead(name, served, course.late_minutes)
        )

    def _who(self, slot: Slot) -> str:
        """Who does it, if the plan has more than one person."""
        if len(self.sheet.hands) < 2:
            return ""
        return ", ".join(slot.people)

    def nothing_left(self, at: Present, others: bool) -> tuple[str, str]:
        """What to say, and beside it, when no call is left for whoever looks; `others`: but for others."""
        return (words.NOTHING_YOURS, "") if others else (words.NOTHING_MORE, words.NOTHING_MORE_DETAIL)

    def answer_words(self, event: Event) -> str:
        """An answer in a few words, for undoing it."""
        if isinstance(event, SLIPS):
            return slip_words(event, self.slots)
        if isinstance(event, LeftoversPutAway):
            return words.answer_put_away(one_line(event.course, 40))
        slot = self.slots.get(getattr(event, "slot", None) or "")
        return one_line(slot.name if slot else words.ANSWER_WORDS.get(type(event).__name__, ""), 60)

    def is_for(self, call: Call) -> bool:
        """Whether the call is for whoever looks. Raises KeyError if its slot is not in the sheet."""
        return self.who in called(self.sheet, self.slots[call.slot], call.part)

    def _quiet(self, at: Present) -> tuple[str, str, CallKey | None]:
        """What to say when no call is due: what whoever looks is working on, or how long they are free."""
        busy = hands_on(self.sheet, at, self.who)
        if busy is not None:
            slot, until = busy
            detail = words.hands_on_left(countdown((until - at.now).total_seconds()), self._who(slot))
            key: CallKey | None = (slot.id, "end", 0) if slot.whole else None
            return one_line(words.hands_on(slot.name)), one_line(detail), key
        coming = _heard(at.coming)
        mine = [call for call in coming if self.is_for(call)]
        if not mine:
            return *self.nothing_left(at, bool(coming)), None
        what = headline(self.slots[mine[0].slot], mine[0])
        left = length((mine[0].due - at.now).total_seconds())
        alone = len(self.sheet.hands) < 2
        detail = words.free_for(left, what) if alone else words.yours_free_for(left, what)
        return words.free_until(self.clock(mine[0].due, at.now)), one_line(detail), None

    def _free_until(self, at: Present) -> datetime | None:
        """When the next call for whoever looks comes; None if one is due, their hands are on something, or none is
        left."""
        if any(self.is_for(call) for call in at.due) or hands_on(self.sheet, at, self.who) is not None:
            return None
        return next((call.due for call in _heard(at.coming) if self.is_for(call)), None)


def _how(slot: Slot) -> str:
    return one_line(slot.how, HOW_CELLS)


def _heard(calls: tuple[Call, ...]) -> tuple[Call, ...]:
    """The calls that are announced; a step that ends by itself makes none."""
    return tuple(call for call in calls if not call.silent)


def headline(slot: Slot, call: Call) -> str:
    """The words of a call: the plan's own if it has any, else the usual ones."""
    if slot.kind == "arrive":
        return words.CALL_ARRIVE
    if slot.kind == "seat":
        return words.CALL_SEAT
    course = slot.course or ""
    if slot.kind == "serve":
        return words.call_served(course) if call.part == "end" else words.call_serve(course)
    if slot.kind == "clear":
        return words.call_end(words.call_clear(course)) if call.part == "end" else words.call_clear(course)
    if call.part == "reheat":
        return words.call_reheat(slot.dish or slot.name)
    if call.part == "look-in":
        return words.call_look_in(slot.name)
    if call.part == "end":
        usual = words.call_in_hand if call.in_hand else words.call_end
        return said.call_at_end(slot) or usual(slot.name)
    if slot.decide:
        return question(slot)
    started = said.call_at_start(slot) or words.call_start(slot.name)
    turned = said.turned_at_start(slot)
    return started if turned is None else words.call_turned(turned, started)


def question(slot: Slot) -> str:
    """What it asks: `Thin it?`"""
    return words.call_start(slot.decide.rstrip("? ")) + "?"


def _names(text: str, dish: str, *, all_words: bool) -> bool:
    """Whether one of the longer words of the dish's name stands in the text, or all of its words do."""
    said, named = set(text.casefold().split()), dish.casefold().split()
    return set(named) <= said if all_words else any(len(word) >= NAMING_LETTERS and word in said for word in named)


def answer_word(slot: Slot, call: Call, state: State) -> str:
    """What the `space` key does, in a word."""
    if call.part == "reheat" or (call.part == "end" and wants_reading(state, slot)):
        return words.READ_FIRST
    if call.part == "look-in":
        return words.DONE_LOOK
    if call.part == "start" and slot.decide:
        return words.YES
    if call.part == "end" or slot.start == slot.end:
        return words.DONE_END
    return words.DONE_BEGIN


def is_late(course: CourseForecast) -> bool:
    """Whether a course slips further than the plan allows, apart from the host's pushes."""
    return course.slip_minutes > course.may_slip


def how_it_stands(forecast: Forecast, due: tuple[Call, ...]) -> str:
    """Late: a course ahead slips further than the plan allows. Tight: a course ahead slips at all, a call with hardly
    any slack has waited a minute, or something will stand beyond its shelf life. Otherwise on time. Empty once no
    course is ahead, which could be any of it."""
    ahead = [course for course in forecast.courses if course.is_ahead]
    if not ahead:
        return ""
    if any(is_late(course) for course in ahead):
        return words.STANDS_LATE
    pressing = any(
        call.give_minutes is not None
        and call.give_minutes < TIGHT_MINUTES
        and (forecast.now - call.due).total_seconds() >= 60
        for call in due
    )
    slipping = any(course.slip_minutes > 0 for course in ahead)
    spoiling = any(each.taken_up > each.until for each in forecast.keeping)
    return words.STANDS_TIGHT if pressing or slipping or spoiling else words.STANDS_ON_TIME
