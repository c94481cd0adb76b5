"""The command board as it is shown, whoever looks at it: composed, fitted, drawn anew as the time goes on.
No rules, no sums."""

import os

from textual.app import ComposeResult
from textual.timer import Timer

from board.base import words as shared
from board.base.plain import one_line
from board.evening.state import CallKey
from board.screens import words
from board.screens.chime import Bell
from board.screens.dressed import DressedApp
from board.screens.lamp import Lamp
from board.screens.live_board import LiveBoard
from board.screens.panels import DETAILED, SOON, CallPanel, Coming, KeyBar, Ribbons, Top, Wrapped
from board.screens.rehearsing import Rehearsal
from board.screens.saying import Saying
from board.screens.sounds import Sounds
from board.screens.speech import Speaker
from board.session.replan.advisor import Advisor
from board.session.session import Evening
from board.view.board import BoardView
from board.view.choice import beside
from board.view.offer import offer_line
from board.view.present import Present
from board.view.ribbon import ZOOMS, ribbons
from board.view.said import said_at

TICK_SECONDS, REHEARSAL_TICK_SECONDS = 1.0, 0.25
CHOSEN_SECONDS = 20.0  # without a key, until what is to be done now is shown again; ours
LOW_ROWS, SHORT_ROWS, TINY_ROWS = 30, 23, 12


