"""Small screens over the board: push a course, write a note, the keys, leaving."""

from collections.abc import Iterable, Sequence
from typing import ClassVar

from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Vertical, VerticalScroll
from textual.content import Content
from textual.screen import ModalScreen
from textual.style import Style
from textual.widgets import Input, Static

from board.base import words as shared
from board.base.plain import one_line
from board.evening.wishes import Refusal
from board.screens import words
from board.session.session import Evening
from board.view.board import Viewer
from board.view.costs import costs

CLOSE: list[BindingType] = [Binding("escape", "dismiss(None)", show=False)]
REFRESH_SECONDS = 1.0
PUSH_STEP = 5
LONGEST_PUSH = 180
MOST_COSTS = 10  # nobody with a pan on reads more lines than this
# What a click on a hint's words does.
PUSH_ACTIONS = ("course(-1)", "course(1)", "minutes(-1)", "minutes(1)", "take", "dismiss")
NOTE_ACTIONS = ("keep", "dismiss")
LEAVE_ACTIONS = ("dismiss('leave')", "dismiss('over')", "dismiss")

TOPIC_COLUMNS, TOPIC_MARGIN = 64, 12  # a page of the manual; what box, edges and scroll bar take of a narrow window


class PushScreen(ModalScreen[tuple[str, int] | None]):
    """Which course to push and by how much, with its cost, before it is confirmed."""

    CSS_PATH = "ask.tcss"
    types_figures = True  # minutes, of which two may be alike
    BINDINGS: ClassVar[list[BindingType]] = [
        *CLOSE,
        Binding("up", "course(-1)", show=False),
        Binding("down", "course(1)", show=False),
        Binding("left", "minutes(-1)", show=False),
        Binding("right", "minutes(1)", show=False),
        Binding("enter,space", "take", show=False),
        Binding("backspace", "erase", show=False),
        *(Binding(str(digit), f"digit({digit})", show=False) for digit in range(10)),
    ]

    def __init__(self, evening: Evening, viewer: Viewer, course: str) -> None:
        super().__init__()
        self.evening = evening
        self.viewer = viewer
        self.courses = [c.name for c in evening.look().courses if c.is_ahead]
        self.at = self.courses.index(course) if course in self.courses else 0
        self.minutes = 2 * PUSH_STEP
        self.typed = ""

    def compose(self) -> ComposeResult:
        self.text = Static("", markup=False)
        with Vertical(classes="box"):
            yield Static(Content.styled(words.PUSH_TITLE, "bold"))
            yield self.text
            yield hint(zip(words.PUSH_HINTS, PUSH_ACTIONS, strict=True))

    def on_mount(self) -> None:
        self.show()
        self.set_interval(REFRESH_SECONDS, self.show)

    def show(self) -> None:
        course = self.courses[self.at]
        before = self.evening.look()
        after = self.evening.what_if(self.evening.push(course, self.minutes))
        lines = [after.words] if isinstance(after, Refusal) else costs(self.viewer, before, after).lines(self._room())
        title = Content.styled(
            f"{shared.SIGN['chosen']} {one_line(words.push_line(course, self.minutes))}", "bold $accent"
        )
        self.text.update(Content("\n").join([Content(""), title, *(Content(one_line(x)) for x in lines), Content("")]))

    def _room(self) -> int:
        """Lines for the costs: what the frame, the title and the hint leave free."""
        return max(2, min(MOST_COSTS, self.app.size.height - 8))

    def action_course(self, step: int) -> None:
        self.at = (self.at + step) % len(self.courses)
        self.show()

    def action_minutes(self, step: int) -> None:
        self.typed = ""
        self.minutes = min(LONGEST_PUSH, max(PUSH_STEP, self.minutes + step * PUSH_STEP))
        self.show()

    def action_digit(self, digit: int) -> None:
        self._type(one_more(self.typed, digit, LONGEST_PUSH))

    def action_erase(self) -> None:
        self._type(self.typed[:-1])

    def _type(self, typed: str) -> None:
        self.typed = typed
        if typed:
            self.minutes = int(typed)
        self.show()

    def action_take(self) -> None:
        self.dismiss((self.courses[self.at], self.minutes))


