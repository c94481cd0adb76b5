"""What the manual itself says around its pages."""

from collections.abc import Sequence

YES_NO, NAMES, TEXT, NUMBER = "yes or no", "names, each with a value", "words", "a number"
BAD, GOOD = "It is told of:", "It is not told of:"
ON_THE_BOARD, WITH_SHARE, IN_A_REHEARSAL = "On the board", "With --share", "In a rehearsal"
LOOKING_BACK, LOOKING_ON = "Looking back (`o`)", "Looking on (`platecall watch`)"
AT_THE_TABLE = "Making a plan (`platecall plan`)"
ON_THE_LIST, SETTLING = "Ticking the list off (`platecall provisions --tick`)", "Settling guesses (`platecall settle`)"
ALL_KEYS, SIGNS = "Keys of the screens", "Signs"
SIGNS_SAY = (
    "One meaning a sign, the same on the board, on paper and on pages, told apart by shape and never by colour alone. "
    "`!!` and `!!!` say that a call waits, and waits long. A terminal whose encoding lacks a sign shows `?`; words "
    "stand beside it."
)
ALL_PLAN_KEYS, ALL_FINDINGS = "Keys of a plan", "Findings of `check`"

_WEIGHTS = {
    "stop": "must be mended",
    "ask": "you have to find out",
    "mind": "for you to weigh",
    "note": "good to know",
}


def index(topics: Sequence[tuple[str, str]], rooms: Sequence[str]) -> str:
    """What bare `platecall help` shows; `topics`: name and what it is about."""
    rows = [f"- **{name}**: {about}" for name, about in topics]
    return "\n".join(
        [
            "# platecall help",
            "",
            "Ask for a topic: `platecall help evening`",
            "",
            *rows,
            "",
            "Or for anything by its name:",
            "",
            "- a key of the plan: `platecall help takes` (all of them: `platecall help plan keys`)",
            f"- a finding of `check`: `platecall help food 10` (all of them: `platecall help findings`; of one kind: "
            f"{', '.join(rooms)})",
            "- a key of the board: `platecall help w` (all of them: `platecall help keys`)",
            "- a sign: `platecall help signs`",
            "- a part of a topic: `platecall help probe`",
            "- a command: `platecall help sheet`; every command has `--help`, too",
        ]
    )


def key_heading(name: str, parts: Sequence[str]) -> str:
    return f"# {name}: a key of {listed(parts)}"


def value_is(kind: str, unit: str) -> str:
    return f"Value: {kind}. Unit: {unit}." if unit else f"Value: {kind}."


def kind(shape: str, *, needed: bool) -> str:
    return f"{shape}; it must be there" if needed else shape


def or_else(shapes: Sequence[str]) -> str:
    return " or ".join(shapes) or TEXT


def keys_of(part: str) -> str:
    return f"the keys of {part}"


def one_of(values: Sequence[str]) -> str:
    return f"one of: {', '.join(values)}" if len(values) > 1 else f"`{values[0]}`"


def list_of(shape: str) -> str:
    return f"a list, each {shape}"


def whole_number(least: int | None, most: int | None) -> str:
    return f"a whole number, {least} to {most}" if least is not None and most is not None else "a whole number"


def weights(found: Sequence[str]) -> str:
    """`stop: must be mended`; of several, which it is is told with the finding."""
    return "; or ".join(f"**{word}**: {_WEIGHTS[word]}" for word in found) + "."


def sources(stands_on: Sequence[str]) -> str:
    return "Source: " + "; ".join(stands_on) + "."


def findings_about(room: str, about: str) -> str:
    return f"Findings `{room}`: {about}"


def the_key(name: str) -> str:
    return f"The key `{name}`"


def part_of(topic: str) -> str:
    return f"From `platecall help {topic}`."


def the_command(name: str, about: str, example: str) -> str:
    does = f"{about[:1].upper()}{about[1:]}."
    return f"# The command `{name}`\n\n{does}\n\n```sh\n{example}\n```\n\nIts options: `platecall {name} --help`."


def not_known(word: str, near: Sequence[str]) -> str:
    nearest = f" Nearest: {', '.join(near)}." if near else ""
    return f"the manual has nothing called {word!r}.{nearest} `platecall help` lists the topics."


def listed(names: Sequence[str]) -> str:
    return names[0] if len(names) == 1 else f"{', '.join(names[:-1])} and {names[-1]}"
