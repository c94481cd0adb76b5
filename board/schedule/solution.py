"""What a solver says of a problem: whole minutes, and how sure it is. Solver-free."""

from dataclasses import dataclass

# The aims in strict order: each is minimised before the next is considered.
AIMS = (
    *("hours", "clocks", "courses", "keeps", "outside", "freshness", "usual"),
    *("table", "company", "rest", "day", "spread", "busiest", "give"),
)


COSTLY = AIMS[:4]  # what a sound plan brings to zero
OUTSIDE = "outside"  # how far work lies out of its hours; nought wherever `hours` is
SPARED = (*COSTLY, "spared")  # and then as little as possible of one pair of hands


@dataclass(frozen=True, slots=True)
class AimResult:
    """One aim: its value and the proved lower bound, in its own unit (minutes, weighted; of clocks: dishes).
    `searched`: there was time to look into it at all; without, `value` is only at the most so much."""

    aim: str
    value: int
    bound: int
    searched: bool = True

    @property
    def proved(self) -> bool:
        return self.value <= self.bound


@dataclass(frozen=True, slots=True)
class Solution:
    """For each job of the problem: its start, its way (index into ways) and all who do it (empty: nobody needed).

    `kept` is false if its result went without the place it should be kept in.
    """

    starts: tuple[int, ...]
    ways: tuple[int, ...]
    who: tuple[tuple[int, ...], ...]
    kept: tuple[bool, ...]
    aims: tuple[AimResult, ...]
    seconds: float

    @property
    def proved(self) -> bool:
        return all(aim.proved for aim in self.aims)

    @property
    def gap(self) -> float:
        """The largest unproved share of any aim, 0 to 1."""
        return max((1 - aim.bound / aim.value for aim in self.aims if not aim.proved and aim.value), default=0.0)
