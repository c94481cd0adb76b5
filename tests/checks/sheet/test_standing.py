"""keeping 4: what is best eaten at once, beside a step that may go on with it or not. Common practice, no source."""

from board.checks.sheet.every import safety_check
from board.plan.snag import Snag, Weight
from tests.checks.sheet.suppers import supper

STEPS = """
- {{step: fry the squid, where: 'stovetop, 1 ring', takes: 10 min}}
- {{step: pick the mint, {}}}
"""


def asked(mint: str) -> list[Snag]:
    found = safety_check(*supper(STEPS.format(mint), food="ingredients: [1 kg squid]", dish="Squid"))
    return [snag for snag in found if snag.code == "keeping 4"]


def test_k4_a_step_whose_words_leave_it_open_is_asked_about() -> None:
    (snag,) = asked("takes: 25 min")

    assert snag.weight is Weight.ASK
    assert snag.message.startswith("does pick the mint go on with fry the squid, or is it done beside it?")
    assert snag.message.endswith("until serve Main, and is to be eaten within 16 min")
    assert "after: nothing" in snag.mend


def test_k4_nothing_is_asked_where_the_host_says_what_it_follows() -> None:
    assert asked("takes: 5 min, best within: 5 min, after: 'fry the squid, at most 5 min'") == []
