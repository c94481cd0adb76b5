"""The board under Pilot: a stopped or virtual clock, a chime that records, keys that never bounce."""

from collections.abc import Iterator

import pytest

from board.screens import held, steady
from board.screens.app import BoardApp
from board.screens.chime import Bell
from board.sheet.run_sheet import RunSheet
from tests.conftest import Host, at


class Recorder(Bell):
    def __init__(self) -> None:
        self.rung = 0
        self.strokes = 0

    def ring(self, strokes: int = 1) -> None:
        self.rung += 1
        self.strokes = strokes


@pytest.fixture(autouse=True)
def _keys_never_bounce(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(steady, "SETTLE_SECONDS", 0.001)
    monkeypatch.setattr(held, "HELD_SECONDS", 0.0)


@pytest.fixture
def kitchen(little: RunSheet) -> Iterator["Kitchen"]:
    return Kitchen(little, "16:58")


class Kitchen:
    """The little supper on a board."""

    def __init__(self, sheet: RunSheet, clock: str) -> None:
        self.host = Host(sheet, at(clock))
        self.chime = Recorder()
        self.app = BoardApp(self.host.evening, chime=self.chime)

    def set(self, clock: str) -> None:
        self.host.clock.set(at(clock))
        self.app.live.tick()
        self.app.live.steady.over()  # the host has seen what stands there now

    def shown(self) -> str:
        """Every character on the screen."""
        return screen_text(self.app)

    def status(self, id_: str) -> str:
        return self.host.evening.state.steps[id_].status


def screen_text(app: BoardApp) -> str:
    width, height = app.size
    lines = app.screen._compositor.render_strips()
    return "\n".join("".join(segment.text for segment in strip) for strip in lines[:height])[: (width + 1) * height]
