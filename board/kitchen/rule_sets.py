"""Stand-in until the rule sets land."""

from board.kitchen.rule_set import RuleSet

DEFAULT_RULES = "home"
RULE_SET_NAMES = ("home", "retail")


def rule_set(name: str) -> RuleSet:
    return RuleSet(name)
