"""Signals that ask the program to end, in good order: the terminal as it was, the log closed, no lock left."""

import signal
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from types import FrameType
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from asyncio import AbstractEventLoop

# Those this system knows, all but ctrl+c's, which Python raises as KeyboardInterrupt by itself.
ENDING = tuple(getattr(signal, name) for name in ("SIGTERM", "SIGHUP", "SIGQUIT") if hasattr(signal, name))


def heard_in(loop: "AbstractEventLoop", number: int, act: Callable[[int], object]) -> None:
    """The loop does `act` when the signal comes, also where a system's loop hears none by itself."""
    try:
        loop.add_signal_handler(number, act, number)
    except NotImplementedError:
        signal.signal(number, lambda *_: loop.call_soon_threadsafe(act, number))


@contextmanager
def ending_in_order() -> Iterator[None]:
    """Meanwhile, each raises SystemExit with 128 and its number, as shells count: all that is open is closed."""

    def end(number: int, _: FrameType | None) -> None:
        raise SystemExit(128 + number)

    before = {each: signal.signal(each, end) for each in ENDING}
    try:
        yield
    finally:
        for each, handler in before.items():
            signal.signal(each, handler)
