"""Whether a key is still held down. A terminal sends a held key over and over and never tells that it is up again.

The wait before the first repeat is up to 0.66 s on usual systems, and a person who means two acts looks at what came of
the first; common practice, no source.
"""

HELD_SECONDS = 0.7
# Keys that only move something, and may be held for that.
MOVES = frozenset((
    "up", "down", "left", "right", "pageup", "pagedown", "home", "end", "backspace", "delete", "tab", "shift+tab",
    "comma", "full_stop",
))  # fmt: skip


class Held:
    """Told of every key, in order, with its moment in seconds."""

    def __init__(self) -> None:
        self._key = ""
        self._last = float("-inf")
        self._in_text = False

    def repeats(self, key: str, moment: float, *, in_text: bool) -> bool:
        """Whether it is a repeat that must not act. Each repeat begins the wait anew. `in_text`: it goes into a line
        of text, where a key may repeat if it went down there."""
        again = key == self._key and moment - self._last < HELD_SECONDS
        if not again:
            self._in_text = in_text
        self._key, self._last = key, moment
        return again and key not in MOVES and not (in_text and self._in_text)
