"""What follows what: every piece of work of a plan as a node, and the links between them, by name.

Steps of a dish follow one another as written unless `after` says otherwise. Around them stand the nodes the
program adds itself: guests arrive, guests to the table, and for each course its serving and its clearing.
"""

import re
from dataclasses import dataclass, field
from graphlib import CycleError, TopologicalSorter
from typing import Literal

from board.plan.model import Course, Plan, Ref, Way, Work
from board.plan.phrase import near
from board.plan.places import Loc
from board.plan.stations import LANES, Station

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


@dataclass(frozen=True, slots=True)
class Link:
    """`second` starts at least `least` minutes after `first` ends, and at most `most`; `firm` links never bend."""

    first: str
    second: str
    least: int = 0
    most: int | None = None
    firm: bool = True


@dataclass(frozen=True, slots=True)
class Problem:
    """Something that keeps the plan from being linked; `loc` is its path in the file."""

    code: str
    message: str
    mend: str
    loc: Loc


@dataclass
class Linked:
    """Nodes in the order of the plan, and their links."""

    nodes: dict[str, Node] = field(default_factory=dict)
    links: list[Link] = field(default_factory=list)


def slug(text: str) -> str:
    """`Celeriac broth` → `celeriac-broth`; letters of every script are kept."""
    return re.sub(r"[^\w]+", "-", text.casefold()).strip("-_") or "x"


def link(plan: Plan) -> tuple[Linked, list[Problem]]:
    """All nodes and links, and every reference that leads nowhere, every cycle, every name the kitchen lacks."""
    linked = Linked()
    problems: list[Problem] = []
    chains = _add_nodes(plan, linked)
    names = _Names(linked)
    for chain in chains:
        _link_chain(chain, names, linked, problems)
    _link_courses(plan, linked, chains)
    for node in [n for n in linked.nodes.values() if n.kind == "job"]:
        _link_job(node, names, linked, problems)
    problems += _cycle(linked)
    problems += [p for node in linked.nodes.values() if node.work for p in _uses(plan, node, node.work)]
    problems += _course_times(plan)
    return linked, problems


def serve_id(course: str) -> str:
    return f"serve/{slug(course)}"


def clear_id(course: str) -> str:
    return f"clear/{slug(course)}"


def _add_nodes(plan: Plan, linked: Linked) -> list[list[Node]]:
    """Adds every node; the steps of each dish come back as a chain."""

    def add(
        kind: Kind,
        name: str,
        base: str,
        loc: Loc,
        work: Work | None = None,
        dish: str | None = None,
        course: str | None = None,
    ) -> Node:
        unique, number = base, 2
        while unique in linked.nodes:
            unique, number = f"{base}-{number}", number + 1
        linked.nodes[unique] = Node(unique, kind, name, loc, work, dish, course)
        return linked.nodes[unique]

    add("arrive", ARRIVE, "guests-arrive", ("arrive",))
    if any(not course.standing for course in plan.courses):
        first = next(c for c in plan.courses if not c.standing)
        add("seat", SEAT, "guests-to-the-table", ("courses",), course=first.course)
    chains = []
    for c, course in enumerate(plan.courses):
        loc: Loc = ("courses", c)
        for d, dish in enumerate(course.dishes):
            chains.append([
                add("step", step.step, f"{slug(dish.dish)}/{slug(step.step)}", (*loc, "dishes", d, "steps", s), step, dish.dish, course.course)
                for s, step in enumerate(dish.steps)
            ])  # fmt: skip
        add("serve", f"serve {course.course}", serve_id(course.course), loc, course=course.course)
        add("clear", f"clear {course.course}", clear_id(course.course), loc, course=course.course)
    for j, job in enumerate(plan.jobs):
        add("job", job.job, f"jobs/{slug(job.job)}", ("jobs", j), job)
    return chains


