"""What must end no evening, tried: `hard_figures.py [TIMES]`. Each part prints how often it was tried and what broke.

Random bytes typed at each screen of a real process; a key held down; a bit flipped in each line of an opening; second
names of an open log; logs of odd values under good checksums.
"""

import json
import os
import random
import sys
import tempfile
import time
import zlib
from collections.abc import Callable
from pathlib import Path

import pexpect

sys.path.insert(0, str(Path(__file__).parents[2]))

from board.app.reading_logs import csv_of, listed, look_back
from board.base.errors import Trouble
from board.evening.events import CallPutOff, LookedIn, StepFinished, StepStarted, TakenBack
from board.log.read import read_log
from board.log.write import LogInUse, RunLog
from tests.bench.board_process import LANTERN, Board, contents_of, environment

READY = ("┃",)
NOISE = [b"\x1b[", b"\x1b", b"\x1b[M", b"\x1b[<", b";", b"9", b"u", b"t", b"~", b":", b"\x1b[200~", b"\xe9", b"\xff"]
ODD = (-1, 0, 10**12, 2**63, 1e308, "", "x" * 5000, "9999-12-31T23:59:59Z", "0001-01-01T00:00:00Z", None, [], "host")
SCREENS = {"board": "", "note": "n", "look back": "o", "push": "p", "went wrong": "w", "keys": "?"}


def wrong_bytes(folder: Path, count: int) -> str:
    """Bytes at random to each screen. One that a host can leave by a key is opened again; it may end by that only."""
    noise, typed, ended, left = random.Random(3), 0, [], 0
    for name, key in SCREENS.items():
        log, board = folder / f"noise-{name}.jsonl", None
        for _ in range(count):
            if board is None or not board.process.isalive():
                if board is not None:
                    board.process.close()
                    code = board.process.exitstatus
                    left += code == 0
                    ended += [] if code == 0 else [f"{name}: {code}"]
                board = Board(log, environment(folder), "--from", "18:20", "--speed", "1")
                board.seconds_until(READY)
                board.type(key)
                board.read(0.2)
            data = b"".join(noise.choice([*NOISE, os.urandom(1)]) for _ in range(40))
            with_no_leave = data.replace(b"q", b"").replace(b"\x03", b"").replace(b"\x11", b"")
            os.write(board.process.child_fd, with_no_leave)
            typed += len(with_no_leave)
            board.read(0.05)
        assert board is not None
        board.kill()
        contents_of(log)
    return (
        f"{typed} bytes to {len(SCREENS)} screens: ended by them {len(ended)} {ended[:5]}, left by keys in them {left}"
    )


def held_keys(folder: Path) -> str:
    """Space, then l, then u, each sent as a keyboard repeats it: after half a second, then 30 times a second."""
    acts = []
    for key in " lu":
        log = folder / f"held-{ord(key)}.jsonl"
        board = Board(log, environment(folder), "--from", "18:46", "--speed", "1")
        board.seconds_until(READY)
        if key == "u":
            for each in " x x":
                board.type(each)
                board.read(1.2)
        board.read(1.0)
        before = len(contents_of(log).events)
        board.type(key)
        board.read(0.5)
        for _ in range(90):
            board.type(key)
            board.read(1 / 30)
        kinds = (StepStarted, StepFinished, LookedIn, CallPutOff, TakenBack)
        board.kill()
        moments = {each.at for each in contents_of(log).events[before:] if isinstance(each, kinds)}
        acts.append(f"{key!r} {len(moments)}")
    return f"acts of a key held for 3.5 s: {', '.join(acts)} (goal 1)"


def flipped(log: Path, count: int) -> str:
    """A bit at random in the opening of a log, each tried by itself."""
    noise, data = random.Random(5), log.read_bytes()
    sound, broke = read_log(data, log.name), 0
    for _ in range(count):
        place = noise.randrange(sound.head)
        damaged = data[:place] + bytes([data[place] ^ (1 << noise.randrange(8))]) + data[place + 1 :]
        try:
            found = read_log(damaged, log.name)
            broke += (found.opened, found.events) != (sound.opened, sound.events)
        except Exception:
            broke += 1
    return f"{count} bits flipped in an opening of {sound.head} bytes: evenings not read whole {broke} (goal 0)"


def second_names(log: Path) -> str:
    """A link of each kind to a log that is open."""
    held, refused = RunLog(log), 0
    for number, link in enumerate((os.symlink, os.link)):
        other = log.with_name(f"name-{number}.jsonl")
        link(log, other)
        try:
            RunLog(other).close()
        except LogInUse:
            refused += 1
    held.close()
    return f"second names of an open log refused: {refused} of 2"


def odd_logs(log: Path, folder: Path, count: int) -> str:
    """Values at random put into a log, each line sealed anew, and what reads logs set on it."""
    noise, lines = random.Random(9), [json.loads(line) for line in log.read_bytes().splitlines()[2:]]
    for line in lines:
        line.pop("crc")
    path, broke, slowest = folder / "odd.jsonl", [], 0.0
    readers: list[Callable[[], object]] = [lambda: listed([path]), lambda: look_back(path), lambda: csv_of([path])]
    for _ in range(count):
        forms = json.loads(json.dumps(lines))
        for _ in range(noise.choice([1, 1, 3])):
            _put_odd(noise, forms[noise.randrange(len(forms))])
        bodies = [json.dumps(form, separators=(",", ":"), ensure_ascii=False).encode() for form in forms]
        path.write_bytes(b"".join(body[:-1] + b',"crc":"%08x"}\n' % zlib.crc32(body) for body in bodies))
        for read in readers:
            began = time.perf_counter()
            try:
                read()
            except Trouble:
                pass
            except Exception as wrong:
                broke.append(f"{type(wrong).__name__}: {wrong}"[:60])
            slowest = max(slowest, time.perf_counter() - began)
    return f"{count} odd logs: not told but fallen over {len(broke)} {broke[:3]}, slowest {slowest:.2f} s"


def _put_odd(noise: random.Random, form: dict[str, object]) -> None:
    place: object = form
    while True:
        keys = [key for key in place if key != "event"] if isinstance(place, dict) else list(range(len(place)))  # type: ignore[arg-type]
        if not keys:
            return
        key = noise.choice(keys)
        inner = place[key]  # type: ignore[index]
        if not isinstance(inner, dict | list) or not inner:
            place[key] = noise.choice(ODD)  # type: ignore[index]
            return
        place = inner


def main() -> None:
    times = int(sys.argv[1]) if len(sys.argv) > 1 else 1
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        log = folder / "whole.jsonl"
        words = ["-m", "board", "rehearse", LANTERN, "--plain", "--log", str(log)]
        pexpect.run(sys.executable + " " + " ".join(words), env=environment(folder), timeout=300)
        print(flipped(log, 400 * times), flush=True)
        print(second_names(log), flush=True)
        print(odd_logs(log, folder, 100 * times), flush=True)
        print(held_keys(folder), flush=True)
        print(wrong_bytes(folder, 12 * times), flush=True)


if __name__ == "__main__":
    main()
