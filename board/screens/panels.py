"""The parts of the live board. Each places what the view says and knows nothing more."""

from collections.abc import Mapping, Sequence
from typing import NamedTuple

from rich.cells import cell_len
from textual.app import ComposeResult
from textual.containers import Horizontal
from textual.content import Content
from textual.events import Click
from textual.message import Message
from textual.widgets import Digits, Static

from board.base import words as shared
from board.evening.state import CallKey
from board.screens import words
from board.screens.big import ROWS, big, bigger
from board.screens.keys import ACTIONS
from board.screens.lines import Line, Lines, fitted
from board.view.board import BoardView, CallView
from board.view.ribbon import Row
from board.view.short import short_forms, without_articles
from board.view.wrap_words import cut, wrap_words

KEY_GAP = 2
MARGIN = 2  # columns, left of everything
LARGE_CLOCK_COLUMNS = 72
WIDE_COLUMNS = 100
HOW_ROWS = 2  # of a method, and of what goes in, unless the board is wide
FEW_ROWS = 5  # in which what comes after those beside the call is not listed
DETAILED = 96  # columns from which what is to come is listed with its details
SOON, SOON_COLUMNS, BESIDE_COLUMNS = 2, 24, 70  # the next things beside a call
COLUMN_WIDTH = 55  # of a list in two columns, at least
DUE_FRAMES = {1: "-due", 2: "-pressing", 3: "-overdue"}


class OneLine(Lines):
    """A single line in its style's colour."""

    def show(self, text: str) -> None:
        self.put([((text, ""),)])


class Wrapped(Lines):
    """A text in its style's colour, in as many lines as it takes, two at most."""

    def show(self, text: str) -> None:
        lines = wrap_words(text, self.size.width, 2) if self.size.width else [text]
        self.put([((line, ""),) for line in lines])
        if self.styles.height is None or self.styles.height.value != len(lines):
            self.styles.height = len(lines)


class Top(Horizontal):
    """The band: on time or late, the next course, until when guests sit and hands are free, every course. The clock is
    large while nothing is called. A click on a course pushes it."""

    def compose(self) -> ComposeResult:
        self.band = Band(id="band")
        self._clock = Digits("00:00", id="clock")
        yield self.band
        yield self._clock

    def show(self, view: BoardView, mode: str) -> None:
        is_large = not view.due and self.size.width >= LARGE_CLOCK_COLUMNS and self.size.height >= ROWS
        self._clock.display = is_large
        if self._clock.value != view.clock:
            self._clock.update(view.clock)
        # Where the clock comes or goes, the band's width follows only with the next layout.
        width = self.size.width - (self._clock.styles.width.value if is_large and self._clock.styles.width else 0)
        self.set_classes(f"-{view.standing.lower().replace(' ', '-') or 'over'}")
        self.band.show(view, mode, int(width), clock="" if is_large else view.clock)


class Band(Lines):
    """Three lines over the whole width. Nothing in them is cut: what does not fit beside gives way."""

    _courses: Sequence[tuple[str, str]] = ()

    class Chosen(Message):
        """A course was clicked."""

        def __init__(self, course: str) -> None:
            super().__init__()
            self.course = course

    def show(self, view: BoardView, mode: str, width: int, clock: str) -> None:
        is_wide = width >= WIDE_COLUMNS
        ahead = tuple(each for each, is_ahead in zip(view.courses, view.ahead, strict=True) if is_ahead)
        self._courses = view.courses if is_wide else ahead
        room = width - 2 * MARGIN
        said = f"{view.standing_sign} {view.standing}"
        told = view.course.told if view.course is not None else shared.ALL_SERVED
        if not view.standing:
            said, told = told, ""
        day = f"{view.title} · {view.day}" if is_wide else ""
        free = view.free[:1].lower() + view.free[1:]
        until = " · ".join(piece for piece in (view.seated, free) if piece)
        while len(self._courses) > 1 and cell_len(words.course_strip(self._told)) > room:
            self._courses = self._courses[1:]  # the last are those that can still be pushed
        courses = words.course_strip(self._told)
        lines = [((said, "bold"), (clock, "bold")), ((told, "bold"), ("", "")), ((until, ""), (mode, ""))]
        first = f"{said}   {told}" if told else said
        if cell_len(first) <= room:
            lines = [((first, "bold"), (clock, "bold")), lines[2], ((courses, ""), (day, ""))]
        self.put([_apart(left, right, room) for left, right in lines])

    @property
    def _told(self) -> list[str]:
        return [told for _, told in self._courses]

    def on_click(self, event: Click) -> None:
        at = event.get_content_offset(self)
        if at is None or at.y != 2:
            return
        left = at.x
        for course, text in self._courses:
            if 0 <= left < cell_len(text):
                self.post_message(self.Chosen(course))
            left -= cell_len(text) + cell_len(words.COURSE_GAP)


