"""The live board: passes each key on to the object that acts on it."""

from collections.abc import Callable

from board.base.clock import VirtualClock
from board.evening.wishes import Close
from board.screens import words
from board.screens.ahead import Ahead
from board.screens.answering import Answering
from board.screens.ask import HelpScreen, LeaveScreen
from board.screens.behind import Behind
from board.screens.board import BoardScreen
from board.screens.chime import Bell
from board.screens.keys import BINDINGS
from board.screens.looking import Looking
from board.screens.panels import Band
from board.screens.plan_changes import PlanChangeNotice
from board.screens.rehearsing import Rehearsal
from board.screens.sharing import Page, Sharing
from board.screens.speech import Speaker
from board.session.plan_watcher import PlanWatcher
from board.session.replan.advisor import Advisor
from board.session.session import Evening
from board.sheet.changed import Changed
from board.view.board import BoardView
from board.view.keys_now import keys_now
from board.view.present import Present


class LiveScreen(BoardScreen):
    """The board during an evening, live or rehearsed."""

    BINDINGS = BINDINGS

    def __init__(
        self,
        evening: Evening,
        chime: Bell,
        virtual: VirtualClock | None,
        on_leave: Callable[[], None],
        on_theme: Callable[[], str],
        *,
        bell: bool = True,
        voice: Speaker | None = None,
        greeting: str = "",
        advisor: Advisor | None = None,
        plan_eye: PlanWatcher | None = None,
        changed: Changed | None = None,
        page: Page | None = None,
    ) -> None:
        super().__init__(evening, chime, rehearsal=Rehearsal(virtual), bell=bell, voice=voice, advisor=advisor)
        self.on_leave = on_leave
        self.on_theme = on_theme
        self.greeting = greeting
        self.ahead = Ahead(self, advisor)
        self.looking = Looking(self)
        self.answering = Answering(self, self.looking.asks_at)
        self.behind = Behind(self)
        self.sharing = Sharing(self, page)
        self.plan_news = PlanChangeNotice(self, plan_eye, changed)

    def key_words(self) -> tuple[tuple[str, str, str], ...]:
        shared = words.KEYS_SHARED if self.sharing.page is not None else ()
        return (*words.KEYS_EVENING, *shared, *(words.KEYS_REHEARSAL if self.rehearsal.is_on else ()))

    def keys_now(self, view: BoardView, present: Present, *, offered: bool) -> tuple[str, ...]:
        found = keys_now(view, present, offered=offered, rehearsal=self.rehearsal.is_on)
        return (*found[:-1], "m", found[-1]) if self.sharing.page is not None else found

    def opened(self) -> None:
        if self.greeting:
            self.say(self.greeting)
        self.plan_news.begin()
        self.behind.begin()

    def tick(self) -> None:
        if self.behind.asks:
            return
        super().tick()
        if self.present is not None:
            self.behind.offer(self.present)

    # --- answers ---------------------------------------------------------------------------------------------
    def action_answer(self) -> None:
        self.answering.answer()

    def action_later(self) -> None:
        self.answering.later()

    def action_done_already(self) -> None:
        self.answering.done_already()

    def action_leave_out(self) -> None:
        self.answering.leave_out()

    def action_take_back(self) -> None:
        self.answering.take_back()

    def action_mark(self, what: str) -> None:
        self.answering.mark(what)

    def action_put_away(self) -> None:
        self.answering.put_away()

    def action_tell_behind(self) -> None:
        self.behind.ask()

    # --- what is ahead ---------------------------------------------------------------------------------------
    def action_push(self) -> None:
        self.ahead.push()

    def on_band_chosen(self, message: Band.Chosen) -> None:
        self.ahead.push(message.course)

    def action_slip(self) -> None:
        self.ahead.slip()

    def action_take_offer(self) -> None:
        self.ahead.take_offer()

    # --- looking back, taking down ---------------------------------------------------------------------------
    def action_look(self) -> None:
        self.looking.back()

    def action_note(self) -> None:
        self.looking.note()

    def action_reading(self) -> None:
        self.looking.read_any(self.chosen_slot)

    def action_phones(self) -> None:
        self.sharing.show()

    # --- the board itself ------------------------------------------------------------------------------------
    def action_theme(self) -> None:
        self.say(self.on_theme())
        self.redraw()

    def action_help(self) -> None:
        self.app.push_screen(HelpScreen(rehearsal=False, keys=self.key_words()), lambda _: self.steady.settle())

    def action_leave(self) -> None:
        self.app.push_screen(LeaveScreen(), self._leave)

    def _leave(self, chosen: str | None) -> None:
        self.steady.settle()
        if chosen == "over":
            self.wish(Close())
            self.looking.close(self.on_leave)
        elif chosen is not None:
            self.on_leave()

    # --- rehearsal -------------------------------------------------------------------------------------------
    def action_hold(self) -> None:
        self._rehearsed(self.rehearsal.hold())

    def action_speed(self, times: float) -> None:
        self._rehearsed(self.rehearsal.hurry(times))

    def action_jump(self) -> None:
        self._rehearsed(self.rehearsal.jump(self.present))

    def _rehearsed(self, refused: str) -> None:
        if refused:
            self.say(refused)
        else:
            self.tick()
