"""The terminal's title and its notifications: what is sent, to whom, and that no plan can send a command of its own.

OSC 2, "Set Text Parameters", and the title stack (XTWINOPS 22, 23): xterm, Control Sequences,
https://invisible-island.net/xterm/ctlseqs/ctlseqs.html, from memory.
"""

import re

import pytest

from board.files.preferences import notifies
from board.screens.lamp import Lamp
from board.sheet.run_sheet import RunSheet
from board.view.board import Viewer
from tests.conftest import Host, at
from tests.screens.conftest import Kitchen


@pytest.mark.parametrize(
    ("environ", "how"),
    [({"TERM": "xterm-256color"}, ""), ({"TERM": "xterm-256color", "TERM_PROGRAM": "WezTerm"}, "9"),
     ({"TERM": "foot"}, "777"), ({"TERM": "rxvt-unicode-256color"}, "777"), ({}, ""),
     ({"TERM": "tmux-256color", "TERM_PROGRAM": "WezTerm"}, ""), ({"TERM": "foot", "TMUX": "/tmp/tmux"}, "")],
)  # fmt: skip
def test_only_a_terminal_known_to_understand_it_is_notified(environ: dict[str, str], how: str) -> None:
    assert notifies(environ) == how


def test_the_title_has_the_call_and_its_minutes_and_comes_back_at_the_end(little: RunSheet) -> None:
    host, sent = Host(little, at("16:58")), list[str]()
    lamp = Lamp(sent.append, {})
    for clock in ("16:58", "17:00", "17:00", "17:03"):
        lamp.shows(Viewer(little).view(host.at(clock)))
    lamp.out()

    titles = [text[4:-1] for text in sent if text.startswith("\x1b]2;")]
    assert titles == ["Free until 17:00 · Stew at 19:00, in 2 h 02", "Chop", "Chop · 3 min"]
    assert (sent[0], sent[-1]) == ("\x1b[22;2t", "\x1b[23;2t")


@pytest.mark.parametrize("environ", [{"TERM": "foot"}, {"TERM_PROGRAM": "ghostty"}])
def test_words_of_a_plan_cannot_end_the_sequence_or_begin_another(environ: dict[str, str]) -> None:
    sent: list[str] = []
    Lamp(sent.append, environ).notify("4;1;50\x07\x1b]0;gone\x9c\x1b\\")

    (said,) = sent
    assert re.fullmatch(r"\x1b\](9;|777;notify;platecall;)Now: [^\x00-\x1f\x7f-\x9f;]+\x07", said)


async def test_what_rings_is_notified_once_and_not_while_the_bell_is_off(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        told: list[str] = []
        kitchen.app.live.sounds.notify = told.append
        kitchen.set("17:00")
        kitchen.set("17:00")
        assert told == ["Chop"]

        await pilot.press("b")
        kitchen.set("17:06")

        assert told == ["Chop"]
