"""What a plan leaves open and is filled in, as codes: what of, with which values, and what it is about. The run sheet
stores them; `sheet.said` has the words. Pure.
"""

from typing import TYPE_CHECKING, Literal

import msgspec

if TYPE_CHECKING:
    from board.plan.resolve.nodes import Node

Kind = Literal[
    # of a step or a job
    "before-guests", "last-hours", "any-time", "any-time-by-words", "chilled", "soon-before", "before",
    "soon-after", "after",
    "place", "place-and-hands", "fridge-room", "shelf", "ring", "takes", "thaws", "hands", "hands-throughout",
    "hands-in-part", "hands-at-start",
    "hands-at-both-ends", "hands-for-fresh-water", "keeps", "keeps-as", "keeps-cold",
    "keeps-by-times", "keeps-past",
    "best-within", "core", "guessed",
    # of a course
    "seat", "serve", "clear", "eaten", "may-slip", "sit", "sit-hot", "laid", "laid-throughout", "wash-a-piece",
    "clear-down", "wash-a-tool",
    # of the kitchen
    "kitchen", "one-oven", "rings", "shelves", "oven-range", "oven-heats", "oven-cools",
    # of a pair of hands, and of a guest
    "away", "read-as", "part-of-name", "not-weighed", "red-meat",
]  # fmt: skip
Value = bool | int | float | str | tuple[str, ...]


class Assumed(msgspec.Struct, frozen=True, gc=False):
    """One assumption, about all that it is the same for.

    `values`: what was filled in, by name: `minutes` and others of time in minutes, °C, `since` and `until` in ISO 8601
    by the plan's clock, pieces of the table. `about`: in the plan's words (unsafe for a terminal as they are). `tasks`:
    ids of the work that it decides.
    """

    kind: Kind
    values: dict[str, Value] = {}
    about: tuple[str, ...] = ()
    tasks: tuple[str, ...] = ()


class Assumptions:
    """Collects them; the same one about several things becomes one."""

    def __init__(self) -> None:
        self._found: dict[tuple[Kind, tuple[tuple[str, Value], ...]], tuple[dict[str, None], dict[str, None]]] = {}

    def of(self, node: "Node", kind: Kind, **values: Value) -> None:
        """One about a step or a job."""
        self.add(kind, node.name, node.id, **values)

    def add(self, kind: Kind, about: str = "", task: str = "", **values: Value) -> None:
        """`about`: nothing where it goes for the whole plan; `task`: nothing where it decides none."""
        names, ids = self._found.setdefault((kind, tuple(values.items())), ({}, {}))
        if about:
            names[about] = None
        if task:
            ids[task] = None

    def all(self) -> tuple[Assumed, ...]:
        """In the order in which they were first met."""
        return tuple(
            Assumed(kind, dict(values), tuple(names), tuple(ids))
            for (kind, values), (names, ids) in self._found.items()
        )
