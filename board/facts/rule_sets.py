"""The available rule sets: each file in `board/facts/rules/` is one, found by its name."""

import pkgutil
from functools import cache
from importlib import import_module

from board.facts import rules
from board.facts.rule_set import RuleSet

RULE_SET_NAMES: tuple[str, ...] = tuple(sorted(module.name for module in pkgutil.iter_modules(rules.__path__)))
DEFAULT_RULES = "home"


@cache
def rule_set(name: str) -> RuleSet:
    """The rule set of that name. Raises KeyError if there is none."""
    if name not in RULE_SET_NAMES:
        raise KeyError(name)
    found = import_module(f"{rules.__name__}.{name}").RULES
    assert isinstance(found, RuleSet), name
    return found
