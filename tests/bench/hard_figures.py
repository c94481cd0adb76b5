"""What must end no evening, tried: `hard_figures.py [PART [COUNT]]`, all parts a little if none is named. Each prints
how often it was tried and what broke.

flipped: so many bits in the opening of a log. names: second names of an open log. odd: so many logs of odd values
under good checksums. writers: each killed at every system call. held: a key held down. bytes: so many at random, typed
at each screen of a real process.
"""

import json
import os
import random
import subprocess
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
from board.files.cache import SheetCache
from board.files.pantry import write_ticks
from board.files.plans import write_plan
from board.files.preferences import remember_theme
from board.files.whole import write_new, write_over
from board.log.disk import LineFile
from board.log.read import read_log
from board.log.write import LogInUse, RunLog
from tests.bench.board_process import LANTERN, Board, Screen, contents_of, environment
from tests.bench.killed_writers import Writer, kill_at_each

READY = ("┃",)
NOISE = [b"\x1b[", b"\x1b", b"\x1b[M", b"\x1b[<", b";", b"9", b"u", b"t", b"~", b":", b"\x1b[200~", b"\xe9", b"\xff"]
ENDS = b"q\x03\x11\x1c"  # what leaves a screen, and the terminal's own key to quit a program that has just left it
ODD = (-1, 0, 10**12, 2**63, 1e308, "", "x" * 5000, "9999-12-31T23:59:59Z", "0001-01-01T00:00:00Z", None, [], "host")
MENU = """19 Dec 18:30, 7 guests: Ada no nuts, 6 others
one oven, 4 rings, fridge 60 l
Starter 19:15: leek soup
Main 20:30: braised duck legs; potato gratin
"""
COMMANDS = {  # screens that are no board: their words before and after the plan's path, and what then stands on them
    "tick list": (("provisions",), ("--tick",), ("[ ]", "□")),
    "planning table": (("plan",), (), ("u back",)),
    "guesses": (("settle",), (), ("rest of dish",)),
}
SCREENS = {"board": "", "note": "n", "look back": "o", "push": "p", "went wrong": "w", "keys": "?"}  # and their keys


def opened(name: str, folder: Path) -> Screen:
    """A screen of that name, drawn."""
    env, plan, ready = environment(folder), folder / "plan.yaml", READY
    if name in SCREENS:
        screen: Screen = Board(folder / f"noise-{name}.jsonl", env, "--from", "18:20", "--speed", "1")
    elif name == "watch":
        screen = Screen(env, "watch", str(folder / "noise-board.jsonl"))
    else:
        before, after, ready = COMMANDS[name]
        plan.unlink(missing_ok=True)
        if name == "guesses":
            (folder / "menu.txt").write_text(MENU)
            made = [sys.executable, "-m", "board", "new", str(plan), "--menu", str(folder / "menu.txt")]
            subprocess.run(made, env=env, check=True, stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL)
        else:
            plan.write_bytes(Path(LANTERN).read_bytes())
        screen = Screen(env, *before, str(plan), *after)
    screen.seconds_until(ready, 120)
    screen.type(SCREENS.get(name, ""))
    screen.read(0.2)
    return screen


def wrong_bytes(folder: Path, count: int) -> str:
    """So many bytes at random to each screen. One that a host can leave by a key is opened again; it may end by that
    only."""
    noise, ended, left, typed = random.Random(3), [], 0, 0
    names = [*SCREENS, "watch", *COMMANDS]
    for name in names:
        screen, sent = opened(name, folder), 0
        while sent < count:
            if not screen.process.isalive():
                screen.process.close()
                code = screen.process.exitstatus
                left += code == 0
                ended += [] if code == 0 else [f"{name}: {code}"]
                screen = opened(name, folder)
            data = b"".join(noise.choice([*NOISE, os.urandom(1)]) for _ in range(40))
            with_no_leave = data.translate(None, ENDS)
            try:
                os.write(screen.process.child_fd, with_no_leave)
            except OSError:
                continue  # it has just been left
            sent += len(with_no_leave)
            screen.read(0.05)
        screen.kill()
        typed += sent
        if name in SCREENS:
            contents_of(folder / f"noise-{name}.jsonl")
    return f"{typed} bytes to {len(names)} screens: ended by them {len(ended)} {ended[:5]}, left by keys in them {left}"


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


