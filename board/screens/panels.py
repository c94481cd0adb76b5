"""The parts of the live board. Each places what the view says and knows nothing more."""

from collections.abc import Mapping, Sequence

from rich.cells import cell_len
from textual.app import ComposeResult
from textual.containers import Horizontal, Vertical
from textual.content import Content
from textual.events import Click
from textual.message import Message
from textual.widgets import Digits, Static

from board.base import words as shared
from board.evening.state import CallKey
from board.screens import words
from board.screens.big import ROWS, big, bigger
from board.screens.keys import ACTIONS, LEFT_TO_HELP
from board.screens.lines import Line, Lines, fitted
from board.view.board import BoardView, CallView
from board.view.ribbon import Row
from board.view.wrap_words import cut, wrap_words

KEY_GAP = 2
KEY_ROWS = 3  # of the bar, at most
COLUMN_WIDTH = 55  # of a list in two columns, at least
DUE_FRAMES = {1: "-due", 2: "-pressing", 3: "-overdue"}


class OneLine(Lines):
    """A single line in its style's colour."""

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
        standing = f"{view.standing_sign} {view.standing}"
        self._standing.show(f"{standing}   {mode}".rstrip())
        self._standing.wear(f"-{view.standing.lower().replace(' ', '-')}")
        course = view.course
        if course is None:
            self._course.show(shared.ALL_SERVED)
            self._countdown.update("")
            return
        # If there is no room for the large countdown, it goes into the line.
        narrow = f"  {course.countdown}" if not self._countdown.display or not self._countdown.size.width else ""
        self._course.show(f"{course.title}{narrow}  {course.detail}")
        self._countdown.update(course.countdown)
        self._countdown.set_class(course.is_late, "-late")


