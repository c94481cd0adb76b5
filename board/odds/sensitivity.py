"""Evenings played again with one thing changed: only what that moves is worked out again.

The result equals the whole rule played from the start, in a fraction of the time: in most evenings slack soon absorbs
the minute, and later slots stay unchanged.
"""

from collections.abc import Collection, Mapping
from typing import Any

import numpy as np

from board.evening.rule import Going, Pair, Played, Rule, Times


def play_again(rule: Rule[Any], played: Played[Any], going: Going[Any], touched: Collection[str]) -> Times[Any]:
    """Each slot's start and end. `touched`: slots whose length or wait has become shorter since `played`."""
    plain = _forward(rule, going, {}, played.plain, touched)
    if played.alone is None:  # nobody was held up then, so nobody is now
        return plain
    alone = _forward(rule, going, rule.no_hands, played.alone, touched)
    void: dict[Pair, Any] = {}
    changed = set(touched)
    for pair in rule.hand_pairs:
        second, first = pair
        before = off = played.void.get(pair)
        if (
            second in touched
            or plain.start[first] is not played.plain.start[first]
            or alone.start[second] is not played.alone.start[second]
        ):
            off = rule.fits_before(pair, going, plain, alone)
        if off is not None:
            void[pair] = off
        if off is not before:
            changed.add(second)
    return _forward(rule, going, void, played.times, changed)


def _forward(
    rule: Rule[Any], going: Going[Any], void: Mapping[Pair, Any], past: Times[Any], touched: Collection[str]
) -> Times[Any]:
    """Like the rule's; an unchanged time is the same object as in `past`, so that its successors can be skipped."""
    times = Times(dict(past.start), dict(past.end))
    for slot in rule.slots:
        id_ = slot.id
        if id_ not in touched and all(
            times.start[w.after] is past.start[w.after] and times.end[w.after] is past.end[w.after] for w in slot.waits
        ):
            continue
        rule.place(slot, going, void, times)
        if np.array_equal(times.start[id_], past.start[id_]):
            times.start[id_] = past.start[id_]
        if np.array_equal(times.end[id_], past.end[id_]):
            times.end[id_] = past.end[id_]
    return times
