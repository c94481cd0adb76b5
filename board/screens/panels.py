"""The pieces of the live board. Each places what the view says and knows nothing more."""

from collections.abc import Mapping, Sequence

from rich.cells import cell_len
from textual.app import ComposeResult
from textual.containers import Horizontal, Vertical
from textual.content import Content
from textual.widgets import Digits, Static

from board import words
from board.screens.big import ROWS, big
from board.screens.keys import ACTIONS
from board.screens.lines import Line, Lines
from board.screens.palette import ACCENT, SOFT, STANDS, TEXT, TONES, WARNING
from board.view.board import BoardView, CallView
from board.view.fold import cut
from board.view.ribbon import Row

KEY_GAP = 2


class OneLine(Lines):
    """A single line in the colour its style gives it."""

    def show(self, text: str) -> None:
        self.put([((text, ""),)])


class Top(Horizontal):
    """The clock, the next course's countdown and how the evening stands."""

    def compose(self) -> ComposeResult:
        self._clock = Digits("00:00", id="clock")
        self._title = OneLine(id="title")
        self._standing = OneLine(id="standing")
        self._course = OneLine(id="course")
        self._countdown = Digits("00:00", id="countdown")
        yield self._clock
        with Vertical(id="middle"):
            yield self._title
            yield self._standing
            yield self._course
        yield self._countdown

    def show(self, view: BoardView, mode: str) -> None:
        if self._clock.value != view.clock:
            self._clock.update(view.clock)
        self._title.show(f"{view.title} · {view.day}")
        standing = f"{view.standing_sign} {view.standing.upper()}"
        self._standing.show(f"{standing}   {mode}".rstrip())
        self._standing.wear(f"-{view.standing.replace(' ', '-')}")
        course = view.course
        if course is None:
            self._course.show(words.ALL_SERVED)
            self._countdown.update("")
            return
        # Without room for the large countdown it stands in the line.
        narrow = f"  {course.countdown}" if not self._countdown.display or not self._countdown.size.width else ""
        self._course.show(f"{course.title}{narrow}  {course.detail}")
        self._countdown.update(course.countdown)
        self._countdown.set_class(course.is_late, "-late")


class CallPanel(Lines):
    """The call that needs an answer, in words three rows high; when there is none, what to do with the time."""

    letters = False  # loading them takes a moment, so the first picture does without

    def show(self, view: BoardView, chosen: CallView | None) -> None:
        is_due = chosen is not None and chosen.is_due
        self.wear("-due" if is_due else "-chosen" if chosen else "-quiet")
        if chosen is None:
            title, told = view.headline, [view.detail]
        else:
            ahead = words.NOT_YET_DUE if chosen.answer else words.NOT_CALLED
            when = chosen.countdown if is_due else ahead
            title, told = chosen.headline, [f"{when} · {chosen.detail}"]
            told += [chosen.look_for] if chosen.look_for else []
        others = [call for call in view.due if chosen is None or call.key != chosen.key]
        hint = words.answer_hint(chosen.answer) if chosen and chosen.answer else words.BUSY_HINT if view.busy else ""
        also = words.also_waiting([f"{c.sign} {c.headline}" for c in others]) if others else ""
        self.put(
            [*self._title(title, chosen, told), *(((line, ""),) for line in told), ((hint, "dim"), (also, "bold"))]
        )

    def _title(self, title: str, chosen: CallView | None, told: list[str]) -> list[Line]:
        """In large letters where they fit, with the call's sign beside the middle row."""
        width, height = self.size.width, self.size.height
        sign = f"{chosen.sign} " if chosen else ""
        rows = big(title, width - 4, max(1, (height - len(told) - 1) // ROWS)) if self.letters else None
        if rows is None:
            return [((f"{sign}{title}", "bold"),)]
        return [((f"{sign if number == 1 else ' ' * len(sign)}{row}", "bold"),) for number, row in enumerate(rows)]


class Ribbons(Lines):
    """The lanes, drawn by the view."""

    def show(self, rows: Sequence[Row]) -> None:
        self.put([tuple((text, TONES[tone]) for text, tone in row) for row in rows])


class Coming(Lines):
    """What comes next, and what stands and keeps."""

    def show(self, view: BoardView, chosen: CallView | None) -> None:
        height = self.size.height
        lines: list[Line] = []
        room = max(1, height // 3)
        for number, (text, presses) in enumerate(view.keeping[:room], 1):
            hidden = len(view.keeping) - room if number == room else 0
            more = words.and_more(hidden) if hidden > 0 else ""
            shown = cut(f"▒ {text}", self.size.width - cell_len(more))  # how many more is never what is cut off
            lines.append(((shown, f"bold {WARNING}" if presses else STANDS), (more, STANDS)))
        listed = view.coming[: max(0, height - len(lines))]
        clock_width = max((len(call.clock) for call in listed), default=5)
        for call in listed:
            is_chosen = chosen is not None and chosen.key == call.key
            mark = "›" if is_chosen else " "
            text = f"{mark}{call.clock:>{clock_width}}  {call.sign} {call.headline}"
            lines.append(((text, "bold reverse" if is_chosen else TEXT), (f"  {call.detail}", SOFT)))
        self.put(lines)


class KeyBar(Static):
    """The keys, each of which a mouse can press too."""

    def show_keys(self, keys: Sequence[tuple[str, str, str]], actions: Mapping[str, str] = ACTIONS) -> None:
        """Whole keys on each line: one is never torn from its word."""
        lines: list[list[Content]] = [[]]
        used = 0
        for key, name, _ in keys:
            action = f"screen.{actions[key]}"
            made = Content.from_markup(f"[@click={action}][bold {ACCENT}]$key[/] $name[/]", key=key, name=name)
            if lines[-1] and used + made.cell_length > self.size.width:
                lines.append([])
                used = 0
            lines[-1].append(made)
            used += made.cell_length + KEY_GAP
        self.update(Content("\n").join(Content(" " * KEY_GAP).join(line) for line in lines))
