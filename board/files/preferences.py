"""What the board remembers from one evening to the next: a small JSON file in the user's config folder.

A file that is missing, broken or from another version means the defaults, and never stops the board.
"""

import json
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from board.base import words as shared
from board.log.disk import private_folder, replace_whole

NO_COLOUR = "NO_COLOR"  # source: https://no-color.org
LARGEST_BYTES = 100_000


@dataclass(frozen=True, slots=True)
class Settings:
    """`theme`: the last one chosen; None if none was."""

    theme: str | None = None


def settings_file() -> Path:
    """The path of the settings, whether the file exists or not."""
    from platformdirs import user_config_path  # imported here: the command line needs only the names of themes

    return user_config_path("platecall") / "settings.json"


def read_settings(path: Path) -> Settings:
    """The settings; anything unreadable or unknown counts as missing. Raises nothing."""
    theme = _read(path).get("theme")
    return Settings(theme if isinstance(theme, str) and theme in shared.THEMES else None)


def remember_theme(path: Path, theme: str) -> None:
    """Keeps the theme, and everything else in the file. Raises OSError; the old file is then intact."""
    private_folder(path.parent)
    replace_whole(path, (json.dumps({**_read(path), "theme": theme}, indent=2) + "\n").encode())


def first_theme(asked: str | None, remembered: str | None, environ: Mapping[str, str], *, few_colours: bool) -> str:
    """The theme to begin with. In this order: the one asked for on the command line; `plain` on a terminal with few
    colours or if NO_COLOR is not empty (source: no-color.org); the remembered one; the first in the list."""
    if asked is not None:
        return asked
    if few_colours or environ.get(NO_COLOUR):
        return "plain"
    return remembered or shared.THEMES[0]


def _read(path: Path) -> dict[str, object]:
    try:
        if not path.is_file() or path.stat().st_size > LARGEST_BYTES:
            return {}
        found = json.loads(path.read_text(encoding="utf-8"))
    except (OSError, ValueError, RecursionError):
        return {}
    return found if isinstance(found, dict) else {}


# Which terminal understands which notification: from memory.
OSC_9 = frozenset({"iterm.app", "wezterm", "ghostty"})  # by TERM_PROGRAM
OSC_777 = ("foot", "rxvt-unicode")  # how TERM begins
MULTIPLEXERS = ("screen", "tmux")  # what is in between swallows or garbles them


def notifies(environ: Mapping[str, str]) -> str:
    """How the terminal is known to be notified: `9`, `777`, or empty."""
    term, program = environ.get("TERM", ""), environ.get("TERM_PROGRAM", "").casefold()
    if term.startswith(MULTIPLEXERS) or program == "tmux" or "TMUX" in environ:
        return ""
    return "9" if program in OSC_9 else "777" if term.startswith(OSC_777) else ""
