"""Which names are most like one that nothing has."""

import difflib
from collections.abc import Callable, Iterable

LONGEST_CHARACTERS = 400  # of a name, as far as it is compared: a longer one would take long


def nearest(
    name: str,
    known: Iterable[str],
    most: int = 1,
    alike: float = 0.6,
    fold: Callable[[str], str] = str.casefold,
) -> list[str]:
    """At most so many of the known names, as they are written, the most alike first; none where none is `alike` enough
    (0 to 1, `difflib`'s ratio). `fold`: what makes two spellings of a name one."""
    by_fold = {fold(each): each for each in known}
    found = difflib.get_close_matches(fold(name)[:LONGEST_CHARACTERS], list(by_fold), n=most, cutoff=alike)
    return [by_fold[each] for each in found]
