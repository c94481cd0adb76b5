"""The textbook critical path, and random networks against networkx, through plan, timetable and give.

Source: Taylor, *Introduction to Management Science*, ch. 8 (arcs node–node with durations; ES, EF, LS, LF; T = 20).
"""

from collections.abc import Callable
from datetime import UTC, datetime

import networkx as nx
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from board.plan.load import PlanFile
from board.schedule.problem import Job, Order, Problem, Serving, Way
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from tests.examples import times

# arc: duration, ES, EF, LS, LF
TABLE = {
    "1-2": (7, 0, 7, 2, 9),
    "1-3": (10, 0, 10, 0, 10),
    "2-4": (6, 7, 13, 9, 15),
    "3-4": (5, 10, 15, 10, 15),
    "3-5": (4, 10, 14, 14, 18),
    "4-5": (3, 15, 18, 15, 18),
    "5-6": (2, 18, 20, 18, 20),
}
LENGTH = 20


def as_plan(*, mirrored: bool) -> str:
    """One dish whose steps are the arcs; an arc follows every arc that ends where it begins (or the mirror of that)."""
    steps = []
    order = sorted(TABLE, reverse=mirrored)
    for arc in order:
        begin, end = arc.split("-")
        before = [
            other for other in order if (other.split("-")[0] == end if mirrored else other.split("-")[1] == begin)
        ]
        after = "[" + ", ".join(f"'{b}'" for b in before) + "]" if before else "nothing"
        steps.append(
            f"          - {{step: '{arc}', takes: {TABLE[arc][0]} min, attended: none, keeps: 9 days in the room, after: {after}}}\n"
        )
    return (
        "event: Network\ndate: 2026-06-06\nzone: UTC\narrive: 18:00\nguests: [2 guests]\n"
        "hands: {host: {hours: {on the day: '18:00 - 23:00'}}}\n"
        "courses:\n  - course: All\n    at: 18:00\n    standing: yes\n    serve: 0 min\n    clear: 0 min\n    dishes:\n"
        "      - dish: net\n        steps:\n" + "".join(steps)
    )


def latest_starts(plan: PlanFile) -> tuple[int, dict[str, int]]:
    """How late the course goes out, and each step's latest start: its start and its give. Minutes."""
    sheet = make_sheet(plan, solve)
    begins = min(slot.start for slot in sheet.slots if slot.kind == "arrive")
    found = {
        slot.name: round((slot.start - begins).total_seconds() / 60) + (slot.give_minutes or 0)
        for slot in sheet.slots
        if slot.kind == "step"
    }
    return sheet.courses[0].late_minutes, found


def test_the_textbook_table(plan_from: Callable[[str], PlanFile]) -> None:
    late, latest = latest_starts(plan_from(as_plan(mirrored=False)))
    mirrored_late, mirrored = latest_starts(plan_from(as_plan(mirrored=True)))

    assert late == mirrored_late == LENGTH
    for arc, (duration, earliest_start, earliest_finish, latest_start, latest_finish) in TABLE.items():
        assert latest[arc] == latest_start
        assert latest[arc] + duration == latest_finish
        # The latest start in the mirrored network is the earliest finish in this one, counted from the other end.
        assert LENGTH - mirrored[arc] == earliest_finish
        assert LENGTH - mirrored[arc] - duration == earliest_start


@st.composite
def networks(draw: st.DrawFn) -> tuple[list[int], list[tuple[int, int, int]]]:
    lengths = draw(st.lists(st.integers(0, 40), min_size=1, max_size=14))
    pairs = [(a, b) for b in range(len(lengths)) for a in range(b)]
    chosen = draw(st.lists(st.sampled_from(pairs), unique=True, max_size=30)) if pairs else []
    return lengths, [(a, b, draw(st.integers(0, 15))) for a, b in chosen]


@settings(max_examples=times(50), deadline=None)
@given(network=networks())
def test_without_limits_a_course_is_as_late_as_the_longest_path(
    network: tuple[list[int], list[tuple[int, int, int]]],
) -> None:
    """Oracle: networkx's longest path on the same network."""
    lengths, arcs = network
    jobs = [Job(str(n), (Way(0, "worktop", minutes, ()),), ()) for n, minutes in enumerate(lengths)]
    end = len(jobs)
    jobs.append(Job("serve", (Way(0, "front-of-house", 0, ()),), ()))
    orders = [Order(a, b, least, None, True) for a, b, least in arcs]
    orders += [Order(n, end, 0, None, True) for n in range(end)]
    problem = Problem(
        origin=datetime(2026, 1, 1, tzinfo=UTC),
        horizon=2000,
        jobs=tuple(jobs),
        orders=tuple(orders),
        resources=(),
        ovens=(),
        hands=(),
        servings=(Serving("all", end, 0, 0),),
    )
    graph = nx.DiGraph()
    graph.add_edges_from((a, b, {"weight": lengths[a] + least}) for a, b, least in arcs)
    graph.add_edges_from((n, end, {"weight": minutes}) for n, minutes in enumerate(lengths))

    solution = solve(problem, aims=("hours", "courses"))

    assert solution.starts[end] == nx.dag_longest_path_length(graph)
    assert solution.proved


def test_a_network_with_a_ring_is_refused_by_name(plan_from: Callable[[str], PlanFile]) -> None:
    text = as_plan(mirrored=False).replace("after: nothing", "after: '5-6'", 1)

    with pytest.raises(AssertionError, match=r"ring: .*'1-2' → .*'1-2'|ring: "):
        plan_from(text)
