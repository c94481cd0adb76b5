"""The pieces of the live board. Each places what the view says and knows nothing more."""

from collections.abc import Sequence

from textual.app import ComposeResult
from textual.containers import Horizontal, Vertical
from textual.content import Content
from textual.widgets import Digits, Static

from board import words
from board.screens.big import ROWS, big
from board.screens.keys import ACTIONS
from board.screens.palette import ACCENT, SOFT, STANDS, TEXT, TONES, WARNING
from board.view.board import BoardView, CallView
from board.view.ribbon import Row

KEY_GAP = 2


class Steady(Static):
    """Text that is drawn again only when it changed; most of it stays from one second to the next."""

    _drawn: object = None

    def is_new(self, *what: object) -> bool:
        """Whether this differs from what was drawn last; the size counts as well."""
        changed = (self.size, *what) != self._drawn
        self._drawn = (self.size, *what)
        return changed

    def put(self, text: str) -> None:
        """Foreign text that was made safe; no markup."""
        if self.is_new(text):
            self.update(Content(text), layout=False)


class Top(Horizontal):
    """The clock, the next course's countdown and how the evening stands."""

    def compose(self) -> ComposeResult:
        self._clock = Digits("00:00", id="clock")
        self._title = Steady("", id="title", markup=False)
        self._standing = Steady("", id="standing", markup=False)
        self._course = Steady("", id="course", markup=False)
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
        self._title.put(f"{view.title} · {view.day}")
        standing = f"{view.standing_sign} {view.standing.upper()}"
        self._standing.put(f"{standing}   {mode}".rstrip())
        if not self._standing.has_class(tone := f"-{view.standing.replace(' ', '-')}"):
            self._standing.set_classes(tone)
        course = view.course
        if course is None:
            self._course.put(words.ALL_SERVED)
            self._countdown.update("")
            return
        # Without room for the large countdown it stands in the line.
        narrow = f"  {course.countdown}" if not self._countdown.display or not self._countdown.size.width else ""
        self._course.put(f"{course.title}{narrow}  {course.detail}")
        self._countdown.update(course.countdown)
        self._countdown.set_class(course.is_late, "-late")


class CallPanel(Steady):
    """The call that needs an answer, in words three rows high; when there is none, what to do with the time."""

    letters = False  # loading them takes a moment, so the first picture does without

    def show(self, view: BoardView, chosen: CallView | None) -> None:
        if not self.is_new(chosen, view.due, view.headline, view.detail, view.busy, self.letters):
            return
        width, height = self.size.width, self.size.height
        is_due = chosen is not None and chosen.is_due
        self.set_classes("-due" if is_due else "-chosen" if chosen else "-quiet")
        if chosen is None:
            title, lines = view.headline, [view.detail]
        else:
            when = chosen.countdown if is_due else words.NOT_YET_DUE
            title, lines = (
                chosen.headline,
                [f"{when} · {chosen.detail}", *([chosen.look_for] if chosen.look_for else [])],
            )
        others = [call for call in view.due if chosen is None or call.key != chosen.key]
        hint = words.answer_hint(chosen.answer) if chosen else words.BUSY_HINT if view.busy else ""
        also = words.also_waiting([f"{c.sign} {c.headline}" for c in others]) if others else ""
        sign = f"{chosen.sign} " if chosen else ""
        rows = big(title, width - 4, max(1, (height - len(lines) - 1) // ROWS)) if self.letters else None
        parts: list[str | tuple[str, str]] = []
        if rows is None:
            parts.append((f"{sign}{title}\n", "bold"))
        else:
            for number, row in enumerate(rows):
                parts.append((f"{sign if number == 1 else '  ' if sign else ''}{row}\n", "bold"))
        parts += [f"{line}\n" for line in lines]
        parts += [(hint, "dim"), (also, "bold")]
        self.update(Content.assemble(*parts), layout=False)


class Ribbons(Steady):
    """The lanes, drawn by the view."""

    def show(self, rows: Sequence[Row]) -> None:
        if not self.is_new(rows):
            return
        lines = [Content.assemble(*((text, TONES[tone]) for text, tone in row)) for row in rows]
        self.update(Content("\n").join(lines), layout=False)


class Coming(Steady):
    """What comes next, and what stands and keeps."""

    def show(self, view: BoardView, chosen: CallView | None) -> None:
        height, width = self.size.height, self.size.width
        # Of what is to come only what is shown counts: its countdown is not.
        shown = tuple((c.key, c.clock, c.headline) for c in view.coming)
        if not self.is_new(view.keeping, shown, chosen.key if chosen else None):
            return
        lines: list[Content] = []
        for text, presses in view.keeping[: max(1, height // 3)]:
            lines.append(Content.assemble((f"▒ {text}", f"bold {WARNING}" if presses else STANDS)))
        listed = view.coming[: max(0, height - len(lines))]
        clock_width = max((len(call.clock) for call in listed), default=5)
        for call in listed:
            is_chosen = chosen is not None and chosen.key == call.key
            mark = "›" if is_chosen else " "
            text = f"{mark}{call.clock:>{clock_width}}  {call.sign} {call.headline}"
            detail = f"  {call.detail}"
            line = Content.assemble((text, "bold reverse" if is_chosen else TEXT), (detail, SOFT))
            lines.append(line.truncate(width, ellipsis=True) if width else line)
        self.update(Content("\n").join(lines), layout=False)


class KeyBar(Static):
    """The keys, each of which a mouse can press too."""

    def show_keys(self, keys: Sequence[tuple[str, str, str]]) -> None:
        """Whole keys on each line: one is never torn from its word."""
        lines: list[list[Content]] = [[]]
        used = 0
        for key, name, _ in keys:
            action = f"screen.{ACTIONS[key]}"
            made = Content.from_markup(f"[@click={action}][bold {ACCENT}]$key[/] $name[/]", key=key, name=name)
            if lines[-1] and used + made.cell_length > self.size.width:
                lines.append([])
                used = 0
            lines[-1].append(made)
            used += made.cell_length + KEY_GAP
        self.update(Content("\n").join(Content(" " * KEY_GAP).join(line) for line in lines))
