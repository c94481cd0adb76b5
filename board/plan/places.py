"""YAML text → plain data, with the line and column of every key and value. YAML 1.2 through ruamel.yaml.

Scalars stay as written but for whole numbers, true/false and null, so `19:30` and `2026-11-28` are text.
"""

import re
from typing import Any

from ruamel.yaml import YAML
from ruamel.yaml.error import MarkedYAMLError, YAMLError
from ruamel.yaml.events import AliasEvent
from ruamel.yaml.nodes import MappingNode, Node, ScalarNode

from board.plan.phrase import near
from board.plan.snag import Place, Snag, Weight

Loc = tuple[str | int, ...]
LARGEST_CHARACTERS = 1_000_000
_WHOLE = re.compile(r"[-+]?\d{1,9}")


class Places:
    """Where each path of the data stands in the file."""

    def __init__(self, name: str, text: str) -> None:
        self.name = name
        self.lines = text.splitlines()
        self.values: dict[Loc, tuple[int, int]] = {(): (1, 1)}
        self.keys: dict[Loc, tuple[int, int]] = {}

    def at(self, line: int, column: int) -> Place:
        shown = self.lines[line - 1] if 0 < line <= len(self.lines) else ""
        return Place(self.name, line, column, shown)

    def of(self, loc: Loc, *, key: bool = False) -> Place:
        """The place of a path, or of the nearest thing around it that is in the file."""
        if key and loc in self.keys:
            return self.at(*self.keys[loc])
        while loc not in self.values:
            loc = loc[:-1]
        return self.at(*self.values[loc])


def read_yaml(text: str, name: str) -> tuple[Any, Places, list[Snag]]:
    """Data, its places, and what is wrong with the YAML itself. With snags the data may be partial."""
    places = Places(name, text)
    if len(text) > LARGEST_CHARACTERS:
        return None, places, [_stop("P02", "the file is too large for a plan (over 1 MB)", "Is it the right file?", places.at(1, 1))]
    yaml = YAML(typ="safe", pure=True)
    try:
        for event in yaml.parse(text):
            if isinstance(event, AliasEvent):
                mark = event.start_mark
                return None, places, [
                    _stop("P03", f"*{event.anchor} repeats another part of the file, which a plan cannot do",
                          "Write the part out in full here.", places.at(mark.line + 1, mark.column + 1))
                ]  # fmt: skip
        node = yaml.compose(text)
    except MarkedYAMLError as wrong:
        mark = wrong.problem_mark or wrong.context_mark
        place = places.at(mark.line + 1, mark.column + 1) if mark else places.at(1, 1)
        return None, places, [_stop("P01", *_yaml_words(wrong, place.text), place)]
    except RecursionError:
        return None, places, [_stop("P03", "the file is nested too deeply", "A plan needs at most eight levels.", places.at(1, 1))]
    except (YAMLError, ValueError) as wrong:
        line = text.count("\n", 0, getattr(wrong, "position", 0)) + 1
        return None, places, [_stop("P01", f"the file has a sign YAML does not allow ({_brief(wrong)})", "Delete it, or retype the line.", places.at(line, 1))]
    if node is None:
        return None, places, [_stop("P02", "the file is empty", "Start from the short example in the README.", places.at(1, 1))]
    snags: list[Snag] = []
    return _build(node, (), places, snags), places, snags


def _stop(code: str, message: str, mend: str, place: Place) -> Snag:
    return Snag(code, Weight.STOP, message, mend, place)


def _brief(wrong: Exception) -> str:
    return " ".join(str(wrong).split())[:120]


def _yaml_words(wrong: MarkedYAMLError, line: str) -> tuple[str, str]:
    """The commonest slips in a host's words; the rest as YAML puts it."""
    problem = wrong.problem or "it is not YAML"
    if "\t" in line[: len(line) - len(line.lstrip())] or "\\t" in problem:
        return "the line is indented with a tab", "Indent with spaces only."
    if "mapping values are not allowed" in problem:
        return "a colon stands where YAML takes it for a key", "Check the indentation, or put the words in quotes: \"like: this\"."
    if "expected <block end>" in problem or "block mapping" in problem:
        return "the indentation does not fit the lines above", "Line it up with its neighbours, spaces only."
    return f"this is not YAML: {problem}", "Check quotes, brackets and indentation on this line and the one above."


def _build(node: Node, loc: Loc, places: Places, snags: list[Snag]) -> Any:
    places.values[loc] = (node.start_mark.line + 1, node.start_mark.column + 1)
    if isinstance(node, ScalarNode):
        return _scalar(node)
    if not isinstance(node, MappingNode):
        return [_build(item, (*loc, index), places, snags) for index, item in enumerate(node.value)]
    data: dict[str, Any] = {}
    for key_node, value_node in node.value:
        spot = (key_node.start_mark.line + 1, key_node.start_mark.column + 1)
        if not isinstance(key_node, ScalarNode):
            snags.append(_stop("P03", "a key must be a plain word", "Write `word: value`.", places.at(*spot)))
            continue
        key = str(key_node.value)
        if key in data:
            first = places.keys[(*loc, key)][0]
            snags.append(
                _stop("P04", f"{key!r} stands here twice (first on line {first})", "Keep one of the two.", places.at(*spot))
            )
            continue
        places.keys[(*loc, key)] = spot
        data[key] = _build(value_node, (*loc, key), places, snags)
    return data


def _scalar(node: ScalarNode) -> Any:
    tag = str(node.tag).rsplit(":", 1)[-1]
    if tag == "null":
        return None
    if tag == "bool":
        return str(node.value).lower() == "true"
    if tag == "int" and _WHOLE.fullmatch(node.value):
        return int(node.value)
    return str(node.value)


def unknown(word: str, known: list[str]) -> str:
    """How to mend a word that is not known here."""
    return near(word, known).strip() or f"Known here: {', '.join(known)}."
