"""Changes to a plan's text as cuts and insertions. Each function returns the new text, or raises NoSplice.

The rest stays byte for byte. `save` checks that the new text has the right data.
"""

import re
from typing import Any

from ruamel.yaml.nodes import CollectionNode, MappingNode, Node, ScalarNode, SequenceNode

from board.plan.edit import yaml_text as spell
from board.plan.edit.source import NoSplice, Source, Spot

Cut = tuple[int, int, str]  # start, end (exclusive), replacement


def cut(text: str, *cuts: Cut) -> str:
    """The text with all cuts made; positions refer to the old text, and cuts must not overlap. Raises nothing."""
    for begin, end, instead in sorted(cuts, reverse=True):
        text = text[:begin] + instead + text[end:]
    return text


# --- replace a value -----------------------------------------------------------------------------------------
def replace(source: Source, spot: Spot, value: Any) -> str:
    """Replaces one value by another. A block stays a block; anything else goes on one line."""
    if source.is_block(spot.node):
        return _replace_block(source, spot, value)
    new = _on_one_line(source, spot, value)
    if source.is_empty(spot.node):
        behind = source.behind(spot)
        lead = " " if source.text[behind - 1] in ":-" else ": "
        return cut(source.text, (behind, behind, lead + new))
    begin, end = source.start(spot.node), source.end(spot.node)
    if isinstance(spot.node, ScalarNode) and spot.node.style in ("|", ">"):
        written = source.text[begin:end].rstrip()
        note = re.match(r"[|>]\S*([ \t]+#[^\r\n]*)?", written)
        end, new = begin + len(written), new + (note[1] or "" if note else "")
    return cut(source.text, (begin, end, new))


def swap(source: Source, spot: Spot, value: Any) -> Cut:
    """Replaces a word or number by another."""
    node = spot.node
    if not isinstance(node, ScalarNode) or node.style in ("|", ">") or source.is_empty(node):
        raise NoSplice
    return source.start(node), source.end(node), _on_one_line(source, spot, value)


def _on_one_line(source: Source, spot: Spot, value: Any) -> str:
    if isinstance(value, dict | list):
        return spell.flow(value, source.layout)
    style = spot.node.style if isinstance(spot.node, ScalarNode) and isinstance(value, str) else None
    quote = style if style in ("'", '"') else ""
    return spell.scalar(value, in_flow=spot.in_flow, quote=quote, quoted=source.layout.quoted)


def _replace_block(source: Source, spot: Spot, value: Any) -> str:
    assert isinstance(spot.node, CollectionNode)
    begin = source.begin(spot.node)
    stop = source.line_stop(source.end(spot.node))
    own_lines = source.alone(begin)
    if isinstance(value, dict | list) and value:
        column = source.column(begin)
        if own_lines and spot.key is not None and isinstance(value, dict):
            column = max(column, spot.key.start_mark.column + 1)  # a list may start in its key's column, keys may not
        lines = spell.block(value, source.layout)
        first = " " * column if own_lines else ""
        new = first + (source.line_end + " " * column).join(lines)
        return cut(source.text, (source.line_start(begin) if own_lines else begin, stop, new))
    new = _on_one_line(source, spot, value)
    if not own_lines:
        return cut(source.text, (begin, stop, new))
    behind = source.behind(spot)
    if source.text[behind - 1] not in ":-":
        raise NoSplice
    return cut(source.text, (behind, behind, f" {new}"), _lines(source, begin, source.end(spot.node)))


def _lines(source: Source, begin: int, end: int) -> Cut:
    """A cut of whole lines, from one position's line to another's. At the end of the text, the line break before them
    goes too."""
    first, after = source.line_start(begin), source.below(end)
    text = source.text
    if after == len(text) and text[after - 1 : after] not in ("\r", "\n") and first:
        first -= 2 if text[first - 2 : first] == "\r\n" else 1
    return first, after, ""


# --- add one -------------------------------------------------------------------------------------------------
def add_key(source: Source, spot: Spot, key: str, value: Any) -> str:
    """Adds a key at the end of a mapping."""
    node = spot.node
    if source.is_empty(node):
        return replace(source, spot, {key: value})
    if not isinstance(node, MappingNode):
        raise NoSplice
    if source.is_flow(node):
        name = spell.key(key, in_flow=True, quoted=source.layout.quoted)
        return _add_in_brackets(source, node, f"{name}: {spell.flow(value, source.layout)}")
    if not source.is_block(node):
        raise NoSplice
    one_line = _on_one_line_beside(source, [v for _, v in node.value], value)
    return _add_lines(source, node, spell.entry(key, value, source.layout, one_line=one_line))


def add_item(source: Source, spot: Spot, value: Any) -> str:
    """Adds an item at the end of a list."""
    node = spot.node
    if not isinstance(node, SequenceNode):
        raise NoSplice
    if source.is_flow(node):
        return _add_in_brackets(source, node, spell.flow(value, source.layout))
    last = len(node.value) - 1
    gap = source.text[source.dash(node, last) + 1 : node.value[last].start_mark.index]
    one_line = _on_one_line_beside(source, node.value, value)
    lines = spell.item(value, source.layout, one_line=one_line, gap=gap if gap and not gap.strip(" ") else " ")
    return _add_lines(source, node, lines)


def _on_one_line_beside(source: Source, siblings: list[Node], value: Any) -> bool:
    """Whether to write a collection in brackets: if the last sibling of its kind is. A list that holds lists or
    mappings never is."""
    if isinstance(value, list) and any(isinstance(item, dict | list) for item in value):
        return False
    kind = MappingNode if isinstance(value, dict) else SequenceNode
    alike = [node for node in siblings if isinstance(node, kind) and node.value]
    return bool(alike) and source.is_flow(alike[-1])


