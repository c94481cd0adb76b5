"""Plain data → YAML text that reads back as the same data: scalars, one-line collections, lines of a block.

Plain data is what `places.read_yaml` returns: text, whole numbers, true/false, null, lists, and mappings with text
keys.
"""

from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from board.plan.places import read_yaml


@dataclass(frozen=True, slots=True)
class Layout:
    """How a file indents, in spaces: a mapping below its key, a list's dash below its key. `quoted`: puts all text in
    quotes."""

    mapping: int = 2
    dash: int = 2
    quoted: bool = False  # under a directive for an older YAML, unquoted words may mean something else


def scalar(value: Any, *, in_flow: bool = False, quote: str = "", quoted: bool = False) -> str:
    """One value on one line. Text gets quotes only if it needs them, or the given `quote`. Raises TypeError for
    anything that is not a scalar of a plan."""
    if value is None:
        return "null"
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, int):
        return str(value)
    if not isinstance(value, str):
        raise TypeError(f"{type(value).__name__} is no value of a plan")
    if not quote and not quoted and _reads_back(value, in_flow):
        return value
    return _in_quotes(value, quote)


def key(word: str, *, in_flow: bool = False, quoted: bool = False) -> str:
    """A mapping's key, in quotes only if it needs them."""
    if not quoted and word.isprintable():
        data, _, snags = read_yaml(f"{{{word}: 0}}" if in_flow else f"{word}: 0", "")
        if not snags and data == {word: 0}:
            return word
    return _in_quotes(word, "")


def flow(value: Any, layout: Layout) -> str:
    """A value on one line, collections in brackets. Raises TypeError, as `scalar` does."""
    if isinstance(value, dict):
        pairs = (f"{key(k, in_flow=True, quoted=layout.quoted)}: {flow(v, layout)}" for k, v in value.items())
        return f"{{{', '.join(pairs)}}}"
    if isinstance(value, list):
        return f"[{', '.join(flow(item, layout) for item in value)}]"
    return scalar(value, in_flow=True, quoted=layout.quoted)


def block(value: Any, layout: Layout) -> list[str]:
    """The lines of a collection that is not empty; its first level is not indented."""
    if isinstance(value, dict):
        return [line for k, v in value.items() for line in entry(k, v, layout)]
    return [line for each in value for line in item(each, layout)]


def entry(word: str, value: Any, layout: Layout, *, one_line: bool = False) -> list[str]:
    """The lines of `word: value`; a block value goes below, indented."""
    name = key(word, quoted=layout.quoted)
    if _is_inline(value):
        return [f"{name}: {_inline(value, layout)}"]
    if one_line:
        return [f"{name}: {flow(value, layout)}"]
    indent = " " * (layout.mapping if isinstance(value, dict) else layout.dash)
    return [f"{name}:", *(indent + line for line in block(value, layout))]


def item(value: Any, layout: Layout, *, one_line: bool = False, gap: str = " ") -> list[str]:
    """The lines of `- value`; further lines are indented to the first one's text."""
    if _is_inline(value):
        return [f"-{gap}{_inline(value, layout)}"]
    if one_line:
        return [f"-{gap}{flow(value, layout)}"]
    first, *more = block(value, layout)
    return [f"-{gap}{first}", *(f" {' ' * len(gap)}{line}" for line in more)]


def _is_inline(value: Any) -> bool:
    return not isinstance(value, dict | list) or not value


def _inline(value: Any, layout: Layout) -> str:
    return flow(value, layout) if isinstance(value, dict | list) else scalar(value, quoted=layout.quoted)


@lru_cache(maxsize=4096)  # most lines of a plan stay as they are from one change to the next
def _reads_back(text: str, in_flow: bool) -> bool:
    """Whether text without quotes reads back unchanged, as a value and as an item of a list."""
    if not text.isprintable():
        return False
    data, _, snags = read_yaml(f"[{{k: {text}}}, {text}]" if in_flow else f"- k: {text}\n- {text}", "")
    return not snags and data == [{"k": text}, text] and type(data[1]) is str


_ESCAPES = {'"': '\\"', "\\": "\\\\", "\n": "\\n", "\t": "\\t", "\r": "\\r", "\0": "\\0"}


def _in_quotes(text: str, quote: str) -> str:
    if not text.isprintable():
        quote = '"'
    elif not quote:
        quote = '"' if "'" in text and '"' not in text and "\\" not in text else "'"
    if quote == "'":
        return "'" + text.replace("'", "''") + "'"
    return '"' + "".join(_ESCAPES.get(sign) or _escaped(sign) for sign in text) + '"'


def _escaped(sign: str) -> str:
    """A character as a YAML escape, if it may not be printable. Source: YAML 1.2.2, section 5.7."""
    if sign.isprintable():
        return sign
    number = ord(sign)
    return f"\\x{number:02x}" if number < 0x100 else f"\\u{number:04x}" if number < 0x10000 else f"\\U{number:08x}"
