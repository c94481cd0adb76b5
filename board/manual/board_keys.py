"""Keys of the screens as the manual tells them, from the tables that `?` shows."""

from collections.abc import Iterator

from board.base.words.signs import SIGN_TABLE
from board.manual import words
from board.screens import words as screens_words

TABLES = (
    (words.ON_THE_BOARD, screens_words.KEYS_EVENING),
    (words.WITH_SHARE, screens_words.KEYS_SHARED),
    (words.IN_A_REHEARSAL, screens_words.KEYS_REHEARSAL),
    (words.LOOKING_BACK, screens_words.KEYS_LOOK),
    (words.LOOKING_ON, screens_words.KEYS_WATCH),
    (words.ON_THE_LIST, tuple((key, "", does) for key, does in screens_words.KEYS_TICK)),
    (words.AT_THE_TABLE, tuple((key, "", does) for key, does in screens_words.KEYS_TABLE)),
    (words.SETTLING, tuple((key, "", does) for key, does in screens_words.KEYS_SETTLE)),
)


def all_of_them() -> str:
    """Every key of every screen, as Markdown."""
    lines = [f"# {words.ALL_KEYS}"]
    for where, keys in TABLES:
        lines += ["", f"## {where}", "", *(f"- `{key}` {does}" for key, _, does in keys)]
    return "\n".join(lines)


def names() -> set[str]:
    """Every key, as it is pressed."""
    return {each for _, keys in TABLES for key, _, _ in keys for each in pressed(key)}


def pressed(keys: str) -> Iterator[str]:
    """`space` is one key, `↑↓` two, and so is `↑ ↓`."""
    for word in keys.split():
        yield from (word,) if word[0].isalnum() else word


def told(name: str) -> str:
    """What a key does on each screen that has it."""
    rows = [f"- {where}: {does}" for where, keys in TABLES for key, _, does in keys if name in pressed(key)]
    return "\n".join([f"# {words.the_key(name)}", "", *rows])


def signs() -> str:
    """Every sign, as Markdown."""
    return "\n".join(
        [f"# {words.SIGNS}", "", words.SIGNS_SAY, "", *(f"- {sign} {says}" for sign, says in SIGN_TABLE.values())]
    )
