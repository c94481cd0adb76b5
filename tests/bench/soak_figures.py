"""Hours of an evening at high speed in a terminal: `python tests/bench/soak_figures.py [HOURS]`, 12 if not told.

Every call is answered a little after it comes. Afterwards the log is gone through: at each event, was anything due and
not called; was anything called twice with no answer between. Memory is looked at meanwhile.
"""

import sys
import tempfile
import time
from dataclasses import dataclass
from datetime import timedelta
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from board.evening.calls import calls
from board.evening.events import CallRaised
from board.evening.fold import fold_all
from board.evening.forecast import Forecaster
from board.evening.state import CallKey, begin
from board.log.read import LogContents
from board.screens import words as screens_words
from tests.bench.board_process import Board, contents_of, environment

SPEED = 240.0
TICK = timedelta(seconds=0.25 * SPEED)  # of the evening's time, between two ticks of a hurried clock
FLAT_MB = 5.0
WARM_SECONDS = 15.0


@dataclass(frozen=True)
class Soaked:
    """What came of it. Memory in MB, after it has warmed up."""

    hours: float
    raised: int
    missed: tuple[str, ...]
    doubled: tuple[str, ...]
    memory: tuple[float, ...]


def missed_calls(contents: LogContents) -> tuple[str, ...]:
    """Calls that were due for longer than a few ticks when something else happened, and had not been raised."""
    forecaster, state = Forecaster(contents.opened.sheet), begin(contents.opened.sheet)
    last = contents.opened.at
    found: list[str] = []
    for event in contents.events:
        # Only where the board ticked: what went by the sheet before it began was answered at its very time.
        if event.at > last:
            moment = event.at - 4 * TICK
            if moment > last:
                due, _ = calls(forecaster.forecast(state, moment), state)
                found += [f"{moment:%H:%M} {call.key}" for call in due if call.raised is None]
            last = event.at
        state = fold_all(state, [event])
    return tuple(found)


def doubled_calls(contents: LogContents) -> tuple[str, ...]:
    waiting: set[CallKey] = set()
    found: list[str] = []
    for event in contents.events:
        slot = getattr(event, "slot", None)
        if isinstance(event, CallRaised):
            key = (event.slot, event.part, event.number)
            if key in waiting:
                found.append(f"{event.at:%H:%M} {key}")
            waiting.add(key)
        elif slot is not None:
            waiting = {key for key in waiting if key[0] != slot}
    return tuple(found)


def soak(hours: float, folder: Path, start: str = "10:00") -> Soaked:
    """So many hours of the evening, from a clock time on."""
    log = folder / "soak.jsonl"
    board = Board(log, environment(folder), "--speed", f"{SPEED:g}", "--from", start)
    board.seconds_until(("┃",), 120)
    began = sampled = time.perf_counter()
    memory: list[float] = []
    while (passed := time.perf_counter() - began) < hours * 3600 / SPEED:
        board.type(" ")
        board.read(0.5)
        if screens_words.READING_TITLE in board.drawn:
            board.type("w")  # nobody reads a probe here
            board.read(0.2)
        board.drawn = ""
        if time.perf_counter() - sampled > 2 and passed > WARM_SECONDS:
            memory.append(board.memory())
            sampled = time.perf_counter()
    board.kill()
    contents = contents_of(log)
    lasted = (max(event.at for event in contents.events) - contents.opened.at).total_seconds() / 3600
    raised = sum(isinstance(event, CallRaised) for event in contents.events)
    return Soaked(lasted, raised, missed_calls(contents), doubled_calls(contents), tuple(memory))


def main() -> None:
    hours = float(sys.argv[1]) if len(sys.argv) > 1 else 12.0
    with tempfile.TemporaryDirectory() as folder:
        found = soak(hours, Path(folder))
    least, most = min(found.memory), max(found.memory)
    print(f"{hours:g} hours of an evening at ×{SPEED:g}; calls raised: {found.raised}")
    print(f"missed                        {len(found.missed)} (goal 0)", *found.missed[:10], sep="\n  ")
    print(f"doubled                       {len(found.doubled)} (goal 0)", *found.doubled[:10], sep="\n  ")
    print(f"memory                        {least:.1f} to {most:.1f} MB (goal: within ± {FLAT_MB:g} MB)")


if __name__ == "__main__":
    main()
