"""An item of a list as lines of YAML, with the comments in it: taken out of one text, put into another. Pure."""

import copy
import re
from collections.abc import Callable
from textwrap import indent
from typing import Any

from ruamel.yaml.nodes import SequenceNode

from board.plan.edit import splice, words
from board.plan.edit.save import BYTE_ORDER_MARK, CannotEdit, Put, edit, same
from board.plan.edit.source import NoSplice, Source, Spot, read_source
from board.plan.edit.yaml_text import Layout, item
from board.plan.places import Loc, follow, read_yaml
from board.plan.snag import Snag

_COMMENT = re.compile(r"(?:^|\s)#.*")


def item_lines(text: str, loc: Loc) -> list[str]:
    """The lines of the item at a path, without indent, from its dash on. What is written in brackets, or cannot be cut
    out, is written anew without its comments; empty if nothing stands there. Raises nothing."""
    source = read_source(text.removeprefix(BYTE_ORDER_MARK))
    found = _holder(source, loc) if isinstance(source, Source) else None
    if found is None or not isinstance(source, Source):
        return []
    value = follow(source.data, loc)
    try:
        begin, end = _lines(source, found, loc)
    except (NoSplice, ValueError):
        return item(value, Layout())
    column = source.column(source.dash(found, int(loc[-1])))
    cut_out = source.with_line_feeds()[begin:end] if source.line_end == "\n" else source.text[begin:end]
    lines = [line[column:] if not line[:column].strip() else line for line in cut_out.splitlines()]
    data, _, snags = read_yaml("\n".join([*lines, ""]), "")
    return lines if not snags and same(data, [value]) else item(value, Layout())


def put_item(text: str, loc: Loc, lines: list[str]) -> str | CannotEdit:
    """The text with these lines, as `item_lines` gives them, in place of the item at a path. Comments in the old item
    stand above it. Raises nothing."""
    mark = BYTE_ORDER_MARK if text.startswith(BYTE_ORDER_MARK) else ""
    source = read_source(text.removeprefix(mark))
    if isinstance(source, Snag):
        return CannotEdit(words.edit_unreadable(source.message))
    found = _holder(source, loc)
    value, _, snags = read_yaml("\n".join([*lines, ""]), "")
    if found is None or snags or not isinstance(value, list) or len(value) != 1:
        return CannotEdit(words.EDIT_NO_ITEM)
    wanted = copy.deepcopy(source.data)
    follow(wanted, loc[:-1])[loc[-1]] = value[0]
    try:
        new = read_source(_replaced(source, found, loc, lines))
    except (NoSplice, ValueError):
        return edit(text, [Put(loc, value[0])])
    if isinstance(new, Source) and same(new.data, wanted):
        return mark + new.text
    return edit(text, [Put(loc, value[0])])


def insert_item(text: str, loc: Loc, lines: list[str]) -> str | CannotEdit:
    """The text with these lines, as `item_lines` gives them, as an item of its own right behind the item at a path,
    apart from it by a blank line where that one is from the one before. Raises nothing."""
    value, _, snags = read_yaml("\n".join([*lines, ""]), "")
    if snags or not isinstance(value, list) or len(value) != 1:
        return CannotEdit(words.EDIT_NO_ITEM)

    def make(items: list[Any], number: int) -> None:
        items.insert(number + 1, value[0])

    def splice_in(source: Source, holder: SequenceNode, number: int) -> str:
        begin, end = _lines(source, holder, (number,))
        column = source.column(source.dash(holder, number))
        new = indent("\n".join(lines), " " * column, lambda line: bool(line.strip()))
        gap = source.line_end if begin and not source.text[:begin].splitlines()[-1].strip() else ""
        closed = source.text[begin:end].endswith(("\n", "\r"))
        put = f"{gap}{new}\n" if closed else f"\n{gap}{new}"
        return splice.cut(source.text, (end, end, put.replace("\n", source.line_end)))

    return _in_list(text, loc, make, splice_in)


