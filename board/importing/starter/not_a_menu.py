"""What makes a text no menu, for the host: where, what, and how to mend it."""


class NotAMenu(ValueError):
    """What is said of a menu's line; `line` counts from 1, 0 for the whole. Not a bug."""

    def __init__(self, line: int, what: str) -> None:
        super().__init__(what)
        self.line = line
