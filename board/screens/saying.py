"""The line above the lanes: all courses, or for a while a message instead."""

from collections.abc import Callable, Sequence

from rich.cells import cell_len
from textual.events import Click
from textual.message import Message
from textual.timer import Timer

from board.screens import words
from board.screens.panels import OneLine
from board.view.board import BoardView

SAYING_SECONDS = 6.0


class Saying(OneLine):
    """A click pushes a course. `then` is called when a message ends."""

    _courses: Sequence[tuple[str, str]] = ()
    _text = ""

    class Chosen(Message):
        """A course was clicked."""

        def __init__(self, course: str) -> None:
            super().__init__()
            self.course = course

    def __init__(self, then: Callable[[], None], *, id: str) -> None:
        super().__init__(id=id)
        self._then = then
        self._until: Timer | None = None

    @property
    def is_taken(self) -> bool:
        """Whether the last message is still shown."""
        return self._until is not None

    def say(self, text: str, *, grave: bool) -> None:
        """Shows a message for a while; it covers nothing else."""
        self.show(text)
        self.set_class(grave, "-grave")
        if self._until is not None:
            self._until.stop()
        self._until = self.set_timer(SAYING_SECONDS, self.over)

    def over(self) -> None:
        """Ends the message."""
        self._until = None
        self.remove_class("-grave")
        self._then()

    def lasts(self, text: str, view: BoardView, *, grave: bool) -> None:
        """Shows `text` for as long as it applies; if empty, the courses."""
        if text:
            self.show(text)
        else:
            self._courses = view.courses
            self.show(words.course_strip([told for _, told in view.courses]))
        self.set_class(grave, "-grave")

    def show(self, text: str) -> None:
        super().show(text)
        self._text = text

    def on_click(self, event: Click) -> None:
        if self._text != words.course_strip([text for _, text in self._courses]):
            return  # a message is shown, and no course is there
        at = event.get_content_offset(self)
        left = at.x if at is not None else -1
        for course, text in self._courses:
            if 0 <= left < cell_len(text):
                self.post_message(self.Chosen(course))
            left -= cell_len(text) + cell_len(words.COURSE_GAP)
