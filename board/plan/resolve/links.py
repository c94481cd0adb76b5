"""The work of a plan as nodes, and the precedence links between them. Pure.

Steps of a dish follow one another as written unless `after` says otherwise. The program adds its own nodes: guests
arrive, guests to the table, serving and clearing of each course, and washing-up.
"""

from collections import Counter
from collections.abc import Iterable
from graphlib import CycleError, TopologicalSorter

from board.plan.model.model import Plan
from board.plan.model.work import Job, Ref, Work
from board.plan.phrases.durations import Attention, Spread, short
from board.plan.phrases.phrase import meant_by, near
from board.plan.phrases.stations import Station
from board.plan.places import Loc
from board.plan.resolve.absences import away_faults
from board.plan.resolve.beside import waits_beside
from board.plan.resolve.course_times import EATEN_MINUTES as EATEN_MINUTES  # re-exported, as what is `X as X` below
from board.plan.resolve.course_times import course_times
from board.plan.resolve.course_times import eaten_minutes as eaten_minutes
from board.plan.resolve.dish_names import OWN_NAME, dish_names
from board.plan.resolve.fault import Fault as Fault
from board.plan.resolve.fault import name_key as name_key
from board.plan.resolve.fault import slug as slug
from board.plan.resolve.laying import wash_ups
from board.plan.resolve.nodes import ARRIVE, SEAT, Kind
from board.plan.resolve.nodes import Link as Link
from board.plan.resolve.nodes import Linked as Linked
from board.plan.resolve.nodes import Node as Node
from board.plan.resolve.nodes import clear_id as clear_id
from board.plan.resolve.nodes import is_written as is_written
from board.plan.resolve.nodes import serve_id as serve_id
from board.plan.resolve.pouring import pouring_jobs
from board.plan.resolve.trips import trip_jobs
from board.plan.resolve.uses import uses
from board.plan.resolve.usual_hours import usual_hours
from board.plan.resolve.washing_up import clear_down_jobs, wash_tools


def labels(nodes: Iterable[Node]) -> dict[str, str]:
    """Name of each node on sheet and board, by id; the dish is added if names clash."""
    nodes = list(nodes)
    counted = Counter(name_key(node.name) for node in nodes)
    return {
        node.id: f"{node.name} in {node.dish}" if node.dish and counted[name_key(node.name)] > 1 else node.name
        for node in nodes
    }


def link(plan: Plan) -> tuple[Linked, list[Fault]]:
    """All nodes and links; and faults: dangling references, cycles, names the kitchen lacks."""
    linked = Linked()
    problems: list[Fault] = []
    chains = _add_nodes(plan, linked)
    names = Names(linked)
    for chain in chains:
        _link_chain(chain, names, linked, problems)
    linked.links += waits_beside(plan, chains, linked)
    _link_courses(plan, linked, chains)
    for node in [n for n in linked.nodes.values() if n.kind == "job"]:
        assert node.work is not None
        _link_work(node, node.work, names, linked, problems)
    _add_wash_ups(plan, linked)
    usual_hours(plan, linked)
    times = course_times(plan)
    if all(problem.code != "plan 4" for problem in times):  # two courses of one name would look like a cycle
        problems += _cycle(linked)
    problems += [
        p
        for node in linked.nodes.values()
        if node.work
        for p in uses(plan, node.loc, node.work, is_step=node.kind == "step")
    ]
    problems += _rests_of_nothing(linked)
    problems += [*times, *dish_names(plan), *away_faults(plan)]
    if not problems:
        wash_tools(plan, linked)
    return linked, problems


_OWN_WORDS = {"serve", "clear", "jobs"}  # first parts of the program's own ids