def _add_lines(source: Source, node: CollectionNode, lines: list[str]) -> str:
    """Adds lines after a block's last line, and after any comment lines below it that are indented deeper than the
    block."""
    column = source.column(source.begin(node))
    at = source.below(source.end(node))
    deeper = re.compile(rf"[ \t]{{{column + 1},}}#[^\r\n]*(?:\r\n|\n|\r|$)")
    while at < len(source.text) and (more := deeper.match(source.text, at)):
        at = more.end()
    new = [" " * column + line for line in lines]
    if at == len(source.text) and source.text[at - 1] not in "\r\n":
        return cut(source.text, (at, at, "".join(source.line_end + line for line in new)))
    return cut(source.text, (at, at, "".join(line + source.line_end for line in new)))


def _add_in_brackets(source: Source, node: CollectionNode, new: str) -> str:
    close, begin = int(node.end_mark.index) - 1, source.start(node)
    if not node.value:
        if source.text[begin + 1 : close].strip():
            raise NoSplice
        return cut(source.text, (begin + 1, close, new))
    end, first = source.child_end(node, len(node.value) - 1), _begin(node, len(node.value) - 1)
    stop = source.line_stop(end)
    if not source.alone(first) or stop > close:
        return cut(source.text, (end, end, f", {new}"))
    comma = _comma(source, end, close)
    indent = source.text[source.line_start(first) : first]
    below = source.line_end + indent + new
    if comma is None:
        return cut(source.text, (end, stop, f",{source.text[end:stop]}{below}"))
    return cut(source.text, (stop, stop, f"{below},"))


def _begin(node: CollectionNode, number: int) -> int:
    """Where an entry's key or an item begins."""
    child = node.value[number]
    return int((child[0] if isinstance(child, tuple) else child).start_mark.index)


def _comma(source: Source, begin: int, end: int) -> int | None:
    """The first comma between two positions that is not in a comment."""
    found = re.compile(r"(?:[^,#]|#[^\r\n]*)*,").match(source.text, begin, end)
    return found.end() - 1 if found else None


# --- remove one ----------------------------------------------------------------------------------------------
def remove(source: Source, holder: Spot, number: int) -> str:
    """Removes a mapping's entry or a list's item with its lines; comments on lines of their own stay."""
    node = holder.node
    assert isinstance(node, CollectionNode)
    if len(node.value) == 1:
        return replace(source, holder, {} if isinstance(node, MappingNode) else [])
    if source.is_flow(node):
        return _remove_in_brackets(source, node, number)
    in_list = isinstance(node, SequenceNode)
    begin = source.dash(node, number) if in_list else _begin(node, number)
    end = source.child_end(node, number)
    if source.alone(begin):
        return cut(source.text, lines_of(source, node, number))
    if in_list or number:
        raise NoSplice
    # The first key after a dash: the next key moves up to the dash, unless a comment stands in between.
    following = _begin(node, 1)
    if source.text[source.below(end) : following].strip():
        return cut(source.text, (begin, source.line_stop(end), ""))
    return cut(source.text, (begin, following, ""))


def lines_of(source: Source, node: CollectionNode, number: int) -> Cut:
    """A cut of an entry or item that stands on lines of its own, one of several in a block."""
    begin = source.dash(node, number) if isinstance(node, SequenceNode) else _begin(node, number)
    if source.is_flow(node) or len(node.value) == 1 or not source.alone(begin):
        raise NoSplice
    first, after, _ = _lines(source, begin, source.child_end(node, number))
    return first, _past_blank_lines(source, first, after), ""


def _past_blank_lines(source: Source, first: int, after: int) -> int:
    """The end of a cut of lines: blank lines below are cut too, if a blank line stands above."""
    before = source.text[:first].splitlines()
    if before and before[-1].strip():
        return after
    blank = re.compile(r"(?:[ \t]*(?:\r\n|\n|\r))*").match(source.text, after)
    return blank.end() if blank else after


def _remove_in_brackets(source: Source, node: CollectionNode, number: int) -> str:
    begin, end = _begin(node, number), source.child_end(node, number)
    close = int(node.end_mark.index) - 1
    if number + 1 < len(node.value):
        following = _begin(node, number + 1)
        comma = _comma(source, end, following)
        if comma is not None and source.alone(begin) and source.next_line(comma) <= following:
            return cut(source.text, (source.line_start(begin), source.next_line(comma), ""))
        return cut(source.text, (begin, following, ""))
    before = source.child_end(node, number - 1)
    if not re.search(r"[\r\n]", source.text[before:begin]):
        return cut(source.text, (before, end, ""))
    comma = _comma(source, before, begin)
    if comma is None:
        raise NoSplice
    line = source.line_start(begin), source.next_line(end)
    if line[1] <= close:
        return cut(source.text, (comma, comma + 1, ""), (*line, ""))
    return cut(source.text, (comma, comma + 1, ""), (begin, end, ""))


# --- wrap a mapping in a list --------------------------------------------------------------------------------
def wrap(source: Source, spot: Spot) -> str:
    """Turns a mapping into a list with that mapping as its one item."""
    node, text = spot.node, source.text
    if not isinstance(node, MappingNode):
        raise NoSplice
    begin, end = source.start(node), source.end(node)
    if source.is_flow(node):
        return cut(text, (begin, begin, "["), (end, end, "]"))
    begin = source.begin(node)
    if not source.alone(begin):
        raise NoSplice
    cuts: list[Cut] = [(begin, begin, "- ")]
    at = source.next_line(begin)
    while at < end:
        stop = source.line_stop(at)
        if text[at:stop].strip():
            cuts.append((at, at, "  "))
        at = source.next_line(stop)
    return cut(text, *cuts)