def killed_writers(log: Path, folder: Path) -> str:
    """All that writes files, each killed at every moment."""
    text, moments, broke = Path(LANTERN).read_text(encoding="utf-8"), 0, []
    lines = log.read_bytes().splitlines(keepends=True)
    whole, cut = b"".join(lines), b"".join(lines[:-3])

    def prepare(place: Path) -> None:
        (place / "plan.yaml").write_text(text, encoding="utf-8")
        (place / "page.html").write_bytes(b"before")
        (place / "settings.json").write_text("{}", encoding="utf-8")
        (place / "supper.ticks.yaml").write_text("ticked: {}\n", encoding="utf-8")
        (place / "evening.jsonl").write_bytes(cut)

    def plan_edited(place: Path) -> None:
        before = (place / "plan.yaml").read_text(encoding="utf-8")
        write_plan(place / "plan.yaml", before, text + "# edited\n")

    def evening_logged(place: Path) -> None:
        path = place / "evening.jsonl"
        file, there = LineFile(path), path.read_bytes()
        sound = there[: there.rfind(b"\n") + 1]
        file.found(sound.splitlines(keepends=True), there[len(sound) :], damaged=False)
        file.lines += whole[len(sound) :].splitlines(keepends=True)
        file.sync()
        file.close()

    def page_new(place: Path) -> None:
        if not (place / "new.html").exists():
            write_new(place / "new.html", b"new")

    writers: dict[str, Writer] = {
        "a plan edited": plan_edited,
        "a page over a page": lambda place: write_over(place / "page.html", b"after", lambda _: True, str),
        "a new page": page_new,
        "a theme": lambda place: remember_theme(place / "settings.json", "light"),
        "a tick": lambda place: write_ticks(place / "supper.ticks.yaml", {"flour": "1 kg"}),
        "a kept timetable": lambda place: SheetCache(place / "sheets").put(read_log(whole, log.name).opened.sheet),
        "an evening": evening_logged,
    }
    for number, (name, write) in enumerate(writers.items()):
        tried, wrong = kill_at_each(prepare, write, folder / f"killed-{number}")
        moments += tried
        broke += [f"{name}, {each}" for each in wrong]
    return f"{len(writers)} writers killed at {moments} moments: broke {len(broke)} {broke[:3]} (goal 0)"


LITTLE = {"flipped": 400, "names": 1, "odd": 100, "writers": 1, "held": 1, "bytes": 500}


def main() -> None:
    part = sys.argv[1] if len(sys.argv) > 1 else ""
    if part and part not in LITTLE:
        sys.exit(f"one of {', '.join(LITTLE)}")
    count = int(sys.argv[2]) if len(sys.argv) > 2 else LITTLE.get(part, 0)
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        log = folder / "whole.jsonl"
        words = ["-m", "board", "rehearse", LANTERN, "--plain", "--log", str(log)]
        pexpect.run(sys.executable + " " + " ".join(words), env=environment(folder), timeout=300)
        parts: dict[str, Callable[[int], str]] = {
            "flipped": lambda count: flipped(log, count),
            "names": lambda _: second_names(log),
            "odd": lambda count: odd_logs(log, folder, count),
            "writers": lambda _: killed_writers(log, folder),
            "held": lambda _: held_keys(folder),
            "bytes": lambda count: wrong_bytes(folder, count),
        }
        for each in [part] if part else parts:
            print(parts[each](count or LITTLE[each]), flush=True)


if __name__ == "__main__":
    main()
