"""What the host must be told, as exceptions: caught at the front door, shown, and turned into an exit code."""


class Trouble(Exception):
    """Something the user must be told, in words ready for the terminal; `code` is the exit code."""

    def __init__(self, text: str, code: int = 1) -> None:
        super().__init__(text)
        self.code = code
