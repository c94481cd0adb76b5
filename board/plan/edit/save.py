"""Changes a few things in a plan's text and keeps every other byte. Text in, text out.

A change is cut into the text. The new text is then read, and its data must equal the old data with the same change
made. If it does not, the whole file is rewritten with the change, comments kept, and checked in the same way. If that
fails too, nothing changes and the reason is returned. A file that repeats parts of itself with `*name` is refused, here
as in reading, so a change never shows in two places.
"""

import copy
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from io import StringIO
from typing import Any

from ruamel.yaml import YAML
from ruamel.yaml.error import YAMLError
from ruamel.yaml.nodes import MappingNode, ScalarNode

from board.plan.edit import splice, words
from board.plan.edit.source import NoSplice, Source, Spot, read_source
from board.plan.places import Loc
from board.plan.snag import Snag

BYTE_ORDER_MARK = "\ufeff"


@dataclass(frozen=True, slots=True)
class CannotEdit:
    """Why a text was left as it is: a sentence for the host, which may quote the plan."""

    reason: str


@dataclass(frozen=True, slots=True)
class Put:
    """Sets the value at a path. A key missing from its mapping is added at the mapping's end."""

    loc: Loc
    value: Any = None


@dataclass(frozen=True, slots=True)
class Append:
    """Adds an item at the end of the list at a path."""

    loc: Loc
    value: Any = None


@dataclass(frozen=True, slots=True)
class Remove:
    """Removes the key or item at a path with its lines. A collection emptied by this is left as `{}` or `[]`."""

    loc: Loc


@dataclass(frozen=True, slots=True)
class Wrap:
    """Turns the mapping at a path into a list with that mapping as its one item."""

    loc: Loc


Change = Put | Append | Remove | Wrap


def edit(text: str, changes: Sequence[Change]) -> str | CannotEdit:
    """The text with the changes made, one after another: all of them or none. Raises nothing."""
    mark = BYTE_ORDER_MARK if text.startswith(BYTE_ORDER_MARK) else ""
    source = read_source(text.removeprefix(mark))
    left = list(changes)
    while left:
        if isinstance(source, Snag):
            return CannotEdit(words.edit_unreadable(source.message))
        many = _swapped(source, left)
        if many is not None:
            source, done = many
            left = left[done:]
            continue
        found = _changed(source, left.pop(0))
        if isinstance(found, CannotEdit):
            return found
        source = found
    if isinstance(source, Snag):
        return CannotEdit(words.edit_unreadable(source.message))
    return mark + source.text


def data_with(data: Any, changes: Sequence[Change]) -> Any:
    """A copy of a plan's data with the changes made; None if one has no place in it. Raises nothing."""
    new = copy.deepcopy(data)
    try:
        for change in changes:
            _make(new, change)
    except (KeyError, IndexError, TypeError, ValueError, AttributeError):
        return None
    return new


def data_of(text: str) -> Any:
    """The text's YAML as plain data; None if it cannot be read. Raises nothing."""
    source = read_source(text.removeprefix(BYTE_ORDER_MARK))
    return None if isinstance(source, Snag) else source.data


def _swapped(source: Source, changes: Sequence[Change]) -> tuple[Source, int] | None:
    """Makes the leading changes in one go, so that a plan with many of them is read only once. Returns the new text and
    how many changes it holds. These are two or more that replace one word or number each, or take out one key of a
    mapping with its lines, all in different places. None if that is not possible."""
    wanted = copy.deepcopy(source.data)
    cuts: dict[Loc, splice.Cut] = {}
    thinned: set[Loc] = set()  # mappings that lose a key
    for change in changes:
        found = None
        if change.loc not in cuts and not (isinstance(change, Remove) and change.loc[:-1] in thinned):
            found = _cut(source, change)
        if found is None:
            break
        cuts[change.loc] = found
        thinned |= {change.loc[:-1]} if isinstance(change, Remove) else set()
        _make(wanted, change)
    if len(cuts) < 2:
        return None
    try:
        new = read_source(splice.cut(source.text, *cuts.values()))
    except (NoSplice, YAMLError, KeyError, IndexError, TypeError, ValueError, AttributeError):
        return None
    return (new, len(cuts)) if isinstance(new, Source) and same(new.data, wanted) else None


