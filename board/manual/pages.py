"""The topics: Markdown files in `topics/`, each with a title and sections."""

import functools
import re
from importlib.resources import files

# In the order in which they are listed; a file's name is its topic's.
TOPICS = (
    "plan",
    "menu",
    "guests",
    "safety",
    "timetable",
    "shopping",
    "table",
    "evening",
    "lessons",
    "paper",
    "worked dinners",
    "trouble",
    "words",
)


@functools.cache
def page(topic: str) -> str:
    """A topic's Markdown."""
    return _read(f"{topic.replace(' ', '-')}.md")


@functools.cache
def examples() -> dict[str, tuple[str, str]]:
    """By a finding's name: a part of a plan that it is told of, and one that it is not."""
    parts = {title: _fenced(text) for title, text in sections(_read("findings.md")).items()}
    return {name: (fences[0], fences[1]) for name, fences in parts.items()}


def title(text: str) -> str:
    """The first heading of a page."""
    return text.partition("\n")[0].removeprefix("# ")


def sections(text: str) -> dict[str, str]:
    """By its heading, what stands below each `##` of a page."""
    pieces = re.split(r"^## (.+)$", text, flags=re.MULTILINE)
    return dict(zip(pieces[1::2], (piece.strip() for piece in pieces[2::2]), strict=True))


def _fenced(text: str) -> list[str]:
    return re.findall(r"```yaml\n(.*?)```", text, re.DOTALL)


def _read(name: str) -> str:
    return files("board.manual").joinpath("topics", name).read_text(encoding="utf-8")
