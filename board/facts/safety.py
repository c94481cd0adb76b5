"""How far a reading is from its target, by the pairs of figures in the rule sets. Pure. °C."""

from functools import cache

from board.facts.limits import EXACT
from board.facts.rule_sets import DEFAULT_RULES, RULE_SET_NAMES, rule_set

HOT_HOLDING_CELSIUS = round(rule_set(DEFAULT_RULES).hot_holding.celsius)


def lacking(celsius: float, wanted: float, *, cooling: bool = False) -> float:
    """°C by which a reading falls short of its target (or exceeds it when cooling); 0 once reached.

    Compared before rounding; only pairs that a code itself equates count as equal.
    """
    same = _figures_of_the_same_limit(wanted)
    if cooling:
        return max(0.0, celsius - wanted) if celsius > max(same) + EXACT else 0.0
    return max(0.0, wanted - celsius) if celsius < min(same) - EXACT else 0.0


@cache
def _figures_of_the_same_limit(wanted: float) -> tuple[float, ...]:
    """The figure, and those a rule set writes beside it: 74 °C for 165 °F."""
    limits = [limit.figures for name in RULE_SET_NAMES for limit in rule_set(name).every_limit()]
    beside = [both for both in limits if any(abs(figure - wanted) <= EXACT for figure in both)]
    return (wanted, *(figure for both in beside for figure in both))
