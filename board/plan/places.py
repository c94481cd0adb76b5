"""YAML text → plain data, with line and column of every key and value. YAML 1.2 through ruamel.yaml.

Scalars stay text, except whole numbers, true/false and null: `19:30` and `2026-11-28` are text.
"""

import copy
import re
from functools import lru_cache
from typing import Any

from ruamel.yaml import YAML
from ruamel.yaml.composer import Composer
from ruamel.yaml.error import MarkedYAMLError, YAMLError
from ruamel.yaml.events import AliasEvent
from ruamel.yaml.nodes import CollectionNode, MappingNode, Node, ScalarNode

from board.base.plain import REPLACEMENT
from board.plan.phrases.phrase import near
from board.plan.snag import Fix, Place, Snag, Weight

Loc = tuple[str | int, ...]
LARGEST_CHARACTERS = 200_000
SHORT = 500  # characters of what is no plan, but a piece of one: read in no time, and not worth keeping
DEEPEST = 40  # levels; a plan needs about ten
_WHOLE = re.compile(r"[-+]?[0-9]{1,9}")
_HALF = re.compile("[\ud800-\udfff]")
_LINE_END = re.compile(r"\r\n|\n|\r")  # the line ends of YAML 1.2


class Places:
    """Where each path is in the file. Lines and columns count from 1."""

    def __init__(self, name: str, text: str) -> None:
        self.name = name
        self.lines = _LINE_END.split(text)
        self.values: dict[Loc, tuple[int, int]] = {(): (1, 1)}
        self.keys: dict[Loc, tuple[int, int]] = {}
        self.root: Node | None = None  # node tree of the whole text, once read

    def at(self, line: int, column: int) -> Place:
        shown = self.lines[line - 1] if 0 < line <= len(self.lines) else ""
        return Place(self.name, line, column, shown)

    def named(self, name: str) -> "Places":
        """The same places, of a file of that name."""
        same = copy.copy(self)
        same.name = name
        return same

    def of(self, loc: Loc, *, key: bool = False) -> Place:
        """The place of a path, or of its nearest ancestor that is in the file."""
        if key and loc in self.keys:
            return self.at(*self.keys[loc])
        while loc not in self.values:
            loc = loc[:-1]
        return self.at(*self.values[loc])

    def before(self, loc: Loc) -> str | None:
        """The key before this one, if both stand on one line in one part of the plan."""
        line = self.keys.get(loc, (0, 0))[0]
        beside = [each for each, (at, _) in self.keys.items() if each[:-1] == loc[:-1] and at == line]
        number = beside.index(loc) if loc in beside else 0
        return str(beside[number - 1][-1]) if number else None

    def words(self, loc: Loc) -> str | None:
        """What is written at a path, on one line; None if nothing is."""
        node = self.root
        for piece in loc:
            inside = node.value if isinstance(node, CollectionNode) else []
            if isinstance(node, MappingNode):
                node = next((value for key, value in inside if str(key.value) == piece), None)
            else:
                node = inside[piece] if isinstance(piece, int) and piece < len(inside) else None
        return None if node is None else _on_one_line(node)


def follow(data: Any, loc: Loc) -> Any:
    """What stands at a path of a plan's data; None if nothing does."""
    for piece in loc:
        try:
            data = data[piece]
        except (KeyError, IndexError, TypeError):
            return None
    return data


def _on_one_line(node: Node) -> str:
    if isinstance(node, MappingNode):
        return ", ".join(f"{_on_one_line(key)}: {_on_one_line(value)}" for key, value in node.value)
    if isinstance(node, CollectionNode):
        return ", ".join(_on_one_line(item) for item in node.value)
    return str(node.value)


class _Refused(MarkedYAMLError):
    """Valid YAML that no plan needs: aliases, or nesting too deep."""


