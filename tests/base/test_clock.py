"""The wall clock watched against two that nobody sets: sleep, a clock set by hand, a stopped process, a time server.

What the three clocks do in each case is that of clock_gettime(2): CLOCK_MONOTONIC stands still in suspend,
CLOCK_BOOTTIME does not, and neither follows CLOCK_REALTIME when that is set.
"""

import os
import signal
import subprocess
import sys
import time
from datetime import UTC, datetime, timedelta

import pytest

from board.base.clock import Jump, StoppedClock, VirtualClock, WallClock


class Machine:
    """The three clocks of a machine."""

    def __init__(self) -> None:
        self.wall = datetime(2026, 11, 28, 17, tzinfo=UTC).timestamp()
        self.awake = 100.0
        self.boot = 5000.0

    def passes(self, seconds: float) -> None:
        self.wall, self.awake, self.boot = self.wall + seconds, self.awake + seconds, self.boot + seconds

    def sleeps(self, seconds: float) -> None:
        self.wall, self.boot = self.wall + seconds, self.boot + seconds

    def clock(self, *, tells_sleep: bool = True) -> WallClock:
        return WallClock(lambda: self.wall, lambda: self.awake, (lambda: self.boot) if tells_sleep else None)


def test_time_that_just_passes_is_no_jump_however_long_nobody_looked() -> None:
    machine = Machine()
    clock = machine.clock()
    for seconds in (1, 0.25, 3600, 12 * 3600):  # the long ones as after SIGSTOP and SIGCONT
        machine.passes(seconds)

        assert clock.jumped() is None


def test_sleep_is_a_jump_in_which_time_did_pass() -> None:
    machine = Machine()
    clock = machine.clock()
    machine.passes(1)
    machine.sleeps(3600)

    assert clock.jumped() == Jump(3600, slept=True)
    machine.passes(1)
    assert clock.jumped() is None  # told once
    assert clock.now() == datetime(2026, 11, 28, 18, 0, 2, tzinfo=UTC)


@pytest.mark.parametrize("seconds", [3600.0, -3600.0, 21.0, -21.0])
def test_a_clock_set_by_hand_is_a_jump(seconds: float) -> None:
    machine = Machine()
    clock = machine.clock()
    machine.passes(1)
    machine.wall += seconds

    assert clock.jumped() == Jump(seconds, slept=False)


@pytest.mark.parametrize("seconds", [19.0, -19.0])
def test_a_time_servers_small_correction_is_none(seconds: float) -> None:
    machine = Machine()
    clock = machine.clock()
    machine.wall += seconds

    assert clock.jumped() is None


def test_set_while_it_slept_the_setting_is_told() -> None:
    machine = Machine()
    clock = machine.clock()
    machine.sleeps(3600)
    machine.wall -= 1800

    assert clock.jumped() == Jump(-1800, slept=False)


def test_where_no_clock_counts_sleep_ahead_is_sleep_and_back_is_set() -> None:
    machine = Machine()
    clock = machine.clock(tells_sleep=False)
    machine.sleeps(3600)

    assert clock.jumped() == Jump(3600, slept=True)
    machine.wall -= 600
    assert clock.jumped() == Jump(-600, slept=False)


def test_a_process_stopped_between_two_readings_reads_again() -> None:
    machine = Machine()
    stops = iter([0.0, 0.0, 3600.0, 0.0, 0.0, 0.0])

    def wall() -> float:
        now = machine.wall
        machine.passes(next(stops, 0.0))  # stopped right after the wall clock was read
        return now

    clock = WallClock(wall, lambda: machine.awake, lambda: machine.boot)
    for _ in range(4):
        assert clock.jumped() is None


def test_other_clocks_never_jump() -> None:
    stopped = StoppedClock(datetime(2026, 11, 28, 17, tzinfo=UTC))
    stopped.set(stopped.now() - timedelta(hours=1))

    assert stopped.jumped() is None
    assert VirtualClock(stopped.now()).jumped() is None


def test_a_really_stopped_process_sees_no_jump_and_the_right_time() -> None:
    code = (
        "import sys\nfrom board.base import clock as clocks\nclocks.JUMP_SECONDS = 0.5\n"
        "clock = clocks.WallClock()\nprint('ready', flush=True)\nsys.stdin.readline()\n"
        "print(clock.jumped(), clock.now().timestamp())\n"
    )
    process = subprocess.Popen([sys.executable, "-c", code], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
    assert process.stdout is not None
    assert process.stdin is not None
    assert process.stdout.readline() == "ready\n"
    os.kill(process.pid, signal.SIGSTOP)
    time.sleep(1.5)
    os.kill(process.pid, signal.SIGCONT)
    out, _ = process.communicate("\n")
    told, now = out.split()

    assert told == "None"
    assert abs(float(now) - time.time()) < 5
