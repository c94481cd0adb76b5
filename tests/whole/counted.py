"""How often functions are called while something runs, however they were imported."""

import sys
from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from types import CodeType, FrameType
from typing import Any


@contextmanager
def counted(functions: Iterable[Callable[..., object]]) -> Iterator[Counter[str]]:
    """Calls by name, each known from the start with none. Told by their code, since a name may be bound in many
    modules."""
    names: dict[CodeType, str] = {each.__code__: each.__name__ for each in functions}  # type: ignore[attr-defined]  # plain functions
    calls: Counter[str] = Counter(dict.fromkeys(names.values(), 0))

    def see(frame: FrameType, event: str, _: Any) -> None:
        if event == "call" and frame.f_code in names:
            calls[names[frame.f_code]] += 1

    before = sys.getprofile()
    sys.setprofile(see)
    try:
        yield calls
    finally:
        sys.setprofile(before)
