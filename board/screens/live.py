"""The live board's screen: places what the view says, turns keys into wishes. No rules, no sums."""

from __future__ import annotations  # the slip screen is only named here, and loaded when it is asked for

from collections.abc import Callable
from typing import TYPE_CHECKING

from textual.app import ComposeResult
from textual.screen import Screen
from textual.timer import Timer

from board import words
from board.anew.advisor import Advisor
from board.clock import VirtualClock
from board.evening import Evening, Present
from board.plain import one_line
from board.run.answers import answers_of, last_put_off
from board.run.cooling import READ_COOLING_MINUTES
from board.run.state import CallKey
from board.run.wishes import Close, Done, LeaveOut, Refusal, Settle, TakeBack, TakeSheet, Wish
from board.screens.ask import HelpScreen, LeaveScreen, NoteScreen, PushScreen
from board.screens.chime import Chime
from board.screens.keys import BINDINGS
from board.screens.looking import Looking
from board.screens.panels import CallPanel, Coming, Courses, KeyBar, Ribbons, Top
from board.screens.plan_news import PlanEye, PlanNews
from board.screens.sounds import Sounds
from board.speech import Voice
from board.timetable.changed import Changed
from board.view.board import BoardView, CallView, Viewer
from board.view.marks import slot_to_mark
from board.view.offer import offer_line
from board.view.ribbon import ZOOMS, ribbons

if TYPE_CHECKING:
    from board.screens.slip import SlipScreen, Taken

TICK_SECONDS, REHEARSAL_TICK_SECONDS = 1.0, 0.25
HURRIED = 3.0  # times as fast as real
SAYING_SECONDS = 6.0
SHORT_ROWS, TINY_ROWS, NARROW_COLUMNS = 21, 12, 72
SLIPS_NAME = "slips"
SETTLE_SECONDS = 0.4  # a key that bounces answers once


