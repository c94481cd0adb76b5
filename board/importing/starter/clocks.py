"""A menu's lines with each time of day as one sign, so that its colon is no course's. Pure."""

import re
from dataclasses import dataclass

from board.importing.starter.not_a_menu import NotAMenu
from board.plan.phrases.when import parse_clock

_FIRST, _LAST = "\ue000", "\ue07f"
CLOCK_SIGN = f"{_FIRST}-{_LAST}"  # within a regular expression's brackets
MOST_CLOCKS = ord(_LAST) - ord(_FIRST)
_CLOCK = re.compile(
    r"(?<![\w.:/])(?:(?P<hour>[0-9]{1,2})(?:[:.h](?P<minute>[0-9]{2}))?\s*(?P<half>[ap])\.?m\b\.?"
    r"|(?P<plain>[0-9]{1,2}[:h][0-9]{2})(?:\s*(?:h|hrs|uhr)\b)?(?![\w/]|:[0-9])"
    r"|(?P<dotted>[0-9]{1,2}\.(?:00|15|30|45))(?![\w/]|[.:][0-9])"
    r"|(?P<whole>(?:1[2-9]|2[0-3])h\b)"
    r"|(?P<noon>noon|midday)\b)",
    re.IGNORECASE,
)


@dataclass(frozen=True)
class Masked:
    """A line of a menu: `text` with signs for its clocks, `clocks` as they were written, in order."""

    number: int
    text: str
    clocks: tuple[str, ...]

    def unmasked(self, text: str) -> str:
        """A piece of the line as it was written, in single spaces."""
        written = re.sub(f"[{CLOCK_SIGN}]", lambda sign: self.clocks[ord(sign[0]) - ord(_FIRST)], text)
        return " ".join(written.split())

    def clock(self, sign: str) -> str:
        """HH:MM. Raises NotAMenu for what is no time of day."""
        written = self.clocks[ord(sign) - ord(_FIRST)]
        found = _CLOCK.fullmatch(written)
        assert found is not None
        if found["noon"]:
            return "12:00"
        plain = found["plain"] or found["dotted"] or found["whole"]
        said = f"{found['hour']}:{found['minute'] or '00'} {found['half']}m" if plain is None else plain
        try:
            return parse_clock(re.sub(r"[.h](?=[0-9])|h$", ":", said, flags=re.IGNORECASE).removesuffix(":")
                               + (":00" if found["whole"] else ""))  # fmt: skip
        except ValueError as wrong:
            raise NotAMenu(self.number, str(wrong)) from None


def masked(number: int, text: str) -> Masked:
    """A line with its clocks taken out. Private signs of the text itself become replacement signs."""
    clocks: list[str] = []

    def hold(found: re.Match[str]) -> str:
        if len(clocks) >= MOST_CLOCKS:
            return found[0]
        clocks.append(found[0])
        return chr(ord(_FIRST) + len(clocks) - 1)

    clean = re.sub("[\ue000-\uf8ff]", "\ufffd", text)
    return Masked(number, _CLOCK.sub(hold, clean), tuple(clocks))
