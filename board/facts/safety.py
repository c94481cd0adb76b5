"""What a reading lacks of what is wanted, by the pairs of figures the rule sets write. °C."""

from functools import cache

from board.facts.limits import EXACT
from board.facts.rule_sets import DEFAULT_RULES, RULE_SET_NAMES, rule_set

HOT_HOLDING_CELSIUS = round(rule_set(DEFAULT_RULES).hot_holding.celsius)


def lacking(celsius: float, wanted: float, *, cooling: bool = False) -> float:
    """°C by which a reading falls short of what is wanted (above it, for what cools); 0 when it is there.

    Weighed before anything is rounded; only the pairs a code itself writes as the same count as the same.
    """
    same = _figures_of_the_same_limit(wanted)
    if cooling:
        return max(0.0, celsius - wanted) if celsius > max(same) + EXACT else 0.0
    return max(0.0, wanted - celsius) if celsius < min(same) - EXACT else 0.0


@cache
def _figures_of_the_same_limit(wanted: float) -> tuple[float, ...]:
    """The figure itself, and those some rule set writes beside it: 74 °C for 165 °F."""
    limits = [limit.figures for name in RULE_SET_NAMES for limit in rule_set(name).every_limit()]
    beside = [both for both in limits if any(abs(figure - wanted) <= EXACT for figure in both)]
    return (wanted, *(figure for both in beside for figure in both))
