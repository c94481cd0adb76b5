"""Which options say something only beside another, or not beside one, and which commands need a file: so that none is
ignored in silence. Pure; options by their long names, arguments by the names they are kept under."""

from collections.abc import Mapping

from board.app import words

# command: option: the one without which it would say nothing
NEEDS: Mapping[str, Mapping[str, str]] = {
    "guests": {"--paper": "--html"},
    "table": {"--paper": "--html"},
    "card": {"--paper": "--html"},
    "sheet": {"--paper": "--html"},
    "provisions": {"--paper": "--html"},
    "review": {"--paper": "--html"},
    "rehearse": {"--seed": "--mishaps"},
    "logs": {"--out": "--anonymise", "--names": "--anonymise", "--plan": "--anonymise", "--keep-notes": "--anonymise"},
}
# command: an option, and those that it would silence or that would silence it
NOT_WITH: Mapping[str, tuple[tuple[str, tuple[str, ...]], ...]] = {
    "guests": (("--json", ("--markdown", "--html")), ("--markdown", ("--html",))),
    "table": (("--json", ("--markdown", "--html")), ("--markdown", ("--html",))),
    "sheet": (
        ("--json", ("--why", "--by", "--for", "--markdown", "--html", "--ways-out", "--take")),
        ("--why", ("--by", "--for", "--markdown", "--html", "--ways-out", "--take")),
        ("--ways-out", ("--for", "--markdown", "--html", "--fresh")),
        ("--take", ("--by", "--for", "--markdown", "--html", "--fresh")),
        ("--by", ("--for", "--markdown", "--html")),
        ("--markdown", ("--html",)),
    ),
    "review": (("--json", ("--html",)),),
    "live": (("--no-log", ("--log", "--also")),),
    "rehearse": (
        ("--no-log", ("--log", "--also")),
        ("--plain", ("--no-log", "--theme", "--say", "--no-bell", "--speed", "--fresh")),
    ),
    "lessons": (
        ("--take", ("--each", "--json")),
        ("--into-book", ("--each", "--json", "--limit", "--no-effect")),
        ("--from-book", ("--each", "--json", "--limit", "--no-effect", "logs")),
        ("--book", ("--each", "--limit", "--no-effect")),
        ("--no-effect", ("--each", "--limit")),
    ),
    "schema": (("--log", ("--of",)),),
    "logs": (
        ("--anonymise", ("--csv", "--json", "--guests", "logs")),
        ("--csv", ("--json", "--guests")),
        ("--guests", ("--json",)),
    ),
}
# command: what makes it write into the file it is given, or follow it ("": all it does)
FILE_ONLY: Mapping[str, tuple[str, ...]] = {
    "settle": ("",),
    "live": ("",),
    "watch": ("",),
    "fill": ("",),
    "sheet": ("--take",),
    "provisions": ("--tick",),
    "lessons": ("--take", "--from-book"),
}


def wrong_together(command: str, given: frozenset[str], *, from_stdin: bool) -> str | None:
    """What is wrong with what was given beside each other, as the host is told it."""
    for option, needed in NEEDS.get(command, {}).items():
        if option in given and needed not in given:
            return words.only_beside(option, needed)
    for option, others in NOT_WITH.get(command, ()):
        for other in others:
            if {option, other} <= given:
                return words.not_beside(option, other)
    if from_stdin and any(each in ("", *given) for each in FILE_ONLY.get(command, ())):
        return words.FILE_NEEDED
    return None
