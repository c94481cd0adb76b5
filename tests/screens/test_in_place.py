"""An app that falls is opened again in its place; one that falls again and again is not; one a signal ended is not."""

import signal

import pytest

from board.evening.events import NoteWritten
from board.screens.app import BoardApp
from board.screens.dressed import DressedApp, Fallen
from board.screens.in_place import MOST_FAULTS, EndedByFault, kept_open
from board.sheet.run_sheet import RunSheet
from tests.screens.conftest import Kitchen


class Falling(DressedApp[str]):
    """Falls `left` times more, then returns."""

    left = 0

    def on_mount(self) -> None:
        self.dress()
        self.set_timer(0.01, self._act)

    def _act(self) -> None:
        if Falling.left:
            Falling.left -= 1
            raise ZeroDivisionError("a fault of the test")
        self.exit("left")


def run(app: DressedApp[str]) -> str | None:
    return app.run(headless=True)


def test_an_app_that_falls_is_opened_again_and_told_by_what() -> None:
    Falling.left = 2
    told: list[Fallen | None] = []

    def make(fallen: Fallen | None) -> Falling:
        told.append(fallen)
        return Falling()

    assert kept_open(make, run) == "left"
    assert [each and each.why for each in told] == [None, *["ZeroDivisionError: a fault of the test"] * 2]


def test_one_that_falls_again_and_again_ends() -> None:
    Falling.left = 100

    with pytest.raises(EndedByFault, match="a fault of the test"):
        kept_open(lambda _: Falling(), run)

    assert Falling.left == 100 - MOST_FAULTS - 1


def test_a_fault_outside_the_loop_counts_as_one() -> None:
    faults = [OSError("no terminal")]

    def runs(app: DressedApp[str]) -> str:
        if faults:
            raise faults.pop()
        return "left"

    assert kept_open(lambda _: Falling(), runs) == "left"


def test_a_panic_of_a_thread_is_a_fault() -> None:
    app = Falling()
    app._close_messages_no_wait = lambda: None  # type: ignore[method-assign]

    app.panic("traceback")

    assert app.fallen is not None


def test_a_signal_ends_it_for_good() -> None:
    def ended(app: DressedApp[str]) -> None:
        app.ended_by = signal.SIGTERM

    with pytest.raises(SystemExit) as left:
        kept_open(lambda _: Falling(), ended)

    assert left.value.code == 128 + signal.SIGTERM


async def test_what_was_typed_stands_again_once_it_is_opened(little: RunSheet) -> None:
    first = Kitchen(little, "17:00")
    async with first.app.run_test(size=(100, 30)) as pilot:
        await pilot.pause()
        await pilot.press("n", *"less")
        await pilot.pause()
        typed = first.app.note_typed()
    again = BoardApp(first.host.evening, chime=first.chime, fallen=Fallen("a fault", typed))
    async with again.run_test(size=(100, 30)) as pilot:
        await pilot.pause()
        await pilot.press(*" s", "enter")
        await pilot.pause()
        heard = first.host.evening.told[-1]

    assert isinstance(heard, NoteWritten)
    assert heard.text == "less s"
