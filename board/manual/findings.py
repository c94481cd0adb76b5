"""Findings of `check` as the manual tells them: what each says from the table of findings, what stands behind it from
the docstrings of the checks, which begin with its name, and what they stand on from the facts themselves."""

import functools
import inspect
import re
from collections.abc import Iterator, Mapping

from board.checks.allergens.guest_snags import guests_can_eat_what_they_are_served
from board.checks.plan import every as plan_checks
from board.checks.plan.guesses import guesses_are_confirmed
from board.checks.sheet import every as sheet_checks
from board.facts import faults
from board.facts.poisons import POISONS
from board.facts.rule_set import RuleSet
from board.facts.rule_sets import RULE_SET_NAMES, rule_set
from board.manual import pages, words
from board.plan.findings import FINDINGS, ROOMS, weights

_ROOMS = "|".join(ROOMS)
_NAME = rf"(?:{_ROOMS}) \d+"
_BEGINS = re.compile(rf"({_NAME}(?:(?:,| and) {_NAME})*): ")


def told(name: str) -> str:
    """A finding as Markdown: what it says, its weight, what stands behind it, and a bad and a good example."""
    more, sources = _behind().get(name, ("", ()))
    lines = [f"# {name}: {FINDINGS[name]}", words.weights(weights(name))]
    if not _words(more) <= _words(f"{FINDINGS[name]} {weights(name)}"):
        lines.append(more)
    if sources:
        lines.append(words.sources(sources))
    if name in pages.examples():
        bad, good = pages.examples()[name]
        lines += [words.BAD, f"```yaml\n{bad}```", words.GOOD, f"```yaml\n{good}```"]
    return "\n\n".join(lines)


def room(name: str) -> str:
    """All findings of a room, a line each."""
    rows = [
        f"- **{each}**: {says} ({', '.join(weights(each))})"
        for each, says in FINDINGS.items()
        if each.split()[0] == name
    ]
    return "\n".join([f"# {words.findings_about(name, ROOMS[name])}", "", *rows])


@functools.cache
def _behind() -> Mapping[str, tuple[str, tuple[str, ...]]]:
    """By name, what a check's docstring says of a finding, and what it stands on."""
    found: dict[str, tuple[str, tuple[str, ...]]] = {}
    checks = (*plan_checks.CHECKS, guests_can_eat_what_they_are_served, guesses_are_confirmed, *sheet_checks.CHECKS)
    for check in checks:
        text = " ".join((inspect.getdoc(check) or "").split())
        text, _, source = text.replace(" Sources: in ", " Source: ").partition(" Source: ")
        source, _, rest = source.partition(". ")
        pieces = _BEGINS.split(f"{text} {rest}".strip())
        for names, says in zip(pieces[1::2], pieces[2::2], strict=True):
            for each in re.findall(_NAME, names):
                before, stands_on = found.get(each, ("", ()))
                said = f"{before} {_plainly(says)}".strip()
                found[each] = said, tuple(dict.fromkeys((*stands_on, *_sources(source))))
    return found


def _words(text: str) -> set[str]:
    return set(re.findall(r"\w+", text.casefold()))


def _plainly(text: str) -> str:
    """A docstring's sentence for a host: it begins with a capital, and names nothing of the code."""
    text = text.strip()
    return text[:1].upper() + text[1:]


def _sources(text: str) -> Iterator[str]:
    """What the words of a docstring point at: `faults.BEANS`, the rule set's `reheat`; else the words themselves."""
    named = re.findall(r"`([\w.]+)`", text)
    for each in named:
        if each.startswith("faults."):
            yield getattr(faults, each.removeprefix("faults."))
        elif each == "poisons.POISONS":
            yield from (poison.source for poison in POISONS)
        else:
            for rules in (rule_set(name) for name in RULE_SET_NAMES):
                yield from _of_rules(rules, _FIELDS.get(each, each))
    if text and not named:
        yield text


# Limits that a rule set works out, by the field that holds what they stand on.
_FIELDS = {"out_limit": "out", "hot_holding": "holding", "cold_holding": "holding"}
_MOST = 3  # sources of one rule set; of more, its name alone is told


def _of_rules(rules: RuleSet, field: str) -> Iterator[str]:
    own = getattr(rules, f"{field}_source", "") or _held(getattr(rules, field, ()))
    yield f"{rules.title}: {own}" if own else rules.title


def _held(value: object) -> str:
    """The sources of a record, or of a few."""
    records = value.values() if isinstance(value, Mapping) else value if isinstance(value, tuple) else (value,)
    found = list(dict.fromkeys(str(record.source) for record in records if hasattr(record, "source")))
    return "; ".join(found) if len(found) <= _MOST else ""