class _Names:
    """Finds a node by the words the host wrote: in the same dish first, then anywhere if only one has that name."""

    def __init__(self, linked: Linked) -> None:
        self.nodes = linked.nodes
        self.by_name: dict[str, list[Node]] = {}
        for node in linked.nodes.values():
            keys = {node.name, f"{node.name} in {node.dish}"} if node.dish else {node.name}
            for key in keys:
                self.by_name.setdefault(_fold(key), []).append(node)

    def find(self, words: str, dish: str | None, loc: Loc) -> Node | Problem:
        found = self.by_name.get(_fold(words), [])
        here = [node for node in found if node.dish == dish]
        if len(found) > 1 and len(here) == 1:
            found = here
        if len(found) == 1:
            return found[0]
        if found:
            options = " or ".join(repr(f"{n.name} in {n.dish}") for n in found if n.dish)
            return Problem(
                "P09", f"{words!r} is the name of {len(found)} pieces of work", f"Write {options}.", loc
            )
        known = [n.name for n in self.nodes.values()]
        guess = near(words, known)
        return Problem(
            "P08",
            f"no step or job is called {words!r}.{guess}",
            "Write the other step's words as they stand in the plan.",
            loc,
        )


def _fold(words: str) -> str:
    return " ".join(words.casefold().split())


def _refs(
    refs: list[Ref], node: Node, key: str, names: _Names, problems: list[Problem]
) -> list[tuple[Ref, Node]]:
    found = []
    for number, ref in enumerate(refs):
        if _fold(ref.step) == "nothing":
            continue
        loc: Loc = (*node.loc, key, number)
        other = names.find(ref.step, node.dish, loc)
        if isinstance(other, Problem):
            problems.append(other)
        elif other is node:
            problems.append(
                Problem("P10", f"{node.name!r} waits for itself", "Name the step it really follows.", loc)
            )
        elif ref.at_most is not None and ref.at_most < ref.at_least:
            problems.append(
                Problem(
                    "P11",
                    f"at most {ref.at_most} min is less than at least {ref.at_least} min",
                    "Swap the two.",
                    loc,
                )
            )
        else:
            found.append((ref, other))
    return found


def _link(ref: Ref, first: Node, second: Node) -> Link:
    if ref.at_once:
        return Link(first.id, second.id, ref.at_least, ref.at_least, firm=True)
    # A limit on waiting bends at a price, as a keeping limit does; the order itself never does.
    return Link(first.id, second.id, ref.at_least, ref.at_most)


def _link_chain(chain: list[Node], names: _Names, linked: Linked, problems: list[Problem]) -> None:
    for previous, node in zip([None, *chain], chain, strict=False):
        assert node.work is not None
        if node.work.after is not None:
            linked.links += [
                _link(ref, other, node)
                for ref, other in _refs(node.work.after, node, "after", names, problems)
            ]
        elif previous is not None:
            linked.links.append(Link(previous.id, node.id))
        for ref, other in _refs(node.work.before or [], node, "before", names, problems):
            linked.links.append(_link(ref, node, other))


def _link_courses(plan: Plan, linked: Linked, chains: list[list[Node]]) -> None:
    """Every dish's last steps lead to its course's serving; guests and courses follow one another."""
    followed = {(link.first) for link in linked.links if linked.nodes[link.second].kind == "step"}
    for chain in chains:
        for node in chain:
            if node.id not in followed:
                linked.links.append(Link(node.id, serve_id(node.course or "")))
    first_seated = next((c for c in plan.courses if not c.standing), None)
    linked.links.append(Link("guests-arrive", serve_id(plan.courses[0].course)))
    if first_seated is not None:
        linked.links.append(Link("guests-arrive", "guests-to-the-table"))
        linked.links.append(Link("guests-to-the-table", serve_id(first_seated.course), 0, 10))
    for course, following in zip(plan.courses, [*plan.courses[1:], None], strict=True):
        eaten = eaten_minutes(course)
        linked.links.append(Link(serve_id(course.course), clear_id(course.course), eaten))
        if following is not None and not course.standing:
            linked.links.append(Link(clear_id(course.course), serve_id(following.course)))
        elif following is not None:
            target = "guests-to-the-table" if following is first_seated else serve_id(following.course)
            linked.links.append(Link(serve_id(course.course), target, eaten))


EATEN_MINUTES = 25  # a course at the table; common practice, no source


def eaten_minutes(course: Course) -> int:
    """How long a course is likely to be eaten; assumed where the plan is silent."""
    return course.eaten_in.likely if course.eaten_in else EATEN_MINUTES


def _link_job(node: Node, names: _Names, linked: Linked, problems: list[Problem]) -> None:
    assert node.work is not None
    for ref, other in _refs(node.work.after or [], node, "after", names, problems):
        linked.links.append(_link(ref, other, node))
    before = node.work.before
    if before is None and node.work.after is None and node.work.not_before is None:
        linked.links.append(Link(node.id, "guests-arrive", firm=False))
    for ref, other in _refs(before or [], node, "before", names, problems):
        made = _link(ref, node, other)
        # The guests come when they come: being ready for them can fail, so it may bend.
        linked.links.append(Link(made.first, made.second, made.least, made.most, firm=other.kind != "arrive"))


