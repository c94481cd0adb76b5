"""Published scheduling problems, read from `data/` and entered as plans. Where each comes from: `data/SOURCES.md`.

Machines and resources are tools, operations are steps that need nobody, and everything leads to one course wanted the
moment the kitchen opens: so the course is late by the length of the whole schedule. A schedule timed backwards is the
problem mirrored in time, whose optimum is the same.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

DATA = Path(__file__).parent / "data"


@dataclass(frozen=True)
class Operation:
    """What it is called, how long it takes, so much of each resource, and what it follows (by place in the problem)."""

    name: str
    minutes: int
    uses: dict[str, int]
    follows: tuple[int, ...]


@dataclass(frozen=True)
class Problem:
    """Operations in an order in which each stands after what it follows, and how much there is of each resource."""

    operations: tuple[Operation, ...]
    capacity: dict[str, int]
    optimum: int

    def mirrored(self) -> "Problem":
        """The same problem with time running the other way."""
        last = len(self.operations) - 1
        then: dict[int, list[int]] = {n: [] for n in range(last + 1)}
        for n, operation in enumerate(self.operations):
            for first in operation.follows:
                then[first].append(last - n)
        turned = [Operation(o.name, o.minutes, o.uses, tuple(sorted(then[n]))) for n, o in enumerate(self.operations)]
        return Problem(tuple(turned[::-1]), self.capacity, self.optimum)

    def with_plenty(self, optimum: int) -> "Problem":
        """The same operations with nothing scarce, and the optimum published for that."""
        total = {name: sum(o.uses.get(name, 0) for o in self.operations) for name in self.capacity}
        return Problem(self.operations, total, optimum)


def job_shop(name: str) -> Problem:
    """One of `job_shops.txt`: every machine does one operation at a time, a job's operations follow one another."""
    lines = [line for line in (DATA / "job_shops.txt").read_text().splitlines() if not line.startswith("#")]
    begin, optimum = next((n, int(line.split()[1])) for n, line in enumerate(lines) if line.split()[0] == name)
    operations: list[Operation] = []
    for job, line in enumerate(lines[begin + 1 :]):
        if not line.startswith(" "):
            break
        numbers = [int(piece) for piece in line.split()]
        for step, (machine, minutes) in enumerate(zip(numbers[::2], numbers[1::2], strict=True)):
            before = (len(operations) - 1,) if step else ()
            operations.append(Operation(f"j{job} o{step}", minutes, {f"m{machine}": 1}, before))
    machines = sorted({machine for operation in operations for machine in operation.uses})
    return Problem(tuple(operations), dict.fromkeys(machines, 1), optimum)


def j301_1() -> Problem:
    """PSPLIB's first problem of thirty activities; its first and last activity last no time and take nothing."""
    sections = re.split(r"\*+\n", (DATA / "j301_1.sm").read_text())
    body = {section.partition(":")[0]: section.splitlines()[1:] for section in sections}
    arcs = [[int(piece) for piece in line.split()] for line in body["PRECEDENCE RELATIONS"][1:]]
    requests = [[int(piece) for piece in line.split()] for line in body["REQUESTS/DURATIONS"][2:]]
    names = [f"r{n}" for n in range(1, len(requests[0]) - 2)]
    capacity = dict(zip(names, (int(piece) for piece in body["RESOURCEAVAILABILITIES"][1].split()), strict=True))
    operations = [
        Operation(
            f"activity {number}",
            minutes,
            {name: amount for name, amount in zip(names, amounts, strict=True) if amount},
            tuple(arc[0] - 1 for arc in arcs if number in arc[3:]),
        )
        for number, _, minutes, *amounts in requests
    ]
    return Problem(tuple(operations), capacity, optimum=43)


def as_plan(problem: Problem, minutes_before: int = 0) -> str:
    """The problem as a plan whose kitchen opens so many minutes before its one course is wanted, at 18:00."""
    opens = 18 * 60 - minutes_before
    tools = ", ".join(f"{name}: {count}" for name, count in problem.capacity.items())
    return (
        "event: Published problem\ndate: 2026-06-06\nzone: UTC\narrive: 18:00\nguests: [6 guests]\n"
        f"kitchen: {{tools: {{{tools}}}}}\n"
        f"hands: {{host: {{hours: {{on the day: '{opens // 60:02d}:{opens % 60:02d} - 23:59'}}}}}}\n"
        "courses:\n  - course: All\n    at: 18:00\n    standing: yes\n    serve: 0 min\n    clear: 0 min\n"
        "    dishes:\n      - dish: all of it\n        steps:\n"
        + "".join(_step(problem.operations, operation) for operation in problem.operations)
    )


def _step(operations: Sequence[Operation], operation: Operation) -> str:
    on = "".join(f", {count} {name}" for name, count in operation.uses.items())
    after = ", ".join(operations[first].name for first in operation.follows)
    return (
        f"          - {{step: {operation.name}, where: 'worktop{on}', takes: {operation.minutes} min, attended: none, "
        f"keeps: 9 days in the room, after: {f'[{after}]' if after else 'nothing'}}}\n"
    )
