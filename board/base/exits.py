"""The program's exit codes. Data goes to stdout, messages to stderr."""

from enum import IntEnum


class ExitCode(IntEnum):
    """README and manual repeat these meanings."""

    DONE = 0  # did what was asked
    FAILED = 1  # could not: a file is missing, a log is in use, a disk is full
    STOP = 2  # the plan cannot be used as it is, or `check` found a stop
    FAULT = 70  # the program itself failed and could not go on (EX_SOFTWARE); what was taken is kept
    USAGE = 64  # the command line itself was not understood (EX_USAGE, sysexits.h)
