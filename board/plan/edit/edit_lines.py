"""One line of a plan retyped, added, taken out or moved: text in, text out, every other byte kept. Pure; raises
nothing.

Unlike the edits in a host's terms these ask for no plan that can be read as a whole: they also mend one that cannot.
"""

import copy
import re
from typing import Any

from board.base import words as shared
from board.plan.edit import splice, words
from board.plan.edit.edit import written
from board.plan.edit.edit_guesses import settled
from board.plan.edit.items import insert_item, swap_items
from board.plan.edit.save import (
    BYTE_ORDER_MARK,
    Append,
    CannotEdit,
    Change,
    Put,
    Remove,
    data_of,
    data_with,
    edit,
    same,
)
from board.plan.edit.source import Source, read_source
from board.plan.places import Loc, follow, read_yaml
from board.plan.snag import Fix, Snag

_WHOLE = re.compile(r"[-+]?[0-9]{1,9}")
_ASSUMED = re.compile(rf"[ \t]*{shared.ASSUMED}\b.*")
_LINE_END = re.compile(r"(\r\n|\n|\r)")


def value_of(typed: str, before: Any = None) -> Any:
    """The value that was typed in place of another: words, a whole number, or what stands in brackets; a CannotEdit
    where it can be none. A number that was written as words stays words."""
    typed = " ".join(typed.split())
    if not typed:
        return CannotEdit(words.EDIT_NOTHING_TYPED)
    if typed[0] in "[{":
        data, _, snags = read_yaml(f"- {typed}", "")
        return CannotEdit(f"{snags[0].message}; {snags[0].mend}") if snags else data[0]
    as_words = isinstance(before, str) and bool(_WHOLE.fullmatch(before))
    if _WHOLE.fullmatch(typed) and not as_words:
        return int(typed)
    return {"true": True, "false": False}.get(typed, typed) if isinstance(before, bool) else typed


def retyped(text: str, loc: Loc, typed: str) -> str | CannotEdit:
    """With what was typed as the value at a path; the host said it, so it is neither guessed nor assumed any more."""
    data = data_of(text)
    value = value_of(typed, follow(data, loc))
    new = value if isinstance(value, CannotEdit) else edit(text, [Put(loc, value), *_guess_no_more(data, loc)])
    return new if isinstance(new, CannotEdit) else _assumed_no_more(new, loc)


def _guess_no_more(data: Any, loc: Loc) -> list[Change]:
    for n in range(len(loc)):
        work = follow(data, loc[:n])
        said = work.get("guessed") if isinstance(work, dict) else None
        if isinstance(said, list) and loc[n] in said:
            return settled(work, loc[:n], (str(loc[n]),))
    return []


def _assumed_no_more(text: str, loc: Loc) -> str:
    """Without the mark that a plan of a menu puts behind what nobody said."""
    _, places, _ = read_yaml(text, "")
    pieces = _LINE_END.split(text)
    at = 2 * (places.of(loc).line - 1)
    pieces[at] = _ASSUMED.sub("", pieces[at])
    return "".join(pieces)


def key_added(text: str, loc: Loc, typed: str) -> str | CannotEdit:
    """With a line `word: value` at the end of the keys at a path. Refused where the word stands there already."""
    word, colon, said = typed.partition(":")
    word = " ".join(word.split())
    if not colon or not word:
        return CannotEdit(words.EDIT_KEY_AND_VALUE)
    there = follow(data_of(text), loc)
    if isinstance(there, dict) and word in there:
        return CannotEdit(words.edit_key_there(word))
    value = value_of(said)
    return value if isinstance(value, CannotEdit) else edit(text, [Put((*loc, word), value)])


def added(text: str, loc: Loc, lines: list[str]) -> str | CannotEdit:
    """With an item, as lines of YAML from its dash on, right behind the item at a path."""
    return insert_item(text, loc, lines)


def removed(text: str, loc: Loc) -> str | CannotEdit:
    """Without the key or item at a path; a list or mapping that this would empty goes with it."""
    data = data_of(text)
    while len(loc) > 1 and len(follow(data, loc[:-1]) or ()) == 1:
        loc = loc[:-1]
    if data_with(data, [Remove(loc)]) in (None, {}):
        return CannotEdit(words.EDIT_NO_ITEM)
    return edit(text, [Remove(loc)])


def moved(text: str, loc: Loc, by: int) -> tuple[str, Loc] | CannotEdit:
    """With the item at a path one place further down (`by` 1) or up (-1), its comments with it; and its new path."""
    holder, number = follow(data_of(text), loc[:-1]), loc[-1] if loc else ""
    if not isinstance(holder, list) or not isinstance(number, int):
        return CannotEdit(words.EDIT_NOT_IN_A_LIST)
    if not 0 <= number + by < len(holder):
        return CannotEdit(words.EDIT_NO_FURTHER)
    new = swap_items(text, loc[:-1], min(number, number + by))
    return new if isinstance(new, CannotEdit) else (new, (*loc[:-1], number + by))


def key_called(text: str, loc: Loc, word: str) -> str | CannotEdit:
    """With the key at a path called otherwise, in its place. Refused where that word stands there already."""
    mark = BYTE_ORDER_MARK if text.startswith(BYTE_ORDER_MARK) else ""
    source = read_source(text.removeprefix(mark))
    spot = source.at(loc) if isinstance(source, Source) else None
    if spot is None or spot.key is None or isinstance(source, Snag):
        return CannotEdit(words.EDIT_NO_ITEM)
    wanted = copy.deepcopy(source.data)
    holder = follow(wanted, loc[:-1])
    if word in holder:
        return CannotEdit(words.edit_key_there(word))
    renamed = {word if key == loc[-1] else key: value for key, value in holder.items()}
    holder.clear()
    holder.update(renamed)
    new = splice.cut(source.text, (source.start(spot.key), int(spot.key.end_mark.index), word))
    return mark + new if same(data_of(new), wanted) else CannotEdit(words.EDIT_NO_ITEM)


def fixed(text: str, fix: Fix) -> str | CannotEdit:
    """With a finding's mend made."""
    loc, there = written(data_of(text), fix.loc)
    match fix.how:
        case "call":
            return key_called(text, loc, fix.new)
        case "swap" if isinstance(there, str) and fix.old in there:
            return edit(text, [Put(loc, there.replace(fix.old, fix.new, 1))])
        case "put":
            return edit(text, [Put(loc, _value(fix.new))])
        case "add" if isinstance(there, list):
            return edit(text, [Append(loc, _value(fix.new))])
        case "add" if there is None:
            return edit(text, [Put(loc, [_value(fix.new)])])
    return CannotEdit(words.EDIT_NO_ITEM)


def _value(line: str) -> Any:
    data, _, _ = read_yaml(f"- {line}", "")
    return data[0]


def line_retyped(text: str, number: int, typed: str) -> str:
    """With another line in place of one, counted from 0: of a text that is no YAML."""
    pieces = _LINE_END.split(text)
    if 0 <= 2 * number < len(pieces):
        pieces[2 * number] = typed
    return "".join(pieces)


def line_added(text: str, number: int, typed: str) -> str:
    """With a line before that one; behind the last where there is none."""
    pieces = _LINE_END.split(text)
    line_end = pieces[1] if len(pieces) > 1 else "\n"
    if 2 * number < len(pieces):
        pieces[2 * number : 2 * number] = [typed, line_end]
        return "".join(pieces)
    return f"{text}{line_end}{typed}"


def line_removed(text: str, number: int) -> str:
    """Without that line."""
    pieces = _LINE_END.split(text)
    return "".join([*pieces[: 2 * number], *pieces[2 * number + 2 :]])
