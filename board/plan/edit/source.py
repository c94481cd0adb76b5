"""A plan's text with its YAML nodes: where each begins and ends, and how its lines are laid out. Positions are
characters, counted from 0."""

import re
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from ruamel.yaml.nodes import CollectionNode, MappingNode, Node, ScalarNode, SequenceNode

from board.plan.edit.yaml_text import Layout
from board.plan.places import Loc, Places, read_yaml
from board.plan.snag import Snag


class NoSplice(Exception):
    """No splice is known for this layout. Not a bug: the whole file is rewritten instead."""


@dataclass(frozen=True)
class Spot:
    """A node in the tree: its key if it is a mapping's value, the collection that holds it, and whether it stands
    inside brackets."""

    node: Node
    holder: CollectionNode | None = None
    key: Node | None = None
    in_flow: bool = False

    @property
    def first(self) -> Node:
        """The node its text begins with: the key in a mapping, the node itself in a list."""
        return self.key or self.node


@dataclass(frozen=True)
class Source:
    """The text without byte-order mark, its nodes and its data. Methods raise NoSplice where a layout is not
    handled."""

    text: str
    root: Node
    data: Any
    places: Places
    layout: Layout
    line_end: str

    def at(self, loc: Loc) -> Spot | None:
        """The node at a path; None if there is none."""
        spot = Spot(self.root)
        for piece in loc:
            inside = next((s for name, s in self.children(spot) if name == piece), None)
            if inside is None:
                return None
            spot = inside
        return spot

    def children(self, spot: Spot) -> list[tuple[str | int, Spot]]:
        """The children of a mapping or list, each with its key or index."""
        node = spot.node
        flow = spot.in_flow or self.is_flow(node)
        if isinstance(node, MappingNode):
            return [(str(key.value), Spot(value, node, key, flow)) for key, value in node.value]
        if isinstance(node, SequenceNode):
            return [(number, Spot(item, node, None, flow)) for number, item in enumerate(node.value)]
        return []

    def is_flow(self, node: Node) -> bool:
        """Whether a collection is written in brackets."""
        return isinstance(node, CollectionNode) and self.text[node.end_mark.index - 1] in "]}" and bool(node.flow_style)

    def is_empty(self, node: Node) -> bool:
        """Whether the value is left blank."""
        return isinstance(node, ScalarNode) and bool(node.start_mark.index == node.end_mark.index)

    def with_line_feeds(self) -> str:
        """The text with every line break as a line feed, which means the same. Source: YAML 1.2.2, section 5.4."""
        return _BREAK.sub("\n", self.text)

    def end(self, node: Node) -> int:
        """Where a node's own text ends, before any comments and blank lines that follow it."""
        end = int(node.end_mark.index)
        if isinstance(node, ScalarNode):
            written = self.text[self.start(node) : end]
            kept = node.style in ("|", ">") and "+" in written.split("#")[0].split("\n")[0]
            return end if kept or not written.strip() else self.start(node) + len(written.rstrip())
        if not isinstance(node, CollectionNode) or self.is_flow(node) or not node.value:
            return end
        return self.child_end(node, len(node.value) - 1)

    def child_end(self, holder: CollectionNode, number: int) -> int:
        """Where an entry or item ends. If its value is blank, that is at its colon or dash."""
        child = holder.value[number]
        key, node = child if isinstance(child, tuple) else (None, child)
        return self.behind(Spot(node, holder, key), number) if self.is_empty(node) else self.end(node)

    def behind(self, spot: Spot, number: int | None = None) -> int:
        """The position right after a value's colon or dash, or after its key if there is no colon."""
        if spot.key is not None:
            end = int(spot.key.end_mark.index)
            colon = re.compile(r"[ \t]*:").match(self.text, end)
            return colon.end() if colon else end
        if not isinstance(spot.holder, SequenceNode) or self.is_flow(spot.holder):
            raise NoSplice
        return self.dash(spot.holder, spot.holder.value.index(spot.node) if number is None else number) + 1

    def start(self, node: Node) -> int:
        """Where a node begins, after its anchor if it has one."""
        anchor = re.compile(r"&\S+[ \t]*").match(self.text, node.start_mark.index)
        return anchor.end() if anchor and not self.is_block(node) else int(node.start_mark.index)

    def is_block(self, node: Node) -> bool:
        """Whether a collection is written in lines of its own, not in brackets."""
        return isinstance(node, CollectionNode) and not node.flow_style

    def begin(self, node: CollectionNode) -> int:
        """Where the first entry of a block begins: its key or its dash."""
        if isinstance(node, MappingNode):
            begin = int(node.value[0][0].start_mark.index)
            if self.text[self.line_start(begin) : begin].rstrip().endswith("?"):
                raise NoSplice
            return begin
        return self.dash(node, 0)

    def dash(self, node: CollectionNode, number: int) -> int:
        """The position of an item's dash."""
        begin = self.child_end(node, number - 1) if number else int(node.start_mark.index)
        until = max(node.value[number].start_mark.index, begin + 1)
        found = re.compile(r"(?:[^\r\n]*[\r\n])*?[ \t]*(-)(?=\s|$)").match(self.text, begin)
        if self.text[begin] == "-" and not number:
            return begin
        if found is None or found.start(1) >= until:
            raise NoSplice
        return found.start(1)

    def line_start(self, at: int) -> int:
        """Where the line at a position begins."""
        return max(self.text.rfind("\n", 0, at), self.text.rfind("\r", 0, at)) + 1

    def line_stop(self, at: int) -> int:
        """Where that line ends, before its line break."""
        found = _BREAK.search(self.text, at)
        return found.start() if found else len(self.text)

    def next_line(self, at: int) -> int:
        """Where the next line begins; the end of the text after the last one."""
        found = _BREAK.search(self.text, at)
        return found.end() if found else len(self.text)

    def below(self, end: int) -> int:
        """Where the line after a node begins, from the position where the node ends."""
        return end if end and self.text[end - 1] in "\r\n" else self.next_line(end)

    def column(self, at: int) -> int:
        """Characters between the start of the line and a position."""
        return at - self.line_start(at)

    def alone(self, at: int) -> bool:
        """Whether only white space precedes a position on its line."""
        return not self.text[self.line_start(at) : at].strip()