def _add_nodes(plan: Plan, linked: Linked) -> list[list[Node]]:
    """Adds every node; returns the steps of each dish as a chain."""

    def add(base: str, kind: Kind, name: str, loc: Loc, *work: Work | str | None) -> Node:
        unique, number = base, 2
        while unique in linked.nodes:
            unique, number = f"{base}-{number}", number + 1
        linked.nodes[unique] = Node(unique, kind, name, loc, *work)  # type: ignore[arg-type]  # in its order
        return linked.nodes[unique]

    add("guests-arrive", "arrive", ARRIVE, ("arrive",))
    first = next((course for course in plan.courses if not course.standing), None)
    if first is not None:
        add("guests-to-the-table", "seat", SEAT, ("courses",), None, None, first.course)
    chains = []
    for c, course in enumerate(plan.courses):
        loc: Loc = ("courses", c)
        for d, dish in enumerate(course.dishes):
            base = slug(dish.dish) + ("-dish" if slug(dish.dish) in _OWN_WORDS else "")
            chain = []
            for s, step in enumerate(dish.steps):
                at: Loc = (*loc, "dishes", d, "steps", s)
                chain.append(add(f"{base}/{slug(step.step)}", "step", step.step, at, step, dish.dish, course.course))
            chains.append(chain)
        add(serve_id(course.course), "serve", f"serve {course.course}", loc, None, None, course.course)
        add(clear_id(course.course), "clear", f"clear {course.course}", loc, None, None, course.course)
    jobs: list[tuple[Loc, Job]] = [(("jobs", j), job) for j, job in enumerate(plan.jobs)]
    for at, job in (*jobs, *trip_jobs(plan), *pouring_jobs(plan), *clear_down_jobs(plan)):
        add(f"jobs/{slug(job.job)}", "job", job.job, at, job)
    return chains


WORDS_LONGEST = 300  # limit of a plan's own words


def _add_wash_ups(plan: Plan, linked: Linked) -> None:
    """A job for each wash-up: after the course that used the pieces is cleared, before serving the one that needs
    them."""
    if plan.table is None or not plan.table.wash_between:
        return
    for up in wash_ups(plan):
        used, needed = plan.courses[up.after].course, plan.courses[up.before].course
        base = f"jobs/wash-up-of-{slug(used)}-for-{slug(needed)}"
        id_ = next(i for i in (base, *(f"{base}-{n}" for n in range(2, 10_000))) if i not in linked.nodes)
        job = Job(
            job=up.name,
            where=Station(place="worktop"),
            takes=Spread(low=up.minutes, likely=up.minutes, high=up.minutes),
            attended=Attention(whole=True),
            after=[Ref(step=f"clear {used}"[:WORDS_LONGEST])],
            before=[Ref(step=f"serve {needed}"[:WORDS_LONGEST])],
        )
        linked.nodes[id_] = Node(id_, "job", up.name, ("table", "wash between"), job)
        linked.links += [Link(clear_id(used), id_), Link(id_, serve_id(needed))]


class Names:
    """Finds a node by the host's words: first in the same dish, then anywhere if the name is unique."""

    def __init__(self, linked: Linked) -> None:
        self.nodes = linked.nodes
        self.by_name: dict[str, list[Node]] = {}
        for node in linked.nodes.values():
            keys = {node.name, f"{node.name} in {node.dish}"} if node.dish else {node.name}
            for key in keys:
                self.by_name.setdefault(name_key(key), []).append(node)

    def find(self, words: str, dish: str | None, loc: Loc) -> Node | Fault:
        found = self.by_name.get(name_key(words), [])
        here = [node for node in found if node.dish == dish]
        if len(found) > 1 and len(here) == 1:
            found = here
        if len(found) == 1:
            return found[0]
        if found:
            options = dict.fromkeys(f"{n.name} in {n.dish}" for n in found if n.dish)
            apart = len({option.casefold() for option in options}) > 1  # `bake` and `Bake` are one name
            mend = f"Write {' or '.join(repr(o) for o in options)}." if apart else OWN_NAME
            return Fault("plan 9", f"{words!r} is the name of {len(found)} pieces of work", mend, loc)
        known = [n.name if " in " not in words or not n.dish else f"{n.name} in {n.dish}" for n in self.nodes.values()]
        mend = "Write the other step's words as they stand in the plan."
        message = f"no step or job is called {words!r}.{near(words, known)}"
        return Fault("plan 8", message, mend, loc, (words, meant_by(words, known)))


_Found = list[tuple[Ref, Node]]


def _refs(refs: list[Ref], node: Node, key: str, names: Names, problems: list[Fault]) -> _Found:
    found: _Found = []
    for number, ref in enumerate(refs):
        if name_key(ref.step) == "nothing":
            continue
        loc: Loc = (*node.loc, key, number)
        other = names.find(ref.step, node.dish, loc)
        if isinstance(other, Fault):
            problems.append(other)
        elif other is node:
            mend = "Name the step it really follows."
            problems.append(Fault("plan 10", f"{node.name!r} waits for itself", mend, loc))
        elif ref.at_most is not None and ref.at_most < ref.at_least:
            message = f"at most {short(ref.at_most)} is less than at least {short(ref.at_least)}"
            problems.append(Fault("plan 11", message, "Swap the two.", loc))
        else:
            found.append((ref, other))
    return found