class BoardScreen(LiveBoard):
    """Each kind of board brings its keys, and may say otherwise how it is looked at and what stands in the way."""

    CSS_PATH = "board.tcss"
    AUTO_FOCUS = None

    def __init__(
        self,
        evening: Evening,
        chime: Bell,
        *,
        rehearsal: Rehearsal | None = None,
        bell: bool = True,
        voice: Speaker | None = None,
        advisor: Advisor | None = None,
    ) -> None:
        super().__init__(evening)
        self.advisor = advisor
        self.rehearsal = rehearsal or Rehearsal()
        self.lamp = Lamp(self._to_terminal, os.environ)
        self.sounds = Sounds(chime, voice, self.viewer, bell=bell, notify=self.lamp.notify)
        self.zoom: int | None = None  # as far as the width allows, until the host chooses
        self.banner = ""
        self._choosing: Timer | None = None  # until what was chosen to look at gives way

    def _to_terminal(self, sequence: str) -> None:
        if isinstance(self.app, DressedApp):
            self.app.send(sequence)

    # --- what a board of another kind says otherwise ---------------------------------------------------------
    def key_words(self) -> tuple[tuple[str, str, str], ...]:
        """Every key there is, for the help."""
        return ()

    def keys_now(self, view: BoardView, present: Present, *, offered: bool) -> tuple[str, ...]:
        """Which of them the key bar shows."""
        return tuple(key for key, _, _ in self.key_words())

    def not_kept(self, present: Present) -> str:
        """What to say while the run log cannot be written."""
        missing = present.unkept
        return "" if missing is None else words.not_on_disk(missing.answers, one_line(missing.why, 40))

    def mode(self) -> str:
        """Whether it is a rehearsal and how fast; whether the bell is off."""
        silent = [] if self.sounds.on else [self.sounds.words()]
        alone = [words.NO_SECOND_COPY] if self.present is not None and self.present.copy_trouble else []
        return " · ".join([*self.rehearsal.words(), *silent, *alone])

    def opened(self) -> None:
        """Starts whatever else begins with the board."""

    # --- composed and fitted ---------------------------------------------------------------------------------
    def compose(self) -> ComposeResult:
        self.top = Top(id="top")
        self.said = CallPanel(id="call")
        self.saying = Saying(id="saying")
        self.better = Wrapped(id="better")
        self.lanes = Ribbons(id="lanes")
        self.next = Coming(id="coming")
        self.keys = KeyBar("", id="keys")
        yield self.top
        yield self.said
        yield self.saying
        yield self.better
        yield self.lanes
        yield self.next
        yield self.keys

    def on_mount(self) -> None:
        self.call_after_refresh(self._first_picture)
        # Ticks are never counted: each one asks the clock again.
        self.set_interval(TICK_SECONDS, self._each_second)
        if self.rehearsal.is_on:
            self.set_interval(REHEARSAL_TICK_SECONDS, self._in_between)
        self.opened()

    def on_unmount(self) -> None:
        self.lamp.out()

    def _first_picture(self) -> None:
        self.rehearsal.begin()
        self.tick()
        self.call_after_refresh(self._with_letters)

    def _with_letters(self) -> None:
        self.said.letters = True
        self.redraw()

    def on_resize(self) -> None:
        self.call_after_refresh(self._fit)

    def _fit(self) -> None:
        """Hides what does not fit: first the lanes, then the top; the call and the keys stay."""
        self.set_class(self.size.height < LOW_ROWS, "-low")
        self.set_class(self.size.height < SHORT_ROWS, "-short")
        self.set_class(self.size.height < TINY_ROWS, "-tiny")
        self.redraw()

    # --- the tick --------------------------------------------------------------------------------------------
    def _each_second(self) -> None:
        if not self.rehearsal.is_hurried:
            self.tick()

    def _in_between(self) -> None:
        """Shows a hurried clock more often, so that it does not jump."""
        if self.rehearsal.is_hurried:
            self.tick()

    def tick(self) -> None:
        """Asks the evening what is due and shows it. A fault here must never end the board."""
        try:
            before, self.present = self.present, self.evening.tick()
            if self.viewer.sheet is not self.evening.sheet:
                self.viewer = self.sounds.viewer = self.new_viewer()
            self.banner = self.not_kept(self.present)
            self.sounds.hear(self.present)
            if self.present.raised:
                self.chosen = None  # what is new comes first
            if self.advisor is not None:
                self.advisor.look(self.present.state, self.present.forecast)
            if told := list(said_at(self.present, self.viewer.standings)):
                self.say(shared.said_together([text for text, _ in told]), grave=any(grave for _, grave in told))
            elif self.present.copy_trouble != (before.copy_trouble if before is not None else ""):
                self.say(words.second_copy(one_line(self.present.copy_trouble, 60)))
        except Exception as wrong:
            self.banner = words.board_fault(one_line(wrong, 80))
        self.redraw()

    def say(self, text: str, *, grave: bool = False) -> None:
        """Shows a message in its own row, until a key is pressed or another takes its place."""
        self.heard = (one_line(text), grave)
        self.saying.say(one_line(text), grave=grave)

    # --- drawn -----------------------------------------------------------------------------------------------
    def redraw(self) -> None:
        """Shows the present again, as after a key. Something that cannot be drawn must never end the board."""
        if self.present is None:
            return
        try:
            self._draw(self.present)
        except Exception as wrong:
            self.saying.lasts(words.board_fault(one_line(wrong, 80)))

    def _draw(self, present: Present) -> None:
        view = self.board = self.viewer.view(present)
        call = self.chosen_call
        if call is None or call.key != self.chosen:
            self.chosen = None  # it no longer exists
        self.steady.shows(view.busy if call is None else call.key)
        self.lamp.shows(view)
        self.top.show(view, self.mode())
        offered = self._offered(present)
        self.said.show(view, call, [each for each in view.coming if each is not call and each.key != view.busy][:SOON])
        size, sheet = self.lanes.size, self.viewer.sheet
        if size.width and size.height:
            state, forecast, zoom = present.state, present.forecast, ZOOMS[self._zoom()]
            self.lanes.show(ribbons(sheet, state, forecast, size.width, size.height, self.viewer.zone, zoom))
        self.next.show(view, call, self.said.beside)
        self.saying.lasts(self.banner or view.notice)
        shown = self.keys_now(view, present, offered=bool(offered))
        told = {each[0]: each for each in self.key_words()}
        self.keys.show_keys([told[key] for key in shown])
        if self.better.display != bool(offered):  # a line of its own, so that it never hides a course
            self.better.display = bool(offered)
            self.set_class(bool(offered), "-offered")
            self.call_after_refresh(self.redraw)  # the lanes now have a row more or less
        self.better.show(offered)

    def _offered(self, present: Present) -> str:
        offer = self.advisor.offer if self.advisor is not None else None
        if offer is None:
            return ""
        looks = {course.name: course.served for course in present.forecast.courses if course.is_ahead}
        courses = [(name, looks[name], then) for name, _, then in offer.courses if name in looks]
        return offer_line(self.viewer, courses, offer.gained, present.now)

    # --- looking about ---------------------------------------------------------------------------------------
    def choose(self, key: CallKey) -> None:
        self.chosen = key
        self.steady.chose(key)
        if self._choosing is not None:
            self._choosing.stop()
        self._choosing = self.set_timer(CHOSEN_SECONDS, self.action_let_go)
        self.redraw()

    def action_let_go(self) -> None:
        """Shows again what is to be done now, and not what was chosen to look at."""
        self.chosen = None
        self.redraw()

    def on_coming_chosen(self, message: Coming.Chosen) -> None:
        self.choose(message.key)

    def on_key(self) -> None:
        """Whatever key it is, the last message was read."""
        self.saying.read()

    def action_choose(self, step: int) -> None:
        key = beside(self.board, self.chosen, step) if self.board is not None else None
        if key is not None:
            self.choose(key)

    def action_bell(self) -> None:
        self.say(self.sounds.switch())
        self.redraw()

    def action_zoom(self) -> None:
        self.zoom = (self._zoom() + 1) % len(ZOOMS)
        self.redraw()

    def _zoom(self) -> int:
        return self.zoom if self.zoom is not None else int(self.size.width >= DETAILED)