_BREAK = re.compile(r"\r\n|\n|\r")


@lru_cache(maxsize=4)  # several changes in a row often look at one text
def read_source(text: str) -> Source | Snag:
    """Nodes and data of a text without byte-order mark, or the first snag that keeps it from being read.

    The result is shared between callers: copy the data before changing it.
    """
    data, places, snags = read_yaml(text, "")
    if snags:
        return snags[0]
    root = places.root
    assert root is not None  # without a root there would be snags
    found = _BREAK.search(text)
    return Source(text, root, data, places, _layout(text, root), found[0] if found else "\n")


def _layout(text: str, root: Node) -> Layout:
    """The file's indentation, taken from the first block of each kind below a key."""
    steps: dict[type, int] = {}
    waiting = [root]
    while waiting:
        node = waiting.pop(0)
        if not isinstance(node, CollectionNode) or node.flow_style:
            continue
        for child in node.value:
            key, value = child if isinstance(child, tuple) else (None, child)
            waiting.append(value)
            if key is not None and isinstance(value, CollectionNode) and not value.flow_style:
                steps.setdefault(type(value), value.start_mark.column - key.start_mark.column)
    usual = Layout()
    mapping, dash = steps.get(MappingNode, usual.mapping), steps.get(SequenceNode, usual.dash)
    return Layout(mapping if 0 < mapping <= 8 else 2, dash if 0 <= dash <= 8 else 2, quoted=text.startswith("%"))
