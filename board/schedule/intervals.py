"""Intervals of whole minutes: joined, intersected, taken off one another. Pure arithmetic."""

from collections.abc import Iterable

Window = tuple[int, int]  # from a minute up to, not including, another


def merged(windows: list[Window]) -> list[Window]:
    """Windows in order, those that touch joined."""
    found: list[Window] = []
    for start, end in sorted(windows):
        if found and start <= found[-1][1]:
            found[-1] = (found[-1][0], max(found[-1][1], end))
        elif end > start:
            found.append((start, end))
    return found


def meet(one: Iterable[Window], other: Iterable[Window]) -> list[Window]:
    """Where two sets of windows overlap."""
    return merged([(max(a, c), min(b, d)) for a, b in one for c, d in other if min(b, d) > max(a, c)])


def without(one: Iterable[Window], gone: Iterable[Window]) -> list[Window]:
    """What is left of windows without others."""
    left = list(one)
    for start, end in gone:
        left = [piece for a, b in left for piece in ((a, min(b, start)), (max(a, end), b)) if piece[1] > piece[0]]
    return merged(left)