class LiveScreen(Screen[None]):
    """The board during the evening, live or rehearsed."""

    CSS_PATH = "live.tcss"
    BINDINGS = BINDINGS
    AUTO_FOCUS = None

    def __init__(
        self,
        evening: Evening,
        chime: Chime,
        virtual: VirtualClock | None,
        on_leave: Callable[[], None],
        on_theme: Callable[[], str],
        *,
        bell: bool = True,
        voice: Voice | None = None,
        greeting: str = "",
        advisor: Advisor | None = None,
        plan_eye: PlanEye | None = None,
        changed: Changed | None = None,
    ) -> None:
        super().__init__()
        self.evening = evening
        self.advisor = advisor
        self.virtual = virtual
        self.on_leave = on_leave
        self.on_theme = on_theme
        self.viewer = self.new_viewer()
        self.sounds = Sounds(chime, voice, self.viewer, bell=bell)
        self.zoom = 1
        self.chosen: CallKey | None = None
        self.present: Present | None = None
        self.board: BoardView | None = None
        self.banner = ""
        self._slips: SlipScreen | None = None
        self._bouncing: Timer | None = None
        self._shown: CallKey | None = None
        self._unsaying: Timer | None = None
        self.greeting = greeting
        self.looking = Looking(self, self.settle_key)
        self.heard = ("", False)
        self.plan_news = PlanNews(self, plan_eye, changed)

    def new_viewer(self) -> Viewer:
        """Of the sheet the evening goes by now."""
        return Viewer(self.evening.sheet)

    def compose(self) -> ComposeResult:
        self.top = Top(id="top")
        self.said = CallPanel(id="call")
        self.saying = Courses(id="saying")
        self.lanes = Ribbons(id="lanes")
        self.next = Coming(id="coming")
        self.keys = KeyBar("", id="keys")
        yield self.top
        yield self.said
        yield self.saying
        yield self.lanes
        yield self.next
        yield self.keys

    def on_mount(self) -> None:
        self.call_after_refresh(self._first_picture)
        # Ticks are never counted: each asks the clock anew.
        self.set_interval(TICK_SECONDS, self._each_second)
        if self.virtual is not None:
            self.set_interval(REHEARSAL_TICK_SECONDS, self._in_between)
        if self.greeting:
            self.say(self.greeting)
        self.plan_news.begin()

    def _first_picture(self) -> None:
        if self.virtual is not None:
            self.virtual.pause(False)  # held until now, so that nothing of the evening passes while the board opens
        self.tick()
        self.call_after_refresh(self._with_letters)

    def _with_letters(self) -> None:
        self.said.letters = True
        self.redraw()

    def on_resize(self) -> None:
        self.call_after_refresh(self._fit)

    def _fit(self) -> None:
        """Drops what does not fit: the lanes first, then the top; the call and the keys stay."""
        self.set_class(self.size.height < SHORT_ROWS, "-short")
        self.set_class(self.size.height < TINY_ROWS, "-tiny")
        self.set_class(self.size.width < NARROW_COLUMNS, "-narrow")
        self.keys.show_keys(self.key_words())
        self.redraw()

    def key_words(self) -> tuple[tuple[str, str, str], ...]:
        """The keys there are, for the key bar."""
        return (*words.KEYS_EVENING, *(words.KEYS_REHEARSAL if self.virtual else ()))

    # --- the tick --------------------------------------------------------------------------------------------
    def _each_second(self) -> None:
        if self.virtual is None or self.virtual.speed < HURRIED:
            self.tick()

    def _in_between(self) -> None:
        """A hurried clock is shown more often, so that it does not jump."""
        if self.virtual is not None and self.virtual.speed >= HURRIED:
            self.tick()

    def tick(self) -> None:
        """Asks the evening what is due, and shows it. A fault here must never end the board."""
        try:
            self.present = self.evening.tick()
            self.banner = self._not_kept(self.present)
            self.sounds.hear(self.present)
            if self.advisor is not None:
                self.advisor.look(self.present.state, self.present.forecast)
            for each in self.present.warned:
                self.say(self.viewer.standings.soon_over(each, self.present.now))
            self._say_clocks(self.present)
            if self.present.told:
                self.say(words.said_together(self.present.told))
        except Exception as wrong:
            self.banner = words.board_fault(one_line(wrong, 80))
        self.redraw()

    def _say_clocks(self, present: Present) -> None:
        """What is said of the clocks for the first time, in one line."""
        if present.clock_warned:
            told = [self.viewer.standings.clock_warning(each, present) for each in present.clock_warned]
            self.say(words.said_together(told), grave=any(each.what == "over" for each in present.clock_warned))

    def _not_kept(self, present: Present) -> str:
        """What to say while the run log cannot be written."""
        missing = present.unkept
        return "" if missing is None else words.not_on_disk(missing.answers, one_line(missing.why, 40))

    def redraw(self) -> None:
        """Shows the present again, as after a key. What cannot be drawn must never end the board."""
        if self.present is None:
            return
        try:
            self._draw(self.present)
        except Exception as wrong:
            self.saying.show(words.board_fault(one_line(wrong, 80)))

    def _draw(self, present: Present) -> None:
        if self.viewer.sheet is not self.evening.sheet:
            self.viewer = self.sounds.viewer = self.new_viewer()
        view = self.board = self.viewer.view(present)
        chosen = self._chosen_call(view)
        shown = chosen.key if chosen is not None else view.busy
        if shown is not None and shown != self._shown:
            self.settle_key()  # a key on its way down was meant for what stood here before
        self._shown = shown
        self.top.show(view, self._mode())
        self.said.show(view, chosen)
        size = self.lanes.size
        if size.width and size.height:
            self.lanes.show(
                ribbons(
                    self.evening.sheet,
                    present.state,
                    present.forecast,
                    size.width,
                    size.height,
                    self.viewer.zone,
                    ZOOMS[self.zoom],
                )
            )
        self.next.show(view, chosen)
        self._say_what_lasts(view)

    def _say_what_lasts(self, view: BoardView) -> None:
        """A fault as long as it lasts, before what was said last, before a notice, before the courses."""
        if self.banner:
            self.saying.show(self.banner)
        elif self._unsaying is None:
            offer = self.advisor.offer if self.advisor is not None else None
            if view.notice:
                self.saying.show(view.notice)
            elif offer is not None and self.present is not None:
                self.saying.show(offer_line(self.viewer, offer, self.present.now))
            else:
                self.saying.show_courses(view)
        if self.banner or self._unsaying is None:
            self.saying.set_class(bool(self.banner or view.notice), "-grave")

    def _mode(self) -> str:
        """Rehearsal and its speed; whether the bell is off."""
        pieces = []
        if self.virtual is not None:
            pieces.append(words.REHEARSAL)
            pieces.append(words.HELD if self.virtual.paused else words.speed(self.virtual.speed))
        if not self.sounds.on:
            pieces.append(self.sounds.words())
        return " · ".join(pieces)

    def _chosen_call(self, view: BoardView) -> CallView | None:
        """The call keys act on: the one chosen, else the first that is due."""
        for call in (*view.due, *view.coming):
            if call.key == self.chosen:
                return call
        self.chosen = None
        return view.due[0] if view.due else None

    # --- wishes ----------------------------------------------------------------------------------------------
    def wish(self, wish: Wish, said: str = "") -> bool:
        """Hands a wish to the evening; says what came of it; shows the new present at once."""
        try:
            refusal = self.evening.wish(wish)
        except Exception as wrong:
            self.say(words.board_fault(one_line(wrong, 80)), grave=True)
            return False
        if isinstance(refusal, Refusal):
            self.say(refusal.words, grave=True)
            return False
        if said:
            self.say(said)
        self.chosen = None
        self.tick()
        return True

    def say(self, text: str, *, grave: bool = False) -> None:
        """One line above the lanes, for a while instead of the courses; it covers nothing else."""
        self.heard = (one_line(text), grave)
        self.saying.show(one_line(text))
        self.saying.set_class(grave, "-grave")
        if self._unsaying is not None:
            self._unsaying.stop()
        self._unsaying = self.set_timer(SAYING_SECONDS, self._unsay)

    def _unsay(self) -> None:
        """The line goes back to the courses."""
        self._unsaying = None
        self.saying.remove_class("-grave")
        self.redraw()

    def _target(self) -> CallView | None:
        """The call a key means; a bouncing key means none."""
        if self.board is None or self._bouncing is not None:
            return None
        call = self._chosen_call(self.board)
        if call is None and self.board.busy is not None:
            return next((c for c in self.board.coming if c.key == self.board.busy), None)
        if call is None:
            self.say(words.NO_CALL)
        return call

    def settle_key(self) -> None:
        if self._bouncing is not None:
            self._bouncing.stop()
        self._bouncing = self.set_timer(SETTLE_SECONDS, self._steady)

    def _steady(self) -> None:
        self._bouncing = None

    def action_answer(self) -> None:
        call = self._target()
        if call is not None:
            self.settle_key()
            if not self.looking.asks_at(call.key):
                self.wish(Done(*call.key), self._read_soon(call.key))

    def _read_soon(self, call: CallKey) -> str:
        """What to say as a step that cools begins."""
        slot = self.viewer.slots[call[0]]
        return (
            words.read_in(one_line(slot.name, 40), READ_COOLING_MINUTES) if call[1] == "start" and slot.cooling else ""
        )

    def action_later(self) -> None:
        """Five minutes; pressed again before it has come again, five more."""
        if self.board is None or self.present is None or self._bouncing is not None:
            return
        again = last_put_off(self.evening.state, self.present.now) if self._chosen_call(self.board) is None else None
        call = next((c for c in self.board.coming if c.key == again), None) or self._target()
        if call is None:
            return
        if not call.is_due and self.evening.put_off_till(call.key) is None:
            self.say(words.NOT_CALLED_YET)
            return
        later = self.evening.later(call.key)
        self.settle_key()
        self.wish(later, words.put_off(call.headline, later.minutes))

    def action_done_already(self) -> None:
        """Begun and over, whatever was asked: one key for a call that was overtaken."""
        call = self._target()
        if call is None:
            return
        slot, part, _ = call.key
        self.settle_key()
        if part == "start" or not self.looking.asks_at((slot, "end", 0)):
            self.wish(Settle(slot), words.done_already(call.headline))

    def action_leave_out(self) -> None:
        call = self._target()
        if call is not None:
            self.settle_key()
            self.wish(LeaveOut(call.key[0]), words.left_out(call.headline))

    def action_take_back(self) -> None:
        answers = answers_of(self.evening.state)
        what = self.viewer.answer_words(answers[-1]) if answers else ""
        self.wish(TakeBack(), words.taken_back(what))

    def action_choose(self, step: int) -> None:
        if self.board is None:
            return
        keys = [call.key for call in (*self.board.due, *self.board.coming)]
        if not keys:
            return
        current = self._chosen_call(self.board)
        if current is None:
            self.chosen = keys[0] if step > 0 else keys[-1]
        else:
            self.chosen = keys[(keys.index(current.key) + step) % len(keys)]
        self._shown = self.chosen
        self.redraw()

    def on_coming_chosen(self, message: Coming.Chosen) -> None:
        self.chosen = self._shown = message.key
        self.redraw()

    def on_courses_chosen(self, message: Courses.Chosen) -> None:
        self.action_push(message.course)

    def action_mark(self, what: str) -> None:
        if self.present is None:
            return
        slot = slot_to_mark(self.present.state, what)
        if slot is None:
            self.say(words.NOTHING_TO_MARK[what])
        else:
            self.wish(Settle(slot), words.MARKED[what])

    def action_push(self, course: str | None = None) -> None:
        """Asks which course by how much; begins at the one given, else the next."""
        ahead = [c.name for c in self.present.forecast.courses if c.is_ahead] if self.present else []
        if course is not None and course not in ahead:
            self.say(words.cannot_push(one_line(course)))
        elif ahead:
            self.app.push_screen(PushScreen(self.evening, self.viewer, course or ahead[0]), self._push)
        else:
            self.say(words.NOTHING_TO_PUSH)

    def _push(self, chosen: tuple[str, int] | None) -> None:
        self.settle_key()
        if chosen is not None:
            course, minutes = chosen
            self.wish(self.evening.push(course, minutes), words.pushed(course, minutes))

    def action_slip(self) -> None:
        chosen = self._chosen_call(self.board) if self.board else None
        if self._slips is None:
            from board.screens.slip import SlipScreen  # not before it is first asked for

            self._slips = SlipScreen(self.evening, self.viewer)
            self.app.install_screen(self._slips, SLIPS_NAME)
        self._slips.viewer = self.viewer
        self._slips.begin(chosen.key[0] if chosen else None)
        self.app.push_screen(self._slips, self._slip)

    def _slip(self, taken: Taken | None) -> None:
        self.settle_key()
        if taken is not None:
            self.wish(taken[0], words.slip_taken(taken[1]))

    def action_note(self) -> None:
        about = self._chosen_call(self.board) if self.board else None
        slot = about.key[0] if about else None
        self.app.push_screen(
            NoteScreen(one_line(about.headline) if about else None), lambda text: self.looking.keep_note(text, slot)
        )

    def action_reading(self) -> None:
        about = self._chosen_call(self.board) if self.board else None
        self.looking.read_any(about.key[0] if about else None)

    def action_look(self) -> None:
        self.looking.back()

    def action_take_offer(self) -> None:
        offer = self.advisor.offer if self.advisor is not None else None
        if offer is None or self.advisor is None:
            self.say(words.NO_OFFER)
        elif self.wish(TakeSheet(offer.sheet), words.OFFER_TAKEN):
            self.advisor.forget()

    def action_bell(self) -> None:
        self.say(self.sounds.switch())
        self.redraw()

    def action_theme(self) -> None:
        self.say(self.on_theme())
        self.redraw()

    def action_zoom(self) -> None:
        self.zoom = (self.zoom + 1) % len(ZOOMS)
        self.redraw()

    def action_help(self) -> None:
        self.app.push_screen(HelpScreen(rehearsal=self.virtual is not None), lambda _: self.settle_key())

    def action_leave(self) -> None:
        self.app.push_screen(LeaveScreen(), self._leave)

    def _leave(self, chosen: str | None) -> None:
        self.settle_key()
        if chosen == "over":
            self.wish(Close())
            self.looking.close(self.on_leave)
        elif chosen is not None:
            self.on_leave()

    # --- rehearsal -------------------------------------------------------------------------------------------
    def action_hold(self) -> None:
        if self.virtual is None:
            self.say(words.ONLY_REHEARSAL)
        else:
            self.virtual.pause(not self.virtual.paused)
            self.tick()

    def action_speed(self, times: float) -> None:
        if self.virtual is None:
            self.say(words.ONLY_REHEARSAL)
        else:
            self.virtual.set_speed(self.virtual.speed * times)
            self.tick()

    def action_jump(self) -> None:
        if self.virtual is None:
            self.say(words.ONLY_REHEARSAL)
            return
        coming = [call for call in self.present.coming if not call.silent] if self.present else []
        if not coming:
            self.say(words.NOTHING_TO_JUMP)
        else:
            self.virtual.jump_to(coming[0].due)
            self.tick()
