"""A line being typed, on a screen that takes every key itself, in the order in which they were pressed.

An action of a binding, a field with a queue of its own, and what an app does to a key before its screen has had the one
before it, all lose that order when keys come faster than they are worked on.
"""

from collections import deque
from dataclasses import dataclass
from typing import ClassVar

from rich.cells import cell_len
from textual import events
from textual.binding import Binding, BindingType
from textual.screen import Screen

from board.base.plain import plain
from board.screens.held import Held
from board.screens.lines import Line

LONGEST = 1000  # characters


@dataclass
class Typed:
    """A text and the place in it that keys work at, counted from 0."""

    text: str = ""
    at: int = -1  # at first: at the end

    def __post_init__(self) -> None:
        self.at = len(self.text) if self.at < 0 else self.at

    def press(self, key: str, sign: str) -> None:
        """Does what a key does in a line of text; nothing for any other."""
        before, behind = self.text[: self.at], self.text[self.at :]
        match key:
            case "left" | "right":
                self.at = max(0, min(self.at + (1 if key == "right" else -1), len(self.text)))
            case "home" | "end":
                self.at = 0 if key == "home" else len(self.text)
            case "backspace":
                self._set(before[:-1], behind)
            case "delete":
                self._set(before, behind[1:])
            case "ctrl+u":
                self._set("", behind)
            case _ if sign and sign.isprintable():
                self._set(before + sign, behind)

    def put(self, text: str) -> None:
        """Puts in what was pasted; line breaks become spaces."""
        self._set(self.text[: self.at] + " ".join(text.splitlines()), self.text[self.at :])

    def _set(self, before: str, behind: str) -> None:
        if len(before) + len(behind) <= max(LONGEST, len(self.text)):
            self.text, self.at = before + behind, len(before)

    def line(self, width: int, suggested: str = "") -> Line:
        """As it is shown: so much of it that the place is in view, and how it may go on."""
        text = plain(self.text).replace("\t", " ").replace("\n", " ")
        first = next(n for n in range(self.at + 1) if cell_len(text[n : self.at]) <= max(1, width - 2))
        left, more = (text[first : self.at], "accent"), plain(suggested)
        if self.at == len(text):
            return left, (more[:1] or " ", "chosen"), (more[1:], "soft")
        return left, (text[self.at], "chosen"), (text[self.at + 1 :], "accent"), (more, "soft")


class TypingScreen(Screen[None]):
    """`typed`: None while nothing is typed. `busy`: keys wait until `go_on`. `held_is_one_act`: for every key; without
    it for the one that takes something out."""

    BINDINGS: ClassVar[list[BindingType]] = [Binding("ctrl+q", "app.quit", show=False)]
    takes_every_key = True
    held_is_one_act = True
    typed: Typed | None = None
    busy = False

    def __init__(self) -> None:
        super().__init__()
        self._waiting: deque[events.Key | events.Paste] = deque()
        self._keys_held = Held()

    def pressed(self, key: str, sign: str) -> None:
        """One key; small letters but where a text is typed. `sign`: what it types, if anything."""
        raise NotImplementedError

    def was_typed(self) -> None:
        """What is typed was pasted into."""
        raise NotImplementedError

    def on_key(self, event: events.Key) -> None:
        if event.key.startswith("ctrl+") and event.key != "ctrl+u":
            return
        event.stop()
        event.prevent_default()
        self._waiting.append(event)
        self.go_on()

    def on_paste(self, event: events.Paste) -> None:
        event.stop()
        self._waiting.append(event)
        self.go_on()

    def go_on(self) -> None:
        """Takes the keys that wait, until one makes the others wait."""
        while self._waiting and not self.busy:
            self._take(self._waiting.popleft())

    def _take(self, event: events.Key | events.Paste) -> None:
        in_text = self.typed is not None
        if isinstance(event, events.Paste):
            if self.typed is not None:
                self.typed.put(event.text)
                self.was_typed()
            return
        key, sign = event.key, event.character or ""
        takes_out = key == "delete" and not in_text
        held = "del" if takes_out else key  # it moves nothing, as it does in a text
        again = self._keys_held.repeats(held, event.time, in_text=in_text or sign.isdecimal())
        if again and (self.held_is_one_act or takes_out):
            return
        if not in_text and len(sign) == 1:
            key, sign = (sign.lower() if sign.isalpha() else key), sign.lower()
        self.pressed(key, sign)