def _apart(left: tuple[str, str], right: tuple[str, str], width: int) -> Line:
    """Both at the two ends of a line; the right one only where it fits beside."""
    gap = width - cell_len(left[0]) - cell_len(right[0])
    if gap < KEY_GAP or not right[0]:
        return (left,)
    return left, (" " * gap, ""), right


Hints = Sequence[tuple[str, str]]  # keys, each with what it does


class Drawn(NamedTuple):
    """A headline as lines; `said`: what of it is in large letters, if it is in them."""

    said: str
    lines: list[Line]


class CallPanel(Lines):
    """The call that needs an answer, in large letters, then where and how long, what to look for, its caution and its
    keys, beside them the next two things. If there is none, what to do meanwhile. What is at the right can be chosen,
    and each key pressed, by a click."""

    letters = False  # loading them takes a moment, so the first frame goes without
    _next: Mapping[int, CallKey] = {}
    _hints: Sequence[Hints] = ()
    _first_hint = 0  # its row
    _split = 0
    beside = 0  # how many of what comes next it shows

    def show(self, view: BoardView, chosen: CallView | None, soon: Sequence[CallView]) -> None:
        is_due = chosen is not None and chosen.is_due
        self.wear(DUE_FRAMES[chosen.insistence] if is_due and chosen else "-chosen" if chosen else "-quiet")
        width, height = self.size.width, self.size.height
        beside = SOON_COLUMNS if soon and width >= BESIDE_COLUMNS else 0
        room = width - beside - (2 if beside else 0)
        title, first, last = self._below(view, chosen, room)
        how, amounts = (view.how, view.amounts) if chosen is None else (chosen.how, chosen.amounts)
        spare = height - len(first) - len(last)
        rows = len(self._method(how, amounts, room, spare))
        # Large letters go before the method, fewer of them with a line of it before more of them with none.
        tried = (self._title(title, chosen, spare - kept) for kept in range(rows, -1, -1))
        drawn = next((each for each in tried if each.said), self._title(title, chosen, spare - rows))
        is_whole = drawn.said in (title, without_articles(title)) or (drawn.said == "" and len(drawn.lines) == 1)
        if not is_whole:  # the whole of it stands below
            first = [*_bold(wrap_words(title, room)), *first]
        spare = height - len(drawn.lines) - len(first) - len(last)
        method = self._method(how, amounts, room, spare)
        below = self._fit([*first, *method, *last], height - len(drawn.lines))
        if method and width < DETAILED:
            soon = soon[:1]  # few words
        self._first_hint = len(drawn.lines) + len(below) - len(self._hints)
        self._next, self._split, self.beside = {}, room, len(soon) if beside else 0
        if beside:
            at_right, self._next = _soon(soon, beside, height - len(drawn.lines), len(drawn.lines))
            count = max(len(below), len(at_right))
            below = [
                (*fitted(line, room + 2), *right)
                for line, right in zip(_filled(below, count), _filled(at_right, count), strict=True)
            ]
        self.put([*drawn.lines, *below])

    def _method(self, how: str, amounts: str, room: int, rows: int) -> list[Line]:
        """How it is done and what goes in, in so many rows; of each two lines and of both three, unless the board is
        wide."""
        most = rows if self.size.width >= DETAILED else HOW_ROWS
        rows = rows if self.size.width >= DETAILED else min(rows, HOW_ROWS + 1)
        much = wrap_words(amounts, room, min(rows, most)) if amounts and rows > 0 else []
        rows -= len(much)
        told = wrap_words(how, room, min(rows, most)) if how and rows > 0 else []
        return [((line, ""),) for line in (*told, *much)]

    def _below(self, view: BoardView, chosen: CallView | None, room: int) -> tuple[str, list[Line], list[Line]]:
        """The headline; the lines between it and the method; those after, of which the last are the keys."""
        keys: Sequence[tuple[str, str]] = ()
        if chosen is None:
            bar = shared.SIGN["free"] * min(view.free_minutes or 0, room)
            lines: list[Line] = [((bar, "soft"),)] if bar else []
            lines += [((line, ""),) for line in wrap_words(view.detail, room)]
            after: list[Line] = []
            keys = words.BUSY_KEYS if view.busy else keys
            title = view.headline
        else:
            when = words.NOT_YET_DUE if chosen.answer else words.NOT_CALLED
            if chosen.is_due:
                when = f"{shared.INSISTENCE_SIGN[chosen.insistence]}{chosen.countdown}" if chosen.waits else ""
            told = " · ".join(each for each in (when, chosen.why, chosen.detail) if each)
            lines = [((line, ""),) for line in wrap_words(told, room)] if told else []
            beside = [(chosen.look_for, ""), (chosen.caution, "bold")]
            after = [((line, role),) for text, role in beside if text for line in wrap_words(text, room)]
            keys = words.answer_keys(chosen.answer, chosen.already, chosen.refuse) if chosen.answer else keys
            title = chosen.headline
        others = sum(1 for call in view.due if chosen is None or call.key not in (chosen.key, chosen.ends))
        self._hints = _wrapped(keys, room - cell_len(words.also_waiting(others)))
        after += [_hint_line(each) for each in self._hints]
        if others and not after:
            lines[-1] = (*lines[-1], (words.also_waiting(others), "bold"))
        elif others:
            after[-1] = (*after[-1], (words.also_waiting(others), "bold"))
        return title, lines, after

    def _title(self, title: str, chosen: CallView | None, room: int) -> Drawn:
        """In the largest letters for which there is room, with the call's sign beside the middle row."""
        sign = f"{chosen.sign} " if chosen else ""
        width = self.size.width - len(sign)
        if self.letters:
            rows = bigger(title, width) if room >= 2 * ROWS else None
            if rows is not None:
                return Drawn(title, _signed(rows, sign))
            for said in short_forms(title):
                # What is left out of it takes a line of its own, at least.
                lines = (room - (said != title)) // ROWS
                rows = big(said, width, min(lines, 2)) if lines else None
                if rows is not None:
                    return Drawn(said, _signed(rows, sign))
        return Drawn("", _bold(wrap_words(f"{sign}{title}", self.size.width)))

    def _fit(self, lines: list[Line], room: int) -> list[Line]:
        """Of too many lines, the keys stay, and what comes last before them goes."""
        if len(lines) <= room:
            return lines
        kept = lines[-max(1, len(self._hints)) :]
        return [*lines[: max(0, room - len(kept))], *kept]

    def on_click(self, event: Click) -> None:
        at = event.get_content_offset(self)
        if at is None:
            return
        if at.x > self._split:
            if at.y in self._next:
                self.post_message(Coming.Chosen(self._next[at.y]))
            return
        row, left = at.y - self._first_hint, at.x
        for key, name in self._hints[row] if 0 <= row < len(self._hints) else ():
            size = cell_len(f"{key} {name}")
            if 0 <= left < size:
                self.call_later(self.screen.run_action, ACTIONS[key])
            left -= size + cell_len(words.HINT_GAP)