def _cut(source: Source, change: Change) -> splice.Cut | None:
    """A change as one cut that shifts no other path; None if it is not of that kind."""
    spot, holder = source.at(change.loc), source.at(change.loc[:-1])
    if spot is None or holder is None:
        return None
    try:
        if isinstance(change, Put) and isinstance(change.value, str | int) and isinstance(spot.node, ScalarNode):
            return splice.swap(source, spot, change.value)
        if isinstance(change, Remove) and isinstance(holder.node, MappingNode):
            return splice.lines_of(source, holder.node, _place_in(source, holder, change.loc))
    except (NoSplice, TypeError, ValueError):
        return None
    return None


def _changed(source: Source, change: Change) -> Source | CannotEdit:
    """The text with one change in it, read back and compared."""
    wanted = copy.deepcopy(source.data)
    try:
        _make(wanted, change)
    except (KeyError, IndexError, TypeError, ValueError, AttributeError):
        return CannotEdit(words.edit_no_such_place(_path(change.loc)))
    for way in (_spliced, _rewritten):
        new = _read_if_it_says(way, source, change, wanted)
        if new is not None:
            return new
    return CannotEdit(words.edit_not_possible(_path(change.loc)))


def _read_if_it_says(
    way: Callable[[Source, Change], str], source: Source, change: Change, wanted: Any
) -> Source | None:
    try:
        new = read_source(way(source, change))
    except (NoSplice, YAMLError, KeyError, IndexError, TypeError, ValueError, AttributeError):
        return None
    return new if isinstance(new, Source) and same(new.data, wanted) else None


def same(one: Any, other: Any) -> bool:
    """Whether two pieces of data are identical: values, types and the order of keys."""
    if type(one) is not type(other):
        return False
    if isinstance(one, dict):
        return list(one) == list(other) and all(same(one[key], other[key]) for key in one)
    if isinstance(one, list):
        return len(one) == len(other) and all(map(same, one, other))
    return bool(one == other)


def _make(data: Any, change: Change) -> None:
    """Makes the change in plain data, in place. Raises KeyError, IndexError, TypeError or ValueError if its path does
    not exist."""
    *way, last = change.loc
    holder = data
    for piece in way:
        holder = holder[piece]
    match change:
        case Put(value=value):
            if isinstance(holder, dict):
                holder[last] = copy.deepcopy(value)
            elif holder is None and isinstance(last, str):
                _make(data, Put(tuple(way), {last: value}))
            else:
                holder[_number(last)] = copy.deepcopy(value)
        case Append(value=value):
            holder[last].append(copy.deepcopy(value))
        case Remove():
            del holder[last]
        case Wrap():
            if not isinstance(holder[last], dict):
                raise TypeError
            holder[last] = [holder[last]]


def _number(piece: str | int) -> int:
    """An index in a list. Raises TypeError for anything but a whole number from 0."""
    if not isinstance(piece, int) or piece < 0:
        raise TypeError
    return piece


def _spliced(source: Source, change: Change) -> str:
    spot = source.at(change.loc)
    holder = source.at(change.loc[:-1])
    if isinstance(change, Put) and spot is None and holder is not None:
        return splice.add_key(source, holder, str(change.loc[-1]), change.value)
    if spot is None or holder is None:
        raise NoSplice
    match change:
        case Put(value=value):
            return splice.replace(source, spot, value)
        case Append(value=value):
            return splice.add_item(source, spot, value)
        case Remove():
            return splice.remove(source, holder, _place_in(source, holder, change.loc))
        case Wrap():
            return splice.wrap(source, spot)


def _place_in(source: Source, holder: Spot, loc: Loc) -> int:
    return [name for name, _ in source.children(holder)].index(loc[-1])


def _rewritten(source: Source, change: Change) -> str:
    """The whole file rewritten with the change. Keeps comments and order, but perhaps not spaces and line breaks."""
    yaml = YAML()
    yaml.preserve_quotes = True
    yaml.width = 4096
    yaml.composer.warn_double_anchors = False  # without aliases, anchors mean nothing
    layout = source.layout
    # The library counts a list's indent to the text after the dash.
    yaml.indent(mapping=layout.mapping, sequence=layout.dash + 2, offset=layout.dash)
    document = yaml.load(source.with_line_feeds())
    _make(document, change)
    out = StringIO()
    yaml.dump(document, out)
    return out.getvalue().replace("\n", source.line_end)


def _path(loc: Loc) -> str:
    """A path as the host reads it, counted from 1: `courses, 2, dishes, 1, steps`."""
    return ", ".join(str(piece + 1) if isinstance(piece, int) else piece for piece in loc)
