"""The board as a real process under a pseudo-terminal, for figures: started, typed at, killed, and its log read."""

import os
import resource
import signal
import sys
import time
from datetime import timedelta
from pathlib import Path

import pexpect

HERE = Path(__file__).parents[2]
sys.path.insert(0, str(HERE))

from board.app.sessions import first_moment
from board.base.clock import StoppedClock
from board.log.read import LogContents, read_log
from board.log.write import Memory
from board.session.session import Evening
from board.view.board import Viewer

LANTERN = str(HERE / "plans" / "lantern-supper.yaml")


def environment(home: Path) -> dict[str, str]:
    env = {**os.environ, "HOME": str(home), "XDG_DATA_HOME": str(home / "data"), "PYTHONPATH": str(HERE),
           "TERM": "xterm-256color", "LANG": "C.UTF-8"}  # fmt: skip
    env.setdefault("XDG_CACHE_HOME", str(home / "cache"))
    for name in ("PYTHONDONTWRITEBYTECODE", "PYTHONUNBUFFERED"):
        env.pop(name, None)
    return env


class Screen:
    """A command that takes the whole terminal. `drawn` is all it has sent to it."""

    def __init__(self, env: dict[str, str], *words: str) -> None:
        self.began = time.perf_counter()
        self.drawn = ""
        self.process = pexpect.spawn(
            sys.executable,
            ["-m", "board", *words],
            dimensions=(24, 80), env=env, encoding="utf-8", codec_errors="replace", timeout=30,
        )  # fmt: skip
        self.process.delaybeforesend = None

    def read(self, seconds: float) -> None:
        """What it draws within so many seconds, so that it never waits for its terminal."""
        end = time.perf_counter() + seconds
        while (left := end - time.perf_counter()) > 0:
            try:
                self.drawn += self.process.read_nonblocking(65536, timeout=max(0.001, min(0.05, left)))
            except pexpect.TIMEOUT:
                continue
            except pexpect.EOF:
                return

    def seconds_until(self, texts: tuple[str, ...], most: float = 30.0) -> float:
        """From its start until one of the texts was drawn. Raises AssertionError when none comes."""
        while time.perf_counter() - self.began < most:
            if any(text in self.drawn for text in texts):
                return time.perf_counter() - self.began
            self.read(0.004)
        raise AssertionError(f"none of {texts} came; drawn were:\n{self.drawn[-3000:]}")

    def type(self, keys: str) -> None:
        self.process.send(keys)

    def kill(self) -> None:
        os.kill(self.process.pid, signal.SIGKILL)
        self.read(0.05)  # what it drew before it died
        self.process.wait()
        self.process.close(force=True)

    def memory(self) -> float:
        """Resident, in MB."""
        pages = int(Path(f"/proc/{self.process.pid}/statm").read_text().split()[1])
        return pages * resource.getpagesize() / 1e6


class Board(Screen):
    """A rehearsal on a log."""

    def __init__(self, log: Path, env: dict[str, str], *options: str) -> None:
        super().__init__(env, "rehearse", LANTERN, "--no-bell", "--log", str(log), *options)


def contents_of(log: Path) -> LogContents:
    return read_log(log.read_bytes(), log.name)


def evening_of(contents: LogContents, later: float = 0.0, start: tuple[int, int] | None = None) -> Evening:
    """The evening of a log, in memory, at its newest event (or where it was to begin, if that is later still: a board
    killed while it caught up) and some seconds more."""
    past = [contents.opened, *contents.events]
    moment = max(event.at for event in past)
    if start is not None:
        moment = max(moment, first_moment(contents.opened.sheet, start))
    moment += timedelta(seconds=later)
    return Evening(contents.opened.sheet, StoppedClock(moment), Memory(), past)


def sign_of(evening: Evening) -> str:
    """Words in the call's panel by which it is known, in letters of every size: of the call that is due its line of
    where and how long, else what comes then, or that hands are on something."""
    present = evening.tick()
    view = Viewer(evening.sheet).view(present)
    if view.due:
        return f" · {view.due[0].detail}"[:30]
    if "hands on, " in view.detail:
        return "hands on, "
    return view.detail[view.detail.find("Then: ") :][:24] if "Then: " in view.detail else view.headline