class _PlainComposer(Composer):
    """Composes nodes; refuses aliases and more than `DEEPEST` levels."""

    def __init__(self, loader: Any = None) -> None:
        super().__init__(loader)
        self.warn_double_anchors = False  # without aliases, anchors mean nothing
        self.levels = 0

    def compose_node(self, parent: Any, index: Any) -> Any:
        event = self.parser.peek_event()
        if isinstance(event, AliasEvent):
            problem = f"*{event.anchor} repeats another part of the file, which a plan cannot do"
            raise _Refused(problem=problem, problem_mark=event.start_mark, note="Write the part out in full here.")
        if self.levels == DEEPEST:
            problem = "the file is nested too deeply"
            raise _Refused(problem=problem, problem_mark=event.start_mark, note="A plan needs about ten levels.")
        self.levels += 1
        node = super().compose_node(parent, index)
        self.levels -= 1
        return node


START_FROM = "Start from the example in `platecall help plan`, or let `platecall new` write a plan."


def read_yaml(text: str, name: str, largest: int = LARGEST_CHARACTERS) -> tuple[Any, Places, list[Snag]]:
    """Data, its places, and what is wrong with the YAML. With snags, the data may be partial. Raises nothing."""
    text = text.removeprefix("\ufeff")
    places = Places(name, text)
    if len(text) > largest:
        message = f"the file is too large for a plan (over {largest // 1000} kB)"
        return None, places, [_stop("plan 2", message, "Is it the right file?", places.at(1, 1))]
    try:
        node = places.root = (_known if len(text) > SHORT else _nodes)(text)
    except MarkedYAMLError as wrong:
        return None, places, [_yaml_snag(wrong, places)]
    except Exception as wrong:  # untrusted YAML: whatever trips the parser is the file's fault
        return None, places, [_unreadable(wrong, text, places)]
    if node is None:
        empty = "the file holds nothing but comments" if text.strip() else "the file is empty"
        begun = Fix("begin", ("courses",), "")
        return None, places, [Snag("plan 2", Weight.STOP, empty, START_FROM, places.at(1, 1), fix=begun)]
    snags: list[Snag] = []
    return _build(node, (), places, snags), places, snags


def _nodes(text: str) -> Node | None:
    """The text's nodes; of a plan shared between callers and changed by none. Raises what the parser does."""
    yaml = YAML(typ="safe", pure=True)
    yaml.Composer = _PlainComposer
    found: Node | None = yaml.compose(text)
    return found


_known = lru_cache(maxsize=4)(_nodes)  # a command that changes a plan looks at its text several times


def _stop(code: str, message: str, mend: str, place: Place) -> Snag:
    return Snag(code, Weight.STOP, message, mend, place)


def _unreadable(wrong: Exception, text: str, places: Places) -> Snag:
    """A character that YAML forbids, or any error without a position."""
    position, sign = getattr(wrong, "position", 0), getattr(wrong, "character", None)
    before = _LINE_END.split(text[:position])
    place = places.at(len(before), len(before[-1]) + 1)
    if isinstance(wrong, YAMLError) and isinstance(sign, int):
        return _stop("plan 1", f"YAML does not allow the sign U+{sign:04X}", "Delete it, or retype the line.", place)
    return _stop("plan 1", "this is not YAML that can be read", START_FROM, place)


_LINE_UP = ("the indentation does not fit the lines above", "Line it up with its neighbours, spaces only.")
# YAML's own error words → for the host: what is wrong, how to fix it.
_SLIPS: dict[str, tuple[str, str]] = {
    "mapping values are not allowed": (
        "a colon stands where YAML takes it for a key",
        'Check the indentation, or put the words in quotes: "like: this".',
    ),
    "another document": (
        "the file holds more than one plan",
        "Take out the line `---` or `...` and the rest.",
    ),
    "cannot start any": ("a value cannot begin with this sign", 'Put the words in quotes: "like this".'),
    "unknown escape": ("in double quotes a backslash means something else", "Take it out, or double it."),
    "block mapping": _LINE_UP,
    "<block end>": _LINE_UP,
}
# The same for errors that YAML notices late; these point to where the construct began.
_OPEN: dict[str, tuple[str, str]] = {
    "quoted scalar": ("the quotes that open here are never closed", "Close them on the same line."),
    "flow sequence": (
        "the bracket that opens here is not closed",
        "Close it with ], commas between the entries.",
    ),
    "flow mapping": (
        "the bracket that opens here is not closed",
        "Close it with }, commas between the entries.",
    ),
    "simple key": (
        "words stand alone where `key: value` is looked for",
        "Add the colon, or join the line above.",
    ),
}


