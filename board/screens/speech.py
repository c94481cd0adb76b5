"""Calls spoken by a command of the host's, run beside the board: never waited for, and without a shell.

The words are the last argument, replace `{}`, or go to standard input if the command ends in ` -`. One runs at a time;
newer words replace those waiting. A command that hangs is ended.
"""

import asyncio
import contextlib
import os
import shlex
import signal
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from board.base.plain import REPLACEMENT, one_line
from board.screens import words

LONGEST_SECONDS = 15.0
LONGEST_TEXT = 300
PLACE, FROM_INPUT = "{}", "-"


def command_of(line: str) -> tuple[str, ...]:
    """The command line split into words as a shell would, and nothing else a shell does. Raises ValueError."""
    parts = tuple(shlex.split(line))
    if not parts or parts == (FROM_INPUT,) or any("\0" in part for part in parts):
        raise ValueError(line)
    return parts


@dataclass(frozen=True, slots=True)
class Spoken:
    """What to run, and what to write to its standard input."""

    arguments: tuple[str, ...]
    given: bytes | None


def spoken(command: Sequence[str], text: str) -> Spoken:
    """The text is stripped of control characters; if it starts with a dash it gets a space before it, so that no
    program takes it for an option. A final ` -` is not passed on: it means that the words go to standard input."""
    safe = one_line(one_line(text).replace(REPLACEMENT, " "), LONGEST_TEXT)
    safe = f" {safe}" if safe.startswith("-") else safe
    if command[-1] == FROM_INPUT:
        return Spoken(tuple(command[:-1]), f"{safe}\n".encode())
    if any(PLACE in part for part in command):
        return Spoken(tuple(part.replace(PLACE, safe) for part in command), None)
    return Spoken((*command, safe), None)


class Speaker:
    """Runs the command for each text. `failed` gets the reason once; later failures are silent."""

    def __init__(
        self, command: Sequence[str], failed: Callable[[str], None], longest_seconds: float = LONGEST_SECONDS
    ) -> None:
        self.command = tuple(command)
        self.failed = failed
        self.longest_seconds = longest_seconds
        self._waiting: str | None = None
        self._task: asyncio.Task[None] | None = None
        self._process: asyncio.subprocess.Process | None = None
        self._told = False

    def say(self, text: str) -> None:
        """Returns at once; must be called inside a running event loop."""
        self._waiting = text
        if self._task is None or self._task.done():
            self._task = asyncio.get_running_loop().create_task(self._speak())

    def stop(self) -> None:
        """Drops waiting words and ends the running command."""
        self._waiting = None
        if self._task is not None:
            self._task.cancel()
        self._end()

    async def _speak(self) -> None:
        while self._waiting is not None:
            text, self._waiting = self._waiting, None
            try:
                await self._run(spoken(self.command, text))
            except (OSError, ValueError) as wrong:
                why = getattr(wrong, "strerror", None) or wrong
                self._tell(words.voice_not_run(one_line(self.command[0], 40), one_line(why, 60)))

    async def _run(self, what: Spoken) -> None:
        self._process = process = await asyncio.create_subprocess_exec(
            *what.arguments,
            stdin=asyncio.subprocess.PIPE if what.given is not None else asyncio.subprocess.DEVNULL,
            stdout=asyncio.subprocess.DEVNULL,
            stderr=asyncio.subprocess.DEVNULL,
            start_new_session=True,  # so that its children end with it, and ctrl+c does not reach it
        )
        try:
            await asyncio.wait_for(process.communicate(what.given), self.longest_seconds)
        except TimeoutError:
            self._tell(words.voice_too_long(one_line(self.command[0], 40), round(self.longest_seconds)))
        else:
            if process.returncode:
                self._tell(words.voice_failed(one_line(self.command[0], 40), process.returncode))
        finally:
            self._end()

    def _end(self) -> None:
        """Ends the command and any of its children still running."""
        process, self._process = self._process, None
        if process is not None and process.returncode is None:
            with contextlib.suppress(OSError):
                if hasattr(os, "killpg"):
                    os.killpg(process.pid, signal.SIGKILL)
                else:  # Windows has no groups of processes
                    process.kill()

    def _tell(self, text: str) -> None:
        if not self._told:
            self._told = True
            self.failed(text)