def _bold(lines: Sequence[str]) -> list[Line]:
    return [((line, "bold"),) for line in lines]


def _signed(rows: Sequence[str], sign: str) -> list[Line]:
    return _bold([f"{sign if n == len(rows) // 2 else ' ' * len(sign)}{row}" for n, row in enumerate(rows)])


def _wrapped(keys: Hints, width: int) -> list[Hints]:
    """The keys of a call in lines of at most that width, broken between keys."""
    found: list[list[tuple[str, str]]] = []
    for each in keys:
        if found and len("".join(text for text, _ in _hint_line([*found[-1], each]))) <= width:
            found[-1].append(each)
        else:
            found.append([each])
    return list(found)


def _hint_line(keys: Hints) -> Line:
    line: list[tuple[str, str]] = []
    for key, name in keys:
        line += [(words.HINT_GAP if line else "", ""), (key, "bold"), (f" {name}", "soft")]
    return tuple(line)


def _filled(lines: Sequence[Line], count: int) -> list[Line]:
    return [*lines, *((),) * (count - len(lines))]


def _soon(calls: Sequence[CallView], width: int, room: int, first: int) -> tuple[list[Line], dict[int, CallKey]]:
    """The next things, those that fit whole; and which row is which call, counted from `first`."""
    lines: list[Line] = []
    rows: dict[int, CallKey] = {}
    for call in calls:
        said = f"{call.clock} {call.sign} {without_articles(call.headline)}"
        wrapped = wrap_words(said, width)
        if len(wrapped) > room - len(lines):
            break
        for text in wrapped:
            rows[first + len(lines)] = call.key
            lines.append(((text, "soft"),))
    return lines, rows


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

    def show(self, view: BoardView, chosen: CallView | None, beside: int) -> None:
        """`beside`: so many of what comes next are shown beside the call."""
        width, height = self.size.width, self.size.height
        lines = _standing(view, max(1, height // 2), width)
        rows = max(0, height - len(lines))
        columns = 2 if len(view.due) > rows and width >= 2 * COLUMN_WIDTH else 1
        calls = _window(view, chosen, rows * columns, beside)
        clock_width = max((len(call.clock) for call in calls), default=5)
        drawn = [
            _listed(call, clock_width, is_chosen=chosen is not None and chosen.key == call.key, wide=width >= DETAILED)
            for call in calls
        ]
        self._first_row, self._column_width = len(lines), width // columns
        self._keys = [[call.key for call in calls[n * rows : (n + 1) * rows]] for n in range(columns)]
        for n, left in enumerate(drawn[:rows]):
            right = drawn[rows + n : rows + n + 1]
            lines.append((*fitted(left, self._column_width), *right[0]) if right else left)
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


def _listed(call: CallView, clock_width: int, *, is_chosen: bool, wide: bool) -> Line:
    text = f"{shared.SIGN['chosen'] if is_chosen else ' '}{call.clock:>{clock_width}}  {call.sign} {call.headline}"
    role = "chosen" if is_chosen else "accent" if call.is_due else "text"
    told = f"  {call.detail}" if wide else ""
    if call.is_due:
        told = f"  {shared.INSISTENCE_SIGN[call.insistence]}{call.waits}"
    return (text, role), (told, "soft")


def _window(view: BoardView, chosen: CallView | None, room: int, beside: int) -> list[CallView]:
    """The calls to list: those due, then those to come, but for what stands above already: the first that is due, and
    those `beside` it. While the host chooses, all of them, scrolled to the chosen one, below what waits."""
    is_looking = chosen is not None and not chosen.is_due
    ahead = view.coming if is_looking or not beside else view.coming[beside:] if room > FEW_ROWS else ()
    is_first = chosen is None or (bool(view.due) and chosen.key == view.due[0].key)
    ended = view.due[0].ends if view.due else None  # by the key of the first
    due = [call for call in view.due[1:] if call.key != ended] if is_first else view.due
    calls = [*due, *ahead]
    at = next((number for number, call in enumerate(calls) if chosen and call.key == chosen.key), 0)
    stays = min(len(due), (room + 1) // 2) if is_looking else 0
    first = max(0, at - room + 1)
    return [*calls[:stays], *calls[first + stays : first + room]]


class KeyBar(Static):
    """The keys, each of them clickable."""

    _shown: tuple[object, ...] = ()

    def show_keys(
        self, keys: Sequence[tuple[str, str, str]], actions: Mapping[str, str] = ACTIONS, most_rows: int = 1
    ) -> None:
        """Breaks lines only between keys. If there are too many, the last leads to all the others and stays."""
        if self._shown == (self.size.width, *keys):
            return
        self._shown = (self.size.width, *keys)
        shown = list(keys)
        while len(shown) > 1 and len(self._lines(shown, actions)) > most_rows:
            del shown[-2]
        lines = self._lines(shown, actions)
        self.update(Content("\n").join(Content(" " * KEY_GAP).join(line) for line in lines), layout=most_rows > 1)

    def _lines(self, keys: Sequence[tuple[str, str, str]], actions: Mapping[str, str]) -> list[list[Content]]:
        lines: list[list[Content]] = [[]]
        used = 0
        for key, name, _ in keys:
            action = f"screen.{actions[key]}"
            made = Content.from_markup(f"[@click={action}][bold]$key[/] $name[/]", key=key, name=name)
            if lines[-1] and used + made.cell_length > self.size.width:
                lines.append([])
                used = 0
            lines[-1].append(made)
            used += made.cell_length + KEY_GAP
        return lines
