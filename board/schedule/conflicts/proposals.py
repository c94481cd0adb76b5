"""All that might remove the clashes behind what a plan gives up, the lightest first. Pure."""

from collections.abc import Iterator

from board.plan.edit.edits import Edit
from board.schedule.conflicts import by_course, by_hands, by_kitchen
from board.schedule.conflicts.proposal import Case, Clashed, Proposal


def proposals(case: Case) -> list[Proposal]:
    """Each only once."""
    found: dict[tuple[Edit, ...], Proposal] = {}
    for clashed in _each(case):
        for kind in (by_hands, by_kitchen, by_course):
            for proposal in kind.proposed(clashed):
                found.setdefault(proposal.edits, proposal)
    return sorted(found.values(), key=lambda proposal: proposal.weight)


def _each(case: Case) -> Iterator[Clashed]:
    for violation, clashes in case.clashes.items():
        yield from (Clashed(case, violation, clash) for clash in clashes)