class CallPanel(Lines):
    """The call that needs an answer, in letters three rows high; if there is none, what to do meanwhile."""

    letters = False  # loading them takes a moment, so the first frame goes without

    def show(self, view: BoardView, chosen: CallView | None) -> None:
        is_due = chosen is not None and chosen.is_due
        self.wear(DUE_FRAMES[chosen.insistence] if is_due and chosen else "-chosen" if chosen else "-quiet")
        if chosen is None:
            title, told = view.headline, [view.detail]
        else:
            ahead = words.NOT_YET_DUE if chosen.answer else words.NOT_CALLED
            when = f"{shared.INSISTENCE_SIGN[chosen.insistence]}{chosen.countdown}" if is_due else ahead
            why = f" · {chosen.why}" if chosen.why else ""
            title, told = chosen.headline, [f"{when}{why} · {chosen.detail}"]
            told += self._folded(chosen.look_for) if chosen.look_for else []
        others = [call for call in view.due if chosen is None or call.key != chosen.key]
        hint = (
            words.answer_hint(chosen.answer, chosen.already)
            if chosen and chosen.answer
            else words.BUSY_HINT
            if view.busy
            else ""
        )
        also = words.also_waiting([f"{c.sign} {c.headline}" for c in others]) if others else ""
        self.put(
            [*self._title(title, chosen, told), *(((line, ""),) for line in told), ((hint, "soft"), (also, "bold"))]
        )

    def _folded(self, text: str) -> list[str]:
        """Wrapped into the lines left beside title, time, hint and other calls."""
        return wrap_words(text, self.size.width, max(1, self.size.height - ROWS - 3))

    def _title(self, title: str, chosen: CallView | None, told: list[str]) -> list[Line]:
        """In large letters where they fit, with the call's sign beside the middle row."""
        width, height = self.size.width, self.size.height
        sign = f"{chosen.sign} " if chosen else ""
        room = height - len(told) - 2
        rows = bigger(title, width - 4) if self.letters and room >= 2 * ROWS else None
        if rows is None and self.letters:
            rows = big(title, width - 4, max(1, (room + 1) // ROWS))
        if rows is None:
            return [((f"{sign}{title}", "bold"),)]
        return [
            ((f"{sign if number == len(rows) // 2 else ' ' * len(sign)}{row}", "bold"),)
            for number, row in enumerate(rows)
        ]


class Ribbons(Lines):
    """The lanes, drawn by the view."""

    def show(self, rows: Sequence[Row]) -> None:
        self.put([row for row in rows])


class Coming(Lines):
    """Results that are keeping, other calls, and what comes next. A click chooses a call."""

    _keys: Sequence[Sequence[CallKey]] = ()
    _first_row = _column_width = 0

    class Chosen(Message):
        """A call was pressed."""

        def __init__(self, key: CallKey) -> None:
            super().__init__()
            self.key = key

    def show(self, view: BoardView, chosen: CallView | None) -> None:
        width, height = self.size.width, self.size.height
        lines = _standing(view, max(1, height // 3), width)
        rows = max(0, height - len(lines))
        columns = 2 if len(view.due) > rows and width >= 2 * COLUMN_WIDTH else 1
        calls = _window(view, chosen, rows * columns)
        clock_width = max((len(call.clock) for call in calls), default=5)
        drawn = [_listed(call, clock_width, is_chosen=chosen is not None and chosen.key == call.key) for call in calls]
        self._first_row, self._column_width = len(lines), width // columns
        self._keys = [[call.key for call in calls[n * rows : (n + 1) * rows]] for n in range(columns)]
        for n, left in enumerate(drawn[:rows]):
            beside = drawn[rows + n : rows + n + 1]
            lines.append((*fitted(left, self._column_width), *beside[0]) if beside else left)
        self.put(lines)

    def on_click(self, event: Click) -> None:
        at = event.get_content_offset(self)
        if at is None:
            return
        column, row = at.x // max(1, self._column_width), at.y - self._first_row
        if column < len(self._keys) and 0 <= row < len(self._keys[column]):
            self.post_message(self.Chosen(self._keys[column][row]))


def _standing(view: BoardView, room: int, width: int) -> list[Line]:
    """Results that are keeping; when lines are cut, the count of the rest always stays."""
    lines: list[Line] = []
    for number, (text, presses, sign) in enumerate(view.keeping[:room], 1):
        hidden = len(view.keeping) - room if number == room else 0
        more = words.and_more(hidden) if hidden > 0 else ""
        shown = cut(f"{sign} {text}", width - cell_len(more))
        lines.append(((shown, "presses" if presses else "stands"), (more, "stands")))
    return lines


def _listed(call: CallView, clock_width: int, *, is_chosen: bool) -> Line:
    text = f"{shared.SIGN['chosen'] if is_chosen else ' '}{call.clock:>{clock_width}}  {call.sign} {call.headline}"
    role = "chosen" if is_chosen else "accent" if call.is_due else "text"
    told = f"  {shared.INSISTENCE_SIGN[call.insistence]}{call.countdown}" if call.is_due else f"  {call.detail}"
    return (text, role), (told, "soft")


def _window(view: BoardView, chosen: CallView | None, room: int) -> list[CallView]:
    """The calls to list: those due (if there are several), then those to come; scrolled to the chosen one."""
    calls = [*(view.due if len(view.due) > 1 else ()), *view.coming]
    at = next((number for number, call in enumerate(calls) if chosen and call.key == chosen.key), 0)
    first = max(0, at - room + 1)
    return calls[first : first + room]


class KeyBar(Static):
    """The keys, each of them clickable."""

    def show_keys(self, keys: Sequence[tuple[str, str, str]], actions: Mapping[str, str] = ACTIONS) -> None:
        """Breaks lines only between keys. If there are too many, some are left out."""
        shown = list(keys)
        for key in LEFT_TO_HELP:
            if len(self._lines(shown, actions)) <= KEY_ROWS:
                break
            shown = [each for each in shown if each[0] != key]
        lines = self._lines(shown, actions)
        self.update(Content("\n").join(Content(" " * KEY_GAP).join(line) for line in lines))

    def _lines(self, keys: Sequence[tuple[str, str, str]], actions: Mapping[str, str]) -> list[list[Content]]:
        lines: list[list[Content]] = [[]]
        used = 0
        for key, name, _ in keys:
            action = f"screen.{actions[key]}"
            made = Content.from_markup(f"[@click={action}][bold $accent]$key[/] $name[/]", key=key, name=name)
            if lines[-1] and used + made.cell_length > self.size.width:
                lines.append([])
                used = 0
            lines[-1].append(made)
            used += made.cell_length + KEY_GAP
        return lines
