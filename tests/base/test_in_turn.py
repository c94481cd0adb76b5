"""Things that wait for one another, told in turn; against the standard library's own order."""

from graphlib import TopologicalSorter

from hypothesis import given
from hypothesis import strategies as st

from board.base.in_turn import in_turn


@given(st.lists(st.sets(st.integers(0, 11)), min_size=1, max_size=12))
def test_each_comes_once_and_after_all_it_waits_for(drawn: list[set[int]]) -> None:
    waits = {n: [m for m in sorted(before) if m < n] for n, before in enumerate(drawn)}
    known: dict[int, int] = {}

    for n in in_turn(len(drawn) - 1, waits.__getitem__, known):
        assert n not in known
        assert all(before in known for before in waits[n])
        known[n] = len(known)

    wanted, reached = set(), [len(drawn) - 1]
    while reached:
        wanted.add(n := reached.pop())
        reached += waits[n]
    assert set(known) == wanted
    assert list(TopologicalSorter({n: waits[n] for n in known}).static_order())[-1] == list(known)[-1]


def test_what_is_known_is_not_told_again_and_no_row_is_too_long() -> None:
    known = {0}

    for n in in_turn(5000, lambda n: [n - 1], known):
        known.add(n)

    assert known == set(range(5001))
    assert list(in_turn(5000, lambda n: [n - 1], known)) == []