def _rests(node: Node) -> bool:
    """Whether it rests in a switched-off oven, which only food just baked there can do."""
    return node.work is not None and any(way.where is not None and way.where.off for way in (node.work, *node.work.or_))


def _bakes(node: Node) -> bool:
    """Whether any of its ways uses a hot oven for any time at all."""
    if node.work is None:
        return False
    for way in (node.work, *node.work.or_):
        on, takes = way.where or node.work.where, way.takes or node.work.takes
        if on is not None and on.place == "oven" and not on.off and (takes is None or takes.likely > 0):
            return True
    return False


def _link(ref: Ref, first: Node, second: Node) -> Link:
    if ref.at_once or (_rests(second) and _bakes(first) and not ref.order_only):
        return Link(first.id, second.id, ref.at_least, ref.at_least, firm=True, takes_up=not ref.order_only)
    # A limit on waiting can be relaxed at a price, like a shelf life; the order itself never. Exception: guests come
    # when they come, so being ready for them may fail.
    return Link(
        first.id, second.id, ref.at_least, ref.at_most, firm=second.kind != "arrive", takes_up=not ref.order_only
    )


def _link_chain(chain: list[Node], names: Names, linked: Linked, problems: list[Fault]) -> None:
    for previous, node in zip([None, *chain], chain, strict=False):
        assert node.work is not None
        if node.work.after is None and previous is not None:
            linked.links.append(_link(Ref(step=previous.name), previous, node))
        _link_work(node, node.work, names, linked, problems)


def _link_work(node: Node, work: Work, names: Names, linked: Linked, problems: list[Fault]) -> None:
    """The links that a step or job asks for by name."""
    for ref, other in _refs(work.after or [], node, "after", names, problems):
        linked.links.append(_link(ref, other, node))
    for ref, other in _refs(work.before or [], node, "before", names, problems):
        linked.links.append(_link(ref, node, other))


def _link_courses(plan: Plan, linked: Linked, chains: list[list[Node]]) -> None:
    """Links the last steps of each course to its serving, and guests and courses to one another."""
    nodes = linked.nodes
    followed = {
        k.first for k in linked.taken_up if nodes[k.second].dish and nodes[k.second].course == nodes[k.first].course
    }
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


def _cycle(linked: Linked) -> list[Fault]:
    sorter: TopologicalSorter[str] = TopologicalSorter({id_: set() for id_ in linked.nodes})
    for each in linked.links:
        sorter.add(each.second, each.first)
    try:
        sorter.prepare()
    except CycleError as wrong:
        ring = [linked.nodes[id_] for id_ in wrong.args[1]]
        words = " → ".join(repr(node.name) for node in ring)
        spot = next((node for node in ring if node.work), ring[0])
        mend = "Take out one of the `after` or `before` lines."
        return [Fault("plan 12", f"these wait for one another in a ring: {words}", mend, spot.loc)]
    return []


def _rests_of_nothing(linked: Linked) -> list[Fault]:
    """Rests in a switched-off oven that do not directly follow exactly one bake of their own."""
    problems = []
    resting: dict[str, str] = {}  # bake → its rest
    for node in linked.nodes.values():
        if not _rests(node):
            continue
        bakes = [k for k in linked.taken_up if k.second == node.id and _bakes(linked.nodes[k.first])]
        mend = "Write it right after the one step it follows in that oven, or name that step under `after`."
        what = "" if len(bakes) == 1 else "follows nothing baked" if not bakes else "follows several things baked"
        if len(bakes) == 1 and bakes[0].least:
            what, mend = "waits after its bake", "It follows its bake at once: leave out `at least`."
        elif len(bakes) == 1 and bakes[0].first in resting:
            what = f"so does {resting[bakes[0].first]!r} after the same bake"
            mend = "One bake has one rest in its oven: make one step of the two."
        if what:
            message = f"{node.name!r} stands in an oven that is switched off, and {what}"
            problems.append(Fault("plan 14", message, mend, (*node.loc, "where")))
        resting.update({k.first: node.name for k in bakes})
    return problems
