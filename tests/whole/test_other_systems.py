"""What Windows or macOS lack is done without: groups of processes, signals heard by the loop, reading at a place, modes
by an open file, locks of an open file, folders that can be synced (Python's documentation of `os`, `asyncio` and
`fcntl`: Availability)."""

import asyncio
import os
import signal
import sys
from pathlib import Path
from typing import Any

import pytest

from board.base.clock import StoppedClock
from board.base.signals import heard_in
from board.evening.wishes import WriteNote
from board.log import disk
from board.log.read import read_log
from board.log.write import RunLog
from board.screens.speech import Speaker
from board.session.session import open_evening
from board.sheet.run_sheet import RunSheet
from tests.conftest import at


async def test_a_voice_is_ended_without_groups_of_processes(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delattr(os, "killpg")
    told: list[str] = []
    speaker = Speaker((sys.executable, "-c", "import time; time.sleep(60)"), told.append, longest_seconds=0.05)

    speaker.say("Soup on")
    for _ in range(200):
        await asyncio.sleep(0.01)
        if told and speaker._process is None:
            break

    assert "and was ended" in told[0]


async def test_a_signal_is_heard_where_the_loop_hears_none(monkeypatch: pytest.MonkeyPatch) -> None:
    loop = asyncio.get_running_loop()

    def refuse(*_: object) -> None:
        raise NotImplementedError

    monkeypatch.setattr(loop, "add_signal_handler", refuse)
    heard: list[int] = []
    before = signal.getsignal(signal.SIGTERM)
    try:
        heard_in(loop, signal.SIGTERM, heard.append)
        signal.raise_signal(signal.SIGTERM)
        await asyncio.sleep(0.01)
    finally:
        signal.signal(signal.SIGTERM, before)

    assert heard == [signal.SIGTERM]


def test_a_log_is_kept_and_gone_on_with(monkeypatch: pytest.MonkeyPatch, tmp_path: Path, little: RunSheet) -> None:
    for name in ("pread", "fchmod"):
        monkeypatch.delattr(os, name)
    monkeypatch.setattr(disk, "fcntl", None)
    opened = os.open

    def no_folders(path: Any, flags: int, *more: Any, **named: Any) -> int:
        if flags == os.O_RDONLY and Path(path).is_dir():
            raise PermissionError(path)
        return opened(path, flags, *more, **named)

    monkeypatch.setattr(os, "open", no_folders)
    path = tmp_path / "evening.jsonl"
    for text in ("salt it", "less salt"):
        log = RunLog(path)
        evening = open_evening(little, StoppedClock(at("18:00")), log, rehearsal=False)
        evening.wish(WriteNote(text))
        log.close()

    events = read_log(path.read_bytes(), "x").events
    assert [event.text for event in events if hasattr(event, "text")] == ["salt it", "less salt"]
