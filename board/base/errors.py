"""Exceptions for what the host must be told: caught at the front door, shown, turned into an exit code."""

from board.base.plain import one_line


class Trouble(Exception):
    """Something to tell the user, in words ready for the terminal; `code` is the exit code. Not a bug."""

    def __init__(self, text: str, code: int = 1) -> None:
        super().__init__(text)
        self.code = code


def why_of(wrong: Exception) -> str:
    """What the system says of a failure, on one line and safe to show."""
    return one_line(getattr(wrong, "strerror", None) or wrong)
