"""The small screen for what went wrong: numbered lines, each with its cost before it is confirmed."""

from collections.abc import Callable, Sequence
from typing import ClassVar

from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Vertical
from textual.content import Content
from textual.events import Click
from textual.screen import ModalScreen
from textual.style import Style
from textual.widgets import Static

from board.base import words as shared
from board.base.plain import one_line
from board.evening.slips import KINDS, LONGEST, MINUTES, Kind, Target, more, targets
from board.evening.wishes import SlipWish
from board.screens import words
from board.screens.ask import one_more
from board.session.session import Evening
from board.view.board import Viewer
from board.view.slips import SlipLine, SlipLines

REFRESH_SECONDS = 1.0
ROOMY_ROWS = 24  # the lines, the chosen one's costs and the frame need this many; the rest go to the costs
INDENT = "     "
PRESS = "press"
LEAST_ROOM, MOST_ROOM = 4, 12
# What a click on part of a hint does.
HINT_ACTIONS = ("take", "minutes(-1)", "minutes(1)", "type", "which(1)", "line(-1)", "line(1)", "back")
TYPING_ACTIONS = ("take", "take", "back")

Taken = tuple[SlipWish, str]


class SlipScreen(ModalScreen[Taken | None]):
    """A number takes its line as it stands. Lines that nothing is there for are left away until their number is
    pressed; the others keep theirs.

    The screen is kept and reopened: making a new one takes twice as long as showing it.
    """

    CSS_PATH = "ask.tcss"
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape", "back", show=False),
        Binding("up", "line(-1)", show=False),
        Binding("down", "line(1)", show=False),
        Binding("left", "minutes(-1)", show=False),
        Binding("right", "minutes(1)", show=False),
        Binding("tab", "which(1)", show=False, priority=True),
        Binding("shift+tab", "which(-1)", show=False, priority=True),
        Binding("enter,space", "take", show=False),
        Binding("m", "type", show=False),
        Binding("backspace", "erase", show=False),
        *(Binding(str(digit), f"digit({digit})", show=False) for digit in range(10)),
    ]

    def __init__(self, evening: Evening, viewer: Viewer) -> None:
        super().__init__()
        self.evening = evening
        self.viewer = viewer
        self._shown = Content("")
        self.lines: list[SlipLine] = []
        self.targets: dict[Kind, tuple[Target, ...]] = {}
        self.begin(None)

    def begin(self, chosen: str | None) -> None:
        """Resets the screen; `chosen` is the slot the board looks at."""
        self.looked_at = chosen
        self.at: int | None = None  # the line the host chose
        self.minutes: dict[Kind, int] = dict(MINUTES)
        self.which: dict[Kind, Target] = {}  # the targets the host chose
        self.typed: str | None = None  # the minutes typed so far
        if self.is_mounted:
            self.show()

    @property
    def kind(self) -> Kind:
        return KINDS[self.here]

    @property
    def there(self) -> list[int]:
        """The lines that something is there for."""
        return [number for number, kind in enumerate(KINDS) if self.targets.get(kind)]

    @property
    def here(self) -> int:
        """The line that keys act on."""
        return self.at if self.at is not None else next(iter(self.there), 0)

    def compose(self) -> ComposeResult:
        self.text = Static("", markup=False)
        with Vertical(classes="box"):
            yield Static(Content.styled(words.SLIP_TITLE, "bold"))
            yield self.text

    def on_mount(self) -> None:
        self.show()
        self._again = self.set_interval(REFRESH_SECONDS, self.show)

    def on_screen_resume(self) -> None:
        self._again.resume()

    def on_screen_suspend(self) -> None:
        self._again.pause()  # kept while closed, and must cost nothing then

    def on_resize(self) -> None:
        self._guarded(self._draw)

    def show(self) -> None:
        """Works everything out again as time passes, and draws it."""
        self._guarded(self._work_out)

    def _guarded(self, work: Callable[[], None]) -> None:
        """A fault here must never end the board."""
        try:
            work()
        except Exception as wrong:
            self.lines = []
            self._put([Content(one_line(words.board_fault(one_line(wrong, 80))))])

    def _draw(self) -> None:
        if self.lines:
            self._put(self._drawn())

    def _put(self, drawn: list[Content]) -> None:
        """Lays the screen out only if something changed."""
        usual, typing = (words.SLIP_HINTS, HINT_ACTIONS), (words.SLIP_TYPING_HINTS, TYPING_ACTIONS)
        pieces, actions = usual if self.typed is None else typing
        hint = Content("").join(_pressable(piece, action) for piece, action in zip(pieces, actions, strict=True))
        text = Content("\n").join([*drawn, hint.stylize("$soft")])
        if text != self._shown:
            self._shown = text
            self.text.update(text)

    def _work_out(self) -> None:
        state, before = self.evening.state, self.evening.look()
        self.targets = {kind: targets(state, before, kind, self.looked_at) for kind in KINDS}
        make = SlipLines(self.viewer, state, before, self.evening.what_if)
        self.lines = [make.line(kind, self.targets[kind], self._which(kind), self.minutes[kind]) for kind in KINDS]
        self._draw()

    def _which(self, kind: Kind) -> int:
        """Index of the target the host chose; of the likeliest if none was, or it is gone."""
        chosen = self.which.get(kind)
        names = [(target.name, target.course) for target in self.targets[kind]]
        meant = (chosen.name, chosen.course) if chosen else None
        return names.index(meant) if meant in names else 0

    def _drawn(self) -> list[Content]:
        room = max(LEAST_ROOM, min(MOST_ROOM, LEAST_ROOM + self.app.size.height - ROOMY_ROWS))
        drawn = []
        for number in sorted({*self.there, self.here}):
            line, here = self.lines[number], number == self.here
            style = "bold $accent" if here else "$soft" if line.wish is None else ""
            text = f"{shared.SIGN['chosen'] if here else ' '} {number + 1}  {self._headline(line)}"
            drawn.append(_pressable(text, f"digit({number + 1})").stylize(style))
            if here:
                drawn += _indented(line.lines(room))
            elif beside := line.strip(self._width()):
                drawn.append(Content.styled(f"{INDENT}{beside}", "$soft"))
        return drawn

    def _headline(self, line: SlipLine) -> str:
        """Cut if too long for one line, but never its counter."""
        return one_line(line.headline, max(10, self._width() - len(line.counter))) + line.counter

    def _width(self) -> int:
        return max(10, (self.text.size.width or 66) - len(INDENT))

    def action_back(self) -> None:
        if self.typed is not None:
            self.typed = None
            self.show()
        else:
            self.dismiss(None)

    def action_line(self, step: int) -> None:
        self.typed = None
        found = self.there or [0]
        at = found.index(self.here) + step if self.here in found else 0
        self.at = found[at % len(found)]
        self.show()

    def action_minutes(self, step: int) -> None:
        """More or fewer minutes; on a line without minutes, another target."""
        self.typed = None
        if self.kind == "dish":
            self.action_which(step)
        else:
            self.minutes[self.kind] = more(self.kind, self.minutes[self.kind], step)
            self.show()

    def action_which(self, step: int) -> None:
        found = self.targets.get(self.kind, ())
        if found:
            self.which[self.kind] = found[(self._which(self.kind) + step) % len(found)]
            self.show()

    @property
    def types_figures(self) -> bool:
        """Whether digits are minutes, of which two may be alike."""
        return self.typed is not None

    def action_type(self) -> None:
        """From now on, digits are minutes."""
        if self.kind != "dish" and self.targets.get(self.kind):
            self.typed = ""
            self.show()

    def action_erase(self) -> None:
        if self.typed is not None:
            self._type(self.typed[:-1])

    def action_digit(self, digit: int) -> None:
        """Takes the line of that number; while minutes are typed, one more digit of them."""
        if self.typed is not None:
            self._type(one_more(self.typed, digit, LONGEST))
        elif 1 <= digit <= len(KINDS):
            self.at = digit - 1
            self.action_take()

    def _type(self, typed: str) -> None:
        self.typed = typed
        if typed:
            self.minutes[self.kind] = int(typed)
        self.show()

    def action_take(self) -> None:
        line = self.lines[self.here] if self.lines else None
        if line is None or line.wish is None:
            self.show()
        else:
            self._take(line.wish)

    async def on_click(self, event: Click) -> None:
        if action := event.style.meta.get(PRESS):
            await self.run_action(action)

    def _take(self, wish: SlipWish) -> None:
        if self.is_current:  # a bouncing key comes twice but must confirm once
            self.dismiss((wish, self.lines[self.here].headline))


def _pressable(text: str, action: str) -> Content:
    """Clickable text in its line's colours: a link would bring its own."""
    return Content.styled(text, Style.from_meta({PRESS: action}))


def _indented(costs: Sequence[str]) -> list[Content]:
    """Costs below their line; one past a limit is marked."""
    return [Content.styled(f"{INDENT}{cost}", "$warning" if cost[:1] == shared.COST_PAST else "") for cost in costs]
