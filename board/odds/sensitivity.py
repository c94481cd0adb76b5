"""Evenings played again with one thing changed: only what that moves is worked out again.

The result equals the whole rule played from the start, in a fraction of the time: in most evenings slack soon absorbs
the minute, and later slots stay unchanged.
"""

from collections.abc import Collection
from typing import Any

import numpy as np

from board.evening.busy import Stretch
from board.evening.order import Node
from board.evening.rule import Going, Played, Rule


def play_again(rule: Rule[Any], past: Played[Any], going: Going[Any], touched: Collection[str]) -> Played[Any]:
    """The evenings anew. `touched`: slots whose length or wait has become shorter since `past`."""
    again = rule.blank()
    moved: dict[str, list[Stretch[Any]]] = {who: [] for who in again.hands}
    for node in rule.nodes:
        if node[0] not in touched and not _feels(rule, past, again, node, moved):
            _as_before(rule, past, again, node)
            continue
        rule.place(node, going, again)
        _settle(past, again, node)
        if node in again.stretches:
            found = _moved(past, again, node)
            for who in rule.wanted[node[0]].who:
                moved[who] += found
    return again


def _feels(
    rule: Rule[Any], past: Played[Any], again: Played[Any], node: Node, moved: dict[str, list[Stretch[Any]]]
) -> bool:
    """Whether anything is otherwise that a start or an end hangs on: what it waits for, or where its hands are while it
    wants them. An unchanged time is the same object as it was."""
    id_, is_end = node
    if is_end:
        if again.start[id_] is not past.start[id_] or again.longer[id_] is not past.longer[id_]:
            return True
    elif any(
        again.end[w.after] is not past.end[w.after]
        if w.anchor == "end"
        else again.start[w.after] is not past.start[w.after]
        for w in rule.waits[id_]
    ):
        return True
    return any(
        other.high + rule.walk > each.wanted and other.low - rule.walk < each.high
        for each in past.stretches.get(node, ())
        for who in rule.wanted[id_].who
        for other in moved[who]
    )


def _as_before(rule: Rule[Any], past: Played[Any], again: Played[Any], node: Node) -> None:
    id_, is_end = node
    if is_end:
        again.end[id_] = past.end[id_]
    else:
        again.start[id_], again.longer[id_] = past.start[id_], past.longer[id_]
    if node in past.stretches:
        again.stretches[node] = past.stretches[node]
        for each in past.stretches[node]:
            for who in rule.wanted[id_].who:
                again.hands[who].take(each)


def _settle(past: Played[Any], again: Played[Any], node: Node) -> None:
    """Times that came out as they were are the same objects again."""
    id_, is_end = node
    pairs = ((again.end, past.end),) if is_end else ((again.start, past.start), (again.longer, past.longer))
    for new, old in pairs:
        if np.array_equal(new[id_], old[id_]):
            new[id_] = old[id_]


def _moved(past: Played[Any], again: Played[Any], node: Node) -> list[Stretch[Any]]:
    """The stretches that are otherwise, as they were and as they are."""
    pairs = zip(past.stretches[node], again.stretches[node], strict=True)
    return [
        each
        for old, new in pairs
        if not (np.array_equal(old.begin, new.begin) and np.array_equal(old.over, new.over))
        for each in (old, new)
    ]
