"""Temperatures and rules as a snag tells them: both units, the plan's own first. Pure."""

from board.base import words as shared
from board.facts.limits import Degrees
from board.facts.rule_set import RuleSet
from board.facts.rule_sets import rule_set
from board.plan.load import PlanFile
from board.plan.resolve.unit import writes_fahrenheit


class Figures:
    """Tells the figures of one plan."""

    def __init__(self, file: PlanFile) -> None:
        self.rules: RuleSet = rule_set(file.plan.rules)
        self.fahrenheit = writes_fahrenheit(file.places.lines)

    def degrees(self, celsius: float) -> str:
        """What the host wrote."""
        return shared.degrees(celsius, self.fahrenheit)

    def limit(self, limit: Degrees) -> str:
        """A limit, as its code writes it in each unit."""
        in_c, in_f = f"{limit.celsius:g} °C", f"{limit.fahrenheit:g} °F"
        return f"{in_f} ({in_c})" if self.fahrenheit else f"{in_c} ({in_f})"

    def asks(self, what: str, source: str = "") -> str:
        """`home rules (…) ask for 74 °C (165 °F)`; a source in brackets, where the finding has none of its own."""
        return f"{self.rules.title} ask for {what}" + (f" [{source}]" if source else "")
