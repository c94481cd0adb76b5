"""What makes a text no menu, for the host: where, what, and how to mend it."""


class NotAMenu(ValueError):
    """What is said of a menu's line; `line` counts from 1, 0 for the whole. `too_much`: another line would not mend it.
    Not a bug."""

    def __init__(self, line: int, what: str, *, too_much: bool = False) -> None:
        super().__init__(what)
        self.line = line
        self.too_much = too_much
