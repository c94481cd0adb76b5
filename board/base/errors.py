"""Exceptions for what the host must be told: caught at the front door, shown, turned into an exit code."""


class Trouble(Exception):
    """Something to tell the user, in words ready for the terminal; `code` is the exit code. Not a bug."""

    def __init__(self, text: str, code: int = 1) -> None:
        super().__init__(text)
        self.code = code