def _yaml_snag(wrong: MarkedYAMLError, places: Places) -> Snag:
    """The commonest errors in the host's words; the rest as YAML words them."""
    mark = wrong.problem_mark or wrong.context_mark
    place = places.at(mark.line + 1, mark.column + 1) if mark else places.at(1, 1)
    problem, context = wrong.problem or "", wrong.context or ""
    if isinstance(wrong, _Refused):
        return _stop("plan 3", problem, wrong.note or "", place)
    if "\t" in place.text[: len(place.text) - len(place.text.lstrip())] or "\\t" in problem:
        return _stop("plan 1", "the line is indented with a tab", "Indent with spaces only.", place)
    began = wrong.context_mark
    if began is not None and ("end of stream" in problem or problem.startswith(("expected ','", "could not find"))):
        for words, (message, mend) in _OPEN.items():
            if words in context:
                return _stop("plan 1", message, mend, places.at(began.line + 1, began.column + 1))
    for words, (message, mend) in _SLIPS.items():
        if words in problem or words in context:
            return _stop("plan 1", message, mend, place)
    mend = "Check quotes, brackets and indentation on this line and the one above."
    return _stop("plan 1", f"this is not YAML: {problem or 'something is amiss'}", mend, place)


def _build(node: Node, loc: Loc, places: Places, snags: list[Snag]) -> Any:
    places.values[loc] = (node.start_mark.line + 1, node.start_mark.column + 1)
    if isinstance(node, ScalarNode):
        return _scalar(node, _whole_signs(node, places, snags))
    if not isinstance(node, MappingNode):
        return [_build(item, (*loc, index), places, snags) for index, item in enumerate(node.value)]
    data: dict[str, Any] = {}
    for key_node, value_node in node.value:
        spot = (key_node.start_mark.line + 1, key_node.start_mark.column + 1)
        if not isinstance(key_node, ScalarNode):
            snags.append(_stop("plan 3", "a key must be a plain word", "Write `word: value`.", places.at(*spot)))
            continue
        key = _whole_signs(key_node, places, snags)
        if key in data:
            first = places.keys[(*loc, key)][0]
            snags.append(
                _stop(
                    "plan 4",
                    f"{key!r} stands here twice (first on line {first})",
                    "Keep one of the two.",
                    places.at(*spot),
                )
            )
            continue
        places.keys[(*loc, key)] = spot
        data[key] = _build(value_node, (*loc, key), places, snags)
        if data[key] is None and not value_node.value:
            places.values[(*loc, key)] = spot  # no value: point at the key
    return data


def _whole_signs(node: ScalarNode, places: Places, snags: list[Snag]) -> str:
    """A scalar's text. Half a character (only an escape can make one) is reported and replaced."""
    text = str(node.value)
    if not _HALF.search(text):
        return text
    place = places.at(node.start_mark.line + 1, node.start_mark.column + 1)
    snags.append(_stop("plan 1", "an escape stands for half a character", "Write the character itself.", place))
    return _HALF.sub(REPLACEMENT, text)


def _scalar(node: ScalarNode, text: str) -> Any:
    tag = str(node.tag).rsplit(":", 1)[-1]
    if tag == "null":
        return None
    if tag == "bool":
        return text.lower() in ("true", "yes", "on", "y")  # the last three in YAML 1.1 only
    if tag == "int" and _WHOLE.fullmatch(text):
        return int(text)
    return text


def unknown(word: str, known: list[str]) -> str:
    """How to fix an unknown word."""
    return near(word, known).strip() or f"Known here: {', '.join(known)}."