def _cycle(linked: Linked) -> list[Problem]:
    sorter: TopologicalSorter[str] = TopologicalSorter({id_: set() for id_ in linked.nodes})
    for each in linked.links:
        sorter.add(each.second, each.first)
    try:
        sorter.prepare()
    except CycleError as wrong:
        ring: list[str] = wrong.args[1]
        words = " → ".join(repr(linked.nodes[id_].name) for id_ in ring)
        return [
            Problem(
                "P12",
                f"these wait for one another in a ring: {words}",
                "Take out one of the `after` or `before` lines.",
                linked.nodes[ring[0]].loc,
            )
        ]
    return []


def _uses(plan: Plan, node: Node, work: Work) -> list[Problem]:
    """Names of ovens, tools and hands that the plan does not have."""
    problems: list[Problem] = []
    ways: list[tuple[Way, Loc]] = [
        (work, node.loc),
        *((way, (*node.loc, "or", n)) for n, way in enumerate(work.or_)),
    ]
    for way, loc in ways:
        if way.on is not None:
            problems += _station(plan, way.on, (*loc, "on"), cooking=True)
        if way.keeps is not None:
            problems += _station(plan, way.keeps.where, (*loc, "keeps"), cooking=False)
    if work.takes is None:
        if node.kind == "step":
            problems.append(
                Problem(
                    "P06",
                    "a step needs `takes`, which is missing",
                    "Add how long it takes, for example `takes: 25 min`.",
                    node.loc,
                )
            )
    for name in work.who or []:
        if name not in plan.hands:
            problems.append(
                Problem(
                    "P08",
                    f"{name!r} is nobody among the hands.{near(name, plan.hands)}",
                    "Name one of the `hands`, or add them there.",
                    (*node.loc, "who"),
                )
            )
    return problems


def _station(plan: Plan, station: Station, loc: Loc, *, cooking: bool) -> list[Problem]:
    problems = []
    kitchen = plan.kitchen
    if station.oven is not None and station.oven not in kitchen.ovens:
        known = [*LANES, "freezer", *([] if cooking else ["room", "hot"]), *kitchen.ovens]
        problems.append(
            Problem(
                "P08",
                f"{station.oven!r} is neither a lane nor an oven of this kitchen.{near(station.oven, known)}",
                f"Start with one of {', '.join(known)}.",
                loc,
            )
        )
    elif station.place == "oven" and station.heat is None:
        problems.append(
            Problem(
                "P06", "an oven needs its setting", "Write, for example, `oven at 180 C (170 to 190 C)`.", loc
            )
        )
    if cooking and station.place in ("room", "hot"):
        problems.append(
            Problem(
                "P07",
                f"{station.place!r} is no lane to work in",
                f"Start with one of {', '.join(LANES)} or freezer.",
                loc,
            )
        )
    for tool in station.tools:
        if tool not in kitchen.tools:
            problems.append(
                Problem(
                    "P08",
                    f"the kitchen has no tool called {tool!r}.{near(tool, kitchen.tools)}",
                    "Add it under kitchen: tools, with how many there are.",
                    loc,
                )
            )
    return problems


def _course_times(plan: Plan) -> list[Problem]:
    problems = []
    seen: dict[str, int] = {}
    for c, course in enumerate(plan.courses):
        loc: Loc = ("courses", c, "course")
        if slug(course.course) in seen:
            problems.append(
                Problem("P04", f"two courses are called {course.course!r}", "Give each its own name.", loc)
            )
        after = course.at.after
        if after is not None and after.course_before and c == 0:
            problems.append(
                Problem(
                    "P08",
                    "the first course has none before it",
                    "Write a time, or `10 min after guests arrive`.",
                    ("courses", c, "at"),
                )
            )
        if after is not None and after.course is not None and slug(after.course) not in seen:
            problems.append(
                Problem(
                    "P08",
                    f"no course before this one is called {after.course!r}.{near(after.course, [x.course for x in plan.courses[:c]])}",
                    "Name an earlier course.",
                    ("courses", c, "at"),
                )
            )
        seen[slug(course.course)] = c
    return problems
