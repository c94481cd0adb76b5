"""The work of a plan as nodes, and what follows what as links between them. Pure."""

from dataclasses import dataclass, field
from typing import Literal

from board.plan.model.work import Work
from board.plan.places import Loc
from board.plan.resolve.assumed import Assumed
from board.plan.resolve.fault import slug

Kind = Literal["step", "job", "arrive", "seat", "serve", "clear"]

ARRIVE = "guests arrive"
SEAT = "guests to the table"


@dataclass(frozen=True, slots=True)
class Node:
    """One piece of work. `id` is stable as long as dish and step keep their names."""

    id: str
    kind: Kind
    name: str
    loc: Loc
    work: Work | None = None
    dish: str | None = None
    course: str | None = None


def is_written(node: Node) -> bool:
    """Whether the host wrote it as work, unlike a shopping trip or a drink to pour."""
    return node.kind == "step" or (node.kind == "job" and node.loc[0] == "jobs")


@dataclass(frozen=True, slots=True)
class Link:
    """`second` starts `least` to `most` minutes after `first` ends. A firm link is never relaxed. The minutes of a
    `usual` one are no word of the plan's, and bend before anything that is. `takes_up`: what the first made stands
    until the second begins and goes on in it; else only the order counts."""

    first: str
    second: str
    least: int = 0
    most: int | None = None
    firm: bool = True
    usual: bool = False
    takes_up: bool = True


@dataclass
class Linked:
    """Nodes in plan order, and their links. `hours`: by job, when it is done where the plan does not say."""

    nodes: dict[str, Node] = field(default_factory=dict)
    links: list[Link] = field(default_factory=list)
    hours: dict[str, Assumed] = field(default_factory=dict)

    @property
    def taken_up(self) -> list[Link]:
        """Those by which what the first made goes on in the second."""
        return [link for link in self.links if link.takes_up]


def serve_id(course: str) -> str:
    return f"serve/{slug(course)}"


def clear_id(course: str) -> str:
    return f"clear/{slug(course)}"
