"""How calls sound: when the bell rings and how often, what the voice says, and whether either is on."""

from collections.abc import Callable

from board.evening.calls import Call
from board.evening.insist import STROKES, Heard, at_table, strokes, to_ring, waited_minutes
from board.screens import words
from board.screens.chime import Bell
from board.screens.speech import Speaker
from board.view.board import Viewer
from board.view.present import Present

SPOILS = STROKES["burns"]
MOST_SPOKEN = 3  # calls and warnings spoken at once


class Sounds:
    """The bell, with a notification, and the voice. `bell`: whether the bell was asked for."""

    def __init__(
        self, chime: Bell, voice: Speaker | None, viewer: Viewer, *, bell: bool, notify: Callable[[str], None]
    ) -> None:
        self.chime = chime
        self.notify = notify
        self.voice = voice
        self.viewer = viewer
        self.bell_wanted = bell
        self.on = bell or voice is not None
        self._heard: Heard = {}

    def hear(self, present: Present) -> None:
        """Rings and speaks what is due now, and warns (one stroke) of results soon past their best; while guests are at
        the table, only of what burns or spoils. What rang while silent is not made up for."""
        quiet = at_table(present.state)
        ringing, self._heard = to_ring(present.due, present.now, self._heard, at_table=quiet)
        past_best = () if quiet else present.warned
        warned = past_best or present.clock_warned
        if not (ringing or warned) or not self.on:
            return
        if self.bell_wanted:
            spoils = any(each.what != "put-away" for each in present.clock_warned)
            self.chime.ring(SPOILS if spoils else strokes(ringing))
            if ringing:
                self.notify(self.viewer.call(ringing[0], present, is_due=True).headline)
        if self.voice is not None:
            spoken = [self._spoken(call, present) for call in ringing]
            standings = self.viewer.standings
            spoken += [standings.spoken_warning(each, present.now) for each in past_best]
            spoken += [standings.clock_warning(each, present) for each in present.clock_warned]
            self.voice.say(" ".join(spoken[:MOST_SPOKEN]))

    def _spoken(self, call: Call, present: Present) -> str:
        shown = self.viewer.call(call, present, is_due=True)
        return words.spoken_call(shown.headline, waited_minutes(call, present.now))

    def switch(self) -> str:
        """Turns sound on or off; returns the words for it. Without a voice, it can turn on a bell not asked for."""
        self.on = not self.on
        if self.voice is None:
            self.bell_wanted = self.on
        return self.words()

    def words(self) -> str:
        if self.bell_wanted or self.voice is None:
            return words.BELL_ON if self.on else words.BELL_OFF
        return words.VOICE_ON if self.on else words.VOICE_OFF