def swap_items(text: str, loc: Loc, number: int) -> str | CannotEdit:
    """The text with the item of that number in the list at a path, and the next one, in each other's place; comments
    right above either go with it. Raises nothing."""

    def make(items: list[Any], number: int) -> None:
        items[number], items[number + 1] = items[number + 1], items[number]

    def splice_in(source: Source, holder: SequenceNode, number: int) -> str:
        (begin, stop), (start, end) = (_with_comments(source, holder, n) for n in (number, number + 1))
        first, second = source.text[begin:stop], source.text[start:end]
        if not second.endswith(("\n", "\r")):
            first, second = first.removesuffix(source.line_end), second + source.line_end
        return source.text[:begin] + second + source.text[stop:start] + first + source.text[end:]

    return _in_list(text, (*loc, number), make, splice_in)


def _in_list(
    text: str,
    loc: Loc,
    make: Callable[[list[Any], int], None],
    splice_in: Callable[[Source, SequenceNode, int], str],
) -> str | CannotEdit:
    """The text with a change to the list that holds the item at a path: made in its data, and spliced into its lines.
    What is in brackets is written anew."""
    mark = BYTE_ORDER_MARK if text.startswith(BYTE_ORDER_MARK) else ""
    source = read_source(text.removeprefix(mark))
    if isinstance(source, Snag):
        return CannotEdit(words.edit_unreadable(source.message))
    holder = _holder(source, loc)
    if holder is None:
        return CannotEdit(words.EDIT_NO_ITEM)
    wanted = copy.deepcopy(source.data)
    items = follow(wanted, loc[:-1])
    make(items, int(loc[-1]))
    if source.is_flow(holder):
        return edit(text, [Put(loc[:-1], items)])
    try:
        new = read_source(splice_in(source, holder, int(loc[-1])))
    except (NoSplice, ValueError, IndexError):
        return CannotEdit(words.EDIT_NO_ITEM)
    return mark + new.text if isinstance(new, Source) and same(new.data, wanted) else CannotEdit(words.EDIT_NO_ITEM)


def _with_comments(source: Source, holder: SequenceNode, number: int) -> tuple[int, int]:
    """The item's lines with the comment lines right above it. Raises NoSplice."""
    begin, end = _lines(source, holder, (number,))
    least = source.below(source.child_end(holder, number - 1)) if number else 0
    while begin > least and (line := source.line_start(begin - 1)) >= least:
        if not source.text[line:begin].lstrip().startswith("#"):
            break
        begin = line
    return begin, end


def _replaced(source: Source, holder: SequenceNode, loc: Loc, lines: list[str]) -> str:
    number = int(loc[-1])
    begin, end = _lines(source, holder, loc)
    column = source.column(source.dash(holder, number))
    beside = [found[0].strip() for line in source.text[begin:end].splitlines() if (found := _COMMENT.search(line))]
    new = indent("\n".join([*beside, *lines]), " " * column, bool).replace("\n", source.line_end)
    last = source.line_end if source.text[begin:end].endswith(("\n", "\r")) else ""
    return splice.cut(source.text, (begin, end, new + last))


def _lines(source: Source, holder: SequenceNode, loc: Loc) -> tuple[int, int]:
    """Where the item's first line begins and its last line ends. Raises NoSplice if it does not stand on lines of its
    own."""
    number = int(loc[-1])
    begin = source.dash(holder, number)
    if source.is_flow(holder) or not source.alone(begin):
        raise NoSplice
    return source.line_start(begin), source.below(source.child_end(holder, number))


def _holder(source: Source, loc: Loc) -> SequenceNode | None:
    """The list that holds the item at a path, if there is one."""
    spot: Spot | None = source.at(loc[:-1])
    there = source.at(loc) is not None
    return spot.node if there and spot is not None and isinstance(spot.node, SequenceNode) else None
