"""What the program's exit codes mean. Data goes to stdout, talk goes to stderr."""

from enum import IntEnum


class ExitCode(IntEnum):
    """One line of meaning each; the README repeats them."""

    DONE = 0  # did what was asked
    FAILED = 1  # could not: a file is missing, a log is in use, a disk is full
    STOP = 2  # the plan cannot be used as it is, or `check` found a stop
    USAGE = 64  # the command line itself was not understood (EX_USAGE, sysexits.h)
