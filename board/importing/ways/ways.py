"""A dish's words → the ways of cooking that fit, and a dish of a plan written by one. Pure; common practice, no source.

What a pattern fills in stands under the step's `guessed`.
"""

from dataclasses import dataclass

from board.plan.edit.yaml_text import scalar


@dataclass(frozen=True)
class Setting:
    """How many eat, and the cooking equipment."""

    eaters: int
    ovens: int
    rings: int


@dataclass(frozen=True)
class Way:
    """A way of cooking. `name` in the host's words ("braised"); `course`: where such a dish usually stands in a meal
    ("nibbles", "starter", "main", "side", "cheese", "sweet", "drink")."""

    name: str
    course: str


def ways_for(dish: str) -> tuple[Way, ...]:
    """The ways that fit a dish's words, the most telling first; none where it says nothing of how it is made."""
    return ()


def all_ways() -> tuple[Way, ...]:
    """Every way, for a host to choose from, in the order of a meal."""
    return ()


def dish_lines(dish: str, way: Way | None, at: Setting) -> list[str]:
    """The dish as YAML lines of a plan, without indent, from `- dish:` on. No way: a bare dish that says so."""
    return [
        f"- dish: {scalar(dish)}",
        f"  for: {at.eaters}",
        "  steps:",
        f"    - step: {scalar(f'make the {dish}')}",
        "      takes: 30 min  # nothing is known of how it is made: write its steps",
        "      guessed: [takes]",
    ]