class NoteScreen(ModalScreen[str | None]):
    """One line of text for the run log."""

    CSS_PATH = "ask.tcss"
    BINDINGS: ClassVar[list[BindingType]] = CLOSE
    ASKED, HINTS, LONGEST = words.NOTE_TITLE, words.NOTE_HINTS, 500

    def __init__(self, about: str | None, slot: str | None = None, text: str = "", told: str = "") -> None:
        """`told`: what the board says meanwhile, since the box may lie over it."""
        super().__init__()
        self.told = told
        self.about = about
        self.slot = slot
        self.text = text

    def typed(self) -> str:
        """What has been typed so far."""
        return self.query_one(Input).value if self.is_mounted else self.text

    def about_words(self) -> str:
        """What it is about, not yet safe for a terminal."""
        return words.note_about(self.about)

    def compose(self) -> ComposeResult:
        with Vertical(classes="box"):
            if self.told:
                yield Static(Content(one_line(self.told)))
            yield Static(Content.styled(self.ASKED, "bold"))
            yield Static(Content(one_line(self.about_words())))
            yield Input(self.text, max_length=self.LONGEST, select_on_focus=False)
            yield hint(zip(self.HINTS, NOTE_ACTIONS, strict=True))

    def action_keep(self) -> None:
        if self.is_current:
            self.dismiss(self.query_one(Input).value)

    def on_input_submitted(self, event: Input.Submitted) -> None:
        if self.is_current:  # a bouncing enter comes twice but must close once
            self.dismiss(event.value)


class HelpScreen(ModalScreen[None]):
    """Every key and every sign, and below them what the manual says of an evening."""

    CSS_PATH = "ask.tcss"
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,question_mark,q,space,enter,f1", "dismiss(None)", show=False),
        Binding("up", "move(-1)", show=False),
        Binding("down", "move(1)", show=False),
        Binding("pageup", "move(-15)", show=False),
        Binding("pagedown", "move(15)", show=False),
    ]

    def __init__(self, *, rehearsal: bool, keys: Sequence[tuple[str, str, str]] | None = None) -> None:
        super().__init__()
        self.rehearsal = rehearsal
        self.key_words = keys

    def compose(self) -> ComposeResult:
        keys: Sequence[tuple[str, str, str]] = self.key_words or words.KEYS_EVENING
        if self.rehearsal:
            keys = (*keys, *words.KEYS_REHEARSAL)
        # Whoever reads this page knows the key to it; without that line the page fits the smallest window.
        told = [(key, meaning) for key, _, meaning in keys if key != words.HELP_KEY]
        lines = [Content.assemble((f"{key:>7}  ", "bold $accent"), meaning) for key, meaning in told]
        lines += [Content.assemble((f"{sign:>7}  ", "bold"), meaning) for sign, meaning in words.HELP_SIGNS]
        box = VerticalScroll(classes="box")  # if there are more keys than rows, the arrow keys scroll
        box.border_title = Content(f"{words.HELP_TITLE} · {words.CLOSE_HINT}")
        with box:
            yield Static(Content("\n").join(lines))
            yield Static(Content(f"\n{self._topic()}"), id="topic")

    def _topic(self) -> str:
        from board.manual.pages import page  # only here: nobody else waits for it
        from board.manual.shown import shown

        return shown(page("evening"), min(TOPIC_COLUMNS, self.app.size.width - TOPIC_MARGIN))

    def action_move(self, rows: int) -> None:
        """Scrolls, if the window is too small for everything."""
        self.query_one(".box").scroll_relative(y=rows, animate=False)


class LeaveScreen(ModalScreen[str | None]):
    """Whether to leave, to close the evening, or to stay."""

    CSS_PATH = "ask.tcss"
    BINDINGS: ClassVar[list[BindingType]] = [
        *CLOSE,
        Binding("l,q,ctrl+q", "dismiss('leave')", show=False),
        Binding("e", "dismiss('over')", show=False),
    ]

    def compose(self) -> ComposeResult:
        with Vertical(classes="box"):
            yield Static(Content.styled(words.LEAVE_TITLE, "bold"))
            yield Static("")
            for line, action in zip(words.LEAVE_LINES, LEAVE_ACTIONS, strict=True):
                yield Static(pressable(line, action))


def one_more(typed: str, digit: int, most: int) -> str:
    """Minutes being typed, with one more digit; as they were if they would begin with 0 or be more than `most`."""
    longer = f"{typed}{digit}"
    return longer if 1 <= int(longer) <= most else typed


def pressable(text: str, action: str) -> Content:
    return Content.styled(text, Style.from_meta({"@click": f"screen.{action}"}))


def hint(pieces: Iterable[tuple[str, str]]) -> Static:
    """One line of muted words, each clickable."""
    made = [pressable(text, action) for text, action in pieces]
    return Static(Content(" · ").join(made), classes="hint")
